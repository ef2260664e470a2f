package text

import (
	"fmt"
	"strconv"
	"strings"

	"heronlake.example/ask/reasoner/answer"
)

// boat shows what is known, assumed and unknown.
func (p page) boat(a answer.Answer) []*block {
	return []*block{
		p.headline(a.Headline),
		p.problems("problems", a.Question, a.Problems),
		p.known(a.Understood),
		p.assumedList(a.Assumed),
		p.unknown(a.Unknown),
		p.verbatim(a.Reply),
	}
}

func (p page) known(list []answer.Understood) *block {
	var rows [][2]string
	for _, u := range list {
		name := u.Label
		if name == "" {
			name = plainID(u.Slot)
		}
		rows = append(rows, [2]string{lowerFirst(name), understood(u)})
	}
	return p.list("Known", rows)
}

// understood writes a value with the words that gave it. A value that the answer
// does not show in the reader's units stands in their words alone, or, without
// any, in the SI units that it carries.
func understood(u answer.Understood) string {
	shown := u.Display
	if shown == "" {
		shown = u.Text
	}
	switch {
	case shown == "" && u.Said != "":
		return `"` + u.Said + `"`
	case shown == "":
		return inSI(u)
	case u.Said == "" || u.Said == shown:
		return shown
	}
	return shown + ` ("` + u.Said + `")`
}

func inSI(u answer.Understood) string {
	number := func(v *float64) string { return strconv.FormatFloat(*v, 'g', 4, 64) }
	t := ""
	switch {
	case u.Value != nil:
		t = number(u.Value)
	case u.Low != nil && u.High != nil:
		t = number(u.Low) + " to " + number(u.High)
	case u.Low != nil:
		t = "from " + number(u.Low)
	case u.High != nil:
		t = "up to " + number(u.High)
	}
	if u.Unit != "" && u.Unit != "1" {
		t += " " + u.Unit
	}
	return t
}

func (p page) assumedList(list []answer.Assumed) *block {
	var rows [][2]string
	for _, x := range list {
		name := x.Label
		if name == "" {
			name = plainID(x.Slot)
		}
		value := x.Display
		if value == "" {
			value = x.Text
		}
		if x.Why != "" {
			value += "; " + x.Why
		}
		if x.Source != "" {
			value += " (" + x.Source + ")"
		}
		rows = append(rows, [2]string{lowerFirst(name), value})
	}
	return p.list("Assumed", rows)
}

func (p page) unknown(list []answer.Unknown) *block {
	var names []string
	for _, u := range list {
		name := u.Label
		if name == "" {
			name = plainID(u.Slot)
		}
		names = append(names, lowerFirst(name))
	}
	if names == nil {
		return nil
	}
	return one("unknown", p.wrap("", "  ", []span{{"Not known: ", title}, {sentence(strings.Join(names, ", ")), body}}))
}

// list is a title with rows of a name and a value below it.
func (p page) list(name string, rows [][2]string) *block {
	if len(rows) == 0 {
		return nil
	}
	var names []string
	for _, r := range rows {
		names = append(names, r[0])
	}
	nw := widest(names, widestLabel)
	indent := strings.Repeat(" ", nw+4)
	lines := []line{{{name + ":", title}}}
	for _, r := range rows {
		head := "  " + pad(r[0], nw) + "  "
		if p.Plain || columns(r[0]) > nw {
			head = "  " + r[0] + ": "
		}
		lines = append(lines, p.entry(head, indent, words(r[1]))...)
	}
	return one(name, lines)
}

// why shows the chain behind a figure: for each step the formula, the formula
// with its numbers put in, the result, and what it rests on.
func (p page) why(a answer.Answer) []*block {
	blocks := []*block{
		p.headline(a.Headline),
		p.problems("problems", a.Question, a.Problems),
	}
	wordless := false
	for _, s := range a.Steps {
		if s.Rank == "behind" { // what it leads to did not decide
			continue
		}
		b, brief := one(s.ID, p.step(s)), s.Formula == "" || s.Rank != "" || s.Passed
		if b != nil {
			b.close = brief && wordless
		}
		wordless = brief
		blocks = append(blocks, b)
	}
	return append(blocks, p.verbatim(a.Reply))
}

func (p page) step(s answer.Step) []line {
	name := s.Label
	if name == "" {
		name = plainID(s.ID)
	}
	lines := p.wrap("", "    ", []span{{name + ": ", body}, {s.Result, strong}, {withBand("", s.Band) + given(s), body}})
	add := func(lead, text string) {
		if text != "" {
			lines = append(lines, p.wrap("  ", "    ", words(lead+text))...)
		}
	}
	if s.Rank == "" && !s.Passed {
		add("= ", s.Formula)
		if s.Working != s.Formula {
			add("= ", worked(s))
		}
		if s.Formula != "" {
			add("source: ", s.Source)
		}
	}
	for _, w := range s.Warnings {
		add("note: ", w)
	}
	return lines
}

// worked is a working with what it comes to. An equation has said so already.
func worked(s answer.Step) string {
	if s.Comes == "" || strings.Contains(s.Working, " = ") || strings.Contains(s.Working, ": ") || strings.HasPrefix(s.Working, s.Comes+",") {
		return s.Working
	}
	return s.Working + " = " + s.Comes
}

// given says where a step comes from that no formula gave.
func given(s answer.Step) string {
	switch {
	case s.Rank == "beaten":
		return ", the smaller; how it is found: :why " + s.ID
	case s.Passed:
		return ", from " + s.Formula
	case s.Formula != "":
		return ""
	case s.From == "said" && s.Said != "":
		return fmt.Sprintf(", said: %q", Clean(s.Said))
	}
	t := ""
	if s.From != "" {
		t = ", " + s.From
	}
	if s.Why != "" {
		t += ": " + s.Why
	}
	if s.Source != "" {
		t += " (" + s.Source + ")"
	}
	return t
}
