package wind

import (
	"fmt"

	"heronlake.example/ask/calc/unit"
)

// An AnchorLoad is a row of design loads for anchoring gear.
type AnchorLoad struct {
	Length unit.Length // overall
	Lunch  unit.Force  // 15 knots
	Work   unit.Force  // 30 knots
	Storm  unit.Force  // 42 knots
}

// AnchorLoads are the horizontal design loads of ABYC H-40, Table 1, by length
// overall. The rows of 10 and 15 ft, and the storm loads of 20 and 25 ft, are
// from memory; the rest stands in public reprints. Surge is in them: they are
// two to four times a steady wind's drag: a bound from above, by which no motor
// is chosen.
var AnchorLoads = []AnchorLoad{
	anchorLoad(10, 40, 160, 320),
	anchorLoad(15, 60, 250, 500),
	anchorLoad(20, 90, 360, 720),
	anchorLoad(25, 125, 490, 980),
	anchorLoad(30, 175, 700, 1400),
	anchorLoad(35, 225, 900, 1800),
	anchorLoad(40, 300, 1200, 2400),
	anchorLoad(50, 400, 1600, 3200),
	anchorLoad(60, 500, 2000, 4000),
}

func anchorLoad(feet, lunch, work, storm float64) AnchorLoad {
	return AnchorLoad{unit.Feet(feet), unit.PoundForce(lunch), unit.PoundForce(work), unit.PoundForce(storm)}
}

// UpperBound is the row of AnchorLoads for a boat: the next length not below
// its own. It fails for a boat longer than 60 ft.
func UpperBound(length unit.Length) (AnchorLoad, error) {
	for _, l := range AnchorLoads {
		if length <= l.Length*(1+1e-9) {
			return l, nil
		}
	}
	return AnchorLoad{}, fmt.Errorf("anchor load for %.1f ft: the table ends at 60 ft", length.Feet())
}
