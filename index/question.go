package index

import (
	"math"

	"heronlake.example/ask/kb"
)

// question is what a search looks for: groups of terms, one for each thing that
// was said.
type question struct {
	groups               []group
	trade                bool
	pairs                []term   // neighbours in it
	context              []string // stems of what is known besides; they lift, they do not find
	topics               []string
	corrected            []kb.Correction
	asked                float64 // the weight of all that counts
	allWords, knownWords float64 // of that, what any passage knows
}

// group is one thing that was said, with the ways in which a passage may say it.
// The way that fits a passage best counts.
type group struct {
	ways    []way
	weight  float64 // its part of the score
	trade   bool
	telling float64 // its part of what the question covers; 0 for a number
}

// way is one wording: terms that together say it.
type way struct {
	terms  []term
	weight float64 // 1 for the words as said, less for a looser one
}

// term is a term of the text field with its weight in the index.
type term struct {
	text string
	idf  float64
}

// Weights of what is less certain than a word as said. Judged on the pairs in
// tests/search; no published source.
var (
	weightConcept   = 0.8 // another word for the same thing
	weightTalk      = 0.6
	weightCommon    = 0.7
	weightAlike     = 0.3 // a word that asks for the same
	weightCorrected = 0.8 // a misspelt word
	weightNumber    = 0.3 // a number: which passage is meant hardly hangs on it
)

// read takes a question apart.
func (x *Index) read(q kb.Query) question {
	var out question
	words := analyse(clip(q.Text, maxQuestion))
	for i := 0; i < len(words); {
		n := max(words[i].span, 1)
		if words[i].chatter {
			i++
			continue
		}
		if g := x.group(words[i:i+n], &out); len(g.ways) > 0 {
			out.add(g)
		}
		i += n
	}
	for _, p := range pairs(words) {
		out.pairs = append(out.pairs, term{text: p, idf: 1})
	}
	for _, c := range q.Context {
		out.context = append(out.context, stems(analyse(c))...)
	}
	for _, t := range q.Topics {
		out.topics = append(out.topics, stems(analyse(t))...)
	}
	return out
}

// group makes the group of one thing said: the words of a concept of the trade,
// or a single word, corrected where no passage knows it.
func (x *Index) group(words []word, out *question) group {
	g := group{weight: 1, telling: 1}
	said := way{weight: 1}
	for _, w := range words {
		if w.stem != "" {
			said.terms = append(said.terms, x.term(w.stem))
		}
	}
	if c := words[0].concept; c != "" {
		cw := weightConcept
		if !words[0].trade {
			cw = weightTalk
		}
		g.ways = append(g.ways, way{[]term{x.term(c)}, cw})
		g.trade = words[0].trade
	}
	switch {
	case len(said.terms) == 0:
		return g
	case len(words) == 1 && words[0].number():
		g.weight, g.telling = weightNumber, 0
	case len(words) == 1 && words[0].concept == "" && said.terms[0].idf == unknownIDF:
		if better, ok := x.correct(words[0].text); ok {
			out.corrected = append(out.corrected, kb.Correction{Said: words[0].text, Word: better})
			return x.corrected(better)
		}
	}
	g.ways = append(g.ways, said)
	if len(words) == 1 && common()[words[0].text] {
		g.weight, g.telling = weightCommon, weightCommon
	}
	if len(words) == 1 {
		for _, other := range alike()[words[0].stem] {
			g.ways = append(g.ways, way{[]term{x.term(other)}, weightAlike})
		}
	}
	return g
}

// corrected is the group of the word that a misspelt one was taken for.
func (x *Index) corrected(better string) group {
	g := x.group(analyse(better), &question{})
	for i := range g.ways {
		g.ways[i].weight *= weightCorrected
	}
	return g
}

// add puts a group into the question and its weight on the scales.
func (q *question) add(g group) {
	known, telling := 0.0, 0.0
	for _, w := range g.ways {
		for _, t := range w.terms {
			if w.weight == 1 || telling == 0 {
				telling = max(telling, t.idf)
			}
			if t.idf < unknownIDF {
				known = max(known, w.weight)
			}
		}
	}
	q.trade = q.trade || g.trade && known > 0
	if g.telling > 0 {
		switch {
		case known == 0:
			q.allWords += KUnk
		case g.trade:
			q.allWords += KTrade
			q.knownWords += known * KTrade
		default:
			q.allWords += telling
			q.knownWords += known * telling
		}
	}
	g.telling *= telling
	q.asked += g.telling
	q.groups = append(q.groups, g)
}

var (
	KUnk   = 5.0
	KTrade = 4.0
)

// known is the share of the question that any passage knows, by weight.
func (q question) known() float64 {
	if q.allWords == 0 {
		return 0
	}
	return q.knownWords / q.allWords
}

// term looks a term up in all segments.
func (x *Index) term(text string) term {
	return term{text: text, idf: x.idf(x.frequency(text))}
}

// frequency is the number of passages that hold a term.
func (x *Index) frequency(text string) int {
	n := 0
	for _, s := range x.segments {
		n += s.frequency(text)
	}
	return n
}

// unknownIDF is the weight of a term that no passage holds.
var unknownIDF = 8.

// idf is the inverse document frequency of BM25 in the form that stays above
// zero (Robertson and Zaragoza 2009, section 3.4, with 1 added inside the
// logarithm as is usual in full-text indexes).
func (x *Index) idf(frequency int) float64 {
	if frequency == 0 {
		return unknownIDF
	}
	n := float64(x.count())
	return min(math.Log(1+(n-float64(frequency)+0.5)/(float64(frequency)+0.5)), unknownIDF-1e-9)
}

func (x *Index) count() int {
	n := 0
	for _, s := range x.segments {
		n += s.count
	}
	return n
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
