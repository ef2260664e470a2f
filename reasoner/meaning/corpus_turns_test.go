package meaning

import (
	"testing"

	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// turnsCorpus is later turns that mend, take back or suppose, each conversation
// with all the facts that stand after every turn.
var turnsCorpus = [][]phrasing{
	{ // people come and stay away
		{"15 ft jon 800 lb loaded, two of us", "people.count 2; load.total 800 lb; boat.length 15 ft; boat.hull jon"},
		{"my cousin is joining us", "people.count 3; boat.length 15 ft; boat.hull jon"},
		{"he isn't after all", "people.count 2; load.total 800 lb; boat.length 15 ft; boat.hull jon"},
		{"my son and his pal are coming as well", "people.count 4; boat.length 15 ft; boat.hull jon"},
		{"one of them can't come", "people.count 3; boat.length 15 ft; boat.hull jon"},
		{"my uncle wants to come", "people.count 4; boat.length 15 ft; boat.hull jon"},
		{"nah he changed his mind", "people.count 3; boat.length 15 ft; boat.hull jon"},
		{"cross that, both of them bailed", "people.count 1; boat.length 15 ft; boat.hull jon"},
	},
	{ // what is said of somebody aboard changes no number
		{"16 ft vee 1300 lb, three of us", "people.count 3; load.total 1300 lb; boat.length 16 ft; boat.hull vee"},
		{"my boy is not tall", "people.count 3; load.total 1300 lb; boat.length 16 ft; boat.hull vee"},
		{"he's not big", "people.count 3; load.total 1300 lb; boat.length 16 ft; boat.hull vee"},
		{"add my neighbour", "people.count 4; boat.length 16 ft; boat.hull vee"},
		{"he's not heavy", "people.count 4; boat.length 16 ft; boat.hull vee"},
		{"oh he can not make it", "people.count 3; load.total 1300 lb; boat.length 16 ft; boat.hull vee"},
		{"she is not a fan of wind", "people.count 3; load.total 1300 lb; boat.length 16 ft; boat.hull vee"},
		{"my brother says it's fine", "people.count 3; load.total 1300 lb; boat.length 16 ft; boat.hull vee"},
	},
	{ // a number given another name
		{"5 m dinghy, 400 kg all in", "boat.length 5 m; load.total 400 kg; boat.hull other"},
		{"current is 4 km/h", "boat.length 5 m; load.total 400 kg; boat.hull other; current.speed 1.11111 m/s"},
		{"oh no, i meant the wind", "boat.length 5 m; load.total 400 kg; boat.hull other; wind.speed 1.11111 m/s"},
		{"is that the wind?", "boat.length 5 m; load.total 400 kg; boat.hull other; wind.speed 1.11111 m/s"},
		{"that's a windy lake", "boat.length 5 m; load.total 400 kg; boat.hull other; wind.speed 12..20 mph"},
	},
	{ // another unit
		{"boat is 17 m", "boat.length 17 m"},
		{"feet, sorry", "boat.length 17 ft"},
		{"1500 loaded", "boat.length 17 ft; load.total 1500 lb"},
		{"no, kilos", "boat.length 17 ft; load.total 1500 kg"},
		{"pounds not kilos", "boat.length 17 ft; load.total 1500 lb"},
		{"how many pounds of thrust", "boat.length 17 ft; load.total 1500 lb"},
		{"how many kilos?", "boat.length 17 ft; load.total 1500 lb"},
	},
	{ // the unit of a number named, however long ago it was said
		{"5 m inflatable, 400 kg loaded, 22 km/h wind, deck 40 cm", "boat.length 5 m; boat.hull inflatable; load.total 400 kg; wind.speed 6.11111 m/s; mount.height 40 cm"},
		{"no current to speak of", "boat.length 5 m; boat.hull inflatable; load.total 400 kg; wind.speed 6.11111 m/s; mount.height 40 cm"},
		{"hang on, the wind was in knots", "boat.length 5 m; boat.hull inflatable; load.total 400 kg; wind.speed 11.3178 m/s; mount.height 40 cm"},
		{"no, mph was right", "boat.length 5 m; boat.hull inflatable; load.total 400 kg; wind.speed 22 mph; mount.height 40 cm"},
		{"weight is pounds not kilos", "boat.length 5 m; boat.hull inflatable; load.total 400 lb; wind.speed 22 mph; mount.height 40 cm"},
		{"the deck should be inches", "boat.length 5 m; boat.hull inflatable; load.total 400 lb; wind.speed 22 mph; mount.height 40 in"},
		{"is the wind in knots", "boat.length 5 m; boat.hull inflatable; load.total 400 lb; wind.speed 22 mph; mount.height 40 in"},
		{"how many kilos is that", "boat.length 5 m; boat.hull inflatable; load.total 400 lb; wind.speed 22 mph; mount.height 40 in"},
		{"the current is in knots", "boat.length 5 m; boat.hull inflatable; load.total 400 lb; wind.speed 22 mph; mount.height 40 in"},
	},
	{ // a budget said anew, without the word
		{"15 ft jon 900 lb loaded, budget 1100", "boat.length 15 ft; boat.hull jon; load.total 900 lb; money.budget 1100 USD"},
		{"dad says 1400 tops now", "boat.length 15 ft; boat.hull jon; load.total 900 lb; money.budget ..1400 USD"},
		{"alright 1250 then", "boat.length 15 ft; boat.hull jon; load.total 900 lb; money.budget 1250 USD"},
		{"make that 1000 pounds loaded", "boat.length 15 ft; boat.hull jon; load.total 1000 lb; money.budget 1250 USD"},
		{"ok 1150 then", "boat.length 15 ft; boat.hull jon; load.total 1000 lb; money.budget 1250 USD"},
		{"ok 55 then", "boat.length 15 ft; boat.hull jon; load.total 1000 lb; money.budget 1250 USD"},
	},
	{ // a number and no budget to stand in for
		{"15 ft jon 900 lb loaded", "boat.length 15 ft; boat.hull jon; load.total 900 lb"},
		{"fine, 1400 then", "boat.length 15 ft; boat.hull jon; load.total 1400 lb"},
	},
	{ // so many of a word for people, this time
		{"14 ft jon, 2 of us, 650 lb loaded", "boat.length 14 ft; boat.hull jon; people.count 2; load.total 650 lb"},
		{"4 geezers this trip", "boat.length 14 ft; boat.hull jon; people.count 4"},
		{"5 lures this time", "boat.length 14 ft; boat.hull jon; people.count 4"},
		{"3 stops this weekend", "boat.length 14 ft; boat.hull jon; people.count 4"},
		{"just 2 chums this time", "boat.length 14 ft; boat.hull jon; people.count 2; load.total 650 lb"},
	},
	{ // batteries taken away, in talk of batteries
		{"12v 50 lb, three 90 ah agm at 60 percent, how long", "motor.voltage 12 V; motor.thrust 50 lbf; battery.count 3; battery.capacity 90 Ah; battery.chemistry agm; use.throttle 0.6"},
		{"pull one out", "motor.voltage 12 V; motor.thrust 50 lbf; battery.count 2; battery.capacity 90 Ah; battery.chemistry agm; use.throttle 0.6"},
		{"never mind, only the one", "motor.voltage 12 V; motor.thrust 50 lbf; battery.count 1; battery.capacity 90 Ah; battery.chemistry agm; use.throttle 0.6"},
		{"suppose i put in a second one of the same", "motor.voltage 12 V; motor.thrust 50 lbf; battery.count 2; battery.capacity 90 Ah; battery.chemistry agm; use.throttle 0.6"},
		{"take one of the photos", "motor.voltage 12 V; motor.thrust 50 lbf; battery.count 2; battery.capacity 90 Ah; battery.chemistry agm; use.throttle 0.6"},
	},
	{ // one of whom or of what, nobody said
		{"16 ft vee 1100 lb loaded, 3 of us, two 100 ah agm", "boat.length 16 ft; boat.hull vee; load.total 1100 lb; people.count 3; battery.count 2; battery.capacity 100 Ah; battery.chemistry agm"},
		{"take one away", "boat.length 16 ft; boat.hull vee; load.total 1100 lb; people.count 3; battery.count 2; battery.capacity 100 Ah; battery.chemistry agm"},
	},
	{ // one battery more, and fewer
		{"12v 50 lb, two 90 ah agm at 60 percent, how long", "motor.voltage 12 V; motor.thrust 50 lbf; battery.count 2; battery.capacity 90 Ah; battery.chemistry agm; use.throttle 0.6"},
		{"suppose i had a third", "motor.voltage 12 V; motor.thrust 50 lbf; battery.count 3; battery.capacity 90 Ah; battery.chemistry agm; use.throttle 0.6"},
		{"nope, two", "motor.voltage 12 V; motor.thrust 50 lbf; battery.count 2; battery.capacity 90 Ah; battery.chemistry agm; use.throttle 0.6"},
		{"what about at a third", "motor.voltage 12 V; motor.thrust 50 lbf; battery.count 2; battery.capacity 90 Ah; battery.chemistry agm; use.throttle 0.333333"},
		{"and with another one", "motor.voltage 12 V; motor.thrust 50 lbf; battery.count 3; battery.capacity 90 Ah; battery.chemistry agm; use.throttle 0.333333"},
	},
	{ // a motor named again comes with its volts and its bank
		{"36v 112, three 100 ah lithium", "motor.voltage 36 V; motor.thrust 112 lbf; battery.count 3; battery.capacity 100 Ah; battery.chemistry lithium"},
		{"try a 70 on 24 with two of them", "motor.voltage 24 V; motor.thrust 70 lbf; battery.count 2; battery.capacity 100 Ah; battery.chemistry lithium"},
		{"no, back to the 112", "motor.voltage 36 V; motor.thrust 112 lbf; battery.count 3; battery.capacity 100 Ah; battery.chemistry lithium"},
		{"ok the smaller one", "motor.voltage 24 V; motor.thrust 70 lbf; battery.count 2; battery.capacity 100 Ah; battery.chemistry lithium"},
		{"no the 36 volt one", "motor.voltage 36 V; motor.thrust 112 lbf; battery.count 3; battery.capacity 100 Ah; battery.chemistry lithium"},
		{"would a 55 do", "motor.voltage 36 V; motor.thrust 55 lbf; battery.count 3; battery.capacity 100 Ah; battery.chemistry lithium"},
	},
	{ // holding in a wind
		{"55 lb on a 16 ft jon, 1100 lb loaded", "motor.thrust 55 lbf; boat.length 16 ft; boat.hull jon; load.total 1100 lb"},
		{"hold it in 20?", "motor.thrust 55 lbf; boat.length 16 ft; boat.hull jon; load.total 1100 lb; wind.speed 20 mph"},
		{"would a 45 hold", "motor.thrust 45 lbf; boat.length 16 ft; boat.hull jon; load.total 1100 lb; wind.speed 20 mph"},
	},
	{ // wishes taken back and up again
		{"18 ft bass boat 2000 loaded, with a gps anchor", "boat.length 18 ft; boat.hull bass; load.total 2000 lb; want.position-hold true"},
		{"no gps", "boat.length 18 ft; boat.hull bass; load.total 2000 lb; want.position-hold false"},
		{"actually he wants it after all", "boat.length 18 ft; boat.hull bass; load.total 2000 lb; want.position-hold true"},
	},
	{ // wire there and back
		{"50 amps 12 volt 16 ft of wire", "motor.current 50 A; motor.voltage 12 V; wire.run 16 ft"},
		{"thats there and back", "motor.current 50 A; motor.voltage 12 V; wire.run 8 ft"},
		{"no, one way", "motor.current 50 A; motor.voltage 12 V; wire.run 16 ft"},
	},
	{ // an engine called by its horsepower
		{"plate says 900 lb", "load.plate 900 lb"},
		{"we are 3, 170 each", "load.plate 900 lb; people.count 3; people.each 170 lb"},
		{"plus the 9.9 which is 88 lb", "load.plate 900 lb; people.count 3; people.each 170 lb; load.engine 88 lb"},
	},
}

func TestTurns(t *testing.T) {
	for _, talk := range turnsCorpus {
		c := card.Card{}
		for _, turn := range talk {
			c = Bind(read.Read(turn.text), c).Card
			compareFacts(t, turn.text, turn.want, c)
		}
	}
}

// TestPick holds what is asked by a turn that wants a pick of what stands, against
// turns that name what they are about.
func TestPick(t *testing.T) {
	for _, row := range []struct{ first, text, want string }{
		{"bow is 20 inches up, what shaft", "what would you go with", "shaft"},
		{"50 amps 12 volt 16 ft, what wire", "which one would u buy", "wire"},
		{"16 ft vee 1200 loaded", "so what do you recommend", "fit"},
		{"12v 50 lb, two 90 ah agm at half, how long", "which would you pick", "runtime"},
		{"bow is 20 inches up, what shaft", "what wire would you go with", "wire"},
		{"bow is 20 inches up, what shaft", "what charger do you recommend", "charger"},
	} {
		c := Bind(read.Read(row.first), card.Card{}).Card
		got := Bind(read.Read(row.text), c).Wish.Topics
		if len(got) == 0 || string(got[0]) != row.want {
			t.Errorf("%q after %q asks %q, wanted %q", row.text, row.first, got, row.want)
		}
	}
}

// TestOdd holds numbers that cannot be, said for the thing asked, against numbers
// that merely find no place.
func TestOdd(t *testing.T) {
	for _, row := range []struct{ text, slot string }{
		{"what wire for 0 amps, 12 volt, 10 ft", "motor.current"},
		{"wire gauge for 40 amps over 0 ft at 12 volts", "wire.run"},
		{"charger for an 80 ah battery in 2000 hours", "charge.hours"},
		{"how fast will a 2000 lb motor push a 15 ft jon 800 lb loaded", "motor.thrust"},
		{"how fast is a 17 ft vee at 80000 lb", "load.total"},
		{"run time of a 100 ah lithium at 20 amps", ""},
		{"17 ft vee 1500 lb loaded, my trailer is 22 ft", ""},
	} {
		got := ""
		for _, p := range Bind(read.Read(row.text), card.Card{}).Problems {
			if p.Kind == "out-of-range" {
				got = p.Slot
			}
		}
		if got != row.slot {
			t.Errorf("%q: out of range is %q, wanted %q", row.text, got, row.slot)
		}
	}
}

// TestDrawnTo holds how far a battery is run down, Peukert's exponent and the water's
// temperature against shares and degrees of other things.
func TestDrawnTo(t *testing.T) {
	const absent = -1.0
	for _, row := range []struct {
		text, slot string
		value      float64
	}{
		{"110 ah agm at 15 amps down to 40%, how long", "battery.depth-limit", 0.6},
		{"how long does a 100 ah lithium last at 20 amps till its flat", "battery.depth-limit", 1},
		{"a 100 ah agm down to 30%, 8 amp charger, how long", "battery.depth-limit", absent},
		{"100 ah agm, 50 lb at 40%, how long", "battery.depth-limit", absent},
		{"flooded 110 ah, peukert 1.25, 20 amps, how long", "battery.peukert", 1.25},
		{"14 ft jon 1.2 m wide", "battery.peukert", absent},
		{"15 ft jon 800 lb, water is 50 degrees, how fast with a 45", "water.temperature", 10},
		{"15 ft jon 800 lb, its 50 degrees out", "water.temperature", absent},
	} {
		f, ok := Bind(read.Read(row.text), card.Card{}).Card.Get(row.slot)
		got := absent
		if ok && f.Value != nil {
			got = *f.Value
		}
		if got < row.value-0.01 || got > row.value+0.01 {
			t.Errorf("%q: %s is %g, wanted %g", row.text, row.slot, got, row.value)
		}
	}
}
