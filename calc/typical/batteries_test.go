package typical_test

import (
	"slices"
	"testing"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/bank"
	"heronlake.example/ask/calc/typical"
)

// ordered reports whether a band's three values come in order.
func ordered(b band.Band[float64]) bool { return b.Low <= b.Nominal && b.Nominal <= b.High }

func TestChemistriesAreComplete(t *testing.T) {
	for _, kind := range []bank.Chemistry{bank.Flooded, bank.AGM, bank.Gel, bank.Lithium} {
		c := typical.ChemistryOf(kind.String())
		if c.Word != kind.String() {
			t.Errorf("%v has no row", kind)
			continue
		}
		for name, b := range map[string]band.Band[float64]{
			"exponent": c.Exponent, "long depth": c.LongDepth, "limit": c.LimitDepth, "return": c.Return,
			"tail": c.Tail, "charge depth": c.ChargeDepth, "cycles": c.CycleLife, "weight": c.PoundsPer100Ah,
		} {
			if !ordered(b) || b.Low <= 0 {
				t.Errorf("%v: %s is %v", kind, name, b)
			}
		}
		if c.LongDepth.Nominal > c.LimitDepth.Nominal || c.LimitDepth.High > 1 {
			t.Errorf("%v: long life to %v, limit %v", kind, c.LongDepth, c.LimitDepth)
		}
		if !slices.IsSorted(c.SizesAh) || len(c.SizesAh) == 0 {
			t.Errorf("%v: sizes %v do not ascend", kind, c.SizesAh)
		}
	}
	if typical.ChemistryOf("nickel").Word != "flooded" {
		t.Error("an unknown chemistry must take the row that promises least")
	}
}

// The published ranges of the exponent: flooded 1.20 to 1.30 (others to 2), AGM
// 1.05 to 1.15, gel 1.10 to 1.20, lithium iron phosphate about 1.05.
func TestExponentsLieInPublishedRanges(t *testing.T) {
	for word, want := range map[string][2]float64{"flooded": {1.20, 1.30}, "agm": {1.05, 1.15}, "gel": {1.10, 1.20}, "lithium": {1.00, 1.05}} {
		if k := typical.ChemistryOf(word).Exponent.Nominal; k < want[0] || k > want[1] {
			t.Errorf("%s: nominal exponent %g, published %v", word, k, want)
		}
	}
}

func TestEveryCaseSizeHasAWeight(t *testing.T) {
	for _, g := range bank.Groups {
		row := typical.GroupBatteryOf(g.Name)
		if row == nil {
			t.Errorf("group %s has no weight", g.Name)
			continue
		}
		if !ordered(row.Pounds) || row.Pounds.Low <= 0 || !ordered(row.LithiumA) {
			t.Errorf("group %s: %v lb, %v Ah", g.Name, row.Pounds, row.LithiumA)
		}
		if _, own := typical.UnratedCapacity[g.Name]; g.Capacity.Nominal == 0 && !own {
			t.Errorf("group %s has no usual capacity", g.Name)
		}
	}
}

func TestLaddersAscend(t *testing.T) {
	for name, l := range map[string][]float64{"breakers": typical.Breakers, "breaker volts": typical.BreakerVolts, "chargers": typical.Chargers} {
		if !slices.IsSorted(l) || l[0] <= 0 {
			t.Errorf("%s: %v", name, l)
		}
	}
}
