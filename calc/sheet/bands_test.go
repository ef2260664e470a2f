package sheet

import (
	"testing"

	"heronlake.example/ask/calc/unit"
)

// No band reaches below nothing, or a share above the whole, where there is no
// such thing: the ends are shown to people.
func TestBandsArePossible(t *testing.T) {
	gusty := append([]Given{txt(BoatHull, "bass"), ftIn(BoatLength, 19, 6), span(WindSpeed, 0, 3, 14), span(CurrentSpeed, 0, 0.5, 1.6)}, txt(MountPlace, "transom"))
	questions := []Question{{Given: gusty, Want: All()}}
	for _, b := range boats {
		questions = append(questions, Question{Given: b.given, Duty: b.duty, Want: All()})
	}
	for i, q := range questions {
		s := StandardBook().Solve(q)
		for _, st := range s.Steps() {
			c := st.ID.Describe()
			switch c.Form {
			case unit.Degree, unit.InsulationClass, unit.WireGauge:
				continue
			case unit.Fraction:
				if st.Value <= 1 && st.Band.High > 1 && !mayBeNegative(st.ID) {
					t.Errorf("question %d: %s reaches to %g", i, st.ID, st.Band.High)
				}
			}
			if st.Value >= 0 && st.Band.Low < 0 && !mayBeNegative(st.ID) {
				t.Errorf("question %d: %s reaches from %g", i, st.ID, st.Band.Low)
			}
			if !(st.Band.Low <= st.Value && st.Value <= st.Band.High) {
				t.Errorf("question %d: %s is %g outside its band %g to %g", i, st.ID, st.Value, st.Band.Low, st.Band.High)
			}
		}
	}
	swing := StandardBook().Solve(questions[0]).Step(WindSwing)
	if swing == nil || swing.Band.Low != 0 || swing.Value <= 0 {
		t.Errorf("swinging across the wind: %+v, want a band from nothing", swing)
	}
	margin := StandardBook().Solve(Question{Given: []Given{lbs(LoadPlate, 300), lbs(LoadEngine, 200), num(PeopleCount, 3)}, Want: []ID{LoadMargin}}).Step(LoadMargin)
	if margin == nil || margin.Band.Low >= 0 {
		t.Errorf("an overloaded boat has a margin of %+v", margin)
	}
}

// Behind the larger of two routes the smaller one is told and not worked out.
func TestRanks(t *testing.T) {
	s := StandardBook().Solve(Question{Given: []Given{txt(BoatHull, "vee"), ftIn(BoatLength, 18, 0), lbs(LoadTotal, 1900)}, Want: []ID{ThrustNeed}})
	r := s.Ranks(ThrustNeed)
	if r[ThrustNeed] != Leading || r[ThrustRule] != Leading || r[LoadTotal] != Leading || r[ThrustBalance] != Beaten || r[WindForce] != Behind {
		t.Errorf("weight decides: need %d, rule %d, weight %d, forces %d, wind %d", r[ThrustNeed], r[ThrustRule], r[LoadTotal], r[ThrustBalance], r[WindForce])
	}
	s = StandardBook().Solve(Question{Given: []Given{txt(BoatHull, "kayak"), ftIn(BoatLength, 12, 0), lbs(LoadTotal, 300), mph(WindSpeed, 25)}, Want: []ID{ThrustNeed}})
	r = s.Ranks(ThrustNeed)
	if r[ThrustBalance] != Leading || r[WindForce] != Leading || r[ThrustRuleRaised] != Beaten || r[ThrustRatioRaised] != Behind {
		t.Errorf("forces decide: forces %d, wind %d, rule %d, ratio %d", r[ThrustBalance], r[WindForce], r[ThrustRuleRaised], r[ThrustRatioRaised])
	}
	if all := s.Ranks(ThrustNeed, ThrustRuleRaised); all[ThrustRatioRaised] != Leading {
		t.Error("a figure asked for by itself is not worked out")
	}
}
