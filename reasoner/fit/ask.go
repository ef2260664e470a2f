package fit

import (
	"math"
	"slices"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
)

// A questionRow is one measure that a customer can be asked for, with the
// assumptions that it would replace.
type questionRow struct {
	slot     string
	cells    []string // assumed cells that the answer settles
	question string
}

var questionRows = []questionRow{
	{"mount.height", []string{"mount.height"}, "How far is it from the mounting surface straight down to the water?"},
	{"load.total", []string{"load.dry", "load.engine", "load.gear", "load.base-gear", "people.each", "load.total"}, "What does the boat weigh as it goes fishing, with people, fuel, batteries and gear?"},
	{"load.engine", []string{"load.engine"}, "What main engine does it carry: how many horsepower, or what weight?"},
	{"people.count", []string{"people.count"}, "How many people are aboard?"},
	{"boat.length", []string{"boat.length"}, "How long is the boat?"},
	{"boat.hull", []string{"boat.hull"}, "What kind of hull is it: jon, vee, deep vee, bass, bay, flats, pontoon, canoe, kayak, inflatable?"},
	{"wind.speed", []string{"wind.speed"}, "How much wind must it hold in?"},
	{"mount.kind", []string{"mount.kind"}, "Will it sit on a folding-arm mount or a compact pivot?"},
	{"mount.place", []string{"mount.place"}, "Will it go on the bow or on the transom?"},
	{"chop.height", []string{"chop.height"}, "How high are the waves on a usual day?"},
	{"wire.run", []string{"wire.run"}, "How long is the wire from the battery to the motor's plug, one way?"},
	{"use.hours", []string{"use.hours"}, "How many hours is a day on the water?"},
	{"use.throttle", []string{"use.throttle", "use.mean-current", "cruise.fraction"}, "How hard does it run for most of the day: a quarter, half, or full throttle?"},
	{"battery.capacity", []string{"battery.capacity"}, "How many amp-hours does the label of each battery give?"},
	{"battery.count", []string{"battery.count"}, "How many batteries are there?"},
	{"battery.layout", []string{"battery.layout"}, "Are the batteries linked in series or in parallel?"},
	{"battery.chemistry", []string{"battery.chemistry"}, "Are the batteries flooded lead-acid, AGM, gel or lithium?"},
	{"motor.voltage", []string{"motor.voltage", "motor.volts"}, "Is the motor 12, 24 or 36 volt?"},
	{"motor.thrust", []string{"motor.thrust", "motor.rating"}, "What thrust is the motor rated at?"},
	{"motor.current", []string{"motor.current"}, "What current does the motor's manual give at full throttle?"},
	{"wire.insulation", []string{"wire.insulation"}, "What temperature is printed on the wire's insulation?"},
	{"load.plate", []string{"load.plate"}, "What maximum weight does the capacity plate give?"},
	{"charge.hours", []string{"charge.hours"}, "How many hours are there to charge between trips?"},
}

// A deciderRow names the outputs that settle a topic: the question back is about
// these. A heavier output counts for more.
type deciderRow struct {
	topics []string
	out    sheet.ID
	weight float64
	ladder bool // a change of step counts, not a shift within it
}

var deciderRows = []deciderRow{
	{[]string{"fit", "thrust", "voltage", "hold"}, sheet.SystemVoltage, 4, true},
	{[]string{"fit", "thrust", "hold"}, sheet.ThrustClass, 3, true},
	{[]string{"fit", "shaft"}, sheet.ShaftClass, 2.5, true},
	{[]string{"voltage", "bank", "fit"}, sheet.BankCount, 1, true},
	{[]string{"bank"}, sheet.BankCapacity, 2, false},
	{[]string{"runtime"}, sheet.RuntimeCruise, 2, false},
	{[]string{"wire"}, sheet.WireGauge, 2, true},
	{[]string{"wire", "breaker"}, sheet.BreakerRating, 1, true},
	{[]string{"charger"}, sheet.ChargerCurrent, 1, false},
	{[]string{"charger"}, sheet.ChargeTime, 0.5, false},
	{[]string{"hold"}, sheet.HoldWind, 1, false},
	{[]string{"speed"}, sheet.SpeedTop, 1, false},
	{[]string{"capacity"}, sheet.LoadMargin, 1, false},
}

// worthAsking is the least relative move of a running figure that is worth a
// question (common practice: a fifth of the run time is not).
const worthAsking = 0.25

// wordShare lowers the pull of an assumed kind: the other kinds are less likely
// than the one taken, while a measure may lie anywhere in its range.
const wordShare = 0.6

// Ask finds the one measure whose answer would change the choice most, with the
// reason; nil when none would.
func (f *Fit) Ask() *answer.Ask {
	var outs []deciderRow
	var ids []sheet.ID
	for _, d := range deciderRows {
		if slices.ContainsFunc(d.topics, func(t string) bool { return slices.Contains(f.Topics, t) }) && f.restsOnTalk(d.out) && !f.beside(d.out) {
			outs = append(outs, d)
			ids = append(ids, d.out)
		}
	}
	if f.shortOfVolts() {
		return nil
	}
	if len(outs) == 0 {
		return f.askMissing()
	}
	moves := f.Sol.Moves(ids)
	best, bestScore := -1, 0.0
	var bestOut deciderRow
	var bestLow, bestHigh float64
	for q, row := range questionRows {
		if row.slot == "load.total" && !f.weighs() {
			continue
		}
		for _, m := range moves {
			if !slices.Contains(row.cells, m.ID.String()) {
				continue
			}
			for _, d := range outs {
				score, low, high := moved(f.Sol.Value(d.out), m, d)
				if len(m.Others) > 0 {
					score *= wordShare
				}
				if score*d.weight > bestScore*(1+1e-9) {
					best, bestScore, bestOut, bestLow, bestHigh = q, score*d.weight, d, low, high
				}
			}
		}
	}
	if best < 0 {
		return nil
	}
	row := questionRows[best]
	form := bestOut.out.Describe().Form
	return &answer.Ask{Slot: row.slot, Question: row.question,
		Why: "it moves the " + lower(bestOut.out.Describe().Label) + ": " + Range(bestLow, bestHigh, form, f.Sys)}
}

// weighs reports a topic that the loaded weight settles: under a plate it is the
// parts that count, without the hull.
func (f *Fit) weighs() bool {
	return len(f.Topics) != 1 || f.Topics[0] != "capacity"
}

// bearing are the words on which figures can be built: a hull kind has weights
// and areas, a case size a capacity. Other words, a way of steering or a kind of
// water, leave everything open.
var bearing = []sheet.ID{sheet.BoatHull, sheet.BatteryGroup}

// Rests reports what a known cell stands on: something said that carries a
// figure, and something assumed. The weather alone carries none: nobody who
// speaks of frost has told of a battery.
func (f *Fit) Rests(id sheet.ID) (said, assumed bool) {
	for _, st := range f.Sol.Chain(id) {
		switch st.Origin {
		case sheet.FromSaid, sheet.FromMeasured:
			said = said || !card.Unsaid(st.Said) && st.ID != sheet.AirTemp && (!st.ID.Describe().Word || slices.Contains(bearing, st.ID))
		case sheet.Assumed:
			assumed = true
		}
	}
	return said, assumed
}

func (f *Fit) restsOnTalk(id sheet.ID) bool {
	said, _ := f.Rests(id)
	return said
}

// moved scores one assumption's pull on one output, with the least and the most
// that the output can come to.
func moved(nominal float64, m sheet.Move, d deciderRow) (score, low, high float64) {
	low, high = nominal, nominal
	take := func(out sheet.Outputs) {
		if x, ok := out.Of(d.out); ok {
			low, high = math.Min(low, x), math.Max(high, x)
		}
	}
	take(m.Low)
	take(m.High)
	for _, o := range m.Others {
		take(o.Outputs)
	}
	span := (high - low) / math.Max(math.Abs(nominal), 1e-9)
	if d.ladder && high == low || !d.ladder && span < worthAsking {
		return 0, low, high
	}
	// A change of step counts by itself; how far it goes orders several.
	return 1 + math.Min(span, 1), low, high
}

// given reports a cell that was said, whether or not a figure rests on it.
func (f *Fit) given(id sheet.ID) bool {
	return slices.ContainsFunc(f.question.Given, func(g sheet.Given) bool { return g.ID == id })
}

// missingRows say what to ask when a topic could not be answered at all, the
// first that applies. Without a slot of the boat the boat itself is asked for.
var missingRows = []struct {
	topics   []string
	slot     string
	question string // instead of the slot's own
	why      string
}{
	{[]string{"fit"}, "boat.length", "What boat is it: what kind, how long, and how many go out in it?", "thrust, shaft and battery follow from the boat"},
	{[]string{"thrust", "voltage", "hold", "speed"}, "load.total", "", "thrust follows from the loaded weight"},
	{[]string{"shaft"}, "mount.height", "", "the shaft follows from the height of the mount"},
	{[]string{"capacity"}, "load.plate", "", "what is left follows from the plate"},
	{[]string{"runtime"}, "boat.hull", "What boat is it: what kind, and how long?", "the draw at a speed follows from the boat"},
	{[]string{"runtime", "bank", "wire", "breaker"}, "motor.thrust", "What motor is it: how many pounds of thrust, and how many volts?", "the current follows from the motor"},
	{[]string{"charger"}, "battery.capacity", "", "the charger follows from the battery"},
}

func (f *Fit) askMissing() *answer.Ask {
	for _, r := range missingRows {
		if !slices.ContainsFunc(r.topics, func(t string) bool { return slices.Contains(f.Topics, t) }) {
			continue
		}
		id, ok := CellOf(r.slot)
		if ok && f.given(id) || r.slot == "boat.hull" && !f.given(sheet.UseSpeed) {
			continue
		}
		question := r.question
		for _, q := range questionRows {
			if q.slot == r.slot && question == "" {
				question = q.question
			}
		}
		return &answer.Ask{Slot: r.slot, Question: question, Why: r.why}
	}
	return nil
}

// lower puts a label into a sentence.
func lower(s string) string {
	if s == "" {
		return s
	}
	return string(s[0]|0x20) + s[1:]
}
