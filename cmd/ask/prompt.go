package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"slices"
	"strings"
	"syscall"

	"github.com/peterh/liner"

	"heronlake.example/ask/cmd/ask/store"
	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/drill"
)

const (
	promptText = "ask> "
	greeting   = "Say what boat it is and what it must do. :help lists more, :quit leaves."
)

// colonWords are the words that steer, for completion.
var colonWords = []string{":boat", ":boats", ":drill ", ":forget ", ":fresh", ":help", ":keep ", ":open ", ":quit", ":sheet ", ":undo", ":units metric", ":units us", ":why "}

// prompt holds a conversation in a terminal. It adds editing, history and
// completion to what a pipe does, and nothing else.
func (d *desk) prompt() error {
	editor := liner.NewLiner()
	// Also when a fault ends the program: a terminal left in the editor's mode
	// shows nothing of what is typed.
	defer editor.Close()
	editor.SetCtrlCAborts(true)
	keysOnly(os.Stdin)
	editor.SetMultiLineMode(true)
	editor.SetTabCompletionStyle(liner.TabPrints)

	history := store.History{Dir: d.set.folders().state()}
	editor.ReadHistory(strings.NewReader(strings.Join(history.Read(), "\n")))

	var figures []answer.Figure // of the last answer that held some
	editor.SetCompleter(func(line string) []string { return d.completions(line, figures) })

	stop := make(chan os.Signal, 1)
	signal.Notify(stop, syscall.SIGTERM, syscall.SIGHUP, os.Interrupt)
	defer signal.Stop(stop)

	if !d.set.JSON {
		d.out.WriteString(text.Paragraph(greeting, d.style))
		if err := d.out.Flush(); err != nil {
			return err
		}
	}
	session, err := d.newSession()
	if err != nil {
		return err
	}
	if err := d.beginDrill(session); err != nil {
		return err
	}
	var ending error // a signal that came while a yes was waited for
	d.confirm = func(question string) bool {
		// A prompt wider than the window would be read without the editor, and
		// Ctrl-C would end the program instead of meaning no.
		if i := strings.LastIndex(question, ". "); i >= 0 {
			fmt.Fprintln(d.out, text.Clean(question[:i+1]))
			d.out.Flush()
			question = question[i+2:]
		}
		said, err := ended(editor, stop, question)
		if err != nil && !errors.Is(err, liner.ErrPromptAborted) && !errors.Is(err, io.EOF) {
			ending = err
		}
		return err == nil && isYes(said)
	}
	for {
		line, err := ended(editor, stop, promptText)
		switch {
		case errors.Is(err, liner.ErrPromptAborted):
			continue
		case errors.Is(err, io.EOF):
			fmt.Fprintln(d.out)
			return errors.Join(d.out.Flush(), d.failed)
		case err != nil:
			return err
		case strings.TrimSpace(line) == "":
			continue
		}
		editor.AppendHistory(line)
		if err := history.Add(line); err != nil && !history.Silent {
			history.Silent = true
			fmt.Fprintln(d.warn, "ask: history is not kept:", err)
		}
		if isQuit(line) {
			return d.failed
		}
		d.style = style(d.set, d.screen) // the window may have changed since
		a := d.turn(session, line)
		if err := d.show(a); err != nil {
			return err
		}
		if len(a.Figures) > 0 {
			figures = a.Figures
		}
		if ending != nil {
			return ending
		}
		fmt.Fprintln(d.out)
	}
}

// ended waits for a line or for a signal from outside. The editor reads in a
// goroutine, because a read from a terminal cannot be called off; after a signal
// it is left behind and the program ends.
func ended(editor *liner.State, stop <-chan os.Signal, text string) (string, error) {
	type result struct {
		line string
		err  error
	}
	typed := make(chan result, 1)
	go func() {
		line, err := editor.Prompt(text)
		typed <- result{line, err}
	}()
	select {
	case r := <-typed:
		return r.line, r.err
	case s := <-stop:
		if s, ok := s.(syscall.Signal); ok {
			return "", stopped(s)
		}
		return "", stopped(syscall.SIGINT)
	}
}

// completions are the ends of a line that begins with a colon: a colon word, or
// behind one a figure of the last answer, a boat that is kept, a topic.
func (d *desk) completions(line string, figures []answer.Figure) []string {
	if !strings.HasPrefix(line, ":") {
		return []string{line + " "} // a table that is pasted has tabs between its words
	}
	word, start, named := strings.Cut(line, " ")
	names := colonWords
	if named {
		names = nil
		switch word {
		case ":why":
			for _, f := range figures {
				names = append(names, word+" "+f.ID)
			}
		case ":open", ":forget":
			boats, _, _ := d.boats().List() // without a list nothing is completed
			for _, b := range boats {
				names = append(names, word+" "+b)
			}
		case ":drill":
			for _, t := range drill.Topics() {
				names = append(names, word+" "+string(t))
			}
		case ":units":
			names = []string{":units metric", ":units us"}
		}
		line = word + " " + strings.TrimLeft(start, " ")
	}
	var out []string
	for _, n := range names {
		if strings.HasPrefix(n, line) {
			out = append(out, n)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}
