package sheet

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"heronlake.example/ask/calc/unit"
	"pgregory.net/rapid"
)

// ask is one question to the standard book.
type ask struct {
	name  string
	given []Given
	duty  []Stretch
	want  ID
	low   float64
	high  float64
	word  string // for a word cell
}

func (a ask) run(t *testing.T) {
	t.Helper()
	s := StandardBook().Solve(Question{Given: a.given, Duty: a.duty, Want: []ID{a.want}})
	if !s.Has(a.want) {
		t.Errorf("%s: %s is unknown: %v, missing %v", a.name, a.want, s.Err(a.want), s.Missing(a.want))
		return
	}
	if a.word != "" {
		if got := s.Word(a.want); got != a.word {
			t.Errorf("%s: %s is %q, want %q", a.name, a.want, got, a.word)
		}
		return
	}
	if x := s.Value(a.want); !(x >= a.low && x <= a.high) {
		t.Errorf("%s: %s = %.6g (%s), want %g to %g", a.name, a.want, x, s.Working(s.Step(a.want), unit.US), a.low, a.high)
	}
}

// near is the range about a value that was worked out by hand to four figures.
func near(x float64) (low, high float64) { return x - 6e-4*math.Abs(x), x + 6e-4*math.Abs(x) }

func about(name string, want ID, x float64, given ...Given) ask {
	low, high := near(x)
	return ask{name: name, given: given, want: want, low: low, high: high}
}

// warnings of the step that gave a cell.
func warnings(s *Solution, id ID) string { return strings.Join(s.Step(id).Warnings, "; ") }

var warm = num(AirTemp, 25) // where every capacity is its rating

func TestRunTimes(t *testing.T) {
	threeFlooded := []Given{num(MotorVoltage, 36), num(MotorAmps, 52), num(BatteryCount, 3), num(BatteryCapacity, 85), txt(BatteryChemistry, "flooded"), warm}
	lithium := []Given{num(MotorVoltage, 12), num(MotorAmps, 40), num(BatteryCount, 1), num(BatteryCapacity, 80), txt(BatteryChemistry, "lithium"), warm}
	for _, a := range []ask{
		// 20 (85/(52 x 20))^1.25 = 0.8740 h: series adds no ampere hours.
		about("flooded to half", RuntimeFull50, 0.4370, threeFlooded...),
		about("flooded to the limit", RuntimeFull, 0.6992, threeFlooded...),
		// 20 (80/(40 x 20))^1.03 = 1.8665 h, nine tenths of it used.
		about("lithium", RuntimeFull, 1.680, lithium...),
		// 100 Ah over 2 A is 50 h; the law would promise 63.
		about("capped below the rated current", RuntimeFull50, 25, num(MotorVoltage, 12), num(MotorAmps, 2), num(BatteryCount, 1), num(BatteryCapacity, 100), txt(BatteryChemistry, "flooded"), warm),
		// Two strings of two: 200 Ah at 24 V. 20 (200/(60 x 20))^1.12 = 2.688 h.
		about("two strings", RuntimeFull50, 1.344, num(MotorVoltage, 24), num(MotorAmps, 60), num(BatteryCount, 4), num(BatteryCapacity, 100), txt(BatteryChemistry, "agm"), warm),
	} {
		a.run(t)
	}
	s := StandardBook().Solve(Question{Given: lithium, Want: []ID{RuntimeFull50}})
	if s.Has(RuntimeFull50) {
		t.Error("lithium has no second, shallower depth")
	}
}

func TestBatteryInHand(t *testing.T) {
	for _, a := range []ask{
		about("usual for the case", BatteryCapacity, 77.5, txt(BatteryGroup, "24")),
		about("letters after the number", BatteryCapacity, 110, txt(BatteryGroup, "31M")),
		about("lithium in the case", BatteryCapacity, 100, txt(BatteryGroup, "31"), txt(BatteryChemistry, "lithium")),
		// 500 (140/1200)^(1/1.25) = 89.6 Ah.
		about("reserve minutes", BatteryCapacity, 89.65, num(BatteryReserve, 140.0/60), txt(BatteryChemistry, "flooded")),
		about("reserve before case", BatteryCapacity, 89.65, num(BatteryReserve, 140.0/60), txt(BatteryGroup, "24")),
		about("what was said before all", BatteryCapacity, 92, num(BatteryCapacity, 92), num(BatteryReserve, 2), txt(BatteryGroup, "27")),
		about("count alone", BatteryCapacity, 100, num(BatteryCount, 2)),
		about("count of golf-cart batteries", BatteryCapacity, 210, num(BatteryCount, 4), num(BatteryVoltage, 6)),
		about("golf cart", BatteryVoltage, 6, txt(BatteryGroup, "GC2")),
		about("pair of 27s weighs", BankWeight, unit.Pounds(116).Kilograms(), num(BatteryCount, 2), txt(BatteryGroup, "27")),
		about("lithium by its Ah", BankWeight, unit.Pounds(26).Kilograms(), num(BatteryCount, 1), num(BatteryCapacity, 100), txt(BatteryChemistry, "lithium")),
	} {
		a.run(t)
	}
	// Two batteries for a day of 8 h are two usual batteries, not whatever would
	// make 8 h of it: 0.8 x 100 Ah / 4 A.
	about("hours said ask nothing of batteries in hand", RuntimeCruise, 20, num(BatteryCount, 2), num(MotorVoltage, 24), num(CruiseCurrent, 4), num(UseHours, 8), warm).run(t)
	if s := StandardBook().Solve(Question{Given: []Given{txt(BatteryGroup, "77")}, Want: []ID{BatteryCapacity}}); s.Has(BatteryCapacity) {
		t.Errorf("a case size that does not exist holds %g Ah", s.Value(BatteryCapacity))
	}
}

func TestCountsAndLayouts(t *testing.T) {
	for _, a := range []ask{
		about("36 volts", BankCount, 3, num(MotorVoltage, 36)),
		about("12 volts", BankCount, 1, num(MotorVoltage, 12)),
		about("48 volts", BankCount, 4, num(MotorVoltage, 48)),
		about("golf-cart batteries", BankCount, 4, num(MotorVoltage, 24), txt(BatteryGroup, "GC2")),
		about("one pack", BankCount, 1, num(MotorVoltage, 36), num(BatteryCount, 1), txt(BatteryChemistry, "lithium")),
		about("a pack of 24 volts said", BankCount, 1, num(BatteryVoltage, 24), num(BatteryCapacity, 60)),
		about("three and nothing else", SystemVoltage, 36, num(BatteryCount, 3)),
		about("two side by side", SystemVoltage, 12, num(BatteryCount, 2), txt(BatteryLayout, "parallel")),
		about("four, two strings", SystemVoltage, 24, num(BatteryCount, 4), txt(BatteryLayout, "series-parallel")),
		about("two of 6 volts", SystemVoltage, 12, num(BatteryCount, 2), num(BatteryVoltage, 6)),
		about("two on a 12-volt motor", BankStrings, 2, num(BatteryCount, 2), num(MotorVoltage, 12)),
		about("two on a 12-volt motor add up", BankCapacity, 150, num(BatteryCount, 2), num(BatteryCapacity, 75), num(MotorVoltage, 12)),
		about("two in series do not", BankCapacity, 75, num(BatteryCount, 2), num(BatteryCapacity, 75), num(MotorVoltage, 24)),
		{name: "side by side, since the motor says so", given: []Given{num(BatteryCount, 2), num(MotorVoltage, 12)}, want: BatteryLayout, word: "parallel"},
		{name: "strings of two", given: []Given{num(BatteryCount, 4), num(MotorVoltage, 24)}, want: BatteryLayout, word: "series-parallel"},
		{name: "in series unless said", given: []Given{num(BatteryCount, 2)}, want: BatteryLayout, word: "series"},
	} {
		a.run(t)
	}
	// One battery too many is left over; one too few is asked for.
	s := StandardBook().Solve(Question{Given: []Given{num(BatteryCount, 3), num(MotorVoltage, 24)}, Want: []ID{BankCount}})
	if s.Value(BankCount) != 2 || !strings.Contains(warnings(s, BankStrings), "left over") {
		t.Errorf("three on 24 V: %g needed, warned %q", s.Value(BankCount), warnings(s, BankStrings))
	}
	s = StandardBook().Solve(Question{Given: []Given{num(BatteryCount, 2), num(MotorVoltage, 36)}, Want: []ID{BankCount}})
	if s.Value(BankCount) != 3 || !strings.Contains(warnings(s, BankStrings), "3 in series") {
		t.Errorf("two on 36 V: %g needed, warned %q", s.Value(BankCount), warnings(s, BankStrings))
	}
}

// The same two batteries hold the same energy in series and side by side.
func TestEnergyDoesNotDependOnLayout(t *testing.T) {
	common := []Given{num(BatteryCount, 2), num(BatteryCapacity, 90), txt(BatteryChemistry, "lithium")}
	about("series", BankEnergy, 2*90*12.8, append(common, num(MotorVoltage, 24))...).run(t)
	about("side by side", BankEnergy, 2*90*12.8, append(common, num(MotorVoltage, 12))...).run(t)
}

func TestBankForTheDay(t *testing.T) {
	// 9 h at 4 A, half used, aged to 0.8, at 25 C: under the rated current, so
	// 36 Ah over 0.4.
	steady := []Given{num(CruiseCurrent, 4), num(UseHours, 9), txt(BatteryChemistry, "flooded"), warm, num(MotorVoltage, 12)}
	// 9 h at 6 A: 135 Ah so reckoned, but 54 Ah over 0.8 = 67.5 from new batteries
	// at the limit, which one of 110 gives for 0.8 x 20 (110/(6 x 20))^1.25 h.
	long := []Given{num(CruiseCurrent, 6), num(UseHours, 9), txt(BatteryChemistry, "flooded"), warm, num(MotorVoltage, 12)}
	// 3 h at 30 A: 30 x 20 x (3/(20 x 0.4))^(1/1.25) = 273.8 Ah, and at the limit
	// 30 x 20 x (3/(20 x 0.8))^(1/1.25) = 157.2 Ah.
	hard := []Given{num(CruiseCurrent, 30), num(UseHours, 3), txt(BatteryChemistry, "flooded"), warm, num(MotorVoltage, 12)}
	for _, a := range []ask{
		about("below the rated current", BankCapacity, 90, steady...),
		about("carries the hours half down when old", RuntimeUse50, 9/0.8, steady...),
		about("in one usual battery", BankCount, 1, steady...),
		about("of the next size", BatteryEach, 95, steady...),
		about("for a long life", BankNeed, 135, long...),
		about("no second set for a longer life", BankCount, 1, long...),
		about("but the largest battery", BankCapacity, 110, long...),
		about("drawn to the limit", RuntimeCruise, 14.351, long...),
		about("and how many would spare it", BankSpareStrings, 2, long...),
		about("above the rated current", BankNeed, 273.8, hard...),
		about("at the limit", BankLimitNeed, 157.2, hard...),
		about("a second set where one cannot carry the hours", BankCount, 2, hard...),
		about("hours from a trip", UseHours, 10000/1.25/3600, num(UseDistance, 10000), num(UseSpeed, 1.25)),
		// 0.8 x 20 (100/(8 x 20))^1.25 = 8.891 h at 4.5 km/h.
		about("range", RangeCruise, 4500*8.891, num(UseSpeed, 1.25), num(CruiseCurrent, 8), num(BatteryCapacity, 100), num(BatteryCount, 1), num(MotorVoltage, 12), warm),
		{name: "case that holds it", given: []Given{num(BatteryCapacity, 92)}, want: BatteryCase, word: "27"},
	} {
		a.run(t)
	}
	// A day that nobody described sells no second set, and a larger battery than
	// is usual is not made up.
	s0 := StandardBook().Solve(Question{Given: []Given{num(CruiseCurrent, 12), num(MotorVoltage, 12), txt(BatteryChemistry, "agm")}, Want: []ID{BankWeight}})
	if s0.Value(BankCount) != 1 || s0.Value(BatteryEach) != 110 || !strings.Contains(warnings(s0, BatteryEach), "how many hours") {
		t.Errorf("12 A for a day: %g of %g Ah, warned %q; want one of 110", s0.Value(BankCount), s0.Value(BatteryEach), warnings(s0, BatteryEach))
	}
	// Without hours said, the day is assumed and one set of batteries is.
	about("hours not said", BankCount, 2, num(MotorVoltage, 24), num(CruiseCurrent, 20)).run(t)
	s := StandardBook().Solve(Question{Given: []Given{num(CruiseCurrent, 20), num(MotorVoltage, 24)}, Want: []ID{BankCapacity}})
	if st := s.Step(UseHours); st == nil || st.Origin != Assumed || st.Band.Low != 6 || st.Band.High != 10 {
		t.Errorf("hours of a day: %+v, want assumed 6 to 10", st)
	}
}

// A profile is not its mean: the hour flat out costs more than its share.
func TestDutyProfile(t *testing.T) {
	duty := []Stretch{{Throttle: 1, Hours: 1}, {Throttle: 0.4, Hours: 4}}
	given := []Given{num(MotorVoltage, 24), num(MotorAmps, 50), txt(MotorSpeeds, "fixed"), num(BatteryCount, 2), num(BatteryCapacity, 110), txt(BatteryChemistry, "flooded"), warm}
	for _, a := range []ask{
		{name: "hours", given: given, duty: duty, want: DutyHours, low: 5, high: 5},
		// Second speed of five: 0.33 of 50 A is 16.5 A. Rated current 5.5 A:
		// 50 (50/5.5)^0.25 + 66 (16.5/5.5)^0.25 = 86.82 + 86.86 = 173.7 Ah.
		{name: "charge", given: given, duty: duty, want: DutyCharge, low: 173.5, high: 173.9},
		// 0.8 x 110 / 173.7 x 5 h.
		{name: "time", given: given, duty: duty, want: RuntimeCruise, low: 2.53, high: 2.54},
	} {
		a.run(t)
	}
	want := []ID{BankCapacity}
	bought := []Given{num(MotorVoltage, 24), num(MotorAmps, 12), txt(MotorSpeeds, "fixed")}
	s := StandardBook().Solve(Question{Given: append(bought, txt(BatteryChemistry, "flooded"), warm), Duty: duty, Want: want})
	again := StandardBook().Solve(Question{Given: append(bought, txt(BatteryChemistry, "flooded"), warm, num(BankCapacity, s.Value(BankCapacity))), Duty: duty, Want: []ID{DutyCharge}})
	if got, bank := again.Value(DutyCharge), s.Value(BankCapacity); math.Abs(got-0.4*bank) > 1e-6*bank {
		t.Errorf("the bank of %.4g Ah for the profile is emptied by %.4g Ah, want two fifths", bank, got)
	}
}

func TestColdTakesCapacity(t *testing.T) {
	for _, chem := range []string{"flooded", "agm", "gel", "lithium"} {
		last := math.Inf(1)
		for _, c := range []float64{25, 10, 0, -17} {
			s := StandardBook().Solve(Question{Given: []Given{num(AirTemp, c), txt(BatteryChemistry, chem), num(BatteryCapacity, 100), num(MotorAmps, 40), num(MotorVoltage, 12)}, Want: []ID{RuntimeFull}})
			x := s.Value(RuntimeFull)
			if !(x > 0 && x < last) {
				t.Errorf("%s at %g C runs %.3f h, %.3f h where it was warmer", chem, c, x, last)
			}
			if b := s.Step(RuntimeFull).Band; c == -17 {
				if d := strings.Join(s.Doubts(RuntimeFull), "; "); !strings.Contains(d, "colder") || b.Low > 0.7*x {
					t.Errorf("%s at %g C: %.3f to %.3f h is shown as sound: %q", chem, c, b.Low, b.High, d)
				}
			} else if len(s.Doubts(RuntimeFull)) > 0 {
				t.Errorf("%s at %g C: %q, within the range of the figures", chem, c, s.Doubts(RuntimeFull))
			}
			last = x
		}
	}
	for _, chem := range []string{"flooded", "lithium"} {
		s := StandardBook().Solve(Question{Given: []Given{num(AirTemp, -40), txt(BatteryChemistry, chem), num(BatteryCapacity, 100), num(MotorAmps, 40), num(MotorVoltage, 12)}, Want: []ID{RuntimeFull}})
		var out *RangeError
		if s.Has(RuntimeFull) || !errors.As(s.Err(RuntimeFull), &out) || out.Cell != AirTemp {
			t.Errorf("%s at -40 C: runs %g h, %v; want a *RangeError that names the temperature", chem, s.Value(RuntimeFull), s.Err(RuntimeFull))
		}
	}
}

// From hours to a bank and from that bank back to the hours, through the sheet.
func TestSheetBankToHoursAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		given := []Given{
			num(CruiseCurrent, rapid.Float64Range(1, 40).Draw(t, "A")), num(MotorVoltage, 12),
			txt(BatteryChemistry, rapid.SampledFrom([]string{"flooded", "agm", "gel", "lithium"}).Draw(t, "chemistry")),
			num(AirTemp, rapid.Float64Range(-2, 40).Draw(t, "C")),
		}
		hours := rapid.Float64Range(1, 12).Draw(t, "hours")
		s := StandardBook().Solve(Question{Given: append(given, num(UseHours, hours)), Want: []ID{BankCapacity, RuntimeCruise}})
		if s.Value(BankCapacity) > s.Value(BankNeed) {
			t.Skip("the smallest battery sold holds more than the hours ask for")
		}
		if got := s.Value(RuntimeCruise); got < hours*(1-2*nearEnough) {
			t.Fatalf("%g Ah for %g h, drawn to the limit, run %g h", s.Value(BankCapacity), hours, got)
		}
		if s.Value(BankCapacity) < s.Value(BankNeed)-1e-9 {
			return // the largest that is sold
		}
		kept := s.Value(BatteryLongDepth) / s.Value(BatteryLimitDepth) * s.Value(BatteryAgeing)
		if got := kept * s.Value(RuntimeCruise); math.Abs(got-hours) > 1e-6*hours {
			t.Fatalf("a bank for %g h runs %g h when old, to the depth for a long life", hours, got)
		}
		inHand := StandardBook().Solve(Question{Given: append(given, num(BatteryCapacity, s.Value(BankCapacity)), num(BatteryCount, 1)), Want: []ID{RuntimeCruise}})
		if inHand.Value(RuntimeCruise) < hours {
			t.Fatalf("the same bank new runs %g h to the limit, less than %g h", inHand.Value(RuntimeCruise), hours)
		}
	})
}

// onlyDecide are needs that choose a row or guard it and do not enter its result.
var onlyDecide = map[string][]ID{
	"voltage of batteries side by side":        {BatteryCount},
	"breaker":                                  {WireAmps},
	"drop by the wire-area formula":            {WireJudged},
	"charge time":                              {ChargeAccept, ChargerUsed},
	"bank for the profile":                     {MotorIdle, DialExponent},
	"bank for the profile, drawn to the limit": {MotorIdle, DialExponent},
	"charge of the profile, five speeds":       {MotorIdle, DialExponent},
	// A part of the formula stands for these.
	"conductor temperature":  {WireInsulation},
	"resistance of the pair": {WireJudged},
	"area of the wire":       {WireJudged},
}

// What enters a result stands in the formula that the reader is shown. A word
// that chooses a row need not.
func TestBankAndWireFormulasShowTheirNeeds(t *testing.T) {
	for _, rows := range [][]Row{bankRows, wireRows, chargeRows} {
		for i := range rows {
			r := &rows[i]
			for _, id := range r.Needs {
				shown := shows(r.Formula, id) || id.Describe().Word
				capped := strings.HasSuffix(r.Name, "below the rated current") && (id == BatteryExponent || id == BatteryHourRate)
				if r.Compute != nil && !shown && !capped && !slices.Contains(onlyDecide[r.Name], id) {
					t.Errorf("row %q needs %s and does not show it: %q", r.Name, id, r.Formula)
				}
			}
		}
	}
}

// What is no battery and no motor gives an error, not a figure of something else.
func TestImpossibleInputs(t *testing.T) {
	for _, c := range []struct {
		name  string
		id    ID
		given []Given
	}{
		{"no capacity", BankCapacity, []Given{num(BatteryCapacity, 0), num(MotorVoltage, 12)}},
		{"a power station", BankCapacity, []Given{num(BatteryCapacity, 1e6), num(MotorVoltage, 12)}},
		{"no current", RuntimeFull, []Given{num(MotorAmps, 0), num(BatteryCapacity, 100)}},
		{"a breaker for no current", BreakerRating, []Given{num(MotorAmps, 0)}},
		{"a run behind the battery", WireGauge, []Given{num(MotorAmps, 50), num(WireRun, -2)}},
		{"telephone wire", WireAmpacity, []Given{num(MotorAmps, 50), num(WireGaugeSaid, 22)}},
		{"wax insulation", WireAmpacity, []Given{num(MotorAmps, 50), num(WireGaugeSaid, 6), num(WireInsulation, 40)}},
		{"no charger", ChargeTime, []Given{num(BatteryCapacity, 100), num(ChargerSaid, 0)}},
		{"no speed", UseHours, []Given{num(UseDistance, 5000), num(UseSpeed, 0)}},
	} {
		s := StandardBook().Solve(Question{Given: c.given, Want: []ID{c.id}})
		if s.Err(c.id) == nil || s.Has(c.id) && c.id != UseHours { // hours of a day stand in for those of the trip
			t.Errorf("%s: %s is %g, error %v", c.name, c.id, s.Value(c.id), s.Err(c.id))
		}
	}
}

// Further questions for the tests that every row must stand.
func init() {
	type question = struct {
		name  string
		given []Given
		duty  []Stretch
	}
	boats = append(boats, []question{
		{"golf-cart batteries", []Given{txt(BatteryGroup, "GC2"), num(BatteryCount, 6)}, nil},
		{"one lithium pack", []Given{num(BatteryCount, 1), num(MotorVoltage, 24), txt(BatteryChemistry, "lithium"), num(BatteryCapacity, 50)}, nil},
		{"a pack of 36 volts", []Given{num(BatteryVoltage, 36), num(BatteryCapacity, 40), txt(BatteryChemistry, "lithium")}, nil},
		{"two side by side", []Given{num(BatteryCount, 2), txt(BatteryLayout, "parallel"), num(BatteryCapacity, 95), num(MotorAmps, 3)}, nil},
		{"two strings of two", []Given{num(BatteryCount, 4), txt(BatteryLayout, "series-parallel"), txt(BatteryGroup, "27")}, nil},
		{"batteries that make no such voltage", []Given{num(BatteryCount, 2), num(BatteryVoltage, 8), num(MotorVoltage, 12)}, nil},
		{"holding gently", []Given{txt(BoatHull, "kayak"), ftIn(BoatLength, 11, 0), num(BatteryCapacity, 200), num(MotorAmps, 12), txt(BatteryChemistry, "lithium")}, nil},
		{"holding gently on lead", []Given{num(BatteryCapacity, 230), num(MotorAmps, 14), txt(BatteryChemistry, "gel"), num(MotorVoltage, 12)}, nil},
		{"two hours to charge", []Given{num(BatteryCapacity, 95), txt(BatteryChemistry, "agm"), num(ChargeHours, 2)}, nil},
		{"priced", []Given{num(MotorPrice, 800), num(BatteryPrice, 130), num(ChargerPrice, 150), num(WiringPrice, 90), lbs(LoadTotal, 1500)}, nil},
		{"a profile without a bank", []Given{lbf(MotorThrust, 80), num(AirTemp, 2)}, []Stretch{{0.8, 0.5}, {0.25, 5}}},
		{"too far for any wire", []Given{num(MotorVoltage, 12), num(MotorAmps, 60), ftIn(WireRun, 250, 0)}, nil},
	}...)
}

// Two motors have a wire and a breaker each: those of one alone, for half of the
// current.
func TestSeveralMotorsAreWiredOneByOne(t *testing.T) {
	want := []ID{MotorCurrent, WireGauge, WireDrop, BreakerRating}
	one := StandardBook().Solve(Question{Given: []Given{num(MotorAmps, 42), num(MotorVoltage, 24), num(WireRun, 5)}, Want: want})
	two := StandardBook().Solve(Question{Given: []Given{num(MotorAmps, 42), num(MotorCount, 2), num(MotorVoltage, 24), num(WireRun, 5)}, Want: want})
	if got := two.Value(MotorCurrent); got != 84 {
		t.Errorf("two motors of 42 A draw %g A", got)
	}
	for _, id := range want[1:] {
		if one.Value(id) != two.Value(id) {
			t.Errorf("%s: %g for one motor, %g for each of two", id, one.Value(id), two.Value(id))
		}
	}
}

// Full throttle is reckoned to the limit whether or not the hours of the day
// were said, so that one bank has one run time.
func TestFullThrottleHasOneBasis(t *testing.T) {
	given := []Given{num(MotorAmps, 50), num(MotorVoltage, 12), txt(BatteryChemistry, "flooded"), num(AirTemp, 25)}
	bought := StandardBook().Solve(Question{Given: append(given, num(UseHours, 5)), Want: []ID{BankCapacity, RuntimeFull}})
	inHand := StandardBook().Solve(Question{Given: append(given, num(BatteryCapacity, bought.Value(BankCapacity)), num(BatteryCount, 1)), Want: []ID{RuntimeFull}})
	if a, b := bought.Value(RuntimeFull), inHand.Value(RuntimeFull); a == 0 || math.Abs(a-b) > 1e-9*b {
		t.Errorf("%g h at full throttle on the bank for the day, %g h on the same battery in hand", a, b)
	}
}

// A boat that holds in a stream works as in a wind.
func TestAStreamIsNoCalm(t *testing.T) {
	day := func(more ...Given) float64 {
		return StandardBook().Solve(Question{Given: append([]Given{txt(UseStyle, "holding"), num(MotorAmps, 50), num(MotorVoltage, 24)}, more...), Want: []ID{CruiseCurrent}}).Value(CruiseCurrent)
	}
	if still, stream := day(), day(num(CurrentSpeed, 1.3)); stream < 2*still {
		t.Errorf("holding draws %g A, in a stream of 1.3 m/s %g A", still, stream)
	}
}
