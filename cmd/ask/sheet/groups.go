package sheet

import (
	"strings"

	"heronlake.example/ask/reasoner/answer"
)

// groupRows gather the figures by what they settle, in the order in which a
// fitter settles it. A figure belongs to the first row that names its id, or the
// part of it before the point.
var groupRows = []struct {
	title string
	ids   []string
}{
	{"Load and trim", []string{"load", "trim"}},
	{"Thrust", []string{"thrust", "hold", "speed"}},
	{"Shaft", []string{"shaft"}},
	{"Motor and battery", []string{"system", "motor", "bank", "cruise", "runtime", "range"}},
	{"Wire and breaker", []string{"wire", "breaker"}},
	{"Charging", []string{"charger", "charge"}},
	{"Further figures", []string{""}},
}

// elsewhere are figures that stand in another place of the sheet, or say again in
// other units what a neighbour says.
var elsewhere = map[string]bool{"cost.total": true, "cost.yearly": true, "wire.volts": true}

type group struct {
	Title   string
	Figures []figure
}

type figure struct {
	Label, Value, Band, How, Source string
	Cites                           []int
}

// besideRows are steps of the working that stand beside a figure as if they were
// one: the run time that spares the battery beside the one that empties it.
var besideRows = map[string]string{"runtime.cruise": "runtime.cruise-long-life"}

// grouped gathers the figures; how bounds the working of each, in characters.
func grouped(figures []answer.Figure, steps []answer.Step, how int) []group {
	var out []group
	taken := map[string]bool{}
	for _, r := range groupRows {
		g := group{Title: r.title}
		for _, id := range r.ids {
			for _, f := range figures {
				if taken[f.ID] || elsewhere[f.ID] || id != "" && f.ID != id && !strings.HasPrefix(f.ID, id+".") {
					continue
				}
				taken[f.ID] = true
				g.Figures = append(g.Figures, figure{Label: cut(f.Label, 30), Value: cut(f.Display, 16), Band: cut(f.Band, 22),
					How: cut(f.How, how), Source: cut(f.Source, 120), Cites: f.Cites})
				for _, st := range steps {
					if beside := besideRows[f.ID]; beside != "" && st.ID == beside && st.Value != nil {
						g.Figures = append(g.Figures, figure{Label: "\u2026 sparing the battery", Value: cut(st.Result, 16), Band: cut(st.Band, 22),
							How: cut(st.Working, how), Source: cut(st.Source, 120)})
					}
				}
			}
		}
		if len(g.Figures) > 0 {
			out = append(out, g)
		}
	}
	return out
}
