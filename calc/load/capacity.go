package load

import (
	"fmt"
	"math"

	"heronlake.example/ask/calc/unit"
)

// FreshWater is the weight of fresh water that 33 CFR 183 subpart C counts with,
// 62.4 lb per cubic foot.
const FreshWater = unit.Density(62.4 * unit.KilogramsPerPound / (unit.MetresPerFoot * unit.MetresPerFoot * unit.MetresPerFoot))

// WeightOutboard is the greatest maximum weight capacity of an outboard boat: a
// fifth of the maximum displacement less the boat's weight (33 CFR 183.35).
func WeightOutboard(displacement, boat unit.Mass) unit.Mass {
	return max((displacement-boat)/5, 0)
}

// WeightManual is the same for boats rowed or paddled, or with an engine of at
// most 2 hp: three tenths (33 CFR 183.37, from memory).
func WeightManual(displacement, boat unit.Mass) unit.Mass {
	return max((displacement-boat)*3/10, 0)
}

// stabilityLimit is the weight below which 33 CFR 183.41(a)(2) asks for the
// stability test: "less than 550 pounds", so that 550 itself needs none.
const stabilityLimit = unit.Mass(550 * unit.KilogramsPerPound)

// NeedsStabilityTest reports whether the persons' weight of 33 CFR 183.41(a)(1)
// calls for the stability test.
func NeedsStabilityTest(capacity, equipment unit.Mass) bool {
	return capacity-equipment < stabilityLimit
}

// PersonsWeightOutboard is the persons' weight of an outboard boat, 33 CFR
// 183.41(a): the weight capacity less motor, controls, battery and full portable
// tank, or, where that is under 550 lb, the lesser of it and test / 0.6, test
// being the weight along one side at which water would come aboard.
func PersonsWeightOutboard(capacity, equipment, test unit.Mass) unit.Mass {
	w := max(capacity-equipment, 0)
	if NeedsStabilityTest(capacity, equipment) {
		w = min(w, test/0.6)
	}
	return w
}

// PersonsWeightManual is the persons' weight of a boat moved by hand, nine
// tenths of the weight capacity; PersonsWeightSmall that with a motor of 2 hp or
// less, 25 lb under it (33 CFR 183.43).
func PersonsWeightManual(capacity unit.Mass) unit.Mass { return capacity * 9 / 10 }

// PersonsWeightSmall: see PersonsWeightManual.
func PersonsWeightSmall(capacity unit.Mass) unit.Mass {
	return max(capacity*9/10-unit.Pounds(25), 0)
}

// Persons is the number of whole persons for a persons' weight: (pounds + 32) /
// 141, to the nearest whole number, one half up (33 CFR 183.41(b), 183.43(b) and
// (c)). The 32 lb are added once.
func Persons(w unit.Mass) int {
	lb := math.Max(w.Pounds(), 0)
	return int(math.Floor(quotient(lb) + 0.5))
}

// quotient is what a builder rounds to whole persons.
func quotient(pounds float64) float64 {
	// Pounds come back from kilograms with an error in the last bits; a
	// thousandth of a pound is far below what any scale shows.
	return (math.Round(pounds*1000)/1000 + 32) / 141
}

// PowerSteering says how an outboard boat is rigged, for the horsepower limit.
type PowerSteering struct {
	Remote  bool        // remote steering
	Transom unit.Length // transom height
	FlatHC  bool        // flat bottom with hard chines
}

// powerRow is a row of the table of 33 CFR 183.53: maximum power up to a factor.
type powerRow struct {
	upTo int
	hp   float64
}

var powerTable = []powerRow{{35, 3}, {39, 5}, {42, 7.5}, {45, 10}, {52, 15}}

// MaxHorsepower is the greatest outboard power of a monohull under 20 ft by 33
// CFR 183.53, in horsepower. The factor is boat length times transom width in
// square feet, to the nearest whole number for the table; over 52.5 the formulas
// hold and the result goes up to a multiple of 5. A flat bottom with hard chines
// takes the row below in the table.
func MaxHorsepower(length, transomWidth unit.Length, s PowerSteering) (float64, error) {
	factor := length.Feet() * transomWidth.Feet()
	if !(factor > 0) {
		return 0, fmt.Errorf("length %.4g ft by transom %.4g ft gives no power factor", length.Feet(), transomWidth.Feet())
	}
	if factor > 52.5 {
		return math.Ceil(roundTiny(s.formula(factor))/5) * 5, nil
	}
	n := int(math.Floor(factor + 0.5))
	for i, r := range powerTable {
		if n > r.upTo {
			continue
		}
		if s.FlatHC && i > 0 {
			return powerTable[i-1].hp, nil
		}
		return r.hp, nil
	}
	return powerTable[len(powerTable)-1].hp, nil
}

func (s PowerSteering) formula(factor float64) float64 {
	switch {
	case s.Remote && s.Transom.Inches() >= 20-1e-9:
		return 2*factor - 90
	case s.FlatHC:
		return 0.5*factor - 15
	}
	return 0.8*factor - 25
}

// roundTiny drops the last bits that unit factors leave, before rounding up.
func roundTiny(x float64) float64 { return math.Round(x*1e6) / 1e6 }
