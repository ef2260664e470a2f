package index

import (
	"cmp"
	"slices"
	"strings"

	blevesegment "github.com/blevesearch/scorch_segment_api/v2"

	"heronlake.example/ask/kb"
)

// In an index of manyPassages and more, only the rarest word of a question need
// find passages. A word that a tenth of them hold adds to those that rarer ones
// found, and one that more than a third of them hold is left out beside them.
const (
	manyPassages = 1000
	tenthHolds   = 2.3 // the idf of a term that a tenth of the passages hold
	thirdHolds   = 1.1
)

// found is a passage with its score.
type found struct {
	segment *segment
	doc     int
	id      string
	score   float64
	covered float64
}

// rank scores the passages that hold a term of the question and returns the
// best.
func (x *Index) rank(q question, limit int) []kb.Hit {
	known, covered := x.w.known, x.w.covered
	if !q.trade {
		known, covered = x.w.knownPlain, x.w.coveredPlain
	}
	if q.share() < known {
		return nil
	}
	var best []found
	for _, s := range x.segments {
		// More than wanted, for some may give way to passages of other notes.
		best = append(best, s.rank(q, x, 3*limit, covered)...)
	}
	slices.SortFunc(best, func(a, b found) int {
		return cmp.Or(cmp.Compare(b.score, a.score), cmp.Compare(a.id, b.id))
	})
	var hits []kb.Hit
	held := map[string]int{} // passages of each note among the hits
	for _, f := range best {
		note, _, _ := strings.Cut(f.id, "#")
		if held[note]++; held[note] <= x.w.perNote && len(hits) < limit {
			hits = append(hits, kb.Hit{Passage: f.id, Score: f.score, Covered: f.covered})
		}
	}
	return hits
}

// scores is the room in which one segment is scored, by passage. It is all
// zeros between questions.
type scores struct {
	total, covered []float64
	group, part    []float64 // of the group at hand: score, and share of it matched
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

// clear makes all zeros again.
func (sc *scores) clear() {
	for _, doc := range sc.seen {
		sc.total[doc], sc.covered[doc], sc.counted[doc] = 0, 0, 0
	}
	sc.seen, sc.term = sc.seen[:0], 0
}

// rank finds the best passages of one segment that cover enough of the question.
func (s *segment) rank(q question, x *Index, limit int, enough float64) []found {
	sc := s.room.Get().(*scores)
	defer s.room.Put(sc)
	defer sc.clear()

	var among []int // once the common words come: the passages found by the rarer ones
	begun := false
	for _, g := range q.groups {
		if begun && x.count >= manyPassages && g.rarest < tenthHolds {
			if g.rarest < thirdHolds || len(sc.seen) == 0 {
				break // the groups that follow are commoner still
			}
			if among == nil {
				among = slices.Sorted(slices.Values(sc.seen))
			}
		}
		s.scoreGroup(g, x.w, among, sc)
		begun = begun || g.held
	}
	for _, p := range q.pairs {
		s.each(s.pair, p, false, nil, func(p blevesegment.Posting) {
			if doc := p.Number(); sc.total[doc] > 0 {
				sc.total[doc] += x.w.pair
			}
		})
	}
	s.lift(q.context, x.w.liftContext, sc)
	s.lift(q.topics, x.w.liftTopic, sc)
	return s.best(q, sc, limit, enough)
}

// best picks the passages with the highest totals, of equal ones the first by
// id; the passages of a segment stand in the order of their ids.
func (s *segment) best(q question, sc *scores, limit int, enough float64) []found {
	var best []found
	for _, doc := range sc.seen {
		f := found{segment: s, doc: doc, score: sc.total[doc], covered: 1}
		if q.asked > 0 {
			f.covered = sc.covered[doc] / q.asked
		}
		if f.covered < enough || len(best) == limit && !f.before(best[limit-1]) {
			continue
		}
		at, _ := slices.BinarySearchFunc(best, f, func(a, b found) int {
			if a.before(b) {
				return -1
			}
			return 1
		})
		if len(best) == limit {
			best = best[:limit-1]
		}
		best = slices.Insert(best, at, f)
	}
	for i := range best {
		best[i].id = s.id(best[i].doc)
	}
	return best
}

func (f found) before(g found) bool {
	return f.score > g.score || f.score == g.score && f.doc < g.doc
}

// scoreGroup adds one group to the totals: for each passage the way that fits
// it best.
func (s *segment) scoreGroup(g group, w weights, among []int, sc *scores) {
	for _, way := range g.ways {
		for _, t := range way.terms {
			if t.idf == unknownIDF {
				continue
			}
			sc.term++
			s.scoreTerm(t, s.text, 1, w.textLength, w, among, sc)
			s.scoreTerm(t, s.head, w.head, w.headLength, w, among, sc)
		}
		for _, doc := range sc.inWay {
			if sc.group[doc] == 0 {
				sc.inGroup = append(sc.inGroup, doc)
			}
			sc.group[doc] = max(sc.group[doc], way.weight*sc.way[doc])
			sc.part[doc] = max(sc.part[doc], way.weight*sc.matched[doc]/float64(len(way.terms)))
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

// scoreTerm adds what one term gives in one field: BM25 without its query part.
func (s *segment) scoreTerm(t term, field blevesegment.TermDictionary, weight, typical float64, w weights, among []int, sc *scores) {
	s.each(field, t.text, true, among, func(p blevesegment.Posting) {
		doc, tf, length := int(p.Number()), float64(p.Frequency()), 0.0
		if n := p.Norm(); n > 0 {
			length = 1 / (n * n) // zap keeps a length and hands it out as a norm
		}
		if sc.way[doc] == 0 {
			sc.inWay = append(sc.inWay, doc)
		}
		sc.way[doc] += weight * t.idf * tf * (w.k1 + 1) / (tf + w.k1*(1-w.b+w.b*length/typical))
		if sc.counted[doc] != sc.term {
			sc.counted[doc] = sc.term
			sc.matched[doc]++
		}
	})
}

// lift raises passages that bear a word in their head, for two words at most.
func (s *segment) lift(words []string, by float64, sc *scores) {
	for _, w := range words[:min(2, len(words))] {
		s.each(s.head, w, false, nil, func(p blevesegment.Posting) {
			sc.total[p.Number()] *= 1 + by
		})
	}
}

// each visits the passages that hold a term, or those of them that are among
// the given ones, in their order.
func (s *segment) each(d blevesegment.TermDictionary, text string, counted bool, among []int, visit func(blevesegment.Posting)) {
	list, err := d.PostingsList([]byte(text), nil, nil)
	if err != nil {
		return
	}
	it := list.Iterator(counted, counted, false, nil)
	if among == nil {
		for {
			p, err := it.Next()
			if err != nil || p == nil {
				return
			}
			visit(p)
		}
	}
	for i := 0; i < len(among); {
		p, err := it.Advance(uint64(among[i]))
		if err != nil || p == nil {
			return
		}
		at, held := slices.BinarySearch(among[i:], int(p.Number()))
		if i += at; held {
			visit(p)
			i++
		}
	}
}

// frequency is the number of passages of the segment that hold a term, in the
// text or in the head, whichever is more.
func (s *segment) frequency(text string) int {
	n := 0
	for _, d := range []blevesegment.TermDictionary{s.text, s.head} {
		if list, err := d.PostingsList([]byte(text), nil, nil); err == nil {
			n = max(n, int(list.Count()))
		}
	}
	return n
}
