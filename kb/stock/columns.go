package stock

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"heronlake.example/ask/calc/unit"
)

// A column is one field of a file: the name in the header, with its unit, and
// how its text is put into an item.
type column[T any] struct {
	name     string
	required bool
	means    string // for the README and for messages: what is expected
	set      func(item *T, text string, comma bool) error
}

// Column describes one column for the documentation.
type Column struct {
	Name, Means string
	Required    bool
}

var motorColumns = []column[Motor]{
	{"sku", true, "the shop's own number", func(m *Motor, s string, _ bool) error { m.SKU = s; return nil }},
	{"name", false, "what the shop calls it", func(m *Motor, s string, _ bool) error { m.Name = s; return nil }},
	{"thrust_lb", true, "rated thrust, 10 to 400", func(m *Motor, s string, c bool) error { return number(&m.Thrust, s, c, 10, 400, unit.PoundForce) }},
	{"volts_V", true, "12, 24, 36 or 48", func(m *Motor, s string, c bool) error { return volts(&m.Voltage, s, c, 12, 24, 36, 48) }},
	{"shaft_in", false, "shaft length, 12 to 120", func(m *Motor, s string, c bool) error { return number(&m.Shaft, s, c, 12, 120, unit.Inches) }},
	{"mount", true, "bow, transom or kayak", func(m *Motor, s string, _ bool) error { return one(&m.Mount, s, "bow", "transom", "kayak") }},
	{"mount_kind", false, "clamp, folding-arm, compact-pivot or bracket", func(m *Motor, s string, _ bool) error {
		return one(&m.MountKind, s, "clamp", "folding-arm", "compact-pivot", "bracket")
	}},
	{"control", true, "tiller, foot-cable, foot-electric, remote; several joined by +", func(m *Motor, s string, _ bool) error {
		return several(&m.Controls, s, "tiller", "foot-cable", "foot-electric", "remote")
	}},
	{"speeds", false, "fixed or variable; variable unless said", func(m *Motor, s string, _ bool) error { return one(&m.Speeds, s, "fixed", "variable") }},
	{"drive", false, "brushed or brushless; brushed unless said", func(m *Motor, s string, _ bool) error { return one(&m.Drive, s, "brushed", "brushless") }},
	{"water", false, "fresh or salt: what it is made for; fresh unless said", func(m *Motor, s string, _ bool) error { return one(&m.Water, s, "fresh", "salt") }},
	{"sonar", false, "none, 2d, down, side; several joined by +", func(m *Motor, s string, _ bool) error {
		if err := several(&m.Sonar, s, "none", "2d", "down", "side"); err != nil {
			return err
		}
		m.Sonar = slices.DeleteFunc(m.Sonar, func(x string) bool { return x == "none" })
		return nil
	}},
	{"position_hold", false, "yes or no", func(m *Motor, s string, _ bool) error { return yes(&m.Hold, s) }},
	{"heading_hold", false, "yes or no", func(m *Motor, s string, _ bool) error { return yes(&m.Heading, s) }},
	{"track", false, "yes or no", func(m *Motor, s string, _ bool) error { return yes(&m.Track, s) }},
	{"full_current_A", false, "current at full throttle, 5 to 200", func(m *Motor, s string, c bool) error { return number(&m.Current, s, c, 5, 200, unit.Amperes) }},
	{"weight_lb", false, "3 to 200", func(m *Motor, s string, c bool) error { return number(&m.Weight, s, c, 3, 200, unit.Pounds) }},
	{"price_USD", true, "price", func(m *Motor, s string, c bool) error { return number(&m.Price, s, c, 0.01, 100000, unit.Dollars) }},
	{"count", false, "how many stand on the shelf; 0 must be ordered", func(m *Motor, s string, _ bool) error { return whole(&m.Count, s) }},
}

var batteryColumns = []column[Battery]{
	{"sku", true, "the shop's own number", func(b *Battery, s string, _ bool) error { b.SKU = s; return nil }},
	{"name", false, "what the shop calls it", func(b *Battery, s string, _ bool) error { b.Name = s; return nil }},
	{"chemistry", true, "flooded, agm, gel or lithium", func(b *Battery, s string, _ bool) error {
		return one(&b.Chemistry, s, "flooded", "agm", "gel", "lithium")
	}},
	{"volts_V", true, "6, 8, 12, 24, 36 or 48", func(b *Battery, s string, c bool) error { return volts(&b.Voltage, s, c, 6, 8, 12, 24, 36, 48) }},
	{"capacity_Ah", true, "at the 20-hour rate, 5 to 500", func(b *Battery, s string, c bool) error { return number(&b.Capacity, s, c, 5, 500, unit.AmpereHours) }},
	{"group", false, "BCI group", func(b *Battery, s string, _ bool) error { b.Group = s; return nil }},
	{"weight_lb", false, "2 to 300", func(b *Battery, s string, c bool) error { return number(&b.Weight, s, c, 2, 300, unit.Pounds) }},
	{"price_USD", true, "price", func(b *Battery, s string, c bool) error { return number(&b.Price, s, c, 0.01, 100000, unit.Dollars) }},
	{"cycles", false, "charge cycles in its life, to the usable depth", func(b *Battery, s string, _ bool) error { return whole(&b.Cycles, s) }},
	{"series_ok", false, "lithium: yes where its maker allows series use; lead always may", func(b *Battery, s string, _ bool) error { return yes(&b.Series, s) }},
	{"protection_A", false, "lithium: continuous current its protection carries", func(b *Battery, s string, c bool) error {
		return number(&b.Protection, s, c, 5, 500, unit.Amperes)
	}},
	{"count", false, "how many stand on the shelf; 0 must be ordered", func(b *Battery, s string, _ bool) error { return whole(&b.Count, s) }},
}

var chargerColumns = []column[Charger]{
	{"sku", true, "the shop's own number", func(c *Charger, s string, _ bool) error { c.SKU = s; return nil }},
	{"name", false, "what the shop calls it", func(c *Charger, s string, _ bool) error { c.Name = s; return nil }},
	{"outputs", true, "1 to 6", func(c *Charger, s string, _ bool) error { return whole(&c.Outputs, s) }},
	{"current_A", true, "each output, 1 to 60", func(c *Charger, s string, m bool) error { return number(&c.Current, s, m, 1, 60, unit.Amperes) }},
	{"volts_V", false, "each output, 12 unless said", func(c *Charger, s string, m bool) error { return number(&c.Voltage, s, m, 6, 60, unit.Volts) }},
	{"chemistry", true, "flooded, agm, gel, lithium; several joined by +", func(c *Charger, s string, _ bool) error {
		return several(&c.Chemistry, s, "flooded", "agm", "gel", "lithium")
	}},
	{"price_USD", true, "price", func(c *Charger, s string, m bool) error { return number(&c.Price, s, m, 0.01, 100000, unit.Dollars) }},
	{"count", false, "how many stand on the shelf; 0 must be ordered", func(c *Charger, s string, _ bool) error { return whole(&c.Count, s) }},
}

var partColumns = []column[Part]{
	{"sku", true, "the shop's own number", func(p *Part, s string, _ bool) error { p.SKU = s; return nil }},
	{"name", false, "what the shop calls it", func(p *Part, s string, _ bool) error { p.Name = s; return nil }},
	{"kind", true, "wire, breaker, plug, bracket, lug, box or link", func(p *Part, s string, _ bool) error {
		return one(&p.Kind, s, "wire", "breaker", "plug", "bracket", "lug", "box", "link")
	}},
	{"gauge_AWG", false, "18 to 1, or 1/0 to 4/0", func(p *Part, s string, _ bool) error { return gauge(&p.Gauge, s) }},
	{"rating_A", false, "breakers and plugs, 5 to 400", func(p *Part, s string, c bool) error { return number(&p.Rating, s, c, 5, 400, unit.Amperes) }},
	{"volts_V", false, "the most it is rated for", func(p *Part, s string, c bool) error { return number(&p.Voltage, s, c, 6, 1000, unit.Volts) }},
	{"length_ft", false, "wire: the length that the price is for", func(p *Part, s string, c bool) error { return number(&p.Length, s, c, 0.1, 2000, unit.Feet) }},
	{"fits", false, "brackets: bow, transom, kayak; several joined by +", func(p *Part, s string, _ bool) error { return several(&p.Fits, s, "bow", "transom", "kayak") }},
	{"price_USD", true, "price", func(p *Part, s string, c bool) error { return number(&p.Price, s, c, 0.01, 100000, unit.Dollars) }},
	{"count", false, "how many stand on the shelf; 0 must be ordered", func(p *Part, s string, _ bool) error { return whole(&p.Count, s) }},
}

// unpriced takes out what spreadsheets write around a number.
var unpriced = strings.NewReplacer("$", "", " ", "", "\u00a0", "")

// number reads a plain number, as spreadsheets write it: "1,299.00", "$899",
// and "12,5" where the file's decimals are commas.
func number[T any](to *T, text string, comma bool, low, high float64, make func(float64) T) error {
	t := unpriced.Replace(text)
	if comma {
		t = strings.ReplaceAll(strings.ReplaceAll(t, ".", ""), ",", ".")
	} else {
		t = strings.ReplaceAll(t, ",", "")
	}
	x, err := strconv.ParseFloat(t, 64)
	if err != nil {
		return fmt.Errorf("%q is not a number", text)
	}
	if !(x >= low && x <= high) {
		return fmt.Errorf("%q is outside %g to %g", text, low, high)
	}
	*to = make(x)
	return nil
}

// volts reads a voltage that must be one of those sold, to a tenth.
func volts(to *unit.Voltage, text string, comma bool, of ...float64) error {
	var v unit.Voltage
	if err := number(&v, text, comma, 1, 1000, unit.Volts); err != nil {
		return err
	}
	for _, x := range of {
		if math.Abs(v.Volts()-x) < 0.1 {
			*to = unit.Volts(x)
			return nil
		}
	}
	return fmt.Errorf("%q is no voltage that is sold", text)
}

func whole(to *int, text string) error {
	t := strings.TrimSuffix(strings.TrimSpace(text), ".0")
	n, err := strconv.Atoi(strings.ReplaceAll(t, ",", ""))
	if err != nil || n < 0 {
		return fmt.Errorf("%q is not a whole number", text)
	}
	*to = n
	return nil
}

func one(to *string, text string, of ...string) error {
	t := strings.ReplaceAll(strings.ToLower(text), " ", "-")
	if !slices.Contains(of, t) {
		return fmt.Errorf("%q is none of %s", text, strings.Join(of, ", "))
	}
	*to = t
	return nil
}

func several(to *[]string, text string, of ...string) error {
	var out []string
	for _, part := range strings.FieldsFunc(text, func(r rune) bool { return r == '+' || r == '/' || r == '|' }) {
		var x string
		if err := one(&x, strings.TrimSpace(part), of...); err != nil {
			return err
		}
		out = append(out, x)
	}
	*to = out
	return nil
}

func yes(to *bool, text string) error {
	switch strings.ToLower(text) {
	case "yes", "y", "true", "1", "x":
		*to = true
	case "no", "n", "false", "0":
		*to = false
	default:
		return fmt.Errorf("%q is neither yes nor no", text)
	}
	return nil
}

func gauge(to **unit.Gauge, text string) error {
	t := strings.TrimSpace(strings.TrimSuffix(strings.ToLower(text), "awg"))
	if aught, ok := strings.CutSuffix(t, "/0"); ok {
		n, err := strconv.Atoi(aught)
		if err != nil || n < 1 || n > 4 {
			return fmt.Errorf("%q is no gauge: 1/0 to 4/0", text)
		}
		g := unit.AWG(1 - n)
		*to = &g
		return nil
	}
	n, err := strconv.Atoi(t)
	if err != nil || n < 1 || n > 18 {
		return fmt.Errorf("%q is no gauge: 18 to 1, or 1/0 to 4/0", text)
	}
	g := unit.AWG(n)
	*to = &g
	return nil
}
