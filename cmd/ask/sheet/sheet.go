// Package sheet turns an Answer into the fit sheet that a customer takes home:
// one HTML file that prints on two pages of A4 or Letter, or Markdown.
//
//	sheet.go     the two forms
//	page.go      what stands on the sheet, the same for both
//	room.go      how much of it has room on two pages
//	groups.go    figures gathered by what they settle
//	side.go      bow, mount, waterline and shaft from the side, to scale
//	chart.go     a curve with its marks: thrust against wind, hours against throttle
//	wiring.go    the bank with breaker, gauge and plug as a schematic
//	markdown.go  the Markdown form
//	templates/   page and pictures
//
// Limits: everything comes from the Answer; nothing is computed but where a line
// is drawn. A picture whose figures are not known is left out. What would not
// fit on two pages is cut at a count and the sheet says how much was cut.
// Markdown has no pictures: it gives points of the curves instead.
package sheet

import (
	"bytes"
	"embed"
	"fmt"
	"html/template"
	"strings"
	"sync"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/reasoner/answer"
)

// Options are what an Answer does not say.
type Options struct {
	Units unit.System // of the axes of the charts; all else is worded in the Answer
}

//go:embed templates/*.html
var files embed.FS

// templates are read when a sheet is first written; most answers need none.
var templates = sync.OnceValues(func() (*template.Template, error) {
	return template.New("").ParseFS(files, "templates/*.html")
})

// HTML writes the sheet as one file that refers to nothing outside itself. The
// error is a fault of the templates; any Answer can be written.
func HTML(a answer.Answer, opts Options) ([]byte, error) {
	var b bytes.Buffer
	pages, err := templates()
	if err != nil {
		return nil, fmt.Errorf("fit sheet: %w", err)
	}
	if err := pages.ExecuteTemplate(&b, "page.html", fitting(a, opts)); err != nil {
		return nil, fmt.Errorf("fit sheet: %w", err)
	}
	return b.Bytes(), nil
}

// tidy makes text from outside harmless: control and direction marks go, white
// space of any kind becomes one blank, and what is longer than a line can hold
// is cut. What means something to HTML or Markdown is escaped where it is
// written.
func tidy(s string) string { return cut(s, longestText) }

const longestText = 400

func cut(s string, most int) string {
	s = strings.Join(strings.Fields(strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || r == '\t' || r == '\r':
			return ' '
		case text.Unsafe(r):
			return -1
		}
		return r
	}, s)), " ")
	if runes := []rune(s); len(runes) > most {
		return strings.TrimSpace(string(runes[:most-1])) + "\u2026"
	}
	return s
}
