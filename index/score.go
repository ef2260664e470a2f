package index

import (
	"cmp"
	"slices"
	"strings"

	"heronlake.example/ask/kb"

	blevesegment "github.com/blevesearch/scorch_segment_api/v2"
)

// The constants of BM25 (Robertson and Zaragoza 2009, section 3.5: k1 between
// 1.2 and 2, b between 0.5 and 0.8 do well). The length that a passage is
// measured against is fixed, so that a shop's notes do not move the scores of
// the built-in ones.
var (
	k1            = 1.2
	b             = 0.6
	typicalLength = 80. // terms of title, heading and a passage of 40 to 120 words
	typicalHead   = 80.
	Cover         = 0.0
	Div           = 2.0
	Pair          = 1.5
	Alpha         = 2.0
	MinMax        = 0.0
)

// What is known besides the question lifts a passage that bears it in its title
// or heading, by this share for each such word and at most twice.
var (
	liftContext = 0.12
	liftTopic   = 0.08
)

// The floor: a passage is worth citing if it covers this share of the question,
// and the question is about the trade if the notes know this share of it.
var (
	leastCovered      = 0.25
	leastKnown        = 0.4
	leastKnownPlain   = 0.6
	leastCoveredPlain = 0.3
)

// sheet is the room in which one segment is scored.
type scores struct {
	total, covered []float64 // by passage
	group, part    []float64 // of the group at hand: score, and share matched
	way, matched   []float64 // of the way at hand: score, and terms matched
	counted        []int     // the last term that was counted as matched
	term           int       // the term at hand, numbered from 1
	seen           []int     // passages with a total
	inGroup, inWay []int
}

func newScores(n int) *scores {
	return &scores{
		total: make([]float64, n), covered: make([]float64, n),
		group: make([]float64, n), part: make([]float64, n),
		way: make([]float64, n), matched: make([]float64, n), counted: make([]int, n),
	}
}

// found is a passage with its score.
type found struct {
	segment *segment
	doc     int
	id      string
	score   float64
	covered float64
}

// rank scores every passage that holds a term of the question and returns the
// best.
func (x *Index) rank(q question, limit int) []kb.Hit {
	least, covered := leastKnown, leastCovered
	if !q.trade {
		least, covered = leastKnownPlain, leastCoveredPlain
	}
	if q.known() < least {
		return nil
	}
	var best []found
	for _, s := range x.segments {
		best = append(best, s.rank(q, 3*limit, covered)...)
	}
	for i := range best {
		best[i].id = best[i].segment.id(best[i].doc)
	}
	slices.SortFunc(best, func(a, b found) int {
		return cmp.Or(cmp.Compare(b.score, a.score), cmp.Compare(a.id, b.id))
	})
	hits := []kb.Hit{}
	held := map[string]int{}
	for _, f := range best {
		note, _, _ := strings.Cut(f.id, "#")
		if held[note]++; float64(held[note]) > Div || len(hits) == limit {
			continue
		}
		hits = append(hits, kb.Hit{Passage: f.id, Score: f.score, Covered: f.covered})
	}
	return hits
}

// rank finds the best passages of one segment. Passages stand in the order of
// their ids, so that equal scores keep it.
func (s *segment) rank(q question, limit int, least float64) []found {
	sc := newScores(s.count)
	for _, g := range q.groups {
		s.scoreGroup(g, sc)
	}
	for _, p := range q.pairs {
		s.each(s.pair, p.text, false, func(p blevesegment.Posting) {
			sc.total[p.Number()] += Pair
		})
	}
	for _, lift := range []struct {
		words []string
		by    float64
	}{{q.context, liftContext}, {q.topics, liftTopic}} {
		s.lift(lift.words, lift.by, sc)
	}
	var all []found
	for _, doc := range sc.seen {
		c := 1.0
		if q.asked > 0 {
			c = sc.covered[doc] / q.asked
		}
		if c >= least {
			all = append(all, found{segment: s, doc: doc, score: sc.total[doc] * (1 - Cover + Cover*c), covered: c})
		}
	}
	slices.SortFunc(all, func(a, b found) int {
		return cmp.Or(cmp.Compare(b.score, a.score), cmp.Compare(a.doc, b.doc))
	})
	return all[:min(limit, len(all))]
}

// scoreGroup adds one group to the totals: for each passage the way that fits
// it best.
func (s *segment) scoreGroup(g group, sc *scores) {
	for _, w := range g.ways {
		for _, t := range w.terms {
			sc.term++
			s.scoreTerm(t, s.text, 1, typicalLength, sc)
			s.scoreTerm(t, s.head, Alpha, typicalHead, sc)
		}
		for _, doc := range sc.inWay {
			if sc.group[doc] == 0 {
				sc.inGroup = append(sc.inGroup, doc)
			}
			sc.group[doc] = max(sc.group[doc], w.weight*sc.way[doc])
			sc.part[doc] = max(sc.part[doc], w.weight*sc.matched[doc]/float64(len(w.terms)))
			sc.way[doc], sc.matched[doc] = 0, 0
		}
		sc.inWay = sc.inWay[:0]
	}
	for _, doc := range sc.inGroup {
		if sc.total[doc] == 0 {
			sc.seen = append(sc.seen, doc)
		}
		sc.total[doc] += g.weight * sc.group[doc]
		sc.covered[doc] += g.telling * sc.part[doc]
		sc.group[doc], sc.part[doc] = 0, 0
	}
	sc.inGroup = sc.inGroup[:0]
}

// scoreTerm adds what one term gives in one field.
func (s *segment) scoreTerm(t term, field blevesegment.TermDictionary, weight, typical float64, sc *scores) {
	s.postings(field, t.text, func(doc int, tf, length float64) {
		if sc.way[doc] == 0 {
			sc.inWay = append(sc.inWay, doc)
		}
		sc.way[doc] += weight * t.idf * saturated(tf, length/typical)
		if sc.counted[doc] != sc.term {
			sc.counted[doc] = sc.term
			sc.matched[doc]++
		}
	})
}

// saturated is the part of BM25 that grows with how often a term stands in a
// text, of a length given as a share of the typical one.
func saturated(tf, length float64) float64 {
	return tf * (k1 + 1) / (tf + k1*(1-b+b*length))
}

// lift raises passages that bear a word in their title, heading or topics.
func (s *segment) lift(words []string, by float64, sc *scores) {
	for _, w := range words[:min(2, len(words))] {
		s.each(s.head, w, false, func(p blevesegment.Posting) {
			sc.total[p.Number()] *= 1 + by
		})
	}
}

// postings visits the passages that hold a term: how often, and their length.
func (s *segment) postings(d blevesegment.TermDictionary, text string, visit func(doc int, tf, length float64)) {
	s.each(d, text, true, func(p blevesegment.Posting) {
		length := 0.0
		if n := p.Norm(); n > 0 {
			length = 1 / (n * n) // zap keeps a length and hands it out as a norm
		}
		visit(int(p.Number()), float64(p.Frequency()), length)
	})
}

func (s *segment) each(d blevesegment.TermDictionary, text string, counted bool, visit func(blevesegment.Posting)) {
	list, err := d.PostingsList([]byte(text), nil, nil)
	if err != nil {
		return
	}
	it := list.Iterator(counted, counted, false, nil)
	for {
		p, err := it.Next()
		if err != nil || p == nil {
			return
		}
		visit(p)
	}
}

// frequency is the number of passages of the segment that hold a term.
func (s *segment) frequency(text string) int {
	n := 0
	for _, d := range []blevesegment.TermDictionary{s.text, s.head} {
		if list, err := d.PostingsList([]byte(text), nil, nil); err == nil {
			n = max(n, int(list.Count()))
		}
	}
	return n
}
