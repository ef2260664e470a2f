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
	fault := func(line int, col, text string) {
		faults = append(faults, Fault{file, line, col, text})
	}
	if len(data) > MaxBytes {
		fault(0, "", fmt.Sprintf("is larger than %d MB", MaxBytes>>20))
		return
	}
	data, err := decode(data)
	if err != nil || bytes.IndexByte(data, 0) >= 0 {
		fault(0, "", "is no text file: save it as CSV")
		return
	}
	sep, data := separator(data)
	r := csv.NewReader(bytes.NewReader(data))
	r.Comma, r.FieldsPerRecord, r.LazyQuotes, r.TrimLeadingSpace = sep, -1, true, sep != '\t'
	header, err := r.Read()
	if err != nil {
		fault(0, "", "is empty: the first line must name the columns")
		return
	}
	place, extra := headings(header, columns)
	for _, c := range columns {
		if c.required && !slices.Contains(place, c.name) {
			fault(1, c.name, "is missing: "+c.means)
		}
	}
	if len(faults) > 0 {
		return nil, extra, faults
	}
	seen := map[string]int{}
	for rows := 0; ; rows++ {
		rec, err := r.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			fault(parseLine(err), "", "cannot be read: "+cause(err))
			continue
		}
		line, _ := r.FieldPos(0)
		if blank(rec) {
			continue
		}
		if rows >= MaxRows {
			fault(line, "", fmt.Sprintf("has more than %d lines; the rest is left out", MaxRows))
			break
		}
		item, bad := begin(line), false
		for i, name := range place {
			if name == "" {
				continue
			}
			text := ""
			if i < len(rec) {
				text = clean(rec[i])
			}
			c := columns[slices.IndexFunc(columns, func(c column[T]) bool { return c.name == name })]
			if text == "" {
				if c.required {
					fault(line, c.name, "is empty: "+c.means)
					bad = true
				}
				continue
			}
			if err := c.set(&item, text, sep == ';'); err != nil {
				fault(line, c.name, err.Error()+"; expected "+c.means)
				bad = true
			}
			if c.name == "sku" {
				if first, twice := seen[text]; twice {
					fault(line, c.name, fmt.Sprintf("%q stands in line %d as well", text, first))
					bad = true
				}
				seen[text] = line
			}
		}
		if !bad {
			items = append(items, item)
		}
	}
	return items, extra, faults
}

// headings matches the header with the known columns, forgiving case, blanks
// and hyphens; unknown ones are extra.
func headings[T any](header []string, columns []column[T]) (place, extra []string) {
	flat := func(s string) string {
		return strings.NewReplacer(" ", "_", "-", "_").Replace(strings.ToLower(clean(s)))
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
