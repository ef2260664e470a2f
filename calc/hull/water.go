package hull

import (
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// Water holds the two properties that resistance depends on.
type Water struct {
	Density   unit.Density
	Viscosity unit.Viscosity // kinematic
}

// Fresh gives the properties of fresh water at 0.01 to 30 C, straight between
// whole degrees of the table (water_data.go). Outside that range it returns a
// *band.OutsideError.
func Fresh(t unit.Temperature) (Water, error) {
	c := float64(t)
	if err := band.Within("fresh water's temperature", "C", c, 0.01, 30); err != nil {
		return Water{}, err
	}
	if c < 1 {
		return between(freshTable[0], freshTable[1], (c-0.01)/0.99), nil
	}
	return at(freshTable[1:], c-1), nil
}

// Sea gives the properties of standard sea water at 1 to 30 C, outside of which it
// returns a *band.OutsideError.
func Sea(t unit.Temperature) (Water, error) {
	c := float64(t)
	if err := band.Within("sea water's temperature", "C", c, 1, 30); err != nil {
		return Water{}, err
	}
	return at(seaTable[:], c-1), nil
}

// Brackish is half way between fresh and sea water of the same temperature, as
// in an estuary (from memory: its salt is anything between the two).
func Brackish(t unit.Temperature) (Water, error) {
	f, err := Fresh(t)
	if err != nil {
		return Water{}, err
	}
	s, err := Sea(t)
	if err != nil {
		return Water{}, err
	}
	return Water{(f.Density + s.Density) / 2, (f.Viscosity + s.Viscosity) / 2}, nil
}

// at reads a table of whole degrees, x degrees after its first row.
func at(table [][2]float64, x float64) Water {
	i := min(int(x), len(table)-2)
	return between(table[i], table[i+1], x-float64(i))
}

func between(a, b [2]float64, f float64) Water {
	rho := a[0] + f*(b[0]-a[0])
	mu := a[1] + f*(b[1]-a[1])
	return Water{unit.Density(rho), unit.Viscosity(mu / rho)}
}

// WaterOf picks by the word for the water: salt, brackish, or fresh for
// anything else.
func WaterOf(kind string, t unit.Temperature) (Water, error) {
	switch kind {
	case "salt":
		return Sea(t)
	case "brackish":
		return Brackish(t)
	}
	return Fresh(t)
}

// Reynolds is the Reynolds number of a speed on a length.
func Reynolds(u unit.Speed, l unit.Length, nu unit.Viscosity) float64 {
	return math.Abs(float64(u)) * float64(l) / float64(nu)
}
