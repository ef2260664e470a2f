package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
)

// wantRows are the functions that a motor may have.
var wantRows = []wordRow{
	{"position hold", "position hold", "want.position-hold", "true", nil},
	{"GPS is for holding position", "gps", "want.position-hold", "true", notSpeedometer},
	{"heading hold", "heading hold", "want.heading-hold", "true", nil},
	{"following a track", "track following", "want.track", "true", nil},
	{"sonar in the motor", "sonar", "want.sonar-2d", "true", nil},
	{"fishfinder wished for", "fishfinder", "want.sonar-2d", "true", wished},
	{"down imaging", "down imaging", "want.sonar-down", "true", nil},
	{"side imaging", "side imaging", "want.sonar-side", "true", nil},
	{"remote", "remote", "want.remote", "true", nil},
}

var wantOf = map[words.ID]*wordRow{}

func init() {
	for i := range wantRows {
		id := words.Of(wantRows[i].word)
		if id == words.None {
			unknownNames = append(unknownNames, wantRows[i].word)
			continue
		}
		wantOf[id] = &wantRows[i]
	}
}

var (
	trouble  = kinds(words.Symptom)
	explains = of("how many")
)

// wants binds what the motor should be able to do, and what it need not.
func (l *line) wants() {
	faulty := l.faulty()
	for i := range l.terms {
		t := &l.terms[i]
		row := wantOf[t.id]
		if row == nil && t.id == idHold && l.mustHold(i) {
			row = &wantRows[0]
		}
		if row == nil || l.asked(i) || row.when != nil && !row.when(l, i) {
			continue
		}
		text := "true"
		switch {
		case l.negated[i] && l.mayI(i):
			continue
		case l.negated[i]:
			text = "false"
		case faulty || !l.states(i):
			continue
		}
		if f, ok := l.fact(row.slot); ok {
			if f.Text == "true" && text == "false" && l.id(i) == idGps {
				continue
			}
			f.Text, f.Said = text, l.said(t.start, t.end)
			continue
		}
		l.put(card.Fact{Slot: row.slot, Text: text, Said: l.said(t.start, t.end), Row: row.name, Wish: l.wishWord(i)})
	}
	l.pedalForGPS()
	l.answersOffer()
}

// answersOffer takes "nah skip it" and "yeah" for the answer to whether a function
// is wanted, which the turn before asked.
func (l *line) answersOffer() {
	slot := l.before.Over
	if !strings.HasPrefix(slot, "want.") || l.setSlots[slot] || len(l.terms) == 0 {
		return
	}
	end := 0
	for end < len(l.terms) && end < 5 && (l.terms[end].mark == 0 || l.terms[end].mark == ',') {
		end++
	}
	if end < len(l.terms) && l.terms[end].mark != '.' || asksWords[l.text(0)] {
		return
	}
	text := ""
	for i := 0; i < end; i++ {
		switch w := l.text(i); {
		case w == "nah", w == "nope", w == "no", l.id(i) == idNo:
			text = "false"
		case text == "" && (w == "yes" || w == "yeah" || w == "sure" || w == "yep" || w == "yup"):
			text = "true"
		}
	}
	if text != "" {
		l.put(card.Fact{Slot: slot, Text: text, Said: l.said(l.terms[0].start, l.terms[end-1].end), Row: "answer to whether it is wanted"})
	}
}

// faulty tells that the line speaks of something that does not work.
func (l *line) faulty() bool {
	if !l.any(trouble) {
		return false
	}
	for i := range l.terms {
		id := l.terms[i].id
		if id == idTripsBreaker && strings.HasPrefix(l.text(i), "trips ") && (outing[l.text(i-1)] || i > 0 && l.terms[i-1].measure >= 0) {
			continue
		}
		if !trouble.holds(id) || id == idSlow || l.negated[i] && id == idNoise {
			continue
		}
		if prev := l.id(i - 1); prev != idOutboard && prev != idHorsepower {
			return true // a gas engine that will not start is no business of ours
		}
	}
	return false
}

// outing are words before "trips" that make it a day on the water.
var outing = map[string]bool{"day": true, "fishing": true, "guide": true, "short": true, "long": true, "two": true, "few": true, "couple": true, "week": true, "camping": true, "overnight": true, "more": true, "my": true, "our": true}

// mustHold accepts "it should stay put in 14 mph".
func (l *line) mustHold(i int) bool {
	if (l.id(i-1) == idAnd || l.text(i-1) == "and") && wantOf[l.id(i-2)] != nil && !l.asked(i-2) && !l.negated[i] {
		return true // "wants autopilot and hold"
	}
	if i > 0 && l.terms[i-1].mark == ',' && (l.text(i) == "hold in" || l.text(i) == "hold it") && !l.questionish() {
		return true // "3 people, hold in 10 mph"
	}
	_, _, ok := l.near(i, -1, wishing, 3)
	return ok && !l.asksIf(i)
}

var wishing = of("must", "would like")

// notSpeedometer leaves out "4 mph on gps" and "gps says 3".
func notSpeedometer(l *line, at int) bool {
	switch l.text(at - 1) {
	case "on", "by", "per":
		return l.text(at-2) == "holding" || l.id(at-2) == idHold
	case "the":
		return l.text(at-2) != "on" && l.text(at-2) != "by" && l.text(at-2) != "per"
	}
	return l.id(at+1) != idSays && l.text(at+1) != "reads" && l.text(at+1) != "shows" && l.text(at+1) != "speed"
}

// wished accepts what the speaker asks for rather than owns.
func wished(l *line, at int) bool {
	_, _, ok := l.near(at, -1, wishing, 4)
	return ok || l.negated[at]
}

// states tells that a function is wished for, not asked about: "what does
// position hold do" and "is it worth it" state nothing, "what motor with gps
// anchor" does.
func (l *line) states(i int) bool {
	if l.worthNear(i) || l.asksIf(i) {
		return false
	}
	s := l.sentence(i)
	if !l.question(s, i) {
		return true
	}
	if _, k, ok := l.near(i, -1, wishingOrWith, 4); ok && k > s {
		return true
	}
	return false
}

var wishingOrWith = of("must", "would like", "with")

// mayI tells that the sentence asks leave: "can i forget the anchor with gps".
func (l *line) mayI(i int) bool {
	s := l.sentence(i)
	w := l.text(s)
	return (w == "can" || w == "could" || w == "may" || w == "should") && l.id(s+1) == idMe || l.text(s) == "is" && (l.text(s+1) == "it" || l.text(s+2) == "ok")
}

// asksIf accepts "do i need", "does it need", "should i get", "can it".
func (l *line) asksIf(i int) bool {
	s := l.sentence(i)
	for k := s; k < i && k < s+6; k++ {
		switch l.text(k) {
		case "do", "does", "should", "why":
			if k+1 < len(l.terms) && (l.id(k+1) == idMe || l.id(k+1) == idUs || l.text(k+1) == "it" || l.text(k+1) == "you" || l.text(k+1) == "a" || l.text(k+1) == "the" || l.text(k+1) == "these" || l.text(k+1) == "they" || l.text(k+1) == "this") {
				return true
			}
		}
	}
	return false
}

var asksWords = map[string]bool{"what": true, "whats": true, "how": true, "why": true, "is": true, "are": true, "do": true, "does": true, "can": true, "could": true, "should": true, "will": true, "would": true, "which": true, "where": true, "when": true, "explain": true, "wat": true, "wats": true, "hows": true, "whys": true, "whens": true, "wheres": true, "tell": true}

// question tells whether the sentence up to a term asks.
func (l *line) question(s, i int) bool {
	return asksWords[l.text(s)] || explains.holds(l.id(s)) && asksWords[firstWord(l.text(s))] ||
		(l.text(s) == "so" || l.text(s) == "and" || l.text(s) == "ok" || l.text(s) == "but") && asksWords[l.text(s+1)]
}

func firstWord(s string) string {
	for i := 0; i < len(s); i++ {
		if s[i] == ' ' {
			return s[:i]
		}
	}
	return s
}

// wishWord tells that a thing would be liked rather than needed.
func (l *line) wishWord(i int) bool {
	if _, _, ok := l.near(i, -1, ofLike, 4); ok {
		return true
	}
	_, _, ok := l.near(i, 1, ofLike, 2)
	return ok
}

var ofLike = of("would like")

// pedalForGPS: a pedal beside GPS functions is an electric one, because a cable
// pedal leaves nothing for them to steer with.
func (l *line) pedalForGPS() {
	f, ok := l.fact("motor.control")
	if !ok || f.Row != "foot pedal" {
		return
	}
	for _, slot := range []string{"want.position-hold", "want.heading-hold", "want.track", "want.remote"} {
		g, now := l.fact(slot)
		if now && g.Text == "true" {
			f.Text = "foot-electric"
		}
		if h, stood := l.before.Get(slot); !now && stood && h.Text == "true" {
			f.Text = "foot-electric"
		}
	}
}

// findNegated marks the terms that a "no" covers: up to a few words on, through
// "or" and "and", but not past a pause or a "but".
func (l *line) findNegated() {
	l.negated = make([]bool, len(l.terms))
	for i := range l.terms {
		if l.terms[i].id != idNo || l.answersNo(i) {
			continue
		}
		if l.terms[i].text == "no" && i > 0 && (wantOf[l.id(i-1)] != nil || len(familyOf[l.id(i-1)]) > 0) && l.id(i-1) >= 0 && (l.endsAt(i) || l.text(i+1) == "but") {
			l.negated[i-1] = true // "foot control no but remote yes"
			continue
		}
		room := 5
		if verbDenied[l.terms[i].text] {
			room = 2
		}
		for k := i + 1; k < len(l.terms) && k < i+24 && room > 0; k++ {
			t := &l.terms[k]
			if t.mark == '.' || t.mark == '?' || t.mark == ',' && !l.listGoesOn(k) || t.text == "but" || (t.text == "on" || t.text == "for") && k > i+1 && l.terms[k-1].id != words.None || t.id == idMust && k > i+1 || t.id == idWith {
				break
			}
			l.negated[k] = true
			if !t.filler && t.id != idAnd && t.id != idOr && t.text != "or" && t.mark == 0 {
				room--
				if t.id >= 0 && t.id.Kind() != words.Talk {
					room = min(room, 2)
				}
			}
		}
	}
}

// verbDenied are the negations that cover little more than their verb: "my 80
// wont hold in wind on a bay boat".
var verbDenied = map[string]bool{"wont": true, "cant": true, "doesnt": true, "didnt": true, "couldnt": true, "isnt": true, "aint": true, "cannot": true, "wasnt": true, "arent": true, "hasnt": true, "havent": true, "wouldnt": true, "never": true}

// listGoesOn tells that a pause only separates a list: "no gps, remote or
// sonar".
func (l *line) listGoesOn(k int) bool {
	return wantOf[l.id(k-1)] != nil && wantOf[l.id(k+1)] != nil && (l.id(k+2) == idOr || l.text(k+2) == "or" || l.id(k+2) == idAnd || l.text(k+2) == "and")
}

// answersNo tells that a "no" replies to what was said, and denies nothing that
// follows: "no its salt", "no, 19".
func (l *line) answersNo(i int) bool {
	t := &l.terms[i]
	if t.text == "never" && l.id(i+1) != words.None && l.id(i+1) == idBigger {
		return true
	}
	if t.text == "not" || t.text == "cant" || t.text == "wont" || t.text == "doesnt" || t.text == "dont" {
		switch l.text(i + 1) {
		case "sure", "know", "only", "mind":
			return true
		}
	}
	if t.text == "no" && i > 0 && l.terms[i-1].measure >= 0 && i+1 < len(l.terms) && l.terms[i+1].measure >= 0 {
		return true // "its 19 no 20 foot"
	}
	if t.text != "no" || i > 1 && l.terms[i-1].mark == 0 {
		return false
	}
	n := l.text(i + 1)
	return l.id(i+1) == idBack || l.id(i+1) == idActually || n == "its" || n == "it" || n == "thats" || n == "i" || n == "we" || n == "the" || n == "that" || n == "im" || i+1 < len(l.terms) && l.terms[i+1].measure >= 0
}
