package meaning

import (
	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
)

var idNewBoat = words.Of("new boat")

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
	if l.has[idNewBoat] && described {
		return true
	}
	for i := range l.terms {
		t := &l.terms[i]
		if t.possessive && (t.id == idPerson || t.id == idCompanion || t.id == idChild) && described {
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
