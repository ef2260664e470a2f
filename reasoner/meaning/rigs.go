package meaning

import (
	"strings"

	"heronlake.example/ask/reasoner/card"
)

// rigSlots are the facts of a motor and its bank.
var rigSlots = []string{"motor.thrust", "motor.voltage", "motor.current", "motor.drive", "motor.speeds",
	"battery.count", "battery.capacity", "battery.chemistry", "battery.group", "battery.voltage", "battery.layout", "battery.reserve"}

// mostRigs is how many motors a conversation keeps aside.
const mostRigs = 6

// replacedRig keeps a motor that a turn replaces, with its volts and as much of its
// bank as that turn changed.
func (l *line) replacedRig(before, c card.Card) card.Card {
	was, had := before.Get("motor.thrust")
	now, still := c.Get("motor.thrust")
	if !had || !still || was.Value == nil || now.Value == nil || near(*was.Value, *now.Value) {
		return replacedBank(before, c)
	}
	var rig []card.Fact
	for _, s := range rigSlots {
		old := before.All(s)
		if s == "motor.thrust" || s == "motor.voltage" || s == "battery.count" || !sameFacts(old, c.All(s)) {
			rig = append(rig, old...)
		}
	}
	rigs := make([][]card.Fact, 0, len(before.Rigs)+1)
	for _, r := range before.Rigs {
		if t, ok := rigFact(r, "motor.thrust"); ok && t.Value != nil && !near(*t.Value, *was.Value) {
			rigs = append(rigs, r)
		}
	}
	if rigs = append(rigs, rig); len(rigs) > mostRigs {
		rigs = rigs[1:]
	}
	c.Rigs = rigs
	return c
}

// replacedBank keeps batteries that a turn replaces by those of another kind, with
// as much of them as it changed.
func replacedBank(before, c card.Card) card.Card {
	was, had := before.Get("battery.chemistry")
	now, still := c.Get("battery.chemistry")
	if !had || !still || was.Text == now.Text {
		return c
	}
	bank := []card.Fact{was}
	for _, s := range rigSlots[6:] {
		if old := before.All(s); s != "battery.chemistry" && !sameFacts(old, c.All(s)) {
			if len(old) == 0 {
				old = []card.Fact{{Slot: s}} // nobody had said it: it goes again
			}
			bank = append(bank, old...)
		}
	}
	rigs := make([][]card.Fact, 0, len(before.Rigs)+1)
	for _, r := range before.Rigs {
		if old, ok := rigFact(r, "battery.chemistry"); !ok || old.Text != was.Text || r[0].Slot != "battery.chemistry" {
			rigs = append(rigs, r)
		}
	}
	if rigs = append(rigs, bank); len(rigs) > mostRigs {
		rigs = rigs[1:]
	}
	c.Rigs = rigs
	return c
}

// staleBattery takes off the amp-hours of batteries that a turn supposes to be of
// another case size: they would count, and the size would not.
func (l *line) staleBattery() {
	if !l.setSlots["battery.chemistry"] && !l.has[idWhatIf] && !l.anyText("instead") {
		return
	}
	if l.setSlots["battery.group"] && !l.setSlots["battery.capacity"] && l.knows("battery.capacity") {
		l.drops = append(l.drops, "battery.capacity", "battery.reserve")
	}
}

// rigBack gives a motor that is named again its volts and its bank back: "no, stay
// with the 55", "the 36 volt one then", "go back to the old one".
func (l *line) rigBack(before, c card.Card) card.Card {
	if len(before.Rigs) == 0 {
		return c
	}
	rig := l.rigNamed(before)
	if rig == nil {
		return c
	}
	for _, s := range rigSlots {
		if l.setSlots[s] && s != "motor.thrust" {
			continue
		}
		first := true
		for _, f := range rig {
			if f.Slot != s {
				continue
			}
			if f.Value == nil && f.Low == nil && f.High == nil && f.Text == "" {
				c = c.Without(s)
				continue
			}
			f.Turn, f.Row = before.Turn+1, "as it was with the motor named again"
			if first {
				c, first = c.With(f), false
			} else {
				c = c.And(f)
			}
		}
	}
	return c
}

// rigNamed is the motor kept aside that the turn returns to, nil for none.
func (l *line) rigNamed(before card.Card) []card.Fact {
	if now, ok := l.fact("motor.thrust"); ok {
		for k := len(before.Rigs) - 1; k >= 0; k-- {
			if t, ok := rigFact(before.Rigs[k], "motor.thrust"); ok && now.Value != nil && t.Value != nil && near(*now.Value, *t.Value) {
				if v, said := l.fact("motor.voltage"); said && !sameVolts(before.Rigs[k], *v) {
					return nil
				}
				return before.Rigs[k]
			}
		}
		return nil
	}
	if volts, ok := l.fact("motor.voltage"); ok && (l.corrects() || l.has[idBack] || l.saysText("the one") || strings.Contains(l.lower(), "volt one")) {
		for k := len(before.Rigs) - 1; k >= 0; k-- {
			if sameVolts(before.Rigs[k], *volts) {
				return before.Rigs[k]
			}
		}
		return nil
	}
	if kind, ok := l.fact("battery.chemistry"); ok && (l.has[idBack] || l.corrects()) {
		for k := len(before.Rigs) - 1; k >= 0; k-- {
			if r := before.Rigs[k]; r[0].Slot == "battery.chemistry" && r[0].Text == kind.Text {
				return r
			}
		}
		return nil
	}
	return l.rigByWord(before)
}

func sameVolts(rig []card.Fact, f card.Fact) bool {
	v, ok := rigFact(rig, "motor.voltage")
	return ok && v.Value != nil && f.Value != nil && near(*v.Value, *f.Value)
}

// rigByWord finds "the old one", "the smaller motor" where the turn says no number.
func (l *line) rigByWord(before card.Card) []card.Fact {
	now, ok := before.Get("motor.thrust")
	if len(l.facts) > 0 || len(l.terms) > 9 || !ok || now.Value == nil {
		return nil
	}
	for i := range l.terms {
		if w := l.text(i + 1); w != "one" && w != "motor" && !(i+1 < len(l.terms) && l.terms[i+1].measure >= 0 && lowerASCII(l.r.Measures[l.terms[i+1].measure].Said) == "one") {
			continue
		}
		for k := len(before.Rigs) - 1; k >= 0; k-- {
			t, ok := rigFact(before.Rigs[k], "motor.thrust")
			if !ok || t.Value == nil {
				continue
			}
			switch l.text(i) {
			case "other", "old", "last", "previous":
				return before.Rigs[k]
			case "first", "original":
				return before.Rigs[0]
			case "smaller", "weaker", "lesser", "little", "small":
				if *t.Value < *now.Value {
					return before.Rigs[k]
				}
			case "bigger", "larger", "stronger", "big", "large":
				if *t.Value > *now.Value {
					return before.Rigs[k]
				}
			}
		}
	}
	return nil
}

func rigFact(rig []card.Fact, slot string) (card.Fact, bool) {
	for _, f := range rig {
		if f.Slot == slot {
			return f, true
		}
	}
	return card.Fact{}, false
}
