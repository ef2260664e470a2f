package drill

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/meaning"
	"heronlake.example/ask/reasoner/read"
)

// heard is what a trainee has said to a customer so far.
type heard struct {
	card     card.Card // the picks, bound as a customer's talk is
	breaker  *card.Fact
	asked    []string // slots and checks asked about
	picks    []string // the words of every pick, for those that no slot holds
	outputs  int      // of the charger
	sentence []string // every sentence, for cautions and wishes
}

// take takes the picks of a sentence down and reports whether there were any.
//
// A current that no word gives a place is a breaker's, or a charger's where one
// is asked for.
func (h *heard) take(sentence string, topic *topicRow) bool {
	r := read.Read(sentence)
	before := len(h.card.Facts)
	out := meaning.Bind(r, h.card)
	if out.Command != meaning.None {
		out = meaning.Bind(r, card.Card{})
	}
	took := false
	for _, slot := range out.Changed {
		if pickSlots[slot] {
			took = true
		}
	}
	old := h.card
	if took || len(out.Card.Facts) > before {
		h.card = out.Card
	}
	// A refusal ("not off one battery") takes back no pick that stands.
	if words := corrected(sentence); says(words, []string{"no", "not", "never", "cannot", "cant", "wont", "dont"}) && !says(words, []string{"but", "instead", "take", "make it", "go", "rather"}) {
		for _, slot := range out.Changed {
			if f, named := old.Get(slot); named && pickSlots[slot] {
				h.card = h.card.With(f)
			}
		}
	}
	if f, ok := h.besideGauge(r, out, old); ok {
		h.breaker, took = &f, true
	}
	if f, ok := areaOf(sentence); ok {
		h.card, took = h.card.With(f), true
	}
	for _, f := range bare(r, topic, out) {
		// A refusal ("not off one battery") names no pick that stands already.
		if _, named := old.Get(f.Slot); named && refusing(sentence) {
			continue
		}
		h.card, took = h.card.With(f), true
	}
	if f, ok := totalOf(r); ok && slices.Contains(topic.items, "load") {
		h.card, took = h.card.Without("load.dry").With(f), true
	}
	if f, ok := breakerOf(r); ok {
		h.breaker, took = &f, true
	} else if f, ok := bareAmps(r); ok && slices.Contains(topic.items, "charger") && !slices.Contains(out.Changed, "charger.current") {
		f.Slot = "charger.current"
		h.card, took = h.card.With(f), true
	} else if ok && slices.Contains(topic.items, "breaker") && (topic.id == Wiring || gauged(r)) {
		h.breaker, took = &f, true
	}
	if n := outputsOf(corrected(sentence)); n > 0 {
		h.outputs, took = n, true
	}
	return took
}

// pickSlots are the slots in which a pick can stand.
var pickSlots = set("motor.thrust", "motor.voltage", "motor.shaft", "motor.control", "motor.drive", "motor.speeds", "mount.place", "mount.kind",
	"battery.count", "battery.group", "battery.capacity", "battery.chemistry", "battery.voltage", "battery.layout", "wire.gauge", "charger.current",
	"want.remote", "want.position-hold", "want.sonar-2d", "want.sonar-down", "want.sonar-side", "load.total", "load.dry", "water.kind")

// breakerOf finds the current, or the bare number, beside the word breaker.
func breakerOf(r read.Reading) (card.Fact, bool) {
	best, at := -1, 1<<20
	for i, t := range r.Tokens {
		if id, n := words.Match([]string{t.Text}); n == 0 || id != words.Of("breaker") {
			continue
		}
		for j, u := range r.Tokens {
			if u.Measure < 0 {
				continue
			}
			m := r.Measures[u.Measure]
			dist := max(i-j, j-i)
			if j > i {
				dist++ // "a 60 amp breaker" before "the breaker, 6 gauge"
			}
			if (m.Kind == read.Current || m.Kind == read.Number && m.Bare >= 15) && dist < at && dist <= 5 {
				best, at = u.Measure, dist
			}
		}
	}
	if best < 0 {
		return card.Fact{}, false
	}
	m := r.Measures[best]
	f := card.Fact{Slot: "breaker.rating", Value: m.Value, Low: m.Low, High: m.High, Unit: "A", Said: strings.TrimSpace(m.Said)}
	return f, true
}

// gauged reports whether a wire gauge was said.
func gauged(r read.Reading) bool {
	return slices.ContainsFunc(r.Measures, func(m read.Measure) bool { return m.Kind == read.Gauge })
}

// sumWords come before what a sum comes to.
var sumWords = set("=", "so", "total", "totals", "make", "makes", "comes", "call", "altogether", "about", "around", "roughly", "say", "equals", "gives", "is")

// totalOf finds what a trainee's sum comes to: of several weights in a line the
// one behind the last word of summing up, else the largest, as no part is larger
// than the whole. Fewer than two weights are no sum.
func totalOf(r read.Reading) (card.Fact, bool) {
	best, said, weights := -1, false, 0
	for i, m := range r.Measures {
		if m.As != "" || m.Value == nil || m.Kind != read.Mass && (m.Kind != read.Number || *m.Value < leastLoad) {
			continue
		}
		weights++
		led := false
		for k := len(r.Tokens) - 1; k >= 0; k-- {
			if t := r.Tokens[k]; t.End <= m.Start && m.Start-t.End <= 12 && sumWords[t.Text] {
				led = true
			}
		}
		switch {
		case best >= 0 && said && !led:
		case best < 0 || led || pounds(m) > pounds(r.Measures[best]):
			best, said = i, said || led
		}
	}
	if weights < 2 {
		return card.Fact{}, false
	}
	m := r.Measures[best]
	kilograms := unit.Pounds(pounds(m)).Kilograms()
	return card.Fact{Slot: "load.total", Value: &kilograms, Unit: "kg", Said: strings.TrimSpace(m.Said), Row: "what the sum comes to"}, true
}

const leastLoad = 60 // of a bare number that may be a loaded weight

// pounds is a weight in pounds; a bare number is in pounds.
func pounds(m read.Measure) float64 {
	if m.Kind == read.Mass {
		return unit.Kilograms(*m.Value).Pounds()
	}
	return *m.Value
}

// areaPattern is a conductor by its area, as metric cable is sold.
var areaPattern = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`(?i)(\d+(?:[.,]\d+)?)\s*(?:mm2|mm²|mm\^2|sq\.? ?mm|square ?mm|square millimet(?:er|re)s?)`)
})

// areaOf takes a metric cable for the gauge that is nearest to it in copper. The
// area of a gauge is that of ASTM B258: 0.127 mm x 92^((36-n)/39) across.
func areaOf(sentence string) (card.Fact, bool) {
	found := areaPattern().FindStringSubmatch(sentence)
	if found == nil {
		return card.Fact{}, false
	}
	area, err := strconv.ParseFloat(strings.Replace(found[1], ",", ".", 1), 64)
	if err != nil || area < 0.5 || area > 150 {
		return card.Fact{}, false
	}
	across := math.Sqrt(area * 4 / math.Pi)
	n := 36 - 39*math.Log(across/0.127)/math.Log(92)
	best := soldGauges[0]
	for _, g := range soldGauges {
		if math.Abs(g-n) < math.Abs(best-n) {
			best = g
		}
	}
	return card.Fact{Slot: "wire.gauge", Value: &best, Unit: "AWG", Said: found[0], Row: "cable by its area"}, true
}

// soldGauges are the gauges of boat cable; 0 is 1/0.
var soldGauges = []float64{-3, -2, -1, 0, 1, 2, 4, 6, 8, 10, 12, 14, 16, 18}

// loneRow says what a bare number means once only some items are unnamed.
type loneRow struct {
	item      string
	low, high float64
	take      func(h *heard, x float64, said string)
}

var loneRows = []loneRow{
	{"gauge", 1, 18, func(h *heard, x float64, said string) { h.put("wire.gauge", x, "AWG", said) }},
	{"breaker", 20, 200, func(h *heard, x float64, said string) {
		h.breaker = &card.Fact{Slot: "breaker.rating", Value: &x, Unit: "A", Said: said}
	}},
	{"volts", 12, 48, func(h *heard, x float64, said string) {
		if math.Mod(x, 12) == 0 {
			h.put("motor.voltage", x, "V", said)
		}
	}},
	{"count", 1, 8, func(h *heard, x float64, said string) { h.put("battery.count", x, "1", said) }},
	{"capacity", 20, 400, func(h *heard, x float64, said string) { h.put("battery.capacity", x, "Ah", said) }},
	{"charger", 2, 60, func(h *heard, x float64, said string) { h.put("charger.current", x, "A", said) }},
	{"outputs", 1, 6, func(h *heard, x float64, said string) { h.outputs = int(x) }},
}

func (h *heard) put(slot string, x float64, u, said string) {
	h.card = h.card.With(card.Fact{Slot: slot, Value: &x, Unit: u, Said: said, Row: "what is left to name"})
}

// mostLone is how many items may be open for a bare number to be taken for one
// of them.
const mostLone = 2

// besideLone are the words that may stand beside such a number.
var besideLone = set("a", "an", "the", "with", "and", "in", "on", "it", "run", "of", "them", "just", "only", "say", "go", "i", "id", "i'd", "i'll", "ill", "use", "take", "then", "make", "that", "for", "so", "maybe", "about", "you", "need", "want", "is", "it's", "its", "should", "do", "would", "will", "fine", "thanks", "please")

// lone takes the bare numbers of a sentence that is little else for the items
// that are still open: after "24 volts", "two" is the batteries, and in a drill on
// wiring "6 with a 50" is wire and breaker.
//
// The old card gives back what such a number was taken for before.
func (h *heard) lone(sentence string, open []string, old card.Card) {
	r := read.Read(sentence)
	if len(open) == 0 || len(open) > mostLone || slices.ContainsFunc(r.Tokens, func(t read.Token) bool {
		return t.Measure < 0 && len(words.Split(t.Text)) > 0 && !besideLone[t.Text]
	}) {
		return
	}
	for _, m := range r.Measures {
		if m.Kind != read.Number || m.As != "" || m.Value == nil {
			continue
		}
		for _, r := range loneRows {
			i := slices.Index(open, r.item)
			if i < 0 || m.Bare < r.low || m.Bare > r.high {
				continue
			}
			for slot := range pickSlots {
				f, _ := h.card.Get(slot)
				if was, had := old.Get(slot); had && !same(f, was) && strings.Contains(f.Said, strings.TrimSpace(m.Said)) {
					h.card = h.card.With(was)
				}
			}
			r.take(h, m.Bare, strings.TrimSpace(m.Said))
			open = slices.Delete(slices.Clone(open), i, i+1)
			break
		}
	}
}

// besideGauge takes a bare number that stands beside a wire gauge, "6 gauge with a
// 50", for the breaker that it is, and gives back the thrust that was named
// before.
func (h *heard) besideGauge(r read.Reading, out meaning.Outcome, old card.Card) (card.Fact, bool) {
	f, ok := out.Card.Get("motor.thrust")
	if !ok || !f.Bare || !slices.Contains(out.Changed, "motor.thrust") ||
		!slices.ContainsFunc(r.Measures, func(m read.Measure) bool { return m.Kind == read.Gauge }) ||
		slices.ContainsFunc(r.Measures, func(m read.Measure) bool { return m.Kind == read.Voltage }) || f.Value == nil {
		return card.Fact{}, false
	}
	h.card = h.card.Without("motor.thrust")
	if was, ok := old.Get("motor.thrust"); ok {
		h.card = h.card.With(was)
	}
	amps := unit.Newtons(*f.Value).PoundForce()
	return card.Fact{Slot: "breaker.rating", Value: &amps, Unit: "A", Said: f.Said}, true
}

// A bareRow says what a number means that no word beside it tells: in a drill on
// thrust, "55" is the thrust.
type bareRow struct {
	item  string
	slot  string
	kinds []read.Kind
	low   float64 // in SI
	high  float64
	si    func(m read.Measure, x float64) float64 // from the number as spoken, or in SI where it had a unit
	unit  string
}

var bareRows = []bareRow{
	{"thrust", "motor.thrust", []read.Kind{read.Mass, read.Number, read.Force}, 85, 700, func(m read.Measure, x float64) float64 {
		switch m.Kind {
		case read.Force:
			return x
		case read.Mass:
			return x * unit.NewtonsPerPoundForce / unit.KilogramsPerPound
		}
		return unit.PoundForce(x).Newtons()
	}, "N"},
	{"shaft", "motor.shaft", []read.Kind{read.Length, read.Number}, 0.45, 2.5, func(m read.Measure, x float64) float64 {
		if m.Kind == read.Length {
			return x
		}
		if x > longestInches {
			return x / 100
		}
		return unit.Inches(x).Metres()
	}, "m"},
	{"load", "load.total", []read.Kind{read.Mass, read.Number}, 27, 4100, func(m read.Measure, x float64) float64 {
		if m.Kind == read.Mass {
			return x
		}
		return unit.Pounds(x).Kilograms()
	}, "kg"},
	{"gauge", "wire.gauge", []read.Kind{read.Gauge}, -4, 20, func(_ read.Measure, x float64) float64 { return x }, "AWG"},
}

// longestInches is the longest shaft in inches; a larger number without a unit is
// in centimetres.
const longestInches = 84

// bare takes the measures that found no place for the first item of the topic
// that they can be.
func bare(r read.Reading, topic *topicRow, out meaning.Outcome) []card.Fact {
	var facts []card.Fact
	for _, row := range bareRows {
		if !slices.Contains(topic.items, row.item) || slices.Contains(out.Changed, row.slot) || slices.ContainsFunc(facts, func(f card.Fact) bool { return f.Slot == row.slot }) {
			continue
		}
		for _, m := range r.Measures {
			if m.As != "" || !slices.Contains(row.kinds, m.Kind) || placed(m, topic, out) {
				continue
			}
			if m.Kind == read.Number && topic.id == Sale {
				continue // a bare number may be anything there
			}
			f := card.Fact{Slot: row.slot, Unit: row.unit, Said: strings.TrimSpace(m.Said), Row: "what is left to name"}
			convert := func(p *float64) *float64 {
				if p == nil {
					return nil
				}
				x := row.si(m, *p)
				return &x
			}
			f.Value, f.Low, f.High = convert(m.Value), convert(m.Low), convert(m.High)
			if s, ok := spanOf(f); !ok || s.low < row.low || s.high > row.high {
				continue
			}
			facts = append(facts, f)
			break
		}
	}
	if n := countSaid(corrected(r.Text)); n > 0 && slices.Contains(topic.items, "count") && !slices.Contains(out.Changed, "battery.count") {
		v := float64(n)
		facts = append(facts, card.Fact{Slot: "battery.count", Value: &v, Unit: "1", Said: numberWords[n] + " batteries", Row: "how many in words"})
	}
	return facts
}

// placed reports whether a fact was made of a measure.
func placed(m read.Measure, topic *topicRow, out meaning.Outcome) bool {
	said := strings.ToLower(strings.TrimSpace(m.Said))
	for _, slot := range out.Changed {
		if !pickSlots[slot] || strings.HasPrefix(slot, "load.") && !slices.Contains(topic.items, "load") {
			continue // "an 80 pounder" is no load here
		}
		for _, f := range out.Card.All(slot) {
			if strings.Contains(strings.ToLower(f.Said), said) {
				return true
			}
		}
	}
	return false
}

// countRows are ways to say how many batteries without a number.
var countRows = []struct {
	words []string
	count int
}{
	{[]string{"a single", "just the one", "only one", "the one battery", "one battery", "a battery", "single battery"}, 1},
	{[]string{"a pair", "pair of", "both"}, 2},
	{[]string{"a trio", "set of three"}, 3},
}

func countSaid(said []string) int {
	if says(said, []string{"not", "no", "never", "cannot", "cant", "wont", "dont"}) || !says(said, []string{"battery", "batteries", "agm", "lithium", "flooded", "group", "one", "pair"}) {
		return 0
	}
	for _, r := range countRows {
		if says(said, r.words) {
			return r.count
		}
	}
	return 0
}

// bareAmps is the only current of a line.
func bareAmps(r read.Reading) (card.Fact, bool) {
	var found []read.Measure
	for _, m := range r.Measures {
		if m.Kind == read.Current && m.As == "" {
			found = append(found, m)
		}
	}
	if len(found) != 1 {
		return card.Fact{}, false
	}
	m := found[0]
	return card.Fact{Value: m.Value, Low: m.Low, High: m.High, Unit: "A", Said: strings.TrimSpace(m.Said)}, true
}

// outputsOf reads how many outputs a charger is to have: "two-bank charger",
// "an output for each", "three outputs".
func outputsOf(said []string) int {
	if fits("each|every|per output|outputs|battery|batteries|bank|own", said) && says(said, []string{"output", "outputs", "bank charger", "banks"}) {
		return each
	}
	for i, w := range said {
		if n := countOf(w); n > 0 && i+1 < len(said) && (said[i+1] == "bank" || said[i+1] == "banks" || said[i+1] == "output" || said[i+1] == "outputs") {
			return n
		}
	}
	return 0
}

// each stands for one output for every battery, however many.
const each = 99

func countOf(w string) int {
	for i, n := range numberWords {
		if w == n || w == string(rune('0'+i)) {
			return i
		}
	}
	switch w {
	case "single", "a":
		return 1
	case "dual", "double", "twin":
		return 2
	case "triple":
		return 3
	}
	return 0
}

// says reports whether any of the words or phrases stands in the text.
func says(text []string, any []string) bool {
	for _, p := range any {
		if contains(text, words.Split(p)) {
			return true
		}
	}
	return false
}
