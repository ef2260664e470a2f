package read

import "math"

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
	if p.word(n.to) == "-" && p.glued(n.to) == p.glued(n.to+1) && p.classOf(n.to+1) == scaleWord {
		n.to++ // "$30-million"
	}
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
	if p.isFigures(j) && p.word(j+1) == "/" && p.isFigures(j+2) && p.glued(j+1) == p.glued(j+2) && !(p.word(j+3) == "/" && p.isFigures(j+4)) {
		a, b := p.lex[j].value, p.lex[j+2].value
		if a > 0 && a < b && denominator(b) && integer(a) {
			return a / b, j + 3, true
		}
	}
	return 0, j, false
}

// commaBehind reads a decimal comma before a metric unit ("5,25 m"), one with a
// single figure before any unit ("18,5 ft"), and the spaced thousands of a wire service ("80 , 000").
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
	if u, _ := p.unit(&trial, j+2); u != nil && (u.metric || d.whole == 1) {
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
	for u := p.lex[j].entry.units; u != nil; u = u.next {
		if u.row.kind == Money && len(u.words) == 1 {
			return true
		}
	}
	return false
}
