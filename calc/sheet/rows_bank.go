package sheet

import (
	"math"
	"slices"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/bank"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// Inner cells of the battery bank. "Each" is one battery as bought, "the bank"
// is all of them at the system's voltage.
var (
	// BatterySetVolts is what the batteries in hand make together by their
	// count and layout alone; unknown where no count was said.
	BatterySetVolts   = inner("battery.set-volts", unit.Volt, "Voltage the batteries make")
	BankSeries        = inner("bank.series", unit.Count, "Batteries in a string")
	BankStrings       = inner("bank.strings", unit.Count, "Strings")
	BatteryExponent   = inner("battery.peukert", unit.Factor, "Peukert exponent")
	BatteryHourRate   = inner("battery.hour-rate", unit.Hour, "Hours at which the capacity is rated")
	BatteryCold       = inner("battery.cold-factor", unit.Fraction, "Capacity left at this temperature")
	BatteryColdDoubt  = inner("battery.cold-doubt", unit.Factor, "Capacity left, against the figures carried on")
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
	BankNeed = inner("bank.need", unit.AmpHour, "Capacity needed")
	// BankLimitNeed is the capacity that carries the hours said when new batteries
	// are drawn down to the limit: it decides how many strings are sold. What a
	// further string buys is a longer life, and BankSpareStrings says how many that
	// would take.
	BankLimitNeed    = inner("bank.need-limit", unit.AmpHour, "Capacity needed when drawn to the limit")
	BankSpareStrings = inner("bank.strings-long-life", unit.Count, "Strings for a long life")
	BatteryEach      = inner("battery.each", unit.AmpHour, "Capacity of each battery")
	BatteryCase      = word("battery.case", "Case size that holds it")
	// RunDepth is the share of the charge that a run time uses.
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
	peukertSource = "Peukert's law by hour rate; under the rated current no more than the rated charge"
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

var bankRows = slices.Concat(batteryRows, layoutRows, needRows, bankFigureRows, depthRows,
	runtimeRows(RuntimeFull, MotorCurrent, RuntimeFull50, BatteryLimitDepth, "full throttle"),
	dutyRows,
	runtimeRows(RuntimeCruise, CruiseCurrent, RuntimeUse50, RunDepth, "use"),
	runtimeRows(RuntimeHold, HoldDayCurrent, RuntimeHold50, BatteryLimitDepth, "holding"),
	rangeRows)

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
	{Name: "strings for a long life", Gives: BankSpareStrings, Needs: []ID{BankNeed, BatteryChemistry}, May: []ID{BatteryCapacity}, Source: bankPractice, Basis: Practice, Ladder: true,
		When:    noBattery,
		Formula: "{bank.need} in {battery.chemistry} batteries of a usual size, whole strings",
		Compute: func(v View) (float64, error) { return stringsFor(v, BankNeed), nil }},
	{Name: "strings for the hours said", Gives: BankStrings, Needs: []ID{BankLimitNeed, BatteryChemistry}, May: []ID{BatteryCapacity, BankSpareStrings, MotorCount}, Said: []ID{UseHours, UseDistance}, Source: bankPractice, Basis: Practice, Ladder: true,
		When: func(v View) bool {
			return noBattery(v) && hoursSaid(v)
		},
		Formula: "{bank.need-limit} in {battery.chemistry} batteries of a usual size, whole strings, one for each motor at least",
		Compute: func(v View) (float64, error) { return max(stringsFor(v, BankLimitNeed), v.Of(MotorCount)), nil }},
	{Name: "a set for each of several motors", Gives: BankStrings, Needs: []ID{MotorCount}, May: []ID{BatteryCapacity}, Source: bankPractice, Basis: Practice,
		When: func(v View) bool { return noBattery(v) && v.Of(MotorCount) > 1 },
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: band.Exactly(v.Of(MotorCount)), Why: "a set of batteries for each motor unless you say", Constant: true}, true
		}},
	{Name: "one string unless said", Gives: BankStrings, Source: bankPractice, Basis: Practice,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: band.Exactly(1.0), Why: "one set of batteries unless you say", Constant: true}, true
		}},
	{Name: "batteries needed", Gives: BankCount, Needs: []ID{BankSeries, BankStrings}, Source: bankPractice, Basis: Practice, Ladder: true,
		Formula: "{bank.series} x {bank.strings}, in series and side by side",
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

// nearEnough is how far a battery may fall short of the capacity that hours
// ask for: a twentieth is less than the hours are known by (common practice, no
// published source).
const nearEnough = 0.05

// stringsFor is how many strings of the largest usual battery hold a capacity.
func stringsFor(v View, need ID) float64 {
	return max(1, math.Ceil(v.Of(need)/largestOf(v)-nearEnough))
}

// largestOf is the largest battery of the kind that is usual.
func largestOf(v View) float64 {
	sizes := sizesOf(v)
	return sizes[len(sizes)-1]
}

// sizesOf are the capacities in which a battery of the kind is sold.
func sizesOf(v View) Ladder { return v.Ladder(BatteryEach, Ladder(usualOf(v).SizesAh)) }

// berths reports a motor that only moves a boat in and out of its berth: as said,
// or that of a sailboat of which nobody said that it fishes.
func berths(v View) bool {
	return v.Said(UseDocking) || v.Said(BoatHull) && v.Word(BoatHull) == typical.Sailboat && !v.Said(UseStyle)
}

// needRows: the bank that a day asks for.
var needRows = []Row{
	{Name: "hours of the trip", Gives: UseHours, Needs: []ID{UseDistance, CruiseSpeed}, Source: "distance over speed", Basis: Model,
		Formula: "{use.distance} / {cruise.speed in km/h}",
		Compute: func(v View) (float64, error) {
			if v.Of(CruiseSpeed) <= 0 {
				return 0, &RangeError{Cell: CruiseSpeed, Value: v.Of(CruiseSpeed), Text: "a trip needs a speed above nothing"}
			}
			return v.Of(UseDistance) / v.Of(CruiseSpeed) / 3600, nil
		}},
	{Name: "hours of a berthing motor unless said", Gives: UseHours, Said: []ID{UseDocking, BoatHull, UseStyle}, Source: bankMemory, Basis: Estimate,
		When: berths,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: typical.HoursInHarbour, Why: "about an hour in and out of the berth unless you say"}, true
		}},
	{Name: "hours of a day unless said", Gives: UseHours, Source: bankMemory, Basis: Estimate,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: typical.HoursADay, Why: "a day of 8 hours on the water unless you say"}, true
		}},
	{Name: "bank for the profile", Gives: BankNeed, Needs: append([]ID{DutyHours, BatteryExponent, BatteryHourRate, BatteryLongDepth, BatteryAgeing, BatteryCold}, dutyNeeds...),
		Source: peukertSource, Basis: Model,
		Spell: func(v View, write func(float64, unit.Form) string) string {
			return spellNeed(v, write, v.Of(BankNeed), needShares, dutyStretches(v))
		},
		Formula: "smallest bank that carries the profile of {duty.hours}, full throttle {motor.current}, on " + needShare + " of it, by Peukert's exponent {battery.peukert} from the {battery.hour-rate} rate",
		Compute: func(v View) (float64, error) { return capacityFor(v, dutyStretches(v)) }},
	steadyNeed("bank for the hours, below the rated current", "{cruise.current} x {use.hours} / "+needShare, true),
	steadyNeed("bank for the hours", "{cruise.current} x {battery.hour-rate} x ({use.hours} / ({battery.hour-rate} x "+needShare+"))^(1 / {battery.peukert})", false),
	{Name: "bank for the profile, drawn to the limit", Gives: BankLimitNeed, Needs: append([]ID{DutyHours, BatteryExponent, BatteryHourRate, BatteryLimitDepth, BatteryCold}, dutyNeeds...), May: []ID{BatteryCapacity},
		Source: peukertSource, Basis: Model,
		When: noBattery,
		Spell: func(v View, write func(float64, unit.Form) string) string {
			return spellNeed(v, write, v.Of(BankLimitNeed), limitShares, dutyStretches(v))
		},
		Formula: "smallest bank that carries the profile of {duty.hours}, full throttle {motor.current}, on " + limitShare + " of it, by Peukert's exponent {battery.peukert} from the {battery.hour-rate} rate",
		Compute: func(v View) (float64, error) { return limitCapacity(v, dutyStretches(v)) }},
	{Name: "bank for the hours, drawn to the limit", Gives: BankLimitNeed, Needs: []ID{CruiseCurrent, UseHours, BatteryExponent, BatteryHourRate, BatteryLimitDepth, BatteryCold}, May: []ID{BatteryCapacity},
		Source: peukertSource, Basis: Model,
		When: noBattery,
		Spell: func(v View, write func(float64, unit.Form) string) string {
			return spellNeed(v, write, v.Of(BankLimitNeed), limitShares, []bank.Stretch{{Current: v.Current(CruiseCurrent), Hours: v.Hours(UseHours)}})
		},
		Formula: "smallest bank that gives {cruise.current} for {use.hours} on " + limitShare + " of it, by Peukert's exponent {battery.peukert} from the {battery.hour-rate} rate",
		Compute: func(v View) (float64, error) {
			one := [1]bank.Stretch{{Current: v.Current(CruiseCurrent), Hours: v.Hours(UseHours)}}
			return limitCapacity(v, one[:])
		}},
	{Name: "battery in hand", Gives: BatteryEach, Needs: []ID{BatteryCapacity}, Source: "as said, or from its case", Basis: Said,
		Formula: "{battery.capacity}",
		Compute: func(v View) (float64, error) { return v.Of(BatteryCapacity), capacityInRange(v) }},
	{Name: "battery of the next usual size", Gives: BatteryEach, Needs: []ID{BankNeed, BankStrings, BatteryChemistry}, May: []ID{BatteryCapacity}, Said: []ID{UseHours, UseDistance}, Source: bankMemory, Basis: Estimate, Ladder: true,
		Formula: "next usual size of {battery.chemistry} battery above {bank.need} / {bank.strings}",
		When:    noBattery,
		Compute: chooseBattery},
	{Name: "case size that holds it", Gives: BatteryCase, Needs: []ID{BatteryEach, BatteryChemistry}, Source: bciSource, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			g, ok := caseFor(v.Charge(BatteryEach), chemistry(v))
			return Guess{Word: g, Why: "smallest case that usually holds it", Constant: true}, ok
		}},
}

// chooseBattery takes the next size up, and the largest where a long life would
// ask for more: a second set is sold for hours that one cannot carry, not for
// a day that nobody described, nor for a longer life that nobody asked for.
func chooseBattery(v View) (float64, error) {
	each := v.Of(BankNeed) / v.Of(BankStrings)
	if size, ok := sizesOf(v).Next(each / (1 + nearEnough)); ok {
		return size, nil
	}
	if hoursSaid(v) {
		v.Warn("drawn further down than spares the batteries, which do carry the hours while they are new")
	} else {
		v.Warn("a whole day may ask for more than one set of the largest usual battery holds: say how many hours")
	}
	return largestOf(v), nil
}

// spared reports whether a bank to be bought is as large as a long life asks
// for.
func spared(v View) bool {
	return v.Of(BankNeed) <= largestOf(v)*v.Of(BankStrings)
}

// noBattery reports that the batteries are still to be chosen.
func noBattery(v View) bool { return !v.Has(BatteryCapacity) }

// capacityInRange refuses what is no battery.
func capacityInRange(v View) error {
	if low, high := 1.0, 2000.0; v.Of(BatteryCapacity) < low || v.Of(BatteryCapacity) > high {
		return &RangeError{Cell: BatteryCapacity, Value: v.Of(BatteryCapacity), Low: low, High: high}
	}
	return nil
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
		When: func(v View) bool { return slow == (v.Of(UseHours) >= v.Of(BatteryHourRate)*usableShare(v)*(1-1e-9)) },
		Compute: func(v View) (float64, error) {
			one := [1]bank.Stretch{{Current: v.Current(CruiseCurrent), Hours: v.Hours(UseHours)}}
			return capacityFor(v, one[:])
		}}
}

// limitShare is what new batteries give at the limit.
const limitShare = "({battery.depth-limit} x {battery.cold-factor})"

func limitCapacity(v View, duty []bank.Stretch) (float64, error) {
	c, err := bank.CapacityFor(duty, v.Hours(BatteryHourRate), v.Of(BatteryExponent), v.Of(BatteryLimitDepth)*v.Of(BatteryCold))
	return c.AmpereHours(), err
}

// What of a bank may be used, for a long life and at the limit.
var (
	needShares  = []ID{BatteryLongDepth, BatteryAgeing, BatteryCold}
	limitShares = []ID{BatteryLimitDepth, BatteryCold}
)

// spellNeed shows that the part of a bank that may be used carries a profile.
func spellNeed(v View, write func(float64, unit.Form) string, ah float64, shares []ID, duty []bank.Stretch) string {
	b := bank.Battery{Capacity: unit.AmpereHours(ah), HourRate: v.Hours(BatteryHourRate), Exponent: v.Of(BatteryExponent)}
	text := "the bank where "
	for _, id := range shares {
		text += write(v.Of(id), unit.Fraction) + " x "
	}
	return text + write(ah, unit.AmpHour) + " = " + spellStretches(duty, b, write)
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
		Formula: "{battery.capacity} x {bank.strings}, side by side; series adds no Ah",
		Compute: func(v View) (float64, error) {
			return v.Of(BatteryCapacity) * v.Of(BankStrings), capacityInRange(v)
		}},
	{Name: "bank of a usual size for a day", Gives: BankCapacity, Needs: []ID{BatteryEach, BankStrings, BankNeed}, May: []ID{BatteryCapacity}, Said: []ID{UseHours, UseDistance}, Source: peukertSource, Basis: Model,
		When:    func(v View) bool { return noBattery(v) && !hoursSaid(v) },
		Formula: "{battery.each} x {bank.strings}, side by side, where a day asks for {bank.need}",
		Compute: func(v View) (float64, error) { return v.Of(BatteryEach) * v.Of(BankStrings), nil }},
	{Name: "bank of the largest usual size for the hours", Gives: BankCapacity, Needs: []ID{BatteryEach, BankStrings, BankNeed, BatteryChemistry}, May: []ID{BatteryCapacity}, Said: []ID{UseHours, UseDistance}, Source: peukertSource, Basis: Model,
		When:    func(v View) bool { return noBattery(v) && !spared(v) },
		Formula: "{battery.each} x {bank.strings}, side by side, where a long life asks for {bank.need}",
		Compute: func(v View) (float64, error) { return v.Of(BatteryEach) * v.Of(BankStrings), nil }},
	{Name: "bank needed", Gives: BankCapacity, Needs: []ID{BankNeed, BatteryChemistry}, May: []ID{BatteryCapacity}, Source: peukertSource, Basis: Model,
		When:    noBattery,
		Formula: "{bank.need}, at least {=the smallest battery of the kind}",
		Term:    func(v View, _ string) (float64, unit.Form) { return sizesOf(v)[0], unit.AmpHour },
		// A short trip needs less than any battery that is sold for a motor.
		Compute: func(v View) (float64, error) { return max(v.Of(BankNeed), sizesOf(v)[0]), nil }},
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
			v.Warn("each lithium battery must carry this current without a break and be meant for series; when it switches itself off, the thrust is gone at once")
			return bank.ProtectionCurrent(v.Current(MotorCurrent)).Amperes(), nil
		}},
}
