package meaning

import (
	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// A topicRow names a topic by the words that ask for it.
type topicRow struct {
	name  string
	topic Topic
	any   set      // one of these occurs ...
	with  set      // ... and one of these, if set
	texts []string // or one of these words or pairs of words
	when  func(l *line) bool
}

var askingWords = of("how many")

// wish says what the turn asks.
func (l *line) wish(c card.Card, changedSlots []string) Wish {
	w := Wish{Compare: l.compare, Over: l.over}
	if len(l.terms) == 0 {
		return w
	}
	if l.outside() {
		w.Out = true
		return w
	}
	add := func(t Topic) {
		for _, x := range w.Topics {
			if x == t {
				return
			}
		}
		w.Topics = append(w.Topics, t)
	}
	q := l.questionish()
	w.Why = l.asksWhy()
	for _, row := range topicRows {
		if l.meets(&row) {
			add(row.topic)
		}
	}
	if l.units != nil && len(l.r.Measures) == 0 {
		w.Topics = nil // "the weight is in kilos" asks for no weight
		return w
	}
	if l.asksPick() {
		w.Topics = l.askedBefore()
		return w
	}
	if w.Why {
		w.Topics = withoutTopic(w.Topics, Concept)
	}
	l.judged(&w, add)
	w.Words = l.topicWords()
	if l.over != "" {
		addChoice(l.over, add)
	}
	if l.hasKind(read.Gauge) && has(topicNames(w.Topics), string(Wire)) {
		w.Topics = withoutTopic(w.Topics, Runtime) // "how long can i go with 6 gauge"
		if l.asksLength() {
			w.Words = append(w.Words, "wire-length")
		}
	}
	if l.setSlots["mount.height"] && l.setSlots["motor.shaft"] && has(topicNames(w.Topics), string(Fault)) {
		add(Shaft) // "my 42 pops out in waves, deck 25"
	}
	if len(w.Topics) > 1 && !l.saysText("difference") && !l.saysText("explain") && !l.saysText("why") {
		w.Topics = withoutTopic(w.Topics, Concept)
	}
	if len(w.Topics) == 0 && !w.Why {
		l.implied(c, q, add)
	} else if l.fitBeside(w.Topics) || l.motorFirst() || l.wantsMotor() && !has(topicNames(w.Topics), string(Fit)) {
		w.Topics = append([]Topic{Fit}, withoutTopic(w.Topics, Concept)...)
	}
	return w
}

// picksAsked are the ways of asking what is best of that which stands.
var picksAsked = []string{"would you go with", "would u go with", "should i go with", "do you recommend", "do u recommend", "would you recommend", "would u recommend", "you recommend", "would you buy", "would u buy", "would you get", "would u get", "would you pick", "would u pick",
	"would you take", "would u take", "would you choose", "would u choose", "would you do", "would u do", "would you run", "would u run", "do you suggest", "do u suggest", "would you suggest", "would u suggest", "your pick", "your choice", "your advice", "should i buy", "should i get"}

// asksPick accepts "what would you go with": what is best of what was asked, where
// the turn says nothing of its own.
func (l *line) asksPick() bool {
	if len(l.before.Facts) == 0 || len(l.facts) > 0 || len(l.r.Measures) > 0 || l.over != "" || len(l.topicWords()) > 0 || len(l.terms) > 9 {
		return false
	}
	for i := range l.terms {
		if id := l.terms[i].id; id != words.None && id.Kind() != words.Talk {
			return false
		}
	}
	for _, t := range picksAsked {
		if l.saysText(t) {
			return true
		}
	}
	return false
}

// askedBefore are the topics with figures that were asked last, a fit where there are
// none.
func (l *line) askedBefore() []Topic {
	var out []Topic
	for _, a := range l.before.Asked {
		if t := Topic(a); t != Concept && t != Fault && t != Choice {
			out = append(out, t)
		}
	}
	if len(out) == 0 {
		return []Topic{Fit}
	}
	return out
}

// asksLength accepts "how far can i run 6 gauge", "max length of 8 gauge": the run is
// what is asked for.
func (l *line) asksLength() bool {
	if l.setSlots["wire.run"] {
		return false
	}
	for _, t := range []string{"how far", "how long", "max length", "maximum length", "longest", "max run", "how many feet"} {
		if l.saysText(t) {
			return true
		}
	}
	return false
}

// motorFirst tells that a motor heads a list of what is wanted for a boat: "motor,
// wire and charger for my 18 ft bass boat".
func (l *line) motorFirst() bool {
	first := l.id(0)
	if (first != idMotor && first != idTrollingMotor) || len(l.terms) < 3 || l.terms[1].mark == 0 && l.id(1) != idAnd {
		return false
	}
	return l.setSlots["boat.length"] && (l.setSlots["load.total"] || l.setSlots["load.dry"])
}

// wantsMotor tells that a motor is wanted for a boat described: "i need a trolling
// motor for a pontoon", "need somethin for 18 ft aluminum".
func (l *line) wantsMotor() bool {
	if !l.setSlots["boat.length"] && !l.setSlots["boat.hull"] || l.over != "" || l.setSlots["motor.thrust"] {
		return false
	}
	for i := range l.terms {
		if l.id(i) != idMust || l.negated[i] || l.text(i) == "after" {
			continue
		}
		k := l.skipFillers(i+1, 1)
		switch l.text(k) {
		case "something", "somethin", "sumthin", "setup":
			return true
		}
		if id := l.id(k); id == idMotor || id == idTrollingMotor || id == idBowMount || id == idTransomMount {
			return true
		}
	}
	return false
}

// fitBeside tells that a boat described with its weight wants a motor although
// the words that were heard ask for something smaller: a price, a breaker, what
// the old motor died of.
func (l *line) fitBeside(topics []Topic) bool {
	boat := l.setSlots["boat.length"] || l.setSlots["boat.hull"] && l.setSlots["people.count"]
	if !boat || !(l.setSlots["load.total"] || l.setSlots["load.dry"] || l.setSlots["people.count"]) || l.over != "" && l.over != "motor.thrust" && l.over != "motor.voltage" && l.over != "motor.drive" {
		return false
	}
	for _, t := range topics {
		switch t {
		case Voltage:
		case Cost:
			if !l.saysText("cheapest") {
				return false
			}
		case Breaker:
			if l.asksMark || l.setSlots["motor.current"] {
				return false
			}
		case Fault, Concept, Choice:
			if l.saysText("difference") || l.saysText("explain") || l.saysText("why") || t == Fault && l.questionish() {
				return false
			}
			if !l.setSlots["load.total"] && !l.setSlots["load.dry"] {
				return false
			}
		default:
			return false
		}
	}
	return len(topics) > 0
}

func addChoice(over string, add func(Topic)) {
	switch over {
	case "motor.voltage":
		add(Voltage)
	case "motor.shaft":
		add(Shaft)
	case "motor.thrust":
		add(Thrust)
	case "wire.gauge":
		add(Wire)
	case "breaker":
		add(Breaker)
	case "battery.capacity", "battery.group", "battery.count":
		add(Bank)
	case "charger.current":
		add(Charger)
	default:
		add(Choice)
	}
}

func (l *line) meets(row *topicRow) bool {
	if row.when != nil && !row.when(l) {
		return false
	}
	if row.any != nil && l.any(row.any) && (row.with == nil || l.any(row.with)) {
		return true
	}
	for _, t := range row.texts {
		if l.saysText(t) {
			return true
		}
	}
	return row.any == nil && row.texts == nil
}

// lower is the beginning of the text in lower case: enough to tell what is
// asked, and bounded.
func (l *line) lower() string {
	t := l.r.Text
	if len(t) > 2000 {
		t = t[:2000]
	}
	return lowerASCII(t)
}

var topicRows = []topicRow{
	{name: "shaft asked", topic: Shaft, any: of("shaft", "too short", "too long"), when: noJudgeWire},
	{name: "how deep the prop goes", topic: Shaft, texts: []string{"how far down", "how deep should"}, when: func(l *line) bool { return l.setSlots["mount.height"] || l.anyOf("prop", "shaft") }},
	{name: "length for a known height", topic: Shaft, texts: []string{"what length", "how long", "which length", "what size do i order", "what do i order", "how long a"}, when: func(l *line) bool { return l.setSlots["mount.height"] }},
	{name: "wire asked", topic: Wire, any: of("wire", "gauge", "voltage drop", "jumper"), when: wireAsked},
	{name: "wire judged", topic: Wire, when: func(l *line) bool { return l.setSlots["wire.gauge"] && l.questionish() }},
	{name: "breaker asked", topic: Breaker, any: of("breaker"), when: notTrips},
	{name: "charger asked", topic: Charger, any: of("charger"), when: func(l *line) bool { return !l.faulty() || l.setSlots["charger.current"] && l.questionish() }},
	{name: "charging amps asked", topic: Charger, texts: []string{"what amps", "how many amps", "what charger"}, when: func(l *line) bool { return l.setSlots["charge.hours"] }},
	{name: "hours to charge in", topic: Charger, any: of("charge", "between trips"), when: func(l *line) bool { return l.setSlots["charge.hours"] && !l.setSlots["boat.length"] }},
	{name: "how far the breaker", topic: Breaker, texts: []string{"how far from", "how close to", "how far away", "how near"}, when: func(l *line) bool { return l.anyOf("breaker") || l.askedLast(Breaker) }},
	{name: "charging in the cold", topic: Concept, when: coldCharging},
	{name: "charge time asked", topic: Charger, when: chargeTime},
	{name: "run time asked", topic: Runtime, texts: []string{"how long will", "how long do", "how long can", "how long on", "how long at", "how long would", "how long does", "how many hours", "how many hrs", "how many minutes", "minutes at", "run time", "runtime", "will it make it", "last all day", "last a whole day", "last the whole day", "last a day", "last a full day", "last me", "will it last", "will they last", "how far", "miles per charge", "miles on a charge", "miles per", "how many miles", "range", "how long it", "how long a", "hours will", "hours do i", "hours at", "much longer do", "difference in hours", "hours difference", "difference in run", "last the day", "make it all day", "get me through", "get me home", "get us home", "get me back", "get us back", "make it home", "how long before", "how long till", "how long with", "how long w", "miles out of", "hours from", "hours on", "hours out of", "time at", "how much time"}, when: longTime},
	{name: "draw asked", topic: Runtime, texts: []string{"how many watts", "watts is", "watts does", "how many amps", "amp draw", "amps at", "amps does", "what does it draw", "whats it draw", "what will it draw", "what does that draw", "current draw", "how much current", "how many amp does"}, when: func(l *line) bool { return !l.anyOf("charger", "breaker", "charge", "wire") && !l.hasKind(read.Gauge) }},
	{name: "hours?", topic: Runtime, when: endsInHours},
	{name: "can it run so long", topic: Runtime, texts: []string{"can i run", "will i make", "will it make", "make it back", "enough for", "enough battery", "enough juice", "how long"}, when: batteryTalk},
	{name: "how long till it is empty", topic: Runtime, any: of("run out"), when: batteryTalk},
	{name: "bank asked", topic: Bank, any: of("battery", "bank", "amp hour", "group size", "deep cycle"), when: bankAsked},
	{name: "bank asked in amp-hours", topic: Bank, texts: []string{"what ah", "ah needed", "amp hours needed", "how much ah", "amp hours for", "ah for", "battery size", "size bank", "how many ah", "how many amp hours", "what size battery", "size me a battery", "smallest battery", "lightest battery", "cheapest battery", "biggest battery", "battery for", "batteries for", "battery do i need", "how much battery", "what capacity", "how many watt hours", "in watt hours", "how many wh", "what do i have in", "how much energy", "how many amp"}},
	{name: "bank's capacity asked", topic: Bank, any: of("bank", "lithium", "agm", "flooded", "gel"), when: func(l *line) bool { return l.saysText("capacity") || l.saysText("how big") }},
	{name: "speed asked", topic: Speed, texts: []string{"how fast", "top speed", "what speed", "how quick", "max speed", "how many mph", "what mph", "topspeed", "speed with", "speed from", "speed of a", "speed at", "kind of speed", "how much speed", "how much faster", "how much quicker", "any faster", "any quicker", "much faster", "twice as fast", "go faster", "how quickly"}},
	{name: "top speed of a motor", topic: Speed, any: of("top speed"), when: func(l *line) bool { return l.setSlots["motor.thrust"] }},
	{name: "speed alone", topic: Speed, any: of("speed", "top speed"), when: func(l *line) bool {
		return l.asksMark && len(l.terms) <= 3 && len(l.r.Measures) == 0 && len(l.before.Facts) > 0
	}},
	{name: "when it gives up holding", topic: Hold, texts: []string{"what gust", "how strong a", "how much breeze", "what breeze", "what current does", "river current can", "river current will", "what current will", "what current can", "what wind can", "what wind does", "give up", "gives up", "lose its hold", "quit holding", "what wind will"}, when: func(l *line) bool {
		return l.anyOf("hold", "position hold", "wind", "gust", "anchor", "current", "gentle breeze") || l.setSlots["motor.thrust"]
	}},
	{name: "most that it holds", topic: Hold, texts: []string{"most current", "most wind", "max wind", "max current", "strongest wind", "strongest current", "biggest wind"}},
	{name: "hold asked", topic: Hold, any: of("hold"), with: of("wind", "current", "windy", "how many"), when: holdAsked},
	{name: "hold in a speed asked", topic: Hold, any: of("hold"), when: func(l *line) bool {
		return l.questionish() && holdAsked(l) && (l.setSlots["wind.speed"] || l.setSlots["current.speed"])
	}},
	{name: "capacity asked", topic: Capacity, any: of("capacity plate"), when: capacityAsked},
	{name: "over the plate", topic: Capacity, texts: []string{"bow drop", "bow sink", "sit lower", "bow sit", "bow go down", "nose down", "am i over", "over capacity", "are we over", "too much weight", "overloaded", "over the limit", "bow heavy", "nose heavy", "bow down"}},
	{name: "weight asked", topic: Weight, texts: []string{"how heavy", "how much does it weigh", "how much do they weigh", "what does it weigh", "how much weight", "weigh more", "what do they weigh", "the weight", "the total", "how much loaded", "total weight", "weigh loaded", "weight loaded", "all up weight", "capacity and weight", "and weight", "n weight", "weight pls", "weight please", "whats it weigh", "weigh together", "how much does a group", "how much do two", "whats lighter", "save in pounds", "save in weight", "weight savings", "lbs lighter", "lighter by", "heavier by", "weight diff", "weight difference", "difference in weight", "how much lighter", "lbs lighter", "pounds lighter", "weight would i save", "weight do i save", "weighs less", "weigh less", "much weight", "which is lighter", "how much lighter", "how light", "how much weight"}, when: func(l *line) bool { return l.questionish() || !l.setSlots["load.total"] && !l.setSlots["load.dry"] }},
	{name: "weight of something asked", topic: Weight, any: of("weighs"), with: of("how many"), when: func(l *line) bool { return l.any(batteryKinds) && !l.setSlots["load.total"] && !l.setSlots["load.dry"] }},
	{name: "volts asked", topic: Voltage, texts: []string{"what voltage", "which voltage", "how many volts", "what volts"}},
	{name: "cost asked", topic: Cost, texts: []string{"how much would", "how much does it cost", "what would it cost", "how much money", "whats it cost", "what does it cost", "price", "how much for", "cost me", "what will it cost", "how much will it", "how much is", "cheapest", "all cost", "cost complete", "cost in all", "cost altogether", "cost all told", "total cost", "thing cost", "rig cost", "everything cost", "parts list", "list of parts", "shopping list"}, when: costAsked},
	{name: "thrust asked", topic: Thrust, any: of("thrust"), when: thrustAsked},
	{name: "pounds asked", topic: Thrust, texts: []string{"how many lbs", "how many pounds", "how much push", "how many lb"}, when: func(l *line) bool {
		return (l.setSlots["load.total"] || l.setSlots["load.dry"]) && !l.setSlots["motor.thrust"] && !l.any(batteryKinds)
	}},
	{name: "thrust cost of a wire", topic: Wire, texts: []string{"in thrust", "thrust loss", "thrust lost", "lose thrust", "losing thrust", "much thrust do i lose", "much thrust am i losing"}, when: func(l *line) bool {
		return l.setSlots["wire.gauge"] || l.setSlots["wire.run"]
	}},
	{name: "fit asked", topic: Fit, texts: []string{"what motor", "what size motor", "which motor", "what trolling motor", "what trollin", "whats it take", "how big a motor", "how big of a motor", "how much motor", "what size do", "what size trolling", "what do i need", "what would you put", "what should i get", "what should i buy", "what should i put", "what should i run", "what should i order", "recommend", "set me up", "whats the cheapest", "need a motor", "need motor", "want electric", "what size troll", "which trolling", "looking for a motor", "what do you suggest", "best motor", "right motor", "what would work", "size motor", "what fits", "fit me", "shopping for", "outfit", "smallest that", "cheapest that", "smallest thing", "whats a good", "good electric", "get a setup", "spec me", "spec out", "rig me", "whole setup", "whole rig", "what now", "what next", "need what", "so what do i", "what then", "hook me up", "lookin at a setup", "looking at a setup", "size me up", "need a setup", "whats the smallest", "whats the lightest", "least i can", "what can i get away with"}, when: func(l *line) bool { return true }},
	{name: "fault told", topic: Fault, when: faultTold},
	{name: "concept asked", topic: Concept, texts: []string{"how cold", "how hot", "watch for", "watch out for", "look out for", "be careful", "keep an eye on", "whats the difference", "whats the diff", "difference between", "explain", "how does", "how do i", "what does", "why does", "why do", "why is", "why are", "what is a", "what is the point", "tell me about", "how come", "what causes", "is it true", "is it ok", "is it safe", "do i have to", "should i", "do i need", "what happens"}, when: func(l *line) bool { return !l.anyBound() || l.saysText("difference") }},
	{name: "what is that", topic: Concept, when: whatIs},
}

// chargeTime accepts "how long to refill a 100 ah at 10 amps".
func chargeTime(l *line) bool {
	return (l.charging() || l.setSlots["charger.current"] && l.setSlots["battery.charge-left"]) && (l.any(askingWords) || l.setSlots["charger.current"] && (l.anyText("time", "hrs", "when") || l.anyOf("hours")))
}

func noJudgeWire(l *line) bool {
	return !l.anyOf("vibration") && (l.questionish() || l.setSlots["mount.height"] || l.setSlots["motor.shaft"] || l.has.holds(idShaft))
}

// wireAsked leaves out "same wire" in a list of what is there.
func wireAsked(l *line) bool { return !l.anyOf("transducer", "sonar") || l.questionish() }

func notTrips(l *line) bool { return !l.anyOf("trips breaker") }

// longTime leaves out "how long a shaft".
func longTime(l *line) bool {
	if l.saysText("how far down") || l.saysText("how deep") || l.saysText("replace") || l.saysText("lifespan") || l.saysText("how many years") {
		return false
	}
	if l.anyOf("shaft") || (l.charging() || l.anyOf("charger")) && !l.anyOf("throttle", "full throttle") {
		return false
	}
	if l.saysText("range") && !l.questionish() && !l.hasKind(read.Charge) && !l.hasKind(read.Group) && !l.any(batteryNamed) {
		return false
	}
	if l.saysText("how far") && (l.anyOf("breaker") || l.askedLast(Breaker)) && l.anyOf("battery", "bank", "breaker") {
		return false // the distance of a breaker
	}
	return true
}

func batteryTalk(l *line) bool {
	return !l.anyOf("shaft", "charger", "wire") && !l.charging() && (l.anyOf("battery", "bank", "amp hour", "group size", "throttle", "full throttle", "lithium", "agm", "flooded", "gel", "deep cycle") || l.hasKind(read.Charge) || l.askedLast(Runtime, Bank))
}

// bankAsked accepts "how many batteries", "what size battery", "which battery".
func bankAsked(l *line) bool {
	for i := range l.terms {
		if l.id(i) == idBattery && i+1 < len(l.terms) && l.terms[i+1].mark == '?' && i > 0 && (l.terms[i-1].mark != 0 || l.id(i-1) == idMust) {
			return true // "3 hours at 1.5 mph, battery?"
		}
	}
	if l.anyOf("charger", "charge", "breaker", "wire", "jumper") && !l.saysText("how many batter") && !l.saysText("what batter") {
		return false
	}
	for i := range l.terms {
		if !askingWords.holds(l.terms[i].id) {
			continue
		}
		switch l.text(i) {
		case "how long", "how far", "how fast", "how heavy":
			continue
		}
		if _, _, ok := l.near(i, 1, batteryKinds, 3); ok {
			return true
		}
	}
	return l.saysText("do i need") && l.anyOf("amp hour")
}

var batteryKinds = of("battery", "bank", "amp hour", "group size", "deep cycle", "lithium", "agm")

func holdAsked(l *line) bool {
	if l.setSlots["want.position-hold"] {
		return false
	}
	return l.questionish() || l.setSlots["wind.speed"] || l.setSlots["current.speed"]
}

func capacityAsked(l *line) bool {
	if l.setSlots["mount.height"] && !l.setSlots["load.plate"] {
		return false // a plate on the bow
	}
	return l.setSlots["load.plate"] || l.saysText("plate")
}

func costAsked(l *line) bool {
	return !l.saysText("in thrust") && !l.saysText("how much does it weigh")
}

func thrustAsked(l *line) bool { return l.questionish() && !l.setSlots["wire.gauge"] }

func faultTold(l *line) bool {
	if l.setSlots["battery.charge-left"] && (l.anyOf("charger") || l.askedLast(Charger)) {
		return false // run flat is no fault
	}
	if l.over != "" || l.setSlots["use.speed"] || l.setSlots["charger.current"] && l.questionish() {
		return false
	}
	for _, why := range l.reason {
		if why == "a meter reading" && !l.charging() {
			return true
		}
	}
	if !l.faulty() && !(l.slowTold() && !l.setSlots["boat.length"]) || l.saysText("how cold") || l.saysText("how hot") {
		return false
	}
	return !l.saysText("whats") || l.saysText("whats wrong") || l.saysText("mine") || l.saysText("my")
}

// slowTold leaves out slow trolling, which is no complaint.
func (l *line) slowTold() bool {
	for i := range l.terms {
		if l.id(i) == idSlow && l.id(i+1) != idTrolling {
			return true
		}
	}
	return false
}

// endsInHours accepts "55 lb, one group 31, hrs?".
func endsInHours(l *line) bool {
	n := len(l.terms) - 1
	if n > 0 && l.terms[n].mark == '?' {
		n--
	}
	return n > 0 && l.terms[n].id == idHours && l.terms[n-1].measure < 0 && l.asksMark && batteryTalk(l) && (l.terms[n-1].mark != 0 || l.id(n-1) == words.None)
}

// whatIs accepts "whats ventilation": a question word and a word of the trade,
// and no number.
func whatIs(l *line) bool {
	if len(l.terms) == 0 || len(l.terms) > 9 || l.anyBound() || l.terms[0].id == idWhatIf || len(l.before.Facts) > 0 && (len(l.facts) > 0 || l.pointsBack()) {
		return false
	}
	f := firstWord(l.text(0))
	return f == "what" || f == "whats" || f == "explain" || f == "why" || f == "define"
}

func (l *line) anyBound() bool {
	for i := range l.facts {
		if numeric(l.facts[i].Slot) {
			return true
		}
	}
	return false
}

// questionish tells whether the line asks anything.
func (l *line) questionish() bool {
	if l.asksMark {
		return true
	}
	for i := range l.terms {
		if s := l.terms[i].text; s != "" && (i == 0 || l.terms[i-1].mark != 0 || l.terms[i-1].measure >= 0) && asksWords[firstWord(s)] {
			return true
		}
		if askingWords.holds(l.terms[i].id) {
			return true
		}
	}
	return false
}

// asksWhy accepts "why that long?", "how come so much": the reason of what was
// just answered.
func (l *line) asksWhy() bool {
	if len(l.before.Facts) == 0 || len(l.terms) > 8 {
		return false
	}
	f := l.text(0)
	if f == "ok" || f == "and" || f == "but" || f == "wait" {
		f = l.text(1)
	}
	if f != "why" && !(f == "how" && l.text(1) == "come") && f != "whys" && !l.saysText("how do you figure") && !l.saysText("where does that come from") && !l.saysText("how so") {
		return false
	}
	for i := range l.terms {
		if id := l.terms[i].id; id >= 0 && (id.Kind() == words.Symptom) {
			return false
		}
	}
	return !l.saysText("mine") && !l.saysText("my")
}

// judged names the slots whose said value is to be judged.
func (l *line) judged(w *Wish, add func(Topic)) {
	if l.setSlots["breaker.in-hand"] && l.questionish() {
		w.Judge = append(w.Judge, "breaker.in-hand")
		add(Breaker)
	}
	judge := l.anyOf("enough", "too short", "too long", "long enough") || l.anyOf("fine") && l.questionish()
	if !judge && !l.saysText("ok for") && !l.saysText("overkill") && !l.saysText("can i use") && !l.saysText("will a") && !l.saysText("would a") && !l.saysText("would an") && !l.saysText("can a") && !l.saysText("does") && !l.saysText("gonna") && !l.saysText("is a") {
		return
	}
	for _, f := range l.facts {
		switch f.Slot {
		case "motor.thrust":
			w.Judge = append(w.Judge, f.Slot)
			ofBattery := (l.setSlots["battery.capacity"] || l.setSlots["battery.group"] || l.setSlots["battery.count"]) && (l.setSlots["use.throttle"] || l.setSlots["use.hours"]) && !l.setSlots["boat.length"] && !l.setSlots["boat.hull"]
			if ofBattery {
				add(Runtime)
			} else if !l.anyOf("hold", "top speed") && !has(topicNames(w.Topics), string(Speed)) && !has(topicNames(w.Topics), string(Hold)) && !has(topicNames(w.Topics), string(Runtime)) {
				add(Thrust)
			}
		case "motor.shaft":
			w.Judge = append(w.Judge, f.Slot)
			add(Shaft)
		case "wire.gauge":
			w.Judge = append(w.Judge, f.Slot)
			add(Wire)
		case "battery.capacity", "battery.group":
			if judge {
				w.Judge = append(w.Judge, f.Slot)
			}
		case "charger.current":
			w.Judge = append(w.Judge, f.Slot)
			add(Charger)
		}
	}
}

// topicWords are the words of the trade for the notes.
func (l *line) topicWords() []string {
	var out []string
	for i := range l.terms {
		id := l.terms[i].id
		if id >= 0 && id.Kind() != words.Talk && !has(out, id.Name()) && len(out) < 12 {
			out = append(out, id.Name())
		}
	}
	return out
}

// implied gives the topic of a line that asks nothing in words: what a boat
// asks for is a fit, what a deck's height asks for is a shaft.
func (l *line) implied(c card.Card, q bool, add func(Topic)) {
	set := func(names ...string) bool {
		for _, n := range names {
			if l.setSlots[n] {
				return true
			}
		}
		return false
	}
	follow := len(l.before.Facts) > 0 && !l.newBoat()
	boat := set("boat.length", "boat.hull", "load.total", "load.dry", "boat.material")
	switch {
	case !follow && l.asksWhether():
		add(Concept)
	case follow && set("battery.charge-left") && l.askedLast(Charger):
		add(Charger) // "they come back dead flat"
	case follow && !q:
		if set("mount.height", "motor.shaft") && !l.askedLast(Shaft, Fit) {
			add(Shaft)
		} else if set("load.plate") {
			add(Capacity)
		}
	case follow && (boat || set("people.count", "wind.speed", "motor.voltage", "motor.thrust", "battery.chemistry", "battery.count", "use.throttle", "use.hours")):
		// A question that only changes facts keeps what was asked before.
	case boat && set("motor.thrust"):
		add(Thrust)
	case boat:
		add(Fit)
	case set("mount.height", "motor.shaft"):
		add(Shaft)
	case set("wire.run", "wire.gauge"):
		add(Wire)
	case set("charger.current", "charge.hours"), set("battery.capacity", "battery.group") && l.hasReason("a share that is no throttle") && !set("use.throttle"):
		add(Charger)
	case set("battery.capacity", "battery.group", "battery.count", "battery.chemistry", "battery.reserve", "battery.use"):
		if set("use.hours") && !set("battery.capacity", "battery.group", "battery.reserve", "battery.count") {
			add(Bank)
		} else if set("motor.thrust", "motor.current", "use.throttle", "use.hours") {
			add(Runtime)
		} else {
			add(Bank)
		}
	case set("motor.voltage") && q:
		add(Voltage)
	case len(l.facts) == 1 && set("temperature.air", "water.weeds") || len(l.facts) == 1 && Inner(l.facts[0].Slot):
		add(Concept)
	case len(l.facts) > 0 && !follow:
		add(Fit)
	case q && len(l.facts) == 0 && follow && len(l.terms) <= 5 && l.anyOf("fine", "enough") && len(l.r.Measures) == 0:
		for _, a := range l.before.Asked {
			add(Topic(a)) // "still ok?"
		}
	case q && len(l.facts) == 0 && follow && l.pointsBack():
	case q && len(l.facts) == 0, len(l.facts) == 0 && !follow && len(l.topicWords()) > 0:
		add(Concept)
	}
}

// asksWhether tells that the line asks whether or why something is so, and gives no
// number: "does cold kill lithium".
func (l *line) asksWhether() bool {
	if l.saysDigit() || len(l.terms) < 3 {
		return false
	}
	switch firstWord(l.text(0)) {
	case "does", "do", "is", "are", "should", "can", "why", "will", "has", "did", "would":
		return !l.setSlots["boat.length"] && !l.setSlots["people.count"] && !l.setSlots["wind.speed"]
	}
	return false
}

// saysDigit tells that a number is written in figures, or a measure was bound.
func (l *line) saysDigit() bool {
	for m := range l.r.Measures {
		if m < 64 && hasDigit(l.r.Measures[m].Said) || l.r.Measures[m].Kind != read.Number && l.r.Measures[m].Kind != read.Duration {
			return true
		}
	}
	return false
}

// hasReason tells that a number was set aside for this reason.
func (l *line) hasReason(why string) bool {
	for _, r := range l.reason {
		if r == why {
			return true
		}
	}
	return false
}

// pointsBack accepts "what does that come to": nothing but a pronoun says what
// is meant.
func (l *line) pointsBack() bool {
	pronoun := false
	for i := range l.terms {
		switch l.text(i) {
		case "that", "it", "this", "those", "them":
			pronoun = true
		}
		if id := l.terms[i].id; id != words.None && id.Kind() != words.Talk {
			return false
		}
	}
	return pronoun && len(l.terms) <= 7
}

func withoutTopic(ts []Topic, gone Topic) []Topic {
	var out []Topic
	for _, t := range ts {
		if t != gone {
			out = append(out, t)
		}
	}
	return out
}
