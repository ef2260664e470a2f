package unit

import (
	"math"
	"os/exec"
	"strconv"
	"strings"
	"testing"

	_ "heronlake.example/ask/tests/seeded"
	"pgregory.net/rapid"
)

// exact are one of each unit in SI. NIST Special Publication 811, Appendix B;
// length, mass and force also in NBS Applied Mathematics Series 55, Table 2.5.
// gnu is how the units program spells it, "" where it has no word for it.
var exact = []struct {
	name      string
	got, want float64
	gnu, si   string
}{
	{"inch", Inches(1).Metres(), 0.0254, "inch", "m"},
	{"foot", Feet(1).Metres(), 0.3048, "foot", "m"},
	{"statute mile", 1 / Metres(1).Miles(), 1609.344, "mile", "m"},
	{"nautical mile", MetresPerNautical, 1852, "nauticalmile", "m"},
	{"knot", Knots(1).MetresPerSecond(), 1852.0 / 3600, "knot", "m/s"},
	{"mile an hour", MilesPerHour(1).MetresPerSecond(), 0.44704, "mph", "m/s"},
	{"kilometre an hour", KilometresPerHour(1).MetresPerSecond(), 1 / 3.6, "km/hr", "m/s"},
	{"pound", Pounds(1).Kilograms(), 0.45359237, "pound", "kg"},
	{"pound-force", PoundForce(1).Newtons(), 4.4482216152605, "lbf", "N"},
	{"US gallon", USGallons(1).Litres(), 3.785411784, "gallon", "L"},
	{"square foot", SquareFeet(1).SquareMetres(), 0.09290304, "ft^2", "m^2"},
	{"circular mil", CircularMils(1).SquareMetres(), 5.0670747909750e-10, "circularmil", "m^2"},
	{"standard gravity", StandardGravity, 9.80665, "gravity", "m/s^2"},
	{"horsepower", Horsepower(1).Watts(), 745.69987158227022, "hp", "W"},
	{"minute", Minutes(1).Hours(), 1.0 / 60, "min", "hr"},
}

func TestExactDefinitions(t *testing.T) {
	for _, x := range exact {
		if math.Abs(x.got-x.want) > 1e-13*x.want {
			t.Errorf("one %s is %.15g, defined as %.15g", x.name, x.got, x.want)
		}
	}
	for _, x := range []struct {
		name      string
		got, want float64
	}{
		// NIST SP 811 rounded, as handbooks print them.
		{"knots in a mile an hour", MilesPerHour(1).Knots(), 0.86897624},
		{"miles an hour in a knot", Knots(1).MilesPerHour(), 1.1507794},
		{"feet in a nautical mile", Metres(MetresPerNautical).Feet(), 6076.1155},
		{"newtons in 55 lb of thrust", PoundForce(55).Newtons(), 244.65219},
		{"F at the freezing point", Celsius(0).Fahrenheit(), 32},
		{"C at 77 F", Fahrenheit(77).Celsius(), 25},
	} {
		if math.Abs(x.got-x.want) > 5e-8*math.Abs(x.want) {
			t.Errorf("%s: %.9g, published %.9g", x.name, x.got, x.want)
		}
	}
}

// A second opinion where the program is installed.
func TestAgainstGNUUnits(t *testing.T) {
	program, err := exec.LookPath("units")
	if err != nil {
		t.Skip("the units program is not installed")
	}
	for _, x := range exact {
		if x.gnu == "" {
			continue
		}
		out, err := exec.Command(program, "-t", "-o", "%.12g", x.gnu, x.si).Output()
		if err != nil {
			t.Skipf("units answers %q: %v", out, err)
		}
		want, err := strconv.ParseFloat(strings.TrimSpace(string(out)), 64)
		if err != nil || math.Abs(x.got-want) > 1e-10*want {
			t.Errorf("one %s is %.12g, units says %s", x.name, x.got, out)
		}
	}
}

func TestConversionsReturn(t *testing.T) {
	back := []struct {
		name string
		f    func(float64) float64
	}{
		{"feet", func(x float64) float64 { return Metres(Feet(x).Metres()).Feet() }},
		{"inches", func(x float64) float64 { return Metres(Inches(x).Metres()).Inches() }},
		{"pounds", func(x float64) float64 { return Kilograms(Pounds(x).Kilograms()).Pounds() }},
		{"pounds of thrust", func(x float64) float64 { return Newtons(PoundForce(x).Newtons()).PoundForce() }},
		{"miles an hour", func(x float64) float64 { return MetresPerSecond(MilesPerHour(x).MetresPerSecond()).MilesPerHour() }},
		{"knots", func(x float64) float64 { return MetresPerSecond(Knots(x).MetresPerSecond()).Knots() }},
		{"gallons", func(x float64) float64 { return Litres(USGallons(x).Litres()).USGallons() }},
		{"square feet", func(x float64) float64 { return SquareMetres(SquareFeet(x).SquareMetres()).SquareFeet() }},
		{"circular mils", func(x float64) float64 { return SquareMetres(CircularMils(x).SquareMetres()).CircularMils() }},
		{"minutes", func(x float64) float64 { return Hours(Minutes(x).Hours()).Minutes() }},
		{"Fahrenheit", func(x float64) float64 { return Celsius(Fahrenheit(x).Celsius()).Fahrenheit() }},
	}
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(1e-3, 1e5).Draw(t, "x")
		for _, b := range back {
			if y := b.f(x); math.Abs(y-x) > 1e-12*x+1e-11 {
				t.Fatalf("%s: %.17g came back as %.17g", b.name, x, y)
			}
		}
	})
}

func TestShow(t *testing.T) {
	for _, x := range []struct {
		si   float64
		form Form
		sys  System
		want string
	}{
		{Inches(24).Metres(), DeckLength, US, "24 in"},
		{Inches(24).Metres(), DeckLength, Metric, "61 cm"},
		{Feet(18).Metres(), LongLength, US, "18 ft"},
		{Pounds(1900).Kilograms(), Weight, US, "1,900 lb"},
		{Pounds(1900).Kilograms(), Weight, Metric, "862 kg"},
		{PoundForce(55).Newtons(), Thrust, US, "55 lb"},
		{PoundForce(55).Newtons(), Thrust, Metric, "245 N"},
		{MilesPerHour(3.2).MetresPerSecond(), Pace, US, "3.2 mph"},
		{0.5, Hour, US, "30 min"},
		{6, Hour, US, "6 h"},
		{-1, WireGauge, US, "2/0 AWG"},
		{6, WireGauge, US, "6 AWG"},
		{0.03, Fraction, US, "3%"},
		{0.02, PerHundred, US, "2 lb per 100 lb"},
		{1049, Dollar, US, "$1,049"},
		{999.1026, WaterDensity, US, "62.4 lb/ft3"},
		{999.1026, WaterDensity, Metric, "999.1 kg/m3"},
		{730, FuelDensity, US, "6.09 lb/gal"},
		{730, FuelDensity, Metric, "0.73 kg/L"},
		{SquareFeet(55).SquareMetres(), BroadArea, US, "55 ft2"},
		{1.1386e-6, KinematicViscosity, US, "1.139 mm2/s"},
		{Horsepower(60).Watts(), EnginePower, US, "60 hp"},
		{math.NaN(), Weight, US, "?"},
	} {
		if got := Show(x.si, x.form, x.sys); got != x.want {
			t.Errorf("%g shown as %q, want %q", x.si, got, x.want)
		}
	}
}

func TestRound(t *testing.T) {
	for x, want := range map[float64]float64{0: 0, 0.4535923699: 0.453592, 861.8255: 861.826, 123456789: 123457000, -2.000004: -2} {
		if got := Round(x, 6); got != want {
			t.Errorf("Round(%v, 6) = %v, want %v", x, got, want)
		}
	}
}

// TestRoundSameOnEveryProcessor moves values that lie half way by what a processor
// that multiplies and adds in one step may leave in the last bits.
func TestRoundSameOnEveryProcessor(t *testing.T) {
	for _, x := range []float64{1.234565, 861.8255, 1.945e-3, 123456.5, -2.000005, 9.999995} {
		for _, bits := range []float64{-4, -1, 1, 4} {
			if moved := x * (1 + bits*2.3e-16); Round(moved, 6) != Round(x, 6) {
				t.Errorf("Round(%v, 6) = %v, and of %v it is %v", x, Round(x, 6), moved, Round(moved, 6))
			}
		}
	}
	for _, x := range []float64{0.125, 2.675, 1.005, 3.75, 12.5} {
		for _, bits := range []float64{-4, -1, 1, 4} {
			if moved := x * (1 + bits*2.3e-16); Number(moved, 2) != Number(x, 2) || Number(moved, 0) != Number(x, 0) {
				t.Errorf("%v is shown as %s, and %v as %s", x, Number(x, 2), moved, Number(moved, 2))
			}
		}
	}
	if got := Round(math.MaxFloat64, 6); got != math.MaxFloat64 {
		t.Errorf("the largest number becomes %v", got)
	}
}
