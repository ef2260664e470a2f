package typical

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// A Windage is what one kind of hull shows to the wind, people not counted.
// Areas are from memory of the trade; the coefficients of the faired kinds take
// their ends from Blendermann (1994), whose speed boat and tender have 0.55 and
// whose fishing vessel has 0.70 against a wind on the bow.
type Windage struct {
	Kind string
	// Frontal and Lateral are the areas above the water, by boat length, of a
	// hull with the beam and freeboard of its table in Boats.
	Frontal, Lateral ByLength[unit.Area]
	// Head is the coefficient on the frontal area, a bare number. Its band
	// covers what the areas are not known to as well.
	Head band.Band[float64]
	// Seated is true where people usually sit.
	Seated bool
	// Console is true where the areas already hold one.
	Console bool
	// Top is the area that a top or awning adds, of coefficient TopCoefficient.
	Top band.Band[unit.Area]
}

// TopCoefficient is the coefficient of consoles, tops, awnings and fences, which
// are bluff: a cube face on has 1.05, a square plate 1.17 (Aeronautical
// Engineer's Data Book), a flat plate 1.28 (NASA Glenn, Shape Effects on Drag).
const TopCoefficient = 1.1

// ConsoleArea is what a console adds to a hull whose windage holds none.
var ConsoleArea = squareMetres(0.3, 0.5, 0.8)

var (
	fairedHead = b3(0.50, 0.60, 0.75)
	bluffHead  = b3(0.60, 0.80, 1.00)
	smallTop   = squareMetres(0.5, 0.8, 1.2)
	hardTop    = squareMetres(0.8, 1.2, 1.6)
)

func squareMetres(low, nominal, high float64) band.Band[unit.Area] {
	return band.Band[unit.Area]{Low: unit.SquareMetres(low), Nominal: unit.SquareMetres(nominal), High: unit.SquareMetres(high)}
}

// sq is an area shown to the wind at a boat length in feet.
func sq(feet, area float64) At[unit.Area] {
	return row(feet, unit.SquareMetres, area, area, area)
}

// Windages lists the kinds of hull as Boats does.
var Windages = []Windage{
	{
		Kind: Jon, Head: bluffHead, Top: smallTop,
		Frontal: ByLength[unit.Area]{sq(14, 0.8), sq(16, 0.8)},
		Lateral: ByLength[unit.Area]{sq(14, 1.7), sq(16, 2.2)},
	},
	{
		Kind: Vee, Head: fairedHead, Top: smallTop,
		Frontal: ByLength[unit.Area]{sq(14, 0.85), sq(16, 1.15), sq(18, 1.8)},
		Lateral: ByLength[unit.Area]{sq(14, 2.2), sq(16, 3.0), sq(18, 3.9)},
	},
	{
		Kind: DeepVee, Head: fairedHead, Top: hardTop,
		Frontal: ByLength[unit.Area]{sq(16, 1.3), sq(18, 2.0)},
		Lateral: ByLength[unit.Area]{sq(16, 3.2), sq(18, 4.2)},
	},
	{
		Kind: Bass, Head: b3(0.50, 0.65, 0.80), Top: smallTop, Console: true,
		Frontal: ByLength[unit.Area]{sq(18, 1.4), sq(20, 1.7)},
		Lateral: ByLength[unit.Area]{sq(18, 2.8), sq(20, 3.4)},
	},
	{
		Kind: Bay, Head: b3(0.55, 0.70, 0.85), Top: hardTop, Console: true,
		Frontal: ByLength[unit.Area]{sq(20, 2.2), sq(22, 2.5)},
		Lateral: ByLength[unit.Area]{sq(20, 4.5), sq(22, 5.2)},
	},
	{
		Kind: Flats, Head: fairedHead, Top: smallTop,
		Frontal: ByLength[unit.Area]{sq(17, 1.1)},
		Lateral: ByLength[unit.Area]{sq(17, 2.3)},
	},
	{
		Kind: Pontoon, Head: b3(0.90, 1.10, 1.28), Top: smallTop, Seated: true, Console: true,
		Frontal: ByLength[unit.Area]{sq(20, 2.9), sq(24, 2.9)},
		Lateral: ByLength[unit.Area]{sq(20, 6.0), sq(24, 7.5)},
	},
	{
		Kind: Canoe, Head: b3(0.40, 0.50, 0.65), Top: smallTop, Seated: true,
		Frontal: ByLength[unit.Area]{sq(16, 0.25)},
		Lateral: ByLength[unit.Area]{sq(16, 1.5)},
	},
	{
		Kind: Kayak, Head: b3(0.50, 0.60, 0.75), Top: smallTop, Seated: true,
		Frontal: ByLength[unit.Area]{sq(12, 0.15)},
		Lateral: ByLength[unit.Area]{sq(12, 0.7)},
	},
	{
		Kind: Inflatable, Head: bluffHead, Top: smallTop, Seated: true,
		Frontal: ByLength[unit.Area]{sq(10.50, 0.65)},
		Lateral: ByLength[unit.Area]{sq(10.50, 1.4)},
	},
	{
		Kind: Sailboat, Head: b3(0.70, 0.90, 1.15), Top: smallTop, Seated: true, Console: true,
		Frontal: ByLength[unit.Area]{sq(14, 1.2), sq(22, 3.5)}, // mast and rigging with it
		Lateral: ByLength[unit.Area]{sq(14, 3.5), sq(22, 9.0)},
	},
	{
		Kind: Other, Head: b3(0.50, 0.70, 1.00), Top: smallTop,
		Frontal: ByLength[unit.Area]{sq(14, 0.85), sq(16, 1.15), sq(18, 1.8), sq(22, 2.5)},
		Lateral: ByLength[unit.Area]{sq(14, 2.2), sq(16, 3.0), sq(18, 3.9), sq(22, 5.2)},
	},
}

// WindageOf finds the windage of a kind of hull; a word that is none gets that
// of Other.
func WindageOf(kind string) *Windage {
	for i := range Windages {
		if Windages[i].Kind == kind {
			return &Windages[i]
		}
	}
	return &Windages[len(Windages)-1]
}

// WindSide is the coefficient of a wind abeam on the lateral area: Blendermann
// (1994) has 0.85 for a tender, 0.90 for a speed boat, 0.95 for a fishing vessel.
var WindSide = b3(0.85, 0.90, 0.95)

// Drag areas of one person. Hoerner's standing and sitting man (from memory) are
// the nominal values.
var (
	PersonStanding = squareMetres(0.65, 0.84, 1.0)
	PersonSeated   = squareMetres(0.40, 0.56, 0.65)
	// PersonEither is for a posture that nobody said, on a boat where people
	// stand to cast.
	PersonEither = squareMetres(0.40, 0.84, 1.0)
	// PersonPerched is the same where they usually sit.
	PersonPerched = squareMetres(0.40, 0.56, 0.84)
)

// Of the wind itself; from memory.
var (
	// WindHeight is the wind at 1 to 1.5 m, on speed, against a forecast for
	// 10 m. What somebody feels or meters in the boat is that wind already.
	WindHeight = b3(0.72, 0.78, 1.0)
	// WindGusts is a gust against the mean, on speed.
	WindGusts = b3(1.2, 1.3, 1.5)
	// WindYaw is the whole force on a boat that swings across the wind, against
	// the wind on its bow: held by the bow, held by the stern, and where the
	// wind may cross a current.
	WindYaw        = b3(1.0, 1.15, 1.5)
	WindYawStern   = b3(1.0, 1.3, 1.8)
	WindYawCurrent = b3(1.0, 1.3, 2.5)
	// WindDrift is the drift of the surface water, a share of the wind speed.
	WindDrift = b3(0.02, 0.025, 0.03)
	// ChopReflected is the share of the waves' energy that the hull throws back.
	ChopReflected = b3(0.1, 0.3, 0.6)
)

// LightWind is the wind for which a boat is fitted when nobody speaks of any,
// SI. Common practice, no published source: a lake in the morning.
var LightWind = band.Of(
	unit.MilesPerHour(3).MetresPerSecond(), unit.MilesPerHour(8).MetresPerSecond(), unit.MilesPerHour(15).MetresPerSecond())

// A ChopWind is the wind that goes with waves of up to a height on small
// waters, SI. From memory; the Beaufort scale gives the waves of the open sea,
// which no small lake has the fetch for.
type ChopWind struct {
	UpTo  unit.Length
	Speed band.Band[float64]
}

// ChopWinds are ordered by height; the last has no limit.
var ChopWinds = []ChopWind{
	{unit.Inches(6), mphBand(5, 9, 13)},
	{unit.Inches(13), mphBand(8, 13, 18)},
	{unit.Inches(25), mphBand(12, 18, 24)},
	{unit.Inches(1e4), mphBand(16, 22, 30)},
}

func mphBand(low, nominal, high float64) band.Band[float64] {
	return band.Of(unit.MilesPerHour(low).MetresPerSecond(),
		unit.MilesPerHour(nominal).MetresPerSecond(), unit.MilesPerHour(high).MetresPerSecond())
}

// ChopWindOf is the wind that goes with waves of a height.
func ChopWindOf(height unit.Length) band.Band[float64] {
	for _, c := range ChopWinds {
		if height <= c.UpTo {
			return c.Speed
		}
	}
	return ChopWinds[len(ChopWinds)-1].Speed
}
