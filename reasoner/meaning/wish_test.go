package meaning

import (
	"strings"
	"testing"

	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// TestTopics holds what single lines ask for: the topics in order.
func TestTopics(t *testing.T) {
	for _, row := range []struct{ text, topics string }{
		{"16 ft jon, 700 lb loaded", "fit"},
		{"what motor for a 19 ft bass boat", "fit"},
		{"deck to water is 27 in", "shaft"},
		{"is a 54 inch shaft too long for a 20 in deck", "shaft"},
		{"what gauge for 45 amps over 20 ft", "wire"},
		{"breaker for a 56 amp motor", "breaker"},
		{"how long on a 100 ah agm at half throttle", "runtime"},
		{"which charger for two group 31s overnight", "charger"},
		{"how much wind can an 80 hold on a 19 ft deep v", "hold"},
		{"how fast will a 45 push a 14 ft canoe", "speed"},
		{"12 or 24 volt for a 17 ft vee", "voltage"},
		{"brushed or brushless", "choice"},
		{"how heavy is a 36 volt bank", "weight"},
		{"will a 70 push a 20 ft toon", "thrust"},
		{"plate says 1,100 lb, 4 of us at 190", "capacity"},
		{"my motor shakes since i hit a rock", "fault"},
		{"whats a breaker for", "breaker"},
		{"explain peukert to me", "concept"},
		{"how do i winterize it", "concept"},
		{"how long to fill a 100 ah lithium at 15 amps", "charger"},
		{"can i charge a lithium at 25 F in the shed", "concept"},
		{"range of a 55 on a 14 ft jon with a group 31", "runtime"},
		{"how far can i run 6 gauge at 12v 40 amps", "wire"},
		{"does frost hurt an agm", "concept"},
		{"i need a bow mount for a 17 ft vee, plate says 1,100 lb", "fit capacity"},
	} {
		w := Bind(read.Read(row.text), card.Card{}).Wish
		got := strings.Join(topicNames(w.Topics), " ")
		if got != row.topics {
			t.Errorf("%q asks for %q, want %q", row.text, got, row.topics)
		}
		if w.Out {
			t.Errorf("%q: refused", row.text)
		}
	}
}

// TestJudgeAndCompare holds what is to be judged and what to choose between.
func TestJudgeAndCompare(t *testing.T) {
	for _, row := range []struct{ text, judge, over, compare string }{
		{"is 48 too short for a 24 in deck", "motor.shaft", "", ""},
		{"8 gauge enough for 50 amps 18 ft", "wire.gauge", "", ""},
		{"would a 55 do for 1,400 lb loaded", "motor.thrust", "", ""},
		{"agm or lithium", "", "battery.chemistry", "agm lithium"},
		{"how much faster is a 70 than a 45", "", "motor.thrust", "70 45"},
		{"30, 45 or 55 for a 13 ft jon", "", "motor.thrust", "30 45 55"},
		{"front or back of a 12 ft canoe", "", "mount.place", "bow transom"},
		{"is a 40 amp breaker ok for a 45", "breaker.in-hand motor.thrust", "", ""},
		{"24v or 36v for 2,500 lb loaded", "", "motor.voltage", "24v 36v"},
		{"cable steer or electric steer", "", "motor.control", "foot-cable foot-electric"},
		{"bow mount or transom mount for a 14 ft jon", "", "mount.place", "bow transom"},
	} {
		w := Bind(read.Read(row.text), card.Card{}).Wish
		if got := strings.Join(w.Judge, " "); row.judge != "" && got != row.judge {
			t.Errorf("%q judges %q, want %q", row.text, got, row.judge)
		}
		if got := strings.Join(w.Compare, " "); w.Over != row.over || got != row.compare {
			t.Errorf("%q compares %q over %q, want %q over %q", row.text, got, w.Over, row.compare, row.over)
		}
	}
}

// TestOutside holds what is refused and, more important, what is not.
func TestOutside(t *testing.T) {
	for _, text := range []string{"tell me a joke about pike", "who won the game", "jkl; asdf", "🎣🎣", "recipe for perch", "write a haiku about batteries", "how do i fix my furnace"} {
		if !Bind(read.Read(text), card.Card{}).Wish.Out {
			t.Errorf("%q: not seen to be something else", text)
		}
	}
	for _, text := range []string{"can i leave it out in the rain", "why so long then?", "half knot of current", "do i need lights at night", "rinse it after salt?",
		"does it scare the fish", "how do i get weeds off the prop", "is it legal on my lake", "what about kids", "thanks"} {
		if Bind(read.Read(text), card.Card{}).Wish.Out {
			t.Errorf("%q: refused, though it may be the trade's", text)
		}
	}
}

// TestWhy holds questions for the reason of the last answer.
func TestWhy(t *testing.T) {
	c := Bind(read.Read("bow stands 23 in off the water, which shaft"), card.Card{}).Card
	for _, text := range []string{"why so long then?", "how come", "ok why", "but why so much"} {
		if out := Bind(read.Read(text), c); !out.Wish.Why || len(out.Changed) > 0 {
			t.Errorf("%q: why %v, changed %v", text, out.Wish.Why, out.Changed)
		}
	}
	if Bind(read.Read("why does it gulp air at the ramp"), c).Wish.Why {
		t.Error("a question about a fault was taken for one about the last answer")
	}
}

// TestCannotBe holds impossible and contradictory talk: the kind of problem, and
// the slot that is left empty for it.
func TestCannotBe(t *testing.T) {
	for _, row := range []struct{ text, kind, empty string }{
		{"14 ft kayak, 3,000 lb loaded", "contradiction", "load.total"},
		{"16 ft vee, 1,400 lb dry, 900 loaded", "contradiction", "load.total"},
		{"18 ft boat in a 400 mph wind", "out-of-range", "wind.speed"},
		{"45 ft jon boat", "contradiction", "boat.length"},
		{"17 ft vee, -1,500 lb loaded", "out-of-range", "load.total"},
	} {
		out := Bind(read.Read(row.text), card.Card{})
		found := false
		for _, p := range out.Problems {
			found = found || p.Kind == row.kind || p.Kind == "out-of-range" && row.kind == "contradiction"
			if p.Kind == row.kind && p.Text == "" {
				t.Errorf("%q: a problem without words", row.text)
			}
		}
		if !found {
			t.Errorf("%q: no problem of kind %s in %v", row.text, row.kind, out.Problems)
		}
		if f, ok := out.Card.Get(row.empty); ok {
			t.Errorf("%q: %s stands all the same", row.text, describe(f))
		}
	}
}

// TestCommands holds plain talk that steers.
func TestCommands(t *testing.T) {
	c := Bind(read.Read("17 ft vee, 1,500 lb loaded, windy"), card.Card{}).Card
	for _, text := range []string{"undo", "undo that", "take that back", "ok take that back", "go back"} {
		out := Bind(read.Read(text), c)
		if out.Command != Undo || len(out.Card.Facts) != len(c.Facts) {
			t.Errorf("%q: command %q with %d facts", text, out.Command, len(out.Card.Facts))
		}
	}
	out := Bind(read.Read("start over, 12 ft canoe 400 lb total"), c)
	if out.Command != Fresh {
		t.Fatalf("command %q, want a new start", out.Command)
	}
	compareFacts(t, "start over", "boat.length 12 ft; boat.hull canoe; load.total 400 lb", out.Card)
	if out := Bind(read.Read("go back to lithium"), c); out.Command != None {
		t.Errorf("going back to lithium is no undo: %q", out.Command)
	}
}

// TestBoatsApart keeps two boats of one conversation apart.
func TestBoatsApart(t *testing.T) {
	var c card.Card
	for _, turn := range []phrasing{
		{"17 ft vee, 1,500 lb loaded", "boat.length 17 ft; boat.hull vee; load.total 1500 lb"},
		{"my brother's pontoon is 22 ft and 3,200 lb loaded", "boat.length 22 ft; boat.hull pontoon; load.total 3200 lb"},
		{"what about a 55 on it", "boat.length 22 ft; boat.hull pontoon; load.total 3200 lb; motor.thrust 55 lbf"},
		{"back to my boat", "boat.length 17 ft; boat.hull vee; load.total 1500 lb"},
		{"another boat, 12 ft kayak 300 lb total", "boat.length 12 ft; boat.hull kayak; load.total 300 lb"},
		{"back to the pontoon", "boat.length 22 ft; boat.hull pontoon; load.total 3200 lb; motor.thrust 55 lbf"},
	} {
		out := Bind(read.Read(turn.text), c)
		compareFacts(t, turn.text, turn.want, out.Card)
		c = out.Card
	}
}

// TestCorrected shows what a slip was taken for.
func TestCorrected(t *testing.T) {
	out := Bind(read.Read("24v 80 lb thrist, what brekaer"), card.Card{})
	if len(out.Corrected) != 2 || out.Corrected[0] != (Correction{"thrist", "thrust"}) || out.Corrected[1] != (Correction{"brekaer", "breaker"}) {
		t.Errorf("corrected %v", out.Corrected)
	}
}
