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

import "strings"

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

type form struct {
	rest []string // the words after the first
	id   ID
}

var (
	table   []Entry
	byName  = map[string]ID{}
	byFirst = map[string][]form{} // longest first
	single  = map[string]ID{}     // forms of one word, for speed
)

func init() {
	for _, part := range [][]Entry{trade, talk} {
		table = append(table, part...)
	}
	for i, e := range table {
		byName[e.Word] = ID(i)
		for _, f := range append([]string{e.Word}, e.Forms...) {
			ws := Split(f)
			add(ws, ID(i))
			for _, short := range shortened[ws[0]] {
				add(append(Split(short), ws[1:]...), ID(i))
			}
		}
	}
	buildSpelling()
}

// shortened is how the first word of a phrase is often written.
var shortened = map[string][]string{"with": {"w"}, "without": {"w/o", "wo", "w/out"}, "everybody": {"everyone"}}

// add enters one form, keeping the longer ones of a first word in front.
func add(ws []string, id ID) {
	if len(ws) == 0 {
		return
	}
	if len(ws) == 1 {
		if _, have := single[ws[0]]; !have {
			single[ws[0]] = id
		}
		return
	}
	fs := byFirst[ws[0]]
	at := 0
	for at < len(fs) && len(fs[at].rest) >= len(ws)-1 {
		at++
	}
	fs = append(fs, form{})
	copy(fs[at+1:], fs[at:])
	fs[at] = form{rest: ws[1:], id: id}
	byFirst[ws[0]] = fs
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

func match(first string, ws []string) (ID, int) {
	for _, f := range byFirst[first] {
		if len(f.rest) < len(ws) && startsWith(ws[1:], f.rest) {
			return f.id, len(f.rest) + 1
		}
	}
	if id, ok := single[first]; ok {
		return id, 1
	}
	return None, 0
}

func startsWith(ws, rest []string) bool {
	for i, r := range rest {
		if ws[i] != r && (i != len(rest)-1 || singular(ws[i]) != r) {
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
