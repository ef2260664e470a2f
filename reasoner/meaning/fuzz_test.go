package meaning

import (
	"strconv"
	"strings"
	"testing"

	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// FuzzBind finds lines that panic, that change the card passed in, or that two
// runs understand differently.
func FuzzBind(f *testing.F) {
	for _, p := range phrasings {
		f.Add(p.text, "18 ft vee, 1,700 lb loaded, two of us")
	}
	for _, text := range nothings {
		f.Add(text, "55 lb 12v, 20 ft of 8 gauge")
	}
	f.Fuzz(func(t *testing.T, text, before string) {
		if len(text) > 4000 || len(before) > 400 {
			t.Skip()
		}
		c := Bind(read.Read(before), card.Card{}).Card
		facts := append([]card.Fact(nil), c.Facts...)
		a, b := Bind(read.Read(text), c), Bind(read.Read(text), c)
		if len(a.Card.Facts) != len(b.Card.Facts) || len(a.Problems) != len(b.Problems) {
			t.Fatal("two runs differ")
		}
		for i := range facts {
			if facts[i] != c.Facts[i] {
				t.Fatal("the card passed in was changed")
			}
		}
		for _, p := range a.Problems {
			if p.Start < 0 || p.End > len(text) || p.Start > p.End {
				t.Fatalf("problem %q points outside the line: %d to %d of %d", p.Text, p.Start, p.End, len(text))
			}
		}
	})
}

const twoHundred = "18 footer aluminum deep v, bout 1900 lb loaded with two guys, windy lake, bow deck to water is 24 in, 24v 80 lb motor on two group 27 agms, 18 ft of 6 gauge up to the bow. whats it take for 8 hrs, no gps?"

// BenchmarkReadAndBind reads and binds a question of two hundred characters.
func BenchmarkReadAndBind(b *testing.B) {
	text := twoHundred[:200]
	b.ReportAllocs()
	for b.Loop() {
		Bind(read.Read(text), card.Card{})
	}
}

// BenchmarkBind leaves the reading out.
func BenchmarkBind(b *testing.B) {
	r := read.Read(twoHundred[:200])
	b.ReportAllocs()
	for b.Loop() {
		Bind(r, card.Card{})
	}
}

// BenchmarkBindLong shows that time grows with length and no faster.
func BenchmarkBindLong(b *testing.B) {
	for _, n := range []int{1, 10, 100, 1000} {
		text := strings.Repeat(twoHundred+" ", 5*n)
		r := read.Read(text)
		b.Run(strconv.Itoa(len(text))+" bytes", func(b *testing.B) {
			b.SetBytes(int64(len(text)))
			for b.Loop() {
				Bind(r, card.Card{})
			}
		})
	}
}
