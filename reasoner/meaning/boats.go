package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
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
