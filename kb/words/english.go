package words

import (
	_ "embed"
	"sort"
	"strings"
)

// english lists ordinary English words of four letters and more, American and
// British, in order, one a line: a word of it was meant as it was written, though
// neither the trade nor the notes know it. It is drawn from the word lists of
// SCOWL up to size 60, under the terms in english-licence.txt.
//
//go:embed english.txt
var english string

// learned lists words that people bring from labels and from books on boats and
// batteries, and that are in no list of ordinary English.
const learned = ` ampacity bms bobber bowrider breakaway cavitation electrolysis ferrite fishfinder freeboard freewheel
	hydrogen impeller jerrycan milfoil monofilament multimeter paddler peukert potentiometer pwm retie slipway skeg sounder
	sulfated sulfation sulphated sulphation tonneau upwind voltmeter wattmeter windless `

// English reports whether a word in lower case is one of ordinary English, or one
// that is learned with boats. It is looked up where the lists lie, so that
// nothing is made of them at the start.
func English(w string) bool {
	if at := strings.Index(learned, w); at > 0 && at+len(w) < len(learned) && learned[at-1] <= ' ' && learned[at+len(w)] <= ' ' {
		return true
	}
	at := sort.Search(len(english), func(i int) bool { return englishAt(i) >= w })
	return at < len(english) && englishAt(at) == w
}

// englishAt is the line that holds a byte of the list.
func englishAt(i int) string {
	from := strings.LastIndexByte(english[:i], '\n') + 1
	line, _, _ := strings.Cut(english[from:], "\n")
	return line
}
