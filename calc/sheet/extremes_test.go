package sheet

import (
	"math"
	"slices"
	"testing"

	_ "heronlake.example/ask/tests/seeded"
	"pgregory.net/rapid"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// Whatever numbers are said, nothing but numbers comes out: what a formula does
// not hold for is an error, and the rest stands.
func TestExtremesGiveNumbersOrErrors(t *testing.T) {
	words := map[ID][]string{
		BoatHull:         {typical.Jon, typical.Pontoon, typical.Kayak, typical.Sailboat, "barge", ""},
		MotorSpeeds:      {"fixed", "variable", "stepless"},
		MotorDrive:       {"brushed", "brushless", "steam"},
		UseStyle:         {"trolling", "nothing much"},
		BatteryChemistry: {"flooded", "lithium", "nickel"},
		BatteryLayout:    {"series", "parallel", "heap"},
		MountPlace:       {"bow", "transom", "mast"},
		WaterKind:        {"fresh", "salt", "mud"},
	}
	scale := []float64{0, 1e-9, 0.01, 0.5, 1, 3, 40, 1000, 1e9}
	var slots []ID
	for _, id := range All() {
		if c := id.Describe(); !c.Figure && len(StandardBook().gives[id]) == 0 || id == LoadTotal {
			slots = append(slots, id)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		var given []Given
		for range rapid.IntRange(1, 8).Draw(t, "said") {
			id := rapid.SampledFrom(slots).Draw(t, "cell")
			if id.Describe().Word {
				if w := words[id]; w != nil {
					given = append(given, txt(id, rapid.SampledFrom(w).Draw(t, "word")))
				}
				continue
			}
			given = append(given, num(id, rapid.SampledFrom(scale).Draw(t, "value")))
		}
		if rapid.Bool().Draw(t, "a hull") {
			given = append(given, txt(BoatHull, rapid.SampledFrom(words[BoatHull]).Draw(t, "hull")))
		}
		s := StandardBook().Solve(Question{Given: given, Want: All()})
		for _, st := range s.Steps() {
			for _, x := range []float64{st.Value, st.Band.Low, st.Band.High} {
				if math.IsNaN(x) || math.IsInf(x, 0) {
					t.Fatalf("%s is %g, %v; given %v", st.ID, st.Value, st.Band, given)
				}
			}
			if st.Band.Low > st.Value || st.Value > st.Band.High {
				t.Fatalf("%s is %g, outside its band %v; given %v", st.ID, st.Value, st.Band, given)
			}
		}
		s.Moves(figures())
	})
}

// Outside of what the formulas hold for there is no figure, with an error that
// names the input, or the figure comes with a word and a wide band: never a
// confident number.
func TestExtremesAreTold(t *testing.T) {
	jon := []Given{txt(BoatHull, "jon"), ftIn(BoatLength, 16, 0), lbs(LoadTotal, 900)}
	with := func(more ...Given) []Given { return append(slices.Clone(jon), more...) }
	drain := func(amps, ah float64, more ...Given) []Given {
		return append([]Given{num(MotorAmps, amps), num(MotorVoltage, 12), num(BatteryCapacity, ah), txt(BatteryChemistry, "flooded"), warm}, more...)
	}
	run := func(volts, amps, feet float64) []Given {
		return []Given{num(MotorVoltage, volts), num(MotorAmps, amps), ftIn(WireRun, feet, 0)}
	}
	for _, x := range []struct {
		name  string
		given []Given
		want  ID
	}{
		{"a wind of 150 mph", with(mph(WindSpeed, 150)), ThrustWind},
		{"a class for 60 mph", with(mph(WindSpeed, 60)), ThrustClass},
		{"a current of 10 mph", with(mph(CurrentSpeed, 10)), ThrustCurrent},
		{"a current of 6 mph, and so the need", with(mph(CurrentSpeed, 6)), ThrustNeed},
		{"waves of 10 ft under a bow mount", []Given{ftIn(MountHeight, 0, 20), ftIn(ChopHeight, 10, 0)}, ShaftClass},
		{"a mount 10 ft up", []Given{ftIn(MountHeight, 10, 0)}, ShaftNeed},
		{"no shaft so long", []Given{ftIn(MountHeight, 0, 78), ftIn(ChopHeight, 2, 0)}, ShaftClass},
		{"300 ft at 12 V", run(12, 50, 300), WireGauge},
		{"2,000 ft at 36 V", run(36, 50, 2000), WireGauge},
		{"500 A at 12 V", run(12, 500, 10), WireGauge},
		{"a breaker for 143 A", run(12, 143, 10), BreakerRating},
		{"no current", run(12, 0, 10), BreakerRating},
		{"insulation of 30 C", append(run(12, 50, 10), num(WireInsulation, 30), num(WireGaugeSaid, 6)), WireAmpacity},
		{"36 gauge", append(run(12, 50, 10), num(WireGaugeSaid, 36)), WireAmpacity},
		{"300 A on 6 gauge", append(run(12, 300, 10), num(WireGaugeSaid, 6)), WireDrop},
		{"0.01 Ah", drain(50, 0.01), RuntimeFull},
		{"nothing in the battery", drain(50, 0), RuntimeFull},
		{"100,000 Ah", drain(50, 1e5), RuntimeFull},
		{"50 A from 5 Ah", drain(50, 5), RuntimeFull},
		{"0.1 A from 100 Ah", drain(0.1, 100), RuntimeFull},
		{"no current from 100 Ah", drain(0, 100), RuntimeFull},
		{"-40 F", append(drain(10, 100)[:4], num(AirTemp, -40)), RuntimeFull},
		{"0 F", append(drain(10, 100)[:4], num(AirTemp, -17.8)), RuntimeFull},
		{"150 F", append(drain(10, 100)[:4], num(AirTemp, 65.6)), RuntimeFull},
		{"an hour to charge", []Given{num(BatteryCapacity, 100), txt(BatteryChemistry, "flooded"), num(ChargeHours, 1)}, ChargerCurrent},
		{"a charger for 5 Ah", []Given{num(BatteryCapacity, 5), txt(BatteryChemistry, "flooded"), num(ChargeHours, 10)}, ChargerCurrent},
		{"a charger of no current", []Given{num(BatteryCapacity, 100), num(ChargerSaid, 0)}, ChargeTime},
		{"a dial past its end", append(drain(50, 100), num(UseThrottle, 1.5)), RuntimeCruise},
		{"a dial below its beginning", append(drain(50, 100), num(UseThrottle, -0.5)), RuntimeCruise},
		{"trolling at 10 mph", with(mph(UseSpeed, 10)), CruiseCurrent},
		{"18 ft and 100 lb", []Given{txt(BoatHull, "vee"), ftIn(BoatLength, 18, 0), lbs(LoadTotal, 100)}, ThrustWind},
		{"14 ft and 9,000 lb", []Given{txt(BoatHull, "jon"), ftIn(BoatLength, 14, 0), lbs(LoadTotal, 9000)}, SpeedTop},
		{"a vee of 200 ft", []Given{txt(BoatHull, "vee"), ftIn(BoatLength, 200, 0)}, LoadTotal},
		{"a jon of 3 ft", []Given{txt(BoatHull, "jon"), ftIn(BoatLength, 3, 0)}, LoadTotal},
		{"15 mph measured", with(Given{ID: SpeedMeasured, Value: band.Exactly(6.7), Measured: true}, lbf(SpeedThrust, 55)), SpeedTop},
		{"a motor of 1,000 lb", with(lbf(MotorThrust, 1000)), MotorCurrent},
		{"a motor of 1 lb", with(lbf(MotorThrust, 1)), MotorCurrent},
		{"a kayak past the model's speeds", []Given{txt(BoatHull, "kayak"), ftIn(BoatLength, 12, 0), lbs(LoadTotal, 250), lbf(MotorThrust, 120)}, SpeedTop},
	} {
		s := StandardBook().Solve(Question{Given: x.given, Want: []ID{x.want}})
		st := s.Step(x.want)
		switch err := s.Err(x.want); {
		case st == nil && err == nil:
			t.Errorf("%s: no %s, and no word why", x.name, x.want)
		case st == nil && len(err.Error()) < 20:
			t.Errorf("%s: no %s: %q says too little", x.name, x.want, err)
		case st != nil && len(s.Doubts(x.want)) == 0:
			t.Errorf("%s: %s is %s, told without a doubt", x.name, x.want, st.Show(unit.US))
		}
	}
	plain := StandardBook().Solve(Question{Given: jon, Want: figures()})
	if d := plain.Doubts(figures()...); len(d) > 0 {
		t.Errorf("a plain boat is doubted: %q", d)
	}
}
