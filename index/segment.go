package index

import (
	"encoding/binary"
	"errors"
	"fmt"
	"hash/crc32"
	"maps"
	"slices"
	"strings"
	"sync"

	blevesegment "github.com/blevesearch/scorch_segment_api/v2"
	zap "github.com/blevesearch/zapx/v17"

	bleveindex "github.com/blevesearch/bleve_index_api"
	"heronlake.example/ask/kb"
)

// The fields of a passage in a segment. None is stored: the text is kept once,
// in the library.
const (
	fieldText = "text" // stems of title twice, heading twice, topics and body
	fieldHead = "head" // stems of title, heading and topics
	fieldPair = "pair" // neighbouring stems of the head, for closeness
	fieldWord = "word" // the words as written, for corrections
)

// segment is a part of the index: passages in the order of their ids.
type segment struct {
	base  *zap.SegmentBase
	count int
	desks sync.Pool // of *desk
}

// desk is what one search of a segment works with: zap's dictionaries, which
// are not for two at once, and room for the scores.
type desk struct {
	*segment
	text, head, pair, word blevesegment.TermDictionary
	scores
}

// build analyses notes into a new segment in memory.
func build(notes []kb.Note) (*segment, error) {
	made, _, err := new(zap.ZapPlugin).New(documents(notes))
	if err != nil {
		return nil, err
	}
	base, ok := made.(*zap.SegmentBase)
	if !ok {
		return nil, fmt.Errorf("segment of an unknown kind %T", made)
	}
	return open(base)
}

// open makes a segment ready to search.
func open(base *zap.SegmentBase) (*segment, error) {
	s := &segment{base: base, count: int(base.Count()) - 1}
	d, err := s.newDesk()
	if err != nil {
		return nil, err
	}
	s.desks.Put(d)
	s.desks.New = func() any {
		d, _ := s.newDesk() // it was found sound when it was opened
		return d
	}
	return s, nil
}

func (s *segment) newDesk() (*desk, error) {
	d := &desk{segment: s, scores: newScores(s.count)}
	for _, f := range []struct {
		name string
		to   *blevesegment.TermDictionary
	}{{fieldText, &d.text}, {fieldHead, &d.head}, {fieldPair, &d.pair}, {fieldWord, &d.word}} {
		terms, err := s.base.Dictionary(f.name)
		if err != nil {
			return nil, fmt.Errorf("field %s: %w", f.name, err)
		}
		*f.to = terms
	}
	return d, nil
}

// id is the passage's id.
func (s *segment) id(doc int) string {
	id, err := s.base.DocID(uint64(doc))
	if err != nil {
		return ""
	}
	return string(id)
}

// footer is the end of a prepared segment, as zap writes it (zap.md, "footer"):
// passages, offset of stored fields, offset of sections, chunk mode, version and
// checksum, with the length of a writer's name before them.
type footer struct {
	passages, stored, sections uint64
	chunkMode, version, crc    uint32
}

const footerSize = 4 + 3*8 + 3*4

// load opens a prepared segment where it lies, without copying it.
func load(data []byte) (*segment, error) {
	f, body, err := cutFooter(data)
	if err != nil {
		return nil, err
	}
	base, err := zap.InitSegmentBase(body, f.crc, f.chunkMode, f.passages, f.stored, f.sections, nil, new(blevesegment.Stats))
	if err != nil {
		return nil, err
	}
	return open(base)
}

func cutFooter(data []byte) (f footer, body []byte, err error) {
	if len(data) < footerSize {
		return f, nil, errors.New("prepared segment is too short")
	}
	at := len(data) - footerSize
	tail := data[at:]
	if n := binary.BigEndian.Uint32(tail); n != 0 {
		return f, nil, fmt.Errorf("prepared segment was written through a filter of %d bytes' name; make it again", n)
	}
	f.passages = binary.BigEndian.Uint64(tail[4:])
	f.stored = binary.BigEndian.Uint64(tail[12:])
	f.sections = binary.BigEndian.Uint64(tail[20:])
	f.chunkMode = binary.BigEndian.Uint32(tail[28:])
	f.version = binary.BigEndian.Uint32(tail[32:])
	f.crc = binary.BigEndian.Uint32(tail[36:])
	if f.version != zap.Version {
		return f, nil, fmt.Errorf("prepared segment is of version %d, the library reads %d; make it again", f.version, zap.Version)
	}
	return f, data[:at], nil
}

// intact reports whether the checksum of a prepared segment is right. It is for
// tests: a segment inside the program's own file is not read through at start.
func intact(data []byte) bool {
	f, _, err := cutFooter(data)
	return err == nil && crc32.ChecksumIEEE(data[:len(data)-4]) == f.crc
}

// document is a passage as zap takes it in.
type document struct {
	id     string
	fields []*field
	words  []string // as written, for the vocabulary
}

// documents makes the documents of all passages of notes, and the vocabulary.
func documents(notes []kb.Note) []bleveindex.Document {
	var docs []bleveindex.Document
	for _, n := range notes {
		docs = append(docs, newDocuments(n)...)
	}
	return append(docs, vocabulary(docs))
}

// newDocuments makes the documents of a note's passages.
func newDocuments(n kb.Note) []bleveindex.Document {
	title, topics := analyse(n.Title), analyse(join(n.Topics...))
	docs := make([]bleveindex.Document, len(n.Passages))
	for i, p := range n.Passages {
		heading := analyse(p.Heading)
		head := slices.Concat(title, heading, topics)
		all := slices.Concat(title, heading, head, analyse(withoutReferences(p.Text)))
		if !p.Shop {
			head = append(head, analyse(join(kb.Asked(p.ID)...))...)
		}
		docs[i] = &document{id: p.ID, fields: []*field{
			newField(idField, []string{p.ID}, bleveindex.IndexField|bleveindex.StoreField),
			newField(fieldText, stems(all), bleveindex.IndexField),
			newField(fieldHead, stems(head), bleveindex.IndexField),
			newField(fieldPair, pairs(head), bleveindex.IndexField|bleveindex.SkipFreqNorm),
		}, words: append(spellings(all), spellings(head)...)}
	}
	return docs
}

// vocabulary is the last document of a segment and no passage: it holds, once,
// every word as written.
func vocabulary(docs []bleveindex.Document) bleveindex.Document {
	seen := map[string]bool{}
	for _, d := range docs {
		for _, w := range d.(*document).words {
			seen[w] = true
		}
	}
	all := slices.Sorted(maps.Keys(seen))
	return &document{id: vocabularyID, fields: []*field{
		newField(idField, []string{vocabularyID}, bleveindex.IndexField|bleveindex.StoreField),
		newField(fieldWord, all, bleveindex.IndexField|bleveindex.SkipFreqNorm),
	}}
}

// vocabularyID is the id of no passage.
const vocabularyID = "#"

// join parts texts by a mark that ends a sentence, so that no phrase runs over.
func join(texts ...string) string { return strings.Join(texts, " . ") }

// withoutReferences leaves the figures out: what a reference names is no word
// of the passage, and its number is not known yet.
func withoutReferences(text string) string {
	var b strings.Builder
	for {
		before, rest, ok := strings.Cut(text, "{{")
		b.WriteString(before)
		if !ok {
			return b.String()
		}
		_, text, _ = strings.Cut(rest, "}}")
	}
}

func stems(words []word) []string {
	var out []string
	for _, w := range words {
		if w.stem != "" {
			out = append(out, w.stem)
		}
		if w.concept != "" {
			out = append(out, w.concept)
		}
	}
	return out
}

// spellings are the words that a misspelt one may have meant.
func spellings(words []word) []string {
	var out []string
	for _, w := range words {
		if w.stem != "" && len(w.text) >= 4 && !w.number() {
			out = append(out, w.text)
		}
	}
	return out
}

func (d *document) ID() string                                      { return d.id }
func (d *document) Size() int                                       { return 0 }
func (d *document) VisitComposite(bleveindex.CompositeFieldVisitor) {}
func (d *document) HasComposite() bool                              { return false }
func (d *document) NumPlainTextBytes() uint64                       { return 0 }
func (d *document) AddIDField()                                     {}
func (d *document) StoredFieldsBytes() uint64                       { return uint64(len(d.id)) }
func (d *document) Indexed() bool                                   { return true }
func (d *document) VisitFields(visit bleveindex.FieldVisitor) {
	for _, f := range d.fields {
		visit(f)
	}
}

// idField is the field in which zap looks for a document's id.
const idField = "_id"

// field is one field of a passage, analysed already.
type field struct {
	name    string
	terms   []string
	options bleveindex.FieldIndexingOptions
}

func newField(name string, terms []string, options bleveindex.FieldIndexingOptions) *field {
	return &field{name, terms, options}
}

func (f *field) Name() string                             { return f.name }
func (f *field) Value() []byte                            { return []byte(f.terms[0]) } // of the id, the one stored field
func (f *field) ArrayPositions() []uint64                 { return nil }
func (f *field) EncodedFieldType() byte                   { return 't' }
func (f *field) Analyze()                                 {}
func (f *field) Options() bleveindex.FieldIndexingOptions { return f.options }
func (f *field) AnalyzedLength() int                      { return len(f.terms) }
func (f *field) NumPlainTextBytes() uint64                { return 0 }
func (f *field) AnalyzedTokenFrequencies() bleveindex.TokenFrequencies {
	m := make(bleveindex.TokenFrequencies, len(f.terms))
	for _, t := range f.terms {
		tf := m[t]
		if tf == nil {
			tf = &bleveindex.TokenFreq{Term: []byte(t)}
			m[t] = tf
		}
		tf.SetFrequency(tf.Frequency() + 1)
	}
	return m
}
