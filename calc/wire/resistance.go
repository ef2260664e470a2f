package wire

import (
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// Annealed copper of 100 % conductivity (International Annealed Copper Standard,
// as in NBS Handbook 100, 1966): 10.371 ohm circular mil per foot at 20 C, and
// its rise per kelvin from there.
const (
	copperMilFoot   = 10.371  // ohm cmil/ft at 20 C
	copperPerKelvin = 0.00393 // 1/K
	referenceC      = 20.0
)

// resistivity20 is the resistivity at 20 C, ohm m.
const resistivity20 = copperMilFoot * unit.SquareMetresPerCircularMil / unit.MetresPerFoot

// temperatureFactor is R(T)/R(20 C).
func temperatureFactor(t unit.Temperature) float64 {
	return 1 + copperPerKelvin*(t.Celsius()-referenceC)
}

// MilFoot is the K of the wire-area formula that belongs to a copper
// temperature, in ohm circular mil per foot: 10.371 at 20 C, 12.61 at 75 C.
func MilFoot(t unit.Temperature) float64 { return copperMilFoot * temperatureFactor(t) }

// Resistance of one conductor of a length at a copper temperature. Gauge 36 to
// 4/0; temperature -50 to 250 C; length 0 to 1000 m.
//
// Source: resistivity of NBS Handbook 100; R(T) = R20 (1 + 0.00393 (T - 20)).
func Resistance(g unit.Gauge, length unit.Length, t unit.Temperature) (unit.Resistance, error) {
	a, err := Area(g)
	if err != nil {
		return 0, err
	}
	if err := band.Within("copper temperature", "C", t.Celsius(), -50, 250); err != nil {
		return 0, err
	}
	if err := band.Within("wire length", "m", length.Metres(), 0, 1000); err != nil {
		return 0, err
	}
	return unit.Resistance(resistivity20 * temperatureFactor(t) * length.Metres() / a.SquareMetres()), nil
}

// Loop is the resistance out and back over a run measured one way.
func Loop(g unit.Gauge, oneWay unit.Length, t unit.Temperature) (unit.Resistance, error) {
	return Resistance(g, 2*oneWay, t)
}

// Hottest is where ConductorTemperature stops: past it no insulation is left.
const Hottest unit.Temperature = 250

// ConductorTemperature is how warm a conductor runs at a steady current: ambient
// + (rating - ambient) (I/ampacity)^2, since heat goes with the square of the
// current and leaves with the rise. At its ampacity the conductor stands at its
// insulation's rating, which is what an ampacity means. Beyond it the formula
// goes on to 250 C and stays there; the insulation does not.
//
// Source: heat balance on the ampacities of 33 CFR 183.425 Table 5 and its
// ambient temperatures.
func ConductorTemperature(i, ampacity unit.Current, insulation, ambient unit.Temperature) unit.Temperature {
	r := i.Amperes() / ampacity.Amperes()
	return unit.Temperature(math.Min(ambient.Celsius()+(insulation.Celsius()-ambient.Celsius())*r*r, Hottest.Celsius()))
}
