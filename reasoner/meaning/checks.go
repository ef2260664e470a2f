package meaning

import (
	"strings"

	"heronlake.example/ask/reasoner/card"
)

// A limitRow is what a slot can hold at all; beyond it somebody misspoke. The
// limits are generous: common practice, no published source.
type limitRow struct {
	slot      string
	low, high float64
	what      string
}

var limitRows = []limitRow{
	{"boat.length", 1.5, 30, "a boat for an electric motor is 6 to 60 ft long"},
	{"boat.beam", 0.4, 6, "a beam is 2 to 12 ft"},
	{"load.total", 20, 15000, "a loaded boat weighs between 60 and 20,000 lb"},
	{"load.dry", 8, 14000, "an empty boat weighs between 25 and 20,000 lb"},
	{"people.count", 0, 40, "nobody takes more than 40 people"},
	{"wind.speed", 0, 50, "no boat is out in more than 100 mph of wind"},
	{"current.speed", 0, 8, "a current runs at most about 15 mph"},
	{"chop.height", 0, 6, "waves beyond 15 ft are no water for a trolling motor"},
	{"water.depth", 0, 12000, "no water is so deep"},
	{"mount.height", 0.02, 2.5, "a mount surface stands 1 to 90 in above the water"},
	{"motor.shaft", 0.3, 3.2, "shafts are 12 to 120 in long"},
	{"motor.thrust", 20, 2000, "trolling motors make up to about 250 lb of thrust"},
	{"motor.current", 0.1, 500, "a trolling motor draws up to a few hundred amps"},
	{"battery.capacity", 0.5, 5000, "a battery holds up to a few hundred amp-hours"},
	{"wire.gauge", -4, 24, "wire for a motor is 4/0 to 18 gauge"},
	{"use.hours", 0, 72, "a day has 24 hours"},
	{"use.throttle", 0, 1.0001, "throttle goes to 100 percent"},
	{"temperature.air", -60, 60, "no such weather"},
}

// check reports what cannot be: values out of all range and facts of this turn
// that contradict each other or what stands. A fact that cannot be is taken off
// the card again.
func (l *line) check(out *Outcome) {
	for m := range l.r.Measures {
		if m >= 64 {
			break
		}
		me := &l.r.Measures[m]
		if lo, _ := ends(quantity{me.Value, me.Low, me.High}); lo < 0 && (me.Said[0] == '-' || strings.HasPrefix(me.Said, "−") || strings.HasPrefix(me.Said, "negative")) && me.As == "" && !(l.used[m] && l.reason[m] == "") && me.Unit != "degC" && me.Unit != "AWG" {
			l.complain(out, "out-of-range", "", me.Said, me.Start, me.End, "\""+me.Said+"\" is below zero; say it without the minus")
		}
	}
	l.outOfBounds(out)
	l.limits(out)
	l.weights(out)
	l.hullWeights(out)
	l.seriesVolts(out)
}

// seriesVolts compares what so many 12-volt batteries in series make with the volts
// of the motor.
func (l *line) seriesVolts(out *Outcome) {
	layout, a := out.Card.Get("battery.layout")
	count, b := out.Card.Get("battery.count")
	volts, c := out.Card.Get("motor.voltage")
	if !a || !b || !c || layout.Text != "series" || count.Value == nil || volts.Value == nil || !(l.setSlots["battery.layout"] || l.setSlots["battery.count"] || l.setSlots["motor.voltage"]) {
		return
	}
	if _, each := out.Card.Get("battery.voltage"); each || *count.Value < 3 || *count.Value > 4 || *count.Value*12 == *volts.Value || *count.Value*6 == *volts.Value {
		return
	}
	start, end := l.find(volts.Said)
	l.complain(out, "contradiction", "motor.voltage", volts.Said, start, end, plainNumber(*count.Value)+" batteries of 12 V in series make "+plainNumber(*count.Value*12)+" V, and the motor is said to be "+volts.Said+"; say which of the two is right")
}

func (l *line) complain(out *Outcome, kind, slot, said string, start, end int, text string) {
	l.problems = append(l.problems, Problem{Kind: kind, Slot: slot, Said: said, Start: start, End: end, Text: text})
}

// outOfBounds reports numbers that a row would have taken had they been
// possible: a wind of 300 mph, a boat of 4 miles.
func (l *line) outOfBounds(out *Outcome) {
	var v view
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if m >= 64 {
			return
		}
		if l.used[m] || me.As != "" || me.Kind == "number" {
			continue
		}
		l.look(l.at[m], &v)
		first := l.labelFirst(l.at[m])
		best, which := 0, (*cue)(nil)
		for _, c := range byKind[me.Kind] {
			wide := *c
			wide.high = 0
			if c.slot == "" || c.high == 0 || c.weight < 5 {
				continue
			}
			if s, ok := l.score(&wide, m, &v, first); ok && s > best {
				best, which = s, c
			}
		}
		if which == nil {
			continue
		}
		for _, row := range limitRows {
			lo, hi := ends(l.convert(me, ""))
			if which.slot == "motor.thrust" {
				lo, hi = lo*9.80665, hi*9.80665
			}
			if row.slot == which.slot && lo > row.high {
				l.complain(out, "out-of-range", row.slot, me.Said, me.Start, me.End, "\""+me.Said+"\" cannot be right: "+row.what+"; say it again")
			}
		}
	}
}

// boatSizes are the slots of which both ends of a range must be possible.
var boatSizes = map[string]bool{"boat.length": true, "boat.beam": true, "load.total": true, "load.dry": true}

func (l *line) limits(out *Outcome) {
	for _, f := range l.facts {
		for _, row := range limitRows {
			if row.slot != f.Slot || f.Value == nil && f.Low == nil && f.High == nil {
				continue
			}
			lo, hi := ends(quantity{f.Value, f.Low, f.High})
			if hi < row.low || lo > row.high || boatSizes[f.Slot] && f.Low != nil && f.High != nil && (lo < row.low || hi > row.high) {
				start, end := l.find(f.Said)
				l.complain(out, "out-of-range", f.Slot, f.Said, start, end, "\""+f.Said+"\" cannot be right: "+row.what+"; say it again")
				out.Card = out.Card.Without(f.Slot)
			}
		}
	}
}

// find gives the bytes of words in the text, 0 and 0 when they do not stand
// together.
func (l *line) find(said string) (int, int) {
	k := strings.Index(l.r.Text, said)
	if said == "" || k < 0 {
		return 0, 0
	}
	return k, k + len(said)
}

// weights compares loaded and empty weight.
func (l *line) weights(out *Outcome) {
	if !l.setSlots["load.total"] && !l.setSlots["load.dry"] {
		return
	}
	total, a := out.Card.Get("load.total")
	dry, b := out.Card.Get("load.dry")
	if !a || !b {
		return
	}
	_, most := ends(quantity{total.Value, total.Low, total.High})
	least, _ := ends(quantity{dry.Value, dry.Low, dry.High})
	if most >= least {
		return
	}
	said := total.Said
	if !l.setSlots["load.total"] {
		said = dry.Said
	}
	start, end := l.find(said)
	l.complain(out, "contradiction", "load.total", said, start, end, "loaded ("+total.Said+") is lighter than empty ("+dry.Said+"); say which of the two is right")
	out.Card = out.Card.Without("load.total")
}

// A hullLimit is the length and the loaded weight beyond which a hull is no such
// thing. Common practice, no published source.
type hullLimit struct {
	hull            string
	short, long     float64 // m
	lightest, heavy float64 // kg loaded
}

var hullLimits = []hullLimit{
	{"kayak", 1.8, 6.5, 20, 550},
	{"canoe", 2.4, 8.5, 20, 750},
	{"inflatable", 1.6, 9, 25, 2500},
	{"jon", 2.1, 8.5, 60, 2800},
	{"bass", 3, 8.5, 130, 3200},
	{"pontoon", 2.2, 13, 120, 6500},
}

// hullWeights compares the hull with its length and weight: no kayak weighs two
// tons.
func (l *line) hullWeights(out *Outcome) {
	hull, ok := out.Card.Get("boat.hull")
	if !ok || !(l.setSlots["boat.hull"] || l.setSlots["boat.length"] || l.setSlots["load.total"] || l.setSlots["load.dry"]) {
		return
	}
	l.floats(out, hull)
	for _, row := range hullLimits {
		if row.hull != hull.Text {
			continue
		}
		for _, slot := range []string{"load.total", "load.dry"} {
			f, ok := out.Card.Get(slot)
			if !ok {
				continue
			}
			lo, hi := ends(quantity{f.Value, f.Low, f.High})
			low := row.lightest
			if slot == "load.dry" {
				low = row.lightest / 2
			}
			if lo > row.heavy || hi < low {
				start, end := l.find(f.Said)
				l.complain(out, "contradiction", slot, f.Said, start, end, "a "+hull.Said+" does not weigh "+f.Said+"; say the weight again, or what boat it is")
				out.Card = out.Card.Without(slot)
			}
		}
		if f, ok := out.Card.Get("boat.length"); ok {
			lo, hi := ends(quantity{f.Value, f.Low, f.High})
			if lo > row.long || hi < row.short {
				start, end := l.find(f.Said)
				l.complain(out, "contradiction", "boat.length", f.Said, start, end, "a "+hull.Said+" is not "+f.Said+" long; say the length again, or what boat it is")
				out.Card = out.Card.Without("boat.length")
			}
		}
	}
}

// floats compares a small boat's loaded weight with what a hull of its length can
// carry at all: 32 kg for each cubic metre of its length. Common practice, no
// published source.
func (l *line) floats(out *Outcome, hull card.Fact) {
	switch hull.Text {
	case "jon", "inflatable", "other", "vee", "canoe", "kayak":
	default:
		return
	}
	length, a := out.Card.Get("boat.length")
	total, b := out.Card.Get("load.total")
	if !a || !b {
		return
	}
	_, long := ends(quantity{length.Value, length.Low, length.High})
	lo, _ := ends(quantity{total.Value, total.Low, total.High})
	if long <= 0 || long > 4.3 || lo <= 32*long*long*long {
		return
	}
	start, end := l.find(total.Said)
	l.complain(out, "contradiction", "load.total", total.Said, start, end, "a "+hull.Said+" of "+length.Said+" does not carry "+total.Said+"; say the weight again, or the length")
	out.Card = out.Card.Without("load.total")
}
