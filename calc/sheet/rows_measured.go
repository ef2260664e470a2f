package sheet

import (
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/hull"
	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// What a person can report of the boat's own speed.
var (
	SpeedMeasured = slot("boat.speed-measured", unit.Pace, "Speed measured on this boat")
	SpeedThrust   = slot("boat.speed-thrust", unit.Rating, "Rated thrust at the measured speed")
	SpeedThrottle = slot("boat.speed-throttle", unit.Fraction, "Dial at the measured speed")
)

// Inner cells of a measured speed.
var (
	SpeedDelivered = inner("boat.speed-delivered", unit.Thrust, "Thrust left at the measured speed")
	SpeedFree      = inner("boat.speed-free", unit.Pace, "Free-running speed of that motor")
	SpeedShare     = inner("boat.speed-share", unit.Fraction, "Share of full thrust at the measured speed")
	HullCertainty  = inner("hull.calibration", unit.Factor, "What a measured speed leaves open")
)

// measuredRows: one measured speed on a known thrust replaces the guess at the
// hull's drag.
var measuredRows = []Row{
	{
		Name: "hull drag by a measured speed", Gives: HullFactor, Needs: append([]ID{SpeedMeasured, SpeedDelivered, HullCertainty}, modelNeeds...),
		Formula: "{hull.calibration} x ({boat.speed-delivered} - {=leg drag}) / ({=friction} + {=wave drag} + {=transom drag}), at {boat.speed-measured}",
		Term:    dragTerm(SpeedMeasured),
		Source:  "resistance equals thrust at a steady speed", Basis: Model,
		Compute: func(v View) (float64, error) {
			u := v.Speed(SpeedMeasured)
			if err := hull.CheckSpeed(u); err != nil {
				return 0, &RangeError{Cell: SpeedMeasured, Value: float64(u), Low: float64(hull.LowestSpeed), High: float64(hull.HighestSpeed)}
			}
			f, err := hull.Calibration(v.Force(SpeedDelivered), modelAt(v, u))
			return v.Of(HullCertainty) * f, err
		},
	},
	{
		Name: "what a measured speed leaves open", Gives: HullCertainty, Source: "from memory: wind, load and reading on the day", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: band.Of(0.9, 1, 1.1), Why: "wind, load and reading on the day", Constant: true}, true
		},
	},
	{
		Name: "thrust at the measured speed, rated", Gives: SpeedThrust, Needs: []ID{SpeedMeasured}, Said: []ID{MotorThrust},
		Source: "as said: the motor on the boat", Basis: Said,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: band.Exactly(v.Of(MotorThrust)), Why: "measured with the motor named"}, v.Said(MotorThrust)
		},
	},
	{
		// Not the free-running speed of the motor to be bought, whose voltage
		// rests on this very drag.
		Name: "free-running speed of the motor measured with", Gives: SpeedFree, Needs: []ID{SpeedThrust}, Said: []ID{MotorVoltage},
		Source: "from memory of the trade", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			g := Guess{Value: typical.FreeSpeedOf(v.Force(SpeedThrust)), Why: "usual for such a motor", Constant: true}
			if v.Said(MotorVoltage) {
				g.Value = typical.FreeSpeed(v.Voltage(MotorVoltage))
			}
			return g, true
		},
	},
	{
		// One cell for both, so that its band is not counted twice.
		Name: "free-running speed of the motor on the boat", Gives: MotorFreeSpeed, Needs: []ID{SpeedMeasured, SpeedFree, SpeedThrust}, Said: []ID{MotorThrust},
		When: func(v View) bool {
			return v.Said(MotorThrust) && sameRating(v.Force(MotorThrust), v.Force(SpeedThrust))
		},
		Formula: "{boat.speed-free}", Source: "the same motor", Basis: Estimate,
		Compute: func(v View) (float64, error) { return v.Of(SpeedFree), nil },
	},
	{
		Name: "share of thrust at the measured speed", Gives: SpeedShare, Needs: []ID{SpeedThrottle},
		Formula: "{boat.speed-throttle}^1.6", Source: "variable control, from memory", Basis: Model,
		Compute: func(v View) (float64, error) { return prop.VariableThrust(v.Of(SpeedThrottle)), nil },
	},
	{
		Name: "thrust left at the measured speed and dial", Gives: SpeedDelivered, Needs: []ID{SpeedShare, SpeedMeasured, SpeedThrust, SpeedFree},
		Formula: "{boat.speed-thrust} x ({boat.speed-share} - square root of {boat.speed-share} x {boat.speed-measured} / {boat.speed-free})",
		Source:  "thrust falls straight to nothing at the free-running speed, from memory", Basis: Model,
		Compute: func(v View) (float64, error) { return delivered(v, v.Of(SpeedShare)) },
	},
	{
		Name: "thrust left at the measured speed", Gives: SpeedDelivered, Needs: []ID{SpeedMeasured, SpeedThrust, SpeedFree},
		Formula: "{boat.speed-thrust} x (1 - {boat.speed-measured} / {boat.speed-free})",
		Source:  "thrust falls straight to nothing at the free-running speed, from memory", Basis: Model,
		Compute: func(v View) (float64, error) { return delivered(v, 1) },
	},
}

func sameRating(a, b unit.Force) bool { return math.Abs(float64(a-b)) < 0.01*float64(a) }

// delivered is what the motor pulled with at the measured speed.
func delivered(v View, share float64) (float64, error) {
	f := prop.PartAvailable(v.Force(SpeedThrust), share, v.Speed(SpeedMeasured), v.Speed(SpeedFree))
	if f <= 0 {
		return 0, &RangeError{Cell: SpeedMeasured, Value: v.Of(SpeedMeasured), Text: "such a motor has no thrust left at that speed: check the speed, the thrust and the wind on the day"}
	}
	return float64(f), nil
}
