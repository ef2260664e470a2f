package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

var (
	hulls     = kinds(words.Hull)
	boatWords = hulls.with(kinds(words.Material), of("boat", "center console"))
	mountings = of("deck", "mounting surface", "mount", "transom", "bow", "gunwale", "bow mount", "transom mount")
	wireWords = of("wire", "cable", "jumper", "gauge", "breaker", "plug")
	waterBody = of("lake", "river")
)

// lengthCues tells which of the lengths of a fitting a length is.
var lengthCues = []cue{
	{name: "length, then a hull or boat", slot: "boat.length", kind: read.Length, bare: "ft", low: 2.4, high: 20, after: boatWords, reachA: 1, weight: 7, never: of("waterline", "depth", "high", "wide", "shaft"), when: notInches},
	{name: "metres without the word", slot: "boat.length", kind: read.Length, bare: "m", low: 2.4, high: 7.8, after: boatWords, reachA: 1, weight: 6, never: of("depth", "wide", "shaft"), when: decimalMetres},
	{name: "hull or boat, then a length", slot: "boat.length", kind: read.Length, low: 1.8, high: 20, before: boatWords, reachB: 2, weight: 6, never: of("waterline", "depth", "high", "wide", "shaft", "wave"), when: notInches},
	{name: "length, a word between, then a hull", slot: "boat.length", kind: read.Length, low: 1.8, high: 15, after: boatWords, reachA: 4, weight: 5, when: notInches},
	{name: "so long", slot: "boat.length", kind: read.Length, bare: "ft", low: 1.8, high: 15, after: of("boat length"), reachA: 0, before: of("boat length"), reachB: 1, weight: 8, never: of("shaft", "wire", "cable", "too long"), when: longBoat},
	{name: "a footer", slot: "boat.length", kind: read.Length, low: 2.4, high: 15, alone: true, weight: 6, when: footer},
	{name: "short boat", slot: "boat.length", kind: read.Length, low: 1.8, high: 2.5, after: boatWords, reachA: 1, weight: 7, never: of("waterline", "depth", "high", "wide", "shaft", "wave"), when: notInches},
	{name: "hull, then a bare length", slot: "boat.length", kind: read.Length, bare: "ft", low: 2.4, high: 8.5, before: hulls.with(of("center console", "boat")), reachB: 1, weight: 3, when: bareBoat},
	{name: "the boat that is there now", slot: "boat.length", kind: read.Length, bare: "ft", low: 2.4, high: 10, alone: true, weight: 5, when: nowSoLong},
	{name: "a length and a half, beside a hull", slot: "boat.length", kind: read.Length, bare: "ft", low: 2.7, high: 9, alone: true, weight: 2, need: hulls, when: andAHalf},
	{name: "a length in feet or metres alone", slot: "boat.length", kind: read.Length, low: 2.1, high: 13, alone: true, weight: 2, never: of("waterline", "depth", "wave", "high"), when: notATale},

	{name: "so wide", slot: "boat.beam", kind: read.Length, bare: "ft", low: 0.4, high: 3.6, after: of("wide"), reachA: 1, before: of("wide"), reachB: 1, weight: 9, when: not(ofABattery)},
	{name: "length by width", slot: "boat.beam", kind: read.Length, bare: "ft", low: 0.4, high: 3.6, alone: true, weight: 5, when: afterBy},
	{name: "so wide in inches", slot: "boat.beam", kind: read.Length, bare: "in", low: 0.7, high: 2.6, after: of("wide"), reachA: 0, before: of("wide"), reachB: 0, weight: 8, when: inchesWide},
	{name: "length by a width in inches", slot: "boat.beam", kind: read.Length, bare: "in", low: 0.7, high: 2.6, alone: true, weight: 4, when: inchesBy},
	{name: "length, by a width", slot: "boat.length", kind: read.Length, bare: "ft", low: 1.8, high: 15, alone: true, weight: 6, when: beforeBy},
	{name: "freeboard", slot: "boat.freeboard", kind: read.Length, bare: "in", low: 0.05, high: 1.5, after: of("freeboard"), reachA: 1, before: of("freeboard"), reachB: 2, weight: 10},

	{name: "a waterline so long", slot: "boat.length", kind: read.Length, low: 2, high: 20, after: of("waterline"), reachA: 0, weight: 10, when: feetOfWaterline},
	{name: "a transom's width", slot: "", kind: read.Length, after: of("transom"), reachA: 0, weight: 10, when: transomWide},
	{name: "down to the water", slot: "mount.height", kind: read.Length, bare: "in", low: 0.02, high: 2.6, after: of("waterline"), reachA: 5, before: of("waterline"), reachB: 3, weight: 9, never: of("wire", "boat length", "wide", "shaft", "depth", "wave"), when: toTheWater},
	{name: "height of a deck or mount", slot: "mount.height", kind: read.Length, bare: "in", low: 0.1, high: 1.3, after: of("deck", "mounting surface", "transom", "gunwale"), reachA: 1, before: of("deck", "mounting surface", "transom", "gunwale"), reachB: 3, weight: 7, never: of("wire", "shaft", "boat length", "wide", "drop"), when: deckHigh},
	{name: "a shaft for so high a bow", slot: "mount.height", kind: read.Length, low: 0.1, high: 1.3, alone: true, weight: 9, when: shaftForBow},
	{name: "inches, then bow", slot: "mount.height", kind: read.Length, low: 0.1, high: 1.3, after: of("bow"), reachA: 0, weight: 6, never: of("shaft", "wire"), when: inches},
	{name: "the bow is 26", slot: "mount.height", kind: read.Length, bare: "in", low: 0.2, high: 1.1, before: of("bow"), reachB: 0, weight: 6, never: of("shaft", "wire", "high"), when: bowIsSo},
	{name: "the bow is so high", slot: "mount.height", kind: read.Length, bare: "in", low: 0.1, high: 1.3, after: of("high"), reachA: 1, before: of("high"), reachB: 1, weight: 6, need: mountings, never: of("wire", "shaft", "wave", "drop"), when: deckHigh},
	{name: "bow, then inches", slot: "mount.height", kind: read.Length, low: 0.1, high: 1.3, before: of("bow", "mount", "bow mount", "transom mount"), reachB: 2, weight: 4, never: of("shaft", "wire", "drop"), when: inches},
	{name: "so many inches up", slot: "mount.height", kind: read.Length, bare: "in", low: 0.1, high: 1.3, after: of("high"), reachA: 0, weight: 3, when: upAlone},
	{name: "inches beside a shaft or deck", slot: "mount.height", kind: read.Length, low: 0.1, high: 1.3, alone: true, weight: 3, need: mountings.with(of("waterline")), never: of("drop", "jumper"), when: inches},

	{name: "shaft so long", slot: "motor.shaft", kind: read.Length, bare: "in", low: 0.4, high: 2.7, after: of("shaft"), reachA: 0, before: of("shaft"), reachB: 1, weight: 9, never: of("waterline", "high"), when: not(nearWaterline)},
	{name: "too short, too long", slot: "motor.shaft", kind: read.Length, bare: "in", low: 0.4, high: 2.7, after: of("too short", "too long", "long enough"), reachA: 2, weight: 8, never: of("waterline", "wire"), when: shaftNotWire},
	{name: "too short a figure", slot: "motor.shaft", kind: read.Length, bare: "in", low: 0.6, high: 2.7, before: of("too short", "too long"), reachB: 1, weight: 4, when: shaftNotWire},
	{name: "a stocked length enough for a deck", slot: "motor.shaft", kind: read.Length, bare: "in", low: 0.6, high: 2.7, after: of("enough", "long enough", "motor"), reachA: 1, weight: 7, when: shaftLength, need: mountings.with(of("waterline", "shaft"))},
	{name: "a deck so high, where a shaft is asked for", slot: "mount.height", kind: read.Length, low: 0.1, high: 0.75, alone: true, weight: 2, need: of("shaft"), when: inches},
	{name: "a stocked length beside a deck", slot: "motor.shaft", kind: read.Length, bare: "in", low: 0.6, high: 2.7, alone: true, weight: 4, when: shaftLength, need: mountings.with(of("waterline", "shaft", "too short", "too long"))},
	{name: "a 60 incher", slot: "motor.shaft", kind: read.Length, low: 0.6, high: 2.7, alone: true, weight: 6, when: incher},
	{name: "inches with a shaft in the talk", slot: "motor.shaft", kind: read.Length, low: 0.6, high: 2.7, alone: true, weight: 2, when: shaftTalk},

	{name: "a stocked length while shafts are asked about", slot: "motor.shaft", kind: read.Length, bare: "in", low: 0.6, high: 2.7, alone: true, weight: 5, when: shaftAnswer},

	{name: "bow drops so much", slot: "", kind: read.Length, before: of("drop", "slow", "leave home"), reachB: 1, weight: 10, when: inches},
	{name: "so long a rod", slot: "", kind: read.Length, after: of("fishing rod"), reachA: 0, weight: 10},
	{name: "so high a thing of another kind", slot: "", kind: read.Length, before: of("fishing rod", "fishfinder", "bimini", "trailer", "seated"), reachB: 2, weight: 10, when: otherHigh},
	{name: "a size of something else", slot: "", kind: read.Length, bare: "in", after: of("prop", "trailer", "fishing rod", "plug", "breaker", "battery", "bimini"), reachA: 0, before: of("prop", "trailer"), reachB: 1, weight: 7, when: smallThing},
}

// toTheWater leaves out waves, and a prop that comes out of the water.
func toTheWater(l *line, m int) bool {
	if footer(l, m) {
		return false
	}
	_, at, ok := l.near(l.at[m], 1, ofWaterline, 5)
	if !ok {
		if _, at, ok = l.near(l.at[m], -1, ofWaterline, 3); !ok {
			return true
		}
	}
	switch l.text(at - 1) {
	case "comes", "come", "coming", "came", "pops", "popping", "jumps", "lifts", "pulls", "pop":
		return false
	}
	return true
}

// feetAndInches joins "fourteen-six jon" into one length.
func (l *line) feetAndInches() {
	for m := 0; m+1 < len(l.r.Measures) && m < 64; m++ {
		a, b := &l.r.Measures[m], &l.r.Measures[m+1]
		if l.used[m] || l.used[m+1] || a.Kind != read.Number || b.Kind != read.Number || a.Value == nil || b.Value == nil || b.Start != a.End+1 || l.r.Text[a.End] != '-' && (l.r.Text[a.End] != ' ' || hasDigit(a.Said) || hasDigit(b.Said)) {
			continue
		}
		feet, in := *a.Value, *b.Value
		_, _, boat := l.near(l.at[m+1], 1, boatWords, 0)
		boat = boat || l.id(l.at[m+1]+1) == idBoatLength || l.text(l.at[m+1]+1) == "by"
		if _, _, before := l.near(l.at[m], -1, hullOrBoat, 0); before && (l.endsAt(l.at[m+1]) || l.id(l.at[m+1]+1) == idWith || l.id(l.at[m+1]+1) == idAnd) {
			boat = true
		}
		if feet < 8 || feet > 30 || in < 1 || in > 11 || in != float64(int(in)) || !boat || l.setSlots["boat.length"] {
			continue
		}
		l.used[m], l.used[m+1] = true, true
		l.put(card.Fact{Slot: "boat.length", Value: num(feet*0.3048 + in*0.0254), Unit: "m", Said: l.said(a.Start, b.End), Row: "feet and inches run together"})
	}
}

// notATale keeps the lengths in a tale of what went wrong from being a boat's.
func notATale(l *line, m int) bool {
	return notInches(l, m) && (!l.faulty() || l.any(boatWords) || l.anyOf("loaded", "dry") || footer(l, m) || l.setSlots["people.count"])
}

// reread mends two readings that only the talk about them can settle: in "12v 55
// or 24v 80" the 55 is no voltage, and "two twelve volt batteries" are two of 12.
func (l *line) reread() {
	var mended []read.Measure
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if m >= 64 || me.Kind != read.Voltage || me.Value == nil || l.used[m] {
			continue
		}
		v := *me.Value
		if ratings[v] && !nominal[v] && strings.HasSuffix(lowerASCII(me.Said), " v") && m+1 < len(l.r.Measures) && l.at[m+1] == l.at[m]+1 && ratings[l.r.Measures[m+1].Bare] && (l.r.Measures[m+1].Kind == read.Mass || l.r.Measures[m+1].Kind == read.Number) {
			l.asideNumbers("motor.thrust", m, m+1) // "70 v 80 lb": versus
			continue
		}
		switch {
		case ratings[v] && !nominal[v] && !strings.ContainsAny(me.Said, "vV"):
		case v > 200 && v < 500 && nominal[v-100*float64(int(v/100))] && !strings.ContainsAny(me.Said, "0123456789"):
		default:
			continue
		}
		if mended == nil {
			mended = append([]read.Measure(nil), l.r.Measures...) // the reading is the caller's
		}
		if v < 200 {
			mended[m].Kind, mended[m].Unit, mended[m].Spoken = read.Number, "1", ""
			continue
		}
		n := float64(int(v / 100))
		mended[m].Value, mended[m].Bare = num(v-100*n), v-100*n
		if !l.setSlots["battery.count"] {
			l.put(card.Fact{Slot: "battery.count", Value: num(n), Unit: "1", Said: me.Said, Row: "so many of a voltage"})
		}
	}
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if m < 24 && !l.used[m] && me.Kind == read.Length && farUnit[me.Spoken] && me.Value != nil && l.text(l.at[m]+1) == "an" && l.id(l.at[m]+2) == idHours {
			if mended == nil {
				mended = append([]read.Measure(nil), l.r.Measures...)
			}
			mended[m].Kind, mended[m].Unit, mended[m].Spoken, mended[m].Value = read.Speed, "m/s", "mph", num(*me.Value/3600)
			continue // "a mile and a half an hour"
		}
		if m >= 24 || l.used[m] || me.Kind != read.Number || me.Value == nil || !kilometres[l.text(l.at[m]+1)] || !l.any(windWords) {
			continue // "25 clicks an hour" of wind
		}
		if mended == nil {
			mended = append([]read.Measure(nil), l.r.Measures...)
		}
		mended[m].Kind, mended[m].Unit, mended[m].Spoken, mended[m].Value = read.Speed, "m/s", "km/h", num(*me.Value/3.6)
		if k := l.at[m] + 2; k < len(l.terms) && l.terms[k].measure >= 0 && l.r.Measures[l.terms[k].measure].Kind == read.Duration {
			l.used[l.terms[k].measure] = true
		}
	}
	for m := range l.r.Measures {
		// "a knot and a half"
		me := &l.r.Measures[m]
		i := l.at[m]
		if m >= 64 || l.used[m] || me.Kind != read.Number || me.Bare != 0.5 || i < 2 || l.id(i-1) != idAnd && l.text(i-1) != "and" || l.text(i-2) != "knot" {
			continue
		}
		if mended == nil {
			mended = append([]read.Measure(nil), l.r.Measures...)
		}
		mended[m].Kind, mended[m].Unit, mended[m].Spoken = read.Speed, "m/s", "kn"
		mended[m].Value, mended[m].Bare, mended[m].Start = num(1.5*factor["kn"]), 1.5, l.terms[i-2].start
	}
	if mended != nil {
		l.r.Measures = mended
		l.kinds = nil
	}
}

// metresAndCentimetres joins "4 meter 50" into one length.
func (l *line) metresAndCentimetres() {
	for m := 0; m+1 < len(l.r.Measures) && m < 64; m++ {
		a, b := &l.r.Measures[m], &l.r.Measures[m+1]
		if l.used[m] || l.used[m+1] || a.Kind != read.Length || a.Spoken != "m" || a.Value == nil || *a.Value != float64(int(*a.Value)) ||
			b.Kind != read.Number || b.As != "" || b.Value == nil || len(b.Said) != 2 || *b.Value < 5 || *b.Value > 99 || l.at[m+1] != l.at[m]+1 {
			continue
		}
		if n := l.at[m+1] + 1; !l.endsAt(n-1) && !l.filler(n) && l.id(n) != idAnd && l.id(n) != idWith && l.id(n) != words.Of("wide") && l.id(n) != words.Of("boat length") && l.terms[n].measure < 0 && !hullOrMaterial.holds(l.id(n)) {
			continue
		}
		joined := append([]read.Measure(nil), l.r.Measures...) // the reading is the caller's
		joined[m].Value = num(*a.Value + *b.Value/100)
		joined[m].Bare, joined[m].End = *joined[m].Value, b.End
		joined[m].Said = l.r.Text[a.Start:b.End]
		l.r.Measures = joined
		l.used[m+1] = true
	}
}

// otherHigh accepts "rod holder sits 30 inches up".
func otherHigh(l *line, m int) bool {
	for k := l.at[m] - 1; k >= 0 && k >= l.at[m]-5; k-- {
		if l.id(k) == idAnd || l.text(k) == "and" || l.terms[k].measure >= 0 {
			return false // "7 foot rods and a 20 inch deck"
		}
	}
	return inches(l, m) && !l.near2(l.at[m], ofWaterline)
}

// nowSoLong accepts "my last boat was a 14 footer, this ones 19".
func nowSoLong(l *line, m int) bool {
	me := &l.r.Measures[m]
	if me.Kind != read.Number || me.Value == nil {
		return false
	}
	k := l.skipFillers(l.at[m]-1, -1)
	if k < 0 || l.text(k) != "ones" && l.text(k) != "one" && l.id(k) != idNewBoat && l.text(k) != "now" {
		return false
	}
	for x := range l.r.Measures {
		if x < m && l.reason[x] == "what there was before" && l.r.Measures[x].Kind == read.Length {
			return true
		}
	}
	return false
}

// upAlone accepts "twenty two to twenty four inches up" where nothing else in the
// line is measured.
func upAlone(l *line, m int) bool {
	if l.r.Measures[m].Kind == read.Number && l.text(l.at[m]+2) != "there" {
		return false
	}
	return (inches(l, m) || l.r.Measures[m].Kind == read.Number) && (len(l.r.Measures) == 1 || l.text(l.at[m]+2) == "there") && !l.any(boatWords) && !l.anyOf("fishing rod", "wire")
}

// decimalMetres accepts "a 3.7 tinnie", "my 4.80 boat": no boat is so few feet long.
func decimalMetres(l *line, m int) bool {
	me := &l.r.Measures[m]
	return me.Kind == read.Number && me.Bare >= 2.4 && me.Bare <= 7.8 && strings.ContainsAny(me.Said, ".,")
}

// andAHalf accepts "call it 19 and a half" of a boat.
func andAHalf(l *line, m int) bool {
	me := &l.r.Measures[m]
	return me.Kind == read.Number && me.Value != nil && *me.Value-float64(int(*me.Value)) == 0.5 && me.Bare >= 9 && l.endsAt(l.at[m]) && !l.knows("boat.length") && !strings.Contains(me.Said, ".")
}

// bareBoat accepts "jon, 16" but no number that clearly counts something.
func bareBoat(l *line, m int) bool {
	if !l.endsAt(l.at[m]) {
		return false
	}
	i := l.at[m]
	return l.id(i-1) != idBoat || l.text(i-1) == "skiff"
}

// endsAt tells whether a stretch ends right after the term.
func (l *line) endsAt(i int) bool { return i+1 >= len(l.terms) || l.terms[i+1].mark != 0 }

func inches(l *line, m int) bool {
	s := l.r.Measures[m].Spoken
	return s == "in" || s == "cm" || s == "mm"
}

func notInches(l *line, m int) bool {
	me := &l.r.Measures[m]
	if afterBy(l, m) {
		return false
	}
	return me.Spoken != "in" && me.Spoken != "mm" && (me.Spoken != "cm" || lowest(me) >= 2)
}

// longBoat leaves out "20 feet long" of a wire.
func longBoat(l *line, m int) bool {
	if !notInches(l, m) || ofABattery(l, m) {
		return false
	}
	if !l.any(wireTalk) && !l.hasKind(read.Gauge) {
		return true
	}
	_, _, before := l.near(l.at[m], -1, hullOrMaterial, 2)
	_, _, after := l.near(l.at[m], 1, hullOrMaterial, 2)
	return before || after
}

func lowest(me *read.Measure) float64 {
	lo, _ := ends(quantity{me.Value, me.Low, me.High})
	return lo
}

// smallThing keeps the size of a prop or a battery from being a boat's.
func smallThing(l *line, m int) bool {
	if l.r.Measures[m].Kind == read.Number {
		return false
	}
	return inches(l, m) && !l.has.holds(idWaterline)
}

// footer accepts a length that was said of a boat as such: "a 19 footer".
func footer(l *line, m int) bool {
	me := &l.r.Measures[m]
	i := l.at[m]
	return containsWord(lowerASCII(me.Said), "footer") || l.text(i+1) == "footer" || l.text(i+1) == "footers"
}

func containsWord(s, w string) bool {
	for i := 0; i+len(w) <= len(s); i++ {
		if s[i:i+len(w)] == w {
			return true
		}
	}
	return false
}

// afterBy accepts "16 by 5".
func afterBy(l *line, m int) bool {
	i := l.at[m]
	return (l.text(i-1) == "by" || l.text(i-1) == "x") && i >= 2 && l.terms[i-2].measure >= 0
}

// inchesBy accepts "fourteen by forty two": a width of so many numbers is inches.
func inchesBy(l *line, m int) bool {
	me := &l.r.Measures[m]
	return me.Kind == read.Number && me.Bare >= 30 && me.Bare <= 102 && afterBy(l, m) && !l.speaksMetric()
}

// inchesWide accepts "a 14 ft jon 48 wide".
func inchesWide(l *line, m int) bool {
	me := &l.r.Measures[m]
	return me.Kind == read.Number && me.Bare >= 30 && me.Bare <= 102 && !l.speaksMetric() && !ofABattery(l, m)
}

// incher accepts "my 60 incher".
func incher(l *line, m int) bool {
	return strings.HasSuffix(lowerASCII(l.r.Measures[m].Said), "incher") && !l.any(boatWords)
}

// beforeBy accepts the first of "16 by 5".
func beforeBy(l *line, m int) bool {
	i := l.at[m]
	if w := l.text(i + 1); w != "by" && w != "x" || i+2 >= len(l.terms) || l.terms[i+2].measure < 0 {
		return false
	}
	other := &l.r.Measures[l.terms[i+2].measure]
	return (other.Kind == read.Number || other.Kind == read.Length) && (other.Bare >= 2 || other.Spoken == "m" && other.Bare >= 0.5) && other.Bare <= 100
}

// deckHigh keeps feet by the dozen from being a deck's height.
func deckHigh(l *line, m int) bool {
	me := &l.r.Measures[m]
	return me.Spoken != "ft" || lowest(me) <= 1.6
}

func shaftNotWire(l *line, m int) bool {
	return !l.has.holds(idWire) && !l.has.holds(idJumper)
}

// shaftForBow accepts "shaft for a 30 inch bow".
func shaftForBow(l *line, m int) bool {
	i := l.at[m]
	return inches(l, m) && mountings.holds(l.id(i+1)) && (l.text(i-1) == "for" || l.text(i-2) == "for")
}

// nearWaterline tells that the length is said to end at the water: "for 25
// inches bow to water".
func nearWaterline(l *line, m int) bool {
	if shaftForBow(l, m) {
		return true
	}
	_, at, ok := l.near(l.at[m], 1, ofWaterline, 2)
	return ok && at > l.at[m]+1
}

var ofWaterline = of("waterline")

// stockedShafts is the usual tube lengths in inches.
var stockedShafts = map[float64]bool{20: true, 24: true, 30: true, 36: true, 42: true, 45: true, 47: true, 48: true, 50: true, 52: true, 54: true, 60: true, 62: true, 72: true, 76: true, 84: true, 87: true, 96: true, 100: true}

// shaftLength accepts a number that is a tube's usual length.
func shaftLength(l *line, m int) bool {
	me := &l.r.Measures[m]
	if me.Kind == read.Length && me.Spoken != "in" {
		return false
	}
	if w := l.text(l.at[m] + 1); me.Kind == read.Number && w != "" && !l.terms[l.at[m]+1].filler && l.id(l.at[m]+1) < 0 && w != "sit" && w != "hang" && w != "be" {
		return false
	}
	return stockedShafts[me.Bare] && me.BareHigh == 0 && me.Bare >= 24
}

// shaftTalk accepts inches when a deck's height stands already or shafts are
// what is talked about.
func shaftTalk(l *line, m int) bool {
	if !inches(l, m) {
		return false
	}
	if l.has.holds(idShaft) || l.has.holds(idTooShort) || l.has.holds(idTooLong) {
		return true
	}
	_, known := l.before.Get("mount.height")
	return known && l.askedLast(Shaft)
}

// shaftsAsked tells that the talk so far is of a shaft for a known deck.
func (l *line) shaftsAsked() bool { return l.askedLast(Shaft) && l.knows("mount.height") }

// shaftAnswer accepts "is a 48 ok" in such talk.
func shaftAnswer(l *line, m int) bool {
	if !l.shaftsAsked() || !shaftLength(l, m) {
		return false
	}
	return l.questionish() || l.articleBefore(l.at[m]) || inches(l, m)
}

func (l *line) askedLast(ts ...Topic) bool {
	for _, a := range l.before.Asked {
		for _, t := range ts {
			if a == string(t) {
				return true
			}
		}
	}
	return false
}

// ofABattery tells that a size is a battery's, or its place's.
func ofABattery(l *line, m int) bool {
	for k := l.at[m] - 1; k >= 0 && k >= l.at[m]-7; k-- {
		if l.terms[k].mark == '.' || l.terms[k].mark == '?' || hulls.holds(l.id(k)) || l.id(k) == idBoat {
			return false
		}
		if batteryWords.holds(l.id(k)) || l.text(k) == "tray" || l.text(k) == "compartment" || l.text(k) == "locker" || l.text(k) == "hatch" {
			return true
		}
	}
	return false
}

// jonWidths are the usual bottom widths of jon boats in inches.
var jonWidths = map[int]bool{32: true, 36: true, 42: true, 44: true, 46: true, 48: true, 50: true, 52: true, 54: true, 56: true, 60: true, 62: true, 68: true, 70: true, 72: true}

// jonCode reads "1648": 16 feet long and 48 inches wide, for a boat that is said
// to be a jon or such.
func (l *line) jonCode() {
	for m := range l.r.Measures {
		me := &l.r.Measures[m]
		if l.setSlots["boat.length"] {
			return
		}
		if l.used[m] || me.Value == nil || me.Kind != read.Number && me.As != "model-year" {
			continue
		}
		code := int(*me.Value)
		long, wide := code/100, code%100
		if float64(code) != *me.Value || long < 10 || long > 24 || wide < 30 || wide > 84 || len(me.Said) != 4 {
			continue
		}
		i := l.at[m]
		_, _, after := l.near(i, 1, hullOrMaterial, 1)
		_, _, before := l.near(i, -1, hullOrMaterial, 1)
		_, _, loaded := l.near(i, 1, ofLoadedDry, 0)
		if _, _, weighed := l.near(i, -1, ofLoadedDry, 2); weighed || l.hasKind(read.Length) && !l.has.holds(idJon) {
			continue
		}
		if !after && !before && !(l.articleBefore(i) && jonWidths[wide]) || loaded || me.As == "model-year" && long > 18 && !l.has.holds(idJon) {
			continue
		}
		l.used[m] = true
		l.put(card.Fact{Slot: "boat.length", Value: num(float64(long) * 0.3048), Unit: "m", Said: me.Said, Row: "jon boat's number: feet and inches"})
		l.put(card.Fact{Slot: "boat.beam", Value: num(float64(wide) * 0.0254), Unit: "m", Said: me.Said, Row: "jon boat's number: feet and inches"})
	}
}

// Entries that the conditions above look for.
var (
	hullOrMaterial = hulls.with(kinds(words.Material), of("boat"))
	ofLoadedDry    = of("loaded", "dry")
)

// twoHeights reads a deck's height told with and without people as a range: "24
// inches with nobody in it, 21 with two of us".
func (l *line) twoHeights() {
	if !l.any(mountings) && !l.has.holds(idShaft) && !l.has.holds(idWaterline) && !l.knows("mount.height") {
		return
	}
	for m := 0; m+1 < len(l.r.Measures) && m < 12; m++ {
		n := m + 1
		for n+1 < len(l.r.Measures) && n < m+3 && !heightLike(&l.r.Measures[n]) {
			n++ // "28 with two of us, 31 with nobody"
		}
		a, b := &l.r.Measures[m], &l.r.Measures[n]
		if l.used[m] || l.used[n] || !heightLike(a) || !heightLike(b) || a.Kind == read.Number && b.Kind == read.Number && !l.knows("mount.height") && !l.has.holds(idShaft) {
			continue
		}
		empty, crewed := l.mannedBehind(m)
		empty2, crewed2 := l.mannedBehind(n)
		if !(empty && crewed2 || crewed && empty2) {
			continue
		}
		lo, hi := *l.convert(a, bareIf(a, "in")).value, *l.convert(b, bareIf(b, "in")).value
		if lo > hi {
			lo, hi = hi, lo
		}
		l.used[m], l.used[n] = true, true
		l.put(card.Fact{Slot: "mount.height", Low: num(lo), High: num(hi), Unit: "m", Said: l.said(a.Start, b.End), Row: "with people and without"})
		return
	}
}

// heightLike tells that a measure may be a deck's height.
func heightLike(me *read.Measure) bool {
	if me.Value == nil || me.As != "" {
		return false
	}
	return me.Kind == read.Length && me.Spoken == "in" && me.Bare >= 4 && me.Bare <= 50 || me.Kind == read.Number && me.Bare >= 4 && me.Bare <= 50
}

// mannedBehind tells whether "with nobody" or "with us" stands right behind a
// measure.
func (l *line) mannedBehind(m int) (empty, crewed bool) {
	for k := l.at[m] + 1; k <= l.at[m]+8 && k < len(l.terms) && l.terms[k].mark == 0; k++ {
		switch {
		case l.text(k) == "nobody", l.text(k) == "without", l.text(k) == "empty", l.text(k) == "noone", l.id(k) == idDry:
			return true, false
		case aboard.holds(l.id(k)), l.id(k) == idLoaded:
			return false, true
		}
	}
	k := l.skipFillers(l.at[m]-1, -1)
	if k >= 0 && l.id(k) == idDry {
		return true, false
	}
	return false, k >= 0 && l.id(k) == idLoaded
}

// kilometres are spoken kilometres an hour.
var kilometres = map[string]bool{"ks": true, "k": true, "kays": true, "clicks": true, "klicks": true, "kliks": true}

// bowIsSo accepts "the bow is 26" in talk of heights or shafts.
func bowIsSo(l *line, m int) bool {
	i := l.at[m]
	return l.r.Measures[m].Kind == read.Number && l.endsAt(i) && (l.text(i-1) == "is" || l.text(i-1) == "at" || l.text(i-1) == "its") &&
		(l.shaftsAsked() || l.knows("mount.height") || l.knows("boat.freeboard") || l.knows("motor.shaft"))
}

// feetOfWaterline accepts "hull speed of a 16 ft waterline".
func feetOfWaterline(l *line, m int) bool {
	i := l.at[m]
	return l.r.Measures[m].Spoken != "in" && l.r.Measures[m].Spoken != "cm" && l.text(i+1) == "waterline" && l.terms[i+1].start-l.r.Measures[m].End <= 1
}

// transomWide accepts "46 inch transom" in talk of horsepower, where its width is
// what counts: 33 CFR 183.53.
func transomWide(l *line, m int) bool {
	return inches(l, m) && l.anyText("horsepower", "hp") && lowest(&l.r.Measures[m]) > 0.75
}
