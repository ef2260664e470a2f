package meaning

import (
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// A phrasing is a line of talk and the facts that it states, all of them:
// "boat.length 17 ft; boat.hull jon; wind.speed 10..15 mph". A bound has one end
// ("..900 USD"). A slot that holds several values is named once for each.
type phrasing struct{ text, want string }

// phrasings is every corpus of single lines.
var phrasings = func() []phrasing {
	var all []phrasing
	for _, c := range [][]phrasing{boatsCorpus, powerCorpus, wiringCorpus, mountsCorpus, wishesCorpus, counterCorpus, familiesCorpus} {
		all = append(all, c...)
	}
	return all
}()

var inSI = map[string]float64{"ft": 0.3048, "in": 0.0254, "m": 1, "cm": 0.01, "lb": 0.45359237, "kg": 1, "lbf": 4.4482216152605, "mph": 0.44704,
	"kn": 0.514444444, "m/s": 1, "V": 1, "A": 1, "Ah": 1, "h": 1, "min": 60, "gal": 3.785411784, "L": 1, "USD": 1, "AWG": 1, "degC": 1, "": 1}

// wanted reads one fact of a corpus row.
func wanted(t *testing.T, s string) card.Fact {
	t.Helper()
	slot, rest, _ := strings.Cut(strings.TrimSpace(s), " ")
	f := card.Fact{Slot: slot}
	value, unit, _ := strings.Cut(rest, " ")
	by, known := inSI[unit]
	if !numeric(slot) {
		f.Text = rest
		return f
	}
	if !known {
		t.Fatalf("corpus: no unit %q in %q", unit, s)
	}
	number := func(s string) *float64 {
		if s == "" {
			return nil
		}
		v, err := strconv.ParseFloat(s, 64)
		if err != nil {
			t.Fatalf("corpus: %q in %q is no number", s, rest)
		}
		return num(v * by)
	}
	if lo, hi, isRange := strings.Cut(value, ".."); isRange {
		f.Low, f.High = number(lo), number(hi)
	} else {
		f.Value = number(value)
	}
	return f
}

// agrees compares a fact with what the corpus wants: the range where one is
// wanted, the value otherwise, to half a percent.
func agrees(want, got card.Fact) bool {
	near := func(a, b *float64) bool {
		return a == nil && b == nil || a != nil && b != nil && math.Abs(*a-*b) <= 0.005*math.Abs(*a)+1e-9
	}
	if want.Text != "" || got.Text != "" {
		return want.Text == got.Text
	}
	if want.Value != nil {
		return near(want.Value, got.Value)
	}
	return near(want.Low, got.Low) && near(want.High, got.High)
}

// compareFacts reports what is missing, wrong or too much on a card.
func compareFacts(t *testing.T, line, want string, c card.Card) {
	t.Helper()
	taken := make([]bool, len(c.Facts))
next:
	for _, w := range strings.Split(want, ";") {
		if strings.TrimSpace(w) == "" {
			continue
		}
		f := wanted(t, w)
		wrong := ""
		for i, g := range c.Facts {
			if taken[i] || g.Slot != f.Slot {
				continue
			}
			if agrees(f, g) {
				taken[i] = true
				continue next
			}
			wrong = describe(g)
		}
		if wrong != "" {
			t.Errorf("%q: wanted %s, got %s", line, strings.TrimSpace(w), wrong)
		} else {
			t.Errorf("%q: %s is missing", line, strings.TrimSpace(w))
		}
	}
	for i, g := range c.Facts {
		if !taken[i] && !Inner(g.Slot) && g.Slot != "use.style" && !strings.Contains(want, g.Slot) {
			t.Errorf("%q: %s was not said (row %q)", line, describe(g), g.Row)
		}
	}
}

func describe(f card.Fact) string {
	s := f.Slot + " " + f.Text
	for _, p := range []*float64{f.Low, f.Value, f.High} {
		if p != nil {
			s += " " + strconv.FormatFloat(*p, 'g', 6, 64)
		}
	}
	return s + " " + f.Unit
}

// TestCorpus binds every phrasing by itself and compares all facts.
func TestCorpus(t *testing.T) {
	for _, p := range phrasings {
		out := Bind(read.Read(p.text), card.Card{})
		compareFacts(t, p.text, p.want, out.Card)
		for _, problem := range out.Problems {
			if problem.Kind == "contradiction" || problem.Kind == "out-of-range" || problem.Kind == "out-of-scope" {
				t.Errorf("%q: a false alarm: %s", p.text, problem.Text)
			}
		}
	}
}

// TestNothing binds lines that state nothing of a boat.
func TestNothing(t *testing.T) {
	for _, text := range slices.Concat(nothings, counterNothings, familiesNothings) {
		compareFacts(t, text, "", Bind(read.Read(text), card.Card{}).Card)
	}
}

// TestNeverBound binds lines that hold a number for which the slot is a trap.
func TestNeverBound(t *testing.T) {
	for _, row := range slices.Concat(traps, familiesTraps) {
		c := Bind(read.Read(row.text), card.Card{}).Card
		for _, slot := range strings.Fields(row.want) {
			if f, ok := c.Get(slot); ok {
				t.Errorf("%q: must not fill %s (row %q)", row.text, describe(f), f.Row)
			}
		}
	}
}

// TestCorpusSize keeps the corpus from shrinking.
func TestCorpusSize(t *testing.T) {
	if n := len(phrasings); n < 250 {
		t.Errorf("%d phrasings, at least 250 wanted", n)
	}
	if n := len(nothings) + len(traps); n < 60 {
		t.Errorf("%d negatives, at least 60 wanted", n)
	}
}

// TestEveryNumberAccounted holds the rule that no number is dropped in silence.
func TestEveryNumberAccounted(t *testing.T) {
	for _, p := range phrasings {
		r := read.Read(p.text)
		l := newLine(r, card.Card{})
		l.understand()
		for m := range r.Measures {
			me := &r.Measures[m]
			told := false
			for _, pr := range l.problems {
				told = told || pr.Start <= me.Start && pr.End >= me.End
			}
			if !l.used[m] && me.As == "" && !told && hasDigit(me.Said) {
				t.Errorf("%q: %q is neither bound nor reported", p.text, me.Said)
			}
		}
	}
}

// TestNames finds rules that name an entry which is in no table, and sayings
// that are written otherwise than a line is compared with.
func TestNames(t *testing.T) {
	for _, n := range unknownNames {
		t.Errorf("a rule names %q, which is in no table of words", n)
	}
	namesEntry := regexp.MustCompile(`words\.Of\("([^"]+)"\)`)
	looksFor := regexp.MustCompile(`saysText\("([^"]+)"\)`)
	saying := func(where, text string) {
		if " "+text+" " != spoken(text) || text == "" {
			t.Errorf("%s looks for %q, which no line says: in plain words it is %q", where, text, spoken(text))
		}
	}
	for _, row := range topicRows {
		for _, text := range row.texts {
			saying("a topic", text)
		}
	}
	for _, text := range outsideWords {
		saying("talk of something else", text)
	}
	for _, text := range fillSayings {
		saying("filling a battery", text)
	}
	files, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range files {
		source, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range namesEntry.FindAllStringSubmatch(string(source), -1) {
			if words.Of(m[1]) == words.None {
				t.Errorf("%s names %q, which is in no table of words", name, m[1])
			}
		}
		for _, m := range looksFor.FindAllStringSubmatch(string(source), -1) {
			saying(name, m[1])
		}
	}
}
