package sheet

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestChargers(t *testing.T) {
	for _, a := range []ask{
		// 105 x 0.5 x 1.2 / (10 - 3.5) = 9.7 A.
		about("overnight", ChargerCurrent, 10, num(BatteryCapacity, 105), txt(BatteryChemistry, "flooded")),
		// 100 x 0.8 x 1.05 / (5.5 - 0.5) = 16.8 A.
		about("lithium in five hours and a half", ChargerCurrent, 20, num(BatteryCapacity, 100), txt(BatteryChemistry, "lithium"), num(ChargeHours, 5.5)),
		// In six hours 84 / 5.5 = 15.3 A, which 15 misses by a fiftieth.
		about("a twentieth short", ChargerCurrent, 15, num(BatteryCapacity, 100), txt(BatteryChemistry, "lithium"), num(ChargeHours, 6)),
		about("current needed", ChargeNeed, 9.6923, num(BatteryCapacity, 105), txt(BatteryChemistry, "flooded"), num(ChargeHours, 10)),
		// 80 x 0.5 x 1.2 / 6 + 3.5.
		about("a charger in hand", ChargeTime, 11.5, num(BatteryCapacity, 80), txt(BatteryChemistry, "flooded"), num(ChargerSaid, 6)),
		// 60 Ah of flooded battery accept 12 A, not 40: 36/12 + 3.5.
		about("more than it accepts", ChargeTime, 6.5, num(BatteryCapacity, 60), txt(BatteryChemistry, "flooded"), num(ChargerSaid, 40)),
		about("a battery of the same size in any bank", ChargerCurrent, 10, num(BatteryCapacity, 105), txt(BatteryChemistry, "flooded"), num(BatteryCount, 3), num(MotorVoltage, 36)),
		// Two hours do not hold the absorption: the most it accepts, 20 A.
		about("too short", ChargerCurrent, 20, num(BatteryCapacity, 110), txt(BatteryChemistry, "agm"), num(ChargeHours, 2)),
	} {
		a.run(t)
	}
}

func TestChargeWarnings(t *testing.T) {
	for _, c := range []struct {
		name  string
		id    ID
		part  string
		given []Given
	}{
		{"freezing", ChargerCurrent, "freezing", []Given{num(BatteryCapacity, 60), txt(BatteryChemistry, "lithium"), num(AirTemp, -4)}},
		{"freezing, charger in hand", ChargeTime, "freezing", []Given{num(BatteryCapacity, 60), txt(BatteryChemistry, "lithium"), num(AirTemp, 0), num(ChargerSaid, 10)}},
		{"too short", ChargerCurrent, "not full", []Given{num(BatteryCapacity, 110), txt(BatteryChemistry, "agm"), num(ChargeHours, 2)}},
		{"too small", ChargerCurrent, "small", []Given{num(BatteryCapacity, 12), txt(BatteryChemistry, "agm")}},
		{"too strong", ChargeTime, "more than the battery", []Given{num(BatteryCapacity, 60), txt(BatteryChemistry, "flooded"), num(ChargerSaid, 40)}},
	} {
		s := StandardBook().Solve(Question{Given: c.given, Want: []ID{c.id}})
		if !s.Has(c.id) || !strings.Contains(warnings(s, c.id), c.part) {
			t.Errorf("%s: known %v, warned %q, want word of %q", c.name, s.Has(c.id), warnings(s, c.id), c.part)
		}
	}
	for _, given := range [][]Given{
		{num(BatteryCapacity, 60), txt(BatteryChemistry, "lithium")}, // nobody spoke of the cold
		{num(BatteryCapacity, 60), txt(BatteryChemistry, "agm"), num(AirTemp, -4)},
	} {
		s := StandardBook().Solve(Question{Given: given, Want: []ID{ChargerCurrent}})
		if strings.Contains(warnings(s, ChargerCurrent), "freezing") {
			t.Errorf("%v: warned of freezing", given)
		}
	}
}

// A charger is never more than a twentieth below the need unless the battery
// accepts no more, and then it says so.
func TestChargersNeverRoundDownInSilence(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := StandardBook().Solve(Question{Given: []Given{
			num(BatteryCapacity, rapid.Float64Range(20, 250).Draw(t, "Ah")), num(ChargeHours, rapid.Float64Range(4, 16).Draw(t, "h")),
			txt(BatteryChemistry, rapid.SampledFrom([]string{"flooded", "agm", "gel", "lithium"}).Draw(t, "chemistry")),
		}, Want: []ID{ChargerCurrent}})
		chosen, need, accept := s.Value(ChargerCurrent), s.Value(ChargeNeed), s.Value(ChargeAccept)
		if said := warnings(s, ChargerCurrent); said == "" && (chosen < need/(1+nearEnough)-1e-9 || chosen > accept+1e-9) {
			t.Fatalf("%g A for a need of %g A and an acceptance of %g A, and nothing said", chosen, need, accept)
		}
	})
}

func TestCost(t *testing.T) {
	// Invented prices. Flooded, 30 days a year: five years of age come before
	// 400 cycles.
	prices := []Given{num(BatteryPrice, 140), num(MotorPrice, 900), num(ChargerPrice, 160), num(WiringPrice, 110), num(MotorVoltage, 24), txt(BatteryChemistry, "flooded"), num(BatteryCapacity, 100)}
	for _, a := range []ask{
		about("complete", CostTotal, 900+2*140+160+110, prices...),
		about("a year", CostYearly, 2*140.0/5, prices...),
		about("a day", CostCycle, 2*140.0/400, prices...),
		// 2,400 Wh, half of it, 400 times: 480 kWh.
		about("a kWh", CostEnergy, 2*140.0/480, prices...),
	} {
		a.run(t)
	}
	s := StandardBook().Solve(Question{Given: prices[1:], Want: []ID{CostTotal, CostYearly}})
	if s.Has(CostTotal) || s.Has(CostYearly) {
		t.Error("a cost without the batteries' price")
	}
}
