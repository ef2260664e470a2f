package text

import "sort"

// block is a part of the page that can be drawn with fewer of its items, or
// with each in short. A nil block is a part that this answer has not.
type block struct {
	name  string
	close bool // no blank line before it
	items int
	short bool
	draw  func(items int, short bool) []line

	drawn      []line // as it was drawn last, and with what
	drawnItems int
	drawnShort bool
}

// lines draws the block, once for each state that it is in.
func (b *block) lines() []line {
	if b.drawn == nil || b.drawnItems != b.items || b.drawnShort != b.short {
		b.drawn, b.drawnItems, b.drawnShort = b.draw(b.items, b.short), b.items, b.short
	}
	return b.drawn
}

// cutting says what gives way when a page has more lines than fit, in order:
// what a fitter would leave out first stands first. The headline, grave
// problems, the question back and the notice stay whole.
var cutting = []struct {
	block string
	close bool // leave out the blank line above it
	short bool // draw each item in short
	keep  int  // then drop items from the end down to this many
}{
	{block: "figures", short: true, keep: 14},
	{block: "sources", short: true, keep: 12},
	{block: "notice", close: true, keep: 1},
	{block: "assumed", keep: 8},
	{block: "choices", short: true, keep: 8},
	{block: "cautions", close: true, keep: 6},
	{block: "assumed", keep: 5},
	{block: "quotes", keep: 1},
	{block: "unplaced", keep: 3},
	{block: "figures", short: true, keep: 10},
	{block: "sources", short: true, keep: 6},
	{block: "choices", short: true, keep: 5},
	{block: "tables", keep: 1},
	{block: "parts", keep: 8},
	{block: "unplaced", keep: 2},
	{block: "assumed", keep: 3},
	{block: "figures", short: true, keep: 8},
	{block: "choices", short: true, keep: 3},
	{block: "offers", keep: 1},
	{block: "changed", keep: 4},
	{block: "cautions", close: true, keep: 3},
	{block: "sources", short: true, keep: 3},
	{block: "figures", short: true, keep: 4},
	{block: "assumed", keep: 1},
}

// held is the line that stands where something was cut.
const held = "More is held back: :why FIGURE shows the working, --json everything."

// fit draws the blocks on a page of at most limit lines; 0 is no limit.
func (p page) fit(blocks []*block, limit int) []line {
	var on []*block
	for _, b := range blocks {
		if b != nil && b.items > 0 {
			on = append(on, b)
		}
	}
	if limit == 0 || height(on) <= limit {
		return assemble(on)
	}
	note := &block{name: "held", items: 1, close: true, draw: func(int, bool) []line {
		return p.wrap("", "", []span{{held, title}})
	}}
	on = append(on, note)
	for _, rule := range cutting {
		for _, b := range on {
			if b.name != rule.block {
				continue
			}
			if rule.close && height(on) > limit {
				b.close = true
			}
			if rule.short && !b.short && height(on) > limit {
				b.short = true
			}
			if most := b.items; most > rule.keep && height(on) > limit {
				// More items never take fewer lines.
				b.items = most - sort.Search(most-rule.keep, func(fewer int) bool {
					b.items = most - fewer
					return height(on) <= limit
				})
			}
		}
	}
	return assemble(on)
}

// assemble draws the blocks one below the other, a blank line between them.
func assemble(blocks []*block) []line {
	var lines []line
	for _, b := range blocks {
		drawn := b.lines()
		if len(lines) > 0 && len(drawn) > 0 && !b.close {
			lines = append(lines, line{})
		}
		lines = append(lines, drawn...)
	}
	return lines
}

// height is the number of lines that assemble gives.
func height(blocks []*block) int {
	n := 0
	for _, b := range blocks {
		drawn := len(b.lines())
		if n > 0 && drawn > 0 && !b.close {
			n++
		}
		n += drawn
	}
	return n
}
