package wind_test

import (
	"fmt"
	"testing"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/calc/wind"
)

// WMO Code 1100 as given in the definitions of GNU Units: force 4 is 6.688 m/s,
// force 3 is 9.717 mph.
func ExampleMeanSpeed() {
	fmt.Printf("%.3f m/s\n", wind.MeanSpeed(4).MetresPerSecond())
	fmt.Printf("%.3f mph\n", wind.MeanSpeed(3).MilesPerHour())
	// Output:
	// 6.688 m/s
	// 9.717 mph
}

// The same scale in knots, US Weather Service form. Whole knots leave gaps
// between the forces, in which the metric forces begin.
func TestBeaufortInKnots(t *testing.T) {
	knots := []struct{ low, high float64 }{
		{0, 1}, {1, 3}, {4, 6}, {7, 10}, {11, 16}, {17, 21}, {22, 27}, {28, 33}, {34, 40}, {41, 47}, {48, 55}, {56, 63},
	}
	for force, k := range knots {
		s := wind.Beaufort[force]
		if force > 0 {
			if low := s.Low.Knots(); low < knots[force-1].high-0.5 || low > k.low {
				t.Errorf("force %d begins at %.2f knots, between %g and %g was expected", force, low, knots[force-1].high, k.low)
			}
		}
		near(t, fmt.Sprintf("high of force %d in knots", force), s.High.Knots(), k.high, 0.7)
	}
}

// The formula's mean of each force lies within the force's own range.
func TestMeanLiesInItsForce(t *testing.T) {
	for _, s := range wind.Beaufort[1:] {
		m := wind.MeanSpeed(float64(s.Force))
		if got := wind.ForceOf(m); got != s.Force {
			t.Errorf("the mean of force %d, %.2f m/s, is taken for force %d", s.Force, float64(m), got)
		}
	}
}

func TestForceOf(t *testing.T) {
	for _, c := range []struct {
		mph   float64
		force int
	}{{0, 0}, {2, 1}, {5, 2}, {10, 3}, {15, 4}, {20, 5}, {28, 6}, {35, 7}, {80, 12}} {
		if got := wind.ForceOf(unit.MilesPerHour(c.mph)); got != c.force {
			t.Errorf("%g mph is force %d, want %d", c.mph, got, c.force)
		}
	}
}
