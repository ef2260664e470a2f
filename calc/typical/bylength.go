package typical

import (
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// At is a typical value of boats of one length.
type At[T ~float64] struct {
	Length unit.Length
	Value  band.Band[T]
}

// ByLength is a table of one quantity for one kind of hull, by ascending boat
// length.
type ByLength[T ~float64] []At[T]

// beyond is how much wider each end of a value becomes, as a fraction, for each
// part by which the boat is longer or shorter than the table (from memory: a
// boat a tenth longer than the table is known a tenth less well).
const beyond = 1.0

// Value reads the table at a length, straight between two rows. Outside the
// rows it scales the nearest one by the power of the length that such boats
// follow (3 for a weight, 2 for an area, 1 for a length) and widens the band;
// inside is then false. An empty table gives a zero band.
func (t ByLength[T]) Value(l unit.Length, power float64) (v band.Band[T], inside bool) {
	if len(t) == 0 || !(l > 0) {
		return v, false
	}
	first, last := t[0], t[len(t)-1]
	switch {
	case l < first.Length:
		return first.stretched(l, power), false
	case l > last.Length:
		return last.stretched(l, power), false
	}
	for i := 1; i < len(t); i++ {
		if l > t[i].Length {
			continue
		}
		a, b := t[i-1], t[i]
		f := T((l - a.Length) / (b.Length - a.Length))
		return band.Band[T]{
			Low:     a.Value.Low + f*(b.Value.Low-a.Value.Low),
			Nominal: a.Value.Nominal + f*(b.Value.Nominal-a.Value.Nominal),
			High:    a.Value.High + f*(b.Value.High-a.Value.High),
		}, true
	}
	return last.Value, true
}

// Far reports whether a length lies so far outside the rows that the nearest one
// says little: by more than a third (from memory).
func (t ByLength[T]) Far(l unit.Length) bool {
	return len(t) == 0 || l < t[0].Length*3/4 || l > t[len(t)-1].Length*4/3
}

func (a At[T]) stretched(l unit.Length, power float64) band.Band[T] {
	r := float64(l / a.Length)
	k := T(math.Pow(r, power))
	wider := T(1 + beyond*math.Abs(r-1))
	return band.Band[T]{Low: a.Value.Low * k / wider, Nominal: a.Value.Nominal * k, High: a.Value.High * k * wider}
}

// LengthAt is the table read backwards: the length at which the nominal value
// is x, scaled by the power outside the rows. It holds for a quantity that
// grows with length.
func (t ByLength[T]) LengthAt(x T, power float64) unit.Length {
	if len(t) == 0 || !(x > 0) {
		return 0
	}
	first, last := t[0], t[len(t)-1]
	switch {
	case x < first.Value.Nominal:
		return first.Length * unit.Length(math.Pow(float64(x/first.Value.Nominal), 1/power))
	case x > last.Value.Nominal:
		return last.Length * unit.Length(math.Pow(float64(x/last.Value.Nominal), 1/power))
	}
	for i := 1; i < len(t); i++ {
		a, b := t[i-1], t[i]
		if x <= b.Value.Nominal {
			return a.Length + (b.Length-a.Length)*unit.Length((x-a.Value.Nominal)/(b.Value.Nominal-a.Value.Nominal))
		}
	}
	return last.Length
}

// row builds an entry of a table: a length in feet, then three values in the
// unit of the constructor.
func row[T ~float64](feet float64, of func(float64) T, low, nominal, high float64) At[T] {
	return At[T]{unit.Feet(feet), band.Band[T]{Low: of(low), Nominal: of(nominal), High: of(high)}}
}
