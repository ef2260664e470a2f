package sheet

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/extension"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
)

func num(x float64) *float64 { return &x }

// fitted is a whole answer: 26 in of deck height, 10 in of mount and head, a
// 48 in shaft, a pair of batteries for 24 V.
func fitted() answer.Answer {
	step := func(id string, si float64, u, shown string) answer.Step {
		return answer.Step{ID: id, Label: id, Value: num(si), Unit: u, Result: shown}
	}
	fig := func(id, label string, v float64, u, shown, how string) answer.Figure {
		return answer.Figure{ID: id, Label: label, Value: v, Low: v, High: v, Unit: u, Display: shown, How: how, Cites: []int{1}}
	}
	a := answer.Answer{
		Headline:   "Fit the Grebe 80 pedal.",
		Understood: []answer.Understood{{Slot: "boat.length", Label: "Boat length", Display: "18 ft", Said: "18-foot"}},
		Assumed:    []answer.Assumed{{Slot: "people.count", Label: "People aboard", Display: "2 (1 to 3)", Why: "two aboard unless you say"}},
		Figures: []answer.Figure{
			fig("thrust.need", "Thrust needed", 258, "N", "58 lb", "the larger of the two"),
			fig("shaft.class", "Shaft length", 1.2192, "m", "48 in", "the next length"),
			fig("shaft.submergence", "Depth to the lower unit", 0.3048, "m", "12 in", "48 in - 26 in - 10 in"),
			fig("system.voltage", "System voltage", 24, "V", "24 V", "as listed"),
			fig("bank.count", "Batteries needed", 2, "1", "2", "2 in series"),
			fig("breaker.rating", "Breaker", 60, "A", "60 A", "next rating"),
			fig("breaker.distance", "Breaker to battery", 1.8288, "m", "72 in", ""),
			fig("wire.gauge", "Wire gauge", 6, "AWG", "6 AWG", "drop"),
			fig("cost.total", "Cost complete", 1049.99, "USD", "$1,050", "the parts listed"),
		},
		Steps: []answer.Step{
			step("mount.height", 0.6604, "m", "26 in"), step("shaft.above", 0.254, "m", "10 in"),
			step("battery.voltage", 12, "V", "12 V"), step("bank.series", 2, "1", "2"),
			{ID: "mount.place", Label: "Where the motor mounts", Result: "bow"},
		},
		Curves: []answer.Curve{
			{ID: "thrust-by-wind", Title: "Thrust needed against wind", X: answer.Axis{Label: "wind", Unit: "m/s"}, Y: answer.Axis{Label: "thrust needed", Unit: "N"},
				Points: [][2]float64{{0, 160}, {5, 200}, {10, 400}}, Marks: []answer.Mark{{Axis: "y", Value: 355, Label: "motor 80 lb", Own: true}, {Axis: "x", Value: 6.7, Label: "wind 15 mph", Own: true}}},
			{ID: "hours-by-throttle", Title: "Hours against throttle", X: answer.Axis{Label: "throttle", Unit: "1"}, Y: answer.Axis{Label: "run time", Unit: "h"},
				Points: [][2]float64{{0.1, 90}, {0.3, 20}, {0.5, 8}, {1, 1.5}}},
		},
		Parts: []answer.Part{
			{What: "motor", Item: "Grebe 80 pedal (M-302)", Count: 1, Price: num(849.99), Sum: num(849.99)},
			{What: "battery", Item: "Mallow 24 (B-01)", Count: 2, Price: num(100), Sum: num(200)},
			{What: "wire", Item: "6 AWG duplex wire", Count: 1, Note: "not on the shelf"},
		},
		Shelf:    "Heron Lake Tackle (demo shelf, invented)",
		Cautions: []answer.Caution{{ID: "breaker", Text: "Open the breaker first."}},
		Measures: []answer.Measure{{Slot: "wire.run", Label: "Wire run", Taken: "18 ft (12 to 22 ft)", How: "Lay a string and tape it."}},
		Passages: []answer.Passage{{N: 1, Note: "thrust", Title: "Thrust by weight", Source: "common practice."}},
		Notice:   "For planning.",
	}
	a.Finish()
	return a
}

// written renders a sheet as HTML and checks that it is well formed.
func written(t *testing.T, a answer.Answer) string {
	t.Helper()
	b, err := HTML(a, Options{})
	if err != nil {
		t.Fatal(err)
	}
	wellFormed(t, string(b))
	return string(b)
}

// wellFormed reads the pictures as XML.
func wellFormed(t *testing.T, page string) {
	t.Helper()
	for _, svg := range regexp.MustCompile(`(?s)<svg.*?</svg>`).FindAllString(page, -1) {
		d := xml.NewDecoder(strings.NewReader(svg))
		d.Entity = xml.HTMLEntity
		for {
			if _, err := d.Token(); err == io.EOF {
				break
			} else if err != nil {
				t.Fatalf("%v in %s", err, svg)
			}
		}
	}
}

func TestSheetHoldsEverything(t *testing.T) {
	for form, page := range map[string]string{"html": written(t, fitted()), "markdown": string(Markdown(fitted(), Options{}))} {
		for _, want := range []string{"Customer", "Date", "Grebe 80 pedal (M-302)", "$849.99", "$1,049.99", "not on the shelf", "without what is not on the shelf",
			"demo shelf, invented", "18-foot", "58 lb", "the larger of the two", "2 (1 to 3)", "Lay a string", "Open the breaker first", "Thrust by weight", "common practice",
			"For planning", "Wiring of the bank", "6 AWG", "60 A", "72 in"} {
			if !strings.Contains(page, want) {
				t.Errorf("%s: no %q", form, want)
			}
		}
	}
}

// The end of the shaft is drawn where the figures put it: on the waterline when
// the shaft just reaches it, and lower by the scale for every inch more.
func TestShaftLineMovesWithTheShaft(t *testing.T) {
	at := func(inches float64) (water, tip, head float64) {
		a := fitted()
		for i := range a.Figures {
			if a.Figures[i].ID == "shaft.class" {
				a.Figures[i].Value = unit.Inches(inches).Metres()
			}
		}
		page := written(t, a)
		number := func(pattern string) float64 {
			m := regexp.MustCompile(pattern).FindStringSubmatch(page)
			if m == nil {
				t.Fatalf("no %s", pattern)
			}
			x, err := strconv.ParseFloat(m[1], 64)
			if err != nil {
				t.Fatal(err)
			}
			return x
		}
		return number(`class="d waterline"[^>]* y1="([0-9.]+)"`), number(`class="b shaft"[^>]* y2="([0-9.]+)"`), number(`class="b shaft"[^>]* y1="([0-9.]+)"`)
	}
	for _, inches := range []float64{30, 36, 48, 60, 72} {
		water, tip, head := at(inches)
		scale := (water - head) / 36 // 26 in of deck and 10 in of mount and head
		if want := water + (inches-36)*scale; tip < want-0.3 || tip > want+0.3 {
			t.Errorf("%g in: the shaft ends at %g, want %g (water at %g)", inches, tip, want, water)
		}
	}
}

func TestPictureIsLeftOutWhereItsFiguresAreMissing(t *testing.T) {
	whole := fitted()
	tests := []struct {
		name, gone string
		left       int // pictures
		without    func(a *answer.Answer)
	}{
		{"no deck height", "Mount, shaft and water", 3, func(a *answer.Answer) { a.Steps = a.Steps[1:] }},
		{"no curves", "Thrust needed against wind", 2, func(a *answer.Answer) { a.Curves = nil }},
		{"no hours", "Hours on one charge", 3, func(a *answer.Answer) { a.Curves = a.Curves[:1] }},
		{"no bank", "Wiring of the bank", 3, func(a *answer.Answer) {
			for i := range a.Figures {
				if a.Figures[i].ID == "bank.count" {
					a.Figures[i].ID = "other"
				}
			}
		}},
	}
	for _, tt := range tests {
		if !strings.Contains(written(t, whole), tt.gone) {
			t.Fatalf("%s: the whole sheet has no %q", tt.name, tt.gone)
		}
		a := fitted()
		tt.without(&a)
		page := written(t, a)
		if strings.Contains(page, tt.gone) {
			t.Errorf("%s: %q is drawn all the same", tt.name, tt.gone)
		}
		if strings.Count(page, "<svg") != tt.left {
			t.Errorf("%s: %d pictures, want the other %d", tt.name, strings.Count(page, "<svg"), tt.left)
		}
	}
	if page := written(t, answer.Answer{}); strings.Contains(page, "<svg") {
		t.Error("an empty answer has a picture")
	}
}

func TestWiringDrawsTheBank(t *testing.T) {
	for _, tt := range []struct {
		volts, each float64
		count       int
		drawn       int
	}{
		{12, 12, 1, 1}, {12, 12, 2, 2}, {24, 12, 2, 2}, {36, 12, 3, 3}, {36, 12, 6, 6}, {24, 24, 1, 1}, {12, 6, 2, 2}, {24, 6, 4, 4},
		{24, 12, 3, 0}, {36, 12, 2, 0}, {12, 12, 9, 0},
	} {
		a := fitted()
		a.Steps = []answer.Step{{ID: "battery.voltage", Value: num(tt.each), Result: unit.Show(tt.each, unit.Volt, unit.US)}}
		for i := range a.Figures {
			switch a.Figures[i].ID {
			case "system.voltage":
				a.Figures[i].Value = tt.volts
			case "bank.count":
				a.Figures[i].Value = float64(tt.count)
			}
		}
		if got := strings.Count(written(t, a), `class="k battery"`); got != tt.drawn {
			t.Errorf("%d of %g V for %g V: %d batteries drawn, want %d", tt.count, tt.each, tt.volts, got, tt.drawn)
		}
	}
}

// hostile puts text that means something to HTML, SVG, Markdown or a terminal
// into every place that comes from outside.
func hostile() answer.Answer {
	bad := "</title></svg><script>alert(1)</script><img src=x onerror=alert(1)> | *a* `b` [c](javascript:d) \u202egnp\u2069 \x1b[31m\x07 ${x} {{.}} &amp; \" '"
	a := fitted()
	a.Headline, a.Notice, a.Shelf = bad, bad, bad
	a.Understood[0].Label, a.Understood[0].Display, a.Understood[0].Said = bad, bad, bad
	a.Assumed[0].Label, a.Assumed[0].Display, a.Assumed[0].Why = bad, bad, bad
	for i := range a.Figures {
		a.Figures[i].Label, a.Figures[i].Display, a.Figures[i].Band, a.Figures[i].How, a.Figures[i].Source = bad, bad, bad, bad, bad
	}
	for i := range a.Steps {
		a.Steps[i].Result = bad
	}
	for i := range a.Curves {
		a.Curves[i].X.Label, a.Curves[i].Y.Label, a.Curves[i].Title = bad, bad, bad
		for j := range a.Curves[i].Marks {
			a.Curves[i].Marks[j].Label = bad
		}
	}
	for i := range a.Parts {
		a.Parts[i].Item, a.Parts[i].What = bad, bad
	}
	a.Offers = []answer.Offer{{Name: bad, SKU: bad, Reason: bad}, {Name: bad, SKU: bad, Reason: bad, Fits: true, Total: 1}}
	a.Cautions[0].Text, a.Measures[0].How, a.Measures[0].Taken, a.Passages[0].Title, a.Passages[0].Source = bad, bad, bad, bad, bad
	a.Problems = []answer.Problem{{Text: bad}}
	a.Choices = []answer.Choice{{ID: bad, Pick: bad, Why: bad}}
	return a
}

func TestNothingFromOutsideIsMarkup(t *testing.T) {
	page := written(t, hostile())
	clean := written(t, fitted())
	for _, tag := range []string{"<script", "<img", "<svg", "<title", "</svg>", "onerror=alert(1)>"} {
		most := strings.Count(clean, tag)
		if got := strings.Count(page, tag); got > most {
			t.Errorf("%d of %q, the plain sheet has %d", got, tag, most)
		}
	}
	var html bytes.Buffer
	if err := goldmark.New(goldmark.WithExtensions(extension.Table)).Convert(Markdown(hostile(), Options{}), &html); err != nil {
		t.Fatal(err)
	}
	for _, tag := range []string{"<script", "<img", "<a ", "<code", "<em"} {
		if strings.Contains(html.String(), tag) {
			t.Errorf("Markdown from outside became %q", tag)
		}
	}
	for form, text := range map[string]string{"html": page, "markdown": string(Markdown(hostile(), Options{}))} {
		if strings.ContainsAny(text, "\x1b\x07\u202e\u2069") {
			t.Errorf("%s: a control or direction mark came through", form)
		}
	}
}

// A sheet refers to nothing outside itself: it has no address and no tag that
// loads one.
func TestSheetRefersToNothingOutside(t *testing.T) {
	page := written(t, fitted())
	for _, bad := range []string{"http:", "https:", "src=", "url(", "@import", "<script", "<link rel=\"stylesheet", "<iframe", "<object"} {
		if strings.Contains(page, bad) {
			t.Errorf("the sheet holds %q", bad)
		}
	}
}

func TestPicturesSayWhatTheyShow(t *testing.T) {
	page := written(t, fitted())
	svgs := regexp.MustCompile(`(?s)<svg[^>]*>`).FindAllString(page, -1)
	if len(svgs) != 4 {
		t.Fatalf("%d pictures", len(svgs))
	}
	for _, s := range svgs {
		m := regexp.MustCompile(`role="img" aria-labelledby="(\S+) (\S+)"`).FindStringSubmatch(s)
		if m == nil {
			t.Fatalf("no role or names: %s", s)
		}
		for _, id := range m[1:] {
			if strings.Count(page, `id="`+id+`"`) != 1 {
				t.Errorf("%s is there %d times", id, strings.Count(page, `id="`+id+`"`))
			}
		}
	}
	for _, want := range []string{"mount surface 26 in above the water", "shaft 48 in", "12 in under water", "24 V: 2 in series, 12 V each", "breaker of 60 A", "motor 80 lb"} {
		if !strings.Contains(page, want) {
			t.Errorf("the words of the pictures do not say %q", want)
		}
	}
}

func TestChartIsInTheReadersUnits(t *testing.T) {
	b, err := HTML(fitted(), Options{Units: unit.Metric})
	if err != nil {
		t.Fatal(err)
	}
	for page, want := range map[string][]string{string(b): {"wind, m/s", "thrust needed, N"}, written(t, fitted()): {"wind, mph", "thrust needed, lb"}} {
		for _, w := range want {
			if !strings.Contains(page, w) {
				t.Errorf("no axis %q", w)
			}
		}
	}
}

func TestCurveIsCutAtADay(t *testing.T) {
	c := below(answer.Curve{Points: [][2]float64{{0.1, 90}, {0.3, 20}, {0.5, 8}}}, 24)
	if len(c.Points) != 3 || c.Points[0][1] != 24 || c.Points[0][0] < 0.288 || c.Points[0][0] > 0.289 { // 0.1 + 0.2 x 66/70
		t.Errorf("cut to %v", c.Points)
	}
}

func TestSameAnswerSameBytes(t *testing.T) {
	if written(t, fitted()) != written(t, fitted()) || !bytes.Equal(Markdown(fitted(), Options{}), Markdown(fitted(), Options{})) {
		t.Error("two sheets of one answer differ")
	}
}

func TestDollars(t *testing.T) {
	for x, want := range map[float64]string{0: "$0", 5: "$5", 449.5: "$449.50", 1299: "$1,299", 1234567.899: "$1,234,567.90", -3: "-$3"} {
		if got := dollars(x); got != want {
			t.Errorf("%g: %s, want %s", x, got, want)
		}
	}
}

// most fills every list to its limit and beyond, with the longest texts.
func most() answer.Answer {
	a := fitted()
	long := strings.Repeat("wide words of a long remark ", 12)
	ids := []string{"load", "thrust", "hold", "shaft", "motor", "bank", "runtime", "wire", "breaker", "charger", "other"}
	for i := range 50 {
		a.Understood = append(a.Understood, answer.Understood{Slot: "x", Label: long, Display: long, Said: long})
		a.Assumed = append(a.Assumed, answer.Assumed{Slot: fmt.Sprint("y", i), Label: long, Display: long, Why: long})
		a.Figures = append(a.Figures, answer.Figure{ID: fmt.Sprint(ids[i%len(ids)], ".x", i), Label: long, Display: long, Band: long, How: long, Cites: []int{i}})
		a.Choices = append(a.Choices, answer.Choice{ID: long, Pick: long, Why: long})
		a.Cautions = append(a.Cautions, answer.Caution{Text: long})
		a.Passages = append(a.Passages, answer.Passage{N: i, Title: long, Source: long})
		a.Measures = append(a.Measures, answer.Measure{Slot: "z", Label: long, Taken: long, How: long})
		a.Parts = append(a.Parts, answer.Part{What: "part", Item: long, Count: 1})
		a.Problems = append(a.Problems, answer.Problem{Text: long})
		a.Offers = append(a.Offers, answer.Offer{Name: long, SKU: long, Reason: long, Fits: true})
	}
	return a
}

// fullOf gives the fullest answer that one setting takes, with texts of the
// length that the program writes.
func fullOf(set int) answer.Answer {
	a := fitted()
	ids := []string{"load", "thrust", "hold", "shaft", "motor", "bank", "runtime", "wire", "breaker", "charger"}
	add := []func(i int){
		func(i int) {
			if len(a.Figures) < 34 {
				a.Figures = append(a.Figures, answer.Figure{ID: fmt.Sprint(ids[i%len(ids)], ".x", i), Label: "Wind held at full throttle", Display: "24.6 mph", Band: "18.1 to 29.8 mph",
					How: "wind where 55 lb x (1 - way / 6.9 mph), there 46 lb at a way of 1.2 mph, meets the gusts on 2.51 m2", Cites: []int{i}})
			}
		},
		func(int) {
			a.Understood = append(a.Understood, answer.Understood{Slot: "x", Label: "Mount surface above the water", Display: "12 to 20 mph", Said: "twenty-six inches or so"})
		},
		func(i int) {
			a.Assumed = append(a.Assumed, answer.Assumed{Slot: fmt.Sprint("y", i), Label: "Share of the capacity to put back", Display: "50% (30 to 80%)"})
		},
		func(int) {
			if len(a.Choices) < 7 {
				a.Choices = append(a.Choices, answer.Choice{ID: "speed-control", Pick: "foot pedal, cable steer", Why: "most running is below full throttle, where a five-speed wastes power"})
			}
		},
		func(int) {
			if len(a.Cautions) < 5 {
				a.Cautions = append(a.Cautions, answer.Caution{Text: "Lithium cuts off without warning when empty; its protection must carry 1.25 times the motor's full current, and its maker must allow series use."})
			}
		},
		func(i int) {
			if len(a.Passages) < 12 {
				a.Passages = append(a.Passages, answer.Passage{N: i, Title: "How much thrust a boat's weight asks for", Source: "wind force from 0.5 rho Cd A V^2 with coefficients of Blendermann 1994"})
			}
		},
		func(int) {
			if len(a.Parts) < 9 {
				a.Parts = append(a.Parts, answer.Part{What: "breaker", Item: "Breaker 60 A manual reset (K-04)", Count: 1, Price: num(36), Sum: num(36)})
			}
		},
		func(int) {
			if len(a.Measures) < 6 {
				a.Measures = append(a.Measures, answer.Measure{Slot: "z", Label: "Wire run, one way", Taken: "18 ft (12.6 to 21.6 ft)", How: "Lay a string where the wire will go, battery to plug with every bend, and tape the string: one way."})
			}
		},
	}
	for i := range 400 {
		before := a
		add[i%len(add)](i)
		if p := layOut(a, Options{}, settings[set]); p.height(settings[set]) > twoPages || len(p.Left) > 0 {
			return before
		}
	}
	return a
}

func TestWhatIsCutIsCounted(t *testing.T) {
	page := written(t, most())
	for _, want := range []string{"Not printed here:", "33 more facts", "more figures", "more parts"} {
		if !strings.Contains(page, want) {
			t.Errorf("the sheet does not say %q", want)
		}
	}
}

// A speed that was measured is no fact of the card, and stands with the boat all
// the same.
func TestMeasuredSpeedIsTold(t *testing.T) {
	a := fitted()
	a.Steps = append(a.Steps, answer.Step{ID: "boat.speed-measured", Label: "Speed measured on this boat", From: "said", Value: num(1.43), Unit: "m/s", Result: "3.2 mph", Said: "3.2 mph"})
	page := written(t, a)
	boat, _, _ := strings.Cut(page[strings.Index(page, "The boat, as told"):], "</section>")
	if !strings.Contains(boat, "Speed measured on this boat") || !strings.Contains(boat, "3.2 mph") {
		t.Errorf("the boat as told: %s", boat)
	}
}

// A sheet takes the roomiest setting in which it stays on two pages.
func TestRoom(t *testing.T) {
	last := -1
	for i := range settings[:len(settings)-1] {
		a := fullOf(i)
		if p := layOut(a, Options{}, settings[i]); p.height(settings[i]) > twoPages {
			t.Errorf("setting %d: %.0f points", i, p.height(settings[i]))
		}
		if n := len(a.Figures) + len(a.Understood) + len(a.Assumed); n < last && i%2 == 0 {
			t.Errorf("setting %d holds %d entries, a roomier one %d", i, n, last)
		} else if i%2 == 0 {
			last = n
		}
	}
	if p := fitting(most(), Options{}); !p.Full {
		t.Error("a sheet with every list full is not set in the smallest type")
	}
	if p := fitting(fitted(), Options{}); p.Dense {
		t.Error("a usual sheet is set in small type")
	}
}
