package lesson

import (
	"strings"
	"testing"

	"heronlake.example/ask/reasoner/answer"
)

// What a note or a scenario says is text on the page, never markup, and the page
// loads nothing.
func TestPageIsTextAlone(t *testing.T) {
	nasty := `<script>alert(1)</script> <img src="https://x.example/">`
	data, err := HTML(answer.Answer{Headline: nasty,
		Passages: []answer.Passage{{N: 1, Heading: nasty, Text: "one\ntwo\n\n- three\n- four " + nasty, Source: nasty}},
		Steps:    []answer.Step{{Label: nasty, Result: nasty, Formula: nasty, Working: "1 x 2"}},
		Lesson:   &answer.Lesson{Example: answer.Exercise{Says: nasty, Answers: []string{nasty}}, Exercises: []answer.Exercise{{Says: nasty, Answers: []string{nasty}}}}})
	if err != nil {
		t.Fatal(err)
	}
	page := string(data)
	for _, bad := range []string{"<script", "<img", "src=\"http", "<link"} {
		if strings.Contains(page, bad) {
			t.Errorf("the page holds %q", bad)
		}
	}
	for _, want := range []string{"<p>one two</p>", "<p>- three</p>", "= 1 x 2", "Exercise 1", "&lt;script&gt;"} {
		if !strings.Contains(page, want) {
			t.Errorf("the page lacks %q", want)
		}
	}
}
