package sheet

import (
	"math"
	"slices"
	"strings"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// Origin says how a cell came to its value.
type Origin int

const (
	Unknown Origin = iota
	FromSaid
	FromMeasured
	Computed
	Assumed
	Constant // assumed, but a property of the model that nobody can be asked for
)

// Given is a value that a person stated. Low, Nominal and High are equal where
// one number was said.
type Given struct {
	ID       ID
	Value    band.Band[float64]
	Word     string
	Said     string // the words, for the trace
	Measured bool   // found on this boat, for instance a speed by GPS
}

// A Stretch is one part of a duty profile: a throttle held for some hours.
type Stretch struct {
	Throttle float64 // dial position, 0 to 1
	Hours    unit.Duration
}

// A Ladder is the series of sizes that can be bought, ascending.
type Ladder []float64

// Next returns the smallest step that is not below x.
func (l Ladder) Next(x float64) (float64, bool) {
	for _, s := range l {
		if s >= x*(1-1e-9) {
			return s, true
		}
	}
	return 0, false
}

// Question is what a solution starts from.
type Question struct {
	Given   []Given
	Duty    []Stretch
	Ladders map[ID]Ladder // a shop's own series in place of the typical one
	Want    []ID
}

// A Step is one cell of a solution with the way it was reached.
type Step struct {
	ID       ID
	Origin   Origin
	Row      *Row // nil for what was said
	Value    float64
	Word     string
	Band     band.Band[float64]
	Inputs   []ID   // cells read, in the order of the row
	Guess    Reason // of an assumption
	Said     string
	Warnings []string
}

// state says how far a cell has been taken.
type state uint8

const (
	untouched state = iota
	inProgress
	suspect // of a what-if: known or given up before, and resting on what was changed
	gaveUp
	found
	stated // said or measured
)

// walk is where the cells stand while rows are tried, each array by ID. It is
// apart from the steps so that a what-if can start from a copy.
type walk struct {
	book  *Book
	q     *Question
	state []state
	vals  []float64
	words []string
	row   []int16   // rank of the row that gave the cell, among those that give it
	rec   *Solution // keeps steps and errors; nil in a what-if

	// Of a what-if: the solution that it departs from, the cells that stand
	// otherwise than there, and those that were settled anew.
	base    *walk
	whatIf  *whatIf
	differs []bool
	touched []ID
	place   []int16 // of a cell in the order of the base, counted from 1; 0 for none
	now     int16   // the place that is being settled
}

func newWalk(b *Book, q *Question) walk {
	n := len(cells)
	return walk{book: b, q: q, state: make([]state, n), vals: make([]float64, n), words: make([]string, n), row: make([]int16, n)}
}

// A Reason is why an assumption was made, and what else its word might well be.
type Reason struct {
	Why    string
	Others []string
}

// A Solution holds every cell that was reached. It is a value to read; solving
// again makes a new one.
type Solution struct {
	walk   walk
	q      Question
	at     []int16 // by ID: index into steps + 1, 0 where there is none
	steps  []Step
	order  []ID     // cells as they were settled by rows, given up ones among them
	ids    []ID     // what Step.Inputs are cut from
	notes  []string // warnings of the row being tried
	doubts []doubt
	errs   map[ID]error
}

// Solve walks the book for the wanted cells. Cells that cannot be known stay
// unknown; a formula outside its range leaves its error in Err.
func (b *Book) Solve(q Question) *Solution {
	s := b.solve(q)
	s.setBands()
	return s
}

// SolveNominal is Solve without the bands, in about half the time: for a figure
// of which the value alone is shown. The band of a computed step is its value.
func (b *Book) SolveNominal(q Question) *Solution { return b.solve(q) }

// solve finds values without bands.
func (b *Book) solve(q Question) *Solution {
	n := len(cells)
	room := min(b.usual, 8+8*len(q.Want)) // steps; a note asks for one cell, a fitting for all
	s := &Solution{q: q, at: make([]int16, n), steps: make([]Step, 0, room), order: make([]ID, 0, room), ids: make([]ID, 0, 6*room)}
	s.walk = newWalk(b, &s.q)
	s.walk.rec = s
	for _, g := range q.Given {
		from := FromSaid
		if g.Measured {
			from = FromMeasured
		}
		s.walk.give(g)
		s.put(Step{ID: g.ID, Origin: from, Value: g.Value.Nominal, Word: g.Word, Band: g.Value, Said: g.Said})
	}
	for _, id := range q.Want {
		s.walk.reach(id)
	}
	return s
}

func (w *walk) give(g Given) {
	w.state[g.ID], w.vals[g.ID], w.words[g.ID] = stated, g.Value.Nominal, g.Word
}

func (s *Solution) put(st Step) {
	if i := s.at[st.ID]; i > 0 { // a second value of the same slot replaces the first
		s.steps[i-1] = st
		return
	}
	s.steps = append(s.steps, st)
	s.at[st.ID] = int16(len(s.steps))
}

// reach makes a cell known if it can be, and reports whether it is.
func (w *walk) reach(id ID) bool {
	switch w.state[id] {
	case found, stated:
		return true
	case untouched:
		return w.settle(id)
	case suspect:
		return w.revisit(id)
	}
	return false
}

// settle tries the rows of a cell in turn.
func (w *walk) settle(id ID) bool {
	ok := w.tryRows(id)
	if w.base != nil {
		w.note(id)
	}
	return ok
}

func (w *walk) tryRows(id ID) bool {
	w.state[id] = inProgress
	blocked := false // a row failed only because one of its needs is being worked out
	rows := w.book.gives[id]
	for i, r := range rows {
		if w.try(r, &blocked) {
			w.state[id], w.row[id] = found, int16(i)
			if w.rec != nil {
				w.rec.order = append(w.rec.order, id)
			}
			return true
		}
	}
	w.state[id], w.row[id] = gaveUp, int16(len(rows))
	w.vals[id], w.words[id] = 0, ""
	switch {
	case blocked:
		w.state[id] = untouched // ask again once the cell in progress is settled
	case w.rec != nil:
		w.rec.order = append(w.rec.order, id)
	}
	return false
}

// try makes a row's cell known by that row, and reports whether it could.
func (w *walk) try(r *Row, blocked *bool) bool {
	if !w.meetNeeds(r, blocked) {
		return false
	}
	v := View{w: w, vals: w.vals, row: r}
	if w.rec != nil {
		w.rec.notes = nil
		v.warnings = &w.rec.notes
	} else if w.base != nil {
		v.near = w.base.vals[r.Gives]
	}
	if r.When != nil && !r.When(v) {
		return false
	}
	if r.Assume != nil {
		return w.assume(r, v)
	}
	return w.compute(r, v)
}

// meetNeeds reaches all that a row needs, and of what it may read whatever can be
// known. blocked is set where a need only waits for a cell in progress.
func (w *walk) meetNeeds(r *Row, blocked *bool) bool {
	for _, n := range r.Needs {
		if w.state[n] >= found {
			continue
		}
		if w.state[n] == inProgress {
			*blocked = true
			return false
		}
		if !w.reach(n) {
			if w.state[n] == untouched { // not given up, only waiting for a cell in progress: so does this one
				*blocked = true
			}
			return false
		}
	}
	for _, m := range r.May {
		if w.state[m] < found {
			w.reach(m)
		}
	}
	return true
}

func (w *walk) assume(r *Row, v View) bool {
	g, ok := r.Assume(v)
	if !ok {
		return false
	}
	w.vals[r.Gives], w.words[r.Gives] = g.Value.Nominal, g.Word
	if w.rec != nil {
		from := Assumed
		if g.Constant {
			from = Constant
		}
		w.rec.put(Step{ID: r.Gives, Origin: from, Row: r, Value: g.Value.Nominal, Word: g.Word, Band: g.Value,
			Inputs: w.rec.inputs(r), Guess: Reason{g.Why, g.Others}, Warnings: w.rec.takeDoubts(r.Gives)})
	}
	return true
}

func (w *walk) compute(r *Row, v View) bool {
	x, err := r.Compute(v)
	if err == nil && (math.IsNaN(x) || math.IsInf(x, 0)) {
		err = &RangeError{Cell: r.Gives, Value: x, Text: "not a number: an input is outside what the formula holds for"}
	}
	if err != nil {
		if w.rec != nil {
			if w.rec.errs == nil {
				w.rec.errs = map[ID]error{}
			}
			w.rec.errs[r.Gives] = err
		}
		return false
	}
	w.vals[r.Gives], w.words[r.Gives] = x, ""
	if w.rec != nil {
		w.rec.put(Step{ID: r.Gives, Origin: Computed, Row: r, Value: x, Band: band.Exactly(x), Inputs: w.rec.inputs(r), Warnings: w.rec.takeDoubts(r.Gives)})
	}
	return true
}

// inputs lists the cells that a row read: all that it needs, and of the others
// those that are known, or stated.
func (s *Solution) inputs(r *Row) []ID {
	from := len(s.ids)
	s.ids = append(s.ids, r.Needs...)
	for _, m := range r.May {
		if s.walk.state[m] >= found {
			s.ids = append(s.ids, m)
		}
	}
	for _, c := range r.Said {
		if s.walk.state[c] == stated {
			s.ids = append(s.ids, c)
		}
	}
	return s.ids[from:len(s.ids):len(s.ids)]
}

// Has reports whether a cell is known.
func (s *Solution) Has(id ID) bool { return s.walk.state[id] >= found }

// Value is the nominal value of a known cell, 0 otherwise.
func (s *Solution) Value(id ID) float64 { return s.walk.vals[id] }

// Word is the word of a known word cell, "" otherwise.
func (s *Solution) Word(id ID) string { return s.walk.words[id] }

// Step is the step that gave a cell, nil when it is unknown.
func (s *Solution) Step(id ID) *Step {
	if i := s.at[id]; i > 0 {
		return &s.steps[i-1]
	}
	return nil
}

// Err is the reason why a cell could not be computed, its own or that of a need
// of its rows, however deep; nil when there is none.
func (s *Solution) Err(id ID) error {
	if len(s.errs) == 0 {
		return nil
	}
	return s.err(id, make([]bool, len(cells)))
}

func (s *Solution) err(id ID, seen []bool) error {
	if err := s.errs[id]; err != nil || s.Has(id) || seen[id] {
		return err
	}
	seen[id] = true
	for _, r := range s.walk.book.gives[id] {
		for _, n := range r.Needs {
			if s.Has(n) {
				continue
			}
			if err := s.err(n, seen); err != nil {
				return err
			}
		}
	}
	return nil
}

// Steps lists what was reached, each after the cells it rests on.
func (s *Solution) Steps() []Step { return s.steps }

// Chain lists the steps behind cells, each once, each after what it rests on, so
// that the step of a single cell comes last.
func (s *Solution) Chain(ids ...ID) []*Step {
	seen := make([]bool, len(cells))
	var out []*Step
	for _, id := range ids {
		out = s.chain(out, seen, id)
	}
	return out
}

func (s *Solution) chain(out []*Step, seen []bool, id ID) []*Step {
	st := s.Step(id)
	if st == nil || seen[id] {
		return out
	}
	seen[id] = true
	for _, in := range st.Inputs {
		out = s.chain(out, seen, in)
	}
	return append(out, st)
}

// A Rank says how a step stands to the figure that it is listed for.
type Rank uint8

const (
	Behind  Rank = iota // only behind a step that did not decide
	Beaten              // did not decide, as the smaller of two routes
	Leading             // on the way from what was said to the figure
)

// Ranks tells of every step of Chain, by ID, how it stands to the cells.
func (s *Solution) Ranks(ids ...ID) []Rank {
	ranks := make([]Rank, len(cells))
	for _, id := range ids {
		s.rank(ranks, id)
	}
	return ranks
}

func (s *Solution) rank(ranks []Rank, id ID) {
	st := s.Step(id)
	if st == nil || ranks[id] == Leading {
		return
	}
	ranks[id] = Leading
	var aside []ID
	if st.Row != nil && st.Row.Aside != nil {
		aside = st.Row.Aside(View{w: &s.walk, vals: s.walk.vals, row: st.Row})
	}
	for _, in := range st.Inputs {
		switch {
		case !slices.Contains(aside, in):
			s.rank(ranks, in)
		case ranks[in] == Behind && strings.Contains(st.Row.Formula, "{"+in.String()+"}"):
			ranks[in] = Beaten
		}
	}
}

// Missing names the cells without which the wanted one cannot be known: needs,
// however deep, that nobody said and no row gives.
func (s *Solution) Missing(id ID) []ID {
	var out []ID
	seen := map[ID]bool{}
	var walk func(ID)
	walk = func(id ID) {
		if seen[id] || s.Has(id) {
			return
		}
		seen[id] = true
		rows := s.walk.book.gives[id]
		if len(rows) == 0 {
			out = append(out, id)
			return
		}
		for _, n := range rows[0].Needs {
			walk(n)
		}
	}
	walk(id)
	return out
}

// A View is what a row sees: the values of the cells that it declared.
type View struct {
	w        *walk
	vals     []float64
	row      *Row
	warnings *[]string // nil while bands and what-ifs are worked out
	bandEnd  bool      // the values are those of an end of a band
	near     float64   // in a what-if and at the end of a band, the value that the row's cell had
}

// Has reports whether an optional cell is known.
func (v View) Has(id ID) bool { return v.w.state[id] >= found }

// Said reports whether a person stated a cell or measured it.
func (v View) Said(id ID) bool { return v.w.state[id] == stated }

// Range is the range that a person gave for a cell; ok is false where one number
// was said, or none.
func (v View) Range(id ID) (r band.Band[float64], ok bool) {
	for i := range v.w.q.Given {
		if g := &v.w.q.Given[i]; g.ID == id && g.Value.Wide() {
			return g.Value, true
		}
	}
	return r, false
}

// Of is the SI value of a cell; 0 where it is unknown.
func (v View) Of(id ID) float64 {
	if strict != nil {
		strict(v.row, id)
	}
	return v.vals[id]
}

// strict, set by a test, is told of every cell that a row reads.
var strict func(r *Row, id ID)

// Word is the word of a cell, "" where it is unknown.
func (v View) Word(id ID) string {
	if strict != nil {
		strict(v.row, id)
	}
	return v.w.words[id]
}

// Yes reports whether a cell holds the word "true".
func (v View) Yes(id ID) bool { return v.Word(id) == "true" }

// Duty is the duty profile, empty where none was said.
func (v View) Duty() []Stretch { return v.w.q.Duty }

// Ladder is the shop's series of a cell, or the typical one given.
func (v View) Ladder(id ID, typical Ladder) Ladder {
	if l := v.w.q.Ladders[id]; len(l) > 0 {
		return l
	}
	return typical
}

// Noting reports whether a warning would be kept: not while bands and what-ifs
// are worked out. A row that has to put a warning together asks first.
func (v View) Noting() bool { return v.warnings != nil }

// AtBandEnd reports whether the values are those of an end of a band, not of a
// solution.
func (v View) AtBandEnd() bool { return v.bandEnd }

// Near is a value close to the one sought, from which a search may start: at an
// end of a band and in a what-if, what the cell was in the solution. 0 is none.
func (v View) Near() float64 { return v.near }

// Warn adds a sentence to the step: what widened the band, what to mind.
func (v View) Warn(text string) {
	if v.warnings != nil {
		*v.warnings = append(*v.warnings, text)
	}
}

// Doubt is Warn for what must be told with every figure that rests on the step:
// an input lies where the formula has nothing behind it.
func (v View) Doubt(text string) {
	if v.warnings != nil {
		*v.warnings = append(*v.warnings, doubtMark+text)
	}
}

// Stretched warns of a table that was read outside its rows, and doubts where that
// was far outside.
func (v View) Stretched(far bool, text string) {
	if far {
		v.Doubt(text)
	} else {
		v.Warn(text)
	}
}

// doubtMark stands before a doubt while a row is tried.
const doubtMark = "\x00"

// takeDoubts takes the marks off the warnings of a row that gave a cell, and
// keeps what they stood before.
func (s *Solution) takeDoubts(id ID) []string {
	for i, w := range s.notes {
		if t, ok := strings.CutPrefix(w, doubtMark); ok {
			s.notes[i] = t
			s.doubts = append(s.doubts, doubt{id, t})
		}
	}
	return s.notes
}

// A doubt is a sentence of the step of a cell.
type doubt struct {
	id   ID
	text string
}

// Doubts lists what must be told with some cells, each sentence once: the doubts
// of the steps on the way to them.
func (s *Solution) Doubts(ids ...ID) []string {
	if len(s.doubts) == 0 {
		return nil
	}
	var out []string
	ranks := s.Ranks(ids...)
	for _, d := range s.doubts {
		if ranks[d.id] == Leading && !slices.Contains(out, d.text) {
			out = append(out, d.text)
		}
	}
	return out
}

// Length and those below it are Of, as the type of the cell.
func (v View) Length(id ID) unit.Length           { return unit.Length(v.Of(id)) }
func (v View) Area(id ID) unit.Area               { return unit.Area(v.Of(id)) }
func (v View) Volume(id ID) unit.Volume           { return unit.Volume(v.Of(id)) }
func (v View) Mass(id ID) unit.Mass               { return unit.Mass(v.Of(id)) }
func (v View) Force(id ID) unit.Force             { return unit.Force(v.Of(id)) }
func (v View) Pressure(id ID) unit.Pressure       { return unit.Pressure(v.Of(id)) }
func (v View) Speed(id ID) unit.Speed             { return unit.Speed(v.Of(id)) }
func (v View) Hours(id ID) unit.Duration          { return unit.Duration(v.Of(id)) }
func (v View) Current(id ID) unit.Current         { return unit.Current(v.Of(id)) }
func (v View) Voltage(id ID) unit.Voltage         { return unit.Voltage(v.Of(id)) }
func (v View) Charge(id ID) unit.Charge           { return unit.Charge(v.Of(id)) }
func (v View) Energy(id ID) unit.Energy           { return unit.Energy(v.Of(id)) }
func (v View) Power(id ID) unit.Power             { return unit.Power(v.Of(id)) }
func (v View) Resistance(id ID) unit.Resistance   { return unit.Resistance(v.Of(id)) }
func (v View) Temperature(id ID) unit.Temperature { return unit.Temperature(v.Of(id)) }
func (v View) Gauge(id ID) unit.Gauge             { return unit.Gauge(int(math.Round(v.Of(id)))) }
