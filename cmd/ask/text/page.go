package text

import (
	"strings"
	"unicode"

	"github.com/mattn/go-runewidth"
)

// ink is what a piece of text is for. Colour follows from it; nothing is said
// by ink alone.
type ink int

const (
	body ink = iota
	strong
	title
	warning
	mark // the underlining of words in the question
)

// sgr is the terminal sequence that begins each ink.
var sgr = [...]string{
	body:    "",
	strong:  "\x1b[1m",
	title:   "\x1b[36m",
	warning: "\x1b[1;33m",
	mark:    "\x1b[1;31m",
}

// contrasting does without colour, which pales in the sun: bold, reversed and
// underlined stand out on any background.
var contrasting = [...]string{
	body:    "",
	strong:  "\x1b[1m",
	title:   "\x1b[1m",
	warning: "\x1b[1;7m",
	mark:    "\x1b[1;4m",
}

const sgrReset = "\x1b[0m"

// span is a piece of text in one ink. A line is spans.
type (
	span struct {
		text string
		ink  ink
	}
	line []span
)

func (l line) width() int {
	n := 0
	for _, s := range l {
		n += columns(s.text)
	}
	return n
}

// widths counts ambiguous characters as narrow in every locale, so that a page
// does not depend on one.
var widths = &runewidth.Condition{EastAsianWidth: false, StrictEmojiNeutral: true}

// columns is the width of text on a terminal, where it is shown cleaned.
func columns(s string) int {
	if printable(s) {
		return len(s)
	}
	return widths.StringWidth(Clean(s))
}

// page draws in a style.
type page struct{ Style }

// paint writes a line, cleaned, with the page's colour.
func (p page) paint(b *strings.Builder, l line) {
	for i := 0; i < len(l); {
		k, text := l[i].ink, ""
		for ; i < len(l) && l[i].ink == k; i++ {
			text += Clean(l[i].text)
		}
		if i == len(l) {
			text = strings.TrimRight(text, " ")
		}
		if p.Colour && k != body && text != "" {
			begin := sgr[k]
			if p.Contrast {
				begin = contrasting[k]
			}
			text = begin + text + sgrReset
		}
		b.WriteString(text)
	}
	b.WriteByte('\n')
}

// words is running text in the ink of the body.
func words(text string) []span { return []span{{text, body}} }

// wrap breaks running text at spaces to the page's width. The first line begins
// with first, the others with rest. A word wider than a line is broken.
func (p page) wrap(first, rest string, text []span) []line {
	if 2*columns(rest) > p.Width {
		rest = "" // a page too narrow for hanging lines
	}
	if 2*columns(first) > p.Width {
		first = ""
	}
	var lines []line
	current, used, begun := lead(first), columns(first), false
	end := func() {
		lines = append(lines, current)
		current, used, begun = lead(rest), columns(rest), false
	}
	for _, w := range split(text) {
		if begun && used+1+w.width() > p.Width {
			end()
		}
		if begun {
			space := span{" ", body}
			if k := w[0].ink; current[len(current)-1].ink == k {
				space.ink = k
			}
			current, used = append(current, space), used+1
		}
		for used+w.width() > p.Width {
			head, tail := w.cut(p.Width - used)
			if len(head) == 0 {
				break // one character wider than the page
			}
			current, w = append(current, head...), tail
			end()
		}
		current, used, begun = append(current, w...), used+w.width(), true
	}
	if begun {
		lines = append(lines, current)
	}
	return lines
}

// lead begins a line with an indent.
func lead(indent string) line {
	if indent == "" {
		return nil
	}
	return line{{indent, body}}
}

// split divides text at white space into words, each of one or more spans.
func split(text []span) []line {
	length := 0
	for _, s := range text {
		length += len(s.text)
	}
	// Words are cut from one piece, about as many as there are in English text.
	spans := make([]span, 0, len(text)+length/5)
	out := make([]line, 0, cap(spans))
	from := 0
	end := func() {
		if from < len(spans) {
			out, from = append(out, line(spans[from:len(spans):len(spans)])), len(spans)
		}
	}
	for _, s := range text {
		rest := Clean(s.text)
		for rest != "" {
			i := strings.IndexFunc(rest, unicode.IsSpace)
			if i < 0 {
				spans = append(spans, span{rest, s.ink})
				break
			}
			if i > 0 {
				spans = append(spans, span{rest[:i], s.ink})
			}
			end()
			rest = strings.TrimLeftFunc(rest[i:], unicode.IsSpace)
		}
	}
	end()
	return out
}

// cut divides a line after at most n columns.
func (l line) cut(n int) (head, tail line) {
	for i, s := range l {
		if w := columns(s.text); w <= n {
			head, n = append(head, s), n-w
			continue
		}
		first := widths.Truncate(s.text, n, "")
		if first != "" {
			head = append(head, span{first, s.ink})
		}
		tail = append(tail, span{s.text[len(first):], s.ink})
		return head, append(tail, l[i+1:]...)
	}
	return head, nil
}

// trim shortens text to n columns, with three dots for the rest: at the end of a
// clause where one ends in the second half, at a space otherwise. With no room
// for a word and the dots it gives nothing.
func trim(text string, n int) string {
	text = strings.Join(strings.Fields(Clean(text)), " ")
	if columns(text) <= n {
		return text
	}
	const dots = " ..."
	if n <= columns(dots) {
		return ""
	}
	short := widths.Truncate(text, n-columns(dots)+1, "") // a space may follow
	end := strings.LastIndexByte(short, ' ')
	if clause := strings.LastIndexAny(short[:max(end, 0)], ",;:"); 2*clause > n {
		end = clause
	}
	if end <= 0 {
		return ""
	}
	return strings.TrimRight(short[:end], " ,;:-(") + dots
}

// pad fills text up to n columns.
func pad(text string, n int) string {
	return text + strings.Repeat(" ", max(0, n-columns(text)))
}

// paragraphs divides a note's text into its paragraphs and list items. Lines
// that only follow each other are one paragraph.
func paragraphs(text string) []string {
	var out []string
	fresh := true
	for l := range strings.Lines(text) {
		l = strings.TrimSpace(l)
		switch {
		case l == "":
			fresh = true
			continue
		case fresh || isItem(l):
			out = append(out, l)
		default:
			out[len(out)-1] += " " + l
		}
		fresh = false
	}
	return out
}

// isItem is true for a line that begins a list item: "- x" or "3. x".
func isItem(l string) bool {
	mark, _, ok := strings.Cut(l, " ")
	if !ok {
		return false
	}
	if mark == "-" || mark == "*" {
		return true
	}
	digits := strings.TrimRight(mark, ".)")
	return digits != "" && digits != mark && strings.Trim(digits, "0123456789") == ""
}

// label makes a title of an id: "speed-control" is "Speed control".
func label(id string) string {
	t := plainID(id)
	if t == "" {
		return t
	}
	return strings.ToUpper(t[:1]) + t[1:]
}

// plainID writes an id in words: "mount.height" is "mount height".
func plainID(id string) string {
	return strings.NewReplacer(".", " ", "-", " ").Replace(id)
}

// sentence ends a text with a full stop where it has no end of its own.
func sentence(t string) string {
	t = strings.TrimSpace(t)
	if t == "" || strings.ContainsAny(t[len(t)-1:], ".?!:;") {
		return t
	}
	return t + "."
}

// widest is the width of the widest text, at most n.
func widest(texts []string, n int) int {
	w := 0
	for _, t := range texts {
		w = max(w, columns(t))
	}
	return min(w, n)
}

// lowerFirst begins a name within a line: "People aboard" is "people aboard",
// "GPS" stays.
func lowerFirst(t string) string {
	if len(t) > 1 && strings.ToLower(t[1:2]) != t[1:2] {
		return t
	}
	return strings.ToLower(t[:min(1, len(t))]) + t[min(1, len(t)):]
}
