package text

import (
	"fmt"
	"strings"

	"heronlake.example/ask/reasoner/answer"
)

// drill is the page for a turn of a drill: what the customer says and what was
// taken down, or the marks.
func (p page) drill(a answer.Answer) []*block {
	x := a.Drill
	if x == nil {
		return []*block{p.problems("problems", a.Question, a.Problems), p.verbatim(a.Reply)}
	}
	quoted := quotedPassages(a)
	if len(x.Marks) == 0 {
		return []*block{p.customer(x), p.taken(x), p.aside(x)}
	}
	quotes := p.quotes(quoted)
	return []*block{p.headline(a.Headline), p.marks(x.Marks), quotes, p.sources(a, quoted), p.aside(x)}
}

// customer is what the customer says; the first time with what the drill is.
func (p page) customer(x *answer.Drill) *block {
	if x.Says == "" {
		return nil
	}
	var lines []line
	if x.Opens {
		t := fmt.Sprintf("Customer %d: %s, level %d", x.Customer, x.Title, x.Level)
		if x.Written != "" {
			t = fmt.Sprintf("Customer %d: %s (%s)", x.Customer, x.Written, x.Title)
		}
		lines = append(lines, p.wrap("", "  ", []span{{t, title}})...)
	}
	return one("customer", append(lines, p.wrap("", "  ", []span{{"\"" + x.Says + "\"", strong}})...))
}

// taken is what was taken down in this turn and what is still to be named.
func (p page) taken(x *answer.Drill) *block {
	var lines []line
	if len(x.Heard) > 0 {
		lines = append(lines, p.wrap("", "  ", []span{{"Noted: ", title}, {sentence(strings.Join(x.Heard, ", ")), body}})...)
	}
	if len(x.Wanted) > 0 && (len(x.Heard) > 0 || x.Next != "" || x.Says == "") {
		lines = append(lines, p.wrap("", "  ", []span{{"To name: ", title}, {sentence(strings.Join(x.Wanted, ", ")), body}})...)
	}
	b := one("taken", lines)
	if b != nil {
		b.close = x.Says != ""
	}
	return b
}

// aside is what the program itself says.
func (p page) aside(x *answer.Drill) *block {
	var lines []line
	for _, t := range []string{x.Note, x.Next} {
		if t != "" {
			lines = append(lines, p.wrap("", "  ", words(t))...)
		}
	}
	b := one("aside", lines)
	if b != nil {
		b.close = len(x.Marks) == 0
	}
	return b
}

// markWords are how the marks of each kind are told.
var markWords = map[string]map[string]string{
	"item":     {"right": "right", "acceptable": "will do", "under": "too little", "over": "too much", "wrong": "wrong", "missing": "not named"},
	"question": {"missing": "not asked"},
	"caution":  {"missing": "not said"},
	"wish":     {"missing": "let pass"},
}

// marks lists what lost points, each with its reason, below one line of what was
// right.
func (p page) marks(marks []answer.Marked) *block {
	var good []string
	for _, m := range marks {
		if m.Points < m.Most {
			continue
		}
		switch m.Kind {
		case "item":
			good = append(good, m.Label+" "+m.Said)
		case "question":
			good = append(good, "asked "+m.Label)
		case "caution":
			good = append(good, "warned: "+m.Label)
		case "wish":
			good = append(good, "turned the wish down")
		}
	}
	var lines []line
	if len(good) > 0 {
		lines = p.wrap("", "  ", []span{{"Right: ", title}, {sentence(strings.Join(good, "; ")), body}})
	}
	const width = 11
	for _, m := range marks {
		if m.Points >= m.Most {
			continue
		}
		word := markWords[m.Kind][m.Verdict]
		head, indent := pad(word, width), strings.Repeat(" ", width)
		if p.Plain {
			head, indent = word+": ", "  "
		}
		text := []span{{m.Label, body}}
		if m.Kind == "caution" && m.Why != "" {
			text, m.Why = []span{{strings.TrimSuffix(m.Why, "."), body}}, ""
		}
		if m.Said != "" {
			text = append(text, span{" " + m.Said, body})
		}
		if m.Want != "" && m.Want != m.Said {
			better := ", take "
			if m.Verdict == "acceptable" {
				better = ", best "
			}
			text = append(text, span{better, body}, span{m.Want, strong})
		}
		if m.Why != "" {
			text = append(text, span{": " + strings.TrimSuffix(m.Why, "."), body})
		}
		text = append(text, span{"." + cited(m.Cites), body})
		lines = append(lines, p.wrap(head, indent, text)...)
	}
	return one("marks", lines)
}

func cited(cites []int) string {
	t := ""
	for _, n := range cites {
		t += fmt.Sprintf(" [%d]", n)
	}
	return t
}

// lesson is a lesson as a page: passages, the worked example, exercises, and
// their answers last.
func (p page) lesson(a answer.Answer) []*block {
	if a.Lesson == nil {
		return []*block{p.headline(a.Headline), p.problems("problems", a.Question, a.Problems)}
	}
	x := a.Lesson
	blocks := []*block{p.headline(a.Headline), p.quotes(a.Passages), one("example", p.exercise("A worked example", x.Example.Says))}
	for i, s := range a.Steps {
		b := one(s.ID, p.step(s))
		if b != nil && i > 0 {
			b.close = s.Formula == "" && a.Steps[i-1].Formula == ""
		}
		blocks = append(blocks, b)
	}
	blocks = append(blocks, one("found", p.answers("So", x.Example.Answers)))
	for i, e := range x.Exercises {
		blocks = append(blocks, one("exercise", p.exercise(fmt.Sprintf("Exercise %d", i+1), e.Says)))
	}
	for i, e := range x.Exercises {
		blocks = append(blocks, one("answers", p.answers(fmt.Sprintf("Answers to exercise %d", i+1), e.Answers)))
	}
	return blocks
}

func (p page) exercise(name, says string) []line {
	return append(p.wrap("", "  ", []span{{name, title}}), p.wrap("  ", "  ", words("\""+says+"\""))...)
}

func (p page) answers(name string, list []string) []line {
	lines := p.wrap("", "  ", []span{{name + ":", title}})
	for _, t := range list {
		lines = append(lines, p.wrap("  ", "    ", words(t))...)
	}
	return lines
}
