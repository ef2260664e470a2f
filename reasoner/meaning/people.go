package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// people counts who is aboard: "two guys", "3 of us", "me and my brother",
// "just me n the dog", "2 adults and 2 kids". Persons who merely say or own
// something are not aboard.
func (l *line) people() {
	l.weighed()
	l.batteriesOnly()
	l.batteriesOfThem()
	l.batteryTally()
	l.crewOfUnknown()
	l.crewThisTime()
	for i := 0; i < len(l.terms); i++ {
		if to, ok := l.crewChanges(i); ok {
			i = to
			continue
		}
		n, to, low, high, ok := l.party(i)
		if !ok {
			if m, last, _, single := l.item(i); single && l.terms[i].id != idMe {
				if l.putChange(i, last, m) {
					i = last
				}
			}
			continue
		}
		if !l.mentionsMe(i, to) && l.putChange(i, to, n) {
			i = to
			continue
		}
		if l.setSlots["people.count"] {
			continue
		}
		if l.roomFor(i, to) {
			l.useNumbers(i, to, "persons on a plate")
			i = to
			continue
		}
		l.useNumbers(i, to, "")
		l.crewFrom, l.crewTo = i, to
		f := card.Fact{Slot: "people.count", Unit: "1", Said: l.said(l.terms[i].start, l.terms[to].end), Row: "who is aboard"}
		if low != high {
			f.Low, f.High = num(low), num(high)
			f.Value = num(high)
		} else {
			f.Value = num(n)
		}
		l.put(f)
		i = to
	}
}

// crewThisTime reads "4 geezers this trip": so many of a word that names nothing
// known, on this trip and not the one before, while a number of people stands.
func (l *line) crewThisTime() {
	if !l.knows("people.count") || l.setSlots["people.count"] || len(l.terms) > 8 {
		return
	}
	for i := range l.terms {
		n := l.smallNumber(i)
		w := l.text(i + 1)
		if n == 0 || n > 12 || i+1 >= len(l.terms) || l.id(i+1) != words.None || len(w) < 4 || w[len(w)-1] != 's' || notAboard[w] || !l.thisTime(i+2) {
			continue
		}
		if k := l.skipFillers(i-1, -1); k >= 0 && l.terms[k].mark == 0 && l.id(k) != idActually && l.id(k) != idAnd && l.id(k) != idFine && !opensCrew[l.text(k)] {
			continue
		}
		l.useNumbers(i, i, "")
		l.putCount(n, "so many this time", i, i+1)
		return
	}
}

// thisTime tells that a line ends in "this time" and the like.
func (l *line) thisTime(i int) bool {
	if l.text(i) == "this" {
		i++
	}
	switch l.text(i) {
	case "time", "trip", "go", "round", "weekend", "outing", "this time", "this trip", "this weekend", "today", "tomorrow", "around":
		return l.endsAt(i) || l.text(i+1) == "around"
	}
	return false
}

// opensCrew are the words before a number of people that say only that they are.
var opensCrew = map[string]bool{"theres": true, "there": true, "make it": true, "its": true, "be": true, "got": true, "taking": true, "bringing": true, "with": true, "so": true, "but": true, "now": true, "have": true, "well": true, "say": true}

// notAboard are things counted by the trip that are no people.
var notAboard = map[string]bool{"trips": true, "stops": true, "spots": true, "lakes": true, "rods": true, "casts": true, "bites": true, "lures": true, "baits": true, "coolers": true, "bags": true, "boxes": true, "tanks": true, "speeds": true, "times": true, "passes": true, "holes": true, "runs": true, "reels": true, "charges": true, "boats": true, "laps": true, "traps": true, "nets": true, "lines": true, "beers": true, "chairs": true, "seats": true, "poles": true, "things": true, "pieces": true, "docks": true, "ponds": true}

// batteriesOfThem reads "two of them" where batteries were talked of last.
func (l *line) batteriesOfThem() {
	if len(l.terms) > 12 || !l.knows("battery.capacity") && !l.knows("battery.group") && !l.knows("battery.chemistry") || !l.askedLast(Runtime, Bank, Charger, Weight) && !l.saidLast("battery.") || l.any(ofPersons) {
		return
	}
	for i := range l.terms {
		if l.id(i+1) == idBattery && (l.text(i) == "second" || l.text(i) == "another" || l.text(i) == "one more" || l.text(i) == "2nd" || l.text(i) == "extra") {
			n := 1.0
			if f, ok := l.before.Get("battery.count"); ok && f.Value != nil {
				n = *f.Value
			}
			l.put(card.Fact{Slot: "battery.count", Value: num(n + 1), Unit: "1", Said: l.said(l.terms[i].start, l.terms[i+1].end), Row: "a battery more"})
			return
		}
		v := l.smallNumber(i)
		if l.text(i) == "one" {
			v = 1
		}
		if v == 0 || v > 8 || l.text(i+1) != "of" {
			continue
		}
		switch l.text(i + 2) {
		case "them", "em", "those", "these":
			l.useNumbers(i, i, "")
			l.put(card.Fact{Slot: "battery.count", Value: num(v), Unit: "1", Said: l.said(l.terms[i].start, l.terms[i+2].end), Row: "so many of those batteries"})
			return
		}
	}
}

// saidLast tells that what was said last is of a group of slots.
func (l *line) saidLast(prefix string) bool {
	last, slot := 0, ""
	for _, f := range l.before.Facts {
		if f.Turn >= last && !Inner(f.Slot) {
			last, slot = f.Turn, f.Slot
		}
	}
	return strings.HasPrefix(slot, prefix)
}

// putCount notes a number of people that a turn comes to.
func (l *line) putCount(n float64, row string, from, to int) {
	l.put(card.Fact{Slot: "people.count", Value: num(n), Unit: "1", Said: l.said(l.terms[max(from, 0)].start, l.terms[to].end), Row: row})
}

// putChange notes that a mention of people changes their number.
func (l *line) putChange(i, to int, n float64) bool {
	count, row, change := l.peopleChange(i, to, n)
	if !change || l.setSlots["people.count"] {
		return false
	}
	l.useNumbers(i, to, "")
	l.putCount(count, row, i-1, to)
	return true
}

// crewChanges reads a change of the number aboard that begins at a term, and
// gives the last term it took.
func (l *line) crewChanges(i int) (to int, ok bool) {
	if l.setSlots["people.count"] {
		return 0, false
	}
	if n, row, to, ok := l.comesOrStays(i); ok {
		l.useNumbers(i, to, "")
		l.putCount(n, row, i, to)
		return to, true
	}
	if n, to, ok := l.ordinalPerson(i); ok {
		row := "somebody more"
		if _, _, leaves := l.near(to, 1, ofLeave, 3); leaves || l.negated[i] || l.text(to+1) == "out" || l.text(to+1) == "off" || l.id(i-1) == idLeave || l.id(i-2) == idLeave {
			n--
			row = "somebody stays ashore"
		}
		l.putCount(n, row, i, to)
		return to, true
	}
	if n, to, ok := l.oneLess(i); ok {
		l.useNumbers(i, to, "")
		l.putCount(n, "so many more or fewer", i, to)
		return to, true
	}
	if n, ok := l.allBack(i); ok {
		l.putCount(n, "everybody back", i-2, i)
		return i, true
	}
	if n, to, ok := l.justSoMany(i); ok {
		l.useNumbers(i, to, "")
		l.putCount(n, "just so many", i-2, to)
		return to, true
	}
	return 0, false
}

var ofLeave = of("leave home")

// batteriesOnly reads "one only", "just one" where batteries were counted and
// asked about last and no people are.
func (l *line) batteriesOnly() {
	if len(l.terms) > 4 || !l.knows("battery.count") || l.knows("people.count") || !l.askedLast(Runtime, Bank, Charger, Weight) || !l.anyText("only", "just") {
		return
	}
	for i := range l.terms {
		if v := l.smallNumber(i); v > 0 && v <= 8 && (l.endsAt(i) || l.filler(i+1)) {
			l.useNumbers(i, i, "")
			l.put(card.Fact{Slot: "battery.count", Value: num(v), Unit: "1", Said: l.said(l.terms[i].start, l.terms[i].end), Row: "only so many batteries"})
			return
		}
	}
}

// roomFor tells that a number of people is what a boat may take, not who is
// aboard: "10 people max", "plate says 6 persons".
func (l *line) roomFor(i, to int) bool {
	if l.id(to) != idPerson {
		return false
	}
	if to+1 < len(l.terms) && l.terms[to+1].measure >= 0 && l.any(ofPlate) {
		if me := &l.r.Measures[l.terms[to+1].measure]; me.Value == nil && me.High != nil && me.Kind == read.Mass {
			return true // "4 people up to 800 lb on the plate"
		}
	}
	if next := l.id(to + 1); hulls.holds(next) || next == idBoat {
		return true // "an 8 man raft"
	}
	if l.id(i-1) == idWith {
		return false
	}
	k := i - 1
	for k > 0 && (l.terms[k].measure >= 0 || l.terms[k].filler) {
		k--
	}
	if k >= 0 && ofPlate.holds(l.id(k)) {
		return true // "plate says 1,150 lb 5 people"
	}
	reach := 2 // past the plate's weight only where "or" joins the two
	if l.text(i-1) == "or" {
		reach = 4
	}
	if _, _, plate := l.near(i, -1, ofPlate, reach); plate || l.text(i-1) == "rated" {
		return true
	}
	switch l.text(to + 1) {
	case "max", "maximum", "capacity", "limit", "or", "plate", "rating", "rated":
		return true
	}
	switch l.text(i - 1) {
	case "seats", "sleeps", "holds", "fits":
		return true
	}
	return false
}

var ofAdd = of("add")

var ofPlate = of("capacity plate")

func (l *line) useNumbers(from, to int, why string) {
	for k := from; k <= to; k++ {
		if m := l.terms[k].measure; m >= 0 && !(why == "" && l.r.Measures[m].Kind == read.Mass) {
			l.used[m] = true
			l.reason[m] = why
		}
	}
}

// eachBehindNoun accepts "two oldies, 75 kg apiece": a plural that is in no table,
// and what each weighs behind it.
func (l *line) eachBehindNoun(i int) bool {
	w := l.text(i + 1)
	if l.id(i+1) != words.None || len(w) < 4 || w[len(w)-1] != 's' || l.filler(i+1) {
		return false
	}
	k := i + 2
	for k < len(l.terms) && (l.terms[k].mark == ',' || l.terms[k].filler) {
		k++
	}
	if k >= len(l.terms) || l.terms[k].measure < 0 || !ofEach.holds(l.id(k+1)) {
		return false
	}
	me := &l.r.Measures[l.terms[k].measure]
	_, hi := ends(l.convert(me, bareIf(me, "lb")))
	return me.Kind == read.Mass && hi >= 35 && hi <= maxPersonEach
}

// timesWeight accepts "we are 3 x 80": so many people of a weight.
func (l *line) timesWeight(i int) bool {
	k := l.skipFillers(i+1, 1)
	if v := l.smallNumber(k); v == 0 || v > 12 || l.text(k+1) != "x" || k+2 >= len(l.terms) || l.terms[k+2].measure < 0 {
		return false
	}
	me := &l.r.Measures[l.terms[k+2].measure]
	_, hi := ends(l.convert(me, bareIf(me, "lb")))
	return (me.Kind == read.Mass || me.Kind == read.Number) && hi >= 30 && hi <= maxPersonEach
}

// takesAlong tells that the speaker goes as well: "i usually take two buddies".
func (l *line) takesAlong(i, to int) bool {
	switch l.text(to) {
	case "buddies", "friends", "pals", "mates", "kids", "clients", "buddy", "friend":
	default:
		return false
	}
	if l.terms[i].measure < 0 && l.terms[i].id != idPair || l.knows("people.count") {
		return false
	}
	for k := i - 1; k >= 0 && k >= i-2; k-- {
		switch l.text(k) {
		case "take", "bring", "taking", "bringing", "takes", "brings":
			return true
		}
	}
	return false
}

// list goes on from the first of a list of persons: "me + wife", "two adults
// and two kids", "dad, my brother and me".
func (l *line) list(start int, n float64, to int) (sum float64, end int, ok bool) {
	sum, end = n, to
	meIn := l.mentionsMe(start, to)
	numbered := l.terms[start].measure >= 0
	items := 1
	for items < 12 {
		k := l.pastParenthesis(end + 1)
		if k >= len(l.terms) {
			break
		}
		sep := &l.terms[k]
		if v := l.smallNumber(k + 1); sep.text == "plus" && v > 0 && v <= 6 && l.endsAt(k+1) {
			sum, end, numbered, items = sum+v, k+1, true, items+1 // "me + 2", "skipper + 1"
			continue
		}
		if sep.measure >= 0 && l.smallNumber(k) > 0 {
			if m, last, multi, good := l.item(k); good && multi {
				sum, end, numbered, items = sum+m, last, true, items+1
				continue
			}
		}
		if w := sep.text; w == "my" || w == "our" || w == "his" {
			if m, last, _, good := l.item(k); good && meIn {
				sum, end, items = sum+m, last, items+1
				continue
			}
		}
		if !(sep.id == idAnd || sep.id == idWith || sep.mark == ',' || sep.text == "and" || sep.text == "my" && items == 0) {
			break
		}
		k++
		if k < len(l.terms) && l.terms[k].id == idAnd {
			k++
		}
		if k >= len(l.terms) {
			break
		}
		m, last, _, good := l.item(k)
		dog := false
		if !good {
			if last, dog = l.dogAt(k); !dog {
				break
			}
			m = 0
		}
		if sep.mark == ',' && !meIn && !l.mentionsMe(k, last) && l.terms[k].measure >= 0 && !l.kidsAt(last) && !dog {
			break
		}
		meIn = meIn || l.mentionsMe(k, last)
		numbered = numbered || l.terms[k].measure >= 0
		sum += m
		end = last
		items++
	}
	if items < 2 || !(meIn || numbered) {
		return 0, 0, false
	}
	return sum, end, true
}

// pastParenthesis goes over "(230 lb)" behind a person.
func (l *line) pastParenthesis(k int) int {
	if k+2 < len(l.terms) && l.r.Text[l.terms[k].start] == '(' && l.terms[k+1].measure >= 0 && l.r.Text[l.terms[k+2].start] == ')' {
		return k + 3
	}
	return k
}

func (l *line) kidsAt(i int) bool { return l.id(i) == idChild || l.id(i) == idCompanion }

func (l *line) mentionsMe(from, to int) bool {
	for k := from; k <= to; k++ {
		if l.terms[k].id == idMe || l.terms[k].id == idAlone || l.terms[k].text == "him" || l.terms[k].text == "herself" {
			return true
		}
	}
	return false
}

func (l *line) dogAt(k int) (last int, ok bool) {
	for j := k; j < k+4 && j < len(l.terms); j++ {
		if l.terms[j].id == idDog || l.terms[j].id == idGear {
			return j, true
		}
		if m := l.terms[j].measure; m >= 0 && l.r.Measures[m].Kind != read.Number {
			return 0, false
		}
		if !l.terms[j].filler && l.terms[j].id != words.None && l.terms[j].measure < 0 {
			return 0, false
		}
	}
	return 0, false
}

// item reads one member of a list or one counted group. multi tells that it can
// stand alone as a statement of who is aboard.
func (l *line) item(i int) (n float64, to int, multi, ok bool) {
	t := &l.terms[i]
	if t.possessive {
		return 0, 0, false, false
	}
	switch {
	case t.id == idMe:
		if t.text == "i" && (i == 0 || l.terms[i-1].id != idAnd) {
			return 0, 0, false, false
		}
		return 1, i, false, true
	case t.id == idPair:
		if j, good := l.noun(i+1, 2); good {
			return 2, j, true, true
		}
		return 0, 0, false, false
	case t.measure >= 0:
		v := l.smallNumber(i)
		if v <= 0 {
			return 0, 0, false, false
		}
		if l.text(i+1) == "of" && (l.id(i+2) == idUs || l.text(i+2) == "you" || (l.text(i+2) == "them" || l.text(i+2) == "em") && (l.knows("people.count") || l.any(ofPersons) || l.id(i+3) == words.Of("fishing")) && !l.any(batteryWords)) {
			if l.knows("people.count") && (l.text(i+2) == "them" || l.text(i+2) == "em") && (l.text(i+3) == "are" || l.text(i+3) == "is") {
				return 0, 0, false, false // "two of them are kids"
			}
			return v, i + 2, true, true
		}
		if j, good := l.noun(i+1, 3); good {
			return v, j, true, true
		}
		return 0, 0, false, false
	case t.id == idCompanion || t.id == idPerson || t.id == idChild:
		if l.saysNext(i) || l.plural(i) {
			return 0, 0, false, false
		}
		return 1, i, false, true
	case t.filler || t.text == "one" || t.text == "another":
		// "my big brother", "a buddy", "the old man"
		for j := i + 1; j < i+4 && j < len(l.terms); j++ {
			u := &l.terms[j]
			if u.id == idCompanion || u.id == idPerson || u.id == idChild {
				if u.possessive || l.saysNext(j) || l.plural(j) {
					return 0, 0, false, false
				}
				return 1, j, false, true
			}
			if u.mark != 0 || u.measure >= 0 || u.id != words.None && !u.filler {
				return 0, 0, false, false
			}
		}
	}
	return 0, 0, false, false
}

// noun looks for a noun for persons behind a number, past at most so many
// other words.
func (l *line) noun(i, room int) (at int, ok bool) {
	for j := i; j < len(l.terms) && j < i+room; j++ {
		t := &l.terms[j]
		switch {
		case t.id == idPerson || t.id == idChild || t.id == idCompanion:
			return j, !t.possessive
		case t.id == idUs && j > i && l.text(j-1) == "of":
			return j, true
		case t.mark != 0 || t.id == idAnd || t.id == idWith:
			return 0, false
		case t.measure >= 0:
			if l.r.Measures[t.measure].Kind != read.Mass {
				return 0, false
			}
		case t.id != words.None && !adjectives.holds(t.id):
			return 0, false
		}
	}
	return 0, false
}

// adjectives are entries that may stand between a number and the persons.
var adjectives = of("age", "loaded", "bigger", "add")

// countsNoun tells that a number before the term counts what stands there.
func (l *line) countsNoun(i int) bool {
	if i >= len(l.terms) || l.terms[i].mark != 0 || l.terms[i].measure >= 0 {
		return false
	}
	id := l.terms[i].id
	return id == words.None && !l.terms[i].filler || id != words.None && id != idWind && id != idLoaded && id != idAnd && id != idWith
}

// counted tells that a term is something that a number before it counts.
func (l *line) counted(i int) bool {
	id := l.id(i)
	return id != words.None && (id.Kind() == words.Part || id.Kind() == words.Hull)
}

var pluralForms = map[string]bool{"men": true, "people": true, "folks": true, "women": true, "children": true, "crew": true, "ppl": true, "peeps": true, "aboard": true, "on board": true, "souls": true, "heads": true, "bodies": true}

// plural tells that a noun means several without saying how many.
func (l *line) plural(i int) bool {
	w := l.terms[i].text
	return pluralForms[w] || strings.HasSuffix(w, "s") && !strings.HasSuffix(w, "ss") && !singularS[w] || strings.HasSuffix(w, " men")
}

// singularS are single persons whose name ends as a plural does.
var singularS = map[string]bool{"mrs": true, "pops": true, "missus": true, "gramps": true, "princess": true}

// saysNext tells that a person is only quoted: "my cousin says 5".
func (l *line) saysNext(i int) bool {
	next := l.id(i + 1)
	if next == idMust || next == idLike {
		if _, _, comes := l.near(i, 1, ofAdd, 3); comes {
			return false // "my wife wants to come too"
		}
	}
	return next == idSays || next == idLike || next == idMust || l.text(i+1) == "has" || l.text(i+1) == "had" || l.text(i+1) == "got" && l.id(i) != idUs
}

// smallNumber is a bare whole number of at most 40 at a term, or 0. The middle
// of a range is its high end.
func (l *line) smallNumber(i int) float64 {
	if i < 0 || i >= len(l.terms) || l.terms[i].measure < 0 {
		return 0
	}
	m := &l.r.Measures[l.terms[i].measure]
	if m.Kind != read.Number || m.As != "" || l.used[l.terms[i].measure] {
		return 0
	}
	v := m.Value
	if v == nil {
		if m.Low == nil || m.High == nil {
			return 0
		}
		v = m.High
	}
	if *v != float64(int(*v)) || *v < 1 || *v > 60 {
		return 0
	}
	return *v
}
