package kb

import (
	"encoding/binary"
	"errors"
)

// Packed is the edition of what Pack writes. It takes the next number whenever
// Pack, or what Parse makes of a file, changes.
const Packed = 1

// errPacked says that a text is not of this form.
var errPacked = errors.New("these are no packed notes; pack them again")

// Pack writes a library of shop notes and the faults found with them in a form
// that Unpack takes in without parsing: numbers as varints, and texts and lists
// with their length before them, so that no character of a note can be taken for
// a mark. The source of the notes is left out: only the lint wants it.
func Pack(lib *Library, faults []Fault) []byte {
	var head, body writer
	head.faults(faults)
	head.number(lib.Len())
	for _, n := range lib.All() {
		before := len(body.data)
		body.note(n)
		head.text(n.ID)
		head.number(len(body.data) - before)
	}
	return append(head.data, body.data...)
}

// Unpack reads what Pack wrote. Each note is taken apart when it is first asked
// for; its texts stay parts of the data, which must not change any more. That
// the data is whole is for the caller to see to, by a checksum: of damage only
// what shows in the list of the notes is reported.
func Unpack(data []byte) (*Library, []Fault, error) {
	r := reading{rest: string(data)}
	faults := r.faults()
	type packed struct {
		id     string
		length int
	}
	notes := make([]packed, r.count())
	for i := range notes {
		notes[i] = packed{r.text(), r.number()}
		if i > 0 && notes[i-1].id >= notes[i].id {
			r.bad = true
		}
	}
	l := &Library{entries: make([]*entry, len(notes))}
	for i, n := range notes {
		if r.bad || n.length > len(r.rest) {
			return nil, nil, errPacked
		}
		text := r.rest[:n.length]
		r.rest = r.rest[n.length:]
		l.entries[i] = lazily(n.id, func() Note {
			r := reading{rest: text}
			return r.note(n.id)
		})
		l.entries[i].shop = true
	}
	if r.bad || r.rest != "" {
		return nil, nil, errPacked
	}
	return l, faults, nil
}

// writer puts values one behind the other.
type writer struct{ data []byte }

func (w *writer) number(n int) { w.data = binary.AppendUvarint(w.data, uint64(n)) }

func (w *writer) text(s string) {
	w.number(len(s))
	w.data = append(w.data, s...)
}

func (w *writer) list(items []string) {
	w.number(len(items))
	for _, s := range items {
		w.text(s)
	}
}

func (w *writer) faults(faults []Fault) {
	w.number(len(faults))
	for _, f := range faults {
		w.text(f.File)
		w.number(f.Line)
		w.text(f.Text)
	}
}

// note writes all of a note but its id, and what its passages have from it.
func (w *writer) note(n Note) {
	for _, s := range []string{n.Title, n.Reviewed, n.File} {
		w.text(s)
	}
	for _, l := range [][]string{n.Topics, n.Sources, n.See} {
		w.list(l)
	}
	w.number(len(n.Passages))
	for _, p := range n.Passages {
		w.list([]string{p.ID, p.Heading, p.Text, p.Source})
		w.number(p.Line)
	}
	w.number(len(n.Examples))
	for _, e := range n.Examples {
		w.text(e.Question)
		w.number(e.Line)
		w.number(len(e.Want))
		for _, x := range e.Want {
			w.list([]string{x.Figure, x.Value})
			w.number(x.Line)
		}
	}
}

// reading takes values in the order in which writer put them. After a value that
// cannot be it is bad, and gives zeros and empty texts.
type reading struct {
	rest string
	bad  bool
}

func (r *reading) number() int {
	var buf [binary.MaxVarintLen64]byte
	n, size := binary.Uvarint(buf[:copy(buf[:], r.rest)])
	if size <= 0 || n > 1<<31-1 {
		r.bad, r.rest = true, ""
		return 0
	}
	r.rest = r.rest[size:]
	return int(n)
}

// count is a number of things to come, each of at least a byte.
func (r *reading) count() int {
	n := r.number()
	if n > len(r.rest) {
		r.bad, r.rest = true, ""
		return 0
	}
	return n
}

func (r *reading) text() string {
	n := r.count()
	s := r.rest[:n]
	r.rest = r.rest[n:]
	return s
}

func (r *reading) list() []string {
	n := r.count()
	if n == 0 {
		return nil
	}
	items := make([]string, n)
	for i := range items {
		items[i] = r.text()
	}
	return items
}

// texts is a list of so many.
func (r *reading) texts(n int) []string {
	items := r.list()
	if len(items) != n {
		r.bad = true
		return make([]string, n)
	}
	return items
}

func (r *reading) faults() []Fault {
	var faults []Fault
	for range r.count() {
		faults = append(faults, Fault{r.text(), r.number(), r.text()})
	}
	return faults
}

func (r *reading) note(id string) Note {
	n := Note{ID: id, Shop: true, Title: r.text(), Reviewed: r.text(), File: r.text(),
		Topics: r.list(), Sources: r.list(), See: r.list()}
	for range r.count() {
		t := r.texts(4)
		n.Passages = append(n.Passages, Passage{ID: t[0], Heading: t[1], Text: t[2], Source: t[3], Line: r.number(),
			Note: id, Title: n.Title, Topics: n.Topics, Shop: true})
	}
	for range r.count() {
		e := Example{Question: r.text(), Line: r.number()}
		for range r.count() {
			t := r.texts(2)
			e.Want = append(e.Want, Expected{Figure: t[0], Value: t[1], Line: r.number()})
		}
		n.Examples = append(n.Examples, e)
	}
	return n
}
