// Package charge sizes a charger for one battery and tells how long one takes.
// In a series bank every battery has an output of its own, so that one battery
// is all that is ever reckoned with.
//
//	charge.go    amperes for the hours, hours for the amperes, acceptance, cold
//	hydrogen.go  the gas that charging sets free
//
// Limits: bulk charging at a steady current, then an absorption time of fixed
// length in which the current tapers and little is put back; a real charger's
// turn from one to the other depends on its voltage and the battery's age. A
// charger's rated current is taken to be what it delivers.
package charge

import (
	"fmt"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/bank"
	"heronlake.example/ask/calc/unit"
)

// Refill is what one battery must get back.
type Refill struct {
	Capacity unit.Charge   // of one battery
	Depth    float64       // share taken out, above 0 to 1
	Return   float64       // ampere hours in for each one out, 1 to 1.5
	Tail     unit.Duration // absorption, 0 to 12 h
}

func (r Refill) check() error {
	if err := band.Within("battery capacity", "Ah", r.Capacity.AmpereHours(), 0.1, 100000); err != nil {
		return err
	}
	if err := band.Within("share of the capacity taken out", "", r.Depth, 0, 1); err != nil {
		return err
	}
	if err := band.Within("ampere hours in for each one out", "", r.Return, 1, 1.5); err != nil {
		return err
	}
	return band.Within("absorption time", "h", r.Tail.Hours(), 0, 12)
}

// Charge is the ampere hours to put in.
func (r Refill) Charge() unit.Charge {
	return unit.Charge(r.Capacity.AmpereHours() * r.Depth * r.Return)
}

// A TooShortError says that the hours do not even hold the absorption.
type TooShortError struct{ Hours, Tail unit.Duration }

func (e *TooShortError) Error() string {
	return fmt.Sprintf("charging in %.1f h leaves no time after %.1f h of absorption: allow more hours or put back less", e.Hours.Hours(), e.Tail.Hours())
}

// Current is the charger's output for the hours there are: ampere hours to put
// in over the hours before the absorption. A *TooShortError where none are left.
//
// Source: charger time is ampere hours to return times the return factor over
// the amperes; the absorption time is common practice.
func (r Refill) Current(hours unit.Duration) (unit.Current, error) {
	if err := r.check(); err != nil {
		return 0, err
	}
	if hours <= r.Tail {
		return 0, &TooShortError{hours, r.Tail}
	}
	return unit.Current(r.Charge().AmpereHours() / (hours - r.Tail).Hours()), nil
}

// Time is the hours that a charger takes: the inverse of Current. A current of
// 0.1 to 1000 A.
func (r Refill) Time(i unit.Current) (unit.Duration, error) {
	if err := r.check(); err != nil {
		return 0, err
	}
	if err := band.Within("charger current", "A", i.Amperes(), 0.1, 1000); err != nil {
		return 0, err
	}
	return unit.Duration(r.Charge().AmpereHours()/i.Amperes()) + r.Tail, nil
}

// AcceptanceShare is the most current that a battery should be charged with, as
// a share of its capacity in ampere hours: flooded 0.2, AGM and gel 0.25, lithium
// 0.5 (from memory; the bulk limit of C/10 to C/5 for flooded batteries is the
// trade's).
func AcceptanceShare(c bank.Chemistry) float64 {
	switch c {
	case bank.Flooded:
		return 0.20
	case bank.Lithium:
		return 0.50
	}
	return 0.25
}

// Acceptance is AcceptanceShare of a capacity.
func Acceptance(c bank.Chemistry, capacity unit.Charge) unit.Current {
	return unit.Current(AcceptanceShare(c) * capacity.AmpereHours())
}

// A FreezingError says that a lithium battery is too cold to take a charge.
type FreezingError struct{ Temperature unit.Temperature }

func (e *FreezingError) Error() string {
	return fmt.Sprintf("charging a lithium battery at %.0f C plates metal in its cells: warm it above freezing first", e.Temperature.Celsius())
}

// MayCharge refuses, with a *FreezingError, to charge lithium iron phosphate at
// or below 0 C. Lead-acid may be charged in the cold, slowly. From memory of the
// trade; the battery's own manual comes first.
func MayCharge(c bank.Chemistry, t unit.Temperature) error {
	if c == bank.Lithium && t.Celsius() <= 0 {
		return &FreezingError{t}
	}
	return nil
}
