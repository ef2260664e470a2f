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
	w := newWhatIf(s, outputs)
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
				m.Others = append(m.Others, OtherWord{other, w.with(Given{ID: st.ID, Word: other})})
			}
			moves = append(moves, m)
			continue
		}
		if !st.Band.Wide() {
			continue
		}
		moves = append(moves, Move{ID: st.ID,
			Low:  w.with(Given{ID: st.ID, Value: band.Exactly(st.Band.Low)}),
			High: w.with(Given{ID: st.ID, Value: band.Exactly(st.Band.High)})})
	}
	return moves
}

// A whatIf solves again with one cell changed, starting from a solution.
//
// Cells are gone through in the order in which they were settled there, and only
// those are settled anew that looked at one which has come out otherwise. What
// could come out otherwise is marked suspect beforehand, so that a row which was
// not used before, and reads a cell further on, does not take it as it was.
type whatIf struct {
	walk
	outputs []ID
	order   []ID     // as settled in the base
	looked  []bitset // by cell: the places in the order of the cells that looked at it
	needed  bitset   // places of the cells that the outputs rest on
	pending bitset   // places still to be settled anew
	doubted bitset
	marked  []ID
	moved   ID // the cell whose lookers are marked
	spare   []float64
}

func newWhatIf(s *Solution, outputs []ID) *whatIf {
	n, m := len(cells), len(s.order)
	sets := bitsets(n+3, m)
	w := &whatIf{walk: newWalk(s.walk.book, s.walk.q), outputs: outputs, order: s.order,
		looked: sets[:n], needed: sets[n], pending: sets[n+1], doubted: sets[n+2], marked: make([]ID, 0, n), moved: -1}
	w.base, w.whatIf, w.differs, w.touched = &s.walk, w, make([]bool, n), make([]ID, 0, n)
	copy(w.state, s.walk.state)
	copy(w.vals, s.walk.vals)
	copy(w.words, s.walk.words)
	copy(w.row, s.walk.row)
	place := make([]int16, n)
	for p, id := range s.order {
		place[id] = int16(p) + 1
		for _, r := range s.walk.tried(id) {
			for _, list := range [3][]ID{r.Needs, r.May, r.Said} {
				for _, in := range list {
					w.looked[in].set(p)
				}
			}
		}
	}
	w.place = place
	w.need(outputs)
	return w
}

// need marks all that cells rest on.
func (w *whatIf) need(ids []ID) {
	for _, id := range ids {
		p := int(w.place[id]) - 1
		if p < 0 || w.needed.has(p) {
			continue
		}
		w.needed.set(p)
		for _, r := range w.base.tried(id) {
			w.need(r.Needs)
			w.need(r.May)
			w.need(r.Said)
		}
	}
}

// tried are the rows of a cell up to the one that gave it; all where none did.
func (w *walk) tried(id ID) []*Row {
	rows := w.book.gives[id]
	return rows[:min(int(w.row[id])+1, len(rows))]
}

// with states one cell, and finds the outputs anew. It leaves the what-if as it
// was.
func (w *whatIf) with(g Given) Outputs {
	w.doubt(g.ID)
	w.touched = append(w.touched[:0], g.ID)
	w.give(g)
	w.differs[g.ID] = true
	copy(w.pending, w.looked[g.ID])
	for p := w.next(); p >= 0; p = w.next() {
		w.pending.clear(p)
		if id := w.order[p]; w.state[id] == suspect {
			w.now = int16(p) + 1
			w.settle(id)
		}
	}
	w.now = math.MaxInt16 // all that is needed has come to rest
	out := Outputs{ids: w.outputs, vals: w.room()}
	for i, id := range w.outputs {
		out.vals[i] = math.NaN()
		if w.reach(id) {
			out.vals[i] = w.vals[id]
		}
	}
	for _, id := range w.touched {
		w.state[id], w.vals[id], w.words[id], w.row[id] = w.base.state[id], w.base.vals[id], w.base.words[id], w.base.row[id]
		w.differs[id] = false
	}
	for _, id := range w.marked {
		w.state[id] = w.base.state[id]
	}
	return out
}

// room is where the outputs of one what-if go, cut from a larger piece.
func (w *whatIf) room() []float64 {
	n := len(w.outputs)
	if len(w.spare) < n {
		w.spare = make([]float64, 16*n)
	}
	room := w.spare[:n:n]
	w.spare = w.spare[n:]
	return room
}

// next is the first place that is pending and needed, -1 when there is none.
func (w *whatIf) next() int {
	for i, word := range w.pending {
		if word &= w.needed[i]; word != 0 {
			return i<<6 + bits.TrailingZeros64(word)
		}
	}
	return -1
}

// doubt marks as suspect everything that looked at a cell, at what looked at it,
// and so on.
func (w *whatIf) doubt(id ID) {
	if w.moved != id {
		w.moved, w.marked = id, w.marked[:0]
		clear(w.doubted)
		w.doubtLookers(id)
		for i := 0; i < len(w.marked); i++ {
			w.doubtLookers(w.marked[i])
		}
	}
	for _, id := range w.marked {
		w.state[id] = suspect
	}
}

func (w *whatIf) doubtLookers(id ID) {
	for i, word := range w.looked[id] {
		fresh := word &^ w.doubted[i]
		w.doubted[i] |= word
		for ; fresh != 0; fresh &= fresh - 1 {
			w.marked = append(w.marked, w.order[i<<6+bits.TrailingZeros64(fresh)])
		}
	}
}

// revisit settles a suspect cell. One that lies behind in the order has come to
// rest as it was; one further on is as it was if nothing that it looked at
// differs from the base, and is settled anew otherwise.
func (w *walk) revisit(id ID) bool {
	if p := w.place[id]; p < w.now && w.whatIf.needed.has(int(p)-1) {
		w.state[id] = w.base.state[id]
		return w.state[id] >= found
	}
	w.state[id] = inProgress
	for _, r := range w.base.tried(id) {
		for _, list := range [3][]ID{r.Needs, r.May, r.Said} {
			for _, in := range list {
				switch w.state[in] {
				case suspect:
					w.reach(in)
				case inProgress:
					return w.settle(id)
				}
				if w.differs[in] {
					return w.settle(id)
				}
			}
		}
	}
	w.state[id] = w.base.state[id]
	return w.state[id] >= found
}

// note keeps, in a what-if, that a cell was settled anew; where it differs, all
// that looked at it has to be settled anew as well.
func (w *walk) note(id ID) {
	b := w.base
	w.touched = append(w.touched, id)
	if w.state[id] != b.state[id] || w.vals[id] != b.vals[id] || w.words[id] != b.words[id] {
		w.differs[id] = true
		w.whatIf.pending.join(w.whatIf.looked[id])
	}
}
