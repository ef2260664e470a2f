package sheet

import (
	"fmt"
	"math"
	"slices"
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
	Needs      string // the pick held against each need
	Order      string // by what the motors are ordered
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
	Dense      bool     // set closer, in smaller type, so that it stays on two pages
	Full       bool     // smaller still
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

// layOut fills a page in one setting.
func layOut(a answer.Answer, opts Options, set setting) page {
	r := set.room
	p := page{Lead: cut(a.Headline, r.lead), Notice: tidy(a.Notice), Shelf: cut(a.Shelf, 60), Curves: a.Curves, Units: opts.Units, Dense: set.dense, Full: set.full}
	p.boat(a, r)
	p.Groups = grouped(limit(&p, a.Figures, r.figures, "figures"), a.Steps, r.how)
	for _, c := range limit(&p, a.Choices, r.choices, "choices") {
		p.Choices = append(p.Choices, entry{Name: label("", c.ID, r.name), Value: cut(c.Pick, r.value), Note: cut(c.Why, r.why)})
	}
	p.open(a, r)
	for _, c := range limit(&p, a.Cautions, r.cautions, "cautions") {
		p.Cautions = append(p.Cautions, cut(c.Text, r.caution))
	}
	for _, x := range limit(&p, a.Problems, r.problems, "remarks") {
		p.Problems = append(p.Problems, cut(x.Text, r.caution))
	}
	for _, s := range limit(&p, a.Passages, r.sources, "sources") {
		title := s.Title
		if title == "" {
			title = s.Note
		}
		p.Sources = append(p.Sources, source{s.N, cut(title, r.why), cut(strings.TrimSuffix(s.Source, "."), r.why)})
	}
	p.price(a, r)
	for _, draw := range []func(answer.Answer, Options) (picture, bool){drawSide, drawWind, drawWiring, drawHours} {
		if pic, ok := draw(a, opts); ok {
			p.Pictures = append(p.Pictures, pic)
		}
	}
	return p
}

// toldBeside are what a customer tells that is no fact of the boat's card but is
// reckoned with: it stands among the steps alone.
var toldBeside = []string{"boat.speed-measured", "wind.gust", "use.distance", "battery.charge-left"}

// boat lists what was told of it.
func (p *page) boat(a answer.Answer, r room) {
	for _, st := range a.Steps {
		if slices.Contains(toldBeside, st.ID) && st.Said != "" && st.Formula == "" {
			a.Understood = append(slices.Clone(a.Understood), answer.Understood{Slot: st.ID, Label: st.Label, Display: st.Result, Said: st.Said})
		}
	}
	for _, u := range limit(p, a.Understood, r.boat, "facts") {
		value := u.Display
		if value == "" {
			value = u.Text
		}
		switch value {
		case "true":
			value = "yes"
		case "false":
			value = "no"
		}
		p.Boat = append(p.Boat, entry{Name: label(u.Label, u.Slot, r.name), Value: cut(value, r.value), Note: unlike(u.Said, value, r.said)})
	}
}

// open lists what is still assumed: first what can be measured, and how.
func (p *page) open(a answer.Answer, r room) {
	measured := map[string]bool{}
	for _, m := range limit(p, a.Measures, r.measures, "measures") {
		measured[m.Slot] = true
		p.Measures = append(p.Measures, entry{Name: label(m.Label, m.Slot, r.name), Value: cut(m.Taken, r.value), Note: cut(m.How, r.measure)})
	}
	var rest []answer.Assumed
	for _, x := range a.Assumed {
		if !measured[x.Slot] { // otherwise its value stands with how to measure it
			rest = append(rest, x)
		}
	}
	for _, x := range limit(p, rest, r.assumed, "assumptions") {
		p.Assumed = append(p.Assumed, entry{Name: label(x.Label, x.Slot, 60), Value: cut(x.Display, r.value), Note: cut(x.Why, r.why)})
	}
}

// unlike is what was said, where it is more than the value over again.
func unlike(said, value string, most int) string {
	if strings.EqualFold(strings.TrimSpace(said), strings.TrimSpace(value)) {
		return ""
	}
	return cut(said, most)
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
func label(words, id string, most int) string {
	if words == "" || words == id {
		words = strings.NewReplacer(".", " ", "-", " ").Replace(id)
		if words != "" {
			words = strings.ToUpper(words[:1]) + words[1:]
		}
	}
	return cut(words, most)
}

// price lists the rig with its prices, and the motors that were second best.
func (p *page) price(a answer.Answer, r room) {
	missing := 0
	for _, x := range limit(p, a.Parts, r.parts, "parts") {
		row := part{What: cut(x.What, 20), Item: cut(x.Item, 60), Count: strconv.Itoa(x.Count)}
		if x.Price != nil {
			row.Each = dollars(*x.Price)
			if x.Sum != nil {
				row.Sum = dollars(*x.Sum)
			}
		} else {
			row.Each = cut(x.Note, 24)
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
			p.Yearly, p.YearlyHow = dollars(math.Round(f.Value)), cut(f.How, 110)
		}
	}
	others := a.Offers
	if len(others) > 0 && others[0].Fits {
		p.Needs = judged(others[0])
		others = others[1:]
	}
	p.Order = cut(a.Order, 120)
	for _, o := range limit(p, others, r.offers, "motors") {
		value := dollars(o.Price)
		if o.Fits && o.Total > 0 {
			value += ", with its rig " + dollars(o.Total)
		}
		note := o.Reason
		if !o.Fits {
			note = "does not fit: " + note
		}
		p.Alternates = append(p.Alternates, entry{Name: cut(o.Name, 40) + " (" + cut(o.SKU, 16) + ")", Value: value, Note: cut(note, r.why)})
	}
}

// judged lists how the motor meets each need.
func judged(o answer.Offer) string {
	var out []string
	for _, n := range o.Needs {
		t := cut(n.Need, 24) + " " + cut(n.Verdict, 8)
		if n.Reason != "" {
			t += " (" + cut(n.Reason, 60) + ")"
		}
		out = append(out, t)
	}
	return strings.Join(out, "; ")
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
