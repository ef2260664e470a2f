package sheet

import (
	"math"
	"testing"

	_ "heronlake.example/ask/tests/seeded"
	"pgregory.net/rapid"

	"heronlake.example/ask/calc/typical"
)

// Whatever numbers are said, nothing but numbers comes out: what a formula does
// not hold for is an error, and the rest stands.
func TestExtremesGiveNumbersOrErrors(t *testing.T) {
	words := map[ID][]string{
		BoatHull:         {typical.Jon, typical.Pontoon, typical.Kayak, typical.Sailboat, "barge", ""},
		MotorSpeeds:      {"fixed", "variable", "stepless"},
		MotorDrive:       {"brushed", "brushless", "steam"},
		UseStyle:         {"trolling", "nothing much"},
		BatteryChemistry: {"flooded", "lithium", "nickel"},
		BatteryLayout:    {"series", "parallel", "heap"},
		MountPlace:       {"bow", "transom", "mast"},
		WaterKind:        {"fresh", "salt", "mud"},
	}
	scale := []float64{0, 1e-9, 0.01, 0.5, 1, 3, 40, 1000, 1e9}
	var slots []ID
	for _, id := range All() {
		if c := id.Describe(); !c.Figure && len(StandardBook().gives[id]) == 0 || id == LoadTotal {
			slots = append(slots, id)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		var given []Given
		for range rapid.IntRange(1, 8).Draw(t, "said") {
			id := rapid.SampledFrom(slots).Draw(t, "cell")
			if id.Describe().Word {
				if w := words[id]; w != nil {
					given = append(given, txt(id, rapid.SampledFrom(w).Draw(t, "word")))
				}
				continue
			}
			given = append(given, num(id, rapid.SampledFrom(scale).Draw(t, "value")))
		}
		if rapid.Bool().Draw(t, "a hull") {
			given = append(given, txt(BoatHull, rapid.SampledFrom(words[BoatHull]).Draw(t, "hull")))
		}
		s := StandardBook().Solve(Question{Given: given, Want: All()})
		for _, st := range s.Steps() {
			for _, x := range []float64{st.Value, st.Band.Low, st.Band.High} {
				if math.IsNaN(x) || math.IsInf(x, 0) {
					t.Fatalf("%s is %g, %v; given %v", st.ID, st.Value, st.Band, given)
				}
			}
			if st.Band.Low > st.Value || st.Value > st.Band.High {
				t.Fatalf("%s is %g, outside its band %v; given %v", st.ID, st.Value, st.Band, given)
			}
		}
		s.Moves(figures())
	})
}
