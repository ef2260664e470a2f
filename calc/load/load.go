// Package load computes what a boat weighs as it goes fishing, and what its
// capacity plate allows.
//
//	load.go      parts of the loaded weight; fuel by density
//	outboard.go  weights of gasoline outboards by power
//	capacity.go  the plate: weight, persons and horsepower by 33 CFR 183
//
// Limits: the arithmetic of the plate is that of monohull boats under 20 ft
// with outboards, not of sailboats, canoes, kayaks, inflatables or pontoon
// boats, whose plates come from elsewhere or do not exist. Hull and permanently
// filled tanks are no part of what a plate counts. An electric motor and its
// batteries appear in no table of the regulation: they come out of the weight
// that the plate allows.
package load

import "heronlake.example/ask/calc/unit"

// Parts are the parts of a loaded weight.
type Parts struct {
	Hull      unit.Mass // dry, without engine
	Engine    unit.Mass // main engine with its controls and cranking battery
	Fuel      unit.Mass
	People    unit.Mass
	Gear      unit.Mass
	Batteries unit.Mass // of the electric motor
	Motor     unit.Mass // electric, with its mount
}

// Total is the sum of the parts.
func (p Parts) Total() unit.Mass {
	return p.Hull + p.Engine + p.Fuel + p.People + p.Gear + p.Batteries + p.Motor
}

// Aboard is what a capacity plate counts: everything but the hull. Set Fuel to
// that in portable tanks.
func (p Parts) Aboard() unit.Mass { return p.Total() - p.Hull }

// Person is the weight of one person where nobody says: 185 lb, the assumed
// average weight per person of 46 CFR 170.090(d) since 1 December 2011 (75 FR
// 78064).
const Person = unit.Mass(185 * unit.KilogramsPerPound)

// Gasoline is the weight of gasoline in boating practice, 6.1 lb per US gallon;
// the range of the fuel at 60 F is 6.0 to 6.3 (0.71 to 0.78 g/cm3 at 15 C).
const (
	Gasoline     = unit.Density(6.1 * kilogramsPerGallon)
	GasolineLow  = unit.Density(6.0 * kilogramsPerGallon)
	GasolineHigh = unit.Density(6.3 * kilogramsPerGallon)
	// Diesel at a specific gravity of 0.84 is 7.01 lb per US gallon.
	Diesel = unit.Density(840)
)

// kilogramsPerGallon is one pound per US gallon in kg/m3.
const kilogramsPerGallon = unit.KilogramsPerPound / unit.LitresPerUSGallon * 1000

// Fuel is the weight of a volume of fuel.
func Fuel(v unit.Volume, d unit.Density) unit.Mass {
	return unit.Mass(v.CubicMetres() * float64(d))
}
