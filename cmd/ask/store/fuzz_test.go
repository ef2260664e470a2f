package store

import (
	"errors"
	"os"
	"path/filepath"
	"testing"
)

// FuzzBoat: whatever a boat's file holds, it is a boat, or a fault that names
// the file; and what was in it is still there, in its place or set aside.
func FuzzBoat(f *testing.F) {
	for _, seed := range []string{
		"form: ask.boat/1\nname: heron\nrevision: 3\nfacts:\n    - slot: boat.length\n      value: 5.4864\n      unit: m\n      said: 18-foot\n",
		"form: ask.boat/2\nname: heron\n", "form: ask.boat/1\nname: \"he\\e[31mron\"\n", "form: ask.boat/1\nname: heron\nfacts: [{slot: 3, value: .inf}]\n",
		"form: ask.boat/1\nname: heron\nrevision: -9223372036854775808\n", "a: &a [*a]\n", "- - - -", "\x00", "",
	} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		dir := t.TempDir()
		file := filepath.Join(dir, "heron.yaml")
		if err := os.WriteFile(file, data, 0o600); err != nil {
			t.Fatal(err)
		}
		boats := Boats{Dir: dir}
		c, err := boats.Open("heron")
		var damaged *DamagedError
		if errors.As(err, &damaged) {
			file = damaged.Aside
		}
		if got, readErr := os.ReadFile(file); readErr != nil || string(got) != string(data) {
			t.Fatalf("what the file held is gone: %v", readErr)
		}
		if err != nil {
			return
		}
		kept, err := boats.Keep("heron", c)
		if err != nil {
			t.Skip(err) // too much for one boat
		}
		back, err := boats.Open("heron")
		if err != nil || back.Kept != kept || len(back.Facts) != len(c.Facts) {
			t.Fatalf("kept and opened again: %v, %d of %d facts", err, len(back.Facts), len(c.Facts))
		}
	})
}
