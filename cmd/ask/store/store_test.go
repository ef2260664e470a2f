package store

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
)

func TestReplaceLeavesOldOrNew(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "made", "when", "missing")
	file := filepath.Join(dir, "f")
	for _, want := range []string{"old", "new and longer", ""} {
		if err := Replace(file, []byte(want)); err != nil {
			t.Fatal(err)
		}
		got, err := os.ReadFile(file)
		if err != nil || string(got) != want {
			t.Fatalf("read %q, %v, want %q", got, err, want)
		}
	}
	entries, err := os.ReadDir(dir)
	if err != nil || len(entries) != 1 {
		t.Errorf("left behind beside the file: %v, %v", entries, err)
	}
}

func TestReplaceRefusesWhatIsNoFile(t *testing.T) {
	dir := t.TempDir()
	if err := os.Mkdir(filepath.Join(dir, "f"), 0o700); err != nil {
		t.Fatal(err)
	}
	if err := Replace(filepath.Join(dir, "f"), []byte("x")); err == nil {
		t.Error("a folder was replaced by a file")
	}
	entries, _ := os.ReadDir(dir)
	if len(entries) != 1 || !entries[0].IsDir() {
		t.Errorf("the refusal left %v", entries)
	}
}

func TestHistoryKeepsWhatWasTyped(t *testing.T) {
	h := History{Dir: t.TempDir()}
	for _, l := range []string{"16 ft jon", "two aboard", "two aboard", "  ", "bad \xff", "\x1b[31m", strings.Repeat("x", historyLongest+1)} {
		if err := h.Add(l); err != nil {
			t.Fatal(err)
		}
	}
	if got, want := h.Read(), []string{"16 ft jon", "two aboard"}; !slices.Equal(got, want) {
		t.Errorf("kept %q, want %q", got, want)
	}
}

func TestHistoryForgetsTheOldest(t *testing.T) {
	h := History{Dir: t.TempDir()}
	var all []string
	for i := range historyLines + 50 {
		all = append(all, fmt.Sprint("line ", i))
	}
	if err := Replace(h.file(), []byte(strings.Join(all, "\n"))); err != nil {
		t.Fatal(err)
	}
	if err := h.Add("the newest"); err != nil {
		t.Fatal(err)
	}
	got := h.Read()
	if len(got) != historyLines || got[0] != "line 51" || got[len(got)-1] != "the newest" {
		t.Errorf("kept %d lines from %q to %q", len(got), got[0], got[len(got)-1])
	}
}

func TestHistoryPassesOverDamage(t *testing.T) {
	tests := map[string]string{
		"binary":          "\x00\x01\x7fELF\xff\nsound line\n\xfe",
		"no last end":     "sound line",
		"windows ends":    "sound line\r\n",
		"escape":          "\x1b]0;x\x07\nsound line\n",
		"over-long lines": strings.Repeat("y", 2*historyLongest) + "\nsound line\n",
	}
	for name, data := range tests {
		h := History{Dir: t.TempDir()}
		if err := os.WriteFile(h.file(), []byte(data), 0o600); err != nil {
			t.Fatal(err)
		}
		if got, want := h.Read(), []string{"sound line"}; !slices.Equal(got, want) {
			t.Errorf("%s: read %q, want %q", name, got, want)
		}
	}
}

func TestHistoryWithoutAPlace(t *testing.T) {
	none := History{}
	if err := none.Add("a line"); err != nil || none.Read() != nil {
		t.Errorf("without a folder: %v, %q", err, none.Read())
	}
	file := filepath.Join(t.TempDir(), "file")
	if err := os.WriteFile(file, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	blocked := History{Dir: file}
	if err := blocked.Add("a line"); err == nil {
		t.Error("a file in place of the folder is not reported")
	}
	if got := blocked.Read(); got != nil {
		t.Errorf("read %q from nowhere", got)
	}
	folder := History{Dir: t.TempDir()}
	if err := os.Mkdir(folder.file(), 0o700); err != nil {
		t.Fatal(err)
	}
	if err := folder.Add("a line"); err == nil {
		t.Error("a folder in place of the history is not reported")
	}
}

// Two counters may share a home: what one writes the other must not lose.
func TestHistorySharedByMany(t *testing.T) {
	dir := t.TempDir()
	var wg sync.WaitGroup
	for i := range 20 {
		wg.Go(func() {
			for j := range 5 {
				if err := (History{Dir: dir}).Add(fmt.Sprint("counter ", i, " line ", j)); err != nil {
					t.Error(err)
				}
			}
		})
	}
	wg.Wait()
	if got := len(History{Dir: dir}.Read()); got != 100 {
		t.Errorf("%d of 100 lines were kept", got)
	}
}
