// Package reasoner turns a line of talk into an Answer.
//
//	reasoner.go  what a Reasoner is made of; a Session and its memory
//	turn.go      the one path of plain talk: read, bind, solve, advise, cite
//	topics.go    which topics a turn is about when it does not say so
//	hours.go     the batteries that a question of hours is about
//	meter.go     a meter at battery and plug against the computed drop
//	compare.go   two things named, side by side on this boat
//	shelf.go     what the shop's shelf holds for this boat
//	sold.go      the boat with a motor and a bank of the shelf
//	sheet.go     the full fitting behind a printed sheet
//	memory.go    a boat's facts taken out to be kept, and put back
//	cite.go      passages, numbered in the order in which they are cited
//	steer.go     the colon words
//	facts.go     facts taken in without talk, for a drill's scenario
//	answer/      the Answer, the public contract
//	read/        text to tokens and measures
//	card/        the facts of one conversation
//	meaning/     measures to facts and wishes
//	fit/         facts to figures through calc, and the question worth asking
//	match/       the shelf's motors held against the needs, priced as a rig
//	advise/      choices with reasons, cautions that apply, the headline
//
// Limits: one Session is one conversation about one boat at a time and is not
// safe for concurrent use. Nothing here reads a clock, a file or the
// environment.
package reasoner

import (
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb"
	"heronlake.example/ask/kb/stock"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
	"heronlake.example/ask/reasoner/match"
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
	// Shelf gives the shop's stock when an answer first needs it; nil, or a nil
	// shelf, answers without offers.
	Shelf func() *stock.Shelf
}

// Reasoner answers questions. It holds no state of a conversation and may be
// shared.
type Reasoner struct{ opts Options }

// New makes a Reasoner.
func New(opts Options) *Reasoner { return &Reasoner{opts: opts} }

// state is the conversation after one turn.
type state struct {
	card   card.Card
	topics []string
	lead   []string // those of them that were asked for last
	// proposed tells that batteries were, and day holds the facts of use that they
	// were proposed for.
	proposed bool
	day      card.Card
	fit      *fit.Fit
	offer    *match.Offer   // the shelf's motor that leads; of the last answer alone
	offers   []answer.Offer // what the shelf was said to hold; of the last answer alone
}

// mostUndo is how many turns can be taken back.
const mostUndo = 50

// Session is one conversation. It is not safe for concurrent use.
type Session struct {
	// Aside is what a door keeps with the conversation, such as a drill that goes
	// on in it. The reasoner does not touch it.
	Aside any

	r    *Reasoner
	sys  unit.System
	set  bool // the units were chosen, by option or by :units
	now  state
	past []state
}

// NewSession begins a conversation that knows nothing.
func (r *Reasoner) NewSession() *Session {
	return &Session{r: r, sys: r.opts.Units, set: r.opts.UnitsSet}
}

// Ask answers one turn: plain talk, or a colon word with its argument
// (":boat", ":why FIGURE", ":undo", ":fresh", ":units us|metric").
// ":help" and ":quit" belong to the door and are not known here.
func (s *Session) Ask(line string) answer.Answer {
	if word, arg, ok := colon(line); ok {
		return s.steer(line, word, arg)
	}
	return s.talk(line)
}

// keep makes next the present state and remembers the one before it.
func (s *Session) keep(next state) {
	// A solution is large and soon found again: only the facts are remembered.
	s.past = append(s.past, state{card: s.now.card, topics: s.now.topics, lead: s.now.lead, proposed: s.now.proposed, day: s.now.day})
	if len(s.past) > mostUndo {
		s.past = append([]state(nil), s.past[len(s.past)-mostUndo:]...)
	}
	s.now = next
}

// back takes the last change back and reports whether there was one.
func (s *Session) back() bool {
	if len(s.past) == 0 {
		return false
	}
	s.now = s.past[len(s.past)-1]
	s.past = s.past[:len(s.past)-1]
	return true
}
