package match

import (
	"slices"
	"strings"
	"testing"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb/stock"
	"heronlake.example/ask/reasoner/card"
)

func num(x float64) *float64 { return &x }

func given(id sheet.ID, x float64) sheet.Given {
	return sheet.Given{ID: id, Value: band.Exactly(x), Said: "said"}
}

// boat is a bow boat that needs 50 lb on a 48 in shaft and 100 Ah, with 18 ft of
// wire; each motor is solved with its own voltage and current.
func boat(facts ...card.Fact) Boat {
	given := []sheet.Given{
		given(sheet.ThrustNeed, unit.PoundForce(50).Newtons()),
		given(sheet.ShaftNeed, unit.Inches(48).Metres()),
		given(sheet.BankCapacity, 100),
		given(sheet.WireRun, unit.Feet(18).Metres()),
		given(sheet.ChargerCurrent, 10),
		given(sheet.UseHours, 6),
		{ID: sheet.MountPlace, Word: "bow", Said: "bow"},
		{ID: sheet.BoatHull, Word: "vee", Said: "vee"},
	}
	var c card.Card
	for _, f := range facts {
		c = c.And(f)
		if f.Slot == "mount.place" {
			given[6].Word = f.Text
		}
		if f.Slot == "boat.hull" {
			given[7].Word = f.Text
		}
	}
	sol := sheet.StandardBook().Solve(sheet.Question{Given: given, Want: []sheet.ID{sheet.ThrustNeed, sheet.ShaftNeed, sheet.MountPlace, sheet.BoatHull, sheet.BatteryChemistry}})
	trial := sheet.StandardBook().NewTrial()
	return Boat{Card: c, Sol: sol, Sys: unit.US, Try: func(o Offer, want []sheet.ID) *sheet.Trial {
		m := o.Motor
		with := append(slices.Clone(given), givenOf(sheet.MotorThrust, m.Thrust.Newtons()), givenOf(sheet.MotorVoltage, m.Voltage.Volts()),
			givenOf(sheet.MotorAmps, m.Current.Amperes()), givenOf(sheet.CruiseCurrent, m.Current.Amperes()*0.2))
		trial.Solve(sheet.Question{Given: with, Want: want})
		return trial
	}}
}

func givenOf(id sheet.ID, x float64) sheet.Given { return given(id, x) }

// motor passes every need of boat.
func motor(change ...func(*stock.Motor)) stock.Motor {
	m := stock.Motor{SKU: "M", Name: "Grebe", Thrust: unit.PoundForce(55), Voltage: unit.Volts(12), Shaft: unit.Inches(54), Mount: "bow",
		Controls: []string{"foot-cable"}, Speeds: "variable", Drive: "brushed", Water: "fresh", Current: unit.Amperes(50), Weight: unit.Pounds(40), Price: unit.Dollars(500), Count: 1}
	for _, f := range change {
		f(&m)
	}
	return m
}

// parts is a shelf of everything but motors.
func parts(motors ...stock.Motor) *stock.Shelf {
	awg := func(n int) *unit.Gauge { g := unit.AWG(n); return &g }
	return &stock.Shelf{Shop: "Test", Motors: motors,
		Batteries: []stock.Battery{
			{SKU: "B1", Name: "flooded 100", Chemistry: "flooded", Voltage: 12, Capacity: 100, Price: 120, Cycles: 200, Series: true},
			{SKU: "B2", Name: "agm 60", Chemistry: "agm", Voltage: 12, Capacity: 60, Price: 90, Cycles: 300, Series: true},
			{SKU: "B3", Name: "lithium 100", Chemistry: "lithium", Voltage: 12, Capacity: 100, Price: 650, Cycles: 3000, Protection: 100},
			{SKU: "B4", Name: "lithium 100 weak", Chemistry: "lithium", Voltage: 12, Capacity: 100, Price: 500, Cycles: 3000, Protection: 40},
		},
		Chargers: []stock.Charger{
			{SKU: "C1", Name: "1 x 6", Outputs: 1, Current: 6, Voltage: 12, Chemistry: []string{"flooded", "agm"}, Price: 60},
			{SKU: "C2", Name: "1 x 10", Outputs: 1, Current: 10, Voltage: 12, Chemistry: []string{"flooded", "agm"}, Price: 100},
			{SKU: "C3", Name: "2 x 10", Outputs: 2, Current: 10, Voltage: 12, Chemistry: []string{"flooded", "agm", "lithium"}, Price: 190},
		},
		Parts: []stock.Part{
			{SKU: "W6", Name: "wire 6", Kind: "wire", Gauge: awg(6), Length: unit.Feet(25), Price: 50},
			{SKU: "W4S", Name: "wire 4 short", Kind: "wire", Gauge: awg(4), Length: unit.Feet(10), Price: 40},
			{SKU: "J6", Name: "link 6", Kind: "link", Gauge: awg(6), Price: 14},
			{SKU: "J4", Name: "link 4", Kind: "link", Gauge: awg(4), Price: 18},
			{SKU: "X31", Name: "box 31", Kind: "box", Groups: []string{"31"}, Price: 15},
			{SKU: "X", Name: "tray", Kind: "box", Price: 20},
			{SKU: "W4", Name: "wire 4", Kind: "wire", Gauge: awg(4), Length: unit.Feet(25), Price: 90},
			{SKU: "K60", Name: "breaker 60", Kind: "breaker", Rating: 60, Voltage: 32, Price: 30},
			{SKU: "K60H", Name: "breaker 60 high", Kind: "breaker", Rating: 60, Voltage: 60, Price: 45},
			{SKU: "K70", Name: "breaker 70", Kind: "breaker", Rating: 70, Voltage: 60, Price: 20},
			{SKU: "P40", Name: "plug 40", Kind: "plug", Rating: 40, Voltage: 48, Price: 20},
			{SKU: "P60", Name: "plug 60", Kind: "plug", Rating: 60, Voltage: 48, Price: 40},
			{SKU: "RB", Name: "bow plate", Kind: "bracket", Fits: []string{"bow"}, Price: 25},
			{SKU: "RK", Name: "kayak bracket", Kind: "bracket", Fits: []string{"kayak"}, Price: 35},
		}}
}

func fact(slot, text string) card.Fact { return card.Fact{Slot: slot, Text: text} }
func wish(slot, text string) card.Fact { return card.Fact{Slot: slot, Text: text, Wish: true} }

// Every need is held against a motor that passes, one that is tight where the
// need knows such, and one that fails.
func TestEveryNeed(t *testing.T) {
	thrust := func(lb float64) func(*stock.Motor) {
		return func(m *stock.Motor) { m.Thrust = unit.PoundForce(lb) }
	}
	shaft := func(in float64) func(*stock.Motor) {
		return func(m *stock.Motor) { m.Shaft = unit.Inches(in) }
	}
	set := func(f func(m *stock.Motor)) func(*stock.Motor) { return f }
	budget := func(usd float64) card.Fact { return card.Fact{Slot: "money.budget", High: num(usd)} }
	tests := []struct {
		need    string
		boat    Boat
		motor   stock.Motor
		want    Verdict
		fits    bool
		applies bool
	}{
		{"thrust", boat(), motor(thrust(50)), Pass, true, true},
		{"thrust", boat(), motor(thrust(49.5)), Short, true, true},
		{"thrust", boat(), motor(thrust(47)), Fail, false, true},
		{"volts", boat(), motor(), Pass, true, false},
		{"volts", boat(card.Fact{Slot: "motor.voltage", Value: num(12)}), motor(), Pass, true, true},
		{"volts", boat(card.Fact{Slot: "motor.voltage", Value: num(24)}), motor(), Fail, false, true},
		{"shaft", boat(), motor(shaft(48)), Pass, true, true},
		{"shaft", boat(), motor(shaft(47)), Short, true, true},
		{"shaft", boat(), motor(shaft(42)), Fail, false, true},
		{"shaft", boat(), motor(shaft(72)), Tight, true, true},
		{"shaft", boat(), motor(shaft(0)), Tight, true, true},
		{"mount", boat(), motor(), Pass, true, true},
		{"mount", boat(), motor(set(func(m *stock.Motor) { m.Mount = "transom" })), Fail, false, true},
		{"mount", boat(fact("mount.place", "kayak")), motor(set(func(m *stock.Motor) { m.Mount = "transom" })), Tight, true, true},
		{"control", boat(), motor(), Pass, true, false},
		{"control", boat(fact("motor.control", "foot-cable")), motor(), Pass, true, true},
		{"control", boat(fact("motor.control", "tiller")), motor(), Fail, false, true},
		{"control", boat(fact("motor.control", "tiller|foot-cable")), motor(), Pass, true, true},
		{"control", boat(wish("motor.control", "tiller")), motor(), Fail, true, true},
		{"control", boat(fact("want.remote", "true")), motor(), Fail, false, true},
		{"speed control", boat(fact("motor.speeds", "variable")), motor(), Pass, true, true},
		{"speed control", boat(fact("motor.speeds", "fixed")), motor(), Fail, false, true},
		{"motor kind", boat(fact("motor.drive", "brushed")), motor(), Pass, true, true},
		{"motor kind", boat(fact("motor.drive", "brushless")), motor(), Fail, false, true},
		{"motor kind", boat(wish("motor.drive", "brushless")), motor(), Fail, true, true},
		{"water", boat(fact("water.kind", "fresh")), motor(), Pass, true, false},
		{"water", boat(fact("water.kind", "salt")), motor(), Fail, false, true},
		{"water", boat(fact("water.kind", "brackish")), motor(set(func(m *stock.Motor) { m.Water = "salt" })), Pass, true, true},
		{"sonar", boat(fact("want.sonar-down", "true")), motor(set(func(m *stock.Motor) { m.Sonar = []string{"2d", "down"} })), Pass, true, true},
		{"sonar", boat(fact("want.sonar-side", "true")), motor(set(func(m *stock.Motor) { m.Sonar = []string{"2d", "down"} })), Fail, false, true},
		{"sonar", boat(fact("want.sonar-2d", "false")), motor(), Pass, true, false},
		{"position hold", boat(fact("want.position-hold", "true")), motor(set(func(m *stock.Motor) { m.Hold = true })), Pass, true, true},
		{"position hold", boat(fact("want.position-hold", "true")), motor(), Fail, false, true},
		{"heading hold", boat(fact("want.heading-hold", "true")), motor(set(func(m *stock.Motor) { m.Heading = true })), Pass, true, true},
		{"heading hold", boat(fact("want.heading-hold", "true")), motor(), Fail, false, true},
		{"track following", boat(fact("want.track", "true")), motor(set(func(m *stock.Motor) { m.Track = true })), Pass, true, true},
		{"track following", boat(fact("want.track", "true")), motor(), Fail, false, true},
		{"weight", boat(fact("boat.hull", "canoe")), motor(set(func(m *stock.Motor) { m.Weight = unit.Pounds(20) })), Pass, true, true},
		{"weight", boat(fact("boat.hull", "canoe")), motor(), Tight, true, true},
		{"weight", boat(), motor(), Pass, true, false},
		{"budget", boat(budget(925)), motor(), Pass, true, true}, // 500 + 120 + 20 + 100 + 90 + 30 + 40 + 25
		{"budget", boat(budget(600)), motor(), Tight, true, true},
		{"budget", boat(budget(400)), motor(), Fail, false, true},
		{"in stock", boat(), motor(), Pass, true, true},
		{"in stock", boat(), motor(set(func(m *stock.Motor) { m.Count = -1 })), Pass, true, false},
		{"in stock", boat(), motor(set(func(m *stock.Motor) { m.Count = 0 })), Tight, true, true},
	}
	covered := map[string]bool{}
	for _, tt := range tests {
		o := Motors(tt.boat, parts(tt.motor))[0]
		i := slices.IndexFunc(o.Judged, func(j Judged) bool { return j.Need == tt.need })
		switch {
		case i < 0 && tt.applies:
			t.Errorf("%s was not judged: %+v", tt.need, o.Judged)
		case i >= 0 && !tt.applies:
			t.Errorf("%s was judged though nobody needs it: %+v", tt.need, o.Judged[i])
		case i >= 0 && (o.Judged[i].Verdict != tt.want || (tt.want == Pass) != (o.Judged[i].Reason == "")):
			t.Errorf("%s: %v %q, want %v (rig %v)", tt.need, o.Judged[i].Verdict, o.Judged[i].Reason, tt.want, o.Rig.Total)
		}
		if o.Fits() != tt.fits {
			t.Errorf("%s: fits %v, want %v: %s", tt.need, o.Fits(), tt.fits, o.Reasons())
		}
		covered[tt.need] = true
	}
	for _, r := range needRows {
		if !covered[r.name] {
			t.Errorf("no case for the need %q", r.name)
		}
	}
}

func TestOrderIsPassesThenCostThenHeadroom(t *testing.T) {
	priced := func(sku string, usd, lb, in float64) stock.Motor {
		return motor(func(m *stock.Motor) {
			m.SKU, m.Price, m.Thrust, m.Shaft = sku, unit.Dollars(usd), unit.PoundForce(lb), unit.Inches(in)
		})
	}
	offers := Motors(boat(), parts(
		priced("dear", 900, 55, 54), priced("miss two", 100, 30, 30), priced("tight but cheap", 200, 49.5, 54),
		priced("same, less thrust", 500, 55, 54), priced("miss", 100, 30, 54), priced("same", 500, 60, 54)))
	var got []string
	for _, o := range offers {
		got = append(got, o.Motor.SKU)
	}
	want := []string{"same", "same, less thrust", "dear", "tight but cheap", "miss", "miss two"}
	if !slices.Equal(got, want) {
		t.Errorf("order %q, want %q", got, want)
	}
}

func skus(r Rig) (out []string) {
	for _, i := range r.Items {
		sku := i.SKU
		if i.Count > 1 {
			sku += " x" + unit.Number(float64(i.Count), 0)
		}
		out = append(out, sku)
	}
	return out
}

func TestRig(t *testing.T) {
	volts := func(v float64) func(*stock.Motor) {
		return func(m *stock.Motor) { m.Voltage = unit.Volts(v) }
	}
	shelf := func(change func(s *stock.Shelf)) func(m stock.Motor) *stock.Shelf {
		return func(m stock.Motor) *stock.Shelf {
			s := parts(m)
			if change != nil {
				change(s)
			}
			return s
		}
	}
	tests := []struct {
		name  string
		boat  Boat
		motor stock.Motor
		shelf func(stock.Motor) *stock.Shelf
		want  string // the numbers, in order; an empty one is not on the shelf
	}{
		// 50 A over 18 ft at 12 V: 4 AWG; the short pack does not reach; 52.5 A asks for 60.
		{"one battery", boat(), motor(), shelf(nil), "M B1 X C2 W4 K60 P60 RB"},
		{"two in series", boat(), motor(volts(24)), shelf(nil), "M B1 x2 J6 X x2 C3 W6 K60 P60 RB"},
		// Breakers for 32 V do not break 36; no charger has three outputs, two serve.
		{"three in series", boat(), motor(volts(36)), shelf(nil), "M B1 x3 J6 x2 X x3 C3 x2 W6 K60H P60 RB"},
		{"lithium by its protection", boat(fact("battery.chemistry", "lithium")), motor(), shelf(nil), "M B3 X C3 W4 K60 P60 RB"},
		{"lithium not for series", boat(fact("battery.chemistry", "lithium")), motor(volts(24)), shelf(nil), "M  x2 J6 X x2 C3 W6 K60 P60 RB"},
		{"two side by side", boat(fact("battery.chemistry", "agm")), motor(), shelf(nil), "M B2 x2 J4 x2 X x2 C3 W4 K60 P60 RB"},
		{"no battery so small", boat(), motor(), shelf(func(s *stock.Shelf) {
			s.Batteries = []stock.Battery{{SKU: "S", Chemistry: "agm", Voltage: 12, Capacity: 30, Price: 1, Series: true}}
		}), "M  X C2 W4 K60 P60 RB"},
		{"kayak bracket", boat(fact("mount.place", "kayak")), motor(func(m *stock.Motor) { m.Mount = "kayak" }), shelf(nil), "M B1 X C2 W4 K60 P60 RK"},
		{"no bracket on a transom", boat(fact("mount.place", "transom")), motor(func(m *stock.Motor) { m.Mount = "transom" }), shelf(nil), "M B1 X C2 W4 K60 P60"},
		{"a clamp on a kayak takes the bracket", boat(fact("mount.place", "kayak")), motor(func(m *stock.Motor) { m.Mount = "transom" }), shelf(nil), "M B1 X C2 W4 K60 P60 RK"},
		{"nothing but motors", boat(), motor(), shelf(func(s *stock.Shelf) { *s = stock.Shelf{Motors: s.Motors} }), "M       "},
		{"a weak charger beats none", boat(), motor(), shelf(func(s *stock.Shelf) { s.Chargers = s.Chargers[:1] }), "M B1 X C1 W4 K60 P60 RB"},
		// A box of the battery's own size, whatever the letters behind it.
		{"a box for its group", boat(), motor(), shelf(func(s *stock.Shelf) {
			s.Batteries = []stock.Battery{{SKU: "B31", Chemistry: "flooded", Voltage: 12, Capacity: 110, Group: "31M", Price: 150, Series: true}}
		}), "M B31 X31 C2 W4 K60 P60 RB"},
		{"six-volt batteries", boat(), motor(), shelf(func(s *stock.Shelf) {
			s.Batteries = []stock.Battery{{SKU: "G", Chemistry: "flooded", Voltage: 6, Capacity: 215, Price: 150, Series: true}}
		}), "M G x2 J4 X x2  W4 K60 P60 RB"},
	}
	for _, tt := range tests {
		o := Motors(tt.boat, tt.shelf(tt.motor))[0]
		if got := strings.Join(skus(o.Rig), " "); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
		var sum unit.Money
		for _, i := range o.Rig.Items {
			sum += i.Price * unit.Money(i.Count)
			if (i.SKU == "") != (i.Price == 0) {
				t.Errorf("%s: %s has number %q and price %v", tt.name, i.What, i.SKU, i.Price)
			}
		}
		if sum != o.Rig.Total {
			t.Errorf("%s: total %v, the lines come to %v", tt.name, o.Rig.Total, sum)
		}
		if o.Rig.Whole() == slices.ContainsFunc(o.Rig.Items, func(i Item) bool { return i.SKU == "" && i.What != "box" }) {
			t.Errorf("%s: whole %v", tt.name, o.Rig.Whole())
		}
	}
}

func TestViews(t *testing.T) {
	m := func(sku string, usd, lb, amps float64) stock.Motor {
		return motor(func(m *stock.Motor) {
			m.SKU, m.Price, m.Thrust, m.Current = sku, unit.Dollars(usd), unit.PoundForce(lb), unit.Amperes(amps)
		})
	}
	b := boat(card.Fact{})
	offers := Motors(b, parts(m("cheap", 300, 55, 50), m("strong", 700, 70, 60), m("frugal", 900, 55, 35), m("too small", 50, 20, 20)))
	want := map[string]string{"cheapest that does the job": "cheap", "longest run": "frugal"}
	for _, v := range Views {
		o, ok := v.Best(offers)
		if !ok || !o.Fits() {
			t.Errorf("%s: nothing, or a motor that does not fit: %s", v.Name, o.Motor.SKU)
		}
		if w := want[v.Name]; w != "" && o.Motor.SKU != w {
			t.Errorf("%s: %s, want %s", v.Name, o.Motor.SKU, w)
		}
	}
	// What is a pound short of the need is no motor that does the job.
	short := Motors(b, parts(m("short", 50, 49.2, 50), m("dear", 900, 55, 50)))
	if o, _ := Views[0].Best(short); o.Motor.SKU != "dear" || !short[1].Fits() || short[1].Reasons() == "" {
		t.Errorf("the cheapest that does the job is %q of %+v", o.Motor.SKU, short)
	}
	if _, ok := Views[0].Best(Motors(b, parts(m("too small", 50, 20, 20)))); ok {
		t.Error("a view names a motor though none fits")
	}
}
