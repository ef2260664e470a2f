package sheet

import (
	"math"
	"strconv"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/bank"
	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// Inner cells of the battery bank. "Each" is one battery as bought, "the bank"
// is all of them at the system's voltage.
var (
	// BatterySetVolts is what the batteries in hand make together by their
	// count and layout alone; unknown where no count was said.
	BatterySetVolts   = inner("battery.set-volts", unit.Volt, "Voltage the batteries make")
	BankSeries        = inner("bank.series", unit.Count, "Batteries in series")
	BankStrings       = inner("bank.strings", unit.Count, "Strings side by side")
	BatteryExponent   = inner("battery.peukert", unit.Factor, "Peukert exponent")
	BatteryHourRate   = inner("battery.hour-rate", unit.Hour, "Hours at which the capacity is rated")
	BatteryCold       = inner("battery.cold-factor", unit.Fraction, "Capacity left at this temperature")
	BatteryLongDepth  = inner("battery.depth-long-life", unit.Fraction, "Depth for a long life")
	BatteryLimitDepth = inner("battery.depth-limit", unit.Fraction, "Depth at the limit")
	BatteryAgeing     = inner("battery.ageing", unit.Fraction, "Capacity left near the end of life")
	BatteryCellVolts  = inner("battery.energy-volts", unit.Volt, "Mean voltage of a 12-volt battery")
	// BankFullVolts is what motor and breaker meet on a bank under charge.
	BankFullVolts  = inner("bank.full-volts", unit.Volt, "Bank voltage while charging")
	BatteryMass    = inner("battery.mass", unit.Weight, "Weight of each battery")
	BatteryDensity = inner("battery.mass-per-100ah", unit.Weight, "Weight of 100 Ah at 12 volts")
	// BankNeed is the capacity that the day asks for, BatteryEach the capacity
	// of one battery, in hand or still to be bought.
	BankNeed    = inner("bank.need", unit.AmpHour, "Capacity needed")
	BatteryEach = inner("battery.each", unit.AmpHour, "Capacity of each battery")
	BatteryCase = word("battery.case", "Case size that holds it")
	// RunDepth is the share of the charge that a run time uses: of a bank in
	// hand up to the limit, of one still to be bought what it was sized for.
	RunDepth      = inner("runtime.depth", unit.Fraction, "Share of the charge used")
	RuntimeFull50 = inner("runtime.full-long-life", unit.Hour, "Run time at full throttle, to the depth for a long life")
	RuntimeUse50  = inner("runtime.cruise-long-life", unit.Hour, "Run time in use, to the depth for a long life")
	// RuntimeHold is how long the boat is held by what it can hold all day.
	RuntimeHold   = inner("runtime.hold", unit.Hour, "Run time when holding all day")
	RuntimeHold50 = inner("runtime.hold-long-life", unit.Hour, "Run time when holding all day, to the depth for a long life")
	DutyHours     = inner("duty.hours", unit.Hour, "Hours of the whole profile")
	DutyCharge    = inner("duty.charge", unit.AmpHour, "Charge the profile takes, by Peukert")
	// BankProtection is the continuous current that a lithium battery's own
	// protection must let through.
	BankProtection = inner("bank.protection-current", unit.Ampere, "Continuous current the protection must pass")
)

const (
	peukertSource = "Peukert's law with the hour rate, capped at the rated charge below the rated current"
	bciSource     = "BCI group sizes, usual 20-hour capacities, public reprint"
	ieeeSource    = "IEEE 485 Table 1, published polynomial, for lead; for lithium from memory"
	reserveSource = "Peukert's law at the 25 A of the BCI reserve test"
	bankPractice  = typical.CommonPractice
	bankMemory    = typical.FromMemory
)

// chemistry is that of the batteries; flooded, which promises the least, where
// the word is unknown.
func chemistry(v View) bank.Chemistry {
	c, _ := bank.ChemistryOf(v.Word(BatteryChemistry))
	return c
}

func usualOf(v View) *typical.Chemistry { return typical.ChemistryOf(v.Word(BatteryChemistry)) }

// constantBy makes the row of a property that every chemistry has.
func constantBy(gives ID, name, source string, of func(c *typical.Chemistry) band.Band[float64]) Row {
	return Row{Name: name, Gives: gives, Needs: []ID{BatteryChemistry}, Source: source, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			c := usualOf(v)
			return Guess{Value: of(c), Why: "usual for " + c.Word + " batteries", Constant: true}, true
		}}
}

// tradeConstant makes the row of a property of the trade.
func tradeConstant(gives ID, name, source, why string, b band.Band[float64]) Row {
	return Row{Name: name, Gives: gives, Source: source, Basis: Estimate,
		Assume: func(View) (Guess, bool) { return Guess{Value: b, Why: why, Constant: true}, true }}
}

// ratedBank is the bank as Peukert's law sees it.
func ratedBank(v View) bank.Battery {
	return bank.Battery{Capacity: v.Charge(BankCapacity), HourRate: v.Hours(BatteryHourRate), Exponent: v.Of(BatteryExponent)}
}

var bankRows = joinRows(batteryRows, layoutRows, needRows, bankFigureRows, depthRows,
	runtimeRows(RuntimeFull, MotorCurrent, RuntimeFull50, "full throttle"),
	dutyRows,
	runtimeRows(RuntimeCruise, CruiseCurrent, RuntimeUse50, "use"),
	runtimeRows(RuntimeHold, HoldDayCurrent, RuntimeHold50, "holding"),
	rangeRows)

func joinRows(groups ...[]Row) []Row {
	var all []Row
	for _, g := range groups {
		all = append(all, g...)
	}
	return all
}

// batteryRows: one battery.
var batteryRows = []Row{
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
		Formula: "500 Ah x ({battery.reserve} / 20 h)^(1/{battery.peukert})",
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
	{Name: "capacity left at this temperature", Gives: BatteryCold, Needs: []ID{AirTemp, BatteryChemistry}, Source: ieeeSource, Basis: Standard,
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

// coldFactor holds the ends of the published range and says so.
func coldFactor(v View) (float64, error) {
	c, t := chemistry(v), v.Temperature(AirTemp)
	low, high := bank.TemperatureRange(c)
	switch {
	case t < low:
		v.Warn("colder than the battery figures reach: expect less than is shown")
	case t > high:
		v.Warn("hotter than the battery figures reach: heat does not add run time and wears batteries out")
	}
	return bank.CapacityFactor(c, min(max(t, low), high))
}

func number(x float64) string { return strconv.FormatFloat(x, 'g', 6, 64) }

// layoutRows: how the batteries are joined.
var layoutRows = []Row{
	{Name: "layout unless said", Gives: BatteryLayout, Needs: []ID{BatteryCount, BatteryVoltage}, May: []ID{MotorVoltage}, Source: bankPractice, Basis: Practice,
		Assume: assumeLayout},
	{Name: "voltage of batteries in series", Gives: BatterySetVolts, Needs: []ID{BatteryCount, BatteryVoltage, BatteryLayout}, Source: bankPractice, Basis: Practice,
		When:    func(v View) bool { return v.Word(BatteryLayout) == "series" },
		Formula: "{battery.count} x {battery.voltage}, joined end to end",
		Compute: func(v View) (float64, error) { return v.Of(BatteryCount) * v.Of(BatteryVoltage), nil }},
	{Name: "voltage of batteries side by side", Gives: BatterySetVolts, Needs: []ID{BatteryCount, BatteryVoltage, BatteryLayout}, Source: bankPractice, Basis: Practice,
		When:    func(v View) bool { return v.Word(BatteryLayout) == "parallel" },
		Formula: "{battery.voltage}, joined side by side",
		Compute: func(v View) (float64, error) { return v.Of(BatteryVoltage), nil }},
	{Name: "voltage of two strings side by side", Gives: BatterySetVolts, Needs: []ID{BatteryCount, BatteryVoltage, BatteryLayout}, Source: bankPractice, Basis: Practice,
		When: func(v View) bool {
			return v.Word(BatteryLayout) == "series-parallel" && math.Mod(v.Of(BatteryCount), 2) == 0
		},
		Formula: "{battery.count} / 2 x {battery.voltage}, two strings side by side",
		Compute: func(v View) (float64, error) { return v.Of(BatteryCount) / 2 * v.Of(BatteryVoltage), nil }},

	{Name: "voltage of one pack said", Gives: BatterySetVolts, Needs: []ID{BatteryVoltage}, Said: []ID{BatteryCount}, Source: bankPractice, Basis: Practice,
		When:    func(v View) bool { return v.Said(BatteryVoltage) && !v.Said(BatteryCount) },
		Formula: "{battery.voltage}, one battery",
		Compute: func(v View) (float64, error) { return v.Of(BatteryVoltage), nil }},
	// Where neither the motor nor the boat tells, batteries in hand do: the
	// row stands behind those of the motor, before its last resort of 12 volts.
	{Name: "voltage of the batteries in hand", Gives: SystemVoltage, Needs: []ID{BatterySetVolts, BatteryLayout}, Said: []ID{BatteryCount}, Source: bankPractice, Basis: Practice,
		When:    func(v View) bool { return v.Said(BatteryCount) },
		Formula: "{battery.set-volts} of {battery.count} in {battery.layout}",
		Compute: func(v View) (float64, error) { return v.Of(BatterySetVolts), nil }},

	{Name: "batteries in series", Gives: BankSeries, Needs: []ID{RatedVolts, BatteryVoltage}, Source: bankPractice, Basis: Practice,
		Formula: "{motor.volts} / {battery.voltage}",
		Compute: func(v View) (float64, error) {
			n, err := bank.SeriesFor(v.Voltage(RatedVolts), v.Voltage(BatteryVoltage))
			return float64(n), err
		}},
	{Name: "strings from the batteries in hand", Gives: BankStrings, Needs: []ID{BatteryCount, BankSeries}, Source: bankPractice, Basis: Practice,
		Formula: "{battery.count} / {bank.series}, whole strings",
		Compute: stringsInHand},
	{Name: "strings for the hours said", Gives: BankStrings, Needs: []ID{BankNeed, BatteryChemistry, BatteryVoltage}, May: []ID{BatteryCapacity}, Said: []ID{UseHours, UseDistance}, Source: bankPractice, Basis: Practice, Ladder: true,
		When: func(v View) bool {
			return !v.Has(BatteryCapacity) && hoursSaid(v)
		},
		Formula: "{bank.need} in batteries of a usual size, whole strings",
		Compute: func(v View) (float64, error) {
			sizes := sizesOf(v)
			return max(1, math.Ceil(v.Of(BankNeed)/sizes[len(sizes)-1]-1e-9)), nil
		}},
	{Name: "one string unless said", Gives: BankStrings, Source: bankPractice, Basis: Practice,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: band.Exactly(1.0), Why: "one set of batteries unless you say", Constant: true}, true
		}},
	{Name: "batteries needed", Gives: BankCount, Needs: []ID{BankSeries, BankStrings}, Source: bankPractice, Basis: Practice, Ladder: true,
		Formula: "{bank.series} in series x {bank.strings} side by side",
		Compute: func(v View) (float64, error) { return v.Of(BankSeries) * v.Of(BankStrings), nil }},
	{Name: "batteries as said", Gives: BankCount, Needs: []ID{BatteryCount}, Source: bankPractice, Basis: Said,
		Formula: "{battery.count}",
		Compute: func(v View) (float64, error) { return v.Of(BatteryCount), nil }},
}

// assumeLayout arranges batteries so that they make the motor's voltage, and
// end to end where that is not known: two or three batteries on a small boat are
// there for the voltage.
func assumeLayout(v View) (Guess, bool) {
	count, each := int(math.Round(v.Of(BatteryCount))), v.Voltage(BatteryVoltage)
	if v.Has(MotorVoltage) {
		l, err := bank.LayoutFor(v.Voltage(MotorVoltage), each, count)
		switch {
		case err != nil:
		case l.Strings == 1:
			return Guess{Word: "series", Why: "in series, to make the motor's voltage"}, true
		case l.Series == 1:
			return Guess{Word: "parallel", Why: "side by side, since the motor runs on the voltage of one"}, true
		default:
			return Guess{Word: "series-parallel", Why: "in strings, to make the motor's voltage"}, true
		}
	}
	if volts := float64(count) * each.Volts(); volts <= 36 {
		return Guess{Word: "series", Others: []string{"parallel"}, Why: "in series, the usual reason for more than one, unless you say parallel"}, true
	}
	return Guess{Word: "series-parallel", Others: []string{"series", "parallel"}, Why: "in two strings, since in one they would pass 36 volts"}, true
}

// stringsInHand keeps whole strings and says what is left over or missing.
func stringsInHand(v View) (float64, error) {
	count, series := math.Round(v.Of(BatteryCount)), v.Of(BankSeries)
	n := math.Floor(count/series + 1e-9)
	switch {
	case n < 1:
		v.Warn(number(count) + " in hand, but the motor's voltage takes " + number(series) + " in series")
		return 1, nil
	case n*series != count:
		v.Warn(number(count-n*series) + " of the batteries is left over: the motor's voltage takes sets of " + number(series))
	}
	return n, nil
}

// sizesOf are the capacities in which a battery of the kind is sold.
func sizesOf(v View) Ladder { return v.Ladder(BatteryEach, Ladder(usualOf(v).SizesAh)) }

// needRows: the bank that a day asks for.
var needRows = []Row{
	{Name: "hours of the trip", Gives: UseHours, Needs: []ID{UseDistance, CruiseSpeed}, Source: "distance over speed", Basis: Model,
		Formula: "{use.distance} / {cruise.speed}",
		Compute: func(v View) (float64, error) {
			if v.Of(CruiseSpeed) <= 0 {
				return 0, &RangeError{Cell: CruiseSpeed, Value: v.Of(CruiseSpeed), Text: "a trip needs a speed above nothing"}
			}
			return v.Of(UseDistance) / v.Of(CruiseSpeed) / 3600, nil
		}},
	{Name: "hours of a day unless said", Gives: UseHours, Source: bankMemory, Basis: Estimate,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: typical.HoursADay, Why: "a day of 8 hours on the water unless you say"}, true
		}},
	{Name: "bank for the profile", Gives: BankNeed, Needs: append([]ID{DutyHours, BatteryExponent, BatteryHourRate, BatteryLongDepth, BatteryAgeing, BatteryCold}, dutyNeeds...),
		Source: peukertSource, Basis: Model,
		Formula: "smallest bank whose {battery.depth-long-life} x {battery.ageing} x {battery.cold-factor} carries the profile of {duty.hours}",
		Compute: func(v View) (float64, error) { return capacityFor(v, dutyStretches(v)) }},
	steadyNeed("bank for the hours, below the rated current", "{cruise.current} x {use.hours} / "+needShare, true),
	steadyNeed("bank for the hours", "{cruise.current} x {battery.hour-rate} x ({use.hours} / ({battery.hour-rate} x "+needShare+"))^(1/{battery.peukert})", false),
	{Name: "battery in hand", Gives: BatteryEach, Needs: []ID{BatteryCapacity}, Source: "as said, or from its case", Basis: Said,
		Formula: "{battery.capacity}",
		Compute: func(v View) (float64, error) { return v.Of(BatteryCapacity), nil }},
	{Name: "battery of the next usual size", Gives: BatteryEach, Needs: []ID{BankNeed, BankStrings, BatteryChemistry}, Said: []ID{UseHours, UseDistance}, Source: bankMemory, Basis: Estimate, Ladder: true,
		Formula: "next usual size above {bank.need} / {bank.strings}",
		Compute: chooseBattery},
	{Name: "case size that holds it", Gives: BatteryCase, Needs: []ID{BatteryEach, BatteryChemistry}, Source: bciSource, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			g, ok := caseFor(v.Charge(BatteryEach), chemistry(v))
			return Guess{Word: g, Why: "smallest case that usually holds it", Constant: true}, ok
		}},
}

// chooseBattery takes the next size up. A day that nobody described is no reason
// to sell a second set: the largest usual size, and a word about it.
func chooseBattery(v View) (float64, error) {
	sizes, each := sizesOf(v), v.Of(BankNeed)/v.Of(BankStrings)
	if size, ok := sizes.Next(each); ok {
		return size, nil
	}
	if hoursSaid(v) {
		v.Warn("more than a usual 12-volt battery holds: golf-cart batteries, a larger case, or lithium")
		return each, nil
	}
	v.Warn("a whole day may ask for more than one set of the largest usual battery holds: say how many hours")
	return sizes[len(sizes)-1], nil
}

// hoursSaid reports whether the length of the day came from a person.
func hoursSaid(v View) bool { return v.Said(UseHours) || v.Said(UseDistance) || len(v.Duty()) > 0 }

// needShare is what a bank to be bought may be asked for.
const needShare = "({battery.depth-long-life} x {battery.ageing} x {battery.cold-factor})"

// steadyNeed gives the bank for hours at one current: Peukert's law solved for
// the capacity, or plain division where the current is below the rated one.
func steadyNeed(name, formula string, slow bool) Row {
	return Row{Name: name, Gives: BankNeed, Needs: []ID{CruiseCurrent, UseHours, BatteryExponent, BatteryHourRate, BatteryLongDepth, BatteryAgeing, BatteryCold},
		Source: peukertSource, Basis: Model, Formula: formula,
		When: func(v View) bool { return slow == (v.Of(UseHours) >= v.Of(BatteryHourRate)*usableShare(v)) },
		Compute: func(v View) (float64, error) {
			one := [1]bank.Stretch{{Current: v.Current(CruiseCurrent), Hours: v.Hours(UseHours)}}
			return capacityFor(v, one[:])
		}}
}

func usableShare(v View) float64 {
	return v.Of(BatteryLongDepth) * v.Of(BatteryAgeing) * v.Of(BatteryCold)
}

// caseFor is the smallest of the common 12-volt lead-acid cases whose usual
// range reaches a capacity.
func caseFor(each unit.Charge, c bank.Chemistry) (string, bool) {
	if !c.Lead() {
		return "", false
	}
	for _, name := range []string{"U1", "24", "27", "31", "4D", "8D"} {
		if g, ok := bank.GroupOf(name); ok && each <= (g.Capacity.Nominal+g.Capacity.High)/2 {
			return name, true
		}
	}
	return "", false
}

func capacityFor(v View, duty []bank.Stretch) (float64, error) {
	c, err := bank.CapacityFor(duty, v.Hours(BatteryHourRate), v.Of(BatteryExponent), usableShare(v))
	return c.AmpereHours(), err
}

// bankFigureRows: capacity, energy and weight.
var bankFigureRows = []Row{
	{Name: "bank in hand", Gives: BankCapacity, Needs: []ID{BatteryCapacity, BankStrings}, Source: "series adds volts, side by side adds ampere hours", Basis: Practice,
		Formula: "{battery.capacity} x {bank.strings} side by side; series adds no Ah",
		Compute: func(v View) (float64, error) { return v.Of(BatteryCapacity) * v.Of(BankStrings), nil }},
	{Name: "bank needed", Gives: BankCapacity, Needs: []ID{BankNeed}, Source: peukertSource, Basis: Model,
		Formula: "{bank.need}",
		Compute: func(v View) (float64, error) { return v.Of(BankNeed), nil }},
	{Name: "bank energy", Gives: BankEnergy, Needs: []ID{BankCapacity, RatedVolts, BatteryCellVolts}, Source: "charge times mean voltage", Basis: Model,
		Formula: "{bank.capacity} x {motor.volts} x {battery.energy-volts} / 12 V",
		Compute: func(v View) (float64, error) {
			volts := unit.Volts(v.Of(RatedVolts) * v.Of(BatteryCellVolts) / 12)
			return bank.Energy(v.Charge(BankCapacity), volts).WattHours(), nil
		}},
	{Name: "bank voltage while charging", Gives: BankFullVolts, Needs: []ID{RatedVolts, BatteryChemistry}, Source: "lead 2.4 V, lithium iron phosphate 3.65 V a cell, public references", Basis: Practice,
		Formula: "{battery.chemistry} of {motor.volts} nominal, at the end of charging",
		Compute: func(v View) (float64, error) {
			return bank.ChargingVolts(chemistry(v), v.Voltage(RatedVolts)).Volts(), nil
		}},
	{Name: "bank weight", Gives: BankWeight, Needs: []ID{BankCount, BatteryMass}, Source: "sum of the batteries", Basis: Estimate,
		Formula: "{bank.count} x {battery.mass}",
		Compute: func(v View) (float64, error) { return v.Of(BankCount) * v.Of(BatteryMass), nil }},
	{Name: "protection current of lithium batteries", Gives: BankProtection, Needs: []ID{MotorCurrent, BatteryChemistry}, Source: bankPractice, Basis: Practice,
		When:    func(v View) bool { return chemistry(v) == bank.Lithium },
		Formula: "1.25 x {motor.current}",
		Compute: func(v View) (float64, error) {
			v.Warn("each lithium battery must pass this current all the time, and its maker must allow it in series; its own cut-off leaves no thrust and gives no warning")
			return bank.ProtectionCurrent(v.Current(MotorCurrent)).Amperes(), nil
		}},
}

// depthRows: how far down a run time goes. A bank in hand is run to the limit of
// its chemistry, with the time for a long life beside it; a bank still to be
// bought was sized for a long life and old age, and its run time is that.
var depthRows = []Row{
	{Name: "share used of a bank in hand", Gives: RunDepth, Needs: []ID{BatteryCapacity, BatteryLimitDepth}, Source: bankPractice, Basis: Practice,
		Formula: "{battery.depth-limit}, the limit, of batteries as good as new",
		Compute: func(v View) (float64, error) { return v.Of(BatteryLimitDepth), nil }},
	{Name: "share used of a bank to be bought", Gives: RunDepth, Needs: []ID{BatteryLongDepth, BatteryAgeing}, Source: bankPractice, Basis: Practice,
		Formula: "{battery.depth-long-life} for a long life x {battery.ageing} when old",
		Compute: func(v View) (float64, error) { return v.Of(BatteryLongDepth) * v.Of(BatteryAgeing), nil }},
}

// runtimeRows give a run time at a steady current. Below the rated current the
// law is capped, and the row shows plain division.
func runtimeRows(figure, current, longLife ID, name string) []Row {
	row := func(gives, depth ID, name string, when func(View) bool, slow bool) Row {
		amps := "{" + current.String() + "}"
		formula := "{battery.hour-rate} x ({bank.capacity} / (" + amps + " x {battery.hour-rate}))^{battery.peukert}"
		if slow {
			name += ", below the rated current"
			formula = "{bank.capacity} / " + amps
		}
		return Row{Name: name, Gives: gives, Source: peukertSource, Basis: Model,
			Needs: []ID{BankCapacity, current, BatteryExponent, BatteryHourRate, depth, BatteryCold, BatteryChemistry},
			When: func(v View) bool {
				return slow == (v.Current(current) <= ratedBank(v).RatedCurrent()) && (when == nil || when(v))
			},
			Formula: "{" + depth.String() + "} x {battery.cold-factor} x " + formula,
			Compute: func(v View) (float64, error) {
				t, err := ratedBank(v).Time(v.Current(current))
				return t.Hours() * v.Of(depth) * v.Of(BatteryCold), err
			}}
	}
	long := "run time at " + name + " for a long life"
	shown := "run time at " + name
	rows := []Row{
		row(longLife, BatteryLongDepth, long, isLead, true),
		row(longLife, BatteryLongDepth, long, isLead, false),
		row(figure, RunDepth, shown, nil, true),
		row(figure, RunDepth, shown, nil, false),
	}
	for i := range rows {
		if rows[i].Gives == figure {
			rows[i].May = []ID{longLife}
		}
	}
	return rows
}

func isLead(v View) bool { return chemistry(v).Lead() }

// What a duty profile is reckoned from.
var (
	dutyNeeds = []ID{MotorCurrent, MotorSpeeds, MotorIdle, DialExponent}
)

// dutyStretches turns the throttles that were said into currents.
func dutyStretches(v View) []bank.Stretch {
	duty := v.Duty()
	out := make([]bank.Stretch, len(duty))
	for i, s := range duty {
		out[i] = bank.Stretch{Current: dutyCurrent(v, s.Throttle), Hours: s.Hours}
	}
	return out
}

// dutyCurrent is the current at a throttle: the dial's share of full current by
// the kind of control, and the idle draw of a variable one, as for the
// current in use.
func dutyCurrent(v View, throttle float64) unit.Current {
	full := v.Of(MotorCurrent)
	if v.Word(MotorSpeeds) == "fixed" {
		return unit.Current(full * prop.ResistorShare(prop.FixedThrust(throttle)))
	}
	return unit.Current(min(full, full*prop.VariableCurrent(throttle, v.Of(DialExponent))+v.Of(MotorIdle)))
}

// dutyRows: a profile of throttles in place of one current.
var dutyRows = []Row{
	{Name: "hours of the profile", Gives: DutyHours, Source: "as said", Basis: Said,
		When:    func(v View) bool { return len(v.Duty()) > 0 },
		Formula: "sum of the hours said",
		Compute: func(v View) (float64, error) {
			var h unit.Duration
			for _, s := range v.Duty() {
				h += s.Hours
			}
			return h.Hours(), nil
		}},
	{Name: "charge of the profile", Gives: DutyCharge, Needs: append([]ID{DutyHours, BankCapacity, BatteryExponent, BatteryHourRate}, dutyNeeds...),
		Source: peukertSource, Basis: Model,
		Formula: "sum of hours x current, each weighted by (current / rated current)^({battery.peukert} - 1)",
		Compute: func(v View) (float64, error) {
			p, err := ratedBank(v).Empty(dutyStretches(v))
			return p.Used.AmpereHours(), err
		}},
	{Name: "run time of the profile, for a long life", Gives: RuntimeUse50, Needs: []ID{DutyCharge, DutyHours, BankCapacity, BatteryLongDepth, BatteryCold, BatteryChemistry}, Source: peukertSource, Basis: Model,
		When:    isLead,
		Formula: "{battery.depth-long-life} x {battery.cold-factor} x {bank.capacity} / {duty.charge} x {duty.hours}",
		Compute: func(v View) (float64, error) { return profileTime(v, BatteryLongDepth) }},
	{Name: "run time of the profile", Gives: RuntimeCruise, Needs: []ID{DutyCharge, DutyHours, BankCapacity, RunDepth, BatteryCold}, May: []ID{RuntimeUse50}, Source: peukertSource, Basis: Model,
		Formula: "{runtime.depth} x {battery.cold-factor} x {bank.capacity} / {duty.charge} x {duty.hours}, the profile over and over",
		Compute: func(v View) (float64, error) { return profileTime(v, RunDepth) }},
}

// profileTime is how long a profile could be kept up, as often as it fits.
func profileTime(v View, depth ID) (float64, error) {
	if v.Of(DutyCharge) <= 0 {
		return 0, &RangeError{Cell: DutyCharge, Value: v.Of(DutyCharge), Text: "a profile needs some throttle and some time"}
	}
	return v.Of(depth) * v.Of(BatteryCold) * v.Of(BankCapacity) / v.Of(DutyCharge) * v.Of(DutyHours), nil
}

// rangeRows: how far.
var rangeRows = []Row{
	{Name: "range in use", Gives: RangeCruise, Needs: []ID{CruiseSpeed, RuntimeCruise}, Source: "speed times time, still water", Basis: Model,
		Formula: "{cruise.speed} x {runtime.cruise}, there and back together",
		Compute: func(v View) (float64, error) { return v.Of(CruiseSpeed) * v.Of(RuntimeCruise) * 3600, nil }},
}
