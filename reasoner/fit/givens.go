package fit

import (
	"strconv"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/card"
)

// take says which point of a range stands for it.
type take int

const (
	middle take = iota
	top         // the demanding end
)

// rangeRows name the slots whose range stands for something other than its
// middle: a deck and waves at their highest, so that the shaft still reaches.
var rangeRows = map[string]take{
	"mount.height": top,
	"chop.height":  top,
}

// factorRows turn the contract's unit of a slot into the cell's.
var factorRows = map[string]float64{
	"battery.reserve": 1.0 / 3600, // s to h
}

// wordAmounts are amounts that a word tells: batteries that were weighed with
// the gear weigh nothing of their own.
var wordAmounts = map[[2]string]float64{
	{"load.batteries", "in-gear"}: 0,
}

// Givens turns facts into given cells, and the throttle-and-hours pairs of a
// duty profile into stretches.
func Givens(c card.Card) ([]sheet.Given, []sheet.Stretch) {
	duty := profile(c)
	var out []sheet.Given
	for _, f := range c.Facts {
		id, ok := CellOf(f.Slot)
		if !ok || len(duty) > 1 && (f.Slot == "use.throttle" || f.Slot == "use.hours") {
			continue
		}
		g := sheet.Given{ID: id, Word: f.Text, Said: f.Said}
		switch {
		case !id.Describe().Word:
			b, ok := bandOf(f)
			if x, told := wordAmounts[[2]string{f.Slot, f.Text}]; told {
				b, ok = band.Exactly(x), true
			}
			if !ok {
				continue
			}
			g.Value = b
		case f.Text == "" && f.Value != nil: // a case size is a name that happens to be a number
			g.Word = strconv.FormatFloat(*f.Value, 'f', -1, 64)
		}
		out = append(out, g)
	}
	if len(duty) > 1 {
		var hours float64
		for _, d := range duty {
			hours += d.Hours.Hours()
		}
		out = append(out, sheet.Given{ID: sheet.UseHours, Value: band.Exactly(hours), Said: "the stretches together"})
		return out, duty
	}
	return out, nil
}

// CellOf is the cell that holds what was said for a slot.
func CellOf(slot string) (sheet.ID, bool) {
	if id, ok := sheet.SaidFor[slot]; ok {
		return id, true
	}
	return sheet.Lookup(slot)
}

func factor(slot string) float64 {
	if k, ok := factorRows[slot]; ok {
		return k
	}
	return 1
}

func bandOf(f card.Fact) (band.Band[float64], bool) {
	k := factor(f.Slot)
	at := func(p *float64) float64 { return *p * k }
	switch {
	case f.Low != nil && f.High != nil:
		v := (at(f.Low) + at(f.High)) / 2
		if f.Value != nil {
			v = at(f.Value)
		}
		if rangeRows[f.Slot] == top {
			v = at(f.High)
		}
		return band.Of(at(f.Low), v, at(f.High)), true
	case f.Value != nil:
		return band.Exactly(at(f.Value)), true
	case f.High != nil:
		return band.Exactly(at(f.High)), true
	case f.Low != nil:
		return band.Exactly(at(f.Low)), true
	}
	return band.Band[float64]{}, false
}

// profile pairs the throttles and hours of a duty profile in the order said.
func profile(c card.Card) []sheet.Stretch {
	throttles, hours := c.All("use.throttle"), c.All("use.hours")
	if len(throttles) < 2 || len(throttles) != len(hours) {
		return nil
	}
	var out []sheet.Stretch
	for i, t := range throttles {
		tb, ok1 := bandOf(t)
		hb, ok2 := bandOf(hours[i])
		if !ok1 || !ok2 {
			return nil
		}
		out = append(out, sheet.Stretch{Throttle: tb.Nominal, Hours: unit.Hours(hb.Nominal)})
	}
	return out
}
