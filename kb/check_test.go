package kb

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
)

// TestBuiltinNotes lints the handbook. Its worked examples run in the program's
// own tests, which have a reasoner to ask.
func TestBuiltinNotes(t *testing.T) {
	lib, err := Builtin()
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range Check(lib, nil) {
		t.Error(f)
	}
}

// soundNote is a note without a fault; each row of TestCheck breaks it in one
// place.
const soundNote = `---
id: n
title: Tying up
topics: [mooring]
sources: ["common practice, no published source"]
reviewed: 2026-01-31
see: [n]
---
# Tying up

## Two lines

A line at the bow and one at the stern, each as long as the boat, hold it at a
dock in any weather that lets you walk there at all without a handrail. For a
boat of {{boat.length | boat.length=17 ft}} buy two of 20 ft.

` + "```example\nask: how long is a 17 foot boat\nboat.length: 17 ft\nboat.hull: vee\n```" + `

Source: common practice, no published source.
`

func TestCheck(t *testing.T) {
	answer := func(question string) (map[string]Figure, error) {
		switch question {
		case "how long is a 17 foot boat":
			return map[string]Figure{"boat.length": {Value: 5.18}, "boat.hull": {Word: "vee"}}, nil
		case "how long is a 19 foot boat":
			return map[string]Figure{"boat.length": {Value: 5.7912}}, nil
		}
		return nil, errors.New("not understood")
	}
	for _, c := range []struct{ name, old, with, want string }{
		{"nothing", "", "", ""},
		{"no review date", "reviewed: 2026-01-31\n", "", "n.md:1: no review date"},
		{"a review date in another form", "2026-01-31", "31.1.2026", `n.md:6: review date "31.1.2026" is not written as`},
		{"no sources", `sources: ["common practice, no published source"]` + "\n", "", "n.md:1: no sources"},
		{"no topics", "topics: [mooring]\n", "", "n.md:1: no topics"},
		{"a neighbour that is not there", "see: [n]", "see: [anchor-rode]", `n.md:7: see: there is no note "anchor-rode"`},
		{"an id that is not the file's", "id: n\n", "id: m\n", `n.md:2: id "m" is not the name of the file`},
		{"a misspelt key", "topics:", "topic:", "n.md:4: front matter: field topic not found"},
		{"an unknown cell", "{{boat.length |", "{{boat.lenght |", `n.md:15: {{boat.lenght | boat.length=17 ft}}: no cell is called "boat.lenght"`},
		{"a cell that nothing gives", "{{boat.length | boat.length=17 ft}}", "{{load.plate}}", "n.md:15: {{load.plate}}: cannot be computed without load.plate"},
		{"a unit that does not fit", "17 ft}}", "17 lb}}", `n.md:15: {{boat.length | boat.length=17 lb}}: input boat.length: unit "lb" does not give m`},
		{"braces left open", "17 ft}}", "17 ft", "n.md:15: braces of a reference are never closed"},
		{"a figure without a source", "Source: common practice, no published source.\n", "", `n.md:15: figure "17 ft" without a source`},
		{"too short", "A line at the bow and one at the stern, each as long as the boat, hold it at a\ndock in any weather that lets you walk there at all without a handrail.", "Two.", "n.md:11: passage of 12 words is too short"},
		{"too long", "without a handrail", "without" + strings.Repeat(" a handrail and", 40), "n.md:11: passage of 163 words is too long"},
		{"two headings alike", "Source: common", "Source: x.\n\n## Two lines\n" + strings.Repeat("word ", 30) + "\n\nSource: common", `n.md:25: duplicate id "n#two-lines"`},
		{"text before the first heading", "## Two lines\n", "", "n.md:12: text before the first heading"},
		{"a tag", "hold it", "<b>hold</b> it", "n.md:13: HTML is left out"},
		{"a block of HTML", "## Two lines\n", "## Two lines\n\n<div>\nGone.\n</div>\n", "n.md:13: HTML is left out"},
		{"an example that no longer holds", "17 foot boat", "19 foot boat", "n.md:19: worked example no longer holds: boat.length is 19 ft, not 17 ft"},
		{"an example with a figure the answer lacks", "boat.hull: vee", "boat.beam: 5 ft", "n.md:20: worked example no longer holds: the answer has no boat.beam"},
		{"an example with another word", "boat.hull: vee", "boat.hull: jon", "n.md:20: worked example no longer holds: boat.hull is vee, not jon"},
		{"an example that cannot be asked", "how long is", "how heavy is", `n.md:17: worked example "how heavy is a 17 foot boat": not understood`},
		{"an example with an unknown figure", "boat.hull: vee", "boat.hul: vee", `n.md:20: worked example: no figure is called "boat.hul"`},
	} {
		text := strings.Replace(soundNote, c.old, c.with, 1)
		if c.old != "" && text == soundNote {
			t.Fatalf("%s: the row changes nothing", c.name)
		}
		n, _ := Parse("n.md", []byte(text))
		faults := Check(NewLibrary(n), answer)
		switch {
		case c.want == "" && len(faults) > 0:
			t.Errorf("%s: %v", c.name, faults)
		case c.want != "" && !contains(faults, c.want):
			t.Errorf("%s: %v, want %s", c.name, faults, c.want)
		}
	}
}

// TestCheckShop lints notes of a shop's folder, which are quoted all the same.
func TestCheckShop(t *testing.T) {
	for _, c := range []struct{ name, old, with, want string }{
		{"nothing", "", "", ""},
		{"another program's key", "topics:", "tags: [dock]\ntopics:", ""},
		{"a misspelt key", "topics:", "tropics:", `n.md:4: front matter: "tropics" is not known; write "topics"`},
		{"too long", "without a handrail", strings.Repeat("without a handrail. ", 45) + "Then", "n.md:11: passage of 178 words is too long, and is cut"},
		{"two headings alike", "Source: common", "Source: x.\n\n## Two lines\n" + strings.Repeat("word ", 30) + "\n\nSource: common", `n.md:25: duplicate id "n#two-lines"`},
		{"a tag", "hold it", "<b>hold</b> it", "n.md:13: HTML is left out"},
	} {
		text := strings.Replace(soundNote, c.old, c.with, 1)
		if c.old != "" && text == soundNote {
			t.Fatalf("%s: the row changes nothing", c.name)
		}
		lib, faults := Load(fstest.MapFS{"n.md": {Data: []byte(text)}})
		faults = append(faults, Check(lib, nil)...)
		switch {
		case c.want == "" && len(faults) > 0:
			t.Errorf("%s: %v", c.name, faults)
		case c.want != "" && !contains(faults, c.want):
			t.Errorf("%s: %v, want %s", c.name, faults, c.want)
		}
	}
}

func contains(faults []Fault, prefix string) bool {
	for _, f := range faults {
		if strings.HasPrefix(f.Error(), prefix) {
			return true
		}
	}
	return false
}

// TestExpectedAgrees allows one per cent or half of the last digit written.
func TestExpectedAgrees(t *testing.T) {
	for _, c := range []struct {
		figure, value string
		got           float64
		want          bool
	}{
		{"load.total", "1,900 lb", 861.8, true},
		{"load.total", "1,900 lb", 871, false},
		{"speed.top", "3 mph", 1.55, true},  // 3.47 mph
		{"speed.top", "3 mph", 1.57, false}, // 3.51 mph
		{"speed.top", "3.0 mph", 1.55, false},
		{"wire.gauge", "1/0 AWG", 0, true},
		{"wire.gauge", "1/0 AWG", 1, false},
		{"system.voltage", "24 V", 24, true},
	} {
		w := Expected{Figure: c.figure, Value: c.value}
		want, err := w.figure()
		if err != nil {
			t.Fatal(err)
		}
		if got := w.agrees(want, Figure{Value: c.got}); got != c.want {
			t.Errorf("%s %s against %v: %v", c.figure, c.value, c.got, got)
		}
	}
}

func ExampleFault() {
	fmt.Println(Fault{File: "wire.md", Line: 12, Text: "no source"})
	// Output: wire.md:12: no source
}
