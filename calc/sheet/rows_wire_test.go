package sheet

import (
	"errors"
	"strings"
	"testing"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/calc/wire"
	"pgregory.net/rapid"
)

func TestWireFigures(t *testing.T) {
	four := []Given{num(MotorVoltage, 24), num(MotorAmps, 40), ftIn(WireRun, 20, 0), num(WireGaugeSaid, 4), num(WireInsulation, 105)}
	for _, a := range []ask{
		// 30 C + 75 C x (40/160)^2.
		about("temperature", WireHeat, 34.6875, four...),
		// 40 ft of 0.2485 ohm per 1000 ft at 20 C, 1.05772 times that at 34.7 C.
		about("resistance", WireOhms, 0.010514, four...),
		about("volts", WireVolts, 0.42055, four...),
		about("drop", WireDrop, 0.017523, four...),
		// 10.75 x 40 x 40 / 41,741 = 0.4121 V.
		about("drop by the wire-area formula", WireDropMils, 0.017169, four...),
		about("circular mils", WireMils, 41741, four...),
		about("ampacity", WireAmpacity, 160, four...),
		// 1 - (1 - (0.42055 + 40 x 0.006)/24)^1.7.
		about("thrust lost", WireThrustLoss, 0.046342, four...),
		// 0.05 x 24 / 40 / 2 over 0.2629 milliohm a foot.
		about("longest run", WireLongest, unit.Feet(57.07).Metres(), four...),
		about("the thinnest that would pass is thinner", WireGauge, 8, four...),
		about("engine space, 60 C", WireAmpacity, 105*0.58, append(four[:4:4], num(WireInsulation, 60), txt(WirePlace, "engine-space"))...),
		about("tighter drop, thicker wire", WireGauge, 4, num(MotorVoltage, 24), num(MotorAmps, 55), ftIn(WireRun, 22, 0), num(WireDropTarget, 0.03)),
		about("jumper", WireGauge, 10, num(MotorVoltage, 24), num(MotorAmps, 46), ftIn(WireRun, 0, 15)),
		about("run by the boat's length", WireRun, unit.Feet(17).Metres(), ftIn(BoatLength, 17, 0), txt(MountPlace, "bow")),
		about("run to the transom", WireRun, unit.Feet(6).Metres(), ftIn(BoatLength, 17, 0), txt(MountPlace, "transom")),
		// Two 10 AWG side by side lose about half of what one does.
		about("runs side by side", WireParallel, 3, num(MotorVoltage, 12), num(MotorAmps, 50), ftIn(WireRun, 14, 0), num(WireGaugeSaid, 10), num(WireInsulation, 105)),
	} {
		a.run(t)
	}
}

func TestWireWarnings(t *testing.T) {
	s := StandardBook().Solve(Question{Given: []Given{num(MotorVoltage, 12), num(MotorAmps, 52), ftIn(WireRun, 20, 0), num(WireGaugeSaid, 12), num(WireInsulation, 105)}, Want: figures()})
	for id, part := range map[ID]string{WireHeat: "hotter", WireDrop: "far too thin", BreakerRating: "not on 12 AWG"} {
		if !strings.Contains(warnings(s, id), part) {
			t.Errorf("%s: warned %q, want word of %q", id, warnings(s, id), part)
		}
	}
	s = StandardBook().Solve(Question{Given: []Given{num(MotorVoltage, 12), num(MotorAmps, 52), ftIn(WireRun, 20, 0), num(WireGaugeSaid, 8)}, Want: figures()})
	if !strings.Contains(warnings(s, WireDrop), "tenth") {
		t.Errorf("8 AWG over 20 ft: warned %q", warnings(s, WireDrop))
	}
	s = StandardBook().Solve(Question{Given: []Given{num(MotorAmps, 59), num(WireGaugeSaid, 10), num(WireInsulation, 105)}, Want: figures()})
	if !strings.Contains(warnings(s, BreakerRating), "next standard size") {
		t.Errorf("70 A on 60 A of wire: warned %q", warnings(s, BreakerRating))
	}
	s = StandardBook().Solve(Question{Given: []Given{num(MotorAmps, 40), num(WireGaugeSaid, 6), txt(WirePlace, "engine-space"), num(WireInsulation, 90)}, Want: figures()})
	if !strings.Contains(warnings(s, WireAmpacity), "from memory") {
		t.Errorf("a factor from memory: warned %q", warnings(s, WireAmpacity))
	}
}

func TestNothingPasses(t *testing.T) {
	s := StandardBook().Solve(Question{Given: []Given{num(MotorVoltage, 12), num(MotorAmps, 60), ftIn(WireRun, 300, 0)}, Want: []ID{WireGauge, WireDrop}})
	var none *wire.NoGaugeError
	if s.Has(WireGauge) || s.Has(WireDrop) || !errors.As(s.Err(WireGauge), &none) {
		t.Fatalf("300 ft at 12 V: gauge %v, error %v; want a *wire.NoGaugeError", s.Has(WireGauge), s.Err(WireGauge))
	}
}

func TestBreakers(t *testing.T) {
	for _, a := range []ask{
		about("30 A motor", BreakerRating, 40, num(MotorAmps, 30)), // 31.5
		about("just fits", BreakerRating, 40, num(MotorAmps, 38)),  // 39.9
		about("57 A motor", BreakerRating, 60, num(MotorAmps, 57)), // 59.85
		about("58 A motor", BreakerRating, 70, num(MotorAmps, 58)), // 60.9
		about("bare, unless said", BreakerDistance, unit.Inches(7).Metres()),
		about("in a sheath", BreakerDistance, unit.Inches(40).Metres(), txt(BreakerCase, "sheathed")),
		about("at the battery", BreakerDistance, unit.Inches(72).Metres(), txt(BreakerCase, "battery-terminal")),
		// 36 V of lithium charges at 43.8 V, 24 V of lead at 28.8 V.
		about("36 V lithium", BreakerVolts, 48, num(MotorVoltage, 36), txt(BatteryChemistry, "lithium")),
		about("24 V lead", BreakerVolts, 32, num(MotorVoltage, 24), txt(BatteryChemistry, "agm")),
	} {
		a.run(t)
	}
	s := StandardBook().Solve(Question{Given: []Given{num(MotorAmps, 47)}, Ladders: map[ID]Ladder{BreakerRating: {45, 65}}, Want: []ID{BreakerRating}})
	if s.Value(BreakerRating) != 65 {
		t.Errorf("a shop with 45 and 65 A breakers: %g for 47 A, want 65", s.Value(BreakerRating))
	}
	s = StandardBook().Solve(Question{Given: []Given{num(MotorAmps, 190)}, Want: []ID{BreakerRating}})
	var out *RangeError
	if s.Has(BreakerRating) || !errors.As(s.Err(BreakerRating), &out) {
		t.Errorf("190 A: %g A, %v; want a *RangeError", s.Value(BreakerRating), s.Err(BreakerRating))
	}
}

// The chosen wire always outlasts its breaker, and neither is ever rounded down.
func TestClassesNeverRoundDown(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		amps := rapid.Float64Range(8, 140).Draw(t, "A")
		s := StandardBook().Solve(Question{Given: []Given{
			num(MotorAmps, amps), num(MotorVoltage, rapid.SampledFrom([]float64{12, 24, 36}).Draw(t, "V")),
			ftIn(WireRun, rapid.Float64Range(0.5, 28).Draw(t, "ft"), 0),
			txt(WirePlace, rapid.SampledFrom([]string{"open", "engine-space"}).Draw(t, "place")),
		}, Want: []ID{BreakerRating, WireGauge, WireAmpacity, WireDrop}})
		if b := s.Value(BreakerRating); b < 1.05*amps-1e-9 {
			t.Fatalf("a %g A breaker for %g A", b, amps)
		}
		if !s.Has(WireGauge) {
			t.Skip("nothing passes")
		}
		if a := s.Value(WireAmpacity); a < s.Value(BreakerRating) {
			t.Fatalf("wire of %g A behind a breaker of %g A", a, s.Value(BreakerRating))
		}
		if d := s.Value(WireDrop); d > 0.05+1e-9 {
			t.Fatalf("the wire chosen drops %g", d)
		}
	})
}
