package load

import (
	"fmt"
	"math"
	"testing"

	"heronlake.example/ask/calc/unit"
	_ "heronlake.example/ask/tests/seeded"
	"pgregory.net/rapid"
)

// US Coast Guard, Boatbuilder's Handbook, Safe Loading, special discussion of 33
// CFR 183.41: two boats whose weight capacity less motor leaves 550 and 547 lb;
// the second one takes 545 lb in the stability test. The handbook prints the
// quotients 4.12 and 4.10, cut after two decimals.
func ExamplePersons_handbook() {
	first := PersonsWeightOutboard(unit.Pounds(550), 0, 0) // exactly 550 lb needs no test
	second := PersonsWeightOutboard(unit.Pounds(547), 0, unit.Pounds(545))
	for _, w := range []unit.Mass{first, second} {
		cut := math.Floor(quotient(w.Pounds())*100) / 100
		fmt.Printf("%.0f lb: %.2f, %d persons\n", w.Pounds(), cut, Persons(w))
	}
	fmt.Printf("test: %.0f lb\n", (unit.Pounds(545) / 0.6).Pounds())
	// Output:
	// 550 lb: 4.12, 4 persons
	// 547 lb: 4.10, 4 persons
	// test: 908 lb
}

// 33 CFR 183.41(b): to the nearest whole number, one half up. The steps follow
// from the formula.
func TestPersonsSteps(t *testing.T) {
	for i, lb := range []float64{38.5, 179.5, 320.5, 461.5, 602.5, 743.5, 884.5} {
		if got := Persons(unit.Pounds(lb)); got != i+1 {
			t.Errorf("%g lb: %d persons, want %d", lb, got, i+1)
		}
		if got := Persons(unit.Pounds(lb - 0.1)); got != i {
			t.Errorf("%g lb: %d persons, want %d", lb-0.1, got, i)
		}
	}
	if got := Persons(unit.Pounds(-200)); got != 0 {
		t.Errorf("less than nothing left: %d persons", got)
	}
}

func TestPersonsWeight(t *testing.T) {
	if NeedsStabilityTest(unit.Pounds(550), 0) {
		t.Error("550 lb asks for the stability test, which begins below it")
	}
	if !NeedsStabilityTest(unit.Pounds(700), unit.Pounds(185)) {
		t.Error("515 lb asks for no stability test")
	}
	for _, x := range []struct {
		name      string
		got, want unit.Mass
	}{
		{"test governs", PersonsWeightOutboard(unit.Pounds(540), unit.Pounds(0), unit.Pounds(240)), unit.Pounds(400)},
		{"manual", PersonsWeightManual(unit.Pounds(500)), unit.Pounds(450)},
		{"2 hp", PersonsWeightSmall(unit.Pounds(500)), unit.Pounds(425)},
		{"a fifth", WeightOutboard(unit.Pounds(6000), unit.Pounds(1000)), unit.Pounds(1000)},
		{"three tenths", WeightManual(unit.Pounds(3000), unit.Pounds(500)), unit.Pounds(750)},
		{"cubic foot of water", unit.Mass(FreshWater * unit.Density(unit.MetresPerFoot*unit.MetresPerFoot*unit.MetresPerFoot)), unit.Pounds(62.4)},
	} {
		if math.Abs(float64(x.got-x.want)) > 1e-9 {
			t.Errorf("%s: %.3f lb, want %.3f lb", x.name, x.got.Pounds(), x.want.Pounds())
		}
	}
}

// 33 CFR 183.53 and its published examples. The second one prints a factor of
// 45.96 and 10 hp; 12 ft x 46 in is exactly 46, which the table gives 15 hp, or
// 10 hp for a flat bottom with hard chines, so both are shown. The third boat is
// over 20 ft: arithmetic only, 284 before the multiple of five.
func ExampleMaxHorsepower() {
	show := func(name string, length, width unit.Length, s PowerSteering) {
		hp, err := MaxHorsepower(length, width, s)
		fmt.Println(name, hp, err)
	}
	remote := PowerSteering{Remote: true, Transom: unit.Inches(20)}
	tiller := PowerSteering{Transom: unit.Inches(15)}
	flat := PowerSteering{Transom: unit.Inches(15), FlatHC: true}
	show("19 ft 6 in x 84 in", unit.Feet(19.5), unit.Inches(84), remote)
	show("12 ft x 46 in", unit.Feet(12), unit.Inches(46), tiller)
	show("12 ft x 46 in, flat", unit.Feet(12), unit.Inches(46), flat)
	show("22 ft x 8.5 ft", unit.Feet(22), unit.Feet(8.5), remote)
	// Output:
	// 19 ft 6 in x 84 in 185 <nil>
	// 12 ft x 46 in 15 <nil>
	// 12 ft x 46 in, flat 10 <nil>
	// 22 ft x 8.5 ft 285 <nil>
}

// 33 CFR 183.53, the whole table at its ends.
func TestHorsepowerTable(t *testing.T) {
	for factor, want := range map[float64]float64{20: 3, 35: 3, 35.6: 5, 39: 5, 40: 7.5, 42: 7.5, 43: 10, 45: 10, 46: 15, 52: 15} {
		hp, err := MaxHorsepower(unit.Feet(10), unit.Feet(factor/10), PowerSteering{})
		if err != nil || hp != want {
			t.Errorf("factor %g: %g hp, want %g (%v)", factor, hp, want, err)
		}
	}
	for _, x := range []struct {
		factor float64
		s      PowerSteering
		want   float64
	}{
		{100, PowerSteering{Remote: true, Transom: unit.Inches(20)}, 110},
		{100, PowerSteering{Remote: true, Transom: unit.Inches(15)}, 55},
		{100, PowerSteering{}, 55},
		{100, PowerSteering{FlatHC: true}, 35},
	} {
		if hp, err := MaxHorsepower(unit.Feet(10), unit.Feet(x.factor/10), x.s); err != nil || hp != x.want {
			t.Errorf("factor %g, %+v: %g hp, want %g (%v)", x.factor, x.s, hp, x.want, err)
		}
	}
	if hp, err := MaxHorsepower(0, unit.Feet(5), PowerSteering{}); err == nil {
		t.Errorf("a boat without length gave %g hp", hp)
	}
}

// ABYC S-30 Table 1A adds up as printed: total = running + controls + battery +
// fuel, running = 1.05 dry to the pound.
func TestOutboardTableAddsUp(t *testing.T) {
	for i, o := range Outboards {
		if sum := o.Running + o.Controls + o.Battery + o.Fuel; math.Abs((sum - o.Total).Pounds()) > 1e-6 {
			t.Errorf("%g to %g hp: parts make %.0f lb, printed %.0f", o.Low, o.High, sum.Pounds(), o.Total.Pounds())
		}
		if d := o.Running.Pounds() - 1.05*o.Dry.Pounds(); math.Abs(d) > 1 {
			t.Errorf("%g to %g hp: running %.0f lb is not 1.05 x %.0f", o.Low, o.High, o.Running.Pounds(), o.Dry.Pounds())
		}
		if s := o.Swamped.Pounds() / o.Running.Pounds(); s < 0.83 || s > 0.87 {
			t.Errorf("%g to %g hp: swamped is %.2f of running, printed about 0.85", o.Low, o.High, s)
		}
		if i > 0 && o.Low <= Outboards[i-1].High {
			t.Errorf("rows %d and %d overlap", i-1, i)
		}
	}
}

// Spot rows that the Federal Register notice of 27 October 2017 prints.
func TestOutboardSpotRows(t *testing.T) {
	for hp, total := range map[float64]float64{2: 32, 3: 44, 5: 94, 9.9: 185, 20: 234, 30: 350, 75: 628, 115: 723} {
		o, err := OutboardOf(unit.Horsepower(hp))
		if err != nil || math.Abs(o.Total.Pounds()-total) > 1e-6 {
			t.Errorf("%g hp: %.0f lb, published %g (%v)", hp, o.Total.Pounds(), total, err)
		}
	}
	for _, hp := range []float64{0, 351, math.NaN()} {
		if o, err := OutboardOf(unit.Horsepower(hp)); err == nil {
			t.Errorf("%g hp: %+v", hp, o)
		}
	}
}

// Densities: gasoline of 0.73 g/cm3 is 6.09 lb a gallon, diesel of 0.84 is 7.01,
// water 8.345 (handbook values).
func TestFuel(t *testing.T) {
	gallon := unit.USGallons(1)
	for _, x := range []struct {
		name string
		of   unit.Density
		want float64
	}{{"gasoline", Gasoline, 6.10}, {"gasoline of 0.73", 730, 6.09}, {"diesel", Diesel, 7.01}, {"water", 999.97, 8.345}} {
		if got := Fuel(gallon, x.of).Pounds(); math.Abs(got-x.want) > 0.005 {
			t.Errorf("a gallon of %s weighs %.3f lb, published %.3f", x.name, got, x.want)
		}
	}
	if !(GasolineLow < 730 && 730 < GasolineHigh) {
		t.Error("gasoline of 0.73 g/cm3 lies outside its own range")
	}
}

func TestMoreWeightNeverLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := rapid.Float64Range(0, 500)
		p := Parts{unit.Mass(w.Draw(t, "hull")), unit.Mass(w.Draw(t, "engine")), unit.Mass(w.Draw(t, "fuel")), unit.Mass(w.Draw(t, "people")),
			unit.Mass(w.Draw(t, "gear")), unit.Mass(w.Draw(t, "batteries")), unit.Mass(w.Draw(t, "motor"))}
		q := p
		q.Motor += unit.Mass(w.Draw(t, "more"))
		if q.Total() < p.Total() || q.Aboard() < p.Aboard() || p.Total() < p.Hull {
			t.Fatalf("%+v weighs %g, %+v weighs %g", p, p.Total(), q, q.Total())
		}
		if Persons(p.Total()) > Persons(q.Total()) {
			t.Fatalf("more weight carries fewer persons")
		}
	})
}

// The rule's rounding never gives a person for less than half of 141 lb.
func TestPersonsNeverFarAboveTheWeight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lb := rapid.Float64Range(0, 3000).Draw(t, "pounds")
		n := float64(Persons(unit.Pounds(lb)))
		if off := n*141 - 32 - lb; off > 70.5+1e-3 || off < -70.5-1e-3 {
			t.Fatalf("%g lb: %g persons", lb, n)
		}
	})
}

func BenchmarkPersons(b *testing.B) {
	b.ReportAllocs()
	n := 0
	for b.Loop() {
		n += Persons(unit.Pounds(742))
	}
	_ = n
}
