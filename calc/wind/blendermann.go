package wind

import (
	"fmt"
	"math"

	"heronlake.example/ask/calc/unit"
)

// A Vessel holds Blendermann's wind coefficients of one kind of vessel.
type Vessel struct {
	Name  string
	Side  float64 // beam wind, on the lateral area
	Bow   float64 // head wind, on the frontal area
	Stern float64 // stern wind, on the frontal area
	Delta float64 // cross-force parameter, 0 to 1
	Kappa float64 // rolling moment factor
}

// Vessels are the kinds of vessel measured, alphabetical.
//
// Source: W. Blendermann, Parameter identification of wind loads on ships,
// J. Wind Eng. Ind. Aerodyn. 51 (1994) 339-351, as tabulated by T. I. Fossen,
// Handbook of Marine Craft Hydrodynamics and Motion Control.
var Vessels = []Vessel{
	{"car carrier", 0.95, 0.55, 0.60, 0.80, 1.2},
	{"cargo vessel, container on deck", 0.85, 0.55, 0.50, 0.40, 1.4},
	{"cargo vessel, loaded", 0.85, 0.65, 0.55, 0.40, 1.7},
	{"container ship, loaded", 0.90, 0.55, 0.55, 0.40, 1.4},
	{"destroyer", 0.85, 0.60, 0.65, 0.65, 1.1},
	{"diving support vessel", 0.90, 0.60, 0.80, 0.55, 1.7},
	{"drilling vessel", 1.00, 0.85, 0.925, 0.10, 1.7}, // mean of a range
	{"ferry", 0.90, 0.45, 0.50, 0.80, 1.1},
	{"fishing vessel", 0.95, 0.70, 0.70, 0.40, 1.1},
	{"LNG tanker", 0.70, 0.60, 0.65, 0.50, 1.1},
	{"offshore supply vessel", 0.90, 0.55, 0.80, 0.55, 1.2},
	{"passenger liner", 0.90, 0.40, 0.40, 0.80, 1.2},
	{"research vessel", 0.85, 0.55, 0.65, 0.60, 1.4},
	{"speed boat", 0.90, 0.55, 0.60, 0.60, 1.1},
	{"tanker, in ballast", 0.70, 0.75, 0.55, 0.40, 2.2},
	{"tanker, loaded", 0.70, 0.90, 0.55, 0.40, 3.1},
	{"tender", 0.85, 0.55, 0.55, 0.65, 1.1},
}

// VesselNamed finds a kind of vessel by its name in Vessels.
func VesselNamed(name string) (Vessel, error) {
	for _, v := range Vessels {
		if v.Name == name {
			return v, nil
		}
	}
	return Vessel{}, fmt.Errorf("no wind coefficients for a vessel called %q: take one of wind.Vessels", name)
}

// Angle is the direction a wind comes from, off the bow, stored in radians.
type Angle float64

// Degrees makes an Angle: 0 on the bow, 90 abeam, 180 astern.
func Degrees(x float64) Angle { return Angle(x * math.Pi / 180) }

// Coefficients are the longitudinal coefficient, on the frontal area and
// negative where the wind pushes the boat astern, and the transverse one, on the
// lateral area, for a wind from any angle off the bow.
//
//	CX = -CDl,AF cos g / den     CY = CDt sin g / den
//	den = 1 - delta/2 (1 - CDl/CDt) sin^2 2g     CDl = CDl,AF AF/AL
//
// Blendermann (1994) as given by Fossen. Both areas must be above nothing;
// otherwise both coefficients are 0.
func (v Vessel) Coefficients(g Angle, frontal, lateral unit.Area) (cx, cy float64) {
	if frontal <= 0 || lateral <= 0 {
		return 0, 0
	}
	sin, cos := math.Sincos(float64(g))
	head := v.Bow
	if cos < 0 {
		head = v.Stern
	}
	along := head * float64(frontal/lateral) // CDl, on the lateral area
	double := math.Sin(2 * float64(g))
	den := 1 - v.Delta/2*(1-along/v.Side)*double*double
	return -head * cos / den, v.Side * sin / den
}

// Loads are the forces on the boat for a wind from an angle: along, positive
// where it pushes the boat astern, and across.
func (v Vessel) Loads(w unit.Speed, g Angle, frontal, lateral unit.Area) (along, across unit.Force) {
	cx, cy := v.Coefficients(g, frontal, lateral)
	q := Pressure(w).Pascals()
	return unit.Newtons(-cx * q * frontal.SquareMetres()), unit.Newtons(cy * q * lateral.SquareMetres())
}

// YawFactor is the whole force of a wind from an angle, against the same wind
// on the bow. It is what the factor of YawAllowance stands for: a motor on the
// bow pulls the boat's head back into the wind against both parts.
func (v Vessel) YawFactor(g Angle, frontal, lateral unit.Area) float64 {
	along, across := v.Loads(1, g, frontal, lateral)
	ahead, _ := v.Loads(1, 0, frontal, lateral)
	if ahead <= 0 {
		return 1
	}
	return math.Hypot(float64(along), float64(across)) / float64(ahead)
}
