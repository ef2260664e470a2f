package faults

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

const soundSettings = "units: metric\nplain: true\n"

const soundBoat = `form: ask.boat/1
name: heron
revision: 3
facts:
    - slot: boat.length
      value: 5.4864
      unit: m
      said: 18-foot
    - slot: load.total
      value: 861.8
      unit: kg
      said: 1,900 lb
`

const soundScores = `form: ask.scores/1
name: Tess
scores:
    - topic: thrust
      level: 1
      seed: 3
      customer: 1
      points: 3
      most: 4
    - topic: wiring
      level: 2
      seed: 3
      customer: 2
      points: 5
      most: 5
`

const soundMotors = `sku,name,thrust_lb,volts_V,shaft_in,mount,mount_kind,control,speeds,drive,water,price_USD,count
T-1,Teal 40,40,12,36,transom,clamp,tiller,variable,brushed,fresh,210,2
T-2,Teal 55,55,12,42,bow,folding-arm,foot-cable,variable,brushed,fresh,310,2
`

const soundNote = `---
id: dock-service
title: "What the dock does while you wait"
topics: [service]
sources: ["the shop's own rates"]
reviewed: 2026-03-02
---
# What the dock does while you wait

## Props while you wait

At the dock we fix props while you wait: bring the prop and its pin, and the
bench straightens a bent blade in ten minutes on any weekday before noon.

Source: the shop's own rates.
`

var fileFaults = slices.Concat(
	// Settings that are there must be sound: half of them would be a surprise.
	damaged("settings", "config/ask/ask.yaml", soundSettings, func(t *testing.T, home, path string) string {
		got := at(t, home).ask(question)
		if got.status == 0 {
			return at(t, home).answers()
		}
		return at(t, home).refuses(2, question)
	}),
	[]fault{
		{"settings: a YAML bomb", func(t *testing.T) string {
			home := folder(t)
			bomb := "a: &a [x,x,x,x,x,x,x,x,x]\n"
			for c := 'b'; c < 'k'; c++ {
				p := string(c - 1)
				bomb += string(c) + ": &" + string(c) + " [" + strings.TrimSuffix(strings.Repeat("*"+p+",", 9), ",") + "]\n"
			}
			file(t, home, "config/ask/ask.yaml", bomb)
			return at(t, home).refuses(2, question)
		}},
		{"settings: an escape sequence in a value", func(t *testing.T) string {
			home := folder(t)
			file(t, home, "config/ask/ask.yaml", "units: \"\\e[31mred\\u202e\"\n")
			return at(t, home).refuses(2, question)
		}},
	},

	// A history is no reason not to answer, and is not touched by a question.
	damaged("history", "state/ask/history", "16 ft jon\ntwo aboard\n", func(t *testing.T, home, path string) string {
		before := content(path)
		outcome := at(t, home).answers()
		if content(path) != before {
			t.Error("the history was changed")
		}
		return outcome
	}),

	// A kept boat that cannot be read is named, and what is left of it is kept.
	damaged("kept boat", "data/ask/boats/heron.yaml", soundBoat, func(t *testing.T, home, path string) string {
		before := content(path)
		outcome := at(t, home).refuses(2, "--boat", "heron", question)
		kept := false
		files, _ := filepath.Glob(path + "*")
		for _, f := range files {
			kept = kept || content(f) == before
		}
		if before != "" && !kept {
			t.Errorf("what the file held is gone; there are %q", files)
		}
		return outcome
	}),
	[]fault{
		{"kept boat: written by a later program", func(t *testing.T) string {
			home := folder(t)
			file(t, home, "data/ask/boats/heron.yaml", strings.Replace(soundBoat, "ask.boat/1", "ask.boat/9", 1))
			outcome := at(t, home).refuses(2, "--boat", "heron", question)
			intact(t, filepath.Join(home, "data/ask/boats/heron.yaml"), strings.Replace(soundBoat, "ask.boat/1", "ask.boat/9", 1))
			return outcome
		}},
		{"kept boat: escape sequences in its words", func(t *testing.T) string {
			home := folder(t)
			file(t, home, "data/ask/boats/heron.yaml", strings.Replace(soundBoat, "said: 18-foot", `said: "18\e[31m\u202e-foot"`, 1))
			r := at(t, home)
			r.input = ":boat\n:why load.total\n"
			got := r.ask("--boat", "heron")
			if got.status != 0 || !strings.Contains(got.out, "1,900 lb") {
				t.Fatalf("status %d\n%s%s", got.status, got.out, got.err)
			}
			return "answers; the marks are shown as question marks"
		}},
	},

	// The same holds for a trainee's record; the table of all is printed without it.
	damaged("trainee's record", "data/ask/trainees/trainee-tess.yaml", soundScores, func(t *testing.T, home, path string) string {
		before := content(path)
		r := at(t, home)
		got := r.ask("--scores")
		if got.status != 0 {
			t.Fatalf("status %d\n%s%s", got.status, got.out, got.err)
		}
		kept := before == ""
		files, _ := filepath.Glob(path + "*")
		for _, f := range files {
			kept = kept || content(f) == before
		}
		if !kept {
			t.Errorf("what the file held is gone; there are %q", files)
		}
		switch {
		case got.err != "":
			return "the table without it, and a word: " + r.message(got.err)
		case strings.Contains(got.out, "Tess"):
			return "the table with what stands in it"
		}
		return "the table without it"
	}),

	// Of a shelf and of notes the sound part is used, and the rest is named.
	damaged("stock", "shelf/motors.csv", soundMotors, func(t *testing.T, home, path string) string {
		return answersOrRefuses(t, home, "--stock", filepath.Join(home, "shelf"))
	}),
	[]fault{
		{"stock: the folder is missing", func(t *testing.T) string {
			home := folder(t)
			return at(t, home).refuses(2, "--stock", filepath.Join(home, "shelf"), question)
		}},
		{"stock: escape sequences in a name", func(t *testing.T) string {
			home := folder(t)
			file(t, home, "shelf/motors.csv", strings.ReplaceAll(soundMotors, "Teal", "\x1b[31mTeal\u202e"))
			return at(t, home).answers("--stock", filepath.Join(home, "shelf"))
		}},
	},
	damaged("notes", "notes/dock.md", soundNote, func(t *testing.T, home, path string) string {
		return answersOrRefuses(t, home, "--notes", filepath.Join(home, "notes"))
	}),
	[]fault{
		{"notes: the folder is missing", func(t *testing.T) string {
			home := folder(t)
			return at(t, home).refuses(2, "--notes", filepath.Join(home, "notes"), question)
		}},
		{"notes: a link out of the folder", func(t *testing.T) string {
			home := folder(t)
			file(t, home, "secret.md", soundNote)
			file(t, home, "notes/other.md", strings.ReplaceAll(soundNote, "dock-service", "other"))
			if err := os.Symlink("../secret.md", filepath.Join(home, "notes", "link.md")); err != nil {
				return ""
			}
			return at(t, home).answers("--notes", filepath.Join(home, "notes"))
		}},
		{"notes: a YAML bomb in the front matter", func(t *testing.T) string {
			home := folder(t)
			bomb := "---\nid: bomb\na: &a [x,x,x,x,x,x,x,x,x]\n"
			for c := 'b'; c < 'k'; c++ {
				p := string(c - 1)
				bomb += string(c) + ": &" + string(c) + " [" + strings.TrimSuffix(strings.Repeat("*"+p+",", 9), ",") + "]\n"
			}
			file(t, home, "notes/bomb.md", bomb+"topics: *j\n---\n# Bomb\n\nNothing here.\n")
			return at(t, home).answers("--notes", filepath.Join(home, "notes"))
		}},
		{"notes: Markdown nested without end", func(t *testing.T) string {
			home := folder(t)
			file(t, home, "notes/deep.md", "# Deep\n\n"+strings.Repeat("> ", 7000)+"x\n\n"+strings.Repeat("[", 15000)+"\n\n"+strings.Repeat("*a **b ", 2000)+"\n")
			return at(t, home).answers("--notes", filepath.Join(home, "notes"))
		}},
		{"notes: escape sequences and direction marks", func(t *testing.T) string {
			home := folder(t)
			file(t, home, "notes/dock.md", strings.ReplaceAll(soundNote, "props", "\x1b[31mprops\u202e"))
			r := at(t, home)
			got := r.ask("--notes", filepath.Join(home, "notes"), "do you fix props while we wait at the dock")
			if got.status != 0 || !strings.Contains(got.out, "ten minutes") {
				t.Fatalf("status %d\n%s%s", got.status, got.out, got.err)
			}
			return "answers; the marks are left out"
		}},
	},
	[]fault{
		{"clock: files from the future, as after a clock set back", func(t *testing.T) string {
			home := folder(t)
			paths := []string{
				file(t, home, "config/ask/ask.yaml", "units: us\n"),
				file(t, home, "data/ask/boats/heron.yaml", soundBoat),
				file(t, home, "state/ask/history", "16 ft jon\n"),
				file(t, home, "notes/dock.md", soundNote),
			}
			later := fileTime.AddDate(20, 0, 0)
			for _, p := range paths {
				if err := os.Chtimes(p, later, later); err != nil {
					t.Fatal(err)
				}
			}
			return at(t, home).answers("--boat", "heron", "--notes", filepath.Join(home, "notes"))
		}},
	},
)

// answersOrRefuses is the outcome of a question beside a folder that is in part
// unusable: an answer with a word of what was left out, or a refusal.
func answersOrRefuses(t *testing.T, home string, args ...string) string {
	t.Helper()
	if at(t, home).ask(append(args, question)...).status == 0 {
		return at(t, home).answers(args...)
	}
	return at(t, home).refuses(2, append(args, question)...)
}

// content is what a regular file holds, "" for anything else: to open a FIFO
// would be to wait for a writer.
func content(path string) string {
	if info, err := os.Lstat(path); err != nil || !info.Mode().IsRegular() {
		return ""
	}
	data, _ := os.ReadFile(path)
	return string(data)
}
