package meaning

import (
	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
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
	l.engineByPower()
	l.renames()
	l.newUnit()
	l.wantedAgain()
}

// followUp reads what a later turn does beside stating facts: taking a wind or a
// budget away.
func (l *line) followUp() {
	if len(l.before.Facts) == 0 {
		return
	}
	l.thereAndBack()
	l.staleBattery()
	l.controlInstead()
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

// engineByPower reads "plus the 9.9 which is 90 lb" in talk of a plate or of a load:
// an engine called by its horsepower, and what it weighs.
func (l *line) engineByPower() {
	if !l.knows("load.plate") && !l.knows("load.total") && !l.knows("load.dry") {
		return
	}
	for m := 0; m+1 < len(l.r.Measures) && m < mendsWithin; m++ {
		hp, kg := &l.r.Measures[m], &l.r.Measures[m+1]
		if l.used[m] || l.used[m+1] || hp.Kind != read.Number && hp.As != "horsepower" || hp.Bare < 2 || hp.Bare > 300 || kg.Kind != read.Mass || kg.Value == nil || *kg.Value < 10 || l.setSlots["load.engine"] {
			continue
		}
		if w := l.text(l.at[m] - 1); w != "the" && w != "my" && w != "a" && w != "his" || !l.toldWeight(l.at[m]+1, l.at[m+1]) {
			continue
		}
		l.used[m], l.used[m+1] = true, true
		l.put(card.Fact{Slot: "load.engine", Value: kg.Value, Unit: "kg", Said: l.said(kg.Start, kg.End), Row: "an engine called by its horsepower"})
	}
}

// toldWeight tells that the terms between two numbers only join a thing to what it
// weighs: "which is", "weighing about".
func (l *line) toldWeight(from, to int) bool {
	told := false
	for k := from; k < to; k++ {
		switch w := l.text(k); {
		case w == "which" || w == "that" || w == "thats" || w == "weighing" || w == "at" || l.id(k) == words.Of("weighs"):
			told = true
		case !l.filler(k) && l.id(k) != idOutboard:
			return false
		}
	}
	return told
}
