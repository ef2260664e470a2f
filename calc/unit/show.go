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
	SmallArea              // m2 in both systems, as the coefficients are published
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
	Pascal
	BroadArea          // ft2 / m2: wetted surface, waterplane
	AreaMoment         // ft4 / m4: second moment of a waterplane
	WaterDensity       // lb/ft3 / kg/m3
	FuelDensity        // lb/gal / kg/L
	KinematicViscosity // m2/s
	EnginePower        // hp / kW
)

// SIUnit is the unit in which a Form's value is stored and written to JSON.
func (f Form) SIUnit() string {
	switch f {
	case LongLength, DeckLength, RunLength, TripLength:
		return "m"
	case SmallArea, BroadArea:
		return "m2"
	case Weight:
		return "kg"
	case Thrust, Rating:
		return "N"
	case Pace:
		return "m/s"
	case Hour:
		return "h"
	case Ampere:
		return "A"
	case Volt:
		return "V"
	case AmpHour:
		return "Ah"
	case WattHour:
		return "Wh"
	case Watt, EnginePower:
		return "W"
	case WireGauge:
		return "AWG"
	case Dollar:
		return "USD"
	case Degree, InsulationClass:
		return "degC"
	case Litre:
		return "L"
	case Ohm:
		return "ohm"
	case Pascal:
		return "Pa"
	case AreaMoment:
		return "m4"
	case WaterDensity, FuelDensity:
		return "kg/m3"
	case KinematicViscosity:
		return "m2/s"
	}
	return "1"
}

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
	us := s == US
	switch f {
	case Count:
		return Number(si, 0), ""
	case LongLength:
		if us {
			return Number(Length(si).Feet(), 1), "ft"
		}
		return Number(si, 2), "m"
	case RunLength:
		if us {
			return Number(Length(si).Feet(), 1), "ft"
		}
		return Number(si, 1), "m"
	case DeckLength:
		if us {
			return Number(Length(si).Inches(), 1), "in"
		}
		return Number(si*100, 0), "cm"
	case TripLength:
		if us {
			return Number(Length(si).Miles(), 1), "miles"
		}
		return Number(si/1000, 1), "km"
	case SmallArea:
		return Significant(si, 3), "m2"
	case Weight:
		if us {
			return grouped(Mass(si).Pounds(), 0), "lb"
		}
		return grouped(si, decimalsBelow(si, 10)), "kg"
	case Rating:
		p := Force(si).PoundForce()
		return Number(p, decimalsBelow(p, 10)), "lb"
	case Thrust:
		if us {
			p := Force(si).PoundForce()
			return Number(p, decimalsBelow(p, 10)), "lb"
		}
		return Number(si, 0), "N"
	case Pace:
		if us {
			return Number(Speed(si).MilesPerHour(), 1), "mph"
		}
		return Number(si, 1), "m/s"
	case Hour:
		return hours(si)
	case Ampere:
		return Number(si, decimalsBelow(si, 20)), "A"
	case Volt:
		if math.Abs(si) < 10 { // volts lost in a wire, not a battery's
			return Number(si, 2), "V"
		}
		return Number(si, decimalsBelow(si, 100)), "V"
	case AmpHour:
		return Number(si, decimalsBelow(si, 10)), "Ah"
	case WattHour:
		return grouped(si, 0), "Wh"
	case Watt:
		return grouped(si, 0), "W"
	case Fraction:
		if math.Abs(si) < 0.01 {
			return Number(si*100, 2), "%"
		}
		return Number(si*100, decimalsBelow(si*100, 10)), "%"
	case PerHundred:
		return Number(si*100, 1), "lb per 100 lb"
	case WireGauge:
		return gauge(int(math.Round(si))), "AWG"
	case Dollar:
		return grouped(si, 0), ""
	case Degree:
		if us {
			return Number(Temperature(si).Fahrenheit(), 0), "F"
		}
		return Number(si, 0), "C"
	case InsulationClass:
		return Number(si, 0), "C"
	case Litre:
		if us {
			return Number(Volume(si).USGallons(), 1), "gal"
		}
		return Number(si, 1), "L"
	case Ohm:
		return Significant(si*1000, 3), "milliohm"
	case Pascal:
		return Significant(si, 3), "Pa"
	case EnginePower:
		if us {
			return Number(Power(si).Horsepower(), 1), "hp"
		}
		return Number(si/1000, 1), "kW"
	case BroadArea:
		if us {
			return Number(Area(si).SquareFeet(), 1), "ft2"
		}
		return Number(si, 2), "m2"
	case AreaMoment:
		if us {
			return Significant(si/(SquareMetresPerFoot2*SquareMetresPerFoot2), 3), "ft4"
		}
		return Significant(si, 3), "m4"
	case WaterDensity:
		if us {
			return Number(Density(si).PoundsPerCubicFoot(), 1), "lb/ft3"
		}
		return Number(si, 1), "kg/m3"
	case FuelDensity:
		if us {
			return Number(Density(si).PoundsPerUSGallon(), 2), "lb/gal"
		}
		return Number(si/1000, 3), "kg/L"
	case KinematicViscosity:
		return Significant(si*1e6, 4), "mm2/s"
	}
	return Significant(si, 3), ""
}

// decimalsBelow gives one decimal to a number under the limit and none above.
func decimalsBelow(x, limit float64) int {
	if math.Abs(x) < limit {
		return 1
	}
	return 0
}

// hours shows a time under an hour and a half in minutes, as a counter does.
func hours(h float64) (string, string) {
	if h < 1.5 {
		return Number(h*60, 0), "min"
	}
	return Number(h, decimalsBelow(h, 20)), "h"
}

// gauge spells the aught sizes as they are spoken: 0 is 1/0, -3 is 4/0.
func gauge(n int) string {
	if n <= 0 {
		return strconv.Itoa(1-n) + "/0"
	}
	return strconv.Itoa(n)
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

// Round keeps n significant figures. The contract rounds every value to six
// once, when it leaves the core.
func Round(x float64, n int) float64 {
	if x == 0 || math.IsNaN(x) || math.IsInf(x, 0) {
		return x
	}
	// FormatFloat rounds the exact binary value, the same on every processor.
	r, err := strconv.ParseFloat(strconv.FormatFloat(x, 'e', n-1, 64), 64)
	if err != nil {
		return x
	}
	return r
}

func roundTo(x float64, decimals int) float64 {
	p := math.Pow10(decimals)
	// The nudge brings 2.675-like products of exact unit factors back to the
	// half that was meant, before rounding half away from zero.
	return math.Round(x*p*(1+4e-16)) / p
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
