package search_test

import (
	"testing"

	"heronlake.example/ask/kb"
	"heronlake.example/ask/reasoner"
	"heronlake.example/ask/reasoner/answer"
)

// TestRoundabout asks in wordings unlike those of the other lists, of the search
// alone and of the whole reasoner, which must first see that a question is one
// for the notes.
func TestRoundabout(t *testing.T) {
	lib, x := open(t)
	r := reasoner.New(reasoner.Options{Notes: lib, Search: x})
	for _, c := range []struct {
		file              string
		hit3, mrr         float64 // least of the search
		askHit3, askWhole float64 // least of the answers, by passage and by MRR
	}{
		{"testdata/roundabout.txt", 0.82, 0.76, 0.80, 0.75},
		{"testdata/roundabout_unseen.txt", 0.90, 0.87, 0.86, 0.82},
		{"testdata/roundabout_later.txt", 0.70, 0.62, 0.68, 0.58},
	} {
		var found, cited, base score
		plain := newPlain(lib)
		for _, p := range readPairs(t, lib, c.file) {
			found.add(p, ids(x.Search(p.query).Hits))
			cited.add(p, passages(lib, r.NewSession().Ask(p.query.Text)))
			base.add(p, plain.search(p.query.Text, 10))
		}
		t.Logf("%s, %d pairs: search %s", c.file, found.n, found)
		t.Logf("as answered: %s", cited)
		t.Logf("plain BM25:  %s", base)
		for _, m := range []struct {
			what       string
			got, least float64
		}{
			{"hit@3 of the search", found.share(found.hit3), c.hit3},
			{"MRR of the search", found.share(found.reciprocal), c.mrr},
			{"hit@3 of the answers", cited.share(cited.hit3), c.askHit3},
			{"MRR of the answers", cited.share(cited.reciprocal), c.askWhole},
		} {
			if m.got < m.least {
				t.Errorf("%s: %s is %.3f, must be %.2f", c.file, m.what, m.got, m.least)
			}
		}
	}
}

// mostBeside is how many passages a question may be given on the average, of
// three that are asked for: where the first is clearly meant, it stands alone.
const mostBeside = 2.3

func TestFewPassagesWhereOneIsMeant(t *testing.T) {
	lib, x := open(t)
	n, hits := 0, 0
	for _, p := range readPairs(t, lib, "testdata/tuning.txt") {
		p.query.Limit = 3
		n, hits = n+1, hits+len(x.Search(p.query).Hits)
	}
	if mean := float64(hits) / float64(n); mean > mostBeside || mean < 1 {
		t.Errorf("%.2f passages a question, want 1 to %.1f", mean, mostBeside)
	}
}

// passages lists the ids of what an answer cites, in its order.
func passages(lib *kb.Library, a answer.Answer) []string {
	var out []string
	for _, p := range a.Passages {
		for _, q := range lib.NotePassages(p.Note) {
			if q.Heading == p.Heading {
				out = append(out, q.ID)
			}
		}
	}
	return out
}
