package kb

import (
	"slices"
	"strings"
	"sync"
)

// Library is a set of notes with their passages, in the order of their ids. A
// built-in note and one that was packed are read when they are first asked for,
// so that one question does not pay for the whole handbook. A Library does not
// change and may be shared.
type Library struct {
	entries []*entry
	builtin bool // holds every built-in note
	stamp   uint64
}

// entry is a note, or the file from which it is read when it is first wanted.
type entry struct {
	id   string
	shop bool
	read func() Note
}

// NewLibrary gathers notes. Of two with one id the first stands; Check and Load
// report the other.
func NewLibrary(notes ...Note) *Library {
	l := &Library{}
	for _, n := range notes {
		l.entries = append(l.entries, &entry{id: n.ID, shop: n.Shop, read: func() Note { return n }})
	}
	l.sort()
	return l
}

// lazily makes an entry whose note is read at most once.
func lazily(id string, read func() Note) *entry {
	return &entry{id: id, read: sync.OnceValue(read)}
}

func (l *Library) sort() {
	slices.SortStableFunc(l.entries, func(a, b *entry) int { return strings.Compare(a.id, b.id) })
	l.entries = slices.CompactFunc(l.entries, func(a, b *entry) bool { return a.id == b.id })
}

// Len is the number of notes.
func (l *Library) Len() int { return len(l.entries) }

// All reads every note, in the order of their ids.
func (l *Library) All() []Note {
	notes := make([]Note, len(l.entries))
	for i, e := range l.entries {
		notes[i] = e.read()
	}
	return notes
}

// Note finds a note by its id.
func (l *Library) Note(id string) (Note, bool) {
	e := l.entry(id)
	if e == nil {
		return Note{}, false
	}
	return e.read(), true
}

// entry finds an entry by its id, nil where there is none.
func (l *Library) entry(id string) *entry {
	i, ok := slices.BinarySearchFunc(l.entries, id, func(e *entry, id string) int { return strings.Compare(e.id, id) })
	if !ok {
		return nil
	}
	return l.entries[i]
}

// NotePassages lists the passages of a note, nil where there is no such note.
func (l *Library) NotePassages(noteID string) []Passage {
	n, _ := l.Note(noteID)
	return n.Passages
}

// Passage finds a passage by its id, "note-id#heading-slug". A bare note id
// finds the note's first passage.
func (l *Library) Passage(id string) (Passage, bool) {
	note, slug, whole := strings.Cut(id, "#")
	for _, p := range l.NotePassages(note) {
		if !whole || p.ID == note+"#"+slug {
			return p, true
		}
	}
	return Passage{}, false
}

// Builtin reports whether every built-in note is in the library, so that a
// search prepared for them may be used.
func (l *Library) Builtin() bool { return l.builtin }

// Stamp tells one edition of the built-in notes from another by the names and
// sizes of their files, without reading them. It is 0 for a library without
// them. An edition of the same sizes is told apart by the tests only.
func (l *Library) Stamp() uint64 { return l.stamp }

// Shop lists the shop's own notes in the library.
func (l *Library) Shop() []Note {
	var notes []Note
	for _, e := range l.entries {
		if e.shop {
			notes = append(notes, e.read())
		}
	}
	return notes
}

// Merge returns a library of both. A shop note that bears a built-in note's id
// takes a further "-shop" rather than hiding advice that the program's answers
// lean on.
func (l *Library) Merge(shop *Library) *Library {
	m := &Library{entries: slices.Clone(l.entries), builtin: l.builtin || shop.builtin, stamp: max(l.stamp, shop.stamp)}
	for _, e := range shop.entries {
		if l.entry(e.id) != nil {
			id, read := e.id+"-shop", e.read
			e = &entry{id: id, shop: e.shop, read: sync.OnceValue(func() Note { return read().renamed(id) })}
		}
		m.entries = append(m.entries, e)
	}
	m.sort()
	return m
}

// renamed is the note under another id.
func (n Note) renamed(id string) Note {
	passages := slices.Clone(n.Passages)
	for i := range passages {
		_, slug, _ := strings.Cut(passages[i].ID, "#")
		passages[i].ID, passages[i].Note = id+"#"+slug, id
	}
	n.ID, n.Passages = id, passages
	return n
}
