package sheet

import (
	"math"

	"heronlake.example/ask/calc/band"
)

// setBands moves every spread input (an assumption, a model constant, a range
// that was said) to its low and its high, recomputes what depends on it, and
// keeps for each step the band found: the root of the sum of squares of the
// deviations on each side (trade practice for independent allowances).
func (s *Solution) setBands() {
	n := len(s.steps)
	downstream := s.dependents()
	below, above := make([]float64, n), make([]float64, n)
	vals := make([]float64, len(s.vals))
	for i := range s.steps {
		st := &s.steps[i]
		if !spread(st) {
			continue
		}
		for _, end := range []float64{st.Band.Low, st.Band.High} {
			if end == st.Value {
				continue
			}
			copy(vals, s.vals)
			vals[st.ID] = end
			for _, j := range downstream[i] {
				t := &s.steps[j]
				x, ok := s.again(t, vals)
				if !ok {
					x = t.Value // outside the formula's range: the nominal stands, the band stops here
				}
				vals[t.ID] = x
				if t.Origin != Computed || t.Row.Ladder {
					continue
				}
				if d := x - t.Value; d < 0 {
					below[j] += d * d
				} else {
					above[j] += d * d
				}
			}
		}
	}
	for j := range s.steps {
		st := &s.steps[j]
		if st.Origin == Computed && !st.Row.Ladder {
			st.Band = band.Band[float64]{Low: st.Value - math.Sqrt(below[j]), Nominal: st.Value, High: st.Value + math.Sqrt(above[j])}
		}
	}
	s.setLadders(vals)
}

// setLadders gives a choice of the next size the sizes at the ends of what it
// was chosen for.
func (s *Solution) setLadders(vals []float64) {
	for j := range s.steps {
		st := &s.steps[j]
		if st.Origin != Computed || !st.Row.Ladder {
			continue
		}
		ends := [2]float64{st.Value, st.Value}
		for k := range ends {
			copy(vals, s.vals)
			for _, in := range st.Inputs {
				if b := s.Step(in).Band; k == 0 {
					vals[in] = b.Low
				} else {
					vals[in] = b.High
				}
			}
			if x, ok := s.again(st, vals); ok {
				ends[k] = x
			}
		}
		st.Band = band.Of(min(ends[0], ends[1], st.Value), st.Value, max(ends[0], ends[1], st.Value))
	}
}

func spread(st *Step) bool {
	return st.Origin != Computed && st.Band.Wide() && !st.ID.Describe().Word
}

// again evaluates a step's own row on other values.
func (s *Solution) again(st *Step, vals []float64) (float64, bool) {
	v := View{s: s, vals: vals, row: st.Row}
	if st.Row.Assume != nil {
		g, ok := st.Row.Assume(v)
		return g.Value.Nominal, ok
	}
	x, err := st.Row.Compute(v)
	return x, err == nil && !math.IsNaN(x) && !math.IsInf(x, 0)
}

// dependents lists, for each step, the later steps that rest on it.
func (s *Solution) dependents() [][]int {
	n := len(s.steps)
	words := (n + 63) / 64
	up := make([]uint64, n*words) // bit i of row j: step j rests on step i
	for j := range s.steps {
		mine := up[j*words : (j+1)*words]
		for _, in := range s.steps[j].Inputs {
			i := s.at[in] - 1
			mine[i/64] |= 1 << (i % 64)
			for w, bits := range up[i*words : (i+1)*words] {
				mine[w] |= bits
			}
		}
	}
	out := make([][]int, n)
	for i := range s.steps {
		if !spread(&s.steps[i]) {
			continue
		}
		for j := i + 1; j < n; j++ {
			if up[j*words+i/64]&(1<<(i%64)) != 0 {
				out[i] = append(out[i], j)
			}
		}
	}
	return out
}

// A Move is what happens to the wanted figures when one assumption is taken to
// its ends, everything else staying as it is.
type Move struct {
	ID        ID
	Low, High map[ID]float64 // the outputs with the assumption at its low and its high
	Others    []OtherWord    // for an assumed word
}

// An OtherWord is the outcome if an assumed word were another one.
type OtherWord struct {
	Word    string
	Outputs map[ID]float64
}

// Moves reports, for every assumption that a person could be asked about, the
// outputs at its ends. Each end is a full new solution, so that another row may
// come to govern.
func (s *Solution) Moves(outputs []ID) []Move {
	var moves []Move
	for i := range s.steps {
		st := &s.steps[i]
		if st.Origin != Assumed {
			continue
		}
		if st.ID.Describe().Word {
			if len(st.Guess.Others) == 0 {
				continue
			}
			m := Move{ID: st.ID}
			for _, w := range st.Guess.Others {
				m.Others = append(m.Others, OtherWord{w, s.with(Given{ID: st.ID, Word: w}, outputs)})
			}
			moves = append(moves, m)
			continue
		}
		if !st.Band.Wide() {
			continue
		}
		moves = append(moves, Move{ID: st.ID,
			Low:  s.with(Given{ID: st.ID, Value: band.Exactly(st.Band.Low)}, outputs),
			High: s.with(Given{ID: st.ID, Value: band.Exactly(st.Band.High)}, outputs)})
	}
	return moves
}

// with solves again with one more cell given and returns the outputs found.
func (s *Solution) with(g Given, outputs []ID) map[ID]float64 {
	q := s.q
	q.Given = append(append([]Given(nil), q.Given...), g)
	q.Want = outputs
	t := s.book.solve(q)
	out := map[ID]float64{}
	for _, id := range outputs {
		if t.Has(id) {
			out[id] = t.Value(id)
		}
	}
	return out
}
