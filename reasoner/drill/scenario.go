package drill

import (
	"slices"

	"heronlake.example/ask/reasoner/card"
)

// A Scenario is one invented customer: what is true of the boat, what of it is
// told unasked, and what is only talk. It is a plain value: the same seed,
// topic and level give the same one.
type Scenario struct {
	Seed    uint64
	Topic   Topic
	Level   int // 1 to 5: more is held back, and more is beside the point
	Title   string
	Boat    string // as its owner calls it: "16-foot jon boat"
	Opening string // what the customer says first
	Facts   []Fact
	Wish    *wishRow  // something that cannot be had; nil for none
	Idle    []string  // said, and beside the point
	Place   string    // the water, by its row
	Fault   *faultRow // for fault finding
	Voice   int       // which way of talking
}

// A Fact is one thing true of the boat. One that is not told is given to those
// who ask; Scored marks a fact that was held back for the trainee to ask about.
type Fact struct {
	card.Fact
	Told   bool
	Scored bool
	Reply  string // the customer's own words for it; "" takes a template
}

// Cards are the facts as the core takes them, without the slots named.
func (s *Scenario) Cards(without ...string) []card.Fact {
	var out []card.Fact
	for _, f := range s.Facts {
		if !slices.Contains(without, f.Slot) {
			out = append(out, f.Fact)
		}
	}
	return out
}

// Fact finds a fact by its slot.
func (s *Scenario) Fact(slot string) (Fact, bool) {
	for _, f := range s.Facts {
		if f.Slot == slot {
			return f, true
		}
	}
	return Fact{}, false
}

func (s *Scenario) word(slot string) string {
	f, _ := s.Fact(slot)
	return f.Text
}

func (s *Scenario) number(slot string) (float64, bool) {
	f, ok := s.Fact(slot)
	if !ok || f.Value == nil {
		return 0, false
	}
	return *f.Value, true
}

// Held lists the slots that were held back for the trainee to ask about.
func (s *Scenario) Held() []string {
	var out []string
	for _, f := range s.Facts {
		if f.Scored {
			out = append(out, f.Slot)
		}
	}
	return out
}

// WishID names the impossible wish, "" for none.
func (s *Scenario) WishID() string {
	if s.Wish == nil {
		return ""
	}
	return s.Wish.id
}
