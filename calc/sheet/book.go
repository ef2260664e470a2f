package sheet

import "fmt"

// A Book is a set of rows, indexed by the cell they give. It is immutable after
// NewBook and may be shared by any number of solutions.
type Book struct {
	rows  []*Row
	gives [][]*Row // by ID, in order of preference
	usual int      // about how many steps a solution has
}

// NewBook checks the rows and indexes them. Formula rows of a cell come before
// assumption rows, each in the order given. It refuses a row without a source,
// without a name, or with both or neither of Compute and Assume.
func NewBook(groups ...[]Row) (*Book, error) {
	b := &Book{gives: make([][]*Row, len(cells))}
	names := map[string]bool{}
	for _, g := range groups {
		for i := range g {
			r := &g[i]
			switch {
			case r.Name == "" || names[r.Name]:
				return nil, fmt.Errorf("row for %s: name %q is empty or used twice", r.Gives, r.Name)
			case (r.Compute == nil) == (r.Assume == nil):
				return nil, fmt.Errorf("row %q: needs exactly one of Compute and Assume", r.Name)
			case r.Source == "":
				return nil, fmt.Errorf("row %q: no source", r.Name)
			case r.Compute != nil && r.Formula == "":
				return nil, fmt.Errorf("row %q: no formula to show", r.Name)
			}
			names[r.Name] = true
			b.rows = append(b.rows, r)
		}
	}
	for _, formulas := range []bool{true, false} {
		for _, r := range b.rows {
			if (r.Compute != nil) == formulas {
				b.gives[r.Gives] = append(b.gives[r.Gives], r)
			}
		}
	}
	for _, rows := range b.gives {
		if len(rows) > 0 {
			b.usual++
		}
	}
	b.usual = b.usual * 3 / 4
	return b, nil
}

// Rows lists the rows in the order of the book.
func (b *Book) Rows() []*Row { return b.rows }
