package meaning

import (
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// fillSayings tell that a battery is to be full again; they need a battery in
// the line, for tanks and livewells are filled as well.
var fillSayings = []string{"to fill", "till full", "til full", "until full", "to full", "back to full", "full again", "fill it", "fill them", "fill up", "refill", "top it off", "top them off", "bring back", "bring up", "back up from"}

var batteryNamed = of("battery", "bank", "amp hour", "group size", "deep cycle").with(chemistries)

// charging tells that the line is of filling a battery, not of running on it: "a
// charge" is what a trip is made on.
func (l *line) charging() bool {
	if l.fills == unknown {
		l.fills = no
		if l.fillsBattery() {
			l.fills = yes
		}
	}
	return l.fills == yes
}

func (l *line) fillsBattery() bool {
	for i := range l.terms {
		switch l.terms[i].id {
		case idBetweenTrips:
			return true
		case idCharge:
			if l.text(i) != "charge" || !chargeNoun[l.text(i-1)] {
				return true
			}
		}
	}
	if !l.any(batteryNamed) && !l.hasKind(read.Charge) && !l.hasKind(read.Group) {
		return false
	}
	for _, s := range fillSayings {
		if l.saysText(s) {
			return true
		}
	}
	return (l.anyText("bring") || l.anyText("fill")) && l.hasKind(read.Current)
}

// chargeNoun are words before "charge" that make it what a trip is made on.
var chargeNoun = map[string]bool{"a": true, "one": true, "per": true, "each": true, "single": true, "full": true, "every": true, "the": true, "of": true, "between": true, "this": true, "that": true}

// chargesOnly accepts the one current of a line that speaks of charging and of no
// motor: "how long to fill it at 15 amps".
func chargesOnly(l *line, m int) bool {
	if !l.charging() || l.anyOf("motor", "trolling motor", "throttle", "wire", "breaker", "pulls") || l.anyOf("full throttle") && !l.anyText("full on") {
		return false
	}
	for i := range l.r.Measures {
		if i != m && l.r.Measures[i].Kind == read.Current {
			return false
		}
	}
	return true
}

// leftRows are words for what is left in a battery that is to be charged.
var leftRows = []struct {
	text string
	left float64
}{{"flat", 0}, {"dead", 0}, {"empty", 0}, {"from empty", 0}, {"completely dead", 0}, {"dead flat", 0}, {"drained", 0}, {"discharged", 0}, {"depleted", 0}, {"zero", 0}, {"half dead", 0.5}, {"half empty", 0.5}, {"half down", 0.5}, {"half discharged", 0.5}, {"half used", 0.5}, {"half drained", 0.5}}

// chargeLeft notes how much is left in the battery that a charger is to fill, where
// it is told.
func (l *line) chargeLeft() {
	if !l.charging() && !l.anyOf("charger") && !l.askedLast(Charger) && !l.setSlots["charger.current"] {
		return
	}
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if l.reason[m] == "a share that is no throttle" && me.Kind == read.Percent && me.Value != nil && *me.Value < 100 {
			left := *me.Value / 100
			switch w, b := l.text(l.at[m]+1), l.text(l.at[m]-1); {
			case w == "down", w == "used", w == "gone", w == "discharged", w == "dead", w == "empty", w == "depleted", b == "drawn down", b == "run down", b == "pulled down", b == "taken down", b == "discharged":
				left = 1 - left
			}
			l.reason[m] = ""
			l.putLeft(left, l.said(me.Start, me.End))
			return
		}
	}
	for i := range l.terms {
		for _, row := range leftRows {
			if l.terms[i].text == row.text && !l.negated[i] && (i == 0 || l.terms[i-1].text != "wet") {
				l.putLeft(row.left, l.said(l.terms[i].start, l.terms[i].end))
				return
			}
		}
	}
}

func (l *line) putLeft(left float64, said string) {
	l.put(card.Fact{Slot: "battery.charge-left", Value: num(left), Unit: "1", Said: said, Row: "what is left in the battery"})
}

// notATime leaves out how long a fault has lasted: "on red for two days".
func notATime(l *line, m int) bool {
	switch l.r.Measures[m].Spoken {
	case "d", "day", "days", "wk", "week", "mo", "month", "yr", "year":
		return l.text(l.at[m]-1) == "in" || l.text(l.at[m]-1) == "within"
	}
	return true
}

// overnight accepts the words for a night in which a battery is charged.
func overnight(l *line, at int) bool {
	switch l.text(at) {
	case "overnight", "over night", "till morning", "until morning", "til morning", "by morning", "before morning", "before sunrise":
		return l.any(batteryNamed) || l.anyOf("charger", "charge") || l.hasKind(read.Charge) || l.askedLast(Charger)
	}
	return false
}

// coldCharging accepts "can i charge lithium at 25 F": a question of whether, not
// of which charger.
func coldCharging(l *line) bool {
	return l.charging() && l.mayAsk() && (l.setSlots["temperature.air"] || l.anyOf("freezing", "cold weather") || l.anyText("shed", "unheated", "outside")) &&
		!l.hasKind(read.Charge) && !l.hasKind(read.Current) && !l.setSlots["charge.hours"]
}

// mayAsk tells that the line asks whether a thing may be done.
func (l *line) mayAsk() bool {
	switch l.text(0) {
	case "can", "may", "could", "should", "is", "ok", "okay", "will", "does", "safe":
		return true
	}
	return l.saysText("is it ok") || l.saysText("is it safe") || l.saysText("can i")
}

// chargerLast accepts "10 amps" where a charger was asked about.
func chargerLast(l *line, m int) bool { return l.askedLast(Charger) && len(l.terms) <= 6 }

// perBank accepts "10 amp per bank".
func perBank(l *line, m int) bool {
	i := l.at[m]
	if l.text(i-1) == "bank" && l.smallNumber(i-2) > 0 {
		return true // "2 bank 10 amp"
	}
	if l.smallNumber(i+1) > 0 && l.id(i+2) == idBank && (l.id(i+3) == idCharger || l.endsAt(i+2)) {
		return true // "15 amp 2 bank charger"
	}
	return (l.text(i+1) == "per" || l.text(i+1) == "a" || l.text(i+1) == "each") && (l.id(i+2) == idBank || l.id(i+2) == idBattery)
}

func chargerHours(l *line, m int) bool { return chargerTalk(l, m) && notATime(l, m) }

// chargerTalk accepts hours where a charger is asked for.
func chargerTalk(l *line, m int) bool {
	if l.anyOf("charger") {
		return !l.anyOf("throttle", "trolling", "full throttle", "all day")
	}
	if l.anyOf("half down") && l.any(batteryNamed) && !l.anyOf("throttle", "trolling", "full throttle", "all day", "motor", "trolling motor") && !l.hasKind(read.Percent) {
		return true // "one agm, half dead, 7 hours, what amps"
	}
	return l.askedLast(Charger)
}
