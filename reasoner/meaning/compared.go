package meaning

import (
	"strconv"
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/read"
)

// numberChoices sets aside numbers between which the line asks: "12 or 24",
// "30 or 36 shaft", "is it worth going 36v or is 24 plenty".
func (l *line) numberChoices() {
	prev := -1
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if l.used[m] || me.As != "" {
			continue
		}
		if me.Low != nil && me.High != nil && (strings.Contains(lowerASCII(me.Said), " or ") || l.stepsUp(m)) {
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
				l.countsBefore(back, m)
				for k := back - 1; k >= 0 && !l.used[k] && (l.at[back]-l.at[k] == 2 && l.terms[l.at[k]+1].mark == ',' || l.at[back]-l.at[k] == 1) && l.r.Measures[k].Kind == l.r.Measures[back].Kind && l.choiceOver(k, back) == over; k-- {
					l.asideNumbers(over, k)
					l.compare = append([]string{l.compare[len(l.compare)-1]}, l.compare[:len(l.compare)-1]...)
					back = k
				}
				break
			}
		}
		if me.Kind == read.Voltage && nominalVolts(l, m) && l.refused(l.at[m]) {
			l.used[m], l.reason[m] = true, "not wanted"
			continue
		}
		goes := me.Kind == read.Number && nominal[me.Bare] && (l.text(l.at[m]-1) == "going" || l.text(l.at[m]-1) == "go" || l.text(l.at[m]-1) == "to")
		if (me.Kind == read.Voltage && nominalVolts(l, m) || goes && l.worthNear(l.at[m])) && !l.used[m] && l.asksVolts(l.at[m]) {
			l.asideNumbers("motor.voltage", m)
		}
		if l.over == "motor.voltage" && !l.used[m] && me.Kind == read.Number && nominal[me.Bare] && strings.HasPrefix(lowerASCII(me.Said), "over ") {
			l.asideNumbers("motor.voltage", m) // "24 volt worth it over 12"
		}
		prev = m
	}
}

// refused accepts "without 36v", "avoid 24 volts".
func (l *line) refused(i int) bool {
	k := l.skipFillers(i-1, -1)
	for n := 0; n < 3 && k >= 0 && l.terms[k].mark == 0 && l.terms[k].measure < 0; n++ {
		if l.id(k) == idNo {
			return (n == 0 || !verbDenied[l.text(k)]) && !(l.text(k) == "no" && (k == 0 && len(l.before.Facts) > 0 || k > 0 && (l.terms[k-1].mark != 0 || l.terms[k-1].measure >= 0)))
		}
		k = l.skipFillers(k-1, -1)
	}
	return false
}

// stepsUp accepts "what do i gain going from 55 to 80": the ends of the range are
// two things, not a range of one.
func (l *line) stepsUp(m int) bool {
	me := &l.r.Measures[m]
	if !strings.HasPrefix(lowerASCII(me.Said), "from ") || !l.questionish() && !l.saysText("worth it") {
		return false
	}
	for k := l.at[m] - 1; k >= 0 && k >= l.at[m]-4; k-- {
		if w := l.text(k); steps[w] || l.id(k) == idBigger {
			return true
		}
	}
	return false
}

var steps = map[string]bool{"going": true, "go": true, "up": true, "moving": true, "move": true, "step": true, "stepping": true, "jump": true, "jumping": true, "switching": true, "switch": true, "upgrade": true, "upgrading": true, "change": true, "changing": true, "difference": true, "double": true, "doubling": true, "raise": true, "increase": true}

// countsBefore sets aside how many of each of two banks there would be, and the
// kinds that only one of them has: "one 24v lithium or two 12s".
func (l *line) countsBefore(a, b int) {
	var counts []int
	for _, m := range []int{a, b} {
		k := l.at[m] - 1
		if k > 0 && l.terms[k].measure >= 0 && l.used[l.terms[k].measure] {
			k--
		}
		if v := l.smallNumber(k); v > 0 && v <= 4 {
			counts = append(counts, l.terms[k].measure)
		}
	}
	if len(counts) < 2 {
		return
	}
	for _, m := range counts {
		l.used[m], l.reason[m] = true, "one of a choice"
	}
	for k := l.at[a]; k <= min(l.at[b]+1, len(l.terms)-1); k++ {
		if id := l.terms[k].id; chemistries.holds(id) || id == idSeries || id == idParallel {
			l.terms[k].mark = asking
		}
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
		if k != i && k >= 0 && k < len(l.terms) && l.terms[k].measure >= 0 && l.ofAMotor(l.terms[k].measure) {
			return false
		}
	}
	s := l.sentence(i)
	switch l.text(s) {
	case "do", "does", "should", "did":
	default:
		return false
	}
	for k := i - 1; k > s && k > i-5; k-- {
		switch l.text(k) {
		case "need", "go", "get", "want", "require", "have", "run":
			return true
		}
		if id := l.id(k); id != words.None && id.Kind() == words.Part && id != idMotor && id != idTrollingMotor {
			return false // "do i need one breaker or three on 36 volts"
		}
	}
	return false
}

// ofAMotor tells that a measure beside volts makes them a motor's: its rating or
// its draw.
func (l *line) ofAMotor(m int) bool {
	me := &l.r.Measures[m]
	return me.Kind == read.Force || me.Kind == read.Current || (me.Kind == read.Mass || me.Kind == read.Number) && ratings[me.Bare]
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
		if l.text(k) == "to" && l.stepFrom(a) {
			return true
		}
		if (l.id(k) == idWith || l.id(k) == idAnd || l.text(k) == "and" || l.text(k) == "to" || l.text(k) == "against") && l.comparesBefore(a) {
			return true
		}
		if l.id(k) == idOr || l.text(k) == "or" || l.text(k) == "vs" || l.text(k) == "versus" || l.text(k) == "v" && k == b-1 && k == a+1 {
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

// stepFrom accepts the first of "going from a 45 to a 70".
func (l *line) stepFrom(a int) bool {
	k := l.skipFillers(a-1, -1)
	return l.text(a-1) == "from" && steps[l.text(a-2)] || k >= 0 && l.text(a-2) == "from" && steps[l.text(a-3)]
}

// comparesBefore tells that "compare", "difference" or "between" stands shortly
// before a term.
func (l *line) comparesBefore(a int) bool {
	for k := a - 1; k >= 0 && k >= a-4; k-- {
		if l.id(k) == idBetween || differs[l.text(k)] {
			return true
		}
		if l.terms[k].mark != 0 {
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
		return m.Kind == read.Voltage || m.Kind == read.Group && m.Bare == 24 && !strings.Contains(lowerASCII(m.Said), "gr") || m.Kind == read.Number && (nominal[m.Bare] && m.Bare != 16)
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
	case thrust(x) && thrust(y) && (!bothBare || l.articleBefore(l.at[a]) || l.articleBefore(l.at[b]) || l.anyOf("thrust", "motor", "trolling motor", "enough", "bigger") || bothTens(x, y) || l.bothRatings(x, y)):
		return "motor.thrust"
	case bothBare && a != b && caseSizes[x.Bare] && caseSizes[y.Bare] && l.any(batteryWords):
		return "battery.group"
	case a == b && bothBare && x.BareHigh <= 8 && x.High != nil && *x.High <= 8 && l.id(l.at[a]+1) == idBattery && l.questionish():
		return "battery.count"
	case x.Kind == read.Charge && y.Kind == read.Charge, y.Kind == read.Charge && x.Kind == read.Number && x.Bare >= 30 && x.Bare <= 300 && int(x.Bare)%5 == 0:
		return "battery.capacity"
	case x.Kind == read.Group && y.Kind == read.Group || x.Kind == read.Group && y.Kind == read.Number && caseSizes[y.Bare] || y.Kind == read.Group && x.Kind == read.Number && caseSizes[x.Bare]:
		return "battery.group"
	case a != b && bothBare && l.countedPart(a, b) == idBreaker:
		return "breaker"
	case a != b && bothBare && l.countedPart(a, b) != words.None:
		return "battery.count"
	case x.Kind == read.Charge && y.Kind == read.Number && y.Bare >= 30 && y.Bare <= 400 && int(y.Bare)%5 == 0 && l.any(batteryNamed):
		return "battery.capacity"
	case x.Kind == read.Current && y.Kind == read.Current && l.has.holds(idBreaker):
		return "breaker"
	case x.Kind == read.Current && y.Kind == read.Current && l.has.holds(idCharger):
		return "charger.current"
	}
	return ""
}

// countedPart is what two small numbers count to choose between: "one battery or
// three"; none for anything else.
func (l *line) countedPart(a, b int) words.ID {
	i, j := l.at[a], l.at[b]
	if x, y := l.smallNumber(i), l.smallNumber(j); x == 0 || y == 0 || x > 6 || y > 6 || x == y {
		return words.None
	}
	part := l.id(i + 1)
	if part != idBattery && part != idBreaker && part != idBank {
		part = l.id(j + 1)
	} else if !l.endsAt(j) && l.id(j+1) != part && !l.filler(j+1) {
		return words.None
	}
	if part != idBattery && part != idBreaker && part != idBank {
		return words.None
	}
	return part
}

// bothTens tells that two bare numbers are both of the sizes that motors are
// rated in.
func bothTens(x, y *read.Measure) bool {
	return x.Bare >= 30 && y.Bare >= 30 && int(x.Bare)%5 == 0 && int(y.Bare)%5 == 0
}

// bothRatings tells that two bare numbers are ratings of motors, where a boat is
// there to be pushed.
func (l *line) bothRatings(x, y *read.Measure) bool {
	return ratings[x.Bare] && ratings[y.Bare] && (l.any(hulls) || l.hasKind(read.Length) || l.knows("boat.length") || l.knows("load.total"))
}

var shaftPlaces = of("shaft", "deck", "waterline", "too long", "too short", "bow", "transom", "mounting surface", "gunwale", "bow mount", "transom mount")

func (l *line) asideNumbers(over string, ms ...int) {
	for _, m := range ms {
		l.used[m] = true
		l.reason[m] = "one of a choice"
		l.compare = append(l.compare, named(&l.r.Measures[m])...)
	}
	l.over = over
}

// named is what a number of a comparison is called: its words, without what
// hedges them; both ends of a range.
func named(me *read.Measure) []string {
	if me.Low != nil && me.High != nil {
		return []string{plainNumber(me.Bare), plainNumber(me.BareHigh)}
	}
	for i := 0; i < len(me.Said); i++ {
		if me.Said[i] >= '0' && me.Said[i] <= '9' {
			return []string{me.Said[i:]}
		}
	}
	return []string{plainNumber(me.Bare)}
}

func plainNumber(v float64) string { return strconv.FormatFloat(v, 'g', 6, 64) }

// perHorsepower accepts "12 lb of thrust per horsepower".
func (l *line) perHorsepower(i int) bool {
	if k := l.r.Measures[l.terms[i].measure].Kind; k != read.Mass && k != read.Force {
		return false
	}
	for k := i + 1; k <= i+4 && k < len(l.terms); k++ {
		if l.id(k) == idHorsepower && (l.text(k-1) == "per" || l.id(k-1) == idPerHundred || l.text(k-1) == "a" && l.text(k-2) == "to") {
			return true
		}
	}
	return false
}

// comparisons sets aside the number that something is compared with: "bigger
// than a 55", "upgrading from a 40", "as well as a 45".
func (l *line) comparisons() {
	for m := range l.r.Measures {
		if l.used[m] {
			continue
		}
		me := &l.r.Measures[m]
		if me.Value == nil && l.asksForMore(me, m) {
			l.used[m], l.reason[m] = true, "only compared with"
			l.compare, l.over = append(l.compare, named(me)...), "motor.thrust"
			continue
		}
		switch than, how := l.comparedAt(m); how {
		case measuredAgainst:
			l.compareBefore(m, than)
			l.used[m] = true
			if l.reason[m] == "" {
				l.reason[m] = "only compared with"
				l.compare = append(l.compare, named(me)...)
			}
		case likened:
			l.compareBefore(m, than)
		}
	}
}

// asksForMore accepts "need more than 45 lb?": it asks; it does not say what the
// motor has.
func (l *line) asksForMore(me *read.Measure, m int) bool {
	return me.Low != nil && me.High == nil && (me.Kind == read.Mass || me.Kind == read.Force) && thrustSize(l, m) && me.Bare <= 130 && l.questionish() && !l.any(ofWeights) && !l.thanHedge(m)
}

// A comparing is how a number stands in a comparison.
type comparing int

const (
	notCompared     comparing = iota
	measuredAgainst           // "bigger than a 55"
	likened                   // "as well as a 45"
)

// comparedAt finds the word that compares a number, right before it.
func (l *line) comparedAt(m int) (at int, how comparing) {
	i := l.at[m]
	if l.r.Measures[m].Value == nil {
		if l.thanHedge(m) {
			return i, measuredAgainst
		}
		return 0, notCompared
	}
	for k := i - 1; k >= 0 && k >= i-3; k-- {
		t := &l.terms[k]
		switch {
		case t.id == idThan && (t.text != "then a" || k > 0 && comparative(l.terms[k-1])), t.text == "then" && k > 0 && l.terms[k-1].id == idBigger, t.id == idBigger && comparedTo[t.text]:
			return k, measuredAgainst
		case t.text == "as" && (l.text(k-2) == "as" || l.text(k-3) == "as"):
			return k, likened
		case !t.filler && (t.id != words.None || t.mark != 0 || t.measure >= 0):
			return 0, notCompared
		}
	}
	return 0, notCompared
}

// thanHedge tells that a bound was said by comparing in a question, "is a 55 faster
// than a 45": the reading took "faster than" for the bound's word.
func (l *line) thanHedge(m int) bool {
	me := &l.r.Measures[m]
	return me.Value == nil && (me.Low == nil) != (me.High == nil) && strings.Contains(lowerASCII(me.Said), "than ") && m > 0 && l.choiceOver(m-1, m) != "" && l.questionish()
}

// compareBefore sets aside the other side of "is 24v better than 12v", "how much
// faster is an 80 than a 55".
func (l *line) compareBefore(m, than int) {
	if m == 0 || l.used[m-1] || than-l.at[m-1] > 9 || than < l.at[m-1] || !l.questionish() {
		return
	}
	joined := than == l.at[m] || l.text(than) == "as"
	for k := than; k >= 0 && k >= than-14; k-- {
		if k > l.at[m-1] && l.terms[k].mark != 0 {
			return
		}
		joined = joined || l.terms[k].id == idBigger || strings.HasPrefix(l.terms[k].text, "more ")
	}
	if over := l.choiceOver(m-1, m); joined && over != "" {
		l.asideNumbers(over, m-1, m)
	}
}

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
		if l.perHorsepower(i) {
			for k := range l.r.Measures {
				if k < 16 && !l.used[k] && (l.r.Measures[k].Kind == read.Mass && lowest(&l.r.Measures[k]) < 60 || l.r.Measures[k].Kind == read.Force) {
					l.used[k], l.reason[k] = true, "part of a ratio"
				}
			}
			continue
		}
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

// comparative tells that a word compares: "bigger then a 55", where "ok then a 55"
// does not.
func comparative(t term) bool {
	return t.id == idBigger || strings.HasSuffix(t.text, "er") || t.text == "more" || t.text == "less" || t.text == "worse"
}
