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
	// The two halves of a number said in two parts: "fifteen twenty" is 1520,
	// or a wind of fifteen to twenty.
	first, second float64
	rule          string
}

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
