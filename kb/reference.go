package kb

import (
	"fmt"
	"strings"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/sheet"
)

// A reference stands in a passage for a figure of the sheet:
//
//	{{shaft.cover}}                             the figure with its unit
//	{{thrust.rule | load.total=1900 lb}}        computed on inputs of its own
//	{{thrust.wind:band | wind.speed=15 mph}}    "low to high"
//	{{hold.wind:low}}, {{hold.wind:high}}       one end
//	{{shaft.cover:bare}}                        the number without its unit
//
// What an input does not give, the sheet assumes as it does for a person who
// said nothing.
type reference struct {
	cell  sheet.ID
	form  string // "", "band", "low", "high", "bare"
	given []sheet.Given
}

var referenceForms = map[string]bool{"": true, "band": true, "low": true, "high": true, "bare": true}

// parseReference reads what stands between the braces.
func parseReference(text string) (reference, error) {
	var r reference
	name, inputs, _ := strings.Cut(text, "|")
	name, form, _ := strings.Cut(strings.TrimSpace(name), ":")
	id, ok := sheet.Lookup(name)
	if !ok {
		return r, fmt.Errorf("no cell is called %q", name)
	}
	if !referenceForms[form] {
		return r, fmt.Errorf("%q after the colon is none of band, low, high, bare", form)
	}
	r.cell, r.form = id, form
	for _, in := range splitInputs(inputs) {
		if in = strings.TrimSpace(in); in == "" {
			continue
		}
		g, err := parseInput(in)
		if err != nil {
			return r, err
		}
		r.given = append(r.given, g)
	}
	return r, nil
}

// splitInputs parts the inputs at their commas; one between two digits belongs
// to a number.
func splitInputs(text string) []string {
	var out []string
	from := 0
	for i := range len(text) {
		if text[i] != ',' || i > 0 && i+1 < len(text) && digit(text[i-1]) && digit(text[i+1]) {
			continue
		}
		out = append(out, text[from:i])
		from = i + 1
	}
	return append(out, text[from:])
}

func digit(c byte) bool { return c >= '0' && c <= '9' }

// parseInput reads "slot=value unit" or "slot=word".
func parseInput(text string) (sheet.Given, error) {
	name, value, ok := strings.Cut(text, "=")
	name, value = strings.TrimSpace(name), strings.TrimSpace(value)
	if !ok || value == "" {
		return sheet.Given{}, fmt.Errorf("input %q is not of the form slot=value", text)
	}
	id, ok := sheet.SaidFor[name]
	if !ok {
		id, ok = sheet.Lookup(name)
	}
	if !ok {
		return sheet.Given{}, fmt.Errorf("no cell is called %q", name)
	}
	if id.Describe().Word {
		return sheet.Given{ID: id, Word: value, Said: value}, nil
	}
	x, err := parseQuantity(value, id.Describe().Form)
	if err != nil {
		return sheet.Given{}, fmt.Errorf("input %s: %w", name, err)
	}
	return sheet.Given{ID: id, Value: band.Exactly(x), Said: value}, nil
}

// nextReference finds the first reference in a text: its place with the braces
// and what stands between them. A text without one gives ok false; braces that
// are never closed give an end of -1.
func nextReference(text string) (open, end int, inner string, ok bool) {
	open = strings.Index(text, "{{")
	if open < 0 {
		return 0, 0, "", false
	}
	length := strings.Index(text[open:], "}}")
	if length < 0 {
		return open, -1, "", true
	}
	end = open + length + len("}}")
	return open, end, text[open+2 : end-2], true
}
