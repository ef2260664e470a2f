package fit

import "heronlake.example/ask/calc/sheet"

// Wanted is a cell that a topic shows.
type Wanted struct {
	ID      sheet.ID
	Asked   bool
	Decides bool
	Only    sheet.ID // shown only where this cell was said; 0 means always
}

// topicRow lists the cells of one topic: what it asks for, what decides it, and
// what is worth having at hand in the full answer.
type topicRow struct {
	topic   string
	asked   []sheet.ID
	decides []sheet.ID
	also    []sheet.ID
	// told means that the headline already tells what was asked for, so that
	// the figures that decided come before it.
	told bool
}

var topicRows = []topicRow{
	{"fit",
		[]sheet.ID{sheet.ThrustClass, sheet.SystemVoltage, sheet.ShaftClass, sheet.BankCount, sheet.BankCapacity, sheet.WireGauge, sheet.BreakerRating},
		[]sheet.ID{sheet.LoadTotal, sheet.ThrustRule, sheet.ThrustWind, sheet.ThrustCurrent, sheet.ThrustNeed, sheet.ShaftNeed, sheet.MotorCurrent, sheet.RuntimeFull, sheet.RuntimeCruise, sheet.HoldWind, sheet.SpeedTop},
		[]sheet.ID{sheet.LoadMargin, sheet.HoldWindDay, sheet.HoldCurrent, sheet.MotorPower, sheet.CruiseCurrent, sheet.BankEnergy, sheet.BankWeight, sheet.RangeCruise, sheet.WireDrop, sheet.WireVolts, sheet.WireAmpacity, sheet.WireThrustLoss, sheet.BreakerDistance, sheet.ShaftSubmerged, sheet.ChargerCurrent, sheet.ChargeTime, sheet.TrimBowSink, sheet.BankProtection}, true},
	{"thrust",
		[]sheet.ID{sheet.ThrustNeed, sheet.ThrustClass},
		[]sheet.ID{sheet.LoadTotal, sheet.ThrustRule, sheet.ThrustWind, sheet.ThrustCurrent, sheet.SystemVoltage},
		[]sheet.ID{sheet.HoldWind, sheet.HoldCurrent, sheet.SpeedTop, sheet.MotorCurrent, sheet.MotorPower}, false},
	{"voltage",
		[]sheet.ID{sheet.SystemVoltage, sheet.BankCount},
		[]sheet.ID{sheet.ThrustNeed, sheet.ThrustClass, sheet.MotorCurrent},
		[]sheet.ID{sheet.LoadTotal, sheet.ThrustRule, sheet.ThrustWind, sheet.WireGauge, sheet.BankWeight}, false},
	{"shaft",
		[]sheet.ID{sheet.ShaftClass, sheet.ShaftNeed},
		[]sheet.ID{sheet.ShaftSubmerged},
		[]sheet.ID{sheet.TrimBowSink, sheet.ShaftDraught}, false},
	{"bank",
		[]sheet.ID{sheet.BankCount, sheet.BankCapacity, sheet.BankEnergy, sheet.BankWeight},
		[]sheet.ID{sheet.SystemVoltage, sheet.MotorCurrent, sheet.CruiseCurrent, sheet.RuntimeCruise},
		[]sheet.ID{sheet.RuntimeFull, sheet.BankProtection}, false},
	{"runtime",
		[]sheet.ID{sheet.RuntimeCruise, sheet.RuntimeFull},
		[]sheet.ID{sheet.BankCapacity, sheet.MotorCurrent, sheet.CruiseCurrent, sheet.RangeCruise},
		[]sheet.ID{sheet.BankEnergy, sheet.BankCount, sheet.BankProtection}, false},
	{"wire",
		[]sheet.ID{sheet.WireGauge, sheet.WireDrop, sheet.BreakerRating},
		[]sheet.ID{sheet.MotorCurrent, sheet.WireAmpacity, sheet.WireThrustLoss},
		[]sheet.ID{sheet.WireVolts, sheet.BreakerDistance, sheet.WireLongest, sheet.BreakerFloor}, false},
	{"breaker",
		[]sheet.ID{sheet.BreakerRating, sheet.BreakerDistance},
		[]sheet.ID{sheet.MotorCurrent, sheet.WireAmpacity},
		[]sheet.ID{sheet.WireGauge, sheet.BreakerFloor}, false},
	{"charger",
		[]sheet.ID{sheet.ChargerCurrent, sheet.ChargeTime},
		[]sheet.ID{sheet.BankCapacity, sheet.BankCount},
		nil, false},
	{"hold",
		[]sheet.ID{sheet.HoldWind, sheet.HoldWindDay, sheet.HoldCurrent},
		[]sheet.ID{sheet.ThrustClass, sheet.RuntimeFull},
		[]sheet.ID{sheet.ThrustNeed, sheet.ThrustWind, sheet.RuntimeHold}, false},
	{"speed",
		[]sheet.ID{sheet.SpeedTop},
		[]sheet.ID{sheet.LoadTotal},
		[]sheet.ID{sheet.ThrustNeed, sheet.ThrustClass, sheet.CruiseSpeed}, false},
	{"weight",
		[]sheet.ID{sheet.BankWeight, sheet.LoadTotal},
		[]sheet.ID{sheet.BankCount},
		nil, false},
	{"capacity",
		[]sheet.ID{sheet.LoadMargin},
		[]sheet.ID{sheet.LoadTotal, sheet.BankWeight, sheet.TrimBowSink},
		nil, false},
	{"cost", []sheet.ID{sheet.CostTotal, sheet.CostYearly}, []sheet.ID{sheet.ThrustClass, sheet.SystemVoltage, sheet.BankCount}, nil, false},
}

// onlyRows keep a figure out unless the cell it is about was said.
var onlyRows = map[sheet.ID]sheet.ID{
	sheet.ThrustCurrent: sheet.CurrentSpeed,
	sheet.HoldCurrent:   sheet.CurrentSpeed,
	sheet.LoadMargin:    sheet.LoadPlate,
}

// Wants gathers the cells of the topics, each once; a cell that one topic asks
// for stays asked.
func Wants(topics []string) []Wanted {
	at := map[sheet.ID]int{}
	var out []Wanted
	add := func(ids []sheet.ID, asked, decides bool) {
		for _, id := range ids {
			i, ok := at[id]
			if !ok {
				i = len(out)
				at[id] = i
				out = append(out, Wanted{ID: id, Only: onlyRows[id]})
			}
			out[i].Asked = out[i].Asked || asked
			out[i].Decides = out[i].Decides || decides
		}
	}
	for _, pass := range []func(r topicRow){
		func(r topicRow) {
			if r.told {
				add(r.decides, false, true)
			} else {
				add(r.asked, true, false)
			}
		},
		func(r topicRow) {
			add(r.asked, !r.told, r.told)
			add(r.decides, false, true)
		},
		func(r topicRow) { add(r.also, false, false) },
	} {
		for _, t := range topics {
			for _, r := range topicRows {
				if r.topic == t {
					pass(r)
				}
			}
		}
	}
	// A figure asked for by its own topic is shown whether or not its slot was said.
	for i := range out {
		if out[i].Asked {
			out[i].Only = 0
		}
	}
	return out
}
