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

// looked is how many lines at the head of a file are looked at for its headings
// and for the mark between its fields.
const looked = 12

// separator finds the mark between fields: the one that occurs most in any of the
// first lines, outside quotes. Some spreadsheets name it in a line of its own,
// "sep=;".
func separator(data []byte) (sep rune, rest []byte) {
	line, after, _ := bytes.Cut(data, []byte("\n"))
	if s, ok := strings.CutPrefix(strings.ToLower(strings.TrimSpace(string(line))), "sep="); ok && len(s) == 1 {
		return rune(s[0]), append([]byte("\n"), after...) // the blank line keeps the count of lines
	}
	sep, most := ',', 0
	for n := 0; n < looked && len(line)+len(after) > 0; n++ {
		for _, r := range []rune{',', ';', '\t'} {
			if k := outsideQuotes(line, byte(r)); k > most {
				sep, most = r, k
			}
		}
		line, after, _ = bytes.Cut(after, []byte("\n"))
	}
	return sep, data
}

func outsideQuotes(line []byte, mark byte) int {
	n, quoted := 0, false
	for _, c := range line {
		switch {
		case c == '"':
			quoted = !quoted
		case c == mark && !quoted:
			n++
		}
	}
	return n
}

// table reads a file into items. Faulty lines are named and left out; the rest
// load. Extra columns are kept by name.
func table[T any](file string, data []byte, columns []column[T], begin func(line int) T) (items []T, h heading, faults []Fault) {
	t := tableReader[T]{file: file, columns: columns, skus: map[string]int{}}
	r := t.open(data)
	if r == nil {
		return nil, h, t.faults
	}
	if h = t.header(r); len(t.faults) > 0 {
		return nil, h, t.faults
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
		if blank(rec) || sumLine(rec) || slices.Equal(rec, t.names) {
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
	return items, h, t.faults
}

// A tableReader is what is known of one file while it is read.
type tableReader[T any] struct {
	file    string
	columns []column[T]
	place   []place        // by field
	names   []string       // the line of headings
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

// header finds the line that names the columns, places them, and says which are
// extra or taken by another name.
func (t *tableReader[T]) header(r *csv.Reader) heading {
	var best heading
	var names []string
	for n := 0; n < looked; n++ {
		rec, err := r.Read()
		if err != nil {
			break
		}
		line, _ := r.FieldPos(0)
		h := headings(rec, t.columns)
		if h.line = line; n == 0 || h.known > best.known {
			best, names = h, rec
		}
		if best.known >= 2 && best.line == line {
			break // lines above it are a title
		}
	}
	if names == nil {
		t.fault(0, "", "is empty: the first line must name the columns")
		return best
	}
	t.place, t.names = best.place, names
	if best.known == 0 {
		var must []string
		for _, c := range t.columns {
			if c.required {
				must = append(must, c.name)
			}
		}
		t.fault(best.line, "", "names no column; a line of headings is needed, with at least "+strings.Join(must, ", "))
		return best
	}
	for _, c := range t.columns {
		if c.required && !slices.ContainsFunc(t.place, func(p place) bool { return p.column == c.name }) {
			t.fault(best.line, c.name, "is missing: "+c.means)
		}
	}
	for i, p := range t.place {
		if p.unit != "" && !knows(t.columns, p.column, p.unit) {
			t.fault(best.line, p.column, fmt.Sprintf("%q names a unit that is not read here; expected %s", clean(names[i]), p.column))
		}
	}
	if best.line > 1 && len(t.faults) == 0 && best.known >= 2 {
		best.notes = append([]string{fmt.Sprintf("the headings are taken from line %d", best.line)}, best.notes...)
	}
	return best
}

// fill sets an item from the fields of its line, and reports whether all are
// sound.
func (t *tableReader[T]) fill(item *T, rec []string, line int) bool {
	sound := true
	bad := func(col, text string) {
		t.fault(line, col, text)
		sound = false
	}
	if lacks := t.lacks(rec); len(lacks) > 2 {
		bad("", "holds too little; "+strings.Join(lacks, ", ")+" are empty")
		return false
	}
	for i, p := range t.place {
		if p.column == "" {
			continue
		}
		c := t.columns[p.index]
		given := ""
		if i < len(rec) {
			given = clean(rec[i])
		}
		if given == "" || blankWord(given) {
			if c.required {
				bad(c.name, empty(given)+": "+c.means)
			}
			continue
		}
		if p.unit != "" && given[len(given)-1] >= '0' && given[len(given)-1] <= '9' {
			given += " " + p.unit // as the heading says
		}
		if err := c.set(item, given, t.comma); err != nil {
			bad(c.name, err.Error()+"; expected "+c.means)
		}
		if c.name == "sku" {
			if first, twice := t.skus[given]; twice {
				bad(c.name, fmt.Sprintf("%q stands in line %d as well", given, first))
			}
			t.skus[given] = line
		}
	}
	return sound
}

func empty(given string) string {
	if given == "" {
		return "is empty"
	}
	return fmt.Sprintf("%q stands for nothing", given)
}

// lacks names the columns that must be filled in and are not.
func (t *tableReader[T]) lacks(rec []string) []string {
	var out []string
	for i, p := range t.place {
		if p.column != "" && t.columns[p.index].required && (i >= len(rec) || clean(rec[i]) == "") {
			out = append(out, p.column)
		}
	}
	return out
}

// sumLine is true for a line that adds the others up.
func sumLine(rec []string) bool {
	for _, s := range rec {
		switch strings.ToLower(strings.TrimRight(clean(s), ":")) {
		case "":
			continue
		case "total", "totals", "sum", "subtotal", "grand total":
			return true
		}
		return false
	}
	return false
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
