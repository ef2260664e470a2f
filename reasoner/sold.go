package reasoner

import (
	"slices"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb/stock"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
	"heronlake.example/ask/reasoner/match"
)

// A listing is what the shelf states of one slot.
type listing struct {
	slot  string
	value float64
	unit  string
	text  string // of a word slot
	word  bool
	name  string // of the article
}

// What gives way to a motor, and to a bank, of the shelf, whether it states as
// much of them or not.
var (
	motorSlots = []string{"motor.thrust", "motor.voltage", "motor.current", "motor.shaft", "motor.drive", "motor.speeds", "motor.count"}
	bankSlots  = []string{"battery.capacity", "battery.count", "battery.voltage", "battery.layout", "battery.chemistry", "battery.group", "battery.reserve"}
)

func listedMotor(out []listing, m stock.Motor) []listing {
	out = number(out, "motor.thrust", m.Thrust.Newtons(), m.Name)
	out = number(out, "motor.voltage", m.Voltage.Volts(), m.Name)
	out = number(out, "motor.current", m.Current.Amperes(), m.Name)
	out = number(out, "motor.shaft", m.Shaft.Metres(), m.Name)
	return append(out, listing{slot: "motor.speeds", text: m.Speeds, word: true, name: m.Name}, listing{slot: "motor.drive", text: m.Drive, word: true, name: m.Name})
}

func listedBank(out []listing, b match.Bank) []listing {
	x := b.Battery
	out = number(out, "battery.capacity", x.Capacity.AmpereHours(), x.Name)
	out = number(out, "battery.count", float64(b.Series*b.Strings), x.Name)
	out = number(out, "battery.voltage", x.Voltage.Volts(), x.Name)
	out = number(out, sheet.BatteryPrice.String(), x.Price.Dollars(), x.Name)
	out = number(out, sheet.BatteryLife.String(), float64(x.Cycles), x.Name)
	out = append(out, listing{slot: "battery.chemistry", text: x.Chemistry, word: true, name: x.Name})
	switch {
	case b.Series > 1 && b.Strings > 1:
		out = append(out, listing{slot: "battery.layout", text: "series-parallel", word: true, name: x.Name})
	case b.Series > 1:
		out = append(out, listing{slot: "battery.layout", text: "series", word: true, name: x.Name})
	case b.Strings > 1:
		out = append(out, listing{slot: "battery.layout", text: "parallel", word: true, name: x.Name})
	}
	return out
}

// number adds a number of the shelf's list; 0 is not on the list.
func number(out []listing, slot string, x float64, name string) []listing {
	if x == 0 {
		return out
	}
	return append(out, listing{slot: slot, value: x, name: name})
}

// listed leads the words behind a fact that the shelf states.
const listed = "on the shelf, "

// asSold is the boat with a motor of the shelf in hand, and with the batteries,
// wire and charger of its rig where that is made up already: what was said of
// them before gives way. The words behind each fact name the shelf.
func asSold(c card.Card, o match.Offer, shelf *stock.Shelf) card.Card {
	c = c.Without(motorSlots...)
	list := listedMotor(nil, o.Motor)
	if o.Rig.Battery.SKU != "" {
		c = c.Without(bankSlots...)
		list = listedBank(list, o.Rig.Bank)
	}
	for _, it := range o.Rig.Items {
		for _, ch := range shelf.Chargers {
			if it.What == "charger" && ch.SKU == it.SKU {
				list = number(list, "charger.current", ch.Current.Amperes(), ch.Name)
			}
		}
		for _, p := range shelf.Parts {
			if it.What == "wire" && p.SKU == it.SKU && p.Gauge != nil {
				// Aught sizes are numbers too: 0 is 1/0.
				list = append(list, listing{slot: "wire.gauge", value: float64(p.Gauge.Number()), unit: "AWG", name: p.Name})
			}
		}
	}
	for _, l := range list {
		f := card.Fact{Slot: l.slot, Text: l.text, Unit: l.unit, Said: listed + l.name}
		if !l.word {
			f.Value = &l.value
		}
		c = c.With(f)
	}
	return c
}

// A counter tries one motor of the shelf after another on a boat. It is asSold
// for many candidates, by values alone.
type counter struct {
	trial *sheet.Trial
	duty  []sheet.Stretch
	boat  []sheet.Given // with what was said of batteries
	hull  []sheet.Given // without
	given []sheet.Given // of the motor being tried
	list  []listing
}

func newCounter(c card.Card) *counter {
	c = c.Without(motorSlots...)
	n := &counter{trial: sheet.StandardBook().NewTrial()}
	n.boat, n.duty = fit.Givens(c)
	n.hull, _ = fit.Givens(c.Without(bankSlots...))
	return n
}

// try solves the boat with an offer's motor, and with its bank once it has one.
func (n *counter) try(o match.Offer, want []sheet.ID) *sheet.Trial {
	base := n.boat
	n.list = listedMotor(n.list[:0], o.Motor)
	if o.Rig.Battery.SKU != "" {
		base = n.hull
		n.list = listedBank(n.list, o.Rig.Bank)
	}
	n.given = append(n.given[:0], base...)
	for _, l := range n.list {
		id, ok := fit.CellOf(l.slot)
		if !ok {
			continue
		}
		g := sheet.Given{ID: id, Value: band.Exactly(l.value), Word: l.text}
		n.given = append(slices.DeleteFunc(n.given, func(g sheet.Given) bool { return g.ID == id }), g)
	}
	n.trial.Solve(sheet.Question{Given: n.given, Duty: n.duty, Want: want})
	return n.trial
}

// yearly is what the bank of an offer costs a year, with the working; 0 where
// that cannot be known.
func yearly(c card.Card, o match.Offer, shelf *stock.Shelf, sys unit.System) (unit.Money, string) {
	if o.Rig.Battery.SKU == "" {
		return 0, ""
	}
	given, duty := fit.Givens(asSold(c, match.Offer{Motor: o.Motor, Rig: match.Rig{Bank: o.Rig.Bank}}, shelf))
	sol := sheet.StandardBook().SolveNominal(sheet.Question{Given: given, Duty: duty, Want: []sheet.ID{sheet.CostYearly}})
	st := sol.Step(sheet.CostYearly)
	if st == nil {
		return 0, ""
	}
	return unit.Dollars(st.Value), sol.Working(st, sys)
}
