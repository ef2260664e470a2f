package meaning

import (
	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// Pounds of thrust are said like pounds of weight. A mass is converted to the
// force that names it by thrustOf.
var motorCues = []cue{
	{name: "a thrust", slot: "motor.thrust", kind: read.Force, low: 20, high: 2500, alone: true, weight: 9},
	{name: "pounds of thrust", slot: "motor.thrust", kind: read.Mass, bare: ratingPounds, low: 8, high: 180, after: of("thrust"), reachA: 1, weight: 9, when: thrustSize},
	{name: "thrust of so many pounds", slot: "motor.thrust", kind: read.Mass, bare: ratingPounds, low: 8, high: 180, before: of("thrust"), reachB: 1, weight: 7, when: thrustSize},
	{name: "pounds beside volts", slot: "motor.thrust", kind: read.Mass, bare: ratingPounds, low: 8, high: 180, alone: true, weight: 7, when: besideVolts},
	{name: "so many pound motor", slot: "motor.thrust", kind: read.Mass, bare: ratingPounds, low: 8, high: 180, after: of("motor", "trolling motor", "bow mount", "transom mount", "brushless", "brushed", "variable speed", "five speed"), reachA: 1, before: of("brushless", "brushed", "variable speed", "five speed"), reachB: 1, weight: 8, when: thrustSize},
	{name: "pounds in talk of batteries", slot: "motor.thrust", kind: read.Mass, low: 8, high: 60, alone: true, weight: 3, when: ratingBesideBank},
	{name: "motor of so many pounds", slot: "motor.thrust", kind: read.Mass, bare: "", low: 8, high: 180, before: of("motor", "trolling motor"), reachB: 2, weight: 4, when: thrustSize},
	{name: "enough thrust?", slot: "motor.thrust", kind: read.Mass, low: 8, high: 180, after: of("enough", "fine"), reachA: 2, weight: 6, when: thrustSize},
	{name: "so many pounds pull", slot: "motor.thrust", kind: read.Mass, low: 8, high: 60, after: of("pulls"), reachA: 0, weight: 7, when: thrustSize},
	{name: "does 30 lb do it", slot: "motor.thrust", kind: read.Mass, low: 8, high: 60, alone: true, weight: 5, never: of("gear", "battery", "each", "loaded", "dry", "person", "anchor"), when: doesIt},
	{name: "is 30 too much", slot: "motor.thrust", kind: read.Mass, bare: ratingPounds, low: 8, high: 60, after: of("enough", "fine"), reachA: 1, weight: 6, when: judgedRating},
	{name: "a 55", slot: "motor.thrust", kind: read.Mass, bare: ratingPounds, low: 8, high: 180, alone: true, weight: 5, when: bareRating},
	{name: "so many pounds each, of motors", slot: "motor.thrust", kind: read.Mass, bare: ratingPounds, low: 8, high: 180, after: of("each"), reachA: 0, weight: 10, when: eachMotor},
	{name: "two times so many pounds", slot: "motor.thrust", kind: read.Mass, low: 8, high: 60, alone: true, weight: 6, never: of("gear", "battery", "each", "loaded", "dry", "person", "child", "anchor"), when: timesRating},
	{name: "twin 55s", slot: "motor.thrust", kind: read.Mass, bare: ratingPounds, low: 8, high: 60, alone: true, weight: 7, when: twins},
	{name: "so many pounds for a boat?", slot: "motor.thrust", kind: read.Mass, low: 8, high: 60, alone: true, weight: 6, never: of("gear", "battery", "each", "loaded", "dry", "person", "anchor"), when: ratingForBoat},
	{name: "a rating alone", slot: "motor.thrust", kind: read.Mass, bare: ratingPounds, low: 8, high: 60, alone: true, weight: 4, when: loneRating},
	{name: "an engine's horsepower", slot: "", kind: read.Number, before: of("outboard"), reachB: 1, weight: 10, when: articleNumber},
	{name: "an engine's horsepower", slot: "", kind: read.Number, alone: true, weight: 11, when: hungOnIt},
	{name: "a rating at a throttle", slot: "motor.thrust", kind: read.Mass, bare: ratingPounds, low: 8, high: 60, alone: true, weight: 4, when: ratingAtThrottle},
	{name: "pounds on a boat", slot: "motor.thrust", kind: read.Mass, low: 8, high: 59, alone: true, weight: 3, when: ratingOnBoat},

	{name: "volts", slot: "motor.voltage", kind: read.Voltage, low: 12, high: 48, alone: true, weight: 6, when: nominalVolts},
	{name: "each battery's volts", slot: "battery.voltage", kind: read.Voltage, low: 2, high: 48, alone: true, weight: 8, when: voltsEach},
	{name: "six-volt batteries", slot: "battery.voltage", kind: read.Voltage, low: 2, high: 52, alone: true, weight: 7, when: nominalBattery},
	{name: "a rating on 24", slot: "motor.voltage", kind: read.Voltage, bare: "V", low: 12, high: 48, alone: true, weight: 7, when: ratingOnVolts},
	{name: "goes 24", slot: "motor.voltage", kind: read.Voltage, bare: "V", low: 12, high: 48, alone: true, weight: 6, when: goesVolts},
	{name: "on 24", slot: "motor.voltage", kind: read.Voltage, bare: "V", low: 12, high: 48, alone: true, weight: 3, when: bareVolts},
	{name: "volts lost", slot: "", kind: read.Voltage, high: 4.5, low: 0.01, alone: true, weight: 5},
	{name: "a meter reading", slot: "", kind: read.Number, low: 0, alone: true, weight: 10, when: bareReading},
	{name: "a meter reading", slot: "", kind: read.Voltage, alone: true, weight: 4, when: meterReading},

	{name: "breaker, amps", slot: "breaker.in-hand", kind: read.Current, bare: "A", low: 5, high: 400, after: of("breaker", "trips breaker"), reachA: 0, before: of("breaker", "trips breaker"), reachB: 1, weight: 8, when: breakerRating},
	{name: "another breaker asked about", slot: "", kind: read.Number, alone: true, weight: 7, when: anotherBreaker},
	{name: "charger's amps", slot: "charger.current", kind: read.Current, low: 0.05, high: 1000, after: of("charger"), reachA: 2, before: of("charger"), reachB: 3, weight: 8, never: of("breaker", "pulls")},
	{name: "amps per bank", slot: "charger.current", kind: read.Current, low: 1, high: 200, alone: true, weight: 9, when: perBank},
	{name: "charging at amps", slot: "charger.current", kind: read.Current, low: 1, high: 200, before: of("charge", "between trips"), reachB: 3, after: of("charge", "between trips"), reachA: 1, weight: 7},
	{name: "amps to charge with", slot: "charger.current", kind: read.Current, low: 1, high: 60, alone: true, weight: 6, never: of("pulls", "breaker", "motor"), when: chargesOnly},
	{name: "amps of the charger asked about", slot: "charger.current", kind: read.Current, low: 1, high: 100, alone: true, weight: 6, never: of("pulls", "breaker", "motor"), when: chargerLast},
	{name: "what something else draws", slot: "", kind: read.Current, alone: true, weight: 9, when: accessoryDraws},
	{name: "amps", slot: "motor.current", kind: read.Current, low: 0.05, high: 1000, alone: true, weight: 5},
	{name: "56 a, with a space", slot: "motor.current", kind: read.Current, bare: "A", low: 5, high: 200, alone: true, weight: 9, when: spacedAmps},
	{name: "it draws", slot: "motor.current", kind: read.Current, bare: "A", low: 1, high: 300, before: of("pulls"), reachB: 0, weight: 5, when: motorDraws},
}

// thrustClasses are the ratings that a bare number may stand for, in pounds.
func thrustSize(l *line, m int) bool {
	me := &l.r.Measures[m]
	if me.Kind == read.Mass && l.listOfWeights(m) || me.Kind == read.Number && me.Bare > 250 {
		return false
	}
	if me.Kind == read.Mass && me.Spoken == "kg" {
		return l.has.holds(idThrust)
	}
	lo, hi := ends(quantity{me.Value, me.Low, me.High})
	if me.Kind == read.Mass {
		lo, hi = lo/0.45359237, hi/0.45359237
	}
	return lo >= 18 && hi <= 400
}

func (l *line) filler(i int) bool { return i >= 0 && i < len(l.terms) && l.terms[i].filler }

func (l *line) followedByPhraseEnd(i int) bool {
	id := l.id(i + 1)
	return afterRating.holds(id)
}

// bareRating accepts "a 55", "w a 30", "my 80": an article before the number and
// nothing after it that the number would count or measure.
func bareRating(l *line, m int) bool {
	me := &l.r.Measures[m]
	i := l.at[m]
	if me.Value == nil || me.Bare != float64(int(me.Bare)) || me.Bare < 24 || me.Bare > 250 || me.Kind == read.Mass && me.Spoken == "kg" {
		return false
	}
	if me.Kind == read.Mass && me.Bare > 130 || me.Kind == read.Number && !ratings[me.Bare] {
		return false
	}
	switch l.text(i - 1) {
	case "a", "an", "my", "the", "his", "this", "that", "cheapest", "lightest":
	default:
		// "how quick can it go with 55"
		if l.id(i-1) != idWith || !l.endsAt(i) || !l.anyOf("speed", "hold", "thrust", "top speed", "doing", "enough") {
			return false
		}
	}
	if me.End < len(l.r.Text) && l.r.Text[me.End] == 's' || me.Said[len(me.Said)-1] == 's' && me.Kind == read.Number {
		return false // "the 90s"
	}
	if l.shaftsAsked() && stockedShafts[me.Bare] && me.Kind == read.Number {
		return false
	}
	if me.Kind == read.Number && l.hasKind(read.Current) && (l.anyOf("breaker", "wire", "trips breaker") || l.hasKind(read.Gauge)) && !l.anyOf("thrust") && !forWhat[l.text(i-2)] {
		return false // "will a 60 do" of a breaker
	}
	if l.makesSpeed(m) {
		return false
	}
	next := l.id(i + 1)
	if me.Kind == read.Mass {
		return next == words.None || afterRating.holds(next)
	}
	if stockedShafts[me.Bare] && (l.anyOf("deck", "waterline", "shaft") || l.any(mountings) && l.saysInches()) {
		return false
	}
	if next == words.None && i+1 < len(l.terms) && l.terms[i+1].mark == 0 && l.terms[i+1].measure < 0 && !l.terms[i+1].filler && !afterRatingWords[l.text(i+1)] {
		return false
	}
	return next == words.None || afterRating.holds(next)
}

// saysInches tells that a length in inches stands in the line: a deck's or a
// transom's height, beside which a bare number is a shaft.
func (l *line) saysInches() bool {
	for k := range l.r.Measures {
		if me := &l.r.Measures[k]; k < 64 && me.Kind == read.Length && me.Spoken == "in" && lowest(me) < 1.3 {
			return true
		}
	}
	return false
}

// ratings are the pounds that motors are commonly rated at: common practice, no
// published source. A bare number that is none of them is no motor.
var ratings = map[float64]bool{30: true, 32: true, 33: true, 34: true, 36: true, 40: true, 42: true, 43: true, 44: true, 45: true, 46: true, 48: true, 50: true, 52: true, 54: true, 55: true, 57: true, 60: true, 62: true, 63: true, 65: true, 68: true, 70: true, 72: true, 74: true, 75: true,
	80: true, 82: true, 85: true, 86: true, 88: true, 90: true, 95: true, 100: true, 101: true, 105: true, 106: true, 109: true, 110: true, 112: true, 115: true, 120: true, 125: true, 130: true, 135: true, 150: true, 155: true, 160: true, 165: true, 200: true}

var afterRating = of("enough", "hold", "or", "with", "and", "doing", "speed", "motor", "trolling motor", "what if", "bow mount", "transom mount", "brushless", "brushed", "full throttle", "must", "run", "pulls", "would like", "thrust", "tiller", "slow", "no", "top speed", "all day", "throttle", "wind", "current", "windy", "fine", "too long", "position hold", "how many", "add", "same", "actually", "back", "seated")

var afterRatingWords = map[string]bool{"will": true, "gonna": true, "going": true, "can": true, "could": true, "should": true, "do": true, "does": true, "even": true, "shove": true, "shoves": true, "beat": true, "buck": true, "stem": true, "overcome": true, "stand": true, "outrun": true, "drag": true, "haul": true, "budge": true, "fight": true, "manage": true, "makes": true, "gets": true, "moves": true, "runs": true, "takes": true, "hold": true, "still": true, "just": true,
	"get": true, "make": true, "give": true, "against": true, "when": true, "if": true, "instead": true, "or": true, "already": true, "now": true, "there": true, "too": true, "but": true, "ok": true, "work": true, "last": true, "stay": true, "be": true, "keep": true, "tho": true, "though": true, "then": true, "because": true, "cause": true, "since": true}

// ratingOnBoat accepts a small mass when the talk is of speed, thrust or holding
// and a boat is named beside it.
func ratingOnBoat(l *line, m int) bool {
	if !thrustSize(l, m) {
		return false
	}
	i := l.at[m]
	return l.anyOf("top speed", "speed", "hold", "thrust", "enough", "position hold", "anchor", "slow") || l.saysText("how fast") ||
		(i == 0 || l.id(i-1) == idWith || l.text(i-1) == "of") && l.text(i+1) == "on" || l.runsOn(m) || l.besideLoad(m)
}

// runsOn accepts a motor's rating in talk of how long or how far a named battery
// carries a boat; beside a light hull it may be what the hull weighs.
func (l *line) runsOn(m int) bool {
	i := l.at[m]
	if id := l.id(i - 1); id == idBoat || id == idKayak || id == idCanoe {
		return false
	}
	bank := l.hasKind(read.Charge) || l.hasKind(read.Group) || l.any(batteryNamed)
	return bank && ratings[l.r.Measures[m].Bare] && (l.endsAt(i) || l.text(i+1) == "on" || l.terms[i+1].measure >= 0) &&
		(l.saysText("how long") || l.saysText("how far") || l.saysText("range") || l.saysText("how many hours") || l.anyOf("throttle", "full throttle", "miles", "all day") || l.tripTold() || l.hasKind(read.Duration) || l.hasKind(read.Percent))
}

// accessoryDraws accepts "my depth finder draws 1 amp", "the pump pulls 4 amps".
func accessoryDraws(l *line, m int) bool {
	switch l.text(l.at[m] + 1) {
	case "alternator", "solar", "panel", "generator", "dynamo", "inverter", "pump":
		return true
	}
	for k := l.at[m] - 1; k >= 0 && k >= l.at[m]-5 && l.terms[k].mark == 0 && l.terms[k].measure < 0; k-- {
		switch l.text(k) {
		case "alternator", "solar", "panel", "panels", "generator", "dynamo", "inverter", "pump", "pumps", "lights", "light", "radio", "stereo", "aerator", "heater", "fridge":
			return true
		}
		if l.id(k) == idFishfinder {
			return true
		}
	}
	return false
}

// spacedAmps accepts "for 56 a 24 v 22 ft" in talk of wire.
func spacedAmps(l *line, m int) bool {
	i := l.at[m]
	return l.r.Measures[m].Kind == read.Number && l.text(i+1) == "a" && (l.wiring() || l.setSlots["wire.gauge"] || l.anyOf("cable")) && !l.hasKind(read.Current) && (l.endsAt(i+1) || l.id(i+2) == idFine || l.id(i+2) == idEnough || i+2 < len(l.terms) && l.terms[i+2].measure >= 0 && l.r.Measures[l.terms[i+2].measure].Kind != read.Mass)
}

// ratingAtThrottle accepts "one battery 100ah full blast 55 how many minutes".
func ratingAtThrottle(l *line, m int) bool {
	me, i := &l.r.Measures[m], l.at[m]
	return me.Kind == read.Number && ratings[me.Bare] && me.Bare <= 130 && (l.any(batteryNamed) || l.hasKind(read.Charge)) && l.id(i-1) == idFullThrottle && (l.endsAt(i) || l.text(i+1) == "on" || askingWords.holds(l.id(i+1)))
}

// eachMotor accepts "two motors, 55 lb each".
func eachMotor(l *line, m int) bool {
	if !thrustSize(l, m) || l.r.Measures[m].Bare > 130 {
		return false
	}
	for k := l.at[m] - 1; k >= 0 && k >= l.at[m]-5; k-- {
		switch {
		case ofMotors.holds(l.id(k)):
			return true
		case ofPersons.holds(l.id(k)), batteryWords.holds(l.id(k)), l.terms[k].mark == '.', l.terms[k].mark == '?':
			return false
		}
	}
	return false
}

var ofMotors = of("two motors", "motor", "trolling motor", "bow mount", "transom mount")

// ratingForBoat accepts "112 lb for a 19 footer, thats crazy right?".
func ratingForBoat(l *line, m int) bool {
	i := l.at[m]
	if !ratings[l.r.Measures[m].Bare] || l.text(i+1) != "for" || !l.anyOf("enough", "fine") && !l.questionish() {
		return false
	}
	k := l.skipFillers(i+1, 1)
	return k < len(l.terms) && (hulls.holds(l.id(k)) || l.id(k) == idBoat || l.terms[k].measure >= 0 && l.r.Measures[l.terms[k].measure].Kind == read.Length)
}

// timesRating accepts "2 x 55 lb" of motors.
func timesRating(l *line, m int) bool {
	i := l.at[m]
	n := l.smallNumber(i - 2)
	return l.text(i-1) == "x" && n >= 2 && n <= 4 && ratings[l.r.Measures[m].Bare] && l.r.Measures[m].Bare <= 130 && !l.any(ofPlate)
}

// twinMotors counts the motors whose rating was said: "twin 45 lb motors", "2 x
// 55 lb", "a pair of 80s".
func (l *line) twinMotors() {
	f, ok := l.fact("motor.thrust")
	if !ok || l.setSlots["motor.count"] {
		return
	}
	for m := range l.r.Measures {
		if m >= 64 || l.r.Measures[m].Said != f.Said || l.r.Measures[m].Kind == read.Voltage {
			continue
		}
		i := l.at[m] - 1
		if l.text(i) == "x" {
			i--
		}
		n := 0.0
		switch {
		case l.text(i) == "twin", l.text(i) == "dual", l.id(i) == idPair, l.text(i) == "twins":
			n = 2
		case i >= 0 && l.terms[i].measure >= 0 && (l.text(i+1) == "x" || f.Row == "twin 55s"):
			k := l.terms[i].measure
			if v := l.r.Measures[k].Value; v != nil && l.r.Measures[k].Kind == read.Number && *v >= 2 && *v <= 4 {
				n, l.used[k] = *v, true
			}
		}
		if n >= 2 {
			l.put(card.Fact{Slot: "motor.count", Value: num(n), Unit: "1", Said: l.said(l.terms[i].start, l.r.Measures[m].End), Row: "so many of a rating"})
		}
		return
	}
}

// twins accepts "twin 55s", "two 80s": motors named by their rating.
func twins(l *line, m int) bool {
	me := &l.r.Measures[m]
	if me.Kind != read.Number || !ratings[me.Bare] || !l.saidPlural(m) || int(me.Bare)%100 == 0 || l.any(batteryWords) || l.any(chemistries) {
		return false
	}
	i := l.at[m]
	if l.text(i-1) == "twin" || l.text(i-1) == "dual" {
		return true
	}
	return (l.id(i-1) == idPair || l.smallNumber(i-1) == 2) && l.any(boatWords) && !l.hasKind(read.Percent) && !l.saysText("how long")
}

// loneRating accepts "55" as a whole turn where volts or thrust are the talk.
func loneRating(l *line, m int) bool {
	v := l.r.Measures[m].Bare
	return len(l.terms) == 1 && v >= 30 && v <= 130 && (l.knows("motor.voltage") && !l.knows("motor.thrust") || l.askedLast(Thrust, Voltage)) && !l.shaftsAsked()
}

// doesIt accepts "does 30 lb do anything", "will 45 lb move".
func doesIt(l *line, m int) bool {
	if !thrustSize(l, m) {
		return false
	}
	switch l.text(l.at[m] - 1) {
	case "does", "would", "will", "can", "could":
		return l.endsAt(l.at[m]) || !l.terms[l.at[m]+1].filler
	}
	return false
}

// judgedRating accepts "is 30 too much" where a boat is described and nothing
// else that the number could be.
func judgedRating(l *line, m int) bool {
	me := &l.r.Measures[m]
	if me.Kind != read.Number || !ratings[me.Bare] || l.shaftsAsked() || l.any(shaftPlaces) || l.any(wireTalk) || l.hasKind(read.Current) || l.hasKind(read.Gauge) || l.any(batteryWords) {
		return false
	}
	switch l.text(l.at[m] - 1) {
	case "is", "would", "will", "a", "does", "":
		return me.Bare <= 130 && l.setSlots["people.count"] && l.hasKind(read.Length) || l.any(hulls) || l.anyOf("boat", "loaded") || l.knows("boat.length")
	}
	return false
}

// ratingBesideBank accepts pounds where volts, amp-hours or a throttle are the
// talk and no boat is.
func ratingBesideBank(l *line, m int) bool {
	return thrustSize(l, m) && !l.any(hulls) && !l.anyOf("gear", "person", "boat") && (l.hasKind(read.Voltage) || l.hasKind(read.Duration) || l.hasKind(read.Percent) || l.hasKind(read.Charge) || l.anyOf("throttle", "full throttle", "group size", "breaker") || l.hasKind(read.Group) || l.hasKind(read.Gauge))
}

// batteryAt tells that batteries are named at a term: by the word, their
// chemistry, case or capacity.
func (l *line) batteryAt(i int) bool {
	if i < 0 || i >= len(l.terms) {
		return false
	}
	id := l.terms[i].id
	return id == idBattery || id == idDeepCycle || id == idGroup || id == idAmpHour || chemistries.holds(id)
}

func (l *line) knows(slot string) bool { _, ok := l.before.Get(slot); return ok }

func motorDraws(l *line, m int) bool {
	i := l.at[m]
	next := l.text(i + 1)
	return l.endsAt(i) || askingWords.holds(l.id(i+1)) || next == "at" || next == "full" || next == "wide" || l.id(i+1) == idFullThrottle
}

// Entries that the conditions above look for.
var (
	ofBreaker = of("breaker")
	ofEach    = of("each")
)

// besideLoad accepts a rating where the boat's loaded weight is another number and
// what the motor does is asked: "80 lb, 20 ft bay boat 3,300 loaded, what current can
// it sit in".
func (l *line) besideLoad(m int) bool {
	i := l.at[m]
	if !ratings[l.r.Measures[m].Bare] || !l.endsAt(i) || !l.any(ofLoaded) {
		return false
	}
	return l.any(currentWords) || l.anyOf("trolling", "speed", "doing") || l.hasKind(read.Speed)
}
