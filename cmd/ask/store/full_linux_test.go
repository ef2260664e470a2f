package store

import (
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"syscall"
	"testing"
)

// smallVariable makes this test binary the process whose files cannot grow.
const smallVariable = "ASK_STORE_SMALL"

// TestFullDisk lets files grow no further than some bytes, as a disk does that
// is full: what was there before must stay, and nothing half written. It does so
// in a process of its own, for the limit holds for whatever a process writes, and
// the go command has its test processes keep a log.
func TestFullDisk(t *testing.T) {
	if os.Getenv(smallVariable) == "" {
		cmd := exec.Command(os.Args[0], "-test.run=^TestFullDisk$")
		cmd.Env = append(os.Environ(), smallVariable+"=1")
		if out, err := cmd.CombinedOutput(); err != nil {
			t.Errorf("%v\n%s", err, out)
		}
		return
	}
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
