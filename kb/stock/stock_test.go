package stock

import (
	"errors"
	"strings"
	"testing"
	"testing/fstest"
)

func TestDemoShelf(t *testing.T) {
	s := Demo()
	if len(s.Motors) < 24 || len(s.Batteries) < 16 || len(s.Chargers) < 8 || len(s.Parts) < 30 {
		t.Errorf("demo shelf has %d motors, %d batteries, %d chargers, %d parts", len(s.Motors), len(s.Batteries), len(s.Chargers), len(s.Parts))
	}
	volts := map[float64]bool{}
	for _, m := range s.Motors {
		volts[m.Voltage.Volts()] = true
	}
	for _, v := range []float64{12, 24, 36} {
		if !volts[v] {
			t.Errorf("no motor of %g V", v)
		}
	}
}

// read reads one motors.csv.
func read(t *testing.T, motors string) (*Shelf, []Fault, error) {
	t.Helper()
	return Read(fstest.MapFS{MotorsFile: {Data: []byte(motors)}})
}

func TestReadHabits(t *testing.T) {
	const plain = "sku,thrust_lb,volts_V,mount,control,price_USD\nA1,55,12,bow,foot-cable,449\n"
	for name, text := range map[string]string{
		"plain":            plain,
		"byte order mark":  "\ufeff" + plain,
		"windows lines":    strings.ReplaceAll(plain, "\n", "\r\n"),
		"semicolons":       strings.ReplaceAll(plain, ",", ";"),
		"tabs":             strings.ReplaceAll(plain, ",", "\t"),
		"named separator":  "sep=;\n" + strings.ReplaceAll(plain, ",", ";"),
		"quoted price":     "sku,thrust_lb,volts_V,mount,control,price_USD\nA1,55,12,bow,foot-cable,\"$449.00\"\n",
		"header in words":  "SKU,Thrust lb,Volts V,Mount,Control,Price USD\nA1,55,12,Bow,Foot cable,449\n",
		"extra columns":    "sku,colour,thrust_lb,volts_V,mount,control,price_USD\nA1,grey,55,12,bow,foot-cable,449\n",
		"trailing commas":  "sku,thrust_lb,volts_V,mount,control,price_USD,,\nA1,55,12,bow,foot-cable,449,,\n,,,,,,,\n",
		"text formula":     "sku,thrust_lb,volts_V,mount,control,price_USD\n=\"A1\",55,12,bow,foot-cable,449\n",
		"decimal commas":   "sku;thrust_lb;volts_V;mount;control;price_USD\nA1;55,0;12;bow;foot-cable;449,00\n",
		"no last new line": strings.TrimSuffix(plain, "\n"),
	} {
		s, faults, err := read(t, text)
		if err != nil || len(faults) > 0 || len(s.Motors) != 1 {
			t.Errorf("%s: %d motors, faults %v, error %v", name, len(s.Motors), faults, err)
			continue
		}
		m := s.Motors[0]
		if m.SKU != "A1" || m.Thrust.PoundForce() < 54.999 || m.Price.Dollars() != 449 || m.Controls[0] != "foot-cable" {
			t.Errorf("%s: read as %+v", name, m)
		}
	}
}

func TestFaultsNameTheirPlace(t *testing.T) {
	text := "sku,thrust_lb,volts_V,mount,control,price_USD\n" +
		"A1,55,12,bow,foot-cable,449\n" +
		"A2,fifty,12,bow,foot-cable,449\n" +
		"A3,55,12,roof,foot-cable,449\n" +
		"A4,55,12,bow,foot-cable,\n" +
		"A1,55,12,bow,foot-cable,500\n"
	s, faults, err := read(t, text)
	if err != nil || len(s.Motors) != 1 {
		t.Fatalf("%d motors, %v", len(s.Motors), err)
	}
	want := []string{
		`motors.csv:3: column thrust_lb: "fifty" is not a number; expected rated thrust, 10 to 400`,
		`motors.csv:4: column mount: "roof" is not known; expected bow, transom or kayak`,
		`motors.csv:5: column price_USD: is empty: price in dollars`,
		`motors.csv:6: column sku: "A1" stands in line 2 as well`,
	}
	if len(faults) != len(want) {
		t.Fatalf("faults: %v", faults)
	}
	for i, f := range faults {
		if f.String() != want[i] {
			t.Errorf("got  %s\nwant %s", f, want[i])
		}
	}
}

func TestVoltageMustBeOneThatIsSold(t *testing.T) {
	s, faults, _ := read(t, "sku,thrust_lb,volts_V,mount,control,price_USD\nA1,55,13,bow,tiller,1\nA2,55,12.0,bow,tiller,1\n")
	if len(faults) != 1 || faults[0].String() != `motors.csv:2: column volts_V: "13" is no voltage that is sold; expected 12, 24, 36 or 48` {
		t.Errorf("faults: %v", faults)
	}
	if len(s.Motors) != 1 || s.Motors[0].Voltage.Volts() != 12 || s.Motors[0].Name != "A2" {
		t.Errorf("motors: %+v", s.Motors)
	}
}

func TestLineNumbersAfterANamedSeparator(t *testing.T) {
	_, faults, _ := read(t, "sep=;\nsku;thrust_lb;volts_V;mount;control;price_USD\nA1;x;12;bow;tiller;1\n")
	if len(faults) != 1 || faults[0].Line != 3 {
		t.Errorf("faults: %v", faults)
	}
}

func TestNoMotorIsAnError(t *testing.T) {
	for name, text := range map[string]string{
		"empty":            "",
		"header only":      "sku,thrust_lb,volts_V,mount,control,price_USD\n",
		"missing column":   "sku,volts_V,mount,control,price_USD\nA1,12,bow,tiller,1\n",
		"binary":           "\x00\x01\x02\x03",
		"nothing but junk": strings.Repeat("\xff\xfe\x00", 100),
	} {
		if _, faults, err := read(t, text); !errors.Is(err, ErrNoMotor) {
			t.Errorf("%s: error %v, faults %v", name, err, faults)
		}
	}
}

func FuzzTable(f *testing.F) {
	f.Add("sku,thrust_lb,volts_V,mount,control,price_USD\nA1,55,12,bow,tiller,449\n")
	f.Add("sep=;\nsku;thrust_lb\n\"a;b\n")
	f.Add("\xff\xfes\x00k\x00")
	f.Fuzz(func(t *testing.T, text string) {
		s, faults, err := Read(fstest.MapFS{MotorsFile: {Data: []byte(text)}})
		if err == nil && len(s.Motors) == 0 {
			t.Error("no motor and no error")
		}
		for _, x := range faults {
			if x.File != MotorsFile || x.Text == "" {
				t.Errorf("fault without place: %+v", x)
			}
		}
	})
}
