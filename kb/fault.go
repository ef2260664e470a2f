package kb

import (
	"cmp"
	"fmt"
	"slices"
)

// Fault is something wrong in a file of notes. It prints as "file:line: text".
type Fault struct {
	File string
	Line int // 0 where the whole file is meant
	Text string
}

func (f Fault) Error() string {
	if f.Line == 0 {
		return fmt.Sprintf("%s: %s", f.File, f.Text)
	}
	return fmt.Sprintf("%s:%d: %s", f.File, f.Line, f.Text)
}

func sortFaults(faults []Fault) {
	slices.SortStableFunc(faults, func(a, b Fault) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line), cmp.Compare(a.Text, b.Text))
	})
}
