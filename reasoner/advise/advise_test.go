package advise

import (
	"slices"
	"strings"
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
		{"holding pays in wind, so it steers itself", boat(fit, word("boat.hull", "vee"), length(18), loaded(1900), wind(16)), "control", "electric steer, foot pedal or remote"},
		{"and is told as worth its price", boat(fit, word("boat.hull", "vee"), length(18), loaded(1900), wind(16)), "position-hold", "worth its price"},
		{"a light wind asks for no such steering", boat(fit, word("boat.hull", "vee"), length(18), loaded(1900), wind(6)), "control", "foot pedal, cable steer"},
		{"refused, cable it stays", boat(fit, word("boat.hull", "vee"), length(18), loaded(1900), wind(16), word("want.position-hold", "false")), "control", "foot pedal, cable steer"},
		{"a tiller holds no spot", boat(fit, word("boat.hull", "jon"), length(14), loaded(650), word("mount.place", "transom"), wind(16)), "position-hold", "left out"},
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

// What this boat calls for stands before what any boat gets.
func TestChoicesThatTheBoatCallsForComeFirst(t *testing.T) {
	var ids []string
	for _, ch := range Choices(boat([]string{"fit"}, word("boat.hull", "bay"), length(20), loaded(3000), word("water.kind", "salt"))) {
		ids = append(ids, ch.ID)
	}
	if salt, usual := slices.Index(ids, "water"), slices.Index(ids, "speed-control"); salt < 0 || salt > usual {
		t.Errorf("the saltwater version stands behind the usual choices: %v", ids)
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
		{"strong-current", boat(fit, append(vee, card.Fact{Slot: "current.speed", Value: num(1.2)})...), boat(fit, append(vee, card.Fact{Slot: "current.speed", Value: num(0.4)})...)},
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

func wind(mph float64) card.Fact {
	return card.Fact{Slot: "wind.speed", Value: num(unit.MilesPerHour(mph).MetresPerSecond())}
}

// A motor that was named is judged by the need and its band (2 lb per 100 lb,
// 2.5 in wind: common practice, no published source).
func TestVerdicts(t *testing.T) {
	for _, c := range []struct {
		name           string
		load, lb, n    float64
		wind           float64 // mph, 0 not said
		want, wantNone string
	}{
		{name: "below the plain rule", load: 2000, lb: 30, want: "30 lb is too small: the need is 40 lb, so take 40 lb. The weight decides, 2 lb per 100 lb."},
		{name: "another voltage", load: 3300, lb: 55, want: "55 lb is too small: the need is 66 lb, so take 70 lb, on 24 V."},
		{name: "enough", load: 2000, lb: 45, want: "45 lb is enough: the need is 40 lb."},
		{name: "above the need's band", load: 1200, lb: 80, want: "80 lb is more than this boat needs: 30 lb meets the need of 24 lb."},
		{name: "between the plain rule and the raised one", load: 2400, lb: 55, wind: 14, want: "55 lb will just do: enough for the plain rule, 48 lb, not for 2.5 lb per 100 lb in wind, 60 lb. 70 lb covers both.", wantNone: "too small"},
		{name: "two of them", load: 4600, lb: 40, n: 2, want: "2 x 40 lb is too small: the need is 92 lb, so take 50 lb each."},
	} {
		facts := []card.Fact{word("boat.hull", "vee"), length(17), loaded(c.load), {Slot: "motor.thrust", Value: num(unit.PoundForce(c.lb).Newtons())}}
		given := []sheet.Given{
			{ID: sheet.BoatHull, Word: "vee"}, {ID: sheet.BoatLength, Value: band.Exactly(unit.Feet(17).Metres())},
			{ID: sheet.LoadTotal, Value: band.Exactly(unit.Pounds(c.load).Kilograms())},
			{ID: sheet.MotorThrust, Value: band.Exactly(unit.PoundForce(c.lb).Newtons())}}
		if c.wind > 0 {
			facts = append(facts, wind(c.wind))
			given = append(given, sheet.Given{ID: sheet.WindSpeed, Value: band.Exactly(unit.MilesPerHour(c.wind).MetresPerSecond())})
		}
		if c.n > 0 {
			facts = append(facts, card.Fact{Slot: "motor.count", Value: num(c.n)})
			given = append(given, sheet.Given{ID: sheet.MotorCount, Value: band.Exactly(c.n)})
		}
		in := boat([]string{"thrust"}, facts...)
		in.Sol = sheet.StandardBook().Solve(sheet.Question{Given: given,
			Want: []sheet.ID{sheet.ThrustNeed, sheet.ThrustClass, sheet.ThrustRule, sheet.MotorThrust, sheet.MotorCount, sheet.SystemVoltage}})
		got := Headline(in)
		if !strings.HasPrefix(got, c.want) || c.wantNone != "" && strings.Contains(got, c.wantNone) {
			t.Errorf("%s: %q, want it to begin %q", c.name, got, c.want)
		}
	}
}
