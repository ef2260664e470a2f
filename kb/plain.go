package kb

import (
	"bytes"
	"strconv"
	"strings"

	"github.com/yuin/goldmark/ast"
	east "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/util"
)

// Inside a reference these characters would be taken for Markdown; private
// characters stand for them while the file is parsed.
const (
	shieldedBar   = '\uE000' // | parts the cells of a table
	shieldedBreak = '\uE001' // a line break
	shieldedStar  = '\uE002'
	shieldedLow   = '\uE003' // _
)

// shield hides the characters of references from the Markdown parser. The text
// keeps its lines.
func shield(body []byte) []byte {
	if !bytes.Contains(body, []byte("{{")) {
		return body
	}
	var out bytes.Buffer
	for {
		open := bytes.Index(body, []byte("{{"))
		if open < 0 {
			break
		}
		end := bytes.Index(body[open:], []byte("}}"))
		if end < 0 {
			break
		}
		end += open
		out.Write(body[:open])
		for _, r := range string(body[open:end]) {
			switch r {
			case '|':
				r = shieldedBar
			case '*':
				r = shieldedStar
			case '_':
				r = shieldedLow
			}
			out.WriteRune(r)
		}
		body = body[end:]
	}
	out.Write(body)
	return out.Bytes()
}

var unshielder = strings.NewReplacer(string(shieldedBar), "|", string(shieldedStar), "*", string(shieldedLow), "_")

func unshield(s string) string { return unshielder.Replace(s) }

// plain writes a block as plain text: paragraphs in one line, a line to each
// item of a list and each row of a table, code as it stands. HTML gives nothing.
func (r *reader) plain(b ast.Node) string {
	switch b := b.(type) {
	case *ast.Paragraph, *ast.TextBlock, *ast.Heading:
		return r.inline(b)
	case *ast.List:
		return r.list(b, "")
	case *east.Table:
		return r.table(b)
	case *ast.FencedCodeBlock, *ast.CodeBlock:
		return strings.TrimRight(string(b.Lines().Value(r.body)), "\n")
	case *ast.HTMLBlock:
		r.note.html = append(r.note.html, r.line(b))
		return ""
	case *ast.ThematicBreak:
		return ""
	}
	var blocks []string
	for c := b.FirstChild(); c != nil; c = c.NextSibling() {
		if c.Type() == ast.TypeBlock {
			if t := r.plain(c); t != "" {
				blocks = append(blocks, t)
			}
		}
	}
	return strings.Join(blocks, "\n\n")
}

// list writes "- item" or "1. item" lines, inner lists indented below.
func (r *reader) list(l *ast.List, indent string) string {
	var lines []string
	number := l.Start
	for item := l.FirstChild(); item != nil; item = item.NextSibling() {
		mark := "- "
		if l.IsOrdered() {
			mark = strconv.Itoa(number) + ". "
			number++
		}
		said := false
		for c := item.FirstChild(); c != nil; c = c.NextSibling() {
			if inner, ok := c.(*ast.List); ok {
				lines = append(lines, r.list(inner, indent+"  "))
				continue
			}
			t := r.plain(c)
			if t == "" {
				continue
			}
			if said {
				mark = strings.Repeat(" ", len(mark))
			}
			lines = append(lines, indent+mark+t)
			said = true
		}
	}
	return strings.Join(lines, "\n")
}

// table writes a row to a line, its cells parted by bars.
func (r *reader) table(t *east.Table) string {
	var lines []string
	for row := t.FirstChild(); row != nil; row = row.NextSibling() {
		var cells []string
		for c := row.FirstChild(); c != nil; c = c.NextSibling() {
			cells = append(cells, r.inline(c))
		}
		lines = append(lines, strings.Join(cells, " | "))
	}
	return strings.Join(lines, "\n")
}

// inline writes the words of a block, emphasis and links reduced to their text.
func (r *reader) inline(b ast.Node) string {
	var out strings.Builder
	_, inTable := b.(*east.TableCell)
	_ = ast.Walk(b, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch n := n.(type) {
		case *ast.Text:
			t := n.Segment.Value(r.body)
			if inTable && n.IsRaw() {
				t = bytes.ReplaceAll(t, []byte(`\|`), []byte("|")) // the bar of code in a cell
			}
			out.Write(plainText(t, n.IsRaw()))
			if n.SoftLineBreak() || n.HardLineBreak() {
				out.WriteByte(' ')
			}
		case *ast.String:
			out.Write(n.Value)
		case *ast.AutoLink:
			out.Write(n.Label(r.body))
		case *ast.RawHTML:
			r.note.html = append(r.note.html, r.lineAt(n.Segments.At(0).Start))
			return ast.WalkSkipChildren, nil
		}
		return ast.WalkContinue, nil
	})
	return strings.Join(strings.Fields(out.String()), " ")
}

// plainText resolves backslashes and entities, as a renderer would.
func plainText(t []byte, raw bool) []byte {
	if raw {
		return t
	}
	return bytes.Map(shown, util.ResolveEntityNames(util.ResolveNumericReferences(util.UnescapePunctuations(t))))
}
