package unit

import (
	"math"
	"strconv"
	"strings"
)

// System is the family of units in which a person is answered.
type System int

const (
	US     System = iota // feet, inches, pounds, miles an hour
	Metric               // metres, centimetres, kilograms, metres a second
)

func (s System) String() string {
	if s == Metric {
		return "metric"
	}
	return "us"
}

// Form says how a cell of the sheet is shown to a person: which unit in each
// system, and how finely. It is a property of the cell, not of the number, so
// that one cell never changes its look from answer to answer.
type Form int

const (
	Plain      Form = iota // a bare number
	Count                  // a whole number of things
	LongLength             // ft / m
	DeckLength             // in / cm: heights, shafts, distances on a boat
	RunLength              // ft / m, for wire runs
	TripLength             // miles / km
	SmallArea              // ft2 / m2: what stands in the wind
	Weight                 // lb / kg
	Thrust                 // a force of wind, water or motor: lb / N
	Rating                 // a motor's rated thrust: it is sold in lb in both worlds
	Pace                   // mph / m/s
	Hour                   // h and min
	Ampere
	Volt
	AmpHour
	WattHour
	Watt
	Fraction   // as a percentage
	Factor     // a bare coefficient, three significant figures
	PerHundred // a force per weight: 0.02 is 2 lb per 100 lb
	WireGauge  // AWG, aught sizes as 1/0
	Dollar
	Degree          // F / C
	InsulationClass // C in both systems: it is printed on the jacket so
	Litre           // gal / L
	Ohm
	Pascal             // lb/ft2 / Pa
	BroadArea          // ft2 / m2: wetted surface, waterplane
	AreaMoment         // ft4 / m4: second moment of a waterplane
	WaterDensity       // lb/ft3 / kg/m3
	FuelDensity        // lb/gal / kg/L
	KinematicViscosity // m2/s
	EnginePower        // hp / kW
	Ampacity           // A, a half downwards

	// Forms of numbers that stand in a worked formula and nowhere else.
	TripPace    // mph / km/h, where miles or kilometres are asked for
	Knot        // knots in both systems, where a table is in knots
	FootLength  // ft in both systems, where a formula is in feet
	Mil         // thousandths of an inch in both systems
	CircularMil // in both systems
	SquareMetre // m2 in both systems, where a formula is worked in SI
	Newton      // N in both systems, likewise
	HalfDensity // rho/2 of V^2 rho/2, for mph and lb/ft2 / m/s and Pa
	WaterWeight // lb/ft3 / N/m3
	OhmPerRun   // ohm per 1,000 ft / 1,000 m
)

// SIUnit is the unit in which a Form's value is stored and written to JSON.
func (f Form) SIUnit() string { return f.look().si }

// Show writes an SI value as a person of the given system reads it, with its
// unit, for instance Show(0.6096, DeckLength, US) = "24 in".
func Show(si float64, f Form, s System) string {
	n, u := Split(si, f, s)
	if f == Rating && s == Metric {
		return n + " " + u + " (" + Show(si, Thrust, Metric) + ")"
	}
	switch {
	case f == Dollar && n != "?":
		return "$" + n
	case u == "" || u == "%":
		return n + u
	}
	return n + " " + u
}

// Split is Show with the number and the unit kept apart, so that a range can be
// written with its unit once.
func Split(si float64, f Form, s System) (number, unit string) {
	if math.IsNaN(si) || math.IsInf(si, 0) {
		return "?", ""
	}
	l := f.look()
	if s == Metric && l.metric != nil {
		return l.metric(si)
	}
	return l.us(si)
}

// Number writes x rounded to the given decimals, half away from zero, without
// trailing zeros.
func Number(x float64, decimals int) string {
	t := strconv.FormatFloat(roundTo(x, decimals), 'f', decimals, 64)
	if strings.Contains(t, ".") {
		t = strings.TrimRight(strings.TrimRight(t, "0"), ".")
	}
	if t == "-0" {
		return "0"
	}
	return t
}

// Significant writes x to n significant figures without an exponent.
func Significant(x float64, n int) string {
	x = Round(x, n)
	if x == 0 {
		return "0"
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}

// upward is by how much a number is raised before it is rounded. The last bits of
// a computed number differ between processors: some multiply and add in one step
// and round once where others round twice. A value that is meant to lie half way
// between two roundings, as products of exact unit factors often are, is brought
// to the same side of the half everywhere. The searches of the sheet go to ten
// digits, so nothing is lost.
const upward = 1 + 1e-10

// Round keeps n significant figures, at most eight; a half goes away from zero.
// Values of an Answer are rounded to six so, and none before.
func Round(x float64, n int) float64 {
	if x == 0 || math.IsNaN(x) || math.IsInf(x*upward, 0) {
		return x
	}
	// FormatFloat rounds the exact binary value, the same on every processor.
	r, err := strconv.ParseFloat(strconv.FormatFloat(x*upward, 'e', n-1, 64), 64)
	if err != nil {
		return x
	}
	return r
}

func roundTo(x float64, decimals int) float64 {
	p := math.Pow10(decimals)
	return math.Round(x*p*upward) / p
}

// grouped writes thousands with commas: 1,900.
func grouped(x float64, decimals int) string {
	t := Number(x, decimals)
	sign := ""
	if strings.HasPrefix(t, "-") {
		sign, t = "-", t[1:]
	}
	whole, frac, found := strings.Cut(t, ".")
	for i := len(whole) - 3; i > 0; i -= 3 {
		whole = whole[:i] + "," + whole[i:]
	}
	if found {
		whole += "." + frac
	}
	return sign + whole
}
