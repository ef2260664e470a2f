package meaning

import (
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// settingWords stand before the number of a dial's step.
var settingWords = map[string]bool{"speed": true, "on speed": true, "setting": true, "notch": true, "click": true, "dial": true, "gear": true}

// dialSteps reads the step that a motor's dial stands on: "five speed, speed 3",
// "3 of 5", "5 out of 10". A step is a throttle only where the number of steps
// is known; beside a draw it only says what the draw was measured at.
func (l *line) dialSteps() {
	for m := range l.r.Measures {
		if m >= 64 || l.used[m] || l.r.Measures[m].As != "" {
			continue
		}
		i := l.at[m]
		n := l.smallNumber(i)
		if n == 0 || n > 10 {
			continue
		}
		named := settingWords[l.text(i-1)]
		steps, to := l.stepsBehind(i)
		five := l.fiveSpeeds()
		switch {
		case steps > 0 && n <= steps && (named || five || l.text(i-1) == "on" || l.text(i-1) == "at"):
		case steps > 0:
			continue
		case five && n <= 5 && (named || l.text(i-1) == "on") && l.endsOrPauses(i):
			steps, to = 5, i
		case named && l.text(i-1) != "gear" && l.endsOrPauses(i):
			l.used[m], l.reason[m] = true, "a setting of the dial"
			continue
		default:
			continue
		}
		for k := i; k <= to; k++ {
			if x := l.terms[k].measure; x >= 0 {
				l.used[x] = true
			}
		}
		if l.hasKind(read.Current) && !l.anyOf("breaker", "charger", "charge") || l.setSlots["use.throttle"] {
			l.reason[m] = "a setting of the dial"
			continue
		}
		if steps == 5 && !five {
			l.put(card.Fact{Slot: "motor.speeds", Text: "fixed", Said: l.said(l.terms[i].start, l.terms[to].end), Row: "a step of five"})
		}
		l.put(card.Fact{Slot: "use.throttle", Value: num(n / steps), Unit: "1", Said: l.said(l.terms[max(i-1, 0)].start, l.terms[to].end), Row: "a step of the dial"})
	}
}

// stepsBehind reads "of 5" and "out of 10" behind a step.
func (l *line) stepsBehind(i int) (steps float64, to int) {
	k := i + 1
	if l.text(k) == "out" {
		k++
	}
	if l.text(k) != "of" {
		return 0, i
	}
	for k++; k < len(l.terms) && l.terms[k].filler; k++ {
	}
	if l.id(k) == idFiveSpeed {
		return 5, k // "3 of five speeds"
	}
	if v := l.smallNumber(k); v == 5 || v == 10 {
		return v, k
	}
	return 0, i
}

// fiveSpeeds tells that the motor has five fixed speeds.
func (l *line) fiveSpeeds() bool {
	if l.has.holds(idFiveSpeed) {
		return true
	}
	f, ok := l.before.Get("motor.speeds")
	return ok && f.Text == "fixed"
}

// endsOrPauses tells that a number counts nothing that stands behind it.
func (l *line) endsOrPauses(i int) bool {
	return l.endsAt(i) || l.terms[i+1].measure >= 0 || l.terms[i+1].filler || l.id(i+1) == idWith || l.id(i+1) == idAnd || l.id(i+1) == idFiveSpeed || askingWords.holds(l.id(i+1)) || l.id(i+1) == idThrottle
}
