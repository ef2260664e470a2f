package fit

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
)

// The reach of the curves: winds to a near gale, throttles from a tenth up.
const (
	windMost  = unit.Speed(30 * unit.MPSPerMPH)
	windStep  = unit.Speed(2 * unit.MPSPerMPH)
	throttles = 10
)

// Curves draws how the thrust needed grows with the wind and how the hours of
// the bank chosen fall with the throttle, from the same sheet as the figures. A
// curve whose points cannot be computed is left out.
func (f *Fit) Curves() []answer.Curve {
	var out []answer.Curve
	add := func(c answer.Curve) {
		if len(c.Points) > 2 {
			out = append(out, c)
		}
	}
	need := answer.Curve{ID: "thrust-by-wind", Title: "Thrust needed against wind",
		X: answer.Axis{Label: "wind", Unit: "m/s"}, Y: answer.Axis{Label: "thrust needed", Unit: "N"}}
	for w := unit.Speed(0); w <= windMost*1.001; w += windStep {
		point(&need, f.Sol, sheet.WindSpeed, w.MetresPerSecond(), sheet.ThrustNeed)
	}
	add(need)
	if f.Sol.Has(sheet.BankCapacity) {
		hours := answer.Curve{ID: "hours-by-throttle", Title: "Hours against throttle",
			X: answer.Axis{Label: "throttle", Unit: "1"}, Y: answer.Axis{Label: "run time", Unit: "h"}}
		bank := f.withBank()
		for i := 1; i <= throttles; i++ {
			point(&hours, bank, sheet.UseThrottle, float64(i)/throttles, sheet.RuntimeCruise)
		}
		add(hours)
	}
	return out
}

// withBank solves the boat with the bank held as it was chosen, so that a lower
// throttle means longer hours and not a smaller bank.
func (f *Fit) withBank() *sheet.Solution {
	q := f.question
	q.Duty = nil
	q.Given = append(q.Given[:len(q.Given):len(q.Given)], sheet.Given{ID: sheet.BankCapacity, Value: band.Exactly(f.Sol.Value(sheet.BankCapacity)), Said: "the bank chosen"})
	q.Want = []sheet.ID{sheet.RuntimeCruise}
	return sheet.StandardBook().Solve(q)
}

// point adds the outcome of one cell moved.
func point(c *answer.Curve, sol *sheet.Solution, x sheet.ID, at float64, y sheet.ID) {
	if v, ok := sol.If(sheet.Given{ID: x, Value: band.Exactly(at)}, y)[y]; ok {
		c.Points = append(c.Points, [2]float64{at, v})
	}
}
