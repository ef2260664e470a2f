package reasoner

import (
	"testing"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb/stock"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
	"heronlake.example/ask/reasoner/match"
	"heronlake.example/ask/reasoner/meaning"
	"heronlake.example/ask/reasoner/read"
)

func told(t *testing.T, lines ...string) (c card.Card) {
	t.Helper()
	for _, l := range lines {
		c = meaning.Bind(read.Read(l), c).Card
	}
	if len(c.Facts) == 0 {
		t.Fatalf("nothing was understood of %q", lines)
	}
	return c
}

// A motor tried at the counter comes to what the boat with that motor sold comes
// to: alone, and with each battery of the shelf.
func TestTryingAgreesWithSelling(t *testing.T) {
	shelf := stock.Demo()
	want := []sheet.ID{sheet.BankCapacity, sheet.ChargerCurrent, sheet.MotorCurrent, sheet.WireGauge, sheet.HoldWind, sheet.RuntimeCruise, sheet.CostYearly}
	for _, c := range []card.Card{
		told(t, "20 ft deep vee, 3,100 lb loaded, 15 mph wind"),
		told(t, "14 ft jon with an old 12 volt 40 lb motor, five speeds", "two 95 Ah batteries in parallel", "half throttle for 3 hours, quarter for 2"),
	} {
		n := newCounter(c)
		agree := func(o match.Offer) {
			t.Helper()
			trial := n.try(o, want)
			given, duty := fit.Givens(asSold(c, o, shelf))
			sol := sheet.StandardBook().SolveNominal(sheet.Question{Given: given, Duty: duty, Want: want})
			for _, id := range sheet.All() {
				if trial.Has(id) != sol.Has(id) || trial.Value(id) != sol.Value(id) || trial.Word(id) != sol.Word(id) {
					t.Errorf("%s on %s: %s is %g %q tried, %g %q sold", o.Motor.SKU, o.Rig.Battery.SKU, id, trial.Value(id), trial.Word(id), sol.Value(id), sol.Word(id))
				}
			}
		}
		for _, m := range shelf.Motors {
			agree(match.Offer{Motor: m})
			for i, b := range shelf.Batteries {
				agree(match.Offer{Motor: m, Rig: match.Rig{Bank: match.Bank{Battery: b, Series: 1 + i%3, Strings: 1 + i%2}}})
			}
		}
	}
}

// 120 dollars, 200 cycles at 40 trips a year: 5 years, and 24 dollars in each.
func TestYearlyCostIsOfTheBankSold(t *testing.T) {
	c := told(t, "16 ft vee, 1,100 lb loaded, 40 trips a year")
	bank := match.Bank{Battery: stock.Battery{SKU: "B", Name: "flooded 100", Chemistry: "flooded", Voltage: 12, Capacity: 100, Price: 120, Cycles: 200}, Series: 1, Strings: 1}
	m := stock.Motor{SKU: "M", Name: "Grebe", Thrust: unit.PoundForce(55), Voltage: 12, Speeds: "variable", Drive: "brushed"}
	amount, how := yearly(c, match.Offer{Motor: m, Rig: match.Rig{Bank: bank}}, stock.Demo(), unit.US)
	if got := amount.Dollars(); got < 23.999 || got > 24.001 {
		t.Errorf("%g a year, want 24 (%s)", got, how)
	}
	if amount, how := yearly(c, match.Offer{Motor: m}, stock.Demo(), unit.US); amount != 0 || how != "" {
		t.Errorf("a rig without batteries costs %v a year (%s)", amount, how)
	}
}
