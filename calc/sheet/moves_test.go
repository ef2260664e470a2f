package sheet

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"heronlake.example/ask/calc/band"
)

// searched is how far two searches for one crossing may end from each other: ten
// digits of the widest bracket there is, the winds up to a storm.
const searched = 1e-10 * float64(highestWind)

// agree compares every what-if of a question with a whole new solution.
func agree(t interface{ Errorf(string, ...any) }, q Question) {
	book := StandardBook()
	s := book.Solve(q)
	check := func(g Given, got Outputs) {
		again := q
		again.Given = append(append([]Given(nil), q.Given...), g)
		want := book.Solve(again)
		for _, id := range q.Want {
			x, ok := got.Of(id)
			if ok != want.Has(id) || ok && math.Abs(x-want.Value(id)) > 1e-7*math.Abs(x)+searched {
				t.Errorf("%s at %g %s: %s is %g (%v), solving again gives %g (%v)",
					g.ID, g.Value.Nominal, g.Word, id, x, ok, want.Value(id), want.Has(id))
			}
		}
	}
	for _, m := range s.Moves(q.Want) {
		st := s.Step(m.ID)
		if st.Origin != Assumed {
			t.Errorf("%s is moved and was not assumed", m.ID)
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

// A what-if takes over what does not rest on the change; it must come to what a
// whole new solution comes to, for all figures and for a few.
func TestMovesAgreeWithSolvingAgain(t *testing.T) {
	for _, b := range boats {
		for _, want := range [][]ID{figures(), {ThrustClass, ShaftClass, SystemVoltage}, {RuntimeCruise, HoldWind}} {
			t.Run(b.name, func(t *testing.T) { agree(t, Question{Given: b.given, Duty: b.duty, Want: want}) })
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		given := randomBoat(t)
		extra := []Given{num(MotorCount, 2), lbf(MotorThrust, 70), num(MotorVoltage, 24), num(BatteryCount, 2), txt(BatteryLayout, "series"),
			num(UseThrottle, 0.4), num(UseSpeed, 1), num(UseHours, 5), txt(UseStyle, "jigging"), ftIn(ChopHeight, 1, 0), txt(MountPlace, "transom"),
			num(MotorAmps, 45), ftIn(WireRun, 15, 0), num(WireGaugeSaid, 6), num(BatteryReserve, 2), num(PeopleCount, 3)}
		for range rapid.IntRange(0, 4).Draw(t, "more said") {
			given = append(given, rapid.SampledFrom(extra).Draw(t, "said"))
		}
		agree(t, Question{Given: given[rapid.IntRange(0, 2).Draw(t, "left out"):], Want: figures()})
	})
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
