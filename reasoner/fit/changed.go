package fit

import (
	"math"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/reasoner/answer"
)

// changeOrder lists the figures whose move a customer hears first.
var changeOrder = []sheet.ID{
	sheet.LoadTotal, sheet.ThrustNeed, sheet.ThrustClass, sheet.SystemVoltage, sheet.ShaftClass, sheet.ShaftNeed,
	sheet.WireGauge, sheet.WireDrop, sheet.BreakerRating, sheet.CruiseCurrent,
	sheet.BankCount, sheet.BankCapacity, sheet.BankWeight, sheet.RuntimeCruise, sheet.RuntimeFull, sheet.RangeCruise,
	sheet.MotorCurrent, sheet.ChargerCurrent, sheet.ChargeTime, sheet.HoldWind, sheet.SpeedTop,
	sheet.LoadMargin,
}

// MostChanges is how many moved figures a turn leads with.
const MostChanges = 5

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
	if shown[sheet.BankCapacity] { // what a boat has to carry, told where it moves
		shown[sheet.BankWeight] = true
	}
	var out []answer.Change
	for _, id := range changeOrder {
		old, now := before.Show(id), after.Show(id)
		if !shown[id] || old == "" || now == "" || !differs(id, before, after) {
			continue
		}
		out = append(out, answer.Change{ID: id.String(), Text: id.Describe().Label + " " + old + " -> " + now})
		if len(out) == MostChanges {
			break
		}
	}
	return out
}

// trifle is the share of a figure below which its move is no news: the weight of
// a battery's case in a loaded boat.
const trifle = 0.02

// differs reports whether a figure reads otherwise in two fits, and by more than
// a trifle where nobody said it.
func differs(id sheet.ID, before, after *Fit) bool {
	if before.Show(id) == after.Show(id) {
		return false
	}
	old, now := before.Sol.Value(id), after.Sol.Value(id)
	return id.Describe().Word || before.SaidCell(id) || after.SaidCell(id) || !before.Sol.Has(id) ||
		math.Abs(now-old) > trifle*math.Abs(old)
}

// Moved marks the figures that read otherwise than in an earlier fit.
func Moved(figures []answer.Figure, before, after *Fit) {
	for i := range figures {
		if id, ok := sheet.Lookup(figures[i].ID); ok {
			figures[i].Moved = differs(id, before, after)
		}
	}
}
