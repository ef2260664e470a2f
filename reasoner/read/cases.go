package read

import "math"

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
	if n.broken || !awg(n.value) || p.role(n.to)&countNoun != 0 {
		return quantity{}, false // "what gauge, 2 batteries"
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
	if n.broken || !awg(n.value) {
		return quantity{}, false
	}
	return quantity{from: i, to: k, n: n, kind: Gauge, si: "AWG", spoken: "AWG", bare: n.value, value: n.value, hasValue: true, rule: "gauge with a number sign"}, true
}

// awg tells whether wire is sold in gauge x: 0 to 4 and the even gauges up to
// 20 (common practice, no published source).
func awg(x float64) bool {
	return integer(x) && x >= 0 && (x <= 4 || x <= 20 && math.Mod(x, 2) == 0)
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

// caseSize tells whether x is the number of a common battery case, so that a
// letter M behind it means marine and not a million.
func caseSize(x float64) bool {
	switch x {
	case 22, 24, 27, 29, 30, 31, 34, 49, 65:
		return true
	}
	return false
}
