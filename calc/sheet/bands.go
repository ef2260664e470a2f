package sheet

import (
	"math"
	"math/bits"

	"heronlake.example/ask/calc/band"
)

// bitset is a set of small numbers.
type bitset []uint64

func (b bitset) set(i int)      { b[i>>6] |= 1 << (i & 63) }
func (b bitset) clear(i int)    { b[i>>6] &^= 1 << (i & 63) }
func (b bitset) has(i int) bool { return b[i>>6]&(1<<(i&63)) != 0 }

func (b bitset) join(o bitset) {
	for i, w := range o {
		b[i] |= w
	}
}

// least is the smallest member, -1 of an empty set.
func (b bitset) least() int {
	for i, w := range b {
		if w != 0 {
			return i<<6 + bits.TrailingZeros64(w)
		}
	}
	return -1
}

// bitsets makes n sets for members below size, in one piece.
func bitsets(n, size int) []bitset {
	words := (size + 63) / 64
	all := make([]uint64, n*words)
	sets := make([]bitset, n)
	for i := range sets {
		sets[i] = all[i*words : (i+1)*words : (i+1)*words]
	}
	return sets
}

// setBands moves every spread input (an assumption, a model constant, a range
// that was said) to its low and its high, recomputes what comes out otherwise,
// and keeps for each step the band found: the root of the sum of squares of the
// deviations on each side (trade practice for independent allowances).
//
// A change is followed only as far as it goes: where the larger of two routes
// stays the larger, or a ladder gives the same step, nothing behind it moves.
//
// Where a change makes a ladder take another step, everything behind it jumps to
// another motor or wire. Several inputs that cause the same jump do not make it
// larger, so of the jumps only the farthest counts.
func (s *Solution) setBands() {
	n := len(s.steps)
	sets := bitsets(n+2, n)
	reads, pending := sets[:n], sets[n] // by step: the later steps that read it
	behind := sets[n+1]                 // of the move under way: the steps that read one that jumped
	for j := range s.steps {
		for _, in := range s.steps[j].Inputs {
			reads[s.at[in]-1].set(j)
		}
	}
	sums := make([]float64, 4*n)
	below, above := sums[:n], sums[n:2*n]         // squares of the smooth deviations
	dropped, rose := sums[2*n:3*n], sums[3*n:4*n] // squares of the farthest jumps
	vals := append([]float64(nil), s.walk.vals...)
	moved := make([]ID, 0, n)
	for i := range s.steps {
		st := &s.steps[i]
		if !spread(st) {
			continue
		}
		for _, end := range [2]float64{st.Band.Low, st.Band.High} {
			if end == st.Value {
				continue
			}
			vals[st.ID] = end
			moved = append(moved[:0], st.ID)
			copy(pending, reads[i])
			clear(behind)
			for j := pending.least(); j >= 0; j = pending.least() {
				pending.clear(j)
				t := &s.steps[j]
				x, ok := s.again(t, vals)
				if !ok || x == t.Value {
					continue // unmoved, or outside the formula's range: there the nominal stands, and the band stops
				}
				vals[t.ID] = x
				moved = append(moved, t.ID)
				pending.join(reads[j])
				jumped := t.Row.Ladder || behind.has(j)
				if jumped {
					behind.join(reads[j])
				}
				switch d := x - t.Value; {
				case jumped && d < 0:
					dropped[j] = max(dropped[j], d*d)
				case jumped:
					rose[j] = max(rose[j], d*d)
				case d < 0:
					below[j] += d * d
				default:
					above[j] += d * d
				}
			}
			for _, id := range moved {
				vals[id] = s.walk.vals[id]
			}
		}
	}
	for j := range s.steps {
		st := &s.steps[j]
		if st.Origin == Computed && !st.Row.Ladder {
			st.Band = band.Band[float64]{Low: st.Value - math.Sqrt(below[j]+dropped[j]), Nominal: st.Value, High: st.Value + math.Sqrt(above[j]+rose[j])}
		}
	}
	s.setLadders(vals)
}

// setLadders gives a choice of the next size the sizes at the ends of what it
// was chosen for. vals are the nominal values, and are left so.
func (s *Solution) setLadders(vals []float64) {
	for j := range s.steps {
		st := &s.steps[j]
		if st.Origin != Computed || !st.Row.Ladder {
			continue
		}
		ends := [2]float64{st.Value, st.Value}
		for k := range ends {
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
		for _, in := range st.Inputs {
			vals[in] = s.walk.vals[in]
		}
		st.Band = band.Of(min(ends[0], ends[1], st.Value), st.Value, max(ends[0], ends[1], st.Value))
	}
}

func spread(st *Step) bool {
	return st.Origin != Computed && st.Band.Wide() && !cells[st.ID].Word
}

// again evaluates a step's own row on other values.
func (s *Solution) again(st *Step, vals []float64) (float64, bool) {
	v := View{w: &s.walk, vals: vals, row: st.Row, bandEnd: true, near: st.Value}
	if st.Row.Assume != nil {
		g, ok := st.Row.Assume(v)
		return g.Value.Nominal, ok
	}
	x, err := st.Row.Compute(v)
	return x, err == nil && !math.IsNaN(x) && !math.IsInf(x, 0)
}
