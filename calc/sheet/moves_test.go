package sheet

import (
	"math"
	"testing"

	"heronlake.example/ask/calc/band"
)

// A what-if takes over what does not rest on the change; it must come to what a
// whole new solution comes to.
func TestMovesAgreeWithSolvingAgain(t *testing.T) {
	outputs := figures()
	book := StandardBook()
	for _, b := range boats {
		q := Question{Given: b.given, Duty: b.duty, Want: outputs}
		s := book.Solve(q)
		check := func(g Given, got Outputs) {
			again := q
			again.Given = append(append([]Given(nil), q.Given...), g)
			want := book.Solve(again)
			for _, id := range outputs {
				x, ok := got.Of(id)
				if ok != want.Has(id) || ok && math.Abs(x-want.Value(id)) > 1e-7*math.Abs(x) {
					t.Errorf("%s, %s at %g %s: %s is %g (%v), solving again gives %g (%v)",
						b.name, g.ID, g.Value.Nominal, g.Word, id, x, ok, want.Value(id), want.Has(id))
				}
			}
		}
		for _, m := range s.Moves(outputs) {
			st := s.Step(m.ID)
			if st.Origin != Assumed {
				t.Errorf("%s: %s is moved and was not assumed", b.name, m.ID)
			}
			for _, o := range m.Others {
				check(Given{ID: m.ID, Word: o.Word}, o.Outputs)
			}
			if m.Others == nil {
				check(Given{ID: m.ID, Value: band.Exactly(st.Band.Low)}, m.Low)
				check(Given{ID: m.ID, Value: band.Exactly(st.Band.High)}, m.High)
			}
		}
	}
}

func TestIfStatesACellThatWasSaid(t *testing.T) {
	s := StandardBook().Solve(Question{Given: []Given{txt(BoatHull, "vee"), ftIn(BoatLength, 17, 0), mph(WindSpeed, 10)}, Want: figures()})
	calm := s.If(mph(WindSpeed, 2), ThrustWind, LoadTotal)
	storm := s.If(mph(WindSpeed, 25), ThrustWind, LoadTotal)
	if !(calm[ThrustWind] < s.Value(ThrustWind) && s.Value(ThrustWind) < storm[ThrustWind]) {
		t.Errorf("thrust for the wind: %g at 2 mph, %g at 10, %g at 25", calm[ThrustWind], s.Value(ThrustWind), storm[ThrustWind])
	}
	if calm[LoadTotal] != s.Value(LoadTotal) {
		t.Errorf("the wind changed the load from %g to %g", s.Value(LoadTotal), calm[LoadTotal])
	}
}

// The band of a figure never leaves out its own value, and a wider assumption
// never makes it narrower.
func TestWiderAssumptionWiderBand(t *testing.T) {
	at := func(half float64) band.Band[float64] {
		s := StandardBook().Solve(Question{Want: []ID{ThrustWind}, Given: []Given{
			txt(BoatHull, "vee"), ftIn(BoatLength, 17, 0), span(WindSpeed, 6-half, 6, 6+half)}})
		return s.Step(ThrustWind).Band
	}
	before := at(0)
	for _, half := range []float64{0.5, 1, 2, 4} {
		b := at(half)
		if b.Low > before.Low || b.High < before.High {
			t.Errorf("wind known to %g m/s either way: band %v is not as wide as %v", half, b, before)
		}
		before = b
	}
}
