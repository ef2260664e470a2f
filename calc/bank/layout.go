package bank

import (
	"fmt"
	"math"

	"heronlake.example/ask/calc/unit"
)

// Layout is how like batteries are joined: Series of them end to end make a
// string, Strings of these stand side by side.
type Layout struct{ Series, Strings int }

// Count is the number of batteries.
func (l Layout) Count() int { return l.Series * l.Strings }

// Volts adds in series.
func (l Layout) Volts(each unit.Voltage) unit.Voltage {
	return unit.Voltage(float64(l.Series) * each.Volts())
}

// Capacity adds side by side; a string has the ampere hours of one battery.
func (l Layout) Capacity(each unit.Charge) unit.Charge {
	return unit.Charge(float64(l.Strings) * each.AmpereHours())
}

// Energy is the capacity times the voltage, so that it is the same for any
// layout of the same batteries.
func (l Layout) Energy(each unit.Charge, volts unit.Voltage) unit.Energy {
	return Energy(l.Capacity(each), l.Volts(volts))
}

// Energy is charge times mean voltage.
func Energy(c unit.Charge, v unit.Voltage) unit.Energy {
	return unit.Energy(c.AmpereHours() * v.Volts())
}

// A LayoutError says that batteries of one voltage do not make another.
type LayoutError struct {
	System, Each unit.Voltage
	Count        int // 0 where no count was given
}

func (e *LayoutError) Error() string {
	if e.Count > 0 {
		return fmt.Sprintf("%d batteries of %g V do not make a whole number of strings of %g V", e.Count, e.Each, e.System)
	}
	return fmt.Sprintf("batteries of %g V do not add up to %g V", e.Each, e.System)
}

// SeriesFor is how many batteries in series make the system's voltage. A
// *LayoutError where they do not.
func SeriesFor(system, each unit.Voltage) (int, error) {
	n := system.Volts() / each.Volts()
	whole := math.Round(n)
	if !(whole >= 1) || whole > 100 || math.Abs(n-whole) > 0.05 {
		return 0, &LayoutError{System: system, Each: each}
	}
	return int(whole), nil
}

// LayoutFor arranges count batteries for a system's voltage. A *LayoutError
// where some would be left over or too few.
func LayoutFor(system, each unit.Voltage, count int) (Layout, error) {
	s, err := SeriesFor(system, each)
	if err != nil {
		return Layout{}, err
	}
	if count < s || count%s != 0 {
		return Layout{}, &LayoutError{System: system, Each: each, Count: count}
	}
	return Layout{Series: s, Strings: count / s}, nil
}
