// Package band carries the three values that every estimate has: a low, a
// nominal and a high. Most of the program asks only for the nominal; the ends
// say how far it may be trusted.
//
// Limits: a band is not a probability. Its ends are values that a careful
// fitter would not be surprised by. Independent bands combine by the root of
// the sum of squares of their half-widths, each side by itself; correlated ones
// must be combined by evaluating the formula at both ends.
package band

// Band is an estimate of a quantity: Low <= Nominal <= High.
type Band[T ~float64] struct{ Low, Nominal, High T }

// Exactly is a band without width.
func Exactly[T ~float64](x T) Band[T] { return Band[T]{x, x, x} }

// Of makes a band from its three values, in whatever order the ends come.
func Of[T ~float64](low, nominal, high T) Band[T] {
	if low > high {
		low, high = high, low
	}
	return Band[T]{low, nominal, high}
}

// Wide reports whether the ends differ.
func (b Band[T]) Wide() bool { return b.Low != b.High }
