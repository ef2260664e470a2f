// Package meaning decides what was said about which boat: which number is the
// boat and which the load, what a bare "55" is, what a later turn changes and
// what it leaves alone, and what is being asked.
//
// A doubtful reading becomes a question, never a fact: precision comes before
// reach, because a number in the wrong slot becomes a wrong motor.
//
//	outcome.go   what a turn gives: the card, the wish, the problems
//	bind.go      Bind, and the order in which a line is understood
//	terms.go     a line as terms: measures, and words and phrases of the trade
//	ids.go       the entries of the word table that conditions name
//	cues.go      rows of evidence that bid for each number, and the award
//	hull.go      lengths: boat, beam, deck, shaft
//	load.go      weights: loaded, dry, gear, engine, plate
//	parts.go     weights listed part by part; partlist.go where the name comes
//	             last; gear.go gear added up
//	people.go    who is aboard; party.go the ways of telling it, weighed.go what
//	             they weigh, crew.go who joins and leaves
//	water.go     winds, currents, waves, depths, kinds of water
//	motor.go     thrust, amps; volts.go volts, engine.go the outboard, dial.go
//	             the steps of a dial
//	battery.go   capacity, case size, count, reserve; charging.go filling it
//	wiring.go    runs, gauges, drops, insulation; breaker.go breakers
//	use.go       speed, hours, throttle, fuel; duty.go duty profiles, money.go
//	             what may be spent
//	rig.go       words that are facts by themselves
//	kept.go      facts brought back from a kept boat, checked
//	wishes.go    functions wished for and refused; what a "no" covers
//	choice.go    kinds that are only compared or offered; compared.go numbers
//	             that are
//	aside.go     what belongs to somebody else, or did once
//	followup.go  what a later turn removes; mend.go what it puts right, apply.go
//	             the card after it
//	taken.go     a number given another name or unit by a later turn
//	absent.go    people who come along or stay away after all
//	more.go      batteries more or fewer, without the word
//	rigs.go      motors named again, with their bank
//	again.go     wishes taken up again
//	odd.go       numbers that cannot be, said for the thing asked
//	elliptic.go  numbers whose word the talk has said already
//	boats.go     several boats kept apart
//	topics.go    what is asked; sayings.go finds the words for it
//	outside.go   talk of something else
//	checks.go    what cannot be
//
// Limits: one language, one speaker, the slots of the answer contract. Nothing
// here computes a figure.
package meaning

import (
	"heronlake.example/ask/reasoner/card"
)

// Topic is a thing that can be asked about.
type Topic string

const (
	Fit      Topic = "fit"      // which motor, and what goes with it
	Thrust   Topic = "thrust"   // how much thrust, or whether a given one is enough
	Shaft    Topic = "shaft"    // how long a shaft, or whether one is too short
	Bank     Topic = "bank"     // which or how many batteries
	Runtime  Topic = "runtime"  // how long, how far
	Wire     Topic = "wire"     // which gauge, how much drop
	Breaker  Topic = "breaker"  // which rating, where
	Charger  Topic = "charger"  // which charger, how long
	Hold     Topic = "hold"     // which wind or current it holds against
	Speed    Topic = "speed"    // how fast
	Weight   Topic = "weight"   // what it weighs, loaded or the bank
	Capacity Topic = "capacity" // what the plate leaves, trim
	Voltage  Topic = "voltage"  // 12, 24 or 36
	Cost     Topic = "cost"
	Choice   Topic = "choice"  // which kind: mount, control, drive
	Fault    Topic = "fault"   // something does not work
	Concept  Topic = "concept" // what is, why does, explain
)

// Command is plain talk that steers the conversation.
type Command string

const (
	None  Command = ""
	Undo  Command = "undo"
	Fresh Command = "fresh" // start over; the rest of the line is the new boat
)

// Wish is what a turn asks for.
type Wish struct {
	Topics  []Topic  // in the order asked; empty when the turn only states facts
	Judge   []string // slots whose said value is to be judged: "is 42 too short?", "8 gauge enough?"
	Compare []string // contract words or values named to choose between: "12", "24"; "brushed", "brushless"
	Over    string   // the slot or choice that Compare is about: "motor.voltage", "motor.drive", ...
	Why     bool     // asks for the reason of what was just answered
	Words   []string // topics in words for the notes, for instance "ventilation"
	// Out is set when the talk is about something else altogether.
	Out bool
}

// Problem is what could not be understood, in words that say what to do.
type Problem struct {
	Kind       string // unplaced, ambiguous, contradiction, out-of-range, out-of-scope
	Text       string
	Said       string
	Slot       string
	Start, End int
}

// Correction is a misspelt word of the trade and what it was taken for.
type Correction struct{ Said, Word string }

// Outcome is what one turn gives.
type Outcome struct {
	Card      card.Card
	Changed   []string // slots that this turn set, changed or removed
	Command   Command
	Wish      Wish
	Problems  []Problem
	Corrected []Correction
	Metric    bool // the speaker used metric units in this turn
}
