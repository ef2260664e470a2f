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
	if n.money {
		q.kind, q.si, q.spoken = Money, "USD", "USD"
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
		if p.word(k) == "." && p.glued(k) && p.startsNumber(k+1) && !p.glued(k+1) {
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
			per, _, ok := smaller(last.spoken, u2.spoken)
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
		if sep == "-" && last.spelled != "'" {
			return false // "18 ft-6" is left alone
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
		return (sep == "" || sep == "and") && integer(n.value) && p.closes(j) && n.value >= 5
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
	for _, ph := range p.lex[i].entry.units {
		if ph.row.kind != Money || ph.row.factor != 1 {
			continue
		}
		j, ok := p.phrase(i, ph.words)
		if !ok || p.lex[i].class == wordToken && len(ph.words) == 1 && !currencyCode(p.word(i)) {
			continue
		}
		if w := p.word(j); w == "-" && p.glued(j+1) {
			j++
		}
		if p.lex[i].class == wordToken && len(ph.words) == 1 && !p.isFigures(j) || !p.startsNumber(j) && p.word(j) != "a" {
			continue
		}
		n, ok := p.number(j)
		if !ok || n.gauge {
			continue
		}
		q := quantity{from: i, to: n.to, n: n, bare: n.value, hasValue: true}
		q.setUnit(ph.row)
		q.rule = "currency first"
		if p.isMoney(q.to) && (p.glued(q.to) || p.word(q.to) == "dollars") {
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
		if i > 0 && (p.tok[i-1].Measure >= 0 || p.role(i-1)&rateWord != 0 || w != "another" && p.isUnitWord(i-1)) {
			return quantity{}, false // "5 hours a day", "twice a week"
		}
		u, to := p.unitWord(&one, i+1)
		if u == nil || u.article == never || len(p.word(i+1)) < 2 || p.plural(u, i+1) || u.article == atEnd && !p.sizeGoesOn(to) {
			return quantity{}, false
		}
		q := quantity{from: i, to: to, n: one, bare: 1, hasValue: true}
		q.setUnit(u)
		q.rule = "one " + u.spoken
		p.chain(&q)
		return q, true
	case p.lex[i].class == wordToken && p.isUnitWord(i) && len(w) > 2:
		u, to := p.unitWord(&one, i)
		if u == nil || u.article == never || p.plural(u, i) || p.pairedWith(i) {
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

// plural tells whether the word at j is the plural of the unit: "a miles".
func (p *parser) plural(u *unitRow, j int) bool {
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
	case "of", "and", "or", "from", "long", "wide", "deep", "high", "tall", "above", "below", "off", "too", "short", "longer", "shorter", "more", "less", "higher", "lower", "to":
		return true
	}
	return false
}

// isUnitWord tells whether token j is a unit written out.
func (p *parser) isUnitWord(j int) bool {
	e := p.lex[j].entry
	return e != nil && len(e.units) > 0 && len(p.word(j)) > 1
}

// rangeBehind joins the quantity with a second one to a range: "15-20 mph",
// "from 3 km to 5 km", "between 10 and 15 kts".
func (p *parser) rangeBehind(q *quantity) {
	if !q.hasValue || q.n.gauge || q.as != "" {
		return
	}
	k := q.to
	opener := p.opener(q.from)
	hyphen, word := false, p.word(k)
	switch {
	case word == "-" && p.glued(k) && (p.word(k+1) == "to" || p.word(k+1) == "or" && q.unit == nil) && q.unit == nil:
		k += 2 // "8- to 16-metre"
		word = "to"
	case word == "-" || word == "~":
		hyphen = true
		k++
	case word == "to" || word == "thru" || word == "through" || word == "til" || word == "till":
		k++
		if p.word(k) == "-" && p.word(q.to-1) == "-" {
			k++
		}
	case word == "and" || word == "&":
		if opener != "between" {
			return
		}
		k++
	case word == "or":
		k++
	default:
		return
	}
	if k < len(p.tok) && p.lex[k].entry != nil {
		if row, from := p.hedgeEnding(p.lex[k].entry, k); row != nil && row.effect == roughly && from == k && k > q.to {
			k++
			q.about = true
		}
	}
	if k >= len(p.tok) || p.word(k) != "-" && !p.startsNumber(k) && p.classOf(k) != minusWord && !p.isMoney(k) && p.word(k) != "a" {
		return
	}
	if hyphen && p.word(k) == "-" {
		return
	}
	r, ok := p.single(k)
	if !ok || !r.hasValue || r.as != "" || r.n.plural {
		return
	}
	if p.rangeOf(q, &r, word, hyphen, opener) {
		q.to = r.to
	}
}

// opener returns the word that opens a range before token i, with a hedge
// between at most: "from", "between", or "".
func (p *parser) opener(i int) string {
	for j := i - 1; j >= p.free && j >= i-2; j-- {
		switch w := p.word(j); w {
		case "from":
			return w
		case "between", "btween", "betwen", "btw":
			return "between"
		}
	}
	return ""
}

// rangeOf decides whether q and r are the ends of one range, and stores them
// in q.
func (p *parser) rangeOf(q, r *quantity, word string, hyphen bool, opener string) bool {
	lo, hi := *q, *r
	if s := hi.n.scale; s > 1 && lo.unit == nil && lo.kind == Number && lo.n.scale == 0 && lo.bare >= 1 && lo.bare < hi.bare/s {
		lo.bare *= s // "12 to 14 hundred"
		lo.value = lo.bare
	}
	switch {
	case lo.unit == nil && lo.kind == Number && hi.unit != nil: // 15-20 mph
		if p.counts(&lo, &hi, hyphen) {
			return false
		}
		lo.setUnit(hi.unit)
		if hi.unit.kind == Length && hi.spoken == "ft" && p.word(q.to) == "-" && hi.bare < lo.bare {
			return false
		}
	case lo.unit != nil && hi.unit == nil && hi.kind == Number: // $10-20, 15 mph to 20
		switch {
		case lo.kind == Money, opener != "", lo.kind == Speed && !hyphen, lo.kind == Temperature && !hyphen, lo.kind == Percent:
		default:
			return false
		}
		if lo.kind == Money && (hi.bare < lo.bare || lo.from == q.from && p.role(r.to)&countNoun != 0) {
			return false
		}
		hi.setUnit(lo.unit)
	case lo.kind != hi.kind || lo.si != hi.si:
		return false
	case lo.unit == nil: // 5 to 10
		if lo.kind != Number && lo.kind != Money {
			return false
		}
		if hyphen && (lo.bare >= hi.bare || !p.glued(q.to) && p.glued(q.to+1) == false && q.n.words != r.n.words) {
			return false
		}
		if lo.bare >= hi.bare && opener == "" {
			return false
		}
		if p.isFigures(r.from) && p.lex[r.from].look&leadingZero != 0 {
			return false
		}
		if word == "-" && p.word(r.to) == "-" && p.glued(r.to) && p.isFigures(r.to+1) {
			return false // figures with several hyphens are no range
		}
	case hyphen && lo.spoken != hi.spoken:
		return false
	}
	if word == "or" {
		switch lo.kind {
		case Speed, Duration, Mass, Percent:
		default:
			return false
		}
		if lo.bare >= hi.bare || hi.value > 3*lo.value {
			return false
		}
	}
	if lo.value > hi.value && opener == "" && lo.kind != Temperature {
		return false
	}
	u := hi.unit
	if u == nil {
		u = lo.unit
	}
	q.kind, q.si, q.spoken, q.unit = hi.kind, hi.si, hi.spoken, u
	q.ends(lo.value, hi.value, lo.bare, hi.bare)
	q.rule = "range, " + hi.rule
	return true
}

// counts tells whether the first number counts what the second measures:
// "2-12v batteries" are two of twelve volts.
func (p *parser) counts(lo, hi *quantity, hyphen bool) bool {
	switch hi.kind {
	case Voltage:
		// No voltage of a system is said as a range; "4-6 volt" counts batteries.
		return integer(lo.bare) && lo.bare <= 8 && (hi.bare == 6 || hi.bare == 8 || math.Mod(hi.bare, 12) == 0) && hyphen || lo.bare > hi.bare
	case Charge, Group, Gauge:
		return hyphen && integer(lo.bare) && lo.bare <= 8 && hi.bare >= 4*lo.bare || lo.bare > hi.bare
	}
	return lo.bare > hi.bare && hyphen
}

// wordedGauge reads gauges said in words or with the number of strands:
// "2 aught", "0000 gauge", "10/2 wire".
func (p *parser) wordedGauge(n num) (quantity, bool) {
	q := quantity{from: n.from, to: n.to, n: n, kind: Gauge, si: "AWG", spoken: "AWG", hasValue: true, rule: "gauge"}
	j := n.to
	switch w := p.word(j); {
	case (w == "aught" || w == "ought") && integer(n.value) && n.value >= 1 && n.value <= 4:
		q.value, q.to = 1-n.value, j+1
	case w == "/" && p.isFigures(j+1) && p.glued(j+1) && p.lex[j+1].value >= 2 && p.lex[j+1].value <= 4 && (p.role(j+2)|p.role(j+3))&wireWord != 0 && integer(n.value):
		q.value, q.to = n.value, j+2
	case n.value == 0 && n.to == n.from+1 && p.lex[n.from].look&leadingZero != 0 && (p.role(j)&(wireWord|gaugePrefix) != 0 || p.word(j) == "ga"):
		q.value = 1 - float64(p.lex[n.from].whole)
	default:
		return q, false
	}
	if u, to := p.unit(&n, q.to); u != nil && u.kind == Gauge {
		q.to = to
	}
	q.bare = q.value
	return q, true
}

// gaugeNumber reads "awg 6".
func (p *parser) gaugeNumber(i int) (quantity, bool) {
	if i > 0 && p.tok[i-1].Measure >= 0 || !p.isFigures(i+1) {
		return quantity{}, false
	}
	n := p.inFigures(i + 1)
	if n.broken || n.value > 40 {
		return quantity{}, false
	}
	if u, _ := p.unit(&n, n.to); u != nil {
		return quantity{}, false
	}
	return quantity{from: i, to: n.to, n: n, kind: Gauge, si: "AWG", spoken: "AWG", bare: n.value, value: n.value, hasValue: true, rule: "gauge first"}, true
}

// numberSign reads "#6 wire", "no. 8 wire": a gauge when a wire follows, else
// a plain number.
func (p *parser) numberSign(i int) (quantity, bool) {
	j := i + 1
	if p.word(j) == "." {
		j++
	}
	if !p.isFigures(j) || p.word(i) == "#" && !p.glued(j) {
		return quantity{}, false
	}
	n := p.inFigures(j)
	k := n.to
	if u, to := p.unit(&n, k); u != nil && u.kind == Gauge {
		k = to
	} else if p.role(k)&wireWord == 0 {
		return quantity{}, false
	}
	if n.broken || n.value > 40 {
		return quantity{}, false
	}
	return quantity{from: i, to: k, n: n, kind: Gauge, si: "AWG", spoken: "AWG", bare: n.value, value: n.value, hasValue: true, rule: "gauge with a number sign"}, true
}

// caseNames are battery cases that go by letters and a figure.
var caseNames = map[string]float64{"gc2": 2, "gc8": 8, "gc12": 12, "g24": 24, "g27": 27, "g29": 29, "g31": 31}

// group reads "group 27", "grp 31s", "group size 24M": a battery's case size.
func (p *parser) group(i int) (quantity, bool) {
	j := i + 1
	for range 2 {
		if w := p.word(j); w == "size" || w == "#" || w == "no" || w == "-" && p.glued(j) || w == "group" || w == "." {
			j++
		}
	}
	if !p.startsNumber(j) {
		return quantity{}, false
	}
	n := num{}
	if p.isFigures(j) {
		n = num{from: j, to: j + 1, value: p.lex[j].value, broken: p.lex[j].look&decimal != 0}
		p.pluralBehind(&n)
	} else {
		var ok bool
		if n, ok = p.inWords(j); !ok {
			return quantity{}, false
		}
	}
	if n.broken || n.value < 20 || n.value > 120 {
		return quantity{}, false
	}
	if p.glueWord(n.to) {
		switch p.word(n.to) {
		case "m", "dc", "tm", "f", "r", "h", "ms", "dcs", "t", "s":
			n.to++
		}
	}
	return quantity{from: i, to: n.to, n: n, kind: Group, si: "1", spoken: "group", bare: n.value, value: n.value, hasValue: true, rule: "battery group"}, true
}

// caseLetter reads "24M" and "31 agms" without the word group: the letter is
// sure, the bare number stays a number with the case as another reading.
func (p *parser) caseLetter(q *quantity) {
	j := q.to
	if !caseSize(q.bare) || q.n.words || q.n.broken {
		return
	}
	if p.word(j) == "m" && p.upper(j) && p.glued(j) && !p.glueWord(j+1) || p.word(j) == "dc" && p.glued(j) || p.word(j) == "tm" && p.glued(j) {
		q.kind, q.si, q.spoken, q.rule = Group, "1", "group", "battery case with a letter"
		q.to++
	}
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
