package meaning

import (
	"math"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// A cue is one row of evidence that a measure belongs to a slot. Every row that
// a measure meets is a bid; the strongest bid of the whole line is taken first,
// and a slot, once taken, is closed to the rest.
type cue struct {
	name   string    // what the row accepts, as :why prints it
	slot   string    // "" when the number has no slot: the row sets it aside
	kind   read.Kind // of the measure
	bare   string    // the unit that a number without one takes; "" when it must have one
	low    float64   // plausible range in the slot's unit; a number outside it is no such thing
	high   float64
	before set // an entry that stands before the measure ...
	after  set // ... or one that stands after it
	reachB int // how far, in words
	reachA int
	never  set  // an entry that, next to the measure on either side, forbids the row
	need   set  // an entry that must occur somewhere in the line
	alone  bool // no word near it is needed
	weight int  // strength of the evidence, 1 to 10
	many   bool // the slot may hold several values
	when   func(l *line, m int) bool
}

// cues is every row, by kind of measure. The rows stand in the files of their
// subjects.
var cues = [][]cue{lengthCues, weightCues, motorCues, batteryCues, wiringCues, waterCues, useCues, moneyCues, countCues}

var (
	byKind   = map[read.Kind][]*cue{}
	bareRows []*cue
)

func init() {
	for _, part := range cues {
		for i := range part {
			c := &part[i]
			byKind[c.kind] = append(byKind[c.kind], c)
			if c.bare != "" {
				bareRows = append(bareRows, c)
			}
		}
	}
}

// seen is one entry near a measure.
type seen struct {
	id   words.ID
	dist int
}

// view is what stands around one measure.
type view struct {
	before, after []seen
	store         [24]seen
}

const farthest = 8

// look gathers what stands near a term.
func (l *line) look(at int, v *view) {
	n := 0
	gather := func(dir, room int) []seen {
		from, cost := n, 0
		for i := at + dir; i >= 0 && i < len(l.terms) && cost <= farthest && n-from < room; i += dir {
			t := &l.terms[i]
			if t.mark == '.' || t.mark == '?' {
				break
			}
			if t.id >= 0 {
				v.store[n] = seen{t.id, cost}
				n++
			}
			if i < l.crewFrom || i > l.crewTo {
				if t.measure >= 0 && l.r.Measures[t.measure].As == "strokes" {
					continue // "115 hp 4 stroke 165 kg"
				}
				cost += stepCost(t) // the people counted stand as one word: "us two 380"
			}
		}
		return v.store[from:n]
	}
	v.before = gather(-1, 12)
	v.after = gather(1, 12)
}

// match gives the distance of the nearest entry of the set within reach.
func match(list []seen, s set, reach int) (int, bool) {
	if s == nil {
		return 0, false
	}
	for _, e := range list {
		if e.dist > reach {
			return 0, false
		}
		if s.holds(e.id) {
			return e.dist, true
		}
	}
	return 0, false
}

// bid is one row's claim on one measure.
type bid struct {
	m     int
	c     *cue
	score int
}

// mendsWithin is how many numbers of a line may mend something said before.
const mendsWithin = 24

// mostOfOne is how many values of a slot one turn may give.
const mostOfOne = 8

// measures gives every number that is still free to the slot with the best
// evidence.
func (l *line) measures() {
	var store [64]bid
	bids := store[:0]
	var v view
	mends := l.corrects()
	if l.asksWhy() && len(l.facts) == 0 {
		for m := range l.r.Measures {
			if !l.used[m] && m < mendsWithin {
				l.used[m], l.reason[m] = true, "asked about"
			}
		}
	}
	for m := range l.r.Measures {
		if l.used[m] || l.r.Measures[m].As != "" {
			continue
		}
		l.look(l.at[m], &v)
		from := len(bids)
		bids = l.bidsFor(m, &v, bids)
		if m < mendsWithin && l.picks(m) {
			bids = bids[:from]
			continue
		}
		if m < mendsWithin && (len(bids) == from || bids[from].c.weight <= 5) {
			if slot, row, ok := l.picksUp(m); ok {
				l.pickUp(m, slot, row)
				bids = bids[:from]
				continue
			}
		}
		if m < mendsWithin && (mends || len(bids) == from && l.goesOn(m)) && (len(bids) == from || bids[from].c.weight <= 4) {
			if slot, ok := l.correction(m); ok {
				l.mend(m, slot)
				bids = bids[:from]
			}
		}
	}
	l.award(bids)
}

func (l *line) bidsFor(m int, v *view, bids []bid) []bid {
	me := &l.r.Measures[m]
	bareNumber := me.Kind == read.Number
	rows := byKind[me.Kind]
	if bareNumber {
		rows = bareRows
	}
	first := l.labelFirst(l.at[m])
	from := len(bids)
	for _, c := range rows {
		if score, ok := l.score(c, m, v, first); ok {
			bids = append(bids, bid{m, c, score})
		}
	}
	if bareNumber {
		for _, c := range byKind[read.Number] {
			if score, ok := l.score(c, m, v, first); ok {
				bids = append(bids, bid{m, c, score})
			}
		}
	}
	// The strongest few of a measure are enough, and keep the line linear.
	mine := bids[from:]
	sortBids(mine)
	if len(mine) > 4 {
		bids = bids[:from+4]
	}
	return bids
}

// score weighs one row against one measure.
func (l *line) score(c *cue, m int, v *view, label words.ID) (int, bool) {
	me := &l.r.Measures[m]
	if me.Kind == read.Length && farUnit[me.Spoken] && c.slot != "use.distance" {
		return 0, false
	}
	dist, found := 0, c.alone
	if d, ok := match(v.after, c.after, c.reachA); ok {
		dist, found = 2*d, true
		if d == 0 && l.keywordFirst(m) {
			dist += 40 // "dry 1,900 total 1,400"
		}
		if c.before.holds(label) {
			dist += 5
		} else if label != words.None && d >= 3 && !c.after.holds(label) {
			dist += 14 // "loaded 900, empty 1,200": the word behind the pause is the next number's
		}
		if c.alone {
			dist -= 1
		}
		if d2, ok2 := match(v.before, c.before, c.reachB); ok2 {
			dist = min(dist, 2*d2) - 2
		}
	} else if d, ok := match(v.before, c.before, c.reachB); ok {
		dist, found = 2*d+1, true
	}
	if !found {
		return 0, false
	}
	if c.never != nil {
		if _, ok := match(v.after, c.never, 0); ok && !l.keywordFirst(m) {
			return 0, false
		}
		if _, ok := match(v.before, c.never, 0); ok {
			return 0, false
		}
	}
	if c.need != nil && !l.any(c.need) {
		return 0, false
	}
	if c.when != nil && !c.when(l, m) {
		return 0, false
	}
	if c.high > 0 {
		lo, hi := ends(l.forSlot(c, me))
		if hi < c.low*0.999 || lo > c.high*1.001 {
			return 0, false
		}
	}
	return c.weight*16 - dist, true
}

// farUnit are units of a trip, in which no part of a boat is measured.
var farUnit = map[string]bool{"mi": true, "km": true, "nmi": true, "mile": true, "miles": true, "kilometre": true}

func (c *cue) bareFor(me *read.Measure) string {
	if me.Kind == read.Number && c.kind != read.Number {
		return c.bare
	}
	return ""
}

// labelFirst gives the word about a number with which the stretch between two
// pauses opens, in which the term stands: "dry 260, loaded 700".
func (l *line) labelFirst(at int) words.ID {
	i := at
	for i > 0 && l.terms[i-1].mark == 0 {
		i--
		if at-i > 16 {
			return words.None
		}
	}
	for ; i < at; i++ {
		t := &l.terms[i]
		if t.measure >= 0 {
			return words.None
		}
		if labels.holds(t.id) {
			return t.id
		}
	}
	return words.None
}

var labels = of("loaded", "dry", "capacity plate", "gear", "outboard", "deck", "wind", "current", "shaft", "wire", "weighs")

func sortBids(b []bid) {
	for i := 1; i < len(b); i++ {
		for j := i; j > 0 && b[j].score > b[j-1].score; j-- {
			b[j], b[j-1] = b[j-1], b[j]
		}
	}
}

// award takes the bids from the strongest to the weakest; among equals the
// earlier measure wins.
func (l *line) award(bids []bid) {
	mergeSort(bids)
	for _, b := range bids {
		if l.used[b.m] {
			continue
		}
		if b.c.slot == "" {
			l.used[b.m] = true
			l.reason[b.m] = b.c.name
			continue
		}
		if l.setSlots[b.c.slot] && (!b.c.many || len(l.facts) > 64 || l.values(b.c.slot) >= mostOfOne) {
			continue
		}
		if b.c.many && l.repeats(b) {
			l.used[b.m] = true // "100 ah lithium vs 100 ah agm"
			continue
		}
		l.take(b.m, b.c)
	}
}

// repeats tells that a slot of many values has this one already.
func (l *line) repeats(b bid) bool {
	v := l.convert(&l.r.Measures[b.m], b.c.bareFor(&l.r.Measures[b.m])).value
	for i := range l.facts {
		if f := &l.facts[i]; f.Slot == b.c.slot && (same(f.Value, v) && v != nil || f.Text != "" && f.Text == groupName(&l.r.Measures[b.m])) {
			return true
		}
	}
	return false
}

func mergeSort(b []bid) {
	if len(b) < 12 {
		sortBids(b)
		return
	}
	mid := len(b) / 2
	left := append([]bid(nil), b[:mid]...)
	right := append([]bid(nil), b[mid:]...)
	mergeSort(left)
	mergeSort(right)
	for i := range b {
		if len(right) == 0 || len(left) > 0 && left[0].score >= right[0].score {
			b[i], left = left[0], left[1:]
		} else {
			b[i], right = right[0], right[1:]
		}
	}
}

// take turns a measure into a fact of the row's slot.
func (l *line) take(m int, c *cue) {
	me := &l.r.Measures[m]
	v := l.forSlot(c, me)
	if c.slot == "motor.thrust" && c.kind == read.Mass {
		v = thrustOf(v)
	}
	if v.value == nil && v.high == nil && l.negated[l.at[m]] {
		v.low, v.high = nil, v.low // "I don't want to spend over 500"
	}
	if c.slot == "battery.reserve" {
		v = inSeconds(v, me.Kind)
	}
	l.used[m] = true
	if c.slot == "battery.group" {
		l.put(card.Fact{Slot: c.slot, Text: groupName(me), Said: l.said(me.Start, me.End), Row: c.name})
		return
	}
	l.put(card.Fact{Slot: c.slot, Value: v.value, Low: v.low, High: v.high, Unit: unitOf[c.slot],
		Said: l.said(me.Start, me.End), Row: c.name, About: me.About, Bare: me.Kind == read.Number && unitOf[c.slot] != "1"})
}

// forSlot gives a measure in the unit of a row's slot. Degrees without a scale
// are Celsius on a wire, where ratings are: the weather's are the speaker's.
func (l *line) forSlot(c *cue, me *read.Measure) quantity {
	if c.slot == "wire.insulation" && me.Spoken == "deg" && me.Value != nil {
		return quantity{value: num(me.Bare)}
	}
	return l.convert(me, c.bareFor(me))
}

// inSeconds turns hours, or minutes said as a bare number, into seconds.
func inSeconds(v quantity, k read.Kind) quantity {
	by := 3600.0
	if k == read.Number {
		by = 60
	}
	f := card.Fact{Value: v.value, Low: v.low, High: v.high}
	scaleFact(&f, by)
	return quantity{f.Value, f.Low, f.High}
}

// put notes a fact of this turn.
func (l *line) put(f card.Fact) {
	f.Turn = l.before.Turn + 1
	l.facts = append(l.facts, f)
	if l.setSlots == nil {
		l.setSlots = map[string]bool{}
	}
	l.setSlots[f.Slot] = true
}

// fact returns the first fact of a slot that this turn has set.
func (l *line) fact(slot string) (*card.Fact, bool) {
	for i := range l.facts {
		if l.facts[i].Slot == slot {
			return &l.facts[i], true
		}
	}
	return nil, false
}

// values counts the facts of a slot that this turn has set.
func (l *line) values(slot string) int {
	n := 0
	for i := range l.facts {
		if l.facts[i].Slot == slot {
			n++
		}
	}
	return n
}

// quantity is a value with its ends, in a slot's unit.
type quantity struct{ value, low, high *float64 }

// ends gives the least and the greatest value that a quantity may have; a bound
// alone stands for both.
func ends(q quantity) (lo, hi float64) {
	lo, hi = math.Inf(1), math.Inf(-1)
	for _, p := range []*float64{q.value, q.low, q.high} {
		if p != nil {
			lo, hi = min(lo, *p), max(hi, *p)
		}
	}
	if hi < lo {
		return 0, 0
	}
	return lo, hi
}

// factor is SI for one of the counter's unit.
var factor = map[string]float64{
	"ft": 0.3048, "in": 0.0254, "m": 1, "cm": 0.01, "lb": 0.45359237, ratingPounds: 0.45359237, "kg": 1, "mph": 0.44704, "kn": 0.514444444, "m/s": 1, "kmh": 1 / 3.6,
	"lbf": 4.4482216152605, "V": 1, "A": 1, "Ah": 1, "h": 1, "1": 1, "USD": 1, "AWG": 1, "gal": 3.785411784, "L": 1, "%": 0.01,
}

// ratingPounds is a pound that stays one for a metric speaker: thrust is rated
// in pounds everywhere.
const ratingPounds = "lb of rating"

// metricFor is the unit that a metric speaker means where the counter means
// another.
var metricFor = map[string]string{"ft": "m", "lb": "kg", "mph": "m/s", "gal": "L", "in": "cm"}

// convert gives a measure in the unit of its slot: hours for durations, a
// fraction for a percentage, newtons for a mass that names a thrust.
func (l *line) convert(me *read.Measure, bare string) quantity {
	f := 1.0
	switch {
	case bare != "":
		if bare == "mph" && l.speedUnit() != "" {
			bare = l.speedUnit()
		} else if to, ok := metricFor[bare]; ok && l.speaksMetric() && bare != ratingPounds {
			bare = to
		}
		f = factor[bare]
	case me.Kind == read.Duration:
		f = 1.0 / 3600
	case me.Kind == read.Percent:
		f = 0.01
	}
	scale := func(p *float64) *float64 {
		if p == nil {
			return nil
		}
		return num(*p * f)
	}
	return quantity{scale(me.Value), scale(me.Low), scale(me.High)}
}

// speedUnit is the unit of the line's first speed, which its bare speeds share:
// "25 knots gusting 35".
func (l *line) speedUnit() string {
	for i := range l.r.Measures {
		if i >= mendsWithin {
			break
		}
		if m := &l.r.Measures[i]; m.Kind == read.Speed && factor[m.Spoken] > 0 {
			return m.Spoken
		}
	}
	return ""
}

// speaksMetric tells whether bare numbers are a metric speaker's.
func (l *line) speaksMetric() bool { return l.metric || l.before.Metric }

// scaleFact multiplies every number of a fact.
func scaleFact(f *card.Fact, by float64) {
	for _, p := range []**float64{&f.Value, &f.Low, &f.High} {
		if *p != nil {
			*p = num(**p * by)
		}
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

// keywordFirst tells that the words of a list stand before their numbers: one stands
// right before the measure, and the one behind it has a number of its own.
func (l *line) keywordFirst(m int) bool {
	i := l.at[m]
	if i+2 >= len(l.terms) || l.terms[i+2].measure < 0 || !l.opensNumber(i+1) {
		return false
	}
	k := l.skipFillers(i-1, -1)
	return k >= 0 && (l.opensNumber(k) || partSlots[l.id(k)] == "load.people" && k > 0 && l.terms[k-1].measure >= 0)
}

// opensNumber tells that a term is a word about a number or the name of a part.
func (l *line) opensNumber(k int) bool {
	id := l.id(k)
	return id == idLoaded || id == idDry || id == idMe || id == idCompanion || id == idChild || id != words.None && partSlots[id] != "" && !l.plural(k)
}
