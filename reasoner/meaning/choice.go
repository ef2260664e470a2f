package meaning

import (
	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/read"
)

// A family is words of which a boat has one: two of them named with "or"
// between them are a question, no statement.
type family struct {
	over  string
	words map[string]string // entry: contract word
}

var families = []family{
	{"motor.control", map[string]string{"cable steer": "foot-cable", "electric steer": "foot-electric", "electric": "foot-electric", "foot pedal": "foot", "tiller": "tiller", "remote": "remote", "cable": "foot-cable"}},
	{"motor.drive", map[string]string{"brushed": "brushed", "brushless": "brushless"}},
	{"motor.speeds", map[string]string{"five speed": "fixed", "variable speed": "variable"}},
	{"battery.chemistry", map[string]string{"lithium": "lithium", "agm": "agm", "gel": "gel", "flooded": "flooded", "lead": "lead"}},
	{"mount.place", map[string]string{"bow": "bow", "bow mount": "bow", "transom": "transom", "transom mount": "transom"}},
	{"mount.kind", map[string]string{"folding arm": "folding-arm", "compact pivot": "compact-pivot", "clamp": "clamp", "kayak bracket": "bracket"}},
	{"battery.layout", map[string]string{"series": "series", "parallel": "parallel"}},
	{"water.kind", map[string]string{"salt": "salt", "fresh": "fresh"}},
	{"boat.hull", map[string]string{"jon": "jon", "vee": "vee", "deep-vee": "deep-vee", "pontoon": "pontoon", "bass boat": "bass", "canoe": "canoe", "kayak": "kayak"}},
	{"wire.gauge", map[string]string{}},
	{"function", map[string]string{"position hold": "position-hold", "heading hold": "heading-hold", "track following": "track", "down imaging": "sonar-down", "side imaging": "sonar-side"}},
}

// familyOf finds the families of an entry.
var familyOf = map[words.ID][]int{}

func init() {
	for f := range families {
		for w := range families[f].words {
			id := words.Of(w)
			if id == words.None {
				unknownNames = append(unknownNames, w)
				continue
			}
			familyOf[id] = append(familyOf[id], f)
		}
	}
}

// asked tells that a word is one of a choice, or asked about, and states
// nothing.
func (l *line) asked(i int) bool { return l.terms[i].mark == asking }

// asking in a term's mark says that the word is asked about.
const asking = 'q'

// wordChoices marks the words of a family between which the line asks.
func (l *line) wordChoices() {
	for f := range families {
		prev := -1
		for i := range l.terms {
			t := &l.terms[i]
			if t.mark == '.' || t.mark == '?' {
				prev = -1
				continue
			}
			if !in(familyOf[t.id], f) || t.id < 0 {
				continue
			}
			if prev >= 0 && l.terms[prev].id != t.id && l.orBetween(prev, i) {
				l.choose(f, prev, i)
			}
			prev = i
		}
	}
	if l.over == "" && l.has.holds(idWhichEnd) {
		l.over, l.compare = "mount.place", []string{"bow", "transom"}
	}
	l.replaced()
	l.worthIt()
}

// replaced marks the chemistry that is to be replaced by another: "replace 3 dead agm
// with lithium".
func (l *line) replaced() {
	for i := range l.terms {
		switch l.text(i) {
		case "replace", "replacing", "swap", "swapping", "trade", "switch", "switching":
		default:
			continue
		}
		old := -1
		for k := i + 1; k < len(l.terms) && k < i+9; k++ {
			if !chemistries.holds(l.id(k)) && l.id(k) != idLead {
				continue
			}
			j := k - 1
			for j > i && l.terms[j].measure >= 0 {
				j--
			}
			if old >= 0 && l.terms[old].id != l.terms[k].id && (l.id(j) == idWith || l.text(j) == "for" || l.text(j) == "to" || l.text(j) == "by") {
				l.terms[old].mark = asking
				return
			}
			old = k
		}
	}
}

func in(list []int, f int) bool {
	for _, x := range list {
		if x == f {
			return true
		}
	}
	return false
}

// orBetween tells that two words stand for choice: "or", "vs" or "over" between
// them, or "between", "difference", "better" before them.
func (l *line) orBetween(a, b int) bool {
	joined := false
	for k := a + 1; k < b; k++ {
		switch l.terms[k].id {
		case idOr, idThan:
			return true
		case idAnd:
			joined = true
		}
		switch l.text(k) {
		case "or", "over", "vs", "v", "versus", "compared", "and", "against":
			if l.text(k) != "and" {
				return true
			}
			joined = true
		}
	}
	if !joined {
		return false
	}
	for k := a - 1; k >= 0 && k >= a-6; k-- {
		if l.terms[k].id == idBetween || differs[l.text(k)] {
			return true
		}
	}
	return false
}

var differs = map[string]bool{"difference": true, "diffrence": true, "between": true, "compare": true, "diff": true, "differ": true, "comparing": true, "btween": true, "versus": true}

func (l *line) choose(f, a, b int) {
	for _, i := range []int{a, b} {
		w := families[f].words[l.terms[i].id.Name()]
		if l.terms[i].mark == 0 {
			l.terms[i].mark = asking
		}
		if !has(l.compare, w) {
			l.compare = append(l.compare, w)
		}
	}
	l.over = families[f].over
	for k := a + 1; k < b; k++ {
		if m := l.terms[k].measure; m >= 0 && l.over == "battery.layout" && l.r.Measures[m].Kind == read.Voltage {
			l.used[m], l.reason[m] = true, "one of a choice" // "in parallel at 12v or series"
		}
	}
	if l.over == "battery.chemistry" {
		l.countsOf(a, b)
	}
}

// countsOf sets aside how many of each there would be: "one 100 ah lithium or two
// agms".
func (l *line) countsOf(a, b int) {
	var counts []int
	for _, i := range []int{a, b} {
		for k := i - 1; k >= 0 && k >= i-4 && l.terms[k].id != idOr && l.terms[k].mark == 0; k-- {
			if v := l.smallNumber(k); v > 0 && v <= 4 {
				counts = append(counts, l.terms[k].measure)
			}
		}
	}
	own := false
	for k := max(a+1, b-4); k <= b+3 && k < len(l.terms); k++ {
		own = own || l.terms[k].measure >= 0 && k > a+1
	}
	if len(counts) < 2 && !own {
		return // "two 100 ah agm or lithium" are two either way
	}
	for _, m := range counts {
		l.used[m], l.reason[m] = true, "one of a choice"
	}
}

// worthIt marks a single kind that is asked about: "is lithium worth it?",
// "should I go brushless".
func (l *line) worthIt() {
	for i := range l.terms {
		t := &l.terms[i]
		if row := wantOf[t.id]; row != nil && t.mark == 0 && l.over == "" && (l.worthNear(i) || l.asksIf(i)) {
			l.over = row.slot
			l.compare = append(l.compare, row.word)
		}
		if t.id < 0 || len(familyOf[t.id]) == 0 || t.mark != 0 || t.text == "electric" && l.id(i+1) == idEnough {
			continue
		}
		f := familyOf[t.id][0]
		if over := families[f].over; over == "boat.hull" || over == "water.kind" || over == "mount.place" && !l.worthNear(i) && !l.judgedNear(i) {
			continue
		}
		if l.worthNear(i) || l.asksFor(i) || families[f].over != "battery.chemistry" && l.judgedNear(i) {
			t.mark = asking
			l.compare = append(l.compare, families[f].words[t.id.Name()])
			l.over = families[f].over
		}
	}
}

func (l *line) worthNear(i int) bool {
	for k := i - 5; k <= i+4; k++ {
		if k < 0 || k >= len(l.terms) {
			continue
		}
		if w := l.text(k); w == "worth" || w == "overrated" || w == "worthwhile" {
			return !l.stopBetween(i, k)
		}
	}
	return false
}

// asksFor accepts "do i need ...", "should i get ...", "is ... better", "why is
// lithium ...": the word is what the question is about.
func (l *line) asksFor(i int) bool {
	s := l.sentence(i)
	switch l.text(s) {
	case "should", "do", "does", "is", "are", "why", "whats", "what":
	default:
		return false
	}
	if i-s > 7 {
		return false
	}
	for k := s; k < i; k++ {
		if l.terms[k].measure >= 0 || l.id(k) == idWith {
			return false
		}
	}
	switch {
	case l.text(s) == "should" || l.text(s) == "why":
		return true
	case (l.text(s) == "do" || l.text(s) == "does") && (l.id(s+2) == idMust || l.id(s+1) == idMe || l.text(s+1) == "you"):
		return true
	case i-s <= 2 || l.text(s) == "is" && l.text(s+1) == "it" && l.text(s+2) == "true" && i-s <= 5:
		return true
	case (l.text(s) == "whats" || l.text(s) == "what") && (l.text(s+1) == "is" || l.text(s+1) == "are" || l.text(s+1) == "does" || l.text(s+1) == "a" || l.text(s+1) == "an" || l.text(s+1) == "the" || i == s+1) && i-s <= 4:
		return !l.hasMeasureNear(i)
	}
	return false
}

// judgedNear accepts "is a stern mount silly on a 17 ft deep v".
func (l *line) judgedNear(i int) bool {
	for k := i + 1; k <= i+3 && k < len(l.terms) && l.terms[k].mark == 0; k++ {
		if judging[l.text(k)] {
			return l.questionish()
		}
	}
	return false
}

// judging are words with which somebody asks whether a kind of thing is sensible.
var judging = map[string]bool{"silly": true, "dumb": true, "stupid": true, "foolish": true, "pointless": true}
