package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/read"
)

// weightCues tells whose weight a weight is. A mass may also name a thrust: the
// rows for that stand in motor.go.
var weightCues = []cue{
	{name: "weight, loaded", slot: "load.total", kind: read.Mass, bare: "lb", low: 40, high: 15000, after: of("loaded"), reachA: 2, weight: 9, never: of("thrust", "each", "budget"), when: onWater},
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
	{name: "fuel, weight, in a list of parts", slot: "load.fuel", kind: read.Mass, bare: "lb", low: 5, high: 2000, before: of("gasoline"), reachB: 0, weight: 9, when: partOfList},
	{name: "the boat weighs", slot: "load.dry", kind: read.Mass, bare: "lb", low: 15, high: 12000, before: of("weighs"), reachB: 1, weight: 5, when: boatWeighs},
	{name: "the boat itself", slot: "load.dry", kind: read.Mass, bare: "lb", low: 15, high: 12000, before: of("boat").with(hulls), reachB: 2, weight: 10, when: itself},
	{name: "a motor's weight under a plate", slot: "", kind: read.Mass, low: 5, high: 59, after: of("motor", "trolling motor"), reachA: 1, weight: 10, when: plateTalk},
	{name: "an engine's weight under a plate", slot: "load.engine", kind: read.Mass, low: 59, high: 450, after: of("motor"), reachA: 0, weight: 9, when: plateTalk},
	{name: "the boat is a weight", slot: "load.dry", kind: read.Mass, low: 15, high: 12000, before: of("boat").with(hulls), reachB: 0, weight: 4, when: isWeight},
	{name: "pounds of boat", slot: "load.total", kind: read.Mass, low: 15, high: 12000, after: boatWords, reachA: 0, weight: 3, when: heavierThanAMotor},
	{name: "so many pounds of light hull, among people's", slot: "load.dry", kind: read.Mass, low: 8, high: 60, after: of("kayak", "canoe"), reachA: 0, weight: 9, when: besidePeople},
	{name: "so many thousand of boat", slot: "load.total", kind: read.Mass, bare: "lb", low: 350, high: 6000, after: hulls.with(of("boat")), reachA: 0, weight: 6, when: inThousands},
	{name: "a light hull's weight, among parts", slot: "load.dry", kind: read.Mass, low: 8, high: 60, before: of("kayak", "canoe"), reachB: 1, weight: 6, when: lightAmongParts},
	{name: "a light hull, so long and so heavy", slot: "load.dry", kind: read.Mass, low: 10, high: 60, alone: true, weight: 3, when: lightHull},
	{name: "weight with people, then the number", slot: "load.total", kind: read.Mass, bare: "lb", low: 90, high: 15000, before: of("weighs"), reachB: 4, weight: 7, when: weighedWithCrew},
	{name: "thrust for so much", slot: "load.total", kind: read.Mass, bare: "lb", low: 180, high: 4500, alone: true, weight: 3, when: thrustFor},
	{name: "about so much, with a boat", slot: "load.total", kind: read.Mass, bare: "lb", low: 90, high: 4500, alone: true, weight: 2, when: aboutBare},
	{name: "a boat's weight, unlabelled", slot: "load.total", kind: read.Mass, low: 64, high: 20000, alone: true, weight: 2, when: boatAlone},

	{name: "capacity plate, weight", slot: "load.plate", kind: read.Mass, bare: "lb", low: 80, high: 8000, before: of("capacity plate"), reachB: 7, after: of("capacity plate"), reachA: 2, weight: 9, never: of("loaded")},
	{name: "rated for so much", slot: "load.plate", kind: read.Mass, low: 80, high: 8000, alone: true, weight: 9, when: ratedSoMuch},
	{name: "rated persons, weight", slot: "load.plate", kind: read.Mass, bare: "lb", low: 80, high: 4000, alone: true, weight: 9, when: ratedPersons},
	{name: "persons' weight on a plate", slot: "", kind: read.Mass, bare: "lb", before: of("person"), reachB: 0, weight: 11, when: platePersons},
	{name: "persons, motors and gear", slot: "load.plate", kind: read.Mass, low: 80, high: 8000, after: of("persons motors gear"), reachA: 1, weight: 10},
	{name: "weight of gear", slot: "load.gear", kind: read.Mass, bare: "lb", low: 2, high: 2000, after: of("gear"), reachA: 1, weight: 8, never: of("loaded", "per hundred"), when: not(withMe)},
	{name: "so much more", slot: "load.gear", kind: read.Mass, bare: "lb", low: 2, high: 2000, before: of("add"), reachB: 0, weight: 4, when: moreWeight},
	{name: "gear, weight", slot: "load.gear", kind: read.Mass, bare: "lb", low: 2, high: 2000, before: of("gear"), reachB: 2, weight: 7, never: of("loaded", "dry"), when: notTheTotal},
	{name: "gear and batteries, weight", slot: "load.gear", kind: read.Mass, bare: "lb", low: 5, high: 900, before: batteryWords, reachB: 0, weight: 9, when: gearBefore},
	{name: "outboard, weight", slot: "load.engine", kind: read.Mass, bare: "lb", low: 10, high: 900, before: of("outboard", "horsepower"), reachB: 2, weight: 9, never: of("loaded", "dry", "gear")},
	{name: "weight of outboard", slot: "load.engine", kind: read.Mass, low: 10, high: 900, after: of("outboard"), reachA: 0, weight: 8},
	{name: "so much of motor, for the plate", slot: "load.engine", kind: read.Mass, bare: "lb", low: 25, high: 900, after: of("motor", "outboard"), reachA: 0, weight: 10, when: ofMotorForPlate},
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
	{name: "me, weight", slot: "people.each", kind: read.Mass, low: 36, high: 170, after: of("me"), reachA: 0, weight: 9, when: ofMe},
	{name: "weighs so much himself", slot: "people.each", kind: read.Mass, bare: "lb", low: 30, high: 230, after: of("me"), reachA: 0, weight: 8, when: selfWeighs},
	{name: "i am a weight", slot: "people.each", kind: read.Mass, bare: "lb", low: 30, high: 230, alone: true, weight: 6, when: iAm},
	{name: "weight, then people", slot: "people.each", kind: read.Mass, low: 30, high: 230, after: of("person"), reachA: 0, weight: 8, never: of("loaded")},

	{name: "a 300 pounder", slot: "people.each", kind: read.Mass, low: 30, high: 230, alone: true, weight: 8, when: pounder},

	{name: "a battery's weight", slot: "", kind: read.Mass, bare: "", after: of("battery", "bank"), reachA: 0, weight: 8},
	{name: "batteries weigh", slot: "", kind: read.Mass, bare: "lb", before: of("battery", "bank", "lithium", "agm"), reachB: 3, weight: 7, when: saysWeighs},
	{name: "a trolling motor's own weight", slot: "", kind: read.Mass, bare: "lb", before: of("trolling motor"), reachB: 1, weight: 8, when: saysWeighs},
	{name: "a trailer's weight", slot: "", kind: read.Mass, bare: "lb", before: of("trailer"), reachB: 1, weight: 10},
	{name: "a fish, a line or a trailer", slot: "", kind: read.Mass, when: notAnchoring, after: of("fish kind", "fishing line", "trailer", "anchor", "dog", "hand weight"), reachA: 1, before: of("trailer", "anchor", "dog"), reachB: 1, weight: 9},
}

func not(f func(*line, int) bool) func(*line, int) bool {
	return func(l *line, m int) bool { return !f(l, m) }
}

// battery tells that a mass belongs to batteries: "55 lb of batteries".
func battery(l *line, m int) bool {
	_, _, after := l.near(l.at[m], 1, batteryWords, 0)
	return after && l.id(l.at[m]+1) != words.None && !l.terms[l.at[m]].filler
}

// aboutBare accepts "12 ft jon, around 550": a number without a unit that is
// said to be rough, at the end of a stretch, beside a boat.
func aboutBare(l *line, m int) bool {
	me := &l.r.Measures[m]
	if _, _, hull := l.near(l.at[m], -1, hulls, 1); hull && me.Kind == read.Number && me.Bare >= 600 && (l.endsAt(l.at[m]) || l.text(l.at[m]-1) == "at" || askingWords.holds(l.id(l.at[m]+1))) && !l.anyOf("battery", "budget", "miles") {
		return true // "20 ft bay boat 3,000"
	}
	return me.Kind == read.Number && me.About && me.Bare >= 200 && l.endsAt(l.at[m]) && (l.any(hulls) || l.hasKind(read.Length)) && !l.anyOf("battery", "budget", "miles")
}

// boatAlone leaves out batteries and the persons' weight on a plate.
func boatAlone(l *line, m int) bool {
	i := l.at[m]
	if l.heOrShe(m) || l.text(i-1) == "is" && i > 1 && l.terms[i-2].measure >= 0 && l.r.Measures[l.terms[i-2].measure].Said == "one" && l.crewTo >= 0 {
		return false // "he's a big unit at 120 kilos", "2 guys, one is 120 kilos"
	}
	if l.text(i+1) == "up" && l.text(i+2) == "there" || l.text(i+1) == "up front" || l.text(i+1) == "on" && (l.id(i+2) == idBow || l.id(i+3) == idBow || l.id(i+2) == idDeck || l.id(i+3) == idDeck) {
		return false // a weight that is put on the bow
	}
	return !battery(l, m) && !(l.text(i-1) == "or" && l.id(i-2) == idPerson)
}

var batteryWords = of("battery", "bank")

// withPeople accepts "1,050 lb w me and wife": a weight, "with", and persons.
func withPeople(l *line, m int) bool {
	i := l.at[m] + 1
	if aboard.holds(l.id(i)) && (l.id(i+1) == idAnd || l.text(i+1) == "and") && l.id(l.skipFillers(i+2, 1)) == idGear && l.boatsWeight(m) {
		return true // "780 lb me plus tackle"
	}
	if l.terms[l.at[m]].measure < 0 || !(l.id(i) == idWith || l.text(i) == "including" || l.text(i) == "incl" || l.text(i) == "counting") {
		return false
	}
	for k := i + 1; k < i+6 && k < len(l.terms); k++ {
		t := &l.terms[k]
		if aboard.holds(t.id) {
			return true
		}
		if (t.id == idGear || t.id == idDog || t.id == idGasoline || t.text == "tanks" || t.text == "ice" || t.text == "water") && l.boatsWeight(m) {
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

// boatsWeight tells that a weight is a boat's rather than a part's: a boat is
// described, the weight is large, and no part is named before it.
func (l *line) boatsWeight(m int) bool {
	me := &l.r.Measures[m]
	if *l.convert(me, bareIf(me, "lb")).value < 130 || !l.any(boatWords) && !l.hasKind(read.Length) {
		return false
	}
	k := l.skipFillers(l.at[m]-1, -1)
	return k < 0 || l.terms[k].mark != 0 || boatWords.holds(l.id(k)) || l.terms[k].measure >= 0
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

// ofMotorForPlate accepts "180 of motor" under a plate.
func ofMotorForPlate(l *line, m int) bool { return l.text(l.at[m]+1) == "of" && plateTalked(l, m) }

// plural tells that a number was said as several: "100s".
func plural(l *line, m int) bool { return l.r.Measures[m].Kind == read.Number && l.saidPlural(m) }

// thrustFor accepts "thrust for 3,000".
func thrustFor(l *line, m int) bool {
	i := l.at[m]
	return l.text(i-1) == "for" && l.has.holds(idThrust) && l.r.Measures[m].Kind == read.Number && (l.endsAt(i) || l.id(i+1) == idWith || l.text(i+1) == "in" || l.id(i+1) == idAnd)
}

// besidePeople accepts "80 lb canoe 380 lb of men": other weights are the people's.
func besidePeople(l *line, m int) bool {
	if !l.setSlots["people.count"] && !l.any(ofMeGear) && !l.any(ofPersons) && !l.anyText("im") || l.anyOf("thrust", "motor", "trolling motor") {
		return false
	}
	for k := range l.r.Measures {
		if k < 32 && k != m && l.r.Measures[k].Kind == read.Mass {
			return true
		}
	}
	return false
}

// notAnchoring leaves out "can 70 lb anchor a boat": the word is a verb.
func notAnchoring(l *line, m int) bool {
	i := l.at[m]
	return !(l.text(i+1) == "anchor" && l.questionish() && ratings[l.r.Measures[m].Bare] && i+2 < len(l.terms) && l.terms[i+2].mark == 0 && (l.terms[i+2].measure >= 0 || l.terms[i+2].filler || boatWords.holds(l.id(i+2))))
}

// inThousands accepts "a 3k pontoon".
func inThousands(l *line, m int) bool {
	me := &l.r.Measures[m]
	return me.Kind == read.Number && me.Bare >= 900 && strings.HasSuffix(lowerASCII(me.Said), "k")
}

// lightAmongParts accepts "kayak 75 lb, me 180": the hull's weight beside that of
// people or gear, where no motor is talked of.
func lightAmongParts(l *line, m int) bool {
	return l.endsAt(l.at[m]) && (l.setSlots["people.each"] || l.setSlots["load.gear"] || l.any(ofMeGear) || l.hasKind(read.Length) && l.terms[max(l.at[m]-1, 0)].measure >= 0) && !l.anyOf("thrust", "motor", "trolling motor", "battery", "speed") && !l.questionish()
}

var ofMeGear = of("me", "gear")

// lightHull accepts "my kayak is 12 ft and 80 lb".
func lightHull(l *line, m int) bool {
	i := l.at[m]
	if !l.anyOf("kayak", "canoe") || l.negated[i] || i < 2 || l.anyOf("thrust", "motor", "trolling motor", "battery") {
		return false
	}
	k := i - 1
	if l.id(k) == idAnd || l.text(k) == "and" || l.terms[k].mark == ',' && l.any(ofMeGear) {
		k--
	}
	return k >= 0 && l.terms[k].measure >= 0 && l.r.Measures[l.terms[k].measure].Kind == read.Length && l.endsAt(i) && (k < i-1 || l.text(k-1) == "is")
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
func itself(l *line, m int) bool {
	k := l.skipFillers(l.at[m]-1, -1)
	for k > 0 && (l.id(k) == idWeighs || l.filler(k)) {
		k--
	}
	return k > 0 && (l.text(k) == "itself" || l.text(k) == "alone")
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

// onWater leaves out batteries, and what stands on a trailer.
func onWater(l *line, m int) bool {
	if me := &l.r.Measures[m]; me.Value == nil && me.High != nil && me.Low == nil && *l.convert(me, bareIf(me, "lb")).high < 70 && !l.any(boatWords) {
		return false // "under 100 lb total setup weight"
	}
	return !battery(l, m) && !l.subject(m, ofTrailer)
}

var ofLoaded = of("loaded")

var (
	ofPersons = of("person", "us", "companion", "child", "both of us")
	ofUs      = of("us")
	ofTrailer = of("trailer")
)

// ratedPersons accepts "rated 4 persons 600 lb".
func ratedPersons(l *line, m int) bool {
	for k := l.at[m] - 1; k >= 1 && k >= l.at[m]-4; k-- {
		if l.id(k) == idPerson && l.terms[k-1].measure >= 0 && (l.text(k-2) == "rated" || l.text(k-2) == "for" && l.text(k-3) == "rated") {
			return true
		}
	}
	return false
}

// ratedSoMuch accepts "ours is rated 410 kg" where people are talked of.
func ratedSoMuch(l *line, m int) bool {
	k := l.skipFillers(l.at[m]-1, -1)
	return k >= 0 && (l.text(k) == "rated" || l.text(k) == "rated for" || l.text(k) == "rated at") && !l.hasKind(read.Voltage) && !l.hasKind(read.Current) && !l.hasKind(read.Charge) && lowest(&l.r.Measures[m]) >= 90
}

// platePersons accepts the weight behind "5 persons" on a plate that names a whole
// capacity as well.
func platePersons(l *line, m int) bool {
	k := l.at[m] - 1
	if !(l.any(ofPlate) || l.knows("load.plate")) || l.id(k) != idPerson || k < 1 || l.terms[k-1].measure < 0 || l.reason[l.terms[k-1].measure] != "persons on a plate" {
		return false
	}
	for i := range l.r.Measures {
		if i > m && i < m+4 && l.r.Measures[i].Kind == read.Mass && lowest(&l.r.Measures[i]) >= lowest(&l.r.Measures[m]) {
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
	return k >= 0 && (l.text(k) == "hull" || l.text(k) == "hulls" && l.terms[k].possessive) && (k == 0 || l.terms[k-1].mark != 0 || l.filler(k-1))
}

func endsStretch(l *line, m int) bool { return l.endsAt(l.at[m]) && !l.anyOf("thrust") }

// saysHull accepts "2200 lb hull".
func saysHull(l *line, m int) bool { return l.text(l.at[m]+1) == "hull" }

// bareIf gives the unit for a measure that has none.
func bareIf(me *read.Measure, unit string) string {
	if me.Kind == read.Number {
		return unit
	}
	return ""
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
