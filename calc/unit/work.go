package unit

import (
	"math"
	"strings"
)

// A scale turns an SI value into the unit in which one system of units
// calculates: one unit for each kind of quantity, so that a formula holds with
// the numbers as they are printed.
type scale struct {
	times, plus float64
	unit        string
}

// same is a scale that both systems share.
func same(times float64, unit string) [2]scale {
	s := scale{times: times, unit: unit}
	return [2]scale{s, s}
}

// two are the scales of US and metric readers.
func two(us float64, usUnit string, metric float64, metricUnit string) [2]scale {
	return [2]scale{{times: us, unit: usUnit}, {times: metric, unit: metricUnit}}
}

const (
	perFoot      = 1 / MetresPerFoot
	perFoot2     = 1 / SquareMetresPerFoot2
	perPound     = 1 / KilogramsPerPound
	perPoundF    = 1 / NewtonsPerPoundForce
	perMPH       = 1 / MPSPerMPH
	psfPerPascal = SquareMetresPerFoot2 / NewtonsPerPoundForce
	perCubicFoot = MetresPerFoot * MetresPerFoot * MetresPerFoot
)

// scales are by Form and System.
var scales = [...][2]scale{
	Plain:      same(1, ""),
	Count:      same(1, ""),
	LongLength: two(perFoot, "ft", 1, "m"),
	DeckLength: two(1/MetresPerInch, "in", 100, "cm"),
	RunLength:  two(perFoot, "ft", 1, "m"),
	TripLength: two(1/MetresPerMile, "miles", 1e-3, "km"),
	SmallArea:  two(perFoot2, "ft2", 1, "m2"),
	Weight:     two(perPound, "lb", 1, "kg"),
	Thrust:     two(perPoundF, "lb", 1, "N"),
	Rating:     two(perPoundF, "lb", 1, "N"),
	Pace:       two(perMPH, "mph", 1, "m/s"),
	Hour:       same(1, "h"),
	Ampere:     same(1, "A"),
	Volt:       same(1, "V"),
	AmpHour:    same(1, "Ah"),
	WattHour:   same(1, "Wh"),
	Watt:       same(1, "W"),
	Fraction:   same(100, "%"),
	Factor:     same(1, ""),
	// 0.02 of the weight: for a metric reader, of the force that a kilogram weighs.
	PerHundred:      two(100, "lb per 100 lb", StandardGravity, "N/kg"),
	WireGauge:       same(1, "AWG"),
	Dollar:          same(1, ""),
	Degree:          {{1.8, 32, "F"}, {1, 0, "C"}},
	InsulationClass: same(1, "C"),
	Litre:           two(1/LitresPerUSGallon, "gal", 1, "L"),
	Ohm:             same(1, "ohm"),
	Pascal:          two(psfPerPascal, "lb/ft2", 1, "Pa"),
	BroadArea:       two(perFoot2, "ft2", 1, "m2"),
	AreaMoment:      two(perFoot2*perFoot2, "ft4", 1, "m4"),
	WaterDensity:    two(perCubicFoot*perPound, "lb/ft3", 1, "kg/m3"),
	FuelDensity:     two(LitresPerUSGallon/1000*perPound, "lb/gal", 1e-3, "kg/L"),

	KinematicViscosity: same(1e6, "mm2/s"),
	EnginePower:        two(1/WattsPerHorsepower, "hp", 1e-3, "kW"),

	Ampacity:    same(1, "A"),
	TripPace:    two(perMPH, "mph", 3.6, "km/h"),
	Knot:        same(1/MPSPerKnot, "knots"),
	FootLength:  same(perFoot, "ft"),
	Mil:         same(1000/MetresPerInch, "mils"),
	CircularMil: same(1/SquareMetresPerCircularMil, "circular mils"),
	SquareMetre: same(1, "m2"),
	Newton:      same(1, "N"),
	// rho/2 in q = rho V^2 / 2, so that mph give pounds a square foot.
	HalfDensity: two(psfPerPascal*MPSPerMPH*MPSPerMPH, "", 1, ""),
	WaterWeight: two(perCubicFoot*perPoundF, "lb/ft3", 1, "N/m3"),
	OhmPerRun:   two(1000*MetresPerFoot, "ohm per 1,000 ft", 1000, "ohm per 1,000 m"),
}

// workDigits are the significant figures of a number that is put into a formula,
// and resultDigits those of a result: one less, so that a reader who reckons
// with the numbers as printed finds the result as printed.
const (
	workDigits   = 4
	resultDigits = 3
)

// Work writes an SI value as it is put into a worked formula: in the one unit in
// which the system calculates with such a quantity, to at least four significant
// figures (five behind a leading 1) and never less than whole units, without trailing zeros. A wire gauge
// and money are written as Show does.
func Work(si float64, f Form, s System) string {
	figures := workDigits
	at := scaleOf(f, s)
	switch x := math.Abs(si*at.times + at.plus); {
	case f == AmpHour: // times volts they give watt hours, which are shown whole
		figures++
	case x > 0 && x*math.Pow10(1-int(math.Floor(math.Log10(x)))) < 20: // a leading 1 is a coarse step
		figures++
	}
	return inWork(si, f, s, figures)
}

// Result writes the result of a worked formula in the unit in which the formula
// gives it: as finely as Show, or one decimal finer where that makes up three
// significant figures. Where Show uses another unit, what Show writes follows:
// "0.531 h = 32 min".
func Result(si float64, yields, f Form, s System) string {
	shown := Show(si, f, s)
	if f == WireGauge || f == Dollar || f == Weight { // weights are sums and differences, no finer than their parts
		return shown
	}
	number, u := Split(si, f, s)
	if f == Rating {
		shown = number + " " + u // the newtons beside it are the working's own
	}
	if at := scaleOf(yields, s); yields != f || at.unit != u {
		if w := inWork(si, yields, s, resultDigits); w != shown {
			return w + " = " + shown
		}
		return shown
	}
	at := scaleOf(f, s)
	x := si*at.times + at.plus
	_, frac, _ := strings.Cut(number, ".")
	d := min(decimalsFor(x, resultDigits), len(frac)+1)
	if d <= len(frac) || math.IsNaN(x) || math.IsInf(x, 0) {
		return shown
	}
	return withUnit(grouped(x, d), at.unit)
}

func withUnit(number, unit string) string {
	if unit == "" || unit == "%" {
		return number + unit
	}
	return number + " " + unit
}

func scaleOf(f Form, s System) scale {
	if f < 0 || int(f) >= len(scales) {
		f = Plain
	}
	if s == Metric {
		return scales[f][1]
	}
	return scales[f][0]
}

// inWork writes to so many significant figures, and never less than whole units.
func inWork(si float64, f Form, s System, figures int) string {
	if math.IsNaN(si) || math.IsInf(si, 0) || f == WireGauge || f == Dollar {
		return Show(si, f, s)
	}
	at := scaleOf(f, s)
	x := si*at.times + at.plus
	return withUnit(grouped(x, decimalsFor(x, figures)), at.unit)
}

// decimalsFor is how many decimals show so many significant figures; none where
// the whole number has as many.
func decimalsFor(x float64, figures int) int {
	if x == 0 {
		return 0
	}
	before := int(math.Floor(math.Log10(math.Abs(x)))) + 1
	return min(max(figures-before, 0), 12)
}
