package meaning

import (
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// gearList adds up gear that is told piece by piece: "cooler 40 lb, tackle 30 lb,
// anchor 25".
func (l *line) gearList() {
	if l.any(ofPlate) && l.has.holds(idAdd) {
		return
	}
	sum, n, first, last := 0.0, 0, -1, 0
	var taken []int
	for i := range l.terms {
		if l.terms[i].id != idGear && l.terms[i].id != idAnchor || l.negated[i] || l.asked(i) || n >= 8 {
			continue
		}
		m := l.gearWeight(i)
		if m < 0 || containsInt(taken, m) {
			continue
		}
		taken = append(taken, m)
		sum += *l.convert(&l.r.Measures[m], bareIf(&l.r.Measures[m], "lb")).value
		n++
		if first < 0 {
			first = min(i, l.at[m])
		}
		last = max(i, l.at[m])
	}
	if n < 2 || l.setSlots["load.gear"] {
		return
	}
	for _, m := range taken {
		l.used[m] = true
	}
	l.put(card.Fact{Slot: "load.gear", Value: num(sum), Unit: "kg", Said: l.said(l.terms[first].start, l.terms[last].end), Row: "gear piece by piece, added up"})
}

// gearWeight is the measure that tells what a piece of gear weighs, right before it
// or right behind it; -1 for none.
func (l *line) gearWeight(i int) int {
	k := i - 1
	for k >= 0 && (l.terms[k].filler || l.text(k) == "of") {
		k--
	}
	if k >= 0 && l.terms[k].measure >= 0 && l.pieceWeighs(l.terms[k].measure) && l.terms[i].id != idAnchor {
		return l.terms[k].measure
	}
	if k >= 0 && l.terms[k].measure >= 0 && l.r.Measures[l.terms[k].measure].Kind == read.Mass && l.pieceWeighs(l.terms[k].measure) {
		return l.terms[k].measure
	}
	k = l.skipFillers(i+1, 1)
	if k < len(l.terms) && l.terms[k].measure >= 0 && l.pieceWeighs(l.terms[k].measure) && (l.endsAt(k) || l.id(k+1) == idAnd || l.id(k+1) == idWith) {
		return l.terms[k].measure
	}
	return -1
}

// pieceWeighs tells that a measure may be the weight of a piece of gear.
func (l *line) pieceWeighs(m int) bool {
	me := &l.r.Measures[m]
	if !l.weightLike(m) || me.As != "" {
		return false
	}
	kg := *l.convert(me, bareIf(me, "lb")).value
	return kg >= 2 && kg <= 160 && (me.Kind == read.Mass || *me.Value >= 20)
}

func containsInt(list []int, x int) bool {
	for _, y := range list {
		if y == x {
			return true
		}
	}
	return false
}
