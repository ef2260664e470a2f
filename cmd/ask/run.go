package main

import (
	_ "embed"
	"fmt"
	"io"
	"os"
	"runtime/debug"
	"strings"

	"github.com/peterh/liner"
	"golang.org/x/term"

	"heronlake.example/ask/cmd/ask/text"
)

//go:embed help.txt
var help string

// run is the whole program without its process: it reads the settings, opens
// the door that the arguments ask for, and returns what main exits with.
func run(args []string, in io.Reader, out, warn io.Writer) error {
	set, words, err := readSettings(args)
	if err != nil {
		return err
	}
	switch {
	case set.Help:
		_, err := io.WriteString(out, help)
		return err
	case set.Version:
		_, err := fmt.Fprintln(out, "ask", version())
		return err
	case set.CheckNotes != "":
		return checkNotes(set.CheckNotes, out)
	}
	d, err := openDesk(set, out, warn)
	if err != nil {
		return err
	}
	switch {
	case set.Batch != "" && len(words) > 0:
		return usage("leave out one of the two", "--batch and a question on the command line: %q", strings.Join(words, " "))
	case set.Batch != "":
		return d.batch(set.Batch, in)
	case len(words) > 0:
		return d.words(strings.Join(words, " "))
	case isTerminal(in) && isTerminal(out) && liner.TerminalSupported():
		return d.prompt()
	case isTerminal(in) && isTerminal(out):
		return d.pipe(in, promptText)
	}
	return d.pipe(in, "")
}

// isTerminal is true for a file that is a terminal.
func isTerminal(stream any) bool {
	f, ok := stream.(*os.File)
	return ok && term.IsTerminal(int(f.Fd()))
}

// style is how text is laid out on this output: the terminal's width up to the
// widest page, the widest page where there is no terminal.
func style(set settings, out io.Writer) text.Style {
	s := text.Style{Width: text.Widest, Plain: set.Plain}
	if !isTerminal(out) {
		return s
	}
	if w, _, err := term.GetSize(int(out.(*os.File).Fd())); err == nil && w > 0 {
		s.Width = min(w, text.Widest)
	}
	s.Colour = !set.NoColor && !set.Plain && os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb" && os.Getenv("TERM") != ""
	return s
}

// version is what the build knows of itself.
func version() string {
	info, ok := debug.ReadBuildInfo()
	if !ok || info.Main.Version == "" {
		return "(devel)"
	}
	return info.Main.Version
}
