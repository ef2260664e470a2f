package main

import (
	"bufio"
	"fmt"
	"io"
	"path/filepath"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/index"
	"heronlake.example/ask/kb"
	"heronlake.example/ask/reasoner"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/drill"
)

// desk is what every door works at: the reasoner, and where answers go.
type desk struct {
	set      settings
	reasoner *reasoner.Reasoner
	screen   io.Writer     // standard output itself, asked for its width
	out      *bufio.Writer // to screen
	warn     io.Writer
	style    text.Style
	confirm  func(question string) bool // asks the person; nil where nobody can be asked
	failed   error                      // the last fault of the program itself that a question met

	scenarios []drill.Scenario // a trainer's own
}

// openDesk puts notes, index and reasoner together.
func openDesk(set settings, out, warn io.Writer) (*desk, error) {
	opts := reasoner.Options{UnitsSet: set.Units != ""}
	if set.Units == "metric" {
		opts.Units = unit.Metric
	}
	lib, search, err := openNotes(set, warn)
	if err != nil {
		return nil, err
	}
	opts.Notes, opts.Search = lib, search
	if opts.Shelf, err = openShelf(set.Stock, warn); err != nil {
		return nil, err
	}
	return &desk{
		set:      set,
		reasoner: reasoner.New(opts),
		screen:   out,
		out:      bufio.NewWriter(out),
		warn:     warn,
		style:    style(set, out),
	}, nil
}

// checkNotes runs the lint over a folder of notes and works their examples. Its
// report goes to standard output; faults make it fail.
func checkNotes(folder string, out io.Writer) error {
	files, err := readNotes(folder)
	if err != nil {
		return err
	}
	shop, faults := files.Parse()
	lib, err := kb.Builtin()
	if err != nil {
		return err
	}
	lib = lib.Merge(shop)
	search, err := index.Open(lib)
	if err != nil {
		return err
	}
	r := reasoner.New(reasoner.Options{Notes: lib, Search: search})
	faults = append(faults, kb.Check(shop, func(question string) (map[string]kb.Figure, error) {
		return figuresOf(r.NewSession().Ask(question)), nil
	})...)
	for i, f := range faults {
		if i == 0 || f != faults[i-1] { // reading and checking may both find it
			fmt.Fprintln(out, text.Clean(filepath.Join(folder, f.Error())))
		}
	}
	if len(faults) > 0 {
		return fmt.Errorf("notes: %s: not in order", folder)
	}
	fmt.Fprintf(out, "%s: %d notes, all in order\n", text.Clean(folder), shop.Len())
	return nil
}

// figuresOf is an answer as the lint compares it: figures, and the facts
// understood, by their ids.
func figuresOf(a answer.Answer) map[string]kb.Figure {
	got := map[string]kb.Figure{}
	for _, u := range a.Understood {
		if u.Value != nil {
			got[u.Slot] = kb.Figure{Value: *u.Value}
		} else {
			got[u.Slot] = kb.Figure{Word: u.Text}
		}
	}
	for _, f := range a.Figures {
		got[f.ID] = kb.Figure{Value: f.Value}
	}
	return got
}
