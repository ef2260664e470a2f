package charge

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

const (
	faraday       = 96485.332 // C/mol
	molarLitres0C = 22.414    // L/mol of gas at 0 C and one atmosphere
	kelvinAt0C    = 273.15
)

// LowerExplosiveLimit of hydrogen in air, by volume (OSHA interpretation letter
// of 26 January 1976 on 29 CFR 1910.178(g)(2)). Practice stays under a hundredth.
const LowerExplosiveLimit = 0.041

// Hydrogen is the gas that a lead-acid battery gives off when it is charged past
// full: each ampere hour of overcharge through each cell splits water, two
// electrons to a molecule of hydrogen. 0.418 L per ampere hour and cell at 0 C.
// Temperature -30 to 60 C at one atmosphere.
//
// Source: Faraday's law.
func Hydrogen(over unit.Charge, cells int, t unit.Temperature) (unit.Volume, error) {
	if err := band.Within("gas temperature", "C", t.Celsius(), -30, 60); err != nil {
		return 0, err
	}
	mol := over.AmpereHours() * 3600 / (2 * faraday) * float64(cells)
	return unit.Litres(mol * molarLitres0C * (t.Celsius() + kelvinAt0C) / kelvinAt0C), nil
}
