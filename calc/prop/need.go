package prop

import (
	"math"

	"heronlake.example/ask/calc/unit"
)

// Ratios of the rule of thumb: thrust per weight of the boat as it goes fishing.
// Common practice, no published source: 2 lb per 100 lb at the least, 2.5 in
// wind, current or weeds, 3 for pontoon boats and on large open lakes.
const (
	PlainRatio  = 0.020
	RaisedRatio = 0.025
	OpenRatio   = 0.030
)

// Reserve on a force balance, applied once. From memory.
const (
	ReserveLow  = 1.1
	Reserve     = 1.2
	ReserveHigh = 1.35
)

// ByWeight is the rule of thumb: the weight of the loaded boat times a ratio.
func ByWeight(loaded unit.Mass, ratio float64) unit.Force {
	return loaded.Weight() * unit.Force(ratio)
}

// Pull is a steady force with its allowances. Allowances that come
// independently of each other are combined by the root of the sum of their
// squares: gusts, swinging and waves seldom reach their worst together.
func Pull(steady unit.Force, allowances ...unit.Force) unit.Force {
	var sum float64
	for _, a := range allowances {
		sum += float64(a) * float64(a)
	}
	return steady + unit.Force(math.Sqrt(sum))
}

// ChopForce is the mean force of waves of a height on a hull of a beam,
// rho g H^2 B R^2 / 16, with R^2 the share of the waves' energy thrown back,
// 0.1 to 0.6 (drift force on a reflecting wall, after Maruo; values of R^2 from
// memory). Waves shorter than the boat.
func ChopForce(rho unit.Density, height, beam unit.Length, reflected float64) unit.Force {
	return unit.Newtons(rho.KilogramsPerCubicMetre() * unit.StandardGravity *
		height.Metres() * height.Metres() * beam.Metres() * reflected / 16)
}
