package reasoner

import (
	"strconv"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
)

// A compareRow says how the two things named in a comparison are put on the
// card, what is told of each, and the sentence that decides.
type compareRow struct {
	over    string
	title   string
	fact    func(word string) (card.Fact, string, bool) // the fact, and the column's heading
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
	{"motor.voltage", "Voltage", voltsFact, compareFigures, decideVolts, false},
	{"motor.thrust", "Thrust", thrustFact, []sheet.ID{sheet.SystemVoltage, sheet.BankCount, sheet.MotorCurrent, sheet.RuntimeCruise, sheet.HoldWind, sheet.SpeedTop, sheet.BankWeight, sheet.WireGauge}, decideThrust, false},
	{"battery.chemistry", "Batteries", chemistryFact, []sheet.ID{sheet.BankCapacity, sheet.BankWeight, sheet.RuntimeFull, sheet.RuntimeCruise, sheet.ChargerCurrent}, decideChemistry, false},
	{"motor.speeds", "Speed control", wordFact("motor.speeds"), []sheet.ID{sheet.CruiseCurrent, sheet.RuntimeCruise, sheet.RuntimeFull, sheet.MotorCurrent}, decideSpeeds, true},
	{"motor.drive", "Motor kind", wordFact("motor.drive"), []sheet.ID{sheet.MotorCurrent, sheet.RuntimeCruise, sheet.RuntimeFull, sheet.WireGauge}, decideDrive, true},
}

// compare lays two or more named things side by side on this boat; nil where
// nothing is known of the boat or the things cannot be put on the card.
func (s *Session) compare(c card.Card, over string, words []string) *answer.Table {
	if len(words) < 2 || len(c.Facts) == 0 {
		return nil
	}
	for _, r := range compareRows {
		if r.over != over {
			continue
		}
		base := fit.Solve(c, everything, s.sys, nil)
		if r.sameBank {
			c = withBank(c, base)
		}
		var options []option
		for _, w := range words {
			f, name, ok := r.fact(w)
			if !ok {
				return nil
			}
			options = append(options, option{name, fit.Solve(c.With(f), everything, s.sys, nil)})
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
		return t
	}
	return nil
}

// withBank puts the batteries that a fit came to on the card, where none were
// named.
func withBank(c card.Card, f *fit.Fit) card.Card {
	for _, slot := range []string{"battery.capacity", "battery.group", "battery.reserve", "battery.count"} {
		if _, ok := c.Get(slot); ok {
			return c
		}
	}
	if !f.Sol.Has(sheet.BatteryEach) || !f.Sol.Has(sheet.BankCount) {
		return c
	}
	each, count := f.Sol.Value(sheet.BatteryEach), f.Sol.Value(sheet.BankCount)
	c = c.With(card.Fact{Slot: "battery.capacity", Value: &each, Unit: "Ah", Said: "the same batteries"})
	return c.With(card.Fact{Slot: "battery.count", Value: &count, Unit: "1", Said: "the same batteries"})
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
	low := options[0]
	for _, o := range options[1:] {
		if o.fit.Sol.Value(sheet.SystemVoltage) < low.fit.Sol.Value(sheet.SystemVoltage) {
			low = o
		}
	}
	if most := mostThrust(low.fit.Sol.Value(sheet.SystemVoltage)); need <= most {
		return low.name + " is enough for the " + base.Show(sheet.ThrustNeed) + " needed; more volts buy run time and thinner wire, and cost a battery."
	}
	return low.name + " motors stop short of the " + base.Show(sheet.ThrustNeed) + " needed: take the higher voltage."
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
		return ""
	}
	need := base.Sol.Value(sheet.ThrustNeed)
	var best *option
	for i, o := range options {
		v := o.fit.Sol.Value(sheet.MotorThrust)
		if v >= need && (best == nil || v < best.fit.Sol.Value(sheet.MotorThrust)) {
			best = &options[i]
		}
	}
	if best == nil {
		return "None of them reaches the " + base.Show(sheet.ThrustNeed) + " needed."
	}
	return best.name + " is enough for the " + base.Show(sheet.ThrustNeed) + " needed; more only buys speed of answer in wind."
}

func decideChemistry(_ *fit.Fit, options []option) string {
	return "Lithium weighs less and lasts more years, at a higher price today; lead does it where the boat carries the weight and trips are few."
}

func decideSpeeds(_ *fit.Fit, _ []option) string {
	return "Below full throttle the variable one runs far longer on the same battery; at full there is no difference."
}

func decideDrive(_ *fit.Fit, _ []option) string {
	return "Brushless draws about a tenth less and runs quieter; a few short trips do not earn its price back."
}
