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

// worthAsking is the passage that tells what a fitting rests on.
const worthAsking = "questions-at-the-counter#the-measures-worth-having"

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
	told := slices.ContainsFunc(a.Understood, func(u answer.Understood) bool { return u.New })
	if !told && len(a.Figures) == 0 && len(a.Read) == 0 && slices.Equal(topics, []string{string(meaning.Fit)}) {
		c.passage(worthAsking) // a motor was asked for, and nothing told
		return
	}
	worded, fitting := slices.ContainsFunc(topics, isWorded), slices.Contains(topics, string(meaning.Fit))
	var found kb.Result
	if worded || !fitting || len(a.Figures) == 0 || !measured(a) { // a boat told in figures is fitted, and asks the notes nothing
		found = s.search(c, in, topics)
	}
	wordy := worded || len(a.Figures) == 0 && (len(a.Read) == 0 || asks(a.Question) || found.Sure >= firm)
	switch {
	case wordy:
		c.quote(found, mostFound)
	case !measured(a) && !a.FollowUp && found.Sure >= plain:
		c.quote(found, 1)
	}
	for i := range a.Passages { // the words are the answer, whatever figures stand beside them
		a.Passages[i].Quoted = true
		in.Quoted = append(in.Quoted, a.Passages[i].Note)
	}
	if !fitting {
		c.figures(func(f answer.Figure) bool { return f.Asked })
		if !wordy {
			c.quote(found, mostBeside)
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
	if in.Sol != nil { // where a formula has nothing behind it, the figure does not stand alone
		for _, t := range in.Sol.Doubts(in.Shown...) {
			a.Cautions = append(a.Cautions, answer.Caution{ID: "limits", Text: upper(t) + "."})
		}
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

// How sure a search must be of its first passage, above what it takes to find one
// at all: to be quoted for a line that states things, and to be quoted before
// figures where the line told no quantity. Who told one wants the figures.
const (
	firm  = 1.5
	plain = 3
)

// measured reports whether the line told a quantity that figures are asked by. How
// often, how long and how many is said in stories too: "it stops after twenty
// minutes", "can I put two motors on".
func measured(a *answer.Answer) bool {
	return slices.ContainsFunc(a.Understood, func(u answer.Understood) bool {
		return u.New && (u.Value != nil || u.Slot == "battery.group") && !slices.Contains(toldAnyway, u.Slot)
	})
}

var toldAnyway = []string{"use.throttle", "use.hours", "use.trips", "charge.hours", "motor.count", "battery.count", "people.count"}

// search looks for what the line asks, and says which words it took for others.
func (s *Session) search(c *citer, in advise.In, topics []string) kb.Result {
	if s.r.opts.Search == nil {
		return kb.Result{}
	}
	found := s.r.opts.Search.Search(kb.Query{Text: c.a.Question, Topics: topics, Context: contextWords(in), Limit: mostFound})
	for _, w := range found.Corrected {
		if !slices.ContainsFunc(c.a.Corrected, func(x answer.Corrected) bool { return x.Said == w.Said }) {
			c.a.Corrected = append(c.a.Corrected, answer.Corrected{Said: w.Said, Word: w.Word})
		}
	}
	return found
}

// quote cites the first passages of those found.
func (c *citer) quote(found kb.Result, most int) {
	for _, h := range found.Hits[:min(most, len(found.Hits))] {
		c.passage(h.Passage)
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
