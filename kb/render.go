package kb

import (
	"fmt"
	"strings"
	"sync"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
)

// Render writes a passage's text for a reader of the given units, each
// reference filled in from the sheet, so that a note follows when a formula or a
// constant changes. It fails, naming the reference, where one cannot be read or
// computed.
func Render(p Passage, sys unit.System) (string, error) {
	var out strings.Builder
	rest := p.Text
	for {
		open, end, inner, ok := nextReference(rest)
		if !ok {
			break
		}
		if end < 0 {
			return "", fmt.Errorf("passage %s: braces opened at %q are never closed", p.ID, clip(rest[open:], 30))
		}
		figure, err := fill(inner, sys)
		if err != nil {
			return "", fmt.Errorf("passage %s: {{%s}}: %w", p.ID, inner, err)
		}
		out.WriteString(rest[:open])
		out.WriteString(figure)
		rest = rest[end:]
	}
	out.WriteString(rest)
	return out.String(), nil
}

// filled remembers the figures of references already worked out. They depend on
// nothing but the reference and the units, and are as many as the notes hold.
var filled sync.Map // of filling to string

type filling struct {
	inner string
	sys   unit.System
}

// fill works out one reference.
func fill(inner string, sys unit.System) (string, error) {
	key := filling{inner, sys}
	if t, ok := filled.Load(key); ok {
		return t.(string), nil
	}
	r, err := parseReference(inner)
	if err != nil {
		return "", err
	}
	st, err := solve(r)
	if err != nil {
		return "", err
	}
	text := show(st, r.form, sys)
	filled.Store(key, text)
	return text, nil
}

// trials are for the references of which the value alone is shown: a first
// answer fills some dozens.
var trials = sync.Pool{New: func() any { return sheet.StandardBook().NewTrial() }}

// solve works out a reference's cell, with its band where that is shown.
func solve(r reference) (*sheet.Step, error) {
	q := sheet.Question{Given: r.given, Want: []sheet.ID{r.cell}}
	if r.form != "low" && r.form != "high" && r.form != "band" {
		t := trials.Get().(*sheet.Trial)
		defer trials.Put(t)
		t.Solve(q)
		if t.Has(r.cell) {
			return &sheet.Step{ID: r.cell, Value: t.Value(r.cell), Word: t.Word(r.cell)}, nil
		}
	}
	s := sheet.StandardBook().Solve(q)
	st := s.Step(r.cell)
	if st == nil {
		return nil, whyNot(s, r.cell)
	}
	return st, nil
}

// whyNot says what keeps a cell from being known.
func whyNot(s *sheet.Solution, id sheet.ID) error {
	if err := s.Err(id); err != nil {
		return err
	}
	var missing []string
	for _, m := range s.Missing(id) {
		if err := s.Err(m); err != nil {
			return err
		}
		missing = append(missing, m.String())
	}
	return fmt.Errorf("cannot be computed without %s", strings.Join(missing, ", "))
}

// show writes a step as its reference asks.
func show(st *sheet.Step, form string, sys unit.System) string {
	c := st.ID.Describe()
	switch {
	case c.Word:
		return st.Word
	case form == "low":
		return unit.Show(st.Band.Low, c.Form, sys)
	case form == "high":
		return unit.Show(st.Band.High, c.Form, sys)
	case form == "bare":
		n, _ := unit.Split(st.Value, c.Form, sys)
		return n
	case form == "band":
		return span(st.Band.Low, st.Band.High, c.Form, sys)
	}
	return unit.Show(st.Value, c.Form, sys)
}

// span writes a range with its unit once: "40 to 55 lb".
func span(low, high float64, form unit.Form, sys unit.System) string {
	from, to := unit.Show(low, form, sys), unit.Show(high, form, sys)
	if from == to {
		return to
	}
	if n, u := unit.Split(low, form, sys); form != unit.Dollar {
		if _, v := unit.Split(high, form, sys); u == v {
			from = n
		}
	}
	return from + " to " + to
}

// clip shortens a text for a message.
func clip(s string, n int) string {
	if r := []rune(s); len(r) > n {
		return string(r[:n]) + "..."
	}
	return s
}
