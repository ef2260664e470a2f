package index

import (
	"github.com/blevesearch/vellum"

	"heronlake.example/ask/kb/words"
)

// correct finds the word of the notes that an unknown one was meant for: same
// first letter, one slip away (a letter too many, too few, wrong, or two
// changed places), two in words of eight letters and more. Of several the
// nearest stands, then the one in most passages, then the first by alphabet.
// Words under four letters are left alone.
func (s *search) correct(said string) (string, bool) {
	if len(said) < 4 || !letters(said) {
		return "", false
	}
	slips := 1
	if len(said) >= 8 {
		slips = 2
	}
	best, bestSlips, bestHeld := "", slips+1, 0
	for _, d := range s.desks {
		d.spellings(said[0], func(word string) {
			if l := len(word) - len(said); l > slips || -l > slips {
				return
			}
			n := words.Slips(said, word, slips)
			if n > slips || n > bestSlips || len(said) == 4 && !swapped(said, word) {
				return
			}
			held := d.frequency(stemOf(word))
			if n < bestSlips || held > bestHeld || held == bestHeld && word < best {
				best, bestSlips, bestHeld = word, n, held
			}
		})
	}
	return best, best != ""
}

func letters(s string) bool {
	for i := range len(s) {
		if s[i] < 'a' || s[i] > 'z' {
			return false
		}
	}
	return true
}

// swapped reports whether two words differ by two neighbours that changed places.
func swapped(a, b string) bool {
	if len(a) != len(b) {
		return false
	}
	i := 0
	for i < len(a) && a[i] == b[i] {
		i++
	}
	return i+1 < len(a) && a[i] == b[i+1] && a[i+1] == b[i] && a[i+2:] == b[i+2:]
}

// spellings visits the words of the segment that begin with a letter, in
// alphabetical order.
func (d *desk) spellings(first byte, visit func(word string)) {
	it := d.word.AutomatonIterator(new(vellum.AlwaysMatch), []byte{first}, []byte{first + 1})
	for {
		entry, err := it.Next()
		if err != nil || entry == nil {
			return
		}
		visit(entry.Term)
	}
}
