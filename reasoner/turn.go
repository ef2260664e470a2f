package reasoner

import (
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/typical"
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
	switch {
	case s.set:
	case out.Metric:
		s.sys = metric
	case s.now.card.Metric && !out.Card.Metric && out.Command == meaning.None && len(out.Changed) > 0: // "feet, sorry"
		s.sys = s.r.opts.Units
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
		next := state{card: out.Card, topics: topicsOf(out, nil), proposed: sizes(topicsOf(out, nil)), day: out.Card}
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
	markAside(&a)
	if len(out.Changed) == 0 && !figured(topics) {
		talkOnly(&a)
	}
	next := state{card: out.Card, topics: lasting(topics, s.now.topics), lead: leads(topics, out, s.now), proposed: s.now.proposed || sizes(topics), day: dayAfter(s.now, out.Card, out.Changed, topics)}
	if len(out.Changed) > 0 {
		s.keep(next)
	} else { // nothing to take back, but what was asked is remembered
		s.now.card, s.now.topics, s.now.lead, s.now.proposed, s.now.day = next.card, next.topics, next.lead, next.proposed, next.day
	}
	return s.finish(s.answerCard(a, before, topics, out.Wish))
}

// answerCard fills the answer from the card as it stands.
func (s *Session) answerCard(a answer.Answer, before state, topics []string, wish meaning.Wish) answer.Answer {
	a.Understood = understood(s.now.card, &before.card, s.sys)
	lead := s.now.lead
	if asksBank(s.now, topics) {
		topics = append([]string{string(meaning.Bank)}, topics...)
		lead = append([]string{string(meaning.Bank)}, lead...)
	}
	c := s.onBank(s.now, topics)
	blocked := slices.ContainsFunc(a.Problems, func(p answer.Problem) bool {
		return p.Kind == "contradiction" || p.Kind == "out-of-range"
	})
	in := advise.In{Unmet: s.unmetVolts(s.now.card), Card: c, Topics: topics, Lead: lead, Over: wish.Over, Judge: wish.Judge, Words: wish.Words, Sys: s.sys}
	var old *fit.Fit
	if !blocked && figured(topics) {
		f := fit.Solve(c, topics, s.sys, nil)
		a.Figures = grounded(f, f.Figures())
		in.Sol, in.Shown = f.Sol, figureCells(a.Figures)
		if !in.AboutStream() { // asked of wind, a boat is not told of streams
			setAside(a.Figures, sheet.HoldCurrent)
		}
		if f.SaidCell(sheet.WireGaugeSaid) && !f.SaidCell(sheet.WireRun) && !f.SaidCell(sheet.BoatLength) { // a drop over a run that nobody named
			setAside(a.Figures, sheet.WireGauge, sheet.WireDrop, sheet.WireThrustLoss)
		}
		if a.FollowUp {
			old = fit.Solve(s.onBank(before, topics), topics, s.sys, nil)
			in.Was = old.Sol
		}
		a.Headline = limits(f)
		if len(a.Figures) > 0 {
			a.Assumed = f.Assumed(a.Figures)
			a.Steps = f.Steps(figureCells(a.Figures)...)
			a.Headline = strings.TrimSpace(advise.Headline(in) + " " + a.Headline)
			a.Notice = advise.Notice
			if left := leftOver(&a); left != "" && slices.ContainsFunc(topics, isSum) {
				a.Headline += " Not counted: " + left + "."
			}
			if text := s.metered(&a, f); text != "" {
				a.Headline = text
			}
		}
		if q := f.Ask(); q != nil && (len(a.Figures) > 0 || !slices.ContainsFunc(topics, isWorded)) {
			a.Ask = []answer.Ask{*q}
		}
		s.now.offer = s.shelf(&a, s.withoutUnmet(onDay(s.now)), f, topics)
		s.now.offers = a.Offers
		s.now.fit = f
		if wish.Why {
			a.Headline = because(f, a.Figures, a.Headline)
		}
	}
	if _, told := c.Get("temperature.air"); told && !blocked && a.Headline == "" && !figured(topics) {
		// Whether a cold battery may be charged is a plain no, whatever the notes add.
		cold := in
		cold.Sol = fit.Solve(c, []string{string(meaning.Charger)}, s.sys, nil).Sol
		a.Headline = advise.ChargedCold(cold)
	}
	if !blocked {
		a.Choices = advise.Choices(in)
		if t := s.compare(c, wish.Over, wish.Compare); t != nil {
			a.Tables = []answer.Table{*t}
			setAgainst(a.Figures, wish.Over)
			a.Headline = verdictFirst(t.Verdict, a.Headline, slices.Contains(topics, string(meaning.Fit)))
		}
	}
	s.cite(&a, in, topics, wish)
	if len(a.Figures) == 0 && len(a.Passages) > 0 && len(a.Read) == 0 && slices.ContainsFunc(topics, isWorded) {
		a.Ask = nil // the passages answer; there is no figure for a measure to settle
	}
	s.compareTurns(&a, in, before, old, topics)
	return a
}

// unmetVolts is a voltage that was said for a motor still to be chosen, and for
// which none is built that meets the need, "" otherwise: the answer to it is no,
// and the pick is made without it.
func (s *Session) unmetVolts(c card.Card) string {
	_, named := c.Get("motor.thrust")
	v, said := c.Get("motor.voltage")
	if !said || named || v.Value == nil {
		return ""
	}
	sol := fit.Solve(c, []string{string(meaning.Thrust)}, s.sys, nil).Sol
	_, most := typical.RatingRange(unit.Voltage(*v.Value))
	if !sol.Has(sheet.ThrustClass) || sol.Value(sheet.ThrustClass) <= most.Newtons()*(1+1e-9) {
		return ""
	}
	return unit.Show(*v.Value, unit.Volt, s.sys)
}

func (s *Session) withoutUnmet(c card.Card) card.Card {
	if s.unmetVolts(c) == "" {
		return c
	}
	return c.Without("motor.voltage")
}

// compareTurns says what this turn moved against the card before it.
func (s *Session) compareTurns(a *answer.Answer, in advise.In, before state, old *fit.Fit, topics []string) {
	if len(before.card.Facts) == 0 || in.Sol == nil {
		a.FollowUp = false // nothing to follow: the whole answer is news
		return
	}
	if old == nil {
		old = fit.Solve(s.onBank(before, topics), topics, s.sys, nil)
	}
	a.Changed = fit.Changes(old, s.now.fit)
	fit.Moved(a.Figures, old, s.now.fit)
	was := in
	was.Card, was.Sol, was.Shown, was.Words = before.card, old.Sol, nil, nil
	picks := advise.Moved(a, was)
	a.Changed = append(a.Changed, s.shelfMoved(a, before)...)
	if len(a.Changed) < fit.MostChanges { // they stand below with their reasons
		a.Changed = append(a.Changed, picks...)
	}
	was.Was, was.Judge, was.Unmet = old.Sol, in.Judge, s.unmetVolts(before.card)
	if a.FollowUp && a.Reply == "" && len(a.Changed) == 0 && advise.Headline(was) == advise.Headline(in) && !slices.ContainsFunc(a.Figures, func(f answer.Figure) bool { return f.Moved && (f.Asked || f.Decides) }) {
		a.Reply = "That moves none of the figures that decide."
	}
}

// An asideRow is a reason for which a number was understood and yet states nothing
// that a slot takes, and what such a number is marked as.
type asideRow struct{ reason, as string }

var asideRows = []asideRow{
	{"one of a choice", "choice"}, // "12 or 24 volt?"
	{"an engine's horsepower", "horsepower"},
}

// markAside marks the numbers that were understood and set aside, so that they are
// not reported as left over.
func markAside(a *answer.Answer) {
	a.Problems = slices.DeleteFunc(a.Problems, func(p answer.Problem) bool {
		at := slices.IndexFunc(asideRows, func(r asideRow) bool {
			return p.Kind == "unplaced" && strings.HasSuffix(p.Text, r.reason)
		})
		if at < 0 {
			return false
		}
		for i := range a.Read {
			if r := &a.Read[i]; r.Start == p.Start && r.End == p.End {
				r.As = asideRows[at].as
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

// isSum reports a topic whose figure is a sum of all that was told: what found no
// place makes it wrong.
func isSum(topic string) bool {
	return topic == string(meaning.Capacity) || topic == string(meaning.Weight)
}

// leftOver are the words of the line that found no place, as they were said.
func leftOver(a *answer.Answer) string {
	var out []string
	for _, p := range a.Problems {
		if p.Kind == "unplaced" && p.Said != "" {
			out = append(out, "\""+p.Said+"\"")
		}
	}
	return strings.Join(out, ", ")
}

// setAside leaves figures to --json and :why.
func setAside(figures []answer.Figure, ids ...sheet.ID) {
	for i := range figures {
		if id, ok := sheet.Lookup(figures[i].ID); ok && slices.Contains(ids, id) {
			figures[i].Asked, figures[i].Decides = false, false
		}
	}
}

// setAgainst leaves to the table of a comparison the figures that it tells: beside
// it, a figure of the thing that is taken for granted is a third that nobody named.
func setAgainst(figures []answer.Figure, over string) {
	for _, r := range compareRows {
		if r.over != over || over == "motor.thrust" || over == "motor.voltage" {
			continue
		}
		setAside(figures, r.figures...)
	}
}

// verdictFirst is the first sentence of a comparison: its verdict, before the pick where a
// motor was asked for besides.
func verdictFirst(verdict, headline string, fitting bool) string {
	switch {
	case verdict == "":
		return headline
	case fitting && headline != "":
		return verdict + " " + headline
	}
	return verdict
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
		if w.ID == sheet.ThrustClass && f.Sol.Has(sheet.ThrustNeed) && !f.Sol.Has(sheet.MotorThrust) && slices.Contains(f.Topics, string(meaning.Fit)) {
			continue // the headline says that no single motor does it
		}
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
