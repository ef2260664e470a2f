package wire

import (
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// FormulaK is the constant of the wire-area formula, ohm circular mil per foot:
// copper at 29.3 C (ABYC E-11).
const FormulaK = 10.75

// CircularMilsFor is the area of copper for a current, a run one way and the
// volts that may be lost: CM = K I L / E with L out and back.
//
// Source: ABYC E-11, K = 10.75. Refuses a drop of 0 V or less.
func CircularMilsFor(i unit.Current, oneWay unit.Length, drop unit.Voltage) (unit.Area, error) {
	if err := band.Within("voltage drop allowed", "V", drop.Volts(), 1e-6, 1000); err != nil {
		return 0, err
	}
	return unit.CircularMils(FormulaK * i.Amperes() * 2 * oneWay.Feet() / drop.Volts()), nil
}

// DropByMils is the wire-area formula solved for the volts lost: E = K I L / CM.
// It takes every conductor to be at 29.3 C, so that a loaded one loses more.
func DropByMils(g unit.Gauge, i unit.Current, oneWay unit.Length) (unit.Voltage, error) {
	a, err := Area(g)
	if err != nil {
		return 0, err
	}
	return unit.Voltage(FormulaK * i.Amperes() * 2 * oneWay.Feet() / a.CircularMils()), nil
}

// Drop is the voltage over a resistance.
func Drop(i unit.Current, r unit.Resistance) unit.Voltage {
	return unit.Voltage(i.Amperes() * r.Ohms())
}

// ThrustLoss is the share of its thrust that a motor loses to a share of its
// volts, both 0 to 1: 1 - (1 - drop)^power. power is 2 for an ideal motor, whose
// speed follows the voltage, and about 1.7 with armature resistance (from
// memory; 1.5 to 2 is accepted).
func ThrustLoss(drop, power float64) (float64, error) {
	if err := band.Within("share of voltage lost", "", drop, 0, 1); err != nil {
		return 0, err
	}
	if err := band.Within("power of voltage that thrust follows", "", power, 1, 2.5); err != nil {
		return 0, err
	}
	return 1 - math.Pow(1-drop, power), nil
}
