package sheet

import (
	"heronlake.example/ask/calc/load"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// Inner cells of the capacity plate.
var (
	PlateFuel      = inner("plate.fuel", unit.Weight, "Fuel in portable tanks")
	PlateBatteries = inner("plate.batteries", unit.Weight, "Trolling batteries")
	PlateAboard    = inner("plate.aboard", unit.Weight, "What counts against the plate")
	PeopleMost     = inner("people.most", unit.Count, "People that the plate leaves room for")
)

// plateRows: what counts against the capacity plate, and what it leaves.
var plateRows = []Row{
	{
		// A count without a size: usual batteries, not the ones that a day's
		// use would ask for.
		Name: "batteries against the plate by their count", Gives: PlateBatteries, Needs: []ID{LoadBatteries}, Said: []ID{BatteryCount, BatteryGroup, BatteryCapacity, BatteryReserve},
		When: func(v View) bool {
			return v.Said(BatteryCount) && !v.Said(BatteryGroup) && !v.Said(BatteryCapacity) && !v.Said(BatteryReserve)
		},
		Formula: "{load.batteries}", Source: "usual batteries by count, from memory", Basis: Estimate,
		Compute: func(v View) (float64, error) { return v.Of(LoadBatteries), nil },
	},
	{
		Name: "batteries against the plate", Gives: PlateBatteries, Needs: []ID{BankWeight},
		Formula: "{bank.weight}", Source: "the bank as chosen or said", Basis: Estimate,
		Compute: func(v View) (float64, error) { return v.Of(BankWeight), nil },
	},
	{
		Name: "batteries against the plate, before the choice", Gives: PlateBatteries, Needs: []ID{LoadBatteries},
		Formula: "{load.batteries}", Source: "estimate before the bank is chosen", Basis: Estimate,
		Compute: func(v View) (float64, error) { return v.Of(LoadBatteries), nil },
	},
	{
		Name: "fuel in portable tanks", Gives: PlateFuel, Needs: []ID{LoadFuel}, May: []ID{BoatHull},
		Formula: "{load.fuel}, where the tank is portable", Source: "33 CFR 183.35, 183.75: full fixed tanks belong to the boat's weight", Basis: Regulation,
		Compute: func(v View) (float64, error) {
			if b, ok := typical.BoatOf(v.Word(BoatHull)); ok && !b.PortableFuel {
				return 0, nil
			}
			return v.Of(LoadFuel), nil
		},
	},
	{
		Name: "weight that the plate counts", Gives: PlateAboard, Needs: []ID{LoadPeople, LoadGear, LoadEngine, PlateFuel, LoadMotor, PlateBatteries}, May: []ID{LoadAdded},
		Formula: "{load.people} + {load.gear} + {load.engine} + {plate.fuel} + {plate.batteries} + {load.motor} + {load.added}",
		Source:  "33 CFR 183.25: persons, motors and gear", Basis: Regulation,
		Compute: func(v View) (float64, error) {
			p := load.Parts{People: v.Mass(LoadPeople), Gear: v.Mass(LoadGear), Engine: v.Mass(LoadEngine), Fuel: v.Mass(PlateFuel),
				Batteries: v.Mass(PlateBatteries), Motor: v.Mass(LoadMotor)}
			return p.Aboard().Kilograms() + v.Of(LoadAdded), nil
		},
	},
	{
		Name: "left under the plate", Gives: LoadMargin, Needs: []ID{LoadPlate, PlateAboard}, May: []ID{BoatHull, BoatLength},
		Formula: "{load.plate} - ({plate.aboard})", Source: "33 CFR 183.35 and 183.25: the hull is not counted", Basis: Regulation,
		Compute: func(v View) (float64, error) {
			warnPlate(v)
			return v.Of(LoadPlate) - v.Of(PlateAboard), nil
		},
	},
	{
		Name: "people that the plate leaves room for", Gives: PeopleMost, Needs: []ID{LoadPlate, LoadEngine, PlateFuel, LoadMotor, PlateBatteries, LoadGear},
		Formula: "({load.plate} - {load.engine} - {plate.fuel} - {plate.batteries} - {load.motor} - {load.gear} + {=32 lb}) / {=141 lb}, to the nearest whole person, a half upwards",
		Term: func(_ View, name string) (float64, unit.Form) {
			if name == "32 lb" {
				return unit.Pounds(32).Kilograms(), unit.Weight
			}
			return unit.Pounds(141).Kilograms(), unit.Weight
		},
		Source: "33 CFR 183.41(b), one half up; motor, batteries and gear taken off first", Basis: Regulation,
		Compute: func(v View) (float64, error) {
			left := v.Mass(LoadPlate) - v.Mass(LoadEngine) - v.Mass(PlateFuel) - v.Mass(PlateBatteries) - v.Mass(LoadMotor) - v.Mass(LoadGear)
			return float64(load.Persons(left)), nil
		},
	},
}

// warnPlate says where the plate is not the regulation's.
func warnPlate(v View) {
	switch v.Word(BoatHull) {
	case typical.Pontoon, typical.Canoe, typical.Kayak, typical.Inflatable, typical.Sailboat:
		v.Warn("the federal capacity rule does not cover this kind of boat: its plate is the builder's own")
		return
	}
	if v.Has(BoatLength) && v.Length(BoatLength) >= unit.Feet(20) {
		v.Warn("the federal capacity rule ends at 20 ft: the plate of a longer boat is the builder's own")
	}
}
