package reasoner

import (
	"encoding/json"
	"strings"
	"testing"

	"heronlake.example/ask/kb"
	"heronlake.example/ask/kb/stock"
	"heronlake.example/ask/reasoner/answer"
)

func session(t *testing.T) *Session {
	t.Helper()
	lib, err := kb.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	return New(Options{Notes: lib}).NewSession()
}

// slot finds an understood slot.
func slot(a answer.Answer, name string) (answer.Understood, bool) {
	for _, u := range a.Understood {
		if u.Slot == name {
			return u, true
		}
	}
	return answer.Understood{}, false
}

func figure(a answer.Answer, id string) (answer.Figure, bool) {
	for _, f := range a.Figures {
		if f.ID == id {
			return f, true
		}
	}
	return answer.Figure{}, false
}

func value(t *testing.T, a answer.Answer, id string) float64 {
	t.Helper()
	f, ok := figure(a, id)
	if !ok {
		t.Fatalf("%q: no figure %s", a.Question, id)
	}
	return f.Value
}

func TestAFittingCarriesItsReasons(t *testing.T) {
	a := session(t).Ask("16 ft aluminum vee, 1,300 lb loaded, wind 14 mph, deck is 22 inches off the water")
	for _, id := range []string{"load.total", "thrust.rule", "thrust.wind", "thrust.need", "thrust.class", "system.voltage",
		"shaft.need", "shaft.class", "motor.current", "bank.capacity", "bank.count", "runtime.full", "runtime.cruise",
		"wire.gauge", "wire.drop", "breaker.rating", "hold.wind", "speed.top"} {
		f, ok := figure(a, id)
		if !ok {
			t.Errorf("no figure %s", id)
			continue
		}
		if f.Basis == "" || f.How == "" || f.Display == "" || f.Low > f.Value || f.High < f.Value {
			t.Errorf("figure %s is incomplete: %+v", id, f)
		}
		if f.Basis != "said" && f.Source == "" {
			t.Errorf("figure %s has no source", id)
		}
	}
	if len(a.Choices) != 7 {
		t.Errorf("%d choices, want 7", len(a.Choices))
	}
	if len(a.Passages) == 0 || a.Headline == "" || a.Notice == "" {
		t.Errorf("headline %q, %d passages, notice %q", a.Headline, len(a.Passages), a.Notice)
	}
	for _, p := range a.Passages {
		if strings.Contains(p.Text, "{{") || p.Source == "" {
			t.Errorf("passage %s: unrendered or without source", p.Note)
		}
	}
}

func TestALaterTurnChangesOneThing(t *testing.T) {
	s := session(t)
	first := s.Ask("17 foot bass boat, 2,000 lb loaded, two aboard, wind 10 mph")
	second := s.Ask("make the wind 25")
	if _, ok := slot(second, "boat.length"); !ok {
		t.Error("the length was lost")
	}
	if value(t, second, "thrust.wind") <= value(t, first, "thrust.wind") {
		t.Error("more wind asks for no more thrust")
	}
	if len(second.Changed) == 0 {
		t.Error("the answer does not lead with what changed")
	}
	third := s.Ask(":undo")
	if third.Reply == "" {
		t.Error("undo says nothing")
	}
	u, _ := slot(s.Ask(":boat"), "wind.speed")
	if u.Value == nil || *u.Value > 5 {
		t.Errorf("after undo the wind is %v", u.Value)
	}
}

func TestFreshForgets(t *testing.T) {
	s := session(t)
	s.Ask("17 foot bass boat, 2,000 lb loaded")
	s.Ask(":fresh")
	if a := s.Ask(":boat"); len(a.Understood) != 0 || a.Reply == "" {
		t.Errorf("after :fresh: %v, %q", a.Understood, a.Reply)
	}
	s.Ask(":undo")
	if a := s.Ask(":boat"); len(a.Understood) == 0 {
		t.Error("undo does not bring the boat back")
	}
}

func TestWhyIsTheChain(t *testing.T) {
	s := session(t)
	s.Ask("16 ft jon, 900 lb loaded")
	a := s.Ask(":why thrust.rule")
	if len(a.Steps) < 3 {
		t.Fatalf("%d steps", len(a.Steps))
	}
	last := a.Steps[len(a.Steps)-1]
	if last.ID != "thrust.rule" || last.Working != "900 lb x 2 lb per 100 lb" || last.Source == "" {
		t.Errorf("last step %+v", last)
	}
	if b := s.Ask(":why thrust by weight"); len(b.Steps) != len(a.Steps) {
		t.Error("a figure is not found by its label")
	}
	if b := s.Ask(":why moon.phase"); len(b.Problems) == 0 {
		t.Error("an unknown figure is not refused")
	}
}

// A figure is never shown on the strength of assumptions alone.
func TestNothingSaidNothingShown(t *testing.T) {
	for _, q := range []string{"what motor should I get?", "what wire do I need?", "how long will it run?", "good morning", "", "   ", "\x00\x1b[2J", "motor"} {
		a := session(t).Ask(q)
		for _, f := range a.Figures {
			if f.ID != "breaker.distance" {
				t.Errorf("%q: figure %s = %s out of nothing", q, f.ID, f.Display)
			}
		}
	}
}

func TestImpossibleBoatsGetAQuestionNotAMotor(t *testing.T) {
	for _, q := range []string{"11 ft kayak, 3,500 lb", "it weighs 1,800 lb dry and 1,400 loaded, 17 ft"} {
		a := session(t).Ask(q)
		if len(a.Problems) == 0 || len(a.Figures) > 0 {
			t.Errorf("%q: problems %v, %d figures", q, a.Problems, len(a.Figures))
		}
	}
}

func TestUnknownColonWord(t *testing.T) {
	if a := session(t).Ask(":engine"); len(a.Problems) == 0 || !strings.Contains(a.Problems[0].Text, ":boat") {
		t.Errorf("got %+v", a.Problems)
	}
}

func TestMetricSpeakerIsAnsweredInKind(t *testing.T) {
	a := session(t).Ask("4.8 m aluminium boat, 600 kg loaded, wind 7 m/s")
	f, _ := figure(a, "load.total")
	if f.Display != "600 kg" {
		t.Errorf("load shown as %q", f.Display)
	}
}

func TestSameQuestionSameBytes(t *testing.T) {
	ask := func() string {
		s := session(t)
		s.Ask("19 ft bay boat 2,900 lb loaded, salt, 15 mph wind, must hold position")
		out, err := json.Marshal(s.Ask("lithium, 8 hours, deck 20 in up"))
		if err != nil {
			t.Fatal(err)
		}
		return string(out)
	}
	first := ask()
	for range 5 {
		if got := ask(); got != first {
			t.Fatal("the same conversation gave other bytes")
		}
	}
}

func TestTheShelfOffersOnlyWhatFits(t *testing.T) {
	lib, err := kb.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	shelf := stock.Demo
	r := New(Options{Notes: lib, Shelf: shelf})
	a := r.NewSession().Ask("21 ft bay boat, 3,350 lb loaded, salt water, must have gps anchor, bow deck 24 in above the water")
	if len(a.Offers) == 0 || a.Shelf == "" {
		t.Fatal("no offers")
	}
	for _, o := range a.Offers {
		if !o.Fits {
			continue
		}
		for _, n := range o.Needs {
			if n.Verdict == "fail" && n.Need != "weight" {
				t.Errorf("%s is offered and fails %s", o.Name, n.Need)
			}
		}
	}
	none := r.NewSession().Ask("21 ft bay boat, 3,350 lb loaded, salt water, must have gps anchor, must have a tiller, bow deck 60 in above the water")
	for _, o := range none.Offers {
		if o.Fits {
			t.Errorf("%s fits a deck 60 in up", o.Name)
		}
		if o.Reason == "" {
			t.Errorf("%s: a miss without a reason", o.Name)
		}
	}
}
