package sheet

import (
	"math"

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
	Inputs   []ID // cells read, in the order of the row
	Guess    Guess
	Said     string
	Warnings []string
}

// A Solution holds every cell that was reached. It is a value to read; solving
// again makes a new one.
type Solution struct {
	book  *Book
	q     Question
	at    []int // by ID: index into steps + 1, 0 unknown, -1 given up, -2 in progress
	steps []Step
	vals  []float64
	errs  map[ID]error
}

// Solve walks the book for the wanted cells. Cells that cannot be known stay
// unknown; a formula outside its range leaves its error in Err.
func (b *Book) Solve(q Question) *Solution {
	s := b.solve(q)
	s.setBands()
	return s
}

// solve finds values without bands.
func (b *Book) solve(q Question) *Solution {
	s := &Solution{book: b, q: q, at: make([]int, len(cells)), vals: make([]float64, len(cells)), steps: make([]Step, 0, 64)}
	for _, g := range q.Given {
		from := FromSaid
		if g.Measured {
			from = FromMeasured
		}
		s.put(Step{ID: g.ID, Origin: from, Value: g.Value.Nominal, Word: g.Word, Band: g.Value, Said: g.Said})
	}
	for _, id := range q.Want {
		s.reach(id)
	}
	return s
}

func (s *Solution) put(st Step) {
	s.vals[st.ID] = st.Value
	if i := s.at[st.ID]; i > 0 { // a second value of the same slot replaces the first
		s.steps[i-1] = st
		return
	}
	s.steps = append(s.steps, st)
	s.at[st.ID] = len(s.steps)
}

// reach makes a cell known if it can be, and reports whether it is.
func (s *Solution) reach(id ID) bool {
	switch at := s.at[id]; {
	case at > 0:
		return true
	case at < 0:
		return false
	}
	s.at[id] = -2
	blocked := false // a row failed only because one of its needs is being worked out
	for _, r := range s.book.gives[id] {
		if s.try(r, &blocked) {
			return true
		}
	}
	s.at[id] = -1
	if blocked {
		s.at[id] = 0 // ask again once the cell in progress is settled
	}
	return false
}

func (s *Solution) try(r *Row, blocked *bool) bool {
	for _, n := range r.Needs {
		if s.at[n] == -2 {
			*blocked = true
			return false
		}
		if !s.reach(n) {
			return false
		}
	}
	for _, m := range r.May {
		s.reach(m)
	}
	st := Step{ID: r.Gives, Row: r}
	v := View{s: s, vals: s.vals, row: r, step: &st}
	if r.When != nil && !r.When(v) {
		return false
	}
	for _, n := range r.Needs {
		st.Inputs = append(st.Inputs, n)
	}
	for _, m := range r.May {
		if s.at[m] > 0 {
			st.Inputs = append(st.Inputs, m)
		}
	}
	if r.Assume != nil {
		g, ok := r.Assume(v)
		if !ok {
			return false
		}
		st.Origin, st.Guess, st.Value, st.Word, st.Band = Assumed, g, g.Value.Nominal, g.Word, g.Value
		if g.Constant {
			st.Origin = Constant
		}
		s.put(st)
		return true
	}
	x, err := r.Compute(v)
	if err == nil && (math.IsNaN(x) || math.IsInf(x, 0)) {
		err = &RangeError{Cell: r.Gives, Value: x, Text: "not a number: an input is outside what the formula holds for"}
	}
	if err != nil {
		if s.errs == nil {
			s.errs = map[ID]error{}
		}
		s.errs[r.Gives] = err
		return false
	}
	st.Origin, st.Value, st.Band = Computed, x, band.Exactly(x)
	s.put(st)
	return true
}

// Has reports whether a cell is known.
func (s *Solution) Has(id ID) bool { return s.at[id] > 0 }

// Value is the nominal value of a known cell, 0 otherwise.
func (s *Solution) Value(id ID) float64 { return s.vals[id] }

// Word is the word of a known word cell, "" otherwise.
func (s *Solution) Word(id ID) string {
	if st := s.Step(id); st != nil {
		return st.Word
	}
	return ""
}

// Step is the step that gave a cell, nil when it is unknown.
func (s *Solution) Step(id ID) *Step {
	if i := s.at[id]; i > 0 {
		return &s.steps[i-1]
	}
	return nil
}

// Err is the reason why a cell could not be computed, nil when there is none.
func (s *Solution) Err(id ID) error { return s.errs[id] }

// Steps lists what was reached, each after the cells it rests on.
func (s *Solution) Steps() []Step { return s.steps }

// Chain lists the steps behind a cell, the cell itself last, each once, each
// after what it rests on.
func (s *Solution) Chain(id ID) []*Step {
	var out []*Step
	seen := map[ID]bool{}
	var walk func(ID)
	walk = func(id ID) {
		st := s.Step(id)
		if st == nil || seen[id] {
			return
		}
		seen[id] = true
		for _, in := range st.Inputs {
			walk(in)
		}
		out = append(out, st)
	}
	walk(id)
	return out
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
		rows := s.book.gives[id]
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
	s    *Solution
	vals []float64
	row  *Row
	step *Step // for warnings; nil while bands are worked out
}

// Has reports whether an optional cell is known.
func (v View) Has(id ID) bool { return v.s.at[id] > 0 }

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
	return v.s.Word(id)
}

// Yes reports whether a cell holds the word "true".
func (v View) Yes(id ID) bool { return v.Word(id) == "true" }

// Duty is the duty profile, empty where none was said.
func (v View) Duty() []Stretch { return v.s.q.Duty }

// Ladder is the shop's series of a cell, or the typical one given.
func (v View) Ladder(id ID, typical Ladder) Ladder {
	if l := v.s.q.Ladders[id]; len(l) > 0 {
		return l
	}
	return typical
}

// Warn adds a sentence to the step: what widened the band, what to mind.
func (v View) Warn(text string) {
	if v.step != nil {
		v.step.Warnings = append(v.step.Warnings, text)
	}
}

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
