package read

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
	if n.broken {
		return
	}
	j := p.pastHyphen(n.to)
	switch p.word(j) {
	case "and", "&", "an", "n", "'n":
	default:
		return
	}
	if v, to, ok := p.shareAt(p.pastHyphen(j + 1)); ok {
		n.value += v
		n.to = to
		n.broken = true
		n.rule = "number and a fraction"
	}
}

// pastHyphen skips a hyphen without spaces at token j.
func (p *parser) pastHyphen(j int) int {
	if p.word(j) == "-" && p.glued(j) && p.glued(j+1) {
		return j + 1
	}
	return j
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
		k = p.pastHyphen(k + 1)
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
	k := p.pastHyphen(n.to)
	if p.word(k) == "of" {
		k++
	}
	if w := p.word(k); w == "a" || w == "an" {
		k = p.pastHyphen(k + 1)
		c := p.classOf(k)
		if c == scaleWord || c == hundredWord || c == dozenWord {
			n.to = k
		} else if u, _ := p.unitWord(&n, k); u != nil && len(p.word(k)) > 1 {
			n.to = k
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
// million", "2 dozen", "ten grand", "three quarters of a million".
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
		p.grand(n, j)
	}
}

// grand multiplies by the grand at token j, and by the half behind it.
func (p *parser) grand(n *num, j int) {
	n.scale, n.money = 1000, true
	n.to = j + 1
	if w := p.word(n.to); (w == "and" || w == "&") && !n.broken {
		if v, to, ok := p.shareAt(n.to + 1); ok {
			n.value += v
			n.to = to
		}
	}
	n.value *= 1000
}

// overBehind reads "one over eight" and "1500 over 4"; "24 over 12" compares
// two things.
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
	if under.value == 0 || under.to <= n.to+1 || n.value != 1 && under.value >= 10 {
		return
	}
	if u, _ := p.unit(&under, under.to); u != nil {
		return
	}
	n.value /= under.value
	n.to, n.broken = under.to, true
	n.rule = "one number over another"
}
