package wire_test

import (
	"encoding/csv"
	"errors"
	"fmt"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/calc/wire"
	_ "heronlake.example/ask/tests/seeded"
	"pgregory.net/rapid"
)

// table reads a published table: its header and its rows.
func table(t *testing.T, name string) (header []string, rows [][]string) {
	t.Helper()
	f, err := os.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	all, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return all[0], all[1:]
}

func num(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// lastPlace is the worth of the last decimal that a table prints.
func lastPlace(s string) float64 {
	_, decimals, _ := strings.Cut(s, ".")
	return math.Pow10(-len(decimals))
}

// gauge reads 6 or 2/0 as the tables print it.
func gauge(t *testing.T, s string) unit.Gauge {
	t.Helper()
	if n, aught := strings.CutSuffix(s, "/0"); aught {
		return unit.AWG(1 - int(num(t, n)))
	}
	return unit.AWG(int(num(t, s)))
}

// 33 CFR 183.425 Table 5, every entry, and the reprint for engine spaces.
func TestTable5(t *testing.T) {
	header, rows := table(t, "table5.csv")
	for _, row := range rows {
		g := gauge(t, row[0])
		for i, field := range row[1:8] {
			insulation := unit.Celsius(num(t, header[i+1]))
			got, err := wire.Ampacity(g, insulation, wire.Open)
			if err != nil || got.Amperes() != num(t, field) {
				t.Errorf("%s at %g C: %g A, %v; want %s", wire.Name(g), insulation.Celsius(), got.Amperes(), err, field)
			}
		}
		got, err := wire.Ampacity(g, unit.Celsius(105), wire.EngineSpace)
		if halfDown := math.Ceil(got.Amperes() - 0.5 - 1e-9); err != nil || halfDown != num(t, row[8]) {
			t.Errorf("%s at 105 C in an engine space: %.2f A, %v; the reprint has %s", wire.Name(g), got.Amperes(), err, row[8])
		}
	}
	// Note 1: 60 C insulation carries 0.58 in an engine space.
	if got, err := wire.Ampacity(6, 60, wire.EngineSpace); err != nil || math.Abs(got.Amperes()-46.4) > 1e-9 {
		t.Errorf("6 AWG at 60 C in an engine space: %g A, %v; want 46.4", got.Amperes(), err)
	}
}

// Insulation between two columns takes the cooler one, a gauge between two rows
// the thinner one, and nothing is read off beyond the table.
func TestOffTheTable(t *testing.T) {
	between, _ := wire.Ampacity(8, 100, wire.Open)
	below, _ := wire.Ampacity(8, 90, wire.Open)
	if between != below {
		t.Errorf("8 AWG at 100 C: %g A, want the %g A of 90 C", between.Amperes(), below.Amperes())
	}
	five, _ := wire.Ampacity(5, 105, wire.Open)
	six, _ := wire.Ampacity(6, 105, wire.Open)
	if five != six {
		t.Errorf("5 AWG: %g A, want the %g A of 6 AWG", five.Amperes(), six.Amperes())
	}
	var off *wire.GaugeError
	for _, g := range []unit.Gauge{20, -4} {
		if _, err := wire.Ampacity(g, 105, wire.Open); !errors.As(err, &off) {
			t.Errorf("%s: %v, want a *wire.GaugeError", wire.Name(g), err)
		}
	}
	if _, err := wire.Area(40); !errors.As(err, &off) || err.Error() != "40 AWG is outside the table, 4/0 AWG to 36 AWG: give a size in it" {
		t.Errorf("40 AWG: %v", err)
	}
	var out *band.OutsideError
	if _, err := wire.Ampacity(6, 50, wire.Open); !errors.As(err, &out) {
		t.Errorf("insulation of 50 C: %v, want a *band.OutsideError", err)
	}
}

// Diameters, circular mils and ohms of solid copper as published.
func TestCopperTable(t *testing.T) {
	_, rows := table(t, "copper.csv")
	for _, row := range rows {
		g := gauge(t, row[0])
		d, err := wire.Diameter(g)
		if err != nil {
			t.Fatal(err)
		}
		if row[1] != "" {
			// The print cuts its last place off in some rows; 1/0 is a whole one low.
			if want := num(t, row[1]); math.Abs(d.Inches()*1000-want) > 1.1*lastPlace(row[1]) {
				t.Errorf("%s is %.4f mil across, want %g", wire.Name(g), d.Inches()*1000, want)
			}
		}
		r, err := wire.Resistance(g, unit.Feet(1000), unit.Celsius(20))
		if want := num(t, row[2]); err != nil || math.Abs(r.Ohms()-want) > 0.7*lastPlace(row[2]) { // 10 AWG is printed two thirds of a place high
			t.Errorf("1000 ft of %s: %.5g ohm, %v; want %g", wire.Name(g), r.Ohms(), err, want)
		}
		a, err := wire.Area(g)
		if want := num(t, row[3]); err != nil || math.Abs(a.CircularMils()-want) > 0.051 {
			t.Errorf("%s: %.1f circular mils, %v; want %g", wire.Name(g), a.CircularMils(), err, want)
		}
	}
	// Exactly 460.0 mil for 4/0 and 5.0 mil for 36 AWG (ASTM B258).
	for g, want := range map[unit.Gauge]float64{wire.Gauge4x0: 460, 36: 5} {
		if d, err := wire.Diameter(g); err != nil || math.Abs(d.Inches()*1000-want) > 1e-9 {
			t.Errorf("%s: %.6f mil, %v; want %g", wire.Name(g), d.Inches()*1000, err, want)
		}
	}
	// Resistivity of annealed copper: 0.017241 ohm mm2/m.
	r, _ := wire.Resistance(10, unit.Metres(1), 20)
	a, _ := wire.Area(10)
	if rho := r.Ohms() * a.SquareMetres() * 1e6; math.Abs(rho-0.017241) > 1e-6 {
		t.Errorf("resistivity %.7f ohm mm2/m, want 0.017241", rho)
	}
}

// K of the wire-area formula by copper temperature, from 10.371 at 20 C and
// 0.00393 per kelvin; 10.75 belongs to about 29 C.
func TestMilFootByTemperature(t *testing.T) {
	for _, row := range []struct{ c, k float64 }{{20, 10.371}, {25, 10.575}, {29.3, 10.75}, {30, 10.779}, {50, 11.594}, {60, 12.001}, {75, 12.613}} {
		if got := wire.MilFoot(unit.Celsius(row.c)); math.Abs(got-row.k) > 6e-4 {
			t.Errorf("at %g C: %.4f, want %g", row.c, got, row.k)
		}
	}
}

// A trade reprint of the ABYC formula: a bilge pump of 10 A on 12 V, 11 ft out
// and 10 ft back, 3 %: 6,270.8 circular mils, so that 12 AWG with 6,530 does.
func ExampleCircularMilsFor_bilgePump() {
	cm, _ := wire.CircularMilsFor(unit.Amperes(10), unit.Feet(21.0/2), unit.Volts(0.36))
	twelve, _ := wire.Area(unit.AWG(12))
	fourteen, _ := wire.Area(unit.AWG(14))
	fmt.Printf("%.1f CM; 14 AWG has %.0f, 12 AWG %.0f\n", cm.CircularMils(), fourteen.CircularMils(), twelve.CircularMils())
	// Output: 6270.8 CM; 14 AWG has 4107, 12 AWG 6530
}

// A public engineering note: 200 A at 48 V over 50 ft one way, 3 %: 149,306
// circular mils, so that 3/0 with 167,800 does.
func ExampleCircularMilsFor_feeder() {
	cm, _ := wire.CircularMilsFor(unit.Amperes(200), unit.Feet(50), unit.Volts(0.03*48))
	twoAught, _ := wire.Area(wire.Gauge2x0)
	threeAught, _ := wire.Area(wire.Gauge3x0)
	fmt.Printf("%.0f CM; 2/0 has %.0f, 3/0 %.0f\n", cm.CircularMils(), twoAught.CircularMils(), threeAught.CircularMils())
	// Output: 149306 CM; 2/0 has 133077, 3/0 167806
}

// A trade catalogue prints 4 AWG for 25 A on 12 V at 3 % with 25 ft out and back.
// The formula of the same table asks for 18,663 circular mils, which 6 AWG has:
// the print does not follow its own formula.
func TestPrintedTableOffItsFormula(t *testing.T) {
	cm, err := wire.CircularMilsFor(25, unit.Feet(12.5), 0.36)
	if err != nil || math.Abs(cm.CircularMils()-18663) > 0.5 {
		t.Errorf("%.1f circular mils, %v; want 18663", cm.CircularMils(), err)
	}
	eight, _ := wire.Area(8)
	six, _ := wire.Area(6)
	if !(eight < cm && cm <= six) {
		t.Errorf("8 AWG %.0f, need %.0f, 6 AWG %.0f: want the need between", eight.CircularMils(), cm.CircularMils(), six.CircularMils())
	}
}

// Both ways to the drop agree for copper at 29.3 C, to the four figures of K.
func TestFormulaIsCopperAt29C(t *testing.T) {
	for _, g := range wire.Gauges() {
		byMils, err1 := wire.DropByMils(g, 50, unit.Feet(18))
		loop, err2 := wire.Loop(g, unit.Feet(18), 29.3)
		byOhms := wire.Drop(50, loop)
		if err1 != nil || err2 != nil || math.Abs(byMils.Volts()/byOhms.Volts()-1) > 5e-5 {
			t.Errorf("%s: %.5f V by area, %.5f V by resistance (%v, %v)", wire.Name(g), byMils.Volts(), byOhms.Volts(), err1, err2)
		}
	}
}

func TestConductorTemperature(t *testing.T) {
	for _, row := range []struct{ amps, ampacity, insulation, ambient, want float64 }{
		{0, 120, 105, 30, 30},     // no current: the ambient
		{120, 120, 105, 30, 105},  // at its ampacity: the rating
		{60, 120, 105, 30, 48.75}, // half: a quarter of the rise
		{102, 102, 105, 50, 105},
		{900, 60, 105, 30, 250}, // long past it: the end of the scale
	} {
		got := wire.ConductorTemperature(unit.Amperes(row.amps), unit.Amperes(row.ampacity), unit.Celsius(row.insulation), unit.Celsius(row.ambient))
		if math.Abs(got.Celsius()-row.want) > 1e-9 {
			t.Errorf("%g A on %g A: %.2f C, want %g", row.amps, row.ampacity, got.Celsius(), row.want)
		}
	}
}

func TestThrustLoss(t *testing.T) {
	// An ideal motor at nine tenths of its volts keeps 0.81 of its thrust.
	if got, err := wire.ThrustLoss(0.1, 2); err != nil || math.Abs(got-0.19) > 1e-12 {
		t.Errorf("ideal motor, a tenth lost: %.4f, %v; want 0.19", got, err)
	}
	if got, err := wire.ThrustLoss(0.06, 1.7); err != nil || math.Abs(got-0.1) > 0.002 {
		t.Errorf("6 %% lost: %.4f, %v; want about a tenth", got, err)
	}
}

// drawDuty draws a run that might be met on a boat.
func drawDuty(t *rapid.T) wire.Duty {
	i := unit.Amperes(rapid.Float64Range(5, 120).Draw(t, "A"))
	return wire.Duty{
		Current: i, Carry: wire.BreakerFloor(i),
		Volts:      unit.Volts(rapid.SampledFrom([]float64{12, 24, 36, 48}).Draw(t, "V")),
		Run:        unit.Feet(rapid.Float64Range(0.5, 30).Draw(t, "ft")),
		MaxDrop:    rapid.Float64Range(0.02, 0.1).Draw(t, "drop"),
		Insulation: unit.Celsius(rapid.SampledFrom([]float64{60, 75, 80, 90, 105, 125}).Draw(t, "C")),
		Place:      wire.Place(rapid.IntRange(0, 1).Draw(t, "place")),
	}
}

func TestLongerWireNeverDropsLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDuty(t)
		g := rapid.SampledFrom(wire.Gauges()).Draw(t, "gauge")
		a, err := wire.Judge(g, d)
		if err != nil {
			t.Fatal(err)
		}
		d.Run += unit.Feet(rapid.Float64Range(0, 20).Draw(t, "more"))
		b, err := wire.Judge(g, d)
		if err != nil || b.Drop < a.Drop {
			t.Fatalf("%s: %.5f, then longer %.5f (%v)", wire.Name(g), a.Drop, b.Drop, err)
		}
	})
}

// The gauge chosen passes both needs, the next thinner one fails one of them, and
// copper at its temperature is never kinder than the wire-area formula.
func TestSmallestPassesAndNoThinnerDoes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDuty(t)
		r, err := wire.Smallest(d)
		var none *wire.NoGaugeError
		if errors.As(err, &none) {
			checkNoGauge(t, d, none)
			return
		}
		if err != nil {
			t.Fatal(err)
		}
		if r.Drop > d.MaxDrop*(1+1e-9) || r.Ampacity < d.Current || r.Ampacity < d.Carry {
			t.Fatalf("%s chosen: drop %.4f of %.4f allowed, %.0f A for %.0f", wire.Name(r.Gauge), r.Drop, d.MaxDrop, r.Ampacity.Amperes(), d.Carry.Amperes())
		}
		cm, _ := wire.CircularMilsFor(d.Current, d.Run, unit.Volts(d.MaxDrop*d.Volts.Volts()))
		if a, _ := wire.Area(r.Gauge); a < cm*(1-1e-4) {
			t.Fatalf("%s has %.0f circular mils, the formula asks for %.0f", wire.Name(r.Gauge), a.CircularMils(), cm.CircularMils())
		}
		for _, g := range wire.Gauges() {
			if g <= r.Gauge || g > 16 {
				continue
			}
			if thin, err := wire.Judge(g, d); err != nil || thin.Carries(d) && thin.Holds(d) {
				t.Fatalf("%s chosen, though %s passes (%v)", wire.Name(r.Gauge), wire.Name(g), err)
			}
		}
	})
}

func checkNoGauge(t *rapid.T, d wire.Duty, e *wire.NoGaugeError) {
	if e.Runs < 2 {
		t.Fatalf("no gauge, yet %d runs of 4/0", e.Runs)
	}
	share := d
	share.Current = unit.Current(d.Current.Amperes() / float64(e.Runs))
	share.Carry = unit.Current(d.Carry.Amperes() / float64(e.Runs))
	if r, err := wire.Judge(wire.Gauge4x0, share); err != nil || !r.Holds(share) || !r.Carries(share) {
		t.Fatalf("%d runs of 4/0 do not do it: %+v, %v", e.Runs, r, err)
	}
	if e.Longest > 0 {
		d.Run = e.Longest
		if r, err := wire.Smallest(d); err != nil || r.Gauge != wire.Gauge4x0 {
			t.Fatalf("%.2f m is said to be in reach of 4/0: %v, %v", e.Longest.Metres(), r.Gauge, err)
		}
	}
}

// What cannot be wired is refused with what could.
func TestNoGauge(t *testing.T) {
	_, err := wire.Smallest(wire.Duty{Current: 50, Volts: 12, Run: unit.Feet(400), MaxDrop: 0.03, Insulation: 105})
	var none *wire.NoGaugeError
	if !errors.As(err, &none) || none.Longest <= 0 || none.Longest >= unit.Feet(400) || none.Runs < 2 {
		t.Fatalf("%v, want a *wire.NoGaugeError with a shorter run and several wires", err)
	}
	for _, part := range []string{"shorten", "voltage", "side by side", "400 ft", "122 m"} {
		if !strings.Contains(err.Error(), part) {
			t.Errorf("%q does not speak of %q", err, part)
		}
	}
}

// On a short jumper the ampacity governs, not the drop.
func TestJumperIsGovernedByAmpacity(t *testing.T) {
	d := wire.Duty{Current: 48, Carry: 60, Volts: 24, Run: unit.Inches(16), MaxDrop: 0.05, Insulation: 105}
	r, err := wire.Smallest(d)
	if err != nil || r.Gauge != 10 || r.Drop > 0.01 {
		t.Fatalf("%+v, %v; want 10 AWG with next to no drop", r, err)
	}
}

func TestGuards(t *testing.T) {
	for _, row := range []struct {
		rating, motor, ampacity float64
		want                    wire.Guard
	}{
		{50, 42, 80, wire.Within},
		{60, 52, 60, wire.Within},
		{70, 59, 60, wire.NextSizeUp},  // no size between 62 and 60
		{60, 50, 48.75, wire.TooLarge}, // the motor alone is too much
		{80, 52, 53, wire.TooLarge},    // past 150 % (33 CFR 183.455(c)(1))
		{75, 49, 50, wire.NextSizeUp},  // 150 % itself
	} {
		if got := wire.Guards(unit.Amperes(row.rating), unit.Amperes(row.motor), unit.Amperes(row.ampacity)); got != row.want {
			t.Errorf("%g A breaker, %g A motor, %g A wire: %v, want %v", row.rating, row.motor, row.ampacity, got, row.want)
		}
	}
}

// 33 CFR 183.455(b) and ABYC E-11: 7, 40 and 72 inches.
func TestBreakerDistance(t *testing.T) {
	for l, inches := range map[wire.Leaving]float64{wire.Bare: 7, wire.Sheathed: 40, wire.AtBattery: 72} {
		if got := wire.BreakerDistance(l).Inches(); math.Abs(got-inches) > 1e-9 {
			t.Errorf("%v: %g in, want %g", l, got, inches)
		}
		if wire.LeavingOf(l.String()) != l {
			t.Errorf("%v is read back as %v", l, wire.LeavingOf(l.String()))
		}
	}
	if wire.LeavingOf("dangling") != wire.Bare {
		t.Error("an unknown word must take the strictest case")
	}
}

func TestBundling(t *testing.T) {
	if f := wire.BundlingFactor(6, 36); f != 1 {
		t.Errorf("six conductors on 36 V: %g; note 2 begins at 50 V", f)
	}
	last := 1.0
	for _, n := range []int{2, 3, 5, 10, 30} { // factors from memory: only their order is checked
		f := wire.BundlingFactor(n, 60)
		if f > last {
			t.Errorf("%d conductors: %g, more than fewer", n, f)
		}
		last = f
	}
}

func BenchmarkSmallest(b *testing.B) {
	d := wire.Duty{Current: 50, Carry: 60, Volts: 12, Run: unit.Feet(18), MaxDrop: 0.05, Insulation: 105}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := wire.Smallest(d); err != nil {
			b.Fatal(err)
		}
	}
}
