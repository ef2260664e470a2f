//go:build linux || darwin

package main

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
	"golang.org/x/sys/unix"
)

// shop is a program running in a terminal.
type shop struct {
	t    *testing.T
	tty  *os.File
	cmd  *exec.Cmd
	mu   sync.Mutex
	seen bytes.Buffer
	read int // how much of seen was waited for already
	home string
}

// enter starts the program at its prompt in a terminal of the given width.
func enter(t *testing.T, home string, columns uint16, env ...string) *shop {
	t.Helper()
	exe, err := os.Executable() // the test binary is the program when it is called "ask"
	if err != nil {
		t.Fatal(err)
	}
	link := filepath.Join(t.TempDir(), "ask")
	if err := os.Symlink(exe, link); err != nil {
		t.Fatal(err)
	}
	s := &shop{t: t, home: home, cmd: exec.Command(link)}
	s.cmd.Env = append([]string{"HOME=" + home, "XDG_STATE_HOME=" + home, "XDG_CONFIG_HOME=" + home, "TERM=xterm", "PATH=" + os.Getenv("PATH")}, env...)
	s.tty, err = pty.StartWithSize(s.cmd, &pty.Winsize{Rows: 40, Cols: columns})
	if err != nil {
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
	return s
}

// shows waits until the terminal shows the text after all that was waited for.
func (s *shop) shows(text string) {
	s.t.Helper()
	deadline := time.Now().Add(time.Minute)
	for time.Now().Before(deadline) {
		s.mu.Lock()
		all := s.seen.String()
		s.mu.Unlock()
		if i := strings.Index(all[s.read:], text); i >= 0 {
			s.read += i + len(text)
			return
		}
		time.Sleep(5 * time.Millisecond)
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	s.t.Fatalf("the terminal does not show %q after %q", text, s.seen.String())
}

func (s *shop) types(keys string) {
	s.t.Helper()
	if _, err := io.WriteString(s.tty, keys); err != nil {
		s.t.Fatal(err)
	}
}

// ends waits for the program and returns its exit status.
func (s *shop) ends() int {
	s.t.Helper()
	done := make(chan error, 1)
	go func() { done <- s.cmd.Wait() }()
	select {
	case <-done:
		return s.cmd.ProcessState.ExitCode()
	case <-time.After(time.Minute):
		s.t.Fatalf("the program does not end after %q", s.seen.String())
		return -1
	}
}

const (
	ctrlC    = "\x03"
	ctrlD    = "\x04"
	enterKey = "\r"
)

func TestPromptLeavesByCtrlD(t *testing.T) {
	s := enter(t, t.TempDir(), 80)
	s.shows(greeting)
	s.shows(promptText)
	s.types(":undo" + enterKey)
	s.shows(promptText)
	s.types(ctrlD)
	if got := s.ends(); got != statusAnswered {
		t.Errorf("status %d, want %d", got, statusAnswered)
	}
}

func TestPromptCtrlCClearsTheLine(t *testing.T) {
	s := enter(t, t.TempDir(), 80)
	s.shows(promptText)
	s.types("a line that is never asked")
	s.shows("never asked")
	s.types(ctrlC)
	s.shows(promptText)
	s.types(":quit" + enterKey)
	if got := s.ends(); got != statusAnswered {
		t.Errorf("status %d, want %d", got, statusAnswered)
	}
	if data, _ := os.ReadFile(filepath.Join(s.home, "ask", "history")); strings.Contains(string(data), "never asked") {
		t.Errorf("a cleared line is in the history: %q", data)
	}
}

func TestPromptHistoryOutlivesTheProgram(t *testing.T) {
	home := t.TempDir()
	s := enter(t, home, 80)
	s.shows(promptText)
	s.types("16 foot jon, two aboard" + enterKey)
	s.shows("\n" + promptText)
	s.types(":quit" + enterKey)
	s.ends()

	info, err := os.Stat(filepath.Join(home, "ask", "history"))
	if err != nil {
		t.Fatal(err)
	}
	if info.Mode().Perm() != 0o600 {
		t.Errorf("history has mode %o, want 600", info.Mode().Perm())
	}
	s = enter(t, home, 80)
	s.shows(promptText)
	s.types("\x1b[A") // the up arrow shows :quit, the last line
	s.shows(":quit")
	s.types("\x1b[A")
	s.shows("16 foot jon, two aboard")
}

func TestPromptCompletesColonWords(t *testing.T) {
	s := enter(t, t.TempDir(), 80)
	s.shows(promptText)
	s.types(":un\t\t") // the second Tab lists
	s.shows(":undo")
	s.shows(":units metric")
	s.types("d\t")
	s.shows(":undo")
}

// A signal from outside must not leave the terminal in the editor's mode, in
// which a shell shows nothing of what is typed.
func TestSignalRestoresTheTerminal(t *testing.T) {
	for _, signal := range []syscall.Signal{syscall.SIGTERM, syscall.SIGHUP, syscall.SIGINT} {
		s := enter(t, t.TempDir(), 80)
		s.shows(promptText)
		if echoes(t, s.tty) {
			t.Fatal("the editor does not read keys one by one, so this test shows nothing")
		}
		if err := s.cmd.Process.Signal(signal); err != nil {
			t.Fatal(err)
		}
		if got, want := s.ends(), statusSignal+int(signal); got != want {
			t.Errorf("%v: status %d, want %d", signal, got, want)
		}
		if !echoes(t, s.tty) {
			t.Errorf("%v leaves the terminal without echo", signal)
		}
	}
}

// TestCtrlCIsAKeyThroughout: the terminal sends no signal for it, not even before
// the prompt stands or while an answer is worked out.
func TestCtrlCIsAKeyThroughout(t *testing.T) {
	s := enter(t, t.TempDir(), 80)
	s.shows(promptText)
	s.types("18-foot aluminum, 1,900 lb loaded, windy lake" + enterKey + ctrlC)
	s.shows("Thrust needed")
	for range 50 {
		s.types(ctrlC)
	}
	s.types(":boat" + enterKey)
	s.shows("1,900 lb")
	s.shows("\n" + promptText)
	s.types(":quit" + enterKey)
	if got := s.ends(); got != statusAnswered {
		t.Errorf("status %d, want %d", got, statusAnswered)
	}
	if !echoes(t, s.tty) {
		t.Error("the terminal is left without echo")
	}
}

// TestPromptTakesAPastedTable: a tab between words is a blank, not lost.
func TestPromptTakesAPastedTable(t *testing.T) {
	s := enter(t, t.TempDir(), 80)
	s.shows(promptText)
	s.types("16 ft\tjon\ttwo aboard" + enterKey)
	s.shows("\n" + promptText)
	if data, err := os.ReadFile(filepath.Join(s.home, "ask", "history")); err != nil || string(data) != "16 ft jon two aboard\n" {
		t.Errorf("the line was taken as %q, %v", data, err)
	}
}

func TestPromptNarrowDumbAndJunk(t *testing.T) {
	tests := []struct {
		name    string
		columns uint16
		env     string
	}{
		{"twenty columns", 20, "TERM=xterm"},
		{"ten columns", 10, "TERM=xterm"},
		{"dumb", 80, "TERM=dumb"},
		{"unset", 80, "TERM="},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			s := enter(t, t.TempDir(), test.columns, test.env)
			s.shows(promptText)
			s.types("\x1b[31mred \x07\x1b]0;owned\x07 jon 船\x1b[A\x1b[B\x00" + enterKey)
			s.shows(promptText)
			s.types(":quit" + enterKey)
			if got := s.ends(); got != statusAnswered {
				t.Errorf("status %d, want %d", got, statusAnswered)
			}
		})
	}
}

func TestColourOnlyWhereItIsWanted(t *testing.T) {
	tests := []struct {
		name string
		env  []string
		want bool
	}{
		{"terminal", nil, true},
		{"NO_COLOR", []string{"NO_COLOR=1"}, false},
		{"ASK_NO_COLOR", []string{"ASK_NO_COLOR=true"}, false},
		{"plain", []string{"ASK_PLAIN=1"}, false},
		{"contrast", []string{"ASK_CONTRAST=1"}, true},
		{"contrast and NO_COLOR", []string{"ASK_CONTRAST=1", "NO_COLOR=1"}, false},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			s := enter(t, t.TempDir(), 80, test.env...)
			s.shows(promptText)
			s.types("18-foot aluminum, 1,900 lb loaded, windy lake" + enterKey)
			s.shows("\n" + promptText)
			s.mu.Lock()
			defer s.mu.Unlock()
			if got := strings.Contains(s.seen.String(), "\x1b[1m"); got != test.want {
				t.Errorf("bold on the screen: %v, want %v:\n%q", got, test.want, s.seen.String())
			}
			if got, want := strings.Contains(s.seen.String(), "\x1b[36m"), test.want && test.name != "contrast"; got != want {
				t.Errorf("a colour on the screen: %v, want %v", got, want)
			}
		})
	}
}

func echoes(t *testing.T, tty *os.File) bool {
	t.Helper()
	mode, err := unix.IoctlGetTermios(int(tty.Fd()), getTermios)
	if err != nil {
		t.Fatal(err)
	}
	return mode.Lflag&unix.ECHO != 0 && mode.Lflag&unix.ICANON != 0 && mode.Lflag&unix.ISIG != 0
}
