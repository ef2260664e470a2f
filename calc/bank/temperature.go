package bank

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// Ends of the lead-acid correction: 25 F and 125 F (IEEE 485 Table 1).
const (
	lowestLeadTemperature  = -3.9 // C
	highestLeadTemperature = 51.7 // C
)

// LeadSizeFactor is the factor by which a lead-acid battery must be larger at an
// electrolyte temperature, 1 at 25 C. Valid from -3.9 to 51.7 C.
//
// Source: IEEE Std 485 Table 1, in the published polynomial
// y = -2.8117 x^3 + 4.1916 x^2 - 2.4941 x + 1.405 with x = C/100.
func LeadSizeFactor(t unit.Temperature) (float64, error) {
	if err := band.Within("electrolyte temperature", "C", t.Celsius(), lowestLeadTemperature, highestLeadTemperature); err != nil {
		return 0, err
	}
	return sizeFactor(t.Celsius()), nil
}

func sizeFactor(celsius float64) float64 {
	x := celsius / 100
	return ((-2.8117*x+4.1916)*x-2.4941)*x + 1.405
}

// lithiumCapacity is the share of the rated capacity that lithium iron phosphate
// gives, by temperature in C (from memory).
var lithiumCapacity = [...]struct{ t, share float64 }{{-10, 0.78}, {0, 0.88}, {10, 0.95}, {25, 1}}

// CapacityFactor is the share of its rated capacity that a battery gives at a
// temperature. For lead-acid it is the reciprocal of LeadSizeFactor; for lithium
// a table between -10 and 25 C, 1 above to 60 C. Warmth beyond 25 C is not
// credited to either: it is paid for in life. Outside the range it refuses with a
// *band.OutsideError.
func CapacityFactor(c Chemistry, t unit.Temperature) (float64, error) {
	if c.Lead() {
		f, err := LeadSizeFactor(t)
		if err != nil {
			return 0, err
		}
		return min(1/f, 1), nil
	}
	x := t.Celsius()
	if err := band.Within("battery temperature", "C", x, lithiumCapacity[0].t, 60); err != nil {
		return 0, err
	}
	for i, hi := range lithiumCapacity[1:] {
		if lo := lithiumCapacity[i]; x <= hi.t {
			return lo.share + (hi.share-lo.share)*(x-lo.t)/(hi.t-lo.t), nil
		}
	}
	return 1, nil
}

// Beyond carries CapacityFactor on past the cold end of its range, by the same
// polynomial or the last line of the table: a figure with nothing behind it, to be
// shown with a word. Valid down to -18 C for lead-acid and -20 C for lithium,
// from memory of what batteries still do; colder it refuses with a
// *band.OutsideError. Within the range it is CapacityFactor.
func Beyond(c Chemistry, t unit.Temperature) (float64, error) {
	low, _ := TemperatureRange(c)
	if !(t < low) {
		return CapacityFactor(c, t)
	}
	x := t.Celsius()
	if c.Lead() {
		if err := band.Within("battery temperature", "C", x, coldestLead, lowestLeadTemperature); err != nil {
			return 0, err
		}
		return 1 / sizeFactor(x), nil
	}
	if err := band.Within("battery temperature", "C", x, coldestLithium, lithiumCapacity[0].t); err != nil {
		return 0, err
	}
	a, b := lithiumCapacity[0], lithiumCapacity[1]
	return a.share + (b.share-a.share)*(x-a.t)/(b.t-a.t), nil
}

// Ends of Beyond, from memory.
const (
	coldestLead    = -18.0 // C
	coldestLithium = -20.0 // C
)

// TemperatureRange is where CapacityFactor holds.
func TemperatureRange(c Chemistry) (low, high unit.Temperature) {
	if c.Lead() {
		return lowestLeadTemperature, highestLeadTemperature
	}
	return unit.Temperature(lithiumCapacity[0].t), 60
}
