package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"heronlake.example/ask/cmd/ask/sheet"
	"heronlake.example/ask/cmd/ask/store"
	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/reasoner"
	"heronlake.example/ask/reasoner/answer"
)

// errNoFit says that too little is known for a sheet; the answer says what.
var errNoFit = errors.New("too little is known of the boat")

// writeSheet writes the fit sheet of the boat as it stands, in the form that the
// file's ending names. A file that is there already is replaced with --force, or
// after a yes where somebody can be asked.
func (d *desk) writeSheet(s *reasoner.Session, file string) error {
	form, err := sheetForm(file)
	if err != nil {
		return err
	}
	a := s.Sheet()
	if len(a.Figures) == 0 {
		for _, p := range a.Problems {
			return fmt.Errorf("%w: %s", errNoFit, strings.TrimSuffix(p.Text, "."))
		}
		return errNoFit
	}
	data, err := form(a, sheet.Options{Units: s.Units()})
	if err != nil {
		return err
	}
	err = store.Put(file, data, d.set.Force)
	if errors.Is(err, store.ErrExists) && d.confirm != nil && d.confirm(fmt.Sprintf("%s is there already. Replace it? [y/N] ", file)) {
		err = store.Put(file, data, true)
	}
	switch {
	case errors.Is(err, store.ErrExists):
		return fmt.Errorf("%s is there already: name another file, or say --force", file)
	case err != nil:
		return fmt.Errorf("%s: %w", file, err)
	}
	return nil
}

// sheetAsked writes the sheet of --sheet and says so on standard error, where it
// is no part of the answer.
func (d *desk) sheetAsked(s *reasoner.Session) error {
	if err := d.writeSheet(s, d.set.Sheet); err != nil {
		return fmt.Errorf("--sheet: %w", err)
	}
	fmt.Fprintln(d.warn, "ask: fit sheet written:", text.Clean(d.set.Sheet))
	return nil
}

// sheetForms are the endings that name a form.
var sheetForms = map[string]func(answer.Answer, sheet.Options) ([]byte, error){
	".html": sheet.HTML,
	".md":   func(a answer.Answer, o sheet.Options) ([]byte, error) { return sheet.Markdown(a, o), nil },
	".json": func(a answer.Answer, _ sheet.Options) ([]byte, error) {
		line, err := jsonLine(a)
		if err != nil {
			return nil, err
		}
		var b bytes.Buffer
		err = json.Indent(&b, line, "", "  ")
		return b.Bytes(), err
	},
}

func sheetForm(file string) (func(answer.Answer, sheet.Options) ([]byte, error), error) {
	if form, ok := sheetForms[strings.ToLower(filepath.Ext(file))]; ok {
		return form, nil
	}
	return nil, fmt.Errorf("%q: a fit sheet ends in .html, .md or .json", file)
}

// sheetWord answers ":sheet FILE".
func (d *desk) sheetWord(s *reasoner.Session, line, file string) answer.Answer {
	if file == "" {
		return refused(line, "sheet", errors.New("a fit sheet wants a file: :sheet FILE.html, FILE.md or FILE.json"))
	}
	if err := d.writeSheet(s, atHome(file)); err != nil {
		return refused(line, "sheet", err)
	}
	return steered(line, "sheet", "Fit sheet written: "+file)
}

// atHome resolves a leading "~/", which no shell has seen at the prompt.
func atHome(file string) string {
	if rest, ok := strings.CutPrefix(file, "~/"); ok {
		if home, err := os.UserHomeDir(); err == nil {
			return filepath.Join(home, rest)
		}
	}
	return file
}
