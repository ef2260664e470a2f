package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/spf13/viper"

	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/index"
	"heronlake.example/ask/kb"
	"heronlake.example/ask/reasoner"
)

// FuzzTalk: whatever is said, twice in one conversation, the answer is a page
// that does not steer the terminal and a line of JSON.
func FuzzTalk(f *testing.F) {
	for _, seed := range [][2]string{
		{"18-foot aluminum, 1,900 lb loaded, windy lake", "make it lithium"},
		{"16 ft jon", ":why thrust.need"}, {":boat", ":undo"}, {"two group 27s in series", "no, three"},
		{"\x1b[31m\u202e 55 lb \xff", "1e309 ft, -5 lb, 0 V, 1/0 mph"}, {"is 42 too short", "cable or electric"},
	} {
		f.Add(seed[0], seed[1])
	}
	lib, err := kb.Builtin()
	if err != nil {
		f.Fatal(err)
	}
	x, err := index.Open(lib)
	if err != nil {
		f.Fatal(err)
	}
	r := reasoner.New(reasoner.Options{Notes: lib, Search: x})
	f.Fuzz(func(t *testing.T, first, second string) {
		if len(first)+len(second) > 2000 {
			t.Skip()
		}
		s := r.NewSession()
		for _, line := range []string{first, second} {
			a := s.Ask(line)
			page := text.Render(a, text.Style{})
			for i, c := range page {
				if c != '\n' && text.Unsafe(c) {
					t.Fatalf("%q shows %U raw: %q", line, c, page[max(0, i-20):min(len(page), i+20)])
				}
			}
			out, err := jsonLine(a)
			if err != nil {
				t.Fatalf("%q: %v", line, err)
			}
			if !utf8.Valid(out) || strings.Count(string(out), "\n") != 1 {
				t.Fatalf("%q gives no line of JSON: %q", line, out)
			}
		}
	})
}

// FuzzSettings: a settings file is taken or refused with its name, and no value
// slips through that a flag would not.
func FuzzSettings(f *testing.F) {
	for _, seed := range []string{"units: metric\nplain: true\n", "a: &a [*a]\n", "units: [us]\n", "plain: 1\nplain: 2\n", "? {a: b}\n: c\n", "units: !!binary dXM=\n", "<<: {plain: true}\n", "\xff", "--- \n...\n---\nunits: us\n"} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		file := filepath.Join(t.TempDir(), "ask.yaml")
		if err := os.WriteFile(file, data, 0o600); err != nil {
			t.Fatal(err)
		}
		if _, err := readSettingsFile(viper.New(), file, folders{}); err != nil && !strings.Contains(err.Error(), file) {
			t.Fatalf("refused without its name: %v", err)
		}
		set, _, err := readSettings([]string{"--config", file, "x"})
		if err == nil && set.Units != "" && set.Units != "us" && set.Units != "metric" {
			t.Fatalf("units %q", set.Units)
		}
	})
}
