// Package kb holds what the program has to say in words: the trade notes, in
// passages that each answer one thing.
//
//	note.go      notes and passages
//	library.go   a set of notes; finding one
//	builtin.go   the notes that the program carries
//	prepared.go  the same, parsed beforehand
//	parse.go     Markdown to a note
//	table.go     tables, which plain Markdown lacks
//	plain.go     the Markdown of a passage as plain text
//	shop.go      a shop's own folder of notes
//	packed.go    a shop's notes, parsed and written down
//	reference.go figures in a note, named rather than written
//	render.go    a passage with its figures filled in
//	check.go     the lint, and the worked examples
//	asked.go     how people ask for what a passage answers
//	query.go     what a search is asked and what it answers
//	quantity.go  quantities as a note writes them
//	fault.go     what is wrong in a file, and where
//	notes/*.md   the notes themselves
//	words/       the words of the trade, each with its other forms
//	stock/       a shop's shelf
//
// Limits: a note is at most 64 KiB of UTF-8; markup beyond headings,
// paragraphs, lists, simple tables and emphasis is reduced to its words, and
// HTML is left out.
package kb

// Note is one Markdown file.
type Note struct {
	ID       string
	Title    string
	Topics   []string
	Sources  []string
	Reviewed string // the day it was last read against its sources, 2006-01-02
	See      []string
	Shop     bool   // one of a shop's own
	File     string // where it was read, for messages
	Passages []Passage
	Examples []Example

	source []byte // the file as read, in which the lint finds lines
	html   []int  // lines on which HTML was left out
}

// Passage is the text below one heading of a note: plain text in which a figure
// may stand as a reference, filled in when the passage is shown. Blocks are
// parted by an empty line; the lines within a block (of a list or a table) are
// meant as they stand.
type Passage struct {
	ID      string // note id + "#" + slug of the heading
	Note    string
	Title   string // the note's title
	Heading string
	Text    string // unrendered
	Source  string // what it rests on, in a few words
	Topics  []string
	Shop    bool
	Line    int // where it begins in its file
}

// Example is a worked example of a note: a question and the figures that its
// answer must hold.
type Example struct {
	Question string
	Want     []Expected
	Line     int
}

// Expected is one figure of a worked example, as written: a value and a unit,
// or a word.
type Expected struct {
	Figure string
	Value  string
	Line   int
}
