package faults

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// fileTime is a day on which files were written.
var fileTime = time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)

var placeFaults = []fault{
	{"home: the folder is missing", func(t *testing.T) string {
		return at(t, filepath.Join(folder(t), "nobody")).answers()
	}},
	{"home: missing, and a boat is kept", func(t *testing.T) string {
		home := filepath.Join(folder(t), "nobody")
		keeps(t, at(t, home))
		return "the folders are made, for this user alone"
	}},
	{"home: none is set", func(t *testing.T) string {
		return homeless(t).answers()
	}},
	{"home: none is set, and a boat is kept", func(t *testing.T) string {
		r := homeless(t)
		r.input = question + "\n:keep heron\n"
		got := r.ask()
		if got.status != 0 || !strings.Contains(got.out, "no home") {
			t.Fatalf("status %d\n%s%s", got.status, got.out, got.err)
		}
		return "answers, and says that there is no home folder to keep boats in"
	}},
	{"home: a file stands in its place", func(t *testing.T) string {
		home := file(t, folder(t), "home", "x")
		outcome := at(t, home).answers()
		intact(t, home, "x")
		return outcome
	}},
	{"home: read-only", func(t *testing.T) string {
		home := folder(t)
		r := at(t, home)
		if !asNobody(r) {
			return ""
		}
		return r.answers()
	}},
	{"home: read-only, and a boat is kept", func(t *testing.T) string {
		home := folder(t)
		sound := file(t, home, "data/ask/boats/heron.yaml", soundBoat)
		r := at(t, home)
		if !asNobody(r) {
			return ""
		}
		r.input = question + "\n:keep pike\n"
		got := r.ask()
		if got.status != 0 || !strings.Contains(got.out, "permission denied") {
			t.Fatalf("status %d\n%s%s", got.status, got.out, got.err)
		}
		intact(t, sound, soundBoat)
		return "answers, and says that it may not write there; boats kept before stay"
	}},
	{"settings: not readable by this user", func(t *testing.T) string {
		home := folder(t)
		path := file(t, home, "config/ask/ask.yaml", soundSettings)
		if err := os.Chmod(path, 0); err != nil {
			t.Fatal(err)
		}
		r := at(t, home)
		if !asNobody(r) {
			return ""
		}
		return r.refuses(2, question)
	}},
	{"home: the disk is full", func(t *testing.T) string {
		home := folder(t)
		if !smallDisk(t, home) {
			return ""
		}
		sound := file(t, home, "data/ask/boats/heron.yaml", soundBoat)
		fill(t, home)
		outcome := at(t, home).answers()
		intact(t, sound, soundBoat)
		return outcome
	}},
	{"home: the disk is full, and a boat is kept", func(t *testing.T) string {
		home := folder(t)
		if !smallDisk(t, home) {
			return ""
		}
		sound := file(t, home, "data/ask/boats/heron.yaml", soundBoat)
		fill(t, home)
		r := at(t, home)
		r.input = ":open heron\nmake it 2,500 lb loaded\n:keep heron\n"
		got := r.ask()
		if got.status != 0 || !strings.Contains(got.out, "no space left") {
			t.Fatalf("status %d\n%s%s", got.status, got.out, got.err)
		}
		intact(t, sound, soundBoat)
		return "answers, and says that no space is left; the boat stays as it was kept before"
	}},
	{"output: the disk is full", func(t *testing.T) string {
		full, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
		if err != nil {
			return ""
		}
		defer full.Close()
		file, err := program()
		if err != nil {
			t.Fatal(err)
		}
		cmd := exec.Command(file, question)
		cmd.Env, cmd.Stdout = at(t, folder(t)).environment(), full
		var faults strings.Builder
		cmd.Stderr = &faults
		cmd.Run()
		if cmd.ProcessState.ExitCode() != 1 {
			t.Fatalf("status %d\n%s", cmd.ProcessState.ExitCode(), faults.String())
		}
		return "status 1: " + strings.TrimPrefix(strings.TrimSpace(faults.String()), "ask: ")
	}},
}

// homeless is a run in which nothing says where the user's folders are.
func homeless(t *testing.T) *run {
	r := at(t, "")
	r.env = []string{"HOME=", "USERPROFILE=", "AppData=", "XDG_CONFIG_HOME=", "XDG_STATE_HOME=", "XDG_DATA_HOME="}
	return r
}

// keeps has a boat kept and opened again.
func keeps(t *testing.T, r *run) {
	t.Helper()
	r.input = question + "\n:keep heron\n"
	if got := r.ask(); got.status != 0 {
		t.Fatalf("status %d\n%s%s", got.status, got.out, got.err)
	}
	r.input = ":boat\n"
	if got := r.ask("--boat", "heron"); got.status != 0 || !strings.Contains(got.out, "1,900 lb") {
		t.Fatalf("the boat was not kept: status %d\n%s%s", got.status, got.out, got.err)
	}
}
