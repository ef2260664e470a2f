package reasoner

import (
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/advise"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
	"heronlake.example/ask/reasoner/meaning"
	"heronlake.example/ask/reasoner/read"
)

// talk answers a turn of plain talk.
func (s *Session) talk(line string) answer.Answer {
	reading := read.Read(line)
	out := meaning.Bind(reading, s.now.card)
	if out.Metric && !s.set {
		s.sys = metric
	}
	a := answer.Answer{Question: line, Read: reads(reading), Problems: problems(out.Problems), Corrected: corrections(out.Corrected)}
	before := s.now
	switch out.Command {
	case meaning.Undo:
		if !s.back() {
			a.Reply = "There is nothing to take back."
			return s.finish(a)
		}
		a.FollowUp = true
		return s.finish(s.answerCard(a, before, s.now.topics, meaning.Wish{}))
	case meaning.Fresh:
		next := state{card: out.Card, topics: topicsOf(out, nil)}
		s.keep(next)
		if len(out.Card.Facts) == 0 && len(out.Wish.Topics) == 0 {
			a.Reply = "Starting over: nothing is known."
			return s.finish(a)
		}
		return s.finish(s.answerCard(a, state{}, next.topics, out.Wish))
	}
	if out.Wish.Out && len(out.Changed) == 0 {
		a.Understood = understood(s.now.card, nil, s.sys)
		a.Problems = append(a.Problems, answer.Problem{Kind: "out-of-scope", Text: "That is outside what I know: I fit electric trolling motors to boats. Tell me about the boat, or ask about motors, shafts, batteries, wiring or faults."})
		return s.finish(a)
	}
	topics := topicsOf(out, s.now.topics)
	a.FollowUp = goesOn(out, s.now.topics)
	chosenBetween(&a)
	if len(out.Changed) == 0 && !figured(topics) {
		talkOnly(&a)
	}
	next := state{card: out.Card, topics: lasting(topics, s.now.topics)}
	if len(out.Changed) > 0 {
		s.keep(next)
	} else { // nothing to take back, but what was asked is remembered
		s.now.card, s.now.topics = next.card, next.topics
	}
	return s.finish(s.answerCard(a, before, topics, out.Wish))
}

// answerCard fills the answer from the card as it stands.
func (s *Session) answerCard(a answer.Answer, before state, topics []string, wish meaning.Wish) answer.Answer {
	c := s.now.card
	a.Understood = understood(c, &before.card, s.sys)
	blocked := slices.ContainsFunc(a.Problems, func(p answer.Problem) bool {
		return p.Kind == "contradiction" || p.Kind == "out-of-range"
	})
	in := advise.In{Card: c, Topics: topics, Over: wish.Over, Judge: wish.Judge, Words: wish.Words, Sys: s.sys}
	if !blocked && figured(topics) {
		f := fit.Solve(c, topics, s.sys, nil)
		a.Figures = grounded(f, f.Figures())
		in.Sol, in.Shown = f.Sol, figureCells(a.Figures)
		a.Headline = limits(f)
		if len(a.Figures) > 0 {
			a.Assumed = f.Assumed(a.Figures)
			a.Steps = f.Steps(figureCells(a.Figures)...)
			a.Headline = strings.TrimSpace(advise.Headline(in) + " " + a.Headline)
			a.Notice = advise.Notice
		}
		if q := f.Ask(); q != nil && (len(a.Figures) > 0 || !slices.ContainsFunc(topics, isWorded)) {
			a.Ask = []answer.Ask{*q}
		}
		s.now.offer = s.shelf(&a, c, f, topics)
		s.now.fit = f
		if wish.Why {
			a.Headline = because(f, a.Figures, a.Headline)
		}
	}
	if !blocked {
		a.Choices = advise.Choices(in)
		if t := s.compare(c, wish.Over, wish.Compare); t != nil {
			a.Tables = []answer.Table{*t}
			if a.Headline == "" {
				a.Headline = t.Verdict
			}
		}
	}
	s.cite(&a, in, topics, wish)
	if len(a.Figures) == 0 && len(a.Passages) > 0 && len(a.Read) == 0 {
		a.Ask = nil // the passages answer; there is no figure for a measure to settle
	}
	s.compareTurns(&a, in, before, topics)
	return a
}

// compareTurns says what this turn moved against the card before it.
func (s *Session) compareTurns(a *answer.Answer, in advise.In, before state, topics []string) {
	if len(before.card.Facts) == 0 || in.Sol == nil {
		a.FollowUp = false // nothing to follow: the whole answer is news
		return
	}
	old := fit.Solve(before.card, topics, s.sys, nil)
	a.Changed = fit.Changes(old, s.now.fit)
	fit.Moved(a.Figures, old)
	if a.FollowUp && !slices.ContainsFunc(a.Figures, func(f answer.Figure) bool { return f.Moved && (f.Asked || f.Decides) }) {
		a.Reply = "That moves none of the figures that decide."
	}
	was := in
	was.Card, was.Sol, was.Shown, was.Words = before.card, old.Sol, nil, nil
	advise.Moved(a, was)
}

// chosenBetween marks the numbers of a choice ("12 or 24 volt?") as such: they are
// understood, and state nothing of the boat.
func chosenBetween(a *answer.Answer) {
	a.Problems = slices.DeleteFunc(a.Problems, func(p answer.Problem) bool {
		if p.Kind != "unplaced" || !strings.HasSuffix(p.Text, "one of a choice") {
			return false
		}
		for i := range a.Read {
			if r := &a.Read[i]; r.Start == p.Start && r.End == p.End {
				r.As = "choice"
			}
		}
		return true
	})
}

// talkOnly marks the numbers of a question of words ("it trips after five
// minutes") as part of the talk: they are searched for, and are no measure of
// the boat that went unused.
func talkOnly(a *answer.Answer) {
	a.Problems = slices.DeleteFunc(a.Problems, func(p answer.Problem) bool { return p.Kind == "unplaced" })
	for i := range a.Read {
		if a.Read[i].As == "" {
			a.Read[i].As = "talk"
		}
	}
}

// because leads an answer to "why?" with the working of the figure asked about.
func because(f *fit.Fit, figures []answer.Figure, otherwise string) string {
	for _, fig := range figures {
		if fig.Asked && fig.How != "" && fig.Basis != string(sheet.Said) {
			return fig.Label + ": " + fig.How + " = " + fig.Display + "."
		}
	}
	return otherwise
}

// grounded leaves out figures that rest on assumptions alone: a figure needs
// something that was said; one of constants only must have been asked for.
func grounded(f *fit.Fit, figures []answer.Figure) []answer.Figure {
	return slices.DeleteFunc(figures, func(fig answer.Figure) bool {
		id, _ := sheet.Lookup(fig.ID)
		said, assumed := f.Rests(id)
		return !said && (assumed || !fig.Asked)
	})
}

func figureCells(figures []answer.Figure) []sheet.ID {
	var ids []sheet.ID
	for _, f := range figures {
		if id, ok := sheet.Lookup(f.ID); ok {
			ids = append(ids, id)
		}
	}
	return ids
}

// limits puts into a sentence what the core could not compute: a need that no
// motor meets, a value beyond a formula's range. That is a result and no fault
// of the question; what cannot be true at all is refused by package meaning.
func limits(f *fit.Fit) string {
	for _, w := range f.Wanted {
		if err := f.Sol.Err(w.ID); err != nil && !f.Sol.Has(w.ID) && (w.Asked || w.Decides) {
			return upper(err.Error()) + "."
		}
	}
	return ""
}

func upper(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// finish closes an answer: a turn that gave nothing says so, and one that only
// told a fact has it noted.
func (s *Session) finish(a answer.Answer) answer.Answer {
	empty := a.Headline == "" && a.Reply == "" && len(a.Figures) == 0 && len(a.Choices) == 0 && len(a.Passages) == 0 && len(a.Tables) == 0
	told := slices.ContainsFunc(a.Understood, func(u answer.Understood) bool { return u.New })
	switch {
	case !empty || slices.ContainsFunc(a.Problems, func(p answer.Problem) bool { return p.Kind != "unplaced" }):
	case strings.TrimSpace(a.Question) == "":
		a.Problems = append(a.Problems, answer.Problem{Kind: "ambiguous", Text: "Nothing was asked. Describe the boat: its length, what it weighs loaded, and the water."})
	case told && len(a.Ask) > 0:
		a.Reply = "Noted."
	default:
		a.Problems = append(a.Problems, answer.Problem{Kind: "no-notes", Text: "I have no figure and no note for that. Describe the boat, or ask about motors, shafts, batteries, wiring or faults."})
	}
	a.Finish()
	return a
}

// reads lists the measures of the text for the answer.
func reads(r read.Reading) []answer.Read {
	var out []answer.Read
	for _, m := range r.Measures {
		kind, u := m.Public()
		rd := answer.Read{Said: m.Said, Kind: string(kind), Unit: u, As: m.As, Start: m.Start, End: m.End}
		if m.Value != nil {
			rd.Value = answer.Num(*m.Value)
		}
		if m.Low != nil {
			rd.Low = answer.Num(*m.Low)
		}
		if m.High != nil {
			rd.High = answer.Num(*m.High)
		}
		out = append(out, rd)
	}
	return out
}

// understood lists the facts that stand, marking what this turn changed.
func understood(c card.Card, before *card.Card, sys unit.System) []answer.Understood {
	var out []answer.Understood
	for _, f := range c.Facts {
		if meaning.Inner(f.Slot) {
			continue
		}
		u := answer.Understood{Slot: f.Slot, Text: f.Text, Unit: f.Unit, Said: f.Said, Row: f.Row}
		u.Label, u.Display = fit.Describe(f, sys)
		if f.Value != nil {
			u.Value = answer.Num(*f.Value)
		}
		if f.Low != nil {
			u.Low = answer.Num(*f.Low)
		}
		if f.High != nil {
			u.High = answer.Num(*f.High)
		}
		u.New = before != nil && f.Turn == c.Turn && c.Turn != before.Turn
		out = append(out, u)
	}
	return out
}

func problems(list []meaning.Problem) []answer.Problem {
	var out []answer.Problem
	for _, p := range list {
		out = append(out, answer.Problem{Kind: p.Kind, Text: p.Text, Said: p.Said, Slot: p.Slot, Start: p.Start, End: p.End})
	}
	return out
}

func corrections(list []meaning.Correction) []answer.Corrected {
	var out []answer.Corrected
	for _, c := range list {
		out = append(out, answer.Corrected{Said: c.Said, Word: c.Word})
	}
	return out
}
