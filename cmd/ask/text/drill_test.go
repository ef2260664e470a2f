package text

import (
	"strings"
	"testing"

	"heronlake.example/ask/reasoner/answer"
)

// marked is a customer served with faults of every kind.
var marked = answer.Answer{Steer: "drill", Headline: "12 of 40 points. Go over this one again.",
	Passages: []answer.Passage{{N: 1, Note: "shaft-length", Title: "How long a shaft", Heading: "How shaft length is made up", Text: "Start from the height.", Source: "common practice", Quoted: true},
		{N: 2, Note: "wire-gauge", Title: "Which wire gauge", Heading: "Two tests", Text: "A wire has to carry the current.", Source: "from memory"}},
	Drill: &answer.Drill{Topic: "sale", Title: "the whole sale", Level: 2, Customer: 3, Next: "next brings another customer.",
		Marks: []answer.Marked{
			{ID: "volts", Kind: "item", Label: "volts", Verdict: "right", Said: "12 V", Points: 10, Most: 10},
			{ID: "shaft", Kind: "item", Label: "shaft", Verdict: "under", Said: "36 in", Want: "48 in", Why: "the need is 46 in", Most: 10, Cites: []int{1}},
			{ID: "gauge", Kind: "item", Label: "wire", Verdict: "acceptable", Said: "4 AWG", Want: "6 AWG", Why: "thicker than it must be", Points: 7, Most: 10, Cites: []int{2}},
			{ID: "breaker", Kind: "item", Label: "breaker", Verdict: "missing", Want: "60 A", Most: 10},
			{ID: "mount.height", Kind: "question", Label: "how high the mount stands above the water", Verdict: "missing", Why: "it is 24 in, and that moves the shaft", Most: 5},
			{ID: "salt", Kind: "caution", Label: "rinse it", Verdict: "missing", Why: "Salt water: rinse after every trip.", Most: 2},
			{ID: "no breaker", Kind: "wish", Label: "the wish that cannot be had", Verdict: "missing", Why: "a chafed wire burns the boat", Most: 5},
		}}}

func TestMarksAreReadable(t *testing.T) {
	page := Render(marked, Style{})
	for _, want := range []string{
		"Right: volts 12 V.", "too little shaft 36 in, take 48 in: the need is 46 in. [1]", "will do    wire 4 AWG, best 6 AWG", "not named  breaker, take 60 A.",
		"not asked  how high the mount stands above the water: it is 24 in", "not said   Salt water: rinse after every trip.", "let pass   the wish that cannot be had: a chafed wire",
		"How shaft length is made up", "[2] Which wire gauge",
	} {
		if !strings.Contains(page, want) {
			t.Errorf("the page lacks %q:\n%s", want, page)
		}
	}
	for _, s := range []Style{{}, {Width: 40}, {Width: Narrowest}, {Plain: true}, {Width: 60, Colour: true}} {
		for line := range strings.Lines(Render(marked, Style{Width: s.Width, Plain: s.Plain})) {
			if w := columns(strings.TrimRight(line, "\n")); s.Width > 0 && w > s.Width || w > Widest {
				t.Errorf("%+v: %d columns: %q", s, w, line)
			}
		}
	}
	if plain := Render(marked, Style{Plain: true}); !strings.Contains(plain, "too little: shaft 36 in, take 48 in") {
		t.Errorf("the plain page has columns:\n%s", plain)
	}
}

func TestCustomerIsIntroducedOnce(t *testing.T) {
	first := answer.Answer{Steer: "drill", Drill: &answer.Drill{Opens: true, Title: "shaft length", Level: 1, Customer: 1, Says: "I've got a jon boat.", Wanted: []string{"shaft"}, Next: "Ask."}}
	later := answer.Answer{Steer: "drill", Drill: &answer.Drill{Title: "shaft length", Level: 1, Customer: 1, Says: "20 inches.", Wanted: []string{"shaft"}}}
	if page := Render(first, Style{}); !strings.HasPrefix(page, "Customer 1: shaft length, level 1\n\"I've got") || !strings.Contains(page, "To name: shaft.") {
		t.Error(page)
	}
	if page := Render(later, Style{}); page != "\"20 inches.\"\n" {
		t.Error(page)
	}
}
