// Package reasoner turns a line of talk into an Answer.
//
//	reasoner.go  the one path: Ask, and the colon words
//	answer/      the Answer, the public contract
//	read/        text to tokens and measures
//	card/        the facts of one conversation
//	meaning/     measures to facts and wishes
//	fit/         facts to figures through calc, and the question worth asking
//	advise/      choices with reasons, cautions that apply
package reasoner

import (
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb"
	"heronlake.example/ask/reasoner/answer"
)

// Searcher finds passages. It is declared here, where it is used, so that the
// reasoner can be built and tested without an index; the only real
// implementation is index.Index, which package cmd/ask passes in.
type Searcher interface {
	Search(kb.Query) kb.Result
}

// Options is what a Reasoner works with. The zero value answers in US units,
// without notes.
type Options struct {
	Notes    *kb.Library
	Search   Searcher
	Units    unit.System
	UnitsSet bool // the person chose the units; otherwise answers follow the speaker's
}

// Reasoner answers questions. It holds no state of a conversation and may be
// shared.
type Reasoner struct{ opts Options }

// New makes a Reasoner.
func New(opts Options) *Reasoner { return &Reasoner{opts: opts} }

// Session is one conversation. It is not safe for concurrent use.
type Session struct{ r *Reasoner }

// NewSession begins a conversation that knows nothing.
func (r *Reasoner) NewSession() *Session { return &Session{r: r} }

// Ask answers one turn: plain talk, or a colon word with its argument
// (":boat", ":why FIGURE", ":undo", ":fresh", ":units us|metric").
// ":help" and ":quit" belong to the door and are not known here.
func (s *Session) Ask(line string) answer.Answer {
	a := answer.Answer{Question: line}
	a.Finish()
	return a
}
