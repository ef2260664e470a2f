package typical_test

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/interp"
	"pgregory.net/rapid"

	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/calc/wind"
)

func TestLadderAscends(t *testing.T) {
	for i, c := range typical.MotorClasses[1:] {
		before := typical.MotorClasses[i]
		if c.Rating <= before.Rating || c.Volts < before.Volts || c.Prop < before.Prop || c.Watts() <= before.Watts() {
			t.Errorf("%.0f lb does not stand above %.0f lb in every way", c.Rating.PoundForce(), before.Rating.PoundForce())
		}
	}
}

// About 50 A for 55 lb on 12 V, from memory of the trade.
func TestUsualCurrents(t *testing.T) {
	for _, c := range []struct{ pounds, volts, amps float64 }{{55, 12, 50}, {80, 24, 56}, {110, 36, 52}} {
		w, ok := typical.MotorWatts(unit.PoundForce(c.pounds))
		if got := w.Watts() / c.volts; !ok || math.Abs(got-c.amps) > 1e-9 {
			t.Errorf("%g lb on %g V draws %.1f A, want %g", c.pounds, c.volts, got, c.amps)
		}
	}
}

// A second opinion on the straight lines between classes: gonum's interpolation.
func TestWattsAgainstGonum(t *testing.T) {
	var ratings, watts []float64
	for _, c := range typical.MotorClasses {
		ratings, watts = append(ratings, c.Rating.Newtons()), append(watts, c.Watts().Watts())
	}
	var line interp.PiecewiseLinear
	if err := line.Fit(ratings, watts); err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		r := rapid.Float64Range(ratings[0], ratings[len(ratings)-1]).Draw(t, "rating")
		w, ok := typical.MotorWatts(unit.Newtons(r))
		if want := line.Predict(r); !ok || math.Abs(w.Watts()-want) > 1e-9*want {
			t.Fatalf("%g N: %g W, gonum has %g W", r, w.Watts(), want)
		}
	})
}

func TestWattsAndRatingAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := unit.PoundForce(rapid.Float64Range(15, 250).Draw(t, "pounds"))
		w, ok := typical.MotorWatts(r)
		if back := typical.RatingOfWatts(w); !ok || math.Abs(float64(back-r)) > 1e-6*float64(r) {
			t.Fatalf("%.2f lb came back as %.2f (%v)", r.PoundForce(), back.PoundForce(), ok)
		}
	})
	for _, pounds := range []float64{5, 300} {
		if _, ok := typical.MotorWatts(unit.PoundForce(pounds)); ok {
			t.Errorf("%g lb lies outside and was answered as if inside", pounds)
		}
	}
}

func TestClassVolts(t *testing.T) {
	for _, c := range []struct{ pounds, volts float64 }{{30, 12}, {55, 12}, {56, 24}, {80, 24}, {90, 24}, {100, 36}, {120, 36}, {180, 36}} {
		if got := typical.ClassVolts(unit.PoundForce(c.pounds)); got.Volts() != c.volts {
			t.Errorf("%g lb on %g V, want %g", c.pounds, got.Volts(), c.volts)
		}
	}
}

// Every class lies in the range of its own voltage.
func TestRatingRange(t *testing.T) {
	for _, c := range typical.MotorClasses {
		if low, high := typical.RatingRange(c.Volts); c.Rating < low || c.Rating > high {
			t.Errorf("%.0f lb is outside %.0f to %.0f lb of %.0f V", c.Rating.PoundForce(), low.PoundForce(), high.PoundForce(), c.Volts.Volts())
		}
	}
	if low, _ := typical.RatingRange(unit.Volts(48)); low.PoundForce() < 80 {
		t.Errorf("48 V begins at %.0f lb", low.PoundForce())
	}
}

func TestFreeSpeedNeverFallsWithRating(t *testing.T) {
	before := typical.FreeSpeedOf(0)
	for pounds := 1.0; pounds <= 260; pounds++ {
		b := typical.FreeSpeedOf(unit.PoundForce(pounds))
		if b.Low < before.Low || b.Nominal < before.Nominal || b.High < before.High {
			t.Errorf("%g lb runs free at %v, a smaller one at %v", pounds, b, before)
		}
		before = b
	}
	for _, c := range []struct{ pounds, volts float64 }{{40, 12}, {80, 24}, {112, 36}} {
		if a, b := typical.FreeSpeedOf(unit.PoundForce(c.pounds)), typical.FreeSpeed(unit.Volts(c.volts)); a != b {
			t.Errorf("%g lb: %v by rating, %v by voltage", c.pounds, a, b)
		}
	}
}

func TestStyles(t *testing.T) {
	for _, c := range []struct {
		phrase string
		wind   float64
		said   bool
		name   string
	}{
		{"slow trolling", 0, false, "slow trolling"},
		{"trolling for walleye", 0, false, "slow trolling"},
		{"vertical-jigging", 0, false, "holding"},
		{"jigging", 1, true, "holding in a calm"},
		{"holding on a spot", 5, true, "holding in a breeze"},
		{"position hold", 9, true, "holding in a strong wind"},
		{"casting docks", 0, false, "bank casting"},
		{"open-water casting", 0, false, "open-water casting"},
		{"guiding", 0, false, "guiding"},
		{"drifting", 0, false, "drifting"},
		{"cruising", 0, false, "kayak cruising"},
	} {
		s, ok := typical.StyleOf(c.phrase, unit.MetresPerSecond(c.wind), c.said)
		if !ok || s.Name != c.name {
			t.Errorf("%q in %g m/s: %v, want %q", c.phrase, c.wind, s, c.name)
		}
	}
	for _, phrase := range []string{"", "controlling the fish", "sunbathing"} {
		if s, ok := typical.StyleOf(phrase, 0, false); ok {
			t.Errorf("%q is read as %s", phrase, s.Name)
		}
	}
	for _, s := range typical.Styles {
		if !ordered(s.Share) || s.Share.Low <= 0 || s.Share.High > 1 {
			t.Errorf("%s: %v", s.Name, s.Share)
		}
	}
}

func TestEveryHullHasAWindage(t *testing.T) {
	for _, b := range typical.Boats {
		w := typical.WindageOf(b.Kind)
		if w.Kind != b.Kind {
			t.Errorf("%s has no windage", b.Kind)
			continue
		}
		if !ordered(w.Head) || w.Head.Low <= 0 || w.Head.High > 1.3 {
			t.Errorf("%s: head coefficient %v", b.Kind, w.Head)
		}
		f, _ := w.Frontal.Value(b.Usual.Nominal, 1.5)
		l, _ := w.Lateral.Value(b.Usual.Nominal, 2)
		if f.Nominal <= 0 || l.Nominal <= f.Nominal {
			t.Errorf("%s: %v m2 from ahead, %v m2 from the side", b.Kind, f.Nominal, l.Nominal)
		}
		// A hull shows at least most of its beam by its freeboard.
		beam, _ := b.Beam.Value(b.Usual.Nominal, 1)
		board, _ := b.Freeboard.Value(b.Usual.Nominal, 1)
		if box := float64(beam.Nominal * board.Nominal); float64(f.Nominal) < 0.55*box {
			t.Errorf("%s: %.2f m2 from ahead, beam by freeboard is %.2f", b.Kind, float64(f.Nominal), box)
		}
	}
	if typical.WindageOf("barge").Kind != typical.Other {
		t.Error("a hull that is none must take the windage of the others")
	}
}

// The faired kinds stand between Blendermann's speed boat and fishing vessel.
func TestHeadCoefficientAgainstBlendermann(t *testing.T) {
	speed, err := wind.VesselNamed("speed boat")
	if err != nil {
		t.Fatal(err)
	}
	fishing, err := wind.VesselNamed("fishing vessel")
	if err != nil {
		t.Fatal(err)
	}
	for _, kind := range []string{typical.Vee, typical.DeepVee, typical.Bass, typical.Bay, typical.Flats} {
		if h := typical.WindageOf(kind).Head.Nominal; h < speed.Bow || h > fishing.Bow {
			t.Errorf("%s: %g is outside %g to %g", kind, h, speed.Bow, fishing.Bow)
		}
	}
}

func TestChopWinds(t *testing.T) {
	before := 0.0
	for _, inches := range []float64{2, 8, 14, 30, 60} {
		b := typical.ChopWindOf(unit.Inches(inches))
		if !ordered(b) || b.Nominal < before {
			t.Errorf("waves of %g in go with %v m/s after %g", inches, b, before)
		}
		before = b.Nominal
	}
}
