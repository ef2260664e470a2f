package hull

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/interp"
	"gonum.org/v1/gonum/optimize"

	"heronlake.example/ask/calc/unit"
	"pgregory.net/rapid"
)

// Second opinions from a general library of numerical methods.

// The closed form of the second moment against quadrature of the half-breadths
// that it was derived for.
func TestInertiaAgainstQuadrature(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l, b := rapid.Float64Range(2, 8).Draw(t, "length"), rapid.Float64Range(0.5, 2.5).Draw(t, "beam")
		c := rapid.Float64Range(0.5, 0.95).Draw(t, "coefficient")
		n := c / (1 - c)
		p := Waterplane{Length: unit.Metres(l), Beam: unit.Metres(b), Coefficient: c, Hulls: 1}
		breadth := func(x float64) float64 { return b * (1 - math.Pow(2*x/l, n)) }
		moment := 2 * quad.Fixed(func(x float64) float64 { return x * x * breadth(x) }, 0, l/2, 200, quad.Legendre{}, 0)
		area := 2 * quad.Fixed(breadth, 0, l/2, 200, quad.Legendre{}, 0)
		if math.Abs(moment-p.Inertia()) > 1e-5*moment || math.Abs(area-float64(p.Area())) > 1e-5*area {
			t.Fatalf("second moment %g, by quadrature %g; area %g, by quadrature %g", p.Inertia(), moment, p.Area(), area)
		}
	})
}

// Between the tests of one model the series is read straight.
func TestSeriesAgainstInterpolator(t *testing.T) {
	var line interp.PiecewiseLinear
	if err := line.Fit(seriesFn[:], models[20].residuary[:]); err != nil { // model 21, alone in its place
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		fn := rapid.Float64Range(0.125, 0.45).Draw(t, "fn")
		if got, want := SeriesResiduary(0.600, 5.10, fn), line.Predict(fn)/1000; math.Abs(got-want) > 1e-12 {
			t.Fatalf("at Fn %g: %g, by the library %g", fn, got, want)
		}
	})
}

// The speed at which a thrust that falls with speed meets the drag, by the
// library's minimiser of the squared surplus and by halving.
func TestCrossingAgainstMinimiser(t *testing.T) {
	b := jon16(unit.Kilograms(480))
	surplus := func(u float64) float64 {
		return 244.652*(1-u/3.1) - float64(b.Resistance(lake, unit.Speed(u)).Total())
	}
	low, high := 0.1, 3.1
	for high-low > 1e-12 {
		if mid := (low + high) / 2; surplus(mid) > 0 {
			low = mid
		} else {
			high = mid
		}
	}
	r, err := optimize.Minimize(optimize.Problem{Func: func(x []float64) float64 { s := surplus(x[0]); return s * s }}, []float64{1.5}, nil, &optimize.NelderMead{})
	if err != nil {
		t.Fatal(err)
	}
	if math.Abs(r.X[0]-low) > 1e-4 {
		t.Errorf("crossing at %.6f m/s, by the library %.6f", low, r.X[0])
	}
}
