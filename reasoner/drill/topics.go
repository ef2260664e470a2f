package drill

import (
	"slices"
	"strings"

	"heronlake.example/ask/kb/words"
)

// A Topic is one part of the trade that a drill is about.
type Topic string

// The topics, in the order in which a beginner meets them.
const (
	Weight      Topic = "weight"
	Thrust      Topic = "thrust"
	Volts       Topic = "volts"
	Shaft       Topic = "shaft"
	Mount       Topic = "mount"
	Bank        Topic = "bank"
	Wiring      Topic = "wiring"
	Charger     Topic = "charger"
	Water       Topic = "water"
	Electronics Topic = "electronics"
	Faults      Topic = "faults"
	Sale        Topic = "sale"
)

// A topicRow says what one topic drills: what the customer tells unasked, which
// facts may be held back, what the trainee must name, and where it is taught.
type topicRow struct {
	id    Topic
	title string
	words []string // any of which names the topic
	solve []string // the topics that the core is asked about
	items []string // item rows, in the order in which they are named
	tells []string // facts of the scenario
	holds []string // those of them that may be held back
	notes []string // what teaches it, the most telling first
	ask   string   // what the customer asks at the end of the opening
}

var topicRows = []topicRow{
	{Weight, "loaded weight", []string{"weight", "weigh", "loaded weight", "load", "heavy", "loading"},
		[]string{"weight", "thrust"}, []string{"load"},
		[]string{"load.dry", "load.engine", "fuel.volume", "people.count", "load.gear"},
		[]string{"people.count", "load.engine", "fuel.volume", "load.gear"},
		[]string{"loaded-weight", "dry-weight", "capacity-plate"}, "What does it come to, loaded?"},
	{Thrust, "thrust", []string{"thrust", "power", "pounds of thrust", "size"},
		[]string{"thrust"}, []string{"thrust"},
		[]string{"load", "people.count", "wind.speed", "current.speed", "chop.height", "water.weeds"},
		[]string{"load.total", "wind.speed", "current.speed", "people.count"},
		[]string{"thrust-by-weight", "thrust-for-wind", "thrust-for-current"}, "How much thrust do I want?"},
	{Volts, "volts and batteries", []string{"volts", "voltage", "volt", "12 or 24"},
		[]string{"voltage", "thrust"}, []string{"volts", "count"},
		[]string{"load", "people.count", "wind.speed", "current.speed", "chop.height", "water.weeds"},
		[]string{"load.total", "wind.speed", "current.speed"},
		[]string{"voltage-and-batteries", "series-and-parallel", "thrust-by-weight"}, "Is that a 12-volt job, or what?"},
	{Shaft, "shaft length", []string{"shaft", "shaft length", "length of shaft"},
		[]string{"shaft"}, []string{"shaft"},
		[]string{"people.count", "mount.place", "mount.height", "chop.height"},
		[]string{"mount.height", "chop.height"},
		[]string{"shaft-length", "measuring-bow-height", "ventilation-and-cavitation"}, "What shaft do I need?"},
	{Mount, "mount and control", []string{"mount", "control", "steering", "pedal", "mounting", "steer", "mount and control"},
		[]string{"fit"}, []string{"mount", "control"},
		[]string{"people.count", "mount.place", "use.style", "want.position-hold", "wind.speed"},
		[]string{"mount.place", "people.count", "use.style", "want.position-hold"},
		[]string{"mount-bow-or-transom", "steering-and-control", "foot-cable-or-electric"}, "Where does it go, and how do I steer it?"},
	{Bank, "battery bank", []string{"bank", "battery", "batteries", "battery bank", "run time", "runtime"},
		[]string{"bank", "runtime"}, []string{"count", "capacity"},
		[]string{"motor.thrust", "motor.voltage", "use.style", "use.hours", "battery.chemistry"},
		[]string{"use.hours", "use.style", "battery.chemistry"},
		[]string{"bank-size", "run-time", "bank-chemistry"}, "What batteries do I put under it?"},
	{Wiring, "wire and breaker", []string{"wiring", "wire", "breaker", "gauge", "wires", "fuse"},
		[]string{"wire", "breaker"}, []string{"gauge", "breaker"},
		[]string{"motor.thrust", "motor.voltage", "wire.run"},
		[]string{"wire.run"},
		[]string{"wire-gauge", "breaker-rating", "voltage-drop"}, "What wire and what breaker?"},
	{Charger, "charger", []string{"charger", "charging", "charge"},
		[]string{"charger"}, []string{"charger", "outputs"},
		[]string{"battery.count", "battery.capacity", "battery.chemistry", "charge.hours"},
		[]string{"charge.hours", "battery.chemistry", "battery.capacity"},
		[]string{"charger-choice", "charging-safely", "charging-in-the-cold"}, "What charger goes with that?"},
	{Water, "water and corrosion", []string{"water", "corrosion", "salt", "saltwater", "anode", "water and corrosion"},
		[]string{"fit"}, []string{"version", "anode"},
		[]string{"water.kind"},
		[]string{"water.kind"},
		[]string{"salt-water", "anodes-and-corrosion", "care-after-use"}, "Any old motor will do, won't it?"},
	{Electronics, "electronics", []string{"electronics", "sonar", "gps", "position hold", "fishfinder", "transducer", "display"},
		[]string{"fit"}, []string{"position-hold", "sonar", "supply"},
		[]string{"use.style", "want.sonar-2d", "want.position-hold", "wind.speed"},
		[]string{"use.style", "want.sonar-2d", "wind.speed"},
		[]string{"position-hold", "sonar-in-the-motor", "electronics-supply"}, "Which of the electronics are worth it for me?"},
	{Faults, "fault finding", []string{"faults", "fault", "trouble", "problem", "fault finding", "repair", "troubleshooting"},
		[]string{"wire"}, []string{"cause"}, nil, nil,
		[]string{"meter-under-load", "fault-slow", "fault-breaker-trips", "fault-short-run-time"}, "What is wrong with it?"},
	{Sale, "the whole sale", []string{"sale", "whole sale", "everything", "all", "whole", "full", "complete"},
		[]string{"fit"}, []string{"thrust", "volts", "shaft", "mount", "control", "count", "capacity", "gauge", "breaker"},
		[]string{"load", "people.count", "mount.height", "wind.speed", "current.speed", "chop.height", "water.kind", "use.style", "use.hours", "wire.run", "want.position-hold"},
		[]string{"mount.height", "load.total", "wind.speed", "water.kind", "wire.run", "use.hours"},
		[]string{"questions-at-the-counter", "thrust-by-weight", "shaft-length"}, "What do I need, all told?"},
}

func row(t Topic) *topicRow {
	for i := range topicRows {
		if topicRows[i].id == t {
			return &topicRows[i]
		}
	}
	return nil
}

// order is the topic's place among them, from 0.
func order(t Topic) uint64 {
	return uint64(max(0, slices.IndexFunc(topicRows, func(r topicRow) bool { return r.id == t })))
}

// Topics lists the topics in the order in which a beginner meets them.
func Topics() []Topic {
	var out []Topic
	for _, r := range topicRows {
		out = append(out, r.id)
	}
	return out
}

// Title is the topic in words.
func (t Topic) Title() string {
	if r := row(t); r != nil {
		return r.title
	}
	return string(t)
}

// ParseTopic finds the topic that words name: "shaft", "mount and control",
// "whole sale". The longest name that occurs wins; ok is false when none does.
func ParseTopic(text string) (t Topic, ok bool) {
	heard := words.Split(text)
	for i, w := range heard {
		if c, fixed := words.Correct(w); fixed && !words.Common(w) {
			heard[i] = c
		}
	}
	best := 0
	for _, r := range topicRows {
		for _, name := range append([]string{string(r.id), r.title}, r.words...) {
			if n := len(words.Split(name)); n > best && contains(heard, words.Split(name)) {
				t, ok, best = r.id, true, n
			}
		}
	}
	return t, ok
}

// contains reports whether the words stand side by side in the text.
func contains(text, phrase []string) bool {
	for i := 0; i+len(phrase) <= len(text); i++ {
		if slices.Equal(text[i:i+len(phrase)], phrase) {
			return true
		}
	}
	return false
}

// topicNames is the list of topics for a person.
func topicNames() string {
	var names []string
	for _, r := range topicRows {
		names = append(names, string(r.id))
	}
	return strings.Join(names, ", ")
}
