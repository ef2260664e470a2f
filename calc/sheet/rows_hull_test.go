package sheet

import (
	"testing"

	"heronlake.example/ask/calc/unit"
)

func BenchmarkDragAt(b *testing.B) {
	s := StandardBook().Solve(Question{Given: []Given{ftIn(BoatLength, 18, 0), txt(BoatMaterial, "aluminum"), lbs(LoadTotal, 1900)}, Want: hullNeeds})
	v := View{w: &s.walk, vals: s.walk.vals}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := dragAt(v, unit.MetresPerSecond(1.3)); err != nil {
			b.Fatal(err)
		}
	}
}
