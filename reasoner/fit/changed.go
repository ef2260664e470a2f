package fit

import (
	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/reasoner/answer"
)

// changeOrder lists the figures whose move a customer hears first.
var changeOrder = []sheet.ID{
	sheet.LoadTotal, sheet.ThrustNeed, sheet.ThrustClass, sheet.SystemVoltage, sheet.ShaftClass,
	sheet.MotorCurrent, sheet.CruiseCurrent, sheet.BankCapacity, sheet.BankWeight, sheet.RuntimeCruise, sheet.RuntimeFull,
	sheet.RangeCruise, sheet.WireGauge, sheet.WireDrop, sheet.BreakerRating, sheet.ChargerCurrent, sheet.ChargeTime, sheet.HoldWind, sheet.SpeedTop,
	sheet.LoadMargin,
}

// MostChanges is how many moved figures a turn leads with.
const MostChanges = 4

// Changes compares two fits of one conversation: which shown figures moved, and
// from what to what, as a person reads them.
func Changes(before, after *Fit) []answer.Change {
	if before == nil || after == nil {
		return nil
	}
	shown := map[sheet.ID]bool{}
	for _, w := range after.Wanted {
		if (w.Asked || w.Decides) && after.worth(w) {
			shown[w.ID] = true
		}
	}
	var out []answer.Change
	for _, id := range changeOrder {
		old, now := before.Show(id), after.Show(id)
		if !shown[id] || old == "" || now == "" || old == now {
			continue
		}
		out = append(out, answer.Change{ID: id.String(), Text: id.Describe().Label + " " + old + " -> " + now})
		if len(out) == MostChanges {
			break
		}
	}
	return out
}

// Moved marks the figures that read otherwise than in an earlier fit.
func Moved(figures []answer.Figure, before *Fit) {
	for i := range figures {
		if id, ok := sheet.Lookup(figures[i].ID); ok {
			figures[i].Moved = before.Show(id) != figures[i].Display
		}
	}
}
