// Package search_test measures how well a question finds the passage that
// answers it, next to plain BM25 over the same passages, and that a question
// about something else finds nothing.
package search_test

import (
	"bufio"
	"cmp"
	"fmt"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"heronlake.example/ask/index"
	"heronlake.example/ask/kb"
)

// What all pairs together must reach, what the pairs that took no part in the
// tuning must reach, and by how much these must be ahead of plain BM25.
const (
	leastHit3, leastMRR             = 0.95, 0.85
	leastUnseenHit3, leastUnseenMRR = 0.93, 0.85
	leastAhead                      = 0.20 // in MRR
)

// pair is a question with the passages, or whole notes, that answer it.
type pair struct {
	line    int
	query   kb.Query
	answers []string
}

// right reports whether a passage is among the answers.
func (p pair) right(passage string) bool {
	note, _, _ := strings.Cut(passage, "#")
	return slices.Contains(p.answers, passage) || slices.Contains(p.answers, note)
}

func TestPairs(t *testing.T) {
	lib, x := open(t)
	var tuned, unseen, base score
	for _, p := range readPairs(t, lib, "testdata/tuning.txt") {
		tuned.add(p, ids(x.Search(p.query).Hits))
	}
	plain := newPlain(lib)
	for _, p := range readPairs(t, lib, "testdata/reported.txt") {
		unseen.add(p, ids(x.Search(p.query).Hits))
		base.add(p, plain.search(p.query.Text, 10))
	}
	all := tuned.plus(unseen)
	t.Logf("%d pairs in all:            %s", all.n, all)
	t.Logf("%d of them took no part in the tuning: %s", unseen.n, unseen)
	t.Logf("plain BM25 on the same:     %s", base)
	for _, c := range []struct {
		what       string
		got, least float64
	}{
		{"hit@3", all.share(all.hit3), leastHit3},
		{"MRR", all.share(all.reciprocal), leastMRR},
		{"hit@3 of the pairs not tuned on", unseen.share(unseen.hit3), leastUnseenHit3},
		{"MRR of the pairs not tuned on", unseen.share(unseen.reciprocal), leastUnseenMRR},
		{"MRR ahead of plain BM25", unseen.share(unseen.reciprocal) - base.share(base.reciprocal), leastAhead},
	} {
		if c.got < c.least {
			t.Errorf("%s is %.3f, must be %.2f", c.what, c.got, c.least)
		}
	}
}

// TestStrangers asks what the notes know nothing of. A share of it may find
// something, for a word has another meaning here, as in "mount everest".
func TestStrangers(t *testing.T) {
	_, x := open(t)
	for _, c := range []struct {
		file string
		most float64
	}{
		{"testdata/strangers.txt", 0.13},
		{"testdata/strangers_near.txt", 0.36},
	} {
		lines := readLines(t, c.file)
		var found []string
		for _, l := range lines {
			if r := x.Search(kb.Query{Text: l.text}); len(r.Hits) > 0 {
				found = append(found, fmt.Sprintf("%d: %s: %s, covering %.2f of what the notes know %.2f of", l.number, l.text, r.Hits[0].Passage, r.Hits[0].Covered, r.Known))
			}
		}
		t.Logf("%s: %d of %d find something", c.file, len(found), len(lines))
		if float64(len(found)) > c.most*float64(len(lines)) {
			t.Errorf("%s: too many:\n%s", c.file, strings.Join(found, "\n"))
		}
	}
}

func open(t *testing.T) (*kb.Library, *index.Index) {
	t.Helper()
	lib, err := kb.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	x, err := index.Open(lib)
	if err != nil {
		t.Fatal(err)
	}
	return lib, x
}

// score counts questions by the place of the first right passage.
type score struct {
	n                      int
	hit1, hit3, reciprocal float64
}

func (s *score) add(p pair, got []string) {
	s.n++
	for i, id := range got {
		if !p.right(id) {
			continue
		}
		if i == 0 {
			s.hit1++
		}
		if i < 3 {
			s.hit3++
		}
		s.reciprocal += 1 / float64(i+1)
		return
	}
}

func (s score) plus(t score) score {
	return score{s.n + t.n, s.hit1 + t.hit1, s.hit3 + t.hit3, s.reciprocal + t.reciprocal}
}

func (s score) share(x float64) float64 { return x / float64(max(s.n, 1)) }

func (s score) String() string {
	return fmt.Sprintf("hit@1 %.3f  hit@3 %.3f  MRR %.3f", s.share(s.hit1), s.share(s.hit3), s.share(s.reciprocal))
}

type line struct {
	number int
	text   string
}

// readLines reads a file without its comments and empty lines.
func readLines(t *testing.T, name string) []line {
	t.Helper()
	f, err := os.Open(name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	var out []line
	s := bufio.NewScanner(f)
	for n := 1; s.Scan(); n++ {
		if text := strings.TrimSpace(s.Text()); text != "" && text[0] != '#' {
			out = append(out, line{n, text})
		}
	}
	if err := s.Err(); err != nil {
		t.Fatal(err)
	}
	return out
}

func ids(hits []kb.Hit) []string {
	var out []string
	for _, h := range hits {
		out = append(out, h.Passage)
	}
	return out
}

// readPairs reads a file of pairs and checks that every answer is there.
func readPairs(t *testing.T, lib *kb.Library, name string) []pair {
	t.Helper()
	var out []pair
	for _, l := range readLines(t, name) {
		question, answers, ok := strings.Cut(l.text, " -> ")
		if !ok {
			t.Fatalf("%s:%d: no arrow", name, l.number)
		}
		question, known, _ := strings.Cut(question, " + ")
		p := pair{line: l.number, query: kb.Query{Text: question, Limit: 10}, answers: strings.Split(answers, ", ")}
		if known != "" {
			p.query.Context = strings.Split(known, ", ")
		}
		for _, id := range p.answers {
			if _, ok := lib.Passage(id); !ok {
				t.Errorf("%s:%d: there is no passage %s", name, l.number, id)
			}
		}
		out = append(out, p)
	}
	return out
}

// plain is BM25 as in a textbook (k1 1.2, b 0.75) over title, heading and text
// of each passage, each counted once, on the same stems: what a search is
// without the trade's words, weights, context and corrections.
type plain struct {
	ids    []string
	counts []map[string]float64
	length []float64
	mean   float64
	held   map[string]float64 // by term: passages that hold it
}

func newPlain(lib *kb.Library) *plain {
	x := &plain{held: map[string]float64{}}
	for _, n := range lib.All() {
		for _, p := range n.Passages {
			counts := map[string]float64{}
			stems := index.Stems(p.Title + " . " + p.Heading + " . " + p.Text)
			for _, s := range stems {
				counts[s]++
			}
			for s := range counts {
				x.held[s]++
			}
			x.ids, x.counts, x.length = append(x.ids, p.ID), append(x.counts, counts), append(x.length, float64(len(stems)))
			x.mean += float64(len(stems))
		}
	}
	x.mean /= float64(len(x.ids))
	return x
}

func (x *plain) search(question string, limit int) []string {
	type hit struct {
		id    string
		score float64
	}
	const k1, b = 1.2, 0.75
	var hits []hit
	for i, id := range x.ids {
		s := 0.0
		for _, w := range index.Stems(question) {
			if tf := x.counts[i][w]; tf > 0 {
				idf := math.Log(1 + (float64(len(x.ids))-x.held[w]+0.5)/(x.held[w]+0.5))
				s += idf * tf * (k1 + 1) / (tf + k1*(1-b+b*x.length[i]/x.mean))
			}
		}
		if s > 0 {
			hits = append(hits, hit{id, s})
		}
	}
	slices.SortFunc(hits, func(a, b hit) int { return cmp.Or(cmp.Compare(b.score, a.score), cmp.Compare(a.id, b.id)) })
	var out []string
	for _, h := range hits[:min(limit, len(hits))] {
		out = append(out, h.id)
	}
	return out
}
