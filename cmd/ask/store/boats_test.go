package store

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"heronlake.example/ask/reasoner/card"
)

func num(x float64) *float64 { return &x }

func heron() card.Card {
	return card.Card{Metric: true, Facts: []card.Fact{
		{Slot: "boat.length", Value: num(5.4864), Unit: "m", Said: "18-foot", Row: "length of a boat"},
		{Slot: "wind.speed", Low: num(5.36448), Value: num(6.7056), High: num(8.9408), Unit: "m/s", Said: "windy"},
		{Slot: "money.budget", High: num(900), Unit: "USD", Said: "under $900"},
		{Slot: "want.remote", Text: "true", Said: "a remote: \"nice\" # to have", Wish: true},
		{Slot: "boat.speed-measured", Value: num(1.6), Unit: "m/s", Said: "it did 3.6 mph"},
	}}
}

// keep keeps a card and notes on it what it was kept as.
func keep(t *testing.T, b Boats, name string, c card.Card) card.Card {
	t.Helper()
	k, err := b.Keep(name, c)
	if err != nil {
		t.Fatal(err)
	}
	c.Kept = k
	return c
}

func TestBoatComesBackAsItWasKept(t *testing.T) {
	b := Boats{t.TempDir()}
	want := keep(t, b, "Heron  of the lake", heron())
	got, err := b.Open("heron OF the Lake")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	if want.Kept.Name != "Heron of the lake" || want.Kept.Revision != 1 {
		t.Errorf("kept as %+v", want.Kept)
	}
	names, faults, err := b.List()
	if err != nil || len(faults) > 0 || !slices.Equal(names, []string{"Heron of the lake"}) {
		t.Errorf("list %q, %v, %v", names, faults, err)
	}
	if err := b.Forget("HERON of the lake"); err != nil {
		t.Fatal(err)
	}
	if _, err := b.Open("heron of the lake"); !errors.Is(err, ErrNoBoat) {
		t.Errorf("opened after it was forgotten: %v", err)
	}
}

// Whoever kept last without knowing of the other is told, and nothing is lost.
func TestStaleWriterDoesNotOverwrite(t *testing.T) {
	b := Boats{t.TempDir()}
	first := keep(t, b, "heron", heron())
	second, err := b.Open("heron")
	if err != nil {
		t.Fatal(err)
	}
	second.Facts = second.Facts[:1]
	second = keep(t, b, "heron", second)
	if _, err := b.Keep("heron", first); !errors.Is(err, ErrStale) {
		t.Errorf("the stale one was kept: %v", err)
	}
	if _, err := b.Keep("heron", heron()); !errors.Is(err, ErrTaken) {
		t.Errorf("a stranger was kept under the name: %v", err)
	}
	got, err := b.Open("heron")
	if err != nil || len(got.Facts) != 1 || got.Kept.Revision != 2 {
		t.Errorf("on disk: %+v, %v", got, err)
	}
	if again := keep(t, b, "heron", second); again.Kept.Revision != 3 {
		t.Errorf("the newer one was kept as %+v", again.Kept)
	}
	keep(t, b, "heron two", first) // under another name it goes
}

func TestManyProgramsAtOnce(t *testing.T) {
	b := Boats{t.TempDir()}
	keep(t, b, "shared", heron())
	var mu sync.Mutex
	var wg sync.WaitGroup
	won := 0
	for i := range 16 {
		wg.Go(func() {
			if _, err := b.Keep(fmt.Sprint("own ", i), heron()); err != nil {
				t.Error(err)
			}
			c, err := b.Open("shared")
			if err != nil {
				t.Error(err)
				return
			}
			if _, err := b.Keep("shared", c); err == nil {
				mu.Lock()
				won++
				mu.Unlock()
			} else if !errors.Is(err, ErrStale) {
				t.Error(err)
			}
		})
	}
	wg.Wait()
	names, faults, err := b.List()
	if err != nil || len(faults) > 0 || len(names) != 17 {
		t.Errorf("%d boats, %v, %v", len(names), faults, err)
	}
	// Each success is one revision: none was written over unseen.
	if c, err := b.Open("shared"); err != nil || c.Kept.Revision != 1+won {
		t.Errorf("revision %d after %d successes, %v", c.Kept.Revision, won, err)
	}
}

func TestDamagedBoatIsSetAside(t *testing.T) {
	sound := "form: ask.boat/1\nname: heron\nrevision: 1\nfacts: []\n"
	for name, data := range map[string]string{
		"empty":         "",
		"cut off":       sound[:20] + "\nfacts:\n  - slot: [",
		"no YAML":       "\x00\x01\x02",
		"unknown field": sound + "colour: red\n",
		"wrong kind":    "form: ask.boat/1\nname: heron\nfacts: many\n",
		"huge":          sound + "# " + strings.Repeat("x", boatBytes),
		"many aliases":  "form: ask.boat/1\na: &a [x,x]\nb: &b [*a,*a]\nname: heron\n",
	} {
		b := Boats{t.TempDir()}
		file := filepath.Join(b.Dir, "heron.yaml")
		for round := 1; round <= 2; round++ {
			if err := os.WriteFile(file, []byte(data), 0o600); err != nil {
				t.Fatal(err)
			}
			_, err := b.Open("heron")
			var bad *DamagedError
			if !errors.As(err, &bad) || bad.Aside != fmt.Sprint(file, ".damaged-", round) {
				t.Errorf("%s: %v", name, err)
				continue
			}
			if got, err := os.ReadFile(bad.Aside); err != nil || string(got) != data {
				t.Errorf("%s: set aside as %d bytes, %v", name, len(got), err)
			}
		}
		keep(t, b, "heron", heron()) // the name is free again
		if _, faults, err := b.List(); err != nil || len(faults) > 0 {
			t.Errorf("%s: list %v, %v", name, faults, err)
		}
	}
}

func TestNewerFormIsLeftAlone(t *testing.T) {
	b := Boats{t.TempDir()}
	file := filepath.Join(b.Dir, "heron.yaml")
	data := "form: ask.boat/9\nname: heron\nsails: 2\n"
	if err := os.WriteFile(file, []byte(data), 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := b.Open("heron"); err == nil || !strings.Contains(err.Error(), "ask.boat/9") {
		t.Errorf("opened: %v", err)
	}
	if _, err := b.Keep("heron", heron()); err == nil {
		t.Error("written over")
	}
	if got, err := os.ReadFile(file); err != nil || string(got) != data {
		t.Errorf("now %q, %v", got, err)
	}
}

func TestNames(t *testing.T) {
	b := Boats{t.TempDir()}
	names := []string{"heron", "../heron", "/etc/passwd", `c:\boot`, "con", "NUL.txt", "aux", "com1", "lpt9", "a/b", "möwe", "mowe", "mo-we", "mo we",
		"héron", "鷺", "鷺鷺", "~", "-rf", "heron.yaml", "lock", strings.Repeat("x", longestName), strings.Repeat("鷺", longestName), "a\u0301", "heron?", "heron*", "COM\u00b9"}
	files := map[string]string{}
	for _, n := range names {
		keep(t, b, n, heron())
		f := fileName(n)
		if other, twice := files[f]; twice {
			t.Errorf("%q and %q share %s", n, other, f)
		}
		files[f] = n
		stem := strings.TrimSuffix(f, ending)
		if len(f) > 64 || strings.Trim(stem, "abcdefghijklmnopqrstuvwxyz0123456789-") != "" || strings.HasPrefix(f, "-") || reserved[stem] || stem == "com1" || stem == "lpt9" {
			t.Errorf("%q would be the file %q", n, f)
		}
		if c, err := b.Open(n); err != nil || len(c.Facts) == 0 {
			t.Errorf("%q: %v", n, err)
		}
	}
	entries, err := os.ReadDir(b.Dir)
	if err != nil || len(entries) != len(names)+1 { // and the lock
		t.Errorf("%d files for %d boats, %v", len(entries), len(names), err)
	}
	if c, err := b.Open("\u00e1"); err != nil || c.Kept.Name != "\u00e1" {
		t.Errorf("one letter in two forms is two boats: %v", err)
	}
	for _, bad := range []string{"", "   ", ".", "..", "-", "a\x00b", "a\x1bb", "\u202egnp", strings.Repeat("x", longestName+1)} {
		if _, err := b.Keep(bad, heron()); err == nil {
			t.Errorf("%q was kept", bad)
		}
	}
}

func TestNothingButFilesIsRead(t *testing.T) {
	b := Boats{t.TempDir()}
	if err := os.Mkdir(filepath.Join(b.Dir, "heron.yaml"), 0o700); err != nil {
		t.Fatal(err)
	}
	if _, err := b.Open("heron"); err == nil || !strings.Contains(err.Error(), "no regular file") {
		t.Errorf("a folder was opened: %v", err)
	}
	if _, err := b.Keep("heron", heron()); err == nil {
		t.Error("a folder was replaced")
	}
	if err := b.Forget("heron"); err == nil {
		t.Error("a folder was removed")
	}
	if _, faults, err := b.List(); err != nil || len(faults) != 1 {
		t.Errorf("list: %v, %v", faults, err)
	}
	none := Boats{}
	if _, err := none.Keep("heron", heron()); !errors.Is(err, ErrNoPlace) {
		t.Errorf("kept nowhere: %v", err)
	}
	if names, _, err := (Boats{filepath.Join(b.Dir, "missing")}).List(); err != nil || names != nil {
		t.Errorf("a missing folder lists %v, %v", names, err)
	}
}

// A boat too large to be read again is not written.
func TestOversizeBoatIsNotKept(t *testing.T) {
	b := Boats{t.TempDir()}
	kept := keep(t, b, "heron", heron())
	big := kept
	for range 3000 {
		big.Facts = append(big.Facts, card.Fact{Slot: "boat.length", Value: num(1), Said: strings.Repeat("x", 100)})
	}
	if _, err := b.Keep("heron", big); err == nil {
		t.Fatal("kept")
	}
	if c, err := b.Open("heron"); err != nil || len(c.Facts) != len(kept.Facts) {
		t.Errorf("the old one is gone: %v", err)
	}
}

func TestPut(t *testing.T) {
	dir := t.TempDir()
	file := filepath.Join(dir, "sheet.html")
	left := func() string {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		entries, err := os.ReadDir(dir)
		if err != nil || len(entries) != 1 {
			t.Errorf("left behind: %v, %v", entries, err)
		}
		return string(data)
	}
	if err := Put(file, []byte("one"), false); err != nil || left() != "one" {
		t.Errorf("%v", err)
	}
	if err := Put(file, []byte("two"), false); !errors.Is(err, ErrExists) || left() != "one" {
		t.Errorf("%v, %q", err, left())
	}
	if err := Put(file, []byte("three"), true); err != nil || left() != "three" {
		t.Errorf("%v, %q", err, left())
	}
	if err := Put(filepath.Join(dir, "no", "sheet.html"), nil, true); err == nil || !strings.Contains(err.Error(), "does not exist") {
		t.Errorf("a missing folder: %v", err)
	}
	if err := Put(dir, nil, true); err == nil {
		t.Error("a folder was replaced")
	}
	if err := Put(filepath.Join(file, "x.html"), nil, true); err == nil {
		t.Error("written below a file")
	}
}
