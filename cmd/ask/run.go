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
	case set.Manual:
		_, err := io.WriteString(out, manual(version()))
		return err
	case set.Completion != "":
		script, err := completion(set.Completion)
		if err != nil {
			return err
		}
		_, err = io.WriteString(out, script)
		return err
	case set.CheckNotes != "":
		return checkNotes(set.CheckNotes, out)
	case set.CheckStock != "":
		return checkStock(set.CheckStock, out)
	case set.CheckScenarios != "":
		return checkScenarios(set.CheckScenarios, out)
	}
	if set.Sheet != "" {
		if _, err := sheetForm(set.Sheet); err != nil {
			return usage("", "--sheet: %w", err)
		}
	}
	d, err := openDesk(set, out, warn)
	if err != nil {
		return err
	}
	if done, err := d.training(words); done || err != nil {
		return err
	}
	atTerminal := isTerminal(in) && isTerminal(out)
	if atTerminal {
		d.confirm = func(question string) bool {
			fmt.Fprint(warn, question)
			said, err := newLines(in, longestLine).next()
			return err == nil && isYes(said)
		}
	}
	switch {
	case set.Batch != "" && (set.Sheet != "" || set.Boat != ""):
		return usage("a line of the batch may say :sheet FILE or :open NAME", "--batch goes with neither --sheet nor --boat")
	case set.Batch != "" && len(words) > 0:
		return usage("leave out one of the two", "--batch and a question on the command line: %q", strings.Join(words, " "))
	case set.Batch != "":
		return d.batch(set.Batch, in)
	case len(words) > 0 && !set.Drill:
		return d.words(strings.Join(words, " "))
	case set.Sheet != "" && atTerminal:
		return usage(`ask --sheet FILE.html "16 foot jon boat, two aboard, small lake"`, "--sheet wants the boat on the command line; at the prompt say :sheet FILE")
	case atTerminal && liner.TerminalSupported():
		return d.prompt()
	case atTerminal:
		return d.pipe(in, promptText)
	}
	return d.pipe(in, "")
}

// isYes is true for a yes in answer to "[y/N]".
func isYes(said string) bool {
	said = strings.ToLower(strings.TrimSpace(said))
	return said == "y" || said == "yes"
}

// isTerminal is true for a file that is a terminal.
func isTerminal(stream any) bool {
	f, ok := stream.(*os.File)
	return ok && term.IsTerminal(int(f.Fd()))
}

// style is how text is laid out on this output: the terminal's width up to the
// widest page, the widest page where there is no terminal.
func style(set settings, out io.Writer) text.Style {
	s := text.Style{Width: text.Widest, Plain: set.Plain, Contrast: set.Contrast}
	if !isTerminal(out) {
		return s
	}
	if w, _, err := term.GetSize(int(out.(*os.File).Fd())); err == nil && w > 0 {
		s.Width = min(w, text.Widest)
	}
	s.Colour = !set.NoColor && !set.Plain && os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb" && os.Getenv("TERM") != ""
	return s
}

// release is the version that a release is built with: -X main.release=v1.2.3.
var release string

// version is what the build knows of itself.
func version() string {
	if release != "" {
		return release
	}
	info, ok := debug.ReadBuildInfo()
	if !ok || info.Main.Version == "" {
		return "(devel)"
	}
	return info.Main.Version
}
