package sheet

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// solved answers some givens for some cells.
func solved(want []ID, given ...Given) *Solution {
	return StandardBook().Solve(Question{Given: given, Want: want})
}

var thrustFigures = []ID{ThrustRule, ThrustRuleRaised, ThrustWind, ThrustCurrent, ThrustBalance, ThrustNeed, ThrustGoverns, ThrustClass, SystemVoltage, RatedThrust, HoldWind, HoldWindDay, HoldCurrent, SpeedTop}

func lbOf(s *Solution, id ID) float64   { return unit.Force(s.Value(id)).PoundForce() }
func mphOf(s *Solution, id ID) float64  { return unit.Speed(s.Value(id)).MilesPerHour() }
func within(x, low, high float64) bool  { return x >= low && x <= high }
func classOf(s *Solution) int           { return int(math.Round(lbOf(s, ThrustClass))) }
func voltsOf(s *Solution) int           { return int(math.Round(s.Value(SystemVoltage))) }
func warns(s *Solution, id ID) string   { return strings.Join(s.Step(id).Warnings, "; ") }
func rowName(s *Solution, id ID) string { return s.Step(id).Row.Name }
func windFrom(low, mid, high float64) Given {
	m := func(x float64) float64 { return float64(unit.MilesPerHour(x)) }
	return span(WindSpeed, m(low), m(mid), m(high))
}

// The plain rule stays the plain rule, whatever is said of the water.
func TestRuleOfThumb(t *testing.T) {
	for _, given := range [][]Given{
		{lbs(LoadTotal, 1475)},
		{lbs(LoadTotal, 1475), mph(WindSpeed, 25)},
		{lbs(LoadTotal, 1475), txt(BoatHull, "pontoon")},
		{lbs(LoadTotal, 1475), txt(WaterWeeds, "true")},
	} {
		if s := solved(thrustFigures, given...); math.Abs(lbOf(s, ThrustRule)-29.5) > 1e-9 {
			t.Errorf("%v: %g lb, want 29.5", given, lbOf(s, ThrustRule))
		}
	}
}

// The raised rule: 2.5 in wind, current or weeds, 3 for pontoon boats and in
// waves; a wind that nobody spoke of raises nothing.
func TestRaisedRule(t *testing.T) {
	load := lbs(LoadTotal, 2000)
	for _, c := range []struct {
		name  string
		given []Given
		want  float64 // pounds; 0 means not raised
	}{
		{"nothing said", []Given{load}, 0},
		{"a light wind", []Given{load, mph(WindSpeed, 8)}, 0},
		{"wind", []Given{load, mph(WindSpeed, 12)}, 50},
		{"gusts alone", []Given{load, mph(WindGust, 22)}, 50},
		{"weeds", []Given{load, txt(WaterWeeds, "true")}, 50},
		{"no weeds", []Given{load, txt(WaterWeeds, "false")}, 0},
		{"current", []Given{load, mph(CurrentSpeed, 1)}, 50},
		{"still water said", []Given{load, mph(CurrentSpeed, 0)}, 0},
		{"waves of a foot", []Given{load, ftIn(ChopHeight, 1, 0)}, 50},
		{"waves of two feet", []Given{load, ftIn(ChopHeight, 2, 0)}, 60},
		{"small waves", []Given{load, ftIn(ChopHeight, 0, 5)}, 0},
		{"pontoon", []Given{load, txt(BoatHull, "pontoon")}, 60},
		{"pontoon in wind", []Given{load, txt(BoatHull, "pontoon"), mph(WindSpeed, 16)}, 60},
		{"pontoon in light wind", []Given{load, txt(BoatHull, "pontoon"), mph(WindSpeed, 9)}, 50},
		{"bass boat in wind", []Given{load, txt(BoatHull, "bass"), windFrom(12, 15, 20)}, 50},
	} {
		s := solved(thrustFigures, c.given...)
		if got := lbOf(s, ThrustRuleRaised); math.Abs(got-c.want) > 1e-6 {
			t.Errorf("%s: raised rule %g lb, want %g", c.name, got, c.want)
		}
		if c.want > 0 && lbOf(s, ThrustNeed) < c.want-1e-6 {
			t.Errorf("%s: need %g lb is below the raised rule of %g", c.name, lbOf(s, ThrustNeed), c.want)
		}
	}
}

// An assumed wind never decides: a boat of any kind and usual length, of which
// no wind is said, needs what its weight asks for.
func TestUnsaidWindDoesNotDecide(t *testing.T) {
	for _, b := range typical.Boats {
		s := solved(thrustFigures, txt(BoatHull, b.Kind))
		if s.Word(ThrustGoverns) != "weight" {
			t.Errorf("%s: forces decide with %.1f lb over %.1f lb by weight", b.Kind, lbOf(s, ThrustBalance), lbOf(s, ThrustRule))
		}
		if s.Has(ThrustCurrent) {
			t.Errorf("%s: a current was made up", b.Kind)
		}
	}
}

func TestStrongWindDecides(t *testing.T) {
	s := solved(thrustFigures, txt(BoatHull, "vee"), ftIn(BoatLength, 17, 0), lbs(LoadTotal, 1500), mph(WindSpeed, 28))
	if s.Word(ThrustGoverns) != "forces" || lbOf(s, ThrustNeed) != lbOf(s, ThrustBalance) {
		t.Errorf("%s decides, need %.1f lb, forces %.1f lb", s.Word(ThrustGoverns), lbOf(s, ThrustNeed), lbOf(s, ThrustBalance))
	}
	if w := warns(s, ThrustNeed); !strings.Contains(w, "wind and water decide") || !strings.Contains(w, "% above") {
		t.Errorf("the step does not say what decides and by how much: %q", w)
	}
}

// In still water the balance is the wind's route, and a current adds to it.
func TestBalance(t *testing.T) {
	boat := []Given{txt(BoatHull, "bay"), ftIn(BoatLength, 20, 0), lbs(LoadTotal, 3000), mph(WindSpeed, 14)}
	still := solved(thrustFigures, boat...)
	if still.Value(ThrustBalance) != still.Value(ThrustWind) {
		t.Errorf("still water: balance %g N, wind %g N", still.Value(ThrustBalance), still.Value(ThrustWind))
	}
	river := solved(thrustFigures, append(slices.Clone(boat), mph(CurrentSpeed, 2))...)
	if b := river.Value(ThrustBalance); !(b > river.Value(ThrustWind) && b > river.Value(ThrustCurrent)) {
		t.Errorf("river: balance %g N, wind %g N, current %g N", b, river.Value(ThrustWind), river.Value(ThrustCurrent))
	}
}

// A boat's balance by hand: forces in newtons as the steps show them.
func TestBalanceByHand(t *testing.T) {
	s := solved(thrustFigures, txt(BoatHull, "vee"), ftIn(BoatLength, 16, 0), lbs(LoadTotal, 1300), num(WindSpeed, 7), num(PeopleCount, 2))
	area := 0.60*1.15 + 0.84*1.7
	push := 0.5 * 1.225 * math.Pow(7*0.78, 2) * area
	allowance := push * math.Hypot(1.3*1.3-1, 0.15)
	way := 0.25 + 0.025*7
	pull := push + allowance + s.Value(DragWind)
	want := pull * 1.2 / (1 - way/3.1)
	if got := s.Value(ThrustWind); math.Abs(got-want) > 1e-6*want {
		t.Errorf("thrust for the wind %.4f N, by hand %.4f N", got, want)
	}
	if drag := s.Value(DragWind); !(drag > 0 && drag < 0.3*push) {
		t.Errorf("hull drag against drift %.2f N beside a push of %.2f N", drag, push)
	}
}

func TestNoClassAboveTheLadder(t *testing.T) {
	s := solved(thrustFigures, txt(BoatHull, "pontoon"), ftIn(BoatLength, 24, 0), lbs(LoadTotal, 4600), mph(CurrentSpeed, 4))
	var r *RangeError
	if s.Has(ThrustClass) || !errors.As(s.Err(ThrustClass), &r) || r.Cell != ThrustNeed {
		t.Fatalf("class %g lb, error %v", lbOf(s, ThrustClass), s.Err(ThrustClass))
	}
	if !strings.Contains(r.Error(), "two motors") {
		t.Errorf("the error does not say what to do: %v", r)
	}
	if got := lbOf(s, RatedThrust); math.Abs(got-120) > 1e-6 || voltsOf(s) != 36 {
		t.Errorf("what follows is for %g lb on %d V, want the largest, 120 lb on 36 V", got, voltsOf(s))
	}
	if !strings.Contains(warns(s, RatedThrust), "below the need") {
		t.Errorf("no word that the largest rating falls short: %q", warns(s, RatedThrust))
	}
}

func TestTwoMotorsShareTheNeed(t *testing.T) {
	boat := []Given{txt(BoatHull, "bay"), ftIn(BoatLength, 23, 0), lbs(LoadTotal, 4500), mph(WindSpeed, 20)}
	one, two := solved(thrustFigures, boat...), solved(thrustFigures, append(slices.Clone(boat), num(MotorCount, 2))...)
	if one.Value(ThrustNeed) != two.Value(ThrustNeed) {
		t.Errorf("the need changed with the number of motors: %g and %g N", one.Value(ThrustNeed), two.Value(ThrustNeed))
	}
	if need := lbOf(two, ThrustNeed); float64(2*classOf(two)) < need || classOf(two) > 70 {
		t.Errorf("two of %d lb for a need of %.1f lb", classOf(two), need)
	}
	if got := lbOf(two, RatedThrust); math.Abs(got-float64(2*classOf(two))) > 1e-6 {
		t.Errorf("two of %d lb are rated %g lb together", classOf(two), got)
	}
}

func TestCurrentThatNoMotorStems(t *testing.T) {
	s := solved(thrustFigures, lbs(LoadTotal, 1200), mph(CurrentSpeed, 9))
	for _, id := range []ID{ThrustCurrent, ThrustNeed} {
		var r *RangeError
		if s.Has(id) || !errors.As(s.Err(id), &r) || r.Cell != CurrentSpeed {
			t.Errorf("%s: %g N, error %v; want an error that names the current", id, s.Value(id), s.Err(id))
		}
	}
	if !s.Has(ThrustRule) {
		t.Error("the rule of thumb stands whatever the current")
	}
}

func TestShopsLadder(t *testing.T) {
	q := Question{Given: []Given{lbs(LoadTotal, 2150)}, Want: thrustFigures,
		Ladders: map[ID]Ladder{ThrustClass: {unit.PoundForce(46).Newtons(), unit.PoundForce(62).Newtons()}}}
	if s := StandardBook().Solve(q); classOf(s) != 46 {
		t.Errorf("the shop's ladder gives %d lb, want 46", classOf(s))
	}
}

func TestVoltage(t *testing.T) {
	for _, c := range []struct {
		name  string
		given []Given
		volts int
		row   string
	}{
		{"nothing", nil, 12, "12 volts"},
		{"said", []Given{num(MotorVoltage, 36)}, 36, "voltage said"},
		{"by the motor", []Given{lbf(MotorThrust, 80)}, 24, "voltage of the motor said"},
		{"voltage before rating", []Given{lbf(MotorThrust, 80), num(MotorVoltage, 36)}, 36, "voltage said"},
		{"small boat", []Given{lbs(LoadTotal, 900)}, 12, "voltage by class"},
		{"heavy boat", []Given{lbs(LoadTotal, 3700)}, 24, "voltage by class"},
		{"very heavy boat", []Given{lbs(LoadTotal, 4900)}, 36, "voltage by class"},
		{"three in series", []Given{num(BatteryCount, 3), txt(BatteryLayout, "series")}, 36, "voltage of the batteries said"},
	} {
		s := solved([]ID{SystemVoltage, RatedVolts}, c.given...)
		if voltsOf(s) != c.volts || rowName(s, SystemVoltage) != c.row {
			t.Errorf("%s: %d V by %q, want %d V by %q", c.name, voltsOf(s), rowName(s, SystemVoltage), c.volts, c.row)
		}
		if s.Value(RatedVolts) != s.Value(SystemVoltage) {
			t.Errorf("%s: the motor takes %g V of %g", c.name, s.Value(RatedVolts), s.Value(SystemVoltage))
		}
	}
	if s := solved([]ID{SystemVoltage}, lbf(MotorThrust, 100)); !strings.Contains(warns(s, SystemVoltage), "24 and for 36") {
		t.Errorf("no word that classes overlap at 100 lb: %q", warns(s, SystemVoltage))
	}
	if s := solved([]ID{ThrustClass}, lbs(LoadTotal, 3700), num(MotorVoltage, 12)); !strings.Contains(warns(s, ThrustClass), "no rating usual on the voltage said") {
		t.Errorf("no word that the class is not built for 12 volts: %q", warns(s, ThrustClass))
	}
}

// A voltage that is wished for chooses among its own ratings; a motor in hand is
// judged against all.
func TestClassAtTheVoltageSaid(t *testing.T) {
	for _, c := range []struct {
		given []Given
		want  int
	}{
		{[]Given{lbs(LoadTotal, 1900)}, 40},
		{[]Given{lbs(LoadTotal, 1900), num(MotorVoltage, 24)}, 70},
		{[]Given{lbs(LoadTotal, 1900), num(MotorVoltage, 36)}, 90},
		{[]Given{lbs(LoadTotal, 3600), num(MotorVoltage, 12)}, 80},
		{[]Given{lbs(LoadTotal, 1900), num(MotorVoltage, 24), lbf(MotorThrust, 80)}, 40},
	} {
		if s := solved(thrustFigures, c.given...); classOf(s) != c.want {
			t.Errorf("%v: class %d lb, want %d", c.given, classOf(s), c.want)
		}
	}
}

// A randomBoat draws a boat that a shop might see.
func randomBoat(t *rapid.T) []Given {
	b := typical.Boats[rapid.IntRange(0, len(typical.Boats)-1).Draw(t, "hull")]
	length := float64(b.Usual.Nominal) * rapid.Float64Range(0.85, 1.15).Draw(t, "length")
	dry, _ := b.Dry.Value(unit.Length(length), 3)
	load := float64(dry.Nominal) * rapid.Float64Range(1.3, 3).Draw(t, "load")
	given := []Given{txt(BoatHull, b.Kind), num(BoatLength, length), num(LoadTotal, load)}
	if rapid.Bool().Draw(t, "wind said") {
		given = append(given, num(WindSpeed, rapid.Float64Range(0, 14).Draw(t, "wind")))
	}
	if rapid.Bool().Draw(t, "current said") {
		given = append(given, num(CurrentSpeed, rapid.Float64Range(0, 1.5).Draw(t, "current")))
	}
	return given
}

// more returns the givens with one cell raised.
func more(given []Given, id ID, by float64) []Given {
	out := slices.Clone(given)
	for i := range out {
		if out[i].ID == id {
			out[i].Value = band.Exactly(out[i].Value.Nominal + by)
			return out
		}
	}
	return append(out, num(id, by))
}

func TestMoreOfAnythingNeverNeedsLess(t *testing.T) {
	for _, c := range []struct {
		cell ID
		most float64
	}{{LoadTotal, 600}, {CurrentSpeed, 0.8}, {WindSpeed, 8}} {
		rapid.Check(t, func(t *rapid.T) {
			given := randomBoat(t)
			if c.cell == WindSpeed && !slices.ContainsFunc(given, func(g Given) bool { return g.ID == WindSpeed }) {
				given = append(given, num(WindSpeed, 3)) // against what is said, not against what is assumed
			}
			raised := more(given, c.cell, rapid.Float64Range(0, c.most).Draw(t, "more"))
			low, high := solved(thrustFigures, given...), solved(thrustFigures, raised...)
			if !low.Has(ThrustNeed) || !high.Has(ThrustNeed) {
				return // beyond what motors stem
			}
			for _, id := range []ID{ThrustRule, ThrustNeed, ThrustClass, SystemVoltage} {
				if low.Has(id) && high.Has(id) && high.Value(id) < low.Value(id)*(1-1e-9) {
					t.Fatalf("more %s: %s falls from %g to %g", c.cell, id, low.Value(id), high.Value(id))
				}
			}
		})
	}
}

func TestClassNeverRoundsDown(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := solved(thrustFigures, randomBoat(t)...)
		if !s.Has(ThrustClass) {
			return
		}
		need, class := s.Value(ThrustNeed), s.Value(ThrustClass)
		if class < need*(1-1e-9) {
			t.Fatalf("class %g N below a need of %g N", class, need)
		}
		i := slices.Index(ThrustLadder, class)
		if i < 0 || i > 0 && ThrustLadder[i-1] >= need {
			t.Fatalf("class %g N is not the next above %g N", class, need)
		}
		b := s.Step(ThrustClass).Band
		if !slices.Contains(ThrustLadder, b.Low) || !slices.Contains(ThrustLadder, b.High) {
			t.Fatalf("the band of the class, %v, ends between ratings", b)
		}
	})
}

// The class that is chosen for a wind and a current holds them.
func TestClassHoldsWhatItWasChosenFor(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		given := randomBoat(t)
		s := solved(append(slices.Clone(thrustFigures), WindSpeed), given...)
		if !s.Has(ThrustClass) {
			return
		}
		if held, wind := s.Value(HoldWind), s.Value(WindSpeed); held < wind {
			t.Fatalf("fitted for %g m/s, holds %g", wind, held)
		}
		if s.Value(HoldWindDay) > s.Value(HoldWind) {
			t.Fatalf("holds %g m/s all day and %g at full throttle", s.Value(HoldWindDay), s.Value(HoldWind))
		}
	})
}

func TestReserveIsAppliedOnce(t *testing.T) {
	boat := []Given{txt(BoatHull, "flats"), ftIn(BoatLength, 17, 0), lbs(LoadTotal, 1400), mph(WindSpeed, 18)}
	s := solved([]ID{ThrustWind, PullWind, WayWind, ThrustFree}, boat...)
	bare, err := prop.Rating(unit.Force(s.Value(PullWind)), unit.Speed(s.Value(WayWind)), unit.Speed(s.Value(ThrustFree)))
	if err != nil {
		t.Fatal(err)
	}
	if got := s.Value(ThrustWind) / float64(bare); math.Abs(got-prop.Reserve) > 1e-9 {
		t.Errorf("the rating is %g times the bare one", got)
	}
}
