package sheet

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/hull"
	"heronlake.example/ask/calc/shaft"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// Inner cells of shaft and trim.
var (
	ShaftHeight     = inner("shaft.height", unit.DeckLength, "Mount surface at its highest")
	ShaftAbove      = inner("shaft.above", unit.DeckLength, "Mount and head above the mount surface")
	ShaftCover      = inner("shaft.cover", unit.DeckLength, "Water over the lower unit")
	ShaftChopShare  = inner("shaft.chop-share", unit.Factor, "Shaft added per wave height")
	ShaftChop       = inner("shaft.chop", unit.DeckLength, "Shaft added for the waves")
	ShaftFitted     = inner("shaft.fitted", unit.DeckLength, "Shaft of the motor in question")
	ShaftSpare      = inner("shaft.spare", unit.DeckLength, "Shaft to spare over the need")
	ShaftTipRise    = inner("shaft.tip-rise", unit.DeckLength, "Propeller tip above the lower unit")
	ShaftAirGap     = inner("shaft.air-gap", unit.DeckLength, "Least water over the propeller's tip")
	ShaftWaveLimit  = inner("shaft.wave-limit", unit.DeckLength, "Waves at which the propeller draws air")
	ShaftHead       = inner("shaft.head", unit.DeckLength, "Motor head above the shaft")
	ShaftUnit       = inner("shaft.lower-unit", unit.DeckLength, "Lower unit below the shaft")
	ShaftStowed     = inner("shaft.stowed", unit.DeckLength, "Length on the deck when stowed")
	ShaftDraught    = inner("shaft.draught", unit.DeckLength, "Water needed under the motor's mount")
	TrimInBow       = inner("trim.battery-share", unit.Fraction, "Share of the batteries in the bow")
	TrimBowWeight   = inner("trim.bow-weight", unit.Weight, "Weight that stays in the bow")
	TrimLever       = inner("trim.lever", unit.LongLength, "Bow weight ahead of the middle")
	TrimArea        = inner("trim.waterplane-area", unit.BroadArea, "Area at the waterline")
	TrimInertia     = inner("trim.second-moment", unit.AreaMoment, "Second moment of the area at the waterline")
	TrimFreeboard   = inner("trim.freeboard", unit.DeckLength, "Freeboard left at the bow's end")
	leverShare      = 0.5 // of the waterline length: the mount overhangs its end about as much as the centre of flotation lies aft of amidships (from memory)
	typicalShaftLen = inchLadder(typical.ShaftLengths)
)

func inchLadder(inches []float64) Ladder {
	l := make(Ladder, len(inches))
	for i, x := range inches {
		l[i] = float64(unit.Inches(x))
	}
	return l
}

// shaftRows: where the motor mounts, how long its shaft must be, what a shaft
// leaves, and how far the bow goes down.
var shaftRows = []Row{
	{
		Name: "mount place by mount, control and hull", Gives: MountPlace, May: []ID{BoatHull, BoatLength}, Said: []ID{MountKind, MotorControl},
		Source: "common practice, no published source", Basis: Practice,
		Assume: placeGuess,
	},
	{
		Name: "mount kind by place and control", Gives: MountKind, Needs: []ID{MountPlace}, Said: []ID{MotorControl},
		Source: "common practice, no published source", Basis: Practice,
		Assume: mountGuess,
	},
	{
		Name: "mount height by hull, length and place", Gives: MountHeight, Needs: []ID{BoatHull, BoatLength, MountPlace}, Said: []ID{BoatFreeboard},
		Source: "heights by kind and length of hull, from memory", Basis: Estimate,
		Assume: heightGuess,
	},
	{
		Name: "mount and head above the surface", Gives: ShaftAbove, Needs: []ID{MountKind}, Source: "from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			m, ok := typical.MountOf(v.Word(MountKind))
			if !ok {
				return Guess{}, false
			}
			return Guess{Value: si(m.Above), Why: "what such a mount and the head take", Constant: true}, true
		},
	},
	{
		Name: "water over the lower unit", Gives: ShaftCover, Needs: []ID{MountKind}, May: []ID{BoatHull}, Source: "about 12 in, common practice, no published source; kayaks and ends from memory", Basis: Practice,
		Assume: func(v View) (Guess, bool) {
			if v.Word(MountKind) == "bracket" || v.Word(BoatHull) == typical.Kayak {
				return Guess{Value: si(typical.CoverKayak), Why: "a kayak hardly pitches", Constant: true}, true
			}
			return Guess{Value: si(typical.Cover), Why: "keeps the propeller in solid water", Constant: true}, true
		},
	},
	{
		Name: "shaft per wave height", Gives: ShaftChopShare, Source: "from memory", Basis: Practice,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: typical.ChopShare, Why: "how far a mount rises on a wave", Constant: true}, true
		},
	},
	{
		Name: "shaft for the waves", Gives: ShaftChop, Needs: []ID{ChopHeight, ShaftChopShare},
		Formula: "{chop.height} x {shaft.chop-share}", Source: "common practice, no published source", Basis: Practice,
		Compute: func(v View) (float64, error) {
			if h := v.Length(ChopHeight); h < 0 || h > highestWave {
				return 0, &RangeError{Cell: ChopHeight, Value: float64(h), Low: 0, High: float64(highestWave)}
			}
			return float64(shaft.Chop(v.Length(ChopHeight), v.Of(ShaftChopShare))), nil
		},
	},
	{
		Name: "highest of the heights said", Gives: ShaftHeight, Needs: []ID{MountHeight},
		When: func(v View) bool {
			_, ok := v.Range(MountHeight)
			return ok
		},
		Formula: "upper end of what was said, about {mount.height}", Source: "common practice, no published source: the shaft must reach when the boat floats highest", Basis: Practice,
		Compute: func(v View) (float64, error) {
			r, _ := v.Range(MountHeight)
			return r.High, nil
		},
	},
	needRow("shaft needed in waves, at the highest", ShaftHeight, true),
	needRow("shaft needed at the highest", ShaftHeight, false),
	needRow("shaft needed in waves", MountHeight, true),
	needRow("shaft needed", MountHeight, false),
	{
		// Always the length above the need. One a fraction below is not picked
		// but named: waves and cover are in the need already.
		Name: "next shaft length", Gives: ShaftClass, Needs: []ID{ShaftNeed}, Ladder: true,
		Formula: "the next length not below {shaft.need}", Source: "lengths on the market, from memory, or the shop's own", Basis: Practice,
		Compute: func(v View) (float64, error) {
			l, need := v.Ladder(ShaftClass, typicalShaftLen), v.Of(ShaftNeed)
			x, ok := l.Next(need)
			if !ok {
				return 0, &RangeError{Cell: ShaftNeed, Value: need, Text: "no shaft on the list is so long: lower the mount or look for a longer shaft"}
			}
			if !v.Noting() {
				return x, nil
			}
			for _, s := range l {
				if shaft.Judge(unit.Length(s), unit.Length(need)) == shaft.Tight {
					v.Warn("a shaft of " + unit.Show(s, unit.DeckLength, unit.US) + " (" + unit.Show(s, unit.DeckLength, unit.Metric) + ") falls short by less than an inch: tight, not wrong, since the need has waves and cover in it")
				}
			}
			return x, nil
		},
	},
	{
		Name: "shaft of the motor named", Gives: ShaftFitted, Needs: []ID{MotorShaft},
		Formula: "{motor.shaft}", Source: "as said", Basis: Said,
		Compute: func(v View) (float64, error) { return v.Of(MotorShaft), nil },
	},
	{
		Name: "shaft chosen", Gives: ShaftFitted, Needs: []ID{ShaftClass},
		Formula: "{shaft.class}", Source: "the length chosen", Basis: Practice,
		Compute: func(v View) (float64, error) { return v.Of(ShaftClass), nil },
	},
	{
		Name: "shaft to spare", Gives: ShaftSpare, Needs: []ID{ShaftFitted, ShaftNeed},
		Formula: "{shaft.fitted} - {shaft.need}", Source: "difference", Basis: Practice,
		Compute: func(v View) (float64, error) { return v.Of(ShaftFitted) - v.Of(ShaftNeed), nil },
	},
	{
		Name: "depth to the lower unit", Gives: ShaftSubmerged, Needs: []ID{ShaftFitted, MountHeight, ShaftAbove},
		Formula: "{shaft.fitted} - {mount.height} - {shaft.above}", Source: "geometry", Basis: Model,
		Compute: func(v View) (float64, error) {
			d := shaft.Submergence(v.Length(ShaftFitted), v.Length(MountHeight), v.Length(ShaftAbove))
			if d <= 0 {
				v.Doubt("the lower unit would hang above the water")
			}
			return float64(d), nil
		},
	},
	{
		Name: "propeller tip above the lower unit", Gives: ShaftTipRise, Source: "from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: si(typical.TipRise), Why: "propellers are wider than the unit they sit on", Constant: true}, true
		},
	},
	{
		Name: "least water over the tip", Gives: ShaftAirGap, Source: "from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: band.Exactly(float64(typical.AirGap)), Why: "under it the propeller draws air", Constant: true}, true
		},
	},
	{
		Name: "waves at which the propeller draws air", Gives: ShaftWaveLimit, Needs: []ID{ShaftSubmerged, ShaftTipRise, ShaftAirGap, ShaftChopShare},
		Formula: "({shaft.submergence} - {shaft.tip-rise} - {shaft.air-gap}) / {shaft.chop-share}", Source: "from memory", Basis: Estimate,
		Compute: func(v View) (float64, error) {
			h, err := shaft.WaveLimit(v.Length(ShaftSubmerged), v.Length(ShaftTipRise), v.Length(ShaftAirGap), v.Of(ShaftChopShare))
			return float64(h), err
		},
	},
	{
		Name: "motor head", Gives: ShaftHead, Source: "from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: si(typical.HeadLength), Why: "a usual head", Constant: true}, true
		},
	},
	{
		Name: "lower unit", Gives: ShaftUnit, Source: "from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: si(typical.UnitHeight), Why: "a usual lower unit with its propeller", Constant: true}, true
		},
	},
	{
		Name: "length on the deck", Gives: ShaftStowed, Needs: []ID{ShaftFitted, ShaftHead, ShaftUnit},
		Formula: "{shaft.fitted} + {shaft.head} + {shaft.lower-unit}", Source: "geometry", Basis: Model,
		Compute: func(v View) (float64, error) {
			return float64(shaft.Stowed(v.Length(ShaftFitted), v.Length(ShaftHead), v.Length(ShaftUnit))), nil
		},
	},
	{
		Name: "water needed under the mount", Gives: ShaftDraught, Needs: []ID{ShaftSubmerged, ShaftUnit}, May: []ID{WaterDepth},
		Formula: "{shaft.submergence} + {shaft.lower-unit}", Source: "geometry", Basis: Model,
		Compute: func(v View) (float64, error) {
			d := shaft.Draught(v.Length(ShaftSubmerged), v.Length(ShaftUnit))
			if v.Has(WaterDepth) && v.Length(WaterDepth) < d {
				v.Warn("the water named is shallower than the motor reaches: raise it on its shaft")
			}
			return float64(d), nil
		},
	},
	{
		Name: "batteries in the bow by hull kind", Gives: TrimInBow, Needs: []ID{BoatHull}, Source: "from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			b, ok := typical.BoatOf(v.Word(BoatHull))
			if !ok {
				return Guess{}, false
			}
			return Guess{Value: b.InBow, Why: "where such boats carry them", Constant: true}, true
		},
	},
	{
		Name: "weight that stays in the bow", Gives: TrimBowWeight, Needs: []ID{MountPlace, LoadMotor, PlateBatteries, TrimInBow},
		When:    func(v View) bool { return v.Word(MountPlace) == "bow" },
		Formula: "{load.motor} + {trim.battery-share} x {plate.batteries}", Source: "sum of the parts", Basis: Estimate,
		Compute: func(v View) (float64, error) {
			return v.Of(LoadMotor) + v.Of(TrimInBow)*v.Of(PlateBatteries), nil
		},
	},
	{
		Name: "lever of the bow weight", Gives: TrimLever, Needs: []ID{HullWaterline},
		Formula: "{hull.waterline} / 2", Source: "from memory", Basis: Estimate,
		Compute: func(v View) (float64, error) { return leverShare * v.Of(HullWaterline), nil },
	},
	{
		Name: "area at the waterline", Gives: TrimArea, Needs: []ID{HullCount, HullWaterline, HullBeam, HullWaterplane},
		Formula: "{hull.count} x {hull.waterline} x {hull.beam} x {hull.waterplane}", Source: "definition of the waterplane coefficient", Basis: Model,
		Compute: func(v View) (float64, error) { return float64(waterplane(v).Area()), nil },
	},
	{
		Name: "second moment at the waterline", Gives: TrimInertia, Needs: []ID{TrimArea, HullCount, HullWaterline, HullBeam, HullWaterplane},
		Formula: "{trim.waterplane-area} x ({hull.waterline})^2 / (12 x (3 - 2 x {hull.waterplane}))", Source: "integral over half-breadths (1 - x^n), own derivation", Basis: Model,
		Compute: func(v View) (float64, error) { return waterplane(v).Inertia(), nil },
	},
	{
		Name: "bow sinkage", Gives: TrimBowSink, Needs: []ID{TrimBowWeight, TrimLever, TrimArea, TrimInertia, HullCount, HullWaterline, HullBeam, HullWaterplane, WaterRho},
		Formula: "{trim.bow-weight} / ({water.density} x {trim.waterplane-area}) + {trim.bow-weight} x ({trim.lever})^2 / ({water.density} x {trim.second-moment})",
		Yields:  unit.LongLength,
		Source:  "hydrostatics: parallel sinkage and trim", Basis: Model,
		Compute: func(v View) (float64, error) {
			d, err := waterplane(v).EndSinkage(v.Mass(TrimBowWeight), unit.Density(v.Of(WaterRho)), v.Length(TrimLever))
			return float64(d), err
		},
	},
	{
		Name: "freeboard left at the bow", Gives: TrimFreeboard, Needs: []ID{BoatFreeboard, TrimBowSink},
		Formula: "{boat.freeboard} - {trim.bow-sink}", Source: "geometry", Basis: Model,
		Compute: func(v View) (float64, error) {
			left := v.Of(BoatFreeboard) - v.Of(TrimBowSink)
			if left < float64(unit.Inches(6)) { // from memory
				v.Warn("little freeboard is left at the bow: carry batteries aft")
			}
			return left, nil
		},
	},
}

// needRow adds up what the shaft must span from the height in a cell, with an
// allowance for waves or, where none were named, without.
func needRow(name string, height ID, waves bool) Row {
	r := Row{Name: name, Gives: ShaftNeed, Needs: []ID{height, ShaftAbove, ShaftCover}, Said: []ID{ChopHeight},
		Formula: "{" + height.String() + "} + {shaft.above} + {shaft.cover}", Source: "common practice, no published source", Basis: Practice}
	if waves {
		r.Needs = append(r.Needs, ShaftChop)
		r.Formula += " + {shaft.chop}"
	} else {
		r.When = func(v View) bool { return !v.Said(ChopHeight) } // never without the waves that were named
	}
	r.Compute = func(v View) (float64, error) {
		n := shaft.Need{Height: v.Length(height), Above: v.Length(ShaftAbove), Cover: v.Length(ShaftCover)}
		if n.Height < 0 || n.Height > highestMount {
			return 0, &RangeError{Cell: MountHeight, Value: float64(n.Height), Low: 0, High: float64(highestMount)}
		}
		if waves {
			n.Chop = v.Length(ShaftChop)
		}
		return float64(n.Length()), nil
	}
	return r
}

// highestMount and highestWave bound what the allowances were made for.
const (
	highestMount = unit.Length(2)
	highestWave  = unit.Length(1.5)
)

func waterplane(v View) hull.Waterplane {
	return hull.Waterplane{Length: v.Length(HullWaterline), Beam: v.Length(HullBeam), Coefficient: v.Of(HullWaterplane), Hulls: v.Of(HullCount)}
}

// placeGuess puts the motor where the mount or the way of steering says, or
// where such hulls carry it.
func placeGuess(v View) (Guess, bool) {
	if v.Said(MountKind) {
		switch v.Word(MountKind) {
		case "clamp":
			return Guess{Word: "transom", Others: []string{"kayak"}, Why: "a clamp goes on the transom"}, true
		case "bracket":
			return Guess{Word: "kayak", Why: "a bracket is a kayak's mount"}, true
		case "folding-arm", "compact-pivot":
			return Guess{Word: "bow", Why: "such a mount is screwed to the bow deck"}, true
		}
	}
	if v.Said(MotorControl) {
		switch v.Word(MotorControl) {
		case "foot-cable", "foot-electric":
			return Guess{Word: "bow", Why: "a foot pedal steers from the bow"}, true
		}
	}
	b, ok := typical.BoatOf(v.Word(BoatHull))
	switch {
	case !ok:
		return Guess{Word: "bow", Others: []string{"transom"}, Why: "on the bow unless you say"}, true
	case b.Aft == "bow":
		return Guess{Word: "bow", Why: "such boats carry it on the bow deck"}, true
	case b.Aft == "transom" && b.BowFrom > 0 && v.Has(BoatLength) && v.Length(BoatLength) >= b.BowFrom:
		return Guess{Word: "bow", Others: []string{b.Aft}, Why: "on the bow unless you say there is no front deck"}, true
	case b.Aft == "transom" && b.BowFrom < unit.Feet(30) && b.BowFrom > 0:
		return Guess{Word: "transom", Others: []string{"bow"}, Why: "a boat this short seldom has a front deck"}, true
	}
	return Guess{Word: b.Aft, Why: "where such boats carry it"}, true
}

// mountGuess picks the kind of mount by the place.
func mountGuess(v View) (Guess, bool) {
	switch v.Word(MountPlace) {
	case "transom":
		return Guess{Word: "clamp", Why: "a clamp on the transom"}, true
	case "kayak":
		return Guess{Word: "bracket", Others: []string{"clamp"}, Why: "a kayak bracket"}, true
	case "bow":
		if v.Said(MotorControl) {
			switch v.Word(MotorControl) {
			case "remote", "foot-electric":
				return Guess{Word: "compact-pivot", Others: []string{"folding-arm"}, Why: "electric steering usually comes on a compact mount"}, true
			}
		}
		return Guess{Word: "folding-arm", Others: []string{"compact-pivot"}, Why: "a folding arm unless you say"}, true
	}
	return Guess{}, false
}

// heightGuess estimates the mount surface's height: from the freeboard where it
// was said, a bow standing about a fifth higher than the sides; from the table of
// such hulls otherwise.
func heightGuess(v View) (Guess, bool) {
	b, ok := typical.BoatOf(v.Word(BoatHull))
	if !ok {
		return Guess{}, false
	}
	atBow := v.Word(MountPlace) == "bow"
	if atBow && v.Said(BoatFreeboard) {
		f := v.Of(BoatFreeboard)
		return Guess{Value: band.Of(f, 1.2*f, 1.45*f), Why: "from the freeboard said, the bow a fifth higher"}, true
	}
	table, why := b.Stern, "a usual height of the stern for this kind and length"
	if atBow {
		table, why = b.Bow, "a usual height of the bow for this kind and length"
	}
	h, inside := table.Value(v.Length(BoatLength), 0.5)
	if h.Nominal == 0 {
		return Guess{}, false
	}
	if !inside {
		v.Stretched(table.Far(v.Length(BoatLength)), "the boat is longer or shorter than the table of such hulls: measure the height")
	}
	return Guess{Value: si(h), Why: why}, true
}
