package fit

import (
	"testing"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/card"
)

func num(x float64) *float64 { return &x }

func vee() card.Card {
	return card.Card{}.
		With(card.Fact{Slot: "boat.hull", Text: "vee", Said: "vee"}).
		With(card.Fact{Slot: "boat.length", Value: num(unit.Feet(17).Metres()), Unit: "m", Said: "17 ft"}).
		With(card.Fact{Slot: "load.total", Value: num(unit.Pounds(1500).Kilograms()), Unit: "kg", Said: "1,500 lb"})
}

func TestTheQuestionBackIsTheOneThatMovesTheChoice(t *testing.T) {
	// With weight, hull and wind said, the height of the deck is what decides.
	calm := vee().With(card.Fact{Slot: "wind.speed", Value: num(unit.MilesPerHour(5).MetresPerSecond())})
	q := Solve(calm, []string{"fit"}, unit.US, nil).Ask()
	if q == nil || q.Slot != "mount.height" {
		t.Errorf("asks %+v, want mount.height", q)
	}
	// With the deck measured there is nothing left to ask of the shaft.
	c := vee().With(card.Fact{Slot: "mount.height", Value: num(unit.Inches(20).Metres()), Said: "20 in"}).
		With(card.Fact{Slot: "mount.kind", Text: "folding-arm"}).With(card.Fact{Slot: "mount.place", Text: "bow"})
	if q := Solve(c, []string{"shaft"}, unit.US, nil).Ask(); q != nil && q.Slot == "mount.height" {
		t.Errorf("asks again for what was said: %+v", q)
	}
}

func TestNothingKnownAsksForTheBoat(t *testing.T) {
	q := Solve(card.Card{}, []string{"fit"}, unit.US, nil).Ask()
	if q == nil || q.Slot != "boat.length" {
		t.Errorf("asks %+v, want boat.length", q)
	}
}

func TestChangesNameWhatMoved(t *testing.T) {
	before := Solve(vee(), []string{"thrust"}, unit.US, nil)
	after := Solve(vee().With(card.Fact{Slot: "load.total", Value: num(unit.Pounds(2500).Kilograms())}), []string{"thrust"}, unit.US, nil)
	var ids []string
	for _, c := range Changes(before, after) {
		ids = append(ids, c.ID)
	}
	if len(ids) < 2 || ids[0] != "load.total" || ids[1] != "thrust.need" {
		t.Errorf("changes %v", ids)
	}
	if c := Changes(after, after); len(c) != 0 {
		t.Errorf("nothing moved, yet %v", c)
	}
}

func TestRangesTakeTheDemandingEnd(t *testing.T) {
	deck := func(low, high float64) card.Fact {
		return card.Fact{Slot: "mount.height", Low: num(unit.Inches(low).Metres()), High: num(unit.Inches(high).Metres())}
	}
	narrow := Solve(vee().With(deck(20, 20)), []string{"shaft"}, unit.US, nil)
	wide := Solve(vee().With(deck(20, 24)), []string{"shaft"}, unit.US, nil)
	got := unit.Length(wide.Sol.Value(sheet.ShaftNeed) - narrow.Sol.Value(sheet.ShaftNeed)).Inches()
	if got < 3.9 || got > 4.1 {
		t.Errorf("a deck of 20 to 24 in asks %.1f in more than one of 20, want 4", got)
	}
}

func TestDutyProfilePairsThrottleAndHours(t *testing.T) {
	c := card.Card{}
	for _, p := range [][2]float64{{1, 1}, {0.33, 5}} {
		c = c.And(card.Fact{Slot: "use.throttle", Value: num(p[0])}).And(card.Fact{Slot: "use.hours", Value: num(p[1])})
	}
	given, duty := Givens(c)
	if len(duty) != 2 || duty[1].Throttle != 0.33 || duty[1].Hours.Hours() != 5 {
		t.Errorf("duty %v", duty)
	}
	for _, g := range given {
		if g.ID == sheet.UseHours && g.Value.Nominal != 6 {
			t.Errorf("hours %v, want 6 together", g.Value)
		}
	}
}

func TestCurvesRiseAndFall(t *testing.T) {
	curves := Solve(vee(), []string{"fit"}, unit.US, nil).Curves()
	if len(curves) != 2 {
		t.Fatalf("%d curves", len(curves))
	}
	for i, rising := range []bool{true, false} {
		p := curves[i].Points
		for j := 1; j < len(p); j++ {
			if rising && p[j][1] < p[j-1][1] || !rising && p[j][1] > p[j-1][1]+1e-9 {
				t.Errorf("%s: %v after %v", curves[i].ID, p[j], p[j-1])
			}
		}
		if p[0][1] == p[len(p)-1][1] {
			t.Errorf("%s is flat", curves[i].ID)
		}
	}
}

func BenchmarkFit(b *testing.B) {
	c := vee()
	for b.Loop() {
		f := Solve(c, []string{"fit"}, unit.US, nil)
		f.Ask()
	}
}
