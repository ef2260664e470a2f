package sheet

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
)

// page is everything on a sheet, ready to be written in either form.
type page struct {
	Lead       string
	Boat       []entry
	Groups     []group
	Choices    []entry
	Assumed    []entry
	Measures   []entry
	Parts      []part
	Shelf      string // whose prices these are
	Total      string
	TotalNote  string
	Yearly     string
	YearlyHow  string
	Cautions   []string
	Problems   []string
	Sources    []source
	Notice     string
	Pictures   []picture
	Curves     []answer.Curve
	Units      unit.System
	Left       []string // what was cut, and how much of it
	Dense      bool     // set in smaller type, so that it stays on two pages
	Alternates []entry  // the other motors of the shelf
}

// entry is a name with what stands for it.
type entry struct {
	Name, Value, Note string
}

type part struct {
	What, Item, Count, Each, Sum string
}

type source struct {
	N            int
	Title, Basis string
}

// picture is a drawing by one of the templates.
type picture struct {
	Kind    string // the template: side, chart, wiring
	ID      string // unique on the page
	Title   string
	Says    string // the picture in words
	Drawing any
}

// How many of each fit on two pages beside the rest.
const (
	mostBoat     = 24
	mostAssumed  = 18
	mostMeasures = 7
	mostParts    = 14
	mostCautions = 6
	mostSources  = 12
	mostChoices  = 7
	mostFigures  = 40
)

func layOut(a answer.Answer, opts Options) page {
	p := page{Lead: tidy(a.Headline), Notice: tidy(a.Notice), Shelf: cut(a.Shelf, 80), Curves: a.Curves, Units: opts.Units}
	for _, u := range a.Understood {
		value := u.Display
		if value == "" {
			value = u.Text
		}
		p.Boat = append(p.Boat, entry{Name: label(u.Label, u.Slot), Value: cut(value, 40), Note: cut(u.Said, 60)})
	}
	figures := a.Figures
	p.Groups = grouped(limit(&p, figures, mostFigures, "figures"))
	for _, c := range a.Choices {
		p.Choices = append(p.Choices, entry{Name: label("", c.ID), Value: cut(c.Pick, 60), Note: cut(c.Why, 110)})
	}
	measured := map[string]bool{}
	for _, m := range a.Measures {
		measured[m.Slot] = true
	}
	for _, x := range a.Assumed {
		if measured[x.Slot] {
			continue // its value stands with how to measure it
		}
		p.Assumed = append(p.Assumed, entry{Name: label(x.Label, x.Slot), Value: cut(x.Display, 40), Note: cut(x.Why, 80)})
	}
	for _, m := range a.Measures {
		p.Measures = append(p.Measures, entry{Name: label(m.Label, m.Slot), Value: cut(m.Taken, 40), Note: cut(m.How, 160)})
	}
	for _, c := range a.Cautions {
		p.Cautions = append(p.Cautions, cut(c.Text, 240))
	}
	for _, x := range a.Problems {
		p.Problems = append(p.Problems, cut(x.Text, 200))
	}
	for _, s := range a.Passages {
		title := s.Title
		if title == "" {
			title = s.Note
		}
		p.Sources = append(p.Sources, source{s.N, cut(title, 70), cut(strings.TrimSuffix(s.Source, "."), 120)})
	}
	p.price(a)
	p.Boat = limit(&p, p.Boat, mostBoat, "facts")
	p.Choices = limit(&p, p.Choices, mostChoices, "choices")
	p.Assumed = limit(&p, p.Assumed, mostAssumed, "assumptions")
	p.Measures = limit(&p, p.Measures, mostMeasures, "measures")
	p.Parts = limit(&p, p.Parts, mostParts, "parts")
	p.Cautions = limit(&p, p.Cautions, mostCautions, "cautions")
	p.Problems = limit(&p, p.Problems, mostCautions, "remarks")
	p.Sources = limit(&p, p.Sources, mostSources, "sources")
	for _, draw := range []func(answer.Answer, Options) (picture, bool){drawSide, drawWind, drawWiring, drawHours} {
		if pic, ok := draw(a, opts); ok {
			p.Pictures = append(p.Pictures, pic)
		}
	}
	p.Dense = p.weight() > mostLines
	return p
}

// mostLines is the weight up to which a sheet fits two pages in the larger type;
// it was found by printing.
const mostLines = 78

// weight counts what takes room on paper, in lines of about equal height.
func (p page) weight() int {
	n := len(p.Boat) + 2*len(p.Choices) + len(p.Parts) + len(p.Problems) + 2*len(p.Cautions) + 2*len(p.Measures) + len(p.Assumed)/3 + len(p.Sources)/2 + len(p.Alternates)
	for _, g := range p.Groups {
		n += len(g.Figures)
	}
	return n
}

// limit keeps the first of a list and notes how many were cut.
func limit[T any](p *page, list []T, most int, what string) []T {
	if len(list) <= most {
		return list
	}
	p.Left = append(p.Left, fmt.Sprintf("%d more %s", len(list)-most, what))
	return list[:most]
}

// label is how a slot is called: its label, or its id in words.
func label(words, id string) string {
	if words == "" {
		words = strings.NewReplacer(".", " ", "-", " ").Replace(id)
		if words != "" {
			words = strings.ToUpper(words[:1]) + words[1:]
		}
	}
	return cut(words, 48)
}

// price lists the rig with its prices, and the motors that were second best.
func (p *page) price(a answer.Answer) {
	missing := 0
	for _, x := range a.Parts {
		row := part{What: cut(x.What, 20), Item: cut(x.Item, 60), Count: strconv.Itoa(x.Count)}
		if x.Price != nil {
			row.Each = dollars(*x.Price)
			if x.Sum != nil {
				row.Sum = dollars(*x.Sum)
			}
		} else {
			row.Each = "not on the shelf"
			missing++
		}
		p.Parts = append(p.Parts, row)
	}
	for _, f := range a.Figures {
		switch {
		case f.ID == "cost.total" && len(a.Parts) > 0:
			p.Total = dollars(f.Value)
			if missing > 0 {
				p.TotalNote = "without what is not on the shelf"
			}
		case f.ID == "cost.yearly":
			p.Yearly, p.YearlyHow = dollars(math.Round(f.Value)), cut(f.How, 160)
		}
	}
	for i, o := range a.Offers {
		if i == 0 && o.Fits {
			continue
		}
		value := dollars(o.Price)
		if o.Fits && o.Total > 0 {
			value += ", with its rig " + dollars(o.Total)
		}
		note := o.Reason
		if !o.Fits {
			note = "does not fit: " + note
		}
		p.Alternates = append(p.Alternates, entry{Name: cut(o.Name+" ("+o.SKU+")", 60), Value: value, Note: cut(note, 90)})
	}
}

// dollars writes a price to the cent, without ".00".
func dollars(x float64) string {
	t := strconv.FormatFloat(math.Abs(x), 'f', 2, 64)
	whole, cents, _ := strings.Cut(t, ".")
	for i := len(whole) - 3; i > 0; i -= 3 {
		whole = whole[:i] + "," + whole[i:]
	}
	if cents != "00" {
		whole += "." + cents
	}
	if x < 0 {
		return "-$" + whole
	}
	return "$" + whole
}

// value finds what a figure or a step of the working holds, by its id.
func value(a answer.Answer, id string) (x float64, shown string, ok bool) {
	for _, f := range a.Figures {
		if f.ID == id {
			return f.Value, tidy(f.Display), usable(f.Value)
		}
	}
	for _, s := range a.Steps {
		if s.ID == id && s.Value != nil {
			return *s.Value, tidy(s.Result), usable(*s.Value)
		}
	}
	return 0, "", false
}

func usable(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

// word finds what a step of words holds.
func word(a answer.Answer, id string) string {
	for _, s := range a.Steps {
		if s.ID == id && s.Value == nil {
			return s.Result
		}
	}
	return ""
}

// px is a place on a picture; it is written to a tenth.
type px float64

func (x px) String() string { return unit.Number(float64(x), 1) }
