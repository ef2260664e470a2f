// Package index is the search over the notes: passages in, the ones that answer
// a question out. It is the only package that imports bleve.
//
//	index.go     opening, and the one search
//	analysis.go  English text to terms, the same for notes and questions
//	segment.go   passages as a segment of bleve's index
//	prepared.go  the segment of the built-in notes that the program carries
//	concept.go   the trade's words in a text
//	everyday.go  words of everyday talk
//	meant.go     what people say for the trade's words, and what they say idly
//	elsewhere.go words of other matters
//	question.go  a question as groups of terms that mean one thing
//	correct.go   misspelt words
//	score.go     the ranking
//	weights.go   the numbers of the ranking, as judged on the notes
//
// Of bleve it uses the text analysis and the segment format with its
// dictionaries and postings (zap), read in place: from the program's own memory
// for the notes that it carries, so that nothing is unpacked, written or built
// at the start. It does without bleve's index shell and query classes. The
// shell (scorch) spends 2.5 to 4 ms of every start on tables that only its own
// fuzzy queries use; and its disjunction multiplies a score by the share of its
// clauses that matched, which makes each further synonym of a word count
// against the passage that says it the usual way.
//
// Limits: a question is cut at 1,000 bytes; query syntax is plain words. Scores
// are comparable within one search only. The order of hits is by score, then by
// id, and does not depend on how the passages were divided into segments.
package index

import (
	"fmt"

	"heronlake.example/ask/kb"
)

// maxQuestion bounds the text that is analysed, in bytes.
const maxQuestion = 1000

// Index searches a library. It does not change and may be shared.
type Index struct {
	segments []*segment
	count    int // passages
	w        weights
}

// Open makes the library searchable: the built-in notes by their prepared
// segment, where it is of this edition, and a shop's notes by a segment of their
// own; anything else by one built now.
func Open(lib *kb.Library) (*Index, error) { return OpenWith(lib, nil) }

// OpenWith is Open with the segment that Segment made of the library's shop notes,
// which are then not looked at; nil for none. The segment is searched where it
// lies and must not change. That it is whole is for the caller to see to, by a
// checksum; the error tells of what is no segment at all.
func OpenWith(lib *kb.Library, shop []byte) (*Index, error) {
	x := &Index{w: judged}
	notes := lib.Shop
	if fresh(lib) {
		if s, err := load(prepared); err == nil {
			x.segments = append(x.segments, s)
		}
	}
	switch {
	case len(x.segments) == 0:
		notes = lib.All
	case shop != nil:
		s, err := load(shop)
		if err != nil {
			return nil, fmt.Errorf("index the notes: %w", err)
		}
		x.segments = append(x.segments, s)
		notes = func() []kb.Note { return nil }
	}
	if more := notes(); len(more) > 0 {
		s, err := build(more)
		if err != nil {
			return nil, fmt.Errorf("index the notes: %w", err)
		}
		x.segments = append(x.segments, s)
	}
	for _, s := range x.segments {
		x.count += s.count
	}
	return x, nil
}

// Close is there for what an index may one day hold open; nothing needs it now.
func (x *Index) Close() error { return nil }

// Search finds the passages that answer a question. Nothing found, or nothing
// that covers enough of the question to be worth citing, gives no hits.
func (x *Index) Search(q kb.Query) kb.Result {
	if q.Limit <= 0 {
		q.Limit = 3
	}
	s := x.sit()
	defer s.rise()
	asked := s.read(q)
	hits, sure := s.rank(asked, q.Limit)
	return kb.Result{
		Hits:      hits,
		Corrected: asked.corrected,
		Known:     asked.share(),
		Sure:      sure,
	}
}

// search is one search under way, with a desk at each segment.
type search struct {
	*Index
	desks []*desk
}

func (x *Index) sit() *search {
	s := &search{Index: x, desks: make([]*desk, len(x.segments))}
	for i, seg := range x.segments {
		s.desks[i] = seg.desks.Get().(*desk)
	}
	return s
}

func (s *search) rise() {
	for _, d := range s.desks {
		d.segment.desks.Put(d)
	}
}
