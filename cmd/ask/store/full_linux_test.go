package store

import (
	"os"
	"os/signal"
	"path/filepath"
	"syscall"
	"testing"
)

// TestFullDisk lets files grow no further than some bytes, as a disk does that
// is full: what was there before must stay, and nothing half written.
func TestFullDisk(t *testing.T) {
	b := Boats{t.TempDir()}
	kept := keep(t, b, "heron", heron())
	file := filepath.Join(b.Dir, "sheet.html")
	if err := Put(file, []byte("old"), false); err != nil {
		t.Fatal(err)
	}
	names := func() (out []string) {
		entries, err := os.ReadDir(b.Dir)
		if err != nil {
			t.Fatal(err)
		}
		for _, e := range entries {
			out = append(out, e.Name())
		}
		return out
	}
	before := names()

	signal.Ignore(syscall.SIGXFSZ)
	defer signal.Reset(syscall.SIGXFSZ)
	var limit syscall.Rlimit
	if err := syscall.Getrlimit(syscall.RLIMIT_FSIZE, &limit); err != nil {
		t.Skip(err)
	}
	if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &syscall.Rlimit{Cur: 10, Max: limit.Max}); err != nil {
		t.Skip(err)
	}
	_, keepErr := b.Keep("heron", kept)
	_, otherErr := b.Keep("another", heron())
	putErr := Put(file, make([]byte, 1000), true)
	if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &limit); err != nil {
		t.Fatal(err)
	}

	if keepErr == nil || otherErr == nil || putErr == nil {
		t.Errorf("written on a full disk: %v, %v, %v", keepErr, otherErr, putErr)
	}
	if after := names(); len(after) != len(before) {
		t.Errorf("files before %q, after %q", before, after)
	}
	if c, err := b.Open("heron"); err != nil || c.Kept != kept.Kept || len(c.Facts) != len(kept.Facts) {
		t.Errorf("the boat is %+v, %v", c.Kept, err)
	}
	if data, err := os.ReadFile(file); err != nil || string(data) != "old" {
		t.Errorf("the sheet is %q, %v", data, err)
	}
}
