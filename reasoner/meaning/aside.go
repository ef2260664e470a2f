package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/read"
)

// setAside finds what states nothing about the boat: things to choose between,
// comparisons, ratios, and numbers that a speaker takes back in the same breath.
func (l *line) setAside() {
	l.reread()
	l.metresAndCentimetres()
	l.wordChoices()
	l.numberChoices()
	l.comparisons()
	l.ratios()
	l.takenBack()
	l.theirs()
	l.leftBehind()
	l.formerBoat()
	l.twoHeights()
	l.severalBoats()
	l.quoted()
	l.ownQuestion()
	l.metricWire()
	l.beaufort()
	l.dialSteps()
	l.jonCode()
	l.feetAndInches()
}

// leftBehind sets aside what a speaker comes from: "moving up from a 14 ft jon to
// a 17 ft deep vee".
func (l *line) leftBehind() {
	for i := 1; i < len(l.terms); i++ {
		if l.text(i) != "from" {
			continue
		}
		switch l.text(i - 1) {
		case "up", "moving", "going", "switching", "changing", "stepping", "coming", "trading":
		default:
			continue
		}
		hull, to := false, -1
		for k := i + 1; k < len(l.terms) && k < i+9 && l.terms[k].mark == 0; k++ {
			hull = hull || hulls.holds(l.id(k))
			if l.text(k) == "to" && hull {
				to = k
				break
			}
		}
		for k := i + 1; k < to; k++ {
			if m := l.terms[k].measure; m >= 0 {
				l.used[m], l.reason[m] = true, "the boat before"
			} else if l.terms[k].mark == 0 {
				l.terms[k].mark = asking
			}
		}
	}
}

// quoted sets aside the numbers of several people who are quoted against each
// other: "my brother says 45, dad says 52".
func (l *line) quoted() {
	var ms []int
	for i := range l.terms {
		m := l.terms[i].measure
		if m >= 0 && !l.used[m] && l.id(i-1) == idSays && (l.id(i-2) == idCompanion || l.id(i-2) == idPerson || l.id(i-2) == idMe || l.text(i-2) == "he" || l.text(i-2) == "she") {
			ms = append(ms, m)
		}
	}
	if len(ms) < 2 {
		return
	}
	if over := l.choiceOver(ms[0], ms[1]); over != "" {
		l.asideNumbers(over, ms...)
		return
	}
	for _, m := range ms {
		l.used[m], l.reason[m] = true, "only quoted"
	}
}

// ownQuestion marks what the speaker asks and denies: "salt? no, all lakes".
func (l *line) ownQuestion() {
	for i := 1; i+1 < len(l.terms); i++ {
		if l.terms[i].mark == '?' && l.terms[i-1].mark == 0 && (i == 1 || l.terms[i-2].mark != 0 || l.terms[i-2].filler) && l.id(i+1) == idNo {
			l.terms[i-1].mark = asking
		}
	}
}

// theirs sets aside what somebody else's boat has: "neighbor has a 70 on his 18
// footer, mine is 19 ft", "my brother runs a 112, i got a 17 ft vee".
func (l *line) theirs() {
	for i := range l.terms {
		if !l.turnsToOwn(i) {
			continue
		}
		from := l.sentence(i)
		if from > 1 {
			from = l.sentence(from - 1)
		}
		owner := l.owner(from, i)
		if owner < 0 {
			continue
		}
		for k := owner; k < i; k++ {
			if m := l.terms[k].measure; m >= 0 {
				l.used[m], l.reason[m] = true, "somebody else's"
			}
			if l.terms[k].mark == 0 && l.terms[k].measure < 0 {
				l.terms[k].mark = asking
			}
		}
		return
	}
}

// turnsToOwn tells that the speaker comes to the boat of their own: "mine is",
// "but we have", "im in".
func (l *line) turnsToOwn(i int) bool {
	switch l.text(i) {
	case "mine", "mines", "ours":
		return true
	case "im":
		return l.text(i+1) == "in" || l.text(i+1) == "on" || l.text(i+1) == "running"
	case "ive", "weve":
		return i > 0 && l.text(i+1) == "got"
	case "i", "we":
		switch l.text(i + 1) {
		case "have", "got", "run", "fish", "own":
			return i > 0 && l.id(i-1) != idAnd
		}
	}
	return false
}

// owner finds the person to whom something belongs between two terms.
func (l *line) owner(from, to int) int {
	for k := from; k < to; k++ {
		if id := l.terms[k].id; id != idPerson && id != idCompanion && id != idChild {
			continue
		}
		switch l.text(k + 1) {
		case "has", "runs", "got", "uses", "put", "have", "run", "bought", "fishes":
			return k
		}
		if l.terms[k].possessive || l.id(k+1) == idBoat && strings.HasSuffix(l.text(k), "s") {
			return k
		}
	}
	return -1
}

// takenBack sets aside a number that is mended in the same breath: "16, no, 17
// foot", "not 24, 19".
func (l *line) takenBack() {
	for m := range l.r.Measures {
		if l.used[m] {
			continue
		}
		i := l.at[m]
		// "not 24"
		if k := l.skipFillers(i-1, -1); k >= 0 && (l.text(k) == "not" || l.text(k) == "isnt") && l.id(k) == idNo {
			l.used[m], l.reason[m] = true, "taken back"
			continue
		}
		if m+1 >= len(l.r.Measures) || l.used[m+1] {
			continue
		}
		j := l.at[m+1]
		if j-i < 2 || j-i > 6 {
			continue
		}
		for k := i + 1; k < j; k++ {
			if l.id(k) == idActually && l.text(k) != "really" && l.text(k) != "wrong" || l.text(k) == "no" && (l.terms[k-1].mark == ',' || k == i+1) && l.id(k+1) != idNo && (k+1 == j || l.filler(k+1) || l.terms[k+1].mark == ',') {
				a, b := &l.r.Measures[m], &l.r.Measures[m+1]
				if a.Kind == b.Kind || a.Kind == read.Number || b.Kind == read.Number {
					if !l.standsIn(m) {
						l.used[m], l.reason[m] = true, "taken back"
					}
				}
				break
			}
		}
	}
}

// inGeneral takes back what a question about the trade at large has named: "why
// two batteries for 24 volts?" tells nothing of the speaker's boat.
func (l *line) inGeneral() {
	if len(l.terms) == 0 || firstWord(l.text(0)) != "why" || len(l.r.Measures) > 2 || len(l.before.Facts) > 0 {
		return
	}
	for i := range l.terms {
		switch l.text(i) {
		case "my", "mine", "our", "ours", "i", "we", "me", "us", "im", "ive":
			return
		}
	}
	for m := range l.r.Measures {
		if l.reason[m] == "" {
			l.reason[m] = "asked in general"
		}
	}
	l.facts, l.setSlots = nil, nil
}

// standsIn puts a mended number that has no unit and nothing behind it in the place
// of the one it mends, whose words say what it is: "wind 10, actually call it
// 15", "a 14 footer, no wait 15".
func (l *line) standsIn(m int) bool {
	a, b := l.r.Measures[m], l.r.Measures[m+1]
	if m >= mendsWithin || b.Kind != read.Number || b.As != "" || a.As != "" || a.Value == nil || b.Value == nil || a.Bare <= 0 || !l.endsAt(l.at[m+1]) || a.Kind == read.Number && !l.labelled(l.at[m]) {
		return false
	}
	if r := *b.Value / a.Bare; r < 0.3 || r > 3 {
		return false
	}
	mended := append([]read.Measure(nil), l.r.Measures...) // the reading is the caller's
	mended[m].Value, mended[m].Bare = num(*a.Value**b.Value/a.Bare), *b.Value
	mended[m].Said = b.Said
	l.r.Measures = mended
	l.used[m+1] = true
	return true
}

// labelled tells that a word about the number stands right before or behind it.
func (l *line) labelled(i int) bool {
	for _, k := range []int{l.skipFillers(i-1, -1), i + 1} {
		if k >= 0 && k < len(l.terms) && l.terms[k].id != words.None && l.terms[k].id != idActually && l.terms[k].id != idNo {
			return true
		}
	}
	return false
}

// formerBoat sets aside the boat, or the motor, that the speaker had before: "we
// used to have a 24 footer, now a 17 ft", "sold the 16 jon, bought a 20 ft bay
// boat". It ends where the talk turns to what is there now.
func (l *line) formerBoat() {
	for i := range l.terms {
		if !l.tellsFormer(i) {
			continue
		}
		to := -1
		for k := i + 1; k < len(l.terms) && k < i+16; k++ {
			if l.turnsToNow(k) {
				to = k
				break
			}
		}
		if to < 0 {
			continue
		}
		for k := i; k < to; k++ {
			if m := l.terms[k].measure; m >= 0 {
				l.used[m], l.reason[m] = true, "what there was before"
			} else if l.terms[k].mark == 0 {
				l.terms[k].mark = asking
			}
		}
		return
	}
}

// tellsFormer accepts "used to have", "my last boat", "sold the", "had a".
func (l *line) tellsFormer(i int) bool {
	switch w := l.text(i); w {
	case "used":
		return l.text(i+1) == "to" && (l.text(i+2) == "have" || l.text(i+2) == "own" || l.text(i+2) == "run" || l.text(i+2) == "fish")
	case "sold", "traded", "had", "wrecked", "sank":
		return i < 4 || l.id(i-1) == idMe || l.id(i-1) == idUs
	case "last", "old", "previous", "former", "first":
		return l.id(i+1) == idBoat || hulls.holds(l.id(i+1)) || l.text(i+1) == "one" || l.id(i+1) == idMotor
	}
	return false
}

// turnsToNow accepts "now", "this one", "bought", "new one".
func (l *line) turnsToNow(k int) bool {
	switch l.text(k) {
	case "now", "nowadays", "bought", "ones":
		return true
	case "this":
		return l.text(k+1) == "one" || l.text(k+1) == "ones" || l.id(k+1) == idBoat || l.text(k+1) == "time"
	case "new":
		return true
	case "got":
		return l.terms[k-1].mark != 0 || l.id(k-1) == idAnd || l.text(k-1) == "and"
	}
	return l.id(k) == idNewBoat
}
