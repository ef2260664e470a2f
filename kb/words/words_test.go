package words

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// A form must belong to one entry, or the table would depend on its order.
func TestOneEntryPerForm(t *testing.T) {
	owner := map[string]string{}
	for _, e := range Entries() {
		for _, f := range append([]string{e.Word}, e.Forms...) {
			key := strings.Join(Split(f), " ")
			if old, twice := owner[key]; twice && old != e.Word {
				t.Errorf("%q is a form of %q and of %q", f, old, e.Word)
			}
			owner[key] = e.Word
		}
	}
}

func ExampleExpand() {
	fmt.Println(Expand("my toon sucks air in chop"))
	fmt.Println(Expand("lifepo4 or wet cells for a tin boat"))
	// Output:
	// [pontoon ventilation wave]
	// [lithium flooded aluminum]
}

func ExampleMatch() {
	id, n := Match(Split("sit on top kayak with a paddle"))
	fmt.Println(id.Name(), n)
	id, n = Match(Split("batteries"))
	fmt.Println(id.Name(), n)
	// Output:
	// kayak 4
	// battery 1
}

// What a slip is taken for, and the ordinary words that are none.
func TestCorrect(t *testing.T) {
	for _, row := range []struct{ said, want string }{
		{"pontton", "pontoon"}, {"alumnium", "aluminum"}, {"thrist", "thrust"}, {"brekaer", "breaker"},
		{"curent", "current"}, {"lithuim", "lithium"}, {"trolloing", "trolling"}, {"throtle", "throttle"},
		{"shift", ""}, {"trust", ""}, {"change", ""}, {"changer", ""}, {"remove", ""}, {"table", ""}, {"weeks", ""},
		{"needs", ""}, {"breakfast", ""}, {"brushes", ""}, {"canon", ""}, {"motion", ""}, {"shirt", ""}, {"ransom", ""},
		{"1648", ""}, {"lake", ""}, {"flooded", ""}, {"killer", ""}, {"charged", ""}, {"serious", ""}, {"rolling", ""},
	} {
		if got, _ := Correct(row.said); got != row.want {
			t.Errorf("Correct(%q) = %q, want %q", row.said, got, row.want)
		}
	}
}

// No ordinary word on the list may itself be one that slips are corrected to.
func TestTargetsAreNotCommon(t *testing.T) {
	for _, w := range targets {
		if common()[w] {
			t.Errorf("%q is both a target and an ordinary word", w)
		}
	}
}

func FuzzExpand(f *testing.F) {
	f.Add("my toon sucks air")
	f.Add("")
	f.Add("\x00ÿ''–")
	f.Fuzz(func(t *testing.T, text string) {
		if a, b := fmt.Sprint(Expand(text)), fmt.Sprint(Expand(text)); a != b {
			t.Errorf("two expansions differ: %s and %s", a, b)
		}
	})
}

func TestSlips(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{
		{"battery", "battery", 0},
		{"battary", "battery", 1},
		{"batery", "battery", 1},
		{"batttery", "battery", 1},
		{"btatery", "battery", 1},
		{"batteyr", "battery", 1},
		{"propellor", "propeller", 1},
		{"shaft", "boat", 3},
		{"", "ab", 2},
	} {
		if got := Slips(c.a, c.b, 2); got != c.want {
			t.Errorf("%s, %s: %d, want %d", c.a, c.b, got, c.want)
		}
	}
}

// TestEnglish finds words wherever they stand in the lists, and no parts of words.
func TestEnglish(t *testing.T) {
	lines := strings.Split(strings.TrimSpace(english), "\n")
	if !slices.IsSorted(lines) {
		t.Fatal("english.txt is not in order")
	}
	for _, w := range []string{lines[0], lines[len(lines)-1], "bench", "hypothermia", "lanyard", "peukert", "windless", "ampacity"} {
		if !English(w) {
			t.Errorf("%q is no word", w)
		}
	}
	for _, w := range []string{"", "a\nb", "bensh", "battry", "moter", "peuk", "mpacity", "asdf", "zzzzzz"} {
		if English(w) {
			t.Errorf("%q is a word", w)
		}
	}
}
