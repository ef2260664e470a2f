package sheet

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// known is what a person may have said that tells a hull's kind or size. Such a
// row must not work these out: they rest on the hull themselves.
var known = []ID{BoatMaterial, BoatLength, BoatConsole, LoadTotal, LoadSaid, LoadDry, MountKind, MountPlace}

// saidWeight is the loaded weight where it was said; failing that, the dry
// weight and a usual load on top.
func saidWeight(v View) unit.Mass {
	switch {
	case v.Said(LoadTotal):
		return v.Mass(LoadTotal)
	case v.Said(LoadSaid):
		return v.Mass(LoadSaid)
	case v.Said(LoadDry):
		return 1.5*v.Mass(LoadDry) + unit.Pounds(400) // from memory: two people, an engine in keeping and gear
	}
	return 0
}

// A hullGuess is a rule for the kind of hull by what was said. Zero limits and
// an empty material match anything; a limit matches only what was said.
type hullGuess struct {
	material    string
	shorter     unit.Length // boat shorter than this
	lighter     unit.Mass   // loaded weight below this
	hull        string
	others      []string
	why         string
	needsLength bool
	console     bool // a console was named
	kayakMount  bool // a kayak's mount was named
}

// hullGuesses are tried in order; from memory of the trade.
var hullGuesses = []hullGuess{
	{kayakMount: true, hull: typical.Kayak, why: "the mount is a kayak's"},
	{material: "fabric", hull: typical.Inflatable, why: "fabric: taken for an inflatable"},
	{material: "polyethylene", lighter: unit.Pounds(450), hull: typical.Kayak, others: []string{typical.Canoe}, why: "light and plastic: taken for a kayak"},
	{material: "polyethylene", hull: typical.Jon, others: []string{typical.Kayak, typical.Other}, why: "plastic and no kayak by its weight: taken for a flat-bottomed boat"},
	{material: "fiberglass", console: true, hull: typical.Bay, others: []string{typical.DeepVee, typical.Flats}, why: "a glass boat with a console: taken for a bay boat"},
	{material: "aluminum", shorter: unit.Feet(13.5), hull: typical.Jon, others: []string{typical.Vee}, why: "a short aluminum boat: taken for a jon"},
	{material: "aluminum", hull: typical.Vee, others: []string{typical.Jon, typical.DeepVee}, why: "an aluminum boat: taken for a vee unless you say jon or pontoon"},
	{material: "fiberglass", shorter: unit.Feet(16), hull: typical.Vee, others: []string{typical.Flats, typical.Bass}, why: "a short glass boat: taken for a vee"},
	{material: "fiberglass", shorter: unit.Feet(21.5), hull: typical.Bass, others: []string{typical.Bay, typical.DeepVee}, why: "a glass boat of this length: taken for a bass boat"},
	{material: "fiberglass", needsLength: true, hull: typical.Bay, others: []string{typical.DeepVee, typical.Bass}, why: "a glass boat of this length: taken for a bay boat"},
	{material: "fiberglass", hull: typical.Bass, others: []string{typical.Bay, typical.Vee}, why: "a glass boat: taken for a bass boat"},
	{material: "wood", hull: typical.Vee, others: []string{typical.Jon}, why: "a wooden boat: taken for a vee"},
	{console: true, needsLength: true, hull: typical.Bay, others: []string{typical.DeepVee, typical.Vee}, why: "a boat with a console: taken for a bay boat"},
	{shorter: unit.Feet(15), lighter: unit.Pounds(420), hull: typical.Kayak, others: []string{typical.Canoe, typical.Jon}, why: "so short and light: taken for a kayak"},
	{shorter: unit.Feet(13.5), hull: typical.Jon, others: []string{typical.Vee, typical.Inflatable}, why: "a short boat: taken for a jon"},
	{shorter: unit.Feet(18.8), hull: typical.Vee, others: []string{typical.Jon, typical.Bass}, why: "taken for a vee unless you say the kind of hull"},
	{shorter: unit.Feet(20.5), lighter: unit.Pounds(3000), hull: typical.Vee, others: []string{typical.Bass, typical.DeepVee}, why: "taken for a vee unless you say the kind of hull"},
	{needsLength: true, hull: typical.DeepVee, others: []string{typical.Bass, typical.Pontoon}, why: "a boat of this length: taken for a deep vee"},
	{lighter: unit.Pounds(420), hull: typical.Kayak, others: []string{typical.Canoe, typical.Jon}, why: "so light: taken for a kayak"},
	{lighter: unit.Pounds(2600), hull: typical.Vee, others: []string{typical.Jon, typical.Bass}, why: "taken for a vee unless you say the kind of hull"},
	{hull: typical.Bay, others: []string{typical.Bass, typical.Pontoon}, why: "so heavy: taken for a bay boat"},
}

func (g hullGuess) matches(v View, weight unit.Mass) bool {
	long := v.Said(BoatLength)
	switch {
	case g.material != "" && !(v.Said(BoatMaterial) && v.Word(BoatMaterial) == g.material):
		return false
	case g.shorter > 0 && !(long && v.Length(BoatLength) < g.shorter):
		return false
	case g.needsLength && !long:
		return false
	case g.console && !(v.Said(BoatConsole) && v.Yes(BoatConsole)):
		return false
	case g.kayakMount && !(v.Said(MountKind) && v.Word(MountKind) == "bracket" || v.Said(MountPlace) && v.Word(MountPlace) == "kayak"):
		return false
	case g.lighter > 0 && !(weight > 0 && weight < g.lighter):
		return false
	}
	return true
}

const kindSource = "typical of the kind and length of hull, from memory"

// byKind assumes a quantity from the typical table of the hull's kind, read at
// the boat's length. The power is how the quantity grows with length outside
// the table.
func byKind[T ~float64](gives ID, name, why string, power float64, table func(*typical.Boat) typical.ByLength[T]) Row {
	return Row{
		Name: name, Gives: gives, Needs: []ID{BoatHull, BoatLength}, Source: kindSource, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			b, ok := typical.BoatOf(v.Word(BoatHull))
			if !ok {
				return Guess{}, false
			}
			x, inside := table(b).Value(v.Length(BoatLength), power)
			if x.Nominal == 0 {
				return Guess{}, false
			}
			if !inside {
				v.Stretched(table(b).Far(v.Length(BoatLength)), "the boat is longer or shorter than the table of such hulls: a wide estimate")
			}
			return Guess{Value: si(x), Why: why}, true
		},
	}
}

// boatRows: the kind of hull and its size, where nobody said.
var boatRows = []Row{
	{
		Name: "hull kind by what was said", Gives: BoatHull, Said: known, Source: "from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			w := saidWeight(v)
			bare := w == 0 && !v.Said(BoatLength) && !v.Said(BoatMaterial) // nothing is known of a boat but perhaps its mount
			for _, g := range hullGuesses {
				if bare && !g.kayakMount {
					break
				}
				if g.matches(v, w) {
					return Guess{Word: g.hull, Others: g.others, Why: g.why}, true
				}
			}
			return Guess{}, false
		},
	},
	{
		Name: "boat length by kind and weight", Gives: BoatLength, Needs: []ID{BoatHull}, Said: known, Source: kindSource, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			b, ok := typical.BoatOf(v.Word(BoatHull))
			if !ok {
				return Guess{}, false
			}
			w := saidWeight(v)
			if w == 0 {
				return Guess{Value: si(b.Usual), Why: "a usual length for this kind of hull"}, true
			}
			// The usual loaded weight of such a boat is its dry weight half as
			// much again and 400 lb, as in saidWeight; read backwards.
			dry := max((w-unit.Pounds(400))/1.5, w/5)
			l := min(max(b.Dry.LengthAt(dry, 3), 0.8*b.Usual.Low), 1.2*b.Usual.High)
			return Guess{Value: band.Of(float64(l)*0.87, float64(l), float64(l)*1.13), Why: "a usual length for this weight and kind of hull"}, true
		},
	},
	byKind(BoatBeam, "beam by kind and length", "a usual beam for this kind and length", 0.5, func(b *typical.Boat) typical.ByLength[unit.Length] { return b.Beam }),
	byKind(BoatFreeboard, "freeboard by kind and length", "a usual freeboard for this kind and length", 0.5, func(b *typical.Boat) typical.ByLength[unit.Length] { return b.Freeboard }),
}
