package meaning

import (
	"strconv"
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

var chemistries = kinds(words.Chemistry)

// batteryCues tells what a number says of the batteries.
var batteryCues = []cue{
	{name: "amp-hours", slot: "battery.capacity", kind: read.Charge, low: 0.005, high: 2000, alone: true, weight: 8, many: true},
	{name: "two 100s", slot: "battery.capacity", kind: read.Charge, bare: "Ah", low: 30, high: 400, alone: true, weight: 7, many: true, when: hundreds},
	{name: "a 100 lithium", slot: "battery.capacity", kind: read.Charge, bare: "Ah", low: 20, high: 400, after: chemistries, reachA: 0, weight: 7, many: true, when: ofAChemistry},
	{name: "lead, 105", slot: "battery.capacity", kind: read.Charge, bare: "Ah", low: 30, high: 400, alone: true, weight: 6, many: true, when: behindChemistry},
	{name: "a 100 amp lithium", slot: "battery.capacity", kind: read.Current, low: 20, high: 400, after: chemistries.with(of("battery", "deep cycle")), reachA: 0, weight: 9, many: true, when: ampsOfABattery},
	{name: "twelve-volt batteries, as so many 12s", slot: "battery.voltage", kind: read.Voltage, bare: "V", low: 6, high: 12, alone: true, weight: 9, when: twelves},
	{name: "Peukert's exponent", slot: "battery.peukert", kind: read.Number, low: 1, high: 1.6, alone: true, weight: 11, when: ofPeukert},
	{name: "group size", slot: "battery.group", kind: read.Group, alone: true, weight: 9, many: true},
	{name: "a case size beside batteries", slot: "battery.group", kind: read.Number, alone: true, weight: 8, many: true, when: caseSize},
	{name: "number of batteries", slot: "battery.count", kind: read.Number, low: 1, high: 12, alone: true, weight: 7, when: countsBatteries},
	{name: "reserve minutes", slot: "battery.reserve", kind: read.Duration, low: 0.3, high: 12, after: of("reserve minutes"), reachA: 2, before: of("reserve minutes"), reachB: 2, weight: 10},
	{name: "minutes in reserve", slot: "battery.reserve", kind: read.Duration, low: 0.3, high: 12, alone: true, weight: 10, when: saysReserve},
	{name: "reserve", slot: "battery.reserve", kind: read.Number, low: 20, high: 600, after: of("reserve minutes"), reachA: 1, before: of("reserve minutes"), reachB: 1, weight: 10},
}

// saysReserve accepts "105 reserve minutes", read as one measure.
func saysReserve(l *line, m int) bool {
	return containsWord(lowerASCII(l.r.Measures[m].Said), "reserve")
}

// ofAChemistry accepts "a 100 lithium": a battery named by its amp-hours.
func ofAChemistry(l *line, m int) bool {
	me, i := &l.r.Measures[m], l.at[m]
	if me.Kind != read.Number || me.Value == nil || int(me.Bare)%5 != 0 || me.Bare != float64(int(me.Bare)) || caseSizes[me.Bare] || !chemistries.holds(l.id(i+1)) || l.hasKind(read.Charge) {
		return false
	}
	k := l.skipFillers(i-1, -1)
	return l.articleBefore(i) || l.text(i-1) == "my" || l.smallNumber(k) > 0 || k < 0 || l.terms[max(k, 0)].mark != 0
}

// ampsOfABattery accepts "a 100 amp lithium", as amp-hours are often called.
func ampsOfABattery(l *line, m int) bool {
	i := l.at[m]
	v := l.r.Measures[m].Value
	return v != nil && int(*v)%5 == 0 && i+1 < len(l.terms) && l.id(i+2) != idCharger && !l.hasKind(read.Charge)
}

// behindChemistry accepts "lead, 105" as a short later turn.
func behindChemistry(l *line, m int) bool {
	me, i := &l.r.Measures[m], l.at[m]
	if me.Kind != read.Number || len(l.before.Facts) == 0 || len(l.terms) > 5 || !l.endsAt(i) || int(me.Bare)%5 != 0 || me.Bare != float64(int(me.Bare)) || caseSizes[me.Bare] {
		return false
	}
	k := i - 1
	if k > 0 && l.terms[k].mark == ',' {
		k--
	}
	return k >= 0 && (chemistries.holds(l.id(k)) || l.id(k) == words.Of("lead"))
}

// twelves accepts "three 12s": batteries named by their volts.
func twelves(l *line, m int) bool {
	me := &l.r.Measures[m]
	if me.Kind != read.Number || me.Bare != 12 && me.Bare != 6 && me.Bare != 8 || !l.saidPlural(m) {
		return false
	}
	k := l.skipFillers(l.at[m]-1, -1)
	return k >= 0 && (l.id(k) == idPair || l.terms[k].measure >= 0 && l.r.Measures[l.terms[k].measure].Kind == read.Number && lowest(&l.r.Measures[l.terms[k].measure]) <= 6)
}

// caseSizes are the usual sizes that a number alone may name.
var caseSizes = map[float64]bool{22: true, 24: true, 27: true, 30: true, 31: true, 34: true, 49: true, 65: true, 78: true}

// groupName is the case size as the trade writes it: "27", "24M", "GC2".
func groupName(me *read.Measure) string {
	s := strings.ToUpper(me.Said)
	for i := 0; i < len(s); i++ {
		if s[i] < '0' || s[i] > '9' {
			continue
		}
		from := i
		if i >= 2 && s[i-2:i] == "GC" {
			from = i - 2
		}
		for i < len(s) && s[i] >= '0' && s[i] <= '9' {
			i++
		}
		if i < len(s) && (s[i] == 'M' || s[i] == 'D' || s[i] == 'F' || s[i] == 'R' || s[i] == 'H') && (i+1 == len(s) || s[i+1] < 'A') {
			i++
		}
		return s[from:i]
	}
	if me.Value != nil {
		return strconv.FormatFloat(*me.Value, 'g', 4, 64)
	}
	return s
}

// caseSize accepts "pair of 31 agms", "two 27s", "a 31 deep cycle".
func caseSize(l *line, m int) bool {
	me := &l.r.Measures[m]
	if me.Value == nil || !caseSizes[*me.Value] {
		return false
	}
	i := l.at[m]
	next := l.id(i + 1)
	if next >= 0 && (chemistries.holds(next) || next == idBattery || next == idSeries) {
		return true
	}
	if l.saidPlural(m) || l.text(i+1) == "size" {
		return true
	}
	// "a 27 and a 31 in parallel"
	return l.articleBefore(i) && (next == words.None || next == idAnd || next == idParallel) && l.anyOf("series", "parallel")
}

// saidPlural accepts "27s".
func (l *line) saidPlural(m int) bool {
	me := &l.r.Measures[m]
	switch l.text(l.at[m] - 1) {
	case "their", "his", "her", "early", "late", "mid":
		return false // "a couple in their 70s"
	}
	return me.End < len(l.r.Text) && l.r.Text[me.End] == 's' || me.Said[len(me.Said)-1] == 's'
}

// hundreds accepts "a pair of 100s": batteries named by their amp-hours.
func hundreds(l *line, m int) bool {
	me := &l.r.Measures[m]
	if me.Kind != read.Number || me.Value == nil || !l.saidPlural(m) || int(*me.Value)%5 != 0 || caseSizes[*me.Value] {
		return false
	}
	k := l.skipFillers(l.at[m]-1, -1)
	if k > 0 && chemistries.holds(l.terms[k].id) {
		if k = l.skipFillers(k-1, -1); int(*me.Value)%10 == 0 && (k < 0 || l.terms[k].measure < 0) {
			return true // "lithium 100s"
		}
	}
	return k >= 0 && (l.terms[k].id == idPair || l.smallNumber(k) >= 2 || l.terms[k].measure >= 0 && lowest(&l.r.Measures[l.terms[k].measure]) == 2)
}

// countsBatteries accepts a small whole number before batteries, a chemistry, a
// case size, a capacity or "in series".
func countsBatteries(l *line, m int) bool {
	me := &l.r.Measures[m]
	if me.Value == nil || *me.Value != float64(int(*me.Value)) {
		return false
	}
	if l.saidPlural(m) {
		return false // "three 12s"
	}
	if at := l.at[m]; l.text(at-1) == "x" && l.endsAt(at) && (l.any(chemistries) || l.hasKind(read.Charge)) {
		return true // "100 ah lithium x 3"
	}
	for k, i := 0, l.at[m]+1; i < len(l.terms) && k < 5; i, k = i+1, k+1 {
		t := &l.terms[i]
		switch {
		case t.mark != 0 || t.id == idAnd || t.id == idWith || t.id == idBank:
			return false
		case t.id == idBattery || t.id == idDeepCycle || t.id == idSeries || t.id == idParallel || chemistries.holds(t.id):
			return i+1 >= len(l.terms) || l.terms[i+1].id != idCharger
		case t.id == idGroup || t.id == idAmpHour:
			return true
		case t.measure >= 0:
			if k := l.r.Measures[t.measure].Kind; k == read.Voltage || k == read.Mass && l.id(i+1) == idBattery {
				continue
			}
			if l.r.Measures[t.measure].Kind == read.Charge && i > l.at[m]+1 {
				return true // "two 12 volt 110 ah gels"
			}
			if ampsOfABattery(l, t.measure) && l.r.Measures[t.measure].Kind == read.Current && (chemistries.holds(l.id(i+1)) || l.id(i+1) == idBattery) {
				return true
			}
			return l.r.Measures[t.measure].Kind == read.Number && (twelves(l, t.measure) || caseSize(l, t.measure) || hundreds(l, t.measure))
		case t.filler || t.text == "x" || t.id < 0:
			continue
		case t.id == idDualPurpose || t.id == idCrankingBattery:
			return true
		default:
			return false
		}
	}
	return false
}

// ofPeukert accepts "Peukert 1.2" and, beside a battery, "k = 1.25".
func ofPeukert(l *line, m int) bool {
	for k := l.at[m] - 1; k >= 0 && k >= l.at[m]-3; k-- {
		switch w := l.text(k); {
		case w == "peukert" || w == "peukerts" || w == "exponent" || w == "k" && l.any(batteryNamed):
			return true
		case !l.filler(k) && l.terms[k].mark != ':':
			return false
		}
	}
	return false
}

// emptySayings tell that a battery is run until nothing is left in it.
var emptySayings = []string{"down to empty", "down to nothing", "down to flat", "till flat", "until flat", "till its flat", "till its dead", "till dead", "until dead", "until its dead", "till empty", "until empty", "until its empty", "till its empty", "run it flat", "run them flat", "to dead flat", "down to zero", "all the way down"}

// drawnTo notes how far down a battery may be run where a run time is told with it:
// "down to 50%", "till its flat".
func (l *line) drawnTo() {
	if l.charging() || l.anyOf("charger") || l.askedLast(Charger) || l.faulty() || !l.any(batteryNamed) && !l.hasKind(read.Charge) && !l.hasKind(read.Group) && !l.askedLast(Runtime) {
		return
	}
	for m := range l.r.Measures {
		me, i := &l.r.Measures[m], l.at[m]
		if m >= mendsWithin || me.Kind != read.Percent || me.Value == nil || *me.Value >= 100 || l.reason[m] != "a share that is no throttle" || l.text(i-1) != "to" && l.text(i-1) != "down to" {
			continue
		}
		if w := l.text(i - 2); l.text(i-1) == "to" && w != "down" && w != "it" && w != "them" && w != "only" && w != "drawn" {
			continue
		}
		left := *me.Value / 100
		if w := l.text(i + 1); w == "used" || w == "discharge" || w == "gone" {
			left = 1 - left
		}
		l.reason[m] = ""
		l.put(card.Fact{Slot: "battery.depth-limit", Value: num(1 - left), Unit: "1", Said: l.said(l.terms[i-1].start, me.End), Row: "how far down it is run"})
		return
	}
	for _, s := range emptySayings {
		if l.saysText(s) {
			l.put(card.Fact{Slot: "battery.depth-limit", Value: num(1), Unit: "1", Said: s, Row: "how far down it is run"})
			return
		}
	}
}
