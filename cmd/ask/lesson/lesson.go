// Package lesson lays a lesson out as a page to print: passages, a worked
// example, exercises on the same sheet, and their answers on one of their own.
//
// Limits: one HTML file that loads nothing; what it says is in the Answer.
package lesson

import (
	"bytes"
	_ "embed"
	"html/template"
	"strings"
	"sync"

	"heronlake.example/ask/reasoner/answer"
)

//go:embed lesson.html
var source string

// page is read when a lesson is first written.
var page = sync.OnceValues(func() (*template.Template, error) {
	return template.New("lesson").Funcs(template.FuncMap{
		"paragraphs": paragraphs,
		"add":        func(a, b int) int { return a + b },
		"rooms":      rooms,
	}).Parse(source)
})

// HTML is the page of an answer that holds a lesson.
func HTML(a answer.Answer) ([]byte, error) {
	var b bytes.Buffer
	t, err := page()
	if err == nil {
		err = t.Execute(&b, a)
	}
	return b.Bytes(), err
}

// leastRoom is how many lines an exercise has to be written on, one for each of
// its answers where there are more.
const leastRoom = 3

func rooms(answers []string) []struct{} { return make([]struct{}, max(leastRoom, len(answers))) }

// paragraphs parts a passage at its empty lines, and its list items from each
// other.
func paragraphs(text string) []string {
	var out []string
	for part := range strings.SplitSeq(text, "\n\n") {
		var item strings.Builder
		for line := range strings.Lines(part) {
			if strings.HasPrefix(line, "- ") && item.Len() > 0 {
				out = append(out, strings.TrimSpace(item.String()))
				item.Reset()
			}
			item.WriteString(strings.TrimSpace(line) + " ")
		}
		if t := strings.TrimSpace(item.String()); t != "" {
			out = append(out, t)
		}
	}
	return out
}
