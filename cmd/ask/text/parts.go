package text

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
)

// one is a block that is drawn whole or not at all.
func one(name string, lines []line) *block {
	if len(lines) == 0 {
		return nil
	}
	return &block{name: name, items: 1, draw: func(int, bool) []line { return lines }}
}

func (p page) headline(t string) *block {
	return one("headline", p.wrap("", "", []span{{t, strong}}))
}

// verbatim keeps the lines of a text that was laid out by hand.
func (p page) verbatim(t string) *block {
	var lines []line
	for l := range strings.Lines(t) {
		l = strings.TrimRight(Clean(l), " ")
		if columns(l) <= p.Width {
			lines = append(lines, line{{l, body}})
			continue
		}
		indent := l[:len(l)-len(strings.TrimLeft(l, " "))]
		lines = append(lines, p.wrap(indent, indent, words(l))...)
	}
	return one("reply", lines)
}

func (p page) changed(changes []answer.Change) *block {
	return &block{name: "changed", items: len(changes), draw: func(n int, _ bool) []line {
		var list []string
		for _, c := range changes[:n] {
			list = append(list, c.Text)
		}
		return p.wrap("", "  ", []span{{"Changed: ", title}, {sentence(strings.Join(list, "; ")), body}})
	}}
}

// mostQuoted is how many passages are quoted whole; a third is a wall of text,
// and is named among the notes.
const mostQuoted = 2

// quotedPassages are the passages that are themselves the answer: those marked
// so, or the first where there is no figure that they could stand behind.
func quotedPassages(a answer.Answer) []answer.Passage {
	var marked []answer.Passage
	for _, q := range a.Passages {
		if q.Quoted {
			marked = append(marked, q)
		}
	}
	if marked == nil && len(a.Figures) == 0 {
		marked = a.Passages
	}
	return marked[:min(len(marked), mostQuoted)]
}

// quotes shows passages whole, word for word.
func (p page) quotes(passages []answer.Passage) *block {
	return &block{name: "quotes", items: len(passages), draw: func(n int, _ bool) []line {
		var lines []line
		for i, q := range passages[:n] {
			if i > 0 {
				lines = append(lines, line{})
			}
			lines = append(lines, p.wrap("", "  ", []span{{quoteTitle(q), title}})...)
			for j, t := range paragraphs(q.Text) {
				rest := "  "
				if isItem(t) {
					rest = "    "
				} else if j > 0 {
					lines = append(lines, line{})
				}
				lines = append(lines, p.wrap("  ", rest, words(t))...)
			}
			lines = append(lines, p.wrap("  ", "      ", words(fmt.Sprintf("[%d] %s; %s", q.N, noteTitle(q), origin(q))))...)
		}
		return lines
	}}
}

// noteTitle is the note that a passage stands in, quoteTitle what the passage is
// about, and noteName both.
func noteTitle(q answer.Passage) string {
	if q.Title != "" {
		return q.Title
	}
	return label(q.Note)
}

func quoteTitle(q answer.Passage) string {
	if q.Heading != "" {
		return q.Heading
	}
	return noteTitle(q)
}

func noteName(q answer.Passage) string {
	if q.Heading == "" || strings.EqualFold(q.Heading, noteTitle(q)) {
		return noteTitle(q)
	}
	return noteTitle(q) + ", \"" + q.Heading + "\""
}

// origin is what a passage rests on.
func origin(q answer.Passage) string {
	source := strings.TrimSuffix(q.Source, ".")
	switch {
	case q.Shop && source == "":
		return "the shop's own note"
	case q.Shop:
		return "the shop's own note; " + source
	case source == "":
		return "no source given"
	}
	return source
}

// figures shows the figures that were asked for or that decided; all of them
// where none is marked and no table stands for them.
func (p page) figures(a answer.Answer) *block {
	var shown []answer.Figure
	for _, f := range a.Figures {
		if f.Asked || f.Decides {
			shown = append(shown, f)
		}
	}
	if shown == nil && len(a.Tables) == 0 {
		shown = a.Figures
	}
	return &block{name: "figures", items: len(shown), draw: func(n int, short bool) []line {
		return p.figureLines(foremost(shown, n), a.Passages, short)
	}}
}

// foremost keeps n figures in their order: those that were asked for before
// those that only decide.
func foremost(figures []answer.Figure, n int) []answer.Figure {
	drop := len(figures) - n
	out := slices.Clone(figures)
	for _, asked := range []bool{false, true} {
		for i := len(out) - 1; i >= 0 && drop > 0; i-- {
			if out[i].Asked == asked {
				out, drop = slices.Delete(out, i, i+1), drop-1
			}
		}
	}
	return out
}

// The columns of a figure: label, value with its band, and how, where at least
// leastHow columns are left for it.
const (
	widestLabel = 34
	widestValue = 32
	leastHow    = 16
)

// figureLines draws figures in columns. In short, a working that does not fit
// beside its figure is left to :why.
func (p page) figureLines(figures []answer.Figure, passages []answer.Passage, short bool) []line {
	var labels, values []string
	for _, f := range figures {
		labels = append(labels, f.Label)
		values = append(values, withBand(f.Display, f.Band))
	}
	lw, vw := widest(labels, widestLabel), widest(values, widestValue)
	indent := strings.Repeat(" ", lw+vw+4)
	room := p.Width - len(indent)
	var lines []line
	for i, f := range figures {
		how := f.How
		if how == f.Display {
			how = "" // says nothing that the value does not
		}
		cites := strings.TrimSpace(citations(f.Cites, passages))
		if p.Plain {
			text := f.Label + ": " + sentence(values[i])
			if how != "" {
				text += " " + sentence(how)
			}
			lines = append(lines, p.wrap("", "  ", words(text+" "+cites))...)
			continue
		}
		band := strings.TrimPrefix(values[i], f.Display)
		if columns(f.Label) > lw || columns(values[i]) > vw || room < columns(cites) {
			lines = append(lines, p.wrap("", "  ", []span{{f.Label + " ", body}, {f.Display, strong}, {band + " " + cites, body}})...)
			continue
		}
		if columns(how+" "+cites) > room && (short || room < leastHow) {
			how = ""
		}
		head := line{
			{pad(f.Label, lw) + "  ", body},
			{f.Display, strong},
			{pad(band, vw-columns(f.Display)) + "  ", body},
		}
		for j, l := range (page{Style{Width: room}}).wrap("", "", words(how+" "+cites)) {
			if j > 0 {
				head = line{{indent, body}}
			}
			lines = append(lines, append(head, l...))
			head = nil
		}
		if head != nil {
			lines = append(lines, head)
		}
	}
	return lines
}

// withBand writes a value with its band in brackets.
func withBand(value, band string) string {
	if band == "" {
		return value
	}
	return value + " (" + strings.TrimSuffix(strings.TrimPrefix(band, "("), ")") + ")"
}

// citations writes the numbers of the passages that are there: " [1][3]".
func citations(cites []int, passages []answer.Passage) string {
	t := ""
	for _, n := range cites {
		for _, q := range passages {
			if q.N == n {
				t += fmt.Sprintf("[%d]", n)
			}
		}
	}
	if t != "" {
		t = " " + t
	}
	return t
}

// choices shows each pick with its reason and, where there is room, what would
// change it.
func (p page) choices(a answer.Answer) *block {
	var labels []string
	for _, c := range a.Choices {
		labels = append(labels, label(c.ID))
	}
	lw := widest(labels, widestLabel)
	indent := strings.Repeat(" ", lw+2)
	if p.Plain || p.Width < 2*lw+leastHow {
		lw, indent = 0, "  "
	}
	return &block{name: "choices", items: len(a.Choices), draw: func(n int, short bool) []line {
		var lines []line
		for i, c := range a.Choices[:n] {
			head := pad(labels[i], lw) + "  "
			if lw == 0 {
				head = labels[i] + ": "
			}
			cites := citations(c.Cites, a.Passages)
			if short {
				why := ""
				if room := p.Width - columns(head+c.Pick+": "+cites); room > 0 {
					why = trim(c.Why, room)
				}
				if why != "" {
					why = ": " + why
				}
				lines = append(lines, p.entry(head, indent, []span{{c.Pick, strong}, {why + cites, body}})...)
				continue
			}
			text := ""
			if c.Why != "" {
				text = ": " + strings.TrimSuffix(c.Why, ".")
			}
			if c.Instead != "" {
				text += "; " + strings.TrimSuffix(c.Instead, ".")
			}
			lines = append(lines, p.entry(head, indent, []span{{c.Pick, strong}, {text + cites, body}})...)
		}
		return lines
	}}
}

// entry is a head with text behind it, wrapped to stand clear of the head.
func (p page) entry(head, indent string, text []span) []line {
	if columns(head) != columns(indent) || 2*columns(indent) > p.Width {
		return p.wrap("", "    ", append([]span{{head, body}}, text...))
	}
	return p.wrap(head, indent, text)
}

func (p page) tables(tables []answer.Table) *block {
	return &block{name: "tables", items: len(tables), draw: func(n int, _ bool) []line {
		var lines []line
		for i, t := range tables[:n] {
			if i > 0 {
				lines = append(lines, line{})
			}
			lines = append(lines, p.table(t)...)
		}
		return lines
	}}
}

// table draws columns where they fit, and one cell a line where they do not.
func (p page) table(t answer.Table) []line {
	lines := p.wrap("", "  ", []span{{t.Title, title}})
	cells := func(row []string, i int) string {
		if i < len(row) {
			return row[i]
		}
		return ""
	}
	ws := make([]int, len(t.Columns))
	total := 0
	for i, c := range t.Columns {
		ws[i] = columns(c)
		for _, r := range t.Rows {
			ws[i] = max(ws[i], columns(cells(r, i)))
		}
		total += ws[i] + 2
	}
	if total-2 > p.Width || p.Plain {
		for _, r := range t.Rows {
			var list []string
			for i, c := range t.Columns {
				if cell := cells(r, i); cell != "" && c != "" {
					list = append(list, c+" "+cell)
				} else if cell != "" {
					list = append(list, cell)
				}
			}
			lines = append(lines, p.wrap("", "  ", words(sentence(strings.Join(list, ", "))))...)
		}
	} else {
		row := func(r []string, k ink) line {
			text := ""
			for i := range t.Columns {
				text += pad(cells(r, i), ws[i]) + "  "
			}
			return line{{strings.TrimRight(text, " "), k}}
		}
		lines = append(lines, row(t.Columns, strong))
		for _, r := range t.Rows {
			lines = append(lines, row(r, body))
		}
	}
	return append(lines, p.wrap("", "", words(t.Verdict))...)
}

// offers names what the shelf holds for this boat, the best first, a line each
// and three lines in all; where the cost was asked for, more of them in full.
func (p page) offers(a answer.Answer) *block {
	most := mostOffers
	if costAsked(a) {
		most = len(a.Offers)
	}
	return &block{name: "offers", items: min(most, len(a.Offers)), draw: func(n int, _ bool) []line {
		lines := p.wrap("", "  ", []span{{"On the shelf, " + a.Shelf + ":", title}})
		for _, o := range a.Offers[:n] {
			rest := offered(o)
			if !costAsked(a) {
				rest = cmp.Or(trim(rest, p.Width-3-columns(o.Name)), rest)
			}
			rest = " " + rest
			lines = append(lines, p.wrap("  ", "    ", []span{{o.Name, strong}, {rest, body}})...)
		}
		return lines
	}}
}

// offered is an offer's prices, and what is tight or wrong about it, or else
// which way of choosing it leads.
func offered(o answer.Offer) string {
	text := fmt.Sprintf("(%s), %s", o.SKU, dollars(o.Price))
	switch {
	case o.Total > 0 && o.Whole:
		text += ", complete " + dollars(o.Total)
	case o.Total > 0:
		text += ", rig in part " + dollars(o.Total)
	}
	if !o.Fits {
		text += "; does not fit"
	}
	switch {
	case o.Reason != "":
		text += ": " + strings.TrimSuffix(o.Reason, ".")
	case len(o.Views) > 0:
		text += "; " + strings.Join(o.Views, ", ")
	}
	return text
}

// mostOffers is how many motors a page names that was not asked for prices.
const mostOffers = 2

// costAsked reports whether the question asked what it costs.
func costAsked(a answer.Answer) bool {
	for _, f := range a.Figures {
		if f.ID == "cost.total" && f.Asked {
			return true
		}
	}
	return false
}

// parts is the rig of the first offer with its prices, a line each; shown where
// the cost was asked for.
func (p page) parts(a answer.Answer) *block {
	if !costAsked(a) {
		return nil
	}
	return &block{name: "parts", items: len(a.Parts), draw: func(n int, _ bool) []line {
		lines := p.wrap("", "  ", []span{{"Parts:", title}})
		for _, x := range a.Parts[:n] {
			text := x.What
			if x.Item != "" {
				text += ": " + x.Item
			}
			if x.Count != 1 {
				text = fmt.Sprintf("%d x %s", x.Count, text)
			}
			switch {
			case x.Price != nil && x.Count != 1 && x.Sum != nil:
				text += ", " + dollars(*x.Price) + " each, " + dollars(*x.Sum)
			case x.Price != nil:
				text += ", " + dollars(*x.Price)
			}
			if x.Note != "" {
				text += ", " + x.Note
			}
			lines = append(lines, p.wrap("  ", "    ", []span{{text, body}})...)
		}
		if n < len(a.Parts) {
			lines = append(lines, p.wrap("  ", "    ", []span{{fmt.Sprintf("and %d more", len(a.Parts)-n), body}})...)
		}
		return lines
	}}
}

func dollars(x float64) string { return unit.Show(x, unit.Dollar, unit.US) }

// assumed is one compact paragraph, in the order of the answer.
func (p page) assumed(list []answer.Assumed) *block {
	deciding := 0 // they stand first
	for _, x := range list {
		if x.Decides {
			deciding++
		}
	}
	if deciding == 0 {
		deciding = len(list)
	}
	return &block{name: "assumed", items: min(deciding, mostAssumed), draw: func(n int, _ bool) []line {
		var out []string
		for _, x := range list[:n] {
			out = append(out, assumption(x))
		}
		text := strings.Join(out, "; ")
		if n < len(list) {
			text += fmt.Sprintf("; and %d more (:boat)", len(list)-n)
		}
		return p.wrap("", "  ", []span{{"Assumed: ", title}, {sentence(text), body}})
	}}
}

// mostAssumed is how many assumptions a page tells; :boat tells all.
const mostAssumed = 7

func assumption(x answer.Assumed) string {
	name := x.Label
	if name == "" {
		name = plainID(x.Slot)
	}
	value := x.Display
	if value == "" {
		value = x.Text
	}
	return strings.TrimSpace(lowerFirst(name) + " " + value)
}

func (p page) cautions(a answer.Answer) *block {
	return &block{name: "cautions", items: len(a.Cautions), draw: func(n int, _ bool) []line {
		var lines []line
		for _, c := range a.Cautions[:n] {
			lines = append(lines, p.wrap("", "  ", []span{{"Careful: ", warning}, {sentence(c.Text) + citations(c.Cites, a.Passages), body}})...)
		}
		return lines
	}}
}

// sources lists the passages that figures and choices rest on: name and origin,
// not their text. Those that are quoted stand with their text already.
func (p page) sources(a answer.Answer, quoted []answer.Passage) *block {
	var rest []answer.Passage
	for _, q := range a.Passages {
		there := false
		for _, r := range quoted {
			there = there || r.N == q.N
		}
		if !there {
			rest = append(rest, q)
		}
	}
	return &block{name: "sources", items: len(rest), draw: func(n int, short bool) []line {
		if short {
			return p.wrap("", "  ", []span{{"Notes: ", title}, {sentence(noteList(rest[:n])), body}})
		}
		var lines []line
		for _, q := range rest[:n] {
			name := fmt.Sprintf("[%d] %s", q.N, noteName(q))
			text := name + " - " + origin(q)
			if !p.Plain && columns(text) > p.Width && columns(name) < p.Width-leastHow {
				text = name + " - " + trim(origin(q), p.Width-columns(name)-3)
			}
			lines = append(lines, p.wrap("", "    ", words(text))...)
		}
		return lines
	}}
}

// noteList names the notes of passages by their ids, which are short and tell
// enough to ask for one, each once with all its numbers.
func noteList(passages []answer.Passage) string {
	var titles []string
	numbers := map[string]string{}
	for _, q := range passages {
		t := q.Note
		if numbers[t] == "" {
			titles = append(titles, t)
		}
		numbers[t] += fmt.Sprintf("[%d]", q.N)
	}
	for i, t := range titles {
		titles[i] = numbers[t] + " " + t
	}
	return strings.Join(titles, "; ")
}

func (p page) corrected(list []answer.Corrected) *block {
	var out []string
	for _, c := range list {
		out = append(out, fmt.Sprintf("%q as %s", Clean(c.Said), c.Word))
	}
	if out == nil {
		return nil
	}
	return one("corrected", p.wrap("", "  ", words("Read "+sentence(strings.Join(out, ", ")))))
}

func (p page) ask(list []answer.Ask) *block {
	var lines []line
	for _, q := range list {
		text := q.Question
		if q.Why != "" {
			text += " (" + strings.TrimSuffix(q.Why, ".") + ")"
		}
		lines = append(lines, p.wrap("", "  ", []span{{"To settle: ", title}, {text, strong}})...)
	}
	return one("ask", lines)
}

func (p page) notice(t string) *block {
	return one("notice", p.wrap("", "", words(t)))
}
