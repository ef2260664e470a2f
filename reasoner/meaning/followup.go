package meaning

import (
	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/read"
)

// command finds plain talk that steers: taking back and starting over. Taking
// back stands alone; what follows "start over" is the new boat.
func (l *line) command() Command {
	for i := 0; i < len(l.terms) && i < 4; i++ {
		switch l.terms[i].id {
		case idFresh:
			l.terms = l.terms[i+1:]
			for m := range l.at {
				l.at[m] -= i + 1
				if l.at[m] < 0 {
					l.at[m], l.used[m], l.reason[m] = 0, true, "before the new start"
				}
			}
			l.negated = l.negated[min(i+1, len(l.negated)):]
			return Fresh
		case idActually:
			if l.terms[i].text == "scratch that" && len(l.terms) <= 2 && len(l.r.Measures) == 0 {
				return Undo
			}
		case idBack:
			if l.terms[i].text == "go back" && i+1 == len(l.terms) {
				return Undo
			}
		case idUndo:
			if len(l.terms)-i <= 4 && len(l.r.Measures) == 0 {
				return Undo
			}
		}
	}
	return None
}

// shortTurn reads a turn that only tells what was meant by the one before.
func (l *line) shortTurn() {
	if len(l.before.Facts) == 0 || len(l.terms) > 16 {
		return
	}
	l.pronounOnes()
	l.renames()
	l.newUnit()
}

// followUp reads what a later turn does beside stating facts: taking a wind or a
// budget away.
func (l *line) followUp() {
	if len(l.before.Facts) == 0 {
		return
	}
	l.thereAndBack()
	for _, row := range removals {
		id := words.Of(row.word)
		if !l.has.holds(id) {
			continue
		}
		for i := range l.terms {
			if l.terms[i].id != id || !l.removes(i) {
				continue
			}
			for _, s := range row.slots {
				if l.knows(s) && !l.setSlots[s] {
					l.drops = append(l.drops, s)
				}
			}
		}
	}
}

var removals = []struct {
	word  string
	slots []string
}{
	{"wind", []string{"wind.speed", "wind.gust"}},
	{"windy", []string{"wind.speed", "wind.gust"}},
	{"gust", []string{"wind.gust"}},
	{"current", []string{"current.speed"}},
	{"tide", []string{"current.speed"}},
	{"river", []string{"current.speed"}},
	{"wave", []string{"chop.height"}},
	{"budget", []string{"money.budget"}},
	{"gear", []string{"load.gear"}},
	{"outboard", []string{"load.engine"}},
	{"gasoline", []string{"fuel.volume"}},
	{"foot pedal", []string{"motor.control"}},
	{"brushless", []string{"motor.drive"}},
}

// removes tells that a thing is told to be left out of account.
func (l *line) removes(i int) bool {
	for k := i - 1; k >= 0 && k >= i-4; k-- {
		t := &l.terms[k]
		if t.mark == '.' || t.mark == '?' {
			return false
		}
		if t.id == idNo && !l.answersNo(k) || t.id == idLeave || t.id == idDrop {
			return true
		}
	}
	n := l.text(i + 1)
	return (n == "doesnt" || n == "dont") && l.text(i+2) == "matter"
}

// reportLeft reports every number that found no place.
func (l *line) reportLeft() {
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if me.As != "" || l.used[m] && l.reason[m] == "" {
			continue
		}
		why := l.reason[m]
		if why == "" && me.Kind == read.Duration && !hasDigit(me.Said) && (me.Bare == 1 || me.Bare == 0) {
			continue // "a day", "the season": no number was said
		}
		if why == "another boat" && len(l.problems) > 0 && l.problems[0].Kind == "ambiguous" {
			continue // asked about already
		}
		if why == "" {
			why = "no place for it here"
		}
		l.problems = append(l.problems, Problem{Kind: "unplaced", Said: me.Said, Start: me.Start, End: me.End,
			Text: "\"" + me.Said + "\" is not used: " + why})
		if len(l.problems) >= 40 {
			return
		}
	}
}

func hasDigit(s string) bool {
	for i := 0; i < len(s); i++ {
		if s[i] >= '0' && s[i] <= '9' {
			return true
		}
	}
	return false
}

// thereAndBack halves a run of wire that the turn before told: "thats there and
// back".
func (l *line) thereAndBack() {
	run, ok := l.before.Get("wire.run")
	if ok && run.Row == "round trip, halved" && l.anyOf("one way") && len(l.terms) <= 8 && len(l.r.Measures) == 0 {
		scaleFact(&run, 2)
		run.Row = "one way after all"
		l.put(run)
		return
	}
	if !ok || run.Row == "round trip, halved" || l.setSlots["wire.run"] || !l.has.holds(idRoundTrip) || len(l.terms) > 8 || !l.askedLast(Wire, Breaker) || len(l.r.Measures) > 0 {
		return
	}
	scaleFact(&run, 0.5)
	run.Row = "round trip, halved"
	l.put(run)
}
