package meaning

import (
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// apply puts the facts of the turn on the card.
func (l *line) apply(before card.Card) (card.Card, []string) {
	c := before
	c.Metric = c.Metric || l.metric
	if l.units != nil && l.units.factor != "kn" { // knots go with either system
		c.Metric = l.units.metric
	}
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
	c = l.motorBack(before, c)
	c = l.rigBack(before, c)
	c = l.replacedRig(before, c)
	c = l.addCrew(c)
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
	if old2 := l.insteadOf(); !counted && old2 > 0 {
		old = card.Fact{Value: num(old2)}
		counted = true
	}
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

// motorBack keeps a motor that is replaced, rating and volts, aside, and gives it its
// volts back when its rating is named again: "no, stay with the 55".
func (l *line) motorBack(before, c card.Card) card.Card {
	now, ok := l.fact("motor.thrust")
	old, had := before.Get("motor.thrust")
	volts, wired := before.Get("motor.voltage")
	if !ok || !had || now.Value == nil || old.Value == nil {
		return c
	}
	if last, kept := before.Get("motor.other"); kept && !l.setSlots["motor.voltage"] && near(*last.Value, *now.Value) && last.Low != nil {
		volts.Slot, volts.Value, volts.Unit, volts.Text, volts.Said, volts.Row, volts.Turn = "motor.voltage", last.Low, "V", "", last.Said, "the volts of the motor named again", before.Turn+1
		c = c.With(volts)
	}
	if wired && l.setSlots["motor.voltage"] && volts.Value != nil && !near(*old.Value, *now.Value) {
		return c.With(card.Fact{Slot: "motor.other", Value: old.Value, Low: volts.Value, Unit: "N", Said: volts.Said, Row: "the motor before", Turn: before.Turn + 1})
	}
	return c
}

func near(a, b float64) bool { return a > b*0.995 && a < b*1.005 }
