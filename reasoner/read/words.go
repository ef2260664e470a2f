package read

import "math"

// inWords reads a number that starts with a word.
func (p *parser) inWords(i int) (num, bool) {
	n := num{from: i, to: i + 1, words: true, rule: "number words"}
	j := i
	a := p.word(i) == "a" || p.word(i) == "an"
	if a {
		j++
	}
	if !p.counting(&n, j, a) {
		return p.amount(n, j, a)
	}
	p.pointBehind(&n, n.to)
	p.shareBehind(&n)
	if trial := n; !n.broken && p.mixed(&trial, n.to) {
		if u, _ := p.unitWord(&trial, trial.to); u != nil {
			n = trial // "nineteen 1/2 inches"
		}
	}
	p.andShare(&n)
	p.scaleBehind(&n)
	return n, true
}

// counting reads the words with which one counts from token j on, behind an
// article or not: "seventeen fifty", "a hundred", "zero", the start of "point
// five". It reports whether they are a number.
func (p *parser) counting(n *num, j int, article bool) bool {
	switch p.classOf(j) {
	case digitWord, teenWord, tensWord:
		if article {
			return false
		}
		p.cardinal(n, j, 0, 0)
		return n.to != j+1 || p.word(j) != "one" || !p.pronoun(j)
	case hundredWord, scaleWord:
		p.cardinal(n, j, 0, 0)
		return true
	case zeroWord:
		if article {
			return false
		}
		n.to = j + 1
		return true
	case pointWord:
		if article || j > 0 && p.role(j-1)&pronounOne != 0 || !p.decimals(j+1) {
			return false
		}
		n.to = j
		return true
	}
	return false
}

// amount reads a word for an amount: "half", "a third", "a dozen", "a few", "a
// pair", "a grand".
func (p *parser) amount(n num, j int, article bool) (num, bool) {
	switch c := p.classOf(j); c {
	case shareWord:
		return p.share(n, j, article)
	case ordinalWord:
		if !article || !p.shareEnds(j+1) {
			return n, false
		}
		return p.share(n, j, article)
	case dozenWord:
		n.value, n.to = 12, j+1
		return n, true
	case coupleWord, fewWord, severalWord:
		return p.vague(n, j, c, article)
	case pairWord:
		if !article && j > 0 && p.role(j-1)&pronounOne != 0 {
			return n, false
		}
		n.value, n.to, n.rule = 2, j+1, "a pair"
		return n, true
	case grandWord:
		if !article || p.word(j+1) == "total" || p.word(j+1) == "river" || p.word(j+1) == "lake" || p.word(j+1) == "slam" {
			return n, false
		}
		n.value = 1
		p.grand(&n, j)
		return n, true
	}
	return n, false
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
// side are the way a shop says a weight: "seventeen fifty", "two-fifty"; with a
// hyphen they are a range when they could be one: "fifteen-twenty".
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
		case (c == teenWord || c == tensWord) && total == 0 && !paired && n.words && group >= 1 && group < 100 && (k == j || c == tensWord && (group < 10 || v > 2*group || v <= group)):
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
		if p.glued(j) && p.glued(j+1) && (last == hundredWord || last == scaleWord || next == hundredWord || next == scaleWord || next == tensWord || last == tensWord && next == digitWord) || last == tensWord && next == digitWord && !p.glued(j) && !p.glued(j+1) {
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

// decimals reports whether the places behind a point can begin at token k. They
// cannot where a fraction or a scale stands: the point of "stony point half a
// mile up" begins no number.
func (p *parser) decimals(k int) bool {
	if p.isFigures(k) {
		return p.lex[k].look&decimal == 0
	}
	switch p.classOf(k) {
	case digitWord, zeroWord, teenWord, tensWord:
		return true
	}
	return false
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
	if pc := p.classOf(n.to); pc == hundredWord || pc == scaleWord || pc == dozenWord || pc == grandWord {
		n.money = pc == grandWord
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
	if p.word(j) == "s" && p.glued(j) && !p.upper(j) && !p.glueWord(j+1) {
		n.plural = true
		n.to = j + 1
	}
}
