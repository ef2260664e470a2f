package prop

import (
	"math"

	"heronlake.example/ask/calc/unit"
)

// A DCMotor is a permanent-magnet direct-current motor: V = I R + k w and
// torque = k (I - I0), w in radians a second (any textbook of electric drives).
// A brushless motor with its electronics behaves the same at its terminals.
type DCMotor struct {
	Resistance unit.Resistance // of the armature
	Constant   float64         // k, V s/rad, the same as N m/A
	NoLoad     unit.Current    // I0, which turns the motor against its own friction
}

// DCMotorFrom finds the constants from a no-load speed in radians a second and a
// stall torque in newton metres at a voltage, own friction neglected.
func DCMotorFrom(v unit.Voltage, noLoad, stallTorque float64) DCMotor {
	k := v.Volts() / noLoad
	return DCMotor{Resistance: unit.Ohms(v.Volts() * k / stallTorque), Constant: k}
}

// Current drawn at a voltage and a speed in radians a second.
func (m DCMotor) Current(v unit.Voltage, w float64) unit.Current {
	return unit.Amperes((v.Volts() - m.Constant*w) / m.Resistance.Ohms())
}

// Torque in newton metres at a current.
func (m DCMotor) Torque(i unit.Current) float64 { return m.Constant * float64(i-m.NoLoad) }

// SeriesResistor is the resistor that holds a motor at a current and a speed in
// radians a second on a supply.
func (m DCMotor) SeriesResistor(supply unit.Voltage, i unit.Current, w float64) unit.Resistance {
	return unit.Ohms((supply.Volts()-m.Constant*w)/i.Amperes()) - m.Resistance
}

// Duty is the part of the time that an ideal chopper connects a supply to hold a
// motor at a current and a speed in radians a second. Its supply current is the
// duty times the motor's.
func (m DCMotor) Duty(supply unit.Voltage, i unit.Current, w float64) float64 {
	return (m.Constant*w + i.Amperes()*m.Resistance.Ohms()) / supply.Volts()
}

// PropShares are the shares of full thrust and of full battery current of a
// chopped motor that drives a prop, at a duty of 0 to 1. drop is the share of
// the voltage that the armature takes at full current, 0 to 1: with
// x the share of full speed, duty = drop x^2 + (1 - drop) x, thrust = x^2 and
// battery current = duty x^2. An armature without resistance gives the ideal,
// current as the 1.5th power of thrust. Own friction is neglected.
func PropShares(duty, drop float64) (thrust, current float64) {
	duty = unitInterval(duty)
	b := 1 - drop
	x := 2 * duty / (b + math.Sqrt(b*b+4*drop*duty))
	return x * x, duty * x * x
}
