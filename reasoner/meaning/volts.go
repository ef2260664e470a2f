package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/read"
)

// besideVolts accepts "80 lb 24v" and "12 volt 55".
func besideVolts(l *line, m int) bool {
	i := l.at[m]
	if l.r.Measures[m].Kind == read.Number && l.id(i+1) >= 0 && !l.followedByPhraseEnd(i) && l.text(i+1) != "at" {
		return false
	}
	if l.r.Measures[m].Kind == read.Number && (l.batteryAt(i-1) || hundreds(l, m) || l.text(i-1) == "one" && l.any(batteryNamed)) {
		return false
	}
	if me := &l.r.Measures[m]; me.Kind == read.Mass && ratings[me.Bare] && me.Bare <= 130 && i >= 2 && l.terms[i-1].mark == ',' && l.voltsAt(i-2) && l.endsAt(i) {
		return true // "12 volts, thirty pounds, canoe"
	}
	return thrustSize(l, m) && (l.voltsAt(i-1) || l.voltsAt(i+1) || l.filler(i+1) && l.voltsAt(i+2) && (l.r.Measures[m].Kind == read.Mass || l.text(i+1) == "at" && ratings[l.r.Measures[m].Bare]))
}

func (l *line) voltsAt(i int) bool {
	return i >= 0 && i < len(l.terms) && l.terms[i].measure >= 0 && l.r.Measures[l.terms[i].measure].Kind == read.Voltage
}

var nominal = map[float64]bool{12: true, 16: true, 24: true, 36: true, 48: true}

func nominalVolts(l *line, m int) bool {
	v := l.r.Measures[m].Value
	return v != nil && nominal[*v]
}

func nominalBattery(l *line, m int) bool {
	v := l.r.Measures[m].Value
	return v != nil && (*v == 2 || *v == 6 || *v == 8 || l.anyOf("lithium") && (*v == 12.8 || *v == 25.6 || *v == 38.4 || *v == 51.2))
}

func anyVolts(l *line, m int) bool { return nominalVolts(l, m) || nominalBattery(l, m) }

// meterReading accepts volts that no battery or motor is sold by.
func meterReading(l *line, m int) bool { return l.r.Measures[m].Value != nil && !anyVolts(l, m) }

// bareReading accepts "i read 25.4 at the batteries and 21 at the plug": volts on a
// meter, in talk of a motor or its batteries.
func bareReading(l *line, m int) bool {
	v := l.r.Measures[m].Bare
	if v < 5 || v > 60 || !l.readAt(m) && !l.saysText("read") && !l.saysText("reads") && !l.saysText("reading") && !l.saysText("readings") && !l.saysText("voltmeter") && !l.saysText("multimeter") && !l.saysText("meter") {
		return false
	}
	i := l.at[m]
	next := l.id(i + 1)
	if next != words.None && (next.Kind() == words.Hull || next == idGauge || next == idBattery) || l.any(hulls) {
		return false
	}
	return l.any(batteryNamed) || l.anyOf("plug", "motor", "trolling motor", "slow") || l.hasKind(read.Voltage) || l.knows("motor.voltage")
}

// readAt accepts "12.4 at the battery and 10.6 at the plug", and "volts at the plug
// 10.8": decimals that no size has, told of a place on the wire.
func (l *line) readAt(m int) bool {
	me, i := &l.r.Measures[m], l.at[m]
	if !strings.Contains(me.Said, ".") || me.Kind != read.Number {
		return false
	}
	places := l.text(i+1) == "at" || l.text(i-1) == "plug" || l.id(i-1) == idPlug || l.id(i-1) == idBattery
	if !places {
		return false
	}
	_, _, after := l.near(i, 1, ofPlaces, 1)
	_, _, before := l.near(i, -1, ofPlaces, 0)
	return after || before && (l.saysText("volts") || l.saysText("voltage") || l.saysText("under load"))
}

var ofPlaces = of("battery", "bank", "plug", "motor", "trolling motor", "breaker")

// voltsEach accepts volts that are a battery's own: more than one battery is
// counted before them, or "each" stands behind.
func voltsEach(l *line, m int) bool {
	if !anyVolts(l, m) {
		return false
	}
	i := l.at[m]
	if _, _, ok := l.near(i, 1, ofEach, 3); ok {
		return true
	}
	if l.text(i-1) == "of" && l.batteryAt(i-2) {
		return true // "12 batteries of 12 volts"
	}
	if n := l.terms[max(i-1, 0)].measure; i > 0 && n >= 0 && l.r.Measures[n].Kind == read.Number && l.r.Measures[n].Bare == 1 && l.otherVolts(m) && l.any(batteryNamed) {
		return true // "1 12 volt for a 24 volt motor"
	}
	if l.otherVolts(m) && l.batteryAt(i+1) {
		return true // "a pair of 12v 120 ah agms, 24v motor"
	}
	k := i - 1
	if l.text(k) == "x" {
		k--
	}
	if k >= 0 && l.terms[k].measure >= 0 {
		me := &l.r.Measures[l.terms[k].measure]
		return me.Kind == read.Number && me.Value != nil && *me.Value >= 2 && *me.Value <= 12
	}
	return l.id(i-1) == idPair
}

// otherVolts tells that the line names a higher voltage as well, or one that two
// batteries make.
func (l *line) otherVolts(m int) bool {
	for k := range l.r.Measures {
		me := &l.r.Measures[k]
		if k < 64 && k != m && me.Value != nil && (me.Kind == read.Voltage && *me.Value > *l.r.Measures[m].Value || me.Kind == read.Number && nominal[me.Bare] && me.Bare > *l.r.Measures[m].Value && l.makesVolts(k)) {
			return true
		}
	}
	return false
}

// makesVolts accepts "in series to make 24".
func (l *line) makesVolts(m int) bool {
	switch l.text(l.at[m] - 1) {
	case "make", "makes", "get", "making", "gives", "give", "for":
		return l.has.holds(idSeries) && l.r.Measures[m].Kind == read.Number
	}
	return false
}

// bareVolts accepts "on 24" where volts are the talk.
func bareVolts(l *line, m int) bool {
	me := &l.r.Measures[m]
	i := l.at[m]
	if me.Value == nil || !nominal[*me.Value] || *me.Value == 48 {
		return false
	}
	if l.makesVolts(m) {
		return true
	}
	if l.text(i-1) == "on" || l.text(i-1) == "with" || l.text(i-1) == "at" {
		for k := range l.r.Measures {
			if k < 64 && l.reason[k] == "taken back" && l.r.Measures[k].Kind == read.Voltage {
				return l.endsAt(i) // "not 24v, stay on 12"
			}
		}
	}
	if l.text(i-1) == "on" || l.text(i-1) == "at" || l.text(i-1) == "run" {
		return l.endsAt(i) && (l.askedLast(Voltage) || l.anyOf("thrust", "motor", "trolling motor") || l.knows("motor.voltage"))
	}
	return false
}

// ratingOnVolts accepts "a 70 on 24": a rating, then its volts.
func ratingOnVolts(l *line, m int) bool {
	me, i := &l.r.Measures[m], l.at[m]
	if me.Kind != read.Number || me.Value == nil || !nominal[*me.Value] || i < 2 || l.text(i-1) != "on" && l.text(i-1) != "at" || l.terms[i-2].measure < 0 {
		return false
	}
	r := &l.r.Measures[l.terms[i-2].measure]
	return (r.Kind == read.Number || r.Kind == read.Mass) && ratings[r.Bare] && (l.knows("motor.thrust") || l.knows("motor.voltage"))
}

// goesVolts accepts "if he goes 24" where volts stand and nothing else of that
// size was said last.
func goesVolts(l *line, m int) bool {
	me, i := &l.r.Measures[m], l.at[m]
	if me.Kind != read.Number || me.Value == nil || !nominal[*me.Value] || *me.Value < 12 || !l.endsAt(i) || len(l.terms) > 8 || !l.knows("motor.voltage") {
		return false
	}
	switch l.text(i - 1) {
	case "go", "goes", "went", "going":
	case "to", "with":
		if w := l.text(i - 2); w != "go" && w != "goes" && w != "went" && w != "going" && w != "switch" && w != "switches" {
			return false
		}
	default:
		return l.id(i-1) == idWhatIf && (l.text(i-1) == "if i go" || l.text(i-1) == "if i went")
	}
	return !l.knows("wind.speed") && !l.anyOf("hold", "thrust")
}
