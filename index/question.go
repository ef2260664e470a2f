package index

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"heronlake.example/ask/kb"
	"heronlake.example/ask/kb/words"
)

// question is what a search looks for: groups of terms, one for each thing that
// was said, the rarest first.
type question struct {
	groups    []group
	pairs     []string // neighbours in it
	context   []string // stems of what is known besides; they lift, they do not find
	topics    []string
	corrected []kb.Correction
	trades    int     // the things of the trade that it names and the notes know
	elsewhere int     // its words of other matters
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

// read takes a question apart. What is said twice counts once.
func (s *search) read(q kb.Query) question {
	var out question
	text := analyse(clip(q.Text, maxQuestion))
	heard := map[string]bool{}
	for i := 0; i < len(text); {
		n, meanings := thing(text[i:])
		said := text[i : i+n]
		i += n
		if elsewhereWords()[said[0].text] {
			out.elsewhere++
		}
		name := strings.Join(stems(said), " ")
		if idly(said) || heard[name] && name != "" {
			continue
		}
		heard[name] = true
		g, correction := s.group(said, meanings)
		if correction.Said != "" {
			out.corrected = append(out.corrected, correction)
		}
		if len(g.ways) > 0 {
			s.weigh(&out, g)
		}
	}
	slices.SortStableFunc(out.groups, func(a, b group) int { return cmp.Compare(b.rarest, a.rarest) })
	out.pairs = pairs(text)
	for _, c := range q.Context {
		out.context = append(out.context, stems(analyse(c))...)
	}
	for _, t := range q.Topics {
		out.topics = append(out.topics, stems(analyse(t))...)
	}
	return out
}

// thing gives the number of words that the first thing of a text is said in, and
// what else may be meant by them: a phrase in which something else is meant, the
// words of a concept, what is said idly, or a single word.
func thing(text []word) (n int, meanings [][]string) {
	n, meanings = meantBy(text)
	if named := max(text[0].span, 1); n < named {
		n, meanings = named, nil
	}
	if idle := idleSpan(text); idle > n || idle == n && text[0].concept == "" {
		n, meanings = idle, nil
	}
	return n, meanings
}

// idly reports whether words ask for nothing.
func idly(said []word) bool {
	return said[0].chatter || said[0].concept == "" && idleSpan(said) == len(said)
}

// group makes the group of one thing said: the words of a concept or a phrase, or
// a single word, corrected where it is no word that anyone knows.
func (s *search) group(text []word, meanings [][]string) (group, kb.Correction) {
	first, single := text[0], len(text) == 1
	if first.span != len(text) {
		first.concept, first.trade = "", false // the phrase says more than the concept in it
	}
	g := group{weight: 1, telling: 1, trade: first.trade}
	said := way{weight: 1}
	for _, w := range text {
		if w.stem != "" {
			said.terms = append(said.terms, s.term(w.stem))
		}
	}
	known := len(said.terms) > 0 && said.terms[0].held
	switch {
	case first.concept != "" && first.trade:
		g.ways = append(g.ways, way{[]term{s.term(first.concept)}, s.w.concept})
	case first.concept != "":
		g.ways = append(g.ways, way{[]term{s.term(first.concept)}, s.w.talk})
	case len(said.terms) == 0 && len(meanings) == 0:
		return g, kb.Correction{}
	case single && first.number():
		g.weight, g.telling = s.w.number, 0
	case single && !known && len(meanings) == 0 && !words.English(first.text):
		if better, ok := s.correct(first.text); ok {
			return s.corrected(better), kb.Correction{Said: first.text, Word: better}
		}
	}
	if len(said.terms) > 0 && first.concept != motorConcept {
		g.ways = append(g.ways, said)
	}
	for _, m := range meanings {
		w := way{weight: s.w.meant}
		if single && known {
			w.weight = s.w.maybe
		}
		for _, stem := range m {
			w.terms = append(w.terms, s.term(stem))
		}
		g.ways = append(g.ways, w)
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
	g, _ := s.group(analyse(better), nil)
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
	if g.trade && known > 0 {
		q.trades++
	}
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
