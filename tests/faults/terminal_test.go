//go:build linux || darwin

package faults

import (
	"bytes"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/creack/pty"
	"github.com/mattn/go-runewidth"
)

var terminalFaults = []fault{
	{"terminal: 20 columns", func(t *testing.T) string {
		s := enter(t, folder(t), 20)
		s.types(question + "\r")
		s.shows("\nask> ")
		_, text, _ := strings.Cut(s.since(question), "\n") // the typed line scrolls within one row
		for l := range strings.Lines(text) {
			if w := runewidth.StringWidth(strings.TrimRight(plain(l), "\r\n")); w > 20 {
				t.Errorf("a line has %d columns: %q", w, l)
			}
		}
		s.leaves()
		return "answers, no line wider than that"
	}},
	{"terminal: made narrow between two questions", func(t *testing.T) string {
		s := enter(t, folder(t), 80)
		s.types(question + "\r")
		s.shows("\nask> ")
		if err := pty.Setsize(s.tty, &pty.Winsize{Rows: 24, Cols: 30}); err != nil {
			t.Fatal(err)
		}
		mark := s.mark()
		s.types("make it lithium\r")
		s.shows("\nask> ")
		text := s.after(mark)
		if i := strings.Index(text, "\n"); i >= 0 {
			text = text[i+1:] // what was typed
		}
		for l := range strings.Lines(text) {
			if w := runewidth.StringWidth(strings.TrimRight(plain(l), "\r\n")); w > 30 {
				t.Errorf("a line has %d columns: %q", w, l)
			}
		}
		s.leaves()
		return "the next answer is laid out for the new width"
	}},
	{"terminal: dumb", func(t *testing.T) string {
		s := enter(t, folder(t), 80, "TERM=dumb")
		s.types(question + "\n")
		s.shows("Thrust")
		s.shows("\nask> ")
		if strings.Contains(s.since(""), "\x1b") {
			t.Errorf("escape sequences on a dumb terminal: %q", s.since(""))
		}
		s.types(":quit\n")
		s.ends(0)
		return "answers without colour, the lines edited by the system"
	}},
	{"terminal: no UTF-8", func(t *testing.T) string {
		s := enter(t, folder(t), 80, "LANG=C", "LC_ALL=C")
		s.types("5.5 m aluminium caf\xe9, 860 kg, windy lake\r")
		s.shows("Thrust")
		s.shows("\nask> ")
		s.leaves()
		return "answers"
	}},
	{"terminal: gone away (hang-up)", func(t *testing.T) string {
		s := enter(t, folder(t), 80)
		s.cmd.Process.Signal(syscall.SIGHUP)
		s.ends(128 + int(syscall.SIGHUP))
		return "status 129; the terminal's mode is put back"
	}},
	{"Ctrl-C at the prompt, nothing typed", func(t *testing.T) string {
		s := enter(t, folder(t), 80)
		s.types("\x03")
		s.shows("\nask> ")
		s.leaves()
		return "a new line"
	}},
	{"Ctrl-C in a line half typed", func(t *testing.T) string {
		home := folder(t)
		s := enter(t, home, 80)
		s.types("never asked")
		s.shows("never asked")
		s.types("\x03")
		s.shows("\nask> ")
		s.leaves()
		if data, _ := os.ReadFile(filepath.Join(home, "state", "ask", "history")); strings.Contains(string(data), "never asked") {
			t.Error("the line is in the history")
		}
		return "the line is cleared and not kept"
	}},
	{"Ctrl-C at a question with yes or no", func(t *testing.T) string {
		home := folder(t)
		mine := file(t, home, "mine.html", "mine")
		s := enter(t, home, 80)
		s.types(question + "\r")
		s.shows("\nask> ")
		s.types(":sheet " + filepath.Join(home, "mine.html") + "\r")
		s.shows("[y/N]")
		s.types("\x03")
		s.shows("\nask> ")
		s.leaves()
		intact(t, mine, "mine")
		return "means no"
	}},
	{"Ctrl-C in the midst of a drill", func(t *testing.T) string {
		s := enter(t, folder(t), 80)
		s.types(":drill shaft\r")
		s.shows("Customer 1")
		s.shows("\nask> ")
		s.types("48 in\x03")
		s.shows("\nask> ")
		s.types("48 inch shaft\r")
		s.shows("shaft 48 in.")
		s.shows("\nask> ")
		s.leaves()
		return "the line is cleared; the customer waits"
	}},
	{"Ctrl-C at the dumb terminal's prompt", func(t *testing.T) string {
		s := enter(t, folder(t), 80, "TERM=dumb")
		s.types("\x03")
		s.endsBySignal(syscall.SIGINT)
		return "ends by the signal, as any program"
	}},
	{"Ctrl-C in the middle of a batch", func(t *testing.T) string {
		file, err := program()
		if err != nil {
			t.Fatal(err)
		}
		cmd := exec.Command(file, "--json", "--batch", "-")
		cmd.Env = at(t, folder(t)).environment()
		in, _ := cmd.StdinPipe()
		out, _ := cmd.StdoutPipe()
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		io.WriteString(in, `{"question": "`+question+"\"}\n")
		line := make([]byte, 1)
		for line[0] != '\n' {
			if _, err := out.Read(line); err != nil {
				t.Fatal(err)
			}
		}
		cmd.Process.Signal(syscall.SIGINT)
		cmd.Wait()
		if s, ok := cmd.ProcessState.Sys().(syscall.WaitStatus); !ok || !s.Signaled() || s.Signal() != syscall.SIGINT {
			t.Errorf("ends with %v", cmd.ProcessState)
		}
		return "ends by the signal; every answer given before was whole"
	}},
}

// screen is the program running in a terminal.
type screen struct {
	t    *testing.T
	tty  *os.File
	cmd  *exec.Cmd
	mu   sync.Mutex
	seen bytes.Buffer
	read int
}

// enter starts the program in a terminal of that width and waits for its prompt.
func enter(t *testing.T, home string, columns uint16, env ...string) *screen {
	t.Helper()
	file, err := program()
	if err != nil {
		t.Fatal(err)
	}
	r := at(t, home)
	r.env = env
	s := &screen{t: t, cmd: exec.Command(file)}
	s.cmd.Env = r.environment()
	if s.tty, err = pty.StartWithSize(s.cmd, &pty.Winsize{Rows: 40, Cols: columns}); err != nil {
		t.Skipf("no pseudo-terminal here: %v", err)
	}
	go func() {
		b := make([]byte, 4096)
		for {
			n, err := s.tty.Read(b)
			s.mu.Lock()
			s.seen.Write(b[:n])
			s.mu.Unlock()
			if err != nil {
				return
			}
		}
	}()
	t.Cleanup(func() {
		s.cmd.Process.Kill()
		s.cmd.Wait()
		s.tty.Close()
	})
	s.shows("ask> ")
	return s
}

// shows waits until the text appears after what was waited for before.
func (s *screen) shows(text string) {
	s.t.Helper()
	for deadline := time.Now().Add(time.Minute); time.Now().Before(deadline); time.Sleep(2 * time.Millisecond) {
		s.mu.Lock()
		i := strings.Index(s.seen.String()[s.read:], text)
		if i >= 0 {
			s.read += i + len(text)
		}
		s.mu.Unlock()
		if i >= 0 {
			return
		}
	}
	s.t.Fatalf("the terminal does not show %q after %q", text, s.since(""))
}

func (s *screen) types(keys string) {
	s.t.Helper()
	if _, err := io.WriteString(s.tty, keys); err != nil {
		s.t.Fatal(err)
	}
}

// mark is the place in what was seen up to which was waited for.
func (s *screen) mark() int {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.read
}

func (s *screen) after(mark int) string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.seen.String()[mark:s.read]
}

// since is what was seen from the first appearance of a text.
func (s *screen) since(text string) string {
	s.mu.Lock()
	defer s.mu.Unlock()
	all := s.seen.String()
	return all[max(0, strings.Index(all, text)):]
}

// leaves has the program end by :quit.
func (s *screen) leaves() {
	s.t.Helper()
	s.types(":quit\r")
	s.ends(0)
}

func (s *screen) ends(status int) {
	s.t.Helper()
	s.wait()
	if got := s.cmd.ProcessState.ExitCode(); got != status {
		s.t.Errorf("status %d, want %d", got, status)
	}
}

func (s *screen) endsBySignal(signal syscall.Signal) {
	s.t.Helper()
	s.wait()
	if w, ok := s.cmd.ProcessState.Sys().(syscall.WaitStatus); !ok || !w.Signaled() || w.Signal() != signal {
		s.t.Errorf("ends with %v, want %v", s.cmd.ProcessState, signal)
	}
}

func (s *screen) wait() {
	s.t.Helper()
	done := make(chan struct{})
	go func() { s.cmd.Wait(); close(done) }()
	select {
	case <-done:
	case <-time.After(time.Minute):
		s.t.Fatal("the program does not end")
	}
}

// plain takes out the sequences that colour.
func plain(l string) string {
	for {
		i := strings.Index(l, "\x1b[")
		if i < 0 {
			return l
		}
		j := strings.IndexFunc(l[i+2:], func(r rune) bool { return r >= '@' && r <= '~' })
		if j < 0 {
			return l[:i]
		}
		l = l[:i] + l[i+2+j+1:]
	}
}
