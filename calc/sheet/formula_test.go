package sheet

import (
	"slices"
	"strings"
	"testing"
)

// standsFor lists phrases of formulas that stand for several cells at once: the
// drag of a hull for all that it is worked out from.
var standsFor = []struct {
	phrase string
	cells  []ID
}{
	{"hull drag", hullNeeds},
	{"{hull.drag-factor}", hullNeeds},
	{"{=gusts, swinging and waves}", []ID{WindGustFactor, WindYaw}},
	{"{=load of a boat of this length at 15 knots}", []ID{BoatLength}},
	{"{=disk of such a motor's prop}", []ID{MotorThrust}},
	{"{cruise.thrust-fraction}^1.5", []ID{UseSpeed}}, // it chooses the row
}

// shows reports whether a formula shows a cell, in its own unit or in another.
func shows(formula string, id ID) bool {
	return strings.Contains(formula, "{"+id.String()+"}") || strings.Contains(formula, "{"+id.String()+" in ")
}

// What a row needs, it shows: a cell that enters a result stands in the formula
// that is written out for the reader. A cell that only chooses among rows, as
// the kind of speed control, need not.
func TestFormulasShowWhatTheyNeed(t *testing.T) {
	for _, rows := range [][]Row{windRows, thrustRows, motorRows} {
		for i := range rows {
			r := &rows[i]
			if r.Compute == nil {
				continue
			}
			for _, id := range r.Needs {
				if shows(r.Formula, id) || r.When != nil && (id.Describe().Word || id == LoadTotal) {
					continue
				}
				stands := slices.ContainsFunc(standsFor, func(s struct {
					phrase string
					cells  []ID
				}) bool {
					return strings.Contains(r.Formula, s.phrase) && slices.Contains(s.cells, id)
				})
				if !stands {
					t.Errorf("row %q needs %s and does not show it: %q", r.Name, id, r.Formula)
				}
			}
		}
	}
}

// Every row that can be seen in an answer says where it comes from, in words of
// its own: no source is left at a placeholder.
func TestWorkingsAreWhole(t *testing.T) {
	for _, b := range boats {
		s := StandardBook().Solve(Question{Given: b.given, Duty: b.duty, Want: All()})
		for i := range s.Steps() {
			st := &s.Steps()[i]
			w := s.Working(st, 0)
			if strings.ContainsAny(w, "{}") {
				t.Errorf("%s: %s is worked out as %q", b.name, st.ID, w)
			}
			if st.Origin == Computed && w == "" {
				t.Errorf("%s: %s has no working", b.name, st.ID)
			}
		}
	}
}
