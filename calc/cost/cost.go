// Package cost reckons what a rig costs and what its batteries cost a year. It
// holds no price: every amount comes from a shop's own list.
//
// Limits: plain sums and straight-line wear. A battery is worn out by cycles at
// the depth its cycle life is given for, or by age, whichever is sooner; interest,
// tax, charging current and what an old battery fetches are left out.
package cost

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// Item is one line of a bill.
type Item struct {
	Each  unit.Money
	Count int
}

// Total adds up a bill.
func Total(items ...Item) unit.Money {
	var sum unit.Money
	for _, i := range items {
		sum += i.Each * unit.Money(i.Count)
	}
	return sum
}

// Wear is how long a battery lasts.
type Wear struct {
	Cycles   float64 // in its life at the depth used, at least 1
	MaxYears float64 // of age, however little it is used; at least 0.1
}

func (w Wear) check() error {
	if err := checkCycles(w.Cycles); err != nil {
		return err
	}
	return band.Within("years a battery may last", "", w.MaxYears, 0.1, 100)
}

func checkCycles(n float64) error {
	return band.Within("cycles in a battery's life", "", n, 1, 100000)
}

// Years is how many years a battery lasts at so many cycles a year: by cycles or
// by age, whichever ends first. cyclesAYear is 0 to 1000.
func (w Wear) Years(cyclesAYear float64) (float64, error) {
	if err := w.check(); err != nil {
		return 0, err
	}
	if err := band.Within("cycles a year", "", cyclesAYear, 0, 1000); err != nil {
		return 0, err
	}
	if cyclesAYear == 0 {
		return w.MaxYears, nil
	}
	return min(w.Cycles/cyclesAYear, w.MaxYears), nil
}

// Yearly is what a bank costs a year by wear: its price over the years it lasts.
func Yearly(price unit.Money, w Wear, cyclesAYear float64) (unit.Money, error) {
	years, err := w.Years(cyclesAYear)
	if err != nil {
		return 0, err
	}
	return price / unit.Money(years), nil
}

// PerCycle is what one cycle of a bank costs: its price over its cycles, 1 to
// 100,000 of them.
func PerCycle(price unit.Money, cycles float64) (unit.Money, error) {
	if err := checkCycles(cycles); err != nil {
		return 0, err
	}
	return price / unit.Money(cycles), nil
}

// PerKilowattHour is what a kilowatt hour out of a bank costs over its life:
// price / (energy x depth x cycles). Energy 1 Wh and more; depth 0.01 to 1; cycles
// as for PerCycle.
func PerKilowattHour(price unit.Money, energy unit.Energy, depth, cycles float64) (unit.Money, error) {
	if err := checkCycles(cycles); err != nil {
		return 0, err
	}
	if err := band.Within("bank energy", "Wh", energy.WattHours(), 1, 1e9); err != nil {
		return 0, err
	}
	if err := band.Within("depth of each cycle", "", depth, 0.01, 1); err != nil {
		return 0, err
	}
	return price / unit.Money(energy.WattHours()/1000*depth*cycles), nil
}
