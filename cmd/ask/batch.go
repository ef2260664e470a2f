package main

import (
	"container/list"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"

	"heronlake.example/ask/reasoner"
	"heronlake.example/ask/reasoner/answer"
)

// rememberedSessions is how many conversations a batch keeps open. The one that
// was silent longest is forgotten first, so that a batch of any length runs in
// constant memory.
const rememberedSessions = 256

// batch answers a file of questions, or standard input for "-": one JSON object
// a line in, one answer a line out, in the same order.
func (d *desk) batch(file string, in io.Reader) error {
	name := "standard input"
	if file != "-" {
		f, err := os.Open(file)
		if err != nil {
			return usage("", "--batch: %w", plainly("file", err))
		}
		if info, err := f.Stat(); err == nil && info.IsDir() {
			return usage("ask --batch FILE", "--batch: %s is a folder", file)
		}
		defer f.Close()
		in, name = f, file
	}
	open := newSessions(d.reasoner, rememberedSessions)
	lines := newLines(in, longestLine)
	for n := 1; ; n++ {
		line, err := lines.next()
		if err != nil && !errors.Is(err, errLineTooLong) {
			if errors.Is(err, io.EOF) {
				return d.failed
			}
			return usage("", "--batch: %s, line %d: %w", name, n, plainly("file", err))
		}
		var q query
		if err == nil {
			q, err = readQuery(line)
		}
		a := unreadable(line, err)
		switch {
		case err != nil:
		case isQuit(q.question):
			open.forget(q.session)
			a = steered(q.question, "quit", "this conversation is over")
		default:
			a = d.turn(open.get(q.session), q.question)
		}
		if n > 1 && !d.set.JSON {
			fmt.Fprintln(d.out)
		}
		if err := d.show(a); err != nil {
			return err
		}
	}
}

// query is one line of a batch.
type query struct{ question, session string }

func readQuery(line string) (query, error) {
	var object struct {
		Question *string `json:"question"`
		Session  string  `json:"session"`
	}
	if err := json.Unmarshal([]byte(line), &object); err != nil {
		var wrong *json.UnmarshalTypeError
		if errors.As(err, &wrong) {
			if wrong.Field == "" {
				return query{}, fmt.Errorf("found %s where an object is wanted", wrong.Value)
			}
			return query{}, fmt.Errorf("found %s where the text of %q is wanted", wrong.Value, wrong.Field)
		}
		return query{}, err
	}
	if object.Question == nil {
		return query{}, errors.New(`no "question" in it`)
	}
	return query{*object.Question, object.Session}, nil
}

// unreadable is the answer to a line that is no question.
func unreadable(line string, err error) answer.Answer {
	a := answer.Answer{Question: line}
	if err != nil {
		a.Problems = []answer.Problem{{
			Kind: "unreadable",
			Text: fmt.Sprintf(`this line is no question: %v; a line reads {"question": "...", "session": "..."}`, err),
		}}
		if errors.Is(err, errLineTooLong) {
			a.Problems[0].Text = fmt.Sprintf("this line is longer than a question can be: %d bytes are the most that is read", longestLine)
		}
	}
	a.Finish()
	return a
}

// sessions are the open conversations of a batch, the one spoken to last first.
type sessions struct {
	reasoner *reasoner.Reasoner
	most     int
	order    *list.List // of *conversation
	byName   map[string]*list.Element
}

type conversation struct {
	name    string
	session *reasoner.Session
}

func newSessions(r *reasoner.Reasoner, most int) *sessions {
	return &sessions{r, most, list.New(), map[string]*list.Element{}}
}

// get returns the conversation of that name, begun now if it is a new one. A
// question without a name stands alone.
func (s *sessions) get(name string) *reasoner.Session {
	if name == "" {
		return s.reasoner.NewSession()
	}
	if e, ok := s.byName[name]; ok {
		s.order.MoveToFront(e)
		return e.Value.(*conversation).session
	}
	if s.order.Len() == s.most {
		s.forget(s.order.Back().Value.(*conversation).name)
	}
	c := &conversation{name, s.reasoner.NewSession()}
	s.byName[name] = s.order.PushFront(c)
	return c.session
}

func (s *sessions) forget(name string) {
	if e, ok := s.byName[name]; ok {
		s.order.Remove(e)
		delete(s.byName, name)
	}
}
