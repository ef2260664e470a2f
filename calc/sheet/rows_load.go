package sheet

import (
	"math"
	"slices"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/load"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// EnginePower is how most people speak of a main engine: the weight follows.
var EnginePower = slot("engine.power", unit.EnginePower, "Main engine's power")

// Inner cells of the load.
var (
	LoadPeople    = inner("load.people", unit.Weight, "People's weight")
	LoadFuel      = inner("load.fuel", unit.Weight, "Fuel's weight")
	FuelDensity   = inner("fuel.density", unit.FuelDensity, "Fuel's density")
	LoadBatteries = inner("load.batteries", unit.Weight, "Trolling batteries, before they are chosen")
	LoadMotor     = inner("load.motor", unit.Weight, "Trolling motor")
)

// loadRows: what the boat is, what it carries and weighs, and what the plate leaves.
var loadRows = slices.Concat(boatRows, weightRows, plateRows)

// weightRows: the loaded weight and its parts.
var weightRows = []Row{
	{
		Name: "loaded weight with people added", Gives: LoadTotal, Needs: []ID{LoadSaid, PeopleMore, PeopleEach}, May: []ID{LoadAdded},
		Formula: "{load.said} + {people.added} x {people.each} + {load.added}", Source: "sum of the parts", Basis: Said,
		Compute: func(v View) (float64, error) {
			return v.Of(LoadSaid) + v.Of(PeopleMore)*v.Of(PeopleEach) + v.Of(LoadAdded), nil
		},
	},
	{
		Name: "loaded weight with load added", Gives: LoadTotal, Needs: []ID{LoadSaid}, May: []ID{LoadAdded},
		Formula: "{load.said} + {load.added}", Source: "sum of the parts", Basis: Said,
		Compute: func(v View) (float64, error) { return v.Of(LoadSaid) + v.Of(LoadAdded), nil },
	},
	{
		Name: "loaded weight from its parts and what was added", Gives: LoadTotal,
		Needs:   []ID{LoadAdded, LoadDry, LoadEngine, LoadFuel, LoadPeople, LoadGear, LoadBatteries, LoadMotor},
		Formula: "{load.dry} + {load.engine} + {load.fuel} + {load.people} + {load.gear} + {load.batteries} + {load.motor} + {load.added}",
		Source:  "sum of the parts", Basis: Estimate,
		Compute: func(v View) (float64, error) { return partsOf(v).Total().Kilograms() + v.Of(LoadAdded), nil },
	},
	{
		Name: "loaded weight from its parts", Gives: LoadTotal,
		Needs:   []ID{LoadDry, LoadEngine, LoadFuel, LoadPeople, LoadGear, LoadBatteries, LoadMotor},
		Formula: "{load.dry} + {load.engine} + {load.fuel} + {load.people} + {load.gear} + {load.batteries} + {load.motor}",
		Source:  "sum of the parts", Basis: Estimate,
		Compute: func(v View) (float64, error) { return partsOf(v).Total().Kilograms(), nil },
	},
	{
		Name: "dry weight by kind and length", Gives: LoadDry, Needs: []ID{BoatHull, BoatLength}, May: []ID{BoatMaterial}, Said: []ID{BoatTubes}, Source: kindSource, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			b, ok := typical.BoatOf(v.Word(BoatHull))
			if !ok {
				return Guess{}, false
			}
			w, inside := b.Dry.Value(v.Length(BoatLength), 3)
			if !inside {
				v.Stretched(b.Dry.Far(v.Length(BoatLength)), "the boat is longer or shorter than the table of such hulls: a wide estimate of its weight")
			}
			f := typical.MaterialFactor(b.Material, v.Word(BoatMaterial))
			g := si(w)
			if v.Said(BoatTubes) && v.Of(BoatTubes) >= 3 && b.Form.Hulls > 1 {
				t := typical.ThirdTube
				g = band.Of(g.Low*t.Low, g.Nominal*t.Nominal, g.High*t.High)
			}
			return Guess{Value: band.Of(g.Low*min(f, 1), g.Nominal*f, g.High*max(f, 1)), Why: "a usual hull of this kind and length"}, true
		},
	},
	{
		Name: "people aboard by hull kind", Gives: PeopleCount, May: []ID{BoatHull}, Source: "from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			g := Guess{Value: band.Of(1.0, 2, 3), Why: "two aboard unless you say"}
			if b, ok := typical.BoatOf(v.Word(BoatHull)); ok {
				g.Value = b.People
				switch b.People.Nominal {
				case 1:
					g.Why = "one aboard unless you say"
				case 4:
					g.Why = "four aboard unless you say"
				}
			}
			return g, true
		},
	},
	{
		Name: "weight of each person", Gives: PeopleEach, Source: "46 CFR 170.090(d): 185 lb a person; ends from memory", Basis: Regulation,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: band.Of(unit.Pounds(160).Kilograms(), load.Person.Kilograms(), unit.Pounds(220).Kilograms()), Why: "the assumed average weight on passenger vessels"}, true
		},
	},
	{
		Name: "weight of the people", Gives: LoadPeople, Needs: []ID{PeopleCount, PeopleEach},
		Formula: "{people.count} x {people.each}", Source: "product", Basis: Estimate,
		Compute: func(v View) (float64, error) { return v.Of(PeopleCount) * v.Of(PeopleEach), nil },
	},
	{
		Name: "gear by people and hull kind", Gives: LoadGear, Needs: []ID{PeopleCount}, May: []ID{BoatHull}, Source: "from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			base := band.Of(unit.Pounds(50), unit.Pounds(100), unit.Pounds(200))
			if b, ok := typical.BoatOf(v.Word(BoatHull)); ok {
				base = b.Gear
			}
			n := unit.Mass(v.Of(PeopleCount))
			each := typical.PersonGear
			return Guess{Value: si(band.Of(base.Low+n*each.Low, base.Nominal+n*each.Nominal, base.High+n*each.High)),
				Why: "tackle, anchor, cooler and life jackets"}, true
		},
	},
	{
		Name: "main engine by its power", Gives: LoadEngine, Said: []ID{EnginePower},
		Source: "ABYC S-30 Table 1A: running weight, controls and cranking battery", Basis: Standard,
		Assume: func(v View) (Guess, bool) {
			if !v.Said(EnginePower) {
				return Guess{}, false
			}
			if v.Of(EnginePower) == 0 {
				return Guess{Why: "no main engine", Constant: true}, true
			}
			o, err := load.OutboardOf(unit.Power(v.Of(EnginePower)))
			w := o.Rigged().Kilograms()
			return Guess{Value: band.Of(0.85*w, w, 1.1*w), Why: "an outboard of that power, by the standard's table"}, err == nil
		},
	},
	{
		Name: "main engine by kind and length", Gives: LoadEngine, Needs: []ID{BoatHull, BoatLength},
		Source: "ABYC S-30 Table 1A at a power usual for the boat, the power from memory", Basis: Estimate,
		Assume: engineGuess,
	},
	{
		// A margin that left the engine out would be a wrong figure told with
		// confidence.
		Name: "main engine by the plate", Gives: LoadEngine, Needs: []ID{LoadPlate},
		Source: "a boat with a plate carries an outboard, of about a quarter of the plate's weight; from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			p := v.Of(LoadPlate)
			return Guess{Value: band.Of(0, 0.25*p, 0.4*p), Why: "a main engine of a quarter of the plate unless you say"}, true
		},
	},
	{
		Name: "fuel by kind and length", Gives: FuelVolume, Needs: []ID{BoatHull, BoatLength}, Said: []ID{LoadEngine, EnginePower}, Source: kindSource, Basis: Estimate,
		Assume: fuelGuess,
	},
	{
		Name: "portable fuel by the plate", Gives: FuelVolume, Needs: []ID{LoadPlate}, Said: []ID{LoadEngine, EnginePower},
		Source: "from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			if noEngine(v) {
				return Guess{Why: "no main engine, no fuel", Constant: true}, true
			}
			t := typical.PortableTank
			return Guess{Value: si(t), Why: "one portable tank unless you say"}, true
		},
	},
	{
		Name: "fuel density", Gives: FuelDensity, Source: "gasoline 6.1 lb a US gallon in boating practice, 6.0 to 6.3 at 60 F by published tables", Basis: Practice,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: band.Of(float64(load.GasolineLow), float64(load.Gasoline), float64(load.GasolineHigh)), Why: "gasoline", Constant: true}, true
		},
	},
	{
		Name: "weight of the fuel", Gives: LoadFuel, Needs: []ID{FuelVolume, FuelDensity},
		Formula: "{fuel.volume} x {fuel.density}", Source: "definition of density", Basis: Estimate,
		Compute: func(v View) (float64, error) {
			return load.Fuel(v.Volume(FuelVolume), unit.Density(v.Of(FuelDensity))).Kilograms(), nil
		},
	},
	{
		Name: "trolling motor by mount and volts", Gives: LoadMotor, May: []ID{MountKind, BoatLength}, Said: []ID{MotorVoltage, MotorCount}, Source: "weights by mount and voltage, from memory", Basis: Estimate,
		Assume: motorWeightGuess,
	},
	{
		Name: "trolling batteries before the choice", Gives: LoadBatteries, May: []ID{BoatHull, BoatLength},
		Said:   []ID{BatteryCount, BatteryGroup, BatteryCapacity, BatteryChemistry, BatteryVoltage, MotorVoltage},
		Source: "weights by case size and chemistry, from memory", Basis: Estimate,
		Assume: batteryWeightGuess,
	},
}

// partsOf gathers the parts of the loaded weight.
func partsOf(v View) load.Parts {
	return load.Parts{Hull: v.Mass(LoadDry), Engine: v.Mass(LoadEngine), Fuel: v.Mass(LoadFuel), People: v.Mass(LoadPeople),
		Gear: v.Mass(LoadGear), Batteries: v.Mass(LoadBatteries), Motor: v.Mass(LoadMotor)}
}

// engineGuess assumes the main engine: the table's weight at the low, usual and
// high power of such a boat.
func engineGuess(v View) (Guess, bool) {
	b, ok := typical.BoatOf(v.Word(BoatHull))
	if !ok {
		return Guess{}, false
	}
	if len(b.Engine) == 0 {
		return Guess{Why: "no main engine on this kind of boat", Constant: true}, true
	}
	p, _ := b.Engine.Value(v.Length(BoatLength), 2)
	weigh := func(p unit.Power) (float64, bool) {
		o, err := load.OutboardOf(min(max(p, unit.Horsepower(0.1)), unit.Horsepower(350)))
		return o.Rigged().Kilograms(), err == nil
	}
	low, ok1 := weigh(p.Low)
	mid, ok2 := weigh(p.Nominal)
	high, ok3 := weigh(p.High)
	return Guess{Value: band.Of(low, mid, high), Why: "an outboard of a usual power for this boat"}, ok1 && ok2 && ok3
}

// noEngine reports a boat that was said to have no main engine.
func noEngine(v View) bool {
	return v.Said(LoadEngine) && v.Of(LoadEngine) == 0 || v.Said(EnginePower) && v.Of(EnginePower) == 0
}

// fuelGuess assumes the fuel aboard: that of such a boat, less or more as its
// engine is smaller or larger than usual. From memory: a tank goes with the
// square root of the power.
func fuelGuess(v View) (Guess, bool) {
	b, ok := typical.BoatOf(v.Word(BoatHull))
	switch {
	case !ok:
		return Guess{}, false
	case len(b.Fuel) == 0 || noEngine(v):
		return Guess{Why: "no main engine, no fuel", Constant: true}, true
	}
	x, _ := b.Fuel.Value(v.Length(BoatLength), 3)
	if v.Said(EnginePower) {
		usual, _ := b.Engine.Value(v.Length(BoatLength), 2)
		k := unit.Volume(min(max(math.Sqrt(v.Of(EnginePower)/float64(usual.Nominal)), 0.5), 1.5))
		x = band.Of(x.Low*min(k, 1), x.Nominal*k, x.High*max(k, 1))
	}
	return Guess{Value: si(x), Why: "a usual tank for this kind and length"}, true
}

// motorWeightGuess assumes the trolling motor's weight. The voltage is the one
// said, or one usual for the boat's length: the voltage that the core would work
// out rests on this weight.
func motorWeightGuess(v View) (Guess, bool) {
	volts := unit.Volts(12)
	switch {
	case v.Said(MotorVoltage):
		volts = v.Voltage(MotorVoltage)
	case v.Length(BoatLength) > unit.Feet(20.5):
		volts = unit.Volts(36)
	case v.Length(BoatLength) > unit.Feet(17.5):
		volts = unit.Volts(24)
	}
	w := typical.AnyMotor
	if m, ok := typical.MountOf(v.Word(MountKind)); ok {
		w = m.WeightAt(volts)
	}
	n := unit.Mass(1)
	if v.Said(MotorCount) {
		n = unit.Mass(v.Of(MotorCount))
	}
	return Guess{Value: si(band.Of(w.Low*n, w.Nominal*n, w.High*n)), Why: "a usual motor for such a boat", Constant: true}, true
}

// batteryWeightGuess assumes the weight of the trolling batteries from what was
// said of them, or from what such boats carry.
func batteryWeightGuess(v View) (Guess, bool) {
	chem := ""
	if v.Said(BatteryChemistry) {
		chem = v.Word(BatteryChemistry)
	}
	each := typical.PoundsOf(eachBattery(v, chem))
	n := batteryCountGuess(v)
	return Guess{Value: band.Of(each.Low*n.Low, each.Nominal*n.Nominal, each.High*n.High), Why: "a usual bank until one is chosen", Constant: true}, true
}

// eachBattery is the weight of one battery in pounds.
func eachBattery(v View, chem string) band.Band[float64] {
	c := typical.ChemistryOf(chem)
	ah := 0.0
	switch {
	case v.Said(BatteryCapacity):
		ah = v.Of(BatteryCapacity)
	case v.Said(BatteryGroup):
		if g := typical.GroupBatteryOf(v.Word(BatteryGroup)); g != nil {
			if chem != "lithium" {
				return g.Pounds
			}
			ah = g.LithiumA.Nominal
		}
	}
	if ah == 0 && chem == "lithium" {
		ah = 100 // from memory: the usual lithium battery of an electric motor
	}
	if ah > 0 {
		volts := 12.0
		if v.Said(BatteryVoltage) {
			volts = v.Of(BatteryVoltage)
		}
		k := ah / 100 * volts / 12
		return band.Of(c.PoundsPer100Ah.Low*k, c.PoundsPer100Ah.Nominal*k, c.PoundsPer100Ah.High*k)
	}
	if h := v.Word(BoatHull); h == typical.Kayak || h == typical.Canoe {
		return band.Of(11.0, 24, 58) // from memory: a small lithium or sealed battery, at most a group 27
	}
	return typical.GroupBatteryOf("27").Pounds
}

// batteryCountGuess is how many batteries to reckon with.
func batteryCountGuess(v View) band.Band[float64] {
	switch {
	case v.Said(BatteryCount):
		return band.Exactly(v.Of(BatteryCount))
	case v.Said(MotorVoltage):
		return band.Exactly(math.Max(1, math.Round(v.Of(MotorVoltage)/12)))
	case v.Length(BoatLength) > unit.Feet(20.5):
		return band.Of(2.0, 3, 3)
	case v.Length(BoatLength) > unit.Feet(17.5):
		return band.Of(1.0, 2, 3)
	}
	return band.Of(1.0, 1, 2)
}
