package kb

import (
	"bytes"
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"sync"
	"time"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb/words"
)

// A passage answers one thing, in this many words when it is shown.
const (
	shortestPassage = 40
	longestPassage  = 120
)

// Figure is a figure of an answer, as the lint compares it: an SI value or a
// word.
type Figure struct {
	Value float64
	Word  string
}

// Check is the lint: it reports every fault of a library's notes by file and
// line. It works the examples of the notes through ask, which answers a
// question with its figures and facts by their ids; without ask they are only
// read.
func Check(lib *Library, ask func(question string) (map[string]Figure, error)) []Fault {
	known := map[string]bool{}
	if b, err := Builtin(); err == nil {
		for _, e := range b.entries {
			known[e.id] = true
		}
	}
	for _, e := range lib.entries {
		known[e.id] = true
	}
	var c checker
	for _, n := range lib.All() {
		asWritten, faults := parse(n.File, n.source, n.Shop)
		c.faults = append(c.faults, faults...)
		c.note(n, known)
		for _, line := range asWritten.html {
			c.add(n, line, "HTML is left out; write it as Markdown")
		}
		if n.Shop {
			c.front(n)
			c.cut(n)
		}
		for _, p := range n.Passages {
			c.passage(n, p)
		}
		for _, e := range n.Examples {
			c.example(n, e, ask)
		}
	}
	if lib.Builtin() {
		c.checkAsked(lib)
	}
	sortFaults(c.faults)
	return slices.Compact(c.faults)
}

type checker struct{ faults []Fault }

func (c *checker) add(n Note, line int, format string, args ...any) {
	c.faults = append(c.faults, Fault{n.File, line, fmt.Sprintf(format, args...)})
}

// note checks what the front matter says, and that no two passages share an id.
func (c *checker) note(n Note, known map[string]bool) {
	if n.Reviewed == "" {
		c.add(n, 1, "no review date; add a line \"reviewed: 2026-01-31\" to the front matter")
	} else if _, err := time.Parse(time.DateOnly, n.Reviewed); err != nil {
		c.add(n, lineOf(n, 1, "reviewed:"), "review date %q is not written as 2026-01-31", n.Reviewed)
	}
	if len(n.Sources) == 0 {
		c.add(n, 1, "no sources in the front matter")
	}
	if len(n.Topics) == 0 {
		c.add(n, 1, "no topics in the front matter")
	}
	for _, see := range n.See {
		if !known[see] {
			c.add(n, lineOf(n, 1, "see:"), "see: there is no note %q", see)
		}
	}
	if !strings.HasSuffix("/"+n.File, "/"+n.ID+".md") && !n.Shop {
		c.add(n, lineOf(n, 1, "id:"), "id %q is not the name of the file", n.ID)
	}
	if len(n.Passages) == 0 {
		c.add(n, 1, "no passage; each begins with a line \"## heading\"")
	}
	seen := map[string]bool{}
	for _, p := range n.Passages {
		if seen[p.ID] {
			c.add(n, p.Line, "duplicate id %q; give the passage another heading", p.ID)
		}
		seen[p.ID] = true
	}
}

// cut reports what was made of a shop's note so that it can be quoted: a passage
// that was cut because it is too long, and a heading that came before.
func (c *checker) cut(n Note) {
	whole, _ := parse(n.File, n.source, false)
	seen := map[string]bool{}
	for _, p := range whole.Passages {
		text, err := Render(p, unit.US)
		if err != nil {
			text = p.Text
		}
		if long := len(strings.Fields(text)); long > longestPassage {
			c.add(n, p.Line, "passage of %d words is too long, and is cut where a sentence ends; %d are enough for one thing", long, longestPassage)
		}
		if seen[p.ID] {
			c.add(n, p.Line, "duplicate id %q; give the passage another heading", p.ID)
		}
		seen[p.ID] = true
	}
}

// front reports keys of the front matter that look like slips of those that mean
// something. Others may be another program's.
func (c *checker) front(n Note) {
	head, _, _ := cutFront(n.source)
	line := 1
	for l := range strings.Lines(string(head)) {
		line++
		key, _, ok := strings.Cut(l, ":")
		if !ok || slices.Contains(frontKeys, key) {
			continue
		}
		for _, known := range frontKeys {
			if len(known) > 3 && words.Slips(key, known, 2) <= 2 {
				c.add(n, line, "front matter: %q is not known; write %q", key, known)
			}
		}
	}
}

// frontKeys are the fields of front.
var frontKeys = []string{"id", "title", "topics", "sources", "reviewed", "see"}

// figureWritten finds a number with a unit.
var figureWritten = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`\d[\d,.]*\s?(?:%|(?:lb|kg|ft|in|m|cm|mm|mph|km/h|knots?|hours?|h|min|minutes?|A|V|Ah|Wh|W|amps?|volts?|ohms?|F|C|gal|gallons?|L|kPa|psi|N|AWG|gauge|pounds?|inch|inches|feet|foot|miles?)\b)`)
})

// passage checks one passage: its references, its length, its source.
func (c *checker) passage(n Note, p Passage) {
	if p.Heading == n.Title && !n.Shop {
		c.add(n, p.Line, "text before the first heading; each passage begins with a line \"## heading\"")
	}
	sound := true
	for rest := p.Text; ; {
		_, end, inner, ok := nextReference(rest)
		if !ok {
			break
		}
		if end < 0 {
			c.add(n, lineOf(n, p.Line, "{{"), "braces of a reference are never closed")
			sound = false
			break
		}
		rest = rest[end:]
		for _, sys := range []unit.System{unit.US, unit.Metric} {
			if _, err := fill(inner, sys); err != nil {
				c.add(n, lineOf(n, p.Line, inner), "{{%s}}: %v", inner, err)
				sound = false
			}
		}
	}
	text := p.Text
	if sound {
		text, _ = Render(p, unit.US)
	}
	switch long := len(strings.Fields(text)); {
	case long > longestPassage:
		c.add(n, p.Line, "passage of %d words is too long; %d are enough for one thing", long, longestPassage)
	case long < shortestPassage && !n.Shop:
		c.add(n, p.Line, "passage of %d words is too short to stand alone", long)
	}
	if p.Source != "" {
		return
	}
	if figure := figureWritten().FindString(text); figure != "" {
		c.add(n, lineOf(n, p.Line, figure), "figure %q without a source; end the passage with \"Source: ...\"", figure)
	} else if !n.Shop {
		c.add(n, p.Line, "no source; end the passage with \"Source: ...\"")
	}
}

// example works one example and compares its figures.
func (c *checker) example(n Note, e Example, ask func(string) (map[string]Figure, error)) {
	want := make([]Figure, len(e.Want))
	for i, w := range e.Want {
		f, err := w.figure()
		if err != nil {
			c.add(n, w.Line, "worked example: %v", err)
			return
		}
		want[i] = f
	}
	if ask == nil {
		return
	}
	got, err := ask(e.Question)
	if err != nil {
		c.add(n, e.Line, "worked example %q: %v", e.Question, err)
		return
	}
	for i, w := range e.Want {
		g, ok := got[w.Figure]
		switch {
		case !ok:
			c.add(n, w.Line, "worked example no longer holds: the answer has no %s", w.Figure)
		case !w.agrees(want[i], g):
			c.add(n, w.Line, "worked example no longer holds: %s is %s, not %s", w.Figure, g.text(w.Figure), w.Value)
		}
	}
}

// cell is the cell whose form an expected figure is read in.
func (w Expected) cell() (sheet.Cell, bool) {
	id, ok := sheet.SaidFor[w.Figure]
	if !ok {
		id, ok = sheet.Lookup(w.Figure)
	}
	if !ok {
		return sheet.Cell{}, false
	}
	return id.Describe(), true
}

func (w Expected) figure() (Figure, error) {
	cell, ok := w.cell()
	if !ok {
		return Figure{}, fmt.Errorf("no figure is called %q", w.Figure)
	}
	if cell.Word {
		return Figure{Word: w.Value}, nil
	}
	x, err := parseQuantity(w.Value, cell.Form)
	return Figure{Value: x}, err
}

// agrees allows one per cent, or half of the last digit written.
func (w Expected) agrees(want, got Figure) bool {
	if want.Word != "" || got.Word != "" {
		return want.Word == got.Word
	}
	d := math.Abs(want.Value - got.Value)
	return d <= 0.01*math.Abs(want.Value)+1e-9 || d <= w.halfDigit()
}

// halfDigit is half of the last digit written, in SI.
func (w Expected) halfDigit() float64 {
	cell, _ := w.cell()
	digits := firstNumber().FindString(w.Value)
	step := "1"
	if _, decimals, ok := strings.Cut(digits, "."); ok {
		step = "0." + strings.Repeat("0", len(decimals)-1) + "1"
	}
	zero, err1 := parseQuantity(strings.Replace(w.Value, digits, "0", 1), cell.Form)
	one, err2 := parseQuantity(strings.Replace(w.Value, digits, step, 1), cell.Form)
	if err1 != nil || err2 != nil {
		return 0
	}
	return math.Abs(one-zero) / 2 * (1 + 1e-9)
}

var firstNumber = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`\d[\d,]*(?:\.\d+)?`) })

func (f Figure) text(figure string) string {
	if f.Word != "" {
		return f.Word
	}
	cell, _ := Expected{Figure: figure}.cell()
	return unit.Show(f.Value, cell.Form, unit.US)
}

// lineOf finds the line of a note's file, from a line on, on which a text
// stands; the line itself where it does not.
func lineOf(n Note, from int, text string) int {
	lines := bytes.Split(n.source, []byte("\n"))
	text, _, _ = strings.Cut(strings.TrimSpace(text), "|") // a long reference may run over the line
	for i := from; i <= len(lines); i++ {
		if bytes.Contains(lines[i-1], []byte(strings.TrimSpace(text))) {
			return i
		}
	}
	return from
}
