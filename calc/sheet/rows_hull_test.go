package sheet

import (
	"math"
	"strings"
	"testing"

	"heronlake.example/ask/calc/unit"
	"pgregory.net/rapid"
)

// viewOf reads a solution as a row would.
func viewOf(s *Solution) View { return View{w: &s.walk, vals: s.walk.vals} }

// hullDrag solves for the hull's cells and reads the curve.
func hullDrag(t interface{ Fatalf(string, ...any) }, u float64, given ...Given) float64 {
	s := StandardBook().solve(Question{Given: given, Want: hullNeeds})
	for _, id := range hullNeeds {
		if !s.Has(id) {
			t.Fatalf("%s is unknown: %v, missing %v", id, s.Err(id), s.Missing(id))
		}
	}
	f, err := dragAt(View{w: &s.walk, vals: s.walk.vals}, unit.MetresPerSecond(u))
	if err != nil {
		t.Fatalf("%v", err)
	}
	return f.Newtons()
}

func TestMoreWeightNeverLessDragOnTheSheet(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		hull := rapid.SampledFrom([]string{"jon", "vee", "deep-vee", "bass", "bay", "flats", "pontoon", "canoe", "kayak", "inflatable", "sailboat", "other"}).Draw(t, "hull")
		feet := rapid.Float64Range(9, 25).Draw(t, "feet")
		load := rapid.Float64Range(150, 4500).Draw(t, "load")
		more := rapid.Float64Range(0, 800).Draw(t, "more")
		u := rapid.Float64Range(0.2, 2.7).Draw(t, "speed")
		a := hullDrag(t, u, txt(BoatHull, hull), ftIn(BoatLength, feet, 0), lbs(LoadTotal, load))
		b := hullDrag(t, u, txt(BoatHull, hull), ftIn(BoatLength, feet, 0), lbs(LoadTotal, load+more))
		if b < a*(1-1e-12) {
			t.Fatalf("%g N with %g lb, %g N with %g lb more", a, load, b, more)
		}
	})
}

func TestLegDownCosts(t *testing.T) {
	boat := []Given{txt(BoatHull, "vee"), ftIn(BoatLength, 17, 0), lbs(LoadTotal, 1500)}
	up := hullDrag(t, 1.5, append(boat[:3:3], txt(EngineLeg, "up"))...)
	down := hullDrag(t, 1.5, append(boat[:3:3], txt(EngineLeg, "down"))...)
	// Drag area 0.04 m2 in fresh water of 999.1 kg/m3 at 1.5 m/s.
	if got, want := down-up, 0.5*999.1*1.5*1.5*0.04; math.Abs(got-want) > 0.01 {
		t.Errorf("the leg costs %.2f N, want %.2f N", got, want)
	}
	if unsaid := hullDrag(t, 1.5, boat...); unsaid != up {
		t.Errorf("%.2f N with the leg unsaid, %.2f N with it up", unsaid, up)
	}
}

func TestSaltWaterDragsMore(t *testing.T) {
	boat := []Given{txt(BoatHull, "bay"), ftIn(BoatLength, 21, 0), lbs(LoadTotal, 3300)}
	fresh, salt := hullDrag(t, 1.2, boat...), hullDrag(t, 1.2, append(boat[:3:3], txt(WaterKind, "salt"))...)
	if salt <= fresh || salt > 1.05*fresh {
		t.Errorf("%.2f N in fresh water, %.2f N in salt", fresh, salt)
	}
}

// What the trade sees of boats and motors (from memory of the trade, mph).
func TestTopSpeedsOfUsualRigs(t *testing.T) {
	for _, x := range []struct {
		name      string
		given     []Given
		low, high float64
	}{
		{"55 lb on a 16-ft jon", []Given{lbf(MotorThrust, 55), txt(BoatHull, "jon"), ftIn(BoatLength, 16, 0)}, 4.0, 4.8},
		{"55 lb on an 18-ft vee", []Given{lbf(MotorThrust, 55), txt(BoatHull, "vee"), ftIn(BoatLength, 18, 0)}, 3.7, 4.3},
		{"80 lb on a 20-ft bass boat", []Given{lbf(MotorThrust, 80), txt(BoatHull, "bass"), ftIn(BoatLength, 20, 0)}, 3.7, 4.3},
		{"30 lb on a 400-lb kayak", []Given{lbf(MotorThrust, 30), txt(BoatHull, "kayak"), ftIn(BoatLength, 12, 0), lbs(LoadTotal, 400)}, 4.8, 5.0},
		{"40 lb on the same", []Given{lbf(MotorThrust, 40), txt(BoatHull, "kayak"), ftIn(BoatLength, 12, 0), lbs(LoadTotal, 400)}, 5.0, 5.2},
		{"55 lb on the same", []Given{lbf(MotorThrust, 55), txt(BoatHull, "kayak"), ftIn(BoatLength, 12, 0), lbs(LoadTotal, 400)}, 5.2, 5.4},
	} {
		s := solve(SpeedTop, x.given...)
		if got := unit.Speed(s.Value(SpeedTop)).MilesPerHour(); got < x.low || got > x.high {
			t.Errorf("%s: %.2f mph, the trade sees %.1f to %.1f", x.name, got, x.low, x.high)
		}
	}
}

// The working of a top speed is a balance: the thrust that is left equals the
// parts of the drag, and the parts are those that are shown.
func TestTopSpeedShowsItsBalance(t *testing.T) {
	s := solve(SpeedTop, lbf(MotorThrust, 55), txt(BoatHull, "jon"), ftIn(BoatLength, 16, 0), lbs(LoadTotal, 1050), txt(EngineLeg, "down"))
	st := s.Step(SpeedTop)
	part := func(name string) float64 {
		x, form := st.Row.Term(viewOf(s), name)
		if form != unit.Thrust || math.IsNaN(x) || x <= 0 {
			t.Errorf("%s is %g", name, x)
		}
		return x
	}
	drag := s.Value(HullFactor)*(part("friction")+part("wave drag")+part("transom drag")) + part("leg drag")
	thrust := unit.PoundForce(55).Newtons() * (1 - s.Value(SpeedTop)/s.Value(MotorFreeSpeed))
	if math.Abs(thrust-drag) > 1e-3*thrust {
		t.Errorf("thrust left %.2f N, drag shown %.2f N", thrust, drag)
	}
	if w := s.Working(st, unit.US); strings.ContainsAny(w, "{}?") || !strings.Contains(w, " = ") {
		t.Errorf("worked as %q", w)
	}
}

func width(s *Solution, id ID) float64 {
	b := s.Step(id).Band
	return (b.High - b.Low) / b.Nominal
}

func measured(mps float64) Given {
	g := num(SpeedMeasured, mps)
	g.Measured = true
	return g
}

// A measured speed comes back as the top speed of the motor it was measured
// with, and the band narrows.
func TestMeasuredSpeedCalibrates(t *testing.T) {
	boat := []Given{lbf(MotorThrust, 55), txt(BoatHull, "jon"), ftIn(BoatLength, 16, 0), lbs(LoadTotal, 1050)}
	guess := solve(SpeedTop, boat...)
	mps := float64(unit.MilesPerHour(3.8))
	known := solve(SpeedTop, append(boat[:4:4], measured(mps))...)
	if got := known.Value(SpeedTop); math.Abs(got-mps) > 1e-3 {
		t.Errorf("measured %.3f m/s, computed %.3f m/s", mps, got)
	}
	if a, b := width(guess, SpeedTop), width(known, SpeedTop); b > 0.5*a {
		t.Errorf("the band of the top speed is %.0f %% wide with the measure, %.0f %% without", 100*b, 100*a)
	}
	// At a part of the dial, and with another motor asked about.
	half := solve(SpeedTop, append(boat[:4:4], measured(1.1), lbf(SpeedThrust, 55), num(SpeedThrottle, 0.5))...)
	if f := half.Value(HullFactor); f < 0.25 || f > 4 || half.Step(HullFactor).Origin != Computed {
		t.Errorf("half throttle gives a factor of %g", f)
	}
	other := solve(SpeedTop, lbf(MotorThrust, 80), txt(BoatHull, "jon"), ftIn(BoatLength, 16, 0), lbs(LoadTotal, 1050), measured(mps), lbf(SpeedThrust, 55))
	if other.Value(SpeedTop) <= mps {
		t.Errorf("80 lb does %.2f m/s where 55 lb did %.2f", other.Value(SpeedTop), mps)
	}
}

// A measure that cannot be is refused and said so; the model stands.
func TestImpossibleMeasureIsRefused(t *testing.T) {
	s := solve(SpeedTop, lbf(MotorThrust, 55), txt(BoatHull, "jon"), ftIn(BoatLength, 16, 0), lbs(LoadTotal, 1050), measured(3.3))
	st := s.Step(HullFactor)
	if st == nil || st.Origin != Constant || !strings.Contains(strings.Join(st.Warnings, " "), "not used") {
		t.Errorf("%+v", st)
	}
}

func TestDragRefusesNoSpeed(t *testing.T) {
	s := StandardBook().solve(Question{Given: []Given{lbs(LoadTotal, 1900)}, Want: hullNeeds})
	v := View{w: &s.walk, vals: s.walk.vals}
	for _, u := range []float64{-0.1, math.NaN()} {
		if f, err := dragAt(v, unit.Speed(u)); err == nil {
			t.Errorf("%g m/s gave %v", u, f)
		}
	}
	if f, err := dragAt(v, 0); err != nil || f != 0 {
		t.Errorf("at rest: %v, %v", f, err)
	}
}

func BenchmarkDragAt(b *testing.B) {
	s := StandardBook().Solve(Question{Given: []Given{ftIn(BoatLength, 18, 0), txt(BoatMaterial, "aluminum"), lbs(LoadTotal, 1900)}, Want: hullNeeds})
	v := View{w: &s.walk, vals: s.walk.vals}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := dragAt(v, unit.MetresPerSecond(1.3)); err != nil {
			b.Fatal(err)
		}
	}
}
