// Package prop is the propulsor: how much thrust a prop can make of a power,
// how thrust falls away as the boat gathers speed, how fast a boat goes, what a
// part of the throttle gives and costs, and what rating a pull asks for.
//
//	prop.go      momentum theory: thrust, power and ideal efficiency of a disk
//	way.go       thrust at speed; the speed where it meets the drag
//	throttle.go  dial, share of thrust, share of current: three different things
//	dcmotor.go   the permanent-magnet motor behind those shares
//	need.go      by weight, by force, reserve and rating
//
// Limits: an open prop without duct, deep enough to draw no air, at trolling
// speeds of 0 to about 3 m/s. Momentum theory gives an upper bound; what is lost
// on the way there goes into one efficiency, wire to ideal thrust power. Thrust
// is taken to fall in a straight line with speed, as the thrust coefficient of a
// fixed prop about does; a rating is a static pull.
package prop

import (
	"math"

	"heronlake.example/ask/calc/unit"
)

// FreshWater is the density of fresh water at 20 degrees Celsius, ITTC
// Recommended Procedure 7.5-02-01-03.
const FreshWater unit.Density = 998.2072

// DiskArea is the area swept by a prop of a diameter.
func DiskArea(diameter unit.Length) unit.Area {
	return unit.SquareMetres(math.Pi / 4 * diameter.Metres() * diameter.Metres())
}

// StaticThrust is the thrust that a power gives a disk in water at rest,
// T^3 = 2 rho A P^2 (actuator disk; any handbook of propulsion). With the power
// at the shaft it is the limit that no open prop exceeds; with the power times
// an efficiency it is an estimate. Nothing gives nothing.
func StaticThrust(rho unit.Density, disk unit.Area, p unit.Power) unit.Force {
	if p <= 0 || disk <= 0 {
		return 0
	}
	return unit.Newtons(math.Cbrt(2 * rho.KilogramsPerCubicMetre() * disk.SquareMetres() * p.Watts() * p.Watts()))
}

// StaticPower is the ideal power of a static thrust, P = T sqrt(T / (2 rho A)):
// StaticThrust the other way round.
func StaticPower(rho unit.Density, disk unit.Area, t unit.Force) unit.Power {
	if t <= 0 || disk <= 0 {
		return 0
	}
	n := t.Newtons()
	return unit.Watts(n * math.Sqrt(n/(2*rho.KilogramsPerCubicMetre()*disk.SquareMetres())))
}

// InducedSpeed is the speed of the water through the disk at rest,
// v = sqrt(T / (2 rho A)).
func InducedSpeed(rho unit.Density, disk unit.Area, t unit.Force) unit.Speed {
	if t <= 0 || disk <= 0 {
		return 0
	}
	return unit.MetresPerSecond(math.Sqrt(t.Newtons() / (2 * rho.KilogramsPerCubicMetre() * disk.SquareMetres())))
}

// Loading is the thrust loading coefficient of a disk under way,
// CT = T / (rho A V^2 / 2). The speed must be above nothing.
func Loading(rho unit.Density, disk unit.Area, t unit.Force, v unit.Speed) float64 {
	return t.Newtons() / (0.5 * rho.KilogramsPerCubicMetre() * disk.SquareMetres() * v.MetresPerSecond() * v.MetresPerSecond())
}

// IdealEfficiency is the share of a disk's power that moves the boat,
// 2 / (1 + sqrt(1 + CT)), for a loading coefficient of 0 or more.
func IdealEfficiency(loading float64) float64 {
	return 2 / (1 + math.Sqrt(1+max(loading, 0)))
}

// PowerUnderWay is the ideal power of a thrust at a speed: T V over the ideal
// efficiency, and the static power at rest.
func PowerUnderWay(rho unit.Density, disk unit.Area, t unit.Force, v unit.Speed) unit.Power {
	if v <= 0 {
		return StaticPower(rho, disk, t)
	}
	return unit.Watts(t.Newtons() * v.MetresPerSecond() / IdealEfficiency(Loading(rho, disk, t, v)))
}
