// Package fit takes the facts of a conversation through the sheet of figures:
// what was said becomes given cells, the topics asked about become wanted ones,
// and the solution becomes figures, assumptions, the steps behind them, and the
// one question whose answer would change the choice most.
//
//	fit.go       the walk from a card to figures
//	givens.go    facts to given cells
//	wants.go     topics to wanted cells
//	ask.go       the question worth asking next
//	changed.go   what a turn moved
//	curves.go    thrust against wind, hours against throttle
//
// Limits: nothing is computed here beyond choosing and ordering; every number
// comes from calc.
package fit

import (
	"cmp"
	"slices"
	"strings"
	"sync"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
)

// Fit is a solved card.
type Fit struct {
	Sol    *sheet.Solution
	Topics []string
	Wanted []Wanted
	Sys    unit.System

	question sheet.Question
}

// Solve answers the topics from the facts. Cells of the topics that cannot be
// known are left out; see Problems for those that failed.
func Solve(c card.Card, topics []string, sys unit.System, ladders map[sheet.ID]sheet.Ladder) *Fit {
	given, duty := Givens(c)
	if g, ok := drawSaid(c, topics); ok {
		given = append(given, g)
	}
	wanted := Wants(topics)
	if slices.Contains(topics, "fault") && !tellsOf(c, "boat.", "load.", "motor.", "battery.", "wire.") {
		wanted = nil // hours and volts that belong to a complaint tell of no boat
	}
	q := sheet.Question{Given: given, Duty: duty, Ladders: ladders}
	for _, w := range wanted {
		q.Want = append(q.Want, w.ID)
	}
	return &Fit{Sol: sheet.StandardBook().Solve(q), Topics: topics, Wanted: wanted, Sys: sys, question: q}
}

// drawSaid is the current that a question of hours names without a throttle, a
// speed or a way of fishing: the time at that draw is asked for.
func drawSaid(c card.Card, topics []string) (sheet.Given, bool) {
	f, ok := c.Get("motor.current")
	if !ok || f.Value == nil || !slices.Contains(topics, "runtime") || slices.ContainsFunc(topics, func(t string) bool { return t == "fit" || t == "bank" || t == "hold" || t == "speed" }) {
		return sheet.Given{}, false
	}
	for _, slot := range []string{"use.throttle", "use.speed", "use.style", "motor.count"} {
		if _, told := c.Get(slot); told {
			return sheet.Given{}, false
		}
	}
	return sheet.Given{ID: sheet.CruiseCurrent, Value: band.Exactly(*f.Value), Said: f.Said}, true
}

// tellsOf reports whether a fact was told whose slot begins so.
func tellsOf(c card.Card, prefixes ...string) bool {
	return slices.ContainsFunc(c.Facts, func(f card.Fact) bool {
		return slices.ContainsFunc(prefixes, func(p string) bool { return strings.HasPrefix(f.Slot, p) })
	})
}

// Figures lists the wanted cells that became known, in the order of the topics.
func (f *Fit) Figures() []answer.Figure {
	var out []answer.Figure
	for _, w := range f.Wanted {
		if st := f.Sol.Step(w.ID); st != nil && w.ID.Describe().Figure && f.worth(w) {
			if f.twice(w.ID) {
				w.Asked, w.Decides = false, false
			}
			out = append(out, f.figure(st, w))
		}
	}
	return out
}

// twice reports a figure of the motor in use that says once more what stands
// there for full throttle.
func (f *Fit) twice(id sheet.ID) bool {
	if f.SaidCell(sheet.CruiseCurrent) && (id == sheet.RuntimeFull || id == sheet.MotorCurrent) {
		return true // the draw said is what is timed
	}
	full, ok := map[sheet.ID]sheet.ID{sheet.RuntimeCruise: sheet.RuntimeFull, sheet.CruiseCurrent: sheet.MotorCurrent}[id]
	return ok && f.SaidCell(sheet.UseThrottle) && f.Show(id) == f.Show(full)
}

// worth leaves out a figure that nothing said asks for: the hold against a
// current that nobody mentioned.
func (f *Fit) worth(w Wanted) bool {
	if f.beside(w.ID) {
		return false
	}
	if w.Only == 0 {
		return true
	}
	st := f.Sol.Step(w.Only)
	return st != nil && (st.Origin == sheet.FromSaid || st.Origin == sheet.FromMeasured)
}

// beside reports a figure about something else than what was named: the class to
// buy where it was asked what the motor in hand holds, the voltage of a motor
// that is too small, the charger to buy where one was timed, and what a wire
// does with a motor that nobody spoke of.
func (f *Fit) beside(id sheet.ID) bool {
	about := func(topics ...string) bool {
		return slices.ContainsFunc(topics, func(t string) bool { return slices.Contains(f.Topics, t) })
	}
	switch id {
	case sheet.RuntimeCruise, sheet.RuntimeFull, sheet.RangeCruise, sheet.BankCapacity, sheet.BankEnergy, sheet.CruiseCurrent, sheet.BankWeight:
		return f.shortOfVolts()
	case sheet.ThrustClass:
		return f.SaidCell(sheet.MotorThrust) && !about("fit", "thrust", "voltage", "cost")
	case sheet.SystemVoltage:
		return f.SaidCell(sheet.MotorThrust) && about("thrust") && !about("fit", "voltage", "bank") &&
			f.Sol.Has(sheet.ThrustClass) && f.Sol.Value(sheet.ThrustClass) > f.Sol.Value(sheet.MotorThrust)
	case sheet.ChargerCurrent:
		return f.SaidCell(sheet.ChargerSaid) && about("charger") && !about("fit")
	case sheet.WireGauge, sheet.WireDrop, sheet.WireVolts, sheet.WireThrustLoss, sheet.BreakerRating:
		return f.SaidCell(sheet.WireGaugeSaid) && !f.motorTold()
	}
	return false
}

// shortOfVolts reports batteries in hand that cannot make the voltage of the motor
// that was named: there is nothing to reckon on them.
func (f *Fit) shortOfVolts() bool {
	return f.SaidCell(sheet.BatteryCount) && f.SaidCell(sheet.MotorVoltage) && f.Sol.Has(sheet.BatteryVoltage) &&
		f.Sol.Value(sheet.BatteryCount)*f.Sol.Value(sheet.BatteryVoltage) < f.Sol.Value(sheet.MotorVoltage)-1
}

// motorTold reports whether something said of motor, boat or batteries stands
// behind the motor's current.
func (f *Fit) motorTold() bool {
	return slices.ContainsFunc(f.Sol.Chain(sheet.MotorCurrent), func(st *sheet.Step) bool {
		return st.Origin == sheet.FromSaid || st.Origin == sheet.FromMeasured
	})
}

func (f *Fit) figure(st *sheet.Step, w Wanted) answer.Figure {
	c := st.ID.Describe()
	fig := answer.Figure{ID: c.Name, Label: c.Label, Value: st.Value, Low: st.Band.Low, High: st.Band.High,
		Unit: c.Form.SIUnit(), Display: st.Show(f.Sys), Band: Band(st, f.Sys), Asked: w.Asked, Decides: w.Decides}
	switch st.Origin {
	case sheet.Computed:
		fig.Basis, fig.Source, fig.How = string(st.Row.Basis), st.Row.Source, f.Sol.Working(st, f.Sys)
	case sheet.Assumed, sheet.Constant:
		fig.Basis, fig.Source, fig.How = string(sheet.Estimate), st.Row.Source, st.Guess.Why
	default:
		fig.Basis, fig.How = string(sheet.Said), "as said: "+st.Said
		if card.Unsaid(st.Said) {
			fig.Basis, fig.How = string(sheet.Estimate), st.Said
		}
	}
	return fig
}

// Band writes the ends of a step, "" where they look the same as the value.
func Band(st *sheet.Step, sys unit.System) string {
	if !st.Band.Wide() {
		return ""
	}
	return Range(st.Band.Low, st.Band.High, st.ID.Describe().Form, sys)
}

// Range writes two ends with their unit once where both take the same.
func Range(low, high float64, form unit.Form, sys unit.System) string {
	ln, lu := unit.Split(low, form, sys)
	hn, hu := unit.Split(high, form, sys)
	if ln == hn && lu == hu {
		return ""
	}
	if form == unit.Rating {
		return ln + " to " + hn + " " + hu
	}
	if lu == hu {
		return ln + " to " + unit.Show(high, form, sys)
	}
	return unit.Show(low, form, sys) + " to " + unit.Show(high, form, sys)
}

// Assumed lists the assumptions that the figures rest on: those behind a figure
// that was asked for or decides before those behind the rest; among each, first
// what a customer could be asked about, in the order of the questions, then
// the others in the order in which the walk met them.
func (f *Fit) Assumed(shown []answer.Figure) []answer.Assumed {
	var out []answer.Assumed
	for _, flagged := range []bool{true, false} {
		var ids []sheet.ID
		for _, fig := range shown {
			if id, ok := sheet.Lookup(fig.ID); ok && (fig.Asked || fig.Decides) == flagged {
				ids = append(ids, id)
			}
		}
		part := f.assumedFor(ids, out)
		for i := range part {
			part[i].Decides = flagged
		}
		slices.SortStableFunc(part, func(x, y answer.Assumed) int { return cmp.Compare(askable(x.Slot), askable(y.Slot)) })
		out = append(out, part...)
	}
	return out
}

// assumedFor lists the assumptions behind some cells but for those listed before.
func (f *Fit) assumedFor(ids []sheet.ID, before []answer.Assumed) []answer.Assumed {
	var out []answer.Assumed
	for _, st := range f.Sol.Chain(ids...) {
		if st.Origin != sheet.Assumed || slices.ContainsFunc(before, func(a answer.Assumed) bool { return a.Slot == Public(st.ID) }) {
			continue
		}
		out = append(out, f.assumed(st))
	}
	return out
}

// askable is the place of the question that would replace an assumption; the
// end of the list where there is none.
func askable(slot string) int {
	for i, r := range questionRows {
		if slices.Contains(r.cells, slot) {
			return i
		}
	}
	return len(questionRows)
}

func (f *Fit) assumed(st *sheet.Step) answer.Assumed {
	c := st.ID.Describe()
	a := answer.Assumed{Slot: Public(st.ID), Label: c.Label, Why: st.Guess.Why, Source: st.Row.Source, Display: st.Show(f.Sys)}
	if c.Word {
		a.Text = st.Word
		return a
	}
	a.Value, a.Low, a.High, a.Unit = answer.Num(st.Value), answer.Num(st.Band.Low), answer.Num(st.Band.High), c.Form.SIUnit()
	if b := Band(st, f.Sys); b != "" {
		a.Display += " (" + b + ")"
	}
	return a
}

// Describe is how a fact is called and shown to a person: its label, and its
// value in the reader's units with the ends of a range.
func Describe(f card.Fact, sys unit.System) (label, display string) {
	id, ok := CellOf(f.Slot)
	if !ok {
		return f.Slot, f.Text
	}
	c := id.Describe()
	if c.Word {
		switch f.Text {
		case "true":
			return c.Label, "yes"
		case "false":
			return c.Label, "no"
		}
		return c.Label, f.Text
	}
	show := func(x *float64) string { return unit.Show(*x*factor(f.Slot), c.Form, sys) }
	switch {
	case f.Low != nil && f.High != nil:
		display = Range(*f.Low*factor(f.Slot), *f.High*factor(f.Slot), c.Form, sys)
		if display == "" {
			display = show(f.High)
		}
	case f.Value != nil:
		display = show(f.Value)
	case f.High != nil:
		display = "at most " + show(f.High)
	case f.Low != nil:
		display = "at least " + show(f.Low)
	}
	return c.Label, display
}

// saidAs is sheet.SaidFor the other way round.
var saidAs = sync.OnceValue(func() map[sheet.ID]string {
	m := map[sheet.ID]string{}
	for slot, cell := range sheet.SaidFor {
		m[cell] = slot
	}
	return m
})

// Public is the public name of a cell: the slot's where the cell holds what was
// said of a figure.
func Public(id sheet.ID) string {
	if slot, ok := saidAs()[id]; ok {
		return slot
	}
	return id.String()
}

// Steps lists the chain behind the figures, each step once, each after what it
// rests on.
func (f *Fit) Steps(ids ...sheet.ID) []answer.Step {
	chain, ranks := f.Sol.Chain(ids...), f.Sol.Ranks(ids...)
	out := make([]answer.Step, len(chain))
	for i, st := range chain {
		out[i] = f.step(st)
		out[i].Rank = rankNames[ranks[st.ID]]
	}
	return out
}

var rankNames = map[sheet.Rank]string{sheet.Beaten: "beaten", sheet.Behind: "behind"}

var origins = map[sheet.Origin]string{
	sheet.FromSaid: "said", sheet.FromMeasured: "measured", sheet.Computed: "computed",
	sheet.Assumed: "assumed", sheet.Constant: "constant",
}

func (f *Fit) step(st *sheet.Step) answer.Step {
	c := st.ID.Describe()
	s := answer.Step{ID: Public(st.ID), Label: c.Label, From: origins[st.Origin], Result: st.Show(f.Sys),
		Band: Band(st, f.Sys), Said: st.Said, Warnings: st.Warnings}
	if !c.Word {
		s.Value, s.Unit = answer.Num(st.Value), c.Form.SIUnit()
	}
	if card.Unsaid(st.Said) {
		s.From = origins[sheet.Assumed]
	}
	if st.Row != nil {
		s.Row, s.Source, s.Why = st.Row.Name, st.Row.Source, st.Guess.Why
		if st.Row.Compute != nil {
			s.Formula, s.Working, s.Comes = st.Symbols(), f.Sol.Working(st, f.Sys), f.Sol.Result(st, f.Sys)
			s.Passed = st.PassedOn()
		}
	}
	for _, in := range st.Inputs {
		s.Inputs = append(s.Inputs, Public(in))
	}
	return s
}

// Show writes a known cell in the reader's units, "" when it is unknown.
func (f *Fit) Show(id sheet.ID) string {
	if st := f.Sol.Step(id); st != nil {
		return st.Show(f.Sys)
	}
	return ""
}

// SaidCell reports whether a cell was said or measured.
func (f *Fit) SaidCell(id sheet.ID) bool {
	st := f.Sol.Step(id)
	return st != nil && (st.Origin == sheet.FromSaid || st.Origin == sheet.FromMeasured)
}
