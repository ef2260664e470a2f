package sheet

import (
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/calc/wind"
)

// Inner cells of the wind. Forces are on the bow of a boat that lies still.
var (
	WindHeightFactor = inner("wind.height-factor", unit.Factor, "Wind at boat height, against a forecast's")
	WindGustFactor   = inner("wind.gust-factor", unit.Factor, "Gusts, against the steady wind")
	WindAboard       = inner("wind.aboard", unit.Pace, "Wind at boat height")
	WindPressure     = inner("wind.pressure", unit.Pascal, "Wind pressure")
	WindFrontal      = inner("wind.frontal-area", unit.SmallArea, "Boat's area facing the wind")
	WindLateral      = inner("wind.lateral-area", unit.SmallArea, "Boat's area from the side")
	WindHead         = inner("wind.head-coefficient", unit.Factor, "Wind coefficient, bow on")
	WindPerson       = inner("wind.person-area", unit.SmallArea, "Drag area of one person")
	WindPeople       = inner("wind.people-area", unit.SmallArea, "Drag area of the people")
	WindTop          = inner("wind.top-area", unit.SmallArea, "Drag area of console and top")
	WindDragArea     = inner("wind.drag-area", unit.SmallArea, "Wind drag area in all")
	WindForce        = inner("wind.force", unit.Thrust, "Push of the steady wind")
	WindYaw          = inner("wind.yaw-factor", unit.Factor, "Force when swinging, against bow on")
	WindGusts        = inner("wind.gust-allowance", unit.Thrust, "More for gusts")
	WindSwing        = inner("wind.swing-allowance", unit.Thrust, "More for swinging across the wind")
	WindDriftShare   = inner("wind.drift-share", unit.Fraction, "Surface drift, of the wind speed")
	WindDrift        = inner("wind.drift", unit.Pace, "Drift of the surface water")
	ChopReflected    = inner("chop.reflected", unit.Factor, "Share of the waves thrown back")
	ChopForce        = inner("chop.force", unit.Thrust, "Push of the waves")
	WindAllowance    = inner("wind.allowance", unit.Thrust, "Gusts, swinging and waves together")
	// WindBroadside is what a boat that has swung right across the wind takes:
	// no trolling motor is chosen for it.
	WindSide      = inner("wind.side-coefficient", unit.Factor, "Wind coefficient, from the side")
	WindBroadside = inner("wind.broadside", unit.Thrust, "Push of the steady wind from the side")
	// WindUpper is the anchor load for a boat of this length in 15 knots,
	// brought to this wind: no steady force can exceed it.
	WindUpper = inner("wind.upper-bound", unit.Thrust, "Anchor load in this wind, an upper bound")
)

const (
	sourceBlendermann = "Blendermann 1994 (speed boat, tender, fishing vessel); areas from memory"
	sourceDynamic     = "dynamic pressure, air of ISO 2533 at 1.225 kg/m3; in lb/ft2 and mph the 0.00256 of ASCE 7"
)

// windRows turn a forecast and a boat into forces.
var windRows = []Row{
	{
		Name: "wind from its gusts", Gives: WindSpeed,
		Needs: []ID{WindGust, WindGustFactor}, Said: []ID{WindGust},
		When:    func(v View) bool { return v.Said(WindGust) },
		Formula: "{wind.gust} / {wind.gust-factor}",
		Source:  typical.FromMemory, Basis: Practice,
		Compute: func(v View) (float64, error) { return v.Of(WindGust) / v.Of(WindGustFactor), nil },
	},
	{
		Name: "wind from the waves", Gives: WindSpeed,
		Said:   []ID{ChopHeight},
		Source: typical.FromMemory, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			if !v.Said(ChopHeight) {
				return Guess{}, false
			}
			return Guess{Value: typical.ChopWindOf(v.Length(ChopHeight)), Why: "the wind that goes with such waves"}, true
		},
	},
	{
		Name: "a light wind", Gives: WindSpeed,
		Source: typical.CommonPractice, Basis: Practice,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: typical.LightWind, Why: "a light wind unless you say"}, true
		},
	},
	{
		Name: "gusts as said", Gives: WindGustFactor,
		Said:    []ID{WindGust, WindSpeed},
		When:    func(v View) bool { return v.Said(WindGust) && v.Said(WindSpeed) && v.Of(WindSpeed) > 0 },
		Formula: "{wind.gust} / {wind.speed}, at least 1",
		Source:  "as said", Basis: Said,
		Compute: func(v View) (float64, error) { return max(v.Of(WindGust)/v.Of(WindSpeed), 1), nil },
	},
	constant("usual gusts", WindGustFactor, typical.WindGusts, "gusts run about a third above the mean", typical.FromMemory),
	constant("wind at boat height", WindHeightFactor, typical.WindHeight, "a forecast is for 10 m up; near the water it blows less", typical.FromMemory),
	{
		Name: "wind aboard", Gives: WindAboard,
		Needs:   []ID{WindSpeed, WindHeightFactor},
		Formula: "{wind.speed} x {wind.height-factor}",
		Source:  typical.FromMemory, Basis: Model,
		Compute: func(v View) (float64, error) { return v.Of(WindSpeed) * v.Of(WindHeightFactor), nil },
	},
	{
		Name: "wind pressure", Gives: WindPressure,
		Needs:   []ID{WindAboard},
		Formula: "{=half the air's density} x ({wind.aboard})^2",
		Term:    func(View, string) (float64, unit.Form) { return wind.AirDensity / 2, unit.HalfDensity },
		Source:  sourceDynamic, Basis: Model,
		Compute: func(v View) (float64, error) { return wind.Pressure(v.Speed(WindAboard)).Pascals(), nil },
	},
	{
		Name: "area facing the wind", Gives: WindFrontal,
		Needs: []ID{BoatHull, BoatLength}, Said: []ID{BoatBeam, BoatFreeboard},
		Formula: "typical of a {boat.hull} of {boat.length}, by its beam and freeboard",
		Source:  typical.FromMemory, Basis: Estimate,
		Compute: frontalArea,
	},
	{
		Name: "area from the side", Gives: WindLateral,
		Needs: []ID{BoatHull, BoatLength}, Said: []ID{BoatFreeboard},
		Formula: "typical of a {boat.hull} of {boat.length}, by its freeboard",
		Source:  typical.FromMemory, Basis: Estimate,
		Compute: lateralArea,
	},
	{
		Name: "wind coefficient of the hull", Gives: WindHead,
		Needs:  []ID{BoatHull},
		Source: sourceBlendermann, Basis: Model,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: typical.WindageOf(v.Word(BoatHull)).Head, Constant: true, Why: "by the kind of hull"}, true
		},
	},
	{
		Name: "drag area of a person", Gives: WindPerson,
		Needs: []ID{BoatHull}, May: []ID{PeoplePosture},
		Source: "Hoerner, Fluid-Dynamic Drag (from memory)", Basis: Model,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: si(personArea(v)), Constant: true, Why: "standing to cast where people do"}, true
		},
	},
	{
		Name: "drag area of the people", Gives: WindPeople,
		Needs:   []ID{WindPerson, PeopleCount},
		Formula: "{wind.person-area} x (1 + 0.7 x ({people.count} - 1)), each in the lee of the first",
		Source:  typical.FromMemory, Basis: Model,
		Compute: func(v View) (float64, error) {
			return wind.PeopleArea(v.Of(PeopleCount), v.Area(WindPerson)).SquareMetres(), nil
		},
	},
	{
		Name: "drag area of console and top", Gives: WindTop,
		Needs: []ID{BoatHull}, May: []ID{BoatConsole, BoatTop},
		Source: typical.FromMemory, Basis: Model,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: topArea(v), Constant: true, Why: "by what stands on the boat"}, true
		},
	},
	{
		Name: "wind drag area", Gives: WindDragArea,
		Needs:   []ID{WindHead, WindFrontal, WindPeople, WindTop},
		Formula: "{wind.head-coefficient} x {wind.frontal-area} + {wind.people-area} + {wind.top-area}",
		Source:  sourceBlendermann, Basis: Model,
		Compute: func(v View) (float64, error) {
			return v.Of(WindHead)*v.Of(WindFrontal) + v.Of(WindPeople) + v.Of(WindTop), nil
		},
	},
	{
		Name: "push of the steady wind", Gives: WindForce,
		Needs:   []ID{WindPressure, WindDragArea},
		Formula: "{wind.pressure} x {wind.drag-area}",
		Source:  sourceDynamic, Basis: Model,
		Compute: func(v View) (float64, error) { return v.Of(WindPressure) * v.Of(WindDragArea), nil },
	},
	{
		Name: "swinging across the wind", Gives: WindYaw,
		May: []ID{MountPlace, CurrentSpeed}, Source: typical.FromMemory, Basis: Model,
		Assume: func(v View) (Guess, bool) {
			g := Guess{Value: typical.WindYaw, Constant: true, Why: "held by the bow"}
			switch {
			case v.Of(CurrentSpeed) > typical.RaiseCurrent:
				g.Value, g.Why = typical.WindYawCurrent, "the wind may cross the current"
			case v.Word(MountPlace) == "transom":
				g.Value, g.Why = typical.WindYawStern, "held by the stern"
			}
			return g, true
		},
	},
	{
		Name: "more for gusts", Gives: WindGusts,
		Needs:   []ID{WindForce, WindGustFactor},
		Formula: "{wind.force} x (({wind.gust-factor})^2 - 1)",
		Source:  "force goes with the square of the wind", Basis: Model,
		Compute: func(v View) (float64, error) {
			return wind.GustAllowance(v.Force(WindForce), v.Of(WindGustFactor)).Newtons(), nil
		},
	},
	{
		Name: "more for swinging", Gives: WindSwing,
		Needs:   []ID{WindForce, WindYaw},
		Formula: "{wind.force} x ({wind.yaw-factor} - 1)",
		Source:  typical.FromMemory, Basis: Model,
		Compute: func(v View) (float64, error) {
			return wind.YawAllowance(v.Force(WindForce), v.Of(WindYaw)).Newtons(), nil
		},
	},
	constant("waves thrown back", ChopReflected, typical.ChopReflected, "a bow throws back part of the waves that meet it", typical.FromMemory),
	{
		Name: "push of the waves", Gives: ChopForce,
		Needs: []ID{ChopHeight, BoatBeam, ChopReflected}, Said: []ID{ChopHeight},
		When:    func(v View) bool { return v.Said(ChopHeight) },
		Formula: "{=weight of water} x ({chop.height in ft})^2 x {boat.beam} x {chop.reflected} / 16",
		Term: func(View, string) (float64, unit.Form) {
			return prop.FreshWater.KilogramsPerCubicMetre() * unit.StandardGravity, unit.WaterWeight
		},
		Source: "drift force of waves on a reflecting wall, after Maruo (from memory)", Basis: Model,
		Compute: func(v View) (float64, error) {
			return prop.ChopForce(prop.FreshWater, v.Length(ChopHeight), v.Length(BoatBeam), v.Of(ChopReflected)).Newtons(), nil
		},
	},
	{
		Name: "gusts, swinging and waves", Gives: WindAllowance,
		Needs: []ID{WindGusts, WindSwing, ChopForce}, Said: []ID{ChopHeight},
		When:    func(v View) bool { return v.Said(ChopHeight) },
		Formula: "square root of (({wind.gust-allowance})^2 + ({wind.swing-allowance})^2 + ({chop.force})^2)",
		Source:  "independent allowances add by root sum of squares", Basis: Model,
		Compute: func(v View) (float64, error) {
			return prop.Pull(0, v.Force(WindGusts), v.Force(WindSwing), v.Force(ChopForce)).Newtons(), nil
		},
	},
	{
		Name: "gusts and swinging", Gives: WindAllowance,
		Needs:   []ID{WindGusts, WindSwing},
		Formula: "square root of (({wind.gust-allowance})^2 + ({wind.swing-allowance})^2)",
		Source:  "independent allowances add by root sum of squares", Basis: Model,
		Compute: func(v View) (float64, error) {
			return prop.Pull(0, v.Force(WindGusts), v.Force(WindSwing)).Newtons(), nil
		},
	},
	constant("drift of the surface", WindDriftShare, typical.WindDrift, "wind carries the surface water along", typical.FromMemory),
	{
		Name: "surface drift", Gives: WindDrift,
		Needs:   []ID{WindSpeed, WindDriftShare},
		Formula: "{wind.speed} x {wind.drift-share}",
		Source:  typical.FromMemory, Basis: Model,
		Compute: func(v View) (float64, error) { return v.Of(WindSpeed) * v.Of(WindDriftShare), nil },
	},
	constant("wind coefficient from the side", WindSide, typical.WindSide, "speed boat, between tender and fishing vessel", "Blendermann 1994"),
	{
		Name: "push of the wind from the side", Gives: WindBroadside,
		Needs:   []ID{WindPressure, WindSide, WindLateral, WindPeople, WindTop},
		Formula: "{wind.pressure} x ({wind.side-coefficient} x {wind.lateral-area} + {wind.people-area} + {wind.top-area})",
		Source:  "Blendermann 1994; areas from memory", Basis: Model,
		Compute: func(v View) (float64, error) {
			return v.Of(WindPressure) * (v.Of(WindSide)*v.Of(WindLateral) + v.Of(WindPeople) + v.Of(WindTop)), nil
		},
	},
	{
		Name: "anchor load", Gives: WindUpper,
		Needs:   []ID{BoatLength, WindSpeed},
		Formula: "{=load of a boat of this length at 15 knots} x ({wind.speed in knots} / 15 knots)^2",
		Term: func(v View, _ string) (float64, unit.Form) {
			l, err := wind.UpperBound(v.Length(BoatLength))
			if err != nil {
				return math.NaN(), unit.Thrust
			}
			return l.Lunch.Newtons(), unit.Thrust
		},
		Source: "ABYC H-40, Table 1; surge is in it, so an upper bound only", Basis: Standard,
		Compute: func(v View) (float64, error) {
			l, err := wind.UpperBound(v.Length(BoatLength))
			r := v.Speed(WindSpeed).Knots() / 15
			return l.Lunch.Newtons() * r * r, err
		},
	},
}

// constant is a property of the model or the trade that nobody can be asked for.
func constant(name string, gives ID, b band.Band[float64], why, source string) Row {
	g := Guess{Value: b, Constant: true, Why: why}
	return Row{Name: name, Gives: gives, Source: source, Basis: Model,
		Assume: func(View) (Guess, bool) { return g, true }}
}

// frontalArea is the table's area, wider by a beam that was said and higher by a
// freeboard that was said, against the table's own.
func frontalArea(v View) (float64, error) {
	kind, length := v.Word(BoatHull), v.Length(BoatLength)
	a, inside := typical.WindageOf(kind).Frontal.Value(length, 1.5)
	area := a.Nominal.SquareMetres()
	if b, ok := typical.BoatOf(kind); ok {
		beam, _ := b.Beam.Value(length, 1)
		usual := beam.Nominal.Metres()
		if v.Said(BoatBeam) && usual > 0 {
			area *= v.Of(BoatBeam) / usual
			usual = v.Of(BoatBeam)
		}
		area += usual * freeboardAbove(v, b, length)
	}
	if !inside {
		v.Stretched(typical.WindageOf(kind).Frontal.Far(length), "no windage is on record for a boat of this length: scaled from the nearest")
	}
	return max(area, 0.05), nil
}

func lateralArea(v View) (float64, error) {
	kind, length := v.Word(BoatHull), v.Length(BoatLength)
	a, _ := typical.WindageOf(kind).Lateral.Value(length, 2)
	area := a.Nominal.SquareMetres()
	if b, ok := typical.BoatOf(kind); ok {
		area += length.Metres() * freeboardAbove(v, b, length)
	}
	return max(area, 0.1), nil
}

// freeboardAbove is how much higher the sides stand than the table's, in metres;
// 0 where no freeboard was said.
func freeboardAbove(v View, b *typical.Boat, length unit.Length) float64 {
	if !v.Said(BoatFreeboard) {
		return 0
	}
	f, _ := b.Freeboard.Value(length, 1)
	return v.Of(BoatFreeboard) - f.Nominal.Metres()
}

func personArea(v View) band.Band[unit.Area] {
	switch v.Word(PeoplePosture) {
	case "standing":
		return typical.PersonStanding
	case "seated":
		return typical.PersonSeated
	}
	if typical.WindageOf(v.Word(BoatHull)).Seated {
		return typical.PersonPerched
	}
	return typical.PersonEither
}

// topArea is the drag area of a console and a top or awning, where they were
// said and the hull's own area does not hold them yet.
func topArea(v View) band.Band[float64] {
	w := typical.WindageOf(v.Word(BoatHull))
	var b band.Band[float64]
	add := func(a band.Band[unit.Area]) {
		b.Low += typical.TopCoefficient * a.Low.SquareMetres()
		b.Nominal += typical.TopCoefficient * a.Nominal.SquareMetres()
		b.High += typical.TopCoefficient * a.High.SquareMetres()
	}
	if v.Yes(BoatConsole) && !w.Console {
		add(typical.ConsoleArea)
	}
	if v.Yes(BoatTop) {
		add(w.Top)
	}
	return b
}
