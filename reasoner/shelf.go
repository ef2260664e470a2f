package reasoner

import (
	"slices"
	"strings"

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
	offers := match.Motors(match.Boat{Card: c, Sol: f.Sol, Sys: s.sys, Try: newCounter(c).try}, shelf)
	a.Shelf, a.Order = shelf.Shop, match.Order
	for i, o := range offers {
		if len(a.Offers) == mostOffers || i > 0 && offers[0].Fits() && !o.Fits() {
			break
		}
		a.Offers = append(a.Offers, offered(o, offers))
	}
	s.withinBudget(a, c, shelf, offers)
	if len(offers) == 0 || !offers[0].Fits() {
		if slices.Contains(topics, string(meaning.Cost)) && a.Headline == "" {
			a.Headline = "Nothing on the shelf fits this boat, so there is no price for a rig."
		}
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
	if amount, how := yearly(c, best, shelf, s.sys); amount > 0 {
		put(sheet.CostYearly, amount, how)
	}
	if asked && a.Headline == "" {
		a.Headline = costHeadline(best, shelf.Shop, s.sys) + s.wishCost(c, shelf, best.Rig.Total)
	}
	return &best
}

// withinBudget says what the shelf holds for the money that was named: at the end
// of a fitting, and at the beginning of a turn that only names it.
func (s *Session) withinBudget(a *answer.Answer, c card.Card, shelf *stock.Shelf, offers []match.Offer) {
	text := s.forMoney(c, shelf, offers)
	f, _ := c.Get("money.budget")
	switch {
	case text == "":
	case a.FollowUp && f.Turn == c.Turn:
		a.Reply = text
	default:
		a.Headline = strings.TrimSpace(a.Headline + " " + text)
	}
}

// forMoney names the least dear rig that fits and says whether it is within the
// money; "" where none was named or nothing fits at any price.
func (s *Session) forMoney(c card.Card, shelf *stock.Shelf, offers []match.Offer) string {
	f, ok := c.Get("money.budget")
	limit := f.High
	if limit == nil {
		limit = f.Value
	}
	if !ok || limit == nil {
		return ""
	}
	show := func(m unit.Money) string { return unit.Show(m.Dollars(), unit.Dollar, s.sys) }
	budget := unit.Dollars(*limit)
	var least *match.Offer
	for i := range offers {
		o := &offers[i]
		if o.FitsBut("budget") && (least == nil || o.Rig.Total < least.Rig.Total) {
			least = o
		}
	}
	switch {
	case least == nil:
		return ""
	case least.Rig.Total > budget:
		return "No complete rig on the shelf comes to " + show(budget) + ": the least is " + show(least.Rig.Total) + ", " + show(least.Motor.Price) + " of it the motor." + s.wishCost(c, shelf, least.Rig.Total)
	case !least.Rig.Whole():
		return "Within " + show(budget) + " as far as the shelf has prices: " + show(least.Rig.Total) + ", " + least.Motor.Name + "."
	}
	return "Within " + show(budget) + ": the rig of the " + least.Motor.Name + " is " + show(least.Rig.Total) + " complete."
}

// shelfMoved marks the offers that stood otherwise in the answer before, and says
// what that does to the price of the rig that leads.
func (s *Session) shelfMoved(a *answer.Answer, before state) []answer.Change {
	for i := range a.Offers {
		o := &a.Offers[i]
		o.Moved = i >= len(before.offers) || before.offers[i].SKU != o.SKU || before.offers[i].Total != o.Total || before.offers[i].Reason != o.Reason
	}
	if len(a.Offers) == 0 || len(before.offers) == 0 {
		return nil
	}
	was, now := before.offers[0], a.Offers[0]
	if !was.Fits || !now.Fits || was.Total == now.Total {
		return nil
	}
	show := func(x float64) string { return unit.Show(x, unit.Dollar, s.sys) }
	return []answer.Change{{ID: sheet.CostTotal.String(), Text: "Complete rig " + show(was.Total) + " -> " + show(now.Total)}}
}

// wishes are the functions that a boat does without, and what they are called.
var wishes = []struct{ slot, name string }{
	{"want.position-hold", "position hold"}, {"want.heading-hold", "heading hold"}, {"want.track", "track following"},
	{"want.remote", "a remote"}, {"want.sonar-2d", "sonar"}, {"want.sonar-down", "down sonar"}, {"want.sonar-side", "side sonar"},
}

// worthTelling is how much of a rig's price the wishes must be to be spoken of.
const worthTelling = 0.1

// wishCost says what the rig would come to without the functions that were wished
// for, "" where there are none or they hardly matter: so that a customer knows what
// a wish costs.
func (s *Session) wishCost(c card.Card, shelf *stock.Shelf, total unit.Money) string {
	plain, names := c, []string(nil)
	for _, w := range wishes {
		if f, ok := c.Get(w.slot); ok && f.Text == "true" {
			plain, names = plain.Without(w.slot), append(names, w.name)
		}
	}
	if names == nil {
		return ""
	}
	least, ok := s.cheapest(plain.Without("money.budget"), *shelf, "")
	if !ok || least > (1-worthTelling)*total.Dollars() {
		return ""
	}
	return " Without " + strings.Join(names, " and ") + " it would be " + unit.Show(least, unit.Dollar, s.sys) + "."
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
