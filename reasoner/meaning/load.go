package meaning

import (
	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// weightCues tells whose weight a weight is. A mass may also name a thrust: the
// rows for that stand in motor.go.
var weightCues = []cue{
	{name: "weight, loaded", slot: "load.total", kind: read.Mass, bare: "lb", low: 40, high: 15000, after: of("loaded"), reachA: 2, weight: 9, never: of("thrust", "each"), when: onWater},
	{name: "loaded, weight", slot: "load.total", kind: read.Mass, bare: "lb", low: 60, high: 15000, before: of("loaded"), reachB: 3, weight: 8, never: of("thrust", "dry", "gear"), when: onWater},
	{name: "weight with people in it", slot: "load.total", kind: read.Mass, bare: "lb", low: 60, high: 15000, alone: true, weight: 8, when: withPeople},
	{name: "weight, dry", slot: "load.dry", kind: read.Mass, bare: "lb", low: 15, high: 12000, after: of("dry"), reachA: 3, weight: 9},
	{name: "dry, weight", slot: "load.dry", kind: read.Mass, bare: "lb", low: 15, high: 12000, before: of("dry"), reachB: 3, weight: 8, never: of("loaded")},
	{name: "boat and motor together", slot: "load.dry", kind: read.Mass, bare: "lb", low: 60, high: 12000, before: of("boat and motor"), reachB: 2, after: of("boat and motor"), reachA: 1, weight: 8},
	{name: "hull, weight, in a list of parts", slot: "load.dry", kind: read.Mass, bare: "lb", low: 25, high: 12000, before: of("boat"), reachB: 0, weight: 7, when: partOfList},
	{name: "weight of a hull", slot: "load.dry", kind: read.Mass, low: 15, high: 12000, after: of("boat"), reachA: 0, weight: 5, when: saysHull},
	{name: "motor, weight, in a list of parts", slot: "load.engine", kind: read.Mass, bare: "lb", low: 15, high: 900, before: of("motor", "outboard"), reachB: 0, weight: 9, when: partOfList},
	{name: "the boat weighs", slot: "load.dry", kind: read.Mass, bare: "lb", low: 15, high: 12000, before: of("weighs"), reachB: 1, weight: 5, when: boatWeighs},
	{name: "the boat is a weight", slot: "load.dry", kind: read.Mass, low: 15, high: 12000, before: of("boat").with(hulls), reachB: 0, weight: 4, when: isWeight},
	{name: "pounds of boat", slot: "load.total", kind: read.Mass, low: 15, high: 12000, after: boatWords, reachA: 0, weight: 3, when: heavierThanAMotor},
	{name: "about so much, with a boat", slot: "load.total", kind: read.Mass, bare: "lb", low: 90, high: 4500, alone: true, weight: 2, when: aboutBare},
	{name: "a boat's weight, unlabelled", slot: "load.total", kind: read.Mass, low: 64, high: 12000, alone: true, weight: 2, when: boatAlone},

	{name: "capacity plate, weight", slot: "load.plate", kind: read.Mass, bare: "lb", low: 80, high: 8000, before: of("capacity plate"), reachB: 7, after: of("capacity plate"), reachA: 2, weight: 9, never: of("loaded")},
	{name: "persons, motors and gear", slot: "load.plate", kind: read.Mass, low: 80, high: 8000, after: of("persons motors gear"), reachA: 1, weight: 10},
	{name: "weight of gear", slot: "load.gear", kind: read.Mass, bare: "lb", low: 2, high: 2000, after: of("gear"), reachA: 1, weight: 8, never: of("loaded", "per hundred"), when: not(withMe)},
	{name: "so much more", slot: "load.gear", kind: read.Mass, bare: "lb", low: 2, high: 2000, before: of("add"), reachB: 0, weight: 4, when: moreWeight},
	{name: "gear, weight", slot: "load.gear", kind: read.Mass, bare: "lb", low: 2, high: 2000, before: of("gear"), reachB: 2, weight: 7, never: of("loaded", "dry")},
	{name: "outboard, weight", slot: "load.engine", kind: read.Mass, bare: "lb", low: 10, high: 900, before: of("outboard", "horsepower"), reachB: 2, weight: 9, never: of("loaded", "dry", "gear")},
	{name: "weight of outboard", slot: "load.engine", kind: read.Mass, low: 10, high: 900, after: of("outboard"), reachA: 0, weight: 8},
	{name: "motor, weight, for the plate", slot: "load.engine", kind: read.Mass, bare: "lb", low: 25, high: 900, before: of("motor"), reachB: 0, weight: 6, need: of("capacity plate")},
	{name: "people weigh together", slot: "people.each", kind: read.Mass, bare: "lb", low: 60, high: 2000, alone: true, weight: 10, when: weighTogether},
	{name: "people together", slot: "people.each", kind: read.Mass, bare: "lb", low: 60, high: 2000, before: of("person", "us", "both of us", "child"), reachB: 3, weight: 9, when: together},
	{name: "engine: power, weight", slot: "load.engine", kind: read.Mass, low: 10, high: 450, alone: true, weight: 7, when: engineSentence},
	{name: "engine number that weighs", slot: "load.engine", kind: read.Mass, bare: "lb", low: 10, high: 900, before: of("weighs"), reachB: 0, weight: 8, when: engineWeighs},

	{name: "weight each", slot: "people.each", kind: read.Mass, bare: "lb", low: 20, high: 230, after: of("each"), reachA: 1, weight: 9, when: eachPerson},
	{name: "average weight", slot: "people.each", kind: read.Mass, bare: "lb", low: 20, high: 230, before: of("each"), reachB: 0, weight: 8, when: peopleTalk},
	{name: "people at a weight", slot: "people.each", kind: read.Mass, bare: "lb", low: 20, high: 2000, before: of("person", "us", "both of us", "child"), reachB: 0, weight: 8, never: of("loaded", "dry", "gear", "thrust"), when: eachOrGroup},
	{name: "people who weigh", slot: "people.each", kind: read.Mass, bare: "lb", low: 20, high: 230, before: of("weighs", "me"), reachB: 0, weight: 7, when: personWeighs},
	{name: "me, weight", slot: "people.each", kind: read.Mass, bare: "lb", low: 40, high: 170, before: of("me"), reachB: 0, weight: 9, when: meAtWeight},
	{name: "weighs so much himself", slot: "people.each", kind: read.Mass, bare: "lb", low: 30, high: 230, after: of("me"), reachA: 0, weight: 8, when: selfWeighs},
	{name: "i am a weight", slot: "people.each", kind: read.Mass, bare: "lb", low: 30, high: 230, alone: true, weight: 6, when: iAm},
	{name: "weight, then people", slot: "people.each", kind: read.Mass, low: 30, high: 230, after: of("person"), reachA: 0, weight: 8, never: of("loaded")},

	{name: "a 300 pounder", slot: "people.each", kind: read.Mass, low: 30, high: 230, alone: true, weight: 8, when: pounder},

	{name: "a battery's weight", slot: "", kind: read.Mass, bare: "", after: of("battery", "bank"), reachA: 0, weight: 8},
	{name: "batteries weigh", slot: "", kind: read.Mass, bare: "lb", before: of("battery", "bank", "lithium", "agm"), reachB: 3, weight: 7, when: saysWeighs},
	{name: "a trolling motor's own weight", slot: "", kind: read.Mass, bare: "lb", before: of("trolling motor"), reachB: 1, weight: 8, when: saysWeighs},
	{name: "a fish, a line or a trailer", slot: "", kind: read.Mass, after: of("fish kind", "fishing line", "trailer", "anchor", "dog", "hand weight"), reachA: 1, before: of("trailer", "anchor", "dog"), reachB: 1, weight: 9},
}

// maxPersonEach is the heaviest that one person is taken to be, in kg.
const maxPersonEach = 145

func not(f func(*line, int) bool) func(*line, int) bool {
	return func(l *line, m int) bool { return !f(l, m) }
}

// battery tells that a mass belongs to batteries: "55 lb of batteries".
func battery(l *line, m int) bool {
	_, _, after := l.near(l.at[m], 1, batteryWords, 0)
	return after && l.id(l.at[m]+1) != words.None && !l.terms[l.at[m]].filler
}

// eachPerson accepts a weight each where people are talked of and batteries are
// not what weighs.
func eachPerson(l *line, m int) bool {
	return !battery(l, m) && !l.subject(m, batteryWords) && (l.any(ofPersons) || l.anyOf("me") || l.knows("people.count"))
}

// aboutBare accepts "12 ft jon, around 550": a number without a unit that is
// said to be rough, at the end of a stretch, beside a boat.
func aboutBare(l *line, m int) bool {
	me := &l.r.Measures[m]
	if _, _, hull := l.near(l.at[m], -1, hulls, 1); hull && me.Kind == read.Number && me.Bare >= 600 && l.endsAt(l.at[m]) && !l.anyOf("battery", "budget", "miles") {
		return true // "20 ft bay boat 3,000"
	}
	return me.Kind == read.Number && me.About && me.Bare >= 200 && l.endsAt(l.at[m]) && (l.any(hulls) || l.hasKind(read.Length)) && !l.anyOf("battery", "budget", "miles")
}

// boatAlone leaves out batteries and the persons' weight on a plate.
func boatAlone(l *line, m int) bool {
	i := l.at[m]
	return !battery(l, m) && !(l.text(i-1) == "or" && l.id(i-2) == idPerson)
}

var batteryWords = of("battery", "bank")

// withPeople accepts "1,050 lb w me and wife": a weight, "with", and persons.
func withPeople(l *line, m int) bool {
	i := l.at[m] + 1
	if l.terms[l.at[m]].measure < 0 || !(l.id(i) == idWith || l.text(i) == "including" || l.text(i) == "incl" || l.text(i) == "counting") {
		return false
	}
	for k := i + 1; k < i+6 && k < len(l.terms); k++ {
		t := &l.terms[k]
		if aboard.holds(t.id) {
			return true
		}
		if t.mark != 0 || t.id == idHorsepower || t.id == idOutboard || t.id == idDry {
			return false
		}
	}
	return false
}

var aboard = of("me", "us", "person", "companion", "child", "both of us", "alone")

// withMe tells "340 lb with me in it and gear": the gear is part of a total.
func withMe(l *line, m int) bool { return l.id(l.at[m]+1) == idWith || l.id(l.at[m]+1) == idAnd }

// boatWeighs accepts "weighs 1650" when the words before speak of no person,
// battery, motor or engine.
func boatWeighs(l *line, m int) bool {
	return !l.heOrShe(m) && !l.subject(m, notTheBoat) && !engineWeighs(l, m)
}

// subject looks for one of the set in the stretch before a measure.
func (l *line) subject(m int, s set) bool {
	for i := l.at[m] - 1; i >= 0 && i >= l.at[m]-6; i-- {
		if l.terms[i].mark != 0 {
			return false
		}
		if s.holds(l.terms[i].id) {
			return true
		}
	}
	return false
}

func isWeight(l *line, m int) bool {
	w := l.text(l.at[m] - 1)
	return w == "is" || w == "itself" || w == "weighs"
}

// heavierThanAMotor keeps the thrust of a motor from being a boat's weight.
func heavierThanAMotor(l *line, m int) bool {
	me := &l.r.Measures[m]
	return me.Spoken == "kg" || lowest(me) > 59
}

// engineWeighs accepts "9.9 that weighs 85": a horsepower or an outboard is what
// weighs.
func engineWeighs(l *line, m int) bool {
	if s := l.segment(l.at[m]); l.id(s) == idWeighs && s > 1 {
		for k := s - 2; k >= 0 && k >= s-6 && l.terms[k].mark != '.'; k-- {
			if ofOutboardHorsepower.holds(l.terms[k].id) {
				return true // "the outboard is a 60, weighs 250"
			}
		}
	}
	return l.subject(m, ofOutboardHorsepower) || l.subject(m, ofMotor) && !l.subject(m, ofTrollingMotor)
}

// peopleTalk tells that people are named in the line or known.
func peopleTalk(l *line, m int) bool { return l.any(ofPersons) || l.knows("people.count") }

// moreWeight accepts "add 300" to a load that stands.
func moreWeight(l *line, m int) bool {
	return (l.knows("load.total") || l.knows("load.said")) && l.endsAt(l.at[m])
}

// engineSentence accepts "Engine: 90 hp, 360 lb."
func engineSentence(l *line, m int) bool {
	i := l.at[m]
	s := l.sentence(i)
	return l.id(s) == idOutboard && l.terms[s].measure < 0 && i-s <= 5 && l.endsAt(i)
}

// eachOrGroup accepts a weight right behind the people. Whether it is each
// person's or all of theirs together is settled in people.go.
func eachOrGroup(l *line, m int) bool {
	me := &l.r.Measures[m]
	if me.Value == nil && (me.Low == nil || me.High == nil) {
		return false
	}
	_, hi := ends(l.convert(me, bareIf(me, "lb")))
	if hi <= maxPersonEach {
		return true
	}
	count, known := l.fact("people.count")
	return known && count.Value != nil && hi / *count.Value <= maxPersonEach
}

// onWater leaves out batteries, and what stands on a trailer.
func onWater(l *line, m int) bool { return !battery(l, m) && !l.subject(m, ofTrailer) }

// weighTogether accepts "the two of us weigh 330 total".
func weighTogether(l *line, m int) bool {
	switch l.text(l.at[m] + 1) {
	case "total", "together", "combined", "altogether", "between":
		return l.setSlots["people.count"] && l.subject(m, ofPersons) && l.subject(m, ofWeighs)
	}
	return false
}

// together accepts "three of us total 600", "the two of us go 390".
func together(l *line, m int) bool {
	for k := l.at[m] - 1; k >= 0 && k >= l.at[m]-3; k-- {
		switch l.text(k) {
		case "total", "together", "combined", "go", "totaling", "totalling", "altogether":
			return l.setSlots["people.count"]
		}
		if l.terms[k].mark != 0 {
			return false
		}
	}
	return false
}

var (
	ofPersons = of("person", "us", "companion", "child", "both of us")
	ofUs      = of("us")
	ofTrailer = of("trailer")
)

// partOfList accepts "hull 750, motor 250, two guys 400": the name opens a
// stretch, the number ends it, and there are further stretches like it.
func partOfList(l *line, m int) bool {
	i := l.at[m]
	if !l.endsAt(i) && l.id(i+1) != idAnd {
		return false
	}
	s := i
	for s > 0 && l.terms[s-1].mark == 0 && l.terms[s-1].id != idAnd {
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

// listsParts tells that the line names the hull's weight as one of several.
func (l *line) listsParts() bool {
	hullHere := false
	for k := range l.terms {
		t := &l.terms[k]
		if t.id == idBoat && k+2 < len(l.terms) && (l.terms[k+1].measure >= 0 || l.filler(k+1) && l.terms[k+2].measure >= 0) && (k == 0 || l.terms[k-1].mark != 0 || l.filler(k-1)) {
			hullHere = true
			break
		}
	}
	weights := 0
	for k := range l.r.Measures {
		me := &l.r.Measures[k]
		if me.Kind == read.Mass || me.Kind == read.Number && lowest(me) >= 60 {
			weights++
		}
	}
	return hullHere && weights >= 2
}

// saysHull accepts "2200 lb hull".
func saysHull(l *line, m int) bool { return l.text(l.at[m]+1) == "hull" }

// iAm accepts "im 220", "im 5 foot 10 and 220 lbs".
func iAm(l *line, m int) bool {
	i := l.at[m]
	s := l.segment(i)
	return (l.text(s) == "im" || l.id(s) == idMe && l.text(s+1) == "am") && i-s <= 5 && (l.r.Measures[m].Kind == read.Mass || i-s == 1 || l.endsAt(i) && i-s == 3 && l.terms[i-2].measure >= 0)
}

// segment is the first term of the stretch between pauses in which a term
// stands.
func (l *line) segment(i int) int {
	for n := 0; n < 40 && i > 0 && l.terms[i-1].mark == 0; n++ {
		i--
	}
	return i
}

// bareIf gives the unit for a measure that has none.
func bareIf(me *read.Measure, unit string) string {
	if me.Kind == read.Number {
		return unit
	}
	return ""
}

// selfWeighs accepts "weighs 145 herself".
func selfWeighs(l *line, m int) bool {
	switch l.text(l.at[m] + 1) {
	case "myself", "himself", "herself":
		return true
	}
	return false
}

// pounder accepts "a 300 pounder".
func pounder(l *line, m int) bool {
	return containsWord(lowerASCII(l.r.Measures[m].Said), "pounder") || l.text(l.at[m]+1) == "pounder"
}

// heOrShe tells that a person is the subject before a measure.
func (l *line) heOrShe(m int) bool {
	for i := l.at[m] - 1; i >= 0 && i >= l.at[m]-4; i-- {
		switch l.text(i) {
		case "he", "she", "hes", "shes":
			return true
		}
		if l.terms[i].mark != 0 || l.terms[i].measure >= 0 {
			return false
		}
	}
	return false
}

// meAtWeight accepts "me 190" where parts are listed.
func meAtWeight(l *line, m int) bool { return l.text(l.at[m]-1) == "me" }

func personWeighs(l *line, m int) bool {
	i := l.at[m]
	if l.text(i-1) == "im" || l.id(i-1) == idWeighs && (l.text(i-2) == "i" || l.id(i-2) == idMe) {
		return true
	}
	if l.heOrShe(m) && l.subject(m, ofWeighs) {
		return true
	}
	return l.subject(m, ofPersons) && l.subject(m, ofWeighs) && (l.setSlots["people.count"] || !l.subject(m, ofUs))
}

func saysWeighs(l *line, m int) bool { return l.subject(m, ofWeighs) || l.text(l.at[m]-1) == "is" }

// Entries that the conditions above look for.
var (
	notTheBoat           = of("outboard", "horsepower", "battery", "bank", "person", "me", "us", "companion", "trolling motor", "gear", "dog", "trailer", "motor", "lithium", "agm")
	ofMotor              = of("motor")
	ofOutboardHorsepower = of("outboard", "horsepower")
	ofTrollingMotor      = of("trolling motor")
	ofWeighs             = of("weighs")
)

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
	for _, part := range []string{"people.each", "load.gear", "load.engine"} {
		if l.setSlots[part] {
			total.Slot, total.Row = "load.dry", "weight beside other parts"
			delete(l.setSlots, "load.total")
			l.setSlots["load.dry"] = true
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
