package reasoner

import (
	"fmt"
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
	"heronlake.example/ask/reasoner/meaning"
)

// Card is the facts of the conversation, to be kept. It is a copy.
func (s *Session) Card() card.Card {
	c := s.now.card
	c.Facts = slices.Clone(c.Facts)
	c.Asked = slices.Clone(c.Asked)
	c.Parked = slices.Clone(c.Parked)
	return c
}

// Units is the system in which the conversation is answered.
func (s *Session) Units() unit.System { return s.sys }

// Kept notes on the card what it was kept as, and on the cards before it of the
// same boat, so that taking a turn back does not forget it.
func (s *Session) Kept(k card.Kept) {
	was := s.now.card.Kept
	s.now.card.Kept = k
	for i := len(s.past) - 1; i >= 0; i-- {
		c := &s.past[i].card
		if c.Kept != was || len(c.Facts) == 0 {
			return
		}
		c.Kept = k
	}
}

// mostFacts is how many facts are taken over; a conversation comes nowhere near.
const mostFacts = 200

// Restore begins a conversation again with a card that was kept. A fact whose
// slot or value this program does not know is left out and named in a problem;
// the rest stands. It can be taken back like any turn.
func (s *Session) Restore(kept card.Card) answer.Answer {
	a := answer.Answer{Steer: "open"}
	c := card.Card{Name: kept.Name, Metric: kept.Metric, Kept: kept.Kept, Turn: s.now.card.Turn + 1}
	for i, f := range kept.Facts {
		if i == mostFacts {
			a.Problems = append(a.Problems, answer.Problem{Kind: "out-of-range", Text: fmt.Sprintf("Only the first %d facts of the saved boat were taken over.", mostFacts)})
			break
		}
		if fault := unfit(f); fault != "" {
			a.Problems = append(a.Problems, answer.Problem{Kind: "unplaced", Slot: f.Slot, Said: f.Said, Text: "Left out of the saved boat: " + fault + "."})
			continue
		}
		f.Turn = c.Turn
		c.Facts = append(c.Facts, f)
	}
	if c.Metric && !s.set {
		s.sys = metric
	}
	s.keep(state{card: c, topics: []string{"fit"}, proposed: true, day: c})
	a.Understood = understood(c, nil, s.sys)
	a.Finish()
	return a
}

// unfit says why a fact cannot be taken over, "" when it can. A figure is
// computed and not said, but for the loaded weight, which may be both.
func unfit(f card.Fact) string {
	id, ok := fit.CellOf(f.Slot)
	if ok && id.Describe().Figure && id != sheet.LoadTotal || !ok && !cellless(f.Slot) {
		return fmt.Sprintf("%q is nothing that a boat's card holds", f.Slot)
	}
	return meaning.Kept(f)
}

// cellless are the slots that no figure rests on: wishes, and what only a
// caution asks for.
func cellless(slot string) bool {
	return strings.HasPrefix(slot, "want.") || slices.Contains([]string{"water.swim", "water.rules", "battery.use"}, slot)
}
