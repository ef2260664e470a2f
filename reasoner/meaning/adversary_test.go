package meaning

import (
	"strings"
	"testing"
	"time"

	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// TestLongLines binds hundreds of kilobytes of the shapes that make a rule look
// far: time may grow with length only.
func TestLongLines(t *testing.T) {
	shapes := []string{"5, ", "boat 5, ", "no the ", "me and my dad and ", "24 or 36 ", "the ", "my wife, ", "hold ", "100 ah ", "hour at a third then ",
		"19 not 24 actually ", "what if 55 ", "not ", "lithium or agm ", "5 lb per 100 lb ", "(", "? ", "kids ", "1648 jon ", "anchor gps "}
	before := Bind(read.Read("18 ft vee, 1,700 lb loaded, two of us, 24 in deck to water"), card.Card{}).Card
	for _, s := range shapes {
		took := func(n int) time.Duration {
			r := read.Read(strings.Repeat(s, n/len(s)))
			best := time.Hour
			for range 3 { // the machine may be busy with something else
				began := time.Now()
				Bind(r, before)
				best = min(best, time.Since(began))
			}
			return best
		}
		took(10_000)
		short, long := took(40_000), took(160_000)
		if long > 40*short && long > 400*time.Millisecond {
			t.Errorf("%q: ten times the text took %v instead of %v", s, long, short)
		}
	}
}
