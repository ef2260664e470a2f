package reasoner

import (
	"slices"
	"sort"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
	"heronlake.example/ask/reasoner/meaning"
)

// colon splits a line that steers the program into its word and the rest.
func colon(line string) (word, arg string, ok bool) {
	t := strings.TrimSpace(line)
	if len(t) < 2 || t[0] != ':' || t[1] < 'a' || t[1] > 'z' {
		return "", "", false
	}
	word, arg, _ = strings.Cut(t[1:], " ")
	return word, strings.TrimSpace(arg), true
}

// steerRow is one colon word that a session knows.
type steerRow struct {
	word string
	do   func(s *Session, a *answer.Answer, arg string)
}

var steerRows = []steerRow{
	{"boat", (*Session).showBoat},
	{"why", (*Session).showWhy},
	{"undo", (*Session).takeBack},
	{"fresh", (*Session).startOver},
	{"units", (*Session).setUnits},
}

// doorWords are the colon words that the program around a session answers.
var doorWords = []string{"boats", "drill", "forget", "help", "keep", "open", "quit", "sheet"}

// steer answers a colon word; an unknown one gets the nearest, or the list.
func (s *Session) steer(line, word, arg string) answer.Answer {
	a := answer.Answer{Question: line, Steer: word}
	for _, r := range steerRows {
		if r.word == word {
			r.do(s, &a, arg)
			a.Finish()
			return a
		}
	}
	known := slices.Clone(doorWords)
	for _, r := range steerRows {
		known = append(known, r.word)
	}
	slices.Sort(known)
	text := "There is no :" + word + ". The words that steer are :" + either(known, ", :", " and :") + "."
	if near := closest(word, known); len(near) > 0 {
		text = "There is no :" + word + ". Did you mean :" + either(near, ", :", " or :") + "? :help lists all."
	}
	a.Problems = []answer.Problem{{Kind: "out-of-scope", Said: ":" + word, Text: text}}
	a.Finish()
	return a
}

// unknownSlots are the measures worth having on a card.
var unknownSlots = []string{"boat.length", "boat.hull", "load.total", "people.count", "mount.height", "wind.speed", "water.kind", "use.hours", "wire.run", "load.plate", "money.budget"}

func (s *Session) showBoat(a *answer.Answer, _ string) {
	a.Understood = understood(s.now.card, nil, s.sys)
	have := map[string]bool{}
	for _, f := range s.now.card.Facts {
		have[f.Slot] = true
	}
	if len(s.now.card.Facts) > 0 {
		f := fit.Solve(s.onBank(s.now, []string{string(meaning.Fit)}), []string{string(meaning.Fit)}, s.sys, nil)
		a.Assumed = f.Assumed(grounded(f, f.Figures()))
	}
	for _, x := range a.Assumed {
		have[x.Slot] = true
	}
	for _, slot := range unknownSlots {
		if id, ok := fit.CellOf(slot); ok && !have[slot] {
			a.Unknown = append(a.Unknown, answer.Unknown{Slot: slot, Label: id.Describe().Label})
		}
	}
	if len(s.now.card.Facts) == 0 {
		a.Reply = "Nothing is known of the boat yet."
	}
}

// showWhy lays out the chain behind a figure, named by its id or its label.
func (s *Session) showWhy(a *answer.Answer, arg string) {
	id, ok := findFigure(arg)
	if !ok {
		text := "Which figure? Say one of: " + strings.Join(figureNames(), ", ") + "."
		if near := nearFigures(arg); len(near) > 0 {
			text = "Which figure is that? Did you mean " + either(near, ", ", " or ") + "? :why alone lists all."
		}
		a.Problems = append(a.Problems, answer.Problem{Kind: "ambiguous", Said: arg, Text: text})
		return
	}
	f := s.solveFor(id)
	if !f.Sol.Has(id) {
		text := "That figure is not known for this boat yet"
		if err := f.Sol.Err(id); err != nil {
			text += ": " + err.Error()
		} else if q := f.Ask(); q != nil {
			text += ". " + strings.TrimSuffix(q.Question, "?") + "?"
			a.Ask = []answer.Ask{*q}
		}
		a.Problems = append(a.Problems, answer.Problem{Kind: "ambiguous", Said: arg, Text: ended(text)})
		return
	}
	a.Steps = f.Steps(id)
	st := f.Sol.Step(id)
	a.Headline = id.Describe().Label + ": " + st.Show(s.sys)
	if b := fit.Band(st, s.sys); b != "" {
		a.Headline += " (" + b + ")"
	}
}

// ended closes a sentence that may end in a question already.
func ended(text string) string {
	if strings.HasSuffix(text, "?") {
		return text
	}
	return text + "."
}

// solveFor solves the card for one cell on top of its own topics.
func (s *Session) solveFor(id sheet.ID) *fit.Fit {
	if s.now.fit != nil && s.now.fit.Sol.Has(id) {
		return s.now.fit
	}
	return fit.Solve(s.now.card, []string{string(meaning.Fit), string(meaning.Runtime), string(meaning.Charger), string(meaning.Capacity), string(meaning.Hold), string(meaning.Weight)}, s.sys, nil)
}

// findFigure finds a figure by its id, its label, or the unique figure whose id
// or label begins with the words.
func findFigure(words string) (sheet.ID, bool) {
	want := strings.ToLower(strings.Join(strings.Fields(words), " "))
	if want == "" {
		return 0, false
	}
	if id, ok := sheet.Lookup(want); ok {
		if c, said := sheet.SaidFor[want]; said && !id.Describe().Figure {
			return c, true
		}
		return id, true
	}
	var found []sheet.ID
	for _, id := range sheet.All() {
		c := id.Describe()
		if !c.Figure {
			continue
		}
		label := strings.ToLower(c.Label)
		if label == want {
			return id, true
		}
		if strings.HasPrefix(label, want) || strings.HasPrefix(c.Name, want) || strings.HasPrefix(c.Name, strings.ReplaceAll(want, " ", ".")) {
			found = append(found, id)
		}
	}
	if len(found) == 1 {
		return found[0], true
	}
	return 0, false
}

func figureNames() []string {
	var out []string
	for _, id := range sheet.All() {
		if id.Describe().Figure {
			out = append(out, id.String())
		}
	}
	sort.Strings(out)
	return out
}

func (s *Session) takeBack(a *answer.Answer, _ string) {
	if !s.back() {
		a.Reply = "There is nothing to take back."
		return
	}
	a.Reply = "Taken back."
	a.Understood = understood(s.now.card, nil, s.sys)
}

func (s *Session) startOver(a *answer.Answer, _ string) {
	s.keep(state{card: card.Card{}})
	a.Reply = "Starting over: nothing is known."
}

func (s *Session) setUnits(a *answer.Answer, arg string) {
	switch strings.ToLower(arg) {
	case "us":
		s.sys, s.set = unit.US, true
	case "metric":
		s.sys, s.set = unit.Metric, true
	case "":
	default:
		a.Problems = append(a.Problems, answer.Problem{Kind: "ambiguous", Said: arg, Text: "Units are us or metric."})
		return
	}
	a.Reply = "Answers are in " + s.sys.String() + " units."
	if s.now.fit != nil {
		s.now.fit.Sys = s.sys
	}
}
