package reasoner

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb/stock"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
	"heronlake.example/ask/reasoner/match"
	"heronlake.example/ask/reasoner/meaning"
)

// A compareRow says how the two things named in a comparison are put on the
// card, what is told of each, and the sentence that decides.
type compareRow struct {
	over    string
	title   string
	fact    func(word string) (card.Fact, string, bool) // the fact, and the column's heading
	present func(base *fit.Fit) string                  // the word for what the boat has or would get
	figures []sheet.ID
	decide  func(base *fit.Fit, options []option) string
	// sameBank keeps the batteries as they are, so that the hours compare: each
	// option alone would be given a bank of its own for the same day.
	sameBank bool
}

type option struct {
	name string
	fit  *fit.Fit
}

var compareFigures = []sheet.ID{sheet.ThrustClass, sheet.BankCount, sheet.MotorCurrent, sheet.RuntimeCruise, sheet.HoldWind, sheet.BankWeight, sheet.WireGauge, sheet.BreakerRating}

var compareRows = []compareRow{
	{"motor.voltage", "Voltage", voltsFact, shownWord(sheet.SystemVoltage), compareFigures, decideVolts, false},
	{"motor.thrust", "Thrust", thrustFact, shownWord(sheet.ThrustClass), []sheet.ID{sheet.SystemVoltage, sheet.BankCount, sheet.MotorCurrent, sheet.RuntimeCruise, sheet.HoldWind, sheet.SpeedTop, sheet.BankWeight, sheet.WireGauge}, decideThrust, false},
	{"battery.chemistry", "Batteries", chemistryFact, cellWord(sheet.BatteryChemistry), []sheet.ID{sheet.BankCapacity, sheet.BankWeight, sheet.RuntimeFull, sheet.RuntimeCruise, sheet.ChargerCurrent}, decideChemistry, false},
	{"motor.speeds", "Speed control", wordFact("motor.speeds"), cellWord(sheet.MotorSpeeds), []sheet.ID{sheet.CruiseCurrent, sheet.RuntimeCruise, sheet.RuntimeFull, sheet.MotorCurrent}, decideSpeeds, true},
	{"motor.drive", "Motor kind", wordFact("motor.drive"), func(*fit.Fit) string { return "brushed" }, []sheet.ID{sheet.MotorCurrent, sheet.RuntimeCruise, sheet.RuntimeFull, sheet.WireGauge}, decideDrive, true},
}

// compare lays two or more named things side by side on this boat; nil where
// nothing is known of the boat or the things cannot be put on the card.
func (s *Session) compare(c card.Card, over string, words []string) *answer.Table {
	if len(words) == 0 || len(c.Facts) == 0 {
		return nil
	}
	for _, r := range compareRows {
		if r.over != over {
			continue
		}
		base := fit.Solve(c, everything, s.sys, nil)
		if len(words) == 1 { // against what the boat has or would get
			words = append([]string{r.present(base)}, words...)
		}
		if f, ok := c.Get(r.over); ok && f.Turn == c.Turn && f.Text != "" && !slices.Contains(words, f.Text) {
			words = append([]string{f.Text}, words...) // "flooded, AGM or lithium": the first of the list
		}
		if r.sameBank {
			c = withBank(c, base)
		}
		var options []option
		for _, w := range words {
			f, name, ok := r.fact(w)
			if !ok {
				return nil
			}
			options = append(options, option{name, fit.Solve(alone(c, f), everything, s.sys, nil)})
		}
		t := &answer.Table{ID: over, Title: r.title, Columns: []string{""}, Verdict: r.decide(base, options)}
		for _, o := range options {
			t.Columns = append(t.Columns, o.name)
		}
		for _, id := range r.figures {
			row := []string{id.Describe().Label}
			known := false
			for _, o := range options {
				cell := ""
				if st := o.fit.Sol.Step(id); st != nil && len(grounded(o.fit, []answer.Figure{{ID: id.String(), Asked: true}})) > 0 {
					cell, known = st.Show(s.sys), true
				}
				row = append(row, cell)
			}
			if known {
				t.Rows = append(t.Rows, row)
			}
		}
		if len(t.Rows) == 0 {
			return nil
		}
		s.price(t, c, r, words)
		return t
	}
	return nil
}

// alone is the card with one of the things compared. A thrust that is not built for
// the voltage in hand brings its own.
func alone(c card.Card, f card.Fact) card.Card {
	if v, said := c.Get("motor.voltage"); f.Slot == "motor.thrust" && said && v.Value != nil && f.Value != nil {
		if _, most := typical.RatingRange(unit.Voltage(*v.Value)); *f.Value > most.Newtons()*(1+1e-9) {
			c = c.Without("motor.voltage", "battery.count", "battery.layout")
		}
	}
	return c.With(f)
}

// price adds what each option costs complete on the shelf: the cheapest rig that
// fits, with a motor of the rating named where ratings are compared. Without a
// shelf, or where nothing fits either way, there is no such line.
func (s *Session) price(t *answer.Table, c card.Card, r compareRow, words []string) {
	if s.r.opts.Shelf == nil {
		return
	}
	shelf := s.r.opts.Shelf()
	if shelf == nil {
		return
	}
	label := "Complete, off the shelf"
	if shelf.Demo {
		label = "Complete (demo shelf, invented)"
	}
	row := []string{label}
	known := false
	for _, w := range words {
		f, _, _ := r.fact(w)
		cell := "nothing fits"
		if total, ok := s.cheapest(alone(c, f), *shelf, r.over); ok {
			cell, known = unit.Show(total, unit.Dollar, s.sys), true
		}
		row = append(row, cell)
	}
	if known {
		t.Rows = append(t.Rows, row)
	}
}

// cheapest is the total of the least dear rig that fits the card.
func (s *Session) cheapest(c card.Card, shelf stock.Shelf, over string) (dollars float64, ok bool) {
	if f, said := c.Get("motor.thrust"); said && over == "motor.thrust" && f.Value != nil {
		near := unit.PoundForce(2).Newtons() // ratings that differ by less are one on a shelf
		shelf.Motors = slices.DeleteFunc(slices.Clone(shelf.Motors), func(m stock.Motor) bool {
			return math.Abs(m.Thrust.Newtons()-*f.Value) > near
		})
	}
	sol := fit.Solve(c, []string{string(meaning.Fit)}, s.sys, nil).Sol
	for _, o := range match.Motors(match.Boat{Card: c, Sol: sol, Sys: s.sys, Try: newCounter(c).try}, &shelf) {
		if o.Fits() && (!ok || o.Rig.Total.Dollars() < dollars) {
			dollars, ok = o.Rig.Total.Dollars(), true
		}
	}
	return dollars, ok
}

func shownWord(id sheet.ID) func(*fit.Fit) string {
	return func(f *fit.Fit) string { return f.Show(id) }
}

func cellWord(id sheet.ID) func(*fit.Fit) string {
	return func(f *fit.Fit) string { return f.Sol.Word(id) }
}

// everything is the topics whose figures a comparison may show.
var everything = []string{"fit", "runtime", "charger", "hold"}

func leading(word string) (float64, bool) {
	end := 0
	for end < len(word) && (word[end] >= '0' && word[end] <= '9' || word[end] == '.') {
		end++
	}
	x, err := strconv.ParseFloat(word[:end], 64)
	return x, err == nil
}

func voltsFact(word string) (card.Fact, string, bool) {
	v, ok := leading(word)
	return card.Fact{Slot: "motor.voltage", Value: &v, Unit: "V", Said: word}, unit.Show(v, unit.Volt, unit.US), ok && v > 0
}

func thrustFact(word string) (card.Fact, string, bool) {
	lb, ok := leading(word)
	n := unit.PoundForce(lb).Newtons()
	return card.Fact{Slot: "motor.thrust", Value: &n, Unit: "N", Said: word}, unit.Show(n, unit.Thrust, unit.US), ok && lb > 0
}

func chemistryFact(word string) (card.Fact, string, bool) {
	w := strings.ToLower(word)
	switch {
	case strings.HasPrefix(w, "lead"):
		w = "flooded"
	case strings.HasPrefix(w, "li"):
		w = "lithium"
	}
	switch w {
	case "flooded", "agm", "gel", "lithium":
		return card.Fact{Slot: "battery.chemistry", Text: w, Said: word}, w, true
	}
	return card.Fact{}, "", false
}

func wordFact(slot string) func(string) (card.Fact, string, bool) {
	return func(word string) (card.Fact, string, bool) {
		return card.Fact{Slot: slot, Text: word, Said: word}, word, word != ""
	}
}

func decideVolts(base *fit.Fit, options []option) string {
	need := base.Sol.Value(sheet.ThrustNeed)
	if !base.Sol.Has(sheet.ThrustNeed) {
		return "The same power at twice the volts draws half the current: thinner wire, longer run, one battery more."
	}
	low, high := options[0], options[0]
	for _, o := range options[1:] {
		switch v := o.fit.Sol.Value(sheet.SystemVoltage); {
		case v < low.fit.Sol.Value(sheet.SystemVoltage):
			low = o
		case v > high.fit.Sol.Value(sheet.SystemVoltage):
			high = o
		}
	}
	if need > mostThrust(low.fit.Sol.Value(sheet.SystemVoltage)) {
		return low.name + " motors stop short of the " + base.Show(sheet.ThrustNeed) + " needed: take the higher voltage."
	}
	text := low.name + " is enough for the " + base.Show(sheet.ThrustNeed) + " needed; "
	cost := "and costs a battery."
	if more := high.fit.Sol.Value(sheet.BankCount) - low.fit.Sol.Value(sheet.BankCount); more > 1.5 {
		cost = "and costs " + strconv.FormatFloat(more, 'f', 0, 64) + " more batteries."
	}
	if long, short := high.fit.Sol.Value(sheet.RuntimeCruise), low.fit.Sol.Value(sheet.RuntimeCruise); long > 1.1*short && short > 0 {
		return text + high.name + " buys hours (" + high.fit.Show(sheet.RuntimeCruise) + " against " + low.fit.Show(sheet.RuntimeCruise) + ") and thinner wire, " + cost
	}
	return text + high.name + " buys thrust in hand and thinner wire, " + cost
}

// mostThrust is the largest usual class at a voltage (from memory; classes
// overlap in practice).
func mostThrust(volts float64) float64 {
	switch {
	case volts < 18:
		return unit.PoundForce(55).Newtons()
	case volts < 30:
		return unit.PoundForce(90).Newtons()
	}
	return unit.PoundForce(120).Newtons()
}

func decideThrust(base *fit.Fit, options []option) string {
	if !base.Sol.Has(sheet.ThrustNeed) {
		var each []string
		for _, o := range options {
			each = append(each, o.name+" takes "+o.fit.Show(sheet.SystemVoltage)+" and about "+o.fit.Show(sheet.MotorCurrent)+" at full throttle")
		}
		return strings.Join(each, "; ") + "."
	}
	need := base.Sol.Value(sheet.ThrustNeed)
	var best *option
	for i, o := range options {
		v := o.fit.Sol.Value(sheet.MotorThrust)
		if v >= need && (best == nil || v < best.fit.Sol.Value(sheet.MotorThrust)) {
			best = &options[i]
		}
	}
	most := &options[0]
	for i, o := range options {
		if o.fit.Sol.Value(sheet.MotorThrust) > most.fit.Sol.Value(sheet.MotorThrust) {
			most = &options[i]
		}
	}
	if best == nil {
		text := "None of them reaches the " + base.Show(sheet.ThrustNeed) + " needed"
		if v := most.fit.Sol.Value(sheet.MotorThrust); v >= base.Sol.Value(sheet.ThrustRule) && v >= base.Sol.Value(sheet.ThrustBalance) {
			text += "; " + most.name + " will just do: it covers the plain rule, " + base.Show(sheet.ThrustRule) + ", and the forces of wind and water"
		}
		return text + "."
	}
	text := best.name + " is enough for the " + base.Show(sheet.ThrustNeed) + " needed"
	if most != best {
		text += "; more buys quicker answers in wind"
		if best.fit.Sol.Has(sheet.SpeedTop) && most.fit.Sol.Has(sheet.SpeedTop) {
			text += " and little speed, " + most.fit.Show(sheet.SpeedTop) + " against " + best.fit.Show(sheet.SpeedTop)
		}
		return text + "."
	}
	for _, o := range options {
		switch v := o.fit.Sol.Value(sheet.MotorThrust); {
		case v >= need:
		case v >= base.Sol.Value(sheet.ThrustRule) && v >= base.Sol.Value(sheet.ThrustBalance):
			text += "; " + o.name + " will just do, by the plain rule and the forces of wind and water"
		default:
			text += "; " + o.name + " is not"
		}
	}
	return text + "."
}

func decideChemistry(_ *fit.Fit, options []option) string {
	lead, lithium := -1, -1
	for i, o := range options {
		if o.name == "lithium" {
			lithium = i
		} else if lead < 0 {
			lead = i
		}
	}
	if lithium < 0 || lead < 0 {
		return "Flooded is the cheapest and wants water and air; AGM is sealed, charges faster and costs more; gel wants its own charger."
	}
	text := "Lithium weighs less"
	if a, b := options[lithium].fit, options[lead].fit; a.Sol.Has(sheet.BankWeight) && b.Sol.Has(sheet.BankWeight) {
		text = "Lithium weighs " + a.Show(sheet.BankWeight) + " against " + b.Show(sheet.BankWeight)
	}
	return text + " and lasts more years, at a higher price today; lead does it where the boat carries the weight and trips are few."
}

func decideSpeeds(_ *fit.Fit, options []option) string {
	text := "Below full throttle the variable one runs far longer on the same battery"
	fixed, variable := "", ""
	for _, o := range options {
		switch o.fit.Sol.Word(sheet.MotorSpeeds) {
		case "fixed":
			fixed = o.fit.Show(sheet.RuntimeCruise)
		case "variable":
			variable = o.fit.Show(sheet.RuntimeCruise)
		}
	}
	if fixed != "" && variable != "" && fixed != variable {
		text += ", " + variable + " against " + fixed
	}
	return text + "; at full there is no difference."
}

// decideDrive goes by the length of the day, as the choice of drive does.
func decideDrive(base *fit.Fit, _ []option) string {
	text := "Brushless draws about a tenth less and runs quieter; "
	hours, said := base.Sol.Value(sheet.UseHours), base.SaidCell(sheet.UseHours)
	if said && hours > 7.5 || base.Sol.Word(sheet.UseStyle) == "guiding" {
		return text + "for days this long it earns its price, if the budget allows."
	}
	return text + "a few short trips do not earn its price back."
}
