package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// useCues tells how, how long and how fast the motor is used.
var useCues = []cue{
	{name: "trolling at a speed", slot: "use.speed", kind: read.Speed, bare: "mph", low: 0.15, high: 3.2, before: of("trolling", "doing", "drifting"), reachB: 2, after: of("trolling"), reachA: 1, weight: 9, never: of("wind", "current", "tide"), when: trollsAt},
	{name: "need so much speed", slot: "use.speed", kind: read.Speed, low: 0.15, high: 3, before: of("must", "run"), reachB: 1, weight: 5, never: of("wind", "current", "tide", "hold")},
	{name: "will it get to a speed", slot: "use.speed", kind: read.Speed, low: 0.15, high: 3, alone: true, weight: 4, never: of("wind", "current", "tide", "hold", "river"), when: reaches},
	{name: "range at a speed", slot: "use.speed", kind: read.Speed, low: 0.15, high: 3.2, alone: true, weight: 4, when: runningTalk},
	{name: "it does so much", slot: "boat.speed-measured", kind: read.Speed, low: 0.3, high: 4, alone: true, weight: 8, when: measuredSpeed},
	{name: "speed of something else", slot: "", kind: read.Speed, before: of("outboard", "run"), reachB: 3, weight: 4, when: fast},

	{name: "distance of a trip", slot: "use.distance", kind: read.Length, low: 300, high: 200000, alone: true, weight: 6, when: far},

	{name: "hours to charge", slot: "charge.hours", kind: read.Duration, low: 0.2, high: 200, after: of("between trips", "charge"), reachA: 4, before: of("between trips", "charge"), reachB: 3, weight: 8, never: of("reserve minutes")},
	{name: "hours for a charger", slot: "charge.hours", kind: read.Duration, low: 0.2, high: 200, alone: true, weight: 6, when: chargerTalk},
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

// moneyCues tells whether an amount is what may be spent.
var moneyCues = []cue{
	{name: "budget", slot: "money.budget", kind: read.Money, low: 20, high: 100000, alone: true, weight: 6, when: not(aPrice)},
	{name: "bare budget", slot: "money.budget", kind: read.Money, bare: "USD", low: 150, high: 30000, before: of("budget"), reachB: 2, after: of("budget"), reachA: 1, weight: 7, when: bareMoney},
	{name: "money is what is talked of", slot: "money.budget", kind: read.Money, bare: "USD", low: 150, high: 30000, after: of("fine"), reachA: 0, weight: 4, when: knownBudget},
	{name: "could go to so much", slot: "money.budget", kind: read.Money, bare: "USD", low: 150, high: 30000, alone: true, weight: 4, when: couldSpend},
	{name: "under so much", slot: "money.budget", kind: read.Money, bare: "USD", low: 250, high: 30000, alone: true, weight: 2, when: boundAlone},
	{name: "a price", slot: "", kind: read.Money, alone: true, weight: 5, when: aPrice},
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
	return !countNext(l, m) && l.id(l.at[m]-1) != idWith
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

var doesWords = map[string]bool{"does": true, "gets": true, "makes": true, "made": true, "hits": true, "clocked": true, "did": true, "got": true, "topped": true, "tops": true, "see": true, "manages": true, "reads": true}

// measuredSpeed accepts "it does 3.2 mph on my 55".
func measuredSpeed(l *line, m int) bool {
	i := l.at[m]
	for k := i - 1; k >= 0 && k >= i-3; k-- {
		if doesWords[l.text(k)] {
			return true
		}
		if !l.terms[k].filler && l.text(k) != "out" {
			return false
		}
	}
	return false
}

// tripWords are talk of going somewhere: without one of them a mile is where a
// ramp lies, not how far the motor must carry.
var tripWords = map[string]bool{"trip": true, "trips": true, "run": true, "runs": true, "range": true, "way": true, "round": true, "go": true, "goes": true,
	"going": true, "travel": true, "cover": true, "distance": true, "troll": true, "trolling": true, "back": true, "far": true, "out": true, "across": true,
	"home": true, "cruise": true, "cruising": true, "ride": true, "motor": true, "drive": true, "reach": true, "make": true, "get": true}

// far accepts a length in miles or kilometres where somebody means to go it.
func far(l *line, m int) bool {
	if !farUnit[l.r.Measures[m].Spoken] {
		return false
	}
	for i := range l.terms {
		if tripWords[l.text(i)] {
			return true
		}
	}
	return false
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

// chargerTalk accepts hours where a charger is asked for.
func chargerTalk(l *line, m int) bool {
	if l.anyOf("charger") {
		return !l.anyOf("throttle", "trolling", "full throttle", "all day")
	}
	if l.anyOf("half down") && l.any(batteryTalkWords) && !l.anyOf("throttle", "trolling", "full throttle", "all day", "motor", "trolling motor") && !l.hasKind(read.Percent) {
		return true // "one agm, half dead, 7 hours, what amps"
	}
	return l.askedLast(Charger)
}

var batteryTalkWords = of("battery", "bank", "amp hour").with(chemistries)

// hoursOfUse leaves out years, days and seconds.
func hoursOfUse(l *line, m int) bool {
	switch l.r.Measures[m].Spoken {
	case "year", "years", "yr", "month", "week", "day", "days", "d", "y", "s", "sec":
		return false
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
			return l.endsAt(i) || l.terms[i+1].filler
		}
	}
	return false
}

func otherVolume(l *line, m int) bool {
	_, _, ok := l.near(l.at[m], 1, ofGearFishKindDepth, 1)
	return ok
}

// bareMoney keeps a number with a life of its own from being money.
func bareMoney(l *line, m int) bool {
	i := l.at[m]
	_, _, loaded := l.near(i, 1, ofLoadedDry, 1)
	if loaded {
		return false
	}
	if _, _, ok := l.near(i, 1, ofBudget, 0); ok || l.id(i-1) == idBudget || l.id(i+1) == idBudget {
		return true
	}
	switch l.text(i - 1) {
	case "is", "of", "under", "about", "around", "to", "than", "only", "up", "maybe", "at", "just", "s":
		return true
	}
	return false
}

var ofBudget = of("budget")

// knownBudget accepts "2000 is fine" once a budget stands.
func knownBudget(l *line, m int) bool { return l.knows("money.budget") }

// couldSpend accepts "could go 1200" and "make it 1500" of a budget that stands.
func couldSpend(l *line, m int) bool {
	if l.r.Measures[m].Kind != read.Number || !l.knows("money.budget") || !l.endsAt(l.at[m]) {
		return false
	}
	for k := l.at[m] - 1; k >= 0 && k >= l.at[m]-4; k-- {
		switch l.text(k) {
		case "could", "can", "swing", "stretch", "spend", "okayed", "okd", "approved", "allows", "allowed", "says", "said":
			return true
		}
	}
	return false
}

// boundAlone accepts "under 900" that is bound to nothing else.
func boundAlone(l *line, m int) bool {
	me := &l.r.Measures[m]
	return me.Value == nil && me.High != nil && me.Low == nil && me.Kind == read.Number && l.endsAt(l.at[m])
}

// aPrice tells that the amount is what something costs, not what may be spent.
func aPrice(l *line, m int) bool {
	i := l.at[m]
	if l.r.Measures[m].Kind != read.Money {
		return false
	}
	if _, _, weight := l.near(i, 1, ofLoadedDry, 0); weight {
		return true
	}
	for k := i - 1; k >= 0 && k >= i-3; k-- {
		switch l.text(k) {
		case "costs", "priced", "quoted", "asking", "selling", "cost", "paid", "saw", "listed", "bought", "sells", "runs", "worth":
			return true
		}
	}
	switch l.text(i + 1) {
	case "motor", "one", "charger", "battery", "batteries", "difference", "more", "extra", "each":
		return true
	}
	return false
}

// styleRows are the ways of fishing.
var styleRows = []wordRow{
	{"casting", "casting", "use.style", "casting", nil},
	{"vertical jigging", "vertical jigging", "use.style", "vertical-jigging", nil},
	{"trolling", "trolling", "use.style", "trolling", trollsFor},
	{"drifting", "drifting", "use.style", "drifting", nil},
	{"guiding", "guiding", "use.style", "guiding", nil},
}

// trollsFor leaves the name of the motor out.
func trollsFor(l *line, at int) bool { return l.id(at+1) != idMotor }

// profile reads a duty profile: "an hour flat out then five at a third". Each
// stretch gives a throttle and its hours, in order, and appears once for each.
func (l *line) profile() {
	type stretch struct {
		hours, throttle float64
		from, to        int
		ms              []int
	}
	var got []stretch
	var cur stretch
	lastHours := -1.0
	flush := func() {
		if cur.hours > 0 && cur.throttle > 0 && len(got) < mostOfOne {
			got = append(got, cur)
		}
		cur = stretch{from: -1}
	}
	cur.from = -1
	touch := func(i int) {
		if cur.from < 0 {
			cur.from = i
		}
		cur.to = i
	}
	for i := range l.terms {
		t := &l.terms[i]
		switch {
		case t.measure >= 0 && !l.used[t.measure]:
			me := &l.r.Measures[t.measure]
			switch {
			case me.Kind == read.Duration && me.Value != nil && *me.Value >= 300 && *me.Value <= 20*3600:
				if cur.hours > 0 {
					flush()
				}
				cur.hours = *me.Value / 3600
				lastHours = cur.hours
				cur.ms = append(cur.ms, t.measure)
				touch(i)
			case me.Kind == read.Percent && me.Value != nil && *me.Value > 0 && *me.Value <= 100:
				if cur.throttle > 0 {
					flush()
				}
				cur.throttle = *me.Value / 100
				cur.ms = append(cur.ms, t.measure)
				touch(i)
			case me.Kind == read.Number && me.Value != nil && *me.Value > 0 && *me.Value < 1:
				if cur.throttle > 0 {
					flush()
				}
				cur.throttle = *me.Value
				cur.ms = append(cur.ms, t.measure)
				touch(i)
			case me.Kind == read.Number && me.Value != nil && *me.Value >= 1 && *me.Value <= 14 && lastHours > 0 && (l.text(i+1) == "at" || l.id(i+1) == idFullThrottle):
				if cur.hours > 0 {
					flush()
				}
				cur.hours = *me.Value
				cur.ms = append(cur.ms, t.measure)
				touch(i)
			}
		case t.id == idFullThrottle:
			if cur.throttle > 0 {
				flush()
			}
			cur.throttle = 1
			touch(i)
		}
		if cur.hours > 0 && cur.throttle > 0 {
			flush()
		}
	}
	flush()
	if len(got) < 2 {
		return
	}
	for _, s := range got {
		said := l.said(l.terms[s.from].start, l.terms[s.to].end)
		l.put(card.Fact{Slot: "use.throttle", Value: num(s.throttle), Unit: "1", Said: said, Row: "duty profile"})
		l.put(card.Fact{Slot: "use.hours", Value: num(s.hours), Unit: "h", Said: said, Row: "duty profile"})
		for _, m := range s.ms {
			l.used[m] = true
		}
	}
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
	if f, ok := l.fact("motor.thrust"); ok && f.Row == "twin 55s" && !l.setSlots["motor.count"] {
		l.put(card.Fact{Slot: "motor.count", Value: num(2), Unit: "1", Said: f.Said, Row: f.Row})
	}
	for i := range l.terms {
		if (l.terms[i].text == "single" || l.terms[i].text == "lone") && !l.setSlots["battery.count"] && l.batteryAt(i+1) && l.over == "" {
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
	return !l.faulty() || l.hasKind(read.Charge) || l.hasKind(read.Current) || l.hasKind(read.Voltage)
}

// pairOfBatteries accepts "pair of 31 agms", "a couple of 100 ah batteries".
func pairOfBatteries(l *line, at int) bool {
	for k := at + 1; k <= at+4 && k < len(l.terms); k++ {
		t := &l.terms[k]
		switch {
		case t.id == idBattery || t.id == idDeepCycle || t.id == idGroup || t.id == idAmpHour || t.id >= 0 && chemistries[t.id]:
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
