package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// useCues tells how, how long and how fast the motor is used.
var useCues = []cue{
	{name: "trolling at a speed", slot: "use.speed", kind: read.Speed, bare: "mph", low: 0.04, high: 4.6, before: of("trolling", "doing", "drifting"), reachB: 2, after: of("trolling"), reachA: 1, weight: 9, never: of("wind", "current", "tide"), when: trollsAt},
	{name: "need so much speed", slot: "use.speed", kind: read.Speed, low: 0.15, high: 3, before: of("must", "run"), reachB: 1, weight: 5, never: of("wind", "current", "tide", "hold")},
	{name: "so fast is plenty", slot: "use.speed", kind: read.Speed, low: 0.15, high: 3.2, after: of("enough", "fine"), reachA: 1, weight: 5, never: of("wind", "current", "tide", "hold", "river"), when: not(measuredSpeed)},
	{name: "will it get to a speed", slot: "use.speed", kind: read.Speed, low: 0.15, high: 3, alone: true, weight: 4, never: of("wind", "current", "tide", "hold", "river"), when: reaches},
	{name: "range at a speed", slot: "use.speed", kind: read.Speed, low: 0.15, high: 3.2, alone: true, weight: 4, when: runningTalk},
	{name: "range at a bare speed", slot: "use.speed", kind: read.Speed, bare: "mph", low: 0.2, high: 2.7, alone: true, weight: 5, when: rangeAt},
	{name: "it does so much", slot: "boat.speed-measured", kind: read.Speed, low: 0.3, high: 4, alone: true, weight: 8, when: measuredSpeed},
	{name: "speed of something else", slot: "", kind: read.Speed, before: of("outboard", "run"), reachB: 3, weight: 4, when: fast},

	{name: "distance of a trip", slot: "use.distance", kind: read.Length, low: 300, high: 200000, alone: true, weight: 6, when: far},

	{name: "hours to charge", slot: "charge.hours", kind: read.Duration, low: 0.2, high: 200, after: of("between trips", "charge"), reachA: 4, before: of("between trips", "charge"), reachB: 3, weight: 8, never: of("reserve minutes"), when: notATime},
	{name: "hours for a charger", slot: "charge.hours", kind: read.Duration, low: 0.2, high: 200, alone: true, weight: 6, when: chargerHours},
	{name: "hours of use", slot: "use.hours", kind: read.Duration, low: 0.1, high: 30, alone: true, weight: 4, never: of("reserve minutes", "model year", "age"), when: hoursOfUse},

	{name: "throttle", slot: "use.throttle", kind: read.Percent, low: 0.01, high: 1, after: of("throttle", "speed"), reachA: 1, before: of("throttle", "trolling", "speed"), reachB: 2, weight: 8, when: not(half)},
	{name: "at so many percent", slot: "use.throttle", kind: read.Percent, low: 0.01, high: 1, alone: true, weight: 3, when: throttleTalk},
	{name: "a fraction of throttle", slot: "use.throttle", kind: read.Number, low: 0.05, high: 1, after: of("throttle", "speed"), reachA: 1, before: of("throttle", "speed"), reachB: 1, weight: 8, when: fraction},
	{name: "at a fraction", slot: "use.throttle", kind: read.Number, low: 0.05, high: 0.95, alone: true, weight: 3, when: atFraction},
	{name: "a fraction, in talk of run time", slot: "use.throttle", kind: read.Number, low: 0.05, high: 0.95, alone: true, weight: 4, when: fractionAlone},
	{name: "a share that is no throttle", slot: "", kind: read.Percent, alone: true, weight: 4, when: half},

	{name: "fuel", slot: "fuel.volume", kind: read.Volume, low: 0.2, high: 2000, alone: true, weight: 4, when: not(otherVolume)},
	{name: "gallons of gas", slot: "fuel.volume", kind: read.Volume, low: 0.2, high: 2000, after: of("gasoline"), reachA: 1, before: of("gasoline"), reachB: 1, weight: 7},
	{name: "a cooler's or livewell's volume", slot: "", kind: read.Volume, alone: true, weight: 5, when: otherVolume},
}

// countCues are counts that are neither persons nor batteries.
var countCues = []cue{
	{name: "number of motors", slot: "motor.count", kind: read.Number, low: 2, high: 4, after: of("motor", "trolling motor", "bow mount", "transom mount"), reachA: 3, weight: 7, when: countsMotors},
	{name: "five speeds", slot: "", kind: read.Number, after: of("speed", "speed setting", "five speed"), reachA: 0, before: of("speed setting"), reachB: 0, weight: 6, when: not(fraction)},
	{name: "rods, dogs, years, trips", slot: "", kind: read.Number, after: of("fishing rod", "dog", "model year", "times", "horsepower", "miles", "gear", "clock", "trailer", "bimini", "fish kind"), reachA: 0, weight: 6},
	{name: "number of an order or a slip", slot: "", kind: read.Number, before: of("zip", "model year"), reachB: 0, weight: 6},
}

// countsMotors accepts "two motors" and "two 80 lb motors".
func countsMotors(l *line, m int) bool {
	i := l.at[m] + 1
	if i < len(l.terms) && l.terms[i].measure >= 0 {
		k := l.r.Measures[l.terms[i].measure].Kind
		if k != read.Mass && k != read.Force && k != read.Voltage {
			return false
		}
		i++
	}
	return strings.HasSuffix(l.text(i), "s") && l.id(i) != words.None
}

// trollsAt leaves out "go with 6" and numbers that count something.
func trollsAt(l *line, m int) bool {
	i := l.at[m]
	if l.r.Measures[m].Kind == read.Number && l.r.Measures[m].Bare < 1 && !hasDigit(l.r.Measures[m].Said) {
		return false // "half" is a share of the throttle
	}
	if l.r.Measures[m].Kind == read.Number && i+1 < len(l.terms) && l.terms[i+1].measure >= 0 {
		return false // "go on two 12 volt batteries"
	}
	for k := i - 1; k >= 0 && k >= i-4 && l.terms[k].mark == 0; k-- {
		if id := l.id(k); waterBody.holds(id) || currentWords.holds(id) || l.text(k) == "stream" {
			return false // "the river's doing 2 mph"
		}
	}
	return !countNext(l, m) && l.id(i-1) != idWith
}

func countNext(l *line, m int) bool {
	if l.r.Measures[m].Kind != read.Number {
		return false
	}
	i := l.at[m] + 1
	id := l.id(i)
	return id != words.None && !l.endsAt(i-1) || i < len(l.terms) && l.terms[i].mark == 0 && l.terms[i].measure < 0 && !l.terms[i].filler && id == words.None
}

// runningTalk accepts a slow speed where hours, range or a bank is the talk.
func runningTalk(l *line, m int) bool {
	if _, hi := ends(quantity{l.r.Measures[m].Value, l.r.Measures[m].Low, l.r.Measures[m].High}); hi > 3 {
		return false
	}
	if l.saysText("how far") || l.saysText("how long") {
		return true
	}
	return l.anyOf("battery", "bank", "miles", "amp hour", "all day", "trolling", "doing", "throttle") || l.hasKind(read.Duration) || l.hasKind(read.Charge) || l.askedLast(Runtime, Bank)
}

var doesWords = map[string]bool{"does": true, "gets": true, "makes": true, "made": true, "hits": true, "hit": true, "reached": true, "clocked": true, "did": true, "got": true, "topped": true, "tops": true, "see": true, "manages": true, "reads": true}

// measuredSpeed accepts "it does 3.2 mph on my 55".
func measuredSpeed(l *line, m int) bool {
	i := l.at[m]
	if _, at, ok := l.near(i, 1, ofGPS, 1); ok && at <= i+3 {
		return true // "4.2 mph on gps"
	}
	for k := i - 1; k >= 0 && k >= i-3; k-- {
		if doesWords[l.text(k)] {
			return !waterBody.holds(l.id(k-1)) && l.text(k-1) != "bay" && l.text(k-1) != "it" || l.terms[max(k-1, 0)].id == idBoat || l.text(k-1) == "it"
		}
		if !l.terms[k].filler && l.text(k) != "out" {
			return false
		}
	}
	return false
}

var ofGPS = of("gps")

// tripWords are talk of going somewhere: without one of them a mile is where a
// ramp lies, not how far the motor must carry.
var tripWords = map[string]bool{"trip": true, "trips": true, "run": true, "runs": true, "range": true, "way": true, "round": true, "go": true, "goes": true,
	"going": true, "travel": true, "cover": true, "distance": true, "troll": true, "trolling": true, "back": true, "far": true, "out": true, "across": true,
	"home": true, "cruise": true, "cruising": true, "ride": true, "motor": true, "reach": true, "spot": true, "spots": true, "hole": true, "dock": true, "ramp": true, "against": true, "make": true, "get": true}

// onTheRoad tells that a distance is driven to the water: "36 miles to the lake",
// "14 mile drive".
func (l *line) onTheRoad(m int) bool {
	i := l.at[m]
	for k := i + 1; k <= i+4 && k < len(l.terms) && l.terms[k].mark == 0; k++ {
		switch l.text(k) {
		case "drive", "away", "town", "road", "tow", "haul", "house", "here":
			return true
		case "home":
			return l.text(k-1) == "from"
		}
		if l.id(k) == idLake || l.id(k) == idRiver || l.text(k) == "water" || l.text(k) == "ramp" {
			return l.text(k-1) == "to" || l.text(k-2) == "to"
		}
	}
	return false
}

// tripTold tells that a distance is named.
func (l *line) tripTold() bool {
	for m := range l.r.Measures {
		if m < 64 && l.r.Measures[m].Kind == read.Length && farUnit[l.r.Measures[m].Spoken] {
			return true
		}
	}
	return false
}

// far accepts a length in miles or kilometres where somebody means to go it.
func far(l *line, m int) bool {
	if !farUnit[l.r.Measures[m].Spoken] || l.onTheRoad(m) {
		return false
	}
	for i := range l.terms {
		if tripWords[firstWord(l.text(i))] {
			return true
		}
	}
	return l.hasKind(read.Speed) || l.hasKind(read.Charge) || l.any(batteryNamed)
}

// rangeAt accepts "whats the range at 2.5".
func rangeAt(l *line, m int) bool {
	return l.r.Measures[m].Kind == read.Number && l.r.Measures[m].Bare >= 1 && l.text(l.at[m]-1) == "at" && l.endsAt(l.at[m]) && (l.saysText("range") || l.saysText("how far") || l.anyOf("miles") && l.questionish())
}

// reaches accepts "will a 30 get me 4 mph".
func reaches(l *line, m int) bool {
	if !l.questionish() {
		return false
	}
	for k := l.at[m] - 1; k >= 0 && k >= l.at[m]-3; k-- {
		switch l.text(k) {
		case "get", "reach", "hit", "do", "manage", "make":
			return true
		}
	}
	return false
}

func fast(l *line, m int) bool { return lowest(&l.r.Measures[m]) > 6.5 }

// hoursOfUse leaves out years, days and seconds.
func hoursOfUse(l *line, m int) bool {
	switch l.r.Measures[m].Spoken {
	case "year", "years", "yr", "month", "week", "day", "days", "d", "y", "s", "sec":
		return false
	}
	if l.faulty() && l.anyOf("trips breaker") && l.text(l.at[m]-1) == "after" {
		return false // "pops after ten minutes at full"
	}
	if (l.faulty() || l.anyOf("slow") && (l.text(l.at[m]-1) == "after" || l.text(l.at[m]-2) == "after")) && !l.any(batteryKinds) && !l.anyOf("throttle", "full throttle") && !l.saysText("how long") {
		return false // "cuts out after 10 minutes"
	}
	return !l.anyOf("reserve minutes") || l.r.Measures[m].Spoken == "h"
}

// half tells that a share is of charge or of time, not of throttle.
func half(l *line, m int) bool {
	if _, _, ok := l.near(l.at[m], 1, ofHalfDownChargeTimes, 2); ok {
		return true
	}
	if _, _, ok := l.near(l.at[m], -1, ofHalfDownCharge, 1); ok {
		return true
	}
	i := l.at[m]
	if l.text(i-1) == "from" && l.anyOf("charge", "charger", "between trips") || l.text(i+1) == "of" && i+2 < len(l.terms) && l.terms[i+2].measure >= 0 {
		return true // "to charge from 20 percent", "15% of 80"
	}
	return l.text(i+1) == "of" && (l.text(i+2) == "the" && l.text(i+3) == "time" || l.text(i+2) == "that" || l.text(i+2) == "it" || l.text(i+2) == "my" || l.id(i+2) == idLoaded || l.text(i+2) == "the" && l.id(i+3) != idThrottle) || l.text(i+1) == "gone" || l.text(i+1) == "used" || l.text(i+1) == "left" || l.text(i+1) == "dead" || l.text(i+1) == "empty" || l.text(i+1) == "remaining" || l.text(i+1) == "charged" || l.text(i+1) == "down" || l.text(i+1) == "off" || l.text(i+1) == "more" || l.text(i+1) == "less"
}

func throttleTalk(l *line, m int) bool {
	if half(l, m) {
		return false
	}
	return !l.any(wireTalk)
}

func fraction(l *line, m int) bool {
	v := l.r.Measures[m].Value
	return v != nil && *v < 1
}

// fractionAlone accepts "half?" where run time at a throttle was asked last.
func fractionAlone(l *line, m int) bool {
	return fraction(l, m) && len(l.terms) <= 4 && l.askedLast(Runtime, Bank) && l.knows("use.throttle")
}

// atFraction accepts "five at a third": at, on, and a fraction.
func atFraction(l *line, m int) bool {
	i := l.at[m]
	if !fraction(l, m) {
		return false
	}
	for k := i - 1; k >= i-3 && k >= 0; k-- {
		if l.text(k) == "at" || l.text(k) == "on" {
			return l.endsAt(i) || l.terms[i+1].filler || askingWords.holds(l.id(i+1)) || l.terms[i+1].measure >= 0
		}
	}
	return false
}

func otherVolume(l *line, m int) bool {
	switch l.text(l.at[m] + 1) {
	case "bucket", "buckets", "baitwell", "jug", "tote":
		return true
	}
	if l.id(l.at[m]-1) == idGear {
		return true // "livewells 30 gallons each"
	}
	_, _, ok := l.near(l.at[m], 1, ofGearFishKindDepth, 1)
	return ok
}

// styleRows are the ways of fishing.
var styleRows = []wordRow{
	{"casting", "casting", "use.style", "casting", nil},
	{"vertical jigging", "vertical jigging", "use.style", "vertical-jigging", nil},
	{"trolling", "trolling", "use.style", "trolling", trollsFor},
	{"drifting", "drifting", "use.style", "drifting", nil},
	{"holding on a spot", "with", "use.style", "holding", holdingTime},
	{"guiding", "guiding", "use.style", "guiding", nil},
}

// holdingTime accepts "8 hours of holding", "holding all day": what the motor is used
// for, where "holding" alone may be "with".
func holdingTime(l *line, at int) bool {
	if l.text(at) != "holding" {
		return false
	}
	prev := l.skipFillers(at-1, -1)
	if prev >= 0 && l.text(prev) == "of" {
		prev--
	}
	timed := prev >= 0 && l.terms[prev].measure >= 0 && l.r.Measures[l.terms[prev].measure].Kind == read.Duration
	next := l.id(at + 1)
	return timed || next == idAllDay || next == idPositionHold || l.text(at+1) == "in" && l.any(windWords) || l.endsAt(at) && l.hasKind(read.Duration)
}

// trollsFor leaves the name of the motor out.
func trollsFor(l *line, at int) bool { return l.id(at+1) != idMotor && !l.drawOfUse() }

// drawOfUse tells that what the motor draws in use was told, so that the way of
// fishing says no more of it: "pulls 25 amps at the speed i troll".
func (l *line) drawOfUse() bool {
	return l.setSlots["motor.current"] && !l.has.holds(idFullThrottle) && !l.any(wireTalk) && !l.anyOf("breaker")
}

// worded binds quantities that are said without a number: full throttle, a day
// on the water, a pair of batteries, a round trip.
func (l *line) worded() {
	if run, ok := l.fact("wire.run"); ok && l.has.holds(idRoundTrip) && !l.has.holds(idOneWay) {
		scaleFact(run, 0.5)
		run.Row = "round trip, halved"
	}
	if run, ok := l.fact("wire.run"); ok && run.Value == nil && (run.Low == nil || run.High == nil) {
		// "over 22 ft" of wire is 22 ft.
		lo, _ := ends(quantity{nil, run.Low, run.High})
		run.Value, run.Low, run.High = num(lo), nil, nil
	}
	l.twinMotors()
	for i := range l.terms {
		if (l.terms[i].text == "single" || l.terms[i].text == "lone") && !l.setSlots["battery.count"] && (l.batteryAt(i+1) || l.voltsAt(i+1) && l.batteryAt(i+2)) && l.over == "" {
			l.put(card.Fact{Slot: "battery.count", Value: num(1), Unit: "1", Said: l.said(l.terms[i].start, l.terms[i+1].end), Row: "a single battery"})
		}
	}
	if len(l.terms) <= 4 && l.askedLast(Runtime, Bank) && l.knows("use.throttle") && len(l.r.Measures) == 0 {
		for _, d := range []struct {
			word string
			dial float64
		}{{"full", 1}, {"half", 0.5}, {"quarter", 0.25}, {"third", 1.0 / 3}} {
			if l.anyText(d.word) && !l.setSlots["use.throttle"] {
				l.put(card.Fact{Slot: "use.throttle", Value: num(d.dial), Unit: "1", Said: d.word, Row: "a throttle, in talk of run time"})
			}
		}
	}
	for i := range l.terms {
		t := &l.terms[i]
		if t.id < 0 || l.negated[i] {
			continue
		}
		for _, row := range wordedOf[t.id] {
			if l.setSlots[row.slot] || row.when != nil && !row.when(l, i) {
				continue
			}
			f := card.Fact{Slot: row.slot, Value: num(row.value), Unit: unitOf[row.slot], Said: l.said(t.start, t.end), Row: row.name}
			if row.low != row.high {
				f.Low, f.High = num(row.low), num(row.high)
			}
			l.put(f)
		}
	}
}

// A wordedRow is a number that a word stands for.
type wordedRow struct {
	name, word, slot string
	value, low, high float64
	when             func(l *line, at int) bool
}

// A day on the water is 6 to 10 hours; freezing and cold are taken wide: common
// practice, no published source.
var wordedRows = []wordedRow{
	{"full throttle", "full throttle", "use.throttle", 1, 1, 1, running},
	{"a day on the water", "all day", "use.hours", 8, 6, 10, nil},
	{"a third of throttle", "third", "use.throttle", 1.0 / 3, 1.0 / 3, 1.0 / 3, beforeThrottle},
	{"overnight", "between trips", "charge.hours", 10, 8, 12, overnight},
	{"half a day", "half day", "use.hours", 4, 3, 5, nil},
	{"a pair of batteries", "pair", "battery.count", 2, 2, 2, pairOfBatteries},
	{"a trio of batteries", "trio", "battery.count", 3, 3, 3, pairOfBatteries},
	{"freezing weather", "freezing", "temperature.air", -3, -12, 1, hereAndNow},
	{"cold weather", "cold weather", "temperature.air", 2, -8, 8, hereAndNow},
	{"two motors", "two motors", "motor.count", 2, 2, 2, nil},
}

// wordedOf finds the rows of an entry.
var wordedOf = func() map[words.ID][]*wordedRow {
	out := map[words.ID][]*wordedRow{}
	for i := range wordedRows {
		id := words.Of(wordedRows[i].word)
		out[id] = append(out[id], &wordedRows[i])
	}
	return out
}()

// beforeThrottle accepts "third throttle".
func beforeThrottle(l *line, at int) bool { return l.text(at) == "third" && l.id(at+1) == idThrottle }

// hereAndNow leaves out "how cold is too cold" and "store it over winter".
func hereAndNow(l *line, at int) bool {
	if l.anyOf("outboard") && l.anyText("start", "starts", "starting") {
		return false // "my outboard is hard to start cold"
	}
	for k := at - 2; k < at; k++ {
		switch firstWord(l.text(k)) {
		case "how", "too", "over", "for", "the", "this", "all":
			return false
		}
	}
	return true
}

// running leaves out "runs only on high": a fault, not a use.
func running(l *line, at int) bool {
	if l.terms[at].text == "full on" && l.charging() {
		return false // "flat to full on 10 amps"
	}
	return !l.faulty() || l.hasKind(read.Charge) || l.hasKind(read.Current) || l.hasKind(read.Voltage)
}

// pairOfBatteries accepts "pair of 31 agms", "a couple of 100 ah batteries".
func pairOfBatteries(l *line, at int) bool {
	for k := at + 1; k <= at+4 && k < len(l.terms); k++ {
		t := &l.terms[k]
		switch {
		case t.id == idBattery || t.id == idDeepCycle || t.id == idGroup || t.id == idAmpHour || chemistries.holds(t.id):
			return true
		case t.measure >= 0:
			if caseSize(l, t.measure) {
				return true
			}
			if k := l.r.Measures[t.measure].Kind; k == read.Voltage || k == read.Number {
				continue
			}
			return false
		case t.mark != 0 || t.id >= 0:
			return false
		}
	}
	return false
}

// Entries that the conditions above look for.
var (
	ofGearFishKindDepth   = of("gear", "fish kind", "depth")
	ofHalfDownCharge      = of("half down", "charge")
	ofHalfDownChargeTimes = of("half down", "charge", "times")
)
