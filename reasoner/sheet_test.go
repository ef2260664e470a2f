package reasoner

import (
	"slices"
	"strings"
	"testing"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb/stock"
	"heronlake.example/ask/reasoner/answer"
)

func withShelf(t *testing.T) *Session {
	t.Helper()
	return New(Options{Shelf: stock.Demo}).NewSession()
}

func figureOf(t *testing.T, a answer.Answer, id string) answer.Figure {
	t.Helper()
	i := slices.IndexFunc(a.Figures, func(f answer.Figure) bool { return f.ID == id })
	if i < 0 {
		t.Fatalf("no figure %s among %d", id, len(a.Figures))
	}
	return a.Figures[i]
}

const heronBoat = "18-foot aluminum, 1,900 lb loaded, windy lake, deck 26 inches over the water, two of us, 6 hours"

// The sheet is the whole fitting whatever was asked last, and asking for it
// leaves the conversation as it was.
func TestSheetIsWholeWhateverWasAskedLast(t *testing.T) {
	plain := New(Options{}).NewSession()
	plain.Ask(heronBoat)
	first := plain.Sheet()
	plain.Ask("how long on the battery at half throttle?")
	before := plain.Card()
	plain.Sheet()
	if after := plain.Card(); len(after.Facts) != len(before.Facts) {
		t.Error("the sheet changed the card")
	}
	if a := plain.Ask(":undo"); a.Reply != "Taken back." {
		t.Errorf("undo after a sheet: %q", a.Reply)
	}
	again := plain.Sheet()
	for _, id := range []string{"thrust.need", "shaft.class", "bank.count", "wire.gauge", "breaker.rating", "charger.current", "hold.wind", "shaft.submergence"} {
		if a, b := figureOf(t, first, id), figureOf(t, again, id); a.Value != b.Value {
			t.Errorf("%s: %g, then %g", id, a.Value, b.Value)
		}
	}
	if len(first.Curves) != 2 || len(first.Steps) == 0 || len(first.Assumed) == 0 || len(first.Measures) == 0 || first.Notice == "" {
		t.Errorf("%d curves, %d steps, %d assumptions, %d measures, notice %q", len(first.Curves), len(first.Steps), len(first.Assumed), len(first.Measures), first.Notice)
	}
	for _, m := range first.Measures {
		if m.Slot == "mount.height" {
			t.Error("a deck height that was said is still to be measured")
		}
	}
	if a := New(Options{}).NewSession().Sheet(); len(a.Figures) > 0 || len(a.Problems) == 0 {
		t.Error("a sheet of nothing")
	}
}

// With a shelf the figures are those of what is sold.
func TestSheetAgreesWithItsPartsList(t *testing.T) {
	s := withShelf(t)
	s.Ask(heronBoat)
	a := s.Sheet()
	part := func(what string) answer.Part {
		for _, p := range a.Parts {
			if p.What == what {
				return p
			}
		}
		t.Fatalf("no %s", what)
		return answer.Part{}
	}
	if amps := figureOf(t, a, "breaker.rating").Display; !strings.Contains(part("breaker").Item, amps) {
		t.Errorf("figures say a breaker of %s, the list %s", amps, part("breaker").Item)
	}
	if n := figureOf(t, a, "bank.count").Value; n != float64(part("battery").Count) {
		t.Errorf("figures say %g batteries, the list %d", n, part("battery").Count)
	}
	if c := figureOf(t, a, "motor.current"); c.Basis != "stock" || c.How != listed+strings.Split(part("motor").Item, " (")[0] {
		t.Errorf("the motor's current is by %s: %s", c.Basis, c.How)
	}
	if l := figureOf(t, a, "load.total"); l.Basis != "said" {
		t.Errorf("the weight that was said is by %s", l.Basis)
	}
	sum := 0.0
	for _, p := range a.Parts {
		if p.Price == nil || p.Sum == nil || *p.Sum != *p.Price*float64(p.Count) {
			t.Errorf("%+v", p)
			continue
		}
		sum += *p.Sum
	}
	if total := figureOf(t, a, "cost.total"); total.Value != sum {
		t.Errorf("total %g, the lines come to %g", total.Value, sum)
	}
	if !strings.Contains(a.Shelf, "demo") || a.Order == "" {
		t.Errorf("shelf %q, order %q", a.Shelf, a.Order)
	}
	for _, u := range a.Understood {
		if strings.HasPrefix(u.Said, listed) {
			t.Errorf("%s stands as said by the customer: %q", u.Slot, u.Said)
		}
	}
	for _, c := range a.Curves {
		if !slices.ContainsFunc(c.Marks, func(m answer.Mark) bool { return m.Own }) {
			t.Errorf("nothing of this boat is marked on %s", c.ID)
		}
	}
}

// Whatever is asked, a motor that fails a hard need is not offered as fitting:
// a question of cost alone judges the shaft as well.
func TestCostQuestionOffersWhatFits(t *testing.T) {
	s := withShelf(t)
	fit := s.Ask("18-foot aluminum, 1,900 lb loaded, windy lake, deck 30 inches over the water, which motor")
	cost := s.Ask("price?")
	if len(fit.Offers) == 0 || len(cost.Offers) == 0 {
		t.Fatalf("%d and %d offers", len(fit.Offers), len(cost.Offers))
	}
	if fit.Offers[0].SKU != cost.Offers[0].SKU {
		t.Errorf("the fit offers %s, the price is for %s", fit.Offers[0].SKU, cost.Offers[0].SKU)
	}
	for _, o := range append(fit.Offers, cost.Offers...) {
		for _, n := range o.Needs {
			if o.Fits && n.Verdict == "fail" {
				t.Errorf("%s is offered though it fails the %s", o.Name, n.Need)
			}
		}
	}
	if !strings.Contains(cost.Headline, "for the rig complete") {
		t.Errorf("headline %q", cost.Headline)
	}
}

func TestNearestMissesSayWhatTheyLack(t *testing.T) {
	small := &stock.Shelf{Shop: "Small", Motors: []stock.Motor{{SKU: "T", Name: "Teal", Thrust: unit.PoundForce(30), Voltage: 12, Shaft: unit.Inches(36), Mount: "bow", Controls: []string{"tiller"}, Speeds: "fixed", Drive: "brushed", Water: "fresh", Price: 100}}}
	s := New(Options{Shelf: func() *stock.Shelf { return small }}).NewSession()
	a := s.Ask(heronBoat)
	if len(a.Offers) != 1 || a.Offers[0].Fits || len(a.Parts) > 0 || a.Offers[0].Total > 0 {
		t.Fatalf("%+v, %d parts", a.Offers, len(a.Parts))
	}
	for _, want := range []string{"thrust short of 48 lb", "shaft short of 48 in"} {
		if !strings.Contains(a.Offers[0].Reason, want) {
			t.Errorf("reason %q lacks %q", a.Offers[0].Reason, want)
		}
	}
}
