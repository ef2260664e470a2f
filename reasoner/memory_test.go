package reasoner

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"heronlake.example/ask/reasoner/card"
)

// A card that is taken out and put back gives the same figures, for every kind
// of fact that can be said.
func TestRestoredBoatGivesTheSameFigures(t *testing.T) {
	for _, talk := range []string{
		heronBoat,
		"14 ft jon, 700 lb loaded, 45 lb thrust 12 volt, 30 amps, AGM 100 Ah group 27, four-speed, pond with weeds, no swimming",
		"5 m fibreglass boat, 900 kg with everything, 3 people, salt water, must have position hold, a remote would be nice, lithium, two batteries in series, 20 ft of 6 gauge wire",
		"my 16 foot vee, 1,200 lb loaded, did 3.4 mph with a 55 lb motor, wind 10 to 15 mph, waves of a foot, budget under $2,500, 5 hours at half throttle and one at full",
		"12 ft canoe with two paddlers, 400 lb, electric-only lake, 40 degrees, charger 10 amps, 8 hours to charge",
	} {
		s := New(Options{}).NewSession()
		s.Ask(talk)
		kept := s.Card()
		other := New(Options{}).NewSession()
		for _, p := range other.Restore(kept).Problems {
			t.Errorf("%q: %s", talk, p.Text)
		}
		if diff := cmp.Diff(kept.Facts, other.Card().Facts, cmpopts.IgnoreFields(card.Fact{}, "Turn")); diff != "" {
			t.Errorf("%q: %s", talk, diff)
		}
		a, b := s.Sheet(), other.Sheet()
		if diff := cmp.Diff(a.Figures, b.Figures); diff != "" {
			t.Errorf("%q: %s", talk, diff)
		}
	}
}

func TestRestoreLeavesOutWhatCannotBe(t *testing.T) {
	x, low, high, nan := 5.0, 3.0, 2.0, 0.0
	nan /= nan
	bad := []card.Fact{
		{Slot: "sail.area", Value: &x}, {Slot: "", Value: &x}, {Slot: "thrust.need", Value: &x}, {Slot: "boat.hull", Text: "submarine"},
		{Slot: "boat.length", Text: "long"}, {Slot: "boat.length"}, {Slot: "wind.speed", Low: &low, High: &high}, {Slot: "load.total", Value: &nan},
		{Slot: "mount.height", Value: func() *float64 { y := 1e6; return &y }()}, {Slot: "load.total", Value: &x, Unit: "lb"},
		{Slot: "want.remote", Text: "perhaps"}, {Slot: "boat.length", Value: &x, Said: strings.Repeat("x", 1000)},
	}
	for _, f := range bad {
		s := New(Options{}).NewSession()
		good := card.Fact{Slot: "people.count", Value: &x, Unit: "1", Said: "five"}
		a := s.Restore(card.Card{Facts: []card.Fact{f, good}})
		if len(a.Problems) != 1 || len(s.Card().Facts) != 1 || s.Card().Facts[0].Slot != "people.count" {
			t.Errorf("%+v: problems %v, card %v", f, a.Problems, s.Card().Facts)
		}
	}
}

func TestTakingATurnBackKeepsTheName(t *testing.T) {
	s := New(Options{}).NewSession()
	s.Ask("16 ft jon, 900 lb loaded")
	s.Ask("make it lithium")
	s.Kept(card.Kept{Name: "jon", Revision: 3})
	s.Ask(":undo")
	if k := s.Card().Kept; k.Revision != 3 {
		t.Errorf("kept as %+v", k)
	}
	s.Ask(":fresh")
	if k := s.Card().Kept; k.Name != "" {
		t.Errorf("a fresh boat is kept as %+v", k)
	}
}
