package reasoner

import (
	"slices"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb/stock"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
	"heronlake.example/ask/reasoner/match"
	"heronlake.example/ask/reasoner/meaning"
)

// mostOffers is how many motors an answer names.
const mostOffers = 3

// rigWants are the cells that a rig is made up from.
var rigWants = []sheet.ID{sheet.BankCapacity, sheet.ChargerCurrent, sheet.MotorCurrent, sheet.WireGauge, sheet.WireRun,
	sheet.BreakerRating, sheet.HoldWind, sheet.RuntimeCruise, sheet.CostYearly, sheet.BatteryLife, sheet.BatteryYears}

// shelf names what the shop holds for this boat: the motors that fit, or the
// nearest misses, and the parts of the first one's rig. It returns the offer
// that leads, nil where none fits.
func (s *Session) shelf(a *answer.Answer, c card.Card, f *fit.Fit, topics []string) *match.Offer {
	wanted := slices.Contains(topics, string(meaning.Fit)) || slices.Contains(topics, string(meaning.Cost))
	if s.r.opts.Shelf == nil || !wanted || len(a.Figures) == 0 {
		return nil
	}
	if !slices.Contains(topics, string(meaning.Fit)) {
		// Every need is judged, whatever was asked: a price is no offer for a
		// shaft that is too short.
		f = fit.Solve(c, []string{string(meaning.Fit)}, s.sys, nil)
	}
	if !f.Sol.Has(sheet.ThrustNeed) {
		return nil
	}
	shelf := s.r.opts.Shelf()
	if shelf == nil {
		return nil
	}
	boat := match.Boat{Card: c, Sol: f.Sol, Sys: s.sys,
		Solve: func(m stock.Motor) *sheet.Solution { return solved(asSold(c, match.Offer{Motor: m}, shelf)) },
		Whole: func(o match.Offer) *sheet.Solution { return solved(asSold(c, o, shelf)) }}
	offers := match.Motors(boat, shelf)
	a.Shelf, a.Order = shelf.Shop, match.Order
	for i, o := range offers {
		if len(a.Offers) == mostOffers || i > 0 && offers[0].Fits() && !o.Fits() {
			break
		}
		a.Offers = append(a.Offers, offered(o, offers))
	}
	if len(offers) == 0 || !offers[0].Fits() {
		return nil
	}
	best := offers[0]
	for _, it := range best.Rig.Items {
		p := answer.Part{What: it.What, Item: it.Name, Count: it.Count}
		if it.SKU != "" {
			p.Price, p.Item = answer.Num(it.Price.Dollars()), it.Name+" ("+it.SKU+")"
			p.Sum = answer.Num(it.Price.Dollars() * float64(it.Count))
		} else {
			p.Note = "not on the shelf"
		}
		a.Parts = append(a.Parts, p)
	}
	asked := slices.Contains(topics, string(meaning.Cost))
	put := func(id sheet.ID, amount unit.Money, how string) {
		x := amount.Dollars()
		a.Figures = append(a.Figures, answer.Figure{ID: id.String(), Label: id.Describe().Label,
			Value: x, Low: x, High: x, Unit: "USD", Display: unit.Show(x, unit.Dollar, s.sys),
			Basis: string(sheet.Stock), How: how, Asked: asked})
	}
	how := "the parts listed, " + shelf.Shop
	if !best.Rig.Whole() {
		how += ", without those that it does not hold"
	}
	put(sheet.CostTotal, best.Rig.Total, how)
	if best.Rig.Yearly > 0 {
		put(sheet.CostYearly, best.Rig.Yearly, best.Rig.YearlyHow)
	}
	if asked && a.Headline == "" {
		a.Headline = costHeadline(best, shelf.Shop, s.sys)
	}
	best.Sol = nil // large, and soon found again
	return &best
}

// costHeadline says what the rig of the leading offer comes to, and whose prices
// these are.
func costHeadline(o match.Offer, shop string, sys unit.System) string {
	text := unit.Show(o.Rig.Total.Dollars(), unit.Dollar, sys) + " for the rig complete, "
	if !o.Rig.Whole() {
		text = unit.Show(o.Rig.Total.Dollars(), unit.Dollar, sys) + " for what the shelf holds of the rig, "
	}
	return text + unit.Show(o.Motor.Price.Dollars(), unit.Dollar, sys) + " of it the motor, " + o.Motor.Name + ". Prices: " + shop + "."
}

// asSold is the boat with a motor of the shelf in hand, and with the batteries,
// wire and charger of its rig where that is made up already: what was said of
// them before gives way. The words behind each fact name the shelf.
func asSold(c card.Card, o match.Offer, shelf *stock.Shelf) card.Card {
	m := o.Motor
	c = c.Without("motor.thrust", "motor.voltage", "motor.current", "motor.shaft", "motor.drive", "motor.speeds", "motor.count")
	c = listing(c, "motor.thrust", m.Thrust.Newtons(), m.Name)
	c = listing(c, "motor.voltage", m.Voltage.Volts(), m.Name)
	c = listing(c, "motor.current", m.Current.Amperes(), m.Name)
	c = listing(c, "motor.shaft", m.Shaft.Metres(), m.Name)
	c = c.With(card.Fact{Slot: "motor.speeds", Text: m.Speeds, Said: listed + m.Name})
	c = c.With(card.Fact{Slot: "motor.drive", Text: m.Drive, Said: listed + m.Name})
	if b := o.Rig.Battery; b.SKU != "" {
		c = c.Without("battery.capacity", "battery.count", "battery.voltage", "battery.layout", "battery.chemistry", "battery.group", "battery.reserve")
		c = listing(c, "battery.capacity", b.Capacity.AmpereHours(), b.Name)
		c = listing(c, "battery.count", float64(o.Rig.Series*o.Rig.Strings), b.Name)
		c = listing(c, "battery.voltage", b.Voltage.Volts(), b.Name)
		c = listing(c, sheet.BatteryPrice.String(), b.Price.Dollars(), b.Name)
		c = listing(c, sheet.BatteryLife.String(), float64(b.Cycles), b.Name)
		c = c.With(card.Fact{Slot: "battery.chemistry", Text: b.Chemistry, Said: listed + b.Name})
		switch {
		case o.Rig.Series > 1 && o.Rig.Strings > 1:
			c = c.With(card.Fact{Slot: "battery.layout", Text: "series-parallel", Said: listed + b.Name})
		case o.Rig.Series > 1:
			c = c.With(card.Fact{Slot: "battery.layout", Text: "series", Said: listed + b.Name})
		case o.Rig.Strings > 1:
			c = c.With(card.Fact{Slot: "battery.layout", Text: "parallel", Said: listed + b.Name})
		}
	}
	for _, it := range o.Rig.Items {
		for _, ch := range shelf.Chargers {
			if it.What == "charger" && ch.SKU == it.SKU {
				c = listing(c, "charger.current", ch.Current.Amperes(), ch.Name)
			}
		}
		for _, p := range shelf.Parts {
			if it.What == "wire" && p.SKU == it.SKU && p.Gauge != nil {
				// Aught sizes are numbers too: 0 is 1/0.
				gauge := float64(p.Gauge.Number())
				c = c.With(card.Fact{Slot: "wire.gauge", Value: &gauge, Unit: "AWG", Said: listed + p.Name})
			}
		}
	}
	return c
}

// listed leads the words behind a fact that the shelf states.
const listed = "on the shelf, "

// listing puts a number of the shelf's list on a card; 0 is not on the list.
func listing(c card.Card, slot string, x float64, name string) card.Card {
	if x == 0 {
		return c
	}
	return c.With(card.Fact{Slot: slot, Value: &x, Said: listed + name})
}

// solved solves a card for what a rig is made up from, which is chosen by values.
func solved(c card.Card) *sheet.Solution {
	given, duty := fit.Givens(c)
	return sheet.StandardBook().SolveNominal(sheet.Question{Given: given, Duty: duty, Want: rigWants})
}

func offered(o match.Offer, all []match.Offer) answer.Offer {
	out := answer.Offer{SKU: o.Motor.SKU, Name: o.Motor.Name, Price: o.Motor.Price.Dollars(), Total: o.Rig.Total.Dollars(),
		Whole: o.Fits() && o.Rig.Whole(), Fits: o.Fits(), Reason: o.Reasons()}
	for _, j := range o.Judged {
		out.Needs = append(out.Needs, answer.Need{Need: j.Need, Verdict: j.Verdict.String(), Reason: j.Reason})
	}
	for _, v := range match.Views {
		if b, ok := v.Best(all); ok && b.Motor.SKU == o.Motor.SKU {
			out.Views = append(out.Views, v.Name)
		}
	}
	return out
}
