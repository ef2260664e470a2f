package sheet

import (
	"strconv"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/bank"
	"heronlake.example/ask/calc/typical"
)

// batteryRows: one battery.
var batteryRows = []Row{
	{Name: "battery chemistry of a very light hull", Gives: BatteryChemistry, Said: []ID{BoatHull}, Source: bankMemory, Basis: Estimate,
		When: func(v View) bool {
			return v.Said(BoatHull) && (v.Word(BoatHull) == typical.Kayak || v.Word(BoatHull) == typical.Canoe)
		},
		Assume: func(View) (Guess, bool) {
			return Guess{Word: "lithium", Others: []string{"agm"}, Why: "lithium, since weight counts most in so light a hull, unless you say"}, true
		}},
	{Name: "battery chemistry unless said", Gives: BatteryChemistry, Source: bankMemory, Basis: Estimate,
		Assume: func(View) (Guess, bool) {
			return Guess{Word: "flooded", Others: []string{"agm", "lithium"}, Why: "flooded lead-acid, the cheapest and the one that promises least, unless you say"}, true
		}},
	{Name: "battery voltage of a golf-cart case", Gives: BatteryVoltage, Needs: []ID{BatteryGroup}, Source: bciSource, Basis: Practice,
		Assume: func(v View) (Guess, bool) {
			g, ok := bank.GroupOf(v.Word(BatteryGroup))
			if !ok || g.Volts == 12 {
				return Guess{}, false
			}
			return Guess{Value: band.Exactly(g.Volts.Volts()), Why: "golf-cart case sizes hold " + number(g.Volts.Volts()) + "-volt batteries"}, true
		}},
	{Name: "single lithium pack at the motor's voltage", Gives: BatteryVoltage, Needs: []ID{BatteryCount, MotorVoltage, BatteryChemistry}, Source: bankMemory, Basis: Estimate,
		When: func(v View) bool {
			return v.Of(BatteryCount) == 1 && v.Of(MotorVoltage) > 12 && chemistry(v) == bank.Lithium
		},
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: band.Exactly(v.Of(MotorVoltage)), Why: "one lithium pack made for the motor's voltage, since you have one"}, true
		}},
	{Name: "battery voltage unless said", Gives: BatteryVoltage, Source: bankPractice, Basis: Practice,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: band.Exactly(12.0), Why: "12-volt batteries unless you say"}, true
		}},

	{Name: "capacity from reserve minutes", Gives: BatteryCapacity, Needs: []ID{BatteryReserve, BatteryExponent}, Source: reserveSource, Basis: Model,
		Formula: "500 Ah x ({battery.reserve} / 20 h)^(1 / {battery.peukert})",
		Compute: func(v View) (float64, error) {
			c, err := bank.CapacityFromReserve(v.Hours(BatteryReserve), v.Of(BatteryExponent))
			return c.AmpereHours(), err
		}},
	{Name: "capacity from the case size", Gives: BatteryCapacity, Needs: []ID{BatteryGroup, BatteryChemistry}, Source: bciSource, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			g, ok := bank.GroupOf(v.Word(BatteryGroup))
			if !ok {
				return Guess{}, false
			}
			b, ok := groupCapacity(g, chemistry(v))
			return Guess{Value: b, Why: "usual for a group " + g.Name + "; the group is a case size, not a capacity: read the label"}, ok
		}},
	// Batteries in hand have some capacity, and it has nothing to do with what
	// the day would ask for.
	{Name: "capacity of batteries in hand unless said", Gives: BatteryCapacity, Needs: []ID{BatteryVoltage, BatteryChemistry}, Said: []ID{BatteryCount}, Source: bankMemory, Basis: Estimate,
		When: func(v View) bool { return v.Said(BatteryCount) },
		Assume: func(v View) (Guess, bool) {
			b := typical.UsualCapacity(!isLead(v), v.Of(BatteryVoltage))
			return Guess{Value: b, Why: "a usual battery of about " + number(b.Nominal) + " Ah, unless you read another from the label"}, true
		}},

	constantBy(BatteryExponent, "Peukert exponent by chemistry", "published ranges by chemistry; they disagree widely",
		func(c *typical.Chemistry) band.Band[float64] { return c.Exponent }),
	tradeConstant(BatteryHourRate, "hour rate of the capacity", bankPractice, "deep-cycle batteries are rated over 20 hours", typical.HourRate),
	constantBy(BatteryLongDepth, "depth for a long life", "public comparison: lead-acid half, lithium iron phosphate 80 %; the rest from memory",
		func(c *typical.Chemistry) band.Band[float64] { return c.LongDepth }),
	constantBy(BatteryLimitDepth, "depth at the limit", bankMemory,
		func(c *typical.Chemistry) band.Band[float64] { return c.LimitDepth }),
	tradeConstant(BatteryAgeing, "capacity left near the end of life", "IEEE 485 sizes for 1.25 times the load, from memory", "a battery counts as worn out at 80 % of its rating", typical.AgeingShare),
	{Name: "mean voltage for energy", Gives: BatteryCellVolts, Needs: []ID{BatteryChemistry}, Source: "lithium 3.2 V a cell, public reference; lead 2 V a cell", Basis: Practice,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: band.Exactly(bank.MeanVolts(chemistry(v), 12).Volts()), Why: "six lead cells of 2 V or four lithium cells of 3.2 V", Constant: true}, true
		}},

	{Name: "air temperature unless said", Gives: AirTemp, Source: bankMemory, Basis: Estimate,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: typical.BatteryAirTemp, Why: "a mild day unless you say"}, true
		}},
	{Name: "doubt past the battery figures", Gives: BatteryColdDoubt, Needs: []ID{AirTemp, BatteryChemistry}, Source: bankMemory, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			low, high := bank.TemperatureRange(chemistry(v))
			t := v.Temperature(AirTemp)
			return Guess{Value: band.Of(0.6, 1, 1.1), Why: "at a temperature that no table of batteries reaches", Constant: true}, t < low || t > high
		}},
	{Name: "capacity left at this temperature", Gives: BatteryCold, Needs: []ID{AirTemp, BatteryChemistry}, May: []ID{BatteryColdDoubt}, Source: ieeeSource, Basis: Standard,
		Formula: "what {battery.chemistry} batteries give at {temperature.air}",
		Compute: coldFactor},

	constantBy(BatteryDensity, "weight of 100 Ah", bankMemory,
		func(c *typical.Chemistry) band.Band[float64] { return typical.PoundsOf(c.PoundsPer100Ah) }),
	{Name: "weight of each battery by its capacity", Gives: BatteryMass, Needs: []ID{BatteryEach, BatteryVoltage, BatteryDensity, BatteryChemistry}, May: []ID{BatteryGroup}, Source: bankMemory, Basis: Estimate,
		When:    func(v View) bool { return !leadCase(v) },
		Formula: "{battery.each} / 100 Ah x {battery.voltage} / 12 V x {battery.mass-per-100ah}",
		Compute: func(v View) (float64, error) {
			return v.Of(BatteryEach) / 100 * v.Of(BatteryVoltage) / 12 * v.Of(BatteryDensity), nil
		}},
	{Name: "weight of each battery by its case size", Gives: BatteryMass, Needs: []ID{BatteryGroup, BatteryChemistry}, Source: bankMemory, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			g, _ := bank.GroupOf(v.Word(BatteryGroup))
			t := typical.GroupBatteryOf(g.Name)
			if t == nil || !chemistry(v).Lead() {
				return Guess{}, false
			}
			return Guess{Value: typical.PoundsOf(t.Pounds), Why: "usual for a lead-acid group " + g.Name, Constant: true}, true
		}},
}

// groupCapacity is the usual capacity of a battery in a case size.
func groupCapacity(g bank.Group, c bank.Chemistry) (band.Band[float64], bool) {
	if c == bank.Lithium {
		if t := typical.GroupBatteryOf(g.Name); t != nil && t.LithiumA.Nominal > 0 {
			return t.LithiumA, true
		}
		return band.Band[float64]{}, false
	}
	if g.Capacity.Nominal > 0 {
		return band.Band[float64]{Low: float64(g.Capacity.Low), Nominal: float64(g.Capacity.Nominal), High: float64(g.Capacity.High)}, true
	}
	b, ok := typical.UnratedCapacity[g.Name]
	return b, ok
}

// leadCase reports whether the batteries are lead in a case size of known weight.
func leadCase(v View) bool {
	g, ok := bank.GroupOf(v.Word(BatteryGroup))
	return ok && chemistry(v).Lead() && typical.GroupBatteryOf(g.Name) != nil
}

// coldFactor goes past the cold end of the published range with a word and a wider
// band, and refuses where a battery may give nothing. Heat adds nothing.
func coldFactor(v View) (float64, error) {
	c, t := chemistry(v), v.Temperature(AirTemp)
	low, high := bank.TemperatureRange(c)
	switch {
	case t < low:
		v.Doubt("colder than the battery figures reach: the capacity left is carried on past the table, and may be less")
	case t > high:
		v.Doubt("hotter than the battery figures reach: heat adds no run time and wears batteries out")
	}
	f, err := bank.Beyond(c, min(t, high))
	if err != nil {
		return 0, &RangeError{Cell: AirTemp, Value: t.Celsius(), Text: "too cold for a promise: a low lead-acid battery freezes, lithium switches itself off; keep the batteries warm"}
	}
	if v.Has(BatteryColdDoubt) {
		f = min(f*v.Of(BatteryColdDoubt), 1)
	}
	return f, nil
}

func number(x float64) string { return strconv.FormatFloat(x, 'g', 6, 64) }
