// Package match holds the shop's shelf against a solved boat: every motor is
// judged on each need as pass, tight or fail with the reason in a few words,
// and what passes is priced as a complete rig.
//
//	match.go   needs, verdicts, offers and their order
//	needs.go   one row for each need
//	rig.go     batteries with links and boxes, charger, wire, breaker, plug, bracket
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
	Short // tight from below: less than the need by what can hardly be measured
	Fail
)

// String is the verdict's name in an answer, where a short one is tight too; its
// reason tells which.
func (v Verdict) String() string { return [...]string{"pass", "tight", "tight", "fail"}[v] }

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
	// Of a motor that fits, on the batteries of its rig.
	Hold unit.Speed    // the wind that it holds in
	Run  unit.Duration // how long it runs at a cruise
}

// Fits reports whether no hard need fails.
func (o Offer) Fits() bool {
	return !slices.ContainsFunc(o.Judged, func(j Judged) bool { return j.Hard && j.Verdict == Fail })
}

// FitsBut reports whether no hard need but the one named fails.
func (o Offer) FitsBut(need string) bool {
	return !slices.ContainsFunc(o.Judged, func(j Judged) bool { return j.Hard && j.Verdict == Fail && j.Need != need })
}

// short reports whether a hard need is met but for a little.
func (o Offer) short() bool {
	return slices.ContainsFunc(o.Judged, func(j Judged) bool { return j.Hard && j.Verdict == Short })
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
	// Try solves the boat again for the wanted cells, with an offer's motor in hand
	// and with the bank of its rig once there is one. What it returns holds until
	// the next try.
	Try func(o Offer, want []sheet.ID) *sheet.Trial
}

// Order says by what the offers of Motors are ordered.
const Order = "what passes every need first, what is just short of one last, then by the cost of the whole rig, then by thrust to spare"

// Motors judges the whole shelf. Offers that fit come first: those that pass
// every need, those that are just short of one last, then by total cost complete,
// then by headroom in thrust; the misses follow, those with the fewest failures
// first. The order is total: ties
// fall to the shop's number.
func Motors(b Boat, shelf *stock.Shelf) []Offer {
	var out []Offer
	for _, m := range shelf.Motors {
		o := Offer{Motor: m}
		o.judge(b, false)
		if o.Fits() { // a rig is made up only for what could be sold
			o.rig(b, shelf)
			o.judge(b, true)
		}
		out = append(out, o)
	}
	slices.SortFunc(out, func(x, y Offer) int {
		return cmp.Or(
			order(!x.Fits(), !y.Fits()),
			cmp.Compare(x.failures(), y.failures()),
			order(x.short(), y.short()),
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
