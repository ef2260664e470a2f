package prop_test

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/unit"
)

// At a quarter of full thrust a resistor switch draws a quarter of full current,
// an ideal chopper an eighth: twice the hours.
func ExampleModulatedShare() {
	fmt.Printf("switch %.3f, chopper %.3f\n", prop.ResistorShare(0.25), prop.ModulatedShare(0.25))
	// Output: switch 0.250, chopper 0.125
}

// The three meanings of "half throttle" on a variable control and on five speeds:
// no two of them are the same.
func TestHalfThrottle(t *testing.T) {
	near(t, "thrust at half dial", prop.VariableThrust(0.5), 0.330, 0.0005)
	near(t, "current at half dial", prop.VariableCurrent(0.5, prop.DialCurrent), 0.218, 0.0005)
	near(t, "dial for half thrust", prop.VariableDial(0.5), 0.648, 0.0005)
	near(t, "current at half thrust", prop.ModulatedShare(0.5), 0.354, 0.0005)
	near(t, "thrust at half of five speeds", prop.FixedThrust(0.5), 0.45, 0)
}

// The dial's exponents agree with the chopper's law within the band of the
// exponent: current at the battery as thrust to the 1.5th power.
func TestDialAgreesWithTheChopper(t *testing.T) {
	for _, dial := range []float64{0.3, 0.5, 0.7, 0.9} {
		ideal := prop.ModulatedShare(prop.VariableThrust(dial))
		low, high := prop.VariableCurrent(dial, prop.DialCurrentHigh), prop.VariableCurrent(dial, prop.DialCurrentLow)
		if ideal < low || ideal > high {
			t.Errorf("dial %g: the chopper draws %.3f, the band of the dial is %.3f to %.3f", dial, ideal, low, high)
		}
	}
}

// The exponent of thrust by the dial comes from armature resistance: a motor that
// loses 20 to 50 percent of its voltage in it lies about 1.6.
func TestDialThrustFromTheMotor(t *testing.T) {
	exponent := func(drop float64) float64 {
		thrust, _ := prop.PropShares(0.5, drop)
		return math.Log(thrust) / math.Log(0.5)
	}
	if low, high := exponent(0.5), exponent(0.2); !(low < prop.DialThrust && prop.DialThrust < high) {
		t.Errorf("exponents %.2f to %.2f do not hold %.2f", low, high, prop.DialThrust)
	}
	near(t, "exponent without resistance", exponent(0), 2, 1e-9)
}

func TestFixedSpeeds(t *testing.T) {
	for _, c := range []struct {
		dial  float64
		speed int
	}{{0.05, 1}, {0.2, 1}, {0.25, 1}, {0.33, 2}, {0.5, 3}, {0.6, 3}, {0.75, 4}, {0.9, 5}, {1, 5}, {1.2, 5}} {
		if got := prop.FixedSpeed(c.dial); got != c.speed {
			t.Errorf("dial %g is speed %d, want %d", c.dial, got, c.speed)
		}
	}
	if prop.FixedThrust(0) != 0 {
		t.Error("a switch that is off gives thrust")
	}
	for _, c := range []struct{ need, share float64 }{{0, 0.25}, {0.25, 0.25}, {0.26, 0.33}, {0.5, 0.65}, {1, 1}} {
		got, err := prop.FixedStepFor(c.need)
		if err != nil || got != c.share {
			t.Errorf("for %g of thrust: %g, %v, want %g", c.need, got, err, c.share)
		}
	}
	if _, err := prop.FixedStepFor(1.01); err == nil {
		t.Error("more than full thrust was found")
	}
}

// Outside 0 to 1 the nearer end stands.
func TestSharesStayBetweenNothingAndAll(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(-1, 2).Draw(t, "dial")
		for _, y := range []float64{prop.VariableThrust(x), prop.VariableDial(x), prop.VariableCurrent(x, 2.2), prop.ModulatedShare(x), prop.ResistorShare(x), prop.FixedThrust(x)} {
			if !(y >= 0 && y <= 1) {
				t.Fatalf("share %g at dial %g", y, x)
			}
		}
		if prop.ModulatedShare(x) > prop.ResistorShare(x) {
			t.Fatal("the chopper draws more than the switch")
		}
	})
}

// Inputs of a public exercise: 12 V, no load at 3,800 rpm, stall torque 30 mN m,
// running at 2,500 rpm. Results worked out from the model without own friction.
func ExampleDCMotor() {
	const perMinute = 2 * math.Pi / 60
	v, w := unit.Volts(12), 2500*perMinute
	m := prop.DCMotorFrom(v, 3800*perMinute, 0.030)
	i := m.Current(v, w)
	in, out := v.Volts()*i.Amperes(), m.Torque(i)*w
	fmt.Printf("k %.7f V s/rad, R %.3f ohm, stall %.5f A\n", m.Constant, m.Resistance.Ohms(), m.Current(v, 0).Amperes())
	fmt.Printf("%.3f mN m, %.5f A, back-emf %.4f V\n", 1000*m.Torque(i), i.Amperes(), m.Constant*w)
	fmt.Printf("in %.4f W, out %.4f W, efficiency %.2f%%\n", in, out, 100*out/in)
	// Output:
	// k 0.0301557 V s/rad, R 12.062 ohm, stall 0.99484 A
	// 10.263 mN m, 0.34034 A, back-emf 7.8947 V
	// in 4.0841 W, out 2.6869 W, efficiency 65.79%
}

// 12 V, 0.10 ohm, 20 A wanted at a back-emf of 5 V, worked out from the model: a
// series resistor takes 240 W of the battery, an ideal chopper 140 W.
func TestResistorAgainstChopper(t *testing.T) {
	m := prop.DCMotor{Resistance: unit.Ohms(0.10), Constant: 0.05}
	v, i, w := unit.Volts(12), unit.Amperes(20), 100.0 // back-emf 5 V
	near(t, "series resistor", m.SeriesResistor(v, i, w).Ohms(), 0.25, 1e-12)
	duty := m.Duty(v, i, w)
	near(t, "duty", duty, 0.58333, 5e-6)
	near(t, "chopper's supply current", duty*i.Amperes(), 11.667, 5e-4)
	shaft := 5.0 * 20
	near(t, "efficiency with the resistor", shaft/(12*20), 0.417, 5e-4)
	near(t, "efficiency with the chopper", shaft/(12*duty*20), 0.714, 5e-4)
}

func TestPropSharesWithoutResistance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := rapid.Float64Range(0, 1).Draw(t, "duty")
		drop := rapid.Float64Range(0, 0.6).Draw(t, "drop")
		thrust, current := prop.PropShares(d, 0)
		if math.Abs(current-prop.ModulatedShare(thrust)) > 1e-12 {
			t.Fatalf("ideal current %g for thrust %g", current, thrust)
		}
		withDrop, draw := prop.PropShares(d, drop)
		if withDrop < thrust-1e-12 || draw > 1+1e-12 || draw > withDrop+1e-12 {
			t.Fatalf("duty %g, drop %g: thrust %g, current %g", d, drop, withDrop, draw)
		}
	})
	if thrust, current := prop.PropShares(1, 0.3); math.Abs(thrust-1) > 1e-12 || math.Abs(current-1) > 1e-12 {
		t.Errorf("full duty gives %g of thrust for %g of current", thrust, current)
	}
}

func BenchmarkVariableCurrent(b *testing.B) {
	for b.Loop() {
		prop.VariableCurrent(0.5, prop.DialCurrent)
	}
}
