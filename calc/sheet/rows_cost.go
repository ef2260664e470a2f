package sheet

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/cost"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// Inner cells of cost. The prices have no rows: they are given from a shop's own
// list or not at all, and then no cost is shown.
var (
	MotorPrice   = inner("motor.price", unit.Dollar, "Price of the motor")
	BatteryPrice = inner("battery.price", unit.Dollar, "Price of each battery")
	ChargerPrice = inner("charger.price", unit.Dollar, "Price of the charger")
	// WiringPrice is of wire, breaker, plug, lugs and bracket together.
	WiringPrice = inner("wiring.price", unit.Dollar, "Price of wire, breaker, plug and fittings")

	BatteryLife  = inner("battery.cycle-life", unit.Count, "Cycles in a battery's life")
	BatteryYears = inner("battery.most-years", unit.Count, "Years a battery lasts at most")
	UseTrips     = inner("use.trips", unit.Count, "Days on the water a year")
	CostCycle    = inner("cost.each-cycle", unit.Dollar, "Batteries, each day out")
	CostEnergy   = inner("cost.each-kwh", unit.Dollar, "Batteries, each kWh delivered")
)

const wearSource = "price over the years until the cycles or the age is used up; cycle lives from memory"

// costRows: what the rig costs and what its batteries cost.
var costRows = []Row{
	constantBy(BatteryLife, "cycles in a battery's life", bankMemory,
		func(c *typical.Chemistry) band.Band[float64] { return c.CycleLife }),
	constantBy(BatteryYears, "years a battery lasts at most", bankMemory,
		func(c *typical.Chemistry) band.Band[float64] { return band.Exactly(c.MaxYears) }),
	{Name: "days out a year unless said", Gives: UseTrips, Source: bankMemory, Basis: Estimate,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: typical.TripsAYear, Why: "thirty days out a year unless you say"}, true
		}},
	{Name: "cost complete", Gives: CostTotal, Needs: []ID{MotorPrice, BankCount, BatteryPrice, ChargerPrice, WiringPrice}, Source: "the shop's list", Basis: Stock,
		Formula: "{motor.price} + {bank.count} x {battery.price} + {charger.price} + {wiring.price}",
		Compute: func(v View) (float64, error) {
			return cost.Total(
				cost.Item{Each: unit.Money(v.Of(MotorPrice)), Count: 1},
				cost.Item{Each: unit.Money(v.Of(BatteryPrice)), Count: int(v.Of(BankCount))},
				cost.Item{Each: unit.Money(v.Of(ChargerPrice)), Count: 1},
				cost.Item{Each: unit.Money(v.Of(WiringPrice)), Count: 1},
			).Dollars(), nil
		}},
	{Name: "batteries a year", Gives: CostYearly, Needs: []ID{BatteryPrice, BankCount, BatteryLife, BatteryYears, UseTrips}, Source: wearSource, Basis: Estimate,
		Formula: "{bank.count} x {battery.price} / (the smaller of {battery.cycle-life} cycles / {use.trips} a year and {battery.most-years} years)",
		Compute: func(v View) (float64, error) {
			m, err := cost.Yearly(bankPrice(v), cost.Wear{Cycles: v.Of(BatteryLife), MaxYears: v.Of(BatteryYears)}, v.Of(UseTrips))
			return m.Dollars(), err
		}},
	{Name: "batteries, each day out", Gives: CostCycle, Needs: []ID{BatteryPrice, BankCount, BatteryLife}, Source: wearSource, Basis: Estimate,
		Formula: "{bank.count} x {battery.price} / {battery.cycle-life} cycles",
		Compute: func(v View) (float64, error) {
			m, err := cost.PerCycle(bankPrice(v), v.Of(BatteryLife))
			return m.Dollars(), err
		}},
	{Name: "batteries, each kWh delivered", Gives: CostEnergy, Needs: []ID{BatteryPrice, BankCount, BankEnergy, BatteryLongDepth, BatteryLife}, Source: wearSource, Basis: Estimate,
		Formula: "{bank.count} x {battery.price} x 1000 / ({bank.energy} x {battery.depth-long-life} x {battery.cycle-life} cycles)",
		Compute: func(v View) (float64, error) {
			m, err := cost.PerKilowattHour(bankPrice(v), v.Energy(BankEnergy), v.Of(BatteryLongDepth), v.Of(BatteryLife))
			return m.Dollars(), err
		}},
}

func bankPrice(v View) unit.Money {
	return cost.Total(cost.Item{Each: unit.Money(v.Of(BatteryPrice)), Count: int(v.Of(BankCount))})
}
