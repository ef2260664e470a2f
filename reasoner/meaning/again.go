package meaning

import (
	"strings"

	"heronlake.example/ask/reasoner/card"
)

// wantedAgain reads "ok he wants it again" and "no, not after all" of the wish that
// the turn before stated or refused.
func (l *line) wantedAgain() {
	if len(l.terms) > 8 || len(l.r.Measures) > 0 || l.asksMark || l.any(ofPersons) {
		return
	}
	var last card.Fact
	for _, f := range l.before.Facts {
		if strings.HasPrefix(f.Slot, "want.") && f.Turn == l.before.Turn {
			last = f
		}
	}
	if last.Slot == "" || l.setSlots[last.Slot] || !l.anyText("it", "that", "one") && !l.saysText("after all") {
		return
	}
	switch denied := l.anyText("not", "dont", "doesnt", "no", "skip", "nah"); {
	case last.Text == "false" && !denied && (l.has[idBack] || l.saysText("after all")):
		last.Text = "true"
	case last.Text == "true" && denied && l.saysText("after all"):
		last.Text = "false"
	default:
		return
	}
	last.Said, last.Row = l.said(0, len(l.r.Text)), "a wish taken up again"
	l.put(last)
}

// controlInstead puts a remote in the place of a pedal or a tiller that was wished
// for: "no, make it a remote instead".
func (l *line) controlInstead() {
	f, ok := l.fact("want.remote")
	if !ok || f.Text != "true" || l.setSlots["motor.control"] || !l.knows("motor.control") || !l.anyText("instead", "instead of", "rather") && !l.has[idActually] {
		return
	}
	l.put(card.Fact{Slot: "motor.control", Text: "remote", Said: f.Said, Row: "a remote instead"})
}
