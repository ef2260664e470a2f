package reasoner

import (
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/meaning"
)

// Take answers the topics for a boat whose facts are known as values, not as
// talk. The facts replace what the session knew, so that a later turn, such as
// ":why shaft.need", is about this boat; :undo brings the boat before back.
func (s *Session) Take(facts []card.Fact, topics ...string) answer.Answer {
	before := s.now
	c := card.Card{Turn: before.card.Turn + 1}
	for _, f := range facts {
		f.Turn = c.Turn
		c = c.And(f)
	}
	s.keep(state{card: c, topics: topics, proposed: sizes(topics), day: c})
	return s.finish(s.answerCard(answer.Answer{}, before, topics, meaning.Wish{}))
}

// Passages are the passages of a note as a reader of these units sees them, the
// most telling first; none where there are no notes or no such note.
func (r *Reasoner) Passages(note string, sys unit.System) []answer.Passage {
	if r.opts.Notes == nil {
		return nil
	}
	var out []answer.Passage
	for _, p := range r.opts.Notes.NotePassages(note) {
		if text, err := kb.Render(p, sys); err == nil {
			out = append(out, answer.Passage{N: len(out) + 1, Note: p.Note, Title: p.Title, Heading: p.Heading, Text: text, Source: p.Source, Shop: p.Shop})
		}
	}
	return out
}

// Units are the units in which answers begin.
func (r *Reasoner) Units() unit.System { return r.opts.Units }
