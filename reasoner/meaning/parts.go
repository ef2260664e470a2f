package meaning

import (
	"strings"

	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// partOfList accepts "hull 750, motor 250, two guys 400": the name opens a
// stretch, the number ends it, and there are further stretches like it.
func partOfList(l *line, m int) bool {
	i := l.at[m]
	if !l.endsAt(i) && l.id(i+1) != idAnd && !partNames.holds(l.id(i+1)) {
		return false
	}
	s := i
	for s > 0 && l.terms[s-1].mark == 0 && l.terms[s-1].id != idAnd && l.terms[s-1].measure < 0 && !(s < i && partNames.holds(l.terms[s].id)) {
		if s--; i-s > 3 {
			return false
		}
	}
	if l.parts == unknown {
		l.parts = no
		if l.listsParts() {
			l.parts = yes
		}
	}
	return l.parts == yes
}

// listOfWeights tells that a mass follows the name of a part, as further masses
// of the line do: "boats 1200 lb motor 250 lb gas 100 lb".
func (l *line) listOfWeights(m int) bool {
	if !partNames.holds(l.id(l.at[m] - 1)) {
		return false
	}
	others := 0
	for k := range l.r.Measures {
		if k < 64 && k != m && l.r.Measures[k].Kind == read.Mass && partNames.holds(l.id(l.at[k]-1)) {
			others++
		}
	}
	return others >= 2
}

// hullInList accepts "180 lb guy, 60 lb canoe, 30 lb gear": every weight of the
// list stands before its name.
func hullInList(l *line, m int) bool {
	if !l.endsAt(l.at[m] + 1) {
		return false
	}
	others := 0
	for k := range l.r.Measures {
		if k < 64 && k != m && l.r.Measures[k].Kind == read.Mass && weighedNames.holds(l.id(l.at[k]+1)) {
			others++
		}
	}
	return others >= 2
}

var weighedNames = of("gear", "battery", "person", "companion", "child", "outboard", "motor", "trolling motor")

// partNames are what a list of weights is made of.
var partNames = of("boat", "motor", "outboard", "gasoline", "person", "gear", "battery", "us")

// listsParts tells that the line names the hull's weight as one of several.
func (l *line) listsParts() bool {
	hullHere := false
	for k := range l.terms {
		t := &l.terms[k]
		if (t.id == idBoat || hulls.holds(t.id) && (strings.HasSuffix(t.text, " hull") || k > 0 && l.terms[k-1].mark == ',' && l.any(ofMeGear) && l.endsAt(k+1))) && k+2 < len(l.terms) && (l.terms[k+1].measure >= 0 || l.filler(k+1) && l.terms[k+2].measure >= 0) && (k == 0 || l.terms[k-1].mark != 0 || l.filler(k-1) || l.text(k-1) == "if" || l.terms[k-1].measure >= 0) {
			hullHere = true
			break
		}
	}
	weights := 0
	for k := range l.r.Measures {
		me := &l.r.Measures[k]
		if me.Kind == read.Mass || me.Kind == read.Number && lowest(me) >= 60 && !l.voltsAt(l.at[k]-1) && !l.voltsAt(l.at[k]+1) {
			weights++
		}
	}
	return hullHere && weights >= 2
}

// unlabelled are the rows that take a weight for the loaded boat's without a
// word that says so.
var unlabelled = map[string]bool{"a boat's weight, unlabelled": true, "pounds of boat": true}

// partsNotTotal takes an unlabelled weight for the empty boat when the people's,
// the gear's or the engine's weights are listed beside it.
func (l *line) partsNotTotal() {
	l.batteriesInGear()
	if dry, ok := l.fact("load.dry"); ok && dry.Row == "boat and motor together" && !l.setSlots["load.engine"] {
		l.put(card.Fact{Slot: "load.engine", Value: num(0), Unit: "kg", Said: dry.Said, Row: "weighed with the boat"})
	}
	total, ok := l.fact("load.total")
	if !ok || !unlabelled[total.Row] {
		return
	}
	if dry, both := l.fact("load.dry"); both {
		_, most := ends(quantity{total.Value, total.Low, total.High})
		if least, _ := ends(quantity{dry.Value, dry.Low, dry.High}); most < least {
			l.takeBack("load.total", "no word says whose weight it is")
		}
		return
	}
	if k := l.skipFillers(l.crewFrom-1, -1); total.Row == "pounds of boat" && l.crewTo >= 0 && k >= 0 && (l.id(k) == idAnd || l.text(k) == "and") {
		total.Slot, total.Row = "load.dry", "so many pounds of boat, people added"
		delete(l.setSlots, "load.total")
		l.setSlots["load.dry"] = true
		return
	}
	for _, part := range []string{"people.each", "load.gear", "load.engine"} {
		if l.setSlots[part] {
			total.Slot, total.Row = "load.dry", "weight beside other parts"
			delete(l.setSlots, "load.total")
			l.setSlots["load.dry"] = true
			return
		}
	}
}

// batteriesInGear notes that the gear's weight has the batteries in it: "batts n
// gear 220".
func (l *line) batteriesInGear() {
	gear, ok := l.fact("load.gear")
	if !ok {
		return
	}
	for i := range l.terms {
		if l.id(i) != idGear {
			continue
		}
		k := i - 1
		for k >= 0 && k >= i-2 && (l.id(k) == idAnd || l.text(k) == "and" || l.terms[k].filler) {
			k--
		}
		joined := k < i-1 && k >= 0 && batteryWords.holds(l.id(k)) && l.terms[i-1].measure < 0
		after := (l.id(i+1) == idAnd || l.text(i+1) == "and") && batteryWords.holds(l.id(i+2))
		if joined || after {
			l.put(card.Fact{Slot: "load.batteries", Text: "in-gear", Said: gear.Said, Row: "batteries weighed with the gear"})
			return
		}
	}
}

// takeBack frees a slot that a measure had taken on too little evidence, and
// lets the measure be reported.
func (l *line) takeBack(slot, why string) {
	for i := range l.facts {
		if l.facts[i].Slot != slot {
			continue
		}
		for m := range l.r.Measures {
			if l.r.Measures[m].Said == l.facts[i].Said && l.used[m] && l.reason[m] == "" {
				l.reason[m] = why
				break
			}
		}
		l.facts = append(l.facts[:i], l.facts[i+1:]...)
		delete(l.setSlots, slot)
		return
	}
}
