package meaning

import (
	"strings"

	"heronlake.example/ask/reasoner/read"
)

// breakerRating keeps "50 amps, what breaker" a motor's draw: the breaker must
// stand right beside its own rating.
func breakerRating(l *line, m int) bool {
	i := l.at[m]
	if l.id(i+1) == idBreaker || l.id(i+1) == idTripsBreaker && strings.HasPrefix(l.text(i+1), "breaker") || l.id(i+1) == idTripsBreaker && l.text(i+1) == "fuse blows" {
		return true
	}
	_, at, ok := l.near(i, -1, ofBreaker, 1)
	if !ok {
		return false
	}
	for k := at + 1; k < i; k++ {
		switch l.text(k) {
		case "for", "on", "with", "at", "in", "to", "from":
			return false
		}
		if l.terms[k].mark != 0 {
			return false
		}
	}
	return true
}

// anotherBreaker accepts "should i go 80?" and "its a 50" in talk of a breaker and
// of what the motor draws.
func anotherBreaker(l *line, m int) bool {
	me, i := &l.r.Measures[m], l.at[m]
	if !l.anyOf("breaker", "trips breaker") || !l.hasKind(read.Current) || me.Value == nil || !breakerSizes[*me.Value] || !l.endsAt(i) && l.id(i+1) != idFine && l.text(i+1) != "instead" {
		return false
	}
	k := l.skipFillers(i-1, -1)
	switch l.text(k) {
	case "go", "get", "use", "put", "try", "fit", "bigger", "a", "jump", "step":
		return true
	}
	return k >= 0 && (l.id(k) == idWhatIf || l.id(k) == idOr || l.terms[k].mark == ',') && !forWhat[l.text(i-2)]
}

// breakerSizes are the ratings that breakers for motors are sold at, in amps:
// common practice, no published source.
var breakerSizes = map[float64]bool{15: true, 20: true, 25: true, 30: true, 35: true, 40: true, 50: true, 60: true, 70: true, 80: true, 90: true, 100: true, 120: true, 125: true, 135: true, 150: true}

// forWhat are words before "a 55" that make it what the breaker or wire is for.
var forWhat = map[string]bool{"for": true, "on": true, "with": true, "to": true, "feeding": true}

// breakerFar accepts "breaker is 5 feet from the batteries": where it stands is no
// run of wire.
func breakerFar(l *line, m int) bool {
	i := l.at[m]
	for k := i + 1; k <= i+3 && k < len(l.terms); k++ {
		switch l.text(k) {
		case "from", "away", "off", "of":
			return true
		}
	}
	return false
}
