package index

import "heronlake.example/ask/kb/words"

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
		if id.Kind() != words.Talk {
			text[i].concept, text[i].span = conceptTerm(id), n
		}
		i += n
	}
}

// conceptTerm is a concept as a term of the index: no word has a tilde.
func conceptTerm(id words.ID) string { return "~" + id.Name() }
