package read

import "math"

// rangeBehind joins the quantity with a second one to a range: "15-20 mph",
// "from 3 km to 5 km", "between 10 and 15 kts".
func (p *parser) rangeBehind(q *quantity) {
	if !q.hasValue || q.n.gauge || q.as != "" {
		return
	}
	k := q.to
	opener := p.opener(q.from)
	if p.word(k) == "." && p.glued(k) && p.word(k+1) == "-" && p.glued(k+1) {
		k++ // "1500 lbs.-2000 lbs."
	}
	hyphen, word := false, p.word(k)
	switch {
	case word == "-" && p.glued(k) && (p.word(k+1) == "to" || p.word(k+1) == "or" && q.unit == nil) && q.unit == nil:
		word = p.word(k + 1)
		k += 2 // "8- to 16-metre"
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

// tolerance reads "give or take 20", "+/- 20" behind a value.
func (p *parser) tolerance(q *quantity) {
	if !q.hasValue || q.hasLow || q.as != "" || q.n.gauge {
		return
	}
	k := q.to
	if p.word(k) == "," && (p.word(k+1) == "+" || p.word(k+1) == "give" || p.word(k+1) == "plus") {
		k++
	}
	switch {
	case p.word(k) == "give" && p.word(k+1) == "or" && p.word(k+2) == "take", p.word(k) == "plus" && p.word(k+1) == "or" && p.word(k+2) == "minus", p.word(k) == "+" && p.word(k+1) == "/" && p.word(k+2) == "-":
		k += 3
	case p.word(k) == "±":
		k++
	default:
		return
	}
	if !p.startsNumber(k) && p.word(k) != "a" {
		return
	}
	r, ok := p.single(k)
	if !ok || !r.hasValue || r.bare <= 0 || r.bare >= q.bare || r.unit != nil && (q.unit == nil || r.spoken != q.spoken) || r.unit == nil && p.role(r.to)&countNoun != 0 {
		return
	}
	x := r.bare
	if r.n.spread {
		x = r.n.high
	}
	q.low, q.high, q.hasLow, q.hasHigh, q.about = q.unit.toSI(q.bare-x), q.unit.toSI(q.bare+x), true, true, true
	q.bareHigh = q.bare + x
	q.to = r.to
	q.rule += ", give or take"
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
// in q. word is what joins them.
func (p *parser) rangeOf(q, r *quantity, word string, hyphen bool, opener string) bool {
	lo, hi := *q, *r
	p.shortened(&lo, &hi, word)
	switch {
	case word == "or" && lo.unit != nil && hi.unit == nil:
		return p.orTwo(q, r)
	case lo.unit == nil && lo.kind == Number && hi.unit != nil: // 15-20 mph
		if p.counts(&lo, &hi, hyphen) {
			return false
		}
		lo.setUnit(hi.unit)
	case lo.unit != nil && hi.unit == nil && hi.kind == Number: // $10-20, 15 mph to 20
		if !p.lendsOn(&lo, &hi, hyphen, opener) {
			return false
		}
		hi.setUnit(lo.unit)
	case lo.kind != hi.kind || lo.si != hi.si:
		return false
	case lo.unit == nil: // 5 to 10
		if !p.bareRange(&lo, &hi, word, hyphen, opener) {
			return false
		}
	case hyphen && lo.spoken != hi.spoken:
		return false
	}
	if word == "or" && !orRange(&lo, &hi) {
		return false
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

// shortened gives the low end the scale that was said with the high end only:
// "12 to 14 hundred", "5-20k", "4-500 lb".
func (p *parser) shortened(lo, hi *quantity, word string) {
	if lo.unit != nil || lo.kind != Number || lo.n.scale != 0 || lo.bare < 1 {
		return
	}
	scale := hi.n.scale
	if scale <= 1 {
		// Only a round few hundred is cut short in figures, and not before
		// people: "2-300 lb guys".
		weighed := p.role(hi.to)&countNoun != 0 && p.word(hi.to) != "of"
		if hi.kind != Mass && hi.kind != Money || word == "or" || word == "and" || weighed ||
			!integer(lo.bare) || hi.bare < 200 || hi.bare > 900 || math.Mod(hi.bare, 100) != 0 {
			return
		}
		scale = 100
	}
	if lo.bare < hi.bare/scale {
		lo.bare *= scale
		lo.value = lo.bare
	}
}

// lendsOn tells whether the unit of the low end holds for a bare high end.
func (p *parser) lendsOn(lo, hi *quantity, hyphen bool, opener string) bool {
	switch lo.kind {
	case Money:
		return hi.bare > lo.bare && p.role(hi.to)&countNoun == 0
	case Speed, Temperature:
		return !hyphen || opener != ""
	case Percent:
		return true
	}
	return opener != ""
}

// bareRange tells whether two numbers without units are the ends of a range,
// and not a date, a code or a list.
func (p *parser) bareRange(lo, hi *quantity, word string, hyphen bool, opener string) bool {
	switch {
	case lo.kind != Number && lo.kind != Money,
		lo.bare >= hi.bare && (hyphen || opener == ""),
		p.isFigures(hi.from) && p.lex[hi.from].look&leadingZero != 0,
		word == "-" && p.word(hi.to) == "-" && p.glued(hi.to) && p.isFigures(hi.to+1):
		return false
	case hyphen && lo.n.broken && lo.bare < 1 && hi.bare > 10*lo.bare:
		return false // "1/4-20 screws"
	}
	spaced := !p.glued(lo.to) && !p.glued(lo.to+1)
	return !hyphen || !spaced || lo.n.words == hi.n.words
}

// orRange tells whether "or" stands between the ends of a range ("2 or 3
// hours") and not between two things to choose from ("12 or 24 volt").
func orRange(lo, hi *quantity) bool {
	switch lo.kind {
	case Speed, Duration, Percent:
	case Mass:
		// "55 or 70 lb" chooses between two motors.
		if lo.value < 150*kgPerPound {
			return false
		}
	default:
		return false
	}
	return lo.bare < hi.bare && hi.value <= 3*lo.value
}

// orTwo reads "an inch or two": the second number takes the unit of the first.
func (p *parser) orTwo(q, r *quantity) bool {
	if !q.n.words || q.bare != 1 || r.bare < 2 || r.bare > 5 || p.role(r.to)&countNoun != 0 {
		return false
	}
	q.ends(q.value, q.unit.toSI(r.bare), q.bare, r.bare)
	q.rule = "range, " + q.rule
	return true
}

// counts tells whether the first number counts what the second measures:
// "2-12v batteries" are two of twelve volts.
func (p *parser) counts(lo, hi *quantity, hyphen bool) bool {
	switch hi.kind {
	case Voltage:
		// No voltage of a system is said as a range; "4-6 volt" counts batteries.
		return integer(lo.bare) && lo.bare <= 8 && (hi.bare == 6 || hi.bare == 8 || math.Mod(hi.bare, 12) == 0) && hyphen || lo.bare > hi.bare
	case Mass:
		return hyphen && integer(lo.bare) && lo.bare <= 8 && hi.bare >= 20*lo.bare || lo.bare > hi.bare && hyphen
	case Charge, Group, Gauge:
		return hyphen && integer(lo.bare) && lo.bare <= 8 && hi.bare >= 4*lo.bare || lo.bare > hi.bare
	}
	return lo.bare > hi.bare && hyphen
}
