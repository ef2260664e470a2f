package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"
	"unicode/utf16"

	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/reasoner"
	"heronlake.example/ask/reasoner/answer"
)

// turn is one line of talk in one conversation. All doors come through here, so
// that none of them can answer otherwise than another.
func (d *desk) turn(s *reasoner.Session, line string) (a answer.Answer) {
	defer func() {
		// One question that meets a fault of the program must not take the rest of
		// a conversation or of a batch with it.
		if fault := recover(); fault != nil {
			d.failed = fmt.Errorf("a fault of this program at the question %q: %v", line, fault)
			a = unreadable(line, nil)
			a.Problems = []answer.Problem{{Kind: "unreadable", Text: "This question met a fault of the program and was left out. Say it in other words."}}
		}
	}()
	return d.answer(s, line)
}

func (d *desk) answer(s *reasoner.Session, line string) answer.Answer {
	if _, drills := s.Aside.(*drilling); !drills || strings.HasPrefix(strings.TrimSpace(line), ":") {
		line = steering(line) // a drill has words of its own without a colon
	}
	if a, ok := d.drillTurn(s, line); ok {
		return a
	}
	if word, arg, ok := doorWord(line); ok {
		for _, w := range doorWords {
			if w.word == word {
				return w.do(d, s, line, arg)
			}
		}
	}
	a := s.Ask(line)
	if d.set.Why != "" && a.Steer == "" {
		a = s.Ask(":why " + d.set.Why)
	}
	return a
}

// doorWords are the colon words that the door answers: what they do lies outside
// the conversation.
var doorWords = []struct {
	word string
	do   func(d *desk, s *reasoner.Session, line, arg string) answer.Answer
}{
	{"help", func(_ *desk, _ *reasoner.Session, line, _ string) answer.Answer { return steered(line, "help", help) }},
	{"sheet", (*desk).sheetWord},
	{"keep", (*desk).keepWord},
	{"open", (*desk).openWord},
	{"boats", (*desk).boatsWord},
	{"forget", (*desk).forgetWord},
	{"drill", (*desk).drillWord},
}

// steered is the answer to a colon word that the door answers itself.
func steered(line, word, reply string) answer.Answer {
	a := answer.Answer{Question: line, Steer: word, Reply: reply}
	a.Finish()
	return a
}

// answered is false when nothing in the question could be answered.
func answered(a answer.Answer) bool {
	if len(a.Figures) > 0 || len(a.Choices) > 0 || len(a.Passages) > 0 || len(a.Ask) > 0 ||
		len(a.Steps) > 0 || len(a.Tables) > 0 || len(a.Parts) > 0 || len(a.Changed) > 0 {
		return true
	}
	if a.Steer != "" {
		return len(a.Problems) == 0 || a.Reply != ""
	}
	if len(a.Problems) > 0 {
		return false
	}
	for _, u := range a.Understood {
		if u.New { // a fact was taken down, to be asked about later
			return true
		}
	}
	return false
}

// show writes an answer and flushes it, for a program at the other end of a pipe
// that waits for it before it asks again.
func (d *desk) show(a answer.Answer) error {
	if d.set.JSON {
		line, err := jsonLine(a)
		if err != nil {
			return fmt.Errorf("writing the answer: %w", err)
		}
		d.out.Write(line)
	} else {
		d.out.WriteString(text.Render(a, d.style))
	}
	if err := d.out.Flush(); err != nil {
		return fmt.Errorf("writing the answer: %w", err)
	}
	return nil
}

// jsonLine is the answer as one line of JSON. Characters that steer a terminal
// or turn its text round are written as escapes, which mean the same.
func jsonLine(a answer.Answer) ([]byte, error) {
	var b bytes.Buffer
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	if err := enc.Encode(a); err != nil {
		return nil, err
	}
	if bytes.IndexFunc(b.Bytes(), escaped) < 0 {
		return b.Bytes(), nil
	}
	var safe bytes.Buffer
	for _, r := range b.String() {
		if !escaped(r) {
			safe.WriteRune(r)
		} else if r < 0x10000 {
			fmt.Fprintf(&safe, `\u%04x`, r)
		} else {
			hi, lo := utf16.EncodeRune(r)
			fmt.Fprintf(&safe, `\u%04x\u%04x`, hi, lo)
		}
	}
	return safe.Bytes(), nil
}

// escaped is true for what text.Clean would replace; the line's own end stays.
func escaped(r rune) bool { return r != '\n' && text.Unsafe(r) }
