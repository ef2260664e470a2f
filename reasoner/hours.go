package reasoner

import (
	"slices"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
	"heronlake.example/ask/reasoner/meaning"
)

// A question of hours is about some batteries, and about the batteries that are
// there or were proposed: "how long at half throttle?" buys no larger ones. So
// the throttle, speed and hours of such a question are kept apart from those of
// the day that the bank was chosen for.

// daySlots are the facts that a bank is chosen by.
var daySlots = []string{"use.throttle", "use.speed", "use.hours", "use.distance", "use.style"}

// batterySlots are the facts that tell of batteries in hand.
var batterySlots = []string{"battery.capacity", "battery.group", "battery.reserve", "battery.count", "battery.voltage"}

// sizing are the topics that choose batteries, besides those that only time them.
var sizing = []string{string(meaning.Fit), string(meaning.Bank), string(meaning.Cost), string(meaning.Weight)}

// sizes reports whether a turn is answered with batteries to buy, timing whether
// it asks for hours and for no batteries.
func sizes(topics []string) bool {
	return slices.ContainsFunc(topics, func(t string) bool { return slices.Contains(sizing, t) })
}

func timing(topics []string) bool {
	return slices.Contains(topics, string(meaning.Runtime)) && !sizes(topics)
}

// asksBank reports a wish for hours without a battery to give them, in hand or
// proposed: what such a wish asks for is the battery.
func asksBank(now state, topics []string) bool {
	if !timing(topics) || now.proposed || slices.ContainsFunc(batterySlots, func(slot string) bool { _, ok := now.card.Get(slot); return ok }) {
		return false
	}
	return slices.ContainsFunc([]string{"use.hours", "use.distance"}, func(slot string) bool { _, ok := now.card.Get(slot); return ok })
}

// dayAfter gives the facts of the day after a turn: a question of hours about
// batteries that were proposed before leaves them as they were.
func dayAfter(now state, c card.Card, changed, topics []string) card.Card {
	for _, slot := range daySlots {
		if !slices.Contains(changed, slot) || now.proposed && timing(topics) {
			continue
		}
		now.day = now.day.Without(slot)
		for _, f := range c.All(slot) {
			now.day = now.day.And(f)
		}
	}
	return now.day
}

// onBank is the card with the batteries that its hours are reckoned on, where
// none were said: those proposed for the day, or those that are usual.
func (s *Session) onBank(now state, topics []string) card.Card {
	now.card = asAsked(s.withoutUnmet(now.card), now.lead)
	c := now.card
	if len(c.Facts) == 0 || slices.ContainsFunc(batterySlots, func(slot string) bool { _, ok := c.Get(slot); return ok }) {
		return c
	}
	aside := aside(now)
	switch {
	case timing(topics) && !now.proposed:
		return usualBank(c, fit.Solve(c, []string{string(meaning.Bank)}, s.sys, nil))
	case timing(topics), len(aside.Facts) > 0:
		return withBank(c, fit.Solve(onDay(now), []string{string(meaning.Fit)}, s.sys, nil))
	}
	return c
}

// asAsked adds what the question itself tells: hours asked for while holding are
// hours of holding.
func asAsked(c card.Card, lead []string) card.Card {
	if len(c.Facts) == 0 || !slices.Contains(lead, string(meaning.Hold)) || !slices.Contains(lead, string(meaning.Runtime)) || slices.Contains(lead, string(meaning.Fit)) {
		return c // a question about no boat tells nothing, one about everything no way of fishing
	}
	for _, slot := range []string{"use.style", "use.throttle", "use.speed"} {
		if _, said := c.Get(slot); said {
			return c
		}
	}
	return c.With(card.Fact{Slot: "use.style", Text: "holding", Said: "as asked", Turn: -1})
}

// onDay is the card as it tells of the day, without what was only asked about.
func onDay(now state) card.Card {
	day := now.card.Without(daySlots...)
	for _, slot := range daySlots {
		for _, f := range now.day.All(slot) {
			day = day.And(f)
		}
	}
	return day
}

// aside holds the facts of the card that were only asked about.
func aside(now state) card.Card {
	var out card.Card
	for _, slot := range daySlots {
		if f, ok := now.card.Get(slot); ok {
			if day, said := now.day.Get(slot); !said || day.Turn != f.Turn {
				out = out.And(f)
			}
		}
	}
	return out
}

// withBank puts the batteries that a fit came to on the card, where none were
// named.
func withBank(c card.Card, f *fit.Fit) card.Card {
	for _, slot := range batterySlots {
		if _, ok := c.Get(slot); ok {
			return c
		}
	}
	if !f.Sol.Has(sheet.BatteryEach) || !f.Sol.Has(sheet.BankCount) {
		return c
	}
	each, count := f.Sol.Value(sheet.BatteryEach), f.Sol.Value(sheet.BankCount)
	c = c.With(card.Fact{Slot: "battery.capacity", Value: &each, Unit: "Ah", Said: card.Proposed})
	return c.With(card.Fact{Slot: "battery.count", Value: &count, Unit: "1", Said: card.Proposed})
}

// usualBank puts one set of batteries on the card whose size is the usual one.
func usualBank(c card.Card, f *fit.Fit) card.Card {
	if !f.Sol.Has(sheet.BankSeries) {
		return c
	}
	count := f.Sol.Value(sheet.BankSeries)
	return c.With(card.Fact{Slot: "battery.count", Value: &count, Unit: "1", Said: card.Usual})
}
