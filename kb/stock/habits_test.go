package stock

import (
	"math"
	"strings"
	"testing"
	"testing/fstest"

	"heronlake.example/ask/calc/unit"
)

// A number in a cell, in a file with decimal points and in one with decimal
// commas; NaN where it must be refused. A price that could be read in two ways
// as far as the digits go is none: money has two decimals.
func TestNumbersInCells(t *testing.T) {
	no := math.NaN()
	for _, test := range []struct {
		text          string
		of            measure
		points, comma float64
	}{
		{"1299", dollars, 1299, 1299},
		{"$1,299.00", dollars, 1299, 1299},
		{"1.299,00", dollars, 1299, 1299},
		{"1,299", dollars, 1299, 1299},
		{"1.299", dollars, 1299, 1299},
		{"899.95", dollars, 899.95, 899.95},
		{"899,95", dollars, 899.95, 899.95},
		{"$ 499", dollars, 499, 499},
		{"USD 499", dollars, 499, 499},
		{"899,-", dollars, 899, 899},
		{"1 049,00", dollars, 1049, 1049},
		{"1\u202f049.50", dollars, 1049.5, 1049.5},
		{"1'299.00", dollars, 1299, 1299},
		{"1,299,000.50", dollars, 1299000.5, 1299000.5},
		{"1.899,00 \u20ac", dollars, no, no},
		{"\u00a3200", dollars, no, no},
		{"call", dollars, no, no},
		{"10 20", dollars, no, no},
		{"1,29,9", dollars, no, no},
		{"28.5", pounds, 28.5, 28.5},
		{"28,5", pounds, 28.5, 28.5},
		{"1,000", amperes, 1000, no},
		{"1.000", amperes, 1, 1000},
		{"15,5 kg", pounds, 34.171651, 34.171651},
		{"14 kg", pounds, 30.864717, 30.864717},
		{"55 lb", poundsForce, 55, 55},
		{"55#", poundsForce, 55, 55},
		{"245 N", poundsForce, 55.078, 55.078},
		{"54 in", inches, 54, 54},
		{`54"`, inches, 54, 54},
		{"122 cm", inches, 48.0315, 48.0315},
		{`4'6"`, inches, no, no},
		{"48 VDC", voltage, 48, 48},
		{"24V", voltage, 24, 24},
		{"60A", amperes, 60, 60},
		{"60 watts", amperes, no, no},
		{"25 ft roll", feet, 25, 25},
		{"per foot", feet, 1, 1},
		{"10 m", feet, 32.8084, 32.8084},
		{"-5", feet, -5, -5}, // the bounds refuse it
	} {
		for comma, want := range map[bool]float64{false: test.points, true: test.comma} {
			var got float64
			err := number(&got, test.text, comma, test.of, -1e9, 1e9, func(x float64) float64 { return x })
			if err != nil {
				got = no
			}
			if math.IsNaN(want) != math.IsNaN(got) || math.Abs(got-want) > 1e-4*math.Abs(want) {
				t.Errorf("%q in %s, decimal commas %v: %v (%v), want %v", test.text, test.of.name, comma, got, err, want)
			}
		}
	}
}

// What a shop's own spreadsheet may look like: a title above the headings, names
// of its own, units in the cells, a total below.
func TestShopsOwnHeadings(t *testing.T) {
	text := "\ufeffMotors, spring;;;;;;;;\r\n;;;;;;;;\r\n" +
		"Item no.;Description;Thrust (lb);Volts;Shaft (cm);Mount;Control;Weight (kg);Price;Qty;\r\n" +
		"A1;\"Bow 55; cable\";55 lb;12 V;137;Bow mount;cable;12,5;\"$1,299.00\";3 pcs;\r\n" +
		"A2;Tiller 40;40;12;N/A;transom;tiller;n/a;399,95;-;\r\n" +
		";;;;;;;;;;\r\n" +
		"Total;;;;;;;;1.698,95;;\r\n"
	s, faults, err := read(t, text)
	if err != nil || len(faults) > 0 || len(s.Motors) != 2 {
		t.Fatalf("%d motors, faults %v, error %v", len(s.Motors), faults, err)
	}
	m := s.Motors[0]
	if m.SKU != "A1" || m.Name != "Bow 55; cable" || m.Price.Dollars() != 1299 || m.Count != 3 || m.Controls[0] != "foot-cable" ||
		math.Abs(m.Shaft.Inches()-53.937) > 0.01 || math.Abs(m.Weight.Pounds()-27.558) > 0.01 {
		t.Errorf("read as %+v", m)
	}
	if m = s.Motors[1]; m.Shaft != 0 || m.Weight != 0 || m.Price.Dollars() != 399.95 || m.Count != -1 {
		t.Errorf("read as %+v", m)
	}
	if notes := strings.Join(s.Notes[MotorsFile], "\n"); !strings.Contains(notes, "line 3") || !strings.Contains(notes, `"Qty" is read as count`) {
		t.Errorf("the report does not say how the headings were taken:\n%s", notes)
	}
}

// Each message says where, what was found, and what is wanted.
func TestMessagesPutItRight(t *testing.T) {
	head := "sku,name,chemistry,volts_V,capacity_Ah,price_USD,weight_lb\n"
	for line, want := range map[string]string{
		"B1,x,wet,12.8,100,199,54":           "",
		"B1,x,LiFePO4,12.8,100 Ah,$199,25kg": "",
		"B1,x,nickel,12,100,199,54":          `batteries.csv:2: column chemistry: "nickel" is not known; expected flooded, agm, gel or lithium`,
		"B1,x,agm,12,100,TBD,54":             `batteries.csv:2: column price_USD: "TBD" stands for nothing: price in dollars`,
		"B1,x,agm,12,100 Wh,199,54":          `batteries.csv:2: column capacity_Ah: "100 Wh" holds "wh", and the column takes amp hours; expected at the 20-hour rate, 5 to 500`,
		"B1,x,agm,13,100,199,54":             `batteries.csv:2: column volts_V: "13" is no voltage that is sold; expected 6, 8, 12, 24, 36 or 48`,
		"see the back room,,,,,,":            `batteries.csv:2: holds too little; chemistry, volts_V, capacity_Ah, price_USD are empty`,
	} {
		_, faults, _ := Read(fstest.MapFS{MotorsFile: {Data: []byte("sku\n")}, BatteriesFile: {Data: []byte(head + line + "\n")}})
		got := ""
		for _, f := range faults {
			if f.File == BatteriesFile {
				got += f.String()
			}
		}
		if got != want {
			t.Errorf("%q\n got %s\nwant %s", line, got, want)
		}
	}
	for text, want := range map[string]string{
		"A1,55,12,bow,tiller,449\n":                                    `motors.csv:1: names no column; a line of headings is needed, with at least sku, thrust_lb, volts_V, mount, control, price_USD`,
		"sku,thrust_lb,volts_V,mount,control,price EUR\nA,1,1,a,b,1\n": `motors.csv:1: column price_USD: "price EUR" names a unit that is not read here; expected price_USD`,
	} {
		_, faults, _ := read(t, text)
		if len(faults) != 1 || faults[0].String() != want {
			t.Errorf("%q\n got %v\nwant %s", text, faults, want)
		}
	}
}

func TestGauges(t *testing.T) {
	for text, want := range map[string]int{"6": 6, "6 AWG": 6, "AWG 6": 6, "#8": 8, "8 ga": 8, "8 gauge": 8, "1/0": 0, "2/0 AWG": -1, "00": -1, "0": 0, "19": 99, "16 mm2": 99, "5/0": 99, "": 99} {
		var g *unit.Gauge
		got := 99
		if err := gauge(&g, text); err == nil {
			got = int(math.Round(float64(*g)))
		}
		if got != want {
			t.Errorf("%q is gauge %d, want %d", text, got, want)
		}
	}
}
