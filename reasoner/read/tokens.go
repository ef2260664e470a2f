package read

import (
	"math"
	"strconv"
	"unicode"
	"unicode/utf8"
)

// class is what kind of thing a token is.
type class uint8

const (
	wordToken     class = iota // letters, and letters with digits after them: "lifepo4"
	digitsToken                // a number in figures
	fractionToken              // one of the characters for a fraction, such as ½
	markToken                  // a sign or punctuation
)

// lexeme is what the reader knows of a token beyond its public face.
type lexeme struct {
	value float64 // of figures
	entry *entry  // what the rows say of the word, nil if nothing
	class class
	whole uint8 // figures before the decimal point, at most 255
	look  look
}

// look is how figures or letters were written.
type look uint8

const (
	grouped     look = 1 << iota // 1,900
	decimal                      // 18.5
	leadingZero                  // 0142
	capitals                     // the letters are all upper case
	gluedLook                    // no space between it and the token before
)

// tokens cuts the text at spaces, at punctuation and where figures meet
// letters, so that "18-foot" is three tokens and "24v" is two. Letters that are
// followed by figures stay together ("lifepo4", "gc2"), since such a name says
// no number, unless the letters announce one ("usd115", "grp31").
//
// The text of the tokens lies in one normalised string: lower case, straight
// quotes, plain hyphens.
func (p *parser) tokens() {
	text := p.text
	guess := len(text)/4 + 8
	p.tok = make([]Token, 0, guess)
	p.lex = make([]lexeme, 0, guess)
	p.norm = make([]byte, 0, len(text)+len(text)/16+8)

	i := 0
	for i < len(text) {
		c := text[i]
		switch {
		case c <= ' ' || c == 0x7f:
			i++
		case isDigit(c) || c == '.' && i+1 < len(text) && isDigit(text[i+1]) && !p.afterFigure(i):
			i = p.figures(i)
		case isLetter(c):
			i = p.letters(i)
		case c < utf8.RuneSelf:
			i = p.mark(i)
		default:
			i = p.wide(i)
		}
	}
	all := string(p.norm)
	for k := range p.tok {
		t := &p.tok[k]
		end := len(all)
		if k+1 < len(p.tok) {
			end = p.tok[k+1].Measure
		}
		t.Text = all[t.Measure:end]
		if p.lex[k].class != digitsToken {
			p.lex[k].entry = lookUp(t.Text)
		}
	}
	for k := range p.tok {
		p.tok[k].Measure = -1
	}
}

// add appends a token whose normalised text starts at norm; the place of that
// text is parked in Measure until the whole string exists.
func (p *parser) add(start, end, norm int, l lexeme) {
	if k := len(p.tok); k > 0 && p.tok[k-1].End == start {
		l.look |= gluedLook
	}
	p.tok = append(p.tok, Token{Start: start, End: end, Measure: norm})
	p.lex = append(p.lex, l)
}

// afterFigure tells whether the byte before i belongs to a number or a word, so
// that the dot at i is no leading decimal point.
func (p *parser) afterFigure(i int) bool {
	if i == 0 {
		return false
	}
	c := p.text[i-1]
	return isDigit(c) || isLetter(c) || c == '.'
}

// figures reads a number in figures: thousands in groups, a decimal point, an
// exponent. A number with two points is a version or an address, hence a word.
func (p *parser) figures(start int) int {
	text, norm := p.text, len(p.norm)
	l := lexeme{class: digitsToken}
	i := start
	for i < len(text) && isDigit(text[i]) {
		i++
	}
	whole := i - start
	if whole > 1 && text[start] == '0' {
		l.look |= leadingZero
	}
	p.norm = append(p.norm, text[start:i]...)
	if whole >= 1 && whole <= 3 {
		sep := byte(0)
		for {
			gap := groupGap(text, i, l.look&grouped != 0 && sep == ' ')
			if gap == 0 {
				break
			}
			l.look |= grouped
			sep = text[i]
			p.norm = append(p.norm, text[i+gap:i+gap+3]...)
			whole += 3
			i += gap + 3
		}
	}
	if i+1 < len(text) && text[i] == '.' && isDigit(text[i+1]) {
		k := i + 1
		for k < len(text) && isDigit(text[k]) {
			k++
		}
		if k+1 < len(text) && text[k] == '.' && isDigit(text[k+1]) {
			for k < len(text) && (isDigit(text[k]) || text[k] == '.' && k+1 < len(text) && isDigit(text[k+1])) {
				k++
			}
			p.norm = append(p.norm, text[i:k]...)
			p.add(start, k, norm, lexeme{class: wordToken})
			return k
		}
		l.look |= decimal
		p.norm = append(p.norm, text[i:k]...)
		i = k
	}
	if k := exponentEnd(text, i); k > i {
		l.look |= decimal
		for _, c := range []byte(text[i:k]) {
			p.norm = append(p.norm, lower(c))
		}
		i = k
	}
	l.whole = uint8(min(whole, 255))
	l.value = figureValue(p.norm[norm:])
	if math.IsInf(l.value, 0) {
		l = lexeme{class: wordToken} // no measure is that large
	}
	p.add(start, i, norm, l)
	return i
}

// groupGap returns the width of a thousands separator at i that is followed by
// exactly three figures, or 0. A comma and the narrow or unbreakable spaces of
// print separate; a plain space only before "000" or before two groups, since
// "2 100 Ah" is two batteries. grouping tells that a plain space already did.
func groupGap(text string, i int, grouping bool) int {
	gap := 0
	switch {
	case i >= len(text):
		return 0
	case text[i] == ',':
		gap = 1
	case text[i] == ' ' && (hasPrefix(text[i+1:], "000") || grouping || spacedGroups(text[i:])):
		gap = 1
	case text[i] >= utf8.RuneSelf:
		r, n := utf8.DecodeRuneInString(text[i:])
		if r != '\u202f' && r != '\u2009' && r != '\u00a0' {
			return 0
		}
		gap = n
	default:
		return 0
	}
	k := i + gap
	if k+3 > len(text) || !isDigit(text[k]) || !isDigit(text[k+1]) || !isDigit(text[k+2]) {
		return 0
	}
	if k+3 < len(text) && isDigit(text[k+3]) {
		return 0
	}
	return gap
}

// spacedGroups tells whether two groups of three figures follow, each behind a
// plain space: " 234 567".
func spacedGroups(s string) bool {
	for range 2 {
		if len(s) < 4 || s[0] != ' ' || !isDigit(s[1]) || !isDigit(s[2]) || !isDigit(s[3]) {
			return false
		}
		s = s[4:]
	}
	return s == "" || !isDigit(s[0]) && !isLetter(s[0])
}

// exponentEnd returns the end of "e6" or "e-1" at i, or i.
func exponentEnd(text string, i int) int {
	if i >= len(text) || text[i] != 'e' && text[i] != 'E' {
		return i
	}
	k := i + 1
	if k < len(text) && (text[k] == '-' || text[k] == '+') {
		k++
	}
	digits := k
	for k < len(text) && isDigit(text[k]) {
		k++
	}
	if k == digits || k < len(text) && isLetter(text[k]) {
		return i
	}
	return k
}

// figureValue is the value of plain figures; short ones without an exponent
// need no general parser, and a quotient of two exact numbers is rounded once.
func figureValue(b []byte) float64 {
	if len(b) <= 16 {
		mantissa, scale, seen := uint64(0), 1.0, false
		for _, c := range b {
			switch {
			case c == '.':
				seen = true
				continue
			case !isDigit(c):
				v, _ := strconv.ParseFloat(string(b), 64)
				return v
			}
			mantissa = mantissa*10 + uint64(c-'0')
			if seen {
				scale *= 10
			}
		}
		if mantissa < 1<<53 {
			return float64(mantissa) / scale
		}
	}
	v, _ := strconv.ParseFloat(string(b), 64)
	return v
}

// letters reads a word. Single letters with dots between them are one word
// without the dots ("k.g.", "a.m."); an apostrophe between letters belongs to
// the word; an address of the web is one word to its end.
func (p *parser) letters(start int) int {
	text, norm := p.text, len(p.norm)
	if end := dottedEnd(text, start); end > start {
		upper := true
		for _, c := range []byte(text[start:end]) {
			if c != '.' {
				upper = upper && c >= 'A' && c <= 'Z'
				p.norm = append(p.norm, lower(c))
			}
		}
		p.add(start, end, norm, lexeme{look: lookOf(upper)})
		return end
	}
	if end := addressEnd(text, start); end > start {
		p.norm = append(p.norm, "http"...)
		p.add(start, end, norm, lexeme{})
		return end
	}
	upper := true
	i := start
	for i < len(text) {
		c := text[i]
		switch {
		case isLetter(c):
			upper = upper && c <= 'Z'
			p.norm = append(p.norm, lower(c))
			i++
		case c == '\'' && i+1 < len(text) && isLetter(text[i+1]) && i > start && !p.contracted(start, i+1):
			p.norm = append(p.norm, c)
			i++
		case isDigit(c):
			if p.splitsBefore(start, i, p.norm[norm:]) {
				p.add(start, i, norm, lexeme{look: lookOf(upper)})
				return i
			}
			p.norm = append(p.norm, c)
			i++
		case c >= utf8.RuneSelf:
			r, n := utf8.DecodeRuneInString(text[i:])
			if r == '’' || r == 'ʼ' {
				if i+n >= len(text) || !isLetter(text[i+n]) || p.contracted(start, i+n) {
					p.add(start, i, norm, lexeme{look: lookOf(upper)})
					return i
				}
				p.norm = append(p.norm, '\'')
			} else if unicode.IsLetter(r) || r == '²' || r == '³' {
				p.norm = utf8.AppendRune(p.norm, unicode.ToLower(r))
			} else {
				p.add(start, i, norm, lexeme{look: lookOf(upper)})
				return i
			}
			i += n
		default:
			p.add(start, i, norm, lexeme{look: lookOf(upper)})
			return i
		}
	}
	p.add(start, i, norm, lexeme{look: lookOf(upper)})
	return i
}

// contracted tells whether the letters at i, behind an apostrophe, are a verb
// that hangs on a measure: "55lbs'll push it".
func (p *parser) contracted(start, i int) bool {
	return start > 0 && isDigit(p.text[start-1]) && lower(p.text[i]) != 's'
}

// splitsBefore tells whether the figure at i ends the word before it: after a
// word that announces a number, and inside a measure ("18ft6"), but not in a
// square or cubic metre ("35mm2").
func (p *parser) splitsBefore(start, i int, word []byte) bool {
	if announces[string(word)] {
		return true
	}
	if start == 0 || !isDigit(p.text[start-1]) {
		return false
	}
	if c := p.text[i]; (c == '2' || c == '3') && (i+1 == len(p.text) || !isDigit(p.text[i+1]) && !isLetter(p.text[i+1])) {
		return word[len(word)-1] != 'm'
	}
	return true
}

func lookOf(upper bool) look {
	if upper {
		return capitals
	}
	return 0
}

// dottedEnd returns the end of single letters with dots between ("m.p.h."), or
// start.
func dottedEnd(text string, start int) int {
	i, n := start, 0
	for i+1 < len(text) && isLetter(text[i]) && text[i+1] == '.' {
		n++
		i += 2
	}
	if i < len(text) && isLetter(text[i]) && n > 0 && (i+1 >= len(text) || !isLetter(text[i+1]) && !isDigit(text[i+1])) {
		i++
		n++
	} else if i < len(text) && (isLetter(text[i]) || isDigit(text[i])) {
		return start // "i.5" or "e.mail"
	}
	if n < 2 {
		return start
	}
	return i
}

// addressEnd returns the end of an address of the web, or start.
func addressEnd(text string, start int) int {
	rest := text[start:]
	if !hasPrefix(rest, "http://") && !hasPrefix(rest, "https://") && !hasPrefix(rest, "www.") {
		return start
	}
	i := start
	for i < len(text) && text[i] > ' ' {
		i++
	}
	return i
}

func hasPrefix(s, lowerPrefix string) bool {
	if len(s) < len(lowerPrefix) {
		return false
	}
	for i := range len(lowerPrefix) {
		if lower(s[i]) != lowerPrefix[i] {
			return false
		}
	}
	return true
}

// mark reads one ASCII sign. Two apostrophes after a figure are an inch mark,
// "<=" and ">=" are one sign each, a row of the same sign is one token.
func (p *parser) mark(start int) int {
	text, norm := p.text, len(p.norm)
	c, i := text[start], start+1
	switch {
	case c == '\'' && i < len(text) && text[i] == '\'' && start > 0 && isDigit(text[start-1]):
		p.norm = append(p.norm, '"')
		i++
	case (c == '<' || c == '>') && i < len(text) && text[i] == '=':
		p.norm = append(p.norm, c, '=')
		i++
	default:
		if c == '`' {
			c = '\''
		}
		p.norm = append(p.norm, c)
		for c != '"' && c != '\'' && i < len(text) && text[i] == c {
			i++
		}
	}
	p.add(start, i, norm, lexeme{class: markToken})
	return i
}

// wide reads what starts with a byte beyond ASCII.
func (p *parser) wide(start int) int {
	text, norm := p.text, len(p.norm)
	r, n := utf8.DecodeRuneInString(text[start:])
	if r == utf8.RuneError && n <= 1 || r < 0xa0 {
		// Bytes that are no text: one token for a whole run of them.
		i := start + n
		for i < len(text) && text[i] >= utf8.RuneSelf {
			r, n := utf8.DecodeRuneInString(text[i:])
			if !(r == utf8.RuneError && n <= 1) && r >= 0xa0 {
				break
			}
			i += n
		}
		p.norm = utf8.AppendRune(p.norm, utf8.RuneError)
		p.add(start, i, norm, lexeme{class: markToken})
		return i
	}
	if v, ok := vulgar(r); ok {
		p.norm = append(p.norm, text[start:start+n]...)
		p.add(start, start+n, norm, lexeme{class: fractionToken, value: v})
		return start + n
	}
	if plain, ok := plainMark(r); ok {
		if plain == "'" && start > 0 && isDigit(text[start-1]) {
			if r2, n2 := utf8.DecodeRuneInString(text[start+n:]); r2 == r {
				plain, n = `"`, n+n2
			}
		}
		if plain == " " {
			return start + n
		}
		p.norm = append(p.norm, plain...)
		p.add(start, start+n, norm, lexeme{class: markToken})
		return start + n
	}
	if unicode.IsSpace(r) || unicode.Is(unicode.Cf, r) {
		return start + n
	}
	if unicode.IsLetter(r) {
		i := start
		for i < len(text) {
			r, n := utf8.DecodeRuneInString(text[i:])
			if !unicode.IsLetter(r) {
				break
			}
			p.norm = utf8.AppendRune(p.norm, unicode.ToLower(r))
			i += n
		}
		p.add(start, i, norm, lexeme{})
		return i
	}
	p.norm = append(p.norm, text[start:start+n]...)
	p.add(start, start+n, norm, lexeme{class: markToken})
	return start + n
}

// plainMark maps the signs of print to those of a keyboard.
func plainMark(r rune) (string, bool) {
	switch r {
	case '’', '‘', '′', 'ʼ', '´', 'ʹ', '＇':
		return "'", true
	case '”', '“', '″', 'ʺ', '＂':
		return `"`, true
	case '–', '—', '−', '‐', '‑', '‒':
		return "-", true
	case '⁄', '∕':
		return "/", true
	case '×', '✕':
		return "x", true
	case '≤':
		return "<=", true
	case '≥':
		return ">=", true
	case '≈', '∼':
		return "~", true
	case '°', 'º', '˚':
		return "°", true
	case '％':
		return "%", true
	case '\u00a0', '\u202f', '\u2009', '\u2007', '\u2002', '\u2003', '\u3000':
		return " ", true
	}
	return "", false
}

// vulgar is the value of a fraction that has a character of its own.
func vulgar(r rune) (float64, bool) {
	for _, f := range vulgarFractions {
		if f.char == r {
			return f.over / f.under, true
		}
	}
	return 0, false
}

var vulgarFractions = []struct {
	char        rune
	over, under float64
}{
	{'½', 1, 2}, {'¼', 1, 4}, {'¾', 3, 4}, {'⅓', 1, 3}, {'⅔', 2, 3},
	{'⅛', 1, 8}, {'⅜', 3, 8}, {'⅝', 5, 8}, {'⅞', 7, 8}, {'⅕', 1, 5},
	{'⅖', 2, 5}, {'⅗', 3, 5}, {'⅘', 4, 5}, {'⅙', 1, 6}, {'⅚', 5, 6},
	{'⅐', 1, 7}, {'⅑', 1, 9}, {'⅒', 1, 10},
}

func isDigit(c byte) bool  { return c >= '0' && c <= '9' }
func isLetter(c byte) bool { return c|0x20 >= 'a' && c|0x20 <= 'z' }

func lower(c byte) byte {
	if c >= 'A' && c <= 'Z' {
		return c | 0x20
	}
	return c
}
