package index

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"heronlake.example/ask/kb"
)

// notes reads the small library of testdata.
func notes(t testing.TB) []kb.Note {
	t.Helper()
	files, err := filepath.Glob("testdata/notes/*.md")
	if err != nil || len(files) == 0 {
		t.Fatal("no notes in testdata: ", err)
	}
	var out []kb.Note
	for _, f := range files {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		n, faults := kb.Parse(f, data)
		if len(faults) > 0 {
			t.Fatal(faults)
		}
		out = append(out, n)
	}
	return out
}

func opened(t testing.TB, notes ...kb.Note) *Index {
	t.Helper()
	x, err := Open(kb.NewLibrary(notes...))
	if err != nil {
		t.Fatal(err)
	}
	return x
}

func builtin(t testing.TB) *kb.Library {
	t.Helper()
	lib, err := kb.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	return lib
}

func TestSearch(t *testing.T) {
	x := opened(t, notes(t)...)
	for _, c := range []struct {
		why, question string
		context       string
		first         string // "" where nothing is to be found
	}{
		{why: "its own words", question: "how long should an oar be", first: "oars#how-long-an-oar"},
		{why: "other forms of the words", question: "varnishing an oar", first: "oars#keeping-oars-from-wear"},
		{why: "another word of the trade", question: "where do i hang fenders on my toon", first: "pontoon-fenders#where-fenders-hang"},
		{why: "several words for one thing", question: "why does it suck air", first: "prop-air#ventilation-in-waves"},
		{why: "a slip", question: "varnihs the oars", first: "oars#keeping-oars-from-wear"},
		{why: "what is known besides", question: "what rack do i need", context: "kayak", first: "kayak-rack#hanging-it-without-a-dent"},
		{why: "the same, other boat", question: "what rack do i need", context: "canoe", first: "canoe-rack#upside-down-on-two-bars"},
		{why: "the question outweighs what is known", question: "canoe rack", context: "kayak", first: "canoe-rack#upside-down-on-two-bars"},
		{why: "another matter", question: "who won the election"},
		{why: "no words", question: "?!"},
		{why: "nothing", question: ""},
		{why: "numbers alone", question: "12 24 36"},
		{why: "stop words alone", question: "how do i do it"},
	} {
		q := kb.Query{Text: c.question}
		if c.context != "" {
			q.Context = []string{c.context}
		}
		got := ""
		if hits := x.Search(q).Hits; len(hits) > 0 {
			got = hits[0].Passage
		}
		if got != c.first {
			t.Errorf("%s: %q finds %q, want %q", c.why, c.question, got, c.first)
		}
	}
}

func TestSearchResult(t *testing.T) {
	x := opened(t, notes(t)...)
	r := x.Search(kb.Query{Text: "varnihs the oars"})
	if d := cmp.Diff([]kb.Correction{{Said: "varnihs", Word: "varnish"}}, r.Corrected); d != "" {
		t.Error(d)
	}
	if r.Known < 0.7 || r.Known > 0.99 {
		t.Errorf("known %.2f of a question with a corrected word", r.Known)
	}
	if c := x.Search(kb.Query{Text: "oars"}).Hits[0].Covered; c != 1 {
		t.Errorf("covered %.2f of a question of one word that the passage holds", c)
	}
	if n := len(x.Search(kb.Query{Text: "oars and racks"}).Hits); n != 3 {
		t.Errorf("%d hits where no limit is set, want 3", n)
	}
	if n := len(x.Search(kb.Query{Text: "oars and racks", Limit: 10}).Hits); n != 4 {
		t.Errorf("%d hits of 4 passages", n)
	}
}

// TestSearchHostile asks what a query language would take for its own, and what
// is no text.
func TestSearchHostile(t *testing.T) {
	x := opened(t, notes(t)...)
	want := x.Search(kb.Query{Text: "varnish oars"}).Hits
	for _, q := range []string{`varnish +oars`, `varnish -oars`, `oars:varnish`, `"varnish oars`, `(varnish OR oars`, `varnish* oars~9`, "varnish\x00 \x1b oars", "v\u00e4rnish oars"} {
		got := x.Search(kb.Query{Text: q}).Hits
		if len(got) == 0 || got[0].Passage != want[0].Passage {
			t.Errorf("%q finds %v, want %v first", q, got, want[0])
		}
	}
	for _, q := range []string{"\xff\xfe", strings.Repeat("oar ", 100000), strings.Repeat("\u00e4", 1000), "\u0645\u062d\u0631\u0643", "\U0001f6a3", strings.Repeat("a", 5000)} {
		x.Search(kb.Query{Text: q}) // must come back
	}
}

// TestDivided searches the same notes in one segment and in two: the answers are
// the same to the last digit.
func TestDivided(t *testing.T) {
	all := notes(t)
	whole := opened(t, all...)
	divided := opened(t, all[:2]...)
	rest := opened(t, all[2:]...)
	divided.segments = append(divided.segments, rest.segments...)
	divided.count += rest.count
	for _, q := range []string{"rack for a kayak", "oars and fenders", "air at the prop in waves", "varnihs", "boat"} {
		if d := cmp.Diff(whole.Search(kb.Query{Text: q}), divided.Search(kb.Query{Text: q})); d != "" {
			t.Errorf("%s: %s", q, d)
		}
	}
}

// TestPerNote keeps one note from taking all the room.
func TestPerNote(t *testing.T) {
	n := notes(t)[0]
	var p []kb.Passage
	for i := range 5 {
		q := n.Passages[0]
		q.ID = fmt.Sprintf("%s#%d", n.ID, i)
		p = append(p, q)
	}
	n.Passages = p
	if hits := opened(t, n).Search(kb.Query{Text: n.Title, Limit: 5}).Hits; len(hits) != judged.perNote || hits[0].Passage != n.ID+"#0" || hits[1].Passage != n.ID+"#1" {
		t.Errorf("%v", hits)
	}
}

// TestPreparedFresh fails when the notes, the words or the analysis have changed
// since the segment was made.
func TestPreparedFresh(t *testing.T) {
	lib := builtin(t)
	if got := madeOf(lib, documents(lib.All())); got != preparedOf {
		t.Fatal("the prepared segment is stale; run: go generate ./index")
	}
	if !intact(prepared) {
		t.Error("the prepared segment is damaged; run: go generate ./index")
	}
}

// TestPreparedAnswers compares the prepared segment with one built now.
func TestPreparedAnswers(t *testing.T) {
	lib := builtin(t)
	if madeOf(lib, documents(lib.All())) != preparedOf {
		t.Skip("the prepared segment is stale")
	}
	x, err := Open(lib)
	if err != nil {
		t.Fatal(err)
	}
	y := opened(t, lib.All()...)
	for _, q := range []string{
		"how long a shaft", "what wire for the bow", "why does it suck air in chop", "can i charge lithium in the cold",
		"how many batteries for 24 volts", "breaker trips", "tin boat on a windy lake", "battary dies", "who won the game",
		"position hold", "reverse", "kayak",
	} {
		if d := cmp.Diff(y.Search(kb.Query{Text: q}), x.Search(kb.Query{Text: q})); d != "" {
			t.Errorf("%s: %s", q, d)
		}
	}
}

// TestPreparedDamaged reads segments that are none.
func TestPreparedDamaged(t *testing.T) {
	for _, c := range []struct {
		why  string
		data []byte
	}{
		{"empty", nil},
		{"short", prepared[:min(20, len(prepared))]},
		{"zeros", make([]byte, 1000)},
		{"another version", slices.Concat(prepared[:len(prepared)-8], []byte{0, 0, 0, 1}, prepared[len(prepared)-4:])},
	} {
		if _, err := load(c.data); err == nil {
			t.Errorf("%s: loads", c.why)
		}
	}
}

// TestShopNotes opens the built-in notes with a shop's beside them.
func TestShopNotes(t *testing.T) {
	n := notes(t)[2]
	n.Shop = true
	for i := range n.Passages {
		n.Passages[i].Shop = true
	}
	lib := builtin(t).Merge(kb.NewLibrary(n))
	x, err := Open(lib)
	if err != nil {
		t.Fatal(err)
	}
	hits := x.Search(kb.Query{Text: "how long should an oar be"}).Hits
	if len(hits) == 0 || !strings.HasPrefix(hits[0].Passage, n.ID+"#") {
		t.Errorf("%v, want a passage of %s first", hits, n.ID)
	}
	if p, ok := lib.Passage(hits[0].Passage); !ok || !p.Shop {
		t.Errorf("the passage found is not in the library as the shop's: %+v", p)
	}
}

// TestSegmentAnswers compares a shop's segment that was written down with one
// that Open builds.
func TestSegmentAnswers(t *testing.T) {
	shop := notes(t)
	for i := range shop {
		shop[i].Shop = true
	}
	lib := builtin(t).Merge(kb.NewLibrary(shop...))
	want, err := Open(lib)
	if err != nil {
		t.Fatal(err)
	}
	data, err := Segment(lib.Shop())
	if err != nil {
		t.Fatal(err)
	}
	got, err := OpenWith(lib, data)
	if err != nil {
		t.Fatal(err)
	}
	for _, q := range []string{"how long should an oar be", "rack for a kayak", "varnihs the oars", "what wire for the bow", "who won the game"} {
		if d := cmp.Diff(want.Search(kb.Query{Text: q}), got.Search(kb.Query{Text: q})); d != "" {
			t.Errorf("%s (-built +written down): %s", q, d)
		}
	}
	if _, err := OpenWith(lib, data[:20]); err == nil && fresh(lib) {
		t.Error("what is no segment was opened")
	}
	empty, err := Segment(nil)
	if err != nil {
		t.Fatal(err)
	}
	if x, err := OpenWith(builtin(t), empty); err != nil || len(x.Search(kb.Query{Text: "how long a shaft"}).Hits) == 0 {
		t.Errorf("with a segment of nothing: %v", err)
	}
}

// TestConcurrent searches from several goroutines at once.
func TestConcurrent(t *testing.T) {
	x := opened(t, notes(t)...)
	want := x.Search(kb.Query{Text: "rack for a kayak"})
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() {
			for range 50 {
				if d := cmp.Diff(want, x.Search(kb.Query{Text: "rack for a kayak"})); d != "" {
					t.Error(d)
				}
			}
		})
	}
	wg.Wait()
}

func TestStems(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"the neighbor's batteries charging", "neighbor batteri charg"},
		{"a 12V motor, 50 A and 24-volt", "12 volt motor 50 amp 24 volt"},
		{"won't steer; don't know", "steer"},
		{"na\u00efve propeller", "naiv propel"},
		{"{{shaft.need | mount.height=20 in}} of shaft", "shaft"},
		{"", ""},
	} {
		if got := strings.Join(Stems(c.text), " "); got != c.want {
			t.Errorf("%q: %q, want %q", c.text, got, c.want)
		}
	}
}

func TestConcepts(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"my toon", "~pontoon"},
		{"it sucks air", "~ventilation"},
		{"a tin boat", "~aluminum"},
		{"nothing of the kind", ""},
	} {
		var got []string
		for _, w := range analyse(c.text) {
			if w.concept != "" {
				got = append(got, w.concept)
			}
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("%q: %q, want %q", c.text, got, c.want)
		}
	}
}

// TestCorrect lists what is corrected and what is left alone.
func TestCorrect(t *testing.T) {
	x := opened(t, notes(t)...).sit()
	for _, c := range []struct{ said, want string }{
		{"fendres", "fenders"},
		{"varnsh", "varnish"},
		{"bulkhaeds", "bulkheads"},
		{"blukheda", ""}, // three slips
		{"xarnish", ""},  // another first letter
		{"oras", "oars"}, // four letters: two that changed places
		{"oart", ""},     // four letters: anything else
		{"oa", ""},
		{"12345", ""},
	} {
		if got, _ := x.correct(c.said); got != c.want {
			t.Errorf("%s: %q, want %q", c.said, got, c.want)
		}
	}
}

func Example() {
	n, _ := kb.Parse("oars.md", []byte("# Oars\n\n## How long an oar\nTwice the width of the boat between the oarlocks.\n\n## Care\nVarnish them in spring.\n"))
	x, err := Open(kb.NewLibrary(n))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, h := range x.Search(kb.Query{Text: "do i varnish my oars in spring"}).Hits {
		fmt.Printf("%s covers %.0f%%\n", h.Passage, 100*h.Covered)
	}
	// Output:
	// oars#care covers 100%
}
