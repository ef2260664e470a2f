package unit

import (
	"math"
	"testing"
)

func TestWork(t *testing.T) {
	for _, x := range []struct {
		si         float64
		form       Form
		us, metric string
	}{
		{Pounds(1900).Kilograms(), Weight, "1,900 lb", "861.8 kg"},
		{PoundForce(55).Newtons(), Rating, "55 lb", "244.7 N"},
		{MilesPerHour(11.7).MetresPerSecond(), Pace, "11.7 mph", "5.23 m/s"},
		{MilesPerHour(1.93415).MetresPerSecond(), Pace, "1.9342 mph", "0.8646 m/s"}, // five figures behind a leading 1
		{Inches(24).Metres(), DeckLength, "24 in", "60.96 cm"},
		{Feet(18).Metres(), LongLength, "18 ft", "5.486 m"},
		{0.5, Hour, "0.5 h", "0.5 h"}, // never minutes: the next line multiplies by it
		{0.02571, Ohm, "0.02571 ohm", "0.02571 ohm"},
		{0.02, PerHundred, "2 lb per 100 lb", "0.19613 N/kg"},
		{0.0429, Fraction, "4.29%", "4.29%"},
		{-1, WireGauge, "2/0 AWG", "2/0 AWG"},
		{999.1026, WaterDensity, "62.37 lb/ft3", "999.1 kg/m3"},
		{15, Degree, "59 F", "15 C"},
		{0, Thrust, "0 lb", "0 N"},
		{-0.0004123, Thrust, "-0.00009269 lb", "-0.0004123 N"},
		{math.NaN(), Thrust, "?", "?"},
	} {
		if got := Work(x.si, x.form, US); got != x.us {
			t.Errorf("%g in a US working: %q, want %q", x.si, got, x.us)
		}
		if got := Work(x.si, x.form, Metric); got != x.metric {
			t.Errorf("%g in a metric working: %q, want %q", x.si, got, x.metric)
		}
	}
}

func TestResult(t *testing.T) {
	for _, x := range []struct {
		si           float64
		yields, form Form
		us, metric   string
	}{
		{PoundForce(24.342).Newtons(), Thrust, Thrust, "24.3 lb", "108 N"},
		{PoundForce(9.447).Newtons(), Thrust, Thrust, "9.45 lb", "42 N"},
		{Pounds(1550.4).Kilograms(), Weight, Weight, "1,550 lb", "703 kg"},
		{Inches(7.512).Metres(), LongLength, DeckLength, "0.626 ft = 7.5 in", "0.191 m = 19 cm"},
		{0.531, Hour, Hour, "0.531 h = 32 min", "0.531 h = 32 min"},
		{8.07, Hour, Hour, "8.07 h", "8.07 h"},
		{0.0257, Ohm, Ohm, "0.0257 ohm = 25.7 milliohm", "0.0257 ohm = 25.7 milliohm"},
		{PoundForce(55).Newtons(), Rating, Rating, "55 lb", "245 N = 55 lb"},
		{6, WireGauge, WireGauge, "6 AWG", "6 AWG"},
		{178.5, Ampacity, Ampacity, "178 A", "178 A"},
	} {
		if got := Result(x.si, x.yields, x.form, US); got != x.us {
			t.Errorf("%g as a US result: %q, want %q", x.si, got, x.us)
		}
		if got := Result(x.si, x.yields, x.form, Metric); got != x.metric {
			t.Errorf("%g as a metric result: %q, want %q", x.si, got, x.metric)
		}
	}
}

// Every form has its scale, and a scale agrees with what is shown.
func TestScalesAgreeWithShow(t *testing.T) {
	if len(scales) != len(looks) {
		t.Errorf("%d scales for %d forms", len(scales), len(looks))
	}
	for f := range looks {
		switch Form(f) {
		case Hour, Ohm, Rating, Dollar, WireGauge, PerHundred: // worked in another unit than shown
			continue
		}
		for _, s := range []System{US, Metric} {
			if _, u := Split(3, Form(f), s); u != scaleOf(Form(f), s).unit {
				t.Errorf("form %d, %s: shown in %q, worked in %q", f, s, u, scaleOf(Form(f), s).unit)
			}
		}
	}
}
