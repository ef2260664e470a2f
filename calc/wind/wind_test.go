package wind_test

import (
	"fmt"
	"math"
	"testing"

	_ "heronlake.example/ask/tests/seeded"
	"pgregory.net/rapid"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/calc/wind"
)

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if math.Abs(got-want) > tolerance {
		t.Errorf("%s = %.7g, want %.7g within %g", what, got, want, tolerance)
	}
}

// Published worked example: 1.225 kg/m3, 10 m/s, 2 m2 and a coefficient of 1.
func ExampleForce() {
	v := unit.MetresPerSecond(10)
	fmt.Printf("%.2f Pa, %.1f N\n", wind.Pressure(v).Pascals(), wind.Force(v, unit.SquareMetres(2)).Newtons())
	// Output: 61.25 Pa, 122.5 N
}

// ASCE 7 commentary: pressure in pounds a square foot is 0.00256 V^2 with V in
// miles an hour, so 25.6 psf at 100 mph, for air of 0.0765 lb/ft3.
func TestPressureInPoundsPerSquareFoot(t *testing.T) {
	const pascalsPerPSF = unit.NewtonsPerPoundForce / unit.SquareMetresPerFoot2
	near(t, "pressure of 100 mph in psf", wind.Pressure(unit.MilesPerHour(100)).Pascals()/pascalsPerPSF, 25.6, 0.05)
	near(t, "factor", wind.Pressure(unit.MilesPerHour(1)).Pascals()/pascalsPerPSF, 0.00256, 0.000005)
}

// A page of general science gives a cyclist of 5 ft2 in 20 mph 5.4 lb with
// 0.0027 V^2: a coefficient of about 1.055 is hidden in it.
func TestCyclist(t *testing.T) {
	area := unit.SquareFeet(5 * 1.055)
	near(t, "force at 20 mph in lb", wind.Force(unit.MilesPerHour(20), area).PoundForce(), 5.4, 0.05)
	near(t, "force at 30 mph in lb", wind.Force(unit.MilesPerHour(30), area).PoundForce(), 12.2, 0.1)
}

// Computed from the formula with 1.225 kg/m3.
func TestPressureByKnots(t *testing.T) {
	for _, c := range []struct{ knots, pascals float64 }{{5, 4.0525}, {10, 16.210}, {15, 36.473}, {20, 64.840}, {25, 101.31}} {
		near(t, fmt.Sprintf("pressure at %g kn", c.knots), wind.Pressure(unit.Knots(c.knots)).Pascals(), c.pascals, 0.001*c.pascals)
	}
}

// Blendermann's formula as given by Fossen, values worked out from it by hand
// for the speed boat.
func ExampleVessel_Coefficients() {
	boat, err := wind.VesselNamed("speed boat")
	if err != nil {
		fmt.Println(err)
		return
	}
	one, three := unit.SquareMetres(1), unit.SquareMetres(3)
	for _, angle := range []float64{0, 45, 90} {
		cx, cy := boat.Coefficients(wind.Degrees(angle), one, three)
		fmt.Printf("%2.0f degrees: CX %.6f CY %.6f\n", angle, cx, cy)
	}
	// Output:
	//  0 degrees: CX -0.550000 CY 0.000000
	// 45 degrees: CX -0.510975 CY 0.836141
	// 90 degrees: CX -0.000000 CY 0.900000
}

func TestVesselWithoutCoefficients(t *testing.T) {
	if _, err := wind.VesselNamed("raft"); err == nil {
		t.Error("a vessel without coefficients was found")
	}
}

func TestWindFromAstern(t *testing.T) {
	boat, _ := wind.VesselNamed("speed boat")
	cx, cy := boat.Coefficients(wind.Degrees(180), unit.SquareMetres(1), unit.SquareMetres(3))
	near(t, "CX from astern", cx, 0.60, 1e-9)
	near(t, "CY from astern", cy, 0, 1e-9)
}

// The yaw allowance of the trade, 1.0 to 1.5 on the force held by the bow,
// against Blendermann: a boat of 16 ft that swings 10 degrees either side.
func TestYawAllowanceAgainstBlendermann(t *testing.T) {
	boat, _ := wind.VesselNamed("speed boat")
	frontal, lateral := unit.SquareMetres(1.15), unit.SquareMetres(3)
	near(t, "bow on", boat.YawFactor(0, frontal, lateral), 1, 1e-12)
	f := boat.YawFactor(wind.Degrees(10), frontal, lateral)
	if f < 1.1 || f > 1.5 {
		t.Errorf("factor at 10 degrees %.3f, the allowance spans 1.0 to 1.5", f)
	}
	if g := boat.YawFactor(wind.Degrees(20), frontal, lateral); g <= f {
		t.Errorf("factor at 20 degrees %.3f is not above that at 10 degrees, %.3f", g, f)
	}
}

func TestUpperBoundTakesTheNextLength(t *testing.T) {
	if l, _ := wind.UpperBound(unit.Feet(21)); math.Abs(l.Lunch.PoundForce()-125) > 1e-9 {
		t.Errorf("21 ft takes the row of 25 ft, not %v", l)
	}
	if _, err := wind.UpperBound(unit.Feet(61)); err == nil {
		t.Error("61 ft has no row")
	}
}

// A steady drag never comes near the anchor load: 20 ft in 15 knots, 90 lb,
// would take 118 ft2 of flat plate (0.00256 V^2, coefficient 1).
func TestAnchorLoadIsNoDrag(t *testing.T) {
	flat := unit.PoundForce(90).Newtons() / wind.Pressure(unit.Knots(15)).Pascals()
	near(t, "flat plate in ft2", unit.SquareMetres(flat).SquareFeet(), 118, 1)
}

func TestPeople(t *testing.T) {
	each := unit.SquareMetres(0.84)
	for _, c := range []struct{ count, area float64 }{{0, 0}, {1, 0.84}, {2, 0.84 * 1.7}, {3, 0.84 * 2.4}, {-1, 0}} {
		near(t, fmt.Sprintf("%g people", c.count), wind.PeopleArea(c.count, each).SquareMetres(), c.area, 1e-12)
	}
}

// Hoerner's 9 ft2 standing and 6 ft2 sitting (from memory) in square metres.
func TestPersonArea(t *testing.T) {
	near(t, "standing", unit.SquareFeet(9).SquareMetres(), 0.84, 0.005)
	near(t, "sitting", unit.SquareFeet(6).SquareMetres(), 0.56, 0.005)
}

func TestForceAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := unit.Speed(rapid.Float64Range(0.1, 40).Draw(t, "wind"))
		a := unit.Area(rapid.Float64Range(0.1, 20).Draw(t, "area"))
		back := wind.SpeedFor(wind.Force(v, a), a)
		if math.Abs(float64(back-v)) > 1e-9*float64(v) {
			t.Fatalf("%v came back as %v", v, back)
		}
	})
	if wind.SpeedFor(0, 1) != 0 || wind.SpeedFor(1, 0) != 0 {
		t.Error("no force or no area gives no wind")
	}
}

func TestMoreWindNeverPushesLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := unit.Area(rapid.Float64Range(0, 20).Draw(t, "area"))
		v := unit.Speed(rapid.Float64Range(0, 40).Draw(t, "wind"))
		w := v + unit.Speed(rapid.Float64Range(0, 10).Draw(t, "more"))
		if wind.Force(w, a) < wind.Force(v, a) {
			t.Fatalf("%v pushes less than %v", w, v)
		}
	})
}

func BenchmarkCoefficients(b *testing.B) {
	boat, _ := wind.VesselNamed("speed boat")
	for b.Loop() {
		boat.Coefficients(wind.Degrees(30), 1.15, 3)
	}
}
