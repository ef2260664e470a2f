package sheet

import (
	"fmt"
	"strings"

	"heronlake.example/ask/reasoner/answer"
)

// Markdown writes the sheet as Markdown: the same matter in the same order, with
// points of the curves in place of the pictures.
func Markdown(a answer.Answer, opts Options) []byte {
	p := layOut(a, opts, settings[0]) // there is no page to fill
	var m markdown
	m.head(p)
	m.table("The boat, as told", []string{"", "", "said"}, p.Boat)
	m.table("Which kind", []string{"", "", "why"}, p.Choices)
	m.parts(p)
	m.figures(p)
	for _, c := range p.Curves {
		m.curve(c, opts)
	}
	for _, pic := range p.Pictures {
		if pic.Kind != "chart" {
			m.line("## " + plain(pic.Title))
			m.line(plain(pic.Says))
		}
	}
	m.list("Cautions", p.Cautions)
	m.table("Still assumed: how to measure it", []string{"", "taken as", "measure"}, p.Measures)
	m.table("Assumed as well", []string{"", "", "why"}, p.Assumed)
	var sources []string
	for _, s := range p.Sources {
		sources = append(sources, fmt.Sprintf("%d: %s: %s", s.N, s.Title, s.Basis))
	}
	m.list("Sources", sources)
	m.foot(p)
	return []byte(strings.TrimRight(m.b.String(), "\n") + "\n")
}

// head is the title, the blanks to fill in, and what is said first.
func (m *markdown) head(p page) {
	m.line("# Trolling motor fit sheet")
	m.line("Shop: ____________ Customer: ____________ Date: ____________")
	m.line("Boat: ____________ Telephone: ____________ Fitted by: ____________")
	if p.Lead != "" {
		m.line("**" + plain(p.Lead) + "**")
	}
	for _, x := range p.Problems {
		m.line("Note: " + plain(x))
	}
}

// parts is the rig with its prices, and the motors that were second best.
func (m *markdown) parts(p page) {
	if len(p.Parts) > 0 {
		m.line("## Parts list, " + plain(p.Shelf))
		m.row("What", "Item", "Count", "Each", "Sum")
		m.row("---", "---", "--:", "--:", "--:")
		for _, x := range p.Parts {
			m.row(x.What, x.Item, x.Count, x.Each, x.Sum)
		}
		if p.Total != "" {
			what := "Total"
			if p.TotalNote != "" {
				what += ", " + p.TotalNote
			}
			m.row(what, "", "", "", p.Total)
		}
		m.end()
		if p.Needs != "" {
			m.line("Held against the needs: " + plain(p.Needs) + ".")
		}
		if p.Yearly != "" {
			m.line("Batteries by wear: about " + p.Yearly + " a year, " + plain(p.YearlyHow) + ".")
		}
	}
	m.table("Also on the shelf", []string{"", "", ""}, p.Alternates)
	if len(p.Alternates) > 0 && p.Order != "" {
		m.line("Order: " + plain(p.Order) + ".")
	}
}

// figures is every figure with its working.
func (m *markdown) figures(p page) {
	if len(p.Groups) == 0 {
		return
	}
	m.line("## Figures and how they come about")
	m.row("", "", "may lie between", "working", "source")
	m.row("---", "---", "---", "---", "---")
	for _, g := range p.Groups {
		for _, f := range g.Figures {
			m.row(f.Label, f.Value, f.Band, f.How, f.Source)
		}
	}
	m.end()
}

// foot is what was cut, what to write down on first use, and the notice.
func (m *markdown) foot(p page) {
	if len(p.Left) > 0 {
		m.line("Not listed here: " + strings.Join(p.Left, ", ") + ".")
	}
	m.line("## On first use, write down")
	m.line("Volts at the plug, full: ______ Amperes, full: ______ Speed, full: ______ Wind that day: ______")
	if p.Notice != "" {
		m.line("---")
		m.line(plain(p.Notice))
	}
}

type markdown struct{ b strings.Builder }

func (m *markdown) line(s string) { m.b.WriteString(s + "\n\n") }
func (m *markdown) item(s string) { m.b.WriteString("- " + plain(s) + "\n") }
func (m *markdown) end()          { m.b.WriteString("\n") }

func (m *markdown) list(title string, items []string) {
	if len(items) == 0 {
		return
	}
	m.line("## " + title)
	for _, x := range items {
		m.item(x)
	}
	m.end()
}

func (m *markdown) row(cells ...string) {
	for _, c := range cells {
		m.b.WriteString("| ")
		if strings.HasPrefix(c, "--") {
			m.b.WriteString(c + " ")
		} else if c = plain(c); c != "" {
			m.b.WriteString(c + " ")
		}
	}
	m.b.WriteString("|\n")
}

func (m *markdown) table(title string, heads []string, rows []entry) {
	if len(rows) == 0 {
		return
	}
	m.line("## " + title)
	m.row(heads...)
	m.row("---", "---", "---")
	for _, r := range rows {
		m.row(r.Name, r.Value, r.Note)
	}
	m.end()
}

// mostPoints is how many points of a curve are listed.
const mostPoints = 16

func (m *markdown) curve(c answer.Curve, opts Options) {
	if len(c.Points) == 0 {
		return
	}
	sx, sy := scaleOf(c.X.Unit, opts.Units), scaleOf(c.Y.Unit, opts.Units)
	m.line("## " + plain(tidy(c.Title)))
	m.row(tidy(c.X.Label)+", "+sx.unit, tidy(c.Y.Label)+", "+sy.unit)
	m.row("--:", "--:")
	for i, p := range c.Points {
		if i < mostPoints && usable(p[0]) && usable(p[1]) {
			m.row(number(sx, p[0]), number(sy, p[1]))
		}
	}
	m.end()
}

// plain escapes what Markdown would take for its own signs, and what an HTML
// page made of it would take for a tag.
func plain(s string) string {
	return escapes.Replace(s)
}

var escapes = strings.NewReplacer(`\`, `\\`, "|", `\|`, "*", `\*`, "_", `\_`, "`", "\\`", "[", `\[`, "]", `\]`,
	"<", "&lt;", ">", "&gt;", "&", "&amp;", "#", `\#`, "!", `\!`, "~", `\~`)
