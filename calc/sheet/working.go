package sheet

import (
	"strings"
	"sync"

	"heronlake.example/ask/calc/unit"
)

// Working writes the right-hand side of a step with its numbers put in, in the
// reader's units: "1,900 lb x 2 lb per 100 lb". It is read from the trace, so it
// cannot disagree with the value. A said or assumed step gives "".
func (s *Solution) Working(st *Step, sys unit.System) string {
	if st == nil || st.Row == nil || st.Row.Compute == nil {
		return ""
	}
	return s.fill(st.Row, sys)
}

// Symbols writes the right-hand side with the cells' labels: "loaded weight x
// thrust per weight".
func (st *Step) Symbols() string {
	if st.Row == nil {
		return ""
	}
	if t, ok := symbols.Load(st.Row); ok {
		return t.(string)
	}
	t := expand(st.Row.Formula, func(name string) string {
		if id, ok := Lookup(name); ok {
			return strings.ToLower(id.Describe().Label)
		}
		return strings.TrimPrefix(name, "=")
	})
	symbols.Store(st.Row, t)
	return t
}

// symbols remembers what Symbols wrote; it depends on nothing but the row.
var symbols sync.Map // of *Row to string

// Show writes a step's value in the reader's units.
func (st *Step) Show(sys unit.System) string {
	c := st.ID.Describe()
	if c.Word {
		return st.Word
	}
	return unit.Show(st.Value, c.Form, sys)
}

func (s *Solution) fill(r *Row, sys unit.System) string {
	return expand(s.knownTerms(r.Formula), func(name string) string {
		if part, ok := strings.CutPrefix(name, "="); ok && r.Term != nil {
			x, form := r.Term(View{w: &s.walk, vals: s.walk.vals, row: r}, part)
			return unit.Show(x, form, sys)
		}
		id, ok := Lookup(name)
		if !ok {
			return name
		}
		st := s.Step(id)
		if st == nil {
			return "0" // an optional cell that nobody gave
		}
		return st.Show(sys)
	})
}

// knownTerms drops the terms of a sum whose cell nobody gave: " + {x}" and
// " - {x}".
func (s *Solution) knownTerms(formula string) string {
	for _, sign := range []string{" + {", " - {"} {
		for from := 0; ; {
			i := strings.Index(formula[from:], sign)
			if i < 0 {
				break
			}
			i += from
			name, rest, closed := strings.Cut(formula[i+len(sign):], "}")
			id, ok := Lookup(name)
			ends := rest == "" || rest[0] == ')' || strings.HasPrefix(rest, " + ") || strings.HasPrefix(rest, " - ")
			if !closed || !ok || s.Has(id) || !ends {
				from = i + len(sign)
				continue
			}
			formula = formula[:i] + rest
			from = i
		}
	}
	return formula
}

// expand replaces each {name}.
func expand(text string, by func(string) string) string {
	var b strings.Builder
	for {
		open := strings.IndexByte(text, '{')
		if open < 0 {
			break
		}
		end := strings.IndexByte(text[open:], '}')
		if end < 0 {
			break
		}
		b.WriteString(text[:open])
		b.WriteString(by(text[open+1 : open+end]))
		text = text[open+end+1:]
	}
	b.WriteString(text)
	return b.String()
}

// Fill replaces each {cell} in a text by its value in the reader's units, or by
// "?" where the cell is unknown.
func (s *Solution) Fill(text string, sys unit.System) string {
	return expand(text, func(name string) string {
		if id, ok := Lookup(name); ok {
			if st := s.Step(id); st != nil {
				return st.Show(sys)
			}
		}
		return "?"
	})
}
