package drill

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"heronlake.example/ask/reasoner"
	"heronlake.example/ask/reasoner/answer"
)

// serve plays the lines of a trainee to a written customer and gives the marks.
func serve(t *testing.T, w Written, lines ...string) *answer.Drill {
	t.Helper()
	if w.Title == "" {
		w.Title = "a customer"
	}
	s, faults := w.Scenario()
	if len(faults) > 0 {
		t.Fatalf("%s\n%s", strings.Join(faults, "\n"), w.Says)
	}
	d := New(reasoner.New(reasoner.Options{}), Options{Written: []Scenario{s}})
	a := d.Open()
	for _, line := range append(lines, "done", "done") {
		if a.Drill != nil && len(a.Drill.Marks) > 0 {
			break
		}
		a = d.Ask(line)
	}
	if a.Drill == nil || len(a.Drill.Marks) == 0 {
		t.Fatalf("not marked after %q", lines)
	}
	return a.Drill
}

// verdicts writes the marks as "thrust right, asked load.total".
func verdicts(x *answer.Drill) string {
	var out []string
	for _, m := range x.Marks {
		switch {
		case m.Kind == "item":
			out = append(out, m.ID+" "+m.Verdict)
		case m.Kind == "wish":
			out = append(out, "wish "+m.Verdict)
		}
	}
	return strings.Join(out, ", ")
}

// markRows are twenty drills, each served well, with too little, with too much,
// and in sloppy words, and the marks that the trade would give. Those that need
// an argument have it beside them.
var markRows = []struct {
	who    string
	w      Written
	served []served
}{
	{"a light jon on a pond: 900 lb asks for 18 lb, and the smallest motor made has 30",
		Written{Topic: "thrust", Says: "16 foot jon boat on a farm pond, two of us, wind 8 mph.", Knows: "900 lb loaded."}, []served{
			{"30 lb", "thrust right"},
			{"15 lb of thrust", "thrust under"},
			{"an 80 pounder at 24 volts", "thrust over"}, // a second battery for nothing
			{"id go with a thirty pound one", "thrust right"},
			{"40 lb", "thrust acceptable"}, // one class up, one battery as before
		}},
	{"a vee of 2,400 lb held in 15 mph: the raised rule gives 60 lb, so the 70 class",
		Written{Topic: "thrust", Says: "18 foot aluminum vee on a big lake, three aboard, 2,400 lb loaded.", Knows: "The wind is 15 mph on a usual day."}, []served{
			{"70 lb", "thrust right"},
			{"55 lb, that's the biggest 12 volt one", "thrust under"},
			{"110 lb", "thrust over"},
			{"60 to 70 pounds should do it", "thrust right"}, // both ends meet the need
			{"80 lb of thrust", "thrust acceptable"},
		}},
	{"a pontoon of 3,400 lb: 2.5 lb a hundred and five people aboard",
		Written{Topic: "thrust", Says: "20 foot pontoon, five aboard, wind 10 mph.", Knows: "3,400 lb loaded."}, []served{
			{"90 lb", "thrust right"},
			{"55 lb", "thrust under"},
			{"85 pound thrust", "thrust right"}, // not a class here, but it meets the need
			{"120 lb", "thrust over"},
		}},
	{"a kayak of 330 lb: nothing is gained past the smallest",
		Written{Topic: "thrust", Says: "12 foot kayak, I fish alone, wind 8 mph.", Knows: "330 lb loaded."}, []served{
			{"30", "thrust right"},
			{"30 lbs", "thrust right"},
			{"55 lb", "thrust over"},
			{"80 lb", "thrust over"},
		}},
	{"a bass boat of 3,300 lb is a 24-volt job, in pairs",
		Written{Topic: "volts", Says: "20 foot bass boat, two aboard, wind 12 mph.", Knows: "3,300 lb loaded."}, []served{
			{"24 volts, two batteries", "volts right, count right"},
			{"12 volt, one battery", "volts under, count under"},
			{"36 volts and three batteries", "volts acceptable, count right"}, // at 90 lb both are sold
			{"twenty four volt with a pair of batteries", "volts right, count right"},
			{"24 volts, three batteries", "volts right, count wrong"}, // a set and a half
		}},
	{"a small jon: one battery",
		Written{Topic: "volts", Says: "14 foot jon, two aboard, wind 6 mph.", Knows: "750 lb loaded."}, []served{
			{"12 volts, one battery", "volts right, count right"},
			{"24 volts and two batteries", "volts over, count acceptable"},
			{"just a 12v and a single battery", "volts right, count right"},
		}},
	{"a bow deck 24 in up: 24 and 12 and the head make 46, so 48",
		Written{Topic: "shaft", Says: "18 foot vee, two aboard, it goes on the bow.", Knows: "The bow deck is 24 inches above the water."}, []served{
			{"48 inch shaft", "shaft right"},
			{"42 inch shaft", "shaft under"},
			{"54 inches", "shaft acceptable"}, // one longer works, and is in the way
			{"72 inch shaft", "shaft over"},
			{`48" shaft i think`, "shaft right"},
			{"45 inch shaft", "shaft acceptable"}, // an inch short of a need with waves and cover in it
			{"122 cm shaft", "shaft right"},       // 48 in
		}},
	{"a jon's transom 15 in up",
		Written{Topic: "shaft", Says: "14 foot jon, it goes on the transom.", Knows: "The transom is 15 inches above the water."}, []served{
			{"36 inch shaft", "shaft right"},
			{"30 inch shaft", "shaft acceptable|under"},
			{"54 inch shaft", "shaft over"},
		}},
	{"six hours of casting the bank on 55 lb: about 100 Ah of flooded lead",
		Written{Topic: "bank", Says: "The motor is 55 lb at 12 volts on a 16 foot jon, casting the bank, flooded batteries.", Knows: "6 hours on the water."}, []served{
			{"one group 31", "count right, capacity right"},
			{"one battery of 50 Ah", "count right, capacity under"},
			{"a group 27, just the one battery", "count right, capacity acceptable|right"},
			{"two 100 Ah in parallel", "count acceptable, capacity acceptable"}, // twice the weight, a long day
			{"four batteries of 120 amp hours", "count over, capacity over"},
			{"one 100 Ah lithium", "count right, capacity acceptable|right"}, // lithium needs less of it, and weighs less
		}},
	{"eight hours straight down on 80 lb takes more than one pair of lead",
		Written{Topic: "bank", Says: "The motor is 80 lb at 24 volts on an 18 foot bass boat, 8 hours on the water, vertical jigging.", Knows: "AGM batteries."}, []served{
			{"two group 24", "count right, capacity under"},
			{"six 90 Ah batteries", "count right, capacity right"},
			{"one battery, group 31", "count under, capacity under"},
		}},
	{"50 A over 16 ft on 12 volts: 4 gauge holds five percent",
		Written{Topic: "wiring", Says: "55 lb 12 volt motor on a 16 foot vee.", Knows: "16 ft of wire from the battery to the motor."}, []served{
			{"4 gauge and a 60 amp breaker", "gauge right, breaker right"},
			{"6 gauge, 60 amp breaker", "gauge acceptable|right, breaker right"}, // a little past five, well within ten
			{"12 gauge, 30 amp breaker", "gauge under, breaker under"},
			{"1/0 and a 150 amp breaker", "gauge over, breaker over"},
			{"4 awg wire, breaker of 60A", "gauge right, breaker right"},
			{"2 gauge, 70 amp breaker", "gauge acceptable, breaker acceptable"},
		}},
	{"56 A over 20 ft on 24 volts: half the drop",
		Written{Topic: "wiring", Says: "80 lb 24 volt motor on a 19 foot bass boat.", Knows: "20 ft of wire from the battery to the motor."}, []served{
			{"6 gauge, 60 amp breaker", "gauge right, breaker right"},
			{"10 gauge and a 60 amp breaker", "gauge under, breaker acceptable|right|over"},
			{"4 gauge with a 70 amp breaker", "gauge acceptable, breaker acceptable"},
			{"6 ga, breaker 50 amps", "gauge right, breaker under"},
		}},
	{"two flooded batteries, ten hours",
		Written{Topic: "charger", Says: "Two 100 Ah batteries in series, flooded.", Knows: "10 hours to charge."}, []served{
			{"10 amps each, two bank charger", "charger right, outputs right"},
			{"a 5 amp charger, one output", "charger under, outputs under"},
			{"a two bank charger, 40 amps", "charger over, outputs right"}, // more than flooded lead accepts
			{"ten amp charger with an output for each battery", "charger right, outputs right"},
		}},
	{"three lithium batteries, nine hours",
		Written{Topic: "charger", Says: "Three batteries in series, 100 Ah each, 9 hours to charge.", Knows: "lithium batteries."}, []served{
			{"three bank charger, 10 amps", "charger right, outputs right"},
			{"3 bank charger, 15 amps each", "charger acceptable, outputs right"}, // quicker than asked, within what it takes
			{"10 amp charger, one output", "charger right, outputs under"},
		}},
	{"no front deck: a clamp on the transom and a tiller",
		Written{Topic: "mount", Says: "14 foot vee, two aboard, casting.", Knows: "There is no front deck, it goes on the transom."}, []served{
			{"transom mount with a tiller", "mount right, control right"},
			{"bow mount with a foot pedal", "mount acceptable, control wrong"}, // where a deck could be built in
			{"clamp it on the transom, tiller steer", "mount right, control right"},
		}},
	{"holding a spot wants a motor that steers itself",
		Written{Topic: "mount", Says: "19 foot deep-vee, three aboard, vertical jigging, wind 14 mph.", Knows: "I want it to hold a spot by itself."}, []served{
			{"bow mount, electric steer", "mount right, control right"},
			{"bow mount with a remote", "mount right, control right"},
			{"bow mount and a cable steer foot pedal", "mount right, control wrong"}, // cable cannot hold
			{"transom mount, tiller", "mount acceptable, control wrong"},
		}},
	{"a bay boat in salt",
		Written{Topic: "water", Says: "18 foot bay boat.", Knows: "It's salt water."}, []served{
			{"the saltwater version with a zinc anode", "version right, anode right"},
			{"a plain freshwater one, no anode", "version under, anode under"},
			{"salt water version, magnesium anode", "version right, anode wrong"}, // gone in no time in salt
			{"saltwater one with an anode", "version right, anode acceptable"},
		}},
	{"a vee with its parts weighed",
		Written{Topic: "weight", Says: "16 foot vee, the bare hull weighs 650 lb, the outboard weighs 220 lb, 60 lb of gear.", Knows: "Three aboard. 10 gal of gas."}, []served{
			{"about 1,650 lb loaded", "load right"},
			{"930 lb loaded", "load under"}, // people and fuel forgotten
			{"2,400 pounds all up", "load over"},
			{"750 kg loaded", "load right"},
			{"1,400 to 1,500 lb loaded", "load acceptable"},
		}},
	{"a pond angler needs none of it",
		Written{Topic: "electronics", Says: "16 foot jon on a farm pond, casting, wind 6 mph.", Knows: "I don't need sonar in it."}, []served{
			{"no position hold, no built-in sonar, and the fish finder gets its own battery", "position-hold right, sonar right, supply right"},
			{"position hold and built-in sonar, and tap the motor battery for the fish finder", "position-hold over, sonar over, supply wrong"},
		}},
	{"a small bass boat, whole",
		Written{Topic: "sale", Says: "17 foot bass boat, two aboard, 2,000 lb loaded, casting, wind 10 mph, fresh water, 6 hours on the water, 14 ft of wire from the battery to the motor.", Knows: "The bow deck is 18 inches above the water."}, []served{
			{"40 lb 12 volt, 42 inch shaft, bow mount, foot pedal, one group 27, 6 gauge, 40 amp breaker",
				"thrust right, volts right, shaft right, mount right, control right, count right, capacity right, gauge right, breaker right"},
			{"30 lb 12 volt, 36 inch shaft, bow mount, foot pedal, one 40 Ah battery, 14 gauge, 20 amp breaker",
				"thrust under, volts right, shaft under, mount right, control right, count right, capacity under, gauge under, breaker under"},
			{"110 lb 36 volt, 60 inch shaft, bow mount, remote, three 200 Ah lithium, 2 gauge, 120 amp breaker",
				"thrust over, volts over, shaft over, mount right, control acceptable, count over, capacity over, gauge acceptable|over, breaker over"},
			{"i would say a fifty pounder on 12v, 48 inch shaft, bow mount w foot pedal, 1 group 31 battery, 4 gauge wire, 60 amp breaker",
				"thrust acceptable, volts right, shaft acceptable, mount right, control right, count right, capacity right|acceptable, gauge right|acceptable, breaker right|acceptable"},
		}},
}

type served struct{ says, want string }

// agrees holds verdicts against those wanted; a bar parts those that will do.
func agrees(got, want string) bool {
	a, b := strings.Split(got, ", "), strings.Split(want, ", ")
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		id, verdict, _ := strings.Cut(a[i], " ")
		wid, list, _ := strings.Cut(b[i], " ")
		if id != wid || !slices.Contains(strings.Split(list, "|"), verdict) {
			return false
		}
	}
	return true
}

func TestMarking(t *testing.T) {
	if len(markRows) < 20 {
		t.Errorf("%d drills", len(markRows))
	}
	for _, r := range markRows {
		for _, s := range r.served {
			x := serve(t, r.w, s.says)
			if got := verdicts(x); !agrees(got, s.want) {
				t.Errorf("%s\n%q\n got %s\nwant %s", r.who, s.says, got, s.want)
				for _, m := range x.Marks {
					if m.Kind == "item" {
						t.Logf("  %s: said %q, want %q: %s", m.ID, m.Said, m.Want, m.Why)
					}
				}
			}
		}
	}
}

// A question that moves the result weighs more than one that does not, and one
// that was asked costs nothing.
func TestQuestions(t *testing.T) {
	w := Written{Topic: "shaft", Says: "18 foot vee, two aboard, it goes on the bow.", Knows: "The bow deck is 34 inches above the water."}
	for _, row := range []struct {
		line    string
		verdict string
	}{
		{"how high is the bow off the water?", "done"},
		{"whats the deck height", "done"},
		{"How far is it from the deck down to the water?", "done"},
		{"can you measure from the bow down to the waterline", "done"},
		{"is it salt water?", "missing"},
		{"60 inch shaft", "missing"},
	} {
		x := serve(t, w, row.line, "60 inch shaft")
		m := markOf(x, "mount.height")
		if m == nil || m.Verdict != row.verdict || m.Most != movingPoints {
			t.Errorf("%q: %+v, want %s", row.line, m, row.verdict)
		}
	}
}

func markOf(x *answer.Drill, id string) *answer.Marked {
	for i := range x.Marks {
		if x.Marks[i].ID == id {
			return &x.Marks[i]
		}
	}
	return nil
}

// What cannot be had must be turned down in words.
func TestWish(t *testing.T) {
	w := Written{Topic: "wiring", Says: "55 lb 12 volt motor on a 16 foot vee. No breaker, please.", Knows: "16 ft of wire from the battery to the motor.",
		Wish: "a chafed wire without a breaker burns the boat", Refuse: "breaker, fuse", Note: "breaker-rating"}
	for line, want := range map[string]string{
		"You need a breaker, or a chafed wire burns the boat.": "wish done",
		"I would not leave the breaker out.":                   "wish done",
		"4 gauge is fine.":                                     "wish missing",
	} {
		if got := verdicts(serve(t, w, line, "4 gauge, 60 amp breaker")); !strings.HasSuffix(got, want) {
			t.Errorf("%q: %s, want %s", line, got, want)
		}
	}
}

// Every row that asks for a slot has words of its own, and a question that any
// fitter would put is understood as meant.
func TestAskedFor(t *testing.T) {
	for line, want := range map[string]string{
		"how high is the bow off the water?":                    "mount.height",
		"What does she weigh, loaded?":                          "load.total",
		"how much does the outboard weigh":                      "load.engine",
		"what outboard is on it?":                               "load.engine",
		"how much gas do you carry":                             "fuel.volume",
		"how many people fish with you?":                        "people.count",
		"Do you fish alone?":                                    "people.count",
		"whats the wind like":                                   "wind.speed",
		"is there any current?":                                 "current.speed",
		"how rough does it get, waves wise":                     "chop.height",
		"salt or fresh?":                                        "water.kind",
		"Where do you use it?":                                  "water.kind",
		"how long are you out on a day?":                        "use.hours",
		"How do you fish?":                                      "use.style",
		"is there a front deck":                                 "mount.place",
		"how far is it from the batteries to the bow?":          "wire.run",
		"How long is the wire run?":                             "wire.run",
		"how many hours between trips for charging?":            "charge.hours",
		"what kind of batteries are they?":                      "battery.chemistry",
		"how many amp hours does the label say":                 "battery.capacity",
		"how long is the boat":                                  "boat.length",
		"do you want it to hold a spot":                         "want.position-hold",
		"Do you want sonar built in?":                           "want.sonar-2d",
		"what gear do you carry?":                               "load.gear",
		"how heavy is the bare hull?":                           "load.dry",
		"how high is the deck, and how windy does it get there": "mount.height wind.speed",
		"And how tall's your bow?":                              "mount.height",
		"deck to water?":                                        "mount.height",
		"distance between the mounting point and the water":     "mount.height",
		"you fish solo?":                                        "people.count",
		"crew size?":                                            "people.count",
		"how many hours a day do you fish?":                     "use.hours",
		"what kind of fishing do you do":                        "use.style",
		"where are the batteries":                               "wire.run",
		"distance from battery to trolling motor":               "wire.run",
		"how many batteries do you have":                        "battery.count",
		"got a casting deck?":                                   "mount.place",
		"does your shed freeze":                                 "temperature.air",
		"what lake do you fish":                                 "water.kind",
		"what are we putting this on?":                          "boat.hull",
		"what kind of boat is it":                               "boat.hull",
		"how's the wind":                                        "wind.speed",
		"how high's the nose off the water":                     "mount.height",
		"what's the measurement from where the motor bolts down to the waterline": "mount.height",
		"how rough's it get":                     "chop.height",
		"do you get whitecaps?":                  "chop.height",
		"you running salt?":                      "water.kind",
		"does the tide get in there":             "water.kind",
		"how strong is the tide":                 "current.speed",
		"How long's a day for you":               "use.hours",
		"how long's the wire run":                "wire.run",
		"batteries in the back?":                 "wire.run",
		"flat out or easy going?":                "use.throttle",
		"you got a fish finder?":                 "want.sonar-2d",
		"you standing up front casting?":         "use.style",
		"what kind are they":                     "battery.chemistry",
		"anyone else with you?":                  "people.count",
		"who's going along":                      "people.count",
		"what's in the boat besides you":         "load.gear",
		"wind, waves, current, salt, and weeds?": "chop.height current.speed wind.speed water.weeds water.kind",
		"how'd you fish it":                      "use.style",
		"how's it fished":                        "use.style",
		"hours?":                                 "hours",
		"what size":                              "size",
		"kids along?":                            "people.count",
		"what do you use for sonar":              "want.sonar-2d",
		"motor on the back?":                     "load.engine",
		"what do you carry":                      "load.gear",
		"what's the amp draw":                    "motor.current",
		"need the deck height off the water too": "mount.height",
		"nice weather today":                     "",
		"who won the game":                       "",
	} {
		if got := strings.Join(asksFor(line), " "); got != want {
			t.Errorf("%q asks for %q, want %q", line, got, want)
		}
	}
}

// Each fault is found by its own check, and the words of its cause name it.
func TestFaults(t *testing.T) {
	found := map[string]bool{}
	r := reasoner.New(reasoner.Options{})
	for seed := uint64(1); seed < 400 && len(found) < len(faultRows); seed++ {
		d := New(r, Options{Topic: Faults, Seed: seed, Seeded: true})
		d.Open()
		f := d.s.Fault
		if found[f.id] {
			continue
		}
		found[f.id] = true
		if a := d.Ask("what about " + checkWords[f.decide] + "?"); a.Drill.Says != d.s.check(f.decide) {
			t.Errorf("%s: asked for %q, the customer says %q", f.id, checkWords[f.decide], a.Drill.Says)
		}
		d.Ask(f.causes[0])
		a := d.Ask("Open the breaker before you touch the prop.")
		if len(a.Drill.Marks) == 0 || a.Drill.Points != a.Drill.Most {
			t.Errorf("%s: named %q and asked for %s: %v of %v: %+v", f.id, f.causes[0], f.decide, a.Drill.Points, a.Drill.Most, a.Drill.Marks)
		}
	}
	if len(found) < len(faultRows) {
		t.Errorf("%d of %d faults were met", len(found), len(faultRows))
	}
}

var checkWords = map[string]string{
	"plug-off": "it with the plug pulled, does it still trip", "plug": "volts at the plug", "rest": "volts of each battery at rest", "posts": "volts at the battery posts under load",
	"low": "the low settings, does it run", "amps": "the amps it draws", "rating": "the rating of the breaker", "prop-off": "it with the prop off", "prop": "turning the prop by hand",
	"own-battery": "the sonar on its own battery", "cable": "where the transducer cable runs", "magnet": "magnets near the sensor", "seam": "milky drops at the seam",
	"charger": "the lights on the charger", "breaker-in": "the breaker, is it in",
}

// A drill with a seed is the same whatever came before; one without follows the
// record.
func TestSeededDrill(t *testing.T) {
	r := reasoner.New(reasoner.Options{})
	record := []Result{{Topic: Shaft, Level: 3, Points: 20, Most: 20}, {Topic: Thrust, Level: 1, Points: 1, Most: 20}}
	run := func(record []Result, o Options, answers string) string {
		o.Record = record
		d := New(r, o)
		text := d.Open().Drill.Says
		for range 5 {
			d.Ask(answers)
			d.Ask("done")
			text += "\n" + d.Ask("next").Drill.Says
		}
		return text
	}
	for _, topic := range []Topic{"", Shaft, Sale} {
		o := Options{Seed: 12, Seeded: true, Topic: topic}
		if a, b := run(nil, o, "55 lb, 48 inch shaft"), run(record, o, "no idea"); a != b {
			t.Errorf("two trainees of one class meet different customers:\n%s\n\n%s", a, b)
		}
	}
	if a, b := run(nil, Options{Seed: 12, Seeded: true}, "x"), run(nil, Options{Seed: 13, Seeded: true}, "x"); a == b {
		t.Error("two seeds give the same class")
	}
}

func TestSchedule(t *testing.T) {
	var record []Result
	met := map[Topic]int{}
	for range 60 {
		topic, level := Next(record)
		share := 1.0
		if topic == Wiring {
			share = 0.2
		}
		if len(record) > 0 && record[len(record)-1].Topic == topic {
			t.Fatalf("%s comes twice running", topic)
		}
		met[topic]++
		record = append(record, Result{Topic: topic, Level: level, Points: 20 * share, Most: 20})
	}
	for _, topic := range Topics() {
		if met[topic] == 0 {
			t.Errorf("%s never comes", topic)
		}
		if topic != Wiring && met[topic] >= met[Wiring] {
			t.Errorf("%s, which goes well, comes %d times and wiring, which does not, %d", topic, met[topic], met[Wiring])
		}
	}
	if got := LevelOf(record, Wiring); got != 1 {
		t.Errorf("wiring is at level %d after nothing but failure", got)
	}
	if got := LevelOf(record, Shaft); got < 3 {
		t.Errorf("shaft is at level %d after nothing but success", got)
	}
}

func TestParseTopic(t *testing.T) {
	for words, want := range map[string]Topic{"shaft": Shaft, "whole sale": Sale, "mount and control": Mount, "the wiring": Wiring, "water and corrosion": Water,
		"fault finding": Faults, "thurst": Thrust, "battery bank": Bank, "gps": Electronics, "knitting": "", "": ""} {
		if got, ok := ParseTopic(words); got != want || ok != (want != "") {
			t.Errorf("%q is %q, want %q", words, got, want)
		}
	}
}

// A refusal that holds a number takes no pick back.
func TestRefusalKeepsPicks(t *testing.T) {
	w := Written{Topic: "volts", Says: "20 foot bass boat, two aboard, wind 12 mph.", Knows: "3,300 lb loaded."}
	if got := verdicts(serve(t, w, "24 volts", "two batteries", "no, not off one battery")); got != "volts right, count right" {
		t.Error(got)
	}
	w = Written{Topic: "charger", Says: "Two 100 Ah batteries in series, flooded.", Knows: "10 hours to charge."}
	if got := verdicts(serve(t, w, "10 amps each, one output for each battery")); got != "charger right, outputs right" {
		t.Error(got)
	}
}

// A mistake counts once: wire and breaker are judged by the motor that was named.
func TestOwnMotor(t *testing.T) {
	w := Written{Topic: "sale", Says: "14 foot jon, two aboard, 750 lb loaded, it goes on the transom, trolling, 4 hours on the water, 6 ft of wire from the battery to the motor.",
		Knows: "The transom is 15 inches above the water."}
	x := serve(t, w, "55 lb, 12 volt, 36 inch shaft, transom mount, tiller, one group 27, 8 gauge, 60 amp breaker")
	if m := markOf(x, "breaker"); m == nil || m.Verdict != right {
		t.Errorf("a breaker for the motor that was named: %+v", m)
	}
	if m := markOf(x, "thrust"); m == nil || m.Verdict != tooMuch {
		t.Errorf("55 lb on a jon of 750 lb: %+v", m)
	}
}

// What a pick is, by the words that the counter has for it.
func TestPicks(t *testing.T) {
	w := Written{Title: "a bass boat", Topic: "sale", Says: "17 foot bass boat, two aboard, 2,000 lb loaded, casting, wind 10 mph, fresh water, 6 hours on the water, 14 ft of wire from the battery to the motor."}
	s, faults := w.Scenario()
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	r := reasoner.New(reasoner.Options{})
	_, a := full(r, &s)
	for line, want := range map[string]string{
		"go with a 24v 80#":                          "thrust 80 lb, volts 24 V",
		"I would recommend a fifty five pound motor": "thrust 55 lb",
		"a four foot shaft":                          "shaft 48 in",
		"bow-mount w/ cable steer foot pedal":        "mount bow mount, control foot pedal, cable steer",
		"clamp it on the back, tiller":               "mount transom mount, control tiller",
		"handheld remote":                            "control remote",
		"2 group 31s":                                "count 2, capacity group 31",
		"pair of group 27 deep cycles":               "count 2, capacity group 27",
		"1 x 100 Ah agm":                             "count 1, capacity 100 Ah each",
		"#6 wire":                                    "gauge 6 AWG",
		"six gauge wire":                             "gauge 6 AWG",
		"sixty amp fuse":                             "breaker 60 A",
		"breaker: 60":                                "breaker 60 A",
		"fifty amp breaker on 8 gauge":               "gauge 8 AWG, breaker 50 A",
		"and use 6 gauge with a 50":                  "gauge 6 AWG, breaker 50 A",
		"50-60 amp breaker":                          "breaker 50 to 60 A",
		"my cousin has a nice boat":                  "",
		"thank you":                                  "",
	} {
		h := &heard{picks: []string{line}}
		h.take(line, row(Sale))
		m := newMarker(&s, h, a, 0)
		var got []string
		for _, it := range s.items() {
			if said := it.said(m); said != "" {
				got = append(got, it.id+" "+said)
			}
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("%q picks %q, want %q", line, strings.Join(got, ", "), want)
		}
	}
}

func ExampleDrill() {
	d := New(reasoner.New(reasoner.Options{}), Options{Topic: Shaft, Seed: 12, Seeded: true})
	fmt.Println(d.Open().Drill.Says)
	for _, line := range []string{"How high do the waves get?", "48 inch shaft", "That is all."} {
		a := d.Ask(line)
		fmt.Println(">", line)
		if a.Drill.Says != "" {
			fmt.Println(a.Drill.Says)
		}
		if a.Headline != "" {
			fmt.Println(a.Headline)
		}
	}
	// Output:
	// Well, I was only going to look, and now there's an 18-foot flat-bottom jon in the driveway. She lives on a long natural lake, mostly. Let me see: two of us, it goes on the bow deck, the mount surface is 19 inches above the water. What shaft do I need?
	// > How high do the waves get?
	// It gets to 10 inches of chop.
	// > 48 inch shaft
	// Anything I should watch out for?
	// > That is all.
	// 15 of 15 points. Nothing to add.
}
