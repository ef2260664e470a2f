package index

import (
	"bytes"
	"crypto/sha256"
	_ "embed"
	"encoding/hex"
	"fmt"
	"io"
	"strconv"
	"strings"

	bleveindex "github.com/blevesearch/bleve_index_api"
	zap "github.com/blevesearch/zapx/v17"
	"heronlake.example/ask/kb"
	"heronlake.example/ask/kb/words"
)

//go:generate go run ./prepare

// prepared is the segment of the built-in notes, made by "go generate ./index"
// and searched where it lies in the program's own memory.
//
//go:embed segment.zap
var prepared []byte

// preparedOf says what the segment was made of: a digest of every term that was
// indexed, and the stamp of the notes' files.
//
//go:embed segment.sum
var preparedOf string

// Prepare makes the segment of the built-in notes and what it was made of, to be
// embedded.
func Prepare(lib *kb.Library) (segment []byte, of string, err error) {
	docs := documents(lib.All())
	segment, err = write(docs)
	return segment, madeOf(lib, docs), err
}

// Segment makes the segment of a shop's notes, for OpenWith. It must be made anew
// when the notes change or Edition does.
func Segment(notes []kb.Note) ([]byte, error) { return write(documents(notes)) }

// Edition tells apart editions of the program that index the same notes
// differently, as far as that shows in the words of the trade, in the built-in
// notes, or in how these are indexed.
func Edition() string {
	h := sha256.New()
	fmt.Fprintln(h, preparedOf, words.Entries(), questionWords, spelledUnits)
	return hex.EncodeToString(h.Sum(nil))
}

// write makes a segment of documents, with its footer.
func write(docs []bleveindex.Document) ([]byte, error) {
	made, _, err := new(zap.ZapPlugin).New(docs)
	if err != nil {
		return nil, err
	}
	writer, ok := made.(io.WriterTo)
	if !ok {
		return nil, fmt.Errorf("segment of an unknown kind %T", made)
	}
	var out bytes.Buffer
	if _, err := writer.WriteTo(&out); err != nil {
		return nil, err
	}
	return out.Bytes(), nil
}

// madeOf digests the terms, so that a change of a note, of the trade's words,
// of the analysis here or in bleve, or of the segment's format shows; and adds
// the stamp, which can be compared at every start.
func madeOf(lib *kb.Library, docs []bleveindex.Document) string {
	h := sha256.New()
	fmt.Fprintln(h, zap.Type, zap.Version)
	for _, d := range docs {
		d.VisitFields(func(f bleveindex.Field) {
			fmt.Fprintln(h, f.Name(), strings.Join(f.(*field).terms, "\x00"))
		})
	}
	return hex.EncodeToString(h.Sum(nil)) + "\n" + strconv.FormatUint(lib.Stamp(), 16) + "\n"
}

// fresh reports whether the prepared segment is of this edition of the notes.
func fresh(lib *kb.Library) bool {
	_, stamp, _ := strings.Cut(strings.TrimSpace(preparedOf), "\n")
	return lib.Builtin() && stamp == strconv.FormatUint(lib.Stamp(), 16)
}
