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

// Among fewer passages than these a word's rarity tells little, and what is
// covered decides alone.
const fewPassages = 50

// found is a passage with its score.
type found struct {
	doc     int
	id      string
	score   float64
	covered float64
}

// rank scores the passages that hold a term of the question and returns the
// best.
func (s *search) rank(q question, limit int) (hits []kb.Hit, sure float64) {
	var best []found
	for _, d := range s.desks {
		// More than wanted, for some may give way to passages of other notes.
		best = append(best, d.rank(q, s.Index, 3*limit)...)
	}
	slices.SortFunc(best, func(a, b found) int {
		return cmp.Or(cmp.Compare(b.score, a.score), cmp.Compare(a.id, b.id))
	})
	if len(best) == 0 || q.asked == 0 {
		return nil, 0
	}
	if sure = s.evidence(q, best[0]) - s.least(); sure < 0 {
		return nil, 0
	}
	held := map[string]int{} // passages of each note among the hits
	for _, f := range best {
		if f.score < s.w.beside*best[0].score {
			break
		}
		note, _, _ := strings.Cut(f.id, "#")
		if held[note]++; held[note] <= s.w.perNote && len(hits) < limit {
			hits = append(hits, kb.Hit{Passage: f.id, Score: f.score, Covered: f.covered})
		}
	}
	return hits, sure
}

// evidence weighs what speaks for the best passage: its score, in words that one
// passage alone holds; how much of the question it covers, and how much of it the
// notes know; and how many things of the trade the question names, against words
// of other matters. Below the least that is asked, the question is about something
// else, whose words have other meanings here.
func (x *Index) evidence(q question, f found) float64 {
	if x.count < fewPassages {
		return f.covered
	}
	said := x.w.trades*float64(min(q.trades, 2)) - x.w.elsewhere*float64(min(q.elsewhere, 2))
	return f.score/x.idf(0) + x.w.covered*f.covered + x.w.known*q.share() + said
}

func (x *Index) least() float64 {
	if x.count < fewPassages {
		return x.w.coveredFew
	}
	return x.w.floor
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

func newScores(n int) scores {
	return scores{
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

// rank finds the best passages of one segment.
func (d *desk) rank(q question, x *Index, limit int) []found {
	defer d.clear()
	var among []int // once the common words come: the passages found by the rarer ones
	begun := false
	for _, g := range q.groups {
		if begun && x.count >= manyPassages && g.rarest < tenthHolds {
			if g.rarest < thirdHolds || len(d.seen) == 0 {
				break // the groups that follow are commoner still
			}
			if among == nil {
				among = slices.Sorted(slices.Values(d.seen))
			}
		}
		d.scoreGroup(g, x.w, among)
		begun = begun || g.held
	}
	for _, p := range q.pairs {
		each(d.pair, p, false, nil, func(p blevesegment.Posting) {
			if doc := p.Number(); d.total[doc] > 0 {
				d.total[doc] += x.w.pair
			}
		})
	}
	d.lift(q.context, x.w.liftContext)
	d.lift(q.topics, x.w.liftTopic)
	return d.best(q, limit)
}

// best picks the passages with the highest totals, of equal ones the first by
// id; the passages of a segment stand in the order of their ids.
func (d *desk) best(q question, limit int) []found {
	var best []found
	for _, doc := range d.seen {
		f := found{doc: doc, score: d.total[doc], covered: 1}
		if q.asked > 0 {
			f.covered = d.covered[doc] / q.asked
		}
		if len(best) == limit && !f.before(best[limit-1]) {
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
		best[i].id = d.id(best[i].doc)
	}
	return best
}

func (f found) before(g found) bool {
	return f.score > g.score || f.score == g.score && f.doc < g.doc
}

// scoreGroup adds one group to the totals: for each passage the way that fits
// it best.
func (d *desk) scoreGroup(g group, w weights, among []int) {
	for _, way := range g.ways {
		for _, t := range way.terms {
			if !t.held {
				continue
			}
			d.term++
			d.scoreTerm(t, d.text, 1, w.textLength, w, among)
			d.scoreTerm(t, d.head, w.head, w.headLength, w, among)
		}
		for _, doc := range d.inWay {
			if d.group[doc] == 0 {
				d.inGroup = append(d.inGroup, doc)
			}
			d.group[doc] = max(d.group[doc], way.weight*d.way[doc])
			d.part[doc] = max(d.part[doc], way.weight*d.matched[doc]/float64(len(way.terms)))
			d.way[doc], d.matched[doc] = 0, 0
		}
		d.inWay = d.inWay[:0]
	}
	for _, doc := range d.inGroup {
		if d.total[doc] == 0 {
			d.seen = append(d.seen, doc)
		}
		d.total[doc] += g.weight * d.group[doc]
		d.covered[doc] += g.telling * d.part[doc]
		d.group[doc], d.part[doc] = 0, 0
	}
	d.inGroup = d.inGroup[:0]
}

// scoreTerm adds what one term gives in one field: BM25 without its query part.
func (d *desk) scoreTerm(t term, field blevesegment.TermDictionary, weight, typical float64, w weights, among []int) {
	each(field, t.text, true, among, func(p blevesegment.Posting) {
		doc, tf, length := int(p.Number()), float64(p.Frequency()), 0.0
		if n := p.Norm(); n > 0 {
			length = 1 / (n * n) // zap keeps a length and hands it out as a norm
		}
		if d.way[doc] == 0 {
			d.inWay = append(d.inWay, doc)
		}
		d.way[doc] += weight * t.idf * tf * (w.k1 + 1) / (tf + w.k1*(1-w.b+w.b*length/typical))
		if d.counted[doc] != d.term {
			d.counted[doc] = d.term
			d.matched[doc]++
		}
	})
}

// lift raises passages that bear a word in their head, for two words at most.
func (d *desk) lift(words []string, by float64) {
	for _, w := range words[:min(2, len(words))] {
		each(d.head, w, false, nil, func(p blevesegment.Posting) {
			d.total[p.Number()] *= 1 + by
		})
	}
}

// each visits the passages that hold a term, or those of them that are among
// the given ones, in their order.
func each(d blevesegment.TermDictionary, text string, counted bool, among []int, visit func(blevesegment.Posting)) {
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
func (d *desk) frequency(text string) int {
	n := 0
	for _, terms := range []blevesegment.TermDictionary{d.text, d.head} {
		if list, err := terms.PostingsList([]byte(text), nil, nil); err == nil {
			n = max(n, int(list.Count()))
		}
	}
	return n
}
