package meaning

import (
	"strings"

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
	l.quoted()
	l.ownQuestion()
	l.beaufort()
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
// footer, mine is 19 ft".
func (l *line) theirs() {
	for i := range l.terms {
		if w := l.text(i); w != "mine" && w != "ours" {
			continue
		}
		owner := -1
		from := l.sentence(i)
		if from > 1 {
			from = l.sentence(from - 1)
		}
		for k := from; k < i; k++ {
			if id := l.terms[k].id; (id == idPerson || id == idCompanion) && (l.text(k+1) == "has" || l.text(k+1) == "runs" || l.text(k+1) == "got" || l.text(k+1) == "uses" || l.text(k+1) == "put" || l.terms[k].possessive) {
				owner = k
				break
			}
		}
		if owner < 0 {
			return
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
	l.worthIt()
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

func has(list []string, w string) bool {
	for _, x := range list {
		if x == w {
			return true
		}
	}
	return false
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
		if t.id < 0 || len(familyOf[t.id]) == 0 || t.mark != 0 {
			continue
		}
		f := familyOf[t.id][0]
		if over := families[f].over; over == "boat.hull" || over == "water.kind" || over == "mount.place" && !l.worthNear(i) {
			continue
		}
		if l.worthNear(i) || l.asksFor(i) {
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

func (l *line) stopBetween(a, b int) bool {
	if a > b {
		a, b = b, a
	}
	for k := a; k <= b; k++ {
		if m := l.terms[k].mark; m == '.' || m == '?' {
			return true
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

func (l *line) hasMeasureNear(i int) bool {
	for k := i - 2; k <= i+2; k++ {
		if k >= 0 && k < len(l.terms) && l.terms[k].measure >= 0 {
			return true
		}
	}
	return false
}

// sentence is the first term of the sentence in which a term stands.
func (l *line) sentence(i int) int {
	for k := i - 1; k >= 0 && i-k < 60; k-- {
		if m := l.terms[k].mark; m == '.' || m == '?' {
			return k + 1
		}
	}
	if i < 60 {
		return 0
	}
	return i - 59
}

// numberChoices sets aside numbers between which the line asks: "12 or 24",
// "30 or 36 shaft", "is it worth going 36v or is 24 plenty".
func (l *line) numberChoices() {
	prev := -1
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if l.used[m] || me.As != "" {
			continue
		}
		if me.Low != nil && me.High != nil && strings.Contains(lowerASCII(me.Said), " or ") {
			if over := l.choiceOver(m, m); over != "" {
				l.asideNumbers(over, m)
				prev = m
				continue
			}
		}
		for back := m - 1; prev >= 0 && back >= 0 && back >= m-4; back-- {
			if l.r.Measures[back].As != "" || l.used[back] && l.reason[back] != "one of a choice" || !l.orBefore(l.at[back], l.at[m]) {
				continue
			}
			if over := l.choiceOver(back, m); over != "" {
				l.asideNumbers(over, back, m)
				l.pairsOf(back, m)
				break
			}
		}
		if me.Kind == read.Voltage && nominalVolts(l, m) && !l.used[m] && l.asksVolts(l.at[m]) {
			l.asideNumbers("motor.voltage", m)
		}
		prev = m
	}
}

// pairsOf sets aside what belongs to each of two things to choose between:
// "12v 55 or 24v 80".
func (l *line) pairsOf(a, b int) {
	for _, d := range []int{1, -1} {
		x, y := a+d, b+d
		if x < 0 || y >= len(l.r.Measures) || x == b || l.used[x] || l.used[y] || l.at[x]-l.at[a] != d || l.at[y]-l.at[b] != d {
			continue
		}
		if over := l.choiceOver(x, y); over == "motor.thrust" || over == "motor.voltage" {
			l.asideNumbers(over, x, y)
		}
	}
}

// asksVolts accepts "does it need 24 volts", "is 24v worth it": the voltage is
// asked about. Volts beside a rating or a draw are a motor's.
func (l *line) asksVolts(i int) bool {
	if l.worthNear(i) || l.saysText("make sense") || l.saysText("more sense") {
		return true
	}
	for k := i - 2; k <= i+2; k++ {
		if k != i && k >= 0 && k < len(l.terms) && l.terms[k].measure >= 0 {
			return false
		}
	}
	s := l.sentence(i)
	switch l.text(s) {
	case "do", "does", "should":
	default:
		return false
	}
	for k := s + 1; k < i && k < s+8; k++ {
		switch l.text(k) {
		case "need", "go", "get", "want", "require", "have":
			return true
		}
	}
	return false
}

// orBefore tells that "or" stands right before the second of two terms, in one
// sentence.
func (l *line) orBefore(a, b int) bool {
	if b-a > 24 {
		return false
	}
	for k := b - 1; k > a; k-- {
		if m := l.terms[k].mark; m == '.' || m == '?' {
			return false
		}
	}
	for k := b - 1; k > a && k >= b-5; k-- {
		if l.id(k) == idOr || l.text(k) == "or" || l.text(k) == "vs" || l.text(k) == "versus" {
			return true
		}
		if v := l.smallNumber(k); v > 0 && v <= 4 {
			continue // "or two 12 volts"
		}
		if l.terms[k].measure >= 0 || l.terms[k].mark != 0 {
			return false
		}
	}
	return false
}

// choiceOver names the slot that two numbers would fill, if they are things to
// choose between; counts, winds and waves are a range when "or" joins them.
func (l *line) choiceOver(a, b int) string {
	x, y := &l.r.Measures[a], &l.r.Measures[b]
	volts := func(m *read.Measure) bool {
		return m.Kind == read.Voltage || m.Kind == read.Number && (nominal[m.Bare] && m.Bare != 16)
	}
	thrust := func(m *read.Measure) bool {
		return m.Kind == read.Force || (m.Kind == read.Mass && m.Spoken != "kg" || m.Kind == read.Number) && m.Bare >= 30 && m.Bare <= 130
	}
	tube := func(m *read.Measure) bool {
		return (m.Kind == read.Number || m.Kind == read.Length && m.Spoken == "in") && stockedShafts[m.Bare] && m.Bare >= 24
	}
	bothBare := x.Kind == read.Number && y.Kind == read.Number
	switch {
	case x.Kind == read.Gauge && (y.Kind == read.Gauge || y.Kind == read.Number) || y.Kind == read.Gauge && x.Kind == read.Number:
		return "wire.gauge"
	case tube(x) && tube(y) && (l.any(shaftPlaces) || l.askedLast(Shaft)) && !l.hasKind(read.Voltage):
		return "motor.shaft"
	case volts(x) && volts(y) && (!bothBare || !l.has.holds(idShaft)):
		return "motor.voltage"
	case thrust(x) && thrust(y) && (!bothBare || l.articleBefore(l.at[a]) || l.articleBefore(l.at[b]) || l.anyOf("thrust", "motor", "trolling motor", "enough", "bigger") || bothTens(x, y)):
		return "motor.thrust"
	case a == b && bothBare && x.BareHigh <= 8 && x.High != nil && *x.High <= 8 && l.id(l.at[a]+1) == idBattery && l.questionish():
		return "battery.count"
	case x.Kind == read.Charge && y.Kind == read.Charge, y.Kind == read.Charge && x.Kind == read.Number && x.Bare >= 30 && x.Bare <= 300 && int(x.Bare)%5 == 0:
		return "battery.capacity"
	case x.Kind == read.Group && y.Kind == read.Group || x.Kind == read.Group && y.Kind == read.Number || y.Kind == read.Group && x.Kind == read.Number:
		return "battery.group"
	case x.Kind == read.Current && y.Kind == read.Current && l.has.holds(idBreaker):
		return "breaker"
	case x.Kind == read.Current && y.Kind == read.Current && l.has.holds(idCharger):
		return "charger.current"
	}
	return ""
}

// bothTens tells that two bare numbers are both of the sizes that motors are
// rated in.
func bothTens(x, y *read.Measure) bool {
	return x.Bare >= 30 && y.Bare >= 30 && int(x.Bare)%5 == 0 && int(y.Bare)%5 == 0
}

var shaftPlaces = of("shaft", "deck", "waterline", "too long", "too short", "bow", "transom", "mounting surface", "gunwale", "bow mount", "transom mount")

func (l *line) articleBefore(i int) bool {
	switch l.text(i - 1) {
	case "a", "an", "the":
		return true
	}
	return false
}

func (l *line) asideNumbers(over string, ms ...int) {
	for _, m := range ms {
		l.used[m] = true
		l.reason[m] = "one of a choice"
		l.compare = append(l.compare, l.r.Measures[m].Said)
	}
	l.over = over
}

// comparisons sets aside the number that something is compared with: "bigger
// than a 55", "upgrading from a 40".
func (l *line) comparisons() {
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if l.used[m] {
			continue
		}
		i := l.at[m]
		if me.Value == nil {
			// "need more than 45 lb?" asks; it does not say what the motor has.
			if me.Low != nil && me.High == nil && (me.Kind == read.Mass || me.Kind == read.Force) && thrustSize(l, m) && me.Bare <= 130 && l.questionish() && !l.any(ofWeights) {
				l.used[m], l.reason[m] = true, "only compared with"
				l.compare, l.over = append(l.compare, me.Said), "motor.thrust"
			}
			continue
		}
		for k := i - 1; k >= 0 && k >= i-3; k-- {
			t := &l.terms[k]
			if t.id == idThan || t.text == "then" && k > 0 && l.terms[k-1].id == idBigger ||
				t.id == idBigger && strings.ContainsAny(t.text, "ui") && comparedTo[t.text] {
				l.used[m] = true
				l.reason[m] = "only compared with"
				l.compareBefore(m, k)
				l.compare = append(l.compare, me.Said)
				break
			}
			if !t.filler && (t.id != words.None || t.mark != 0 || t.measure >= 0) {
				break
			}
		}
	}
}

// compareBefore sets aside the other side of "is 24v better than 12v".
func (l *line) compareBefore(m, than int) {
	if m == 0 || l.used[m-1] || than-l.at[m-1] > 4 || than < l.at[m-1] || !l.questionish() {
		return
	}
	joined := false
	for k := l.at[m-1] + 1; k <= than; k++ {
		if l.terms[k].mark != 0 {
			return
		}
		joined = joined || l.terms[k].id == idBigger
	}
	if over := l.choiceOver(m-1, m); joined && over != "" {
		l.asideNumbers(over, m-1)
	}
}

// ofHullWeights are words of a list of weights, in which "40 horse is 215" is one.
var ofHullWeights = of("weighs", "boat", "gear", "capacity plate", "dry")

var ofWeights = of("gear", "each", "battery", "weighs")

var comparedTo = map[string]bool{"upgrade from": true, "upgrading from": true, "coming from": true, "replacing": true, "replaced": true, "replaces": true, "replace": true}

// ratios sets aside quoted rules: "5 lb per 100 lb", "2 lb per hundred".
func (l *line) ratios() {
	for m := range l.r.Measures {
		i := l.at[m]
		if l.terms[i].measure != m {
			continue
		}
		if l.r.Measures[m].As == "horsepower" && m+1 < len(l.r.Measures) && l.at[m+1]-i <= 5 {
			for k := i + 1; k < l.at[m+1]; k++ {
				if w := l.text(k); (w == "is" || w == "equals" || w == "equal" || w == "to") && !l.any(ofHullWeights) {
					l.used[m+1], l.reason[m+1] = true, "part of a ratio"
				}
			}
		}
		if l.used[m] {
			continue
		}
		w := l.text(i + 1)
		per := w == "per" || w == "every" || l.id(i+1) == idPerHundred || w == "for" && (l.text(i+2) == "every" || l.text(i+2) == "each")
		if !per {
			continue
		}
		to := -1
		for k := i + 2; k <= i+4 && k < len(l.terms); k++ {
			if to = l.terms[k].measure; to >= 0 {
				break
			}
			if !l.terms[k].filler && l.text(k) != "every" && l.text(k) != "each" {
				break
			}
		}
		if to >= 0 && l.r.Measures[to].Kind != read.Mass && l.r.Measures[to].Kind != read.Number {
			continue
		}
		if to < 0 && l.id(i+1) != idPerHundred {
			continue
		}
		l.used[m], l.reason[m] = true, "part of a ratio"
		if to >= 0 {
			l.used[to], l.reason[to] = true, "part of a ratio"
		}
	}
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
					l.used[m], l.reason[m] = true, "taken back"
				}
				break
			}
		}
	}
}

// skipFillers walks over fillers and gives the first other term.
func (l *line) skipFillers(i, dir int) int {
	for i >= 0 && i < len(l.terms) && l.terms[i].filler {
		i += dir
	}
	return i
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
