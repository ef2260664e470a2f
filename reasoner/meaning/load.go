package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// weightCues tells whose weight a weight is. A mass may also name a thrust: the
// rows for that stand in motor.go.
var weightCues = []cue{
	{name: "weight, loaded", slot: "load.total", kind: read.Mass, bare: "lb", low: 40, high: 15000, after: of("loaded"), reachA: 2, weight: 9, never: of("thrust", "each"), when: onWater},
	{name: "loaded, weight", slot: "load.total", kind: read.Mass, bare: "lb", low: 60, high: 15000, before: of("loaded"), reachB: 3, weight: 8, never: of("thrust", "dry", "gear"), when: onWater},
	{name: "with people and gear it is", slot: "load.total", kind: read.Mass, bare: "lb", low: 60, high: 15000, before: of("gear"), reachB: 0, weight: 9, when: withCrewAndGear},
	{name: "weight with people in it", slot: "load.total", kind: read.Mass, bare: "lb", low: 60, high: 15000, alone: true, weight: 8, when: withPeople},
	{name: "weight, dry", slot: "load.dry", kind: read.Mass, bare: "lb", low: 15, high: 12000, after: of("dry"), reachA: 3, weight: 9, when: not(plural)},
	{name: "dry, weight", slot: "load.dry", kind: read.Mass, bare: "lb", low: 15, high: 12000, before: of("dry"), reachB: 3, weight: 8, never: of("loaded")},
	{name: "boat and motor together", slot: "load.dry", kind: read.Mass, bare: "lb", low: 60, high: 12000, before: of("boat and motor"), reachB: 2, after: of("boat and motor"), reachA: 1, weight: 8},
	{name: "hull, weight, in a list of parts", slot: "load.dry", kind: read.Mass, bare: "lb", low: 25, high: 12000, before: of("boat").with(hulls), reachB: 0, weight: 7, when: partOfList},
	{name: "weight of a hull", slot: "load.dry", kind: read.Mass, low: 15, high: 12000, after: of("boat"), reachA: 0, weight: 5, when: saysHull},
	{name: "so many pounds of hull, in a list of parts", slot: "load.dry", kind: read.Mass, low: 8, high: 12000, after: of("boat").with(hulls), reachA: 0, weight: 10, when: hullInList},
	{name: "hull is so much", slot: "load.dry", kind: read.Mass, bare: "lb", low: 25, high: 12000, before: of("boat"), reachB: 0, weight: 7, when: hullIs},
	{name: "motor heavier than a rating", slot: "load.engine", kind: read.Mass, low: 75, high: 450, before: of("motor"), reachB: 0, weight: 9, when: endsStretch},
	{name: "motor, weight, in a list of parts", slot: "load.engine", kind: read.Mass, bare: "lb", low: 15, high: 900, before: of("motor", "outboard"), reachB: 0, weight: 9, when: partOfList},
	{name: "the boat weighs", slot: "load.dry", kind: read.Mass, bare: "lb", low: 15, high: 12000, before: of("weighs"), reachB: 1, weight: 5, when: boatWeighs},
	{name: "the boat itself", slot: "load.dry", kind: read.Mass, bare: "lb", low: 15, high: 12000, before: of("boat").with(hulls), reachB: 1, weight: 8, when: itself},
	{name: "a motor's weight under a plate", slot: "", kind: read.Mass, low: 5, high: 59, after: of("motor", "trolling motor"), reachA: 1, weight: 10, when: plateTalk},
	{name: "an engine's weight under a plate", slot: "load.engine", kind: read.Mass, low: 59, high: 450, after: of("motor"), reachA: 0, weight: 9, when: plateTalk},
	{name: "the boat is a weight", slot: "load.dry", kind: read.Mass, low: 15, high: 12000, before: of("boat").with(hulls), reachB: 0, weight: 4, when: isWeight},
	{name: "pounds of boat", slot: "load.total", kind: read.Mass, low: 15, high: 12000, after: boatWords, reachA: 0, weight: 3, when: heavierThanAMotor},
	{name: "a light hull, so long and so heavy", slot: "load.dry", kind: read.Mass, low: 10, high: 60, alone: true, weight: 3, when: lightHull},
	{name: "weight with people, then the number", slot: "load.total", kind: read.Mass, bare: "lb", low: 90, high: 15000, before: of("weighs"), reachB: 4, weight: 7, when: weighedWithCrew},
	{name: "thrust for so much", slot: "load.total", kind: read.Mass, bare: "lb", low: 180, high: 4500, alone: true, weight: 3, when: thrustFor},
	{name: "about so much, with a boat", slot: "load.total", kind: read.Mass, bare: "lb", low: 90, high: 4500, alone: true, weight: 2, when: aboutBare},
	{name: "a boat's weight, unlabelled", slot: "load.total", kind: read.Mass, low: 64, high: 12000, alone: true, weight: 2, when: boatAlone},

	{name: "capacity plate, weight", slot: "load.plate", kind: read.Mass, bare: "lb", low: 80, high: 8000, before: of("capacity plate"), reachB: 7, after: of("capacity plate"), reachA: 2, weight: 9, never: of("loaded")},
	{name: "rated persons, weight", slot: "load.plate", kind: read.Mass, bare: "lb", low: 80, high: 4000, alone: true, weight: 9, when: ratedPersons},
	{name: "persons, motors and gear", slot: "load.plate", kind: read.Mass, low: 80, high: 8000, after: of("persons motors gear"), reachA: 1, weight: 10},
	{name: "weight of gear", slot: "load.gear", kind: read.Mass, bare: "lb", low: 2, high: 2000, after: of("gear"), reachA: 1, weight: 8, never: of("loaded", "per hundred"), when: not(withMe)},
	{name: "so much more", slot: "load.gear", kind: read.Mass, bare: "lb", low: 2, high: 2000, before: of("add"), reachB: 0, weight: 4, when: moreWeight},
	{name: "gear, weight", slot: "load.gear", kind: read.Mass, bare: "lb", low: 2, high: 2000, before: of("gear"), reachB: 2, weight: 7, never: of("loaded", "dry"), when: notTheTotal},
	{name: "gear and batteries, weight", slot: "load.gear", kind: read.Mass, bare: "lb", low: 5, high: 900, before: batteryWords, reachB: 0, weight: 9, when: gearBefore},
	{name: "outboard, weight", slot: "load.engine", kind: read.Mass, bare: "lb", low: 10, high: 900, before: of("outboard", "horsepower"), reachB: 2, weight: 9, never: of("loaded", "dry", "gear")},
	{name: "weight of outboard", slot: "load.engine", kind: read.Mass, low: 10, high: 900, after: of("outboard"), reachA: 0, weight: 8},
	{name: "motor, weight, for the plate", slot: "load.engine", kind: read.Mass, bare: "lb", low: 25, high: 900, before: of("motor"), reachB: 0, weight: 6, when: plateTalked},
	{name: "people weigh together", slot: "people.each", kind: read.Mass, bare: "lb", low: 60, high: 2000, alone: true, weight: 10, when: weighTogether},
	{name: "people together", slot: "people.each", kind: read.Mass, bare: "lb", low: 60, high: 2000, before: of("person", "us", "both of us", "child"), reachB: 3, weight: 9, when: together},
	{name: "pounds of people", slot: "people.each", kind: read.Mass, low: 60, high: 2000, after: of("person", "us"), reachA: 0, weight: 11, when: ofPeople},
	{name: "so much, all of us", slot: "people.each", kind: read.Mass, bare: "lb", low: 60, high: 2000, after: of("us", "both of us", "person"), reachA: 2, weight: 10, when: allOfThem},
	{name: "engine: power, weight", slot: "load.engine", kind: read.Mass, low: 10, high: 450, alone: true, weight: 7, when: engineSentence},
	{name: "engine number that weighs", slot: "load.engine", kind: read.Mass, bare: "lb", low: 10, high: 900, before: of("weighs"), reachB: 0, weight: 8, when: engineWeighs},

	{name: "the 40 weighs so much", slot: "load.engine", kind: read.Mass, bare: "lb", low: 10, high: 450, before: of("weighs"), reachB: 0, weight: 9, when: numberWeighs},

	{name: "weight each", slot: "people.each", kind: read.Mass, bare: "lb", low: 20, high: 230, after: of("each"), reachA: 1, weight: 9, when: eachPerson},
	{name: "average weight", slot: "people.each", kind: read.Mass, bare: "lb", low: 20, high: 230, before: of("each"), reachB: 0, weight: 8, when: peopleTalk},
	{name: "people at a weight", slot: "people.each", kind: read.Mass, bare: "lb", low: 20, high: 2000, before: of("person", "us", "both of us", "child"), reachB: 0, weight: 8, never: of("loaded", "dry", "gear", "thrust"), when: eachOrGroup},
	{name: "so many at a weight", slot: "people.each", kind: read.Mass, bare: "lb", low: 40, high: 170, alone: true, weight: 8, never: of("loaded", "dry", "gear", "thrust"), when: behindCrew},
	{name: "people who weigh", slot: "people.each", kind: read.Mass, bare: "lb", low: 20, high: 230, before: of("weighs", "me"), reachB: 0, weight: 7, when: personWeighs},
	{name: "me, weight", slot: "people.each", kind: read.Mass, bare: "lb", low: 40, high: 170, before: of("me"), reachB: 0, weight: 9, when: meAtWeight},
	{name: "alone, at a weight", slot: "people.each", kind: read.Mass, bare: "lb", low: 36, high: 170, before: of("alone"), reachB: 0, weight: 8, never: of("loaded", "dry", "gear", "thrust"), when: aloneAt},
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

// withCrewAndGear accepts "boat 4 m, with two persons and equipment is 410 kg":
// the weight is said of all of it.
func withCrewAndGear(l *line, m int) bool {
	i := l.at[m]
	said, crew := false, false
	for k := i - 1; k >= 0 && k >= i-9; k-- {
		switch {
		case l.terms[k].mark == '.' || l.terms[k].mark == '?':
			return false
		case l.text(k) == "is" || l.text(k) == "its" || l.id(k) == idWeighs || l.text(k) == "comes":
			said = true
		case aboard.holds(l.id(k)):
			crew = true
		case l.id(k) == idWith:
			return said && crew && (l.any(boatWords) || l.hasKind(read.Length))
		}
	}
	return false
}

var aboard = of("me", "us", "person", "companion", "child", "both of us", "alone")

// withMe tells "310 lb, that is me aboard and the gear": the gear is part of a total.
func withMe(l *line, m int) bool { return l.id(l.at[m]+1) == idWith || l.id(l.at[m]+1) == idAnd }

// boatWeighs accepts "weighs 1650" when the words before speak of no person,
// battery, motor or engine.
func boatWeighs(l *line, m int) bool {
	if i := l.at[m]; l.text(i-2) == "it" && l.id(i-1) == words.Of("weighs") && l.knows("boat.hull") && !l.anyOf("outboard", "motor", "battery", "trolling motor") {
		return true // "i weigh 210 and it weighs 75"
	}
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

// plateTalk leaves out the capacity of a battery.
func plateTalk(l *line, m int) bool {
	if !l.any(ofPlate) && !l.knows("load.plate") && !(l.anyText("rated") && l.any(ofPersons)) {
		return false
	}
	return !l.hasKind(read.Voltage) && !l.hasKind(read.Charge) && (l.any(ofPersons) || l.anyOf("gear", "add", "outboard"))
}

// plateTalked tells that a capacity plate is named, or was.
func plateTalked(l *line, m int) bool {
	return (l.any(ofPlate) || l.knows("load.plate")) && !l.hasKind(read.Voltage) && !l.hasKind(read.Charge)
}

// plural tells that a number was said as several: "100s".
func plural(l *line, m int) bool { return l.r.Measures[m].Kind == read.Number && l.saidPlural(m) }

// thrustFor accepts "thrust for 3,000".
func thrustFor(l *line, m int) bool {
	i := l.at[m]
	return l.text(i-1) == "for" && l.has.holds(idThrust) && l.r.Measures[m].Kind == read.Number && (l.endsAt(i) || l.id(i+1) == idWith || l.text(i+1) == "in" || l.id(i+1) == idAnd)
}

// lightHull accepts "my kayak is 12 ft and 80 lb".
func lightHull(l *line, m int) bool {
	i := l.at[m]
	if !l.anyOf("kayak", "canoe") || l.negated[i] || i < 3 || l.id(i-1) != idAnd && l.text(i-1) != "and" || l.terms[i-2].measure < 0 {
		return false
	}
	return l.r.Measures[l.terms[i-2].measure].Kind == read.Length
}

// weighedWithCrew accepts "weight with 2 anglers 1700".
func weighedWithCrew(l *line, m int) bool {
	crew := false
	for k := l.at[m] - 1; k >= 0 && k >= l.at[m]-6 && l.terms[k].mark == 0; k-- {
		crew = crew || aboard.holds(l.id(k))
		if l.id(k) == idWith {
			return crew && l.id(k-1) == idWeighs
		}
	}
	return false
}

// itself accepts "boat itself 250".
func itself(l *line, m int) bool { return l.text(l.at[m]-1) == "itself" }

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

// numberWeighs accepts "the 40 weighs 220": an engine named by its power.
func numberWeighs(l *line, m int) bool {
	k := l.at[m] - 2
	if k > 0 && l.terms[k].text == "that" {
		k--
	}
	if k < 1 || l.terms[k].measure < 0 || !(l.terms[k-1].measure >= 0 && l.r.Measures[l.terms[k-1].measure].As == "strokes" || l.text(k-1) == "stroke" || l.articleBefore(k) || l.text(k-1) == "my" || l.text(k-1) == "our") {
		return false
	}
	n := l.terms[k].measure
	if me := &l.r.Measures[n]; me.Kind != read.Number || me.Value == nil || me.Bare > 450 {
		return false
	}
	l.used[n], l.reason[n] = true, "an engine's horsepower"
	return true
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
		if i := l.at[m]; l.crewTo >= 0 && i == l.crewTo+1 && l.text(i+1) == "total" && l.anyOf("dry") {
			return true // "not counting us the boat's 900, three of us 570 total"
		}
		return l.setSlots["people.count"] && l.subject(m, ofPersons) && l.subject(m, ofWeighs)
	}
	return false
}

// allOfThem accepts "about 300 lb all of us", "350 between the two of us".
func allOfThem(l *line, m int) bool {
	i := l.at[m] + 1
	switch l.text(i) {
	case "all", "between", "for":
	default:
		return false
	}
	return l.setSlots["people.count"] && (l.text(i+1) == "of" || l.text(i+1) == "the" || l.text(i+1) == "all" || l.id(i+1) == idUs || l.id(i+1) == idBoth) && !l.near2(i, ofLoaded)
}

// ofPeople accepts "400 lb of people".
func ofPeople(l *line, m int) bool {
	i := l.at[m]
	return l.text(i+1) == "of" && l.setSlots["people.count"]
}

// near2 tells that an entry of the set stands within two words behind a term.
func (l *line) near2(i int, s set) bool {
	_, _, ok := l.near(i, 1, s, 2)
	return ok
}

var ofLoaded = of("loaded")

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

// ratedPersons accepts "rated 4 persons 600 lb".
func ratedPersons(l *line, m int) bool {
	for k := l.at[m] - 1; k >= 1 && k >= l.at[m]-4; k-- {
		if l.id(k) == idPerson && l.terms[k-1].measure >= 0 && (l.text(k-2) == "rated" || l.text(k-2) == "for" && l.text(k-3) == "rated") {
			return true
		}
	}
	return false
}

// notTheTotal leaves out "total with us, dogs and decoys 1,250".
func notTheTotal(l *line, m int) bool { return l.labelFirst(l.at[m]) != idLoaded }

// gearBefore accepts "gear and batts 260".
func gearBefore(l *line, m int) bool {
	i := l.at[m]
	return i >= 3 && (l.id(i-2) == idAnd || l.text(i-2) == "and") && l.id(i-3) == words.Of("gear") && l.endsAt(i)
}

// hullIs accepts "hull is 1,700" as a whole stretch.
func hullIs(l *line, m int) bool {
	i := l.at[m]
	if !l.endsAt(i) {
		return false
	}
	k := l.skipFillers(i-1, -1)
	return k >= 0 && l.text(k) == "hull" && (k == 0 || l.terms[k-1].mark != 0 || l.filler(k-1))
}

func endsStretch(l *line, m int) bool { return l.endsAt(l.at[m]) && !l.anyOf("thrust") }

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

var weighedNames = of("gear", "battery", "person", "companion", "child", "outboard", "motor", "trolling motor")

// partNames are what a list of weights is made of.
var partNames = of("boat", "motor", "outboard", "gasoline", "person", "gear", "battery", "us")

// listsParts tells that the line names the hull's weight as one of several.
func (l *line) listsParts() bool {
	hullHere := false
	for k := range l.terms {
		t := &l.terms[k]
		if (t.id == idBoat || hulls.holds(t.id) && strings.HasSuffix(t.text, " hull")) && k+2 < len(l.terms) && (l.terms[k+1].measure >= 0 || l.filler(k+1) && l.terms[k+2].measure >= 0) && (k == 0 || l.terms[k-1].mark != 0 || l.filler(k-1) || l.text(k-1) == "if" || l.terms[k-1].measure >= 0) {
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
	return (l.text(s) == "im" || l.id(s) == idMe && l.text(s+1) == "am") && i-s <= 5 && (l.r.Measures[m].Kind == read.Mass || i-s == 1 || l.endsAt(i) && (i-s == 3 && l.terms[i-2].measure >= 0 || i-s == 2 && l.terms[i-1].measure >= 0))
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
	if l.hasKind(read.Voltage) || lowest(&l.r.Measures[m]) < 60 && !l.any(ofPersons) {
		return false // "an 80 pounder at 24 volts" is a motor
	}
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

// behindCrew accepts "3 at 220" and "were 4, 185 average": the weight follows the
// people counted.
func behindCrew(l *line, m int) bool {
	i := l.at[m]
	return l.crewTo >= 0 && (i == l.crewTo+2 && l.text(i-1) == "at")
}

// aloneAt accepts "me alone 85 kg", "just me at 230"; a number by itself is a
// weight only behind "at" or where the stretch ends.
func aloneAt(l *line, m int) bool {
	i := l.at[m]
	if l.r.Measures[m].Kind == read.Number {
		return l.text(i-1) == "at" || l.endsAt(i) && l.r.Measures[m].Bare >= 100
	}
	return l.endsAt(i) || l.text(i-1) == "at" || l.id(i+1) == idAnd
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
