package sheet

import (
	"math"
	"math/bits"

	"heronlake.example/ask/calc/band"
)

// A Move is what happens to the wanted figures when one assumption is taken to
// its ends, everything else staying as it is.
type Move struct {
	ID        ID
	Low, High Outputs     // the outputs with the assumption at its low and its high
	Others    []OtherWord // for an assumed word
}

// An OtherWord is the outcome if an assumed word were another one.
type OtherWord struct {
	Word    string
	Outputs Outputs
}

// Outputs are the values of the wanted figures in one what-if.
type Outputs struct {
	ids  []ID
	vals []float64 // not a number where unknown
}

// Of is the value of an output, and whether it is known in this what-if.
func (o Outputs) Of(id ID) (float64, bool) {
	for i, x := range o.ids {
		if x == id && i < len(o.vals) {
			return o.vals[i], !math.IsNaN(o.vals[i])
		}
	}
	return 0, false
}

// Moves reports, for every assumption that a person could be asked about, the
// outputs at its ends. Each end is a solution of its own, as if the person had
// said it, so that another row may come to govern; what does not rest on the
// assumption is taken over.
func (s *Solution) Moves(outputs []ID) []Move {
	w := newWhatIf(s)
	var moves []Move
	for i := range s.steps {
		st := &s.steps[i]
		if st.Origin != Assumed {
			continue
		}
		if cells[st.ID].Word {
			if len(st.Guess.Others) == 0 {
				continue
			}
			m := Move{ID: st.ID, Others: make([]OtherWord, 0, len(st.Guess.Others))}
			for _, other := range st.Guess.Others {
				m.Others = append(m.Others, OtherWord{other, w.with(Given{ID: st.ID, Word: other}, outputs)})
			}
			moves = append(moves, m)
			continue
		}
		if !st.Band.Wide() {
			continue
		}
		moves = append(moves, Move{ID: st.ID,
			Low:  w.with(Given{ID: st.ID, Value: band.Exactly(st.Band.Low)}, outputs),
			High: w.with(Given{ID: st.ID, Value: band.Exactly(st.Band.High)}, outputs)})
	}
	return moves
}

// A whatIf solves again with one cell changed, starting from a solution.
type whatIf struct {
	walk
	looked  []bitset // by cell: the cells that looked at it
	suspect bitset
	queue   []ID
}

func newWhatIf(s *Solution) *whatIf {
	n := len(cells)
	sets := bitsets(n+1, n)
	w := &whatIf{walk: newWalk(s.walk.book, s.walk.q), looked: sets[:n], suspect: sets[n], queue: make([]ID, 0, n)}
	w.base = &s.walk
	for id := range s.walk.state {
		if st := s.walk.state[id]; st != found && st != gaveUp {
			continue
		}
		for _, r := range s.walk.tried(ID(id)) {
			for _, list := range [3][]ID{r.Needs, r.May, r.Said} {
				for _, in := range list {
					w.looked[in].set(id)
				}
			}
		}
	}
	return w
}

// tried are the rows of a cell up to the one that gave it; all where none did.
func (w *walk) tried(id ID) []*Row {
	rows := w.book.gives[id]
	return rows[:min(int(w.row[id])+1, len(rows))]
}

// with states one cell, and finds the outputs anew.
func (w *whatIf) with(g Given, outputs []ID) Outputs {
	copy(w.state, w.base.state)
	copy(w.vals, w.base.vals)
	copy(w.words, w.base.words)
	copy(w.row, w.base.row)
	w.doubt(g.ID)
	w.give(g)
	out := Outputs{ids: outputs, vals: make([]float64, len(outputs))}
	for i, id := range outputs {
		out.vals[i] = math.NaN()
		if w.reach(id) {
			out.vals[i] = w.vals[id]
		}
	}
	return out
}

// doubt marks everything that looked at a cell, at what looked at it, and so on.
func (w *whatIf) doubt(id ID) {
	clear(w.suspect)
	w.queue = append(w.queue[:0], id)
	for len(w.queue) > 0 {
		from := w.looked[w.queue[len(w.queue)-1]]
		w.queue = w.queue[:len(w.queue)-1]
		for i, word := range from {
			fresh := word &^ w.suspect[i]
			w.suspect[i] |= word
			for ; fresh != 0; fresh &= fresh - 1 {
				id := ID(i<<6 + bits.TrailingZeros64(fresh))
				w.state[id] = suspect
				w.queue = append(w.queue, id)
			}
		}
	}
}

// revisit settles a suspect cell: as it was, if nothing that it looked at has
// changed, and anew otherwise.
func (w *walk) revisit(id ID) bool {
	w.state[id] = inProgress
	for _, r := range w.tried(id) {
		for _, list := range [3][]ID{r.Needs, r.May, r.Said} {
			for _, in := range list {
				if w.state[in] == suspect {
					w.reach(in)
				}
				if w.changed(in) {
					return w.settle(id)
				}
			}
		}
	}
	w.state[id] = w.base.state[id]
	return w.state[id] >= found
}

// changed reports whether a cell stands otherwise than in the base.
func (w *walk) changed(id ID) bool {
	return w.state[id] != w.base.state[id] || w.vals[id] != w.base.vals[id] || w.words[id] != w.base.words[id]
}
