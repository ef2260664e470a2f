package drill

import (
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb"
	"heronlake.example/ask/reasoner"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
)

// Points: a right item earns all of its points, an acceptable one most of them;
// what is too much works, and is paid for in vain; what is too little is worth
// nothing.
// A question that moves the result weighs half an item, one that a guess answers
// by luck less, one on which nothing hangs a tenth; a caution a fifth; an impossible wish half an item.
const (
	itemPoints    = 10
	fairPoints    = 7
	overPoints    = 3
	movingPoints  = 5
	luckPoints    = 3
	stillPoints   = 1
	cautionPoints = 2
	wishPoints    = 5
	mostCautions  = 2 // of those that apply, the gravest
)

// mark marks what was heard against the answer to all the facts.
func mark(r *reasoner.Reasoner, s *Scenario, h *heard, full answer.Answer, sys unit.System) (answer.Drill, []answer.Passage) {
	m := newMarker(s, h, full, sys)
	out := answer.Drill{}
	passages := citer{r: r, sys: sys}
	add := func(x answer.Marked, note string) {
		if x.Points < x.Most {
			x.Cites = passages.cite(note)
		}
		out.Marks = append(out.Marks, x)
		out.Points, out.Most = out.Points+x.Points, out.Most+x.Most
	}
	for _, it := range s.items() {
		add(m.item(it))
	}
	for _, x := range m.questions() {
		note := firstNote(x.ID)
		if s.Fault != nil {
			note = s.Fault.found
		}
		add(x, note)
	}
	for _, x := range m.cautions() {
		add(x, warnOf(x.ID).note)
	}
	if s.Wish != nil {
		x := answer.Marked{ID: s.Wish.id, Kind: "wish", Label: "the wish that cannot be had", Verdict: "missing", Why: s.Wish.reason, Most: wishPoints}
		if refused(s.Wish, h.sentence) {
			x.Verdict, x.Points = "done", wishPoints
		}
		add(x, s.Wish.note)
	}
	return out, passages.list
}

func newMarker(s *Scenario, h *heard, full answer.Answer, sys unit.System) *marker {
	m := &marker{s: s, h: h, sys: sys, full: full, sol: solution(s)}
	for _, p := range h.picks {
		m.words = append(m.words, corrected(p)...)
		m.words = append(m.words, "") // no phrase across two sentences
	}
	m.own = m.sol
	if t, ok := m.span("motor.thrust"); ok && m.sol.Has(sheet.ThrustClass) && t.high >= leastNamed.Newtons() && t.high <= mostNamed.Newtons() {
		// What goes with a motor is judged by the motor that was named: a mistake
		// counts once, and a breaker that would be too small for it never passes.
		m.own = nil
		m.own = solve(s, m.ownFacts())
		if !m.own.Has(sheet.MotorCurrent) && m.sol.Has(sheet.MotorCurrent) {
			m.own = m.sol
		}
	}
	return m
}

// leastNamed and mostNamed are the ratings between which a motor that was named
// is one that is made.
var leastNamed, mostNamed = unit.PoundForce(20), unit.PoundForce(200)

// items are the items of the scenario: those of its topic that this customer
// needs.
func (s *Scenario) items() []*itemRow {
	var out []*itemRow
	for _, id := range row(s.Topic).items {
		if n, ok := s.number("battery.count"); id == "outputs" && ok && n < 2 {
			continue
		}
		out = append(out, itemOf(id))
	}
	return out
}

// item marks one item, with the note that teaches it.
func (m *marker) item(it *itemRow) (x answer.Marked, note string) {
	x = answer.Marked{ID: it.id, Kind: "item", Label: it.label, Said: it.said(m), Most: itemPoints}
	if it.cell != 0 {
		x.Figure = it.cell.String()
	}
	if x.Said == "" {
		x.Verdict, x.Want = missing, m.wantOf(it)
	} else {
		j := it.judge(m)
		x.Verdict, x.Want, x.Why = j.verdict, j.want, j.why
	}
	switch x.Verdict {
	case right:
		x.Points = itemPoints
	case acceptable:
		x.Points = fairPoints
	case tooMuch:
		if !strings.HasSuffix(x.Why, batteryMore) {
			x.Points = overPoints
		}
	}
	return x, m.noteOf(it)
}

// wantOf is what should have been named.
func (m *marker) wantOf(it *itemRow) string {
	if it.cell != 0 && it.id != "outputs" {
		return m.show(it.cell)
	}
	return it.judge(m).want
}

// noteOf is the note that teaches an item.
func (m *marker) noteOf(it *itemRow) string {
	if m.s.Fault != nil {
		return m.s.Fault.found
	}
	return it.note
}

// questions marks the facts that were held back: whether they were asked for,
// weighed by whether they move the result.
func (m *marker) questions() []answer.Marked {
	var out []answer.Marked
	for _, slot := range m.s.Held() {
		f, _ := m.s.Fact(slot)
		label, shown := fit.Describe(f.Fact, m.sys)
		x := answer.Marked{ID: slot, Kind: "question", Label: asPhrase(slot, label), Verdict: "missing", Most: stillPoints}
		told := "the answer is " + inWords(shown)
		if w, ok := wishLabels[slot]; ok {
			told = "the customer " + map[bool]string{true: w, false: "does not want it"}[f.Text == "true"]
		}
		if moved := m.moves(slot); moved != "" {
			x.Most, x.Why = movingPoints, told+", and that "+moved
		} else if hangs := m.hangs(slot); hangs != "" {
			x.Most, x.Why = luckPoints, told+"; a guess comes to the same here, by luck: the "+hangs+" hangs on it"
		} else {
			x.Why = told + "; what one would have assumed comes to the same here"
		}
		if slices.Contains(m.h.asked, slot) {
			x.Verdict, x.Points = "done", x.Most
		}
		out = append(out, x)
	}
	if m.s.Fault != nil {
		c := checkOf(m.s.Fault.decide)
		x := answer.Marked{ID: "check." + c.id, Kind: "question", Label: c.label, Verdict: "missing", Most: movingPoints, Why: "it decides: " + m.s.check(c.id)}
		if slices.Contains(m.h.asked, "check."+c.id) {
			x.Verdict, x.Points = "done", x.Most
		}
		out = append(out, x)
	}
	return out
}

// inWords is a kind as it is said.
func inWords(shown string) string {
	if shown == "agm" {
		return "AGM"
	}
	return strings.ReplaceAll(shown, "-", " ")
}

// moves names what a fact moves when the core has to assume it instead, "" for
// nothing.
func (m *marker) moves(slot string) string {
	without := solution(m.s, slot)
	for _, it := range m.s.items() {
		if it.cell == 0 {
			continue
		}
		a, b := m.sol.Value(it.cell), without.Value(it.cell)
		if !without.Has(it.cell) || differs(it.id, a, b) {
			return "moves the " + it.label
		}
	}
	for _, r := range kindRows {
		if r.slot == slot && (len(r.topics) == 0 || slices.Contains(r.topics, m.s.Topic)) {
			return "decides " + r.decides
		}
	}
	return ""
}

// hangs names the item that would come out otherwise at an end of what is assumed
// for a fact that was not asked for, "" for none.
func (m *marker) hangs(slot string) string {
	without := solution(m.s, slot)
	var cells []sheet.ID
	for _, it := range m.s.items() {
		if it.cell != 0 {
			cells = append(cells, it.cell)
		}
	}
	for _, move := range without.Moves(cells) {
		if id := move.ID.String(); id != slot && !(slot == "load.total" && strings.HasPrefix(id, "load.")) {
			continue
		}
		for _, it := range m.s.items() {
			for _, end := range []sheet.Outputs{move.Low, move.High} {
				if x, ok := end.Of(it.cell); ok && it.cell != 0 && differs(it.id, without.Value(it.cell), x) {
					return it.label
				}
			}
		}
	}
	return ""
}

// kindRows are facts that decide what no figure stands for.
var kindRows = []struct {
	slot    string
	topics  []Topic // nil for all
	decides string
}{
	{"water.kind", nil, "the motor's version"},
	{"mount.place", nil, "the mount"},
	{"want.position-hold", []Topic{Electronics}, "whether position hold is worth it"},
	{"want.position-hold", nil, "the control, as cable steer cannot hold"},
	{"want.sonar-2d", nil, "the sonar in the motor"},
	{"use.style", []Topic{Electronics}, "whether position hold is worth it"},
	{"use.style", []Topic{Bank}, "the capacity"},
	{"use.style", nil, "the control"},
	{"battery.chemistry", []Topic{Charger}, "the charger's profile"},
	{"battery.chemistry", nil, "the capacity"},
}

// differs reports whether two values of an item are two picks.
func differs(id string, a, b float64) bool {
	if id == "load" || id == "capacity" {
		return b < a*0.9 || b > a*1.1
	}
	return b < a*0.999 || b > a*1.001
}

// asPhrase is what should have been asked.
func asPhrase(slot, label string) string {
	if p, ok := askPhrases[slot]; ok {
		return p
	}
	return strings.ToLower(label)
}

var askPhrases = map[string]string{
	"mount.height": "how high the mount stands above the water", "load.total": "what it weighs loaded", "load.engine": "what the outboard weighs",
	"load.gear": "what gear comes along", "fuel.volume": "how much fuel is aboard", "people.count": "how many are aboard", "wind.speed": "how much wind there is",
	"current.speed": "how the current runs", "chop.height": "how high the waves get", "water.kind": "salt or fresh", "mount.place": "whether there is a front deck",
	"use.style": "how they fish", "use.hours": "how long a day is", "wire.run": "how far the battery is from the motor", "charge.hours": "how long there is to charge",
	"battery.chemistry": "which kind of battery", "battery.capacity": "what the battery's label says", "want.position-hold": "whether it must hold a spot", "want.sonar-2d": "whether they want sonar in it",
}

// cautions marks the gravest cautions that apply.
func (m *marker) cautions() []answer.Marked {
	var out []answer.Marked
	for _, c := range m.full.Cautions {
		w := warnOf(c.ID)
		if w == nil || len(out) == mostCautions || !m.counts(w) {
			continue
		}
		label, heed := w.label, w.words
		if m.s.Fault != nil && w.id == "breaker" { // who looks for a fault has hands at the prop
			also := warnOf("prop")
			label, heed = also.label, append(slices.Clone(heed), also.words...)
		}
		x := answer.Marked{ID: c.ID, Kind: "caution", Label: label, Verdict: "missing", Why: c.Text, Most: cautionPoints}
		for _, s := range m.h.sentence {
			if says(corrected(s), heed) {
				x.Verdict, x.Points = "done", cautionPoints
			}
		}
		out = append(out, x)
	}
	return out
}

// counts reports whether a caution belongs to this sale: one for any boat on such
// water is not missed in talk of a breaker, and one about lithium needs lithium.
func (m *marker) counts(w *warnRow) bool {
	if w.topics != nil && !slices.Contains(w.topics, m.s.Topic) {
		return false
	}
	if n, ok := m.span("battery.count"); ok && n.high < 2 && w.id == "mixing-batteries" {
		return false // one battery is joined to none
	}
	if !strings.HasPrefix(w.id, "lithium") {
		return true
	}
	if f, ok := m.h.card.Get("battery.chemistry"); ok {
		return f.Text == "lithium"
	}
	return m.s.word("battery.chemistry") == "lithium"
}

// full is the answer to all the facts, in a session that can show its working.
func full(r *reasoner.Reasoner, s *Scenario) (*reasoner.Session, answer.Answer) {
	session := r.NewSession()
	a := session.Take(s.Cards(), row(s.Topic).solve...)
	return session, a
}

// citer numbers the passages that marks point to.
type citer struct {
	r    *reasoner.Reasoner
	sys  unit.System
	list []answer.Passage
	at   map[string]int
}

// cite numbers a note, or one passage of it as "note#heading".
func (c *citer) cite(note string) []int {
	if note == "" || c.r == nil {
		return nil
	}
	if n, ok := c.at[note]; ok {
		return []int{n}
	}
	p, ok := passageOf(c.r, note, c.sys)
	if !ok {
		return nil
	}
	if c.at == nil {
		c.at = map[string]int{}
	}
	p.N = len(c.list) + 1
	c.at[note] = p.N
	c.list = append(c.list, p)
	return []int{p.N}
}

// passageOf is the first passage of a note, or the one named behind its id.
func passageOf(r *reasoner.Reasoner, note string, sys unit.System) (answer.Passage, bool) {
	id, heading, exact := strings.Cut(note, "#")
	list := r.Passages(id, sys)
	for _, p := range list {
		if !exact || kb.Slug(p.Heading) == heading {
			return p, true
		}
	}
	if len(list) > 0 {
		return list[0], true
	}
	return answer.Passage{}, false
}

// slotNotes teach what was not asked.
var slotNotes = map[string]string{
	"mount.height": "measuring-bow-height", "load.total": "loaded-weight", "load.engine": "loaded-weight", "load.gear": "loaded-weight", "fuel.volume": "loaded-weight",
	"people.count": "loaded-weight", "wind.speed": "thrust-for-wind", "current.speed": "thrust-for-current", "chop.height": "chop-and-waves", "water.kind": "salt-water",
	"mount.place": "mount-bow-or-transom", "use.style": "steering-and-control", "use.hours": "day-of-fishing", "wire.run": "measuring-the-wire-run", "charge.hours": "charger-choice",
	"battery.chemistry": "bank-chemistry", "battery.capacity": "battery-ratings", "want.position-hold": "position-hold", "want.sonar-2d": "sonar-in-the-motor",
}

func firstNote(slot string) string { return slotNotes[slot] }

// known are the facts that the trainee has heard: told unasked, or asked for.
func known(s *Scenario, asked []string) []card.Fact {
	var out []card.Fact
	for _, f := range s.Facts {
		if f.Told || slices.Contains(asked, f.Slot) {
			out = append(out, f.Fact)
		}
	}
	return out
}
