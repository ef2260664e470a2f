package stock

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/encoding/charmap"
	xunicode "golang.org/x/text/encoding/unicode"
)

// MaxRows and MaxBytes bound a file: beyond them it is refused, not read.
const (
	MaxRows  = 20000
	MaxBytes = 8 << 20
)

// A Fault is one thing wrong with a file: where, and what was expected.
type Fault struct {
	File   string
	Line   int    // 0 when it is about the whole file
	Column string // "" when it is about the whole line
	Text   string
}

func (f Fault) String() string {
	switch {
	case f.Line == 0:
		return fmt.Sprintf("%s: %s", f.File, f.Text)
	case f.Column == "":
		return fmt.Sprintf("%s:%d: %s", f.File, f.Line, f.Text)
	}
	return fmt.Sprintf("%s:%d: column %s: %s", f.File, f.Line, f.Column, f.Text)
}

// decode turns what a spreadsheet saved into UTF-8: byte order marks, UTF-16,
// and the one-byte code page of older Windows programs.
func decode(data []byte) ([]byte, error) {
	switch {
	case bytes.HasPrefix(data, []byte{0xEF, 0xBB, 0xBF}):
		data = data[3:]
	case bytes.HasPrefix(data, []byte{0xFF, 0xFE}), bytes.HasPrefix(data, []byte{0xFE, 0xFF}):
		return xunicode.UTF16(xunicode.LittleEndian, xunicode.UseBOM).NewDecoder().Bytes(data)
	}
	if !utf8.Valid(data) {
		return charmap.Windows1252.NewDecoder().Bytes(data)
	}
	return data, nil
}

// separator finds the mark between fields from the header line: the one that
// occurs most. Some spreadsheets name it in a line of its own, "sep=;".
func separator(data []byte) (sep rune, rest []byte) {
	line, after, _ := bytes.Cut(data, []byte("\n"))
	if s, ok := strings.CutPrefix(strings.ToLower(strings.TrimSpace(string(line))), "sep="); ok && len(s) == 1 {
		return rune(s[0]), append([]byte("\n"), after...) // the blank line keeps the count of lines
	}
	sep, most := ',', 0
	for _, r := range []rune{',', ';', '\t'} {
		if n := strings.Count(string(line), string(r)); n > most {
			sep, most = r, n
		}
	}
	return sep, data
}

// table reads a file into items. Faulty lines are named and left out; the rest
// load. Extra columns are kept by name.
func table[T any](file string, data []byte, columns []column[T], begin func(line int) T) (items []T, extra []string, faults []Fault) {
	t := tableReader[T]{file: file, columns: columns, skus: map[string]int{}}
	r := t.open(data)
	if r == nil {
		return nil, nil, t.faults
	}
	if extra = t.header(r); len(t.faults) > 0 {
		return nil, extra, t.faults
	}
	for rows := 0; ; rows++ {
		rec, err := r.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.fault(parseLine(err), "", "cannot be read: "+cause(err))
			continue
		}
		line, _ := r.FieldPos(0)
		if blank(rec) {
			continue
		}
		if rows >= MaxRows {
			t.fault(line, "", fmt.Sprintf("has more than %d lines; the rest is left out", MaxRows))
			break
		}
		if item := begin(line); t.fill(&item, rec, line) {
			items = append(items, item)
		}
	}
	return items, extra, t.faults
}

// A tableReader is what is known of one file while it is read.
type tableReader[T any] struct {
	file    string
	columns []column[T]
	place   []string       // by field: the name of its column, "" for an extra one
	comma   bool           // a comma is the decimal mark: fields are parted by semicolons
	skus    map[string]int // each number seen, and its line
	faults  []Fault
}

func (t *tableReader[T]) fault(line int, col, text string) {
	t.faults = append(t.faults, Fault{t.file, line, col, text})
}

// open makes a reader of the fields, nil where the file is refused.
func (t *tableReader[T]) open(data []byte) *csv.Reader {
	if len(data) > MaxBytes {
		t.fault(0, "", fmt.Sprintf("is larger than %d MB", MaxBytes>>20))
		return nil
	}
	data, err := decode(data)
	if err != nil || bytes.IndexByte(data, 0) >= 0 {
		t.fault(0, "", "is no text file: save it as CSV")
		return nil
	}
	sep, data := separator(data)
	t.comma = sep == ';'
	r := csv.NewReader(bytes.NewReader(data))
	r.Comma, r.FieldsPerRecord, r.LazyQuotes, r.TrimLeadingSpace = sep, -1, true, sep != '\t'
	return r
}

// header places the columns and returns the names of the extra ones.
func (t *tableReader[T]) header(r *csv.Reader) (extra []string) {
	names, err := r.Read()
	if err != nil {
		t.fault(0, "", "is empty: the first line must name the columns")
		return nil
	}
	t.place, extra = headings(names, t.columns)
	for _, c := range t.columns {
		if c.required && !slices.Contains(t.place, c.name) {
			t.fault(1, c.name, "is missing: "+c.means)
		}
	}
	return extra
}

// fill sets an item from the fields of its line, and reports whether all are
// sound.
func (t *tableReader[T]) fill(item *T, rec []string, line int) bool {
	sound := true
	bad := func(col, text string) {
		t.fault(line, col, text)
		sound = false
	}
	for i, name := range t.place {
		if name == "" {
			continue
		}
		text := ""
		if i < len(rec) {
			text = clean(rec[i])
		}
		c := t.columns[slices.IndexFunc(t.columns, func(c column[T]) bool { return c.name == name })]
		if text == "" {
			if c.required {
				bad(c.name, "is empty: "+c.means)
			}
			continue
		}
		if err := c.set(item, text, t.comma); err != nil {
			bad(c.name, err.Error()+"; expected "+c.means)
		}
		if c.name == "sku" {
			if first, twice := t.skus[text]; twice {
				bad(c.name, fmt.Sprintf("%q stands in line %d as well", text, first))
			}
			t.skus[text] = line
		}
	}
	return sound
}

// headings matches the header with the known columns, forgiving case, blanks
// and hyphens; unknown ones are extra.
func headings[T any](header []string, columns []column[T]) (place, extra []string) {
	flat := func(s string) string {
		return strings.Map(func(r rune) rune {
			if r == ' ' || r == '-' {
				return '_'
			}
			return r
		}, strings.ToLower(clean(s)))
	}
	for _, h := range header {
		i := slices.IndexFunc(columns, func(c column[T]) bool { return flat(c.name) == flat(h) })
		if i < 0 || slices.Contains(place, columns[i].name) {
			place = append(place, "")
			if h := clean(h); h != "" {
				extra = append(extra, h)
			}
			continue
		}
		place = append(place, columns[i].name)
	}
	return place, extra
}

// clean strips what spreadsheets add to a cell and what could harm a terminal:
// blanks of every kind at the ends, ="…" wrappers, control and bidi marks.
func clean(s string) string {
	if plain(s) {
		return s
	}
	if t, ok := strings.CutPrefix(s, `="`); ok {
		s = strings.TrimSuffix(t, `"`)
	}
	s = strings.Map(func(r rune) rune {
		if unicode.Is(unicode.Cc, r) || unicode.Is(unicode.Cf, r) || r == utf8.RuneError {
			return -1
		}
		return r
	}, s)
	return strings.TrimFunc(s, unicode.IsSpace)
}

func blank(rec []string) bool {
	return !slices.ContainsFunc(rec, func(s string) bool { return clean(s) != "" })
}

func parseLine(err error) int {
	var p *csv.ParseError
	if errors.As(err, &p) {
		return p.Line
	}
	return 0
}

func cause(err error) string {
	var p *csv.ParseError
	if errors.As(err, &p) {
		return p.Err.Error()
	}
	return err.Error()
}

// plain is true for printable ASCII without blanks at its ends, as most fields
// are: there is nothing to clean.
func plain(s string) bool {
	for i := 0; i < len(s); i++ {
		if s[i] < ' ' || s[i] > '~' {
			return false
		}
	}
	return s == "" || s[0] != ' ' && s[0] != '=' && s[len(s)-1] != ' '
}
