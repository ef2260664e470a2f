package advise

import (
	"testing"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb"
	"heronlake.example/ask/reasoner/card"
)

func num(x float64) *float64 { return &x }

// boat solves a few facts for a full fitting.
func boat(topics []string, facts ...card.Fact) In {
	c := card.Card{}
	var given []sheet.Given
	for _, f := range facts {
		c = c.With(f)
		if id, ok := sheet.Lookup(f.Slot); ok {
			g := sheet.Given{ID: id, Word: f.Text}
			if f.Value != nil {
				g.Value = band.Exactly(*f.Value)
			}
			given = append(given, g)
		}
	}
	want := []sheet.ID{sheet.MountPlace, sheet.ThrustClass, sheet.SystemVoltage, sheet.ShaftClass, sheet.ShaftNeed, sheet.BankCount, sheet.BankCapacity,
		sheet.WireGauge, sheet.BreakerRating, sheet.TrimBowSink, sheet.LoadMargin}
	return In{Card: c, Sol: sheet.StandardBook().Solve(sheet.Question{Given: given, Want: want}), Topics: topics, Sys: unit.US}
}

func length(ft float64) card.Fact {
	return card.Fact{Slot: "boat.length", Value: num(unit.Feet(ft).Metres())}
}

func loaded(lb float64) card.Fact {
	return card.Fact{Slot: "load.total", Value: num(unit.Pounds(lb).Kilograms())}
}

func word(slot, w string) card.Fact { return card.Fact{Slot: slot, Text: w} }

func TestRowsAreNamedOnceAndEveryChoiceHasALastResort(t *testing.T) {
	names := map[string]bool{}
	for _, r := range choiceRows {
		if r.name == "" || names[r.name] {
			t.Errorf("choice row %q: empty or used twice", r.name)
		}
		names[r.name] = true
	}
	for _, id := range choiceOrder[1:] { // a mount needs some boat to go on
		last := -1
		for i, r := range choiceRows {
			if r.id == id {
				last = i
			}
		}
		if last < 0 || !choiceRows[last].when(In{}) {
			t.Errorf("choice %s has no row that always holds", id)
		}
	}
	ids := map[string]bool{}
	for _, r := range cautionRows {
		if ids[r.id] {
			t.Errorf("caution %q twice", r.id)
		}
		ids[r.id] = true
	}
}

// TestNotesExist: everything that is cited stands in the handbook.
func TestNotesExist(t *testing.T) {
	lib, err := kb.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	check := func(what, note string) {
		if len(lib.NotePassages(note)) == 0 {
			t.Errorf("%s cites note %q, which does not exist", what, note)
		}
	}
	for _, r := range citeRows {
		for _, n := range r.notes {
			check(r.id, n)
		}
	}
	for _, r := range cautionRows {
		check(r.id, r.note)
	}
}

// Choices that the trade settles by the kind of boat and wish (common practice,
// no published source).
func TestChoices(t *testing.T) {
	fit := []string{"fit"}
	for _, c := range []struct {
		name     string
		in       In
		id, pick string
	}{
		{"vee from the bow", boat(fit, word("boat.hull", "vee"), length(17), loaded(1500)), "mount", "bow mount"},
		{"kayak on a bracket", boat(fit, word("boat.hull", "kayak"), length(12), loaded(330)), "mount", "kayak bracket"},
		{"small jon at the transom", boat(fit, word("boat.hull", "jon"), length(12), loaded(480)), "mount", "transom clamp"},
		{"tiller at the transom", boat(fit, word("boat.hull", "jon"), length(14), loaded(650), word("mount.place", "transom")), "control", "tiller"},
		{"hold needs a motor that steers itself", boat(fit, word("boat.hull", "bass"), length(18), loaded(2200), word("want.position-hold", "true")), "control", "electric steer, foot pedal or remote"},
		{"salt", boat(fit, word("boat.hull", "bay"), length(20), loaded(3000), word("water.kind", "salt")), "water", "saltwater version with an anode"},
		{"fresh", boat(fit, word("boat.hull", "bay"), length(20), loaded(3000), word("water.kind", "fresh")), "water", "freshwater version"},
		{"refused", boat(fit, word("boat.hull", "vee"), length(16), loaded(1200), word("want.position-hold", "false")), "position-hold", "without position hold"},
		{"brushless for a long day", boat(fit, word("boat.hull", "bass"), length(20), loaded(2800), card.Fact{Slot: "use.hours", Value: num(10)}), "drive", "brushless, if the budget allows"},
	} {
		found := false
		for _, ch := range Choices(c.in) {
			if ch.ID == c.id {
				found = true
				if ch.Pick != c.pick {
					t.Errorf("%s: %s is %q, want %q", c.name, c.id, ch.Pick, c.pick)
				}
				if ch.Why == "" {
					t.Errorf("%s: no reason", c.name)
				}
			}
		}
		if !found {
			t.Errorf("%s: no choice %s", c.name, c.id)
		}
	}
}

func TestCautionsApplyOnlyWhereTheyBelong(t *testing.T) {
	has := func(in In, id string) bool {
		for _, c := range Cautions(in) {
			if c.ID == id {
				return true
			}
		}
		return false
	}
	vee := []card.Fact{word("boat.hull", "vee"), length(16), loaded(1200)}
	fit := []string{"fit"}
	for _, c := range []struct {
		id       string
		yes, not In
	}{
		{"salt", boat(fit, append(vee, word("water.kind", "brackish"))...), boat(fit, append(vee, word("water.kind", "fresh"))...)},
		{"weeds", boat(fit, append(vee, word("water.weeds", "true"))...), boat(fit, vee...)},
		{"people-in-the-water", boat(fit, append(vee, word("want.position-hold", "true"))...), boat(fit, append(vee, word("want.position-hold", "false"))...)},
		{"charging-gas", boat([]string{"charger"}, word("battery.chemistry", "agm")), boat([]string{"charger"}, word("battery.chemistry", "lithium"))},
		{"lithium-cold", boat([]string{"charger"}, word("battery.chemistry", "lithium")), boat([]string{"charger"}, word("battery.chemistry", "agm"))},
		{"registration", boat(fit, word("boat.hull", "kayak"), length(12), loaded(330)), boat(fit, vee...)},
	} {
		if !has(c.yes, c.id) {
			t.Errorf("caution %s is missing where it applies", c.id)
		}
		if has(c.not, c.id) {
			t.Errorf("caution %s stands where it does not apply", c.id)
		}
	}
}

func TestVerdicts(t *testing.T) {
	thrust := func(lb float64) card.Fact {
		return card.Fact{Slot: "motor.thrust", Value: num(unit.PoundForce(lb).Newtons())}
	}
	in := boat([]string{"thrust"}, word("boat.hull", "vee"), length(17), loaded(2000), thrust(30))
	in.Sol = sheet.StandardBook().Solve(sheet.Question{Given: []sheet.Given{
		{ID: sheet.LoadTotal, Value: band.Exactly(unit.Pounds(2000).Kilograms())},
		{ID: sheet.MotorThrust, Value: band.Exactly(unit.PoundForce(30).Newtons())}}, Want: []sheet.ID{sheet.ThrustNeed, sheet.ThrustClass, sheet.MotorThrust}})
	if got, want := Headline(in), "30 lb is too small: the need is 40 lb, so take 40 lb. The weight decides, 2 lb per 100 lb."; got != want {
		t.Errorf("headline %q, want %q", got, want)
	}
}
