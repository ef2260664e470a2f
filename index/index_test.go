package index

import (
	"testing"

	"heronlake.example/ask/kb"
)

func TestX(t *testing.T) {
	lib, err := kb.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	x, err := Open(lib)
	if err != nil {
		t.Fatal(err)
	}
	for _, q := range []string{"why does mine suck air in chop", "cable steer or electric?", "will a 55 push my 20 foot toon?", "is 42 too short", "how do i measure the bow hight", "what's the capital of france", "bow moter shaft lenght", "how do i bake sourdough bread"} {
		r := x.Search(kb.Query{Text: q})
		t.Logf("%s known %.2f corr %v", q, r.Known, r.Corrected)
		for _, h := range r.Hits {
			t.Logf("   %.2f %.2f %s", h.Score, h.Covered, h.Passage)
		}
	}
}
