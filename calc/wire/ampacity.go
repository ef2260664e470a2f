package wire

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// insulations are the columns of Table 5, C.
var insulations = [...]float64{60, 75, 80, 90, 105, 125, 200}

// table5 is 33 CFR 183.425 Table 5: allowable amperage of copper conductors by
// insulation rating, ambient 30 C, from thin to thick.
var table5 = [...]struct {
	gauge unit.Gauge
	amps  [len(insulations)]float64
}{
	{18, [...]float64{10, 10, 15, 20, 20, 25, 25}},
	{16, [...]float64{15, 15, 20, 25, 25, 30, 35}},
	{14, [...]float64{20, 20, 25, 30, 35, 40, 45}},
	{12, [...]float64{25, 25, 35, 40, 45, 50, 55}},
	{10, [...]float64{40, 40, 50, 55, 60, 70, 70}},
	{8, [...]float64{55, 65, 70, 70, 80, 90, 100}},
	{6, [...]float64{80, 95, 100, 100, 120, 125, 135}},
	{4, [...]float64{105, 125, 130, 135, 160, 170, 180}},
	{3, [...]float64{120, 145, 150, 155, 180, 195, 210}},
	{2, [...]float64{140, 170, 175, 180, 210, 225, 240}},
	{1, [...]float64{165, 195, 210, 210, 245, 265, 280}},
	{Gauge1x0, [...]float64{195, 230, 245, 245, 285, 305, 325}},
	{Gauge2x0, [...]float64{225, 265, 285, 285, 330, 355, 370}},
	{Gauge3x0, [...]float64{260, 310, 330, 330, 385, 410, 430}},
	{Gauge4x0, [...]float64{300, 360, 385, 385, 445, 475, 510}},
}

// Sources of the engine-space factors.
const (
	Note1           = "33 CFR 183.425 Table 5 note 1"
	note1FromMemory = "from memory of " + Note1
)

// engineFactors are those of note 1 of Table 5, by column, for conductors in an
// engine space, where 50 C is taken for the ambient.
var engineFactors = [...]struct {
	factor float64
	source string
}{
	{0.58, Note1},
	{0.75, note1FromMemory},
	{0.78, note1FromMemory},
	{0.82, note1FromMemory},
	{0.85, Note1},
	{0.89, note1FromMemory},
	{1.00, note1FromMemory},
}

// Ambient temperatures of Table 5 and of its note 1.
const (
	openAmbient   unit.Temperature = 30
	engineAmbient unit.Temperature = 50
)

// Place is where a conductor runs.
type Place int

const (
	Open Place = iota
	EngineSpace
)

// PlaceOf reads the word open or engine-space; anything else is Open.
func PlaceOf(word string) Place {
	if word == "engine-space" {
		return EngineSpace
	}
	return Open
}

// Ambient is the air temperature that the table takes for a place.
func (p Place) Ambient() unit.Temperature {
	if p == EngineSpace {
		return engineAmbient
	}
	return openAmbient
}

// column finds the column of an insulation rating: the next one not above it.
func column(insulation unit.Temperature) (int, error) {
	if err := band.Within("insulation rating", "C", insulation.Celsius(), insulations[0], 250); err != nil {
		return 0, err
	}
	c := 0
	for i, t := range insulations {
		if t <= insulation.Celsius()+1e-9 {
			c = i
		}
	}
	return c, nil
}

// Rating is the column of Table 5 that an insulation rating falls in: the next
// one not above it. Under 60 C it refuses.
func Rating(insulation unit.Temperature) (unit.Temperature, error) {
	c, err := column(insulation)
	return unit.Temperature(insulations[c]), err
}

// Ampacity is the current that a conductor may carry steadily, from 18 AWG to
// 4/0. A gauge that Table 5 leaves out (5 AWG) takes the value of the next
// thinner one, an insulation rating between two columns that of the cooler one.
// In an engine space the value is multiplied by the factor of note 1; nothing is
// rounded. A gauge outside the table is refused with a *GaugeError, an insulation
// outside it with a *band.OutsideError.
//
// Source: 33 CFR 183.425 Table 5 and its note 1.
func Ampacity(g unit.Gauge, insulation unit.Temperature, p Place) (unit.Current, error) {
	if err := within(g, Gauge4x0, 18); err != nil {
		return 0, err
	}
	c, err := column(insulation)
	if err != nil {
		return 0, err
	}
	row := 0
	for i := range table5 {
		if table5[i].gauge < g {
			break
		}
		row = i
	}
	return ampacityAt(row, c, p), nil
}

// ampacityAt reads Table 5 at a row and a column.
func ampacityAt(row, column int, p Place) unit.Current {
	a := table5[row].amps[column]
	if p == EngineSpace {
		a *= engineFactors[column].factor
	}
	return unit.Current(a)
}

// EngineFactor is the factor of note 1 for an insulation rating, with where it
// comes from.
func EngineFactor(insulation unit.Temperature) (factor float64, source string, err error) {
	c, err := column(insulation)
	if err != nil {
		return 0, "", err
	}
	return engineFactors[c].factor, engineFactors[c].source, nil
}

// BundlingFactor is that of note 2 for current-carrying conductors tied
// together, on circuits of 50 V and more only; below 50 V it is 1. Every factor
// is from memory of note 2, so that nothing here rests on it.
func BundlingFactor(conductors int, circuit unit.Voltage) float64 {
	switch {
	case circuit.Volts() < 50 || conductors < 3:
		return 1
	case conductors == 3:
		return 0.70
	case conductors <= 6:
		return 0.60
	case conductors <= 24:
		return 0.50
	}
	return 0.40
}

// Gauges lists the sizes of Table 5 from thin to thick.
func Gauges() []unit.Gauge {
	out := make([]unit.Gauge, len(table5))
	for i, r := range table5 {
		out[i] = r.gauge
	}
	return out
}
