package cost_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/cost"
	"heronlake.example/ask/calc/unit"
	_ "heronlake.example/ask/tests/seeded"
	"pgregory.net/rapid"
)

// Invented prices: two cheap batteries against two dear ones, 50 days a year.
func ExampleYearly() {
	cheap := cost.Total(cost.Item{Each: unit.Dollars(120), Count: 2})
	dear := cost.Total(cost.Item{Each: unit.Dollars(450), Count: 2})
	a, _ := cost.Yearly(cheap, cost.Wear{Cycles: 200, MaxYears: 5}, 50)
	b, _ := cost.Yearly(dear, cost.Wear{Cycles: 3000, MaxYears: 10}, 50)
	fmt.Printf("$%.0f a year by cycles, $%.0f a year by age\n", a.Dollars(), b.Dollars())
	// Output: $60 a year by cycles, $90 a year by age
}

// A bank of 1,200 Wh used to half for 400 cycles gives 240 kWh in its life.
func ExamplePerKilowattHour() {
	kwh, _ := cost.PerKilowattHour(unit.Dollars(120), unit.WattHours(1200), 0.5, 400)
	cycle, _ := cost.PerCycle(unit.Dollars(120), 400)
	fmt.Printf("$%.2f a kWh, $%.2f a cycle\n", kwh.Dollars(), cycle.Dollars())
	// Output: $0.50 a kWh, $0.30 a cycle
}

func TestYearsEndByTheSooner(t *testing.T) {
	w := cost.Wear{Cycles: 400, MaxYears: 5}
	for _, row := range []struct{ cycles, want float64 }{{0, 5}, {40, 5}, {80, 5}, {100, 4}, {400, 1}} {
		if got, err := w.Years(row.cycles); err != nil || math.Abs(got-row.want) > 1e-12 {
			t.Errorf("%g cycles a year: %g years, %v; want %g", row.cycles, got, err, row.want)
		}
	}
	var out *band.OutsideError
	if _, err := w.Years(-1); !errors.As(err, &out) {
		t.Errorf("-1 cycle a year: %v, want a *band.OutsideError", err)
	}
	if _, err := cost.Yearly(100, cost.Wear{}, 10); !errors.As(err, &out) {
		t.Errorf("a battery without cycles: %v, want a *band.OutsideError", err)
	}
	if _, err := cost.PerCycle(100, 0); !errors.As(err, &out) {
		t.Errorf("no cycles: %v, want a *band.OutsideError", err)
	}
	if _, err := cost.PerKilowattHour(100, 0, 0.5, 400); !errors.As(err, &out) {
		t.Errorf("a bank without energy: %v, want a *band.OutsideError", err)
	}
}

func TestMoreUseNeverCostsLessAYear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := cost.Wear{Cycles: rapid.Float64Range(100, 5000).Draw(t, "cycles"), MaxYears: rapid.Float64Range(2, 12).Draw(t, "years")}
		price := unit.Dollars(rapid.Float64Range(50, 3000).Draw(t, "price"))
		n := rapid.Float64Range(0, 200).Draw(t, "a year")
		a, err1 := cost.Yearly(price, w, n)
		b, err2 := cost.Yearly(price, w, n+rapid.Float64Range(0, 100).Draw(t, "more"))
		if err1 != nil || err2 != nil || b < a-1e-9 {
			t.Fatalf("%g then %g dollars a year (%v, %v)", a.Dollars(), b.Dollars(), err1, err2)
		}
	})
}

func BenchmarkYearly(b *testing.B) {
	w := cost.Wear{Cycles: 400, MaxYears: 5}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := cost.Yearly(240, w, 40); err != nil {
			b.Fatal(err)
		}
	}
}
