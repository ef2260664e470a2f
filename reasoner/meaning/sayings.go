package meaning

import (
	"strings"
)

// Sayings are runs of plain words that rules look for and that are no entry of
// the word table: "how long will", "measured wrong". They are looked for as the
// rules write them: in lower case, parted by single spaces, without apostrophes.

// sayingLimit is how many words of a line are looked at: what is asked stands
// within it, and it bounds the work.
const sayingLimit = 400

// saysText tells whether the line says these words.
func (l *line) saysText(t string) bool {
	if l.saying == "" {
		l.saying = spoken(l.r.Text)
		for i := 1; i+1 < len(l.saying); i++ {
			if l.saying[i-1] == ' ' {
				l.begins.set(l.saying[i], l.saying[i+1])
			}
		}
	}
	if len(t) < 2 || !l.begins.has(t[0], t[1]) {
		return false // no word of the line begins as the saying does
	}
	for from := 1; ; {
		i := strings.Index(l.saying[from:], t)
		if i < 0 {
			return false
		}
		from += i
		if end := from + len(t); l.saying[from-1] == ' ' && end < len(l.saying) && l.saying[end] == ' ' {
			return true
		}
		from++
	}
}

// spoken is a text in plain words, each with a space on either side.
func spoken(text string) string {
	if len(text) > 4000 {
		text = text[:4000]
	}
	var store [64]string
	return " " + strings.Join(plain(lowerASCII(text), store[:0]), " ") + " "
}

// plain cuts a lower-case text into words: letters and digits stay together, an
// apostrophe vanishes.
func plain(text string, out []string) []string {
	for i := 0; i < len(text) && len(out) < sayingLimit; {
		if !letter(text[i]) {
			i++
			continue
		}
		j := i
		for j < len(text) && letter(text[j]) {
			j++
		}
		w := text[i:j]
		if j+1 < len(text) && text[j] == '\'' && letter(text[j+1]) {
			k := j + 1
			for k < len(text) && letter(text[k]) {
				k++
			}
			w += text[j+1 : k]
			j = k
		}
		out = append(out, mended(w))
		i = j
	}
	return out
}

// mended is a plain word with a common slip of the pen put right.
func mended(w string) string {
	switch w {
	case "wieght", "weigth", "weght", "waight":
		return "weight"
	case "diffrence", "diference", "differance":
		return "difference"
	case "recomend", "reccomend", "reccommend":
		return "recommend"
	case "capcity", "capasity", "capacitiy":
		return "capacity"
	}
	return w
}

// beginnings is a set of the first two letters of words; it may hold some that are
// in no word.
type beginnings [16]uint64

func (b *beginnings) set(x, y byte) {
	h := (int(x)*33 + int(y)) & 1023
	b[h>>6] |= 1 << (h & 63)
}

func (b *beginnings) has(x, y byte) bool {
	h := (int(x)*33 + int(y)) & 1023
	return b[h>>6]&(1<<(h&63)) != 0
}
