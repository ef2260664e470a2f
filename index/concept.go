package index

import (
	"strings"
	"sync"

	"heronlake.example/ask/kb/words"
)

// markConcepts finds the trade's words and phrases in a text by the table of
// package words. A passage is indexed under the concept as well as under its
// words, so that "toon" finds what is written of pontoons and "sucks air" what
// is written of ventilation.
func markConcepts(text []word) {
	plain := make([]string, len(text))
	for i, w := range text {
		plain[i] = w.text
	}
	for i := 0; i < len(plain); {
		id, n := words.Match(plain[i:])
		if n == 0 {
			i++
			continue
		}
		switch {
		case id.Kind() != words.Talk:
			text[i].concept, text[i].span, text[i].trade = conceptTerm(id), n, true
		case searched()[id.Name()]:
			text[i].concept, text[i].span = conceptTerm(id), n
		case chatter()[id.Name()]:
			for j := i; j < i+n; j++ {
				text[j].chatter = true
			}
		}
		i += n
	}
}

// conceptTerm is a concept as a term of the index: no word has a tilde.
func conceptTerm(id words.ID) string { return "~" + id.Name() }

// motorConcept is what every passage is about. Its words are not searched for by
// themselves: who asks about a trolling motor is not asking about trolling.
var motorConcept = conceptTerm(words.Of("trolling motor"))

// searched names the entries that are no words of the trade by themselves and
// yet tell which passage is meant.
var searched = names(`loaded; dry; capacity plate; weighs; gear; gasoline; child; standing; seated; freeboard;
	waterline; high; too short; too long; depth; one way; round trip; between trips; at night; all day;
	half day; full throttle; speed; top speed; budget; horsepower; half down; swimming; electric only;
	anchor; hold; two motors; leg up; leg down; miles; pulls; age; fish kind; fishing line`)

// chatter names the entries that say who is along and what is wished for, and
// nothing of what is asked.
var chatter = names(`companion; me; us; both of us; dog; would like; must; or; and; with; than`)

func names(list string) func() map[string]bool {
	return sync.OnceValue(func() map[string]bool {
		m := map[string]bool{}
		for n := range strings.SplitSeq(list, ";") {
			m[strings.TrimSpace(n)] = true
		}
		return m
	})
}
