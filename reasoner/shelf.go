package reasoner

import (
	"slices"

	"heronlake.example/ask/calc/band"
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
	sheet.BreakerRating, sheet.HoldWind, sheet.RuntimeCruise}

// shelf names what the shop holds for this boat: the motors that fit, or the
// nearest misses, and the parts of the first one's rig.
func (s *Session) shelf(a *answer.Answer, c card.Card, f *fit.Fit, topics []string) {
	wanted := slices.Contains(topics, string(meaning.Fit)) || slices.Contains(topics, string(meaning.Cost))
	if s.r.opts.Shelf == nil || !wanted || !f.Sol.Has(sheet.ThrustNeed) || len(a.Figures) == 0 {
		return
	}
	shelf := s.r.opts.Shelf()
	if shelf == nil {
		return
	}
	boat := match.Boat{Card: c, Sol: f.Sol, Sys: s.sys, Solve: func(m stock.Motor) *sheet.Solution { return withMotor(c, m) }}
	offers := match.Motors(boat, shelf)
	a.Shelf = shelf.Shop
	for i, o := range offers {
		if len(a.Offers) == mostOffers || i > 0 && offers[0].Fits() && !o.Fits() {
			break
		}
		a.Offers = append(a.Offers, offered(o, offers))
	}
	if len(offers) == 0 || !offers[0].Fits() {
		return
	}
	best := offers[0]
	for _, it := range best.Rig.Items {
		p := answer.Part{What: it.What, Item: it.Name, Count: it.Count}
		if it.SKU != "" {
			p.Price, p.Item = answer.Num(it.Price.Dollars()), it.Name+" ("+it.SKU+")"
		} else {
			p.Note = "not on the shelf"
		}
		a.Parts = append(a.Parts, p)
	}
	total := best.Rig.Total.Dollars()
	a.Figures = append(a.Figures, answer.Figure{ID: sheet.CostTotal.String(), Label: sheet.CostTotal.Describe().Label,
		Value: total, Low: total, High: total, Unit: "USD", Display: unit.Show(total, unit.Dollar, s.sys),
		Basis: string(sheet.Stock), How: "the parts listed, " + shelf.Shop, Asked: slices.Contains(topics, string(meaning.Cost))})
}

// withMotor solves the boat with a motor of the shelf in hand.
func withMotor(c card.Card, m stock.Motor) *sheet.Solution {
	c = c.Without("motor.thrust", "motor.voltage", "motor.current", "motor.shaft", "motor.drive", "motor.speeds")
	given, duty := fit.Givens(c)
	put := func(id sheet.ID, v float64) {
		given = append(given, sheet.Given{ID: id, Value: band.Exactly(v), Said: m.Name})
	}
	put(sheet.MotorThrust, m.Thrust.Newtons())
	put(sheet.MotorVoltage, m.Voltage.Volts())
	if m.Current > 0 {
		put(sheet.MotorAmps, m.Current.Amperes())
	}
	given = append(given, sheet.Given{ID: sheet.MotorSpeeds, Word: m.Speeds}, sheet.Given{ID: sheet.MotorDrive, Word: m.Drive})
	return sheet.StandardBook().Solve(sheet.Question{Given: given, Duty: duty, Want: rigWants})
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
