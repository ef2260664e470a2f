package sheet

import (
	"errors"
	"slices"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/bank"
	"heronlake.example/ask/calc/charge"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// Inner cells of charging. All are for one battery on its own output.
var (
	ChargeDepth  = inner("charge.depth", unit.Fraction, "Share of the capacity to put back")
	ChargeReturn = inner("charge.return", unit.Factor, "Ampere hours in for each one out")
	ChargeTail   = inner("charge.tail", unit.Hour, "Absorption, when the current tapers")
	ChargeShare  = inner("charge.share", unit.Fraction, "Share of the capacity that a charge current may be")
	ChargeAccept = inner("charge.acceptance", unit.Ampere, "Most the battery should be charged with")
	ChargeNeed   = inner("charge.need", unit.Ampere, "Charge current needed")
	ChargerUsed  = inner("charge.charger", unit.Ampere, "Charger considered")
)

const chargeSource = "ampere hours to return over the hours before absorption; return factor by chemistry"

var chargeRows = slices.Concat(chargeInputRows, chargeFigureRows, costRows)

// chargeInputRows: what has to go back in, and how fast it may.
var chargeInputRows = []Row{
	{Name: "hours to charge unless said", Gives: ChargeHours, Source: bankMemory, Basis: Estimate,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: typical.ChargeOvernight, Why: "overnight, 10 hours, unless you say"}, true
		}},
	{Name: "share to put back into what is left", Gives: ChargeDepth, Needs: []ID{BatteryLeft}, Source: "as said", Basis: Said,
		Formula: "1 - {battery.charge-left}",
		Compute: func(v View) (float64, error) {
			if left := v.Of(BatteryLeft); left < 0 || left >= 1 {
				return 0, &RangeError{Cell: BatteryLeft, Value: left, Low: 0, High: 1}
			}
			return 1 - v.Of(BatteryLeft), nil
		}},
	{Name: "share to put back unless said", Gives: ChargeDepth, Needs: []ID{BatteryChemistry}, Source: bankMemory, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			g := Guess{Value: usualOf(v).ChargeDepth, Why: "half down after a day, unless you say"}
			if chemistry(v) == bank.Lithium {
				g.Why = "four fifths down after a day, unless you say"
			}
			return g, true
		}},
	constantBy(ChargeReturn, "ampere hours in for each one out", "charge efficiency by chemistry, public comparison; return factor of lead from memory",
		func(c *typical.Chemistry) band.Band[float64] { return c.Return }),
	constantBy(ChargeTail, "absorption time", bankMemory,
		func(c *typical.Chemistry) band.Band[float64] { return c.Tail }),
	{Name: "share that a charge current may be", Gives: ChargeShare, Needs: []ID{BatteryChemistry}, Source: "C/10 to C/5 for flooded batteries; the rest from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			c := chemistry(v)
			return Guess{Value: band.Exactly(charge.AcceptanceShare(c)), Why: "the most that " + c.String() + " batteries are charged with", Constant: true}, true
		}},
	{Name: "most the battery should be charged with", Gives: ChargeAccept, Needs: []ID{BatteryEach, ChargeShare}, Source: bankMemory, Basis: Estimate,
		Formula: "{charge.share} x {battery.each} / 1 h",
		Compute: func(v View) (float64, error) { return v.Of(ChargeShare) * v.Of(BatteryEach), nil }},
}

// refill is what one battery must get back.
func refill(v View) charge.Refill {
	return charge.Refill{Capacity: v.Charge(BatteryEach), Depth: v.Of(ChargeDepth), Return: v.Of(ChargeReturn), Tail: v.Hours(ChargeTail)}
}

var refillCells = []ID{BatteryEach, ChargeDepth, ChargeReturn, ChargeTail}

// chargeFigureRows: the charger and its hours.
var chargeFigureRows = []Row{
	{Name: "charge current needed", Gives: ChargeNeed, Needs: append([]ID{ChargeHours}, refillCells...), Source: chargeSource, Basis: Model,
		Formula: "{battery.each} x {charge.depth} x {charge.return} / ({charge.hours} - {charge.tail})",
		Compute: func(v View) (float64, error) {
			i, err := refill(v).Current(v.Hours(ChargeHours))
			return i.Amperes(), err
		}},
	{Name: "charger for the hours", Gives: ChargerCurrent, Needs: []ID{ChargeNeed, ChargeAccept, BatteryChemistry}, Said: []ID{AirTemp}, Source: chargeSource, Basis: Model, Ladder: true,
		Formula: "next usual output above {charge.need}, or at most a twentieth below, within the {charge.acceptance} the battery accepts",
		Compute: func(v View) (float64, error) {
			warnFreezing(v)
			return chooseCharger(v, v.Of(ChargeNeed))
		}},
	{Name: "largest charger the battery accepts", Gives: ChargerCurrent, Needs: []ID{ChargeAccept, BatteryChemistry}, Said: []ID{AirTemp}, Source: chargeSource, Basis: Model, Ladder: true,
		Formula: "largest usual output within the {charge.acceptance} the battery accepts",
		Compute: func(v View) (float64, error) {
			warnFreezing(v)
			v.Doubt("not full in the hours there are: they hardly cover the absorption at the end")
			return chooseCharger(v, v.Of(ChargeAccept))
		}},
	{Name: "charger on hand", Gives: ChargerUsed, Needs: []ID{ChargerSaid}, Source: "as said", Basis: Said,
		Formula: "{charger.current-said}",
		Compute: func(v View) (float64, error) { return v.Of(ChargerSaid), nil }},
	{Name: "charger chosen", Gives: ChargerUsed, Needs: []ID{ChargerCurrent}, Source: chargeSource, Basis: Model,
		Formula: "{charger.current}",
		Compute: func(v View) (float64, error) { return v.Of(ChargerCurrent), nil }},
	{Name: "charge time", Gives: ChargeTime, Needs: append([]ID{ChargerUsed, ChargeAccept, BatteryChemistry}, refillCells...), Said: []ID{AirTemp}, Source: chargeSource, Basis: Model,
		Formula: "{battery.each} x {charge.depth} x {charge.return} / {=current that the battery takes} + {charge.tail}, each battery on its own output",
		Term: func(v View, _ string) (float64, unit.Form) {
			return min(v.Of(ChargerUsed), v.Of(ChargeAccept)), unit.Ampere
		},
		Compute: func(v View) (float64, error) {
			warnFreezing(v)
			i := v.Current(ChargerUsed)
			if i > v.Current(ChargeAccept) {
				v.Warn("the charger gives more than the battery should be charged with: the battery, not the charger, sets the pace")
				i = v.Current(ChargeAccept)
			}
			t, err := refill(v).Time(i)
			return t.Hours(), err
		}},
}

// chooseCharger takes the next output above a need, one that falls short of it by
// a twentieth, or the largest that the battery accepts, and says when it will not be done in time.
func chooseCharger(v View, need float64) (float64, error) {
	ladder := v.Ladder(ChargerCurrent, Ladder(typical.Chargers))
	if len(ladder) == 0 {
		return 0, errors.New("no chargers to choose from: give the sizes that are sold")
	}
	accept := v.Of(ChargeAccept)
	chosen, ok := ladder.Next(need / (1 + nearEnough))
	if ok && chosen <= accept {
		return chosen, nil
	}
	// The next size up is too much or is not made: the largest below it.
	chosen = ladder[0]
	for _, a := range ladder {
		if a <= accept {
			chosen = a
		}
	}
	switch {
	case chosen > accept:
		v.Doubt("even the smallest usual charger gives more than a battery this small should have: look for one made for it")
	case chosen < need/(1+nearEnough)*(1-1e-9):
		v.Doubt("not full in the hours there are: the battery takes no more, or no usual charger gives more")
	}
	return chosen, nil
}

// warnFreezing speaks only of a temperature that was said: nobody charges in the
// mild day that is assumed.
func warnFreezing(v View) {
	if v.Said(AirTemp) && charge.MayCharge(chemistry(v), v.Temperature(AirTemp)) != nil {
		v.Warn("never charge a lithium battery below freezing: warm it first")
	}
}
