package text

// block is a part of the page that can be drawn with fewer of its items, or
// with each in short. A nil block is a part that this answer has not.
type block struct {
	name  string
	close bool // no blank line before it
	items int
	short bool
	draw  func(items int, short bool) []line
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
	{block: "choices", short: true, keep: 5},
	{block: "figures", short: true, keep: 10},
	{block: "tables", keep: 1},
	{block: "parts", keep: 8},
	{block: "unplaced", keep: 2},
	{block: "assumed", keep: 3},
	{block: "figures", short: true, keep: 8},
	{block: "choices", short: true, keep: 3},
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
	lines := assemble(on)
	if limit == 0 || len(lines) <= limit {
		return lines
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
			if rule.close && len(assemble(on)) > limit {
				b.close = true
			}
			if rule.short && !b.short && len(assemble(on)) > limit {
				b.short = true
			}
			for b.items > rule.keep && len(assemble(on)) > limit {
				b.items--
			}
		}
	}
	return assemble(on)
}

// assemble draws the blocks one below the other.
func assemble(blocks []*block) []line {
	var lines []line
	for _, b := range blocks {
		drawn := b.draw(b.items, b.short)
		if len(lines) > 0 && len(drawn) > 0 && !b.close {
			lines = append(lines, line{})
		}
		lines = append(lines, drawn...)
	}
	return lines
}
