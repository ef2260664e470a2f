package load

import (
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// An Outboard is a row of ABYC S-30, Table 1A, which 33 CFR 183.75 has used since
// 1 June 2018 (82 FR 16512): weights of a gasoline outboard and what belongs to
// it, for one engine.
type Outboard struct {
	Low, High        float64   // rated power, horsepower
	Dry              unit.Mass // engine
	Running          unit.Mass // engine with its fluids and propeller, 1.05 x dry
	Swamped          unit.Mass // about 0.85 x running
	Controls         unit.Mass // controls and rigging
	Battery          unit.Mass // cranking battery, dry
	BatterySubmerged unit.Mass
	Fuel             unit.Mass // full portable tank
	Total            unit.Mass // as printed: running + controls + battery + fuel
}

func outboard(low, high, dry, running, swamped, controls, battery, submerged, fuel, total float64) Outboard {
	lb := unit.Pounds
	return Outboard{low, high, lb(dry), lb(running), lb(swamped), lb(controls), lb(battery), lb(submerged), lb(fuel), lb(total)}
}

// Outboards is the table, in pounds as printed.
var Outboards = []Outboard{
	outboard(0.1, 2.0, 30, 32, 27, 0, 0, 0, 0, 32),
	outboard(2.1, 3.9, 42, 44, 37, 0, 0, 0, 0, 44),
	outboard(4.0, 6.9, 66, 69, 59, 0, 0, 0, 25, 94),
	outboard(7.0, 10.9, 105, 110, 94, 5, 20, 11, 50, 185),
	outboard(11.0, 22.9, 127, 133, 113, 6, 45, 25, 50, 234),
	outboard(23.0, 34.9, 187, 196, 167, 9, 45, 25, 100, 350),
	outboard(35.0, 64.9, 286, 300, 255, 14, 45, 25, 100, 459),
	outboard(65.0, 94.9, 439, 461, 392, 22, 45, 25, 100, 628),
	outboard(95.0, 104.9, 458, 481, 409, 23, 45, 25, 100, 649),
	outboard(105.0, 144.9, 526, 552, 469, 26, 45, 25, 100, 723),
	outboard(145.0, 194.9, 561, 589, 501, 28, 45, 25, 100, 762),
	outboard(195.0, 209.9, 652, 685, 582, 33, 45, 25, 100, 863),
	outboard(210.0, 300.0, 699, 734, 624, 35, 45, 25, 100, 914),
	outboard(300.1, 350.0, 884, 928, 789, 44, 45, 25, 100, 1117),
}

// OutboardOf finds the row for a rated power, 0.1 to 350 hp; a power in one of the
// table's gaps of a tenth belongs to the row above. Outside the
// table it returns a *band.OutsideError.
func OutboardOf(power unit.Power) (Outboard, error) {
	horsepower := power.Horsepower()
	horsepower = math.Round(horsepower*1000) / 1000 // drop the last bits that the unit leaves
	if horsepower >= Outboards[0].Low {
		for _, o := range Outboards {
			if horsepower <= o.High {
				return o, nil
			}
		}
	}
	return Outboard{}, &band.OutsideError{Input: "outboard's power", Unit: "hp", Value: horsepower, Low: Outboards[0].Low, High: Outboards[len(Outboards)-1].High}
}

// Rigged is the engine running, with controls and cranking battery but without
// fuel.
func (o Outboard) Rigged() unit.Mass { return o.Running + o.Controls + o.Battery }
