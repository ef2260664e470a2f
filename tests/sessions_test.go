package tests

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// TestSessions plays the conversations of sessions/, as README.md there
// describes them, through the pipe.
func TestSessions(t *testing.T) {
	files, err := filepath.Glob("sessions/*.txt")
	if err != nil {
		t.Fatal(err)
	}
	played := 0
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		for i, s := range parseSessions(string(data)) {
			played++
			t.Run(strings.TrimSuffix(filepath.Base(file), ".txt"), func(t *testing.T) {
				playSession(t, file, i+1, s)
			})
		}
	}
	if played < 5 {
		t.Errorf("only %d sessions were found", played)
	}
}

// turn is one question with the lines that its answer must and must not hold.
type turn struct {
	line     int
	question string
	holds    []string
	lacks    []string
}

// parseSessions reads sessions that are divided by a line of dashes.
func parseSessions(text string) [][]turn {
	var all [][]turn
	var now []turn
	end := func() {
		if len(now) > 0 {
			all, now = append(all, now), nil
		}
	}
	n := 0
	for l := range strings.Lines(text) {
		n++
		l = strings.TrimRight(l, "\r\n")
		expected, indented := strings.CutPrefix(l, "\t")
		switch {
		case strings.HasPrefix(l, "---"):
			end()
		case strings.TrimSpace(l) == "" || strings.HasPrefix(l, "#"):
		case !indented:
			now = append(now, turn{line: n, question: l})
		case len(now) == 0:
		default:
			t := &now[len(now)-1]
			if lacking, ok := strings.CutPrefix(expected, "! "); ok {
				t.lacks = append(t.lacks, lacking)
			} else {
				t.holds = append(t.holds, expected)
			}
		}
	}
	end()
	return all
}

// playSession asks the turns up to each one in a fresh program, so that the last
// answer printed is that turn's.
func playSession(t *testing.T, file string, number int, turns []turn) {
	before := ""
	input := ""
	for _, q := range turns {
		input += q.question + "\n"
		out, _ := ask(t, nil, input)
		reply := strings.TrimPrefix(out, before)
		if !strings.HasPrefix(out, before) {
			t.Errorf("%s:%d: session %d: an earlier answer changed", file, q.line, number)
		}
		before = out
		flat := strings.Join(strings.Fields(reply), " ")
		for _, want := range q.holds {
			if !holds(flat, want) {
				t.Errorf("%s:%d: %q: the answer does not hold %q:\n%s", file, q.line, q.question, want, reply)
			}
		}
		for _, no := range q.lacks {
			if holds(flat, no) {
				t.Errorf("%s:%d: %q: the answer holds %q:\n%s", file, q.line, q.question, no, reply)
			}
		}
		if len(q.holds)+len(q.lacks) == 0 {
			t.Errorf("%s:%d: %q: nothing is expected of this answer", file, q.line, q.question)
		}
		if lines := strings.Count(strings.TrimSpace(reply), "\n") + 1; lines > 40 && !strings.HasPrefix(q.question, ":") {
			t.Errorf("%s:%d: %q: the answer has %d lines", file, q.line, q.question, lines)
		}
	}
}

// holds compares words: how an answer is broken into lines does not matter.
func holds(flat, want string) bool {
	return strings.Contains(flat, strings.Join(strings.Fields(want), " "))
}
