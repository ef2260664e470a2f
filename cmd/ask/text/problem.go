package text

import (
	"strings"

	"heronlake.example/ask/reasoner/answer"
)

// slightProblems are kinds that leave the answer standing; where there is one,
// they are told below it. All others are told before any figure.
var slightProblems = map[string]bool{"unplaced": true, "no-notes": true}

func sortProblems(a answer.Answer) (grave, slight []answer.Problem) {
	empty := a.Headline == "" && len(a.Figures) == 0 && len(a.Choices) == 0 && len(a.Passages) == 0
	for _, x := range a.Problems {
		if slightProblems[x.Kind] && !empty {
			slight = append(slight, x)
		} else {
			grave = append(grave, x)
		}
	}
	return grave, slight
}

// problems shows the question with the words in doubt underlined, and below it
// what is the matter with each.
func (p page) problems(name, question string, list []answer.Problem) *block {
	return &block{name: name, items: len(list), draw: func(n int, _ bool) []line {
		var lines []line
		if !p.Plain {
			lines = p.underline(question, list[:n])
		}
		var kinds []string // in the order of the answer, each once with all its texts
		texts := map[string]string{}
		for _, x := range list[:n] {
			text := sentence(x.Text)
			if p.Plain && x.Said != "" && !strings.Contains(x.Text, x.Said) {
				text += ` Said: "` + x.Said + `".`
			}
			switch had, ok := texts[x.Kind]; {
			case !ok:
				kinds, texts[x.Kind] = append(kinds, x.Kind), text
			case !strings.Contains(had, text):
				texts[x.Kind] = had + " " + text
			}
		}
		for _, k := range kinds {
			lines = append(lines, p.wrap("", "  ", []span{{problemTitle(k), warning}, {texts[k], body}})...)
		}
		return lines
	}}
}

// problemTitles lead the text of a problem, which is a sentence of its own.
var problemTitles = map[string]string{
	"unplaced":      "Left over: ",
	"ambiguous":     "Unclear: ",
	"contradiction": "Check this: ",
	"out-of-range":  "Check this: ",
	"out-of-scope":  "Sorry: ",
	"no-notes":      "Sorry: ",
	"unreadable":    "Not readable: ",
}

func problemTitle(kind string) string {
	if t, ok := problemTitles[kind]; ok {
		return t
	}
	return label(kind) + ": "
}

// underline echoes those lines of the question that hold words in doubt, each
// with a line of carets below.
func (p page) underline(question string, list []answer.Problem) []line {
	doubted := func(at int) bool {
		for _, x := range list {
			if x.Start < x.End && at >= x.Start && at < x.End {
				return true
			}
		}
		return false
	}
	const indent = "  "
	var lines []line
	var text, carets strings.Builder
	used, any := 0, false
	flush := func() {
		if any {
			lines = append(lines,
				line{{indent + text.String(), body}},
				line{{indent + strings.TrimRight(carets.String(), " "), mark}})
		}
		text.Reset()
		carets.Reset()
		used, any = 0, false
	}
	for _, w := range wordsAt(question) {
		if n := columns(Clean(question[w.start:w.end])); used > 0 && used+n > p.Width-len(indent) {
			flush()
		}
		for i, r := range question[w.start:w.end] {
			r = cleanRune(r)
			n := widths.RuneWidth(r)
			if used+n > p.Width-len(indent) {
				flush()
			}
			text.WriteRune(r)
			c := " "
			if doubted(w.start + i) {
				c, any = "^", true
			}
			carets.WriteString(strings.Repeat(c, n))
			used += n
		}
	}
	flush()
	return lines
}

// wordsAt divides text into words with the spaces that follow them, by byte
// offsets.
func wordsAt(text string) []struct{ start, end int } {
	var out []struct{ start, end int }
	start := 0
	for i := 0; i < len(text); i++ {
		if text[i] == ' ' && (i+1 == len(text) || text[i+1] != ' ') {
			out = append(out, struct{ start, end int }{start, i + 1})
			start = i + 1
		}
	}
	if start < len(text) {
		out = append(out, struct{ start, end int }{start, len(text)})
	}
	return out
}
