package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// corrects tells that the line mends something said before.
func (l *line) corrects() bool {
	if l.has[idActually] {
		return true
	}
	if len(l.before.Facts) == 0 {
		return false
	}
	if l.saysText("closer") || l.saysText("more like") {
		return true
	}
	for m := range l.reason {
		if l.reason[m] == "taken back" {
			return true
		}
	}
	w := l.text(0)
	return len(l.before.Facts) > 0 && (w == "no" && (l.answersNo(0) || len(l.terms) > 1 && l.terms[1].mark == ',') || w == "not" || w == "its" && len(l.terms) <= 3)
}

// correction finds which slot a number without a word of its own mends: one of
// the same unit that the new value could replace, the one that was asked about
// or said last.
func (l *line) correction(m int) (slot string, ok bool) {
	me := &l.r.Measures[m]
	type candidate struct {
		slot  string
		score int
	}
	var best candidate
	last := 0
	for _, f := range l.before.Facts {
		if !Inner(f.Slot) {
			last = max(last, f.Turn)
		}
	}
	for _, f := range l.before.Facts {
		if f.Value == nil && f.Low == nil && f.High == nil || Inner(f.Slot) {
			continue
		}
		lo, hi := ends(quantity{f.Value, f.Low, f.High})
		unit, fits := l.unitFor(me, f.Slot)
		if fits && f.Slot == "motor.shaft" && l.knows("mount.height") && !stockedShafts[me.Bare] {
			fits = false // a deck is measured again, a shaft is bought
		}
		if !fits {
			continue
		}
		unit = saidUnit(f, unit, me)
		nlo, nhi := ends(l.convertTo(me, unit))
		if hi <= 0 || nlo <= 0 || (nhi < lo*0.35 || nlo > hi*2.8) && !(f.Slot == "wind.speed" && hi < calm && nhi < 20) {
			continue
		}
		score := 0
		if f.Turn == last {
			score += 8
		}
		if l.askedAbout(f.Slot) {
			score += 5
		}
		if l.has[idMeasured] || l.measuredAgain() {
			if f.Slot == "mount.height" || f.Slot == "wire.run" || f.Slot == "boat.beam" {
				score += 5
			}
		}
		if l.oldNamed(f, m) {
			score += 20
		}
		if nlo > lo*0.6 && nhi < hi*1.7 {
			score += 2
		}
		if f.Slot == "boat.length" || f.Slot == "boat.beam" || f.Slot == "motor.voltage" && !nominal[me.Bare] {
			score -= 3 // what is tried out is seldom another boat
		}
		if score >= best.score { // of two as likely, the one said later
			best = candidate{f.Slot, score}
		}
	}
	if said, aside := l.before.Get("load.said"); aside && best.slot == "" && said.Value != nil && (me.Kind == read.Number || me.Kind == read.Mass) {
		if v := l.convert(me, bareIf(me, "lb")); v.value != nil && *v.value > 0.5**said.Value && *v.value < 2**said.Value {
			return "load.total", true
		}
	}
	if old := l.oldSaid(m); old >= 0 && best.score < 20 {
		// "24 not 36": the old number is none of the card's.
		if nominal[me.Bare] && nominal[l.r.Measures[old].Bare] {
			return "motor.voltage", true
		}
		return "", false
	}
	return best.slot, best.slot != "" && best.score > 0
}

// oldSaid is a number of the line that is taken back, other than the given one;
// -1 for none.
func (l *line) oldSaid(m int) int {
	for k := range l.reason {
		if k != m && l.reason[k] == "taken back" {
			return k
		}
	}
	return -1
}

// goesOn tells that a number without a word of its own, in a short later turn,
// takes the place of one said before: "and at 1,800", "more like 4".
func (l *line) goesOn(m int) bool {
	i := l.at[m]
	if len(l.before.Facts) == 0 || len(l.terms) > 9 {
		return false
	}
	if said := lowerASCII(l.r.Measures[m].Said); strings.HasPrefix(said, "call it") {
		return true
	}
	if l.r.Measures[m].Kind == read.Mass && l.any(otherWeights) {
		return false // "add his dog, 80 lb"
	}
	if (i == 0 || l.terms[i-1].mark != 0) && sometimes[l.text(i+1)] {
		return true // "3 on a bad day", of what was said last
	}
	if me := &l.r.Measures[m]; me.Kind != read.Number && len(l.before.Facts) > 0 && len(l.terms) <= 9 && i == 0 && i+1 < len(l.terms) && l.id(i+1) == words.None && !l.any(hulls) {
		return true // "2 knots most of the time"
	}
	if len(l.before.Facts) == 0 || len(l.terms) > 9 || !l.endsAt(i) && !(l.text(i+1) == "it" && l.text(i+2) == "is") && l.id(i+1) != idActually && l.text(i+1) != "then" && l.text(i+1) != "instead" && l.text(i+1) != "if" && l.text(i+1) != "without" {
		return false
	}
	if i == 0 || l.terms[i-1].filler || l.terms[i-1].mark != 0 || l.id(i-1) == idSame {
		return true
	}
	switch l.id(i - 1) {
	case idWhatIf, idAnd, idWith, idBack, idActually, idBigger:
		return true
	}
	switch l.text(i - 1) {
	case "under", "over", "more", "be", "only", "or", "closer", "than", "be at", "as", "allow", "use", "figure", "do", "down to", "up to":
		return true
	}
	me := &l.r.Measures[m]
	return me.Kind != read.Number
}

// otherWeights are things whose weight is none of the values that stand.
var otherWeights = of("dog", "anchor", "battery", "trailer")

// sometimes are words that follow a number said of wind or water at times.
var sometimes = map[string]bool{"on": true, "in": true, "some": true, "most": true, "sometimes": true, "tops": true, "at": true, "by": true, "max": true}

// picks takes a number that is one of those offered to choose between the turn
// before: "go with the 31".
func (l *line) picks(m int) bool {
	me := &l.r.Measures[m]
	if l.before.Over == "" || me.Kind != read.Number && me.Unit != unitOf[l.before.Over] {
		return false
	}
	if id := l.id(l.at[m] + 1); id != words.None && (id == idPerson || id.Kind() == words.Hull) {
		return false
	}
	for _, o := range l.before.Offered {
		if bareDigits(o) != bareDigits(me.Said) {
			continue
		}
		if l.before.Over == "battery.group" {
			l.used[m] = true
			l.put(card.Fact{Slot: "battery.group", Text: groupName(me), Said: l.said(me.Start, me.End), Row: "one of those offered"})
			return true
		}
		if unit, fits := l.unitFor(me, l.before.Over); fits {
			v := l.convertTo(me, unit)
			l.used[m] = true
			l.put(card.Fact{Slot: l.before.Over, Value: v.value, Low: v.low, High: v.high, Unit: unitOf[l.before.Over], Said: l.said(me.Start, me.End), Row: "one of those offered"})
			return true
		}
	}
	return false
}

// bareDigits is the digits of a text.
func bareDigits(s string) string {
	var b strings.Builder
	for i := 0; i < len(s); i++ {
		if s[i] >= '0' && s[i] <= '9' || s[i] == '.' {
			b.WriteByte(s[i])
		}
	}
	return b.String()
}

// relabel reads "loaded" or "no, I mean dry" of a weight said before.
func (l *line) relabel() {
	if len(l.r.Measures) > 0 || len(l.terms) > 6 || l.questionish() {
		return
	}
	from, to := "load.total", "load.dry"
	if l.anyOf("loaded") {
		from, to = to, from
	} else if !l.anyOf("dry") {
		return
	}
	f, ok := l.before.Get(from)
	if !ok || l.knows(to) {
		return
	}
	f.Slot, f.Row = to, "a weight given its name"
	l.drops = append(l.drops, from)
	l.put(f)
}

// saidUnit is the unit that a bare number takes from the words of the fact that it
// mends: 3 in place of "2 knots" is knots.
func saidUnit(f card.Fact, unit string, me *read.Measure) string {
	if unit != "mph" || me.Kind != read.Number {
		return unit
	}
	said := lowerASCII(f.Said)
	for _, u := range []struct{ text, unit string }{{"knot", "kn"}, {" kn", "kn"}, {" kt", "kn"}, {"m/s", "m/s"}, {"km/h", "kmh"}, {"kph", "kmh"}} {
		if strings.Contains(said, u.text) {
			return u.unit
		}
	}
	return unit
}

// measuredAgain tells that a measure was taken anew.
func (l *line) measuredAgain() bool {
	for i := range l.terms {
		if l.terms[i].id == idActually && strings.Contains(l.terms[i].text, "measured") {
			return true
		}
	}
	return false
}

// mend puts a corrected number in the slot that it mends.
func (l *line) mend(m int, slot string) {
	me := &l.r.Measures[m]
	unit, _ := l.unitFor(me, slot)
	if f, ok := l.before.Get(slot); ok {
		unit = saidUnit(f, unit, me)
	}
	v := l.convertTo(me, unit)
	l.used[m] = true
	l.put(card.Fact{Slot: slot, Value: v.value, Low: v.low, High: v.high, Unit: unitOf[slot], Said: l.said(me.Start, me.End),
		Row: "a number put right", About: me.About, Bare: me.Kind == read.Number})
}

// oldNamed tells that another number of the line is the old value: "19, not 24".
func (l *line) oldNamed(f card.Fact, m int) bool {
	for k := range l.r.Measures {
		if k == m || l.reason[k] != "taken back" {
			continue
		}
		old := &l.r.Measures[k]
		unit, fits := l.unitFor(old, f.Slot)
		if !fits {
			continue
		}
		v, _ := ends(l.convertTo(old, unit))
		w, _ := ends(quantity{f.Value, f.Low, f.High})
		if v > w*0.995 && v < w*1.005 {
			return true
		}
	}
	return false
}

// spokenUnit is the unit in which a slot is talked of at the counter.
var spokenUnit = map[string]string{
	"boat.length": "ft", "boat.beam": "ft", "boat.freeboard": "in", "mount.height": "in", "motor.shaft": "in", "wire.run": "ft", "chop.height": "ft", "water.depth": "ft",
	"load.dry": "lb", "load.total": "lb", "load.gear": "lb", "load.engine": "lb", "load.plate": "lb", "people.each": "lb", "motor.thrust": "lbf",
	"people.count": "1", "battery.count": "1", "wind.speed": "mph", "current.speed": "mph", "use.speed": "mph", "use.hours": "h", "charge.hours": "h",
	"motor.voltage": "V", "motor.current": "A", "breaker.in-hand": "A", "charger.current": "A", "battery.capacity": "Ah", "money.budget": "USD", "wire.gauge": "AWG", "fuel.volume": "gal", "use.throttle": "%", "wire.drop": "%",
}

// unitFor gives the bare unit that a measure takes for a slot; "" when it has
// its own. It fits when the kinds agree.
func (l *line) unitFor(me *read.Measure, slot string) (unit string, fits bool) {
	spoken, ok := spokenUnit[slot]
	if !ok {
		return "", false
	}
	if me.Kind == read.Number {
		if (slot == "people.count" || slot == "battery.count") && me.Value != nil && *me.Value != float64(int(*me.Value)) {
			return "", false
		}
		return spoken, true
	}
	switch unitOf[slot] {
	case "h":
		return "", me.Kind == read.Duration
	case "1":
		return "", me.Kind == read.Percent && (slot == "use.throttle" || slot == "wire.drop")
	case "USD":
		return "", me.Kind == read.Money
	case "AWG":
		return "", me.Kind == read.Gauge
	}
	if slot == "motor.thrust" && me.Kind == read.Mass && me.Spoken != "kg" {
		return "thrust", true
	}
	return "", me.Unit == unitOf[slot]
}

// convertTo converts a measure by a bare unit, or a mass to the thrust it names.
func (l *line) convertTo(me *read.Measure, unit string) quantity {
	if unit == "thrust" {
		return thrustOf(l.convert(me, ""))
	}
	return l.convert(me, unit)
}

// thrustOf turns pounds of mass into pounds of force.
func thrustOf(q quantity) quantity {
	const g = 9.80665 // standard gravity, m/s2: CGPM 1901
	f := func(p *float64) *float64 {
		if p == nil {
			return nil
		}
		return num(*p * g)
	}
	return quantity{f(q.value), f(q.low), f(q.high)}
}

// askedAbout tells that a slot belongs to what was asked last.
func (l *line) askedAbout(slot string) bool {
	for _, a := range l.before.Asked {
		for _, s := range topicSlots[Topic(a)] {
			if s == slot {
				return true
			}
		}
	}
	return false
}

var topicSlots = map[Topic][]string{
	Shaft: {"mount.height", "motor.shaft", "chop.height"}, Wire: {"wire.run", "wire.gauge", "motor.current"}, Breaker: {"motor.current", "wire.gauge"},
	Bank: {"battery.capacity", "battery.count", "use.hours"}, Runtime: {"battery.capacity", "use.throttle", "use.hours", "motor.current"},
	Charger: {"charge.hours", "battery.capacity"}, Fit: {"load.total", "load.dry"}, Thrust: {"load.total", "load.dry", "motor.thrust"},
	Hold: {"motor.thrust", "load.total"}, Speed: {"motor.thrust", "load.total"}, Capacity: {"load.plate", "people.each", "load.gear", "load.engine"},
}

// A relativeRow is a word that makes a measure a change of what stands: "2 feet
// longer", "100 lb heavier".
type relativeRow struct {
	word  string
	sign  float64
	slots []string // the first that stands, of what was asked last first
}

var relativeRows = []relativeRow{
	{"longer", 1, []string{"wire.run", "motor.shaft", "boat.length"}},
	{"shorter", -1, []string{"wire.run", "motor.shaft", "boat.length"}},
	{"higher", 1, []string{"mount.height", "chop.height"}},
	{"lower", -1, []string{"mount.height", "chop.height"}},
	{"heavier", 1, []string{"load.total", "load.dry"}},
	{"lighter", -1, []string{"load.total", "load.dry"}},
	{"wider", 1, []string{"boat.beam"}},
	{"stronger", 1, []string{"wind.speed", "current.speed"}},
}

// relative changes what stands by a measure: "what if its 2 feet longer".
func (l *line) relative() {
	if len(l.before.Facts) == 0 || len(l.terms) > 12 {
		return
	}
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if m >= 24 || l.used[m] || me.As != "" || me.Value == nil || me.Kind == read.Number || l.id(l.at[m]+2) == idThan {
			continue
		}
		for _, row := range relativeRows {
			if l.text(l.at[m]+1) != row.word {
				continue
			}
			if slot := l.standing(row.slots, me.Unit); slot != "" {
				old, _ := l.before.Get(slot)
				l.used[m] = true
				f := old
				f.Value, f.Low, f.High = num(*old.Value+row.sign**me.Value), nil, nil
				f.Said, f.Row = l.said(me.Start, l.terms[l.at[m]+1].end), "so much more or less than before"
				l.put(f)
			}
		}
	}
}

// standing is the slot of a list that stands with a value in a unit, those asked
// about last first; "" for none.
func (l *line) standing(slots []string, unit string) string {
	found := ""
	for _, s := range slots {
		f, ok := l.before.Get(s)
		if !ok || f.Value == nil || unitOf[s] != unit {
			continue
		}
		if l.askedAbout(s) {
			return s
		}
		if found == "" {
			found = s
		}
	}
	return found
}

// calm is the most wind, in m/s, from which any other may be put right.
const calm = 2.0
