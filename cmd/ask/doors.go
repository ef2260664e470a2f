package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"strings"
)

// longestLine bounds one question; a longer one is no question.
const longestLine = 64 << 10

// words answers the question on the command line.
func (d *desk) words(question string) error {
	if isQuit(question) {
		return nil
	}
	if len(question) > longestLine {
		return usage("", "question: %d bytes, and %d are the most that is read", len(question), longestLine)
	}
	session, err := d.newSession()
	if err != nil {
		return err
	}
	a := d.turn(session, question)
	if err := d.show(a); err != nil {
		return err
	}
	if d.set.Sheet != "" {
		if err := d.sheetAsked(session); err != nil {
			return err
		}
	}
	switch {
	case d.failed != nil:
		return d.failed
	case !answered(a):
		return errUnanswered
	}
	return nil
}

// pipe holds one conversation, a turn a line. A line that cannot be answered
// does not spoil the rest: the status says so only when no line was.
func (d *desk) pipe(in io.Reader, prompt string) error {
	session, err := d.newSession()
	if err != nil {
		return err
	}
	if err := d.beginDrill(session); err != nil {
		return err
	}
	lines := newLines(in, longestLine)
	turns, good := 0, 0
	for {
		if prompt != "" {
			fmt.Fprint(d.out, prompt)
			d.out.Flush()
		}
		line, err := lines.next()
		if err != nil && !errors.Is(err, errLineTooLong) {
			if !errors.Is(err, io.EOF) {
				return usage("", "reading standard input: %w", err)
			}
			break
		}
		if err == nil && isQuit(line) {
			break
		}
		if err == nil && strings.TrimSpace(line) == "" {
			continue
		}
		if turns++; turns > 1 && !d.set.JSON {
			fmt.Fprintln(d.out)
		}
		a := unreadable(line, err)
		if err == nil {
			a = d.turn(session, line)
		}
		if err := d.show(a); err != nil {
			return err
		}
		if answered(a) {
			good++
		}
	}
	if d.set.Sheet != "" && turns > 0 {
		if err := d.sheetAsked(session); err != nil {
			return err
		}
	}
	switch {
	case d.failed != nil:
		return d.failed
	case prompt != "" || d.set.Drill:
		return nil
	case turns == 0:
		return usage(`ask "16 foot jon boat, two aboard, small lake"`+"\nask --help", "no question: neither words on the command line nor a line on standard input")
	case good == 0:
		return errUnanswered
	}
	return nil
}

var errLineTooLong = errors.New("line too long")

// lines reads a stream line by line, passing over a line that is longer than
// the limit without holding it.
type lines struct {
	r     *bufio.Reader
	limit int
}

func newLines(in io.Reader, limit int) *lines {
	return &lines{bufio.NewReader(in), limit}
}

// next returns the next line without its end. The error is io.EOF after the
// last one, and errLineTooLong for a line beyond the limit, after which reading
// may go on.
func (l *lines) next() (string, error) {
	var line []byte
	long := false
	for {
		part, err := l.r.ReadSlice('\n')
		if len(line)+len(part) > l.limit {
			long = true
		}
		if !long {
			line = append(line, part...)
		}
		if errors.Is(err, bufio.ErrBufferFull) {
			continue
		}
		if err != nil && (!errors.Is(err, io.EOF) || len(part) == 0 && len(line) == 0 && !long) {
			return "", err
		}
		if long {
			return "", errLineTooLong
		}
		return strings.TrimSuffix(strings.TrimSuffix(string(line), "\n"), "\r"), nil
	}
}
