// Package hull computes the resistance of a small boat's hull at trolling
// speed, and how far a weight in the bow brings the bow down.
//
// The resistance is the sum of three parts that are published each by itself:
// skin friction on the correlation line of the ITTC, raised for the hull's form
// (friction.go), wave-making interpolated in the Delft systematic series
// (series.go), and the drag of a transom under water by Holtrop and Mennen
// (transom.go). A main engine's leg left down adds a fourth. One measured speed
// replaces the guesswork (calibrate.go). holtrop.go holds the whole statistical
// method of Holtrop and Mennen: it sizes nothing here, but its worked example
// in print shows that the parts taken from it are written down right.
//
// Limits: speeds of 0.3 to 2.5 m/s through still, deep water; Froude numbers up
// to 0.45 by the series, beyond it the last slope is carried on. Round-bottomed
// yachts without a transom gave the series; small hard-chine boats are flatter,
// fuller and lighter for their length, so that the sum is good to about a third
// either way until a measured speed says better. Waves, shallow water (depth
// under about half the waterline length), marine growth and the wake of several
// hulls on each other are not in it. Holtrop and Mennen's own data exclude boats
// as short and flat as these: their formula is no model for them as a whole.
// Regressions of transom-stern craft before planing (Mercier and Savitsky 1973)
// begin at a volume Froude number of 1, above trolling speed, and are not used.
package hull

import (
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// The range of speed for which Resistance is meant.
const (
	LowestSpeed  = unit.Speed(0.3)
	HighestSpeed = unit.Speed(2.5)
)

// A Body is a boat's immersed hull.
type Body struct {
	Displacement unit.Mass   // of the whole boat, above 0
	Waterline    unit.Length // waterline length, above 0
	Beam         unit.Length // waterline beam of one hull, above 0
	Slenderness  float64     // waterline length / (volume of one hull)^(1/3)
	Prismatic    float64     // prismatic coefficient, 0 to 1
	Waterplane   float64     // waterplane coefficient, 0 to 1
	Wetted       unit.Area   // of all hulls together
	FormFactor   float64     // 1 + k on the friction line, at least 1
	Transom      unit.Area   // under water at rest, of all hulls; 0 for a pointed stern
	Leg          unit.Area   // drag area of a main engine's leg; 0 when tilted up
	Hulls        float64     // 1, or 2 for tubes
}

// Parts are the parts of a resistance.
type Parts struct {
	Friction, Residuary, Transom, Leg unit.Force
}

// Total is the sum of the parts.
func (p Parts) Total() unit.Force { return p.Friction + p.Residuary + p.Transom + p.Leg }

// Resistance is the resistance of the body at a speed through the water. Below
// LowestSpeed and above HighestSpeed it goes on smoothly, so that a root can be
// bracketed; whoever shows such a value says that the model does not reach it.
// A negative speed resists like a positive one.
func (b *Body) Resistance(w Water, u unit.Speed) Parts {
	c := b.Curve(w)
	return c.At(u)
}

// A Curve is the resistance of one body in one water, made ready for many
// speeds.
type Curve struct {
	pressure float64 // dynamic pressure by the square of the speed
	reynolds float64 // Reynolds number by speed
	froude   float64 // Froude number by speed
	wetted   float64 // wetted surface x form factor
	weight   float64
	leg      float64
	series   seriesPlace

	transom, transomFroude float64 // area, and Froude number on it by speed
}

// Curve makes the body's resistance ready for many speeds.
func (b *Body) Curve(w Water) Curve {
	l := float64(b.Waterline)
	c := Curve{
		pressure: 0.5 * float64(w.Density),
		reynolds: l / float64(w.Viscosity),
		froude:   1 / math.Sqrt(unit.StandardGravity*l),
		wetted:   float64(b.Wetted) * b.FormFactor,
		weight:   float64(b.Displacement) * unit.StandardGravity,
		leg:      float64(b.Leg),
		series:   inSeries(b.Prismatic, b.Slenderness),
	}
	if a := float64(b.Transom); a > 0 {
		c.transom, c.transomFroude = a, transomFroude(1, a, float64(b.Beam)*b.Hulls, b.Waterplane)
	}
	return c
}

// At is the resistance at a speed, as Body.Resistance has it.
func (c *Curve) At(u unit.Speed) Parts {
	v := math.Abs(float64(u))
	if v == 0 {
		return Parts{}
	}
	q := c.pressure * v * v
	return Parts{
		Friction:  unit.Force(q * c.wetted * ITTC57(v*c.reynolds)),
		Residuary: unit.Force(c.series.residuary(v*c.froude) * c.weight),
		Transom:   unit.Force(q * c.transom * transomCoefficient(v*c.transomFroude)),
		Leg:       unit.Force(q * c.leg),
	}
}

// DragCoefficients are the bare numbers behind Curve.At: the friction coefficient,
// the residuary resistance by weight, and Holtrop and Mennen's c6 of the transom.
type DragCoefficients struct{ Friction, Residuary, Transom float64 }

// Coefficients at a speed; the zero value at rest.
func (c *Curve) Coefficients(u unit.Speed) DragCoefficients {
	v := math.Abs(float64(u))
	if v == 0 {
		return DragCoefficients{}
	}
	return DragCoefficients{ITTC57(v * c.reynolds), c.series.residuary(v * c.froude), transomCoefficient(v * c.transomFroude)}
}

// Froude is the Froude number of a speed on a waterline length.
func Froude(u unit.Speed, l unit.Length) float64 {
	return float64(u) / math.Sqrt(unit.StandardGravity*float64(l))
}

// Draught is the mean draught of one hull from its volume, L B T Cb = volume.
func Draught(displacement unit.Mass, w unit.Density, hulls float64, l, b unit.Length, block float64) unit.Length {
	return unit.Length(float64(displacement) / float64(w) / hulls / (float64(l) * float64(b) * block))
}

// Slenderness is the length-displacement ratio L / volume^(1/3) of one hull.
func Slenderness(displacement unit.Mass, w unit.Density, hulls float64, l unit.Length) float64 {
	return float64(l) / math.Cbrt(float64(displacement)/float64(w)/hulls)
}

// CheckSpeed returns a *band.OutsideError for a speed outside the range of the model.
func CheckSpeed(u unit.Speed) error {
	return band.Within("speed through the water", "m/s", float64(u), float64(LowestSpeed), float64(HighestSpeed))
}
