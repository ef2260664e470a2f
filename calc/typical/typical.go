// Package typical holds the values that a fitter assumes for what nobody said:
// tables of low, nominal and high, one file for each part of the rig.
//
//	boats.go      hulls by kind and length, people, gear, fuel, engines
//	motors.go     electric motors by class
//	batteries.go  batteries by kind and group, chargers
//	wiring.go     wire runs, contacts, breakers
//	wind.go       what a hull and its people show to the wind, and the wind itself
//	bylength.go   tables by boat length
//
// Every table carries its mark: the published source it was taken from, or that
// it is common practice without one, or that it was written from memory of the
// trade. A published value replaces a remembered one where there is one.
//
// Limits: these are starting points for a first answer, each shown to the
// reader as an assumption with its band. None of them describes a particular
// boat, motor or battery, and none outlives a better figure from its owner.
package typical

// Marks of tables without a document behind them.
const (
	FromMemory     = "from memory"
	CommonPractice = "common practice, no published source"
)
