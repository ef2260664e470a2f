package sheet

import (
	"math"
	"slices"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/hull"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// BoatTubes is said of pontoon boats.
var BoatTubes = slot("boat.tubes", unit.Count, "Tubes under a pontoon boat")

// Inner cells of the hull.
var (
	WaterTemp      = inner("water.temperature", unit.Degree, "Water temperature")
	WaterRho       = inner("water.density", unit.WaterDensity, "Water's density")
	WaterNu        = inner("water.viscosity", unit.KinematicViscosity, "Water's viscosity")
	HullLengthPart = inner("hull.length-share", unit.Factor, "Waterline length to boat length")
	HullBeamPart   = inner("hull.beam-share", unit.Factor, "Waterline beam of a hull to boat beam")
	HullCount      = inner("hull.count", unit.Count, "Hulls or tubes")
	HullBlock      = inner("hull.block", unit.Factor, "Block coefficient")
	HullPrismatic  = inner("hull.prismatic", unit.Factor, "Prismatic coefficient")
	HullWaterplane = inner("hull.waterplane", unit.Factor, "Waterplane coefficient")
	HullFriction   = inner("hull.form-factor", unit.Factor, "Form factor on friction")
	HullTransom    = inner("hull.transom", unit.BroadArea, "Transom under water")
	HullLeg        = inner("hull.leg-area", unit.SmallArea, "Drag area of the engine's leg")
	HullWaterline  = inner("hull.waterline", unit.LongLength, "Waterline length")
	HullBeam       = inner("hull.beam", unit.LongLength, "Waterline beam of a hull")
	HullDraught    = inner("hull.draught", unit.DeckLength, "Draught")
	HullWetted     = inner("hull.wetted", unit.BroadArea, "Wetted surface")
	HullSlender    = inner("hull.slenderness", unit.Factor, "Length to cube root of volume")
	HullFactor     = inner("hull.drag-factor", unit.Factor, "Hull drag, against the model")
)

// hullNeeds are the cells that a row must need in order to call dragAt.
var hullNeeds = []ID{LoadTotal, WaterRho, WaterNu, HullWaterline, HullBeam, HullSlender, HullPrismatic, HullWaterplane,
	HullWetted, HullFriction, HullTransom, HullLeg, HullCount, HullFactor}

// modelNeeds are those of the model before its uncertainty factor.
var modelNeeds = hullNeeds[:len(hullNeeds)-1]

// dragAt is the hull's resistance at a speed through still, deep water, without
// wind; the model's uncertainty factor and a lowered engine leg are in it. It
// answers smoothly from standing still upwards so that a root can be bracketed;
// a row that shows a speed outside the model's range calls warnSpeed. The error
// is a *RangeError for a negative speed.
func dragAt(v View, u unit.Speed) (unit.Force, error) {
	if !(u >= 0) {
		return 0, &RangeError{Cell: UseSpeed, Value: float64(u), Text: "a speed through the water is not negative"}
	}
	p := modelAt(v, u)
	return unit.Force(v.Of(HullFactor))*(p.Friction+p.Residuary+p.Transom) + p.Leg, nil
}

// A curve is dragAt for many speeds of the same boat, as a search needs it: the
// cells are read once.
type curve struct {
	hull   hull.Curve
	factor unit.Force
}

func dragCurve(v View) curve {
	b := bodyOf(v)
	return curve{b.Curve(waterOf(v)), unit.Force(v.Of(HullFactor))}
}

// at is the drag at a speed of 0 or above.
func (c *curve) at(u unit.Speed) unit.Force {
	p := c.hull.At(u)
	return c.factor*(p.Friction+p.Residuary+p.Transom) + p.Leg
}

// modelAt is the resistance by the model alone.
func modelAt(v View, u unit.Speed) hull.Parts {
	b := bodyOf(v)
	return b.Resistance(waterOf(v), u)
}

func bodyOf(v View) hull.Body {
	return hull.Body{
		Displacement: v.Mass(LoadTotal), Waterline: v.Length(HullWaterline), Beam: v.Length(HullBeam),
		Slenderness: v.Of(HullSlender), Prismatic: v.Of(HullPrismatic), Waterplane: v.Of(HullWaterplane),
		Wetted: v.Area(HullWetted), FormFactor: v.Of(HullFriction), Transom: v.Area(HullTransom),
		Leg: v.Area(HullLeg), Hulls: v.Of(HullCount),
	}
}

func waterOf(v View) hull.Water {
	return hull.Water{Density: unit.Density(v.Of(WaterRho)), Viscosity: unit.Viscosity(v.Of(WaterNu))}
}

// dragFormula shows what dragAt works out; its parts are dragTerm's.
const (
	dragParts   = "{hull.drag-factor} x ({=friction} + {=wave drag} + {=transom drag}) + {=leg drag}"
	dragFormula = dragParts + ", at {%[1]s}: friction {=its coefficient} x {=half the water's density} x ({%[1]s})^2 x {hull.wetted} x {hull.form-factor}, " +
		"wave drag {=its share of the weight} x {load.total}, transom drag {=c6} x {=half the water's density} x ({%[1]s})^2 x {hull.transom}"
)

// dragTerm gives the parts of the drag at the speed that a cell holds.
func dragTerm(way ID) func(v View, name string) (float64, unit.Form) {
	return func(v View, name string) (float64, unit.Form) {
		p := modelAt(v, v.Speed(way))
		body := bodyOf(v)
		c := body.Curve(waterOf(v))
		k := c.Coefficients(v.Speed(way))
		switch name {
		case "its coefficient":
			return k.Friction, unit.Factor
		case "half the water's density":
			return v.Of(WaterRho) / 2, unit.HalfDensity
		case "its share of the weight":
			return k.Residuary, unit.PerHundred
		case "c6":
			return k.Transom, unit.Factor
		case "friction":
			return p.Friction.Newtons(), unit.Thrust
		case "wave drag":
			return p.Residuary.Newtons(), unit.Thrust
		case "transom drag":
			return p.Transom.Newtons(), unit.Thrust
		case "leg drag":
			return p.Leg.Newtons(), unit.Thrust
		}
		return math.NaN(), unit.Thrust // a name that no formula of these rows shows
	}
}

// warnSpeed says so where a shown speed is one that the hull model does not
// reach.
func warnSpeed(v View, u unit.Speed) {
	switch {
	case u > hull.HighestSpeed:
		v.Doubt("above 5.6 mph (2.5 m/s) the hull model has no tests behind it: a rough guess")
	case u < hull.LowestSpeed:
		v.Doubt("below 0.7 mph (0.3 m/s) the hull model says little")
	}
}

const formSource = "typical form of the kind of hull, from memory"

// formRow assumes a coefficient of the hull's form by its kind.
func formRow(gives ID, name string, of func(typical.Form) float64) Row {
	return Row{
		Name: name, Gives: gives, Needs: []ID{BoatHull}, Source: formSource, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			b, ok := typical.BoatOf(v.Word(BoatHull))
			if !ok {
				return Guess{}, false
			}
			return Guess{Value: band.Exactly(of(b.Form)), Why: "usual for this kind of hull", Constant: true}, true
		},
	}
}

// hullRows: the hull in the water, and what a measured speed says of it.
var hullRows = slices.Concat(formRows, measuredRows)

// Ends of the ratio of length to volume of anything that is sold as a boat; from
// memory: a racing shell and a canoe reach 10, a tender full of people comes to 3.
const (
	lightestHull = 12.0
	heaviestHull = 2.6
)

// formRows: water, form, wetted surface, and the factor by which the model may be
// wrong.
var formRows = []Row{
	{
		Name: "water temperature", Gives: WaterTemp, Source: "mid-range of a season's lakes, from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: band.Of(5.0, 15, 25), Why: "cool lake water", Constant: true}, true
		},
	},
	{
		Name: "water density", Gives: WaterRho, Needs: []ID{WaterTemp}, May: []ID{WaterKind},
		Formula: "table at {water.temperature}", Source: "ITTC 7.5-02-01-03; NIST Chemistry WebBook (IAPWS-95)", Basis: Standard,
		Compute: func(v View) (float64, error) {
			w, err := hull.WaterOf(v.Word(WaterKind), v.Temperature(WaterTemp))
			return float64(w.Density), err
		},
	},
	{
		Name: "water viscosity", Gives: WaterNu, Needs: []ID{WaterTemp}, May: []ID{WaterKind},
		Formula: "table at {water.temperature}", Source: "ITTC 7.5-02-01-03; NIST Chemistry WebBook (IAPWS 2008)", Basis: Standard,
		Compute: func(v View) (float64, error) {
			w, err := hull.WaterOf(v.Word(WaterKind), v.Temperature(WaterTemp))
			return float64(w.Viscosity), err
		},
	},
	formRow(HullLengthPart, "waterline share of length", func(f typical.Form) float64 { return f.Length }),
	formRow(HullBeamPart, "waterline share of beam", func(f typical.Form) float64 { return f.Beam }),
	{
		Name: "number of hulls", Gives: HullCount, Needs: []ID{BoatHull}, Said: []ID{BoatTubes}, Source: formSource, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			b, ok := typical.BoatOf(v.Word(BoatHull))
			if !ok {
				return Guess{}, false
			}
			n := b.Form.Hulls
			if n > 1 && v.Said(BoatTubes) {
				n = min(max(v.Of(BoatTubes), 2), 3)
			}
			return Guess{Value: band.Exactly(n), Why: "usual for this kind of hull", Constant: true}, true
		},
	},
	formRow(HullBlock, "block coefficient", func(f typical.Form) float64 { return f.Block }),
	formRow(HullPrismatic, "prismatic coefficient", func(f typical.Form) float64 { return f.Prismatic }),
	formRow(HullWaterplane, "waterplane coefficient", func(f typical.Form) float64 { return f.Waterplane }),
	{
		Name: "form factor by hull kind", Gives: HullFriction, Needs: []ID{BoatHull}, Source: "typical form factor of the kind of hull, from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			b, ok := typical.BoatOf(v.Word(BoatHull))
			if !ok {
				return Guess{}, false
			}
			return Guess{Value: b.Form.Friction, Why: "usual for this kind of hull", Constant: true}, true
		},
	},
	{
		Name: "transom under water by hull kind", Gives: HullTransom, Needs: []ID{BoatHull, BoatLength}, Source: "immersed transom by kind and length, from memory, 35 % either way", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			b, ok := typical.BoatOf(v.Word(BoatHull))
			if !ok {
				return Guess{}, false
			}
			g := Guess{Why: "usual for this kind and length", Constant: true}
			if a, _ := b.Transom.Value(v.Length(BoatLength), 2); a.Nominal > 0 {
				g.Value = si(a)
			}
			return g, true
		},
	},
	{
		Name: "engine leg in the water", Gives: HullLeg, May: []ID{EngineLeg}, Source: "drag area of a lowered leg, from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			if v.Word(EngineLeg) == "down" {
				return Guess{Value: si(typical.LegDragArea), Why: "the main engine's leg left down", Constant: true}, true
			}
			return Guess{Why: "main engine tilted up", Constant: true}, true
		},
	},
	{
		Name: "waterline length", Gives: HullWaterline, Needs: []ID{BoatLength, HullLengthPart},
		Formula: "{boat.length} x {hull.length-share}", Source: formSource, Basis: Estimate,
		Compute: func(v View) (float64, error) { return v.Of(BoatLength) * v.Of(HullLengthPart), nil },
	},
	{
		Name: "waterline beam", Gives: HullBeam, Needs: []ID{BoatBeam, HullBeamPart},
		Formula: "{boat.beam} x {hull.beam-share}", Source: formSource, Basis: Estimate,
		Compute: func(v View) (float64, error) { return v.Of(BoatBeam) * v.Of(HullBeamPart), nil },
	},
	{
		Name: "draught", Gives: HullDraught, Needs: []ID{LoadTotal, WaterRho, HullCount, HullWaterline, HullBeam, HullBlock},
		Formula: "{load.total} / ({water.density} x {hull.count} x {hull.waterline} x {hull.beam} x {hull.block})", Yields: unit.LongLength,
		Source: "definition of the block coefficient", Basis: Model,
		Compute: func(v View) (float64, error) {
			t := hull.Draught(v.Mass(LoadTotal), unit.Density(v.Of(WaterRho)), v.Of(HullCount), v.Length(HullWaterline), v.Length(HullBeam), v.Of(HullBlock))
			return float64(t), nil
		},
	},
	{
		Name: "length to volume", Gives: HullSlender, Needs: []ID{LoadTotal, WaterRho, HullCount, HullWaterline},
		Formula: "{hull.waterline} / cube root of ({load.total} / {water.density} / {hull.count})",
		Source:  "definition of the length-displacement ratio", Basis: Model,
		Compute: func(v View) (float64, error) {
			s := hull.Slenderness(v.Mass(LoadTotal), unit.Density(v.Of(WaterRho)), v.Of(HullCount), v.Length(HullWaterline))
			switch {
			case s > lightestHull*(1+1e-9):
				v.Doubt("so light a weight on so long a hull is unlike any such boat: check both")
			case s < heaviestHull*(1-1e-9):
				v.Doubt("so heavy a load on so short a hull hardly floats: check both")
			}
			return s, nil
		},
	},
	{
		Name: "wetted surface", Gives: HullWetted, Needs: []ID{HullWaterline, HullDraught, LoadTotal, WaterRho, HullCount},
		Formula: "{hull.count} x 1.7 x {hull.waterline} x {hull.draught in ft} + {load.total} / {water.density} / {hull.draught in ft}",
		Source:  "formula of Denny and Mumford, handbooks of naval architecture", Basis: Model,
		Compute: func(v View) (float64, error) {
			n := v.Of(HullCount)
			each := unit.CubicMetres(v.Of(LoadTotal) / v.Of(WaterRho) / n)
			return n * float64(hull.WettedDennyMumford(v.Length(HullWaterline), v.Length(HullDraught), each)), nil
		},
	},
	{
		Name: "hull drag by the model", Gives: HullFactor, Needs: []ID{HullSlender}, Said: []ID{SpeedMeasured}, Source: "spread of small boats about the model, from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			spread, outside := hull.Uncertainty(v.Of(HullSlender))
			g := Guess{Value: spread, Why: "small hulls differ by a third from any formula", Constant: true}
			if outside {
				g.Why = "this hull lies outside the towing tests that the formula rests on"
				v.Warn("this hull is outside the series of towing tests: its drag is read from the nearest one, with a wider band")
			}
			if v.Said(SpeedMeasured) {
				v.Doubt("the measured speed was not used: it needs the thrust that it was measured with, and must lie where that motor still pulls")
			}
			return g, true
		},
	},
}

// si turns a typed band into one of SI values.
func si[T ~float64](b band.Band[T]) band.Band[float64] {
	return band.Band[float64]{Low: float64(b.Low), Nominal: float64(b.Nominal), High: float64(b.High)}
}
