package sheet

import (
	"strings"
	"sync"

	"heronlake.example/ask/calc/unit"
)

// Working writes the right-hand side of a step with its numbers put in, in the
// reader's units: "1,900 lb x 2 lb per 100 lb". It is read from the trace, so it
// cannot disagree with the value. A said or assumed step gives "".
//
// A working is arithmetic that can be done on a board: the numbers are carried
// one figure further than results are shown, each quantity stands in the unit in
// which the formula holds, and who reckons with them as printed finds Result.
func (s *Solution) Working(st *Step, sys unit.System) string {
	if st == nil || st.Row == nil || st.Row.Compute == nil {
		return ""
	}
	return s.fill(st.Row, sys)
}

// Result writes what a step's working comes to, with the unit that the formula
// gives before the one that is shown, where they differ: "0.531 h = 32 min". A
// said or assumed step gives "".
func (s *Solution) Result(st *Step, sys unit.System) string {
	if st == nil || st.Row == nil || st.Row.Compute == nil {
		return ""
	}
	form := st.ID.Describe().Form
	yields := st.Row.Yields
	if yields == unit.Plain {
		yields = form
	}
	return unit.Result(st.Value, yields, form, sys)
}

// PassedOn reports whether a step does nothing but hand on the value of another.
func (st *Step) PassedOn() bool {
	f := ""
	if st.Row != nil && st.Row.Compute != nil {
		f = st.Row.Formula
	}
	return strings.HasPrefix(f, "{") && strings.IndexByte(f, '}') == len(f)-1 && !strings.Contains(f, "=")
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
		name, _ = inForm(name)
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

// formsByName are the units that a formula can ask for: {boat.beam in ft} is a
// length in feet, or in metres for a metric reader, where the cell's own unit
// would not fit its neighbours.
var formsByName = map[string]unit.Form{
	"ft": unit.LongLength, "feet": unit.FootLength, "km/h": unit.TripPace, "knots": unit.Knot,
	"m2": unit.SquareMetre, "newtons": unit.Newton,
}

// asSold asks for a rating as it is sold, in pounds in both worlds.
const asSold = "lb"

// inForm takes "cell in unit" apart.
func inForm(name string) (cell, form string) {
	cell, form, _ = strings.Cut(name, " in ")
	if _, ok := formsByName[form]; !ok && form != asSold {
		return name, ""
	}
	return cell, form
}

// Show writes a step's value in the reader's units.
func (st *Step) Show(sys unit.System) string {
	c := st.ID.Describe()
	if c.Word {
		return st.Word
	}
	return unit.Show(st.Value, c.Form, sys)
}

func (s *Solution) fill(r *Row, sys unit.System) string {
	v := View{w: &s.walk, vals: s.walk.vals, row: r}
	if r.Spell != nil {
		if t := r.Spell(v, func(x float64, f unit.Form) string { return unit.Work(x, f, sys) }); t != "" {
			return t
		}
	}
	return expand(s.knownTerms(r.Formula), func(name string) string {
		if part, ok := strings.CutPrefix(name, "="); ok && r.Term != nil {
			x, form := r.Term(v, part)
			return unit.Work(x, form, sys)
		}
		name, form := inForm(name)
		id, ok := Lookup(name)
		if !ok {
			return name
		}
		st := s.Step(id)
		switch {
		case st == nil:
			return "0" // an optional cell that nobody gave
		case id.Describe().Word:
			return st.Word
		case form == asSold:
			return unit.Show(st.Value, unit.Rating, unit.US)
		case form != "":
			return unit.Work(st.Value, formsByName[form], sys)
		}
		return unit.Work(st.Value, id.Describe().Form, sys)
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
			cell, _ := inForm(name)
			id, ok := Lookup(cell)
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
