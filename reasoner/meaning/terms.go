package meaning

import (
	"slices"
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// A term is one thing in the line as the rules see it: a measure, a word or
// phrase of the trade's table, another word, or a mark.
type term struct {
	start, end int
	text       string   // lower case; "" for a measure
	id         words.ID // the entry it belongs to; for a measure, the entry it can stand for as a cue
	measure    int      // index of the measure, -1 for a word
	mark       byte     // ',' for a pause, ':' after a label, '.' for an end of sentence, '?' for a question; 0 otherwise
	filler     bool     // "is", "of", "the": costs no distance
	possessive bool     // "buddy's"
}

// line is one turn while it is being understood.
type line struct {
	r         read.Reading
	before    card.Card
	terms     []term
	at        []int // at[m]: the term of measure m
	used      []bool
	reason    []string // why a measure was set aside, for the report
	facts     []card.Fact
	drops     []string // slots that the turn takes off the card
	problems  []Problem
	corrected []Correction
	metric    bool
	has       mentioned
	hasBits   set // the same as bits
	compare   []string
	over      string
	negated   []bool // per term
	setSlots  map[string]bool
	asksMark  bool       // a question mark stands in the line
	crew      *card.Fact // people beyond those that a load was said for
	units     *unitRow   // the unit that the turn puts in place of another
	crewFrom  int        // the terms that counted the people; crewTo is -1 when none did
	crewTo    int
	saying    string     // the line in plain words, once a saying was looked for
	begins    beginnings // of the words of saying
	fills     answer     // whether a battery is being filled
	parts     answer     // whether the weights of a boat's parts are listed
	kinds     map[read.Kind]bool
}

// answer is what is known of a question about the line that is costly to ask.
type answer int

const (
	unknown answer = iota
	no
	yes
)

// set is a set of entries of the word table, a bit for each.
type set []uint64

// newSet makes a set for a row. It is cut from room for many: the rows hold
// hundreds, and one by one they would take longer at every start.
func newSet() set {
	n := setSize()
	if len(setRoom) < n {
		setRoom = make([]uint64, 128*n)
	}
	s := set(setRoom[:n:n])
	setRoom = setRoom[n:]
	return s
}

var setRoom []uint64

func setSize() int { return (words.Count() + 63) / 64 }

// of makes a set from plain names; an unknown name is a slip of the program and
// is caught by the tests, which read unknownNames.
func of(names ...string) set {
	s := newSet()
	for _, n := range names {
		id := words.Of(n)
		if id == words.None {
			unknownNames = append(unknownNames, n)
			continue
		}
		s.add(id)
	}
	return s
}

// unknownNames collects names in rules that are in no table.
var unknownNames []string

func (s set) add(id words.ID) { s[id>>6] |= 1 << (id & 63) }

func (s set) holds(id words.ID) bool {
	return id >= 0 && int(id>>6) < len(s) && s[id>>6]&(1<<(id&63)) != 0
}

func (s set) with(others ...set) set {
	out := newSet()
	copy(out, s)
	for _, o := range others {
		for i, bits := range o {
			out[i] |= bits
		}
	}
	return out
}

// kinds makes the set of all entries of a kind.
func kinds(ks ...words.Kind) set {
	s := newSet()
	for id := range words.ID(words.Count()) {
		if slices.Contains(ks, id.Kind()) {
			s.add(id)
		}
	}
	return s
}

// mentioned is the entries that occur in a line.
type mentioned []bool

func (m mentioned) holds(id words.ID) bool { return id >= 0 && int(id) < len(m) && m[id] }

var fillers = map[string]bool{
	"is": true, "of": true, "a": true, "an": true, "the": true, "about": true, "bout": true, "approx": true, "around": true,
	"roughly": true, "are": true, "its": true, "it": true, "was": true, "my": true, "our": true, "be": true, "like": true,
	"maybe": true, "say": true, "just": true, "only": true, "thats": true, "that": true, "at": true, "s": true, "im": true,
	"right": true, "some": true, "good": true, "bit": true, "probably": true, "almost": true, "nearly": true, "his": true,
	"her": true, "their": true, "this": true, "usually": true, "mostly": true, "in": true, "on": true, "down": true, "from": true,
	"to": true, "for": true, "up": true, "were": true, "big": true, "little": true, "old": true, "so": true, "comes": true, "by": true,
}

// measureCue is the entry that a measure stands for when it is a cue for others.
func measureCue(m read.Measure) words.ID {
	switch {
	case m.As == "horsepower":
		return idHorsepower
	case m.As != "":
		return words.None
	}
	switch m.Kind {
	case read.Charge:
		return idAmpHour
	case read.Group:
		return idGroup
	case read.Gauge:
		return idGauge
	case read.Money:
		return idBudget
	}
	return words.None
}

// newLine cuts a reading into terms.
func newLine(r read.Reading, c card.Card) *line {
	l := &line{r: r, before: c, used: make([]bool, len(r.Measures)), reason: make([]string, len(r.Measures)), at: make([]int, len(r.Measures))}
	l.has, l.hasBits = make(mentioned, words.Count()), make(set, setSize())
	l.crewTo = -1
	lower := lowerASCII(r.Text)
	raw := make([]term, 0, len(r.Text)/4+4)
	pos := 0
	for m := range r.Measures {
		raw = cut(raw, lower, pos, r.Measures[m].Start)
		raw = append(raw, term{start: r.Measures[m].Start, end: r.Measures[m].End, measure: m, id: measureCue(r.Measures[m])})
		pos = r.Measures[m].End
		if metricUnit[r.Measures[m].Spoken] {
			l.metric = true
		}
	}
	raw = cut(raw, lower, pos, len(r.Text))
	l.join(raw, lower)
	l.questionLabels()
	l.toldMetric()
	for i := range l.terms {
		if l.terms[i].measure >= 0 {
			l.at[l.terms[i].measure] = i
		}
		if id := l.terms[i].id; id >= 0 {
			l.has[id] = true
			l.hasBits.add(id)
		}
	}
	l.findNegated()
	return l
}

// wavesSaid are labels as well where the speaker asks and answers: "chop? 1 ft".
var wavesSaid = of("wave", "choppy water")

// questionLabels takes the question mark of "wind? usually 5 to 10" for a colon:
// a lone word about a number that the speaker asks and answers.
func (l *line) questionLabels() {
	for i := range l.terms {
		if l.terms[i].mark != '?' {
			continue
		}
		l.asksMark = true
		alone := i == 1 || i >= 2 && l.terms[i-2].mark != 0
		if alone && i+1 < len(l.terms) && (labels.holds(l.terms[i-1].id) || wavesSaid.holds(l.terms[i-1].id)) && !(l.terms[i-1].id == idShaft && l.heightFollows(i+1)) {
			l.terms[i].mark = ':'
		}
	}
}

// heightFollows tells that what stands behind "shaft?" is a deck's height: "shaft?
// 22 inch deck".
func (l *line) heightFollows(i int) bool {
	for k := i; k < len(l.terms) && k < i+6; k++ {
		if mountings.holds(l.terms[k].id) || l.terms[k].id == idWaterline {
			return true
		}
	}
	return false
}

// toldMetric hears "all kilos" and "metric" said of numbers without units.
func (l *line) toldMetric() {
	for i := range l.terms {
		switch l.terms[i].text {
		case "kilos", "kilo", "kgs", "kg", "metric":
			l.metric = true
		}
	}
}

var metricUnit = map[string]bool{"m": true, "cm": true, "mm": true, "kg": true, "m/s": true, "km/h": true, "kph": true, "l": true, "L": true, "degC": true, "C": true, "km": true, "N": true}

// cut appends the words and marks between two bytes.
func cut(out []term, text string, from, to int) []term {
	i := from
	for i < to {
		c := text[i]
		switch {
		case letter(c):
			j := i
			poss := false
			for j < to && (letter(text[j]) || text[j] == '\'' || strings.HasPrefix(text[j:to], "’")) {
				if text[j] >= 0x80 && strings.HasPrefix(text[j:to], "’") {
					j += 3
				} else {
					j++
				}
			}
			w := text[i:j]
			if k := strings.IndexAny(w, "'’"); k >= 0 {
				poss = strings.HasSuffix(w, "'s") || strings.HasSuffix(w, "’s")
				w = strings.NewReplacer("'", "", "’", "").Replace(w)
			}
			if w == "" {
				i = j
				continue
			}
			out = append(out, term{start: i, end: j, text: w, id: words.None, measure: -1, possessive: poss, filler: fillers[w]})
			i = j
		case c == ':' || c == '=':
			out = append(out, term{start: i, end: i + 1, id: words.None, measure: -1, mark: ':'})
			i++
		case c == ',' || c == ';' || c == '(' || c == ')':
			out = append(out, term{start: i, end: i + 1, id: words.None, measure: -1, mark: ','})
			i++
		case c == '.' || c == '!' || c == '\n':
			out = append(out, term{start: i, end: i + 1, id: words.None, measure: -1, mark: '.'})
			i++
		case c == '?':
			out = append(out, term{start: i, end: i + 1, id: words.None, measure: -1, mark: '?'})
			i++
		case c == '+' || c == '&':
			w := "and"
			if c == '+' {
				w = "plus"
			}
			out = append(out, term{start: i, end: i + 1, text: w, id: words.None, measure: -1})
			i++
		case c == '-' && (i == 0 || text[i-1] == ' ') && i+1 < len(text) && text[i+1] == ' ',
			strings.HasPrefix(text[i:to], "—"), strings.HasPrefix(text[i:to], "–"):
			out = append(out, term{start: i, end: i + 1, id: words.None, measure: -1, mark: ','})
			i++
			for i < to && text[i]&0xC0 == 0x80 {
				i++
			}
		default:
			i++
		}
	}
	return out
}

func letter(c byte) bool { return c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c >= 0x80 }

// lowerASCII lowers the letters a to z and leaves every byte where it is.
func lowerASCII(s string) string {
	for i := 0; i < len(s); i++ {
		if s[i] >= 'A' && s[i] <= 'Z' {
			b := []byte(s)
			for ; i < len(b); i++ {
				if b[i] >= 'A' && b[i] <= 'Z' {
					b[i] += 'a' - 'A'
				}
			}
			return string(b)
		}
	}
	return s
}

// maxPhrase is the longest phrase of the word table that is looked for.
const maxPhrase = 7

// join merges phrases of the word table into one term each and puts misspelt
// words of the trade right. A small bare number may be part of a phrase ("one
// way", "5 speed"): then it is no number about the boat.
func (l *line) join(raw []term, lower string) {
	l.terms = make([]term, 0, len(raw))
	var ws [maxPhrase]string
	for i := 0; i < len(raw); {
		n := 0
		for k := i; k < len(raw) && n < maxPhrase; k++ {
			w := raw[k].text
			if raw[k].measure >= 0 && raw[k].start < raw[k].end {
				m := l.r.Measures[raw[k].measure]
				if m.End-m.Start > 5 || k > i && m.Kind != read.Number {
					break
				}
				w = lower[m.Start:m.End]
			}
			if w == "" {
				break
			}
			ws[n] = w
			n++
		}
		id, took := words.None, 0
		if n > 0 {
			id, took = words.Match(ws[:n])
		}
		if raw[i].measure >= 0 {
			whole := took == 1 && l.r.Measures[raw[i].measure].Kind != read.Number && id != words.None && id.Kind() == words.Feature
			if took < 2 && !whole {
				l.terms = append(l.terms, raw[i])
				i++
				continue
			}
		}
		if took == 0 {
			t := raw[i]
			if t.text != "" {
				if w, ok := words.Correct(t.text); ok {
					ws[0] = w
					if id, took = words.Match(ws[:n]); took > 0 {
						l.corrected = append(l.corrected, Correction{Said: l.r.Text[t.start:t.end], Word: w})
					}
				}
			}
		}
		if took == 0 {
			l.terms = append(l.terms, raw[i])
			i++
			continue
		}
		t := term{start: raw[i].start, end: raw[i+took-1].end, text: lower[raw[i].start:raw[i+took-1].end], id: id, measure: -1,
			possessive: raw[i+took-1].possessive}
		if took == 1 {
			t.text = raw[i].text
			if t.text == "" {
				t.text = lower[t.start:t.end]
			}
		}
		for k := i; k < i+took; k++ {
			if m := raw[k].measure; m >= 0 {
				l.used[m] = true
				l.at[m] = len(l.terms)
			}
		}
		l.terms = append(l.terms, t)
		i += took
	}
}

// id returns the entry of a term, None outside the line.
func (l *line) id(i int) words.ID {
	if i < 0 || i >= len(l.terms) {
		return words.None
	}
	return l.terms[i].id
}

// text returns the word of a term, "" outside the line.
func (l *line) text(i int) string {
	if i < 0 || i >= len(l.terms) {
		return ""
	}
	return l.terms[i].text
}

// near looks from a term in one direction (+1 or -1) for an entry of the set and
// gives its distance and place. Every word costs one, fillers nothing; a pause,
// a further number and a joining word cost more, and the end of a sentence is
// never passed.
func (l *line) near(from, dir int, s set, reach int) (dist, place int, ok bool) {
	cost := 0
	for i := from + dir; i >= 0 && i < len(l.terms) && cost <= reach; i += dir {
		t := &l.terms[i]
		if t.mark == '.' || t.mark == '?' {
			return 0, 0, false
		}
		if s.holds(t.id) {
			return cost, i, true
		}
		cost += stepCost(t)
	}
	return 0, 0, false
}

func stepCost(t *term) int {
	switch {
	case t.mark == ',':
		return 3
	case t.mark == ':':
		return 0
	case t.measure >= 0:
		return 3
	case t.id == idAnd || t.id == idWith:
		return 2
	case t.filler:
		return 0
	}
	return 1
}

// any tells whether an entry of the set occurs in the line.
func (l *line) any(s set) bool {
	for i, bits := range s {
		if bits&l.hasBits[i] != 0 {
			return true
		}
	}
	return false
}

// anyOf tells whether an entry of these plain names occurs in the line.
func (l *line) anyOf(names ...string) bool {
	for _, n := range names {
		if l.has.holds(words.Of(n)) {
			return true
		}
	}
	return false
}

// sentence is the first term of the sentence in which a term stands.
func (l *line) sentence(i int) int {
	for k := i - 1; k >= 0 && i-k < 60; k-- {
		if m := l.terms[k].mark; m == '.' || m == '?' {
			return k + 1
		}
	}
	if i < 60 {
		return 0
	}
	return i - 59
}

func (l *line) stopBetween(a, b int) bool {
	if a > b {
		a, b = b, a
	}
	for k := a; k <= b; k++ {
		if m := l.terms[k].mark; m == '.' || m == '?' {
			return true
		}
	}
	return false
}

// skipFillers walks over fillers and gives the first other term.
func (l *line) skipFillers(i, dir int) int {
	for i >= 0 && i < len(l.terms) && l.terms[i].filler {
		i += dir
	}
	return i
}

func (l *line) articleBefore(i int) bool {
	switch l.text(i - 1) {
	case "a", "an", "the":
		return true
	}
	return false
}

func (l *line) hasMeasureNear(i int) bool {
	for k := i - 2; k <= i+2; k++ {
		if k >= 0 && k < len(l.terms) && l.terms[k].measure >= 0 {
			return true
		}
	}
	return false
}

// anyText tells that one of these words occurs in the line.
func (l *line) anyText(ws ...string) bool {
	for i := range l.terms {
		for _, w := range ws {
			if l.terms[i].text == w {
				return true
			}
		}
	}
	return false
}

func (l *line) hasText(w string) bool {
	for i := range l.terms {
		if l.terms[i].text == w {
			return true
		}
	}
	return false
}

// subject looks for one of the set in the stretch before a measure.
func (l *line) subject(m int, s set) bool {
	for i := l.at[m] - 1; i >= 0 && i >= l.at[m]-6; i-- {
		if l.terms[i].mark != 0 {
			return false
		}
		if s.holds(l.terms[i].id) {
			return true
		}
	}
	return false
}

// near2 tells that an entry of the set stands within two words behind a term.
func (l *line) near2(i int, s set) bool {
	_, _, ok := l.near(i, 1, s, 2)
	return ok
}

// segment is the first term of the stretch between pauses in which a term
// stands.
func (l *line) segment(i int) int {
	for n := 0; n < 40 && i > 0 && l.terms[i-1].mark == 0; n++ {
		i--
	}
	return i
}
