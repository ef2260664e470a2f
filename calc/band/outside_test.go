package band_test

import (
	"errors"
	"math"
	"testing"

	"heronlake.example/ask/calc/band"
)

func TestWithin(t *testing.T) {
	for _, x := range []float64{1, 2, 3} {
		if err := band.Within("current", "A", x, 1, 3); err != nil {
			t.Errorf("%g: %v", x, err)
		}
	}
	for _, x := range []float64{0.999, 3.001, math.NaN(), math.Inf(1)} {
		var out *band.OutsideError
		if err := band.Within("current", "A", x, 1, 3); !errors.As(err, &out) || out.Low != 1 || out.High != 3 {
			t.Errorf("%g: %v, want a *band.OutsideError with the range", x, err)
		}
	}
	err := band.Within("battery capacity", "Ah", 0, 0.1, 1000)
	if want := "battery capacity of 0 Ah is outside 0.1 to 1000 Ah"; err == nil || err.Error() != want {
		t.Errorf("%v, want %q", err, want)
	}
	err = band.Within("Peukert exponent", "", 2, 1, 1.6)
	if want := "Peukert exponent of 2 is outside 1 to 1.6"; err == nil || err.Error() != want {
		t.Errorf("%v, want %q", err, want)
	}
}
