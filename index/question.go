package index

import (
	"cmp"
	"math"
	"slices"

	"heronlake.example/ask/kb"
)

// question is what a search looks for: groups of terms, one for each thing that
// was said, the rarest first.
type question struct {
	groups    []group
	pairs     []string // neighbours in it
	context   []string // stems of what is known besides; they lift, they do not find
	topics    []string
	corrected []kb.Correction
	trade     bool    // it names a thing of the trade that the notes know
	asked     float64 // the weight of all that was said, as passages are held against it
	words     float64 // the weight of all that was said, as the notes are
	known     float64 // of that, what the notes know
}

// group is one thing that was said, with the ways in which a passage may say it.
// The way that fits a passage best counts.
type group struct {
	ways    []way
	weight  float64 // its part of the score
	telling float64 // its part of what is covered; 0 for a number
	rarest  float64 // the greatest weight of its terms
	held    bool    // some passage holds one of them
	trade   bool
}

// way is one wording: terms that together say it.
type way struct {
	terms  []term
	weight float64 // 1 for the words as said, less for a looser one
}

// term is a term of the index with its inverse document frequency.
type term struct {
	text string
	idf  float64
	held bool // by some passage
}

// read takes a question apart.
func (s *search) read(q kb.Query) question {
	var out question
	said := analyse(clip(q.Text, maxQuestion))
	for i := 0; i < len(said); {
		if said[i].chatter {
			i++
			continue
		}
		n := max(said[i].span, 1)
		g, correction := s.group(said[i : i+n])
		if correction.Said != "" {
			out.corrected = append(out.corrected, correction)
		}
		if len(g.ways) > 0 {
			s.weigh(&out, g)
		}
		i += n
	}
	slices.SortStableFunc(out.groups, func(a, b group) int { return cmp.Compare(b.rarest, a.rarest) })
	out.pairs = pairs(said)
	for _, c := range q.Context {
		out.context = append(out.context, stems(analyse(c))...)
	}
	for _, t := range q.Topics {
		out.topics = append(out.topics, stems(analyse(t))...)
	}
	return out
}

// group makes the group of one thing said: the words of a concept, or a single
// word, corrected where no passage knows it.
func (s *search) group(words []word) (group, kb.Correction) {
	first, single := words[0], len(words) == 1
	g := group{weight: 1, telling: 1, trade: first.trade}
	said := way{weight: 1}
	for _, w := range words {
		if w.stem != "" {
			said.terms = append(said.terms, s.term(w.stem))
		}
	}
	switch {
	case first.concept != "" && first.trade:
		g.ways = append(g.ways, way{[]term{s.term(first.concept)}, s.w.concept})
	case first.concept != "":
		g.ways = append(g.ways, way{[]term{s.term(first.concept)}, s.w.talk})
	case len(said.terms) == 0:
		return g, kb.Correction{}
	case first.number():
		g.weight, g.telling = s.w.number, 0
	case !said.terms[0].held:
		if better, ok := s.correct(first.text); ok {
			return s.corrected(better), kb.Correction{Said: first.text, Word: better}
		}
	}
	if len(said.terms) > 0 && first.concept != motorConcept {
		g.ways = append(g.ways, said)
	}
	if single {
		for _, other := range alike(first) {
			g.ways = append(g.ways, way{[]term{s.term(other)}, s.w.alike})
		}
		if everydayWords()[first.text] {
			g.weight, g.telling = s.w.common, s.w.common
		}
	}
	return g, kb.Correction{}
}

// corrected is the group of the word that a misspelt one was taken for.
func (s *search) corrected(better string) group {
	g, _ := s.group(analyse(better))
	for i := range g.ways {
		g.ways[i].weight *= s.w.corrected
	}
	return g
}

// weigh puts a group into the question and its weight on the scales.
func (s *search) weigh(q *question, g group) {
	known, telling := 0.0, 0.0
	for _, w := range g.ways {
		for _, t := range w.terms {
			g.rarest = max(g.rarest, t.idf)
			if w.weight == 1 || telling == 0 {
				telling = max(telling, t.idf)
			}
			if t.held {
				known = max(known, w.weight)
			}
		}
	}
	g.held = known > 0
	q.trade = q.trade || g.trade && known > 0
	if g.telling > 0 {
		weight := telling
		if g.trade {
			weight = s.w.trade * s.idf(0)
		}
		q.words += weight
		q.known += known * weight
	}
	g.telling *= telling
	q.asked += g.telling
	q.groups = append(q.groups, g)
}

// share is what the notes know of the question, by weight.
func (q question) share() float64 {
	if q.words == 0 {
		return 0
	}
	return q.known / q.words
}

// term looks a term up in all segments.
func (s *search) term(text string) term {
	n := 0
	for _, d := range s.desks {
		n += d.frequency(text)
	}
	return term{text: text, idf: s.idf(n), held: n > 0}
}

// idf is the inverse document frequency of BM25 in the form that stays above
// zero (Robertson and Zaragoza 2009, section 3.4, with 1 added inside the
// logarithm as is usual in full-text indexes).
func (x *Index) idf(frequency int) float64 {
	n, f := float64(x.count), float64(frequency)
	return math.Log(1 + (n-f+0.5)/(f+0.5))
}

// clip cuts a text at a limit of bytes, not within a character.
func clip(s string, limit int) string {
	if len(s) <= limit {
		return s
	}
	for limit > 0 && s[limit]&0xC0 == 0x80 {
		limit--
	}
	return s[:limit]
}
