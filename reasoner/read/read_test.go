package read

import (
	"strings"
	"testing"
	"time"
)

func TestCut(t *testing.T) {
	long := strings.Repeat("x", MaxText) + " 12 ft"
	if r := Read(long); !r.Cut || len(r.Measures) != 0 {
		t.Errorf("a text beyond MaxText: cut %v, %d measures", r.Cut, len(r.Measures))
	}
	many := strings.Repeat("12 ft ", MaxMeasures+10)
	if r := Read(many); !r.Cut || len(r.Measures) != MaxMeasures {
		t.Errorf("a text of many measures: cut %v, %d measures", r.Cut, len(r.Measures))
	}
	if r := Read("12 ft"); r.Cut {
		t.Error("a short text is cut")
	}
}

func TestTokens(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"18-foot", "18|-|foot"},
		{"24V, 1,900 LB", "24|v|,|1900|lb"},
		{"18’6″", "18|'|6|\""},
		{"5''", "5|\""},
		{"a\u00a0b — c", "a|b|-|c"},
		{"don’t", "don't"},
		{"lifepo4 usd115 2x100", "lifepo4|usd|115|2|x|100"},
		{"35mm² 35mm2", "35|mm²|35|mm2"},
		{"k.g. m.p.h", "kg|mph"},
		{"≥30 ½", ">=|30|½"},
		{"20..", "20|."},
		{".5 1.2.3", ".5|1.2.3"},
		{"1e6 2e", "1e6|2|e"},
	} {
		var got []string
		r := Read(c.text)
		check(t, c.text, r)
		for _, tok := range r.Tokens {
			got = append(got, tok.Text)
		}
		if s := strings.Join(got, "|"); s != c.want {
			t.Errorf("%q: tokens %s, want %s", c.text, s, c.want)
		}
	}
}

// TestAlso: what is ambiguous keeps its other reading.
func TestAlso(t *testing.T) {
	for _, c := range []struct {
		text, rule string
		kind       Kind
		value      float64
	}{
		{"5 m", "miles", Length, 8046.72},
		{"55 lb", "pounds of thrust", Force, 55 * lbf},
		{"2 ton", "metric tons", Mass, 2000},
		{"24", "volts", Voltage, 24},
		{"two 27s", "battery group", Group, 27},
		{"31 agm", "battery group", Group, 31},
		{"40 degrees", "degrees Celsius", Temperature, 40},
		{"6 wire", "wire gauge", Gauge, 6},
		{"a 1998", "", "", 0}, // surely a year, so nothing else
	} {
		r := Read(c.text)
		found := false
		for _, a := range r.Measures[len(r.Measures)-1].Also {
			if a.Rule == c.rule && a.Kind == c.kind && same(&a.Value, c.value) {
				found = true
			}
		}
		if found != (c.rule != "") {
			t.Errorf("%q: other readings %v, want %s", c.text, r.Measures[len(r.Measures)-1].Also, c.rule)
		}
	}
}

func TestPublic(t *testing.T) {
	for _, c := range []struct {
		text string
		kind Kind
		unit string
	}{
		{"group 27", Number, "1"}, {"2/0", Number, "1"}, {"24 v", Voltage, "V"}, {"$5", Money, "USD"}, {"£5", Money, "GBP"}, {"6", Number, "1"},
	} {
		if kind, unit := Read(c.text).Measures[0].Public(); kind != c.kind || unit != c.unit {
			t.Errorf("%q is shown as %s in %s, want %s in %s", c.text, kind, unit, c.kind, c.unit)
		}
	}
}

// TestRows: no spelling is written twice in one row, none is empty, and every
// phrase is written as the tokens are cut.
func TestRows(t *testing.T) {
	for _, u := range units {
		seen := map[string]bool{}
		for spelling := range strings.SplitSeq(u.spelled, "|") {
			if spelling == "" || seen[spelling] {
				t.Errorf("unit %s: spelling %q is empty or there twice", u.spoken, spelling)
			}
			seen[spelling] = true
			for word := range strings.FieldsSeq(spelling) {
				if r := Read(word); len(r.Tokens) != 1 || r.Tokens[0].Text != word {
					t.Errorf("unit %s: %q is no single token", u.spoken, word)
				}
			}
		}
	}
	for _, h := range hedges {
		seen := map[string]bool{}
		for phrase := range strings.SplitSeq(h.phrases, "|") {
			if phrase == "" || seen[phrase] {
				t.Errorf("hedge %s: phrase %q is empty or there twice", h.name, phrase)
			}
			seen[phrase] = true
			for word := range strings.FieldsSeq(phrase) {
				if r := Read(word); len(r.Tokens) != 1 || r.Tokens[0].Text != word {
					t.Errorf("hedge %s: %q is no single token", h.name, word)
				}
			}
		}
	}
}

// TestSpellings: a number and any spelling of any unit that stands under no
// condition is one measure in that unit, glued, spaced or hyphened.
func TestSpellings(t *testing.T) {
	for _, u := range units {
		if u.only != nil {
			continue
		}
		for spelling := range strings.SplitSeq(u.spelled, "|") {
			for _, text := range []string{"7.5 " + spelling, "7.5" + spelling, "7.5-" + spelling, "7.5 " + strings.ToUpper(spelling)} {
				if text == "7.5"+spelling && (strings.HasPrefix(spelling, "ft") || strings.HasPrefix(spelling, "in")) && strings.ContainsAny(spelling, "23") {
					continue // glued, the figure is inches: 18ft2
				}
				r := Read(text)
				if len(r.Measures) != 1 || r.Measures[0].Said != text {
					t.Errorf("%q is not read as one measure: %s", text, list(r))
					continue
				}
				m := r.Measures[0]
				if m.Kind != u.kind || m.Spoken != u.spoken || m.As != u.as || !same(m.Value, 7.5*u.factor+u.offset) {
					t.Errorf("%q is read as %s, want %s in %s", text, list(r), u.kind, u.spoken)
				}
			}
		}
	}
}

// TestOthers: every mark that a corpus line or a row can give is listed.
func TestOthers(t *testing.T) {
	listed := map[string]bool{"": true}
	for i, as := range Others {
		if i > 0 && Others[i-1] >= as {
			t.Errorf("%q is out of order", as)
		}
		listed[as] = true
	}
	for _, u := range units {
		if !listed[u.as] {
			t.Errorf("unit %s is marked %q, which is not listed", u.spoken, u.as)
		}
	}
	for _, c := range talk {
		for _, m := range Read(c.line).Measures {
			if !listed[m.As] {
				t.Errorf("%q: marked %q, which is not listed", c.line, m.As)
			}
		}
	}
}

// TestTime: a quarter megabyte of any of these is read in well under a second, where a reader that
// looks back over all that it has read would take hours.
func TestTime(t *testing.T) {
	for _, unit := range []string{
		question + " ", "1", "1 ", "1,234,567,", "one ", "twenty ", "and a half ", "a ", "- ", "-", "'", "\"", "from 1 to ", "between ", "or so ", "1/", "1-", "1 in ", "1,1 in ", "1 over 1 in ", "one in ", "one over ", "1,1 ", "1.", ". ", "5 ft 6 in ", "hundred and ", "no more than ", "(", "$", "\xff", "½", "🎣", "x1", "1e", "555-", "a.", "1-555-0142-", "point five ", "less than or equal to ",
	} {
		text := strings.Repeat(unit, (1<<18)/len(unit)+1)
		start := time.Now()
		r := Read(text)
		if d := time.Since(start); d > 20*time.Second { // on a machine with much else to do
			t.Errorf("%q repeated: %v for a quarter megabyte", unit, d)
		}
		check(t, text, r)
	}
}

func FuzzRead(f *testing.F) {
	for _, c := range corpus {
		for _, said := range c.said {
			f.Add(said)
		}
	}
	for _, c := range talk {
		f.Add(c.line)
	}
	for _, line := range negatives {
		f.Add(line)
	}
	f.Fuzz(func(t *testing.T, text string) {
		start := time.Now()
		r := Read(text)
		// Far above any reading of so short a text, and above the pauses of a
		// machine that is busy with the search itself.
		if d := time.Since(start); d > 20*time.Second {
			t.Fatalf("%d bytes took %v", len(text), d)
		}
		check(t, text, r)
		for _, m := range r.Measures {
			for _, p := range []*float64{m.Value, m.Low, m.High, &m.Bare, &m.BareHigh} {
				if p != nil && !finite(*p) {
					t.Fatalf("%q: %q is %v", text, m.Said, *p)
				}
			}
		}
	})
}
