package drill

import (
	"math"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
)

// Verdicts of an item.
const (
	right      = "right"
	acceptable = "acceptable"
	tooLittle  = "under"
	tooMuch    = "over"
	wrong      = "wrong"
	missing    = "missing"
)

// An itemRow is one thing that a trainee must name.
type itemRow struct {
	id    string
	label string
	how   string   // how it can be said, for who is at a loss
	cell  sheet.ID // the figure it is marked by; 0 for one marked by a choice or by words
	note  string   // what teaches it
	said  func(m *marker) string
	judge func(m *marker) judged
}

// judged is how an item came out.
type judged struct{ verdict, want, why string }

// batteryMore is why a motor of more volts than needed earns nothing: it sells a
// battery and its charger besides.
const batteryMore = "this sells a battery for nothing"

var itemRows = []itemRow{
	{"load", "loaded weight", "1,900 lb loaded", sheet.LoadTotal, "loaded-weight", saidOf("load.total", "load.dry"), judgeLoad},
	{"thrust", "thrust", "55 lb", sheet.ThrustClass, "thrust-by-weight", saidOf("motor.thrust"), judgeThrust},
	{"volts", "volts", "24 volt", sheet.SystemVoltage, "voltage-and-batteries", saidOf("motor.voltage"), judgeVolts},
	{"shaft", "shaft", "48 inch shaft", sheet.ShaftClass, "shaft-length", saidOf("motor.shaft"), judgeShaft},
	{"mount", "mount", "bow mount", 0, "mount-bow-or-transom", saidMount, judgeMount},
	{"control", "control", "foot pedal", 0, "steering-and-control", saidControl, judgeControl},
	{"count", "batteries", "two batteries", sheet.BankCount, "series-and-parallel", saidOf("battery.count"), judgeCount},
	{"capacity", "capacity", "group 31 AGM, or 100 Ah each", sheet.BankCapacity, "bank-size", saidOf("battery.capacity", "battery.group"), judgeCapacity},
	{"gauge", "wire", "6 gauge", sheet.WireGauge, "wire-gauge", saidOf("wire.gauge"), judgeGauge},
	{"breaker", "breaker", "60 amp breaker", sheet.BreakerRating, "breaker-rating", saidBreaker, judgeBreaker},
	{"charger", "charger", "10 amps each", sheet.ChargerCurrent, "charger-choice", saidOf("charger.current"), judgeCharger},
	{"outputs", "outputs", "two-bank charger", sheet.ChargerCurrent, "charger-choice#one-output-for-each-battery", saidOutputs, judgeOutputs},
	{"version", "motor's version", "saltwater version", 0, "salt-water", saidVersion, judgeVersion},
	{"anode", "anode", "zinc anode, or none", 0, "anodes-and-corrosion", saidAnode, judgeAnode},
	{"position-hold", "position hold", "with position hold, or no position hold", 0, "position-hold", saidWish("want.position-hold"), judgeHold},
	{"sonar", "sonar in the motor", "built-in sonar, or no sonar", 0, "sonar-in-the-motor", saidSonar, judgeSonar},
	{"supply", "supply of the fish finder", "its own battery", 0, "electronics-supply", saidSupply, judgeSupply},
	{"cause", "cause", "the plug is corroded", 0, "", saidCause, judgeCause},
}

func itemOf(id string) *itemRow {
	for i := range itemRows {
		if itemRows[i].id == id {
			return &itemRows[i]
		}
	}
	return &itemRow{id: id, label: id}
}

// marker holds what an item is judged by.
type marker struct {
	s     *Scenario
	h     *heard
	sys   unit.System
	full  answer.Answer
	sol   *sheet.Solution // of the facts
	own   *sheet.Solution // of the facts with the trainee's own motor, where that will do
	words []string        // all that was picked, as words
}

// span is what was said of a number: both ends the same for a plain one.
type span struct{ low, high float64 }

func spanOf(f card.Fact) (span, bool) {
	switch {
	case f.Low != nil && f.High != nil:
		return span{*f.Low, *f.High}, true
	case f.Value != nil:
		return span{*f.Value, *f.Value}, true
	case f.Low != nil:
		return span{*f.Low, *f.Low}, true
	case f.High != nil:
		return span{*f.High, *f.High}, true
	}
	return span{}, false
}

func (m *marker) span(slot string) (span, bool) {
	f, ok := m.h.card.Get(slot)
	if !ok {
		return span{}, false
	}
	return spanOf(f)
}

func (m *marker) show(id sheet.ID) string {
	if st := m.sol.Step(id); st != nil {
		return st.Show(m.sys)
	}
	return ""
}

func (m *marker) fill(text string) string { return m.sol.Fill(text, m.sys) }

// saidOf shows the first of the slots that was named, in the reader's units.
func saidOf(slots ...string) func(m *marker) string {
	return func(m *marker) string {
		for _, slot := range slots {
			if f, ok := m.h.card.Get(slot); ok {
				_, shown := fit.Describe(f, m.sys)
				switch slot {
				case "battery.group":
					shown = "group " + strings.TrimPrefix(shown, "group ")
				case "battery.capacity":
					shown += " each"
				}
				return shown
			}
		}
		return ""
	}
}

// ends judges both ends of a range. A range that holds the best pick is as good
// as its better end while it spans no more than a step of what is sold; it is
// never right when one end falls short.
func ends(s span, step, best float64, judge func(x float64) judged) judged {
	low, high := judge(s.low), judge(s.high)
	switch {
	case s.low == s.high || low.verdict == high.verdict:
		return high
	case s.high-s.low > step:
		high.verdict, high.why = wrong, "a range that wide is no pick: "+high.why
		return high
	case rank(low.verdict) > 2 && rank(high.verdict) > 2:
		return high // under at one end and over at the other
	case rank(low.verdict) > 2:
		high.verdict = worse(high.verdict, acceptable)
		high.why = "the lower end falls short: " + high.why
		return high
	case rank(high.verdict) > 2:
		low.verdict = worse(low.verdict, acceptable)
		low.why = "the upper end is too much: " + low.why
		return low
	case best < s.low || best > s.high:
		high.verdict, high.why = acceptable, low.why
		return high
	case low.verdict == right:
		return low
	}
	return high
}

func rank(verdict string) int {
	switch verdict {
	case right:
		return 1
	case acceptable:
		return 2
	}
	return 3
}

func worse(a, b string) string {
	if rank(a) > rank(b) {
		return a
	}
	return b
}

// Weights are estimates: a tenth either way is right, a fifth will do (common
// practice, no published source).
const (
	nearWeight = 0.10
	fairWeight = 0.20
)

func judgeLoad(m *marker) judged {
	s, ok := m.span("load.total")
	if !ok {
		s, _ = m.span("load.dry")
	}
	want := m.sol.Value(sheet.LoadTotal)
	parts := m.fill("hull {load.dry}, people, engine, fuel, gear, motor and batteries together")
	return ends(s, want*0.2, want, func(x float64) judged {
		off := x/want - 1
		switch {
		case math.Abs(off) <= nearWeight:
			return judged{right, m.show(sheet.LoadTotal), parts}
		case math.Abs(off) <= fairWeight:
			return judged{acceptable, m.show(sheet.LoadTotal), "within a fifth: " + parts}
		case off < 0:
			return judged{tooLittle, m.show(sheet.LoadTotal), "something was left out: " + parts}
		}
		return judged{tooMuch, m.show(sheet.LoadTotal), "counted too high: " + parts}
	})
}

// twice the need on the same batteries is still defensible: it costs a little
// weight and money, and thrust in hand is welcome on a bad day (common practice,
// no published source).
const twice = 2.0

// hairShort is how far below a computed need a size still does, as the need
// holds its reserve already (common practice, no published source).
const hairShort = 0.97

func judgeThrust(m *marker) judged {
	s, _ := m.span("motor.thrust")
	need, class := m.sol.Value(sheet.ThrustNeed), m.sol.Value(sheet.ThrustClass)
	want := m.show(sheet.ThrustClass)
	needs := m.fill("the need is {thrust.need}")
	return ends(s, unit.PoundForce(15).Newtons(), class, func(x float64) judged {
		switch {
		case x < 0.85*typical.MotorClasses[0].Rating.Newtons():
			return judged{tooLittle, want, needs + ", and no motor that small is made"}
		case x < need*hairShort:
			return judged{tooLittle, want, needs + ": it would not hold this boat"}
		case x < need && x < class*0.999:
			return judged{acceptable, want, needs + ": a hair under it"}
		case x <= class*1.001:
			return judged{right, want, needs + ", and this is the first class above it"}
		}
		sameVolts := typical.ClassVolts(unit.Newtons(x)) == typical.ClassVolts(unit.Newtons(class))
		switch up := nextClass(class); {
		case x <= math.Max(up, twice*m.inHand(need, class))*1.001 && sameVolts:
			return judged{acceptable, want, needs + ": more than it must be, on the same batteries"}
		case x <= up*1.001 && need > 0.95*class:
			return judged{acceptable, want, needs + ", close under its class: one up is defensible, with a battery more"}
		case !sameVolts:
			return judged{tooMuch, want, needs + ": " + batteryMore}
		}
		return judged{tooMuch, want, needs + ": more motor than the job asks for"}
	})
}

// openWind is from where a water is no sheltered one any more.
var openWind = unit.MilesPerHour(10)

// inHand is what "twice" is counted from: on sheltered water the need, where wind,
// waves or a stream may rise the class itself, as thrust in hand is worth having
// there. A canoe or kayak gains nothing by it (common practice, no published
// source).
func (m *marker) inHand(need, class float64) float64 {
	if hull := m.s.word("boat.hull"); hull == "canoe" || hull == "kayak" {
		return need
	}
	wind, _ := m.s.number("wind.speed")
	waves, _ := m.s.number("chop.height")
	stream, _ := m.s.number("current.speed")
	if wind >= openWind.MetresPerSecond()*0.999 || waves > 0 || stream > 0 {
		return class
	}
	return need
}

// nextClass is the class above a rating, the rating itself at the top.
func nextClass(rating float64) float64 {
	for _, c := range typical.MotorClasses {
		if c.Rating.Newtons() > rating*1.001 {
			return c.Rating.Newtons()
		}
	}
	return rating
}

// volts24To and volts36From are where classes of two voltages overlap (from
// memory: 24 V is sold to about 100 lb, 36 V from about 90).
var (
	volts24To   = unit.PoundForce(100)
	volts36From = unit.PoundForce(90)
)

func judgeVolts(m *marker) judged {
	s, _ := m.span("motor.voltage")
	want, class := m.sol.Value(sheet.SystemVoltage), m.sol.Value(sheet.ThrustClass)
	if t, ok := m.span("motor.thrust"); ok && rank(judgeThrust(m).verdict) < 3 {
		class = t.high
	}
	shown := m.show(sheet.SystemVoltage)
	why := m.fill("{thrust.class} of thrust is a " + shown + " class")
	overlap := class >= volts36From.Newtons()*0.999 && class <= volts24To.Newtons()*1.001
	switch x := s.high; {
	case s.low != s.high:
		return judged{wrong, shown, "one voltage, not two: " + why}
	case near(x, want):
		return judged{right, shown, why}
	case overlap && (near(x, 24) || near(x, 36)):
		return judged{acceptable, shown, why + "; around it both 24 and 36 V are sold"}
	case x < want:
		return judged{tooLittle, shown, why}
	}
	return judged{tooMuch, shown, why + ": a battery more for nothing"}
}

func near(x, y float64) bool { return math.Abs(x-y) < 0.5 }

func judgeShaft(m *marker) judged {
	s, _ := m.span("motor.shaft")
	need, class := m.sol.Value(sheet.ShaftNeed), m.sol.Value(sheet.ShaftClass)
	want, why := m.show(sheet.ShaftClass), m.fill("the need is {shaft.need}")
	return ends(s, unit.Inches(6.5).Metres(), class, func(x float64) judged {
		inches := func(n float64) float64 { return unit.Inches(n).Metres() }
		switch {
		case x < need-inches(1.5):
			return judged{tooLittle, want, why + ": the prop would draw air in any chop"}
		case x < need-inches(0.5):
			return judged{acceptable, want, why + ": tight, it will do in calm water"}
		case x <= class+inches(0.5):
			return judged{right, want, why} // half an inch is within the measuring
		case x <= class+inches(6.5) || x <= nextShaft(class)+inches(0.5):
			return judged{acceptable, want, why + ": one size longer works, and is in the way"}
		}
		return judged{tooMuch, want, why + ": far too long to stow and to steer"}
	})
}

func nextShaft(class float64) float64 {
	for _, in := range typical.ShaftLengths {
		if x := unit.Inches(in).Metres(); x > class+unit.Inches(0.5).Metres() {
			return x
		}
	}
	return class
}
