package sheet

import (
	"math"
	"math/bits"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
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
//
// What cannot be below nothing has no end there: see possible.
func (s *Solution) setBands() {
	sp := newSpreading(s)
	for i := range s.steps {
		st := &s.steps[i]
		if !spread(st) {
			continue
		}
		for _, end := range [2]float64{st.Band.Low, st.Band.High} {
			if end != st.Value {
				sp.move(i, end)
			}
		}
	}
	for j := range s.steps {
		if st := &s.steps[j]; st.Origin == Computed && !st.Row.Ladder {
			st.Band = possible(st.ID, sp.far.band(j, st.Value))
		}
	}
	s.setLadders(sp.vals)
}

// A spreading follows one changed input after another through the steps.
type spreading struct {
	s       *Solution
	reads   []bitset  // by step: the later steps that read it
	pending bitset    // of the move under way: the steps still to be looked at
	behind  bitset    // of the move under way: the steps that read one that jumped
	vals    []float64 // the nominal values, but for the move under way
	moved   []ID
	far     deviations
}

func newSpreading(s *Solution) *spreading {
	n := len(s.steps)
	sets := bitsets(n+2, n)
	sp := &spreading{s: s, reads: sets[:n], pending: sets[n], behind: sets[n+1],
		vals: append([]float64(nil), s.walk.vals...), moved: make([]ID, 0, n), far: newDeviations(n)}
	for j := range s.steps {
		for _, in := range s.steps[j].Inputs {
			sp.reads[s.at[in]-1].set(j)
		}
	}
	return sp
}

// move puts step i at one of its ends, notes how far each step behind it goes,
// and takes it back.
func (sp *spreading) move(i int, end float64) {
	s := sp.s
	sp.vals[s.steps[i].ID] = end
	sp.moved = append(sp.moved[:0], s.steps[i].ID)
	copy(sp.pending, sp.reads[i])
	clear(sp.behind)
	for j := sp.pending.least(); j >= 0; j = sp.pending.least() {
		sp.pending.clear(j)
		t := &s.steps[j]
		x, ok := s.again(t, sp.vals)
		if !ok || x == t.Value {
			continue // unmoved, or outside the formula's range: there the nominal stands, and the band stops
		}
		sp.vals[t.ID] = x
		sp.moved = append(sp.moved, t.ID)
		sp.pending.join(sp.reads[j])
		jumped := t.Row.Ladder || sp.behind.has(j)
		if jumped {
			sp.behind.join(sp.reads[j])
		}
		sp.far.add(j, x-t.Value, jumped)
	}
	for _, id := range sp.moved {
		sp.vals[id] = s.walk.vals[id]
	}
}

// deviations holds by step how far it went to either side, as squares: of smooth
// changes the sum, of jumps the farthest.
type deviations struct{ below, above, dropped, rose []float64 }

func newDeviations(n int) deviations {
	all := make([]float64, 4*n)
	return deviations{all[:n], all[n : 2*n], all[2*n : 3*n], all[3*n:]}
}

func (f deviations) add(j int, d float64, jumped bool) {
	switch {
	case jumped && d < 0:
		f.dropped[j] = max(f.dropped[j], d*d)
	case jumped:
		f.rose[j] = max(f.rose[j], d*d)
	case d < 0:
		f.below[j] += d * d
	default:
		f.above[j] += d * d
	}
}

// mayBeNegative reports whether a cell means something below nothing: what is
// left over and can be missing. Of the rest, points on a scale apart, none can.
func mayBeNegative(id ID) bool {
	switch id {
	case LoadMargin, LoadAdded, ShaftSpare, ShaftSubmerged, ShaftWaveLimit, TrimFreeboard, WireMilsExtra:
		return true
	}
	return false
}

// possible cuts a band at what can be. Deviations that add up by their squares
// know nothing of such ends: a push that swinging may raise fourfold, and lowers
// at most to nothing, gets a low end below nothing. A share ends at the whole.
func possible(id ID, b band.Band[float64]) band.Band[float64] {
	switch form := cells[id].Form; {
	case form == unit.Degree, form == unit.InsulationClass, form == unit.WireGauge, mayBeNegative(id):
		return b
	case form == unit.Fraction && b.Nominal <= 1:
		b.High = min(b.High, 1)
	}
	if b.Nominal >= 0 {
		b.Low = max(b.Low, 0)
	}
	return b
}

func (f deviations) band(j int, nominal float64) band.Band[float64] {
	return band.Band[float64]{Low: nominal - math.Sqrt(f.below[j]+f.dropped[j]), Nominal: nominal, High: nominal + math.Sqrt(f.above[j]+f.rose[j])}
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
