// Package match holds the shop's shelf against a solved boat: every motor is
// judged on each need as pass, tight or fail with the reason in a few words,
// and what passes is priced as a complete rig.
//
//	match.go   needs, verdicts, offers and their order
//	needs.go   one row for each need
//	rig.go     batteries, charger, wire, breaker, plug and bracket for a motor
//	views.go   cheapest that does the job, best hold in wind, longest run
//
// Limits: prices and ratings are the shelf's own. Nothing that fails a hard
// need is offered as fitting. What is not on the shelf is listed without a
// price and makes the total a part of the cost only.
package match

import (
	"cmp"
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb/stock"
	"heronlake.example/ask/reasoner/card"
)

// Verdict is how a motor meets one need.
type Verdict int

const (
	Pass Verdict = iota
	Tight
	Fail
)

func (v Verdict) String() string { return [...]string{"pass", "tight", "fail"}[v] }

// Judged is one need held against one motor.
type Judged struct {
	Need    string // the row's name
	Verdict Verdict
	Reason  string // in a few words; "" for a plain pass
	Hard    bool   // a fail here rules the motor out
}

// Offer is one motor with its verdicts and its complete rig.
type Offer struct {
	Motor  stock.Motor
	Judged []Judged
	Rig    Rig
	Sol    *sheet.Solution // the sheet solved for this motor; nil where a hard need fails
}

// Fits reports whether no hard need fails.
func (o Offer) Fits() bool {
	return !slices.ContainsFunc(o.Judged, func(j Judged) bool { return j.Hard && j.Verdict == Fail })
}

// unclean counts the needs that do not plainly pass.
func (o Offer) unclean() int {
	n := 0
	for _, j := range o.Judged {
		if j.Verdict != Pass {
			n++
		}
	}
	return n
}

// Reasons joins what is tight or fails.
func (o Offer) Reasons() string {
	var out []string
	for _, j := range o.Judged {
		if j.Verdict != Pass && j.Reason != "" {
			out = append(out, j.Reason)
		}
	}
	return strings.Join(out, "; ")
}

// Boat is what a motor is held against.
type Boat struct {
	Card card.Card
	Sol  *sheet.Solution
	Sys  unit.System
	// Solve solves the boat again with a motor in hand.
	Solve func(m stock.Motor) *sheet.Solution
	// Whole solves it again with the offer's motor and the bank of its rig: the
	// run time of the batteries sold, and what they cost a year.
	Whole func(o Offer) *sheet.Solution
}

// Order says by what the offers of Motors are ordered.
const Order = "what passes every need first, then by the cost of the whole rig, then by thrust to spare"

// Motors judges the whole shelf. Offers that fit come first: those that pass
// every need, then by total cost complete, then by headroom in thrust; the
// misses follow, those with the fewest failures first. The order is total: ties
// fall to the shop's number.
func Motors(b Boat, shelf *stock.Shelf) []Offer {
	var out []Offer
	for _, m := range shelf.Motors {
		o := Offer{Motor: m}
		o.judge(b, false)
		if o.Fits() { // a rig is made up only for what could be sold
			o.Sol = b.Solve(m)
			o.rig(b, shelf)
			o.judge(b, true)
		}
		out = append(out, o)
	}
	slices.SortFunc(out, func(x, y Offer) int {
		return cmp.Or(
			order(!x.Fits(), !y.Fits()),
			cmp.Compare(x.failures(), y.failures()),
			order(x.unclean() > 0, y.unclean() > 0),
			cmp.Compare(x.Rig.Total, y.Rig.Total),
			cmp.Compare(y.Motor.Thrust, x.Motor.Thrust),
			cmp.Compare(x.Motor.SKU, y.Motor.SKU))
	})
	return out
}

// judge holds the motor against the needs that a rig must be known for, or
// against all the others.
func (o *Offer) judge(b Boat, priced bool) {
	for _, r := range needRows {
		if r.priced != priced {
			continue
		}
		if v, reason, applies := r.judge(b, *o); applies {
			o.Judged = append(o.Judged, Judged{Need: r.name, Verdict: v, Reason: reason, Hard: r.hard(b)})
		}
	}
}

func (o Offer) failures() int {
	n := 0
	for _, j := range o.Judged {
		if j.Verdict == Fail {
			n++
		}
	}
	return n
}

func order(x, y bool) int {
	switch {
	case x == y:
		return 0
	case x:
		return 1
	}
	return -1
}
