package drill

import (
	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
)

// A wishRow is something that a customer wants and cannot have. A good fitter
// says so, with the reason; one who sells it anyway loses the customer.
type wishRow struct {
	id     string
	topics []Topic
	when   func(s *Scenario) bool                      // whether this customer would say it; nil is always
	holds  func(s *Scenario, sol *sheet.Solution) bool // whether it is impossible here, by the core; nil is always
	says   []string                                    // how it is wished
	about  []string                                    // words of which one stands in a refusal
	reason string                                      // what the trainee should have said
	note   string                                      // what teaches it
}

func volts(s *Scenario, sol *sheet.Solution) float64 {
	if sol.Has(sheet.SystemVoltage) {
		return sol.Value(sheet.SystemVoltage)
	}
	v, _ := s.number("motor.voltage")
	return v
}

func manyVolts(s *Scenario, sol *sheet.Solution) bool { return volts(s, sol) > 13 }

func needs(id sheet.ID, more float64) func(*Scenario, *sheet.Solution) bool {
	return func(_ *Scenario, sol *sheet.Solution) bool { return sol.Has(id) && sol.Value(id) > more }
}

func salty(s *Scenario) bool { w := s.word("water.kind"); return w == "salt" || w == "brackish" }

func decked(s *Scenario) bool {
	b := boatOf(s.word("boat.hull"))
	return b != nil && b.deck == 100 || s.word("mount.place") == "bow"
}

var wishRows = []wishRow{
	{"hold by cable", []Topic{Mount, Electronics, Sale}, decked, nil,
		[]string{"And it must be a plain cable pedal that also keeps us on a spot by itself.", "I'd want the cable-steer kind, with that thing where it holds its own spot."},
		[]string{"cable"}, "a cable-steer motor cannot steer itself, so it cannot hold a spot: that takes electric steer", "foot-cable-or-electric"},
	{"off the starting battery", []Topic{Bank, Volts, Sale}, nil, nil,
		[]string{"I was going to run it off the starting battery, that's nearly new.", "The cranking battery's in there anyway, it can do both."},
		[]string{"starting", "starter", "cranking", "crank", "cranker", "start", "deep cycle"}, "a cranking battery is not made for deep discharge, and an empty one leaves the engine dead", "bank-chemistry"},
	{"flat out all day on one", []Topic{Bank, Sale}, nil, nil,
		[]string{"It has to go flat out the whole day on a single battery.", "One battery, full throttle, sunup to sundown: that's what I'm after."},
		[]string{"all day", "flat out", "full throttle", "whole day", "sundown", "one battery", "single"}, "full throttle empties one battery in an hour or two", "run-time"},
	{"a thirty-inch shaft", []Topic{Shaft, Sale}, nil, needs(sheet.ShaftNeed, unit.Inches(33).Metres()),
		[]string{"I want a short one, 30 inches, so it stows out of the way.", "A buddy has a 30-inch shaft he'd let go cheap, so that's the one."},
		[]string{"30", "thirty", "short", "shorter"}, "30 inches leaves the prop at the surface on this boat", "ventilation-and-cavitation"},
	{"lamp cord", []Topic{Wiring, Sale}, nil, needs(sheet.MotorCurrent, 29),
		[]string{"I've half a roll of 16-gauge left over, we'll use that up.", "There's some 16-gauge cord in the garage for the wiring."},
		[]string{"16", "sixteen", "cord", "thin", "roll", "left over"}, "16 gauge may not carry this current", "wire-gauge"},
	{"no breaker", []Topic{Wiring, Sale}, nil, nil,
		[]string{"And skip the breaker, I never had one and never needed it.", "No breaker, please, that's only one more thing to go wrong."},
		[]string{"breaker", "fuse", "protection"}, "without a breaker a chafed wire burns the boat", "breaker-rating"},
	{"old and new in series", []Topic{Bank}, func(s *Scenario) bool { v, ok := s.number("motor.voltage"); return ok && v > 13 }, nil,
		[]string{"I've one old flooded battery that's fine still, so just one new one to go with it.", "I'll keep my old battery and buy one lithium to go in series."},
		[]string{"mix", "mixing", "old", "same", "match", "matched", "identical", "alike"}, "batteries in series must be of one kind, size and age", "mixing-batteries"},
	{"twelve miles an hour", []Topic{Thrust, Sale}, nil, nil,
		[]string{"It should do a good 12 miles an hour when it gets late.", "I'd want to run home on it at 12 mph if the outboard quits."},
		[]string{"12", "twelve", "fast", "faster", "speed", "mph", "miles"}, "electric motors of this kind top out near 5 mph, whatever their thrust", "top-speed"},
	{"hold for swimmers", []Topic{Electronics, Mount, Sale}, decked, nil,
		[]string{"And it can hold us there while the kids swim round the boat.", "When we swim it'd keep the boat right there, with nobody aboard."},
		[]string{"swim", "swimming", "swimmers", "kids", "people", "anchor", "prop"}, "position hold starts the prop by itself: never with people in the water, never unattended", "people-in-the-water"},
	{"lithium in the frost", []Topic{Charger}, func(s *Scenario) bool { return s.word("battery.chemistry") == "lithium" }, nil,
		[]string{"They'll charge out in the shed all winter, it's well below freezing in there.", "I charge in an unheated shed, January as well, below freezing or not."},
		[]string{"freezing", "frost", "cold", "winter", "january", "shed", "warm"}, "lithium must not be charged below freezing", "charging-in-the-cold"},
	{"one clip for all", []Topic{Charger}, func(s *Scenario) bool { n, _ := s.number("battery.count"); return n > 1 }, nil,
		[]string{"I'd just clip a single 12-volt charger on the first one and let it fill the lot.", "One output will do, clipped to one battery, the others fill up through the link."},
		[]string{"one output", "single", "each", "every battery", "per battery", "outputs", "bank", "clip", "just one", "only one", "first one", "the first", "the lot", "link"}, "in a series bank every battery needs its own output", "charger-choice"},
	{"pedal with reverse", []Topic{Mount, Sale}, decked, nil,
		[]string{"I want the foot pedal, and it needs reverse.", "Foot pedal, and a proper reverse on it."},
		[]string{"reverse", "backward", "backwards"}, "pedal motors turn a full circle and run forward only; a tiller has reverse", "tiller-and-reverse"},
	{"freshwater motor in salt", []Topic{Water}, salty, nil,
		[]string{"The plain freshwater one is cheaper, that'll do if I hose it off.", "I'd take the freshwater kind and rinse it, and save the money."},
		[]string{"freshwater", "fresh", "salt", "saltwater", "corrode", "corrodes", "corrosion"}, "a freshwater motor corrodes in salt or brackish water, rinsed or not", "salt-water"},
	{"copper paint", []Topic{Water}, salty, nil,
		[]string{"I'm giving the lower unit a coat of copper bottom paint, so it'll last.", "I'll put copper paint on the lower unit, that keeps everything off it."},
		[]string{"copper", "paint"}, "copper on an aluminum lower unit makes it dissolve", "anodes-and-corrosion"},
	{"big one on the side", []Topic{Thrust, Mount}, func(s *Scenario) bool { return s.word("boat.hull") == "canoe" }, nil,
		[]string{"I'd clamp the strongest you have on the side, by my seat.", "Biggest one going, out on the side of it where I can reach."},
		[]string{"side", "tip", "capsize", "stern", "smallest", "small"}, "a heavy motor on its side tips a canoe", "mount-on-a-kayak"},
	{"tap one of the bank", []Topic{Volts, Electronics, Sale}, nil, manyVolts,
		[]string{"The fish finder can just tap one of the motor's batteries.", "And the fish finder gets its 12 volts off one of the motor batteries."},
		[]string{"tap", "fish finder", "fishfinder", "own battery", "separate", "finder", "one of"}, "nothing may be fed off one battery of a series bank", "electronics-supply"},
	{"all on one twelve", []Topic{Volts}, nil, manyVolts,
		[]string{"It has to run on one 12-volt battery, there's no room for more.", "One 12-volt battery, that's what fits and that's what I want."},
		[]string{"12", "twelve", "one", "single", "room"}, "that much thrust is not made for one 12-volt battery", "voltage-and-batteries"},
	{"hold in a gale", []Topic{Thrust, Electronics}, nil, func(_ *Scenario, sol *sheet.Solution) bool {
		return sol.Has(sheet.HoldWind) && sol.Value(sheet.HoldWind) < unit.MilesPerHour(34).MetresPerSecond()
	},
		[]string{"It must hold us when it blows 40, too.", "We don't go home for weather: it has to hold at 40 mph of wind."},
		[]string{"40", "forty", "wind", "blow", "blows", "gale", "weather", "hold"}, "no motor for this boat holds it in that wind: that is a day for the ramp", "hold-in-wind"},
	{"brochure weight", []Topic{Weight}, nil, nil,
		[]string{"The brochure's weight will do, surely?", "Can't we just go by what the brochure says the hull weighs?"},
		[]string{"brochure", "bare", "dry", "hull", "everything", "loaded", "counts"}, "the bare hull is half of it: people, engine, fuel, gear and batteries all count", "loaded-weight"},
}
