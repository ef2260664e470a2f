// Package wire sizes the pair of conductors between a battery and a motor and
// the breaker that guards them.
//
//	gauge.go       American wire gauge: diameter, area, the sizes in use
//	resistance.go  copper by gauge and temperature; how warm a conductor runs
//	drop.go        voltage drop, by resistance and by the wire-area formula
//	ampacity.go    what a conductor may carry: 33 CFR 183.425 Table 5
//	choose.go      the smallest gauge that passes, side-by-side runs, the longest run
//	breaker.go     rating, distance from the battery, voltage
//
// Limits: stranded copper on direct current under 50 V; a pair of conductors in
// the open or in an engine space, not bundled with others (the bundling factors
// of Table 5 bind from 50 V). The drop is taken at the motor's full current. A
// drop slows the motor, which then draws less, so that a drop of a tenth is
// overstated by about a seventh of itself, and one of a quarter says only that
// the wire is far too thin. The regulation binds boats with gasoline inboard
// engines; for an outboard skiff or an electric boat its figures are used here as
// good practice.
package wire
