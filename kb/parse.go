package kb

import (
	"bytes"
	"fmt"
	"path"
	"slices"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"
	"go.yaml.in/yaml/v3"
)

// Bounds of a note in bytes: the file, its front matter, and a stretch without
// an empty line. Markdown that is nested or opened without end takes time with
// the square of the last.
const (
	maxNote    = 64 << 10
	maxFront   = 8 << 10
	maxStretch = 16 << 10
)

// front is what may stand between the two lines of dashes.
type front struct {
	ID       string   `yaml:"id"`
	Title    string   `yaml:"title"`
	Topics   []string `yaml:"topics"`
	Sources  []string `yaml:"sources"`
	Reviewed string   `yaml:"reviewed"`
	See      []string `yaml:"see"`
}

// Parse reads one note. The front matter may be missing: the id is then the
// file's name and the title the first heading. The faults name what stands in
// the way of reading it as meant; the note holds what could be read all the same.
func Parse(name string, data []byte) (Note, []Fault) { return parse(name, data, false) }

// parse reads a note of the handbook or of a shop, whose front matter may hold
// what other programs put there.
func parse(name string, data []byte, shop bool) (Note, []Fault) {
	n := Note{File: name, ID: Slug(strings.TrimSuffix(path.Base(name), ".md"))}
	if fault := unreadable(name, data); fault != nil {
		return n, []Fault{*fault}
	}
	data = clean(data)
	n.source = data
	var faults []Fault
	fault := func(line int, format string, args ...any) {
		faults = append(faults, Fault{name, line, fmt.Sprintf(format, args...)})
	}

	head, body, first := cutFront(data)
	var f front
	if len(head) > maxFront {
		fault(1, "front matter is longer than %d bytes", maxFront)
	} else if len(head) > 0 {
		d := yaml.NewDecoder(bytes.NewReader(head))
		d.KnownFields(!shop)
		if err := d.Decode(&f); err != nil {
			line, text := yamlFault(err)
			fault(line+1, "front matter: %s", text) // line 1 is the dashes
		}
	}
	if f.ID != "" {
		if n.ID = Slug(f.ID); n.ID != f.ID {
			fault(1, "id %q: write it in small letters, digits and hyphens", f.ID)
		}
	}
	if n.ID == "" {
		fault(0, "no id; name the file in letters and digits")
	}
	n.Title, n.Topics, n.Sources, n.Reviewed, n.See = f.Title, f.Topics, f.Sources, f.Reviewed, f.See

	r := newReader(&n, shield(body), first, fault)
	r.read(markdown().Parse(text.NewReader(r.body)))
	if shop {
		n.makeShop()
	}
	return n, faults
}

// markdown is plain CommonMark with tables.
var markdown = sync.OnceValue(func() parser.Parser {
	return parser.NewParser(
		parser.WithBlockParsers(parser.DefaultBlockParsers()...),
		parser.WithInlineParsers(parser.DefaultInlineParsers()...),
		parser.WithParagraphTransformers(append(parser.DefaultParagraphTransformers(), util.Prioritized(tables{}, 200))...),
		parser.WithHeadingAttribute())
})

// unreadable names what makes a file no note at all.
func unreadable(name string, data []byte) *Fault {
	switch {
	case len(data) > maxNote:
		return &Fault{name, 0, fmt.Sprintf("longer than %d KiB; a note is a page or two", maxNote>>10)}
	case longestStretch(data) > maxStretch:
		return &Fault{name, 0, fmt.Sprintf("holds more than %d KiB without an empty line", maxStretch>>10)}
	case bytes.IndexByte(data, 0) >= 0:
		return &Fault{name, 1 + bytes.Count(data[:bytes.IndexByte(data, 0)], []byte("\n")), "holds a zero byte; a note is plain text"}
	case !utf8.Valid(data):
		i := 0
		for i < len(data) {
			r, size := utf8.DecodeRune(data[i:])
			if r == utf8.RuneError && size == 1 {
				break
			}
			i += size
		}
		return &Fault{name, 1 + bytes.Count(data[:i], []byte("\n")), "not UTF-8 text; save it as UTF-8"}
	}
	return nil
}

// longestStretch is the length of the longest run of lines that are not empty.
func longestStretch(data []byte) int {
	longest, run := 0, 0
	for line := range bytes.Lines(data) {
		run += len(line)
		if len(bytes.TrimSpace(line)) == 0 {
			run = 0
		}
		longest = max(longest, run)
	}
	return longest
}

// clean takes out what could do harm on a terminal or hide what is written, and
// the private characters that stand for others in here. Lines keep their
// numbers.
func clean(data []byte) []byte {
	data = bytes.ReplaceAll(data, []byte("\r\n"), []byte("\n"))
	return bytes.Map(func(r rune) rune {
		if unicode.Is(unicode.Co, r) {
			return -1
		}
		return shown(r)
	}, data)
}

// shown maps a character to itself or to what may be shown in its place: a
// space for another kind of line end, nothing for control characters, byte
// order marks and marks that turn the direction of writing.
func shown(r rune) rune {
	switch {
	case r == '\n' || r == '\t':
		return r
	case r == '\r' || r == '\f' || r == '\v' || r == '\u0085' || r == '\u2028' || r == '\u2029':
		return ' '
	case unicode.IsControl(r), unicode.Is(unicode.Cf, r), r == utf8.RuneError:
		return -1
	}
	return r
}

// cutFront parts the front matter from the text and gives the line on which the
// text begins.
func cutFront(data []byte) (head, body []byte, first int) {
	open := []byte("---\n")
	if !bytes.HasPrefix(data, open) {
		return nil, data, 1
	}
	rest := data[len(open):]
	if bytes.HasPrefix(rest, open) {
		return nil, rest[len(open):], 3
	}
	end := bytes.Index(rest, []byte("\n---\n"))
	if end < 0 {
		return nil, data, 1 // a rule, not front matter
	}
	head = rest[:end+1]
	return head, rest[end+len("\n---\n"):], 3 + bytes.Count(head, []byte("\n"))
}

// yamlFault parts the line number from the text of an error of the YAML reader.
func yamlFault(err error) (line int, text string) {
	text = strings.TrimPrefix(err.Error(), "yaml: ")
	text = strings.TrimSpace(strings.TrimPrefix(text, "unmarshal errors:"))
	text, _, _ = strings.Cut(text, "\n")
	if n, rest := 0, ""; true {
		if c, _ := fmt.Sscanf(text, "line %d:%s", &n, &rest); c >= 1 {
			_, text, _ = strings.Cut(text, ": ")
			line = n
		}
	}
	return line, text
}

// Slug is a heading as part of an id: lower case letters and digits, with a
// hyphen for each run of anything else.
func Slug(s string) string {
	var b strings.Builder
	gap := false
	for _, r := range strings.ToLower(s) {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			if gap && b.Len() > 0 {
				b.WriteByte('-')
			}
			gap = false
			b.WriteRune(r)
			continue
		}
		gap = gap || r != '\'' && r != '\u2019'
	}
	return b.String()
}

// reader turns the tree of a Markdown file into passages.
type reader struct {
	note  *Note
	body  []byte // shielded
	first int    // the line of the file on which body begins
	lines []int  // where in body each line begins
	fault func(line int, format string, args ...any)
	open  *Passage
	text  []string // blocks of the open passage
}

func newReader(n *Note, body []byte, first int, fault func(int, string, ...any)) *reader {
	r := &reader{note: n, body: body, first: first, fault: fault}
	at := 0
	for line := range bytes.Lines(body) {
		r.lines = append(r.lines, at)
		at += len(line)
	}
	return r
}

// read walks the blocks at the top of the file.
func (r *reader) read(doc ast.Node) {
	titled := false
	for b := doc.FirstChild(); b != nil; b = b.NextSibling() {
		h, isHeading := b.(*ast.Heading)
		switch {
		case isHeading && !titled && h.Level == 1 && r.open == nil:
			titled = true
			if title := r.inline(h); r.note.Title == "" {
				r.note.Title = title
			}
		case isHeading && h.Level <= 2:
			r.begin(r.inline(h), r.line(h))
		case isHeading:
			r.add(b, r.inline(h))
		default:
			r.block(b)
		}
	}
	r.end()
	if r.note.Title == "" {
		r.note.Title = strings.ReplaceAll(r.note.ID, "-", " ")
	}
	for i := range r.note.Passages {
		p := &r.note.Passages[i]
		p.Title = r.note.Title
		if p.Heading == "" {
			p.Heading = r.note.Title
		}
		p.Note, p.Topics = r.note.ID, r.note.Topics
		p.ID = r.note.ID + "#" + Slug(p.Heading)
	}
}

// block adds one block to the open passage, or takes a worked example aside.
func (r *reader) block(b ast.Node) {
	if code, ok := b.(*ast.FencedCodeBlock); ok && string(code.Language(r.body)) == "example" {
		r.example(code)
		return
	}
	r.add(b, r.plain(b))
}

func (r *reader) add(b ast.Node, text string) {
	if text == "" {
		return
	}
	if r.open == nil {
		r.begin("", r.line(b))
	}
	r.text = append(r.text, text)
}

func (r *reader) begin(heading string, line int) {
	r.end()
	r.open = &Passage{Heading: heading, Line: line}
}

// end closes the open passage: its last block, if it begins with "Source:", is
// what the passage rests on.
func (r *reader) end() {
	if r.open == nil {
		return
	}
	r.text, r.open.Source = cutSource(r.text)
	r.open.Text = unshield(strings.Join(r.text, "\n\n"))
	r.open.Source = unshield(r.open.Source)
	r.note.Passages = append(r.note.Passages, *r.open)
	r.open, r.text = nil, nil
}

// cutSource takes the source off the end of a passage, also where it was
// written without an empty line before it.
func cutSource(blocks []string) (rest []string, source string) {
	if len(blocks) == 0 {
		return nil, ""
	}
	last := blocks[len(blocks)-1]
	for _, mark := range []string{"Source: ", "Sources: "} {
		at := strings.LastIndex(last, mark)
		if at == 0 {
			return blocks[:len(blocks)-1], strings.TrimSpace(last[len(mark):])
		}
		if at > 0 && strings.ContainsRune("\n ", rune(last[at-1])) {
			return append(blocks[:len(blocks)-1:len(blocks)-1], strings.TrimSpace(last[:at])), strings.TrimSpace(last[at+len(mark):])
		}
	}
	return blocks, ""
}

// example reads a worked example: "ask: a question", then "figure: value unit".
func (r *reader) example(code *ast.FencedCodeBlock) {
	e := Example{Line: r.line(code)}
	lines := code.Lines()
	for i := range lines.Len() {
		seg := lines.At(i)
		line := r.lineAt(seg.Start)
		key, value, ok := strings.Cut(strings.TrimSpace(string(seg.Value(r.body))), ":")
		key, value = strings.TrimSpace(key), strings.TrimSpace(value)
		switch {
		case !ok && key == "":
		case !ok || value == "":
			r.fault(line, "worked example: %q is neither \"ask: question\" nor \"figure: value unit\"", key)
		case key == "ask" && e.Question == "":
			e.Question = value
		case key == "ask":
			r.fault(line, "worked example: a second question; give it a block of its own")
		default:
			e.Want = append(e.Want, Expected{key, value, line})
		}
	}
	if e.Question == "" || len(e.Want) == 0 {
		r.fault(e.Line, "worked example: needs a line \"ask: question\" and at least one figure")
		return
	}
	r.note.Examples = append(r.note.Examples, e)
}

// line is the line of the file on which a block begins.
func (r *reader) line(b ast.Node) int {
	at := -1
	_ = ast.Walk(b, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		switch n := n.(type) {
		case *ast.FencedCodeBlock:
			if n.Info != nil {
				at = n.Info.Segment.Start
			}
		case *ast.Text:
			at = n.Segment.Start
		}
		if at < 0 && n.Type() == ast.TypeBlock && n.Lines().Len() > 0 {
			at = n.Lines().At(0).Start
		}
		if at >= 0 {
			return ast.WalkStop, nil
		}
		return ast.WalkContinue, nil
	})
	return r.lineAt(max(at, 0))
}

func (r *reader) lineAt(offset int) int {
	i, exact := slices.BinarySearch(r.lines, offset)
	if exact || i == 0 {
		i++
	}
	return r.first + i - 1
}
