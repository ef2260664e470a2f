package read

import "math"

// num is a number as it was said, before any unit.
type num struct {
	from, to  int // tokens
	value     float64
	low, high float64 // ends, when the words give a spread ("a couple hundred")
	spread    bool
	words     bool    // said in words
	broken    bool    // has a fraction or a decimal point
	plural    bool    // "27s"
	money     bool    // "ten grand"
	gauge     bool    // 2/0
	scale     float64 // the last scale said: 100 in "fourteen hundred", 1000 in "20k"
	indefinite
	rule string
}

// indefinite keeps the two halves of a number said in two parts: "fifteen
// twenty" is 1520, or a wind of fifteen to twenty.
type indefinite struct{ first, second float64 }

// part classes of number words.
type wordClass uint8

const (
	digitWord wordClass = iota + 1
	teenWord
	tensWord
	hundredWord
	scaleWord
	zeroWord
	ohWord
	pointWord
	minusWord
	shareWord   // half, quarter
	ordinalWord // third, fifth: a share, or the third of something
	sharesWord  // halves, thirds
	dozenWord
	coupleWord
	fewWord
	severalWord
	pairWord
	grandWord
)

// numberWord is one value, with the spellings that surely mean it. Numbers are
// never guessed from other misspellings.
type numberWord struct {
	words string
	class wordClass
	value float64
}

var numberWords = []numberWord{
	{"zero nought naught nil", zeroWord, 0},
	{"oh ought aught", ohWord, 0},
	{"one", digitWord, 1}, {"two", digitWord, 2}, {"three thre", digitWord, 3}, {"four", digitWord, 4},
	{"five", digitWord, 5}, {"six", digitWord, 6}, {"seven sevn", digitWord, 7}, {"eight eigth", digitWord, 8}, {"nine", digitWord, 9},
	{"ten", teenWord, 10}, {"eleven elevn", teenWord, 11}, {"twelve twelv twelwe", teenWord, 12}, {"thirteen thirten thriteen", teenWord, 13},
	{"fourteen forteen fourten", teenWord, 14}, {"fifteen fiften fivteen", teenWord, 15}, {"sixteen sixten", teenWord, 16}, {"seventeen seventen", teenWord, 17},
	{"eighteen eightteen eigthteen eighten", teenWord, 18}, {"nineteen ninteen nineten", teenWord, 19},
	{"twenty tweny twenny twenty twentey twnety", tensWord, 20}, {"thirty thirdy thrity", tensWord, 30}, {"forty fourty fourtey", tensWord, 40}, {"fifty fivty", tensWord, 50},
	{"sixty", tensWord, 60}, {"seventy", tensWord, 70}, {"eighty eigthy", tensWord, 80}, {"ninety ninty", tensWord, 90},
	{"hundred hundreds hundered hunderd hundrd hunnerd hunderds", hundredWord, 100},
	{"thousand thousands thousnd thosand thousend tousand", scaleWord, 1e3},
	{"million millions", scaleWord, 1e6}, {"billion billions", scaleWord, 1e9}, {"trillion trillions", scaleWord, 1e12},
	{"point", pointWord, 0},
	{"minus negative", minusWord, 0},
	{"half haf", shareWord, 1. / 2}, {"quarter", shareWord, 1. / 4},
	{"halves", sharesWord, 1. / 2}, {"quarters", sharesWord, 1. / 4},
	{"third", ordinalWord, 1. / 3}, {"thirds", sharesWord, 1. / 3},
	{"fourth", ordinalWord, 1. / 4}, {"fourths", sharesWord, 1. / 4},
	{"fifth", ordinalWord, 1. / 5}, {"fifths", sharesWord, 1. / 5},
	{"sixth", ordinalWord, 1. / 6}, {"sixths", sharesWord, 1. / 6},
	{"seventh", ordinalWord, 1. / 7}, {"sevenths", sharesWord, 1. / 7},
	{"eighth", ordinalWord, 1. / 8}, {"eighths", sharesWord, 1. / 8},
	{"ninth", ordinalWord, 1. / 9}, {"ninths", sharesWord, 1. / 9},
	{"tenth", ordinalWord, 1. / 10}, {"tenths", sharesWord, 1. / 10},
	{"twelfth", ordinalWord, 1. / 12}, {"twelfths", sharesWord, 1. / 12},
	{"sixteenth", ordinalWord, 1. / 16}, {"sixteenths", sharesWord, 1. / 16},
	{"twentieth", ordinalWord, 1. / 20}, {"twentieths", sharesWord, 1. / 20},
	{"thirtieth", ordinalWord, 1. / 30}, {"thirtieths", sharesWord, 1. / 30},
	{"fiftieth", ordinalWord, 1. / 50}, {"fiftieths", sharesWord, 1. / 50},
	{"hundredth", ordinalWord, 1. / 100}, {"hundredths", sharesWord, 1. / 100},
	{"thousandth", ordinalWord, 1. / 1000}, {"thousandths", sharesWord, 1. / 1000},
	{"dozen dozens", dozenWord, 12},
	{"couple cple coupla cupla", coupleWord, 2}, {"few", fewWord, 3}, {"several", severalWord, 5},
	{"pair", pairWord, 2},
	{"grand", grandWord, 1000},
}

// denominators are those that a fraction in figures may have.
func denominator(d float64) bool {
	switch d {
	case 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 16, 20, 25, 32, 40, 50, 64, 100, 128, 1000, 10000:
		return true
	}
	return false
}

// classOf returns the number class of token i, 0 if it is no number word.
func (p *parser) classOf(i int) wordClass {
	if i < 0 || i >= len(p.tok) || p.lex[i].entry == nil || p.lex[i].entry.number == nil {
		return 0
	}
	return p.lex[i].entry.number.class
}

func (p *parser) wordValue(i int) float64 { return p.lex[i].entry.number.value }

func (p *parser) isFigures(i int) bool {
	return i >= 0 && i < len(p.tok) && p.lex[i].class == digitsToken
}

// startsNumber tells whether a number can start at token j, leaving signs and
// articles aside.
func (p *parser) startsNumber(j int) bool {
	if j < 0 || j >= len(p.tok) {
		return false
	}
	switch p.lex[j].class {
	case digitsToken, fractionToken:
		return true
	case wordToken:
		c := p.classOf(j)
		return c >= digitWord && c <= zeroWord || c == shareWord
	}
	return false
}

// number reads the number at token i: a sign, figures or words, a fraction
// behind it, a scale behind that.
func (p *parser) number(i int) (num, bool) {
	j, sign := i, 1.0
	switch {
	case p.classOf(i) == minusWord:
		j, sign = i+1, -1
	case p.word(i) == "-" && p.glued(i+1) && p.startsNumber(i+1) && (i == 0 || !p.glued(i)):
		j, sign = i+1, -1
	}
	if j >= len(p.tok) {
		return num{}, false
	}
	n, ok := num{}, false
	switch p.lex[j].class {
	case digitsToken:
		n, ok = p.inFigures(j), true
	case fractionToken:
		n, ok = num{from: j, to: j + 1, value: p.lex[j].value, broken: true}, true
		p.scaleBehind(&n)
	case wordToken:
		n, ok = p.inWords(j)
	}
	if !ok {
		return n, false
	}
	if !n.gauge {
		p.overBehind(&n)
	}
	p.pluralBehind(&n)
	n.from = i
	if sign < 0 {
		n.value = -n.value
	}
	return n, !math.IsInf(n.value, 0)
}

// inFigures reads a number that starts with figures.
func (p *parser) inFigures(i int) num {
	l := &p.lex[i]
	n := num{from: i, to: i + 1, value: l.value, broken: l.look&decimal != 0, rule: "figures"}
	j := i + 1
	plain := !n.broken && l.look&leadingZero == 0
	switch {
	case p.word(j) == "/" && p.isFigures(j+1) && p.glued(j) == p.glued(j+1):
		p.slash(&n, j)
	case plain && p.mixed(&n, j):
	case p.word(j) == "," && p.isFigures(j+1) && !n.broken:
		p.commaBehind(&n, j)
	case p.word(j) == "." && !p.glued(j) && p.isFigures(j+1) && !p.glued(j+1) && plain:
		p.spacedPoint(&n, j)
	case p.classOf(j) == pointWord:
		p.pointBehind(&n, j)
	}
	if n.gauge {
		return n
	}
	p.suffix(&n)
	if c := p.classOf(n.to); c == hundredWord || c == scaleWord {
		if n.broken {
			p.scaleBehind(&n)
		} else {
			p.cardinal(&n, n.to, n.value, teenWord)
		}
	}
	p.shareBehind(&n)
	p.andShare(&n)
	p.scaleBehind(&n)
	return n
}

// slash reads figures over figures: a heavy gauge (2/0), a fraction, or nothing.
func (p *parser) slash(n *num, j int) {
	over, under := &p.lex[j-1], &p.lex[j+1]
	if over.look&decimal != 0 || under.look&decimal != 0 || p.word(j+2) == "/" && p.isFigures(j+3) {
		return
	}
	if under.value == 0 {
		if under.whole == 1 && p.glued(j) && n.value >= 1 && n.value <= 4 {
			// ASTM B258 counts 1/0 as 0, 2/0 as -1.
			*n = num{from: n.from, to: j + 2, value: 1 - n.value, gauge: true, rule: "gauge with a slash"}
		}
		return
	}
	if under.look&leadingZero != 0 || !denominator(under.value) {
		return
	}
	if over.value < under.value || over.value < 2*under.value && under.value <= 16 {
		n.value /= under.value
		n.broken = true
		n.to = j + 2
		n.rule = "fraction in figures"
	}
}

// mixed reads a fraction behind whole figures: 19 1/2, 19-1/2, 19½.
func (p *parser) mixed(n *num, j int) bool {
	if p.word(j) == "-" && p.glued(j) && p.glued(j+1) {
		j++
	}
	v, to, ok := p.plainFraction(j)
	if !ok || v >= 1 {
		return false
	}
	n.value += v
	n.to = to
	n.broken = true
	n.rule = "whole and fraction"
	return true
}

// plainFraction reads ½ or 1/2 at token j.
func (p *parser) plainFraction(j int) (v float64, to int, ok bool) {
	if j >= len(p.tok) {
		return 0, j, false
	}
	if p.lex[j].class == fractionToken {
		return p.lex[j].value, j + 1, true
	}
	if p.isFigures(j) && p.word(j+1) == "/" && p.isFigures(j+2) && p.glued(j+1) && p.glued(j+2) && !(p.word(j+3) == "/" && p.isFigures(j+4)) {
		a, b := p.lex[j].value, p.lex[j+2].value
		if a > 0 && a < b && denominator(b) && integer(a) {
			return a / b, j + 3, true
		}
	}
	return 0, j, false
}

// commaBehind reads a decimal comma before a metric unit ("5,5 m"), and the
// spaced thousands of a wire service ("80 , 000").
func (p *parser) commaBehind(n *num, j int) {
	d := &p.lex[j+1]
	if d.look&decimal != 0 {
		return
	}
	if !p.glued(j) && !p.glued(j+1) {
		for p.word(j) == "," && !p.glued(j) && p.isFigures(j+1) && !p.glued(j+1) && p.lex[j+1].whole == 3 && p.lex[j+1].look&decimal == 0 && n.value >= 1 {
			n.value = n.value*1000 + p.lex[j+1].value
			j += 2
			n.to = j
		}
		return
	}
	if !p.glued(j) || !p.glued(j+1) || d.whole > 3 || d.whole == 3 && n.value != 0 {
		return
	}
	if p.word(j+2) == "," && p.glued(j+2) && p.isFigures(j+3) && p.glued(j+3) {
		return // a list: 22,24,26
	}
	trial := *n
	trial.value += d.value / math.Pow10(int(d.whole))
	trial.to = j + 2
	trial.broken = true
	if u, _ := p.unit(&trial, j+2); u != nil && u.metric {
		*n = trial
		n.rule = "decimal comma"
	}
}

// spacedPoint reads the spaced decimal point of a wire service: 14 . 8 %.
func (p *parser) spacedPoint(n *num, j int) {
	d := &p.lex[j+1]
	if d.look&decimal != 0 || d.whole > 3 {
		return
	}
	if p.word(j+2) == "%" || p.classOf(j+2) == scaleWord || n.from > 0 && p.isMoney(n.from-1) {
		n.value += d.value / math.Pow10(int(d.whole))
		n.to = j + 2
		n.broken = true
	}
}

// suffix reads the letters that stand for thousands and more: 2k, 1.5M, $4bn.
func (p *parser) suffix(n *num) {
	j := n.to
	if j >= len(p.tok) || p.lex[j].class != wordToken || len(p.word(j)) > 2 {
		return
	}
	scale := 0.0
	glued := p.glued(j)
	switch p.word(j) {
	case "k":
		if !p.upper(j) || !kelvinLetter(p, *n, j, j+1) {
			scale = 1e3
		}
	case "m":
		if glued && p.upper(j) && !caseSize(n.value) || p.isMoney(n.from-1) || p.isMoney(j+1) && glued {
			scale = 1e6
		}
	case "b", "bn":
		if glued || p.isMoney(n.from-1) {
			scale = 1e9
		}
	case "mm", "mn":
		if p.isMoney(n.from - 1) {
			scale = 1e6
		}
	case "t", "tn":
		if p.isMoney(n.from - 1) {
			scale = 1e12
		}
	}
	if scale > 0 && !p.glueWord(j+1) {
		n.value *= scale
		n.scale = scale
		n.to = j + 1
		n.rule = "figures with a letter"
	}
}

// isMoney tells whether token j names a currency.
func (p *parser) isMoney(j int) bool {
	if j < 0 || j >= len(p.tok) || p.lex[j].entry == nil {
		return false
	}
	for _, u := range p.lex[j].entry.units {
		if u.row.kind == Money && len(u.words) == 1 {
			return true
		}
	}
	return false
}

// inWords reads a number that starts with a word.
func (p *parser) inWords(i int) (num, bool) {
	n := num{from: i, to: i + 1, words: true, rule: "number words"}
	j := i
	a := p.word(i) == "a" || p.word(i) == "an"
	if a {
		j++
	}
	switch c := p.classOf(j); c {
	case digitWord, teenWord, tensWord:
		if a {
			return n, false
		}
		p.cardinal(&n, j, 0, 0)
		if n.to == j+1 && p.word(j) == "one" && p.pronoun(j) {
			return n, false
		}
	case hundredWord, scaleWord:
		p.cardinal(&n, j, 0, 0)
	case zeroWord:
		if a {
			return n, false
		}
		n.to = j + 1
	case pointWord:
		if a || j > 0 && p.role(j-1)&pronounOne != 0 || !p.startsNumber(j+1) {
			return n, false
		}
		n.to = j
	case shareWord:
		return p.share(n, j, a)
	case ordinalWord:
		if !a || !p.shareEnds(j+1) {
			return n, false
		}
		return p.share(n, j, a)
	case dozenWord:
		n.value, n.to = 12, j+1
		return n, true
	case coupleWord, fewWord, severalWord:
		return p.vague(n, j, c, a)
	case pairWord:
		if !a && j > 0 && p.role(j-1)&pronounOne != 0 {
			return n, false
		}
		n.value, n.to, n.rule = 2, j+1, "a pair"
		return n, true
	case grandWord:
		if !a || p.role(j+1) != 0 && p.word(j+1) == "total" || p.word(j+1) == "river" || p.word(j+1) == "lake" || p.word(j+1) == "slam" {
			return n, false
		}
		n.value, n.to, n.money = 1000, j+1, true
		return n, true
	default:
		return n, false
	}
	p.pointBehind(&n, n.to)
	p.shareBehind(&n)
	p.andShare(&n)
	p.scaleBehind(&n)
	return n, true
}

// pronoun tells whether the "one" at token j counts nothing: "which one", "the
// one", "one way".
func (p *parser) pronoun(j int) bool {
	if j > 0 && p.role(j-1)&pronounOne != 0 {
		u, _ := p.unit(&num{from: j, to: j + 1, value: 1, words: true}, j+1)
		return u == nil
	}
	switch p.word(j + 1) {
	case "of":
		return p.role(j+2)&pronounOne != 0 || p.word(j+2) == "them" || p.word(j+2) == "us" || p.word(j+2) == "my" || p.word(j+2) == "your"
	case "way", "another", "thing", "hand", "you", "that", "who", "with":
		return true
	}
	return false
}

// cardinal reads number words from token j on, with group already said (of the
// class last, 0 for nothing yet), and stores value and end.
//
// The parts of "two hundred thirty-two thousand and five" are taken one by one;
// each must be smaller than the one before. Two parts below a hundred side by
// side are the way a shop says a weight: "seventeen fifty".
func (p *parser) cardinal(n *num, j int, group float64, last wordClass) {
	total, lastScale, paired := 0.0, math.Inf(1), false
	for {
		k := p.joint(j, last)
		c := p.classOf(k)
		v := 0.0
		if c != 0 {
			v = p.wordValue(k)
		} else if last == scaleWord && p.isFigures(k) && p.classOf(k+1) == hundredWord && p.lex[k].value < 10 {
			c, v = digitWord, p.lex[k].value // "3 thousand 6 hundred"
		}
		switch {
		case c == digitWord && (last == 0 || last == scaleWord):
			group = v
		case c == digitWord && (last == tensWord || last == hundredWord):
			group += v
		case c == digitWord && last == ohWord:
			group = group*100 + v
		case (c == teenWord || c == tensWord) && (last == 0 || last == scaleWord):
			group = v
		case (c == teenWord || c == tensWord) && last == hundredWord:
			group += v
		case (c == teenWord || c == tensWord) && total == 0 && !paired && n.words && group >= 1 && group < 100 && k == j:
			n.first, n.second = group, v
			group, paired = group*100+v, true
		case c == hundredWord && last == 0:
			group = v
		case c == hundredWord && group > 0 && group < 100 && last != hundredWord && last != scaleWord:
			group *= v
			n.scale = v
		case c == scaleWord && v < lastScale && (last == 0 || last != scaleWord && group > 0):
			if last == 0 {
				group = 1
			}
			total += group * v
			group, lastScale = 0, v
			n.scale = v
		case c == scaleWord && last == scaleWord && group == 0:
			total *= v // "a hundred thousand million"
		case c == ohWord && !paired && total == 0 && group >= 1 && group < 100 && last != ohWord && p.classOf(k+1) == digitWord:
			paired = true
		default:
			if last != 0 {
				n.value = total + group
				n.to = j
			}
			return
		}
		if c == digitWord && last == tensWord {
			if n.second != 0 {
				n.second += v
			}
		}
		last = c
		j = k + 1
		n.value, n.to = total+group, j
	}
}

// joint skips what may stand between two number words: the hyphen of
// "twenty-two", the "and" of "two hundred and ten", the comma of "three
// million, two hundred". It returns j when nothing is to be skipped.
func (p *parser) joint(j int, last wordClass) int {
	next := p.classOf(j + 1)
	if last == 0 || next == 0 || next > scaleWord {
		return j
	}
	switch p.word(j) {
	case "-":
		if p.glued(j) && p.glued(j+1) || last == tensWord && next == digitWord && !p.glued(j) && !p.glued(j+1) {
			return j + 1
		}
	case "and", "&":
		if last != hundredWord && last != scaleWord || next == scaleWord || next == hundredWord {
			return j
		}
		// "a hundred and two guys" leaves the guys their number; "three
		// quarters" after the and is a fraction.
		if next == digitWord && (p.role(j+2)&countNoun != 0 || p.isShare(j+2)) {
			return j
		}
		return j + 1
	case ",":
		if last == scaleWord && p.glued(j) && (p.classOf(j+2) == hundredWord || p.classOf(j+2) == scaleWord || p.classOf(j+3) == scaleWord) {
			return j + 1
		}
	}
	return j
}

func (p *parser) isShare(j int) bool {
	c := p.classOf(j)
	return c == shareWord || c == sharesWord || c == ordinalWord
}

// pointBehind reads "point five", "point oh eight", "point 5" after a number.
func (p *parser) pointBehind(n *num, j int) {
	if p.classOf(j) != pointWord {
		return
	}
	k, place := j+1, 0.1
	if p.isFigures(k) {
		if p.lex[k].look&decimal != 0 {
			return
		}
		n.value += p.lex[k].value / math.Pow10(int(p.lex[k].whole))
		k++
	} else {
	digits:
		for {
			switch c := p.classOf(k); c {
			case digitWord, zeroWord, ohWord:
				n.value += p.wordValue(k) * place
				place /= 10
			case teenWord, tensWord:
				n.value += p.wordValue(k) * place / 10
				if c == tensWord && p.classOf(k+1) == digitWord {
					k++
					n.value += p.wordValue(k) * place / 10
				}
				place /= 100
			default:
				break digits
			}
			k++
		}
		if k == j+1 {
			return
		}
		// Nine figures are more than anyone says; it takes off the dust of
		// adding tenths in binary.
		n.value = math.Round(n.value*1e9) / 1e9
	}
	n.to, n.broken = k, true
}

// shareBehind turns "two thirds" and "three quarters" into one number.
func (p *parser) shareBehind(n *num) {
	j := n.to
	if p.word(j) == "-" && p.glued(j) == p.glued(j+1) {
		j++
	}
	c := p.classOf(j)
	if n.broken || n.value < 1 || !integer(n.value) || n.value > 100 {
		return
	}
	switch {
	case c == sharesWord, (c == shareWord || c == ordinalWord) && n.value == 1, c == shareWord && n.value == 3 && p.wordValue(j) == 0.25:
		n.value *= p.wordValue(j)
		n.to, n.broken = j+1, true
		n.rule = "fraction in words"
	}
}

// andShare adds "and a half", "and three quarters", "and 1/2" to a number.
func (p *parser) andShare(n *num) {
	if n.broken && n.rule != "number words" || n.to >= len(p.tok) {
		return
	}
	switch p.word(n.to) {
	case "and", "&", "an", "n", "'n":
	default:
		return
	}
	if v, to, ok := p.shareAt(n.to + 1); ok && !n.broken {
		n.value += v
		n.to = to
		n.broken = true
		n.rule = "number and a fraction"
	}
}

// shareAt reads a fraction that is added to what stands before: "a half",
// "quarter", "three fifths", "1/2". A fraction of the throttle is a number of
// its own.
func (p *parser) shareAt(j int) (v float64, to int, ok bool) {
	if v, to, ok := p.plainFraction(j); ok {
		return v, to, p.role(to)&throttleWord == 0
	}
	a := p.word(j) == "a" || p.word(j) == "an"
	k := j
	if a {
		k++
	}
	switch c := p.classOf(k); {
	case c == shareWord:
		to = k + 1
		v = p.wordValue(k)
	case c == ordinalWord && a && p.shareEnds(k+1):
		to = k + 1
		v = p.wordValue(k)
	case !a && c >= digitWord && c <= tensWord && p.isShare(k+1) && p.classOf(k+1) != ordinalWord:
		to = k + 2
		v = p.wordValue(k) * p.wordValue(k+1)
	default:
		return 0, j, false
	}
	if p.role(to)&throttleWord != 0 || v >= 1 {
		return 0, j, false
	}
	return v, to, true
}

// shareEnds tells whether an ordinal before token j is a share ("at a third,")
// and not the third of something ("a third guy").
func (p *parser) shareEnds(j int) bool {
	if p.closes(j) || p.role(j)&closesFraction != 0 {
		return true
	}
	if c := p.classOf(j); c == scaleWord || c == dozenWord {
		return true
	}
	switch p.word(j) {
	case "and", "then", "for", "on", "to", "all", "most", "now":
		return true
	}
	return false
}

// share reads a number that starts with a share: half, a quarter, half a
// million.
func (p *parser) share(n num, j int, a bool) (num, bool) {
	if j > 0 && !a && p.isNth(j-1) {
		return n, false // "the third quarter"
	}
	n.value = p.wordValue(j)
	n.to = j + 1
	n.broken = true
	n.rule = "a fraction in words"
	// The article belongs to the number only when a unit or a scale follows.
	k := n.to
	if p.word(k) == "of" {
		k++
	}
	if w := p.word(k); w == "a" || w == "an" {
		c := p.classOf(k + 1)
		if c == scaleWord || c == hundredWord || c == dozenWord {
			n.to = k + 1
		} else if u, _ := p.unitWord(&n, k+1); u != nil && len(p.word(k+1)) > 1 {
			n.to = k + 1
			return n, true
		}
	}
	p.scaleBehind(&n)
	return n, true
}

// isNth tells whether token j is an ordinal: "third", "3rd".
func (p *parser) isNth(j int) bool {
	switch p.word(j) {
	case "first", "second", "1st", "last", "next":
		return true
	}
	return p.classOf(j) == ordinalWord
}

// scaleBehind multiplies a number by the scale behind it: "two and a half
// million", "2 dozen", "ten grand", "two thirds of a million".
func (p *parser) scaleBehind(n *num) {
	j := n.to
	if n.broken && p.word(j) == "of" && p.word(j+1) == "a" && p.classOf(j+2) == scaleWord {
		j += 2
	}
	switch c := p.classOf(j); {
	case c == dozenWord, c == scaleWord && n.broken, c == hundredWord && n.broken:
		n.value *= p.wordValue(j)
		n.scale = p.wordValue(j)
		n.to = j + 1
	case c == grandWord:
		n.scale = 1000
		n.value *= 1000
		n.to = j + 1
		n.money = true
	}
}

// overBehind reads "one over twenty".
func (p *parser) overBehind(n *num) {
	if p.word(n.to) != "over" || n.broken || n.value == 0 || !integer(n.value) {
		return
	}
	if j := n.to + 1; !p.startsNumber(j) || p.classOf(j) == shareWord {
		return
	}
	under := num{}
	if p.isFigures(n.to + 1) {
		under = p.inFigures(n.to + 1)
	} else {
		under, _ = p.inWords(n.to + 1)
	}
	if under.value == 0 || under.to <= n.to+1 || n.value != 1 && under.value > 100 {
		return
	}
	if u, _ := p.unit(&under, under.to); u != nil {
		return
	}
	n.value /= under.value
	n.to, n.broken = under.to, true
	n.rule = "one number over another"
}

// vague reads "a couple", "a few hundred", "several". The spreads are the
// project's own: a couple is two and may be three, a few is two to five.
func (p *parser) vague(n num, j int, c wordClass, a bool) (num, bool) {
	n.value, n.to = p.wordValue(j), j+1
	if p.word(n.to) == "of" {
		k := n.to + 1
		if pc := p.classOf(k); pc == hundredWord || pc == scaleWord || pc == dozenWord {
			n.to = k
		} else if u, _ := p.unitWord(&n, k); u != nil {
			n.to = k
		}
	}
	low, high := 2.0, 5.0
	switch c {
	case coupleWord:
		low, high = 1.5, 3
		n.rule = "a couple"
	case severalWord:
		low, high = 3, 7
		n.rule = "several"
	default:
		n.rule = "a few"
	}
	scale := 1.0
	if pc := p.classOf(n.to); pc == hundredWord || pc == scaleWord || pc == dozenWord {
		scale = p.wordValue(n.to)
		n.to++
	}
	if c == coupleWord && scale == 1 {
		if p.classOf(n.to) == digitWord && p.wordValue(n.to) == 3 || p.isFigures(n.to) && p.lex[n.to].value == 3 && n.to == j+1 {
			// "a couple three hours"
			n.value, n.low, n.high, n.spread = 2.5, 2, 3, true
			n.to++
		}
		return n, true // two of something countable
	}
	if c == fewWord && !a && scale == 1 {
		if u, _ := p.unitWord(&n, n.to); u == nil || p.role(j-1)&pronounOne != 0 {
			return n, false
		}
	}
	n.value *= scale
	n.low, n.high, n.spread = low*scale, high*scale, true
	return n, true
}

// pluralBehind takes the s of "27s" and "27's".
func (p *parser) pluralBehind(n *num) {
	j := n.to
	if n.words || n.broken || n.to-n.from > 1 {
		return
	}
	if p.word(j) == "'" && p.glued(j) && p.word(j+1) == "s" && p.glued(j+1) {
		j++
	}
	if p.word(j) == "s" && p.glued(j) && !p.upper(j) {
		n.plural = true
		n.to = j + 1
	}
}

// caseSize tells whether x is the number of a common battery case, so that a
// letter M behind it means marine and not a million.
func caseSize(x float64) bool {
	switch x {
	case 22, 24, 27, 29, 30, 31, 34, 49, 65:
		return true
	}
	return false
}
