package prop

import (
	"fmt"
	"math"
)

// Three quantities are called throttle, and mixing them is a factor of two:
//
//	dial     the position of the knob or pedal, 0 to 1
//	thrust   the share of full static thrust that it gives
//	current  the share of full current that it draws from the battery
//
// For a prop, thrust goes as the square of its speed, and the torque and with it
// the motor's own current as the thrust.

// Exponents of the dial for a continuously variable control (pulse-width
// modulated) on a motor with armature resistance. From memory: thrust about the
// 1.6th power of the dial, current at the battery about the 2.2th, 1.9 to 2.7
// between motors; controller losses are in the latter.
const (
	DialThrust      = 1.6
	DialCurrentLow  = 1.9
	DialCurrent     = 2.2
	DialCurrentHigh = 2.7
)

// FixedSteps are the shares of full thrust of the five speeds of a resistor
// switch. From memory.
var FixedSteps = [5]float64{0.25, 0.33, 0.45, 0.65, 1}

// VariableThrust is the share of thrust of a variable control at a dial
// position of 0 to 1.
func VariableThrust(dial float64) float64 { return math.Pow(unitInterval(dial), DialThrust) }

// VariableDial is the dial position for a share of thrust.
func VariableDial(thrust float64) float64 { return math.Pow(unitInterval(thrust), 1/DialThrust) }

// VariableCurrent is the share of full current of a variable control at a dial
// position, with the exponent for current (DialCurrent), idle draw not counted.
func VariableCurrent(dial, exponent float64) float64 {
	return math.Pow(unitInterval(dial), exponent)
}

// ModulatedShare is the share of full current that an ideal chopper draws for a
// share of thrust, its 1.5th power: the motor's current goes with the thrust and
// the duty with the motor's speed, the root of the thrust.
func ModulatedShare(thrust float64) float64 {
	t := unitInterval(thrust)
	return t * math.Sqrt(t)
}

// ResistorShare is the share of full current that a resistor switch draws for a
// share of thrust: the same share, for what the motor does not need is burnt in
// the resistor at the motor's own current.
func ResistorShare(thrust float64) float64 { return unitInterval(thrust) }

// FixedSpeed is the speed, 1 to 5, of a five-speed switch nearest to a dial
// position; there is nothing below the first.
func FixedSpeed(dial float64) int {
	return min(max(int(math.Floor(unitInterval(dial)*5+0.5)), 1), 5)
}

// FixedThrust is the share of thrust of a five-speed switch at a dial position.
func FixedThrust(dial float64) float64 {
	if dial <= 0 {
		return 0
	}
	return FixedSteps[FixedSpeed(dial)-1]
}

// FixedStepFor is the lowest of the five speeds that gives at least a share of
// thrust. It fails for a share above 1.
func FixedStepFor(thrust float64) (share float64, err error) {
	for _, s := range FixedSteps {
		if s >= thrust*(1-1e-9) {
			return s, nil
		}
	}
	return 0, fmt.Errorf("thrust of %.0f%% of full: more than the motor has", thrust*100)
}

func unitInterval(x float64) float64 { return min(max(x, 0), 1) }
