package reasoner

import (
	"slices"
	"strings"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb"
	"heronlake.example/ask/reasoner/advise"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/meaning"
)

const metric = unit.Metric

// mostPassages is how many passages an answer quotes; mostFound how many of
// them a search may bring to a question of words, mostBeside to one of figures.
const (
	mostPassages = 12
	mostFound    = 3
	mostBeside   = 2
)

// citer numbers passages in the order in which they are first cited.
type citer struct {
	s  *Session
	a  *answer.Answer
	at map[string]int
}

// passage cites one passage and returns its number, 0 when there is no room or
// no such passage.
func (c *citer) passage(id string) int {
	if n, ok := c.at[id]; ok {
		return n
	}
	if c.s.r.opts.Notes == nil || len(c.a.Passages) >= mostPassages {
		return 0
	}
	p, ok := c.s.r.opts.Notes.Passage(id)
	if !ok {
		return 0
	}
	text, err := kb.Render(p, c.s.sys)
	if err != nil {
		return 0 // the lint finds a broken reference; an answer does not quote it
	}
	n := len(c.a.Passages) + 1
	c.at[id] = n
	c.a.Passages = append(c.a.Passages, answer.Passage{N: n, Note: p.Note, Title: p.Title, Heading: p.Heading, Text: text, Source: p.Source, Shop: p.Shop})
	return n
}

// note cites the first passage of a note.
func (c *citer) note(id string) []int {
	if c.s.r.opts.Notes == nil {
		return nil
	}
	for _, p := range c.s.r.opts.Notes.NotePassages(id) {
		if n := c.passage(p.ID); n > 0 {
			return []int{n}
		}
		break
	}
	return nil
}

// cite finds the passages of a question and numbers what figures, choices and
// cautions rest on. A question of words leads with what the search found; a
// question of figures with the notes behind the figures asked for, then what the
// search found, then the rest.
func (s *Session) cite(a *answer.Answer, in advise.In, topics []string, wish meaning.Wish) {
	c := &citer{s: s, a: a, at: map[string]int{}}
	wordy := slices.ContainsFunc(topics, isWorded) || len(a.Figures) == 0 && (len(a.Read) == 0 || asks(a.Question))
	if wordy {
		s.quote(c, in, topics, mostFound)
		for i := range a.Passages { // the words are the answer, whatever figures stand beside them
			a.Passages[i].Quoted = true
			in.Quoted = append(in.Quoted, a.Passages[i].Note)
		}
	}
	if fitting := slices.Contains(topics, string(meaning.Fit)); !fitting {
		c.figures(func(f answer.Figure) bool { return f.Asked })
		if !wordy {
			s.quote(c, in, topics, mostBeside)
		}
	}
	c.figures(func(f answer.Figure) bool { return (f.Asked || f.Decides) && len(f.Cites) == 0 })
	for i := range a.Choices {
		for _, n := range advise.Notes(a.Choices[i].ID) {
			a.Choices[i].Cites = append(a.Choices[i].Cites, c.note(n)...)
		}
	}
	for _, w := range advise.Cautions(in) {
		w.Caution.Cites = c.note(w.Note)
		a.Cautions = append(a.Cautions, w.Caution)
	}
}

// askingWords begin a question that lacks its question mark.
var askingWords = []string{"is", "are", "can", "could", "do", "does", "did", "will", "would", "should", "what", "whats", "what's", "how", "why", "which", "where", "when", "who", "any"}

// asks reports whether a line is a question rather than a statement of facts.
func asks(line string) bool {
	words := strings.Fields(strings.ToLower(line))
	return strings.Contains(line, "?") || len(words) > 0 && slices.Contains(askingWords, words[0])
}

// figures cites the notes behind the chosen figures.
func (c *citer) figures(chosen func(answer.Figure) bool) {
	for i := range c.a.Figures {
		f := &c.a.Figures[i]
		if !chosen(*f) {
			continue
		}
		for _, n := range advise.Notes(f.ID) {
			f.Cites = append(f.Cites, c.note(n)...)
		}
	}
}

// quote cites what the search finds for the question.
func (s *Session) quote(c *citer, in advise.In, topics []string, most int) {
	if s.r.opts.Search == nil {
		return
	}
	found := s.r.opts.Search.Search(kb.Query{Text: c.a.Question, Topics: topics, Context: contextWords(in), Limit: most})
	for _, h := range found.Hits {
		c.passage(h.Passage)
	}
	for _, w := range found.Corrected {
		if !slices.ContainsFunc(c.a.Corrected, func(x answer.Corrected) bool { return x.Said == w.Said }) {
			c.a.Corrected = append(c.a.Corrected, answer.Corrected{Said: w.Said, Word: w.Word})
		}
	}
}

// contextSlots are the facts whose words prefer one note to another.
var contextSlots = []string{"boat.hull", "boat.material", "water.kind", "battery.chemistry", "motor.control", "motor.drive", "mount.place", "use.style"}

func contextWords(in advise.In) []string {
	var out []string
	for _, slot := range contextSlots {
		if f, ok := in.Card.Get(slot); ok && f.Text != "" {
			out = append(out, f.Text)
		}
	}
	return out
}
