package text

import (
	"strings"
	"unicode"
)

// Unsafe is true for a character that could steer a terminal or turn its text
// round: controls, escapes, direction marks, and other characters that are
// shown as nothing or move the cursor.
func Unsafe(r rune) bool {
	return unicode.Is(unicode.C, r) || r == '\u2028' || r == '\u2029' || r == unicode.ReplacementChar
}

// Clean makes text harmless to show on one line: white space becomes a space,
// and each unsafe character a question mark.
func Clean(s string) string {
	if printable(s) {
		return s
	}
	return strings.Map(cleanRune, s)
}

// printable is true for text of printable ASCII alone, as most of a page is: it
// is clean as it stands, and each byte takes one column.
func printable(s string) bool {
	for i := 0; i < len(s); i++ {
		if s[i] < ' ' || s[i] > '~' {
			return false
		}
	}
	return true
}

func cleanRune(r rune) rune {
	switch {
	case r == '\t' || r == '\n' || r == '\r' || r == '\u00a0':
		return ' '
	case Unsafe(r):
		return '?'
	}
	return r
}
