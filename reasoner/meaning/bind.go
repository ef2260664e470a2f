package meaning

import (
	"strings"

	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// Bind takes one turn of talk and the card as it stood before, and gives the
// card as it stands after, with what was asked and what could not be
// understood. The same reading and card always give the same outcome; the card
// passed in is not changed. Taking a turn back is left to whoever keeps the
// cards: the outcome says Undo and holds the card unchanged.
func Bind(r read.Reading, c card.Card) Outcome {
	out := Outcome{Card: c}
	out.Card.Turn = c.Turn + 1
	stood := c
	l := newLine(r, c)
	out.Command = l.command()
	if out.Command == Undo {
		return out
	}
	if out.Command == Fresh {
		c = card.Card{Turn: c.Turn}
		l.before = c
	}
	old, back := l.comesBack()
	if back {
		c, l.before = old, old
	}
	l.understand()

	out.Corrected = l.corrected
	out.Metric = l.metric
	out.Card, out.Changed = l.apply(c)
	out.Card.Turn = c.Turn + 1
	out.Wish = l.wish(out.Card, out.Changed)
	if out.Wish.Out {
		// Talk of something else changes nothing, whatever its numbers look like.
		out.Card, out.Changed = stood, nil
		out.Card.Turn = stood.Turn + 1
		out.Problems = l.problems
		return out
	}
	l.odd(out.Wish)
	l.check(&out)
	if out.Command == Fresh || back {
		out.Changed = changed(stood, out.Card)
	}
	out.Card.Over, out.Card.Offered = l.over, l.compare
	if len(out.Wish.Topics) > 0 {
		out.Card.Asked = topicNames(out.Wish.Topics)
	}
	out.Problems = l.problems
	return out
}

// understand runs the steps in order: each leaves facts in l.facts and marks
// the measures and words that it has used.
func (l *line) understand() {
	if len(l.terms) == 0 {
		return
	}
	l.shortTurn()     // what a short later turn means by what was said
	l.setAside()      // choices, comparisons, ratios, other people's numbers
	l.profile()       // a duty profile takes its hours and throttles in pairs
	l.people()        // who is aboard
	l.trailerWeight() // what the scale shows, less the trailer
	l.partsAfterNumbers()
	l.gearList()      // gear told piece by piece
	l.relative()      // so much longer than before
	l.measures()      // every number left to its slot, strongest evidence first
	l.partsNotTotal() // an unlabelled weight in a list of weights
	l.shareWeight()   // a group's weight among its people
	l.speakerAlone()  // one who tells a weight and names nobody else
	l.drawnTo()       // how far down a battery is run
	l.chargeLeft()    // what is left in a battery to be charged
	l.worded()        // full throttle, all day, a pair, a round trip
	l.wordFacts()     // hulls, materials, chemistry, water, mounts, drives
	l.power()         // the outboard's horsepower, for its weight
	l.namedEngine()   // an outboard called by its maker's name
	l.noEngine()      // a boat without one
	l.weather()       // winds and water in words
	l.wants()         // wishes, negated wishes
	l.followUp()      // changes to what stands
	l.relabel()       // "no, I mean dry"
	l.inGeneral()     // "why do motors need two batteries" is about no boat
	l.reportLeft()    // what found no place
}

// Inner tells whether a slot is for the core alone and no part of the public
// list of what was understood.
func Inner(slot string) bool {
	switch slot {
	case "load.batteries", "load.people", "load.fuel", "load.said", "load.added", "people.added", "wind.gust", "water.swim", "water.rules",
		"battery.use", "boat.speed-measured", "use.distance", "use.docking", "engine.power", "boat.tubes", "breaker.in-hand", "battery.charge-left", "battery.peukert", "battery.depth-limit", "water.temperature", "motor.other":
		return true
	}
	return false
}

// numeric tells whether a slot holds a number.
func numeric(slot string) bool { return unitOf[slot] != "" }

// unitOf is the contract's unit of each slot that holds a number.
var unitOf = map[string]string{
	"boat.length": "m", "boat.beam": "m", "boat.freeboard": "m", "mount.height": "m", "motor.shaft": "m",
	"wire.run": "m", "chop.height": "m", "water.depth": "m", "use.distance": "m",
	"load.dry": "kg", "load.total": "kg", "load.gear": "kg", "load.engine": "kg", "load.plate": "kg",
	"people.each": "kg", "load.said": "kg", "load.added": "kg", "load.people": "kg", "load.fuel": "kg",
	"people.count": "1", "battery.count": "1", "motor.count": "1", "use.throttle": "1", "wire.drop": "1", "people.added": "1",
	"fuel.volume": "L", "wind.speed": "m/s", "wind.gust": "m/s", "current.speed": "m/s", "use.speed": "m/s", "boat.speed-measured": "m/s",
	"use.hours": "h", "charge.hours": "h", "battery.reserve": "s",
	"engine.power": "W", "breaker.in-hand": "A", "motor.other": "N", "battery.charge-left": "1", "battery.peukert": "1", "battery.depth-limit": "1", "water.temperature": "degC", "boat.tubes": "1", "motor.thrust": "N", "motor.voltage": "V", "battery.voltage": "V", "motor.current": "A", "charger.current": "A",
	"battery.capacity": "Ah", "wire.gauge": "AWG", "wire.insulation": "degC", "temperature.air": "degC", "money.budget": "USD",
}

func topicNames(ts []Topic) []string {
	out := make([]string, len(ts))
	for i, t := range ts {
		out[i] = string(t)
	}
	return out
}

func num(v float64) *float64 { return &v }

// said is the text between two bytes, trimmed.
func (l *line) said(start, end int) string {
	return strings.TrimSpace(l.r.Text[start:end])
}
