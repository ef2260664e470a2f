package band

import (
	"fmt"
	"strconv"
)

// An OutsideError says that an input lies where a formula does not hold.
type OutsideError struct {
	Input     string // what it is: "discharge current"
	Unit      string // the unit of the three numbers, "" for a ratio
	Value     float64
	Low, High float64
}

func (e *OutsideError) Error() string {
	n := func(x float64) string { return strconv.FormatFloat(x, 'g', 6, 64) }
	u := e.Unit
	if u != "" {
		u = " " + u
	}
	return fmt.Sprintf("%s of %s%s is outside %s to %s%s", e.Input, n(e.Value), u, n(e.Low), n(e.High), u)
}

// Within returns an *OutsideError unless low <= x <= high; a NaN is outside.
func Within(input, unit string, x, low, high float64) error {
	if x >= low && x <= high {
		return nil
	}
	return &OutsideError{Input: input, Unit: unit, Value: x, Low: low, High: high}
}
