package sheet

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/calc/wind"
)

var windCells = []ID{WindSpeed, WindGustFactor, WindAboard, WindFrontal, WindLateral, WindPeople, WindTop, WindDragArea, WindForce, WindGusts, WindSwing, WindAllowance, ChopForce, WindUpper, WindYaw}

func TestWindFromWhatWasSaid(t *testing.T) {
	boat := []Given{txt(BoatHull, "vee"), ftIn(BoatLength, 17, 0)}
	for _, c := range []struct {
		name       string
		given      []Given
		speed      float64 // mph
		gustFactor float64
	}{
		{"nothing", nil, 8, 1.3},
		{"wind", []Given{mph(WindSpeed, 15)}, 15, 1.3},
		{"wind and gusts", []Given{mph(WindSpeed, 15), mph(WindGust, 25)}, 15, 25.0 / 15},
		{"gusts alone", []Given{mph(WindGust, 26)}, 20, 1.3},
		{"gusts below the wind", []Given{mph(WindSpeed, 15), mph(WindGust, 10)}, 15, 1},
		{"waves alone", []Given{ftIn(ChopHeight, 1, 0)}, 13, 1.3},
	} {
		s := solved(windCells, append(slices.Clone(boat), c.given...)...)
		if got := mphOf(s, WindSpeed); math.Abs(got-c.speed) > 1e-9 {
			t.Errorf("%s: %g mph, want %g", c.name, got, c.speed)
		}
		if got := s.Value(WindGustFactor); math.Abs(got-c.gustFactor) > 1e-9 {
			t.Errorf("%s: gusts of %g, want %g", c.name, got, c.gustFactor)
		}
		if c.name == "nothing" && s.Step(WindSpeed).Origin != Assumed {
			t.Error("an unsaid wind is not listed as assumed")
		}
	}
}

// Tables at their own lengths and between them.
func TestWindageOfTheBoat(t *testing.T) {
	for _, c := range []struct {
		hull             string
		feet             float64
		frontal, lateral float64
	}{{"jon", 14, 0.8, 1.7}, {"vee", 18, 1.8, 3.9}, {"vee", 17, 1.475, 3.45}, {"bass", 20, 1.7, 3.4}, {"pontoon", 22, 2.9, 6.75}, {"kayak", 12, 0.15, 0.7}} {
		s := solved(windCells, txt(BoatHull, c.hull), ftIn(BoatLength, c.feet, 0))
		if math.Abs(s.Value(WindFrontal)-c.frontal) > 1e-9 || math.Abs(s.Value(WindLateral)-c.lateral) > 1e-9 {
			t.Errorf("%s of %g ft: %g and %g m2, want %g and %g", c.hull, c.feet, s.Value(WindFrontal), s.Value(WindLateral), c.frontal, c.lateral)
		}
	}
}

func TestBeamAndFreeboardCount(t *testing.T) {
	area := func(given ...Given) float64 {
		return solved(windCells, append([]Given{txt(BoatHull, "vee"), ftIn(BoatLength, 16, 0)}, given...)...).Value(WindFrontal)
	}
	usual := area()
	if wide := area(ftIn(BoatBeam, 7, 6)); !(wide > usual) {
		t.Errorf("a wide boat shows %g m2, a usual one %g", wide, usual)
	}
	if high := area(ftIn(BoatFreeboard, 2, 6)); !(high > usual) {
		t.Errorf("high sides show %g m2, usual ones %g", high, usual)
	}
	b, _ := typical.BoatOf("vee")
	beam, _ := b.Beam.Value(unit.Feet(16), 1)
	if same := area(num(BoatBeam, float64(beam.Nominal))); math.Abs(same-usual) > 1e-9 {
		t.Errorf("the usual beam, said, changes %g m2 to %g", usual, same)
	}
}

func TestPeopleConsoleAndTop(t *testing.T) {
	boat := []Given{txt(BoatHull, "vee"), ftIn(BoatLength, 16, 0), num(PeopleCount, 2)}
	at := func(id ID, given ...Given) float64 {
		return solved(windCells, append(slices.Clone(boat), given...)...).Value(id)
	}
	if got := at(WindPeople, txt(PeoplePosture, "standing")); math.Abs(got-0.84*1.7) > 1e-9 {
		t.Errorf("two standing: %g m2", got)
	}
	if got := at(WindPeople, txt(PeoplePosture, "seated")); math.Abs(got-0.56*1.7) > 1e-9 {
		t.Errorf("two seated: %g m2", got)
	}
	if got := at(WindTop); got != 0 {
		t.Errorf("a top that nobody spoke of: %g m2", got)
	}
	if got := at(WindTop, txt(BoatConsole, "true")); math.Abs(got-1.1*0.5) > 1e-9 {
		t.Errorf("console: %g m2", got)
	}
	if got := at(WindTop, txt(BoatConsole, "false"), txt(BoatTop, "true")); math.Abs(got-1.1*0.8) > 1e-9 {
		t.Errorf("top: %g m2", got)
	}
	bay := solved(windCells, txt(BoatHull, "bay"), txt(BoatConsole, "true"))
	if got := bay.Value(WindTop); got != 0 {
		t.Errorf("a bay boat's own console is counted again: %g m2", got)
	}
}

func TestSwinging(t *testing.T) {
	for _, c := range []struct {
		given []Given
		want  float64
	}{
		{[]Given{txt(MountPlace, "bow")}, 1.15},
		{[]Given{txt(MountPlace, "transom")}, 1.3},
		{[]Given{txt(MountPlace, "bow"), mph(CurrentSpeed, 1.5)}, 1.3},
	} {
		s := solved(windCells, append([]Given{txt(BoatHull, "vee")}, c.given...)...)
		if got := s.Value(WindYaw); got != c.want {
			t.Errorf("%v: %g, want %g", c.given, got, c.want)
		}
	}
}

// The yaw factors of the trade hold Blendermann's boats at the angles that a
// boat held by its bow swings through.
func TestYawBandAgainstBlendermann(t *testing.T) {
	boat, err := wind.VesselNamed("speed boat")
	if err != nil {
		t.Fatal(err)
	}
	for _, kind := range []string{typical.Vee, typical.Bass, typical.Flats} {
		s := solved(windCells, txt(BoatHull, kind))
		at := func(degrees float64) float64 {
			hull := boat.YawFactor(wind.Degrees(degrees), unit.Area(s.Value(WindFrontal)), unit.Area(s.Value(WindLateral)))
			// People are as broad from any side: only the hull's part grows.
			share := s.Value(WindFrontal) * boat.Bow / (s.Value(WindFrontal)*boat.Bow + s.Value(WindPeople))
			return 1 + share*(hull-1)
		}
		if low, high := at(5), at(20); low < typical.WindYaw.Low || high > typical.WindYaw.High || !(low < typical.WindYaw.Nominal && typical.WindYaw.Nominal < high) {
			t.Errorf("%s: %.3f at 5 degrees, %.3f at 20; the allowance is %v", kind, low, high, typical.WindYaw)
		}
	}
}

// Blendermann's speed boat abeam: the coefficient on the lateral area, and the
// people besides, who are as broad from the side.
func TestBroadside(t *testing.T) {
	boat, err := wind.VesselNamed("speed boat")
	if err != nil {
		t.Fatal(err)
	}
	s := solved(append([]ID{WindBroadside}, windCells...), txt(BoatHull, "bass"), ftIn(BoatLength, 18, 0), num(WindSpeed, 7))
	_, hull := boat.Loads(unit.Speed(s.Value(WindAboard)), wind.Degrees(90), unit.Area(s.Value(WindFrontal)), unit.Area(s.Value(WindLateral)))
	want := float64(hull + wind.Force(unit.Speed(s.Value(WindAboard)), unit.Area(s.Value(WindPeople)+s.Value(WindTop))))
	if got := s.Value(WindBroadside); math.Abs(got-want) > 1e-9*want {
		t.Errorf("%g N from the side, Blendermann gives %g N", got, want)
	}
	if !(s.Value(WindBroadside) > 1.3*s.Value(WindForce)) {
		t.Errorf("%g N from the side, %g N on the bow", s.Value(WindBroadside), s.Value(WindForce))
	}
}

// The whole pull of the wind never comes up to the anchor load of ABYC H-40, in
// which surge is counted.
func TestWindBelowTheAnchorLoad(t *testing.T) {
	for _, b := range typical.Boats {
		if b.Kind == typical.Pontoon || b.Kind == typical.Sailboat {
			continue // bluff above their length: outside what the standard had in mind
		}
		s := solved(windCells, txt(BoatHull, b.Kind), num(WindSpeed, 9))
		if pull := s.Value(WindForce) + s.Value(WindAllowance); !(pull < s.Value(WindUpper)) {
			t.Errorf("%s: %.0f N of wind, the anchor load is %.0f N", b.Kind, pull, s.Value(WindUpper))
		}
	}
}

// A wind said is worth more than its wave: doubling it quadruples the force.
func TestForceGoesWithTheSquare(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := rapid.Float64Range(1, 12).Draw(t, "wind")
		boat := []Given{txt(BoatHull, "bass"), ftIn(BoatLength, 18, 0)}
		one, two := solved(windCells, append(slices.Clone(boat), num(WindSpeed, w))...), solved(windCells, append(slices.Clone(boat), num(WindSpeed, 2*w))...)
		for _, id := range []ID{WindForce, WindGusts, WindSwing, WindAllowance} {
			if r := two.Value(id) / one.Value(id); math.Abs(r-4) > 1e-9 {
				t.Fatalf("%s grew %g times", id, r)
			}
		}
	})
}
