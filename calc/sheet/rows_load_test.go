package sheet

import (
	"math"
	"testing"

	"heronlake.example/ask/calc/unit"
	"pgregory.net/rapid"
)

func solve(want ID, given ...Given) *Solution {
	return StandardBook().Solve(Question{Given: given, Want: []ID{want}})
}

func pounds(t *testing.T, s *Solution, id ID) float64 {
	t.Helper()
	if !s.Has(id) {
		t.Fatalf("%s is unknown: %v, missing %v", id, s.Err(id), s.Missing(id))
	}
	return unit.Mass(s.Value(id)).Pounds()
}

func wantPounds(t *testing.T, s *Solution, id ID, want float64) {
	t.Helper()
	if got := pounds(t, s, id); math.Abs(got-want) > 0.5 {
		t.Errorf("%s = %.1f lb, want %.1f lb", id, got, want)
	}
}

func TestLoadedWeightAsSaid(t *testing.T) {
	s := solve(LoadTotal, lbs(LoadTotal, 1725), txt(BoatHull, "vee"), ftIn(BoatLength, 16, 0))
	wantPounds(t, s, LoadTotal, 1725)
	if n := len(s.Chain(LoadTotal)); n != 1 {
		t.Errorf("a weight that was said rests on %d steps", n)
	}
}

// 1550 + 1 x 185 (46 CFR 170.090(d)) + 40.
func TestLoadedWeightAfterAChange(t *testing.T) {
	s := solve(LoadTotal, lbs(LoadSaid, 1550), num(PeopleMore, 1), lbs(LoadAdded, 40))
	wantPounds(t, s, LoadTotal, 1775)
	if w := s.Working(s.Step(LoadTotal), unit.US); w != "1,550 lb + 1 x 185 lb + 40 lb" {
		t.Errorf("worked as %q", w)
	}
	wantPounds(t, solve(LoadTotal, lbs(LoadSaid, 1550), num(PeopleMore, -1), lbs(PeopleEach, 200)), LoadTotal, 1350)
	wantPounds(t, solve(LoadTotal, lbs(LoadSaid, 1550), lbs(LoadAdded, -60)), LoadTotal, 1490)
}

// Every part said but motor and battery: 240 + 90 + 36.6 + 380 + 70, a clamp
// motor of 24 and a group 27 of 58.
func TestLoadedWeightFromParts(t *testing.T) {
	s := solve(LoadTotal, txt(BoatHull, "jon"), ftIn(BoatLength, 13, 8), lbs(LoadDry, 240), num(PeopleCount, 2), lbs(PeopleEach, 190),
		lbs(LoadEngine, 90), num(FuelVolume, unit.USGallons(6).Litres()), lbs(LoadGear, 70))
	wantPounds(t, s, LoadFuel, 36.6)
	wantPounds(t, s, LoadTotal, 898.6)
	st := s.Step(LoadTotal)
	if st.Band.Low >= st.Value || st.Band.High <= st.Value {
		t.Errorf("the estimated motor and battery leave no band: %v", st.Band)
	}
}

func TestLoadAssumptions(t *testing.T) {
	jon := []Given{txt(BoatHull, "jon"), ftIn(BoatLength, 14, 0)}
	for _, x := range []struct {
		name  string
		id    ID
		given []Given
		want  float64 // lb
	}{
		{"a 14-ft jon's hull", LoadDry, jon, 230},
		{"the same in glass", LoadDry, append(jon[:2:2], txt(BoatMaterial, "fiberglass")), 287.5},
		{"its 10-hp engine, ABYC S-30 Table 1A", LoadEngine, jon, 110 + 5 + 20},
		{"an engine of 60 hp, the same table", LoadEngine, append(jon[:2:2], num(EnginePower, unit.Horsepower(60).Watts())), 300 + 14 + 45},
		{"no engine on a canoe", LoadEngine, []Given{txt(BoatHull, "canoe"), ftIn(BoatLength, 15, 0)}, 0},
		{"a pontoon boat with a third tube", LoadDry, []Given{txt(BoatHull, "pontoon"), ftIn(BoatLength, 20, 0), num(BoatTubes, 3)}, 1850 * 1.2},
		{"two people's gear and the boat's", LoadGear, jon, 100 + 2*30},
		{"two batteries of group 31", LoadBatteries, []Given{num(BatteryCount, 2), txt(BatteryGroup, "31")}, 132},
		{"one lithium battery of 50 Ah", LoadBatteries, []Given{num(BatteryCount, 1), num(BatteryCapacity, 50), txt(BatteryChemistry, "lithium")}, 13},
		{"three batteries for 36 volts", LoadBatteries, []Given{num(MotorVoltage, 36)}, 174},
		{"a folding bow motor for 24 volts", LoadMotor, []Given{num(MotorVoltage, 24), txt(MountKind, "folding-arm")}, 75},
		{"two clamp motors", LoadMotor, []Given{num(MotorCount, 2), txt(MountKind, "clamp")}, 48},
	} {
		s := solve(x.id, x.given...)
		if got := pounds(t, s, x.id); math.Abs(got-x.want) > 0.5 {
			t.Errorf("%s: %.1f lb, want %.1f lb", x.name, got, x.want)
		}
	}
}

func TestHullGuess(t *testing.T) {
	for _, x := range []struct {
		name  string
		given []Given
		want  string
	}{
		{"aluminum, 17 ft", []Given{txt(BoatMaterial, "aluminum"), ftIn(BoatLength, 17, 0)}, "vee"},
		{"aluminum, 11 ft", []Given{txt(BoatMaterial, "aluminum"), ftIn(BoatLength, 11, 0)}, "jon"},
		{"glass, 19 ft", []Given{txt(BoatMaterial, "fiberglass"), ftIn(BoatLength, 19, 0)}, "bass"},
		{"glass, 23 ft", []Given{txt(BoatMaterial, "fiberglass"), ftIn(BoatLength, 23, 0)}, "bay"},
		{"plastic, light", []Given{txt(BoatMaterial, "polyethylene"), lbs(LoadTotal, 310)}, "kayak"},
		{"plastic, heavy", []Given{txt(BoatMaterial, "polyethylene"), lbs(LoadTotal, 700), ftIn(BoatLength, 10, 0)}, "jon"},
		{"fabric", []Given{txt(BoatMaterial, "fabric")}, "inflatable"},
		{"weight alone", []Given{lbs(LoadTotal, 1400)}, "vee"},
		{"a kayak's bracket", []Given{txt(MountKind, "bracket")}, "kayak"},
		{"a long boat with a console", []Given{ftIn(BoatLength, 22, 0), txt(BoatConsole, "true")}, "bay"},
		{"nothing", nil, ""},
		{"wind alone", []Given{mph(WindSpeed, 10)}, ""},
		{"deck height alone", []Given{ftIn(MountHeight, 2, 0)}, ""},
	} {
		if got := solve(BoatHull, x.given...).Word(BoatHull); got != x.want {
			t.Errorf("%s: taken for %q, want %q", x.name, got, x.want)
		}
	}
}

// A guessed hull may not rest on a weight that itself rests on the hull.
func TestHullGuessReadsOnlyWhatWasSaid(t *testing.T) {
	s := StandardBook().Solve(Question{Given: []Given{ftIn(BoatLength, 16, 0)}, Want: []ID{LoadTotal, BoatHull}})
	for _, st := range s.Chain(BoatHull) {
		if st.ID == LoadTotal || st.ID == LoadDry {
			t.Errorf("the guess rests on %s", st.ID)
		}
	}
}

// 1100 - (4 x 175 + 90 + 240 + 6 gal of fuel at 6.1 + motor 50 + two usual
// batteries of 58).
func TestLeftUnderThePlate(t *testing.T) {
	s := solve(LoadMargin, lbs(LoadPlate, 1100), num(PeopleCount, 4), lbs(PeopleEach, 175), lbs(LoadGear, 90), lbs(LoadEngine, 240), num(BatteryCount, 2))
	wantPounds(t, s, LoadMargin, 1100-(700+90+240+36.6+50+116))
	if b := s.Step(LoadMargin).Band; !(b.Low < b.Nominal && b.Nominal < b.High) {
		t.Errorf("no band: %v", b)
	}
	// The hull and what it weighs stay out of it.
	boat := []Given{lbs(LoadPlate, 1100), num(PeopleCount, 4), txt(BoatHull, "vee"), ftIn(BoatLength, 16, 0), num(BatteryCount, 2)}
	light := solve(LoadMargin, append(boat[:5:5], lbs(LoadDry, 500))...)
	heavy := solve(LoadMargin, append(boat[:5:5], lbs(LoadDry, 900), lbs(LoadTotal, 2400))...)
	if a, b := pounds(t, light, LoadMargin), pounds(t, heavy, LoadMargin); math.Abs(a-b) > 1e-9 {
		t.Errorf("the margin moved from %.1f to %.1f lb with the hull's weight", a, b)
	}
}

// (1000 - 240 - 36.6 - 50 - 58 - 90 + 32) / 141 = 3.95.
func TestPeopleThatThePlateLeavesRoomFor(t *testing.T) {
	s := solve(PeopleMost, lbs(LoadPlate, 1000), lbs(LoadEngine, 240), num(BatteryCount, 1), lbs(LoadGear, 90))
	if got := s.Value(PeopleMost); got != 4 {
		t.Errorf("room for %g people, want 4", got)
	}
}

// Nothing said of the engine: one is assumed, and it may be asked for.
func TestPlateReckonsWithAnEngine(t *testing.T) {
	s := solve(LoadMargin, lbs(LoadPlate, 1000), num(PeopleCount, 3))
	st := s.Step(LoadEngine)
	if st == nil || st.Origin != Assumed || !st.Band.Wide() {
		t.Fatalf("%+v", st)
	}
	if none := solve(LoadMargin, lbs(LoadPlate, 1000), num(PeopleCount, 3), lbs(LoadEngine, 0)); pounds(t, none, LoadMargin) <= pounds(t, s, LoadMargin) {
		t.Error("no engine leaves no more than an engine")
	}
}

func TestPlateOfAPontoonIsNotTheRule(t *testing.T) {
	s := solve(LoadMargin, lbs(LoadPlate, 1800), txt(BoatHull, "pontoon"), ftIn(BoatLength, 21, 0))
	if st := s.Step(LoadMargin); st == nil || len(st.Warnings) == 0 {
		t.Error("no word that the federal rule leaves pontoon boats out")
	}
}

func TestMoreAboardNeverWeighsLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		hull := rapid.SampledFrom([]string{"jon", "vee", "bass", "pontoon", "canoe", "kayak"}).Draw(t, "hull")
		feet := rapid.Float64Range(10, 24).Draw(t, "feet")
		n := rapid.Float64Range(1, 6).Draw(t, "people")
		more := rapid.Float64Range(0, 3).Draw(t, "more")
		of := func(people float64) *Solution {
			return StandardBook().solve(Question{Given: []Given{txt(BoatHull, hull), ftIn(BoatLength, feet, 0), num(PeopleCount, people), lbs(LoadPlate, 1200)}, Want: []ID{LoadTotal, LoadMargin}})
		}
		a, b := of(n), of(n+more)
		if b.Value(LoadTotal) < a.Value(LoadTotal) || b.Value(LoadMargin) > a.Value(LoadMargin)+1e-9 {
			t.Fatalf("%g people: %g kg, %g left; %g people: %g kg, %g left", n, a.Value(LoadTotal), a.Value(LoadMargin), n+more, b.Value(LoadTotal), b.Value(LoadMargin))
		}
	})
}
