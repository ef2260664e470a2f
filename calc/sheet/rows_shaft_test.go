package sheet

import (
	"math"
	"strings"
	"testing"

	"heronlake.example/ask/calc/unit"
	"pgregory.net/rapid"
)

func wantInches(t *testing.T, s *Solution, id ID, want float64) {
	t.Helper()
	if !s.Has(id) {
		t.Fatalf("%s is unknown: %v, missing %v", id, s.Err(id), s.Missing(id))
	}
	if got := unit.Length(s.Value(id)).Inches(); math.Abs(got-want) > 0.05 {
		t.Errorf("%s = %.2f in, want %.2f in", id, got, want)
	}
}

func deck(in float64) Given { return num(MountHeight, unit.Inches(in).Metres()) }

// 24 in of bow deck, 10 in of folding mount, 12 in of water.
func TestShaftForABowDeck(t *testing.T) {
	s := solve(ShaftClass, deck(24), txt(MountPlace, "bow"))
	wantInches(t, s, ShaftNeed, 46)
	wantInches(t, s, ShaftClass, 48)
	if w := s.Working(s.Step(ShaftNeed), unit.US); w != "24 in + 10 in + 12 in" {
		t.Errorf("worked as %q", w)
	}
}

func TestShaftByMount(t *testing.T) {
	for _, x := range []struct {
		name        string
		given       []Given
		need, class float64
	}{
		{"clamp on a jon's transom", []Given{deck(14), txt(MountKind, "clamp"), txt(BoatHull, "jon")}, 33, 36},
		{"kayak bracket", []Given{deck(10), txt(BoatHull, "kayak")}, 25, 30},
		{"compact mount", []Given{deck(20), txt(MountKind, "compact-pivot")}, 43, 48},
		{"foot of chop", []Given{deck(20), txt(MountPlace, "bow"), ftIn(ChopHeight, 1, 0)}, 49.2, 54},
		{"exactly on a step", []Given{deck(20), txt(MountPlace, "bow")}, 42, 42},
	} {
		s := solve(ShaftClass, x.given...)
		t.Run(x.name, func(t *testing.T) {
			wantInches(t, s, ShaftNeed, x.need)
			wantInches(t, s, ShaftClass, x.class)
		})
	}
}

// "26 to 28 in, as the tank goes": the shaft must reach at 28.
func TestShaftForARangeOfHeights(t *testing.T) {
	in := func(x float64) float64 { return unit.Inches(x).Metres() }
	s := solve(ShaftClass, span(MountHeight, in(26), in(27), in(28)), txt(MountPlace, "bow"))
	wantInches(t, s, ShaftNeed, 50)
	wantInches(t, s, ShaftClass, 54)
	wantInches(t, solve(ShaftNeed, span(MountHeight, in(26), in(27), in(28)), ftIn(ChopHeight, 1, 0), txt(MountPlace, "bow")), ShaftNeed, 57.2)
}

// The length that just misses is named as tight, and still not picked.
func TestTightShaftIsNamed(t *testing.T) {
	s := solve(ShaftClass, deck(20.5), txt(MountPlace, "bow"))
	wantInches(t, s, ShaftClass, 48)
	if w := strings.Join(s.Step(ShaftClass).Warnings, " "); !strings.Contains(w, "42 in") || !strings.Contains(w, "tight") {
		t.Errorf("warnings %q", w)
	}
	if w := solve(ShaftClass, deck(22), txt(MountPlace, "bow")).Step(ShaftClass).Warnings; len(w) != 0 {
		t.Errorf("44 in of need: %q", w)
	}
}

// The reverse: what a motor's own shaft leaves.
func TestShaftInHand(t *testing.T) {
	s := solve(ShaftWaveLimit, deck(22), txt(MountPlace, "bow"), num(MotorShaft, unit.Inches(45).Metres()))
	wantInches(t, s, ShaftSubmerged, 13)
	wantInches(t, s, ShaftWaveLimit, (13-3-3)/0.6)
	short := solve(ShaftSubmerged, deck(30), txt(MountPlace, "bow"), num(MotorShaft, unit.Inches(36).Metres()))
	wantInches(t, short, ShaftSubmerged, -4)
	if len(short.Step(ShaftSubmerged).Warnings) == 0 {
		t.Error("a unit above the water passes without a word")
	}
	spare := solve(ShaftSpare, deck(24), txt(MountPlace, "bow"), num(MotorShaft, unit.Inches(42).Metres()))
	wantInches(t, spare, ShaftSpare, -4)
	wantInches(t, solve(ShaftStowed, num(MotorShaft, unit.Inches(54).Metres())), ShaftStowed, 69)
}

func TestShaftOutOfRange(t *testing.T) {
	for _, x := range []struct {
		name  string
		given []Given
		want  string
	}{
		{"a deck 8 ft up", []Given{deck(96), txt(MountPlace, "bow")}, "Mount surface"},
		{"a height below the water", []Given{deck(-3), txt(MountPlace, "bow")}, "Mount surface"},
		{"waves of 6 ft", []Given{deck(24), txt(MountPlace, "bow"), ftIn(ChopHeight, 6, 0)}, "Wave height"},
	} {
		s := solve(ShaftNeed, x.given...)
		if s.Has(ShaftNeed) {
			t.Errorf("%s: a need of %g m", x.name, s.Value(ShaftNeed))
			continue
		}
		err := s.Err(ShaftNeed)
		if err == nil {
			err = s.Err(ShaftChop)
		}
		if err == nil || !strings.Contains(err.Error(), x.want) {
			t.Errorf("%s: %v", x.name, err)
		}
	}
	long := solve(ShaftClass, deck(74), txt(MountPlace, "bow"), ftIn(ChopHeight, 1, 6))
	if long.Has(ShaftClass) || long.Err(ShaftClass) == nil {
		t.Errorf("a need of %g m got a class", long.Value(ShaftNeed))
	}
}

func TestMountGuess(t *testing.T) {
	for _, x := range []struct {
		name        string
		given       []Given
		place, kind string
	}{
		{"nothing", nil, "bow", "folding-arm"},
		{"kayak", []Given{txt(BoatHull, "kayak")}, "kayak", "bracket"},
		{"12-ft jon", []Given{txt(BoatHull, "jon"), ftIn(BoatLength, 12, 0)}, "transom", "clamp"},
		{"17-ft jon", []Given{txt(BoatHull, "jon"), ftIn(BoatLength, 17, 0)}, "bow", "folding-arm"},
		{"bass boat", []Given{txt(BoatHull, "bass")}, "bow", "folding-arm"},
		{"inflatable", []Given{txt(BoatHull, "inflatable")}, "transom", "clamp"},
		{"clamp said", []Given{txt(MountKind, "clamp"), txt(BoatHull, "vee"), ftIn(BoatLength, 18, 0)}, "transom", "clamp"},
		{"pedal said", []Given{txt(MotorControl, "foot-cable"), txt(BoatHull, "jon"), ftIn(BoatLength, 12, 0)}, "bow", "folding-arm"},
		{"remote said", []Given{txt(MotorControl, "remote"), txt(BoatHull, "bass")}, "bow", "compact-pivot"},
	} {
		s := StandardBook().Solve(Question{Given: x.given, Want: []ID{MountPlace, MountKind}})
		if s.Word(MountPlace) != x.place || s.Word(MountKind) != x.kind {
			t.Errorf("%s: %s on the %s, want %s on the %s", x.name, s.Word(MountKind), s.Word(MountPlace), x.kind, x.place)
		}
	}
}

func TestShopsOwnShafts(t *testing.T) {
	own := Ladder{unit.Inches(45).Metres(), unit.Inches(52).Metres()}
	s := StandardBook().Solve(Question{Given: []Given{deck(24), txt(MountPlace, "bow")}, Want: []ID{ShaftClass}, Ladders: map[ID]Ladder{ShaftClass: own}})
	wantInches(t, s, ShaftClass, 52)
}

// A motor and batteries on the bow of a 16-ft vee bring it down an inch or two,
// and a stern mount brings it down by nothing that is computed.
func TestBowSinks(t *testing.T) {
	s := solve(TrimFreeboard, txt(BoatHull, "vee"), ftIn(BoatLength, 16, 0), txt(MountPlace, "bow"), num(BoatFreeboard, unit.Inches(21).Metres()))
	sink := unit.Length(s.Value(TrimBowSink)).Inches()
	if sink < 0.5 || sink > 2.5 {
		t.Errorf("the bow goes down %.2f in", sink)
	}
	wantInches(t, s, TrimFreeboard, 21-sink)
	if solve(TrimBowSink, txt(BoatHull, "vee"), ftIn(BoatLength, 16, 0), txt(MountPlace, "transom")).Has(TrimBowSink) {
		t.Error("a motor on the stern sinks the bow")
	}
}

func TestShaftNeverRoundsDown(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		height := rapid.Float64Range(0, 55).Draw(t, "height")
		wave := rapid.Float64Range(0, 0.6).Draw(t, "wave")
		kind := rapid.SampledFrom([]string{"clamp", "folding-arm", "compact-pivot", "bracket"}).Draw(t, "mount")
		q := Question{Given: []Given{deck(height), num(ChopHeight, wave), txt(MountKind, kind)}, Want: []ID{ShaftClass, ShaftSubmerged}}
		s := StandardBook().solve(q)
		if !s.Has(ShaftClass) {
			t.Fatalf("no class: %v", s.Err(ShaftClass))
		}
		if s.Value(ShaftClass) < s.Value(ShaftNeed)-1e-9 {
			t.Fatalf("class %g below the need %g", s.Value(ShaftClass), s.Value(ShaftNeed))
		}
		higher := StandardBook().solve(Question{Given: []Given{deck(height + rapid.Float64Range(0, 8).Draw(t, "higher")), num(ChopHeight, wave), txt(MountKind, kind)}, Want: []ID{ShaftClass}})
		if higher.Has(ShaftClass) && higher.Value(ShaftClass) < s.Value(ShaftClass) {
			t.Fatalf("a higher deck takes a shorter shaft")
		}
	})
}
