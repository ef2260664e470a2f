package drill

import (
	"strings"
	"testing"
	"time"

	"heronlake.example/ask/reasoner"
)

// FuzzAsk holds a drill against whatever is typed: it always answers, and marks
// within its points.
func FuzzAsk(f *testing.F) {
	for _, r := range markRows {
		for _, s := range r.served {
			f.Add(uint64(len(s.says)), s.says)
		}
	}
	f.Add(uint64(1), ":why\n:boat\ndone\n:why shaft.need\nnext")
	f.Add(uint64(2), "how? what? where? is it? 1/0 gauge -5 lb, 0 volts, \x00\xff breaker 0")
	f.Add(uint64(3), "no 80 pounder, 99999999 lb 12 in shaft, battery 0, zero batteries, -2 amp breaker, 6 gauge with a 50 to 500")
	r := reasoner.New(reasoner.Options{})
	f.Fuzz(func(t *testing.T, seed uint64, talk string) {
		d := New(r, Options{Seed: seed % 1000, Seeded: true})
		d.Open()
		for line := range strings.Lines(talk) {
			d.Ask(line)
		}
		a := d.Ask("done")
		if a.Drill == nil {
			t.Fatal("no drill in the answer")
		}
		for _, m := range a.Drill.Marks {
			if m.Points < 0 || m.Points > m.Most {
				t.Errorf("%s: %v of %v", m.ID, m.Points, m.Most)
			}
		}
	})
}

func TestLongLines(t *testing.T) {
	r := reasoner.New(reasoner.Options{})
	for _, part := range []string{"how high is the bow and how windy? ", "80 lb 24 volt, 6 gauge with a 50. ", "a,and how,", "xqzzk ", "no ", "1 "} {
		d := New(r, Options{Topic: Sale, Seed: 3, Seeded: true})
		d.Open()
		start := time.Now()
		d.Ask(strings.Repeat(part, 60_000/len(part)))
		d.Ask("done")
		if took := time.Since(start); took > 10*time.Second {
			t.Errorf("a line of %q took %v", part, took)
		}
	}
}
