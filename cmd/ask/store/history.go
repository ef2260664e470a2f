package store

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/rogpeppe/go-internal/lockedfile"
)

const (
	historyLines   = 500
	historyLongest = 1000    // bytes of one line; a longer one was pasted by mistake
	historyBytes   = 1 << 20 // what is read of a file that has grown beyond all reason
)

// History is the lines typed at the prompt, kept between runs in the file
// "history" of Dir. With an empty Dir nothing is kept.
type History struct {
	Dir    string
	Silent bool // the fault of keeping it was already told
}

func (h History) file() string { return filepath.Join(h.Dir, "history") }

// Read returns the lines kept, the oldest first. What is damaged is passed
// over: a lost history is no reason not to answer.
func (h History) Read() []string {
	if h.Dir == "" {
		return nil
	}
	if info, err := os.Stat(h.file()); err != nil || !info.Mode().IsRegular() {
		return nil
	}
	f, err := os.Open(h.file())
	if err != nil {
		return nil
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, historyBytes))
	if err != nil {
		return nil
	}
	var lines []string
	for line := range strings.Lines(string(data)) {
		if line = strings.TrimRight(line, "\r\n"); keepable(line) {
			lines = append(lines, line)
		}
	}
	return lines[max(0, len(lines)-historyLines):]
}

// Add keeps one more line. Several programs may do so at once: each adds to
// what the others wrote.
func (h History) Add(line string) error {
	if h.Dir == "" || !keepable(line) {
		return nil
	}
	if err := os.MkdirAll(h.Dir, 0o700); err != nil {
		return err
	}
	unlock, err := lockedfile.MutexAt(h.file() + ".lock").Lock()
	if err == nil {
		defer unlock()
	} else if !errors.Is(err, errors.ErrUnsupported) {
		return err
	}
	lines := h.Read()
	if len(lines) > 0 && lines[len(lines)-1] == line {
		return nil
	}
	lines = append(lines, line)
	lines = lines[max(0, len(lines)-historyLines):]
	return Replace(h.file(), []byte(strings.Join(lines, "\n")+"\n"))
}

// keepable refuses what the line editor cannot read back or a terminal must not
// be shown.
func keepable(line string) bool {
	return strings.TrimSpace(line) != "" && len(line) <= historyLongest && utf8.ValidString(line) &&
		strings.IndexFunc(line, func(r rune) bool { return unicode.Is(unicode.C, r) }) < 0
}
