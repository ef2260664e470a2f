package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"strings"
	"syscall"

	"heronlake.example/ask/cmd/ask/text"
)

// Every message on standard error begins "ask:", in lower case and without a
// final period; it quotes what was wrong, says where, and a line beginning
// "hint:" says what to do. Answers go to standard output and nothing else does.

// The exit statuses, as --help lists them.
const (
	statusAnswered   = 0
	statusFailed     = 1
	statusUsage      = 2
	statusUnanswered = 3
	statusSignal     = 128 // and the signal's number
)

// fault is an error with the exit status that it ends the program with.
type fault struct {
	status int
	err    error
	hint   string
}

func (f *fault) Error() string { return f.err.Error() }
func (f *fault) Unwrap() error { return f.err }

// usage is a fault of the command line, the settings or the input.
func usage(hint, format string, args ...any) error {
	return &fault{statusUsage, fmt.Errorf(format, args...), hint}
}

// errUnanswered ends the program in silence: the answer that was printed says
// already that nothing in the question could be answered.
var errUnanswered = &fault{status: statusUnanswered, err: errors.New("nothing could be answered")}

// stopped is the end by a signal from outside.
func stopped(s syscall.Signal) error {
	return &fault{status: statusSignal + int(s), err: fmt.Errorf("stopped: %v", s)}
}

// report prints an error and its hint, once. Faults that are no news to the
// person stay silent: an unanswered question, a signal, a reader that left.
func report(w io.Writer, err error) {
	if err == nil || readerLeft(err) {
		return
	}
	var f *fault
	if errors.As(err, &f) && (f.status == statusUnanswered || f.status > statusSignal) {
		return
	}
	fmt.Fprintln(w, "ask:", text.Clean(err.Error()))
	if f != nil && f.hint != "" {
		for line := range strings.Lines(f.hint) {
			fmt.Fprintln(w, "hint:", text.Clean(strings.TrimSuffix(line, "\n")))
		}
	}
}

// status turns the outcome of run into the program's exit status.
func status(err error) int {
	if err == nil {
		return statusAnswered
	}
	var f *fault
	if errors.As(err, &f) {
		return f.status
	}
	return statusFailed
}

// readerLeft is true when standard output was closed by the program that read
// it, as head does. Where the system ends a writer by a signal, it never comes
// to this.
func readerLeft(err error) bool {
	return errors.Is(err, syscall.EPIPE) || errors.Is(err, fs.ErrClosed) || errors.Is(err, io.ErrClosedPipe)
}
