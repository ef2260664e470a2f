package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"strings"
	"testing"
	"unicode/utf8"

	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/reasoner"
	"heronlake.example/ask/reasoner/answer"
)

func TestSessionsAreCapped(t *testing.T) {
	s := newSessions(reasoner.New(reasoner.Options{}), 3)
	first := s.get("a")
	s.get("b")
	s.get("c")
	if s.get("a") != first {
		t.Error("an open conversation was begun anew")
	}
	s.get("d") // b was silent longest
	if s.get("a") != first {
		t.Error("the conversation spoken to last was forgotten")
	}
	if _, open := s.byName["b"]; open || len(s.byName) != 3 || s.order.Len() != 3 {
		t.Errorf("open: %d by name, %d in order, b still open: %v; want 3, 3, false", len(s.byName), s.order.Len(), open)
	}
	if s.get("") == s.get("") {
		t.Error("two questions without a session share one")
	}
	s.forget("a")
	if s.get("a") == first {
		t.Error("a conversation that was left goes on")
	}
}

func TestLinesPassOverTheTooLong(t *testing.T) {
	long := strings.Repeat("x", 9000)
	l := newLines(strings.NewReader("one\r\n"+long+"\n\nthree\n"+long), 100)
	want := []struct {
		line string
		err  error
	}{{"one", nil}, {"", errLineTooLong}, {"", nil}, {"three", nil}, {"", errLineTooLong}, {"", io.EOF}, {"", io.EOF}}
	for i, w := range want {
		line, err := l.next()
		if line != w.line || !errors.Is(err, w.err) {
			t.Errorf("line %d: %q, %v; want %q, %v", i+1, line, err, w.line, w.err)
		}
	}
	l = newLines(strings.NewReader(strings.Repeat("y", 100)), 100)
	if line, err := l.next(); len(line) != 100 || err != nil {
		t.Errorf("a last line of the limit's length without an end: %d bytes, %v", len(line), err)
	}
}

func TestAnswered(t *testing.T) {
	tests := []struct {
		name string
		a    answer.Answer
		want bool
	}{
		{"nothing", answer.Answer{}, false},
		{"out of scope", answer.Answer{Headline: "no", Problems: []answer.Problem{{Kind: "out-of-scope"}}}, false},
		{"a question back", answer.Answer{Ask: []answer.Ask{{}}, Problems: []answer.Problem{{Kind: "ambiguous"}}}, true},
		{"a figure beside a problem", answer.Answer{Figures: []answer.Figure{{}}, Problems: []answer.Problem{{}}}, true},
		{"a passage", answer.Answer{Passages: []answer.Passage{{}}}, true},
		{"a fact taken down", answer.Answer{Understood: []answer.Understood{{Slot: "boat.length", New: true}}}, true},
		{"nothing new", answer.Answer{Understood: []answer.Understood{{Slot: "boat.length"}}}, false},
		{"undo", answer.Answer{Steer: "undo", Reply: "done"}, true},
		{"why of no figure", answer.Answer{Steer: "why", Problems: []answer.Problem{{}}}, false},
	}
	for _, test := range tests {
		if got := answered(test.a); got != test.want {
			t.Errorf("%s: %v, want %v", test.name, got, test.want)
		}
	}
}

func TestJSONLineIsHarmlessAndTheSame(t *testing.T) {
	a := answer.Answer{Question: "<b> \x1b[31m \u009b \u202e \u2066 \U000e0001 \U0001f6f6 ° \x7f", Headline: "a\nb"}
	a.Finish()
	line, err := jsonLine(a)
	if err != nil {
		t.Fatal(err)
	}
	if bytes.Count(line, []byte("\n")) != 1 || !bytes.HasSuffix(line, []byte("\n")) {
		t.Errorf("not one line: %q", line)
	}
	for _, r := range strings.TrimSuffix(string(line), "\n") {
		if text.Unsafe(r) {
			t.Errorf("%U is written as it is", r)
		}
	}
	var back answer.Answer
	if err := json.Unmarshal(line, &back); err != nil {
		t.Fatal(err)
	}
	if back.Question != a.Question || back.Headline != a.Headline {
		t.Errorf("read back %q, %q; want %q, %q", back.Question, back.Headline, a.Question, a.Headline)
	}
}

// FuzzBatchLine: whatever stands on a line, it gives one answer of one line, and
// either a question or a reason why it is none.
func FuzzBatchLine(f *testing.F) {
	for _, seed := range []string{
		`{"question": "16 ft jon", "session": "heron"}`, `{"question": 7}`, `[]`, ``, `null`, `{"question":null}`,
		`{"QUESTION": "x"}`, `{"question": "\ud800"}`, "{\"question\": \"\xff\"}", `{"question": "a"} b`, `{"a":{"a":{"a":[[[[`,
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, line string) {
		q, err := readQuery(line)
		a := unreadable(line, err)
		if err == nil {
			a.Question = q.question
		} else if len(a.Problems) != 1 || a.Problems[0].Kind != "unreadable" {
			t.Errorf("%q is refused without a reason", line)
		}
		out, err := jsonLine(a)
		if err != nil {
			t.Fatal(err)
		}
		if bytes.Count(out, []byte("\n")) != 1 || !utf8.Valid(out) || !json.Valid(out) {
			t.Errorf("%q gives %q", line, out)
		}
		if page := text.Render(a, text.Style{}); page == "" {
			t.Errorf("%q gives an empty page", line)
		}
	})
}

func TestSettingsRowsAreComplete(t *testing.T) {
	for _, row := range settingRows {
		if !strings.Contains(help, row.name) {
			t.Errorf("help does not name the setting %s", row.name)
		}
	}
	for i, l := range strings.Split(help, "\n") {
		if n := utf8.RuneCountInString(l); n > text.Widest {
			t.Errorf("help.txt:%d has %d columns", i+1, n)
		}
	}
	for _, w := range colonWords {
		if !strings.Contains(help, strings.Fields(w)[0]) {
			t.Errorf("help does not name %s", w)
		}
	}
}

// TestFaultOfTheProgramStaysWithItsQuestion lets a turn run into a drill that was
// never begun.
func TestFaultOfTheProgramStaysWithItsQuestion(t *testing.T) {
	var out strings.Builder
	d, err := openDesk(settings{JSON: true, Stock: noShelf}, &out, &out)
	if err != nil {
		t.Fatal(err)
	}
	s := d.reasoner.NewSession()
	s.Aside = &drilling{}
	if a := d.turn(s, "48 inches"); len(a.Problems) != 1 || answered(a) {
		t.Errorf("the answer is %+v", a.Problems)
	}
	if err := d.batch("-", strings.NewReader(`{"question": "16 ft jon, two aboard"}`+"\n")); status(err) != statusFailed || !strings.Contains(err.Error(), "48 inches") {
		t.Errorf("status %d, %v", status(err), err)
	}
	if !strings.Contains(out.String(), "thrust.need") {
		t.Errorf("the next question is not answered:\n%s", out.String())
	}
}
