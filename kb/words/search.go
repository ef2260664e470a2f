package words

// Expand returns the plain names of the trade's words found in a text, in
// order and each once: "my toon sucks air" gives "pontoon", "ventilation".
// A name that stands in the text as it is, is left out: it adds nothing.
func Expand(text string) []string {
	ws := Split(text)
	var out []string
	seen := map[ID]bool{}
	for i := 0; i < len(ws); {
		id, n := Match(ws[i:])
		if n == 0 {
			if w, ok := Correct(ws[i]); ok {
				id, _ = Match([]string{w})
			}
			n = 1
		}
		if id != None && table[id].Kind != Talk && !seen[id] {
			seen[id] = true
			if n > 1 || ws[i] != table[id].Word {
				out = append(out, table[id].Word)
			}
		}
		i += n
	}
	return out
}

// Synonyms returns the groups of words that mean the same to a search: the
// plain name first. Words that only tell what a number is about are not among
// them.
func Synonyms() [][]string {
	var out [][]string
	for _, e := range table {
		if e.Kind != Talk && len(e.Forms) > 0 {
			out = append(out, append([]string{e.Word}, e.Forms...))
		}
	}
	return out
}
