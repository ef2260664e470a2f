package read

import "math"

// quantity is a measure while it is being read.
type quantity struct {
	from, to int // tokens
	n        num
	unit     *unitRow // the first unit, nil for a bare number
	kind     Kind
	si       string
	spoken   string
	as       string
	rule     string
	hedge    string
	bare     float64
	bareHigh float64

	value, low, high          float64
	hasValue, hasLow, hasHigh bool
	about                     bool
	also                      []Alternative
}

// single reads one quantity, without ranges and hedges, at token i.
func (p *parser) single(i int) (quantity, bool) {
	l := &p.lex[i]
	if l.entry != nil {
		e := l.entry
		switch {
		case e.role&groupPrefix != 0:
			if q, ok := p.group(i); ok {
				return q, true
			}
		case e.role&gaugePrefix != 0:
			if q, ok := p.gaugeNumber(i); ok {
				return q, true
			}
		}
		if q, ok := p.currency(i); ok {
			return q, true
		}
		if w := p.word(i); w == "#" || w == "number" || w == "no" {
			if q, ok := p.numberSign(i); ok {
				return q, true
			}
		}
		if e.role&caseName != 0 {
			v, spoken := caseNames[p.word(i)], p.word(i)
			if caseSize(v) {
				spoken = "group"
			}
			return quantity{from: i, to: i + 1, kind: Group, si: "1", spoken: spoken, bare: v, value: v, hasValue: true, rule: "battery case by name"}, true
		}
	}
	n, ok := p.number(i)
	if !ok {
		if q, ok := p.spacedMinus(i); ok {
			return q, true
		}
		return p.unsaid(i)
	}
	q := p.plain(n)
	if q.kind == Number && q.unit == nil && !n.gauge {
		p.caseLetter(&q)
	}
	return q, true
}

// plain reads the unit behind a number and what follows it.
func (p *parser) plain(n num) quantity {
	q := quantity{from: n.from, to: n.to, n: n, kind: Number, si: "1", bare: n.value, value: n.value, hasValue: true, rule: n.rule}
	if q.rule == "" {
		q.rule = "number"
	}
	p.spacedThousands(&q)
	n = q.n
	if n.money {
		q.setUnit(dollar)
		p.spread(&q)
		return q
	}
	if n.gauge {
		q.kind, q.si, q.spoken = Gauge, "AWG", "AWG"
		if u, to := p.unit(&n, n.to); u != nil && u.kind == Gauge {
			q.to = to
		}
		return q
	}
	if q, ok := p.wordedGauge(n); ok {
		return q
	}
	j, hedge := n.to, (*hedgeRow)(nil)
	if row, to := p.hedgeAt(j); row != nil {
		// "20+ mph", "50 or so pounds"
		if u, _ := p.unitWord(&n, to); u != nil && (len(p.word(to)) > 1 || row.name == "plus sign") {
			hedge, j = row, to
		}
	}
	u, to := p.unit(&n, j)
	if u == nil {
		p.spread(&q)
		return q
	}
	q.setUnit(u)
	q.to = to
	q.rule = u.rule
	if n.first != 0 && u.kind == Speed && n.first < n.second && n.second <= 2*n.first {
		// "fifteen twenty mph"
		q.ends(u.toSI(n.first), u.toSI(n.second), n.first, n.second)
		return q
	}
	p.chain(&q)
	if u.kind == Temperature && (p.word(q.to) == "below" || p.word(q.to) == "under") && p.word(q.to+1) == "zero" {
		q.bare = -q.bare
		q.value = u.toSI(q.bare)
		q.to += 2
	}
	p.spread(&q)
	if hedge != nil {
		q.apply(hedge)
	}
	return q
}

func (q *quantity) setUnit(u *unitRow) {
	q.unit, q.kind, q.si, q.spoken, q.as = u, u.kind, u.si, u.spoken, u.as
	q.value = u.toSI(q.bare)
}

// spacedThousands reads "1 900 kg", as metric speakers write it. Two numbers
// side by side are a count and a weight only where people can weigh that much:
// "2 100 kg blokes".
func (p *parser) spacedThousands(q *quantity) {
	i, j := q.n.from, q.n.to
	if j != i+1 || !p.isFigures(i) || !p.isFigures(j) || p.lex[i].whole != 1 || p.lex[j].whole != 3 || (p.lex[i].look|p.lex[j].look)&decimal != 0 ||
		p.word(j+1) != "kg" || q.bare < 1 || q.bare > 1 && p.lex[j].value < 200 {
		return
	}
	q.n.value = q.bare*1000 + p.lex[j].value
	q.n.to = j + 1
	q.bare, q.value, q.to = q.n.value, q.n.value, q.n.to
}

// ends makes the quantity a range, low end first.
func (q *quantity) ends(low, high, bareLow, bareHigh float64) {
	if low > high {
		low, high, bareLow, bareHigh = high, low, bareHigh, bareLow
	}
	q.hasValue, q.hasLow, q.hasHigh = false, true, true
	q.low, q.high, q.bare, q.bareHigh = low, high, bareLow, bareHigh
}

// spread carries the ends of "a couple hundred" over to the unit.
func (p *parser) spread(q *quantity) {
	if !q.n.spread {
		return
	}
	q.hasLow, q.hasHigh, q.about = true, true, true
	q.low, q.high = q.unit.toSI(q.n.low), q.unit.toSI(q.n.high)
	q.bareHigh = q.n.high
}

// chain adds what follows a unit and makes one measure with it: "18 ft 6 in",
// "18 foot 6", "an hour and a half", "15 dollars 50".
func (p *parser) chain(q *quantity) {
	last := q.unit
	for range 4 {
		k, sep := q.to, ""
		if p.word(k) == "." && p.glued(k) && p.word(k+1) == "," {
			k++ // "10 lbs., 5 oz."
		}
		if p.word(k) == "." && p.glued(k) && p.startsNumber(k+1) {
			if u, _ := p.unit(&num{from: k + 1, to: k + 2, value: 1}, k+2); u == nil {
				break // the point ends the sentence
			}
			k++ // "5 ft. 6 in"
		}
		switch w := p.word(k); {
		case w == "and" || w == "&" || w == ",", w == "-" && p.glued(k) && p.glued(k+1):
			sep = w
			k++
			if w == "," && p.word(k) == "and" {
				k++
			}
		}
		if !p.startsNumber(k) {
			break
		}
		p.inMoney = q.kind == Money
		n2, ok := p.number(k)
		if !ok || n2.value < 0 || n2.gauge || n2.plural {
			p.inMoney = false
			break
		}
		u2, to2 := p.unit(&n2, n2.to)
		p.inMoney = false
		if u2 != nil {
			per, ok := smaller(last.spoken, u2.spoken)
			if !ok || n2.value >= per && last.spoken != "yd" || q.n.broken && sep != "" || sep == "," && last.spoken == "ft" && !p.sizeEnds(to2) {
				break
			}
			q.grow(n2.value, u2)
			q.to, last = to2, u2
			continue
		}
		per, ok := bareSmaller(last.spoken)
		if !ok || n2.value >= per || q.n.broken || !p.bareFollows(q, &n2, last, sep) {
			break
		}
		q.growBare(n2.value, per)
		q.to = n2.to
		break
	}
	p.tail(q, last)
}

// grow adds x of a smaller unit.
func (q *quantity) grow(x float64, u *unitRow) {
	q.value += u.toSI(x)
	q.bare += x * u.factor / q.unit.factor
	q.rule = q.rule + " and " + u.spoken
}

func (q *quantity) growBare(x, per float64) {
	q.value += x * q.unit.factor / per
	q.bare += x / per
	q.rule += " and a bare number"
}

// sizeEnds tells whether the measure that ends before token j stands alone, so
// that a comma inside it parts no two measures.
func (p *parser) sizeEnds(j int) bool {
	if p.closes(j) {
		return true
	}
	switch p.word(j) {
	case "tall", "long", "high", "wide", "deep":
		return true
	}
	return false
}

// bareFollows tells whether a number without a unit belongs to the unit before
// it: the 6 of "18 foot 6 bass boat", but not the 2 of "18 foot 2 guys".
func (p *parser) bareFollows(q *quantity, n *num, last *unitRow, sep string) bool {
	j := n.to
	glued := p.glued(n.from) && p.glued(n.from-1)
	if w := p.word(j); w == "/" || w == ":" || w == "-" && p.glued(j) || w == "x" || w == "to" && p.startsNumber(j+1) || p.role(j)&(countNoun|throttleWord) != 0 && !(w == "guy" && n.value > 1) || p.isMeridiem(j) {
		return false
	}
	if p.isFigures(n.from) && p.lex[n.from].look&leadingZero != 0 && last.kind != Duration {
		return false
	}
	if p.isFigures(n.to-1) && p.lex[n.to-1].look&decimal != 0 {
		return false // "16 ft 9.9"
	}
	switch last.kind {
	case Length:
		if sep != "" && sep != "-" || n.value == 0 && !glued {
			return false
		}
		if sep == "-" && last.spelled != "'" && p.word(q.n.to) != "-" {
			return false // "6-foot-2" is a size, "18 ft-6" is left alone
		}
		return glued || !p.pluralNoun(j)
	case Duration:
		if !integer(n.value) || sep == "," || sep == "-" {
			return false
		}
		return glued || p.sizeEnds(j) || p.role(j)&splitsTime != 0
	case Mass:
		return sep == "" && p.sizeEnds(j)
	case Money:
		return (sep == "" || sep == "and" && p.opener(q.from) != "between") && integer(n.value) && p.closes(j) && n.value >= 5
	}
	return false
}

// pluralNoun tells whether the word at j looks like a plural, and is no hull:
// "18 foot 2 anglers", but "18 foot 2 bass boat".
func (p *parser) pluralNoun(j int) bool {
	w := p.word(j)
	if len(w) < 4 || p.lex[j].class != wordToken || w[len(w)-1] != 's' || w[len(w)-2] == 's' {
		return false
	}
	return p.role(j)&boatWord == 0
}

// tail adds "and a half" behind the unit: "an hour and a half".
func (p *parser) tail(q *quantity, last *unitRow) {
	if q.n.broken || last != q.unit {
		return
	}
	switch last.kind {
	case Length, Mass, Duration, Volume, Speed:
	default:
		return
	}
	if p.glued(q.to) && p.lex[q.to].class == fractionToken {
		q.bare += p.lex[q.to].value // 19"½
		q.value = last.toSI(q.bare)
		q.to++
		return
	}
	switch p.word(q.to) {
	case "and", "&", "n", "an":
	default:
		return
	}
	v, to, ok := p.shareAt(q.to + 1)
	if !ok {
		return
	}
	if u, _ := p.unit(&num{from: q.to + 1, to: to, value: v, words: true, broken: true}, to); u != nil {
		return
	}
	q.bare += v
	q.value = last.toSI(q.bare)
	q.to = to
	q.rule += " and a fraction"
}

// currency reads an amount whose currency comes first: $900, USD 200, us $ 10.
func (p *parser) currency(i int) (quantity, bool) {
	for ph := p.lex[i].entry.units; ph != nil; ph = ph.next {
		if ph.row.kind != Money || ph.row.factor != 1 {
			continue
		}
		j, ok := p.phrase(i, ph.words)
		if !ok || p.lex[i].class == wordToken && len(ph.words) == 1 && !currencyCode(p.word(i)) {
			continue
		}
		sign := 1.0
		if p.word(j) == "-" && p.glued(j) && p.glued(j+1) {
			j++ // "$-5"
			sign = -1
		}
		if p.lex[i].class == wordToken && len(ph.words) == 1 && !p.isFigures(j) || !p.startsNumber(j) && p.word(j) != "a" {
			continue
		}
		n, ok := p.number(j)
		if !ok || n.gauge {
			continue
		}
		n.value *= sign
		q := quantity{from: i, to: n.to, n: n, bare: n.value, hasValue: true}
		q.setUnit(ph.row)
		q.rule = "currency first"
		if p.isMoney(q.to) && (p.glued(q.to) || p.word(q.to) == "dollars" || p.word(q.to) == "usd") {
			q.to++ // "$20 dollars"
		}
		p.chain(&q)
		return q, true
	}
	return quantity{}, false
}

func currencyCode(w string) bool {
	switch w {
	case "usd", "eur", "gbp", "dollar", "euro":
		return true
	}
	return false
}

// spacedMinus reads a minus with a space behind it, before a temperature or
// where the number is all that is said: anywhere else it is a dash.
func (p *parser) spacedMinus(i int) (quantity, bool) {
	if p.word(i) != "-" || p.glued(i) || p.glued(i+1) || !p.isFigures(i+1) {
		return quantity{}, false
	}
	q := p.plain(p.inFigures(i + 1))
	if q.kind != Temperature && !(i == 0 && q.unit == nil && q.kind == Number && q.to == len(p.tok)) {
		return quantity{}, false
	}
	q.from = i
	q.bare = -q.bare
	q.value = q.unit.toSI(q.bare)
	return q, true
}

// unsaid reads a unit whose number goes unsaid: "a litre", "another hour",
// "hour and a half", "hour flat out".
func (p *parser) unsaid(i int) (quantity, bool) {
	one := num{from: i, to: i + 1, value: 1, words: true}
	switch w := p.word(i); {
	case w == "a" || w == "an" || w == "another":
		if i > 0 && (p.tok[i-1].Measure >= 0 || p.role(i-1)&rateWord != 0 || w != "another" && p.word(i-1) != "in" && p.isUnitWord(i-1)) {
			return quantity{}, false // "5 hours a day", "twice a week"
		}
		if w == "a" && p.role(i-1)&idleWord != 0 && p.word(i-1) != "in" && (p.word(i+1) == "minute" || p.word(i+1) == "sec" || p.word(i+1) == "second" || p.word(i+1) == "day" || p.word(i+1) == "min") {
			return quantity{}, false // "give me a minute"
		}
		j := i + 1
		switch p.word(j) {
		case "whole", "full", "solid", "good", "further":
			j++ // "a full day"
		}
		u, to := p.unitWord(&one, j)
		if u == nil || u.article == never || len(p.word(j)) < 2 || p.plural(j) || u.article == atEnd && !p.sizeGoesOn(to) && !(u.spoken == "ft" && w == "a" && p.inchesFollow(to)) {
			return quantity{}, false
		}
		q := quantity{from: i, to: to, n: one, bare: 1, hasValue: true}
		q.setUnit(u)
		q.rule = "one " + u.spoken
		p.chain(&q)
		return q, true
	case p.lex[i].class == wordToken && p.isUnitWord(i) && len(w) > 2:
		u, to := p.unitWord(&one, i)
		if u == nil || u.article == never || p.plural(i) || p.pairedWith(i) {
			return quantity{}, false
		}
		q := quantity{from: i, to: to, n: one, bare: 1, hasValue: true}
		q.setUnit(u)
		q.rule = "one " + u.spoken
		p.tail(&q, u)
		if q.to > to || u.spoken == "h" && p.role(to)&splitsTime != 0 && (i == 0 || p.lex[i-1].class == markToken || p.word(i-1) == "then" || p.word(i-1) == "for") {
			return q, true
		}
	}
	return quantity{}, false
}

// pairedWith tells whether the unit at token i belongs to words before it and
// so counts nothing by itself.
func (p *parser) pairedWith(i int) bool {
	return i > 0 && (p.tok[i-1].Measure >= 0 || p.word(i-1) == "per" || p.word(i-1) == "/")
}

// plural tells whether the unit at j stands in the plural, which no article
// goes with.
func (p *parser) plural(j int) bool {
	w := p.word(j)
	return w == "feet" || len(w) > 3 && w[len(w)-1] == 's' && w != "celsius"
}

// sizeGoesOn tells whether what follows an article and a unit lets the unit be
// a measure: "a foot of chop", not "a foot pedal".
func (p *parser) sizeGoesOn(j int) bool {
	if p.closes(j) {
		return true
	}
	switch p.word(j) {
	case "of", "and", "or", "loaded", "dry", "all", "total", "with", "w", "wet", "empty", "from", "long", "wide", "deep", "high", "tall", "above", "below", "off", "too", "short", "longer", "shorter", "more", "less", "higher", "lower", "to":
		return true
	}
	return false
}

// inchesFollow tells whether a small number with nothing to count stands at j:
// "a foot nine off the water".
func (p *parser) inchesFollow(j int) bool {
	if !p.startsNumber(j) {
		return false
	}
	n, ok := p.number(j)
	return ok && n.value > 0 && n.value < 12 && !n.broken && (p.closes(n.to) || p.role(n.to)&countNoun == 0 && !p.pluralNoun(n.to))
}

// isUnitWord tells whether token j is a unit written out.
func (p *parser) isUnitWord(j int) bool {
	e := p.lex[j].entry
	return e != nil && e.units != nil && len(p.word(j)) > 1
}

// finite keeps numbers out that no JSON can carry.
func finite(xs ...float64) bool {
	for _, x := range xs {
		if math.IsInf(x, 0) || math.IsNaN(x) {
			return false
		}
	}
	return true
}
