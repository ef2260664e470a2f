package read

// effect is what a hedge does to the measure beside it.
type effect uint8

const (
	roughly effect = iota // the value is not exact
	atLeast               // the value is the low end
	atMost                // the value is the high end
	opens                 // opens a range and says nothing more: "from", "between"
)

// hedgeRow is a way of saying that a number is rough or a bound.
type hedgeRow struct {
	name    string
	effect  effect
	behind  bool   // stands after the measure
	last    bool   // counts only when nothing follows it
	phrases string // parted by "|"
}

var hedges = []hedgeRow{
	{name: "about", effect: roughly, phrases: "about|bout|abt|abut|aboot|around|round about|roughly|approximately|approx|aprox|approx .|approximatly|maybe|mebbe|prolly|probably|perhaps|~|nearly|almost|close to|somewhere around|somewhere near|" +
		"in the neighborhood of|in the ballpark of|ballpark|circa|say|call it|figure|figured|figuring|guess|guessing|i guess|like|something like|give or take|just about|right around|right at|some|estimated|est|an estimated|nominally|pushing"},
	{name: "under", effect: atMost, phrases: "under|below|beneath|less than|less then|fewer than|lower than|smaller than|lighter than|shorter than|cheaper than|at most|at the most|no more than|no more then|not more than|not more then|never more than|never more then|" +
		"up to|upto|max|max .|maximum|maximum of|max of|within|not over|never over|not above|never above|no over|no higher than|not exceeding|not exceed|never exceed|never exceeds|without exceeding|wont exceed|won't exceed|doesnt exceed|doesn't exceed|limit of|limited to|" +
		"<|<=|less than or equal to|less or equal than|less or equal|smaller or equal|less or equal to|smaller or equal than|smaller or equal to|equal to or less than|equal or less than|smaller than or equal to|lower than or equal to|lower or equal than|lower or equal to|no greater than|not greater than|no longer than|not longer than|no bigger than|not bigger than|no larger than|no heavier than|nothing over|nothing above|dont want to go over|dont go over|don't go over|stay under|keep under|keep it under|cant be over|can't be over|cap of|capped at|tops out at"},
	{name: "over", effect: atLeast, phrases: "over|above|beyond|more than|more then|greater than|greater then|bigger than|bigger then|larger than|larger then|heavier than|longer than|higher than|taller than|stronger than|faster than|in excess of|at least|at the least|atleast|no less than|no less then|not less than|no fewer than|not fewer than|no smaller than|" +
		"never less than|never under|never below|not under|not below|no lower than|not lower than|exceeding|exceeds|exceed|exceeded|surpass|surpasses|surpassed|surpassing|min|min .|minimum|minimum of|min of|a minimum of|a good|upwards of|upward of|north of|" +
		">|>=|greater than or equal to|greater or equal than|greater or equal|larger or equal|bigger or equal|more or equal|greater or equal to|more than or equal to|more or equal than|more or equal to|bigger or equal than|bigger or equal to|bigger than or equal to|larger or equal than|larger or equal to|larger than or equal to|equal to or more than|equal to or greater than|equal or more than|equal or greater than|equal to or larger than|equal to or bigger than|starting at"},
	{name: "from", effect: opens, phrases: "from|between|btween|betwen|anywhere from|anywhere between|somewhere between|in between|ranging from|ranged from|range from|ranges from|range of|range is|btw"},

	{name: "or so", effect: roughly, behind: true, phrases: "or so|ish|- ish|odd|- odd|some odd|- some|- something|give or take|more or less|or thereabouts|thereabouts|approximately|approx|roughly|or something|i think|i guess|i reckon|at a guess|ballpark|or close to it"},
	{name: "or less", effect: atMost, behind: true, phrases: "or less|or under|or below|or fewer|or lower|or smaller|max|maximum|tops|and under|and below|at most|at the most|limit|or lighter|or shorter|or cheaper"},
	{name: "or more", effect: atLeast, behind: true, phrases: "or more|or over|or above|or better|or higher|or greater|or larger|or bigger|or heavier|or longer|minimum|and over|and above"},
	{name: "at least", effect: atLeast, behind: true, last: true, phrases: "plus|at least|and up|min|atleast|or up|and more|and higher|and larger"},
	{name: "and less", effect: atMost, behind: true, last: true, phrases: "and less|and lower|and down"},
	{name: "plus sign", effect: atLeast, behind: true, phrases: "+"},
}

// hedgeBefore takes the hedges in front of the measure: "about", "no more
// than", "from". It may look back no further than the end of the measure before.
func (p *parser) hedgeBefore(q *quantity) {
	for range 3 {
		j := q.from - 1
		if j < p.free {
			return
		}
		if a := p.word(j); (a == "a" || a == "an" || a == "the" || a == "my") && j-1 >= p.free && p.word(j-1) == "than" {
			j-- // "bigger than a 55"
		}
		e := p.lex[j].entry
		if e == nil || e.before == nil {
			return
		}
		row, from := p.hedgeEnding(e, j)
		if row == nil || !p.takes(q, row, from, j) {
			return
		}
		q.apply(row)
		q.from = from
	}
}

// hedgeEnding returns the longest hedge that ends with token j.
func (p *parser) hedgeEnding(e *entry, j int) (*hedgeRow, int) {
	for ph := e.before; ph != nil; ph = ph.next {
		k := j - len(ph.words) + 1
		if k < p.free {
			continue
		}
		matched := true
		for i, w := range ph.words {
			if p.word(k+i) != w {
				matched = false
				break
			}
		}
		if matched {
			return ph.row, k
		}
	}
	return nil, j
}

// takes tells whether the hedge at tokens from to j belongs to the measure.
func (p *parser) takes(q *quantity, row *hedgeRow, from, j int) bool {
	if row.effect == opens && !(q.hasLow && q.hasHigh && !q.hasValue) {
		return false
	}
	switch p.word(j) {
	case "some", "like", "say", "guess", "figure", "round":
		return p.lex[j+1].class != wordToken || q.n.words
	case "about", "bout", "abt":
		switch p.word(from - 1) {
		case "what", "how", "think", "thinking", "thinkin", "know", "talk", "talking", "talkin", "worried", "worry", "ask", "asking", "askin", "sure", "tell":
			return false // "what about 24 volt"
		}
	case "over":
		// "24 over 12" compares, "40 amps over 15 ft" is a distance.
		return j != from || from == 0 || p.tok[from-1].Measure < 0
	case "min", ".":
		// "5 min 30 s" is no minimum.
		return from == 0 || p.tok[from-1].Measure < 0
	case "-":
		return false
	}
	return true
}

// apply changes the measure as the hedge says.
func (q *quantity) apply(row *hedgeRow) {
	switch row.effect {
	case roughly:
		q.about = true
	case opens:
	case atLeast, atMost:
		if q.hasValue {
			q.bound(row.effect)
		}
	}
	if q.hedge == "" || row.effect != opens {
		q.hedge = row.name
	}
}

// bound turns a value into the end of a range that is open on the other side.
func (q *quantity) bound(e effect) {
	q.hasValue, q.hasLow, q.hasHigh = false, e == atLeast, e == atMost
	q.low, q.high = q.value, q.value
}

// hedgeBehind takes the hedges behind the measure: "or so", "max", "+".
func (p *parser) hedgeBehind(q *quantity) {
	for range 2 {
		row, to := p.hedgeAt(q.to)
		if row == nil {
			return
		}
		q.apply(row)
		q.to = to
	}
}

// hedgeAt returns the hedge that stands at token j, behind a measure.
func (p *parser) hedgeAt(j int) (*hedgeRow, int) {
	if j >= len(p.tok) || p.lex[j].entry == nil {
		return nil, j
	}
	for ph := p.lex[j].entry.after; ph != nil; ph = ph.next {
		to := j + len(ph.words)
		if to > len(p.tok) || ph.row.last && !p.closes(to) {
			continue
		}
		matched := true
		for i, w := range ph.words {
			if p.word(j+i) != w {
				matched = false
				break
			}
		}
		if !matched {
			continue
		}
		if w := ph.words[0]; (w == "+" || w == "ish" || w == "-") && !p.glued(j) {
			continue
		}
		if ph.words[0] == "+" && p.startsNumber(to) && p.glued(to) {
			continue // a sum
		}
		if p.startsNumber(to) && p.lex[to-1].class == wordToken && ph.row.effect != roughly {
			continue // "above 10 and below 20"
		}
		if row := ph.words[0]; (row == "max" || row == "maximum" || row == "minimum") && p.role(to)&attribute != 0 {
			continue // "55 lb max thrust" is what it has
		}
		if p.word(to) == "a" && p.startsNumber(to+1) && ph.row.effect != roughly || p.word(to) == "than" || p.word(to) == "then" && ph.words[0] == "or" {
			continue // "or more than"
		}
		return ph.row, to
	}
	return nil, j
}
