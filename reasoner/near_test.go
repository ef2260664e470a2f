package reasoner

import (
	"strings"
	"testing"
)

// TestNamesNearby: a figure or a word that steers, misspelt, gets the names that
// may have been meant, and what is like none of them gets the list.
func TestNamesNearby(t *testing.T) {
	r := New(Options{})
	for line, want := range map[string]string{
		":why thrust.ned":    "Did you mean thrust.need?",
		":why shaft":         "Did you mean shaft.class, shaft.need or shaft.submergence?",
		":why guage":         "Did you mean wire.gauge?",
		":why breker":        "Did you mean breaker.distance or breaker.rating?",
		":why battery count": "Did you mean bank.count?",
		":why top sped":      "Did you mean speed.top?",
		":why qqqqq":         "Say one of: bank.capacity,",
		":why":               "Say one of: bank.capacity,",
		":hlep":              "There is no :hlep. Did you mean :help?",
		":bo":                "Did you mean :boat or :boats?",
		":untis us":          "Did you mean :units?",
		":drll":              "Did you mean :drill?",
		":qqqqq":             "The words that steer are :boat, :boats, :drill,",
	} {
		a := r.NewSession().Ask(line)
		if len(a.Problems) != 1 || !strings.Contains(a.Problems[0].Text, want) {
			t.Errorf("%q: %+v, want %q", line, a.Problems, want)
		}
	}
}
