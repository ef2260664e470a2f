package meaning

import (
	"strings"

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

// ordinals are the persons that a "third guy" makes.
var ordinals = []struct {
	word  string
	count float64
}{{"second", 2}, {"third", 3}, {"fourth", 4}, {"fifth", 5}}

// ordinalID is the entries of ordinals.
var ordinalID = func() (ids []words.ID) {
	for _, o := range ordinals {
		ids = append(ids, words.Of(o.word))
	}
	return ids
}()

// peopleChange reads what a turn does to the number aboard: "add a third guy",
// "one more", "leave one guy home", "just the two". It reports whether the
// mention at a term was one.
func (l *line) peopleChange(i, to int, n float64) (count float64, row string, ok bool) {
	known, have := l.before.Get("people.count")
	if !have || known.Value == nil {
		return 0, "", false
	}
	for k := max(0, i-4); k <= min(to+4, len(l.terms)-1); k++ {
		switch id := l.terms[k].id; {
		case id == idBigger && k > to && (l.text(k) == "less" || l.text(k) == "fewer"):
			return max(*known.Value-n, 0), "somebody stays ashore", true
		case id == idLeave && !l.stopBetween(min(k, i), max(k, to)) && l.text(k) != "less":
			return max(*known.Value-n, 0), "somebody stays ashore", true
		case id == idNo && k < i && i-k <= 2 && l.text(k) != "no" && l.text(k) != "nothing" && (l.text(k) == "minus" || l.text(k) == "without" || l.text(k) == "lose the" || len(l.terms) <= 4 && (l.text(k) == "skip" || l.text(k) == "forget" || l.text(k) == "never mind" || l.text(k) == "nevermind" || l.text(k) == "drop the" || l.text(k) == "scrap" || l.text(k) == "nvm")):
			return max(*known.Value-n, 0), "somebody stays ashore", true
		}
	}
	if w := l.text(to + 1); w == "off" || w == "out" {
		return max(*known.Value-n, 0), "somebody stays ashore", true
	}
	for k := max(0, i-3); k <= min(to+3, len(l.terms)-1); k++ {
		id, text := l.terms[k].id, l.terms[k].text
		if id == idAdd && !l.stopBetween(min(k, i), max(k, to)) || id == idBigger && text == "more" && k >= i && k <= to || id == idAnd && text == "plus" && k < i {
			if k > to && (text == "another" || text == "extra") {
				continue
			}
			return *known.Value + n, "somebody more", true
		}
	}
	return 0, "", false
}

// ordinalPerson reads "a third guy" at a term.
func (l *line) ordinalPerson(i int) (count float64, to int, ok bool) {
	if l.terms[i].id == words.None {
		return 0, 0, false
	}
	for k, o := range ordinals {
		if l.terms[i].id != ordinalID[k] {
			continue
		}
		if strings.Contains(l.terms[i].text, " ") && !strings.HasSuffix(l.terms[i].text, "one") {
			return o.count, i, true
		}
		if l.id(i+1) == idAdd && l.knows("people.count") {
			return o.count, i + 1, true // "a fourth joins"
		}
		if known, ok := l.before.Get("people.count"); ok && known.Value != nil && *known.Value == o.count-1 && l.endsAt(i) && i > 0 && l.articleBefore(i) {
			return o.count, i, true // "add a third"
		}
		if j := i + 1; j < len(l.terms) && (l.id(j) == idPerson || l.id(j) == idChild || l.id(j) == idCompanion) {
			return o.count, j, true
		}
	}
	return 0, 0, false
}

// justSoMany reads "just the two", "make it three", "only two of us" behind a
// known number of people.
func (l *line) justSoMany(i int) (count float64, to int, ok bool) {
	if !l.knows("people.count") {
		return 0, 0, false
	}
	v := l.smallNumber(i)
	if v == 0 || v > 12 {
		return 0, 0, false
	}
	if !l.endsAt(i) && l.id(i+1) != idAnd && l.text(i+1) != "then" && l.text(i+1) != "again" && l.id(i+1) != idBack {
		return 0, 0, false
	}
	k := i - 1
	for k >= 0 && (l.text(k) == "the" || l.text(k) == "us" || l.text(k) == "it") {
		k--
	}
	switch {
	case k >= 0 && (l.text(k) == "just" || l.text(k) == "only"):
		return v, i, true
	case k >= 0 && l.text(k) == "make it" && l.onlyPeopleChanged():
		return v, i, true
	case k >= 0 && l.id(k) == idBack && l.text(i-1) == "the":
		return v, i, true
	}
	return 0, 0, false
}

// oneLess reads "two less", "one more" and "she stays home" behind a known number
// of people.
func (l *line) oneLess(i int) (count float64, to int, ok bool) {
	known, have := l.before.Get("people.count")
	if !have || known.Value == nil {
		return 0, 0, false
	}
	switch l.text(i) {
	case "she", "he", "him", "her", "hes", "shes":
		if l.id(i+1) == idLeave || l.filler(i+1) && l.id(i+2) == idLeave {
			return max(*known.Value-1, 0), i + 1, true
		}
	}
	if id := l.terms[i].id; (id == idCompanion || id == idPerson || id == idChild) && len(l.terms) <= 5 && (l.text(i+1) == "out" || l.text(i+1) == "not" && l.text(i+2) == "coming") && l.endsAt(i+1+b2i(l.text(i+1) == "not")) {
		return max(*known.Value-1, 0), i + 1, true // "dad's out"
	}
	if m := l.terms[i].measure; m >= 0 && l.r.Measures[m].Kind == read.Number && l.r.Measures[m].Value != nil && *l.r.Measures[m].Value < 0 && *l.r.Measures[m].Value >= -12 {
		if j, ok := l.noun(i+1, 3); ok {
			return max(*known.Value+*l.r.Measures[m].Value, 0), j, true // "minus two kids"
		}
	}
	v := l.smallNumber(i)
	if v > 0 && l.id(i+1) == idLeave && len(l.terms) <= 4 && !l.anyOf("battery") {
		return max(*known.Value-v, 0), i + 1, true // "one leaves"
	}
	if v == 0 || !l.endsAt(i+1) || !l.onlyPeopleChanged() && !(len(l.terms) <= 4 && (l.id(i-1) == idAnd || l.id(i-1) == idAdd)) || l.askedLast(Bank, Runtime, Charger) {
		return 0, 0, false
	}
	switch l.text(i + 1) {
	case "less", "fewer":
		return max(*known.Value-v, 0), i + 1, true
	case "more":
		return *known.Value + v, i + 1, true
	}
	return 0, 0, false
}

func b2i(b bool) int {
	if b {
		return 1
	}
	return 0
}

// allBack reads "put him back": the number aboard for which the load was said.
func (l *line) allBack(i int) (count float64, ok bool) {
	if l.terms[i].id != idBack && l.text(i) != "back" {
		return 0, false
	}
	switch l.text(i - 1) {
	case "him", "her", "them", "em", "everybody", "everyone", "guy", "kid", "both", "all", "us", "of us", "both of us", "everybody in":
	case "coming", "comes", "in", "going", "goes", "makes it", "make it", "with us":
		if !l.anyText("he", "she", "hes", "shes", "they", "theyre", "everybody", "everyone") {
			return 0, false
		}
	case "off":
		if more, ok := l.before.Get("people.added"); !ok || more.Value == nil || *more.Value <= 0 {
			return 0, false
		}
	default:
		if id := l.id(i - 1); id != idCompanion && id != idPerson && id != idChild || !l.knows("people.added") && !l.knows("people.count") {
			return 0, false
		}
	}
	now, have := l.before.Get("people.count")
	more, moved := l.before.Get("people.added")
	if have && !moved && now.Value != nil && now.Row == "somebody stays ashore" && !l.anyText("them", "em", "everybody", "everyone", "they", "theyre") {
		return *now.Value + 1, true // no load was said that would tell how many
	}
	if !have || !moved || now.Value == nil || more.Value == nil {
		return 0, false
	}
	return *now.Value - *more.Value, true
}

// anyText tells that one of these words occurs in the line.
func (l *line) anyText(ws ...string) bool {
	for i := range l.terms {
		for _, w := range ws {
			if l.terms[i].text == w {
				return true
			}
		}
	}
	return false
}

// onlyPeopleChanged tells that the number of people is what was said last.
func (l *line) onlyPeopleChanged() bool {
	last, slot := 0, ""
	for _, f := range l.before.Facts {
		if f.Turn >= last && !Inner(f.Slot) {
			last, slot = f.Turn, f.Slot
		}
	}
	return slot == "people.count"
}

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
		if !fits {
			continue
		}
		unit = saidUnit(f, unit, me)
		nlo, nhi := ends(l.convertTo(me, unit))
		if hi <= 0 || nlo <= 0 || nhi < lo*0.35 || nlo > hi*2.8 {
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

func (l *line) hasText(w string) bool {
	for i := range l.terms {
		if l.terms[i].text == w {
			return true
		}
	}
	return false
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
	"motor.voltage": "V", "motor.current": "A", "charger.current": "A", "battery.capacity": "Ah", "money.budget": "USD", "wire.gauge": "AWG", "fuel.volume": "gal", "use.throttle": "%", "wire.drop": "%",
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

// followUp reads what a later turn does beside stating facts: taking a wind or a
// budget away.
func (l *line) followUp() {
	if len(l.before.Facts) == 0 {
		return
	}
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

// apply puts the facts of the turn on the card.
func (l *line) apply(before card.Card) (card.Card, []string) {
	c := before
	c.Metric = c.Metric || l.metric
	if l.newBoat() {
		c = l.park(before)
	} else if l.unlikeBoat() {
		l.askWhichBoat()
		c = l.park(before)
	}
	l.pluckRelabelled(&c)
	for _, s := range l.drops {
		c = c.Without(s)
	}
	seenSlots := map[string]bool{}
	var fresh []card.Fact
	for _, f := range l.facts {
		if seenSlots[f.Slot] {
			if _, stands := c.Get(f.Slot); stands {
				c = c.And(f)
			} else {
				fresh = append(fresh, f)
			}
			continue
		}
		seenSlots[f.Slot] = true
		if f.Slot == "people.count" {
			c = l.recount(c, f)
			continue
		}
		if f.Slot == "load.total" {
			c = c.Without("load.said", "people.added", "load.added")
		}
		if f.Slot == "wind.speed" && !l.setSlots["wind.gust"] {
			c = c.Without("wind.gust")
		}
		if _, stands := before.Get(f.Slot); !stands && !has(l.drops, f.Slot) {
			fresh = append(fresh, f) // nothing to replace
			continue
		}
		c = c.With(f)
	}
	c.Facts = append(c.Facts[:len(c.Facts):len(c.Facts)], fresh...)
	c = l.moreGear(before, c)
	c = l.moreBatteries(before, c)
	return c, changed(before, c)
}

// recount sets the number of people. A load that was said for another number
// no longer holds: it is kept aside with the difference, and comes back when
// the number does.
func (l *line) recount(c card.Card, f card.Fact) card.Card {
	old, counted := c.Get("people.count")
	next := c.With(f)
	if !counted && f.Row == "somebody more" {
		old = card.Fact{Value: num(*f.Value - 1)}
		counted = true
	}
	if !counted || old.Value == nil || f.Value == nil || l.setSlots["load.total"] || l.saysText("in that") || l.saysText("included") || l.saysText("includes") {
		return next
	}
	base := *old.Value
	if added, ok := c.Get("people.added"); ok && added.Value != nil {
		base -= *added.Value
	}
	said, aside := c.Get("load.said")
	if !aside {
		total, ok := c.Get("load.total")
		if !ok || *f.Value == base {
			return next
		}
		said = total
	}
	diff := *f.Value - base
	_, gear := c.Get("load.added")
	if diff == 0 && !gear {
		said.Slot = "load.total"
		return next.Without("load.said", "people.added").With(said)
	}
	said.Slot = "load.said"
	return next.Without("load.total").With(said).
		With(card.Fact{Slot: "people.added", Value: num(diff), Unit: "1", Said: f.Said, Row: f.Row, Turn: f.Turn})
}

// moreGear adds gear that comes on top of a load already said: "what if I bring
// another 100 lb".
func (l *line) moreGear(before, c card.Card) card.Card {
	g, ok := l.fact("load.gear")
	if !ok || g.Value == nil || !(l.has[idAdd] || l.hasText("more")) || l.setSlots["load.total"] {
		return c
	}
	if old, had := before.Get("load.gear"); had && old.Value != nil {
		sum := *g
		sum.Value = num(*g.Value + *old.Value)
		c = c.With(sum)
	}
	added := *g.Value
	if more, had := before.Get("load.added"); had && more.Value != nil {
		added += *more.Value
	}
	said, aside := c.Get("load.said")
	if !aside {
		if said, aside = c.Get("load.total"); !aside {
			return c
		}
	}
	said.Slot = "load.said"
	return c.Without("load.total").With(said).With(card.Fact{Slot: "load.added", Value: num(added), Unit: "kg", Said: g.Said, Row: "more gear", Turn: g.Turn})
}

// moreBatteries adds a battery's weight that comes on top of a load already
// said.
func (l *line) moreBatteries(before, c card.Card) card.Card {
	if !l.has[idAdd] || l.setSlots["load.total"] {
		return c
	}
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if l.reason[m] != "a battery's weight" || me.Value == nil || me.Kind != read.Mass {
			continue
		}
		said, aside := c.Get("load.said")
		if !aside {
			if said, aside = c.Get("load.total"); !aside {
				return c
			}
		}
		added := *me.Value
		if more, had := before.Get("load.added"); had && more.Value != nil {
			added += *more.Value
		}
		said.Slot = "load.said"
		return c.Without("load.total").With(said).With(card.Fact{Slot: "load.added", Value: num(added), Unit: "kg", Said: l.said(me.Start, me.End), Row: "a battery more", Turn: before.Turn + 1})
	}
	return c
}

// pluckRelabelled takes a number off the slot it was in when the speaker gives
// the same number another meaning: "no, 1,900 is the boat without us".
func (l *line) pluckRelabelled(c *card.Card) {
	for _, f := range l.facts {
		if f.Value == nil || !l.corrects() && f.Slot != "load.dry" && f.Slot != "load.total" {
			continue
		}
		for _, g := range c.Facts {
			if g.Slot != f.Slot && g.Unit == f.Unit && g.Value != nil && (l.corrects() || g.Slot == "load.dry" || g.Slot == "load.total") && *g.Value > *f.Value*0.999 && *g.Value < *f.Value*1.001 && !l.setSlots[g.Slot] {
				*c = c.Without(g.Slot)
				break
			}
		}
	}
}

// changed lists the slots that differ between two cards, in the order of the
// new card, then those that are gone.
func changed(before, after card.Card) []string {
	var out []string
	note := func(s string) {
		if !has(out, s) {
			out = append(out, s)
		}
	}
	for _, f := range after.Facts {
		if !sameFacts(before.All(f.Slot), after.All(f.Slot)) {
			note(f.Slot)
		}
	}
	for _, f := range before.Facts {
		if _, still := after.Get(f.Slot); !still {
			note(f.Slot)
		}
	}
	return out
}

func sameFacts(a, b []card.Fact) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].Text != b[i].Text || !same(a[i].Value, b[i].Value) || !same(a[i].Low, b[i].Low) || !same(a[i].High, b[i].High) || a[i].Turn != b[i].Turn {
			return false
		}
	}
	return true
}

func same(a, b *float64) bool {
	if a == nil || b == nil {
		return a == b
	}
	return *a == *b
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
