package meaning

import (
	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

var (
	windWords    = of("wind", "windy", "gentle breeze", "light breeze", "strong wind", "gust", "light air", "whitecaps")
	currentWords = of("current", "tide")
)

// waterCues tells what a number says of wind and water.
var waterCues = []cue{
	{name: "wind of a speed", slot: "wind.speed", kind: read.Speed, bare: "mph", low: 0, high: 90, before: windWords, reachB: 3, after: windWords, reachA: 2, weight: 9, never: of("current", "tide", "trolling", "depth"), when: steadyWind},
	{name: "gusts", slot: "wind.gust", kind: read.Speed, bare: "mph", low: 1, high: 120, before: of("gust"), reachB: 1, weight: 10},
	{name: "so much in gusts", slot: "wind.gust", kind: read.Speed, bare: "mph", low: 1, high: 120, after: of("gust"), reachA: 0, weight: 10, when: gustsEnd},
	{name: "hold in a speed", slot: "wind.speed", kind: read.Speed, low: 3, high: 45, before: of("hold", "position hold"), reachB: 4, weight: 5},
	{name: "hold in so much", slot: "wind.speed", kind: read.Speed, bare: "mph", low: 2, high: 45, alone: true, weight: 8, never: of("current", "tide", "throttle"), when: holdsIn},
	{name: "a speed only wind has", slot: "wind.speed", kind: read.Speed, low: 4.4, high: 45, alone: true, weight: 3, never: of("doing", "trolling", "outboard", "run"), when: windsSpeed},
	{name: "an outboard's speed", slot: "", kind: read.Speed, low: 6.5, high: 45, alone: true, weight: 4, when: engineSpeed},
	{name: "current of a speed", slot: "current.speed", kind: read.Speed, bare: "mph", low: 0, high: 6, before: currentWords, reachB: 3, after: currentWords, reachA: 2, weight: 9, never: of("wind")},
	{name: "river of a speed", slot: "current.speed", kind: read.Speed, bare: "", low: 0, high: 6, before: of("river"), reachB: 3, after: of("river"), reachA: 2, weight: 7, never: of("wind")},

	{name: "the river is so fast", slot: "current.speed", kind: read.Speed, bare: "mph", low: 0.2, high: 4, before: of("river"), reachB: 0, weight: 6, never: of("wind", "depth"), when: riverIs},
	{name: "water of a speed", slot: "current.speed", kind: read.Speed, low: 0.1, high: 4, alone: true, weight: 8, never: of("wind"), when: waterSpeed},
	{name: "tidal water of a speed", slot: "current.speed", kind: read.Speed, low: 0.1, high: 3.2, before: of("brackish", "tide"), reachB: 1, weight: 7, never: of("wind", "gust")},

	{name: "tidal water, a speed in knots", slot: "current.speed", kind: read.Speed, low: 0.1, high: 2.7, before: of("brackish", "river", "tide"), reachB: 3, weight: 4, never: of("wind", "gust"), when: inKnots},
	{name: "hold in a stream", slot: "current.speed", kind: read.Speed, low: 0.2, high: 3.1, before: of("hold", "position hold"), reachB: 3, weight: 6, never: of("wind", "gust"), when: currentKnown},

	{name: "waves of a height", slot: "chop.height", kind: read.Length, bare: "ft", low: 0.02, high: 4, after: of("wave", "choppy water"), reachA: 1, before: of("wave"), reachB: 3, weight: 9, when: waveSize},
	{name: "a foot of slop", slot: "chop.height", kind: read.Length, low: 0.05, high: 2.2, alone: true, weight: 9, when: ofSlop},
	{name: "so many footers", slot: "chop.height", kind: read.Length, low: 0.1, high: 2.2, alone: true, weight: 8, when: waveFooter},
	{name: "water so deep", slot: "water.depth", kind: read.Length, bare: "ft", low: 0.1, high: 300, after: of("depth"), reachA: 0, before: of("depth"), reachB: 2, weight: 9, never: of("waterline"), when: notAShaft},
	{name: "feet of water", slot: "water.depth", kind: read.Length, low: 0.2, high: 300, alone: true, weight: 9, when: ofWater},
	{name: "in so many feet", slot: "water.depth", kind: read.Length, low: 3.6, high: 300, alone: true, weight: 7, when: fishedIn},
	{name: "down so far", slot: "water.depth", kind: read.Length, low: 1, high: 300, alone: true, weight: 5, when: downThere},
	{name: "lake so deep", slot: "water.depth", kind: read.Length, low: 0.5, high: 300, after: waterBody, reachA: 0, weight: 8, never: of("wave", "shaft"), when: lakeDeep},
}

// windsSpeed leaves out what the boat does.
func windsSpeed(l *line, m int) bool { return !measuredSpeed(l, m) && !engineSpeed(l, m) }

// engineSpeed tells that a speed is the outboard's doing: an engine or its top
// speed is talked of in the same stretch, and no wind.
func engineSpeed(l *line, m int) bool {
	i := l.at[m]
	engine := false
	for dir := -1; dir <= 1; dir += 2 {
		for k := i + dir; k >= 0 && k < len(l.terms) && k >= i-9 && k <= i+9 && l.terms[k].mark == 0; k += dir {
			id := l.terms[k].id
			switch {
			case windWords.holds(id), currentWords.holds(id), id == idHold:
				return false
			case ofEngine.holds(id), id == idFullThrottle, id == idTopSpeed, engineSpeedWords[l.text(k)], l.terms[k].measure >= 0 && l.r.Measures[l.terms[k].measure].As == "horsepower":
				engine = true
			}
		}
	}
	return engine
}

var engineSpeedWords = map[string]bool{"fast": true, "fastest": true, "tops": true, "plane": true, "planes": true, "runs": true, "cruises": true, "speedo": true, "topped": true, "gps": true}

// steadyWind leaves out the gusts' number, and "a 70" that is a motor.
func steadyWind(l *line, m int) bool {
	me, i := &l.r.Measures[m], l.at[m]
	if me.Kind == read.Number && (l.articleBefore(i) || l.text(i-1) == "my") && me.Value != nil && !windWords.holds(l.id(i+1)) {
		return false
	}
	return !inGusts(l, m) && !(l.r.Measures[m].Kind == read.Number && besideVolts(l, m))
}

// inGusts tells that the number is the gusts', not the steady wind's.
func inGusts(l *line, m int) bool {
	_, _, before := l.near(l.at[m], -1, ofGust, 1)
	_, _, after := l.near(l.at[m], 1, ofGust, 0)
	return before || after && gustsEnd(l, m)
}

// gustsEnd tells that no number follows the word: "20 mph gusts".
func gustsEnd(l *line, m int) bool {
	i := l.at[m] + 2
	return i >= len(l.terms) || l.terms[i].measure < 0
}

func inKnots(l *line, m int) bool { return l.r.Measures[m].Spoken == "kn" && !l.any(windWords) }

// currentKnown tells that a stream is talked of, or was.
func currentKnown(l *line, m int) bool {
	return !l.any(windWords) && (l.knows("current.speed") && !l.knows("wind.speed") || l.any(currentWords) || l.anyOf("river"))
}

// waterSpeed accepts "in 2.5 mph water" and a slow speed told of going upstream.
func waterSpeed(l *line, m int) bool {
	i := l.at[m]
	if l.text(i+1) == "water" {
		return true
	}
	return l.anyText("upstream", "upriver") && (l.text(i-1) == "in" || l.text(i-1) == "against")
}

// waveSize keeps "18 ft boat, waves" out: a wave's number stands beside it.
func waveSize(l *line, m int) bool {
	me := &l.r.Measures[m]
	for k := l.at[m] + 1; k <= l.at[m]+6 && k < len(l.terms) && l.terms[k].mark == 0; k++ {
		if l.text(k) == "question" || l.text(k) == "never" {
			return false // "10 ft waves are out of the question"
		}
	}
	if me.Kind == read.Number {
		return lowest(me) <= 8
	}
	_, _, boat := l.near(l.at[m], 1, boatWords, 0)
	return !boat
}

// ofSlop accepts "a foot of slop": waves by a word that may also be weeds.
func ofSlop(l *line, m int) bool {
	i := l.at[m]
	return l.text(i+1) == "of" && (l.text(i+2) == "slop" || l.text(i+2) == "bounce" || l.text(i+2) == "lump")
}

// waveFooter accepts "2 footers" without a boat.
func waveFooter(l *line, m int) bool {
	_, _, boat := l.near(l.at[m], 1, boatWords, 1)
	return footer(l, m) && !boat
}

// notAShaft leaves out "how deep will a 54 sit".
func notAShaft(l *line, m int) bool {
	return !(l.r.Measures[m].Kind == read.Number && l.articleBefore(l.at[m]) && stockedShafts[l.r.Measures[m].Bare])
}

// ofWater accepts "8 ft of muddy water".
func ofWater(l *line, m int) bool {
	i := l.at[m]
	if l.text(i+1) != "of" {
		return false
	}
	for k := i + 2; k <= i+4 && k < len(l.terms) && l.terms[k].mark == 0; k++ {
		if l.text(k) == "water" {
			return true
		}
	}
	return false
}

// downThere accepts "jig 30 ft down".
func downThere(l *line, m int) bool {
	i := l.at[m]
	return l.text(i+1) == "down" && (l.endsAt(i+1) || l.id(i+2) == idWith) && !l.anyOf("waterline", "deck")
}

// fishedIn accepts "over wrecks in 80 ft" where the boat has a length of its own.
func fishedIn(l *line, m int) bool {
	i := l.at[m]
	if l.text(i-1) != "in" || !l.endsAt(i) || !(l.any(ofFishing) || l.anyText("over", "wrecks", "structure")) {
		return false
	}
	for k := range l.r.Measures {
		if k < m && l.r.Measures[k].Kind == read.Length {
			return true
		}
	}
	return l.knows("boat.length")
}

var ofFishing = of("position hold", "vertical jigging", "fishing", "hold")

// lakeDeep leaves out "10 foot pond boat" and whatever else a pond lends its name to.
func lakeDeep(l *line, m int) bool {
	next := l.at[m] + 2
	return l.endsAt(next-1) || l.terms[next].filler || l.id(next) == idWith || l.id(next) == idAnd
}

// A wordRow gives a slot from a word or phrase of the table.
type wordRow struct {
	name string
	word string // the entry's plain name
	slot string
	text string
	when func(l *line, at int) bool // nil: always
}

// waterRows are the kinds of water; the likeliest of several is the saltiest.
var waterRows = []wordRow{
	{"salt water", "salt", "water.kind", "salt", notVersion},
	{"brackish water", "brackish", "water.kind", "brackish", nil},
	{"fresh water", "fresh", "water.kind", "fresh", freshWater},
	{"a lake is fresh", "lake", "water.kind", "fresh", nil},
	{"a river is fresh", "river", "water.kind", "fresh", nil},
	{"weeds", "weeds", "water.weeds", "true", weedyWater},
}

// notVersion leaves out "saltwater motor" as the name of a kind of motor.
func notVersion(l *line, at int) bool {
	switch l.text(at + 1) {
	case "version", "model", "models", "versions":
		return false
	}
	return true
}

// weedyWater leaves out the weeds in a tale of what broke.
func weedyWater(l *line, at int) bool {
	if l.text(at) == "slop" && l.text(at-1) == "of" && at > 1 && l.terms[at-2].measure >= 0 {
		return false // a foot of slop is waves
	}
	return !l.faulty() || l.setSlots["boat.length"] || l.setSlots["load.total"]
}

// freshWater leaves out fresh batteries and fresh charges.
func freshWater(l *line, at int) bool {
	next := l.id(at + 1)
	if l.terms[at].text != "fresh" {
		return next != idMotor && next != idTrollingMotor && notVersion(l, at)
	}
	return l.endsAt(at) || l.text(at+1) == "anyway" || l.text(at+1) == "tho" || l.text(at+1) == "though" || l.text(at+1) == "then" || next == idLake || next == idRiver || l.id(at+1) == idAnd || l.id(at+1) == idWith || l.text(at+1) == "only"
}

// A weatherRow is a wind in words, in metres a second: the Beaufort force that
// it names, on the wide side. Force and speed: WMO Code 1100. What a speaker
// means by "windy" is common practice, no published source.
type weatherRow struct {
	name             string
	word             string
	low, value, high float64
}

var weatherRows = []weatherRow{
	{"calm in words", "calm", 0, 0.5, 1.5},                   // forces 0 and 1
	{"light air in words", "light air", 0.3, 0.9, 1.5},       // force 1
	{"light breeze in words", "light breeze", 1.6, 2.5, 3.6}, // force 2
	{"breezy in words", "gentle breeze", 3.4, 5.4, 7.9},      // forces 3 and 4
	{"windy in words", "windy", 5.36448, 6.7056, 8.9408},     // 12, 15 and 20 mph: force 4 to 5
	{"whitecaps in words", "whitecaps", 5.5, 7.2, 10.7},      // forces 4 and 5
	{"strong wind in words", "strong wind", 8.0, 10.8, 13.8}, // forces 5 and 6
	{"gale in words", "gale", 13.9, 17, 20.7},                // forces 7 and 8
}

// beaufortScale is the mean wind of each force, in metres a second, from the
// calm to the hurricane: WMO Code 1100.
var beaufortScale = [][2]float64{{0, 0.2}, {0.3, 1.5}, {1.6, 3.3}, {3.4, 5.4}, {5.5, 7.9}, {8.0, 10.7}, {10.8, 13.8}, {13.9, 17.1}, {17.2, 20.7}, {20.8, 24.4}, {24.5, 28.4}, {28.5, 32.6}, {32.7, 36.9}}

// forceNames are the scale's own names, which say their force: WMO Code 1100. What
// is said loosely as well ("light breeze", "breezy") keeps its wider range.
var forceNames = map[string]int{"moderate breeze": 4, "fresh breeze": 5, "strong breeze": 6, "near gale": 7, "gale": 8, "strong gale": 9, "severe gale": 9, "violent storm": 11, "hurricane": 12}

// beaufort reads "force 5" and "beaufort 4" for a wind.
func (l *line) beaufort() {
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		i := l.at[m]
		if l.used[m] || me.Kind != read.Number || l.setSlots["wind.speed"] {
			continue
		}
		lo, hi := ends(quantity{me.Value, me.Low, me.High})
		if lo != float64(int(lo)) || hi != float64(int(hi)) || lo < 0 || hi >= float64(len(beaufortScale)) {
			continue
		}
		at := i - 1
		switch l.text(at) {
		case "force", "beaufort", "bft":
		default:
			if l.text(i+1) != "beaufort" && l.text(i+1) != "bft" {
				continue
			}
			at = i
		}
		low, high := beaufortScale[int(lo)][0], beaufortScale[int(hi)][1]
		l.used[m] = true
		l.put(card.Fact{Slot: "wind.speed", Value: num((low + high) / 2), Low: num(low), High: num(high), Unit: "m/s",
			Said: l.said(min(l.terms[at].start, me.Start), me.End), Row: "force on the Beaufort scale"})
	}
}

// weather binds winds that are said in words where no number was.
func (l *line) weather() {
	if g, ok := l.fact("wind.gust"); ok {
		l.gusts(*g)
	}
	if l.setSlots["wind.speed"] {
		return
	}
	// The strongest wind named counts: a motor is chosen for it.
	best, at := -1, 0
	for i := range l.terms {
		if row := weatherOf[l.terms[i].id] - 1; row > best && l.aboutWind(i, weatherRows[row].word) {
			best, at = row, i
		}
	}
	if best < 0 {
		// "breeze" with no word for its strength
		for i := range l.terms {
			if l.terms[i].text == "breeze" && l.endsAt(i) && l.aboutWind(i, "") {
				best, at = weatherOf[words.Of("gentle breeze")]-1, i
			}
		}
	}
	if best < 0 {
		return
	}
	row := weatherRows[best]
	if force, named := forceNames[l.terms[at].text]; named {
		low, high := beaufortScale[force][0], beaufortScale[force][1]
		row = weatherRow{"a name of the Beaufort scale", row.word, low, (low + high) / 2, high}
	}
	l.put(card.Fact{Slot: "wind.speed", Value: num(row.value), Low: num(row.low), High: num(row.high), Unit: "m/s",
		Said: l.said(l.terms[at].start, l.terms[at].end), Row: row.name})
}

// weatherOf is one more than the row of an entry's wind; the rows stand from
// the weakest to the strongest.
var weatherOf = map[words.ID]int{}

func init() {
	for i, row := range weatherRows {
		if id := words.Of(row.word); id != words.None {
			weatherOf[id] = i + 1
		} else {
			unknownNames = append(unknownNames, row.word)
		}
	}
}

// aboutWind leaves out "calm current", "not windy" said as a word apart, and a
// wind that is asked about.
func (l *line) aboutWind(i int, word string) bool {
	if word == "calm" {
		if n := l.id(i + 1); n == idCurrent || n == idTide || n == idWave {
			return false
		}
	}
	if w := l.text(i + 1); w == "protection" || w == "shelter" || w == "break" || w == "block" {
		return false
	}
	if firstWord(l.text(i-1)) == "how" || l.text(i-1) == "too" {
		return false
	}
	return !l.negated[i]
}

// gusts joins a steady wind and its gusts into one range.
func (l *line) gusts(g card.Fact) {
	top, _ := ends(quantity{g.Value, g.Low, g.High})
	if _, hi := ends(quantity{g.Value, g.Low, g.High}); hi > top {
		top = hi
	}
	steady, ok := l.fact("wind.speed")
	if !ok {
		// Gusts alone: the steady wind is commonly about three quarters of them
		// (common practice, no published source).
		l.put(card.Fact{Slot: "wind.speed", Value: num(top * 0.75), Low: num(top * 0.65), High: num(top), Unit: "m/s", Said: g.Said, Row: "gusts alone"})
		return
	}
	lo, hi := ends(quantity{steady.Value, steady.Low, steady.High})
	if steady.Value == nil {
		steady.Value = num((lo + hi) / 2)
	}
	steady.Low, steady.High = num(lo), num(max(top, hi))
	steady.Said = steady.Said + " … " + g.Said
}

// Entries that the conditions above look for.
var (
	ofGust = of("gust")
)

// holdsIn accepts "hold it in 20?" and, where holding was asked last, "what about in
// 25": a bare number behind "in" or "against" is a wind.
func holdsIn(l *line, m int) bool {
	i := l.at[m]
	me := &l.r.Measures[m]
	if me.Kind != read.Number || !l.endsAt(i) && !windWords.holds(l.id(i+1)) && l.text(i+1) != "then" && l.text(i+1) != "though" && l.text(i+1) != "tho" {
		return false
	}
	k := i - 1
	if l.text(k) == "a" || l.text(k) == "about" || l.text(k) == "like" {
		k--
	}
	holding := l.id(k) == words.Of("hold") && (l.text(k) == "hold in" || l.text(k) == "hold against")
	if w := l.text(k); !holding && w != "in" && w != "against" && w != "into" {
		return false
	}
	if holding || l.askedLast(Hold) && len(l.terms) <= 7 {
		return true
	}
	for j := k - 1; j >= 0 && j >= k-5; j-- {
		if id := l.id(j); id == words.Of("hold") || id == words.Of("position hold") {
			return true
		}
	}
	return false
}

// riverIs accepts "river is 1" where a current stands.
func riverIs(l *line, m int) bool {
	i := l.at[m]
	return l.r.Measures[m].Kind == read.Number && l.knows("current.speed") && l.endsAt(i) && (l.text(i-1) == "is" || l.text(i-1) == "at" || l.text(i-1) == "runs")
}
