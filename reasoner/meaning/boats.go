package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// newBoat tells that the turn speaks of another boat than the card's: it is
// announced, or belongs to somebody else.
func (l *line) newBoat() bool {
	if len(l.before.Facts) == 0 {
		return false
	}
	_, hull := l.fact("boat.hull")
	_, length := l.fact("boat.length")
	_, made := l.fact("boat.material")
	described := hull || length || made
	if l.has[idNewBoat] && (described || l.setSlots["load.total"] || l.setSlots["load.dry"]) {
		return true
	}
	for i := range l.terms {
		t := &l.terms[i]
		owner := t.possessive || strings.HasSuffix(t.text, "s") && (l.id(i+1) == idBoat || l.id(i+1) >= 0 && l.id(i+1).Kind() == words.Hull)
		if owner && (t.id == idPerson || t.id == idCompanion || t.id == idChild) && described {
			return true
		}
	}
	return false
}

// park puts the card's boat aside and gives a clean one.
func (l *line) park(c card.Card) card.Card {
	old := c
	old.Parked = nil
	return card.Card{Turn: c.Turn, Metric: c.Metric, Asked: c.Asked, Parked: append(append([]card.Card(nil), c.Parked...), old)}
}

// unlikeBoat tells that the turn describes a boat that cannot be the card's,
// without announcing one: another hull and another length.
func (l *line) unlikeBoat() bool {
	if l.has[idActually] || l.has[idWhatIf] || l.has[idBack] || l.has[idSame] || l.corrects() {
		return false
	}
	hull, a := l.fact("boat.hull")
	length, b := l.fact("boat.length")
	old, c := l.before.Get("boat.hull")
	was, d := l.before.Get("boat.length")
	if !a || !b || !c || !d || hull.Text == old.Text || length.Value == nil || was.Value == nil {
		return false
	}
	return *length.Value != *was.Value
}

// askWhichBoat says that the talk was taken to be of another boat.
func (l *line) askWhichBoat() {
	length, _ := l.fact("boat.length")
	hull, _ := l.fact("boat.hull")
	start, end := l.find(length.Said)
	l.problems = append(l.problems, Problem{Kind: "ambiguous", Slot: "boat.length", Said: length.Said, Start: start, End: end,
		Text: "taken as another boat (" + length.Said + " " + hull.Said + "); if it is the same one, say \"same boat\" and what changed"})
}

// comesBack gives the parked boat that a turn returns to: "back to the jon",
// "and on my boat?".
func (l *line) comesBack() (card.Card, bool) {
	if len(l.before.Parked) == 0 || l.has[idNewBoat] && !l.saysText("first") {
		return card.Card{}, false
	}
	own := l.saysText("my boat") || l.saysText("mine") || l.saysText("first boat") || l.saysText("my own")
	here, _ := l.before.Get("boat.hull")
	for k := len(l.before.Parked) - 1; k >= 0; k-- {
		old := l.before.Parked[k]
		hull, known := old.Get("boat.hull")
		named := false
		if known && hull.Text != here.Text && (l.has[idBack] || l.saysText("on the") || l.saysText("for the")) {
			for i := range l.terms {
				for _, row := range wordTables[l.terms[i].id] {
					named = named || row.slot == "boat.hull" && row.text == hull.Text
				}
			}
		}
		if !named && !(own && k == 0) {
			continue
		}
		now := l.before
		now.Parked = nil
		rest := append([]card.Card(nil), l.before.Parked[:k]...)
		rest = append(rest, l.before.Parked[k+1:]...)
		old.Parked = append(rest, now)
		old.Turn, old.Metric, old.Asked = l.before.Turn, l.before.Metric, l.before.Asked
		return old, true
	}
	return card.Card{}, false
}

// A named boat is a length right before a kind of hull.
type namedBoat struct{ length, hull int } // terms

// severalBoats sets apart two boats that one line names: the one named again is
// meant, "got a 14 jon and a 19 bass boat, motor for the jon"; where none is, it
// is the first, and the speaker is told so.
func (l *line) severalBoats() {
	boats := l.namedBoats()
	if len(boats) < 2 {
		return
	}
	meant := -1
	for k, b := range boats {
		for i := boats[len(boats)-1].hull + 1; i < len(l.terms); i++ {
			if l.terms[i].id == l.terms[b.hull].id && !l.negated[i] {
				meant = k
			}
		}
	}
	asks := meant < 0
	if asks {
		meant = 0
	}
	for k, b := range boats {
		if k == meant {
			continue
		}
		l.used[l.terms[b.length].measure], l.reason[l.terms[b.length].measure] = true, "another boat"
		l.terms[b.hull].mark = asking
		l.weightBehind(b.hull)
	}
	if !asks {
		return
	}
	last := boats[len(boats)-1]
	first := l.said(l.terms[boats[0].length].start, l.terms[boats[0].hull].end)
	second := l.said(l.terms[last.length].start, l.terms[last.hull].end)
	l.problems = append(l.problems, Problem{Kind: "ambiguous", Slot: "boat.length", Said: second, Start: l.terms[last.length].start, End: l.terms[last.hull].end,
		Text: "two boats are named; this is for the " + first + ": ask for the " + second + " after it"})
}

// weightBehind sets aside the weight right behind a boat that is not meant.
func (l *line) weightBehind(hull int) {
	k := l.skipFillers(hull+1, 1)
	if k >= len(l.terms) || l.terms[k].measure < 0 {
		return
	}
	if m := l.terms[k].measure; l.r.Measures[m].Kind == read.Mass || l.r.Measures[m].Kind == read.Number {
		l.used[m], l.reason[m] = true, "another boat"
	}
}

// namedBoats finds the boats of a line, each of another kind and another length.
func (l *line) namedBoats() (found []namedBoat) {
	for i := 1; i < len(l.terms) && len(found) < 4; i++ {
		if !hulls.holds(l.terms[i].id) || l.asked(i) || l.negated[i] {
			continue
		}
		k := i - 1
		for k > 0 && (l.terms[k].filler || l.terms[k].id >= 0 && l.terms[k].id.Kind() == words.Material) {
			k--
		}
		m := l.terms[k].measure
		if m < 0 || l.used[m] || l.r.Measures[m].Value == nil || !(l.r.Measures[m].Kind == read.Length && notInches(l, m) || l.r.Measures[m].Kind == read.Number && l.r.Measures[m].Bare >= 8 && l.r.Measures[m].Bare <= 30) {
			continue
		}
		fresh := true
		for _, b := range found {
			fresh = fresh && l.terms[b.hull].id != l.terms[i].id && *l.r.Measures[l.terms[b.length].measure].Value != *l.r.Measures[m].Value
		}
		if fresh {
			found = append(found, namedBoat{k, i})
		}
	}
	return found
}
