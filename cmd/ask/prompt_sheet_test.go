//go:build linux || darwin

package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// At the prompt a sheet that is there already is replaced after a yes, and after
// nothing else.
func TestPromptAsksBeforeItReplaces(t *testing.T) {
	home := t.TempDir()
	t.Chdir(home) // the terminal's program starts here: a short name to type
	file := filepath.Join(home, "s.md")
	if err := os.WriteFile(file, []byte("mine"), 0o600); err != nil {
		t.Fatal(err)
	}
	s := enter(t, home, 80, "XDG_DATA_HOME="+home)
	s.shows(promptText)
	s.types("12 ft kayak, 300 lb loaded, small lake" + enterKey)
	s.shows("Plover") // of the shelf
	s.shows(promptText)
	for _, no := range []string{"", "n", "nyet", ctrlC} {
		s.types(":sheet s.md" + enterKey)
		s.shows("Replace it? [y/N]")
		if s.types(no); no != ctrlC {
			s.types(enterKey)
		}
		s.shows("Refused")
		s.shows(promptText)
		if data, err := os.ReadFile(file); err != nil || string(data) != "mine" {
			t.Fatalf("after %q: %.20q, %v", no, data, err)
		}
	}
	s.types(":sheet s.md" + enterKey)
	s.shows("Replace it? [y/N]")
	s.types("y" + enterKey)
	s.shows("Fit sheet written")
	s.shows(promptText)
	if data, err := os.ReadFile(file); err != nil || !strings.HasPrefix(string(data), "# Trolling motor fit sheet") {
		t.Errorf("after a yes: %.20q, %v", data, err)
	}
	s.types(":sheet s.md" + enterKey)
	s.shows("Replace it? [y/N]")
	if err := s.cmd.Process.Signal(os.Interrupt); err != nil {
		t.Fatal(err)
	}
	if got := s.ends(); got <= statusSignal {
		t.Errorf("status %d after a signal at the question", got)
	}
}
