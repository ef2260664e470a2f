package typical

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// ratio is a band of a bare number.
func ratio(low, nominal, high float64) band.Band[float64] {
	return band.Band[float64]{Low: low, Nominal: nominal, High: high}
}

// Chemistry is what a fitter takes for granted of one kind of battery.
type Chemistry struct {
	Word           string
	Exponent       band.Band[float64] // Peukert
	LongDepth      band.Band[float64] // share of the charge used for a long life
	LimitDepth     band.Band[float64] // share at which it is spent
	Return         band.Band[float64] // ampere hours in for each one out
	Tail           band.Band[float64] // absorption, h
	ChargeDepth    band.Band[float64] // share to put back after a day when nobody says
	CycleLife      band.Band[float64] // cycles at LongDepth (lead) or LimitDepth (lithium)
	MaxYears       float64            // of age
	PoundsPer100Ah band.Band[float64] // weight of 100 Ah at 12 volts, lb
	SizesAh        []float64          // usual 12-volt batteries, ascending
	PeukertRange   string             // where Exponent is from
}

// Chemistries are the four kinds. The exponents are the ranges that published
// tables give; the rest is from memory of the trade, but for the return factor of
// lead (1.1 to 1.25) and the depths (public comparisons: lead 0.5, lithium 0.8).
var Chemistries = []Chemistry{
	{
		Word: "flooded", Exponent: ratio(1.15, 1.25, 1.30), LongDepth: ratio(0.5, 0.5, 0.5), LimitDepth: ratio(0.8, 0.8, 0.8),
		Return: ratio(1.1, 1.2, 1.25), Tail: ratio(2, 3.5, 5), ChargeDepth: ratio(0.3, 0.5, 0.8),
		CycleLife: ratio(250, 400, 600), MaxYears: 5, PoundsPer100Ah: ratio(54, 60, 68), SizesAh: []float64{75, 95, 110},
		PeukertRange: "published ranges for flooded batteries, 1.15 to 1.30",
	},
	{
		Word: "agm", Exponent: ratio(1.05, 1.12, 1.19), LongDepth: ratio(0.5, 0.5, 0.6), LimitDepth: ratio(0.8, 0.8, 0.8),
		Return: ratio(1.1, 1.15, 1.2), Tail: ratio(2, 3, 5), ChargeDepth: ratio(0.3, 0.5, 0.8),
		CycleLife: ratio(350, 500, 700), MaxYears: 6, PoundsPer100Ah: ratio(57, 63, 70), SizesAh: []float64{75, 95, 110},
		PeukertRange: "published ranges for AGM batteries, 1.05 to 1.15, and a printed discharge table that fits 1.19",
	},
	{
		Word: "gel", Exponent: ratio(1.10, 1.15, 1.20), LongDepth: ratio(0.5, 0.5, 0.6), LimitDepth: ratio(0.8, 0.8, 0.8),
		Return: ratio(1.1, 1.15, 1.2), Tail: ratio(2, 3.5, 5), ChargeDepth: ratio(0.3, 0.5, 0.8),
		CycleLife: ratio(400, 600, 900), MaxYears: 7, PoundsPer100Ah: ratio(60, 68, 76), SizesAh: []float64{75, 95, 110},
		PeukertRange: "published ranges for gel batteries, 1.10 to 1.20",
	},
	{
		Word: "lithium", Exponent: ratio(1.00, 1.03, 1.05), LongDepth: ratio(0.8, 0.9, 1.0), LimitDepth: ratio(0.8, 0.9, 1.0),
		Return: ratio(1.02, 1.05, 1.10), Tail: ratio(0.3, 0.5, 1), ChargeDepth: ratio(0.5, 0.8, 1.0),
		CycleLife: ratio(2000, 3000, 5000), MaxYears: 10, PoundsPer100Ah: ratio(22, 26, 33), SizesAh: []float64{30, 50, 60, 80, 100, 120, 150, 200},
		PeukertRange: "published values for lithium iron phosphate, about 1.05 at most",
	},
}

// ChemistryOf finds the row of a chemistry; an unknown word takes the first,
// flooded, which promises the least.
func ChemistryOf(word string) *Chemistry {
	for i := range Chemistries {
		if Chemistries[i].Word == word {
			return &Chemistries[i]
		}
	}
	return &Chemistries[0]
}

// GroupBattery is what a battery of one case size is expected to be.
type GroupBattery struct {
	Group    string
	Pounds   band.Band[float64] // flooded
	LithiumA band.Band[float64] // Ah of a lithium battery sold in this case; zero where none is usual
}

// GroupBatteries are the weights and lithium capacities by case size, from
// memory; the flooded capacities are published and stand with the case sizes.
var GroupBatteries = []GroupBattery{
	{"U1", ratio(22, 24, 28), ratio(20, 35, 50)},
	{"22NF", ratio(32, 36, 40), ratio(35, 50, 60)},
	{"24", ratio(42, 47, 55), ratio(50, 80, 100)},
	{"27", ratio(52, 58, 66), ratio(80, 100, 110)},
	{"31", ratio(58, 66, 76), ratio(100, 100, 125)},
	{"34", ratio(36, 41, 48), ratio(0, 0, 0)},
	{"65", ratio(38, 43, 50), ratio(0, 0, 0)},
	{"GC2", ratio(60, 63, 68), ratio(0, 0, 0)},
	{"GC8", ratio(60, 64, 70), ratio(0, 0, 0)},
	{"GC12", ratio(78, 85, 92), ratio(100, 120, 150)},
	{"4D", ratio(105, 115, 130), ratio(150, 200, 230)},
	{"8D", ratio(140, 155, 170), ratio(200, 255, 300)},
}

// GroupBatteryOf finds the row of a case size by its plain name.
func GroupBatteryOf(group string) *GroupBattery {
	for i := range GroupBatteries {
		if GroupBatteries[i].Group == group {
			return &GroupBatteries[i]
		}
	}
	return nil
}

// UnratedCapacity is the flooded capacity, Ah, of case sizes for which none is
// published (from memory: both are cranking sizes seen as dual-purpose).
var UnratedCapacity = map[string]band.Band[float64]{
	"34": ratio(45, 55, 65),
	"65": ratio(55, 65, 75),
}

// UsualCapacity is the capacity, Ah, of a battery of which nobody said more than
// its voltage, by kind: a group 27 or 31, the usual lithium battery of an
// electric motor, a golf-cart battery (from memory).
func UsualCapacity(lithium bool, volts float64) band.Band[float64] {
	switch {
	case volts < 7:
		return ratio(180, 210, 225)
	case volts < 10:
		return ratio(150, 160, 170)
	case lithium:
		return ratio(50, 100, 120)
	}
	return ratio(75, 100, 125)
}

// Of the bank as a whole, from memory but where noted.
var (
	HoursADay       = ratio(6, 8, 10)
	HoursInHarbour  = ratio(0.5, 1, 2)
	AgeingShare     = ratio(0.75, 0.8, 0.9) // capacity left when a battery is called worn; IEEE 485 sizes by 1.25, its reciprocal
	HourRate        = ratio(20, 20, 20)     // deep-cycle batteries are rated at 20 h, but for a few at 10 or 100
	BatteryAirTemp  = ratio(10, 21, 29)     // C: a cool spring morning, 70 F, a summer afternoon
	TripsAYear      = ratio(15, 30, 80)
	ChargeOvernight = ratio(8, 10, 12) // h
)

// Chargers is the ladder of charger outputs, A for each battery (from memory).
var Chargers = []float64{5, 6, 8, 10, 15, 20}

// PoundsOf is a band in pounds as kilograms, the sheet's unit.
func PoundsOf(b band.Band[float64]) band.Band[float64] {
	kg := func(x float64) float64 { return unit.Pounds(x).Kilograms() }
	return band.Band[float64]{Low: kg(b.Low), Nominal: kg(b.Nominal), High: kg(b.High)}
}
