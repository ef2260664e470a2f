package sheet

import (
	"fmt"
	"math"
	"testing"

	"heronlake.example/ask/calc/unit"
)

// Published examples as they are asked: said to the sheet, and read off it. The
// packages hold their own formulas against more of them.
func TestPublishedExamples(t *testing.T) {
	bare := []Given{num(LoadEngine, 0), num(PlateFuel, 0), num(PlateBatteries, 0), num(LoadMotor, 0), num(LoadGear, 0)}
	plate := func(pounds float64) []Given { return append(bare[:len(bare):len(bare)], lbs(LoadPlate, pounds)) }
	wire := func(volts, amps, feet, drop float64) []Given {
		return []Given{num(MotorVoltage, volts), num(MotorAmps, amps), ftIn(WireRun, feet, 0), num(WireDropTarget, drop)}
	}
	whole := func(amps, k float64) []Given {
		return []Given{num(MotorVoltage, 12), num(MotorAmps, amps), num(BatteryCapacity, 100), txt(BatteryChemistry, "flooded"), num(AirTemp, 25),
			num(BatteryExponent, k), num(BatteryLimitDepth, 1)}
	}
	kn := func(x float64) Given { return num(WindAboard, unit.Knots(x).MetresPerSecond()) }
	water := func(kind string, celsius float64) []Given {
		return []Given{num(WaterTemp, celsius), txt(WaterKind, kind)}
	}
	for _, x := range []struct {
		source    string
		given     []Given
		want      ID
		published float64
		digit     float64 // half of the last digit printed
	}{
		// ABYC E-11, worked example of a trade reprint: 10 A, 12 V, 21 ft out and back,
		// 3 %: 6,270.8 circular mils, 12 AWG of 6,530.
		{"E-11, 10 A", wire(12, 10, 10.5, 0.03), WireGauge, 12, 0},
		{"E-11, 10 A, area", wire(12, 10, 10.5, 0.03), WireMils, 6530, 0.5},
		// Public engineering note: 200 A, 48 V, 50 ft one way, 3 %: 3/0 of 167,800.
		{"200 A at 48 V", wire(48, 200, 50, 0.03), WireGauge, -2, 0},
		{"200 A at 48 V, area", wire(48, 200, 50, 0.03), WireMils, 167800, 50},
		// The formula of E-11 at 25 ft out and back and 25 A, 3 % of 12 V: 6 AWG.
		{"25 A", wire(12, 25, 12.5, 0.03), WireGauge, 6, 0},
		// Coast Guard, Boatbuilder's Handbook, examples to 33 CFR 183.41.
		{"persons, 550 lb", plate(550), PeopleMost, 4, 0},
		{"persons, 547 lb", plate(547), PeopleMost, 4, 0},
		// Encyclopedia (from memory): 100 Ah at 20 h, exponent 1.2, 10 A; and the rated
		// current, where the law must give the rated hours.
		{"Peukert, 10 A", whole(10, 1.2), RuntimeFull, 8.7, 0.05},
		{"Peukert, 5 A", whole(5, 1.2), RuntimeFull, 20, 0.05},
		// IEEE 485 at 50 F: 1.19 times the size.
		{"IEEE 485", []Given{num(AirTemp, 10), txt(BatteryChemistry, "flooded")}, BatteryCold, 1 / 1.19, 0.005},
		// Public physics: 10 m/s on 2 m2, coefficient 1; dynamic pressure by knots.
		{"pressure of 10 m/s", []Given{num(WindAboard, 10)}, WindPressure, 61.25, 0.005},
		{"push of 10 m/s", []Given{num(WindAboard, 10), num(WindDragArea, 2)}, WindForce, 122.5, 0.05},
		{"pressure of 15 knots", []Given{kn(15)}, WindPressure, 36.473, 0.0006},
		// ABYC H-40, Table 1: 20 ft at 15 and at 30 knots, 60 ft at 15.
		{"H-40, 20 ft", []Given{ftIn(BoatLength, 20, 0), num(WindSpeed, unit.Knots(15).MetresPerSecond())}, WindUpper, unit.PoundForce(90).Newtons(), 0.01},
		{"H-40, 20 ft, 30 knots", []Given{ftIn(BoatLength, 20, 0), num(WindSpeed, unit.Knots(30).MetresPerSecond())}, WindUpper, unit.PoundForce(360).Newtons(), 0.01},
		{"H-40, 60 ft", []Given{ftIn(BoatLength, 60, 0), num(WindSpeed, unit.Knots(15).MetresPerSecond())}, WindUpper, unit.PoundForce(500).Newtons(), 0.01},
		// ABYC S-30 Table 1A, 23 to 34.9 hp: 196 lb running, 9 controls, 45 battery.
		{"S-30, 25 hp", []Given{num(EnginePower, unit.Horsepower(25).Watts())}, LoadEngine, unit.Pounds(196 + 9 + 45).Kilograms(), 0.01},
		// Gasoline in boating practice, 6.1 lb a gallon.
		{"6 gallons", []Given{num(FuelVolume, unit.USGallons(6).Litres())}, LoadFuel, unit.Pounds(36.6).Kilograms(), 0.02},
		// 33 CFR 183.455 and ABYC E-11: 7, 40 and 72 in.
		{"bare", nil, BreakerBare, unit.Inches(7).Metres(), 1e-9},
		{"sheathed", nil, BreakerSheath, unit.Inches(40).Metres(), 1e-9},
		{"at the battery", nil, BreakerBattery, unit.Inches(72).Metres(), 1e-9},
		// 2.4 V a lead cell, 3.65 V a lithium iron phosphate cell: 14.4 and 43.8 V; 3.2 V
		// a cell makes 12.8 V of 12.
		{"lead on charge", []Given{num(MotorVoltage, 12), txt(BatteryChemistry, "flooded")}, BankFullVolts, 14.4, 0.005},
		{"lithium on charge", []Given{num(MotorVoltage, 36), txt(BatteryChemistry, "lithium")}, BankFullVolts, 43.8, 0.005},
		{"energy of 100 Ah", []Given{num(MotorVoltage, 12), txt(BatteryChemistry, "lithium"), num(BatteryCapacity, 100)}, BankEnergy, 1280, 0.5},
		// ITTC 7.5-02-01-03 at 15 C.
		{"fresh water", water("fresh", 15), WaterRho, 999.1026, 5e-5},
		{"sea water", water("salt", 15), WaterRho, 1026.0210, 5e-5},
		{"fresh water's viscosity", water("fresh", 15), WaterNu, 1.1386e-6, 5e-11},
		{"sea water's viscosity", water("salt", 15), WaterNu, 1.1892e-6, 4.9e-10}, // as far as the four figures of mu in the table go
		{"fresh water, 20 C", water("fresh", 20), WaterRho, 998.2072, 5e-5},
	} {
		s := StandardBook().Solve(Question{Given: x.given, Want: []ID{x.want}})
		if got := s.Value(x.want); !s.Has(x.want) || math.Abs(got-x.published) > x.digit+1e-12*math.Abs(x.published) {
			t.Errorf("%s: %s is %.7g (%v), published %.7g", x.source, x.want, got, s.Err(x.want), x.published)
		}
	}
}

// Published result of 33 CFR 183.425 Table 5 and its note 1 for 105 C insulation
// in an engine space, 18 AWG to 4/0 (trade reprint), as an answer shows it.
func TestPublishedAmpacitiesAsShown(t *testing.T) {
	for i, want := range []float64{17, 21, 30, 38, 51, 68, 102, 136, 153, 178, 208, 242, 280, 327, 378} {
		gauge := []float64{18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3}[i]
		s := StandardBook().Solve(Question{Given: []Given{num(WireGaugeSaid, gauge), num(WireInsulation, 105), txt(WirePlace, "engine-space")}, Want: []ID{WireAmpacity}})
		if got := s.Step(WireAmpacity).Show(unit.US); got != fmt.Sprintf("%g A", want) {
			t.Errorf("%s: %s, published %g A", unit.Show(gauge, unit.WireGauge, unit.US), got, want)
		}
	}
	// 0.00256 V^2 of ASCE 7: 25.6 lb/ft2 at 100 mph.
	s := StandardBook().Solve(Question{Given: []Given{mph(WindAboard, 100)}, Want: []ID{WindPressure}})
	if got := s.Step(WindPressure).Show(unit.US); got != "25.6 lb/ft2" {
		t.Errorf("a wind of 100 mph presses with %s, published 25.6 lb/ft2", got)
	}
}
