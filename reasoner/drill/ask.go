package drill

import (
	"slices"
	"strings"

	"heronlake.example/ask/kb/words"
)

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
	{"boat.hull", []string{"what|whats putting|going|goes|mounting|hanging it|this|that on|onto", "what|whats|which kind|sort|type|boat boat|hull|rig|have|got|run|running", "tell|describe about boat|hull|rig|her", "what|which boat|hull"},
		"in weigh weighs weight heavy length long beam wide high water lake river made lithium battery batteries motor wire engine outboard aboard"},
	{"wire.run", []string{"batteries|battery back|stern|rear|console|seat|front|bow|forward|sit|located|live", "far|long|length|distance|feet|run wire|cable|wiring", "far|long|distance|where|location|sit|live battery|batteries", "wire|cable run|long|length|far"}, ""},
	{"charge.hours", []string{"how|when|long|hours|time|overnight|often charge|charging|charger|plugged|recharge", "between trips|outings", "hours|time|long trips"}, ""},
	{"load.plate", []string{"capacity plate", "plate", "sticker"}, ""},
	{"motor.current", []string{"amp|amps draw|draws|pull|pulls|take|takes|need|needs|use|uses", "draw|draws"}, "battery batteries charger"},
	{"load.engine", []string{"motor|engine on|off back|stern", "engine|outboard|motor weigh|weighs|weight|heavy", "what|which|size|big|have|kind outboard|engine|kicker", "horsepower|hp"}, ""},
	{"fuel.volume", []string{"fuel|gas|gasoline|tank|gallons"}, ""},
	{"load.gear", []string{"gear|tackle|stuff|cooler|equipment|anchor weigh|weighs|weight|heavy|how|what|much|bring|carry|lot|lots|got", "what|anything else aboard|carry|bring|load", "what|whats in|inside it|her|boat", "what carry|bring"}, ""},
	{"load.dry", []string{"hull|bare|empty|dry weigh|weighs|weight|heavy", "brochure"}, ""},
	{"people.each", []string{"heavy|weigh|weight|big people|guys|man|person|crew|friends|buddies"}, ""},
	{"people.count", []string{"many|else you|got|along|come|coming|with|going|aboard|in", "how|many people|aboard|guys|crew|anglers|persons|passengers|friends|buddies|heads|souls", "who|anybody|anyone|someone aboard|with|along|fish|fishes|comes|else|you", "many you|on|go|of", "alone|solo", "by yourself", "yourself", "crew|party size|big", "takes|take|bring|brings|carry who|buddy|buddies|friend|wife|kid|kids|partner|anyone|anybody|someone|people|passengers", "just you", "kids|wife|friends|friend|buddies|buddy|partner along|with|aboard|too"}, "hours hour battery batteries amp amps volts gallons days times trips miles gear tackle pounds weigh"},
	{"load.total", []string{"weigh|weighs|weight|heavy|loaded|pounds|scale|load"}, ""},
	{"mount.kind", []string{"folding|scissor|pivot|arm|kind|type mount"}, ""},
	{"mount.height", []string{"high|height|tall bow|nose|bows|deck|mount|mounting|transom|gunwale|gunnel|sit|sits|front|surface|it|side|boat|plate", "far|inches|distance|measure|measured|measurement|drop|much bow|deck|mount|mounting|mounts|bolts|motor|transom|gunwale|nose water|waterline|surface", "freeboard", "bow|deck|transom|mount|mounting|nose water|waterline off|above|over|to|from|out", "height"}, ""},
	{"chop.height", []string{"wave|waves|chop|choppy|rough|roughest|swell|swells|whitecap|whitecaps|bumpy|rollers|calm|flat"}, "bottom flat-bottom battery out"},
	{"water.kind", []string{"tide|tides|tidal get|gets|come|comes|reach|reaches|there|up|in", "coast|coastal|saltwater|sea|ocean|brine"}, "fast strong run runs speed current"},
	{"current.speed", []string{"current|flow|stream|tide|tides|flowing|moving", "fast water|river", "river|water move|moves|pull|pulls|push"}, ""},
	{"wind.speed", []string{"wind|winds|windy|breeze|breezy|blow|blows|blowing|gust|gusts|sheltered|exposed|blustery"}, ""},
	{"water.weeds", []string{"weed|weeds|weedy|grass|pads|vegetation|moss|growth"}, ""},
	{"wire.gauge", []string{"what|which|got|have gauge|awg", "what|which|old|thick wire|cable in|there|now|already|fitted"}, ""},
	{"battery.capacity", []string{"amp|ah|capacity|label|rating|group|big hour|hours|ah|battery|batteries|they|label|size|big"}, ""},
	{"use.hours", []string{"long|hours|time fish|fishing|out|day|days|stay|trip|trips|run|water|usual|last|go|going|you|outing", "how hours", "sunup|dawn|dusk|morning|afternoon|overnight out|fish|stay", "all day", "half day"}, ""},
	{"use.style", []string{"how|what|style|way fish|fishing|fished", "cast|casting|troll|trolling|jig|jigging|drift|drifting|guide|guiding|anchor|flip|flipping", "technique", "style", "stand|standing|sit|sitting up|front|back|down"}, "where lake lakes river water deck motor batteries battery finder fishfinder wire"},
	{"water.kind", []string{"salt|fresh|brackish|saltwater|freshwater|tidal|ocean|sea", "where|which|what fish|fishing|use|run|launch|boat|go|lake|water|river|used", "kind|type|sort water|lake"}, "sonar finder fishfinder transducer battery batteries wire charger motor"},
	{"water.depth", []string{"deep|depth|shallow"}, ""},
	{"want.position-hold", []string{"hold|stay|stays|anchor|park spot|position|place|put|itself|boat|still|you", "gps"}, ""},
	{"want.sonar-2d", []string{"sonar|transducer|fishfinder|fishfinders|finder|graph|display|screen|electronics|imaging|depthfinder"}, "wire power battery"},
	{"want.remote", []string{"remote|fob"}, ""},
	{"mount.place", []string{"front|bow|casting deck|platform|plate|flat|room|space|mount", "deck", "bow|transom or|mount|have|is|there", "where mount|mounted|put|go|goes|want|attach|clamp", "transom"}, ""},
	{"battery.chemistry", []string{"lithium|agm|flooded|lead|gel|chemistry", "kind|type|what|which|sort battery|batteries", "kind|type|sort they|these|them"}, ""},
	{"battery.count", []string{"how|many battery|batteries"}, ""},
	{"motor.thrust", []string{"thrust", "what|which|big|size motor", "pounds motor"}, ""},
	{"motor.voltage", []string{"volt|volts|voltage"}, ""},
	{"use.throttle", []string{"throttle|hard|dial", "flat|wide|full|half out|open|throttle|easy|speed"}, "wind windy blow blows water"},
	{"use.speed", []string{"fast|speed|mph go|run|troll|move|want"}, "wind water river current high low"},
	{"motor.control", []string{"steer|steering|control|pedal|tiller now|use|have|got|do|like|prefer|want|today", "hands|handsfree free|want|need"}, ""},
	{"money.budget", []string{"budget|spend|money|price|afford|cost"}, ""},
	{"boat.material", []string{"aluminum|fiberglass|glass|wood|made|material"}, ""},
	{"boat.hull", []string{"kind|type|sort|what|style boat|hull"}, ""},
	{"boat.beam", []string{"wide|beam|width"}, ""},
	{"boat.length", []string{"long|longs|length|feet|foot|size|big boat|hull|she|it"}, ""},
	{"hours", []string{"hours|hour"}, "battery batteries"},
	{"size", []string{"what|which size"}, ""},
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
	"hours":            {"use.hours", "charge.hours"}, // of which no sale turns on both
	"size":             {"battery.capacity", "boat.length"},
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
			out, asks = append(out, t), append(asks, question || startWords[lead] || youAsk(ws))
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

// youAsk reports whether a sentence asks without a word of asking: "you running
// salt", "you fish alone". "You want the long one" does not.
func youAsk(said []string) bool {
	for i, w := range said {
		if politeWords[w] {
			continue
		}
		return (w == "you" || w == "ya" || w == "yall") && i+1 < len(said) && youWords[said[i+1]]
	}
	return false
}

var youWords = set("running", "run", "got", "have", "fish", "fishing", "using", "ever", "bring", "bringing", "carry", "carrying", "standing", "sitting", "casting", "trolling", "jigging", "drifting", "launch",
	"keep", "out", "in", "by", "alone", "mostly", "usually", "guys", "guide", "guiding", "anchor", "cast", "troll", "jig", "drift", "after", "on", "happy", "planning")

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

var clauseWords = set("how", "hows", "what", "whats", "where", "wheres", "which", "who", "whos", "when", "whens", "is", "are", "do", "does", "will", "can", "any")

// politeWords come before a question and make it no less of one.
var politeWords = map[string]bool{"and": true, "so": true, "ok": true, "okay": true, "well": true, "please": true, "then": true, "now": true, "hi": true, "hello": true, "morning": true, "good": true, "alright": true, "right": true, "but": true, "also": true, "um": true, "sir": true, "maam": true, "thanks": true}

// shortened are question words that an "is" has grown on to: "how high's the
// bow", "hows the wind".
var shortened = set("whats", "hows", "wheres", "whos", "whens", "thats", "its")

// drawnOn are verbs that are drawn on to the word before them.
var drawnOn = map[string]string{"s": "is", "d": "did", "re": "are", "ll": "will", "ve": "have"}

// asked are the words of a question, spelling mended, with "is" parted from the
// word that it was drawn on to.
func asked(question string) []string {
	var b strings.Builder
	for i, f := range strings.Fields(strings.ReplaceAll(question, "\u2019", "'")) {
		if i > 0 {
			b.WriteByte(' ')
		}
		low := strings.ToLower(f)
		if base, end, ok := strings.Cut(low, "'"); ok && base != "let" && drawnOn[strings.Trim(end, ",?.")] != "" {
			f = base + " " + drawnOn[strings.Trim(end, ",?.")]
		} else if shortened[strings.Trim(low, ",?.")] {
			f = strings.TrimSuffix(strings.Trim(low, ",?."), "s") + " is"
		}
		b.WriteString(f)
	}
	return corrected(b.String())
}

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
const mostAsked = 6

// asksFor lists the slots that a question is about, the likeliest first.
func asksFor(question string) []string {
	said := asked(question)
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
	said := asked(text)
	for _, r := range checkRows {
		for _, line := range r.asks {
			if fits(line, said) {
				return []string{r.id}
			}
		}
	}
	return nil
}
