package sheet

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// Top speeds that fitters know, from memory: they gate the hull model and the
// thrust line together.
func TestKnownTopSpeeds(t *testing.T) {
	for _, c := range []struct {
		name      string
		given     []Given
		low, high float64 // mph
	}{
		{"55 lb on a 16-ft jon", []Given{txt(BoatHull, "jon"), ftIn(BoatLength, 16, 0), lbf(MotorThrust, 55)}, 4.0, 4.8},
		{"55 lb on an 18-ft vee", []Given{txt(BoatHull, "vee"), ftIn(BoatLength, 18, 0), lbf(MotorThrust, 55)}, 3.7, 4.3},
		{"80 lb on a 20-ft bass boat", []Given{txt(BoatHull, "bass"), ftIn(BoatLength, 20, 0), lbf(MotorThrust, 80)}, 3.7, 4.3},
		{"30 lb on a 400-lb kayak", []Given{txt(BoatHull, "kayak"), lbs(LoadTotal, 400), lbf(MotorThrust, 30)}, 4.7, 5.1},
		{"40 lb on a 400-lb kayak", []Given{txt(BoatHull, "kayak"), lbs(LoadTotal, 400), lbf(MotorThrust, 40)}, 4.9, 5.3},
		{"55 lb on a 400-lb kayak", []Given{txt(BoatHull, "kayak"), lbs(LoadTotal, 400), lbf(MotorThrust, 55)}, 5.1, 5.5},
	} {
		s := solved([]ID{SpeedTop, MotorFreeSpeed}, c.given...)
		if got := mphOf(s, SpeedTop); !within(got, c.low, c.high) {
			t.Errorf("%s: %.2f mph, known is %g to %g", c.name, got, c.low, c.high)
		}
		if s.Value(SpeedTop) >= s.Value(MotorFreeSpeed) {
			t.Errorf("%s: faster than the motor runs free", c.name)
		}
	}
}

// A canoe or kayak gains little past 40 lb, and the answer says so.
func TestLightBoatGainsNothing(t *testing.T) {
	at := func(pounds float64) *Solution {
		return solved([]ID{SpeedTop}, txt(BoatHull, "canoe"), ftIn(BoatLength, 15, 0), lbs(LoadTotal, 430), lbf(MotorThrust, pounds))
	}
	small, large := at(40), at(55)
	if gain := mphOf(large, SpeedTop) / mphOf(small, SpeedTop); gain > 1.06 {
		t.Errorf("55 lb is %.0f%% faster than 40", 100*(gain-1))
	}
	if warns(small, SpeedTop) != "" || !strings.Contains(warns(large, SpeedTop), "a smaller motor does") {
		t.Errorf("40 lb warns %q, 55 lb warns %q", warns(small, SpeedTop), warns(large, SpeedTop))
	}
}

func TestCurrentAtFullThrottle(t *testing.T) {
	for _, c := range []struct {
		name  string
		given []Given
		amps  float64
	}{
		{"55 lb", []Given{lbf(MotorThrust, 55)}, 50},
		{"80 lb", []Given{lbf(MotorThrust, 80)}, 56},
		{"80 lb brushless", []Given{lbf(MotorThrust, 80), txt(MotorDrive, "brushless")}, 50.4},
		{"80 lb on 36 V", []Given{lbf(MotorThrust, 80), num(MotorVoltage, 36)}, 1344.0 / 36},
		{"between classes", []Given{lbf(MotorThrust, 35)}, 34},
		{"as said", []Given{lbf(MotorThrust, 55), num(MotorAmps, 43)}, 43},
		{"two of 55 lb", []Given{lbf(MotorThrust, 55), num(MotorCount, 2)}, 100},
		{"two as said", []Given{num(MotorAmps, 43), num(MotorCount, 2)}, 86},
		{"24 V alone", []Given{num(MotorVoltage, 24)}, 56},
		{"nothing", nil, 50},
	} {
		s := solved([]ID{MotorCurrent, MotorPower, RatedVolts}, c.given...)
		if got := s.Value(MotorCurrent); math.Abs(got-c.amps) > 1e-6 {
			t.Errorf("%s: %.3f A, want %.3f", c.name, got, c.amps)
		}
		if got, want := s.Value(MotorPower), s.Value(RatedVolts)*s.Value(MotorCurrent); math.Abs(got-want) > 1e-9*want {
			t.Errorf("%s: %g W, volts times amperes is %g", c.name, got, want)
		}
	}
	var r *RangeError
	if s := solved([]ID{MotorCurrent}, lbf(MotorThrust, 900)); s.Has(MotorCurrent) || !errors.As(s.Err(MotorWatts), &r) || r.Cell != RatedThrust {
		t.Errorf("900 lb draws %g A, error %v", s.Value(MotorCurrent), s.Err(MotorWatts))
	}
}

// What was not said of the motor is an assumption with a reason.
func TestUnsaidMotorIsAssumed(t *testing.T) {
	s := solved([]ID{MotorCurrent}, num(UseThrottle, 0.4))
	for _, id := range []ID{SystemVoltage, RatedThrust} {
		if st := s.Step(id); st.Origin != Assumed || st.Guess.Why == "" {
			t.Errorf("%s: %+v", id, st)
		}
	}
	if s := solved([]ID{RatedThrust}, num(MotorAmps, 50)); math.Abs(lbOf(s, RatedThrust)-55) > 1e-3 {
		t.Errorf("50 A on 12 V is taken for %.2f lb", lbOf(s, RatedThrust))
	}
}

func TestRatingAtTheVoltageSaid(t *testing.T) {
	for _, c := range []struct {
		load, volts, want float64
		warn              bool
	}{{1900, 24, 70, false}, {1900, 36, 90, false}, {1900, 12, 40, false}, {3600, 12, 55, true}} {
		s := solved([]ID{RatedThrust, ThrustClass}, lbs(LoadTotal, c.load), num(MotorVoltage, c.volts))
		if got := lbOf(s, RatedThrust); math.Abs(got-c.want) > 1e-6 {
			t.Errorf("%g lb on %g V: rating %g, want %g", c.load, c.volts, got, c.want)
		}
		if got := strings.Contains(warns(s, RatedThrust), "below the need"); got != c.warn {
			t.Errorf("%g lb on %g V warns %q", c.load, c.volts, warns(s, RatedThrust))
		}
	}
}

// A claim beyond momentum theory is flagged, a usual motor is not.
func TestClaimBeyondTheMomentumLimit(t *testing.T) {
	for _, c := range []struct {
		pounds, volts, amps float64
		flagged             bool
	}{{55, 12, 50, false}, {80, 24, 56, false}, {86, 12, 40, true}, {120, 12, 50, true}, {30, 12, 30, false}} {
		s := solved([]ID{RatedThrust}, lbf(MotorThrust, c.pounds), num(MotorVoltage, c.volts), num(MotorAmps, c.amps))
		if got := strings.Contains(warns(s, RatedThrust), "cannot make so much thrust"); got != c.flagged {
			t.Errorf("%g lb of %g V and %g A: %q", c.pounds, c.volts, c.amps, warns(s, RatedThrust))
		}
	}
}

var cruiseFigures = []ID{CruiseCurrent, CruiseFixed, CruiseVariable, CruiseShare, CruiseTau, CruiseSpeed, MotorCurrent, MotorIdle}

// The dial, the share of thrust and the share of current are three numbers.
func TestHalfThrottleCurrent(t *testing.T) {
	motor := []Given{lbf(MotorThrust, 55), num(UseThrottle, 0.5)}
	variable := solved(cruiseFigures, append(slices.Clone(motor), txt(MotorSpeeds, "variable"))...)
	fixed := solved(cruiseFigures, append(slices.Clone(motor), txt(MotorSpeeds, "fixed"))...)
	if got, want := variable.Value(CruiseCurrent), 50*math.Pow(0.5, 2.2)+0.4; math.Abs(got-want) > 1e-9 {
		t.Errorf("variable: %g A, want %g", got, want)
	}
	if got, want := variable.Value(CruiseTau), math.Pow(0.5, 1.6); math.Abs(got-want) > 1e-9 {
		t.Errorf("variable: share of thrust %g, want %g", got, want)
	}
	if got := fixed.Value(CruiseCurrent); math.Abs(got-50*0.45) > 1e-9 || fixed.Value(CruiseTau) != 0.45 {
		t.Errorf("fixed: %g A at %g of thrust, want 22.5 A at 0.45", got, fixed.Value(CruiseTau))
	}
	// Both stand beside each other whichever was chosen.
	for _, s := range []*Solution{variable, fixed} {
		if math.Abs(s.Value(CruiseVariable)-variable.Value(CruiseCurrent)) > 1e-9 || math.Abs(s.Value(CruiseFixed)-fixed.Value(CruiseCurrent)) > 1e-9 {
			t.Errorf("beside each other: %g and %g A", s.Value(CruiseVariable), s.Value(CruiseFixed))
		}
	}
}

func TestFullThrottleIsFullCurrent(t *testing.T) {
	for _, kind := range []string{"variable", "fixed"} {
		s := solved(cruiseFigures, lbf(MotorThrust, 80), num(UseThrottle, 1), txt(MotorSpeeds, kind))
		if s.Value(CruiseCurrent) != s.Value(MotorCurrent) {
			t.Errorf("%s: %g A at full dial, %g A at full throttle", kind, s.Value(CruiseCurrent), s.Value(MotorCurrent))
		}
	}
	var r *RangeError
	if s := solved(cruiseFigures, num(UseThrottle, 1.5)); s.Has(CruiseCurrent) || !errors.As(s.Err(VariableShare), &r) || r.Cell != UseThrottle {
		t.Errorf("a throttle of 150%%: %g A, error %v", s.Value(CruiseCurrent), s.Err(VariableShare))
	}
}

// An hour flat out and five at a third, in means: 1/6 of full current and 5/6 of
// that at a third.
func TestMeanCurrentOfAProfile(t *testing.T) {
	q := Question{Given: []Given{lbf(MotorThrust, 55)}, Want: cruiseFigures, Duty: []Stretch{{1, 1}, {1.0 / 3, 5}}}
	s := StandardBook().Solve(q)
	want := (1 + 5*math.Pow(1.0/3, prop.DialCurrent)) / 6 * 50
	if got := s.Value(CruiseVariable) - s.Value(MotorIdle); math.Abs(got-want) > 1e-9 {
		t.Errorf("variable: %g A besides idle, want %g", got, want)
	}
	if got, want := s.Value(CruiseFixed), (1+5*0.33)/6*50; math.Abs(got-want) > 1e-9 {
		t.Errorf("fixed: %g A, want %g", got, want)
	}
	// The dial's mean hides the peaks: 0.44 of it all day draws less.
	even := solved(cruiseFigures, lbf(MotorThrust, 55), num(UseThrottle, (1+5.0/3)/6))
	if even.Value(CruiseVariable) >= s.Value(CruiseVariable) {
		t.Errorf("the mean throttle draws %g A, the profile %g A", even.Value(CruiseVariable), s.Value(CruiseVariable))
	}
	q.Duty = []Stretch{{0.5, 0}}
	if s := StandardBook().Solve(q); s.Has(CruiseVariable) {
		t.Error("a profile without hours was answered")
	}
}

// At a trolling speed the thrust meets the drag, and the current follows from the
// thrust by the chopper's law.
func TestTrollingSpeed(t *testing.T) {
	boat := []Given{txt(BoatHull, "vee"), ftIn(BoatLength, 16, 0), lbs(LoadTotal, 1150), lbf(MotorThrust, 55)}
	s := solved(append([]ID{CruisePull, MotorFreeSpeed, RatedThrust, ControlLoss}, cruiseFigures...), append(slices.Clone(boat), mph(UseSpeed, 2))...)
	tau, way := s.Value(CruiseTau), unit.Speed(s.Value(CruiseSpeed))
	left := prop.PartAvailable(unit.Force(s.Value(RatedThrust)), tau, way, unit.Speed(s.Value(MotorFreeSpeed)))
	if math.Abs(float64(left)-s.Value(CruisePull)) > 1e-6 {
		t.Errorf("at %g of thrust %g N are left, the drag is %g N", tau, float64(left), s.Value(CruisePull))
	}
	if want := 50*math.Pow(tau, 1.5)/s.Value(ControlLoss) + s.Value(MotorIdle); math.Abs(s.Value(CruiseVariable)-want) > 1e-9 {
		t.Errorf("%g A, want %g", s.Value(CruiseVariable), want)
	}
	// A speed that the motor does not make is an error, not a typical day.
	fast := solved(cruiseFigures, append(slices.Clone(boat), mph(UseSpeed, 6))...)
	var r *RangeError
	if fast.Has(CruiseCurrent) || !errors.As(fast.Err(CruiseTau), &r) || r.Cell != UseSpeed {
		t.Errorf("6 mph draws %g A, error %v", fast.Value(CruiseCurrent), fast.Err(CruiseTau))
	}
}

// The speed at a dial, taken as the speed said, needs the share of thrust that
// the dial gives.
func TestDialToSpeedAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		boat := []Given{txt(BoatHull, "jon"), ftIn(BoatLength, 15, 0), lbs(LoadTotal, 900), lbf(MotorThrust, 45)}
		dial := rapid.Float64Range(0.2, 1).Draw(t, "dial")
		there := solved(cruiseFigures, append(slices.Clone(boat), num(UseThrottle, dial))...)
		back := solved(cruiseFigures, append(slices.Clone(boat), num(UseSpeed, there.Value(CruiseSpeed)))...)
		if a, b := there.Value(CruiseTau), back.Value(CruiseTau); math.Abs(a-b) > 1e-6 && !(a == 1 && !back.Has(CruiseTau)) {
			t.Fatalf("dial %g gives %g of thrust; its speed needs %g", dial, a, b)
		}
	})
}

func TestWayOfFishing(t *testing.T) {
	for _, c := range []struct {
		given []Given
		share float64
	}{
		{nil, 0.15},
		{[]Given{txt(UseStyle, "slow trolling")}, 0.15},
		{[]Given{txt(UseStyle, "guiding")}, 0.22},
		{[]Given{txt(UseStyle, "casting")}, 0.12},
		{[]Given{txt(UseStyle, "vertical-jigging"), mph(WindSpeed, 20)}, 0.50},
		{[]Given{txt(UseStyle, "vertical-jigging"), mph(WindSpeed, 3)}, 0.07},
		{[]Given{txt(UseStyle, "knitting")}, 0.15},
	} {
		s := solved(cruiseFigures, append([]Given{lbf(MotorThrust, 55)}, c.given...)...)
		if got := (s.Value(CruiseVariable) - s.Value(MotorIdle)) / 50; math.Abs(got-c.share) > 1e-9 {
			t.Errorf("%v: %.3f of full current, want %g", c.given, got, c.share)
		}
		if got, want := s.Value(CruiseFixed), 2*c.share*50; math.Abs(got-want) > 1e-9 {
			t.Errorf("%v: five speeds draw %g A, want %g", c.given, got, want)
		}
	}
}

func TestMoreThrottleNeverDrawsLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		kind := rapid.SampledFrom([]string{"variable", "fixed"}).Draw(t, "kind")
		d := rapid.Float64Range(0, 1).Draw(t, "dial")
		e := d + rapid.Float64Range(0, 1).Draw(t, "more")*(1-d)
		at := func(dial float64) *Solution {
			return solved(cruiseFigures, lbf(MotorThrust, 70), txt(MotorSpeeds, kind), num(UseThrottle, dial))
		}
		low, high := at(d), at(e)
		if high.Value(CruiseCurrent) < low.Value(CruiseCurrent)-1e-9 {
			t.Fatalf("%s: dial %g draws %g A, %g draws %g", kind, d, low.Value(CruiseCurrent), e, high.Value(CruiseCurrent))
		}
		if low.Value(CruiseCurrent) > low.Value(MotorCurrent)+1e-9 {
			t.Fatalf("%s: %g A in use, %g A at full throttle", kind, low.Value(CruiseCurrent), low.Value(MotorCurrent))
		}
	})
}

func TestMoreThrustHoldsMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		given := slices.DeleteFunc(randomBoat(t), func(g Given) bool { return g.ID == CurrentSpeed })
		p := rapid.Float64Range(30, 100).Draw(t, "pounds")
		q := p + rapid.Float64Range(0, 20).Draw(t, "more")
		want := []ID{HoldWind, HoldWindDay, HoldCurrent, SpeedTop}
		volts := num(MotorVoltage, 24)
		low, high := solved(want, append(slices.Clone(given), lbf(MotorThrust, p), volts)...), solved(want, append(slices.Clone(given), lbf(MotorThrust, q), volts)...)
		for _, id := range want {
			if high.Value(id) < low.Value(id)-1e-6 {
				t.Fatalf("%g lb: %s %g; %g lb: %g", p, id, low.Value(id), q, high.Value(id))
			}
		}
	})
}

// At the wind that it holds, the thrust left to the motor is the pull: the
// balance without its reserve.
func TestHeldWindBalances(t *testing.T) {
	boat := []Given{txt(BoatHull, "bass"), ftIn(BoatLength, 19, 0), lbs(LoadTotal, 2700), num(MotorVoltage, 24), lbf(MotorThrust, 80)}
	held := solved([]ID{HoldWind}, boat...).Value(HoldWind)
	s := solved([]ID{PullWind, WayWind, MotorFreeSpeed}, append(slices.Clone(boat), num(WindSpeed, held))...)
	left := prop.Available(unit.PoundForce(80), unit.Speed(s.Value(WayWind)), unit.Speed(s.Value(MotorFreeSpeed)))
	if math.Abs(float64(left)-s.Value(PullWind)) > 1e-4 {
		t.Errorf("in %.3f m/s %.4f N are left for a pull of %.4f N", held, float64(left), s.Value(PullWind))
	}
}

func TestHoldingInACurrent(t *testing.T) {
	boat := []Given{txt(BoatHull, "vee"), ftIn(BoatLength, 17, 0), lbs(LoadTotal, 1500), lbf(MotorThrust, 55)}
	want := []ID{HoldWind, HoldCurrent}
	calm, windy := solved(want, boat...), solved(want, append(slices.Clone(boat), mph(WindSpeed, 15))...)
	if !(windy.Value(HoldCurrent) < calm.Value(HoldCurrent)) {
		t.Errorf("holds %.2f mph of current in a calm, %.2f in wind", mphOf(calm, HoldCurrent), mphOf(windy, HoldCurrent))
	}
	river := solved(want, append(slices.Clone(boat), mph(CurrentSpeed, 2))...)
	if !(river.Value(HoldWind) < calm.Value(HoldWind)) {
		t.Errorf("holds %.1f mph of wind in still water, %.1f in a current", mphOf(calm, HoldWind), mphOf(river, HoldWind))
	}
	rapids := solved(want, append(slices.Clone(boat), mph(CurrentSpeed, 6))...)
	if rapids.Value(HoldWind) != 0 || !strings.Contains(warns(rapids, HoldWind), "no wind is held") {
		t.Errorf("holds %.1f mph of wind in rapids: %q", mphOf(rapids, HoldWind), warns(rapids, HoldWind))
	}
	gale := solved(want, append(slices.Clone(boat), mph(WindSpeed, 45))...)
	if gale.Value(HoldCurrent) != 0 || warns(gale, HoldCurrent) == "" {
		t.Errorf("holds %.1f mph of current in a gale: %q", mphOf(gale, HoldCurrent), warns(gale, HoldCurrent))
	}
}

func TestReverseOfATransomMotor(t *testing.T) {
	s := solved([]ID{ReverseThrust}, lbf(MotorThrust, 50), txt(MountPlace, "transom"))
	if got := lbOf(s, ReverseThrust); math.Abs(got-30) > 1e-9 {
		t.Errorf("50 lb pull %g lb backwards, want 30", got)
	}
	if solved([]ID{ReverseThrust}, lbf(MotorThrust, 50), txt(MountPlace, "bow")).Has(ReverseThrust) {
		t.Error("a bow motor that turns right round needs no reverse")
	}
}

// Every class of the ladder solves on its own, with its usual current.
func TestEveryClass(t *testing.T) {
	for _, c := range typical.MotorClasses {
		s := solved([]ID{MotorCurrent, SystemVoltage}, num(MotorThrust, c.Rating.Newtons()))
		if math.Abs(s.Value(MotorCurrent)-c.Amps.Amperes()) > 1e-9 || s.Value(SystemVoltage) != c.Volts.Volts() {
			t.Errorf("%.0f lb: %g A on %g V", c.Rating.PoundForce(), s.Value(MotorCurrent), s.Value(SystemVoltage))
		}
	}
}
