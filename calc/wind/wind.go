// Package wind is the force of the wind on a small boat: what moving air presses
// with, and what a hull and the people in it offer to it from each side.
//
//	wind.go         pressure and force, both ways round
//	blendermann.go  coefficients of a hull by the angle of the wind
//	people.go       drag areas of people, console and top
//	beaufort.go     the Beaufort scale
//	anchorload.go   design loads for anchoring gear: an upper bound only
//
// Limits: steady wind on a boat that lies still; no waves, no heel, air at sea
// level and 15 degrees Celsius (cold dense air presses some 8 percent more at
// freezing). Blendermann's coefficients were measured on vessels larger than
// these; the speed boat, the tender and the fishing vessel are the nearest.
package wind

import (
	"math"

	"heronlake.example/ask/calc/unit"
)

// AirDensity is that of the standard atmosphere at sea level and 15 degrees
// Celsius, ISO 2533 (from memory; several public pages print 1.225).
const AirDensity = 1.225 // kg/m3

// Pressure is the dynamic pressure of a wind, q = rho V^2 / 2 (Bernoulli).
// The 0.00256 of ASCE 7, in pounds a square foot and miles an hour, is the same
// law with an air density of 0.0765 lb/ft3.
func Pressure(v unit.Speed) unit.Pressure {
	return unit.Pascals(0.5 * AirDensity * v.MetresPerSecond() * v.MetresPerSecond())
}

// Force is the drag of a wind on a drag area (area times coefficient), F = q Cd A.
func Force(v unit.Speed, dragArea unit.Area) unit.Force {
	return unit.Newtons(Pressure(v).Pascals() * dragArea.SquareMetres())
}

// SpeedFor is Force the other way round: the wind that presses a drag area with
// a force. A force or an area of nothing gives no speed.
func SpeedFor(f unit.Force, dragArea unit.Area) unit.Speed {
	if f <= 0 || dragArea <= 0 {
		return 0
	}
	return unit.MetresPerSecond(math.Sqrt(2 * f.Newtons() / (AirDensity * dragArea.SquareMetres())))
}

// GustAllowance is what gusts add to a steady force, the gust factor being on
// speed: F (g^2 - 1). A factor below one adds nothing.
func GustAllowance(steady unit.Force, gust float64) unit.Force {
	return steady * unit.Force(max(gust*gust-1, 0))
}

// YawAllowance is what swinging across the wind adds to a bow-on force, the
// factor being on force: F (y - 1). A factor below one adds nothing.
func YawAllowance(bowOn unit.Force, yaw float64) unit.Force {
	return bowOn * unit.Force(max(yaw-1, 0))
}
