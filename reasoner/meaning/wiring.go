package meaning

import (
	"strings"

	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

var wireTalk = of("wire", "gauge", "jumper", "voltage drop", "one way", "round trip")

// wiringCues tells what a number says of the wire.
var wiringCues = []cue{
	{name: "one way", slot: "wire.run", kind: read.Length, low: 0.1, high: 500, after: of("one way", "round trip"), reachA: 3, before: of("one way", "round trip"), reachB: 2, weight: 10},
	{name: "one way, bare", slot: "wire.run", kind: read.Length, bare: "ft", low: 0.9, high: 60, after: of("one way", "round trip"), reachA: 1, before: of("one way", "round trip"), reachB: 2, weight: 6, when: isBare},
	{name: "length of wire", slot: "wire.run", kind: read.Length, bare: "", low: 0.1, high: 500, after: of("wire", "cable", "jumper"), reachA: 1, before: of("wire", "cable", "jumper"), reachB: 2, weight: 7, when: not(footer)},
	{name: "so many of wire", slot: "wire.run", kind: read.Length, bare: "ft", low: 0.9, high: 60, after: of("wire", "cable"), reachA: 0, weight: 9, when: ofWire},
	{name: "wire run of so many", slot: "wire.run", kind: read.Length, bare: "ft", low: 0.3, high: 60, before: of("wire", "run", "cable"), reachB: 0, weight: 5, when: runsTo},
	{name: "a run", slot: "wire.run", kind: read.Length, low: 0.1, high: 60, after: of("run"), reachA: 0, before: of("run"), reachB: 1, weight: 7, when: feetOfRun},
	{name: "how far the breaker is", slot: "", kind: read.Length, before: of("breaker"), reachB: 2, weight: 10, when: breakerFar},
	{name: "from the battery to the plug", slot: "wire.run", kind: read.Length, bare: "ft", low: 0.3, high: 30, after: of("battery", "bank", "breaker", "plug"), reachA: 1, before: of("battery", "bank", "plug"), reachB: 3, weight: 7, when: batteryToPlug},
	{name: "up to the bow", slot: "wire.run", kind: read.Length, bare: "ft", low: 1, high: 30, after: of("bow", "plug"), reachA: 2, weight: 7, need: wireTalk.with(of("breaker", "battery")), when: feetOfRun},
	{name: "length in talk of wire", slot: "wire.run", kind: read.Length, low: 0.1, high: 500, alone: true, weight: 4, when: wireInHand},

	{name: "wire gauge", slot: "wire.gauge", kind: read.Gauge, alone: true, weight: 9},
	{name: "number so-and-so wire", slot: "wire.gauge", kind: read.Number, low: 0, high: 18, alone: true, weight: 8, when: numberSix},
	{name: "number, then wire", slot: "wire.gauge", kind: read.Number, low: 0, high: 18, after: of("wire", "gauge"), reachA: 0, weight: 6, when: wholeGauge},
	{name: "wire is a number", slot: "wire.gauge", kind: read.Number, low: 0, high: 12, before: of("wire"), reachB: 0, weight: 7, when: wireIs},
	{name: "is 8 ok?", slot: "wire.gauge", kind: read.Number, low: 0, high: 12, alone: true, weight: 7, when: gaugeJudged},
	{name: "insulation by its rating", slot: "wire.insulation", kind: read.Number, low: 60, high: 200, alone: true, weight: 8, when: ratedC},
	{name: "insulation's degrees", slot: "wire.insulation", kind: read.Temperature, low: 50, high: 260, after: of("insulation", "wire"), reachA: 2, before: of("insulation"), reachB: 2, weight: 9},
	{name: "insulation's bare degrees", slot: "wire.insulation", kind: read.Number, low: 60, high: 200, after: of("insulation"), reachA: 1, before: of("insulation"), reachB: 1, weight: 8},
	{name: "degrees of wire", slot: "wire.insulation", kind: read.Temperature, low: 60, high: 260, alone: true, weight: 4, need: wireTalk},
	{name: "the water's temperature", slot: "water.temperature", kind: read.Temperature, low: -2, high: 40, alone: true, weight: 9, when: ofTheWater},
	{name: "air temperature", slot: "temperature.air", kind: read.Temperature, low: -45, high: 55, alone: true, weight: 3},

	{name: "voltage drop", slot: "wire.drop", kind: read.Percent, bare: "", low: 0.001, high: 0.3, after: of("voltage drop", "drop"), reachA: 3, before: of("voltage drop", "drop"), reachB: 4, weight: 8},
	{name: "percent in talk of wire", slot: "wire.drop", kind: read.Percent, low: 0.001, high: 0.15, alone: true, weight: 5, when: wireInHand},
}

func isBare(l *line, m int) bool { return l.r.Measures[m].Kind == read.Number }

// numberSix accepts "number 6" in talk of wire.
func numberSix(l *line, m int) bool {
	i := l.at[m]
	sign := l.r.Measures[m].Start > 0 && l.r.Text[l.r.Measures[m].Start-1] == '#' || l.r.Measures[m].Said[0] == '#'
	return wholeGauge(l, m) && (l.text(i-1) == "number" || l.text(i-1) == "no" || sign) && (l.any(wireTalk) || l.hasKind(read.Current))
}

// gaugeJudged accepts "11 ft to the bow, 24v 60 amp. 8 ok?".
func gaugeJudged(l *line, m int) bool {
	i := l.at[m]
	if !wholeGauge(l, m) || l.r.Measures[m].Kind != read.Number || l.hasKind(read.Gauge) || !l.hasKind(read.Current) || !l.hasKind(read.Length) || l.any(hulls) {
		return false
	}
	next := l.id(i + 1)
	return (next == idFine || next == idEnough) && (i == 0 || l.terms[i-1].mark != 0 || l.filler(i-1))
}

// ofWire accepts "21 of wire".
func ofWire(l *line, m int) bool {
	return l.r.Measures[m].Kind == read.Number && l.text(l.at[m]+1) == "of" && l.r.Measures[m].Bare >= 3
}

// wireIs accepts "wire is 10" beside a current: a gauge.
func wireIs(l *line, m int) bool {
	i := l.at[m]
	return wholeGauge(l, m) && l.endsAt(i) && (l.text(i-2) == "wire" && (l.text(i-1) == "is" || l.text(i-1) == "its") || l.text(i-1) == "wire" && l.hasKind(read.Length) && (i == 1 || l.terms[i-2].mark != 0)) && l.hasKind(read.Current) && !l.hasKind(read.Gauge)
}

// insulations are the temperatures that wire is rated for: 33 CFR 183.425.
var insulations = map[float64]bool{60: true, 75: true, 80: true, 90: true, 105: true, 125: true, 200: true}

// ratedC accepts "105 c rated 6 gauge".
func ratedC(l *line, m int) bool {
	return insulations[l.r.Measures[m].Bare] && l.text(l.at[m]+1) == "c" && (l.any(wireTalk) || l.hasKind(read.Gauge))
}

// wholeGauge accepts the even sizes that wire is sold in.
func wholeGauge(l *line, m int) bool {
	v := l.r.Measures[m].Value
	return v != nil && *v == float64(int(*v)) && (int(*v)%2 == 0 || *v == 1)
}

func feetOfRun(l *line, m int) bool {
	me := &l.r.Measures[m]
	_, _, hull := l.near(l.at[m], 1, boatWords, 0)
	if l.text(l.at[m]+1) != "run" && !l.wiring() && !l.hasKind(read.Current) && (l.id(l.skipFillers(l.at[m]-1, -1)-1) == idUs || l.id(l.skipFillers(l.at[m]-1, -1)-1) == idMe) {
		return false // "we run a 17 foot"
	}
	return !hull && (me.Kind != read.Number || l.wiring())
}

func runsTo(l *line, m int) bool {
	return l.endsAt(l.at[m]) || l.text(l.at[m]+1) == "to" || l.text(l.at[m]+1) == "from"
}

// batteryToPlug accepts a length that lies between battery and motor: a word of
// place joins it to the battery.
func batteryToPlug(l *line, m int) bool {
	i := l.at[m]
	if _, _, hull := l.near(i, 1, hullOrBoat, 0); hull || footer(l, m) {
		return false
	}
	me := &l.r.Measures[m]
	if me.Kind == read.Length && me.Spoken == "in" && !l.has.holds(idJumper) {
		return false
	}
	for k := i - 5; k <= i+4; k++ {
		switch l.text(k) {
		case "from", "to", "away", "behind", "back", "between", "btween", "apart", "run", "till", "distance", "forward", "aft":
			return me.Kind == read.Length || l.has.holds(idBattery) && (l.text(i-1) == "is" || l.text(i-1) == "are" || l.text(i-1) == "run")
		}
	}
	return false
}

// wiring tells whether the line, or the talk so far, is about wire.
func (l *line) wiring() bool {
	return l.any(wireTalk) || l.anyOf("breaker", "plug") || l.hasKind(read.Gauge) || l.askedLast(Wire, Breaker)
}

func (l *line) hasKind(k read.Kind) bool {
	if l.kinds == nil {
		l.kinds = map[read.Kind]bool{}
		for i := range l.r.Measures {
			if l.r.Measures[i].As == "" {
				l.kinds[l.r.Measures[i].Kind] = true
			}
		}
	}
	return l.kinds[k]
}

// wireInHand accepts a length without a word of its own where wire is what the
// line is about and no boat claims the length.
func wireInHand(l *line, m int) bool {
	if footer(l, m) {
		return false
	}
	if l.hasKind(read.Current) && !l.any(boatWords) && !l.anyOf("loaded", "dry", "waterline") && l.r.Measures[m].Spoken != "in" {
		return true
	}
	return l.any(wireTalk) || l.hasKind(read.Gauge) || l.askedLast(Wire, Breaker) && !l.any(hulls)
}

// Entries that the conditions above look for.
var (
	hullOrBoat = hulls.with(of("boat"))
)

// metricSizes are the copper areas of metric wire, in mm2, each with the gauge that
// has no more copper: ASTM B258 for the gauges' areas. 0 is 1/0, -1 is 2/0, -2 is
// 3/0.
var metricSizes = []struct{ mm2, gauge float64 }{{2.5, 14}, {4, 12}, {6, 10}, {10, 8}, {16, 6}, {25, 4}, {35, 2}, {50, 1}, {70, -1}, {95, -2}, {120, -3}}

// metricWire reads "16 mm2 cable": a metric size counts as the next smaller gauge.
func (l *line) metricWire() {
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if m >= 64 || me.As != "area" || me.Value == nil || !squareMillimetres(lowerASCII(me.Said)) || l.setSlots["wire.gauge"] {
			continue
		}
		for _, s := range metricSizes {
			if s.mm2 == *me.Value {
				l.used[m] = true
				l.put(card.Fact{Slot: "wire.gauge", Value: num(s.gauge), Unit: "AWG", Said: l.said(me.Start, me.End), Row: "a metric size, counted as the next smaller gauge"})
				return
			}
		}
	}
}

func squareMillimetres(s string) bool {
	return strings.HasSuffix(s, "mm2") || strings.HasSuffix(s, "mm²") || strings.HasSuffix(s, "square mm") || strings.HasSuffix(s, "sq mm") || strings.HasSuffix(s, "square millimetres") || strings.HasSuffix(s, "square millimeters")
}

// ofTheWater accepts "water is 50 degrees" and "in 45 degree water".
func ofTheWater(l *line, m int) bool {
	i := l.at[m]
	if l.text(i+1) == "water" {
		return true
	}
	k := l.skipFillers(i-1, -1)
	return l.text(k) == "water" || l.text(k) == "temp" && l.text(k-1) == "water"
}
