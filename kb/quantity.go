package kb

import (
	"fmt"
	"strconv"
	"strings"

	"heronlake.example/ask/calc/unit"
)

// noteUnit is a unit as a note writes it, and what it makes of a number.
type noteUnit struct {
	name string
	si   string // the unit of the cell's stored value that it serves
	of   func(x float64) float64
}

func as[T ~float64](make func(float64) T) func(float64) float64 {
	return func(x float64) float64 { return float64(make(x)) }
}

func same(x float64) float64 { return x }

// noteUnits lists the units that a note may use; "lb" is a mass or a force, as
// its cell asks.
var noteUnits = []noteUnit{
	{"ft", "m", as(unit.Feet)},
	{"in", "m", as(unit.Inches)},
	{"m", "m", as(unit.Metres)},
	{"cm", "m", as(unit.Centimetres)},
	{"mm", "m", func(x float64) float64 { return x / 1000 }},
	{"mile", "m", func(x float64) float64 { return x * unit.MetresPerMile }},
	{"miles", "m", func(x float64) float64 { return x * unit.MetresPerMile }},
	{"km", "m", func(x float64) float64 { return x * 1000 }},
	{"m2", "m2", same},
	{"lb", "kg", as(unit.Pounds)},
	{"kg", "kg", as(unit.Kilograms)},
	{"lb", "N", as(unit.PoundForce)},
	{"lbf", "N", as(unit.PoundForce)},
	{"N", "N", as(unit.Newtons)},
	{"mph", "m/s", as(unit.MilesPerHour)},
	{"m/s", "m/s", as(unit.MetresPerSecond)},
	{"km/h", "m/s", as(unit.KilometresPerHour)},
	{"kn", "m/s", as(unit.Knots)},
	{"knots", "m/s", as(unit.Knots)},
	{"h", "h", as(unit.Hours)},
	{"hours", "h", as(unit.Hours)},
	{"min", "h", as(unit.Minutes)},
	{"minutes", "h", as(unit.Minutes)},
	{"A", "A", as(unit.Amperes)},
	{"V", "V", as(unit.Volts)},
	{"Ah", "Ah", as(unit.AmpereHours)},
	{"Wh", "Wh", as(unit.WattHours)},
	{"W", "W", as(unit.Watts)},
	{"ohm", "ohm", as(unit.Ohms)},
	{"milliohm", "ohm", as(unit.Milliohms)},
	{"gal", "L", as(unit.USGallons)},
	{"L", "L", as(unit.Litres)},
	{"F", "degC", as(unit.Fahrenheit)},
	{"C", "degC", as(unit.Celsius)},
	{"AWG", "AWG", same},
	{"USD", "USD", as(unit.Dollars)},
	{"Pa", "Pa", as(unit.Pascals)},
	{"%", "1", func(x float64) float64 { return x / 100 }},
	{"people", "1", same},
	{"lb per 100 lb", "1", func(x float64) float64 { return x / 100 }},
}

// parseQuantity reads "1,900 lb", "17 ft 6 in", "1/0 AWG", "30 %", "$700" or a
// bare number for a cell of the form, and gives its SI value. Only a cell
// without a unit, a gauge or a sum of money takes a bare number.
func parseQuantity(text string, form unit.Form) (float64, error) {
	si := form.SIUnit()
	fields := strings.Fields(strings.ReplaceAll(strings.TrimPrefix(text, "$"), "%", " %"))
	if si == "AWG" && len(fields) > 0 {
		if n, ok := aught(fields[0]); ok {
			fields[0] = strconv.Itoa(n)
		}
	}
	if len(fields) > 2 && fields[1] == "lb" && fields[2] == "per" {
		fields = []string{fields[0], strings.Join(fields[1:], " ")}
	}
	if len(fields) == 0 {
		return 0, fmt.Errorf("%q is no quantity", text)
	}
	if len(fields) == 1 {
		x, err := number(fields[0])
		if err != nil {
			return 0, fmt.Errorf("%q is no number", text)
		}
		if si != "1" && si != "AWG" && si != "USD" {
			return 0, fmt.Errorf("%q needs a unit that gives %s", text, si)
		}
		return x, nil
	}
	if len(fields)%2 != 0 || len(fields) > 2 && si == "degC" {
		return 0, fmt.Errorf("%q is not a number with its unit", text)
	}
	sum := 0.0
	for i := 0; i < len(fields); i += 2 {
		x, err := number(fields[i])
		if err != nil {
			return 0, fmt.Errorf("%q is not a number with its unit", text)
		}
		u, ok := findUnit(fields[i+1], si)
		if !ok {
			return 0, fmt.Errorf("unit %q does not give %s", fields[i+1], si)
		}
		sum += u.of(x)
	}
	return sum, nil
}

func findUnit(name, si string) (noteUnit, bool) {
	for _, u := range noteUnits {
		if u.name == name && u.si == si {
			return u, true
		}
	}
	return noteUnit{}, false
}

func number(s string) (float64, error) {
	return strconv.ParseFloat(strings.ReplaceAll(s, ",", ""), 64)
}

// aught reads "1/0" to "4/0" as the gauge numbers 0 to -3.
func aught(s string) (int, bool) {
	size, ok := strings.CutSuffix(s, "/0")
	if !ok || len(size) != 1 || size[0] < '1' || size[0] > '4' {
		return 0, false
	}
	return 1 - int(size[0]-'0'), true
}
