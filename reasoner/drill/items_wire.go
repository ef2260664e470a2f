package drill

import (
	"fmt"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
)

// Drop at full throttle: the target, with a hair of grace, and the limit (from
// memory of the trade: 5 and 10 percent).
const (
	goodDrop = 0.055
	mostDrop = 0.10
)

// thickerBy is how many sizes of cable over the need are no more than cautious:
// many shops keep one roll for all (common practice, no published source).
const thickerBy = 2

// stepsUp is how many sizes of boat cable lie from a gauge up to a thicker one.
func stepsUp(from, to float64) int {
	n := 0
	for _, g := range soldGauges {
		if g < from-0.5 && g > to-0.5 {
			n++
		}
	}
	return n
}

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
		case stepsUp(want, g) <= thickerBy:
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
