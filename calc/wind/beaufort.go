package wind

import (
	"math"

	"heronlake.example/ask/calc/unit"
)

// A Scale is one force of the Beaufort scale.
type Scale struct {
	Force     int
	Name      string
	Low, High unit.Speed // at 10 m; the last force has no upper end and repeats its low
}

// Beaufort is the scale in metres a second.
//
// Source: WMO scale in the form of a Dutch public meteorological service.
var Beaufort = []Scale{
	{0, "calm", 0, 0.2},
	{1, "light air", 0.3, 1.5},
	{2, "light breeze", 1.6, 3.3},
	{3, "gentle breeze", 3.4, 5.4},
	{4, "moderate breeze", 5.5, 7.9},
	{5, "fresh breeze", 8.0, 10.7},
	{6, "strong breeze", 10.8, 13.8},
	{7, "near gale", 13.9, 17.1},
	{8, "gale", 17.2, 20.7},
	{9, "strong gale", 20.8, 24.4},
	{10, "storm", 24.5, 28.4},
	{11, "violent storm", 28.5, 32.6},
	{12, "hurricane", 32.7, 32.7},
}

// MeanSpeed is the mean wind of a Beaufort force at 10 m, v = 0.836 B^1.5 m/s
// (WMO Code 1100; Simpson 1906), for forces 0 to 12.
func MeanSpeed(force float64) unit.Speed {
	return unit.MetresPerSecond(0.836 * math.Pow(max(force, 0), 1.5))
}

// ForceOf is the force of a wind at 10 m by the ranges of Beaufort, a wind in
// the gap between two forces taking the nearer.
func ForceOf(v unit.Speed) int {
	for i := len(Beaufort) - 1; i > 0; i-- {
		if v >= (Beaufort[i-1].High+Beaufort[i].Low)/2 {
			return Beaufort[i].Force
		}
	}
	return 0
}
