package read

// shapes are the numbers that are none of the fitting's business by their shape
// alone. Each reads from token i and returns the token after and the number.
var shapes = []struct {
	as    string
	first class // of the token that starts it
	read  func(p *parser, i int) (to int, value float64, ok bool)
}{
	{"phone-number", digitsToken, (*parser).phone},
	{"date", digitsToken, (*parser).date},
	{"clock-time", digitsToken, (*parser).clock},
	{"ratio", digitsToken, (*parser).ratio},
	{"ordinal", digitsToken, (*parser).ordinal},
	{"part-number", digitsToken, (*parser).partNumber},
	{"phone-number", markToken, (*parser).areaCode},
	{"model-year", markToken, (*parser).shortYear},
	{"clock-time", wordToken, (*parser).pastHour},
	{"clock-time", wordToken, (*parser).wordHour},
	{"date", wordToken, (*parser).monthDay},
	{"label", wordToken, (*parser).label},
}

// distractor reads a number of one of the shapes at token i.
func (p *parser) distractor(i int) (quantity, bool) {
	for k := range shapes {
		s := &shapes[k]
		if s.first != p.lex[i].class {
			continue
		}
		if to, value, ok := s.read(p, i); ok {
			return quantity{from: i, to: to, kind: Number, si: "1", bare: value, value: value, hasValue: true, as: s.as, rule: s.as}, true
		}
	}
	if q, ok := p.hoursMinutes(i); ok {
		return q, true
	}
	return quantity{}, false
}

// hoursMinutes reads "2:30 hours", which is how long and not when.
func (p *parser) hoursMinutes(i int) (quantity, bool) {
	if !p.timed(i) {
		return quantity{}, false
	}
	hours := p.lex[i].value + p.lex[i+2].value/60
	u, to := p.unitWord(&num{from: i, to: i + 3, value: hours}, i+3)
	if u == nil || u.spoken != "h" {
		return quantity{}, false
	}
	return quantity{from: i, to: to, kind: Duration, si: u.si, spoken: u.spoken, unit: u, bare: hours, value: u.toSI(hours), hasValue: true, rule: "hours and minutes"}, true
}

// timed tells whether hours and minutes stand at token i: 5:30.
func (p *parser) timed(i int) bool {
	if !p.isFigures(i) || p.word(i+1) != ":" || !p.glued(i+1) || !p.isFigures(i+2) || !p.glued(i+2) {
		return false
	}
	h, m := &p.lex[i], &p.lex[i+2]
	return (h.look|m.look)&(decimal|grouped) == 0 && h.value < 24 && m.whole == 2 && m.value < 60
}

// ordinal reads 2nd and 21st.
func (p *parser) ordinal(i int) (to int, value float64, ok bool) {
	v := p.lex[i].value
	return i + 2, v, p.glued(i+1) && p.ordinalEnding(i+1, v)
}

// areaCode reads (555) 555-0142.
func (p *parser) areaCode(i int) (to int, value float64, ok bool) {
	if p.word(i) != "(" || !p.isFigures(i+1) || p.lex[i+1].whole != 3 || p.word(i+2) != ")" {
		return 0, 0, false
	}
	to, number, ok := p.phone(i + 3)
	return to, p.lex[i+1].value*1e7 + number, ok
}

// shortYear reads '04 and '80s. Two figures up to 35 are of this century.
func (p *parser) shortYear(i int) (to int, value float64, ok bool) {
	if p.word(i) != "'" || p.gluedToWord(i) || !p.isFigures(i+1) || !p.glued(i+1) || p.lex[i+1].whole != 2 || p.lex[i+1].look&decimal != 0 || p.word(i+2) == "'" {
		return 0, 0, false
	}
	v := p.lex[i+1].value
	if u, _ := p.unit(&num{from: i + 1, to: i + 2, value: v}, i+2); u != nil {
		return 0, 0, false
	}
	to = i + 2
	if p.word(to) == "s" && p.glued(to) {
		to++
	}
	if v <= 35 {
		return to, 2000 + v, true
	}
	return to, 1900 + v, true
}

// wordHour reads "six am" and "five o'clock".
func (p *parser) wordHour(i int) (to int, value float64, ok bool) {
	if c := p.classOf(i); c != digitWord && c != teenWord {
		return 0, 0, false
	}
	return i + 2, p.wordValue(i), p.isMeridiem(i+1) || p.isOClock(i+1)
}

func (p *parser) isOClock(j int) bool { return p.word(j) == "o'clock" || p.word(j) == "oclock" }

// label reads "highway 12" and "sku 44120".
func (p *parser) label(i int) (to int, value float64, ok bool) {
	if p.role(i)&labelPrefix == 0 {
		return 0, 0, false
	}
	j := i + 1
	if w := p.word(j); w == "." || w == "#" || w == "no" || w == "number" {
		j++
	}
	if !p.isFigures(j) || p.lex[j].look&decimal != 0 {
		return 0, 0, false
	}
	u, _ := p.unit(&num{from: j, to: j + 1, value: p.lex[j].value}, j+1)
	return j + 1, p.lex[j].value, u == nil
}

func (p *parser) gluedToWord(i int) bool { return p.glued(i) && p.lex[i-1].class != markToken }

// phone reads 555-0142, 555-555-0142 and the like. Three and four figures are
// a telephone number only where they cannot be a range.
func (p *parser) phone(i int) (to int, number float64, ok bool) {
	if !p.isFigures(i) {
		return 0, 0, false
	}
	l := &p.lex[i]
	if l.look&decimal != 0 {
		return 0, 0, false
	}
	if (l.whole == 10 || l.whole == 11) && l.look&grouped == 0 && (p.role(i-1)&phoneWord != 0 || p.role(i-2)&phoneWord != 0) {
		return i + 1, l.value, true
	}
	if l.whole == 1 && l.value == 1 && p.word(i+1) == "-" && p.glued(i+2) && p.isFigures(i+2) && p.lex[i+2].whole == 3 {
		if to, number, ok := p.phone(i + 2); ok && to > i+5 {
			return to, number, true
		}
	}
	if l.whole != 3 {
		return 0, 0, false
	}
	sep := func(j int) bool { return p.word(j) == "-" || p.word(j) == "." }
	if sep(i+1) && p.isFigures(i+2) && p.lex[i+2].whole == 3 && sep(i+3) && p.isFigures(i+4) && p.lex[i+4].whole == 4 {
		return i + 5, l.value*1e7 + p.lex[i+2].value*1e4 + p.lex[i+4].value, true
	}
	j := i + 1
	if p.word(j) == "-" {
		j++
	}
	if p.isFigures(j) && p.lex[j].whole == 4 && p.lex[j].look&(decimal|grouped) == 0 {
		second := &p.lex[j]
		sure := j > i+1 && (second.look&leadingZero != 0 || l.value == 555)
		for k := i - 1; k >= i-4 && k >= p.free; k-- {
			sure = sure || p.role(k)&phoneWord != 0
		}
		if sure {
			return j + 1, l.value*1e4 + second.value, true
		}
	}
	return 0, 0, false
}

// date reads 3/4/2024, 2024-03-04, 1995-01, 2013-14 and "4th of July".
func (p *parser) date(i int) (to int, value float64, ok bool) {
	l := &p.lex[i]
	if l.look&decimal != 0 || l.look&grouped != 0 {
		return 0, 0, false
	}
	w := p.word(i + 1)
	if (w == "/" || w == "-") && p.isFigures(i+2) && p.glued(i+1) && p.glued(i+2) {
		m := &p.lex[i+2]
		if p.word(i+3) == w && p.isFigures(i+4) && p.glued(i+3) && p.glued(i+4) {
			d := &p.lex[i+4]
			if u, _ := p.unit(&num{from: i + 4, to: i + 5, value: d.value}, i+5); u != nil || l.value == 12 && m.value == 24 {
				return 0, 0, false // "6/8/10 gauge", "12/24/36"
			}
			if min(l.value, m.value) <= 12 && max(l.value, m.value) <= 31 && (d.whole == 2 || d.whole == 4) || l.whole == 4 && m.value <= 12 && d.value <= 31 {
				return i + 5, l.value, true
			}
		}
		if l.whole == 4 && l.value >= 1900 && l.value < 2100 && w == "-" && m.whole == 2 && !p.glueWord(i+3) {
			return i + 3, l.value, true
		}
	}
	if l.whole <= 2 && l.value >= 1 && l.value <= 31 {
		j := i + 1
		if p.glued(j) && p.ordinalEnding(j, l.value) {
			j++
			if p.word(j) == "of" {
				j++
			}
			if p.role(j)&monthWord != 0 {
				return j + 1, l.value, true
			}
			return 0, 0, false
		}
		if p.role(j)&monthWord != 0 && p.word(j) != "may" && p.word(j) != "march" && !p.glued(j) {
			return j + 1, l.value, true
		}
	}
	return 0, 0, false
}

// monthDay reads "june 12", "may 4th", "sept. 30".
func (p *parser) monthDay(i int) (to int, value float64, ok bool) {
	if p.role(i)&monthWord == 0 {
		return 0, 0, false
	}
	j := i + 1
	if p.word(j) == "." {
		j++
	}
	if !p.isFigures(j) || p.lex[j].value < 1 || p.lex[j].value > 31 || p.lex[j].look&decimal != 0 {
		return 0, 0, false
	}
	v := p.lex[j].value
	if p.glued(j+1) && p.ordinalEnding(j+1, v) {
		return j + 2, v, true
	}
	n := num{from: j, to: j + 1, value: v}
	if u, _ := p.unit(&n, j+1); u != nil || p.role(j+1)&countNoun != 0 || p.word(i) == "may" && !p.closes(j+1) {
		return 0, 0, false
	}
	return j + 1, v, true
}

// clock reads 5:30, 6 am, 2.13 pm, 5 o'clock.
func (p *parser) clock(i int) (to int, value float64, ok bool) {
	l := &p.lex[i]
	if l.look&grouped != 0 {
		return 0, 0, false
	}
	j, timed := i+1, p.timed(i)
	if timed {
		j += 2
		if p.word(j) == ":" && p.isFigures(j+1) && p.glued(j+1) {
			j += 2
		}
		if u, _ := p.unitWord(&num{from: i, to: j, value: l.value}, j); u != nil && u.spoken == "h" {
			return 0, 0, false // see hoursMinutes
		}
	}
	if l.value < 13 && p.isMeridiem(j) || !timed && l.value <= 12 && p.isOClock(j) {
		return j + 1, l.value, true
	}
	return j, l.value, timed
}

// pastHour reads "half past six", "quarter to 5".
func (p *parser) pastHour(i int) (to int, hour float64, ok bool) {
	if p.classOf(i) != shareWord {
		return 0, 0, false
	}
	switch w := p.word(i + 1); {
	case w == "past", p.word(i) == "quarter" && (w == "to" || w == "after" || w == "till" || w == "til"):
	default:
		return 0, 0, false
	}
	j := i + 2
	switch {
	case p.isFigures(j) && integer(p.lex[j].value):
		hour = p.lex[j].value
	case p.classOf(j) == digitWord || p.classOf(j) == teenWord:
		hour = p.wordValue(j)
	}
	if hour < 1 || hour > 12 || p.role(j+1)&throttleWord != 0 || p.isUnitAt(j+1) {
		return 0, 0, false
	}
	to = j + 1
	if p.isMeridiem(to) {
		to++
	}
	return to, hour, true
}

func (p *parser) isUnitAt(j int) bool { return j < len(p.tok) && p.isUnitWord(j) }

// ratio reads 50:1 and 60/40, and 24/7, which says always.
func (p *parser) ratio(i int) (to int, value float64, ok bool) {
	if !p.glued(i+1) || !p.isFigures(i+2) || !p.glued(i+2) || p.glueWord(i+3) || (p.lex[i].look|p.lex[i+2].look)&(decimal|grouped) != 0 {
		return 0, 0, false
	}
	a, b := p.lex[i].value, p.lex[i+2].value
	switch p.word(i + 1) {
	case ":":
		return i + 3, a, !p.timed(i)
	case "/":
		return i + 3, a, a == 24 && b == 7 || a+b == 100 && a >= 50 && b >= 10
	}
	return 0, 0, false
}

// isMeridiem tells whether token j is am or pm, and not the verb: "220 am i".
func (p *parser) isMeridiem(j int) bool {
	switch p.word(j) {
	case "pm":
		return true
	case "am":
		return p.word(j+1) != "i" && p.word(j-1) != "i"
	}
	return false
}

// ordinalEnding tells whether token j makes an ordinal of the figures x.
func (p *parser) ordinalEnding(j int, x float64) bool {
	if j >= len(p.tok) || !integer(x) || x < 0 {
		return false
	}
	teens := int64(x)%100 >= 11 && int64(x)%100 <= 13
	last := int64(x) % 10
	switch p.word(j) {
	case "st":
		return last == 1 && !teens
	case "nd":
		return last == 2 && !teens
	case "rd":
		return last == 3 && !teens
	case "th":
		return true
	}
	return false
}

// partNumber reads figures that hang on letters with a hyphen and so name
// something: "mk-55". Words that can be said do not count, since a dash
// without spaces stands in talk as well: "wind-15 mph".
func (p *parser) partNumber(i int) (to int, value float64, ok bool) {
	if i < 2 || p.word(i-1) != "-" || !p.glued(i) || !p.glued(i-1) || p.lex[i-2].class != wordToken || len(p.word(i-2)) > 5 {
		return 0, 0, false
	}
	if e := p.lex[i-2].entry; e != nil {
		return 0, 0, false
	}
	if p.upper(i - 2) {
		return i + 1, p.lex[i].value, true
	}
	for _, c := range []byte(p.word(i - 2)) {
		switch c {
		case 'a', 'e', 'i', 'o', 'u', 'y':
			return 0, 0, false
		}
	}
	return i + 1, p.lex[i].value, true
}

// outboard tells whether x is a rating in horsepower that outboards are sold in
// and trolling motors, in pounds, are not (common practice, no published
// source).
func outboard(x float64) bool {
	switch x {
	case 2.5, 3.5, 9.5, 9.8, 9.9, 15, 25, 35, 60, 75, 90, 115, 135, 140, 150, 175, 200, 225, 250, 300, 350, 400:
		return true
	}
	return false
}

// doubts marks a bare number that is surely something else, and adds the other
// readings that a doubtful one allows.
func (p *parser) doubts(q *quantity) {
	if q.as != "" {
		return
	}
	switch {
	case q.kind == Mass && q.spoken == "lb" && q.hasValue:
		q.hint(Force, "N", q.bare*kgPerPound*gravity, "pounds of thrust")
	case q.spoken == "m" && q.unit != nil && q.hasValue && p.word(q.to-1) == "m":
		q.hint(Length, "m", q.bare*1609.344, "miles")
		if caseSize(q.bare) {
			q.hint(Group, "1", q.bare, "battery group")
		}
	case q.spoken == "kg" && q.hasValue && q.n.broken && q.bare < 10 && p.thousandsPoint(q.n.from):
		q.hint(Mass, "kg", q.bare*1000, "a point between thousands")
	case q.spoken == "ton" && q.hasValue:
		q.hint(Mass, "kg", q.bare*1000, "metric tons")
		q.hint(Mass, "kg", q.bare*2240*kgPerPound, "long tons")
	case q.spoken == "deg" && q.hasValue:
		q.hint(Temperature, "degC", q.bare, "degrees Celsius")
	case q.spoken == "nmi" && p.word(q.to-1) == "nm" && q.hasValue:
		q.hint(Length, "m", q.bare*1e-9, "nanometres")
	case q.kind == Number && q.unit == nil && q.hasValue && !q.n.broken && !q.n.words && !q.n.spread && q.n.to-q.n.from <= 2:
		p.bareDoubts(q)
	case q.kind == Number && q.unit == nil && q.hasValue && outboard(q.bare) && p.engineNear(q):
		q.as, q.rule = "horsepower", "outboard rating"
	case q.kind == Number && q.unit == nil && q.hasValue && q.n.broken && outboard(q.bare):
		q.hint(Power, "W", q.bare*745.69987158227022, "outboard rating")
	}
}

// lengthAt tells whether a length in feet or metres starts at token j.
func (p *parser) lengthAt(j int) bool {
	if !p.startsNumber(j) {
		return false
	}
	n, ok := p.number(j)
	if !ok {
		return false
	}
	u, _ := p.unit(&n, n.to)
	return u != nil && (u.spoken == "ft" || u.spoken == "m")
}

func (q *quantity) hint(kind Kind, unit string, value float64, rule string) {
	q.also = append(q.also, Alternative{kind, unit, value, rule})
}

// bareDoubts looks at a bare whole number in figures.
func (p *parser) bareDoubts(q *quantity) {
	next := q.n.to
	if q.bare >= 1960 && q.bare <= 2035 && p.lex[q.n.from].whole == 4 && p.lex[q.n.from].look&(grouped|leadingZero) == 0 {
		lead := p.role(q.from-1)&yearLead != 0
		switch {
		case p.role(next)&loadWord != 0:
		case (lead || q.from == 0 || p.lex[q.from-1].class == markToken) && p.lengthAt(next), q.from == 0 && p.word(next) == "," && p.lengthAt(next+1):
			q.as, q.rule = "model-year", "model year" // "2016 17 ft bass boat"
			return
		case lead && (p.closes(next) || p.role(next)&boatWord != 0 || p.startsNumber(next)), p.role(next)&boatWord != 0 && p.word(next) != "jon", p.word(q.from-1) == "in" && !q.about:
			q.as, q.rule = "model-year", "model year"
			return
		default:
			q.hint(Number, "1", q.bare, "model year")
		}
	}
	if l := &p.lex[q.n.from]; l.whole == 2 && l.look&(leadingZero|decimal) == leadingZero && (p.role(next)&boatWord != 0 || p.lengthAt(next)) {
		q.as, q.rule = "model-year", "model year" // "07 skiff"
		q.bare += 2000
		q.value = q.bare
		return
	}
	if outboard(q.bare) && (p.engineNear(q) || q.n.plural && q.bare >= 75) || p.engineNext(q) {
		q.as, q.rule = "horsepower", "outboard rating"
		return
	}
	switch q.bare {
	case 12, 24, 36, 48:
		q.hint(Voltage, "V", q.bare, "volts")
	}
	if caseSize(q.bare) && (q.n.plural || p.role(next)&chemistry != 0) {
		q.hint(Group, "1", q.bare, "battery group")
	}
	if w := p.word(next); (w == "wire" || w == "cable") && q.bare <= 16 {
		q.hint(Gauge, "AWG", q.bare, "wire gauge")
	}
}

// engineNext tells whether an outboard is named right behind the number, which
// makes any rating one in horsepower: "50 four stroke", "8 kicker".
func (p *parser) engineNext(q *quantity) bool {
	j := q.n.to
	switch p.word(j) {
	case "outboard", "outboards", "kicker", "kickers", "gasser":
		return true
	}
	if (p.isFigures(j) || p.classOf(j) == digitWord) && p.word(j+1) == "-" {
		j++
	}
	return (p.isFigures(q.n.to) || p.classOf(q.n.to) == digitWord) && (p.word(j+1) == "stroke" || p.word(j+1) == "strokes")
}

// engineNear tells whether the words around a bare rating speak of an
// outboard: "9.9 that weighs 85", "150 on the back".
func (p *parser) engineNear(q *quantity) bool {
	for k := q.n.to; k < q.n.to+3 && k < len(p.tok) && (p.lex[k].class != markToken || p.word(k) == "-"); k++ {
		if p.role(k)&engineWord != 0 {
			return true
		}
	}
	j := q.n.to
	return p.word(j) == "on" && p.word(j+1) == "the" && (p.word(j+2) == "back" || p.word(j+2) == "transom" || p.word(j+2) == "stern") || p.word(j) == "hanging" && p.word(j+1) == "off"
}

// thousandsPoint tells whether the figures at i have a point and three figures
// behind it, as "1.900 kg" is written in half of Europe.
func (p *parser) thousandsPoint(i int) bool {
	w := p.word(i)
	return p.isFigures(i) && len(w) == int(p.lex[i].whole)+4 && w[len(w)-4] == '.'
}
