// Package kb is what the program knows that is not arithmetic: the trade notes,
// in passages that each answer one thing.
//
//	note.go      notes and passages; reading Markdown
//	query.go     what a search is asked and what it answers
//	notes/*.md   the notes themselves
//	words/       the trade's words and their synonyms
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
}

// Passage is the text below one heading of a note: plain text in which a figure
// may stand as a reference, filled in when the passage is shown.
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

// Library is a set of notes with their passages, in the order of their ids.
type Library struct{ Notes []Note }
