package sheet_test

import (
	"fmt"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
)

// board prints the formulas behind a figure as a trainer would put them up, each
// with its numbers; what was said, assumed or merely passed on is left out.
func board(s *sheet.Solution, id sheet.ID) {
	for _, st := range s.Chain(id) {
		value := st.Show(unit.US)
		if w := s.Working(st, unit.US); w != "" && w != value {
			fmt.Println(st.ID.Describe().Label + " = " + w + " = " + s.Result(st, unit.US))
		}
	}
}

func said(id sheet.ID, x float64) sheet.Given {
	return sheet.Given{ID: id, Value: band.Exactly(x)}
}

// Two flooded batteries of 90 Ah on a 24-volt motor that draws 45 A, on a day at
// the temperature of their rating.
func ExampleSolution_Working_runTime() {
	s := sheet.StandardBook().Solve(sheet.Question{
		Given: []sheet.Given{said(sheet.MotorVoltage, 24), said(sheet.MotorAmps, 45), said(sheet.BatteryCount, 2), said(sheet.BatteryCapacity, 90),
			{ID: sheet.BatteryChemistry, Word: "flooded"}, said(sheet.AirTemp, 25)},
		Want: []sheet.ID{sheet.RuntimeFull},
	})
	board(s, sheet.RuntimeFull)
	// Output:
	// Batteries in a string = 24 V / 12 V = 2
	// Strings = 2 / 2, whole strings = 1
	// Bank capacity = 90 Ah x 1, side by side; series adds no Ah = 90 Ah
	// Capacity left at this temperature = what flooded batteries give at 77 F = 100%
	// Run time at full throttle, to the depth for a long life = 50% x 100% x 20 h x (90 Ah / (45 A x 20 h))^1.25 = 0.562 h = 34 min
	// Run time at full throttle = 80% x 100% x 20 h x (90 Ah / (45 A x 20 h))^1.25 = 0.9 h = 54 min
}

// Eight gauge over 18 ft to a 12-volt motor that draws 46 A.
func ExampleSolution_Working_wire() {
	s := sheet.StandardBook().Solve(sheet.Question{
		Given: []sheet.Given{said(sheet.MotorVoltage, 12), said(sheet.MotorAmps, 46), said(sheet.WireRun, unit.Feet(18).Metres()), said(sheet.WireGaugeSaid, 8),
			said(sheet.WireInsulation, 105), {ID: sheet.WirePlace, Word: "open"}},
		Want: []sheet.ID{sheet.WireDrop},
	})
	board(s, sheet.WireDrop)
	// Output:
	// What the wire may carry = 80 A, Table 5 for 8 AWG of 105 C insulation = 80 A
	// Air around the wire = what Table 5 takes for a wire open = 30 C
	// Conductor temperature = 30 C + (105 C - 30 C) x (46 A / 80 A)^2 = 54.8 C
	// Resistance out and back = 2 x 18 ft x 0.6282 ohm per 1,000 ft x (1 + 0.00393 x (54.8 C - 20 C)) = 0.0257 ohm = 25.7 milliohm
	// Volts lost in the wire = 46 A x 0.02571 ohm = 1.18 V
	// Voltage drop in the wire = 1.1825 V / 12 V = 9.85%
}

// A charger for a 100-Ah lithium battery in seven hours.
func ExampleSolution_Working_charger() {
	s := sheet.StandardBook().Solve(sheet.Question{
		Given: []sheet.Given{said(sheet.BatteryCapacity, 100), {ID: sheet.BatteryChemistry, Word: "lithium"}, said(sheet.ChargeHours, 7)},
		Want:  []sheet.ID{sheet.ChargerCurrent},
	})
	board(s, sheet.ChargerCurrent)
	// Output:
	// Charge current needed = 100 Ah x 80% x 1.05 / (7 h - 0.5 h) = 12.9 A
	// Most the battery should be charged with = 50% x 100 Ah / 1 h = 50 A
	// Charger, each battery = next usual output above 12.923 A, or at most a twentieth below, within the 50 A the battery accepts = 15 A
}
