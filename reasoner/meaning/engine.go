package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// wattsPerHorsepower is the mechanical horsepower, 550 ft lbf/s (NIST Special
// Publication 811, appendix B).
const wattsPerHorsepower = 745.69987

// power notes what the main engine of the boat delivers: its weight follows from
// it where nobody says better. The power on a plate is what the boat may carry.
func (l *line) power() {
	boat := l.setSlots["boat.length"] || l.setSlots["boat.hull"] || l.setSlots["load.dry"] || l.knows("boat.length") || l.knows("boat.hull") || l.knows("load.dry")
	if !boat || l.any(ofPlate) || l.knows("load.plate") {
		return
	}
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if m >= 64 || me.As != "horsepower" && l.reason[m] != "an engine's horsepower" || me.Value == nil || l.id(l.at[m]-1) == idNo || l.negated[l.at[m]] {
			continue
		}
		w := *me.Value
		if me.Kind == read.Number {
			w *= wattsPerHorsepower
		}
		if w < wattsPerHorsepower || w > 500*wattsPerHorsepower {
			continue
		}
		l.put(card.Fact{Slot: "engine.power", Value: num(w), Unit: "W", Said: l.said(me.Start, me.End), Row: "the main engine's power"})
		return
	}
}

// noEngine notes that the boat has no main engine, so that none is assumed: "no
// outboard", and "no motor" where no weight is told without it.
func (l *line) noEngine() {
	if !l.setSlots["boat.length"] && !l.setSlots["boat.hull"] && !l.knows("boat.length") && !l.knows("boat.hull") || l.setSlots["engine.power"] || l.setSlots["load.engine"] || l.knows("load.engine") {
		return
	}
	for i := range l.terms {
		t := &l.terms[i]
		without := t.id == idOutboard && l.negated[i] && l.id(i-1) == idNo
		if t.text == "no motor" && t.id == idDry {
			dry, weighed := l.fact("load.dry")
			without = l.endsAt(i) && (!weighed || dry.Row != "dry, weight" && dry.Row != "weight, dry")
		}
		if without || noEngineWords[t.text] {
			l.put(card.Fact{Slot: "engine.power", Value: num(0), Unit: "W", Said: l.said(l.terms[max(i-1, 0)].start, t.end), Row: "no main engine"})
			return
		}
	}
}

// noEngineWords are boats and ways of going that have none.
var noEngineWords = map[string]bool{"rowboat": true, "row boat": true, "rowing boat": true, "rowed": true, "oars": true, "paddled": true}

// namedEngine takes a number that found no place, and behind which a word stands
// that is in no table, for the horsepower of an outboard called by its name: "19
// foot bass, 150 such-and-such".
func (l *line) namedEngine() {
	if !l.setSlots["boat.length"] && !l.setSlots["boat.hull"] && !l.knows("boat.length") || l.setSlots["engine.power"] || l.any(ofPlate) {
		return
	}
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if m >= 64 || l.used[m] || me.As != "" || me.Kind != read.Number || me.Value == nil || !outboards[*me.Value] {
			continue
		}
		i := l.at[m]
		w := l.text(i + 1)
		if l.id(i+1) != words.None || i+1 >= len(l.terms) || l.terms[i+1].filler || len(w) < 3 || len(w) > 12 || w[len(w)-1] == 's' || words.Common(w) || afterRatingWords[w] || asksWords[w] || plainWords[w] || differs[w] || !l.endsAt(i+1) && l.id(i+2) != idOutboard && l.id(i+2) != idAnd && l.id(i+2) != idWith {
			continue
		}
		if i > 0 && l.terms[i-1].mark == 0 && !l.terms[i-1].filler && l.id(i-1) != idWith && l.id(i-1) != idAnd && !hulls.holds(l.id(i-1)) && l.text(i-1) != "has" && l.text(i-1) != "got" {
			continue
		}
		l.used[m], l.reason[m] = true, "an engine's horsepower"
		l.put(card.Fact{Slot: "engine.power", Value: num(*me.Value * wattsPerHorsepower), Unit: "W", Said: l.said(me.Start, l.terms[i+1].end), Row: "the main engine, by its name"})
		return
	}
}

// outboards are the powers, in horsepower, that outboards are commonly sold at:
// common practice, no published source.
var outboards = map[float64]bool{2.5: true, 3.5: true, 4: true, 5: true, 6: true, 7.5: true, 8: true, 9.9: true, 10: true, 15: true, 20: true, 25: true, 30: true, 35: true, 40: true, 50: true, 60: true, 70: true, 75: true, 80: true, 85: true, 90: true, 100: true, 115: true, 125: true, 135: true, 140: true, 150: true, 175: true, 200: true, 225: true, 250: true, 300: true}

// hungOnIt accepts "with the forty on it", "the 40 on the back": the outboard, by its
// power.
func hungOnIt(l *line, m int) bool {
	if boatWithOutboard(l, m) {
		return true
	}
	me, i := &l.r.Measures[m], l.at[m]
	if me.Kind != read.Number || me.Value == nil || !outboards[*me.Value] || !l.articleBefore(i) && l.text(i-1) != "my" || l.any(batteryNamed) {
		return false
	}
	if k := i - 3; l.id(i-2) == idWith && k >= 0 && l.terms[k].measure >= 0 && l.r.Measures[l.terms[k].measure].Kind != read.Voltage && lowest(&l.r.Measures[l.terms[k].measure]) > 150 {
		return true // "1,150 with the 50"
	}
	switch l.text(i + 1) {
	case "on the back", "off the back":
		return true
	case "on":
		return l.text(i+2) == "it" || l.text(i+2) == "her" || l.id(i+2) == idTransom
	}
	return l.id(i+1) == idTransom && strings.HasPrefix(l.text(i+1), "on")
}

// outboardHulls are boats that are driven by an outboard and sold with one.
var outboardHulls = of("bass boat", "bay boat", "flats boat", "vee", "deep-vee", "pontoon", "center console", "fiberglass")

// boatWithOutboard accepts "17 ft bass boat with a 150": behind a boat, a number at
// which outboards are sold and no electric motor is. A number at which both are is
// left to the other rules.
func boatWithOutboard(l *line, m int) bool {
	me, i := &l.r.Measures[m], l.at[m]
	if me.Kind != read.Number || me.Value == nil || !outboards[*me.Value] || !l.articleBefore(i) || i < 3 || l.id(i-2) != idWith {
		return false
	}
	if l.any(batteryNamed) || l.hasKind(read.Voltage) || l.anyOf("thrust") || l.id(i+1) == idMotor || l.id(i+1) == idTrollingMotor {
		return false
	}
	before := l.terms[i-3]
	if !hulls.holds(before.id) && (before.measure < 0 || l.r.Measures[before.measure].Kind != read.Length) && l.text(i-3) != "boat" {
		return false
	}
	switch v := *me.Value; {
	case v >= 125:
		return true
	case v == 75, v == 90, v == 115:
		return l.any(outboardHulls)
	}
	return false
}

// articleNumber accepts "the outboard is a 60".
func articleNumber(l *line, m int) bool {
	return l.articleBefore(l.at[m]) && l.r.Measures[m].Kind == read.Number && lowest(&l.r.Measures[m]) <= 400
}

// makesSpeed tells that a number is the engine that drives the boat at a speed no
// electric does: "42 mph with the 150".
func (l *line) makesSpeed(m int) bool {
	i := l.at[m]
	for k := i - 1; k >= 0 && k >= i-4; k-- {
		if x := l.terms[k].measure; x >= 0 {
			return l.r.Measures[x].Kind == read.Speed && lowest(&l.r.Measures[x]) > 5.5 && !l.any(windWords)
		}
	}
	return false
}
