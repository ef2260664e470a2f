package drill

import (
	"fmt"
	"math"
	"strings"

	"heronlake.example/ask/calc/bank"
	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
)

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
	spare := m.sol.Value(sheet.BankSeries) * m.sol.Value(sheet.BankSpareStrings)
	least := math.Max(1, math.Round(volts/each))
	shown := unit.Number(want, 0)
	why := fmt.Sprintf("%s V takes %s of 12 V in series", unit.Number(volts, 0), shown)
	switch n := s.high; {
	case near(n, least) || (near(n, most) || near(n, spare)) && math.Mod(n, least) < 0.01:
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

// How much longer than there is a charger may take: a tenth is within what the
// estimate is worth, a quarter is a battery not quite full (common practice, no
// published source).
const (
	timely = 1.10
	late   = 1.25
)

func judgeCharger(m *marker) judged {
	s, _ := m.span("charger.current")
	want := m.sol.Value(sheet.ChargerCurrent)
	accepts := math.Inf(1)
	if m.sol.Has(sheet.ChargeAccept) {
		accepts = m.sol.Value(sheet.ChargeAccept)
	}
	shown := unit.Show(want, unit.Ampere, m.sys) + " each"
	there := m.sol.Value(sheet.ChargeHours)
	return ends(s, 5.1, want, func(x float64) judged {
		with := solve(m.s, []card.Fact{{Slot: "charger.current", Value: &x, Unit: "A", Said: "as named"}})
		takes := with.Value(sheet.ChargeTime)
		why := fmt.Sprintf("%s to each battery is full again in %s, and there are %s", unit.Show(x, unit.Ampere, m.sys),
			unit.Show(takes, unit.Hour, m.sys), unit.Show(there, unit.Hour, m.sys))
		switch {
		case x > accepts*1.02 && x > want*1.001:
			return judged{tooMuch, shown, fmt.Sprintf("the battery takes no more than %s", unit.Show(accepts, unit.Ampere, m.sys))}
		case !with.Has(sheet.ChargeTime) || there <= 0:
			return m.chargerBySize(x, want, shown)
		case x < want*0.99 && takes > there*late:
			return judged{tooLittle, shown, why + ": not done by the next trip"}
		case x < want*0.99 && takes > there*timely:
			return judged{acceptable, shown, why + ": a little short of full"}
		case x <= want*1.26:
			return judged{right, shown, why}
		}
		return judged{acceptable, shown, why + ": quicker than the hours ask for"}
	})
}

// chargerBySize judges a charger by its size alone, where no time is known.
func (m *marker) chargerBySize(x, want float64, shown string) judged {
	switch {
	case x < want*0.79:
		return judged{tooLittle, shown, "it is not done by the next trip"}
	case x < want*0.99:
		return judged{acceptable, shown, "a little slow"}
	case x <= want*1.26:
		return judged{right, shown, "it is done by the next trip"}
	}
	return judged{acceptable, shown, "quicker than the hours ask for"}
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
