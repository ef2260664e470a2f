package sheet

import (
	"testing"

	"pgregory.net/rapid"
)

// One trial after another comes to what new solutions come to, cell by cell:
// nothing of the question before is left.
func TestTrialsComeToTheValuesOfSolutions(t *testing.T) {
	book, trial := StandardBook(), StandardBook().NewTrial()
	agrees := func(t interface{ Errorf(string, ...any) }, q Question) {
		trial.Solve(q)
		s := book.SolveNominal(q)
		for _, id := range All() {
			if trial.Has(id) != s.Has(id) || trial.Value(id) != s.Value(id) || trial.Word(id) != s.Word(id) {
				t.Errorf("%s: a trial gives %g %q (%v), a solution %g %q (%v)",
					id, trial.Value(id), trial.Word(id), trial.Has(id), s.Value(id), s.Word(id), s.Has(id))
			}
		}
	}
	for _, b := range boats {
		agrees(t, Question{Given: b.given, Duty: b.duty, Want: figures()})
	}
	rapid.Check(t, func(t *rapid.T) {
		given := randomBoat(t)
		agrees(t, Question{Given: given[rapid.IntRange(0, 2).Draw(t, "left out"):], Want: figures()})
	})
}

func BenchmarkTrial(b *testing.B) {
	q := Question{Given: []Given{ftIn(BoatLength, 18, 0), txt(BoatMaterial, "aluminum"), lbs(LoadTotal, 1900), windFrom(12, 15, 20)}, Want: figures()}
	trial := StandardBook().NewTrial()
	b.ReportAllocs()
	for b.Loop() {
		trial.Solve(q)
	}
}
