package kb

import (
	_ "embed"
	"fmt"
	"hash/crc32"
	"strconv"
	"strings"
	"sync"
)

//go:generate go run ./prepare

// preparedText is the built-in notes as Parse reads them, written down by "go
// generate ./kb", because reading the Markdown of a dozen cited notes takes
// longer than all the rest of a first answer. A note whose file has changed
// since is read from its Markdown.
//
// It begins with a line for each note, "file checksum length", and an empty
// line. The notes follow in that order, each a head and then its passages and
// worked examples, parted by the separators that ASCII has for the purpose.
//
//go:embed prepared.txt
var preparedText string

const (
	groupMark = "\x1d" // between the head of a note, its passages and examples
	fieldMark = "\x1e" // between the fields of one of these
	itemMark  = "\x1f" // between the items of a field, and the parts of an expected figure
)

// preparedNotes finds the written form of a note, and the checksum of the file
// that it was made of, by the file's name.
var preparedNotes = sync.OnceValue(func() map[string]preparedNote {
	head, body, _ := strings.Cut(preparedText, "\n\n")
	m := make(map[string]preparedNote, 1+strings.Count(head, "\n"))
	for line := range strings.SplitSeq(head, "\n") {
		file, rest, _ := strings.Cut(line, " ")
		sum, length, _ := strings.Cut(rest, " ")
		n, err := strconv.Atoi(length)
		if err != nil || n < 0 || n > len(body) {
			break
		}
		m[file] = preparedNote{sum, body[:n]}
		body = body[n:]
	}
	return m
})

type preparedNote struct{ sum, text string }

// readBuiltin is Parse for a note that the program carries.
func readBuiltin(file string, data []byte) Note {
	if p, ok := preparedNotes()[file]; ok && p.sum == checksum(data) {
		if n, ok := readPrepared(p.text); ok {
			n.File, n.source = file, data
			return n
		}
	}
	n, _ := Parse(file, data)
	return n
}

func checksum(data []byte) string { return strconv.FormatUint(uint64(crc32.ChecksumIEEE(data)), 16) }

// Prepare writes the built-in notes down for preparedText. It fails for a note
// that is not without fault.
func Prepare() (string, error) {
	files, err := builtinFiles.ReadDir("notes")
	if err != nil {
		return "", err
	}
	var head, body strings.Builder
	for _, f := range files {
		file := "notes/" + f.Name()
		data, err := builtinFiles.ReadFile(file)
		if err != nil {
			return "", err
		}
		n, faults := Parse(file, data)
		if len(faults) > 0 {
			return "", faults[0]
		}
		text := writePrepared(n)
		fmt.Fprintln(&head, file, checksum(data), len(text))
		body.WriteString(text)
	}
	return head.String() + "\n" + body.String(), nil
}

// writePrepared writes a note of which nothing but the file is left out. The
// separators cannot be in it: Parse takes control characters out.
func writePrepared(n Note) string {
	list := func(items []string) string { return strings.Join(items, itemMark) }
	line := strconv.Itoa
	groups := []string{strings.Join([]string{n.ID, n.Title, list(n.Topics), list(n.Sources), n.Reviewed, list(n.See)}, fieldMark)}
	for _, p := range n.Passages {
		groups = append(groups, strings.Join([]string{"passage", p.ID, line(p.Line), p.Heading, p.Source, p.Text}, fieldMark))
	}
	for _, e := range n.Examples {
		fields := []string{"example", line(e.Line), e.Question}
		for _, w := range e.Want {
			fields = append(fields, list([]string{line(w.Line), w.Figure, w.Value}))
		}
		groups = append(groups, strings.Join(fields, fieldMark))
	}
	return strings.Join(groups, groupMark) + "\n"
}

// readPrepared reads what writePrepared wrote; the strings are parts of the
// text, so that nothing is copied. It is false for anything else.
func readPrepared(text string) (n Note, ok bool) {
	list := func(field string) []string {
		if field == "" {
			return nil
		}
		return strings.Split(field, itemMark)
	}
	ok = true
	line := func(field string) int {
		i, err := strconv.Atoi(field)
		ok = ok && err == nil
		return i
	}
	groups := strings.Split(strings.TrimSuffix(text, "\n"), groupMark)
	n.Passages = make([]Passage, 0, len(groups)-1)
	for i, group := range groups {
		f := strings.Split(group, fieldMark)
		switch {
		case i == 0 && len(f) == 6:
			n.ID, n.Title, n.Topics, n.Sources, n.Reviewed, n.See = f[0], f[1], list(f[2]), list(f[3]), f[4], list(f[5])
		case i > 0 && len(f) == 6 && f[0] == "passage":
			n.Passages = append(n.Passages, Passage{ID: f[1], Line: line(f[2]), Heading: f[3], Source: f[4], Text: f[5],
				Note: n.ID, Title: n.Title, Topics: n.Topics})
		case i > 0 && len(f) > 2 && f[0] == "example":
			e := Example{Line: line(f[1]), Question: f[2]}
			for _, want := range f[3:] {
				w := strings.Split(want, itemMark)
				if len(w) != 3 {
					return n, false
				}
				e.Want = append(e.Want, Expected{Line: line(w[0]), Figure: w[1], Value: w[2]})
			}
			n.Examples = append(n.Examples, e)
		default:
			return n, false
		}
	}
	return n, ok
}
