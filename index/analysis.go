package index

import (
	"slices"
	"strings"
	"sync"
	"unicode"

	"github.com/blevesearch/bleve/v2/analysis"
	"github.com/blevesearch/bleve/v2/analysis/char/asciifolding"
	"github.com/blevesearch/bleve/v2/analysis/lang/en"
	"github.com/blevesearch/bleve/v2/analysis/token/lowercase"
	"github.com/blevesearch/bleve/v2/analysis/token/porter"
	bleveunicode "github.com/blevesearch/bleve/v2/analysis/tokenizer/unicode"
)

// word is one word of a text: as written (in lower case) and as compared.
type word struct {
	text string
	stem string // "" for a stop word
	// concept is the thing of the trade that is named from this word on, by so
	// many words; "" where none begins here.
	concept string
	span    int
	trade   bool // the concept is one of the trade, not of talk about it
	chatter bool // says nothing of what is asked
}

// number reports whether the word is digits alone; a number tells little about
// which passage is meant.
func (w word) number() bool {
	return strings.IndexFunc(w.text, func(r rune) bool { return !unicode.IsDigit(r) }) < 0
}

// chain is bleve's English analysis up to the stems: accents folded, words by
// the Unicode rules, lower case, apostrophes taken out, figures parted from the
// units that stick to them.
var chain = sync.OnceValue(func() analysis.Analyzer {
	return &analysis.DefaultAnalyzer{
		CharFilters:  []analysis.CharFilter{asciifolding.New(), marks{}},
		Tokenizer:    bleveunicode.NewUnicodeTokenizer(),
		TokenFilters: []analysis.TokenFilter{lowercase.NewLowerCaseFilter(), apostrophes{}, figures{}},
	}
})

// analyse cuts a text into words.
func analyse(text string) []word {
	tokens := chain().Analyze([]byte(text))
	words := make([]word, len(tokens))
	for i, t := range tokens {
		words[i].text = string(t.Term)
	}
	stem(tokens)
	for i, t := range tokens {
		if !stopWords()[words[i].text] {
			words[i].stem = string(t.Term)
		}
	}
	markConcepts(words)
	return words
}

// stem takes the words to their stems (Porter 1980), in place.
func stem(tokens analysis.TokenStream) { porter.NewPorterStemmer().Filter(tokens) }

func stemOf(text string) string {
	t := analysis.TokenStream{{Term: []byte(text)}}
	stem(t)
	return string(t[0].Term)
}

// stopWords are bleve's English ones, without their apostrophes, and the words
// with which a question is asked at a counter.
var stopWords = sync.OnceValue(func() analysis.TokenMap {
	m := analysis.NewTokenMap()
	_ = m.LoadBytes(en.EnglishStopWords) // fails on a reader's error only; there is none
	for w := range m {
		m.AddToken(strings.ReplaceAll(w, "'", ""))
	}
	for _, w := range strings.Fields(questionWords) {
		m.AddToken(w)
	}
	return m
})

const questionWords = `
	can could will would should shall may might must please tell show explain say
	use uses using get gets got getting let lets want wants need needs know think like just really
	ok okay hey hi hello thanks thank much many lot lots also still even ever
	anyone someone anybody somebody everyone everybody instead something anything thing things stuff kind sort way ways
	dont doesnt didnt wont cant isnt arent wasnt couldnt wouldnt shouldnt
	im ive id ill youre youve theyre hes shes thats theres whats wheres hows
	go goes going gonna wanna one guy buddy mine vs versus etc eg ie`

// marks parts words that only a mark without a space holds together, as in
// "it trips.what now", which the Unicode rules take for one.
type marks struct{}

func (marks) Filter(text []byte) []byte {
	out := slices.Clone(text)
	for i, c := range out {
		if c == ':' || c == '_' || c == '.' && i > 0 && !unicode.IsDigit(rune(out[i-1])) {
			out[i] = ' '
		}
	}
	return out
}

// apostrophes takes "'s" off a word and other apostrophes out of it.
type apostrophes struct{}

func (apostrophes) Filter(tokens analysis.TokenStream) analysis.TokenStream {
	for _, t := range tokens {
		w := string(t.Term)
		if !strings.ContainsAny(w, "'\u2019") {
			continue
		}
		w = strings.ReplaceAll(w, "\u2019", "'")
		w = strings.TrimSuffix(w, "'s")
		t.Term = []byte(strings.ReplaceAll(w, "'", ""))
	}
	return tokens
}

// figures parts "12v" into "12" and "volt": a unit that follows a number is
// spelled out as the notes do.
type figures struct{}

// spelledUnits are the short forms that a number is followed by.
var spelledUnits = map[string]string{
	"v": "volt", "vdc": "volt", "volts": "volt",
	"a": "amp", "amps": "amp", "ah": "amp",
	"lb": "pound", "lbs": "pound",
	"ft": "foot", "feet": "foot", "in": "inch", "inches": "inch",
	"awg": "gauge", "ga": "gauge", "hrs": "hour", "hr": "hour", "min": "minute", "mins": "minute",
}

func (figures) Filter(tokens analysis.TokenStream) analysis.TokenStream {
	out := make(analysis.TokenStream, 0, len(tokens)+2)
	afterNumber := false
	for _, t := range tokens {
		w := string(t.Term)
		digits := len(w) - len(strings.TrimLeft(w, "0123456789.,"))
		if digits > 0 && digits < len(w) {
			out = append(out, &analysis.Token{Term: t.Term[:digits:digits]})
			t, w = &analysis.Token{Term: t.Term[digits:]}, w[digits:]
			afterNumber = true
		}
		if full, ok := spelledUnits[w]; ok && afterNumber {
			t.Term = []byte(full)
		}
		afterNumber = digits == len(w)
		if len(t.Term) > 0 {
			out = append(out, t)
		}
	}
	return out
}

// Stems lists the terms of a text as the index compares them, without those
// that stand for concepts of the trade.
func Stems(text string) []string {
	var out []string
	for _, w := range analyse(withoutReferences(text)) {
		if w.stem != "" {
			out = append(out, w.stem)
		}
	}
	return out
}

// pairs lists neighbouring stems, with at most two stop words between them.
func pairs(words []word) []string {
	var out []string
	last := -1
	for i, w := range words {
		if w.stem == "" {
			continue
		}
		if last >= 0 && i-last <= 3 {
			out = append(out, words[last].stem+" "+w.stem)
		}
		last = i
	}
	return out
}
