package sheet

// A Trial solves one question after another by values alone, as SolveNominal
// does, for holding many candidates against one boat: it keeps no steps and no
// reasons, and works in the same room each time. It is for one goroutine.
type Trial struct {
	walk walk
	q    Question
}

// NewTrial makes the room for trials.
func (b *Book) NewTrial() *Trial {
	t := &Trial{}
	t.walk = newWalk(b, &t.q)
	return t
}

// Solve forgets the question before and walks the book for the wanted cells of
// this one.
func (t *Trial) Solve(q Question) {
	w := &t.walk
	t.q = q
	clear(w.state)
	clear(w.vals)
	clear(w.words)
	for _, g := range q.Given {
		w.give(g)
	}
	for _, id := range q.Want {
		w.reach(id)
	}
}

// Has reports whether a cell is known.
func (t *Trial) Has(id ID) bool { return t.walk.state[id] >= found }

// Value is the value of a known cell, 0 otherwise.
func (t *Trial) Value(id ID) float64 { return t.walk.vals[id] }

// Word is the word of a known word cell, "" otherwise.
func (t *Trial) Word(id ID) string { return t.walk.words[id] }
