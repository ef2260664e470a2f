package drill

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"heronlake.example/ask/calc/bank"
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
	{"sonar", "sonar in the motor", "built-in sonar, or no sonar", 0, "sonar-in-the-motor", saidWish("want.sonar-2d", "want.sonar-down", "want.sonar-side"), judgeSonar},
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
		case x < need:
			return judged{acceptable, want, needs + ": a hair under it"}
		case x <= class*1.001:
			return judged{right, want, needs + ", and this is the first class above it"}
		}
		sameVolts := typical.ClassVolts(unit.Newtons(x)) == typical.ClassVolts(unit.Newtons(class))
		switch up := nextClass(class); {
		case x <= math.Max(up, twice*need)*1.001 && sameVolts:
			return judged{acceptable, want, needs + ": more than it must be, on the same batteries"}
		case x <= up*1.001 && need > 0.95*class:
			return judged{acceptable, want, needs + ", close under its class: one up is defensible, with a battery more"}
		case !sameVolts:
			return judged{tooMuch, want, needs + ": " + batteryMore}
		}
		return judged{tooMuch, want, needs + ": more motor than the job asks for"}
	})
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

// ---- the bank

func judgeCount(m *marker) judged {
	s, _ := m.span("battery.count")
	volts := m.sol.Value(sheet.SystemVoltage)
	if !m.sol.Has(sheet.SystemVoltage) {
		volts, _ = m.s.number("motor.voltage")
	}
	if v, ok := m.span("motor.voltage"); ok && rank(judgeVolts(m).verdict) < 3 && m.sol.Has(sheet.ThrustClass) {
		volts = v.high // a defensible other voltage takes its own number
	}
	each := 12.0
	if v, ok := m.span("battery.voltage"); ok {
		each = v.high
	}
	want, most := math.Round(volts/12), m.sol.Value(sheet.BankCount)
	least := math.Max(1, math.Round(volts/each))
	shown := unit.Number(want, 0)
	why := fmt.Sprintf("%s V takes %s of 12 V in series", unit.Number(volts, 0), shown)
	switch n := s.high; {
	case near(n, least) || near(n, most) && math.Mod(n, least) < 0.01:
		return judged{right, shown, why}
	case n < least:
		return judged{tooLittle, shown, why}
	case math.Mod(n, least) > 0.01:
		return judged{wrong, shown, why + "; more come in whole sets, side by side"}
	case n <= 2*least:
		return judged{acceptable, shown, why + "; a second set is room to spare"}
	}
	return judged{tooMuch, shown, why}
}

// How the capacity named stands to the need, itself known to a half either way:
// a twentieth short is right, three tenths short is a short day; more than the
// second ratio is more weight and money than the day asks for (common practice,
// no published source). Below the smallest usual deep-cycle case nothing is
// oversold.
const (
	fullDay   = 0.95
	shortDay  = 0.70
	ampleDay  = 1.60
	heavyDay  = 2.40
	leastBank = 80 // Ah
)

func judgeCapacity(m *marker) judged {
	chem := m.s.word("battery.chemistry")
	if f, ok := m.h.card.Get("battery.chemistry"); ok && f.Text != "" {
		chem = f.Text
	}
	sol := m.own
	if chem != "" && chem != sol.Word(sheet.BatteryChemistry) {
		sol = solve(m.s, m.ownFacts(card.Fact{Slot: "battery.chemistry", Text: chem}), "battery.chemistry")
	}
	need := sol.Value(sheet.BankCapacity)
	if sol.Has(sheet.BankNeed) {
		need = sol.Value(sheet.BankNeed)
	}
	want := "about " + unit.Show(need, unit.AmpHour, m.sys) + " in the bank"
	each, ok := m.span("battery.capacity")
	if !ok {
		f, _ := m.h.card.Get("battery.group")
		each, ok = groupAmpHours(f, chem)
		if !ok {
			return judged{wrong, want, "that case size is not one that is known here"}
		}
	}
	volts := sol.Value(sheet.SystemVoltage)
	if !sol.Has(sheet.SystemVoltage) {
		volts, _ = m.s.number("motor.voltage")
	}
	strings := 1.0
	if n, ok := m.span("battery.count"); ok && volts > 0 {
		per := 12.0
		if v, ok := m.span("battery.voltage"); ok {
			per = v.high
		}
		strings = math.Max(1, math.Floor(n.high*per/volts+0.01))
	}
	why := fmt.Sprintf("the day takes %s of %s", unit.Show(need, unit.AmpHour, m.sys), chemistryWords(sol.Word(sheet.BatteryChemistry)))
	return ends(span{each.low * strings, each.high * strings}, 40, need, func(x float64) judged {
		switch r := x / need; {
		case r < shortDay:
			return judged{tooLittle, want, why + ": it is empty before the day is over"}
		case r < fullDay:
			return judged{acceptable, want, why + ": a somewhat short day"}
		case r <= ampleDay || x <= leastBank:
			return judged{right, want, why}
		case r <= heavyDay:
			return judged{acceptable, want, why + ": ample, at the price of its weight"}
		}
		return judged{tooMuch, want, why + ": twice and more what is needed"}
	})
}

func chemistryWords(chem string) string {
	switch chem {
	case "agm":
		return "AGM"
	case "":
		return "battery"
	}
	return chem
}

// groupAmpHours is the usual capacity of a case size.
func groupAmpHours(f card.Fact, chem string) (span, bool) {
	name := f.Text
	if name == "" && f.Value != nil {
		name = unit.Number(*f.Value, 0)
	}
	if chem == "lithium" {
		if g := typical.GroupBatteryOf(strings.ToUpper(name)); g != nil && g.LithiumA.Nominal > 0 {
			return span{g.LithiumA.Nominal, g.LithiumA.Nominal}, true
		}
	}
	g, ok := bank.GroupOf(name)
	if !ok || g.Capacity.Nominal <= 0 {
		return span{}, false
	}
	return span{g.Capacity.Nominal.AmpereHours(), g.Capacity.Nominal.AmpereHours()}, true
}

// ownFacts are the facts with the trainee's own motor, where that will do.
func (m *marker) ownFacts(more ...card.Fact) []card.Fact {
	var out []card.Fact
	if m.own != m.sol {
		for _, slot := range []string{"motor.thrust", "motor.voltage"} {
			if f, ok := m.h.card.Get(slot); ok {
				v := f
				if s, ok := spanOf(f); ok {
					v.Value, v.Low, v.High = &s.high, nil, nil
				}
				out = append(out, v)
			}
		}
	}
	return append(out, more...)
}

// solve solves the scenario with some facts put in place of others.
func solve(s *Scenario, put []card.Fact, without ...string) *sheet.Solution {
	for _, f := range put {
		without = append(without, f.Slot)
	}
	c := card.Card{Facts: append(s.Cards(without...), put...)}
	return fit.Solve(c, row(s.Topic).solve, unit.US, nil).Sol
}

// ---- wiring

// Drop at full throttle: the target, with a hair of grace, and the limit (from
// memory of the trade: 5 and 10 percent).
const (
	goodDrop = 0.055
	mostDrop = 0.10
)

func judgeGauge(m *marker) judged {
	s, _ := m.span("wire.gauge")
	want := m.own.Value(sheet.WireGauge)
	shown := unit.Show(want, unit.WireGauge, m.sys)
	amps := m.own.Value(sheet.MotorCurrent)
	return ends(s, 2.1, want, func(g float64) judged {
		with := solve(m.s, m.ownFacts(card.Fact{Slot: "wire.gauge", Value: &g, Unit: "AWG", Said: "as named"}))
		drop, carries := with.Value(sheet.WireDrop), with.Value(sheet.WireAmpacity)
		why := fmt.Sprintf("%s loses %s of the volts over this run", unit.Show(g, unit.WireGauge, m.sys), unit.Show(drop, unit.Fraction, m.sys))
		switch {
		case with.Has(sheet.WireAmpacity) && carries < amps || !with.Has(sheet.WireDrop):
			return judged{tooLittle, shown, fmt.Sprintf("%s may carry %s, and the motor draws %s: it heats", unit.Show(g, unit.WireGauge, m.sys), unit.Show(carries, unit.Ampere, m.sys), unit.Show(amps, unit.Ampere, m.sys))}
		case drop > mostDrop:
			return judged{tooLittle, shown, why + ": past the limit of 10%"}
		case drop > goodDrop:
			return judged{acceptable, shown, why + ": it works, and costs thrust"}
		case g >= want-0.5:
			return judged{right, shown, why}
		case g >= want-2.5:
			return judged{acceptable, shown, why + ": thicker than it must be, and no harm but the price"}
		}
		return judged{tooMuch, shown, why + ": copper for nothing"}
	})
}

func saidBreaker(m *marker) string {
	if m.h.breaker == nil {
		return ""
	}
	s, ok := spanOf(*m.h.breaker)
	if !ok {
		return ""
	}
	return fit.Range(s.low, s.high, unit.Ampere, m.sys) + map[bool]string{true: unit.Show(s.high, unit.Ampere, m.sys)}[fit.Range(s.low, s.high, unit.Ampere, m.sys) == ""]
}

func judgeBreaker(m *marker) judged {
	s, ok := spanOf(*m.h.breaker)
	if !ok {
		return judged{wrong, m.show(sheet.BreakerRating), "no rating was named"}
	}
	amps, want := m.own.Value(sheet.MotorCurrent), m.own.Value(sheet.BreakerRating)
	carries := m.own.Value(sheet.WireAmpacity)
	if g, ok := m.span("wire.gauge"); ok {
		v := g.high
		if with := solve(m.s, m.ownFacts(card.Fact{Slot: "wire.gauge", Value: &v, Unit: "AWG", Said: "as named"})); with.Has(sheet.WireAmpacity) {
			carries = with.Value(sheet.WireAmpacity)
		}
	}
	shown := unit.Show(want, unit.Ampere, m.sys)
	why := fmt.Sprintf("the motor draws %s, and the breaker is the next size above 1.05 times that", unit.Show(amps, unit.Ampere, m.sys))
	return ends(s, 10.5, want, func(x float64) judged {
		switch {
		case x < amps*0.999:
			return judged{tooLittle, shown, why + ": it trips at full throttle"}
		case x < amps*1.0499:
			return judged{acceptable, shown, why + ": this one is close, and may trip on a hot day"}
		case x <= want*1.001:
			return judged{right, shown, why}
		case carries > 0 && x > carries*1.001:
			return judged{tooMuch, shown, fmt.Sprintf("the wire may carry %s, and this lets it take more", unit.Show(carries, unit.Ampere, m.sys))}
		case x <= nextBreaker(want)*1.001:
			return judged{acceptable, shown, why + ": one size up, within what the wire may carry"}
		}
		return judged{tooMuch, shown, why + ": this one guards nothing"}
	})
}

func nextBreaker(rating float64) float64 {
	for _, b := range typical.Breakers {
		if b > rating*1.001 {
			return b
		}
	}
	return rating
}

// ---- charging

func judgeCharger(m *marker) judged {
	s, _ := m.span("charger.current")
	want := m.sol.Value(sheet.ChargerCurrent)
	accepts := math.Inf(1)
	if m.sol.Has(sheet.ChargeAccept) {
		accepts = m.sol.Value(sheet.ChargeAccept)
	}
	shown := unit.Show(want, unit.Ampere, m.sys) + " each"
	why := m.fill("{charger.current} to each battery is full again in {charge.time}")
	return ends(s, 5.1, want, func(x float64) judged {
		switch {
		case x > accepts*1.02 && x > want*1.001:
			return judged{tooMuch, shown, fmt.Sprintf("the battery takes no more than %s", unit.Show(accepts, unit.Ampere, m.sys))}
		case x < want*0.79:
			return judged{tooLittle, shown, why + ": this one is not done by the next trip"}
		case x < want*0.99:
			return judged{acceptable, shown, why + ": a little slow"}
		case x <= want*1.26:
			return judged{right, shown, why}
		}
		return judged{acceptable, shown, why + ": quicker than the hours ask for"}
	})
}

func saidOutputs(m *marker) string {
	switch {
	case m.h.outputs == each:
		return "one for each"
	case m.h.outputs > 0:
		return unit.Number(float64(m.h.outputs), 0)
	}
	return ""
}

func judgeOutputs(m *marker) judged {
	n, _ := m.s.number("battery.count")
	shown := unit.Number(n, 0)
	why := "every battery has an output of its own"
	switch got := float64(m.h.outputs); {
	case m.h.outputs == each || near(got, n):
		return judged{right, shown, why}
	case got < n:
		return judged{tooLittle, shown, why}
	}
	return judged{tooMuch, shown, why}
}

// ---- kinds

// choice is one of the answer's picks.
func (m *marker) choice(id string) (answer.Choice, bool) {
	i := slices.IndexFunc(m.full.Choices, func(c answer.Choice) bool { return c.ID == id })
	if i < 0 {
		return answer.Choice{}, false
	}
	c := m.full.Choices[i]
	c.Why = retold.Replace(c.Why)
	return c, true
}

// retold puts what an answer says to a customer into words about one.
var retold = strings.NewReplacer("as you said", "as the customer said", "you asked for", "the customer asked for")

// byChoice judges a kind: the pick itself is right, and what the answer says
// would do instead is acceptable.
func (m *marker) byChoice(id string, named []string) judged {
	c, ok := m.choice(id)
	if !ok {
		return judged{acceptable, "", "either will do here"}
	}
	pick, instead := corrected(c.Pick), corrected(c.Instead)
	switch {
	case says(pick, named):
		return judged{right, c.Pick, c.Why}
	case says(instead, named):
		return judged{acceptable, c.Pick, c.Why + "; " + c.Instead}
	}
	return judged{wrong, c.Pick, c.Why}
}

// mountKinds lead from what was named to the place that it means.
var mountKinds = map[string]string{"clamp": "transom", "bracket": "kayak", "folding-arm": "bow", "compact-pivot": "bow"}

func (m *marker) mountNamed() string {
	if f, ok := m.h.card.Get("mount.place"); ok {
		return f.Text
	}
	if f, ok := m.h.card.Get("mount.kind"); ok {
		return mountKinds[f.Text]
	}
	return ""
}

func saidMount(m *marker) string {
	return map[string]string{"bow": "bow mount", "transom": "transom mount", "kayak": "kayak bracket"}[m.mountNamed()]
}

func judgeMount(m *marker) judged {
	words := map[string][]string{"bow": {"bow mount"}, "transom": {"transom", "clamp"}, "kayak": {"bracket", "kayak bracket"}}[m.mountNamed()]
	if c, _ := m.choice("mount"); m.mountNamed() == "transom" && says(corrected(c.Pick), []string{"bracket"}) && m.s.word("boat.hull") == "kayak" {
		return judged{wrong, c.Pick, c.Why}
	}
	return m.byChoice("mount", words)
}

func (m *marker) controlNamed() (shown string, words []string) {
	f, ok := m.h.card.Get("motor.control")
	remote, wished := m.h.card.Get("want.remote")
	switch {
	case ok && f.Text == "tiller":
		return "tiller", []string{"tiller"}
	case wished && remote.Text == "true" || ok && f.Text == "remote":
		return "remote", []string{"remote", "handheld remote"}
	case ok && f.Text == "foot-electric":
		return "electric steer", []string{"electric steer"}
	case ok && says(m.words, []string{"cable"}):
		return "foot pedal, cable steer", []string{"cable steer", "cable"}
	case ok || says(m.words, []string{"pedal", "foot control", "foot steer"}):
		return "foot pedal", []string{"foot pedal"}
	case says(m.words, []string{"rudder"}):
		return "rudder lines", []string{"rudder lines"}
	}
	return "", nil
}

func saidControl(m *marker) string { s, _ := m.controlNamed(); return s }

func judgeControl(m *marker) judged {
	_, words := m.controlNamed()
	return m.byChoice("control", words)
}

func saidVersion(m *marker) string {
	switch {
	case says(m.words, []string{"saltwater", "salt water", "salt", "marine version", "salt water version"}) && !says(m.words, []string{"no salt", "not salt"}):
		return "saltwater version"
	case says(m.words, []string{"freshwater", "fresh water", "fresh", "plain", "standard", "ordinary", "regular"}):
		return "freshwater version"
	}
	return ""
}

func judgeVersion(m *marker) judged {
	salt := salty(m.s)
	c, _ := m.choice("water")
	named := saidVersion(m) == "saltwater version"
	switch {
	case named == salt:
		return judged{right, c.Pick, c.Why}
	case salt:
		return judged{tooLittle, c.Pick, c.Why}
	}
	return judged{tooMuch, c.Pick, c.Why + ": the dearer version buys nothing here"}
}

// anodeKinds are the metals of an anode.
var anodeKinds = []string{"zinc", "aluminum", "aluminium", "magnesium"}

func saidAnode(m *marker) string {
	for _, k := range anodeKinds {
		if says(m.words, []string{k}) {
			return k + " anode"
		}
	}
	switch {
	case says(m.words, []string{"no anode", "without anode", "without an anode", "anode not", "dont need an anode", "no need for an anode", "no zinc"}):
		return "no anode"
	case says(m.words, []string{"anode", "anodes"}):
		return "an anode"
	}
	return ""
}

func judgeAnode(m *marker) judged {
	named := saidAnode(m)
	if salty(m.s) {
		why := "zinc or aluminum alloy dissolves in place of the motor; magnesium is for fresh water only"
		switch named {
		case "no anode":
			return judged{tooLittle, "zinc or aluminum", why}
		case "magnesium anode":
			return judged{wrong, "zinc or aluminum", why}
		case "an anode":
			return judged{acceptable, "zinc or aluminum", why}
		}
		return judged{right, "zinc or aluminum", why}
	}
	why := "in fresh water little corrodes: no anode, or magnesium on a boat that stays in"
	switch named {
	case "no anode", "magnesium anode":
		return judged{right, "none, or magnesium", why}
	}
	return judged{acceptable, "none, or magnesium", why}
}

// saidWish shows whether a function was offered or left out.
func saidWish(slots ...string) func(m *marker) string {
	return func(m *marker) string {
		for _, slot := range slots {
			if f, ok := m.h.card.Get(slot); ok && f.Text != "" {
				return map[string]string{"true": "yes", "false": "no"}[f.Text]
			}
		}
		return ""
	}
}

func judgeHold(m *marker) judged {
	c, _ := m.choice("position-hold")
	yes := saidWish("want.position-hold")(m) == "yes"
	worth := says(corrected(c.Pick), []string{"with position hold", "worth its price"})
	asked := m.s.word("want.position-hold") == "true"
	switch {
	case yes == worth:
		return judged{right, c.Pick, c.Why}
	case yes:
		return judged{tooMuch, c.Pick, c.Why + ": money for a function that is not used"}
	case asked:
		return judged{tooLittle, c.Pick, c.Why}
	}
	return judged{acceptable, c.Pick, c.Why + "; " + c.Instead}
}

func judgeSonar(m *marker) judged {
	c, _ := m.choice("sonar")
	yes := saidWish("want.sonar-2d", "want.sonar-down", "want.sonar-side")(m) == "yes"
	wished := m.s.word("want.sonar-2d") == "true"
	switch {
	case yes == wished:
		return judged{right, c.Pick, c.Why}
	case yes:
		return judged{tooMuch, c.Pick, c.Why}
	}
	return judged{tooLittle, c.Pick, c.Why}
}

func saidSupply(m *marker) string {
	switch {
	case says(m.words, []string{"own battery", "separate battery", "small battery", "its own", "second battery", "dedicated battery", "another battery", "own supply", "separate supply", "separate"}):
		return "its own battery"
	case says(m.words, []string{"cranking battery", "starting battery", "house battery", "engine battery", "starter battery"}):
		return "the cranking battery"
	case says(m.words, []string{"motor battery", "motors battery", "trolling battery", "trolling batteries", "same battery", "motor bank", "tap"}):
		return "the motor's bank"
	}
	return ""
}

func judgeSupply(m *marker) judged {
	why := "volts sag with every burst of throttle, and a series bank goes out of balance"
	if saidSupply(m) == "the motor's bank" {
		return judged{wrong, "a battery of its own, or the cranking battery", why}
	}
	return judged{right, "a battery of its own, or the cranking battery", why}
}

func saidCause(m *marker) string {
	for _, list := range [][]string{m.s.Fault.causes, m.s.Fault.near} {
		for _, w := range list {
			if says(m.words, []string{w}) {
				return w
			}
		}
	}
	for i := range faultRows {
		for _, w := range faultRows[i].causes {
			if says(m.words, []string{w}) {
				return w
			}
		}
	}
	return ""
}

func judgeCause(m *marker) judged {
	f := m.s.Fault
	switch {
	case says(m.words, f.causes):
		return judged{right, f.cause, f.because}
	case says(m.words, f.near):
		return judged{acceptable, f.cause, "the right corner: " + f.because}
	}
	return judged{wrong, f.cause, f.because}
}
