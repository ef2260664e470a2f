package drill

import (
	"fmt"
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/meaning"
	"heronlake.example/ask/reasoner/read"
)

// Written is a scenario as a trainer writes it: what the customer says in plain
// talk, and what the customer knows and tells only who asks. The facts are read
// from both as from any customer.
type Written struct {
	Title  string `yaml:"title"`
	Topic  string `yaml:"topic"`
	Level  int    `yaml:"level"`
	Says   string `yaml:"says"`
	Knows  string `yaml:"knows"`
	Wish   string `yaml:"wish"`   // why something in Says cannot be had; "" where nothing is
	Refuse string `yaml:"refuse"` // with Wish: words of which one stands in a refusal, parted by commas
	Note   string `yaml:"note"`   // with Wish: the note that teaches it
}

// Bounds of a written scenario, in bytes.
const (
	longestTitle = 80
	longestTalk  = 2000
)

// faulting notes what is wrong with a written scenario.
type faulting func(format string, args ...any)

// Scenario turns it into a customer, with everything that is wrong with it; one
// with faults is not to be used.
func (w Written) Scenario() (Scenario, []string) {
	var faults []string
	bad := func(format string, args ...any) { faults = append(faults, fmt.Sprintf(format, args...)) }
	s := w.frame(bad)
	if len(w.Says) > longestTalk || len(w.Knows) > longestTalk {
		bad("says and knows take %d bytes each at most", longestTalk)
		return s, faults
	}
	s.Facts = w.facts(bad)
	s.Wish = w.wish(bad)
	if len(faults) == 0 {
		if list := lacking(&s); len(list) > 0 {
			bad("too little is known for %s: nothing that is said or known tells the %s", s.Topic.Title(), strings.Join(list, ", "))
		}
	}
	return s, faults
}

// frame is the scenario without what is true of the boat.
func (w Written) frame(bad faulting) Scenario {
	s := Scenario{Level: w.Level, Title: strings.TrimSpace(w.Title), Opening: strings.Join(strings.Fields(w.Says), " ")}
	if w.Level == 0 {
		s.Level = 1
	}
	if strings.ContainsFunc(w.Title+w.Says+w.Knows+w.Wish, func(r rune) bool { return r < ' ' && r != '\n' && r != '\t' && r != '\r' || r == 0x7f }) {
		bad("a control character: take it out")
	}
	switch {
	case s.Title == "":
		bad("title: empty; name the customer's boat and water")
	case len(s.Title) > longestTitle:
		bad("title: %d bytes, and %d are the most", len(s.Title), longestTitle)
	}
	if s.Level < 1 || s.Level > Levels {
		bad("level: %d is none; 1 to %d", w.Level, Levels)
	}
	topic, ok := ParseTopic(w.Topic)
	switch {
	case !ok:
		bad("topic: %q is none; the topics are %s", w.Topic, topicNames())
	case topic == Faults:
		bad("topic: fault finding cannot be written; the program's own faults hold their readings")
	}
	s.Topic = topic
	if s.Opening == "" {
		bad("says: empty; write what the customer says first")
	}
	return s
}

// facts reads what is told, and what is known and told only to who asks: there a
// sentence is both the fact and the words in which it is told.
func (w Written) facts(bad faulting) []Fact {
	var out []Fact
	told := w.bind("says", w.Says, card.Card{}, bad)
	for _, f := range told.Facts {
		if !meaning.Inner(f.Slot) {
			out = append(out, Fact{Fact: f, Told: true})
		}
	}
	parts, _ := sentences(w.Knows)
	for _, t := range parts {
		known := w.bind("knows", t, card.Card{}, bad)
		_, height := known.Get("mount.height")
		for _, f := range known.Facts {
			switch old, have := told.Get(f.Slot); {
			case have && same(old, f), meaning.Inner(f.Slot):
			case have:
				bad("knows: %q says otherwise than says does (%q)", f.Said, old.Said)
			default:
				// Where the mount stands is no question of its own beside how high.
				out = append(out, Fact{Fact: f, Scored: !(height && f.Slot == "mount.place"), Reply: t + "."})
			}
		}
		if len(known.Facts) == 0 {
			bad("knows: nothing is understood of %q", t)
		}
	}
	if len(out) == 0 {
		bad("says: nothing of the boat is understood")
	}
	return out
}

// wish is what cannot be had, nil for none.
func (w Written) wish(bad faulting) *wishRow {
	if w.Wish == "" {
		if w.Refuse != "" || w.Note != "" {
			bad("wish: empty; say why the thing refused cannot be had")
		}
		return nil
	}
	row := wishRow{id: "written", reason: strings.TrimSuffix(strings.Join(strings.Fields(w.Wish), " "), "."), note: w.Note}
	for t := range strings.SplitSeq(w.Refuse, ",") {
		if t = strings.TrimSpace(t); t != "" {
			row.about = append(row.about, strings.ToLower(t))
		}
	}
	if len(row.about) == 0 {
		bad("refuse: empty; give the words of which one stands in a refusal, such as: reverse, tiller")
	}
	return &row
}

// bind reads talk, reporting what finds no place.
func (w Written) bind(key, talk string, c card.Card, bad faulting) card.Card {
	out := meaning.Bind(read.Read(talk), c)
	for _, p := range out.Problems {
		if slices.Contains([]string{"contradiction", "ambiguous", "out-of-range"}, p.Kind) {
			bad("%s: %s", key, p.Text)
		}
	}
	for i := range out.Card.Facts {
		if out.Card.Facts[i].Said == "" {
			out.Card.Facts[i].Said = "as written"
		}
	}
	return out.Card
}

// same reports whether two facts say the same.
func same(a, b card.Fact) bool {
	if a.Text != b.Text || (a.Value == nil) != (b.Value == nil) {
		return false
	}
	return a.Value == nil || *a.Value == *b.Value
}

// rests reports whether a figure is known and something said stands behind it.
func rests(sol *sheet.Solution, id sheet.ID) bool {
	return sol.Has(id) && slices.ContainsFunc(sol.Chain(id), func(st *sheet.Step) bool {
		return st.Origin == sheet.FromSaid || st.Origin == sheet.FromMeasured
	})
}

// lacking names the items that the core cannot find from what is said.
func lacking(s *Scenario) []string {
	sol := solution(s)
	var out []string
	for _, it := range s.items() {
		if it.cell != 0 && !rests(sol, it.cell) {
			out = append(out, it.label)
		}
	}
	return out
}
