package hull

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// A Waterplane is the area that a boat cuts out of the water's surface.
type Waterplane struct {
	Length, Beam unit.Length // of one hull, at the waterline
	Coefficient  float64     // area to length x beam, 0.5 to 1
	Hulls        float64     // 1, or 2 for tubes
}

// Area of the waterplane.
func (p Waterplane) Area() unit.Area {
	return unit.Area(p.Hulls * p.Coefficient * float64(p.Length) * float64(p.Beam))
}

// Inertia is the second moment of the waterplane's area about its middle, in
// m4, L^3 B C / (12 (3 - 2 C)). It is the exact integral for half-breadths
// y = (B/2) (1 - |2x/L|^n), whose coefficient is n / (n + 1): 1/12 for a
// rectangle, 1/30 for a parabola, 1/48 for a diamond (own derivation).
func (p Waterplane) Inertia() float64 {
	l, c := float64(p.Length), p.Coefficient
	return p.Hulls * l * l * l * float64(p.Beam) * c / (12 * (3 - 2*c))
}

// Sinkage is how far a boat settles bodily under a weight set over the middle of
// its waterplane: w / (rho A).
func (p Waterplane) Sinkage(w unit.Mass, rho unit.Density) unit.Length {
	return unit.Length(float64(w) / (float64(rho) * float64(p.Area())))
}

// EndSinkage is how far the boat goes down at a distance from the middle when
// the weight is set at that same distance: parallel sinkage and trim together,
// w / (rho A) + w d^2 / (rho I). The longitudinal metacentre is taken at its
// radius I / volume, the height of the weights left out: less than 2 % on boats
// so shallow. Holds for weights that change the waterplane little, up to a fifth
// of the boat's; distance from 0 to half the waterline length. A coefficient outside
// 0.5 to 1 gives a *band.OutsideError.
func (p Waterplane) EndSinkage(w unit.Mass, rho unit.Density, distance unit.Length) (unit.Length, error) {
	if err := band.Within("waterplane coefficient", "", p.Coefficient, 0.5, 1); err != nil {
		return 0, err
	}
	d := float64(distance)
	return p.Sinkage(w, rho) + unit.Length(float64(w)*d*d/(float64(rho)*p.Inertia())), nil
}
