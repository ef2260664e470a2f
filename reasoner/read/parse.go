package read

import "strings"

// MaxMeasures is the most measures that are read from one text; nobody says
// more, and a text of nothing but figures must not fill the memory.
const MaxMeasures = 4096

// parser reads one text. It goes from left to right once; each step looks a
// bounded number of tokens ahead and back.
type parser struct {
	text      string
	norm      []byte
	tok       []Token
	lex       []lexeme
	out       []Measure
	floats    []float64
	free      int      // first token that no measure has taken
	prior     int      // first token of the measure before
	priorUnit *unitRow // its unit
	quoted    bool     // inside double quotes
	ahead     bool     // looking ahead of an "in"
	inMoney   bool     // a "c" behind the number is cents
}

// Read reads a line of talk.
func Read(text string) Reading {
	r := Reading{Text: text}
	p := parser{text: text}
	if len(text) > MaxText {
		p.text, r.Cut = text[:MaxText], true
	}
	p.tokens()
	for i := 0; i < len(p.tok); {
		if len(p.out) >= MaxMeasures {
			r.Cut = true
			break
		}
		if !p.mayStart(i) {
			p.quotes(i)
			i++
			continue
		}
		q, ok := p.measure(i)
		if !ok || !finite(q.value, q.low, q.high) {
			p.quotes(i)
			i++
			continue
		}
		p.emit(&q)
		i = q.to
	}
	r.Tokens, r.Measures = p.tok, p.out
	return r
}

// mayStart is a quick test: most words start no measure, and an article starts
// one only before a unit or a number.
func (p *parser) mayStart(i int) bool {
	l := &p.lex[i]
	switch l.class {
	case digitsToken, fractionToken:
		return true
	}
	if l.entry == nil || !l.entry.starts {
		return false
	}
	switch p.tok[i].Text {
	case "a", "an", "another":
		return i+1 < len(p.tok) && p.lex[i+1].entry != nil
	}
	return true
}

// measure reads the measure that starts at token i.
func (p *parser) measure(i int) (quantity, bool) {
	if q, ok := p.distractor(i); ok {
		return q, true
	}
	q, ok := p.single(i)
	if !ok {
		return q, false
	}
	p.rangeBehind(&q)
	if q.hasLow && q.kind == Number && q.unit == nil && q.high <= 12 && p.isMeridiem(q.to) {
		q.as, q.rule = "clock-time", "clock-time" // "6 to 10 am"
		q.to++
	}
	p.tolerance(&q)
	p.hedgeBefore(&q)
	p.hedgeBehind(&q)
	p.doubts(&q)
	return q, true
}

// emit stores the quantity as a measure and marks its tokens.
func (p *parser) emit(q *quantity) {
	if p.joins(q) {
		return
	}
	index := len(p.out)
	start, end := p.tok[q.from].Start, p.tok[q.to-1].End
	m := Measure{
		Start: start, End: end, Said: p.text[start:end],
		Kind: q.kind, Unit: q.si, Bare: q.bare, BareHigh: q.bareHigh, Spoken: q.spoken,
		About: q.about, As: q.as, Rule: q.rule, Also: q.also,
	}
	if q.hedge != "" {
		m.Rule += ", " + q.hedge
	}
	if q.hasValue {
		m.Value = p.float(q.value)
	}
	if q.hasLow {
		m.Low = p.float(q.low)
	}
	if q.hasHigh {
		m.High = p.float(q.high)
	}
	p.out = append(p.out, m)
	for k := q.from; k < q.to; k++ {
		p.tok[k].Measure = index
	}
	p.settle(index, q)
	p.free, p.prior, p.priorUnit = q.to, q.from, q.unit
}

// float keeps x in a block of floats, so that a measure costs no allocation of
// its own.
func (p *parser) float(x float64) *float64 {
	if len(p.floats) == cap(p.floats) {
		p.floats = make([]float64, 0, 16)
	}
	p.floats = append(p.floats, x)
	return &p.floats[len(p.floats)-1]
}

// word returns the text of token i, or "" beyond the ends.
func (p *parser) word(i int) string {
	if i < 0 || i >= len(p.tok) {
		return ""
	}
	return p.tok[i].Text
}

// glued tells whether no space stands between token i and the one before.
func (p *parser) glued(i int) bool {
	return i > 0 && i < len(p.tok) && p.lex[i].look&gluedLook != 0
}

// upper tells whether the letters of token i are all capitals.
func (p *parser) upper(i int) bool { return p.lex[i].look&capitals != 0 }

// closes tells whether nothing that could belong to a unit follows at token i:
// the text ends, or a mark stands there.
func (p *parser) closes(i int) bool {
	return i >= len(p.tok) || p.lex[i].class == markToken && p.word(i) != "/" && p.word(i) != "#" && p.word(i) != "$"
}

func (p *parser) role(i int) role {
	if i < 0 || i >= len(p.tok) || p.lex[i].entry == nil {
		return 0
	}
	return p.lex[i].entry.role
}

func (p *parser) isArticle(i int) bool { return p.word(i) == "a" || p.word(i) == "an" }

// phrase tells whether the words stand at token j, with at most a hyphen or the
// point of an abbreviation between two of them ("amp-hour", "lb. of thrust"),
// and returns the token after.
func (p *parser) phrase(j int, words []string) (int, bool) {
	for k, w := range words {
		if k > 0 && (p.word(j) == "-" && w != "-" || p.word(j) == "." && p.glued(j)) {
			j++
		}
		if p.word(j) != w {
			return j, false
		}
		j++
	}
	return j, true
}

// joins merges a bound with the one before when the two are the ends of one
// range: "more than 20 and less than 30".
func (p *parser) joins(q *quantity) bool {
	if len(p.out) == 0 || q.hasValue || q.hasLow == q.hasHigh {
		return false
	}
	m := &p.out[len(p.out)-1]
	if m.Kind != q.kind || m.Unit != q.si || m.Value != nil || (m.Low != nil) == (m.High != nil) || (m.Low != nil) == q.hasLow {
		return false
	}
	between := p.free
	if w := p.word(between); w != "and" && w != "but" && w != "," && w != "&" {
		return false
	}
	if p.word(between) == "," && (p.word(between+1) == "and" || p.word(between+1) == "but") {
		between++
	}
	if between+1 != q.from {
		return false
	}
	low, high := q.low, q.high
	bareLow, bareHigh := q.bare, q.bare
	if m.Low != nil {
		low, bareLow = *m.Low, m.Bare
	} else {
		high, bareHigh = *m.High, m.Bare
	}
	if low > high {
		return false
	}
	m.Low, m.High = p.float(low), p.float(high)
	m.Bare, m.BareHigh = bareLow, bareHigh
	m.End = p.tok[q.to-1].End
	m.Said = p.text[m.Start:m.End]
	m.Rule = "two bounds, " + q.rule
	for k := p.free; k < q.to; k++ {
		p.tok[k].Measure = len(p.out) - 1
	}
	p.free = q.to
	return true
}

// settle settles a measure by the one before: the first of "12 or 24 volt"
// takes the unit of the second, the second of "12 volt or 24" that of the first, and "2 lb per 100 lb" is a rate.
func (p *parser) settle(index int, q *quantity) {
	if index == 0 {
		return
	}
	a, b := &p.out[index-1], &p.out[index]
	switch w := p.between(a, b); w {
	case "per", "for every", "per every", "to every", "for each", "to each":
		if a.As == "" && b.As == "" {
			a.As, b.As = "rate", "rate"
		}
	case "or", "and", "&", "/", "- or", "- and":
		if w == "and" && p.isArticle(p.prior-1) {
			return // "a 17 and a 20"
		}
		if q.unit != nil && p.lend(a, b, q.unit) {
			for k := index - 1; k > 0 && p.between(&p.out[k-1], &p.out[k]) == ","; k-- {
				if !p.lend(&p.out[k-1], &p.out[k], q.unit) {
					break
				}
			}
		}
		if w == "or" && p.priorUnit != nil && p.role(q.to)&countNoun == 0 {
			p.lend(b, a, p.priorUnit) // "12 volt or 24"
		}
		if a.Kind == Group && b.isBare() && caseSize(b.Bare) || a.Kind == Gauge && w == "or" && b.isBare() {
			b.Kind, b.Unit, b.Spoken, b.Rule, b.Also = a.Kind, a.Unit, a.Spoken, "unit of its neighbour", nil
		}
	}
}

// between returns the few words between two measures, or "" for many.
func (p *parser) between(a, b *Measure) string {
	s := p.text[a.End:b.Start]
	if len(s) > 16 {
		return ""
	}
	return strings.ToLower(strings.TrimSpace(s))
}

// isBare tells whether the measure is a plain number without any unit.
func (m *Measure) isBare() bool {
	return m.Kind == Number && m.Spoken == "" && m.As == "" && m.Value != nil && m.Low == nil && m.High == nil
}

// lend gives the unit of b to a bare number of about the same size.
func (p *parser) lend(a, b *Measure, u *unitRow) bool {
	if !a.isBare() || u.as != "" || b.Value == nil || b.Low != nil || b.Bare > 2.5*a.Bare || a.Bare > 2.5*b.Bare {
		return false
	}
	a.Kind, a.Unit, a.Spoken = b.Kind, b.Unit, b.Spoken
	a.Value = p.float(u.toSI(a.Bare))
	a.Rule, a.Also = "unit of its neighbour", []Alternative{{Number, "1", a.Bare, "no unit"}}
	return true
}

// Public returns the kind and unit under which the measure is shown: a gauge
// and a battery group are plain numbers there.
func (m Measure) Public() (kind Kind, unit string) {
	if m.Kind == Gauge || m.Kind == Group {
		return Number, "1"
	}
	return m.Kind, m.Unit
}
