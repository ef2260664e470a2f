package bank

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// restRow is lead-acid at rest, six cells, electrolyte at 80 F.
type restRow struct {
	state   float64 // of charge, 0 to 1
	volts   float64
	gravity float64 // specific gravity of the acid
	freezes float64 // C
}

// restTable is the BCI table of state of charge (public reprint).
var restTable = [...]restRow{
	{0, 11.89, 1.120, -23.3},
	{0.25, 12.06, 1.155, -26.7},
	{0.50, 12.24, 1.190, -36.7},
	{0.75, 12.45, 1.225, -48.3},
	{1, 12.65, 1.265, -59.4},
}

// StateOfCharge reads a 12-volt lead-acid battery that has rested for hours, 0
// to 1. A step of a tenth is about 0.08 V, below what a plain meter resolves, so
// the answer is good to a tenth or two. Outside 11.89 to 12.65 V it is 0 or 1;
// under 10 or over 15 V nothing is at rest, and it refuses.
//
// Source: BCI state-of-charge table, electrolyte at 26.7 C.
func StateOfCharge(atRest unit.Voltage) (float64, error) {
	if err := band.Within("voltage at rest of a 12-volt battery", "V", atRest.Volts(), 10, 15); err != nil {
		return 0, err
	}
	return interpolate(atRest.Volts(), func(r restRow) float64 { return r.volts }, func(r restRow) float64 { return r.state }), nil
}

// RestVolts is the voltage at rest of a 12-volt lead-acid battery at a state of
// charge, 0 to 1. Source as for StateOfCharge.
func RestVolts(state float64) (unit.Voltage, error) {
	if err := band.Within("state of charge", "", state, 0, 1); err != nil {
		return 0, err
	}
	return unit.Voltage(interpolate(state, func(r restRow) float64 { return r.state }, func(r restRow) float64 { return r.volts })), nil
}

// FreezingPoint of the acid of a lead-acid battery at a state of charge, 0 to 1:
// a flat battery left out in winter bursts. Source as for StateOfCharge.
func FreezingPoint(state float64) (unit.Temperature, error) {
	if err := band.Within("state of charge", "", state, 0, 1); err != nil {
		return 0, err
	}
	return unit.Temperature(interpolate(state, func(r restRow) float64 { return r.state }, func(r restRow) float64 { return r.freezes })), nil
}

// interpolate reads y at x along the table, holding its ends.
func interpolate(x float64, xs, ys func(restRow) float64) float64 {
	if x <= xs(restTable[0]) {
		return ys(restTable[0])
	}
	for i := 1; i < len(restTable); i++ {
		lo, hi := restTable[i-1], restTable[i]
		if x <= xs(hi) {
			return ys(lo) + (ys(hi)-ys(lo))*(x-xs(lo))/(xs(hi)-xs(lo))
		}
	}
	return ys(restTable[len(restTable)-1])
}
