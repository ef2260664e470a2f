package read

import "math"

// This file holds the conditions under which a doubtful spelling is a unit. Each
// is named for the other thing that the letters may be.

// footNotPedal: "2 foot controls" are worked by a foot.
func footNotPedal(p *parser, n num, from, to int) bool {
	return p.word(from) != "foot" || p.role(to)&footWorked == 0
}

// cupNotHolder: "two cup holders" hold no volume.
func cupNotHolder(p *parser, n num, from, to int) bool {
	return p.word(to) != "holder" && p.word(to) != "holders"
}

// truckLoad: "a half ton truck" is a kind of truck.
func truckLoad(p *parser, n num, from, to int) bool {
	switch p.word(to) {
	case "truck", "trucks", "pickup", "pickups", "van":
		return true
	}
	return false
}

// fishWeight: "a 6 lb walleye" is a catch, "a 2,000 lb bass boat" is not.
func fishWeight(p *parser, n num, from, to int) bool {
	return n.value <= 80 && p.role(to)&fishWord != 0 && p.role(to+1)&boatWord == 0
}

// chargeRate: "0.5C" is half the capacity in an hour, "20C" a temperature.
func chargeRate(p *parser, n num, from, to int) bool {
	return p.upper(from) && n.value > 0 && n.value <= 3 && (n.broken || p.word(to) == "rate" || p.word(to) == "discharge" || p.word(to) == "charge")
}

// inchNotPreposition: "24 in off the water" is inches, "2 in series" is not.
func inchNotPreposition(p *parser, n num, from, to int) bool {
	if p.glued(from) || n.broken {
		return true
	}
	if p.word(to) == "-" && p.glued(to) {
		return true
	}
	if p.startsNumber(to) {
		// "12 in six boxes" is no inch; "2 in 55 lb" has a measure after it.
		if p.lex[to].class == wordToken || n.words {
			return false
		}
		// One look ahead is enough; the number there may have an "in" of its
		// own, and so on to the end of the text.
		if p.ahead {
			return true
		}
		p.ahead = true
		defer func() { p.ahead = false }()
		next, ok := p.number(to)
		if !ok {
			return true
		}
		u, _ := p.unitWord(&next, next.to)
		return u != nil && u.kind != Duration && u.kind != Voltage && u.kind != Speed
	}
	if p.word(to) == "and" {
		if _, _, ok := p.shareAt(to + 1); ok {
			return true // "20 in and a half"
		}
	}
	return p.role(to)&afterPreposition == 0
}

// footMark: an apostrophe after a number is feet, unless it closes a quotation
// or a verb hangs on it: "a 55'll do".
func footMark(p *parser, n num, from, to int) bool {
	if !p.glued(from) || n.from > 0 && p.word(n.from-1) == "'" && p.glued(n.from) {
		return false
	}
	if !p.glued(to) {
		return true
	}
	switch p.word(to) {
	case "s", "ll", "d", "ve", "re":
		return false
	}
	return true
}

// inchMark: a double quote after a number is inches, unless it closes a
// quotation.
func inchMark(p *parser, n num, from, to int) bool {
	if n.from > 0 && p.word(n.from-1) == `"` && p.glued(n.from) || p.quoted && !p.quoteAhead(to) {
		return false
	}
	return p.glued(from) || p.tok[from].Start == p.tok[from-1].End+1
}

// quoteAhead tells whether another double quote follows soon, so that the
// quotation is not closed by the one at hand.
func (p *parser) quoteAhead(j int) bool {
	for k := j; k < len(p.tok) && k < j+40; k++ {
		if p.word(k) == `"` {
			return true
		}
	}
	return false
}

// quotes keeps track of quotations: a double quote at token i that hangs on the
// word behind it opens one, any other that is no inch mark closes it.
func (p *parser) quotes(i int) {
	if p.tok[i].Text == `"` {
		p.quoted = !p.glued(i) && p.glued(i+1)
	}
}

// metreNotMillion: "1M" is a million and "24M" a battery case; "5 M" and "3m"
// are metres.
func metreNotMillion(p *parser, n num, from, to int) bool {
	return p.word(from) != "m" || !p.upper(from) || !p.glued(from)
}

// poundSign: "30#" is pounds; in "30 #6" the sign belongs to what follows.
func poundSign(p *parser, n num, from, to int) bool {
	if p.glued(from) {
		return true
	}
	return !(to < len(p.tok) && p.glued(to) && p.lex[to].class == digitsToken)
}

// stoneNotStreet: "14 st" is stone; "5 St." a street only in an address.
func stoneNotStreet(p *parser, n num, from, to int) bool {
	return p.word(from) != "st" || n.from == 0 || p.word(n.from-1) != "-"
}

// gramNotGauge: "6g wire" is a gauge, "15g25" a wind with gusts.
func gramNotGauge(p *parser, n num, from, to int) bool {
	return p.word(from) != "g" || !p.glueWord(to) && p.role(to)&wireWord == 0
}

// capitalLetter: "200 N" is newtons, a small n is short for "and".
func capitalLetter(p *parser, n num, from, to int) bool {
	return p.upper(from) && !p.windBefore(n) && (p.closes(to) || p.glued(from) || p.word(to) == "of" || p.word(to) == "thrust")
}

// windBefore tells whether the number is a wind, so that a letter behind it is
// where the wind comes from: "wind 15 N".
func (p *parser) windBefore(n num) bool {
	switch p.word(n.from - 1) {
	case "wind", "winds", "blowing", "gusting", "gusts", "breeze":
		return true
	}
	return false
}

// metreSecond: "5 m s" only with a closing mark; the other spellings always.
func metreSecond(p *parser, n num, from, to int) bool {
	return p.word(to-1) != "s" || p.word(from+1) != "s" || p.closes(to)
}

// secondNotPlural: "27s" is several of them, "30 s" is a time.
func secondNotPlural(p *parser, n num, from, to int) bool {
	return !p.upper(from) && (!p.glued(from) || n.broken)
}

// celsiusLetter: "30 C", "-10c"; not "14.7C/", not a part number.
func celsiusLetter(p *parser, n num, from, to int) bool {
	return (p.glued(from) || p.upper(from)) && p.word(to) != "/" && math.Abs(n.value) <= 150 && !p.glueWord(to)
}

// fahrenheitLetter: "70 F", "98.6f", "70 f" where the talk stops.
func fahrenheitLetter(p *parser, n num, from, to int) bool {
	return (p.glued(from) || p.upper(from) || p.closes(to)) && math.Abs(n.value) <= 250 && !p.glueWord(to)
}

// kelvinLetter: a K is a thousand unless the talk is of temperatures.
func kelvinLetter(p *parser, n num, from, to int) bool {
	return len(p.out) > 0 && p.out[len(p.out)-1].Kind == Temperature && n.value >= 150
}

// glueWord tells whether a letter or figure follows token i-1 without a space.
func (p *parser) glueWord(i int) bool {
	return i < len(p.tok) && p.glued(i) && p.lex[i].class != markToken
}

// ampereNotArticle: "50a" and "50 A" are current; "50 a" only where no noun
// follows.
func ampereNotArticle(p *parser, n num, from, to int) bool {
	return p.glued(from) || p.upper(from) || p.closes(to) || p.role(to)&afterAmpere != 0
}

// voltNotHull: "16 v hull" is a shape, "24 v" a voltage; "80 lb vs 55" compares.
func voltNotHull(p *parser, n num, from, to int) bool {
	if p.word(from) == "vs" {
		return p.glued(from)
	}
	switch p.word(to) {
	case "hull", "bottom", "hulled", "bow", "boat":
		return p.glued(from)
	}
	return true
}

// wattNotWith: "a 45 w my buddy" is short for with.
func wattNotWith(p *parser, n num, from, to int) bool {
	if p.word(to) == "/" || p.windBefore(n) {
		return false
	}
	return p.glued(from) || p.upper(from) || p.closes(to) || p.role(to)&afterWatt != 0
}

// centLetter: the c of "$15 and 60c".
func centLetter(p *parser, n num, from, to int) bool { return p.inMoney }
