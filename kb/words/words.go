// Package words is the trade's vocabulary: each thing with its plain name and
// the ways people say and misspell it, in one table that both the reading of a
// question and the search of the notes use.
//
//	words.go    entries, and finding the longest one at a place in a line
//	trade.go    the table: hulls, materials, batteries, parts, symptoms
//	talk.go     the table, second half: the words around a number at a counter
//	spelling.go misspelt words of the trade, and the ordinary words left alone
//	search.go   the same table as synonyms for a search
//
// Limits: one language; generic words only. A form belongs to one entry. Words
// are compared in lower case, with hyphens, slashes and apostrophes taken out
// as Split does it.
package words

import (
	"slices"
	"strings"
	"sync"
)

// Kind is the part of the trade that a word belongs to.
type Kind string

const (
	Hull      Kind = "hull"
	Material  Kind = "material"
	Chemistry Kind = "chemistry"
	Water     Kind = "water"
	Weather   Kind = "weather"
	Mount     Kind = "mount"
	Control   Kind = "control"
	Drive     Kind = "drive"
	Feature   Kind = "feature"
	Part      Kind = "part"
	Symptom   Kind = "symptom"
	Fishing   Kind = "fishing"
	Talk      Kind = "talk" // no word of the trade by itself; tells what a number is about
)

// Entry is one thing and the ways it is said.
type Entry struct {
	Word  string // the plain name, which is also a form
	Kind  Kind
	Forms []string // further forms; several words are separated by one space
}

// ID is an entry's place in the table. None is no entry.
type ID int

// None stands for a word that is in no entry.
const None ID = -1

// table is the two halves of the vocabulary, and byName where an entry stands.
var (
	table  = slices.Concat(trade, talk)
	byName = func() map[string]ID {
		m := make(map[string]ID, len(table))
		for i, e := range table {
			m[e.Word] = ID(i)
		}
		return m
	}()
)

// form is one way of saying an entry.
type form struct {
	text  string // its words parted by single spaces
	first uint8  // the length of the first word
	words uint8
	id    int16
	next  int16 // the form of this bucket that was added before, counted from 1
}

// lookup finds forms by their first word. It is made when a text is first
// looked at. A plain table of buckets in place of a map of slices makes it in a
// tenth of the time, which every start would pay.
type lookup struct {
	forms   []form
	buckets [2048]int16 // the form added last, counted from 1; 0 for none
}

var forms = sync.OnceValue(func() *lookup {
	n := 64 // those with a shortened word
	for i := range table {
		n += 1 + len(table[i].Forms)
	}
	t := &lookup{forms: make([]form, 0, n)}
	for i := range table {
		t.add(table[i].Word, ID(i))
		for _, f := range table[i].Forms {
			t.add(f, ID(i))
		}
	}
	return t
})

// shortened is how the first word of a phrase is often written.
func shortened(first string) []string {
	switch first {
	case "with":
		return []string{"w"}
	case "without":
		return []string{"w o", "wo", "w out"}
	case "everybody":
		return []string{"everyone"}
	}
	return nil
}

// add enters one form, and the same with its first word shortened.
func (t *lookup) add(text string, id ID) {
	text = joined(text)
	if text == "" {
		return
	}
	first := t.enter(text, id)
	for _, short := range shortened(text[:first]) {
		t.enter(short+text[first:], id)
	}
}

// enter enters a form and returns the length of its first word.
func (t *lookup) enter(text string, id ID) int {
	first := strings.IndexByte(text, ' ')
	words := 1
	if first < 0 {
		first = len(text)
	} else {
		words += strings.Count(text[first:], " ")
	}
	b := &t.buckets[bucket(text[:first])]
	t.forms = append(t.forms, form{text, uint8(first), uint8(words), int16(id), *b})
	*b = int16(len(t.forms))
	return first
}

// bucket is the hash FNV-1a, cut to the number of buckets.
func bucket(word string) int {
	h := uint32(2166136261)
	for i := 0; i < len(word); i++ {
		h = (h ^ uint32(word[i])) * 16777619
	}
	return int(h % uint32(len(lookup{}.buckets)))
}

// joined is a form as Split cuts it, its words parted by single spaces. Most are
// written so.
func joined(text string) string {
	for i := 0; i < len(text); i++ {
		c := text[i]
		if c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == ' ' && i > 0 && i < len(text)-1 && text[i-1] != ' ' {
			continue
		}
		return strings.Join(Split(text), " ")
	}
	return text
}

// Of returns the entry of that plain name; None when there is none.
func Of(name string) ID {
	if id, ok := byName[name]; ok {
		return id
	}
	return None
}

// Count is the number of entries; an ID is below it.
func Count() int { return len(table) }

// Name is the plain name of an entry, "" for None.
func (id ID) Name() string {
	if id < 0 || int(id) >= len(table) {
		return ""
	}
	return table[id].Word
}

// Kind is the kind of an entry, "" for None.
func (id ID) Kind() Kind {
	if id < 0 || int(id) >= len(table) {
		return ""
	}
	return table[id].Kind
}

// Entries returns a copy of the table.
func Entries() []Entry { return append([]Entry(nil), table...) }

// Match finds the longest entry that the words begin with, and how many words
// it takes; None and 0 when there is none. A plural in -s matches its singular.
func Match(ws []string) (ID, int) {
	if len(ws) == 0 {
		return None, 0
	}
	if id, n := match(ws[0], ws); n > 0 {
		return id, n
	}
	if s := singular(ws[0]); s != "" {
		return match(s, ws)
	}
	return None, 0
}

// match finds the longest form; of two alike the one that was added first.
func match(first string, ws []string) (ID, int) {
	t := forms()
	id, n := None, 0
	for i := t.buckets[bucket(first)]; i > 0; i = t.forms[i-1].next {
		f := &t.forms[i-1]
		if words := int(f.words); words >= n && words <= len(ws) && f.text[:f.first] == first && startsWith(ws[1:], f.text[f.first:]) {
			id, n = ID(f.id), words
		}
	}
	return id, n
}

// startsWith compares words with the rest of a form, a space before each; the
// last may be a plural.
func startsWith(ws []string, rest string) bool {
	for i := 0; rest != ""; i++ {
		var r string
		r, rest = rest[1:], ""
		if j := strings.IndexByte(r, ' '); j >= 0 {
			r, rest = r[:j], r[j:]
		}
		if ws[i] != r && (rest != "" || singular(ws[i]) != r) {
			return false
		}
	}
	return true
}

// singular takes the -s off a word that may be a plural, "" when it is none.
func singular(w string) string {
	if len(w) < 4 || w[len(w)-1] != 's' || w[len(w)-2] == 's' || w[len(w)-2] == 'u' {
		return ""
	}
	return w[:len(w)-1]
}

// Split cuts a text into words in lower case: letters and digits stay together,
// an apostrophe vanishes, everything else separates.
func Split(text string) []string {
	var out []string
	var b strings.Builder
	flush := func() {
		if b.Len() > 0 {
			out = append(out, b.String())
			b.Reset()
		}
	}
	for _, r := range strings.ToLower(text) {
		switch {
		case r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || r > 127 && r != '’' && r != '‘' && r != '–' && r != '—' && r != ' ':
			b.WriteRune(r)
		case r == '\'' || r == '’' || r == '‘':
		default:
			flush()
		}
	}
	flush()
	return out
}
