package bank

import (
	"strings"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// Group is a case size of the Battery Council International. It says how large
// the box is; what is inside varies.
type Group struct {
	Name                  string
	Length, Width, Height unit.Length            // maximum outside dimensions
	Capacity              band.Band[unit.Charge] // usual 20-hour capacity, flooded; zero where none is published
	Volts                 unit.Voltage           // of a flooded battery in this case
	Source                string
}

const (
	groupSeen     = "BCI group dimensions and usual 20-hour capacities, public reprints"
	groupFromMind = "BCI group dimensions from memory; usual 20-hour capacity, public reprint"
	groupMemory   = "from memory"
)

func group(name string, l, w, h, low, high float64, volts unit.Voltage, source string) Group {
	return Group{Name: name, Length: unit.Inches(l), Width: unit.Inches(w), Height: unit.Inches(h),
		Capacity: band.Of(unit.AmpereHours(low), unit.AmpereHours((low+high)/2), unit.AmpereHours(high)), Volts: volts, Source: source}
}

// Groups lists the case sizes met on small boats.
var Groups = []Group{
	group("U1", 7.75, 5.1875, 7.3125, 34, 40, 12, groupFromMind),
	group("22NF", 9.4375, 5.5, 8.9375, 50, 60, 12, groupMemory),
	group("24", 10.25, 6.8125, 8.875, 70, 85, 12, groupSeen),
	group("27", 12.0625, 6.8125, 8.875, 85, 105, 12, groupSeen),
	group("31", 13, 6.8125, 9.4375, 95, 125, 12, groupSeen),
	group("34", 10.25, 6.8125, 7.875, 0, 0, 12, groupSeen),
	group("65", 12.0625, 7.5, 7.5625, 0, 0, 12, groupSeen),
	group("GC2", 10.375, 7.1875, 10.625, 180, 225, 6, groupFromMind),
	group("GC8", 10.375, 7.1875, 10.875, 150, 170, 8, groupMemory),
	group("GC12", 12.9375, 7.1875, 10.875, 130, 155, 12, groupMemory),
	group("4D", 20.75, 8.75, 9.875, 180, 215, 12, groupFromMind),
	group("8D", 20.75, 11.125, 9.875, 225, 255, 12, groupFromMind),
}

// GroupOf finds a case size by its name in capitals or small letters. Letters
// after the number that tell terminals or purpose ("24M", "27DC", "31-AGM") do
// not change the size.
func GroupOf(name string) (Group, bool) {
	name = strings.ToUpper(strings.TrimSpace(name))
	if g, ok := groupNamed(name); ok {
		return g, true
	}
	digits := 0
	for digits < len(name) && name[digits] >= '0' && name[digits] <= '9' {
		digits++
	}
	return groupNamed(name[:digits])
}

func groupNamed(name string) (Group, bool) {
	for _, g := range Groups {
		if g.Name == name {
			return g, true
		}
	}
	return Group{}, false
}
