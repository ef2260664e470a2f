package kb

import (
	"bytes"

	"github.com/yuin/goldmark/ast"
	east "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"
)

// tables makes tables of paragraphs in which a row of dashes follows a header
// (GitHub Flavored Markdown, section 4.10). The package that has this beside
// other extensions makes ready for all of them at every start of the program,
// which takes longer than many an answer.
type tables struct{}

// Transform cuts a paragraph at the line above the first row of dashes: what is
// before stays a paragraph, what follows is the table.
func (tables) Transform(p *ast.Paragraph, r text.Reader, _ parser.Context) {
	lines := p.Lines()
	for i := 1; i < lines.Len(); i++ {
		line := lines.At(i)
		columns := dashes(line.Value(r.Source()))
		if columns == 0 {
			continue
		}
		head := cells(lines.At(i-1), r.Source())
		if len(head) > columns {
			return
		}
		table := east.NewTable()
		table.AppendChild(table, east.NewTableHeader(row(head, columns)))
		for k := i + 1; k < lines.Len(); k++ {
			table.AppendChild(table, row(cells(lines.At(k), r.Source()), columns))
		}
		p.Parent().InsertAfter(p.Parent(), p, table)
		if i == 1 {
			p.Parent().RemoveChild(p.Parent(), p)
			return
		}
		lines.SetSliced(0, i-1)
		last := lines.At(i - 2)
		lines.Set(i-2, last.TrimRightSpace(r.Source()))
		return
	}
}

// dashes counts the columns of a row of dashes, 0 where a line is none.
func dashes(line []byte) int {
	if indent, _ := util.IndentWidth(line, 0); indent > 3 {
		return 0
	}
	line = bytes.TrimSpace(line)
	columns := split(line)
	for _, c := range columns {
		dashes := bytes.TrimSpace(line[c.from:c.to])
		dashes = bytes.TrimSuffix(bytes.TrimPrefix(dashes, []byte(":")), []byte(":"))
		if len(dashes) == 0 || len(bytes.Trim(dashes, "-")) > 0 {
			return 0
		}
	}
	return len(columns)
}

type stretch struct{ from, to int }

// split cuts a row at its bars, but for those behind a backslash; the bars at its
// ends part nothing.
func split(line []byte) (columns []stretch) {
	bar := func(i int) bool { return line[i] == '|' && (i == 0 || line[i-1] != '\\') }
	from, end := 0, len(line)
	if end > 0 && bar(0) {
		from = 1
	}
	if end > from && bar(end-1) {
		end--
	}
	for i := from; i < end; i++ {
		if bar(i) {
			columns, from = append(columns, stretch{from, i}), i+1
		}
	}
	if from < end {
		columns = append(columns, stretch{from, end})
	}
	return columns
}

// cells is where the cells of a row stand in the source.
func cells(line text.Segment, source []byte) []text.Segment {
	line = line.TrimLeftSpace(source)
	line = line.TrimRightSpace(source)
	var out []text.Segment
	for _, c := range split(line.Value(source)) {
		cell := text.NewSegment(line.Start+c.from, line.Start+c.to)
		cell = cell.TrimLeftSpace(source)
		out = append(out, cell.TrimRightSpace(source))
	}
	return out
}

// row makes a row of so many columns: cells too many are left out, missing ones
// are empty.
func row(cells []text.Segment, columns int) *east.TableRow {
	r := east.NewTableRow(nil)
	for i := range columns {
		c := east.NewTableCell()
		if i < len(cells) {
			c.Lines().Append(cells[i])
		}
		r.AppendChild(r, c)
	}
	return r
}
