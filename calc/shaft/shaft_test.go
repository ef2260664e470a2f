package shaft

import (
	"fmt"
	"math"
	"testing"

	"heronlake.example/ask/calc/unit"
	_ "heronlake.example/ask/tests/seeded"
	"pgregory.net/rapid"
)

// A bow deck 24 in above still water: 10 in of folding mount and head, 12 in of
// water over the lower unit (common practice, no published source).
func ExampleNeed() {
	n := Need{Height: unit.Inches(24), Above: unit.Inches(10), Cover: unit.Inches(12)}
	fmt.Printf("%.0f in\n", n.Length().Inches())
	n.Chop = Chop(unit.Feet(1), 0.6)
	fmt.Printf("%.1f in in 1-ft waves\n", n.Length().Inches())
	// Output:
	// 46 in
	// 53.2 in in 1-ft waves
}

func inches(x float64) unit.Length { return unit.Inches(x) }

func TestSubmergenceReturnsTheCover(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := rapid.Float64Range(0, 60)
		n := Need{inches(r.Draw(t, "height")), inches(r.Draw(t, "above")), inches(r.Draw(t, "cover")), inches(r.Draw(t, "chop"))}
		got := Submergence(n.Length(), n.Height, n.Above)
		if math.Abs(float64(got-n.Cover-n.Chop)) > 1e-12 {
			t.Fatalf("a shaft bought for a cover of %g leaves %g", n.Cover+n.Chop, got)
		}
	})
}

// With 12 in over the lower unit the tip has 9 in; all but 3 in of it may go, at
// 0.6 of the wave height.
func TestWaveLimit(t *testing.T) {
	h, err := WaveLimit(inches(12), inches(3), inches(3), 0.6)
	if err != nil || math.Abs(h.Inches()-10) > 1e-9 {
		t.Errorf("waves of %.2f in draw air, want 10 (%v)", h.Inches(), err)
	}
	if h, err := WaveLimit(inches(4), inches(3), inches(3), 0.6); err != nil || h != 0 {
		t.Errorf("a prop that draws air in calm water: %.2f in (%v)", h.Inches(), err)
	}
	if _, err := WaveLimit(inches(12), inches(3), inches(3), 0); err == nil {
		t.Error("a share of nothing was taken")
	}
}

// A chop allowance buys its own wave height.
func TestChopAllowanceBuysItsWaves(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		wave := inches(rapid.Float64Range(0, 40).Draw(t, "wave"))
		share := rapid.Float64Range(0.4, 1).Draw(t, "share")
		cover := inches(rapid.Float64Range(7, 16).Draw(t, "cover"))
		calm, err1 := WaveLimit(cover, inches(3), inches(3), share)
		with, err2 := WaveLimit(cover+Chop(wave, share), inches(3), inches(3), share)
		if err1 != nil || err2 != nil || math.Abs(float64(with-calm-wave)) > 1e-9 {
			t.Fatalf("limit %g without, %g with an allowance for %g", calm, with, wave)
		}
	})
}

func TestJudge(t *testing.T) {
	for _, x := range []struct {
		have, need float64
		want       Verdict
	}{
		{48, 46, Fits}, {46, 46, Fits}, {45.5, 46, Tight}, {45, 46, Tight}, {44.9, 46, Short}, {42, 46, Short}, {58, 46, Long}, {57.9, 46, Fits}, {60, 46, Long},
	} {
		if got := Judge(inches(x.have), inches(x.need)); got != x.want {
			t.Errorf("%g in for a need of %g in: %v, want %v", x.have, x.need, got, x.want)
		}
	}
}

func TestLongerShaftNeverLessWater(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := inches(rapid.Float64Range(20, 96).Draw(t, "shaft"))
		b := a + inches(rapid.Float64Range(0, 30).Draw(t, "longer"))
		h, above := inches(rapid.Float64Range(0, 40).Draw(t, "height")), inches(rapid.Float64Range(4, 15).Draw(t, "above"))
		da, db := Submergence(a, h, above), Submergence(b, h, above)
		wa, err1 := WaveLimit(da, inches(3), inches(3), 0.6)
		wb, err2 := WaveLimit(db, inches(3), inches(3), 0.6)
		if err1 != nil || err2 != nil || db < da || wb < wa || Draught(db, inches(8)) < Draught(da, inches(8)) {
			t.Fatalf("shaft %g: %g deep, waves %g; shaft %g: %g deep, waves %g", a, da, wa, b, db, wb)
		}
	})
}

func TestStowed(t *testing.T) {
	if got := Stowed(inches(54), inches(7), inches(8)); math.Abs(got.Inches()-69) > 1e-9 {
		t.Errorf("54 in of shaft take %g in of deck", got.Inches())
	}
	if got := Draught(inches(-3), inches(8)); got != inches(8) {
		t.Errorf("a unit above the water needs %g in", got.Inches())
	}
}

func BenchmarkNeed(b *testing.B) {
	b.ReportAllocs()
	n := Need{Height: unit.Inches(24), Above: unit.Inches(10), Cover: unit.Inches(12)}
	var sum unit.Length
	for b.Loop() {
		sum += n.Length()
	}
	_ = sum
}
