package drill

import (
	"slices"
	"strings"

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

// An askRow is a way of asking for a slot: every word of one of its lines must
// be said, a bar parting those that will do.
type askRow struct {
	slot  string
	asks  []string
	never string // a question that holds one of these is about something else
}

// askRows are tried in order, the narrower before the wider.
var askRows = []askRow{
	{"temperature.air", []string{"cold|temperature|freeze|freezes|freezing|frost|degrees|heated"}, ""},
	{"wire.run", []string{"far|long|length|distance|feet|run wire|cable|wiring", "far|long|distance|where|location|sit|live battery|batteries", "wire|cable run|long|length|far"}, ""},
	{"charge.hours", []string{"how|when|long|hours|time|overnight|often charge|charging|charger|plugged|recharge", "between trips|outings", "hours|time|long trips"}, ""},
	{"load.plate", []string{"capacity plate", "plate", "sticker"}, ""},
	{"load.engine", []string{"engine|outboard|motor weigh|weighs|weight|heavy", "what|which|size|big|have|kind outboard|engine|kicker", "horsepower|hp"}, ""},
	{"fuel.volume", []string{"fuel|gas|gasoline|tank|gallons"}, ""},
	{"load.gear", []string{"gear|tackle|stuff|cooler|equipment|anchor weigh|weighs|weight|heavy|how|what|much|bring|carry|lot|lots|got", "what|anything else aboard|carry|bring|load"}, ""},
	{"load.dry", []string{"hull|bare|empty|dry weigh|weighs|weight|heavy", "brochure"}, ""},
	{"people.each", []string{"heavy|weigh|weight|big people|guys|man|person|crew|friends|buddies"}, ""},
	{"people.count", []string{"how|many people|aboard|guys|crew|anglers|persons|passengers|friends|buddies|heads|souls", "who|anybody|anyone|someone aboard|with|along|fish|fishes|comes|else|you", "many you|on|go|of", "alone|solo", "by yourself", "crew|party size|big"}, "hours hour battery batteries amp amps volts gallons days times"},
	{"load.total", []string{"weigh|weighs|weight|heavy|loaded|pounds|scale|load"}, ""},
	{"mount.kind", []string{"folding|scissor|pivot|arm|kind|type mount"}, ""},
	{"mount.height", []string{"high|height|tall|talls|highs bow|deck|mount|mounting|transom|gunwale|gunnel|sit|sits|front|surface|it|side|boat|plate", "far|inches|distance|measure|measured|drop bow|deck|mount|mounting|transom|gunwale|nose water|waterline|surface", "bow|deck|transom|mount|mounting water|waterline off|above|over|to|from", "height", "freeboard"}, ""},
	{"chop.height", []string{"wave|waves|chop|choppy|rough|swell|swells"}, ""},
	{"current.speed", []string{"current|flow|stream|tide|flowing|moving", "fast water|river"}, ""},
	{"wind.speed", []string{"wind|windy|breeze|breezy|blow|blows|gust|gusts|sheltered|exposed"}, ""},
	{"water.weeds", []string{"weed|weeds|weedy|grass|pads|vegetation|moss|growth"}, ""},
	{"battery.capacity", []string{"amp|ah|capacity|label|rating|group|big hour|hours|ah|battery|batteries|they|label|size|big"}, ""},
	{"use.hours", []string{"long|hours|time fish|fishing|out|day|stay|trip|run|water|usual|last", "how hours", "all day", "half day"}, ""},
	{"use.style", []string{"how|what|style|way fish|fishing", "cast|casting|troll|trolling|jig|jigging|drift|drifting|guide", "technique", "style"}, "where lake lakes river water deck motor batteries"},
	{"water.kind", []string{"salt|fresh|brackish|saltwater|freshwater|tidal|ocean|sea", "where|which|what fish|fishing|use|run|launch|boat|go|lake|water|river|used", "kind|type|sort water|lake"}, ""},
	{"water.depth", []string{"deep|depth|shallow"}, ""},
	{"want.position-hold", []string{"hold|stay|anchor spot|position|place|put|itself", "gps"}, ""},
	{"want.sonar-2d", []string{"sonar|transducer|fishfinder|finder|graph|display|screen|electronics|imaging"}, ""},
	{"want.remote", []string{"remote|fob"}, ""},
	{"mount.place", []string{"front|bow|casting deck|platform|plate|flat|room|space|mount", "deck", "bow|transom or|mount|have|is|there", "where mount|mounted|put|go|goes|want|attach|clamp", "transom"}, ""},
	{"battery.chemistry", []string{"lithium|agm|flooded|lead|gel|chemistry", "kind|type|what|which|sort battery|batteries"}, ""},
	{"battery.count", []string{"how|many battery|batteries"}, ""},
	{"motor.thrust", []string{"thrust", "what|which|big|size motor", "pounds motor"}, ""},
	{"motor.voltage", []string{"volt|volts|voltage"}, ""},
	{"use.throttle", []string{"throttle|hard|dial"}, ""},
	{"money.budget", []string{"budget|spend|money|price|afford|cost"}, ""},
	{"boat.material", []string{"aluminum|fiberglass|glass|wood|made|material"}, ""},
	{"boat.hull", []string{"kind|type|sort|what|style boat|hull"}, ""},
	{"boat.beam", []string{"wide|beam|width"}, ""},
	{"boat.length", []string{"long|longs|length|feet|foot|size|big boat|hull|she|it"}, ""},
}

// insteadRows give what a customer can answer with when the scenario holds the
// matter under another slot.
var insteadRows = map[string][]string{
	"load.total":       {"load.total", "load.dry"},
	"load.dry":         {"load.dry", "load.total"},
	"load.engine":      {"load.engine", "load.total"},
	"load.gear":        {"load.gear", "load.total"},
	"fuel.volume":      {"fuel.volume", "load.total"},
	"people.count":     {"people.count", "load.total"},
	"battery.count":    {"battery.count"},
	"motor.voltage":    {"motor.thrust"},
	"battery.capacity": {"battery.capacity"},
}

// startWords begin a question that lacks its mark.
var startWords = map[string]bool{"how": true, "hows": true, "what": true, "whats": true, "where": true, "wheres": true, "when": true, "which": true, "who": true, "whos": true, "why": true,
	"is": true, "are": true, "do": true, "does": true, "did": true, "can": true, "could": true, "will": true, "would": true, "have": true, "has": true, "any": true, "tell": true, "ever": true}

// sentences cuts a line into sentences, each with whether it asks.
func sentences(line string) (out []string, asks []bool) {
	start := 0
	add := func(end int, question bool) {
		t := strings.TrimSpace(line[start:end])
		if ws := words.Split(t); len(ws) > 0 {
			lead := ws[0]
			for _, w := range ws {
				if !politeWords[w] {
					lead = w
					break
				}
			}
			out, asks = append(out, t), append(asks, question || startWords[lead])
		}
	}
	for i := 0; i < len(line); i++ {
		switch c := line[i]; {
		case c == '?' || c == '!' || c == ';' || c == '\n',
			c == '.' && (i+1 == len(line) || line[i+1] == ' '):
			add(i, c == '?')
			start = i + 1
		}
	}
	add(len(line), false)
	return out, asks
}

// clauses parts a question where another one begins: "how high is the bow, and
// how windy does it get".
func clauses(question string) []string {
	var out []string
	start := 0
	for i := 1; i < len(question); i++ {
		if question[i] != ' ' && question[i] != ',' {
			continue
		}
		rest := words.Split(question[i:])
		if len(rest) < 3 {
			break
		}
		lead := rest[0]
		joined := question[i] == ','
		if lead == "and" || lead == "or" || lead == "also" {
			lead, joined = rest[1], true
		}
		if joined && clauseWords[lead] {
			out = append(out, question[start:i])
			start = i + 1
			i += len(lead)
		}
	}
	return append(out, question[start:])
}

var clauseWords = set("how", "what", "whats", "where", "which", "who", "when", "is", "are", "do", "does", "will", "can", "any")

// politeWords come before a question and make it no less of one.
var politeWords = map[string]bool{"and": true, "so": true, "ok": true, "okay": true, "well": true, "please": true, "then": true, "now": true, "hi": true, "hello": true, "morning": true, "good": true, "alright": true, "right": true, "but": true, "also": true, "um": true, "sir": true, "maam": true, "thanks": true}

// corrected are the words of a text, slips of spelling mended.
func corrected(text string) []string {
	out := words.Split(text)
	for i, w := range out {
		if words.Common(w) {
			continue
		}
		if c, ok := words.Correct(w); ok {
			out[i] = c
		}
	}
	return out
}

// fits reports whether every part of an askRow's line is said.
func fits(line string, said []string) bool {
	for part := range strings.FieldsSeq(line) {
		ok := false
		for w := range strings.SplitSeq(part, "|") {
			ok = ok || slices.Contains(said, w)
		}
		if !ok {
			return false
		}
	}
	return true
}

// mostAsked is how many things one question may ask for.
const mostAsked = 3

// asksFor lists the slots that a question is about, the likeliest first.
func asksFor(question string) []string {
	said := corrected(question)
	var out []string
	covered := map[string]bool{}
	for _, r := range askRows {
		if slices.ContainsFunc(strings.Fields(r.never), func(w string) bool { return slices.Contains(said, w) }) {
			continue
		}
		for _, line := range r.asks {
			if !fits(line, said) {
				continue
			}
			// A wider row that rests only on words already taken is no second
			// question: "how high is the bow off the water" is not about the water.
			fresh := false
			for part := range strings.FieldsSeq(line) {
				for w := range strings.SplitSeq(part, "|") {
					fresh = fresh || slices.Contains(said, w) && !covered[w] && tellingWord[w]
				}
			}
			if len(out) > 0 && !fresh {
				continue
			}
			for part := range strings.FieldsSeq(line) {
				for w := range strings.SplitSeq(part, "|") {
					covered[w] = covered[w] || slices.Contains(said, w)
				}
			}
			// The nouns of a question belong to the first row that uses them.
			if r.slot == "mount.height" {
				for _, w := range []string{"water", "waterline", "deck", "bow", "transom", "mount", "mounting"} {
					covered[w] = true
				}
			}
			if r.slot == "wire.run" {
				for _, w := range []string{"bow", "deck", "battery", "batteries", "motor"} {
					covered[w] = true
				}
			}
			out = append(out, r.slot)
			break
		}
		if len(out) == mostAsked {
			break
		}
	}
	return out
}

// tellingWord are the words on which a second question in the same sentence can
// rest.
var tellingWord = set("wind", "windy", "breeze", "current", "waves", "wave", "chop", "weeds", "weed", "salt", "fresh", "brackish", "saltwater", "freshwater", "people", "aboard", "crew",
	"gear", "tackle", "fuel", "gas", "outboard", "engine", "hours", "charge", "charger", "batteries", "battery", "lithium", "agm", "wire", "deck", "sonar", "fishfinder", "remote", "gps", "weigh", "weight",
	"high", "height", "cast", "casting", "troll", "trolling", "jig", "jigging", "drift", "drifting", "budget", "tide", "depth", "deep", "plate", "hold")

func set(list ...string) map[string]bool {
	out := map[string]bool{}
	for _, w := range list {
		out[w] = true
	}
	return out
}

// checksFor lists the checks of a motor that a question or an order is about.
func checksFor(text string) []string {
	said := corrected(text)
	for _, r := range checkRows {
		for _, line := range r.asks {
			if fits(line, said) {
				return []string{r.id}
			}
		}
	}
	return nil
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
	for _, f := range bare(r, topic, out) {
		// A refusal ("not off one battery") names no pick that stands already.
		if _, named := old.Get(f.Slot); named && refusing(sentence) {
			continue
		}
		h.card, took = h.card.With(f), true
	}
	if f, ok := breakerOf(r); ok {
		h.breaker, took = &f, true
	} else if f, ok := bareAmps(r); ok && slices.Contains(topic.items, "charger") && !slices.Contains(out.Changed, "charger.current") {
		f.Slot = "charger.current"
		h.card, took = h.card.With(f), true
	} else if ok && topic.id == Wiring {
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
	low   float64 // of the number as spoken
	high  float64
	si    func(m read.Measure, x float64) float64 // from the number as spoken, or in SI where it had a unit
	unit  string
}

var bareRows = []bareRow{
	{"thrust", "motor.thrust", []read.Kind{read.Mass, read.Number, read.Force}, 20, 150, func(m read.Measure, x float64) float64 {
		switch m.Kind {
		case read.Force:
			return x
		case read.Mass:
			return x * unit.NewtonsPerPoundForce / unit.KilogramsPerPound
		}
		return unit.PoundForce(x).Newtons()
	}, "N"},
	{"shaft", "motor.shaft", []read.Kind{read.Length, read.Number}, 20, 250, func(m read.Measure, x float64) float64 {
		if m.Kind == read.Length {
			return x
		}
		return unit.Inches(x).Metres()
	}, "m"},
	{"load", "load.total", []read.Kind{read.Mass, read.Number}, 60, 9000, func(m read.Measure, x float64) float64 {
		if m.Kind == read.Mass {
			return x
		}
		return unit.Pounds(x).Kilograms()
	}, "kg"},
	{"gauge", "wire.gauge", []read.Kind{read.Gauge}, -4, 20, func(_ read.Measure, x float64) float64 { return x }, "AWG"},
}

// bare takes the measures that found no place for the first item of the topic
// that they can be.
func bare(r read.Reading, topic *topicRow, out meaning.Outcome) []card.Fact {
	var facts []card.Fact
	for _, row := range bareRows {
		if !slices.Contains(topic.items, row.item) || slices.Contains(out.Changed, row.slot) || slices.ContainsFunc(facts, func(f card.Fact) bool { return f.Slot == row.slot }) {
			continue
		}
		for _, m := range r.Measures {
			if m.As != "" || !slices.Contains(row.kinds, m.Kind) || m.Bare < row.low || m.Bare > row.high || placed(m, topic, out) {
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

// refuses are the words of which a refusal holds one.
var refuses = []string{"no", "not", "wont", "cant", "cannot", "dont", "never", "doesnt", "isnt", "instead", "rather", "needs", "need", "must", "too", "only", "sorry", "impossible", "forget", "but", "against", "unsafe", "dangerous", "wouldnt", "shouldnt", "nope", "leave", "bad idea", "without", "skip that", "ruin", "ruins"}

// refused reports whether a sentence turns the wish down.
func refused(w *wishRow, sentences []string) bool {
	for _, s := range sentences {
		said := corrected(s)
		if says(said, refuses) && (says(said, w.about) || says(said, []string{"wont work", "cant be done", "not possible", "impossible", "cant do that", "dont do that", "no way", "bad idea"})) {
			return true
		}
	}
	return false
}

// A warnRow says by which words a caution of the core counts as given.
type warnRow struct {
	id      string
	label   string
	note    string
	general bool // of any boat on such water, not of the thing that is sold
	words   []string
}

var warnRows = []warnRow{
	{"overloaded", "over the capacity plate", "capacity-plate", false, []string{"plate", "capacity", "overloaded", "overload", "too heavy"}},
	{"capacity", "all of it counts against the plate", "capacity-plate", false, []string{"plate", "capacity"}},
	{"people-in-the-water", "position hold is no anchor: nobody in the water, nobody away from the boat", "people-in-the-water", false, []string{"swim", "swimmers", "swimming", "anchor", "unattended", "in the water", "people"}},
	{"cranking-battery", "no cranking battery", "bank-chemistry", false, []string{"cranking", "starting", "deep cycle"}},
	{"lithium-cold", "no charging of lithium below freezing", "charging-in-the-cold", false, []string{"freezing", "frost", "cold", "below zero", "warm"}},
	{"charging-gas", "charging gives off gas: vent it, no sparks", "charging-safely", false, []string{"gas", "hydrogen", "vent", "ventilate", "ventilation", "spark", "sparks", "flame", "flames", "acid", "open the lid", "fumes", "air"}},
	{"lithium-protection", "the battery's own protection must carry the motor's current", "lithium-banks", false, []string{"protection", "bms", "cut off", "cuts off", "cutoff", "shuts off", "continuous", "without warning"}},
	{"mixing-batteries", "batteries in series: same kind, size and age", "mixing-batteries", false, []string{"same", "mix", "mixing", "identical", "matched", "alike", "tap"}},
	{"breaker", "the breaker sits at the battery, and is opened before hands go near the prop", "breaker-place", false, []string{"at the battery", "near the battery", "close to the battery", "by the battery", "next to the battery", "inches", "open it", "open the breaker", "before you touch", "at battery"}},
	{"salt", "rinse it, watch the anode, sleeve the bolts", "anodes-and-corrosion", true, []string{"rinse", "hose", "flush", "anode", "zinc", "sleeve", "wash"}},
	{"weeds", "weeds wrap the prop: stop and open the breaker first", "care-prop-and-line", true, []string{"weed", "weeds", "prop", "wrap", "wraps", "clear", "line"}},
	{"canoe-side", "not on the side of a canoe", "mount-on-a-kayak", false, []string{"side", "tip", "tips", "capsize", "stern", "low"}},
	{"electric-only", "local rules for electric-only water", "rules-and-licences", true, []string{"rules", "local", "law", "registered", "register"}},
	{"registration", "a motor may make it a numbered vessel", "rules-and-licences", true, []string{"register", "registration", "registered", "numbered", "number", "numbers", "rules", "law"}},
	{"open-stern", "held stern-to, waves come in over the transom", "chop-and-waves", false, []string{"stern", "waves", "bow to", "swamp", "ships water", "back"}},
	{"bow-heavy", "weight in the bow: batteries aft", "trim-and-bow-weight", true, []string{"aft", "back", "bow heavy", "stern", "trim", "rear", "nose", "middle", "bow down"}},
	{"short-shaft", "a short shaft draws air", "ventilation-and-cavitation", false, []string{"air", "ventilate", "ventilates", "cavitate", "short"}},
	{"strong-current", "no anchor and no way home in this stream", "hold-in-current", false, []string{"anchor", "engine", "outboard", "home", "strong", "current"}},
	{"cut-off-switch", "from 115 lb an engine cut-off switch may be required", "rules-and-licences", false, []string{"cut off switch", "cutoff", "kill switch", "lanyard", "switch"}},
	{"cold-water", "cold water kills: wear the life jacket", "cold-batteries", true, []string{"life jacket", "jacket", "vest", "cold"}},
	{"prop", "open the breaker before hands go near prop, plug or terminals", "fault-breaker-trips", false, []string{"breaker", "disconnect", "unplug", "open", "power off", "off first"}},
}

func warnOf(id string) *warnRow {
	for i := range warnRows {
		if warnRows[i].id == id {
			return &warnRows[i]
		}
	}
	return nil
}
