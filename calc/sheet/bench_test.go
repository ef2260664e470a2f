package sheet

import "testing"

// BenchmarkSheet is a whole fitting: an aluminum boat of a stated length and
// load on a windy lake, all figures with their bands, and every figure at both
// ends of everything that could be asked. The parts stand beside the whole.
func BenchmarkSheet(b *testing.B) {
	q := Question{Given: []Given{ftIn(BoatLength, 18, 0), txt(BoatMaterial, "aluminum"), lbs(LoadTotal, 1900), windFrom(12, 15, 20)}, Want: figures()}
	book := StandardBook()
	s := book.Solve(q)
	b.Run("whole", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			book.Solve(q).Moves(q.Want)
		}
	})
	b.Run("values", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			book.solve(q)
		}
	})
	b.Run("bands", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			s.setBands()
		}
	})
	b.Run("moves", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			s.Moves(q.Want)
		}
	})
}
