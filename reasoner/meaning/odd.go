package meaning

import "heronlake.example/ask/reasoner/read"

// An oddRow is a number said for the thing asked that cannot be one: an answer with
// the usual value in its place would be about something else.
type oddRow struct {
	kind      read.Kind
	far       bool // a length in miles
	asked     []Topic
	slot      string
	low, high float64 // what is possible, in the measure's own unit; beyond it the row holds
	what      string
}

const (
	hour   = 3600.0     // s
	pounds = 0.45359237 // kg: NIST SP 811
)

var oddRows = []oddRow{
	{kind: read.Current, asked: []Topic{Charger}, slot: "charger.current", low: 0.04, high: 1000, what: "a charger gives some amps, up to a few hundred"},
	{kind: read.Current, asked: []Topic{Wire, Breaker, Runtime}, slot: "motor.current", low: 0.04, high: 500, what: "a motor draws some amps, up to a few hundred"},
	{kind: read.Length, asked: []Topic{Wire}, slot: "wire.run", low: 0.05, high: 500, what: "a run of wire has some length, up to a boat's"},
	{kind: read.Length, far: true, asked: []Topic{Runtime, Bank, Fit}, slot: "use.distance", low: 50, high: 200000, what: "no battery carries a boat so far, nor is so little a trip"},
	{kind: read.Duration, asked: []Topic{Charger}, slot: "charge.hours", low: 0.15 * hour, high: 200 * hour, what: "a battery is charged in hours, up to a few days"},
	{kind: read.Charge, asked: []Topic{Runtime, Bank, Charger, Weight}, slot: "battery.capacity", low: 0.1, high: 5000, what: "a battery holds up to a few hundred amp-hours"},
	{kind: read.Speed, asked: []Topic{Runtime, Bank}, slot: "use.speed", low: 0.02, high: 4.6, what: "an electric motor trolls at walking pace"},
	{kind: read.Mass, asked: []Topic{Fit, Thrust, Speed, Hold}, slot: "load.total", low: 0.9 * pounds, high: 15000, what: "a loaded boat weighs between 60 and 20,000 lb"},
	{kind: read.Length, asked: []Topic{Fit, Thrust, Speed}, slot: "boat.length", low: 0, high: 30, what: "a boat for an electric motor is 6 to 60 ft long"},
}

// odd turns a number that found no place into one that cannot be, where it was said
// for what is asked.
func (l *line) odd(w Wish) {
	for k := range l.problems {
		p := &l.problems[k]
		if p.Kind != "unplaced" {
			continue
		}
		m := l.measureAt(p.Start)
		if m < 0 || l.reason[m] != "" {
			continue
		}
		if slot, what := l.oddAs(m, w); slot != "" && !l.setSlots[slot] {
			p.Kind, p.Slot, p.Text = "out-of-range", slot, "\""+p.Said+"\" cannot be right: "+what+"; say it again"
		}
	}
}

// measureAt is the measure that begins at a byte, -1 for none.
func (l *line) measureAt(start int) int {
	for m := range l.r.Measures {
		if l.r.Measures[m].Start == start {
			return m
		}
	}
	return -1
}

// oddAs tells of which slot a measure is an impossible value.
func (l *line) oddAs(m int, w Wish) (slot, what string) {
	me := &l.r.Measures[m]
	if me.Value == nil || me.As != "" {
		return "", ""
	}
	v := *me.Value
	if me.Kind == read.Mass && l.id(l.at[m]+1) == idMotor && (v < 8*pounds || v > 250*pounds) {
		return "motor.thrust", "trolling motors make up to about 250 lb of thrust"
	}
	for i := range oddRows {
		row := &oddRows[i]
		if row.kind != me.Kind || me.Kind == read.Length && row.far != farUnit[me.Spoken] || v >= row.low && v <= row.high {
			continue
		}
		for _, t := range row.asked {
			if has(topicNames(w.Topics), string(t)) {
				return row.slot, row.what
			}
		}
	}
	return "", ""
}
