package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// batteryTally reads a change of how many batteries there are that names no
// battery: "if i had a third", "add a second one", "and with another one", "nope,
// two it is".
func (l *line) batteryTally() {
	if len(l.before.Facts) == 0 || len(l.terms) > 9 || l.setSlots["battery.count"] || l.any(ofPersons) || l.anyOf("throttle", "dog", "motor", "wind") || !l.ofBatteries() {
		return
	}
	n, known := 1.0, l.before.Facts != nil
	f, counted := l.before.Get("battery.count")
	if counted && f.Value != nil {
		n = *f.Value
	}
	for i := range l.terms {
		t := &l.terms[i]
		switch {
		case known && l.ordinalOf(i) == n+1 && l.triesMore(i):
			l.useNumbers(i, i, "")
			l.putBatteries(n+1, i)
			return
		case t.id == idAdd && i+1 < len(l.terms) && l.smallNumber(i+1) == 2 && l.saysText("pair") && l.endsAt(i+1):
			l.useNumbers(i+1, i+1, "")
			l.putBatteries(n+2, i+1)
			return
		case t.text == "one" && l.id(i+1) == idBattery && l.endsAt(i+1) && l.onlyJust(i):
			l.putBatteries(1, i+1)
			return
		case t.text == "one" && counted && n > 1 && l.endsAt(i) && l.onlyJust(i) && l.onlyTalk(i):
			l.putBatteries(1, i)
			return
		case counted && n > l.oneOrMore(i) && l.takenAway(i):
			less := l.oneOrMore(i)
			l.useNumbers(i, i, "")
			l.putBatteries(n-less, i)
			return
		case (t.text == "another" || t.text == "one more" || t.text == "extra" || t.text == "an extra" || t.text == "additional") && l.nothingCounted(i+1):
			l.putBatteries(n+1, i)
			return
		case counted && l.smallNumber(i) > 0 && l.smallNumber(i) <= 8 && l.saidInLastTurn("battery.count") && l.onlyTalk(i):
			v := l.smallNumber(i)
			l.useNumbers(i, i, "")
			l.putBatteries(v, i)
			return
		}
	}
}

func (l *line) putBatteries(n float64, i int) {
	l.put(card.Fact{Slot: "battery.count", Value: num(n), Unit: "1", Said: l.said(l.terms[max(i-1, 0)].start, l.terms[i].end), Row: "so many of those batteries"})
}

// ofBatteries tells that the talk is of batteries just now.
func (l *line) ofBatteries() bool {
	if !l.knows("battery.capacity") && !l.knows("battery.group") && !l.knows("battery.chemistry") && !l.knows("battery.count") || l.onlyPeopleChanged() {
		return false
	}
	return l.askedLast(Runtime, Bank, Charger, Weight) || l.saidInLastTurn("battery.count") || l.saidLast("battery.")
}

// saidInLastTurn tells that the turn before said a slot.
func (l *line) saidInLastTurn(slot string) bool {
	f, ok := l.before.Get(slot)
	return ok && f.Turn == l.before.Turn
}

// ordinalOf is the number that an ordinal at a term stands for, 0 for none. A
// third and a fourth are read as fractions.
func (l *line) ordinalOf(i int) float64 {
	if m := l.terms[i].measure; m >= 0 {
		me := &l.r.Measures[m]
		if me.Kind == read.Duration && strings.HasSuffix(lowerASCII(me.Said), "a second") {
			return 2 // read as a second of time
		}
		if l.used[m] || me.Kind != read.Number || me.Value == nil || hasDigit(me.Said) {
			return 0
		}
		switch said := lowerASCII(me.Said); {
		case strings.HasSuffix(said, "third"):
			return 3
		case strings.HasSuffix(said, "fourth"):
			return 4
		}
		return 0
	}
	for k, o := range ordinals {
		if l.terms[i].id == ordinalID[k] && (l.text(i) == o.word || l.text(i) == o.word+" one" || strings.HasPrefix(l.text(i), "2nd") || strings.HasPrefix(l.text(i), "3rd")) {
			return o.count
		}
	}
	return 0
}

// triesMore tells that something is added or supposed: no share of a throttle is.
func (l *line) triesMore(i int) bool {
	switch l.text(i - 1) {
	case "at", "on", "to":
		return false
	}
	if l.text(i-2) == "at" || l.text(i-2) == "on" {
		return false
	}
	return l.has[idAdd] || l.has[idWhatIf] || l.anyText("if", "had", "with", "got", "get", "bought", "buy", "ran", "put", "have", "use", "need", "want") || l.has[idWith] || l.has[idMust]
}

// nothingCounted tells that nothing else than a battery follows "another".
func (l *line) nothingCounted(k int) bool {
	for ; k < len(l.terms) && l.terms[k].mark == 0; k++ {
		if l.terms[k].measure >= 0 {
			m := &l.r.Measures[l.terms[k].measure]
			if m.Kind != read.Number || lowerASCII(m.Said) != "one" {
				return false
			}
			l.useNumbers(k, k, "")
			continue
		}
		switch l.text(k) {
		case "one", "of", "them", "em", "those", "same", "the", "then", "like", "that", "in", "instead", "parallel":
		default:
			return false
		}
	}
	return true
}

// onlyTalk tells that a line says nothing beside a number and words that steer.
func (l *line) onlyTalk(at int) bool {
	for i := range l.terms {
		t := &l.terms[i]
		if i == at || t.mark != 0 || t.filler {
			continue
		}
		switch {
		case t.measure >= 0:
			return false
		case t.id == idActually, t.id == idNo, t.id == idBack, t.id == idWhatIf, t.id == idAnd, t.id == idWith, t.id == idFine:
			continue
		}
		switch t.text {
		case "just", "only", "stay", "go", "then", "instead", "them", "em", "those", "keep", "ok", "okay", "stick", "well", "let", "me", "us", "no", "i", "ill", "and", "with", "what", "if", "do":
			continue
		}
		return false
	}
	return true
}

// pronounOnes sets "one" aside where it stands for a thing named before: "the 36
// volt one", "the smaller one".
func (l *line) pronounOnes() {
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if m >= mendsWithin || l.used[m] || me.Kind != read.Number || lowerASCII(me.Said) != "one" {
			continue
		}
		i := l.at[m]
		if !l.endsAt(i) && l.terms[i+1].id == words.None && !l.filler(i+1) || i < 2 || l.terms[i-1].filler || l.terms[i-1].mark != 0 {
			continue
		}
		if w := l.text(i - 1); l.terms[i-1].measure < 0 && (w == "just" || w == "only" || w == "with" || l.id(i-1) == idActually || l.id(i-1) == idNo || l.id(i-1) == idAnd || l.id(i-1) == idBack) {
			continue
		}
		for k := i - 1; k >= 0 && k >= i-4 && l.terms[k].mark == 0; k-- {
			if w := l.text(k); w == "the" || w == "that" || w == "this" || w == "my" {
				l.used[m] = true
				break
			}
		}
	}
}

// oneOrMore is the small number at a term, a word "one" with it; 0 for none.
func (l *line) oneOrMore(i int) float64 {
	if l.text(i) == "one" {
		return 1
	}
	return l.smallNumber(i)
}

// takesOff are the verbs by which a battery goes: "pull one", "take one away".
var takesOff = map[string]bool{"take": true, "pull": true, "lose": true, "yank": true, "remove": true, "drop": true, "minus": true, "leave": true, "take out": true, "take off": true, "ditch": true, "unhook": true, "without": true}

// takenAway tells that so many are taken away, and nothing is said beside it.
func (l *line) takenAway(i int) bool {
	if l.oneOrMore(i) == 0 || !takesOff[l.text(i-1)] || l.saidInLastTurn("people.count") && !l.askedLast(Runtime, Bank, Charger) {
		return false // one of the people, it may be
	}
	for k := range l.terms {
		t := &l.terms[k]
		if k == i || k == i-1 || t.filler || t.mark != 0 && t.mark != '?' {
			continue
		}
		switch t.text {
		case "away", "out", "off", "again", "then", "ok", "and", "if", "what if", "i", "we", "them", "em", "those", "back", "now", "actually", "battery", "batteries", "would", "could", "ill", "lets":
		default:
			return t.mark == '?' && k == len(l.terms)-1
		}
	}
	return true
}

// onlyJust accepts "just the one battery".
func (l *line) onlyJust(i int) bool {
	k := l.skipFillers(i-1, -1)
	return l.text(i-1) == "just" || l.text(i-1) == "only" || l.text(i-2) == "just" || l.text(i-2) == "only" || k >= 0 && l.id(k) == idBack
}
