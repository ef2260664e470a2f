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
	{name: "twin 55s", slot: "motor.thrust", kind: read.Mass, bare: ratingPounds, low: 8, high: 60, alone: true, weight: 7, when: twins},
	{name: "a rating alone", slot: "motor.thrust", kind: read.Mass, bare: ratingPounds, low: 8, high: 60, alone: true, weight: 4, when: loneRating},
	{name: "an engine's horsepower", slot: "", kind: read.Number, before: of("outboard"), reachB: 1, weight: 10, when: articleNumber},
	{name: "pounds on a boat", slot: "motor.thrust", kind: read.Mass, low: 8, high: 59, alone: true, weight: 3, when: ratingOnBoat},

	{name: "volts", slot: "motor.voltage", kind: read.Voltage, low: 12, high: 48, alone: true, weight: 6, when: nominalVolts},
	{name: "each battery's volts", slot: "battery.voltage", kind: read.Voltage, low: 2, high: 48, alone: true, weight: 8, when: voltsEach},
	{name: "six-volt batteries", slot: "battery.voltage", kind: read.Voltage, low: 2, high: 52, alone: true, weight: 7, when: nominalBattery},
	{name: "on 24", slot: "motor.voltage", kind: read.Voltage, bare: "V", low: 12, high: 48, alone: true, weight: 3, when: bareVolts},
	{name: "volts lost", slot: "", kind: read.Voltage, high: 4.5, low: 0.01, alone: true, weight: 5},
	{name: "a meter reading", slot: "", kind: read.Voltage, alone: true, weight: 4, when: meterReading},

	{name: "breaker, amps", slot: "", kind: read.Current, bare: "A", after: of("breaker"), reachA: 0, before: of("breaker"), reachB: 1, weight: 8, when: breakerRating},
	{name: "charger's amps", slot: "charger.current", kind: read.Current, low: 1, high: 200, after: of("charger"), reachA: 2, before: of("charger"), reachB: 3, weight: 8, never: of("breaker", "pulls")},
	{name: "amps per bank", slot: "charger.current", kind: read.Current, low: 1, high: 200, alone: true, weight: 9, when: perBank},
	{name: "charging at amps", slot: "charger.current", kind: read.Current, low: 1, high: 200, before: of("charge", "between trips"), reachB: 3, after: of("charge", "between trips"), reachA: 1, weight: 7},
	{name: "amps to charge with", slot: "charger.current", kind: read.Current, low: 1, high: 60, alone: true, weight: 6, never: of("pulls", "breaker", "motor"), when: chargesOnly},
	{name: "amps of the charger asked about", slot: "charger.current", kind: read.Current, low: 1, high: 100, alone: true, weight: 6, never: of("pulls", "breaker", "motor"), when: chargerLast},
	{name: "amps", slot: "motor.current", kind: read.Current, low: 0.2, high: 300, alone: true, weight: 5},
	{name: "it draws", slot: "motor.current", kind: read.Current, bare: "A", low: 1, high: 300, before: of("pulls"), reachB: 0, weight: 5, when: motorDraws},
}

// thrustClasses are the ratings that a bare number may stand for, in pounds.
func thrustSize(l *line, m int) bool {
	me := &l.r.Measures[m]
	if me.Kind == read.Mass && l.listOfWeights(m) {
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

// besideVolts accepts "80 lb 24v" and "12 volt 55".
func besideVolts(l *line, m int) bool {
	i := l.at[m]
	if l.r.Measures[m].Kind == read.Number && l.id(i+1) >= 0 && !l.followedByPhraseEnd(i) {
		return false
	}
	return thrustSize(l, m) && (l.voltsAt(i-1) || l.voltsAt(i+1) || l.filler(i+1) && l.voltsAt(i+2) && l.r.Measures[m].Kind == read.Mass)
}

func (l *line) filler(i int) bool { return i >= 0 && i < len(l.terms) && l.terms[i].filler }

func (l *line) followedByPhraseEnd(i int) bool {
	id := l.id(i + 1)
	return afterRating.holds(id)
}

func (l *line) voltsAt(i int) bool {
	return i >= 0 && i < len(l.terms) && l.terms[i].measure >= 0 && l.r.Measures[l.terms[i].measure].Kind == read.Voltage
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
	case "a", "an", "my", "the", "his", "this", "that":
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
	if me.Kind == read.Number && l.hasKind(read.Current) && (l.anyOf("breaker", "wire") || l.hasKind(read.Gauge)) && !l.anyOf("thrust") {
		return false // "will a 60 do" of a breaker
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

var afterRating = of("enough", "hold", "or", "with", "and", "doing", "speed", "motor", "trolling motor", "what if", "bow mount", "transom mount", "brushless", "brushed", "full throttle", "must", "run", "pulls", "would like", "thrust", "tiller", "slow", "no", "top speed", "all day", "throttle", "wind", "current", "windy", "fine", "too long", "position hold", "how many", "add", "same", "actually", "back")

var afterRatingWords = map[string]bool{"will": true, "gonna": true, "going": true, "can": true, "could": true, "should": true, "do": true, "does": true, "even": true,
	"get": true, "make": true, "give": true, "against": true, "when": true, "if": true, "instead": true, "or": true, "already": true, "now": true, "there": true, "too": true, "but": true, "ok": true, "work": true, "last": true, "stay": true, "be": true, "keep": true, "tho": true, "though": true, "then": true, "because": true, "cause": true, "since": true}

// ratingOnBoat accepts a small mass when the talk is of speed, thrust or holding
// and a boat is named beside it.
func ratingOnBoat(l *line, m int) bool {
	if !thrustSize(l, m) {
		return false
	}
	i := l.at[m]
	return l.anyOf("top speed", "speed", "hold", "thrust", "enough", "position hold", "anchor", "slow") || l.saysText("how fast") || (i == 0 || l.id(i-1) == idWith) && l.text(i+1) == "on"
}

// perBank accepts "10 amp per bank".
func perBank(l *line, m int) bool {
	i := l.at[m]
	if l.text(i-1) == "bank" && l.smallNumber(i-2) > 0 {
		return true // "2 bank 10 amp"
	}
	return (l.text(i+1) == "per" || l.text(i+1) == "a" || l.text(i+1) == "each") && (l.id(i+2) == idBank || l.id(i+2) == idBattery)
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

// chargerLast accepts "10 amps" where a charger was asked about.
func chargerLast(l *line, m int) bool { return l.askedLast(Charger) && len(l.terms) <= 6 }

// loneRating accepts "55" as a whole turn where volts or thrust are the talk.
func loneRating(l *line, m int) bool {
	v := l.r.Measures[m].Bare
	return len(l.terms) == 1 && v >= 30 && v <= 130 && (l.knows("motor.voltage") && !l.knows("motor.thrust") || l.askedLast(Thrust, Voltage)) && !l.shaftsAsked()
}

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
		if m >= 64 || me.As != "horsepower" || me.Value == nil || l.id(l.at[m]-1) == idNo || l.negated[l.at[m]] {
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

// articleNumber accepts "the outboard is a 60".
func articleNumber(l *line, m int) bool {
	return l.articleBefore(l.at[m]) && l.r.Measures[m].Kind == read.Number && lowest(&l.r.Measures[m]) <= 400
}

// ratingBesideBank accepts pounds where volts, amp-hours or a throttle are the
// talk and no boat is.
func ratingBesideBank(l *line, m int) bool {
	return thrustSize(l, m) && !l.any(hulls) && !l.anyOf("gear", "person", "boat") && (l.hasKind(read.Voltage) || l.hasKind(read.Duration) || l.hasKind(read.Percent) || l.hasKind(read.Charge) || l.anyOf("throttle", "full throttle", "group size") || l.hasKind(read.Group))
}

var nominal = map[float64]bool{12: true, 16: true, 24: true, 36: true, 48: true}

func nominalVolts(l *line, m int) bool {
	v := l.r.Measures[m].Value
	return v != nil && nominal[*v]
}

func nominalBattery(l *line, m int) bool {
	v := l.r.Measures[m].Value
	return v != nil && (*v == 2 || *v == 6 || *v == 8 || l.anyOf("lithium") && (*v == 12.8 || *v == 25.6 || *v == 38.4 || *v == 51.2))
}

func anyVolts(l *line, m int) bool { return nominalVolts(l, m) || nominalBattery(l, m) }

// meterReading accepts volts that no battery or motor is sold by.
func meterReading(l *line, m int) bool { return l.r.Measures[m].Value != nil && !anyVolts(l, m) }

// voltsEach accepts volts that are a battery's own: more than one battery is
// counted before them, or "each" stands behind.
func voltsEach(l *line, m int) bool {
	if !anyVolts(l, m) {
		return false
	}
	i := l.at[m]
	if _, _, ok := l.near(i, 1, ofEach, 3); ok {
		return true
	}
	if l.otherVolts(m) && l.batteryAt(i+1) {
		return true // "a pair of 12v 120 ah agms, 24v motor"
	}
	k := i - 1
	if l.text(k) == "x" {
		k--
	}
	if k >= 0 && l.terms[k].measure >= 0 {
		me := &l.r.Measures[l.terms[k].measure]
		return me.Kind == read.Number && me.Value != nil && *me.Value >= 2 && *me.Value <= 12
	}
	return l.id(i-1) == idPair
}

// otherVolts tells that the line names a higher voltage as well, or one that two
// batteries make.
func (l *line) otherVolts(m int) bool {
	for k := range l.r.Measures {
		me := &l.r.Measures[k]
		if k < 64 && k != m && me.Value != nil && (me.Kind == read.Voltage && *me.Value > *l.r.Measures[m].Value || me.Kind == read.Number && nominal[me.Bare] && me.Bare > *l.r.Measures[m].Value && l.makesVolts(k)) {
			return true
		}
	}
	return false
}

// makesVolts accepts "in series to make 24".
func (l *line) makesVolts(m int) bool {
	switch l.text(l.at[m] - 1) {
	case "make", "makes", "get", "making", "gives", "give", "for":
		return l.has.holds(idSeries) && l.r.Measures[m].Kind == read.Number
	}
	return false
}

// batteryAt tells that batteries are named at a term: by the word, their
// chemistry, case or capacity.
func (l *line) batteryAt(i int) bool {
	if i >= len(l.terms) {
		return false
	}
	id := l.terms[i].id
	return id == idBattery || id == idDeepCycle || id == idGroup || id == idAmpHour || chemistries.holds(id)
}

// bareVolts accepts "on 24" where volts are the talk.
func bareVolts(l *line, m int) bool {
	me := &l.r.Measures[m]
	i := l.at[m]
	if me.Value == nil || !nominal[*me.Value] || *me.Value == 48 {
		return false
	}
	if l.makesVolts(m) {
		return true
	}
	if l.text(i-1) == "on" || l.text(i-1) == "at" || l.text(i-1) == "run" {
		return l.endsAt(i) && (l.askedLast(Voltage) || l.anyOf("thrust", "motor", "trolling motor") || l.knows("motor.voltage"))
	}
	return false
}

func (l *line) knows(slot string) bool { _, ok := l.before.Get(slot); return ok }

// breakerRating keeps "50 amps, what breaker" a motor's draw: the breaker must
// stand right beside its own rating.
func breakerRating(l *line, m int) bool {
	i := l.at[m]
	if l.id(i+1) == idBreaker {
		return true
	}
	_, at, ok := l.near(i, -1, ofBreaker, 1)
	if !ok {
		return false
	}
	for k := at + 1; k < i; k++ {
		switch l.text(k) {
		case "for", "on", "with", "at", "in", "to", "from":
			return false
		}
		if l.terms[k].mark != 0 {
			return false
		}
	}
	return true
}

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

// chargesOnly accepts the one current of a line that speaks of charging and of no
// motor: "how long to fill it at 15 amps".
func chargesOnly(l *line, m int) bool {
	if !l.anyOf("charge") || l.anyOf("motor", "trolling motor", "throttle", "wire", "full throttle") {
		return false
	}
	for i := range l.r.Measures {
		if i != m && l.r.Measures[i].Kind == read.Current {
			return false
		}
	}
	return true
}
