package text

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	_ "heronlake.example/ask/tests/seeded"
	"pgregory.net/rapid"

	"heronlake.example/ask/reasoner/answer"
)

var update = flag.Bool("update", false, "write the golden files anew")

func TestRenderGolden(t *testing.T) {
	narrow := Style{Width: 40}
	tests := []struct {
		file  string
		a     answer.Answer
		style Style
	}{
		{"fitting", fitting(), Style{}},
		{"fitting-40-columns", fitting(), narrow},
		{"fitting-colour", fitting(), Style{Colour: true}},
		{"fitting-plain", fitting(), Style{Plain: true}},
		{"offers", offers(), Style{}},
		{"follow-up", followUp(), Style{}},
		{"shaft", shaftQuestion(), Style{}},
		{"concept", concept(), Style{}},
		{"concept-40-columns", concept(), narrow},
		{"concept-with-figure", conceptWithFigure(), Style{}},
		{"comparison", comparison(), Style{}},
		{"comparison-plain", comparison(), Style{Plain: true}},
		{"out-of-scope", outOfScope(), Style{}},
		{"out-of-scope-plain", outOfScope(), Style{Plain: true}},
		{"boat", boatCard(), Style{}},
		{"boat-40-columns", boatCard(), narrow},
		{"why", why(), Style{}},
		{"nothing", answer.Answer{Question: "hm"}, Style{}},
	}
	for _, test := range tests {
		t.Run(test.file, func(t *testing.T) {
			got := Render(test.a, test.style)
			file := filepath.Join("testdata", test.file+".txt")
			if *update {
				if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(string(want), got); diff != "" {
				t.Errorf("page differs from %s (-want +got), rewrite with -update:\n%s", file, diff)
			}
		})
	}
}

// many makes the longest fitting answer that could be thought of.
func many(n int) answer.Answer {
	a := fitting()
	for i := range n {
		a.Figures = append(a.Figures, answer.Figure{ID: fmt.Sprint("f", i), Label: fmt.Sprint("Figure ", i), Display: "1 lb", Decides: true})
		a.Choices = append(a.Choices, answer.Choice{ID: fmt.Sprint("c", i), Pick: "this", Why: strings.Repeat("for a long reason ", 9)})
		a.Assumed = append(a.Assumed, answer.Assumed{Slot: fmt.Sprint("s", i), Display: "1 (0 to 2)"})
		a.Passages = append(a.Passages, answer.Passage{N: 7 + i, Note: "n", Title: "A note", Heading: fmt.Sprint("Part ", i), Source: "from memory"})
		a.Problems = append(a.Problems, answer.Problem{Kind: "unplaced", Text: "the number was not used", Start: 0, End: 2})
	}
	return a
}

func TestPageFitsCounterScreen(t *testing.T) {
	for _, a := range []answer.Answer{fitting(), offers(), many(3), many(30)} {
		page := Render(a, Style{})
		lines := strings.Split(strings.TrimSuffix(page, "\n"), "\n")
		if len(lines) > Lines {
			t.Errorf("%d lines, want at most %d:\n%s", len(lines), Lines, page)
		}
		for _, must := range []string{a.Headline[:30], a.Cautions[0].Text[:20], a.Ask[0].Question[:20], a.Notice[:30]} {
			if !strings.Contains(page, must) {
				t.Errorf("%q was cut from the page:\n%s", must, page)
			}
		}
	}
	if page := Render(many(30), Style{}); !strings.Contains(page, held) {
		t.Errorf("a page that was cut does not say so:\n%s", page)
	}
	if page := Render(shaftQuestion(), Style{}); strings.Contains(page, held) {
		t.Errorf("a page that was not cut says it was:\n%s", page)
	}
}

// Lines never leave the page, however narrow, save for a character that is
// itself wider than the page.
func TestNoLineIsWiderThanThePage(t *testing.T) {
	for _, a := range []answer.Answer{fitting(), followUp(), shaftQuestion(), concept(), comparison(), outOfScope(), boatCard(), why(), offers(), many(5)} {
		for width := Narrowest; width <= Widest; width++ {
			for _, plain := range []bool{false, true} {
				for l := range strings.Lines(Render(a, Style{Width: width, Plain: plain})) {
					if n := columns(strings.TrimSuffix(l, "\n")); n > width {
						t.Fatalf("%d columns on a page of %d: %q", n, width, l)
					}
				}
			}
		}
	}
}

// What was asked for stays when figures are cut.
func TestAskedFiguresAreCutLast(t *testing.T) {
	figures := []answer.Figure{{ID: "a"}, {ID: "b", Asked: true}, {ID: "c"}, {ID: "d", Asked: true}, {ID: "e"}}
	for n, want := range []string{"", "b", "bd", "abd", "abcd", "abcde"} {
		got := ""
		for _, f := range foremost(figures, n) {
			got += f.ID
		}
		if got != want {
			t.Errorf("%d of them: %q, want %q", n, got, want)
		}
	}
}

func TestColourSaysNothingOfItsOwn(t *testing.T) {
	for _, a := range []answer.Answer{fitting(), outOfScope(), why(), concept()} {
		coloured := Render(a, Style{Colour: true})
		for _, s := range append(sgr[1:], sgrReset) {
			coloured = strings.ReplaceAll(coloured, s, "")
		}
		if diff := cmp.Diff(Render(a, Style{}), coloured); diff != "" {
			t.Errorf("the words differ with colour (-without +with):\n%s", diff)
		}
	}
}

func TestHostileTextIsHarmless(t *testing.T) {
	evil := "red\x1b[31m bell\x07 back\x08 c1\u009b31m rtl\u202eabc iso\u2066 bom\ufeff null\x00 bad\xff line\u2028end"
	a := answer.Answer{
		Question: evil, Headline: evil, Notice: evil,
		Changed:   []answer.Change{{Text: evil}},
		Figures:   []answer.Figure{{Label: evil, Display: evil, Band: evil, How: evil}},
		Choices:   []answer.Choice{{ID: evil, Pick: evil, Why: evil, Instead: evil}},
		Assumed:   []answer.Assumed{{Slot: evil, Display: evil}},
		Cautions:  []answer.Caution{{Text: evil}},
		Passages:  []answer.Passage{{N: 1, Note: evil, Heading: evil, Text: evil, Source: evil, Quoted: true}, {N: 2, Note: evil, Source: evil}},
		Ask:       []answer.Ask{{Question: evil, Why: evil}},
		Problems:  []answer.Problem{{Kind: evil, Text: evil, Start: 0, End: 3}, {Kind: "unplaced", Text: evil, Start: 4, End: 9}},
		Corrected: []answer.Corrected{{Said: evil, Word: evil}},
		Tables:    []answer.Table{{Title: evil, Columns: []string{evil}, Rows: [][]string{{evil}}, Verdict: evil}},
		Parts:     []answer.Part{{What: evil, Item: evil, Note: evil}},
		Offers:    []answer.Offer{{Name: evil, SKU: evil, Reason: evil, Views: []string{evil}}}, Shelf: evil,
		Steps:   []answer.Step{{Label: evil, Result: evil, Formula: evil, Working: evil, Source: evil, Said: evil, Why: evil, Warnings: []string{evil}}},
		Unknown: []answer.Unknown{{Label: evil}}, Understood: []answer.Understood{{Slot: evil, Text: evil, Said: evil}},
		Reply: evil,
	}
	for _, steer := range []string{"", "boat", "why", "undo"} {
		a.Steer = steer
		for _, plain := range []bool{false, true} {
			for _, r := range Render(a, Style{Plain: plain}) {
				if r != '\n' && Unsafe(r) {
					t.Fatalf("%U reached the page of %q", r, steer)
				}
			}
		}
	}
}

func TestAnythingCanBeDrawn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := fitting()
		a.Question = rapid.String().Draw(t, "question")
		start := rapid.IntRange(0, len(a.Question)+3).Draw(t, "start")
		a.Problems = []answer.Problem{{Kind: "ambiguous", Text: rapid.String().Draw(t, "text"), Start: start, End: start + rapid.IntRange(0, 9).Draw(t, "length")}}
		a.Headline = rapid.String().Draw(t, "headline")
		width := rapid.IntRange(Narrowest, Widest).Draw(t, "width")
		for l := range strings.Lines(Render(a, Style{Width: width})) {
			if n := columns(strings.TrimSuffix(l, "\n")); n > width {
				t.Fatalf("%d columns on a page of %d: %q", n, width, l)
			}
		}
	})
}

func TestUnderlineStandsBelowItsWords(t *testing.T) {
	question := "16 ft jon with 3 flurbs of 船 gear"
	start := strings.Index(question, "3 flurbs")
	a := answer.Answer{Question: question, Problems: []answer.Problem{{Kind: "unplaced", Text: "what are flurbs?", Start: start, End: start + len("3 flurbs")}}}
	want := "  16 ft jon with 3 flurbs of 船 gear\n" +
		"                 ^^^^^^^^\n"
	if got := Render(a, Style{}); !strings.HasPrefix(got, want) {
		t.Errorf("got\n%swant it to begin\n%s", got, want)
	}
	start = strings.Index(question, "gear")
	a.Problems[0].Start, a.Problems[0].End = start, len(question)
	want = "  16 ft jon with 3 flurbs of 船 gear\n" +
		"                                ^^^^\n"
	if got := Render(a, Style{}); !strings.HasPrefix(got, want) {
		t.Errorf("behind a wide character: got\n%swant it to begin\n%s", got, want)
	}
}
