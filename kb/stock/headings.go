package stock

import (
	"fmt"
	"slices"
	"strings"
	"sync"
	"unicode"
)

// A place is what a field of the file belongs to.
type place struct {
	column string // "" for an extra one
	index  int    // of the column
	unit   string // that the heading names in place of the column's own
}

// A heading is the line that names the columns.
type heading struct {
	line  int
	place []place
	known int      // how many columns it names
	extra []string // names of fields that are not used
	notes []string // names taken for another
}

// otherNames are what shops call a column, without its unit.
var otherNames = sync.OnceValue(func() map[string][]string {
	return map[string][]string{
		"sku":            {"item", "item no", "item number", "item code", "no", "part no", "part number", "number", "article", "article no", "code", "id", "product code"},
		"name":           {"description", "product", "product name", "item name", "model", "title"},
		"thrust_lb":      {"rated thrust", "pounds of thrust"},
		"volts_V":        {"voltage", "system voltage", "nominal voltage", "system volts"},
		"shaft_in":       {"shaft length"},
		"mount":          {"mounting", "mount place", "where"},
		"mount_kind":     {"mount type", "mounting kind", "mounting type", "type of mount"},
		"control":        {"controls", "steering", "steer"},
		"drive":          {"motor type", "motor kind"},
		"water":          {"water type", "made for", "salt or fresh", "fresh or salt"},
		"position_hold":  {"gps", "hold", "gps hold", "gps anchor"},
		"full_current_A": {"current", "max current", "maximum current", "current draw", "max draw", "amps", "max amps", "full amps", "amp draw", "draw", "full load current"},
		"chemistry":      {"type", "battery type", "chemistry type", "suits", "for chemistry"},
		"capacity_Ah":    {"capacity", "amp hours", "amp hour", "ah"},
		"group":          {"group size", "bci group", "size", "case"},
		"price_USD":      {"price", "retail price", "retail", "sales price", "selling price", "unit price", "list price", "our price"},
		"cycles":         {"cycle life", "life cycles"},
		"series_ok":      {"series", "series use", "series allowed"},
		"protection_A":   {"continuous current", "max continuous current", "discharge current"},
		"outputs":        {"banks", "number of outputs", "no of outputs"},
		"current_A":      {"amps per output", "amps each", "amps per bank", "output current", "amps", "current per output", "current each"},
		"kind":           {"type", "category", "part type"},
		"gauge_AWG":      {"wire gauge", "size", "wire size"},
		"rating_A":       {"amp rating", "rated current", "amps", "current rating"},
		"length_ft":      {"wire length", "roll length"},
		"fits":           {"for", "fits mount", "for mount"},
		"count":          {"qty", "quantity", "stock", "in stock", "on hand", "on shelf", "pieces", "available"},
	}
})

// headings places the names of a line: first those written as the columns are,
// whatever their case, blanks and hyphens; then those that a shop may write.
func headings[T any](names []string, columns []column[T]) heading {
	h := heading{place: make([]place, len(names))}
	taken := make([]bool, len(columns))
	put := func(i, k int, unit string) {
		h.place[i] = place{columns[k].name, k, unit}
		taken[k] = true
		h.known++
	}
	for i, name := range names {
		flat := flatName(name)
		for k, c := range columns {
			if !taken[k] && flat == strings.ToLower(c.name) {
				put(i, k, "")
				break
			}
		}
	}
	for i, name := range names {
		if h.place[i].column != "" {
			continue
		}
		shown := clean(name)
		if k, unit := likely(shown, columns, taken); k >= 0 {
			put(i, k, unit)
			h.notes = append(h.notes, fmt.Sprintf("column %q is read as %s", shown, columns[k].name))
		} else if shown != "" {
			h.extra = append(h.extra, shown)
		}
	}
	return h
}

// flatName is a heading with one underscore for whatever parts its words.
func flatName(name string) string {
	return strings.Map(func(r rune) rune {
		if r == ' ' || r == '-' {
			return '_'
		}
		return unicode.ToLower(r)
	}, clean(name))
}

// likely finds the column that a heading in other words means, and the unit that
// it names where that is not the column's own; -1 where none does.
func likely[T any](shown string, columns []column[T], taken []bool) (k int, unit string) {
	words := strings.FieldsFunc(strings.ToLower(shown), func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '$' && r != '\u20ac' && r != '\u00a3' && r != '#'
	})
	for k, c := range columns {
		if taken[k] {
			continue
		}
		base, own, _ := strings.Cut(c.name, "_")
		if c.of == nil && own != "AWG" {
			base, own = strings.ReplaceAll(c.name, "_", " "), ""
		} else if i := strings.LastIndexByte(c.name, '_'); i >= 0 {
			base, own = strings.ReplaceAll(c.name[:i], "_", " "), c.name[i+1:]
		}
		said := words
		unit := ""
		if n := len(words); n > 1 && own != "" && unitWord(words[n-1]) {
			said, unit = words[:n-1], words[n-1]
		}
		if text := strings.Join(said, " "); text != base && !slices.Contains(otherNames()[c.name], text) &&
			!slices.Contains(otherNames()[c.name], strings.Join(words, " ")) {
			continue
		}
		if unit == strings.ToLower(own) || c.of != nil && c.of.words[unit] == 1 {
			unit = ""
		}
		return k, unit
	}
	return -1, ""
}

// unitWord reports whether a heading's last word is a unit.
func unitWord(w string) bool {
	for _, m := range []measure{poundsForce, pounds, inches, feet, amperes, ampHours, voltage, dollars} {
		if _, ok := m.words[w]; ok {
			return true
		}
	}
	return w == "awg" || slices.Contains(otherMoney, w)
}

// knows reports whether a column can be filled in in a unit.
func knows[T any](columns []column[T], name, unit string) bool {
	i := slices.IndexFunc(columns, func(c column[T]) bool { return c.name == name })
	if i < 0 || columns[i].of == nil {
		return false
	}
	_, ok := columns[i].of.words[unit]
	return ok
}
