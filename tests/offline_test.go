package tests

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// TestOffline traces whole sessions through every door that needs no terminal,
// and finds no call that has to do with a network.
func TestOffline(t *testing.T) {
	strace, err := exec.LookPath("strace")
	if err != nil {
		t.Skip("strace is not installed")
	}
	file, err := program()
	if err != nil {
		t.Fatal(err)
	}
	talk := "18-foot aluminum, 1,900 lb loaded, windy lake\nwhy does the prop suck air?\n:why thrust.need\n:keep heron\n:boats\n:drill\n12 volts\n:fresh\n"
	for _, door := range []struct {
		name, input string
		args        []string
	}{
		{"words", "", []string{"--stock", "demo", "16 ft jon, two aboard, small lake"}},
		{"pipe", talk, nil},
		{"batch", batchOf(t), []string{"--json", "--batch", "-"}},
		{"sheet", "", []string{"--sheet", filepath.Join(t.TempDir(), "sheet.html"), "18-foot aluminum, 1,900 lb loaded"}},
	} {
		trace := filepath.Join(t.TempDir(), "trace")
		home := t.TempDir()
		cmd := exec.Command(strace, append([]string{"-f", "-e", "trace=network,openat", "-o", trace, file}, door.args...)...)
		cmd.Env = []string{"HOME=" + home, "PATH=" + os.Getenv("PATH")}
		cmd.Stdin = strings.NewReader(door.input)
		out, err := cmd.CombinedOutput()
		calls, readErr := os.ReadFile(trace)
		if readErr != nil || !strings.Contains(string(calls), "openat(") {
			t.Skipf("strace does not work here: %v, %v\n%s", err, readErr, out)
		}
		if err != nil {
			t.Errorf("%s: %v\n%s", door.name, err, out)
		}
		for l := range strings.Lines(string(calls)) {
			_, call, _ := strings.Cut(l, " ")
			if call = strings.TrimSpace(call); !expected(call) {
				t.Errorf("%s: %s", door.name, l)
			}
			if strings.Contains(call, "/etc/resolv.conf") || strings.Contains(call, "/etc/hosts") {
				t.Errorf("%s looks for names of machines: %s", door.name, l)
			}
		}
	}
}

// expected reports a line of the trace that is no network call: files opened, a
// thread's end, a call cut in two, or one that a thread's end left without its
// name ("???(").
func expected(call string) bool {
	for _, begin := range []string{"openat(", "+++", "---", "<...", "???("} {
		if strings.HasPrefix(call, begin) {
			return true
		}
	}
	return false
}
