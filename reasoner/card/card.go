// Package card holds the facts of one conversation: each slot with its value,
// its band, the words that gave it and the row that bound them. A Card is a
// plain value: changing it makes another, so taking a turn back is keeping the
// one before.
//
// Limits: a slot stands once for each value it holds, in the order said: the
// stretches of a duty profile, batteries that are not alike.
package card

// A Fact is one slot as a person stated it.
type Fact struct {
	Slot  string
	Value *float64 // SI, nil for a word or a bound
	Low   *float64 // ends of a range; one end alone is a bound
	High  *float64
	Text  string // for a word slot: the contract's word; "true" or "false"
	Unit  string
	Said  string // the words that gave it
	Row   string // the name of the rule that bound it
	Turn  int    // the turn in which it was said
	Wish  bool   // "would like" rather than "must"
	About bool
	Bare  bool // a unit was supplied by context, not said
}

// Card is the facts of one boat after some turn.
type Card struct {
	Name  string // the boat's name where several are kept apart
	Facts []Fact // in the order of the first saying
	Turn  int
	// Asked is the topics asked last, so that "and at half throttle?" and a bare
	// corrected number know what they are about.
	Asked []string
	// Over is the slot between whose values the last turn asked to choose, and
	// Offered the values named, so that "go with the 31" is understood.
	Over    string
	Offered []string
	// Metric tells that the speaker has used metric units.
	Metric bool
	// Parked is the other boats of the conversation, for "back to the jon".
	Parked []Card
	// Rigs is the motors that were replaced, each with what of its bank went with it,
	// the last one last: "no, back to the 55".
	Rigs [][]Fact
	Kept Kept
}

// Kept is what a card was last kept as, outside the conversation; zero when it
// never was.
type Kept struct {
	Name     string
	Revision int
}

// The words behind batteries that nobody said: those that the program proposed for
// the day, and those that are usual for the motor.
const (
	Proposed = "the batteries proposed"
	Usual    = "batteries of the usual size"
)

// Unsaid reports whether a fact's words are the program's own.
func Unsaid(said string) bool { return said == Proposed || said == Usual }

// Get returns the last value of a slot.
func (c Card) Get(slot string) (Fact, bool) {
	for i := len(c.Facts) - 1; i >= 0; i-- {
		if c.Facts[i].Slot == slot {
			return c.Facts[i], true
		}
	}
	return Fact{}, false
}

// All returns every value of a slot in order.
func (c Card) All(slot string) []Fact {
	var out []Fact
	for _, f := range c.Facts {
		if f.Slot == slot {
			out = append(out, f)
		}
	}
	return out
}

// With returns a card in which the slot holds this fact alone.
func (c Card) With(f Fact) Card {
	out := c.copy()
	for i := range out.Facts {
		if out.Facts[i].Slot == f.Slot {
			out.Facts[i] = f
			rest := out.Facts[i+1:]
			out.Facts = out.Facts[:i+1]
			for _, g := range rest {
				if g.Slot != f.Slot {
					out.Facts = append(out.Facts, g)
				}
			}
			return out
		}
	}
	out.Facts = append(out.Facts, f)
	return out
}

// And returns a card in which the fact stands beside others of its slot.
func (c Card) And(f Fact) Card {
	out := c.copy()
	out.Facts = append(out.Facts, f)
	return out
}

// Without returns a card that knows nothing of the slots.
func (c Card) Without(slots ...string) Card {
	out := c
	out.Facts = nil
	for _, f := range c.Facts {
		gone := false
		for _, s := range slots {
			gone = gone || f.Slot == s
		}
		if !gone {
			out.Facts = append(out.Facts, f)
		}
	}
	return out
}

func (c Card) copy() Card {
	out := c
	out.Facts = append(make([]Fact, 0, len(c.Facts)+1), c.Facts...)
	return out
}
