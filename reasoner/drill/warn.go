package drill

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
	id     string
	label  string
	note   string
	topics []Topic // in whose sales it belongs; nil for all: a boat's own danger is not missed in talk of a breaker
	words  []string
}

var warnRows = []warnRow{
	{"overloaded", "over the capacity plate", "capacity-plate", []Topic{Weight, Sale}, []string{"plate", "capacity", "overloaded", "overload", "too heavy"}},
	{"capacity", "all of it counts against the plate", "capacity-plate", []Topic{Weight, Sale}, []string{"plate", "capacity"}},
	{"people-in-the-water", "position hold is no anchor: nobody in the water, nobody away from the boat", "people-in-the-water", nil, []string{"swim", "swims", "swimmers", "swimming", "anchor", "unattended", "in the water", "people"}},
	{"cranking-battery", "no cranking battery", "bank-chemistry", nil, []string{"cranking", "starting", "deep cycle"}},
	{"lithium-cold", "no charging of lithium below freezing", "charging-in-the-cold", nil, []string{"freezing", "frost", "cold", "below zero", "warm"}},
	{"charging-gas", "charging gives off gas: vent it, no sparks", "charging-safely", nil, []string{"gas", "hydrogen", "vent", "ventilate", "ventilation", "spark", "sparks", "flame", "flames", "acid", "open the lid", "fumes", "air"}},
	{"lithium-protection", "the battery's own protection must carry the motor's current", "lithium-banks", nil, []string{"protection", "bms", "cut off", "cuts off", "cutoff", "shuts off", "continuous", "without warning"}},
	{"mixing-batteries", "batteries in series: same kind, size and age", "mixing-batteries", nil, []string{"same", "mix", "mixing", "identical", "matched", "alike", "tap"}},
	{"breaker", "the breaker sits at the battery, and is opened before hands go near the prop", "breaker-place", nil, []string{"at the battery", "near the battery", "close to the battery", "by the battery", "next to the battery", "inches", "open it", "open the breaker", "before you touch", "at battery"}},
	{"salt", "rinse it, watch the anode, sleeve the bolts", "anodes-and-corrosion", []Topic{Water, Sale}, []string{"rinse", "hose", "flush", "anode", "zinc", "sleeve", "wash"}},
	{"weeds", "weeds wrap the prop: stop and open the breaker first", "care-prop-and-line", []Topic{Water, Sale}, []string{"weed", "weeds", "prop", "wrap", "wraps", "clear", "line"}},
	{"canoe-side", "not on the side of a canoe", "mount-on-a-kayak", []Topic{Thrust, Mount, Sale}, []string{"side", "tip", "tips", "capsize", "stern", "low"}},
	{"electric-only", "local rules for electric-only water", "rules-and-licences", []Topic{Sale}, []string{"rules", "local", "law", "registered", "register"}},
	{"registration", "a motor may make it a numbered vessel", "rules-and-licences", []Topic{Sale}, []string{"register", "registration", "registered", "numbered", "number", "numbers", "rules", "law"}},
	{"open-stern", "held stern-to, waves come in over the transom", "chop-and-waves", []Topic{Thrust, Mount, Sale}, []string{"stern", "waves", "bow to", "swamp", "ships water", "back"}},
	{"bow-heavy", "weight in the bow: batteries aft", "trim-and-bow-weight", []Topic{Sale, Weight}, []string{"aft", "back", "bow heavy", "stern", "trim", "rear", "nose", "middle", "bow down"}},
	{"short-shaft", "a short shaft draws air", "ventilation-and-cavitation", nil, []string{"air", "ventilate", "ventilates", "cavitate", "short"}},
	{"strong-current", "no anchor and no way home in this stream", "hold-in-current", []Topic{Thrust, Sale}, []string{"anchor", "engine", "outboard", "home", "strong", "current"}},
	{"cut-off-switch", "from 115 lb an engine cut-off switch may be required", "rules-and-licences", []Topic{Thrust, Sale}, []string{"cut off switch", "cutoff", "kill switch", "lanyard", "switch"}},
	{"cold-water", "cold water kills: wear the life jacket", "cold-batteries", []Topic{Sale}, []string{"life jacket", "jacket", "vest", "cold"}},
	{"prop", "open the breaker before hands go near prop, plug or terminals", "fault-breaker-trips", nil, []string{"breaker", "disconnect", "unplug", "open", "power off", "off first"}},
}

func warnOf(id string) *warnRow {
	for i := range warnRows {
		if warnRows[i].id == id {
			return &warnRows[i]
		}
	}
	return nil
}
