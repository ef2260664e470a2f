package meaning

import (
	"math"
	"testing"

	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// TestInner holds the facts that are for the core alone: those said, and those that
// must not be taken from words that sound like them.
func TestInner(t *testing.T) {
	const absent = -1.0
	for _, row := range []struct {
		text, slot string
		value      float64
	}{
		{"19 foot bass boat, 150 zephyr", "engine.power", 150 * wattsPerHorsepower},
		{"16 jon with the 25 on the back, 900 loaded", "engine.power", 25 * wattsPerHorsepower},
		{"18 ft bass boat with a 175, me and a buddy", "engine.power", 175 * wattsPerHorsepower},
		{"21 ft bay boat w/ a 250, what motor", "engine.power", 250 * wattsPerHorsepower},
		{"16 ft deep v with a 90, three of us", "engine.power", 90 * wattsPerHorsepower},
		{"17 ft bass boat with an 80, 15 mph wind", "engine.power", absent},
		{"14 ft jon with a 55, 700 loaded", "engine.power", absent},
		{"20 ft bay boat with a 115 trolling motor", "engine.power", absent},
		{"12 foot jon, no outboard", "engine.power", 0},
		{"14 ft jon, no motor noise please", "engine.power", absent},
		{"17 ft vee, 150 today and 200 tomorrow", "engine.power", absent},
		{"is a 50 amp breaker ok for a 55", "breaker.in-hand", 50},
		{"breaker for a 50 amp motor", "breaker.in-hand", absent},
		{"flat 110 ah, 8 amp charger, how long", "battery.charge-left", 0},
		{"charge a 100 ah from 20 percent with 10 amps", "battery.charge-left", 0.2},
		{"55 lb at 20 percent on a 100 ah", "battery.charge-left", absent},
		{"250 hull, 110 outboard, 380 people, 60 gear", "load.people", 380 * 0.45359237},
		{"two guys 380, hull 250", "load.people", absent},
		{"6 miles there and back at 2 mph, 100 ah", "use.distance", 6 * 1609.344},
		{"36 miles to the lake, 18 ft vee", "use.distance", absent},
	} {
		f, ok := Bind(read.Read(row.text), card.Card{}).Card.Get(row.slot)
		switch {
		case row.value == absent && ok:
			t.Errorf("%q: %s was not said (row %q)", row.text, row.slot, f.Row)
		case row.value != absent && (!ok || f.Value == nil || math.Abs(*f.Value-row.value) > 0.005*row.value+1e-9):
			t.Errorf("%q: wanted %s %g, got %s", row.text, row.slot, row.value, describe(f))
		}
		if !Inner(row.slot) {
			t.Errorf("%s is no inner slot", row.slot)
		}
	}
}
