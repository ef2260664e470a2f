package meaning

import (
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// An ellipsisRow gives a number that a short later turn leaves without a word
// of its own to the slot that the talk is about: "is a 54 ok" in talk of shafts,
// "would 8 do it" in talk of wire, "and 112?" in talk of thrust.
type ellipsisRow struct {
	name string
	slot string
	when func(l *line, me *read.Measure) bool
}

var ellipsisRows = []ellipsisRow{
	{"a shaft, in talk of shafts", "motor.shaft", func(l *line, me *read.Measure) bool {
		bare := me.Kind == read.Number || me.Kind == read.Length && me.Spoken == "in"
		return bare && l.shaftsAsked() && stockedShafts[me.Bare] && me.Bare >= 24 && !l.anyOf("waterline", "deck")
	}},
	{"a gauge, in talk of wire", "wire.gauge", func(l *line, me *read.Measure) bool {
		return me.Kind == read.Number && l.askedLast(Wire) && (l.knows("wire.run") || l.knows("motor.current")) && me.Bare >= 1 && me.Bare <= 12 && (me.Bare == 1 || int(me.Bare)%2 == 0)
	}},
	{"a rating, in talk of thrust", "motor.thrust", func(l *line, me *read.Measure) bool {
		pounds := me.Kind == read.Number && ratings[me.Bare] || me.Kind == read.Mass && me.Spoken != "kg" && me.Bare >= 24 && me.Bare <= 130
		return pounds && (l.knows("motor.thrust") || l.knows("load.total") || l.knows("load.dry") || l.knows("boat.length")) && !l.shaftsAsked() && !l.anyOf("wind", "gust") &&
			(me.Kind == read.Mass || l.askedLast(Thrust, Speed, Hold) && l.knows("motor.thrust") || l.tries(me))
	}},
	{"a throttle, in talk of run time", "use.throttle", func(l *line, me *read.Measure) bool {
		f, ok := l.before.Get("use.throttle")
		return ok && f.Value != nil && me.Kind == read.Number && me.Bare >= 5 && me.Bare <= 100 && l.askedLast(Runtime, Bank) && (l.beforeIs(me, "at") || l.beforeIs(me, "on")) && !l.anyOf("wind", "gust", "speed")
	}},
	{"a breaker in hand, in talk of breakers", "breaker.in-hand", func(l *line, me *read.Measure) bool {
		return me.Kind == read.Number && me.Value != nil && breakerSizes[*me.Value] && l.askedLast(Breaker) && !l.askedLast(Thrust, Shaft)
	}},
	{"amp-hours, in talk of batteries", "battery.capacity", func(l *line, me *read.Measure) bool {
		return me.Kind == read.Number && l.knows("battery.capacity") && me.Bare >= 20 && me.Bare <= 400 && int(me.Bare)%5 == 0 && (l.pluralAfter(me) || l.afterChemistry(me))
	}},
}

// longestEllipsis is how many terms such a turn has at most.
const longestEllipsis = 8

// picksUp finds the slot that the talk leaves open for a number.
func (l *line) picksUp(m int) (slot, row string, ok bool) {
	me := &l.r.Measures[m]
	i := l.at[m]
	if len(l.before.Facts) == 0 || len(l.terms) > longestEllipsis || me.Value == nil || *me.Value != float64(int(*me.Value)) && me.Kind == read.Number || l.actuallyHere(i) {
		return "", "", false
	}
	if l.any(hulls) || l.anyOf("boat", "loaded", "dry", "person", "gear", "child", "companion", "add", "battery", "budget") || !l.leftBare(i) {
		return "", "", false
	}
	for _, r := range ellipsisRows {
		if r.when(l, me) {
			return r.slot, r.name, true
		}
	}
	return "", "", false
}

// leftBare tells that nothing behind a number says what it counts.
func (l *line) leftBare(i int) bool {
	if l.endsAt(i) {
		return true
	}
	switch l.text(i + 1) {
	case "do", "will", "that", "long", "too", "in", "already", "then", "instead", "work", "ok", "okay", "fine", "enough", "be", "for", "good", "handle", "it", "is", "now":
		return true
	}
	return afterRating.holds(l.id(i + 1))
}

// beforeIs tells that a word stands right before a number.
func (l *line) beforeIs(me *read.Measure, w string) bool {
	for i := range l.terms {
		if l.terms[i].measure >= 0 && l.terms[i].start == me.Start {
			return l.text(i-1) == w
		}
	}
	return false
}

// actuallyHere tells that a word of correction stands in the sentence of a term.
func (l *line) actuallyHere(i int) bool {
	if !l.has[idActually] {
		return false
	}
	for k := l.sentence(i); k < len(l.terms) && l.terms[k].mark != '.' && l.terms[k].mark != '?'; k++ {
		if l.terms[k].id == idActually {
			return true
		}
	}
	return false
}

// tries tells that a number is tried out: "would 80 do", "how about a 70",
// "hows 45".
func (l *line) tries(me *read.Measure) bool {
	if !l.questionish() && !l.has[idWhatIf] {
		return false
	}
	for i := 0; i < len(l.terms) && l.terms[i].start < me.Start; i++ {
		switch l.text(i) {
		case "would", "will", "hows", "does", "is", "could", "can":
			return l.anyOf("enough", "fine") || l.text(i) == "hows" || l.doAfter(me)
		}
	}
	return false
}

// doAfter tells that "do" or "work" ends the question behind a number.
func (l *line) doAfter(me *read.Measure) bool {
	for i := range l.terms {
		if l.terms[i].start >= me.End {
			switch l.text(i) {
			case "do", "work", "be", "handle", "push":
				return true
			}
			return false
		}
	}
	return false
}

// pluralAfter tells that a number was said as several: "100s".
func (l *line) pluralAfter(me *read.Measure) bool {
	return me.End < len(l.r.Text) && l.r.Text[me.End] == 's' || me.Said[len(me.Said)-1] == 's'
}

// afterChemistry tells that the kind of battery stands right before a number: "and
// flooded 100".
func (l *line) afterChemistry(me *read.Measure) bool {
	for i := range l.terms {
		if l.terms[i].measure >= 0 && l.terms[i].start == me.Start {
			return chemistries.holds(l.id(i - 1))
		}
	}
	return false
}

// pickUp puts a number in the slot that the talk left open for it.
func (l *line) pickUp(m int, slot, row string) {
	me := &l.r.Measures[m]
	unit, _ := l.unitFor(me, slot)
	v := l.convertTo(me, unit)
	l.used[m] = true
	l.put(card.Fact{Slot: slot, Value: v.value, Low: v.low, High: v.high, Unit: unitOf[slot], Said: l.said(me.Start, me.End),
		Row: row, About: me.About, Bare: me.Kind == read.Number})
}
