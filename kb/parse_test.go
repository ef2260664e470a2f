package kb

import (
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
)

const smallNote = `---
id: dock-lines
title: Tying up
topics: [mooring, care]
sources: ["common practice, no published source"]
reviewed: 2026-01-31
see: [anchor-rode]
---
# Tying up

## Two lines
A line at the *bow* and one at the [stern](somewhere),
each as long as the boat: {{boat.length | boat.length=17 ft, boat.hull=vee}}.

1. Bow first.
2. Stern next.
   - With slack for the tide.

| water | slack |
| --- | --- |
| lake | none |
| tidal | {{boat.length:bare | boat.length=6 ft}} ft |

` + "```example\nask: how long is a dock line for a 17 foot boat\nboat.length: 17 ft\n```" + `

Source: common practice,
no published source.

## What's <b>not</b> enough
One line.
Source: from memory.
`

func TestParse(t *testing.T) {
	got, faults := Parse("notes/dock-lines.md", []byte(smallNote))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	got.source, got.html = nil, nil
	want := Note{
		ID: "dock-lines", Title: "Tying up", File: "notes/dock-lines.md",
		Topics: []string{"mooring", "care"}, Sources: []string{"common practice, no published source"},
		Reviewed: "2026-01-31", See: []string{"anchor-rode"},
		Examples: []Example{{
			Question: "how long is a dock line for a 17 foot boat", Line: 24,
			Want: []Expected{{"boat.length", "17 ft", 26}},
		}},
		Passages: []Passage{{
			ID: "dock-lines#two-lines", Note: "dock-lines", Title: "Tying up", Heading: "Two lines",
			Text: "A line at the bow and one at the stern, each as long as the boat: {{boat.length | boat.length=17 ft, boat.hull=vee}}.\n\n" +
				"1. Bow first.\n2. Stern next.\n  - With slack for the tide.\n\n" +
				"water | slack\nlake | none\ntidal | {{boat.length:bare | boat.length=6 ft}} ft",
			Source: "common practice, no published source.", Topics: []string{"mooring", "care"}, Line: 11,
		}, {
			ID: "dock-lines#whats-not-enough", Note: "dock-lines", Title: "Tying up", Heading: "What's not enough",
			Text: "One line.", Source: "from memory.", Topics: []string{"mooring", "care"}, Line: 32,
		}},
	}
	if d := cmp.Diff(want, got, cmp.AllowUnexported(Note{})); d != "" {
		t.Error(d)
	}
}

// TestParseFaults lists what makes a file no note, and what is said of it.
func TestParseFaults(t *testing.T) {
	long := strings.Repeat("x", maxNote+1)
	for _, c := range []struct{ name, data, want string }{
		{"a zero byte", "# A\n\nb\x00c", "n.md:3: holds a zero byte; a note is plain text"},
		{"not UTF-8", "# A\n\xff", "n.md:2: not UTF-8 text; save it as UTF-8"},
		{"too long", long, "n.md: longer than 64 KiB; a note is a page or two"},
		{"a line without end", strings.Repeat("x", maxStretch+1), "n.md: holds more than 16 KiB without an empty line"},
		{"front matter that is no YAML", "---\nid: [n\n---\n## A\nb", "n.md:2: front matter: "},
		{"an unknown key", "---\nid: n\nsee-also: [x]\n---\n## A\nb", "n.md:3: front matter: field see-also not found"},
		{"an id in capitals", "---\nid: N n\n---\n## A\nb", `n.md:1: id "N n": write it in small letters, digits and hyphens`},
		{"a worked example without a figure", "## A\nb\n\n```example\nask: how far\n```", `n.md:4: worked example: needs a line`},
		{"a line of a worked example that is neither", "## A\nb\n\n```example\nask: how far\nten\n```", `n.md:6: worked example: "ten" is neither`},
	} {
		_, faults := Parse("n.md", []byte(c.data))
		if len(faults) == 0 || !strings.HasPrefix(faults[0].Error(), c.want) {
			t.Errorf("%s: %v, want %s", c.name, faults, c.want)
		}
	}
}

// TestParseWithoutFrontMatter takes the id from the file and the title from the
// first heading.
func TestParseWithoutFrontMatter(t *testing.T) {
	for _, c := range []struct{ file, data, id, title, heading string }{
		{"Winter Hours.md", "# When we are open\n\n## In winter\nBy appointment.", "winter-hours", "When we are open", "In winter"},
		{"a/rates.md", "Ask at the desk.", "rates", "rates", "rates"},
		{"b.md", "# Rates\nAsk at the desk.", "b", "Rates", "Rates"},
		{"b.md", "---\n---\n# Rates\nAsk at the desk.", "b", "Rates", "Rates"},
		{"b.md", "---\nno end of it\n", "b", "b", "b"},
	} {
		n, faults := Parse(c.file, []byte(c.data))
		if len(faults) > 0 || n.ID != c.id || n.Title != c.title || len(n.Passages) != 1 || n.Passages[0].Heading != c.heading {
			t.Errorf("%s: id %q, title %q, passages %+v, faults %v", c.file, n.ID, n.Title, n.Passages, faults)
		}
	}
}

// TestParseHarmless reads what could do harm on a terminal or pass for
// something else.
func TestParseHarmless(t *testing.T) {
	for _, c := range []struct{ name, in, out string }{
		{"an escape sequence", "red \x1b[31m text", "red [31m text"},
		{"an escape sequence as an entity", "red &#27;[31m text", "red [31m text"},
		{"a mark that turns the writing round", "abc \u202edef", "abc def"},
		{"a script", "one\n\n<script>\nalert(1)\n</script>\n\ntwo", "one\n\ntwo"},
		{"tags in a line", "one <b onclick=x>two</b>", "one two"},
		{"a bell and a carriage return", "a\abc\rd", "abc d"},
		{"private characters that stand for others in here", "a \uE000 b", "a b"},
		{"a picture", "see ![the plug](plug.png)", "see the plug"},
	} {
		n, faults := Parse("n.md", []byte("## A\n"+c.in))
		if len(faults) > 0 || len(n.Passages) != 1 || n.Passages[0].Text != c.out {
			t.Errorf("%s: %+v, %v; want %q", c.name, n.Passages, faults, c.out)
		}
	}
}

// TestParseBombs reads what is built to take time: nesting, and marks opened and
// never closed, as long as a note may be; and front matter that refers to itself.
func TestParseBombs(t *testing.T) {
	if testing.Short() {
		t.Skip("takes seconds")
	}
	for _, mark := range []string{">", "> ", "- ", "1. ", "[", "![", "[a](", "*a ", "_a*", "`", "<a", "&amp;", "{{", "|a", "#\n", "## a\n\nb\n\n", "[a]: b\n"} {
		stretch := strings.Repeat(mark, maxStretch/len(mark)-2) + "\n\n"
		data := strings.Repeat(stretch, maxNote/len(stretch))
		start := time.Now()
		if _, faults := parse("n.md", []byte(data), true); len(faults) > 0 {
			t.Errorf("%q: %v", mark, faults[0])
		}
		if took := time.Since(start); took > 20*time.Second {
			t.Errorf("%q takes %v", mark, took)
		}
	}
	front := "---\na: &a [x,x,x,x,x,x,x,x]\n"
	for c := 'b'; c < 'm'; c++ {
		front += strings.NewReplacer("B", string(c), "A", string(c-1)).Replace("B: &B [*A,*A,*A,*A,*A,*A,*A,*A]\n")
	}
	if _, faults := parse("n.md", []byte(front+"topics: *l\n---\n## A\nb"), true); len(faults) == 0 {
		t.Error("front matter of eight to the twelfth topics is taken")
	}
}

func TestSlug(t *testing.T) {
	for in, want := range map[string]string{
		"Between two lengths": "between-two-lengths",
		"What's left?":        "whats-left",
		"  12 V, 24 V  ":      "12-v-24-v",
		"":                    "",
	} {
		if got := Slug(in); got != want {
			t.Errorf("Slug(%q) = %q, want %q", in, got, want)
		}
	}
}

// FuzzParse checks that no file stops the program, that what comes out can be
// shown, and that a passage's source never stays in its text.
func FuzzParse(f *testing.F) {
	f.Add([]byte(smallNote))
	f.Add([]byte("---\n? *a : &a\n---\n"))
	f.Add([]byte("## A {#b}\n> > - 1. | x |\n|--|\n{{x | y=}}"))
	f.Add([]byte("a: &a [*a]\n---\n```example\nask:\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		for _, shop := range []bool{false, true} {
			n, _ := parse("n.md", data, shop)
			for _, p := range n.Passages {
				for _, s := range []string{p.Text, p.Heading, p.Source, p.Title, p.ID} {
					for _, r := range s {
						if r != '\n' && r != '\t' && shown(r) != r {
							t.Errorf("%q holds %q", s, r)
						}
					}
				}
			}
		}
	})
}
