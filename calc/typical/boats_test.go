package typical

import (
	"math"
	"testing"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
	_ "heronlake.example/ask/tests/seeded"
	"pgregory.net/rapid"
)

func ordered[T ~float64](b band.Band[T]) bool { return b.Low <= b.Nominal && b.Nominal <= b.High }

// checkTable: ascending lengths, ordered bands, and a nominal that never falls
// as boats get longer.
func checkTable[T ~float64](t *testing.T, kind, what string, table ByLength[T]) {
	t.Helper()
	for i, r := range table {
		if !ordered(r.Value) {
			t.Errorf("%s, %s at %.1f ft: %v is out of order", kind, what, r.Length.Feet(), r.Value)
		}
		if i > 0 && (r.Length <= table[i-1].Length || r.Value.Nominal < table[i-1].Value.Nominal && what != "beam") {
			t.Errorf("%s, %s: row %d falls behind the one before", kind, what, i)
		}
	}
}

func TestBoatTables(t *testing.T) {
	seen := map[string]bool{}
	for _, b := range Boats {
		if seen[b.Kind] {
			t.Errorf("%s stands twice", b.Kind)
		}
		seen[b.Kind] = true
		checkTable(t, b.Kind, "dry weight", b.Dry)
		checkTable(t, b.Kind, "power", b.Engine)
		checkTable(t, b.Kind, "fuel", b.Fuel)
		checkTable(t, b.Kind, "beam", b.Beam)
		checkTable(t, b.Kind, "freeboard", b.Freeboard)
		checkTable(t, b.Kind, "bow", b.Bow)
		checkTable(t, b.Kind, "stern", b.Stern)
		checkTable(t, b.Kind, "transom", b.Transom)
		if len(b.Dry) == 0 || len(b.Beam) == 0 || len(b.Freeboard) == 0 || len(b.Bow) == 0 || len(b.Stern) == 0 {
			t.Errorf("%s lacks a table", b.Kind)
		}
		if (len(b.Engine) == 0) != (len(b.Fuel) == 0) {
			t.Errorf("%s has an engine without fuel, or fuel without an engine", b.Kind)
		}
		if !ordered(b.Usual) || !ordered(b.People) || !ordered(b.Gear) || !ordered(b.InBow) || !ordered(b.Form.Friction) {
			t.Errorf("%s: a band is out of order", b.Kind)
		}
		f := b.Form
		for name, x := range map[string]float64{"length": f.Length, "beam": f.Beam, "block": f.Block, "prismatic": f.Prismatic, "waterplane": f.Waterplane} {
			if !(x > 0.2 && x <= 1) {
				t.Errorf("%s: %s share %g", b.Kind, name, x)
			}
		}
		if f.Block > f.Prismatic || f.Block > f.Waterplane {
			t.Errorf("%s: a block coefficient of %g fills more than its prism %g or its waterplane %g", b.Kind, f.Block, f.Prismatic, f.Waterplane)
		}
	}
	for _, k := range []string{Jon, Vee, DeepVee, Bass, Bay, Flats, Pontoon, Canoe, Kayak, Inflatable, Sailboat, Other} {
		if _, ok := BoatOf(k); !ok {
			t.Errorf("no row for %s", k)
		}
	}
	if _, ok := BoatOf("raft"); ok {
		t.Error("a raft was found")
	}
}

func TestByLength(t *testing.T) {
	jon, _ := BoatOf(Jon)
	for _, x := range []struct {
		feet, low, nominal, high float64
		inside                   bool
	}{
		{12, 110, 150, 220, true},
		{15, 220, 305, 450, true}, // half way between 14 and 16 ft
		{18, 450, 650, 950, true},
	} {
		v, inside := jon.Dry.Value(unit.Feet(x.feet), 3)
		if inside != x.inside || math.Abs(v.Low.Pounds()-x.low) > 1e-9 || math.Abs(v.Nominal.Pounds()-x.nominal) > 1e-9 || math.Abs(v.High.Pounds()-x.high) > 1e-9 {
			t.Errorf("a %g-ft jon weighs %.0f / %.0f / %.0f lb", x.feet, v.Low.Pounds(), v.Nominal.Pounds(), v.High.Pounds())
		}
	}
	edge, _ := jon.Dry.Value(unit.Feet(18), 3)
	longer, inside := jon.Dry.Value(unit.Feet(20), 3)
	if inside {
		t.Error("20 ft is inside a table that ends at 18")
	}
	if relative := func(b band.Band[unit.Mass]) float64 { return float64((b.High - b.Low) / b.Nominal) }; relative(longer) <= relative(edge) {
		t.Error("the estimate outside the table is no wider than at its edge")
	}
	if v, ok := (ByLength[unit.Mass]{}).Value(5, 3); ok || v.Nominal != 0 {
		t.Error("an empty table gave a value")
	}
}

func TestLengthAtReturns(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := rapid.SampledFrom(Boats).Draw(t, "boat")
		if b.Kind == Inflatable || b.Kind == Canoe {
			return
		}
		l := unit.Feet(rapid.Float64Range(9, 26).Draw(t, "length"))
		v, _ := b.Dry.Value(l, 3)
		if got := b.Dry.LengthAt(v.Nominal, 3); math.Abs(float64(got-l)) > 1e-6 {
			t.Fatalf("%s of %.2f ft weighs %.0f lb, which is a boat of %.2f ft", b.Kind, l.Feet(), v.Nominal.Pounds(), got.Feet())
		}
	})
}

func TestLongerBoatNeverWeighsLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := rapid.SampledFrom(Boats).Draw(t, "boat")
		l := unit.Feet(rapid.Float64Range(7, 27).Draw(t, "length"))
		more := unit.Feet(rapid.Float64Range(0, 5).Draw(t, "longer"))
		x, _ := b.Dry.Value(l, 3)
		y, _ := b.Dry.Value(l+more, 3)
		if y.Nominal < x.Nominal*(1-1e-12) || !ordered(x) {
			t.Fatalf("%s: %v at %.2f ft, %v at %.2f ft", b.Kind, x, l.Feet(), y, (l + more).Feet())
		}
	})
}

func TestMounts(t *testing.T) {
	for _, m := range Mounts {
		last := 0.0
		for _, v := range []unit.Voltage{12, 24, 36, 48} {
			w := m.WeightAt(v)
			if !ordered(w) || w.Nominal.Pounds() < last {
				t.Errorf("%s at %g V weighs %v", m.Kind, v, w)
			}
			last = w.Nominal.Pounds()
		}
		if !ordered(m.Above) {
			t.Errorf("%s stands %v above its surface", m.Kind, m.Above)
		}
	}
	if _, ok := MountOf("suction cup"); ok {
		t.Error("a suction cup was found")
	}
	for i := 1; i < len(ShaftLengths); i++ {
		if ShaftLengths[i] <= ShaftLengths[i-1] {
			t.Errorf("the ladder of shafts falls at %g", ShaftLengths[i])
		}
	}
}

// Glass is heavier than aluminum, and a table's own material changes nothing.
func TestMaterialFactor(t *testing.T) {
	for _, x := range []struct {
		table, said string
		want        float64
	}{{"aluminum", "fiberglass", 1.25}, {"fiberglass", "aluminum", 0.8}, {"aluminum", "aluminum", 1}, {"fiberglass", "", 1}, {"polyethylene", "fiberglass", 1}} {
		if got := MaterialFactor(x.table, x.said); math.Abs(got-x.want) > 1e-12 {
			t.Errorf("a %s hull in %s weighs %g of the table", x.table, x.said, got)
		}
	}
}

func BenchmarkByLength(b *testing.B) {
	b.ReportAllocs()
	boat, _ := BoatOf(Vee)
	for b.Loop() {
		boat.Dry.Value(unit.Feet(17.3), 3)
	}
}
