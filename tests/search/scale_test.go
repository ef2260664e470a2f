package search_test

import (
	"fmt"
	"math/rand/v2"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"

	"heronlake.example/ask/index"
	"heronlake.example/ask/kb"
)

// BenchmarkScale searches generated notes of 300, 3,000 and 30,000 passages
// with words of a known passage, as they are and with a slip in each second
// one: build time and memory of the index, median and 99th percentile of a
// query. At 30,000 the 99th percentile is to stay under 2 ms, 4 with slips.
func BenchmarkScale(b *testing.B) {
	for _, n := range []int{300, 3000, 30000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			notes, words := generated(n)
			lib := kb.NewLibrary(notes...)
			before := heap()
			start := time.Now()
			x, err := index.Open(lib)
			if err != nil {
				b.Fatal(err)
			}
			built, held := time.Since(start), heap()-before
			for _, kind := range []string{"exact", "slips"} {
				b.Run(kind, func(b *testing.B) {
					questions := questionsFrom(notes, words, kind == "slips")
					var took []time.Duration
					i := 0
					for b.Loop() {
						start := time.Now()
						x.Search(kb.Query{Text: questions[i%len(questions)]})
						took = append(took, time.Since(start))
						i++
					}
					slices.Sort(took)
					at := func(share float64) float64 {
						return float64(took[int(share*float64(len(took)-1))].Microseconds())
					}
					b.ReportMetric(at(0.5), "p50-us")
					b.ReportMetric(at(0.99), "p99-us")
					b.ReportMetric(float64(built.Milliseconds()), "build-ms")
					b.ReportMetric(float64(held)/(1<<20), "held-MiB")
				})
			}
		})
	}
}

func heap() float64 {
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return float64(m.HeapAlloc)
}

// generated makes notes of three passages of 60 to 99 words from a vocabulary
// of 30,000 with the frequencies of a language (Zipf and Mandelbrot).
func generated(passages int) ([]kb.Note, []string) {
	r := rand.New(rand.NewPCG(1, 2))
	words := make([]string, 30000)
	for i := range words {
		words[i] = spell(i, r)
	}
	draw := zipf(len(words), r)
	text := func(n int) string {
		out := make([]string, n)
		for i := range out {
			out[i] = words[draw()]
		}
		return strings.Join(out, " ")
	}
	notes := make([]kb.Note, (passages+2)/3)
	for i := range notes {
		n := kb.Note{ID: fmt.Sprintf("note-%05d", i), Title: text(3 + r.IntN(4)), Topics: []string{words[100+i%200]}}
		for j := range min(3, passages-3*i) {
			n.Passages = append(n.Passages, kb.Passage{
				ID: fmt.Sprintf("%s#%d", n.ID, j), Note: n.ID, Title: n.Title, Topics: n.Topics,
				Heading: text(3), Text: text(60 + r.IntN(40)),
			})
		}
		notes[i] = n
	}
	return notes, words
}

// spell makes a word of four to nine letters that is unlike the others.
func spell(i int, r *rand.Rand) string {
	const consonants, vowels = "bcdfghklmnprstvw", "aeiou"
	var b strings.Builder
	for i += 300; i > 0; i /= 80 {
		b.WriteByte(consonants[i%16])
		b.WriteByte(vowels[i/16%5])
	}
	for range r.IntN(3) {
		b.WriteByte(consonants[r.IntN(16)])
	}
	return b.String()
}

// zipf draws ranks with probability in proportion to 1/(rank+2.7).
func zipf(n int, r *rand.Rand) func() int {
	sum := make([]float64, n)
	total := 0.0
	for i := range sum {
		total += 1 / (float64(i) + 2.7)
		sum[i] = total
	}
	return func() int {
		i, _ := slices.BinarySearch(sum, r.Float64()*total)
		return min(i, n-1)
	}
}

// questionsFrom asks with four words of a passage each.
func questionsFrom(notes []kb.Note, _ []string, slips bool) []string {
	r := rand.New(rand.NewPCG(3, 4))
	questions := make([]string, 1000)
	for i := range questions {
		n := notes[r.IntN(len(notes))]
		words := strings.Fields(n.Passages[r.IntN(len(n.Passages))].Text)
		var asked []string
		for j := range 4 {
			w := words[r.IntN(len(words))]
			if slips && j%2 == 1 && len(w) > 4 {
				at := 1 + r.IntN(len(w)-2)
				w = w[:at] + w[at+1:]
			}
			asked = append(asked, w)
		}
		questions[i] = "how do i " + strings.Join(asked, " ")
	}
	return questions
}
