package reasoner

import (
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/kb/words"
)

// mostNear is how many names are offered for one that is not known.
const mostNear = 5

// closest are the names that a word may have been meant for: those it begins, or
// those within a slip or two of it, the nearest first.
func closest(word string, names []string) []string {
	const most = 2
	by := make([][]string, most+1) // by the number of slips
	for _, name := range names {
		limit := min(most, len(word)/2)
		if n := words.Slips(word, name, limit); n <= limit {
			by[n] = append(by[n], name)
		} else if len(word) > 1 && strings.HasPrefix(name, word) {
			by[most] = append(by[most], name)
		}
	}
	for _, near := range by {
		if len(near) > 0 {
			return near[:min(len(near), mostNear)]
		}
	}
	return nil
}

// nearFigures are the ids of the figures that words may have been meant for: an
// id within a slip or two of them; or those whose ids, and next to these whose
// labels, hold most of the words; or what is within a slip or two of one word.
func nearFigures(said string) []string {
	said = strings.ToLower(said)
	if near := closest(said, figureNames()); len(near) > 0 {
		return near
	}
	parts := slices.DeleteFunc(strings.FieldsFunc(said, between), func(p string) bool { return len(p) < 3 || p == "the" })
	begins := func(part, name string) bool { return strings.HasPrefix(name, part) }
	slips := func(part, name string) bool { return words.Slips(part, name, 2) <= min(2, len(part)/3) }
	for _, like := range []func(part, name string) bool{begins, slips} {
		var out []string
		best := 1
		for _, id := range sheet.All() {
			c := id.Describe()
			if !c.Figure {
				continue
			}
			n := 0
			for _, p := range parts {
				is := func(name string) bool { return like(p, name) }
				switch {
				case slices.ContainsFunc(strings.FieldsFunc(c.Name, between), is):
					n += 3
				case slices.ContainsFunc(strings.FieldsFunc(strings.ToLower(c.Label), between), is):
					n += 2
				}
			}
			if n > best {
				best, out = n, nil
			}
			if n == best {
				out = append(out, c.Name)
			}
		}
		if len(out) > 0 {
			slices.Sort(out)
			return out[:min(len(out), mostNear)]
		}
	}
	return nil
}

// between is what divides the words of an id or a label.
func between(r rune) bool { return r == '.' || r == ' ' || r == '-' || r == '_' }

// either joins names, the last one behind a word of its own.
func either(names []string, comma, last string) string {
	if len(names) < 2 {
		return strings.Join(names, "")
	}
	n := len(names) - 1
	return strings.Join(names[:n], comma) + last + names[n]
}
