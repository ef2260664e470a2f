package fit

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
)

// The reach of the curves: winds to a near gale, throttles from a tenth up.
var (
	windMost     = unit.MilesPerHour(30)
	windStep     = unit.MilesPerHour(2)
	throttleStep = 0.1
)

// Curves draws how the thrust needed grows with the wind and how the hours fall
// with the throttle, from the same sheet as the figures. A curve whose points
// cannot be computed is left out.
func (f *Fit) Curves() []answer.Curve {
	var out []answer.Curve
	need := answer.Curve{ID: "thrust-by-wind", Title: "Thrust needed against wind",
		X: answer.Axis{Label: "wind", Unit: "m/s"}, Y: answer.Axis{Label: "thrust needed", Unit: "N"}}
	for w := unit.Speed(0); w <= windMost*1.001; w += windStep {
		f.point(&need, sheet.WindSpeed, w.MetresPerSecond(), sheet.ThrustNeed)
	}
	hours := answer.Curve{ID: "hours-by-throttle", Title: "Hours against throttle",
		X: answer.Axis{Label: "throttle", Unit: "1"}, Y: answer.Axis{Label: "run time", Unit: "h"}}
	for i := 1; i <= 10; i++ {
		f.point(&hours, sheet.UseThrottle, float64(i)*throttleStep, sheet.RuntimeCruise)
	}
	for _, c := range []answer.Curve{need, hours} {
		if len(c.Points) > 2 {
			out = append(out, c)
		}
	}
	return out
}

// point solves the boat as fitted with one cell moved. The bank stays as it was:
// a curve of hours is that of one bank.
func (f *Fit) point(c *answer.Curve, x sheet.ID, at float64, y sheet.ID) {
	got := f.Sol.If(sheet.Given{ID: x, Value: band.Exactly(at)}, y)
	if v, ok := got[y]; ok {
		c.Points = append(c.Points, [2]float64{at, v})
	}
}
