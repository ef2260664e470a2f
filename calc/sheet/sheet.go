// Package sheet is the one sheet of figures: every quantity of a fitting is a
// cell, every formula and every assumption is a row that names the cells it
// needs and the one it gives, and a solution is a walk over that graph.
//
// One walk answers all that can be asked of a figure: whether it can be known
// and what it still lacks, how it came about, how far to trust it, and which
// measure would move it most. No other package has a second opinion on these.
//
//	cells.go     the cells: slots and figures by their public names
//	book.go      the rows, gathered in one Book; the order of preference
//	solve.go     the walk: given, computed, assumed, or unknown
//	bands.go     each assumption moved to its ends: how far a figure may be trusted
//	moves.go     each assumption as if it had been said: the measure worth asking for
//	reverse.go   one more cell given: the points of a curve, "and at 20 mph?"
//	trial.go     one question after another by values alone: many candidates
//	working.go   a step in words: the formula with its numbers put in
//	rows_*.go    the rows, one subject a file
//	standard.go  the Book of this program
//
// Limits: rows hold values in SI (hours, ampere hours and watt hours for a
// battery's time, charge and energy). A row reads only the cells that it
// declares. A cell that several rows can give takes the first whose needs are
// met; what a person said always comes first. Outside the range of a formula its
// row fails with an error that names the input, or tells a doubt (View.Doubt) that
// goes with every figure resting on it. A working is arithmetic: board_test.go
// reckons each with the numbers as printed.
package sheet

import (
	"fmt"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// ID names a cell. It is an index into the table of cells, so that a solution
// is an array and a misspelt name does not compile.
type ID int

// Cell describes one quantity of the fitting.
type Cell struct {
	Name   string    // public id: a slot or a figure of the answer contract, or an inner quantity
	Form   unit.Form // how it is shown, and in which SI unit it is stored
	Label  string    // as a person calls it
	Word   bool      // holds a word (a hull kind), not a number
	Figure bool      // part of the public contract of figures
}

// roomForCells is a little more than there are, so that the two grow once.
const roomForCells = 320

var (
	cells  = make([]Cell, 0, roomForCells)
	byName = make(map[string]ID, roomForCells)
)

// declare adds a cell while the package is set up.
func declare(c Cell) ID {
	if _, twice := byName[c.Name]; twice {
		panic("sheet: cell declared twice: " + c.Name)
	}
	id := ID(len(cells))
	cells = append(cells, c)
	byName[c.Name] = id
	return id
}

func slot(name string, f unit.Form, label string) ID {
	return declare(Cell{Name: name, Form: f, Label: label})
}

func word(name, label string) ID { return declare(Cell{Name: name, Label: label, Word: true}) }

func figure(name string, f unit.Form, label string) ID {
	return declare(Cell{Name: name, Form: f, Label: label, Figure: true})
}

// inner is a quantity that lies between said and shown: an area, a coefficient.
func inner(name string, f unit.Form, label string) ID {
	return declare(Cell{Name: name, Form: f, Label: label})
}

// Describe returns the cell's description.
func (id ID) Describe() Cell { return cells[id] }

// String is the cell's public name.
func (id ID) String() string { return cells[id].Name }

// Lookup finds a cell by its public name.
func Lookup(name string) (ID, bool) {
	id, ok := byName[name]
	return id, ok
}

// All lists every cell in the order of declaration.
func All() []ID {
	ids := make([]ID, len(cells))
	for i := range ids {
		ids[i] = ID(i)
	}
	return ids
}

// Basis says what kind of ground a value stands on (answer contract).
type Basis string

const (
	Practice   Basis = "practice"
	Model      Basis = "model"
	Regulation Basis = "regulation"
	Standard   Basis = "standard"
	Stock      Basis = "stock"
	Said       Basis = "said"
	Estimate   Basis = "estimate"
)

// A Row gives one cell, by a formula (Compute) or by an assumption (Assume);
// exactly one of the two is set.
type Row struct {
	Name  string // readable and unique; :why prints it
	Gives ID
	Needs []ID // all must be known before the row is tried
	May   []ID // read where they can be known; the row does without
	// Said is read only where a person stated it, and is never worked out: the
	// weight of the batteries may look at a stated count of them, though the
	// count that the core would work out rests on that very weight. A row asks
	// View.Said before it reads such a cell.
	Said []ID
	// When, if set, is asked after Needs and May are known.
	When func(v View) bool
	// Formula shows the right-hand side with cells in braces, for instance
	// "{load.total} x {thrust.ratio}"; numbers are put in from the trace. A unit
	// may be asked for, {chop.height in ft}, so that what is multiplied fits.
	Formula string
	// Yields is the form in which the formula gives its result, where that is not
	// the cell's: a draught comes out in feet and is shown in inches.
	Yields unit.Form
	// Spell writes the formula with its numbers where Formula cannot: where their
	// count is not known beforehand, as of a profile, or where a bound was met.
	// "" leaves it to Formula. write puts a number in the reader's units.
	Spell func(v View, write func(x float64, f unit.Form) string) string
	// Term gives the parts of a formula that are no cells of their own, written
	// {=name}: the friction within a hull's drag. It is asked only when a
	// working is shown, so that a solution stays short.
	Term   func(v View, name string) (float64, unit.Form)
	Source string // regulation, standard, handbook; or "common practice, no published source"; or "from memory"
	Basis  Basis
	// Aside names the needs that did not decide: the smaller of two routes, a
	// speed that was only held against the result. A working shown to a person
	// leaves out what stands behind them.
	Aside func(v View) []ID
	// Ladder marks a choice of the next step of a series, whose ends come from
	// the ends of its needs rather than from a sum of squares.
	Ladder  bool
	Compute func(v View) (float64, error)
	Assume  func(v View) (Guess, bool)
}

// A Guess is the value that an assumption row puts in for what nobody said.
type Guess struct {
	Value  band.Band[float64]
	Word   string   // for a word cell
	Others []string // for a word cell: what else it might well be
	Why    string   // a short reason for the reader: "two aboard unless you say"
	// Constant marks a property of the model or the trade that no customer can
	// be asked for; it widens bands but is not listed among the assumptions.
	Constant bool
}

// A RangeError says that an input lies where a formula does not hold.
type RangeError struct {
	Cell      ID
	Value     float64
	Low, High float64 // SI; equal when only the text tells
	Text      string
}

func (e *RangeError) Error() string {
	c := e.Cell.Describe()
	if e.Text != "" {
		return fmt.Sprintf("%s of %s: %s", c.Label, unit.Show(e.Value, c.Form, unit.US), e.Text)
	}
	return fmt.Sprintf("%s of %s is outside %s to %s", c.Label, unit.Show(e.Value, c.Form, unit.US),
		unit.Show(e.Low, c.Form, unit.US), unit.Show(e.High, c.Form, unit.US))
}
