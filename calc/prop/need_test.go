package prop_test

import (
	"fmt"
	"testing"

	_ "heronlake.example/ask/tests/seeded"
	"pgregory.net/rapid"

	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/unit"
)

// The rule of thumb, common practice: 2 lb for each 100 lb of the loaded boat.
func ExampleByWeight() {
	for _, pounds := range []float64{600, 1450, 2800} {
		fmt.Printf("%.0f lb: %.0f lb\n", pounds, prop.ByWeight(unit.Pounds(pounds), prop.PlainRatio).PoundForce())
	}
	// Output:
	// 600 lb: 12 lb
	// 1450 lb: 29 lb
	// 2800 lb: 56 lb
}

// Allowances of 3 and 4 on a steady pull of 10 make 15, not 17.
func ExamplePull() {
	fmt.Println(float64(prop.Pull(10, 3, 4)))
	// Output: 15
}

func TestPullLiesBetweenWorstAndSum(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := unit.Force(rapid.Float64Range(0, 200).Draw(t, "a"))
		b := unit.Force(rapid.Float64Range(0, 200).Draw(t, "b"))
		p := prop.Pull(50, a, b)
		if p < 50+max(a, b)-1e-9 || p > 50+a+b+1e-9 {
			t.Fatalf("%v and %v make %v", a, b, p)
		}
	})
}

// rho g H^2 B R^2 / 16 by hand: 0.3 m, 2 m, 0.3 in fresh water.
func TestChopForce(t *testing.T) {
	near(t, "chop force", prop.ChopForce(prop.FreshWater, unit.Metres(0.3), unit.Metres(2), 0.3).Newtons(), 998.2072*9.80665*0.09*2*0.3/16, 1e-9)
	near(t, "chop force, rounded", prop.ChopForce(prop.FreshWater, unit.Metres(0.3), unit.Metres(2), 0.3).Newtons(), 33.04, 0.005)
}

func TestMoreWeightNeverNeedsLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := unit.Mass(rapid.Float64Range(0, 3000).Draw(t, "weight"))
		more := w + unit.Mass(rapid.Float64Range(0, 500).Draw(t, "more"))
		if prop.ByWeight(more, prop.PlainRatio) < prop.ByWeight(w, prop.PlainRatio) {
			t.Fatal("more weight needs less thrust")
		}
	})
}
