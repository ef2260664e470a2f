package wire

import (
	"math"
	"strconv"

	"heronlake.example/ask/calc/unit"
)

// Aught sizes as the gauge formula counts them.
const (
	Gauge1x0 unit.Gauge = 0
	Gauge2x0 unit.Gauge = -1
	Gauge3x0 unit.Gauge = -2
	Gauge4x0 unit.Gauge = -3
)

// Diameter of a solid round conductor, 36 AWG to 4/0:
// d = 0.005 in x 92^((36-n)/39), 4/0 counted as n = -3.
//
// Any other is refused with a *GaugeError.
//
// Source: ASTM B258.
func Diameter(g unit.Gauge) (unit.Length, error) {
	if err := within(g, Gauge4x0, 36); err != nil {
		return 0, err
	}
	return unit.Inches(0.005 * math.Pow(92, float64(36-g.Number())/39)), nil
}

// Area of a solid round conductor; in circular mils, the square of its diameter
// in thousandths of an inch. A stranded one of the same gauge has the same
// copper. Range and source as for Diameter. Cable to the SAE standard has about a
// tenth less copper than the gauge of the same number.
func Area(g unit.Gauge) (unit.Area, error) {
	if err := within(g, Gauge4x0, 36); err != nil {
		return 0, err
	}
	return areas[g-Gauge4x0], nil
}

// areas holds the area of each gauge from 4/0 to 36, worked out once: a choice of
// gauge looks at a dozen of them.
var areas = func() (a [40]unit.Area) {
	for i := range a {
		d, _ := Diameter(Gauge4x0 + unit.Gauge(i)) // every one is in range
		mils := d.Inches() * 1000
		a[i] = unit.CircularMils(mils * mils)
	}
	return a
}()

// A GaugeError says that a gauge lies outside a table.
type GaugeError struct{ Gauge, Thickest, Thinnest unit.Gauge }

func (e *GaugeError) Error() string {
	return Name(e.Gauge) + " is outside the table, " + Name(e.Thickest) + " to " + Name(e.Thinnest) + ": give a size in it"
}

func within(g, thickest, thinnest unit.Gauge) error {
	if g < thickest || g > thinnest {
		return &GaugeError{g, thickest, thinnest}
	}
	return nil
}

// Name is how a gauge is written: 6 AWG, 2/0 AWG.
func Name(g unit.Gauge) string {
	if g <= 0 {
		return strconv.Itoa(1-g.Number()) + "/0 AWG"
	}
	return strconv.Itoa(g.Number()) + " AWG"
}
