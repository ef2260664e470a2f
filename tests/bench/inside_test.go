package bench

import (
	_ "embed"
	"encoding/json"
	"slices"
	"strings"
	"testing"
	"time"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/index"
	"heronlake.example/ask/kb"
	"heronlake.example/ask/kb/stock"
	"heronlake.example/ask/reasoner"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
	"heronlake.example/ask/reasoner/meaning"
	"heronlake.example/ask/reasoner/read"
)

//go:embed questions.txt
var questionsFile string

// questions are asked in turn, so that a figure is one of a mixed counter day
// and not of one lucky question.
var questions = strings.Split(strings.TrimSpace(questionsFile), "\n")

func newReasoner(tb testing.TB) (*reasoner.Reasoner, *index.Index) {
	tb.Helper()
	lib, err := kb.Builtin()
	if err != nil {
		tb.Fatal(err)
	}
	x, err := index.Open(lib)
	if err != nil {
		tb.Fatal(err)
	}
	return reasoner.New(reasoner.Options{Notes: lib, Search: x, Shelf: stock.Demo}), x // as without --stock
}

// inTurn runs f with each question in turn, once before the clock starts so that
// what is worked out on first use is not counted to some question, and reports
// the median and the 99th percentile of single calls beside the mean.
func inTurn(b *testing.B, f func(question string)) {
	for _, q := range questions {
		f(q)
	}
	times := make([]time.Duration, 0, 1<<16)
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		t := time.Now()
		f(questions[i%len(questions)])
		times = append(times, time.Since(t))
	}
	slices.Sort(times)
	b.ReportMetric(float64(times[len(times)/2].Nanoseconds()), "p50-ns")
	b.ReportMetric(float64(times[len(times)*99/100].Nanoseconds()), "p99-ns")
}

// BenchmarkBatchLine is what one line of a batch costs: the answer and its JSON.
func BenchmarkBatchLine(b *testing.B) {
	r, _ := newReasoner(b)
	inTurn(b, func(q string) { answerLine(b, r, q) })
}

func answerLine(tb testing.TB, r *reasoner.Reasoner, question string) {
	if _, err := json.Marshal(r.NewSession().Ask(question)); err != nil {
		tb.Fatal(err)
	}
}

// BenchmarkPage is the same for a person: the answer laid out as a page.
func BenchmarkPage(b *testing.B) {
	r, _ := newReasoner(b)
	inTurn(b, func(q string) { text.Render(r.NewSession().Ask(q), text.Style{}) })
}

func BenchmarkAnswer(b *testing.B) {
	r, _ := newReasoner(b)
	inTurn(b, func(q string) { r.NewSession().Ask(q) })
}

// BenchmarkTurn is a further turn of a conversation on a known boat.
func BenchmarkTurn(b *testing.B) {
	r, _ := newReasoner(b)
	s := r.NewSession()
	s.Ask(questions[0])
	winds := []string{"and if it blows 20 mph?", "make it 10 mph"}
	for i := 0; b.Loop(); i++ {
		s.Ask(winds[i%len(winds)])
	}
}

func BenchmarkRead(b *testing.B) {
	inTurn(b, func(q string) { read.Read(q) })
}

func BenchmarkBind(b *testing.B) {
	readings := map[string]read.Reading{}
	for _, q := range questions {
		readings[q] = read.Read(q)
	}
	inTurn(b, func(q string) { meaning.Bind(readings[q], card.Card{}) })
}

// BenchmarkSolve works a boat out in full, the figures without their words.
func BenchmarkSolve(b *testing.B) {
	c := meaning.Bind(read.Read(questions[0]), card.Card{}).Card
	b.ReportAllocs()
	for b.Loop() {
		if f := fit.Solve(c, []string{"fit"}, unit.US, nil); !f.Sol.Has(sheet.ThrustNeed) {
			b.Fatal("no thrust was found")
		}
	}
}

// BenchmarkAskBack is the search for the question worth asking.
func BenchmarkAskBack(b *testing.B) {
	f := fit.Solve(meaning.Bind(read.Read(questions[0]), card.Card{}).Card, []string{"fit"}, unit.US, nil)
	b.ReportAllocs()
	for b.Loop() {
		f.Ask()
	}
}

func BenchmarkSearch(b *testing.B) {
	_, x := newReasoner(b)
	inTurn(b, func(q string) { x.Search(kb.Query{Text: q, Limit: 3}) })
}
