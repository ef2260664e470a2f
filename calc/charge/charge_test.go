package charge_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/bank"
	"heronlake.example/ask/calc/charge"
	"heronlake.example/ask/calc/unit"
	_ "heronlake.example/ask/tests/seeded"
	"pgregory.net/rapid"
)

// The rule, with lead-acid's published return factor of 1.1 to 1.25: a battery of
// 90 Ah, half down, 9 h to the next trip, of which 3 are absorption.
func ExampleRefill_Current() {
	r := charge.Refill{Capacity: unit.AmpereHours(90), Depth: 0.5, Return: 1.2, Tail: unit.Hours(3)}
	i, _ := r.Current(unit.Hours(9))
	t, _ := r.Time(unit.Amperes(10))
	fmt.Printf("%.0f Ah to put in: %.0f A, or %.1f h at 10 A\n", r.Charge().AmpereHours(), i.Amperes(), t.Hours())
	// Output: 54 Ah to put in: 9 A, or 8.4 h at 10 A
}

func TestAmperesAndHoursAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := charge.Refill{
			Capacity: unit.AmpereHours(rapid.Float64Range(10, 300).Draw(t, "Ah")),
			Depth:    rapid.Float64Range(0.05, 1).Draw(t, "depth"),
			Return:   rapid.Float64Range(1, 1.3).Draw(t, "return"),
			Tail:     unit.Hours(rapid.Float64Range(0, 5).Draw(t, "tail")),
		}
		hours := r.Tail + unit.Hours(rapid.Float64Range(0.5, 20).Draw(t, "hours"))
		i, err := r.Current(hours)
		if err != nil {
			t.Fatal(err)
		}
		if i.Amperes() < 0.1 {
			t.Skip("less than a charger gives")
		}
		back, err := r.Time(i)
		if err != nil || math.Abs(back.Hours()-hours.Hours()) > 1e-9 {
			t.Fatalf("%g h asks for %g A, which takes %g h (%v)", hours.Hours(), i.Amperes(), back.Hours(), err)
		}
		more, _ := r.Time(2 * i)
		if more > back {
			t.Fatalf("twice the current takes longer: %g h after %g h", more.Hours(), back.Hours())
		}
	})
}

func TestRefusals(t *testing.T) {
	r := charge.Refill{Capacity: 100, Depth: 0.5, Return: 1.2, Tail: 3}
	var short *charge.TooShortError
	if _, err := r.Current(unit.Hours(2)); !errors.As(err, &short) || short.Tail != 3 {
		t.Errorf("two hours: %v, want a *charge.TooShortError", err)
	}
	var out *band.OutsideError
	if _, err := r.Time(0); !errors.As(err, &out) {
		t.Errorf("no current: %v, want a *band.OutsideError", err)
	}
	r.Depth = 1.5
	if _, err := r.Current(unit.Hours(10)); !errors.As(err, &out) {
		t.Errorf("a depth of 1.5: %v, want a *band.OutsideError", err)
	}
	var cold *charge.FreezingError
	if err := charge.MayCharge(bank.Lithium, unit.Celsius(-2)); !errors.As(err, &cold) {
		t.Errorf("lithium at -2 C: %v, want a *charge.FreezingError", err)
	}
	for _, row := range []struct {
		c bank.Chemistry
		t unit.Temperature
	}{{bank.Lithium, 5}, {bank.Flooded, -2}, {bank.AGM, -2}} {
		if err := charge.MayCharge(row.c, row.t); err != nil {
			t.Errorf("%v at %g C: %v", row.c, row.t.Celsius(), err)
		}
	}
}

// Flooded batteries take C/10 to C/5 in bulk; the rest is from memory and only
// ordered here.
func TestAcceptance(t *testing.T) {
	if got := charge.Acceptance(bank.Flooded, 100); got != 20 {
		t.Errorf("flooded 100 Ah accepts %g A, want C/5, 20", got.Amperes())
	}
	flooded, agm, lithium := charge.Acceptance(bank.Flooded, 100), charge.Acceptance(bank.AGM, 100), charge.Acceptance(bank.Lithium, 100)
	if !(flooded < agm && agm < lithium) {
		t.Errorf("acceptance %g, %g, %g A: want flooded under AGM under lithium", flooded.Amperes(), agm.Amperes(), lithium.Amperes())
	}
}

// A public reference prints 0.42 L of hydrogen for each ampere hour and cell at
// 0 C; Faraday's law with 96485.332 C/mol and 22.414 L/mol gives 0.41815 there
// and 0.45642 at 25 C.
func TestHydrogen(t *testing.T) {
	for _, row := range []struct{ c, want float64 }{{0, 0.41815}, {25, 0.45642}} {
		if got, err := charge.Hydrogen(1, 1, unit.Celsius(row.c)); err != nil || math.Abs(got.Litres()-row.want) > 1e-5 {
			t.Errorf("at %g C: %.5f L, %v; want %g", row.c, got.Litres(), err, row.want)
		}
	}
	six, _ := charge.Hydrogen(10, 6, 0)
	if one, _ := charge.Hydrogen(1, 1, 0); math.Abs(six.Litres()-60*one.Litres()) > 1e-9 {
		t.Errorf("ten ampere hours through six cells: %g L, want 60 times one", six.Litres())
	}
}

func BenchmarkRefill(b *testing.B) {
	r := charge.Refill{Capacity: 100, Depth: 0.5, Return: 1.2, Tail: 3}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := r.Current(10); err != nil {
			b.Fatal(err)
		}
	}
}
