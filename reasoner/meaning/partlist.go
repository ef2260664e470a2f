package meaning

import (
	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// A partPair is a weight with the name of what weighs it behind it: "160 blokes".
type partPair struct {
	number, name int // terms
	slot         string
}

// partSlots are the weights of which a list of parts consists.
var partSlots = map[words.ID]string{}

func init() {
	for name, slot := range map[string]string{"boat": "load.dry", "outboard": "load.engine", "motor": "load.engine", "person": "load.people", "us": "load.people",
		"gear": "load.gear", "gasoline": "load.fuel", "battery": "load.batteries", "bank": "load.batteries"} {
		id := words.Of(name)
		if id == words.None {
			unknownNames = append(unknownNames, name)
		}
		partSlots[id] = slot
	}
}

// partsAfterNumbers reads a list of weights in which the name stands behind its
// number: "250 hull, 110 outboard, 380 people, 60 gear". Three such pairs make a
// list; under a capacity plate two do.
func (l *line) partsAfterNumbers() {
	for i := 0; i < len(l.terms) && i < 200; i++ {
		pairs := l.pairsFrom(i)
		least := 3
		if l.any(ofPlate) || l.knows("load.plate") {
			least = 2
		}
		if len(pairs) < least || len(pairs) == 2 && l.trollingPair(pairs) {
			continue
		}
		for _, p := range pairs {
			l.putPart(p)
		}
		i = pairs[len(pairs)-1].name
	}
}

// trollingPair tells that the motor of two parts may be the electric one that is to
// be hung: "a 75 lb motor and 50 lb of gear".
func (l *line) trollingPair(pairs []partPair) bool {
	for _, p := range pairs {
		if l.terms[p.name].id == idMotor && lowest(&l.r.Measures[l.terms[p.number].measure]) < 60 && l.r.Measures[l.terms[p.number].measure].Kind == read.Mass {
			return true
		}
	}
	return false
}

// pairsFrom reads pairs that follow each other from a term on. A list in which
// the names stand before the numbers ends in a number, and is none of these.
func (l *line) pairsFrom(i int) (pairs []partPair) {
	for i < len(l.terms) {
		m := l.terms[i].measure
		if m < 0 || !l.weightLike(m) {
			break
		}
		k := l.skipFillers(i+1, 1)
		slot, name := l.partAt(k)
		if slot == "" {
			break
		}
		pairs = append(pairs, partPair{i, name, slot})
		i = name + 1
		for i < len(l.terms) && (l.terms[i].mark == ',' || l.id(i) == idAnd || l.text(i) == "and" || l.terms[i].filler) {
			i++
		}
	}
	if n := len(pairs); n > 0 {
		if last := pairs[n-1].name; last+1 < len(l.terms) && l.terms[last+1].measure >= 0 && l.weightLike(l.terms[last+1].measure) {
			return nil // the names stand before the numbers
		}
		for _, p := range pairs[1:] {
			if p.slot == pairs[0].slot {
				return pairs[:1]
			}
		}
	}
	return pairs
}

// weightLike tells that a measure may be the weight of a part: a mass, or a
// number without a unit that nothing has taken.
func (l *line) weightLike(m int) bool {
	me := &l.r.Measures[m]
	if l.used[m] || me.Value == nil {
		return false
	}
	if me.Kind == read.Mass {
		return me.As == ""
	}
	return me.Kind == read.Number && (me.As == "" || me.As == "horsepower") && *me.Value >= 10 && *me.Value == float64(int(*me.Value))
}

// partAt finds the name of a part at a term, which may be of two words: "bits and
// bobs".
func (l *line) partAt(k int) (slot string, last int) {
	if k >= len(l.terms) {
		return "", k
	}
	id := l.terms[k].id
	if hulls.holds(id) {
		return "load.dry", k
	}
	slot = partSlots[id]
	if id == idPerson && !l.plural(k) {
		return "", k // one person's weight is told of that person
	}
	if l.text(k) == "bits" && (l.id(k+1) == idAnd || l.text(k+1) == "and") {
		return "load.gear", k + 2
	}
	return slot, k
}

func (l *line) putPart(p partPair) {
	m := l.terms[p.number].measure
	me := &l.r.Measures[m]
	if me.As == "horsepower" {
		mended := append([]read.Measure(nil), l.r.Measures...) // the reading is the caller's
		mended[m].As = ""
		l.r.Measures = mended
		me = &l.r.Measures[m]
	}
	l.used[m] = true
	if l.setSlots[p.slot] {
		l.reason[m] = "the same part twice"
		return
	}
	v := l.convert(me, bareIf(me, "lb"))
	f := card.Fact{Slot: p.slot, Value: v.value, Unit: "kg", Said: l.said(me.Start, l.terms[p.name].end), Row: "so many pounds of a part, in a list", Bare: me.Kind == read.Number}
	if n, ok := l.fact("people.count"); ok && p.slot == "load.people" && n.Value != nil && *n.Value > 0 && *v.value / *n.Value <= maxPersonEach {
		f.Slot, f.Value, f.Row = "people.each", num(*v.value / *n.Value), "weight of a group, shared"
	}
	l.put(f)
}

// trailerWeight takes a trailer off what the scale showed: "boat and trailer 2,200,
// trailer 450".
func (l *line) trailerWeight() {
	if !l.has.holds(idTrailer) {
		return
	}
	own, gross := -1, -1
	for i := range l.terms {
		if l.terms[i].id == idTrailer && own < 0 && (!l.joined(i) || l.text(i-1) == "the" && (l.id(i+1) == idWeighs || l.text(i+1) == "is")) {
			own = l.trailersOwn(i)
		}
	}
	if own < 0 {
		return
	}
	for i := range l.terms {
		if l.terms[i].id == idTrailer && gross < 0 {
			gross = l.weighedWith(i, own)
		}
	}
	l.used[own], l.reason[own] = true, "a trailer's weight"
	if gross < 0 {
		return
	}
	a, b := l.convert(&l.r.Measures[gross], bareIf(&l.r.Measures[gross], "lb")), l.convert(&l.r.Measures[own], bareIf(&l.r.Measures[own], "lb"))
	l.used[gross] = true
	if l.saysNumber(*a.value - *b.value) {
		l.reason[gross] = "the speaker's own sum"
		return
	}
	l.reason[own] = ""
	slot := "load.total"
	if l.anyOf("boat and motor") || l.anyText("motor") || l.crewTo >= 0 && l.crewFrom > max(l.at[own], l.at[gross]) {
		slot = "load.dry"
	}
	first, last := &l.r.Measures[min(own, gross)], &l.r.Measures[max(own, gross)]
	l.put(card.Fact{Slot: slot, Value: num(*a.value - *b.value), Unit: "kg", Said: l.said(first.Start, last.End), Row: "on the scale, less the trailer"})
	if slot == "load.dry" {
		l.put(card.Fact{Slot: "load.engine", Value: num(0), Unit: "kg", Said: l.r.Measures[gross].Said, Row: "weighed with the boat"})
	}
}

// saysNumber tells that a weight, in kg, is said in the line.
func (l *line) saysNumber(kg float64) bool {
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if m >= 64 || me.Value == nil || me.Kind != read.Mass && me.Kind != read.Number {
			continue
		}
		if v := *l.convert(me, bareIf(me, "lb")).value; v > kg*0.995 && v < kg*1.005 {
			return true
		}
	}
	return false
}

// trailersOwn is the measure of the trailer's weight: "trailer is 750", "the
// trailer which is 680", "a 700 lb trailer"; -1 for none.
func (l *line) trailersOwn(i int) int {
	if i > 0 && l.terms[i-1].measure >= 0 && l.r.Measures[l.terms[i-1].measure].Kind == read.Mass {
		return l.terms[i-1].measure
	}
	for k := i + 1; k < len(l.terms) && k <= i+4; k++ {
		t := &l.terms[k]
		if t.measure >= 0 {
			if m := t.measure; l.weightLike(m) && *l.r.Measures[m].Value >= 80 {
				return m
			}
			return -1
		}
		if !t.filler && t.id != idWeighs && t.text != "which" && t.text != "alone" && t.id != idAlone && t.text != "itself" && t.text != "around" {
			return -1
		}
	}
	return -1
}

// weighedWith is the measure of what was weighed with the trailer, in the
// stretch of the sentence that names it; -1 for none.
func (l *line) weighedWith(i, own int) int {
	from, to := l.sentence(i), i
	for to < len(l.terms) && l.terms[to].mark != '.' && l.terms[to].mark != '?' {
		to++
	}
	for k := from; k < to; k++ {
		m := l.terms[k].measure
		if m < 0 || m == own || !l.weightLike(m) {
			continue
		}
		if k < i && i-k > 8 || k > i && k-i > 8 || l.pauseBetween(min(k, i), max(k, i)) {
			continue
		}
		v, w := l.convert(&l.r.Measures[m], bareIf(&l.r.Measures[m], "lb")), l.convert(&l.r.Measures[own], bareIf(&l.r.Measures[own], "lb"))
		if *v.value > 1.2**w.value && l.joinsTrailer(min(k, i), max(k, i)) {
			return m
		}
	}
	return -1
}

// joinsTrailer tells that a trailer stands on the scale with the boat.
func (l *line) joinsTrailer(a, b int) bool {
	for k := max(a-3, 0); k <= b; k++ {
		if l.terms[k].mark != 0 && k < a {
			continue
		}
		switch {
		case l.id(k) == idWith, l.id(k) == idAnd, l.text(k) == "and", l.text(k) == "on", l.text(k) == "including", l.id(k) == idLoaded, l.id(k) == idNo && l.text(k) != "no":
			return true
		}
	}
	return false
}

// joined tells that "and", "with" or "on" stands right before a term.
func (l *line) joined(i int) bool {
	k := l.skipFillers(i-1, -1)
	return k >= 0 && (l.id(k) == idAnd || l.text(k) == "and" || l.id(k) == idWith) || l.text(i-1) == "on" || l.text(i-2) == "on" && l.filler(i-1)
}

// pauseBetween tells that a pause parts two terms.
func (l *line) pauseBetween(a, b int) bool {
	for k := a + 1; k < b; k++ {
		if l.terms[k].mark != 0 && l.terms[k].mark != asking {
			return true
		}
	}
	return false
}
