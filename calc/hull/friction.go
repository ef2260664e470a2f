package hull

import (
	"math"

	"heronlake.example/ask/calc/unit"
)

// lowestReynolds keeps the friction line away from its pole at Re = 100; a boat
// reaches it only when it all but stands.
const lowestReynolds = 1e4

// ITTC57 is the friction coefficient of the ITTC-1957 model-ship correlation
// line, C_F = 0.075 / (log10 Re - 2)^2 (International Towing Tank Conference,
// Madrid 1957; E. C. Tupper, Introduction to Naval Architecture, Table 8.3).
// It holds for turbulent flow, Re from about 1e5 up; below 1e4 the value at 1e4
// stands.
func ITTC57(re float64) float64 {
	d := math.Log10(max(re, lowestReynolds)) - 2
	return 0.075 / (d * d)
}

// Hughes is Hughes' friction line, 0.066 / (log10 Re - 2.03)^2: a second
// opinion without ITTC57's built-in form allowance.
func Hughes(re float64) float64 {
	d := math.Log10(max(re, lowestReynolds)) - 2.03
	return 0.066 / (d * d)
}

// Blasius is the friction coefficient of a laminar flat plate, 1.32824 / sqrt(Re):
// the least that a smooth short hull could have.
func Blasius(re float64) float64 { return 1.32824 / math.Sqrt(re) }

// WettedDennyMumford is the wetted surface of one hull by the formula of Denny
// and Mumford, S = 1.7 L T + volume / T, any consistent unit. It serves the flat
// hulls here, whose bottom is most of it, as well as the slender ones.
func WettedDennyMumford(l, draught unit.Length, volume unit.Volume) unit.Area {
	return unit.Area(1.7*float64(l)*float64(draught) + volume.CubicMetres()/float64(draught))
}

// WettedTaylor is the wetted surface by D. W. Taylor's formula in metric form,
// S = 2.6 sqrt(volume L): a second opinion for hulls of a ship's proportions.
func WettedTaylor(l unit.Length, volume unit.Volume) unit.Area {
	return unit.Area(2.6 * math.Sqrt(volume.CubicMetres()*float64(l)))
}

// WettedHaslar is the wetted surface by the Haslar formula,
// S = volume^(2/3) (3.3 + L / (2.09 volume^(1/3))).
func WettedHaslar(l unit.Length, volume unit.Volume) unit.Area {
	c := math.Cbrt(volume.CubicMetres())
	return unit.Area(c * c * (3.3 + float64(l)/(2.09*c)))
}

// HullSpeed is the speed at which a displacement hull's own wave is as long as
// its waterline: 1.34 sqrt(L in feet) knots (handbooks of naval architecture),
// a Froude number of 0.399.
func HullSpeed(waterline unit.Length) unit.Speed {
	return unit.Knots(1.34 * math.Sqrt(waterline.Feet()))
}
