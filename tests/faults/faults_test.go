package faults

import (
	"bytes"
	"context"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"
)

var update = flag.Bool("update", false, "write the table into DEVELOPERS.md")

// A fault is a row of the table. Its play makes the fault happen, checks that
// nothing is lost, and returns what the person sees; "" where the fault cannot
// be made here.
type fault struct {
	name string
	play func(t *testing.T) string
}

// rows are all faults, by the file of this package that plays them.
var rows = []struct {
	test   string
	faults []fault
}{
	{"TestFaults/files", fileFaults},
	{"TestFaults/cache", cacheFaults},
	{"TestFaults/places", placeFaults},
	{"TestFaults/input", inputFaults},
	{"TestFaults/killed", killedFaults},
	{"TestFaults/terminal", terminalFaults},
}

// TestFaults plays every fault and holds the outcome against the table.
func TestFaults(t *testing.T) {
	const file, begin, end = "../../DEVELOPERS.md", "<!-- faults: go test ./tests/faults -update -->\n", "<!-- end of faults -->\n"
	doc, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	before, rest, ok := strings.Cut(string(doc), begin)
	table, after, ok2 := strings.Cut(rest, end)
	if !ok || !ok2 {
		t.Fatalf("%s has no place for the table: %s...%s", file, begin, end)
	}
	told := map[string]string{} // by fault: its line as it stands
	for l := range strings.Lines(table) {
		if cells := strings.Split(l, " | "); len(cells) == 3 {
			told[strings.TrimPrefix(cells[0], "| ")] = l
		}
	}
	for _, group := range rows {
		t.Run(strings.TrimPrefix(group.test, "TestFaults/"), func(t *testing.T) {
			for _, f := range group.faults {
				t.Run(f.name, func(t *testing.T) {
					was := told[f.name]
					outcome := f.play(t)
					if t.Failed() || outcome == "" || runtime.GOOS != "linux" { // systems word their errors differently
						return
					}
					line := fmt.Sprintf("| %s | %s | %s |\n", f.name, cell(outcome), group.test)
					told[f.name] = line
					if line != was && !*update {
						t.Errorf("DEVELOPERS.md tells otherwise; after a change that is meant, go test ./tests/faults -update\n-%s+%s", was, line)
					}
				})
			}
		})
	}
	if *update && !t.Failed() {
		now := "| fault | what happens | test |\n| --- | --- | --- |\n"
		for _, group := range rows {
			for _, f := range group.faults {
				now += told[f.name] // as it stood, where it could not be played here
			}
		}
		if err := os.WriteFile(file, []byte(before+begin+now+end+after), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	names := map[string]bool{}
	for _, group := range rows {
		for _, f := range group.faults {
			if names[f.name] {
				t.Errorf("two faults are named %q", f.name)
			}
			names[f.name] = true
		}
	}
	for name := range told {
		if !names[name] && name != "fault" && name != "---" {
			t.Errorf("DEVELOPERS.md tells of %q, which no test plays", name)
		}
	}
}

// cell makes an outcome fit for a cell of a Markdown table.
func cell(s string) string {
	return strings.NewReplacer("|", "\\|", "\n", "; ", "<", "&lt;").Replace(s)
}

// scratch is a folder that every user may enter: some faults are played as
// another user than root.
var scratch string

func TestMain(m *testing.M) {
	if dir := os.Getenv(writerVariable); dir != "" {
		write(dir) // does not return
	}
	os.Exit(func() int {
		var err error
		if scratch, err = os.MkdirTemp("", "ask-faults-"); err == nil {
			err = os.Chmod(scratch, 0o755)
		}
		if err != nil {
			fmt.Fprintln(os.Stderr, err)
			return 1
		}
		defer os.RemoveAll(scratch)
		return m.Run()
	}())
}

// program builds the program once.
var program = sync.OnceValues(func() (string, error) {
	file := filepath.Join(scratch, "ask")
	if runtime.GOOS == "windows" {
		file += ".exe"
	}
	build := exec.Command("go", "build", "-buildvcs=false", "-o", file, "../../cmd/ask")
	build.Env = append(os.Environ(), "CGO_ENABLED=0")
	if out, err := build.CombinedOutput(); err != nil {
		return "", fmt.Errorf("the program does not build: %w\n%s", err, out)
	}
	return file, nil
})

const question = "18-foot aluminum, 1,900 lb loaded, windy lake"

// a run is one start of the program.
type run struct {
	t     *testing.T
	home  string // HOME and every folder of the user's
	env   []string
	input string
	as    func(*exec.Cmd) // further preparation
}

// folder is a new folder below scratch.
func folder(t *testing.T) string {
	t.Helper()
	dir, err := os.MkdirTemp(scratch, "f-")
	if err == nil {
		err = os.Chmod(dir, 0o755)
	}
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { os.RemoveAll(dir) })
	return dir
}

// at is a run in a home of its own.
func at(t *testing.T, home string) *run { return &run{t: t, home: home} }

func (r *run) environment() []string {
	return append([]string{
		"HOME=" + r.home, "USERPROFILE=" + r.home, "AppData=" + r.home, "SystemRoot=" + os.Getenv("SystemRoot"),
		"XDG_CONFIG_HOME=" + filepath.Join(r.home, "config"), "XDG_STATE_HOME=" + filepath.Join(r.home, "state"),
		"XDG_DATA_HOME=" + filepath.Join(r.home, "data"), "XDG_CACHE_HOME=" + filepath.Join(r.home, "cache"), "PATH=" + os.Getenv("PATH"), "TERM=xterm",
	}, r.env...)
}

// result is what a run gave.
type result struct {
	out, err string
	status   int
}

// ask runs the program to its end, which must come within a minute: nothing may
// hang on a pipe that stands where a file should.
func (r *run) ask(args ...string) result {
	r.t.Helper()
	file, err := program()
	if err != nil {
		r.t.Fatal(err)
	}
	ctx, cancel := context.WithTimeout(context.Background(), time.Minute)
	defer cancel()
	cmd := exec.CommandContext(ctx, file, args...)
	cmd.Env, cmd.Stdin = r.environment(), strings.NewReader(r.input)
	cmd.Dir = scratch
	if r.as != nil {
		r.as(cmd)
	}
	var stdout, stderr bytes.Buffer
	cmd.Stdout, cmd.Stderr = &stdout, &stderr
	err = cmd.Run()
	var exit *exec.ExitError
	switch {
	case ctx.Err() != nil:
		r.t.Fatalf("ask %q does not end", args)
	case err != nil && !errors.As(err, &exit):
		r.t.Fatal(err)
	case strings.Contains(stderr.String(), "goroutine "), strings.Contains(stderr.String(), "a fault of this program"):
		r.t.Fatalf("ask %q crashed:\n%s", args, stderr.String())
	}
	for _, shown := range []string{stdout.String(), stderr.String()} {
		if i := strings.IndexFunc(shown, unsafe); i >= 0 {
			r.t.Errorf("ask %q shows %q raw", args, shown[i:min(len(shown), i+10)])
		}
	}
	return result{stdout.String(), stderr.String(), cmd.ProcessState.ExitCode()}
}

// unsafe is true for what steers a terminal or turns text round.
func unsafe(c rune) bool {
	return c < ' ' && c != '\n' || c == 0x7f || c >= 0x80 && c < 0xa0 || c >= 0x202a && c <= 0x202e || c >= 0x2066 && c <= 0x2069 || c == 0x200e || c == 0x200f
}

// answers is the outcome of a run that must answer the question as ever; a word
// of warning may go before.
func (r *run) answers(args ...string) string {
	r.t.Helper()
	got := r.ask(append(args, question)...)
	if got.status != 0 || !strings.Contains(got.out, "Thrust needed") {
		r.t.Fatalf("ask %q: status %d\n%s%s", args, got.status, got.out, got.err)
	}
	if got.err == "" {
		return "answers as ever"
	}
	return "answers, with a word: " + r.message(got.err)
}

// refuses is the outcome of a run that must end with a status and a sentence.
func (r *run) refuses(status int, args ...string) string {
	r.t.Helper()
	got := r.ask(args...)
	if got.status != status || !strings.HasPrefix(got.err, "ask: ") {
		r.t.Fatalf("ask %q: status %d, want %d\n%s%s", args, got.status, status, got.out, got.err)
	}
	return fmt.Sprintf("status %d: %s", status, r.message(got.err))
}

// message is the first line on standard error without what differs from run to
// run.
func (r *run) message(text string) string {
	line, _, _ := strings.Cut(text, "\n")
	line = strings.TrimPrefix(line, "ask: ")
	for _, dir := range []string{r.home, scratch} {
		if dir != "" {
			line = strings.ReplaceAll(line, dir+string(filepath.Separator), "")
			line = strings.ReplaceAll(line, dir, "HOME")
		}
	}
	return line
}

// file writes a file below a folder and returns its path.
func file(t *testing.T, dir, name, data string) string {
	t.Helper()
	path := filepath.Join(dir, filepath.FromSlash(name))
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(data), 0o644); err != nil {
		t.Fatal(err)
	}
	return path
}

// intact fails where a file is no longer what it was.
func intact(t *testing.T, path, want string) {
	t.Helper()
	if got, err := os.ReadFile(path); err != nil || string(got) != want {
		t.Errorf("%s was changed: %v, %d bytes, had %d", path, err, len(got), len(want))
	}
}

// damages are done to a file that holds sound data. A damage that puts
// something else in the file's place writes nothing.
var damages = []struct {
	name string
	data func(sound string) string
	odd  func(t *testing.T, path string) bool // false where it cannot be made
}{
	{"missing", nil, func(t *testing.T, path string) bool { return true }},
	{"empty", func(string) string { return "" }, nil},
	{"truncated", func(sound string) string { return sound[:len(sound)*2/3] }, nil},
	{"binary", func(string) string { return "\x7fELF\x00\x01\xff\xfe\x1b[31m\x00\r\n\x80" }, nil},
	{"huge", func(sound string) string { return sound + strings.Repeat("# and so on and on\n", 1<<19) }, nil},
	{"a folder", nil, func(t *testing.T, path string) bool { return os.MkdirAll(path, 0o755) == nil }},
	{"a FIFO", nil, makeFIFO},
}

// damaged makes the rows of one kind of file: play is given a home in which the
// file at path is damaged.
func damaged(what, name, sound string, play func(t *testing.T, home, path string) string) []fault {
	var out []fault
	for _, d := range damages {
		out = append(out, fault{what + ": " + d.name, func(t *testing.T) string {
			home := folder(t)
			path := filepath.Join(home, filepath.FromSlash(name))
			if d.data == nil {
				if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
					t.Fatal(err)
				}
				if !d.odd(t, path) {
					return ""
				}
				return play(t, home, path)
			}
			data := d.data(sound)
			file(t, home, name, data)
			return play(t, home, path)
		}})
	}
	return slices.Clip(out)
}
