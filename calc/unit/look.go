package unit

import (
	"math"
	"strconv"
)

// A writer turns an SI value into the number and the unit that a person reads.
type writer func(si float64) (number, unit string)

// A look is how a Form is stored and how a reader of each system sees it.
type look struct {
	si     string // the unit of the stored value
	us     writer
	metric writer // nil where both systems write alike
}

var looks = [...]look{
	Plain:      {"1", significant(1, 3, ""), nil},
	Count:      {"1", fixed(1, 0, ""), nil},
	LongLength: {"m", in(Length.Feet, 1, "ft"), fixed(1, 2, "m")},
	DeckLength: {"m", in(Length.Inches, 1, "in"), fixed(100, 0, "cm")},
	RunLength:  {"m", in(Length.Feet, 1, "ft"), fixed(1, 1, "m")},
	TripLength: {"m",
		func(si float64) (string, string) {
			m := Length(si).Miles()
			return Number(m, decimalsBelow(m, 100)), "miles"
		},
		func(si float64) (string, string) { return Number(si/1000, decimalsBelow(si/1000, 100)), "km" }},
	SmallArea: {"m2", significant(1/SquareMetresPerFoot2, 3, "ft2"), significant(1, 3, "m2")},
	Weight: {"kg",
		func(si float64) (string, string) { return grouped(Mass(si).Pounds(), 0), "lb" },
		func(si float64) (string, string) { return grouped(si, decimalsBelow(si, 10)), "kg" }},
	Thrust:   {"N", poundForce, fixed(1, 0, "N")},
	Rating:   {"N", poundForce, nil},
	Pace:     {"m/s", in(Speed.MilesPerHour, 1, "mph"), fixed(1, 1, "m/s")},
	Hour:     {"h", hours, nil},
	Ampere:   {"A", finerBelow(20, "A"), nil},
	Volt:     {"V", volts, nil},
	AmpHour:  {"Ah", finerBelow(10, "Ah"), nil},
	WattHour: {"Wh", wholeGrouped("Wh"), nil},
	Watt:     {"W", wholeGrouped("W"), nil},
	Fraction: {"1", percent, nil},
	Factor:   {"1", significant(1, 3, ""), nil},

	PerHundred:      {"1", fixed(100, 1, "lb per 100 lb"), nil},
	WireGauge:       {"AWG", func(si float64) (string, string) { return gauge(int(math.Round(si))), "AWG" }, nil},
	Dollar:          {"USD", wholeGrouped(""), nil},
	Degree:          {"degC", in(Temperature.Fahrenheit, 0, "F"), fixed(1, 0, "C")},
	InsulationClass: {"degC", fixed(1, 0, "C"), nil},
	Litre:           {"L", in(Volume.USGallons, 1, "gal"), fixed(1, 1, "L")},
	Ohm:             {"ohm", significant(1000, 3, "milliohm"), nil},
	Pascal:          {"Pa", significant(psfPerPascal, 3, "lb/ft2"), significant(1, 3, "Pa")},
	BroadArea:       {"m2", in(Area.SquareFeet, 1, "ft2"), fixed(1, 2, "m2")},
	AreaMoment: {"m4",
		func(si float64) (string, string) {
			return Significant(si/(SquareMetresPerFoot2*SquareMetresPerFoot2), 3), "ft4"
		},
		significant(1, 3, "m4")},
	WaterDensity:       {"kg/m3", in(Density.PoundsPerCubicFoot, 1, "lb/ft3"), fixed(1, 1, "kg/m3")},
	FuelDensity:        {"kg/m3", in(Density.PoundsPerUSGallon, 2, "lb/gal"), thousandth(3, "kg/L")},
	KinematicViscosity: {"m2/s", significant(1e6, 4, "mm2/s"), nil},
	// As reprints of the table with the engine-space factor round it: 178.5 is 178.
	Ampacity:    {"A", func(si float64) (string, string) { return Number(math.Ceil(si-0.5-1e-9), 0), "A" }, nil},
	EnginePower: {"W", in(Power.Horsepower, 1, "hp"), thousandth(1, "kW")},

	TripPace:    {"m/s", in(Speed.MilesPerHour, 1, "mph"), fixed(3.6, 1, "km/h")},
	Knot:        {"m/s", in(Speed.Knots, 1, "knots"), nil},
	FootLength:  {"m", in(Length.Feet, 1, "ft"), nil},
	Mil:         {"m", significant(1000/MetresPerInch, 4, "mils"), nil},
	CircularMil: {"m2", func(si float64) (string, string) { return grouped(Area(si).CircularMils(), 0), "circular mils" }, nil},
	SquareMetre: {"m2", significant(1, 3, "m2"), nil},
	Newton:      {"N", fixed(1, 0, "N"), nil},
	HalfDensity: {"kg/m3", significant(psfPerPascal*MPSPerMPH*MPSPerMPH, 3, ""), significant(1, 3, "")},
	WaterWeight: {"N/m3", significant(perCubicFoot*perPoundF, 3, "lb/ft3"), significant(1, 3, "N/m3")},
	OhmPerRun:   {"ohm/m", significant(1000*MetresPerFoot, 3, "ohm per 1,000 ft"), significant(1000, 3, "ohm per 1,000 m")},
}

// look is the row of a Form, that of Plain for any other number.
func (f Form) look() look {
	if f < 0 || int(f) >= len(looks) {
		return looks[Plain]
	}
	return looks[f]
}

// fixed writes a multiple of the SI value with so many decimals.
func fixed(times float64, decimals int, unit string) writer {
	return func(si float64) (string, string) { return Number(si*times, decimals), unit }
}

// thousandth writes the larger unit of a thousand. It divides, since times 0.001
// rounds otherwise.
func thousandth(decimals int, unit string) writer {
	return func(si float64) (string, string) { return Number(si/1000, decimals), unit }
}

// in writes a value as one of its type's accessors reads it.
func in[T ~float64](read func(T) float64, decimals int, unit string) writer {
	return func(si float64) (string, string) { return Number(read(T(si)), decimals), unit }
}

// significant writes a multiple of the SI value to so many significant figures.
func significant(times float64, figures int, unit string) writer {
	return func(si float64) (string, string) { return Significant(si*times, figures), unit }
}

// finerBelow writes one decimal under the limit and none above.
func finerBelow(limit float64, unit string) writer {
	return func(si float64) (string, string) { return Number(si, decimalsBelow(si, limit)), unit }
}

// wholeGrouped writes a whole number with commas at the thousands.
func wholeGrouped(unit string) writer {
	return func(si float64) (string, string) { return grouped(si, 0), unit }
}

func poundForce(si float64) (string, string) {
	p := Force(si).PoundForce()
	return Number(p, decimalsBelow(p, 10)), "lb"
}

// volts shows hundredths under 10 V: those are lost in a wire, not a battery's.
func volts(si float64) (string, string) {
	if math.Abs(si) < 10 {
		return Number(si, 2), "V"
	}
	return Number(si, decimalsBelow(si, 100)), "V"
}

func percent(si float64) (string, string) {
	if math.Abs(si) < 0.01 {
		return Number(si*100, 2), "%"
	}
	return Number(si*100, decimalsBelow(si*100, 10)), "%"
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
