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
	for i := 0; i < len(l.terms); i++ {
		if n, to, ok := l.ordinalPerson(i); ok && !l.setSlots["people.count"] {
			row := "somebody more"
			if _, _, leaves := l.near(to, 1, of(idLeave.Name()), 3); leaves || l.negated[i] || l.text(to+1) == "out" || l.text(to+1) == "off" || l.id(i-1) == idLeave || l.id(i-2) == idLeave {
				n--
				row = "somebody stays ashore"
			}
			l.put(card.Fact{Slot: "people.count", Value: num(n), Unit: "1", Said: l.said(l.terms[i].start, l.terms[to].end), Row: row})
			i = to
			continue
		}
		if n, to, ok := l.oneLess(i); ok && !l.setSlots["people.count"] {
			l.useNumbers(i, to, "")
			l.put(card.Fact{Slot: "people.count", Value: num(n), Unit: "1", Said: l.said(l.terms[i].start, l.terms[to].end), Row: "so many more or fewer"})
			i = to
			continue
		}
		if n, ok := l.allBack(i); ok && !l.setSlots["people.count"] {
			l.put(card.Fact{Slot: "people.count", Value: num(n), Unit: "1", Said: l.said(l.terms[max(i-2, 0)].start, l.terms[i].end), Row: "everybody back"})
			continue
		}
		if n, to, ok := l.justSoMany(i); ok && !l.setSlots["people.count"] {
			l.useNumbers(i, to, "")
			l.put(card.Fact{Slot: "people.count", Value: num(n), Unit: "1", Said: l.said(l.terms[max(i-2, 0)].start, l.terms[to].end), Row: "just so many"})
			i = to
			continue
		}
		n, to, low, high, ok := l.party(i)
		if !ok {
			if m, last, _, single := l.item(i); single && l.terms[i].id != idMe {
				if count, row, change := l.peopleChange(i, last, m); change && !l.setSlots["people.count"] {
					l.useNumbers(i, last, "")
					l.put(card.Fact{Slot: "people.count", Value: num(count), Unit: "1", Said: l.said(l.terms[max(i-1, 0)].start, l.terms[last].end), Row: row})
					i = last
				}
			}
			continue
		}
		if count, row, change := l.peopleChange(i, to, n); change && !l.mentionsMe(i, to) && !l.setSlots["people.count"] {
			l.useNumbers(i, to, "")
			l.put(card.Fact{Slot: "people.count", Value: num(count), Unit: "1", Said: l.said(l.terms[max(i-1, 0)].start, l.terms[to].end), Row: row})
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

// weighed reads people who are listed with their weights: "im 240, wife 150",
// "me 185, buddy 215, two kids 80 each", "we weigh 190, 210 and 170". Two or more
// of them are a crew, each of the mean weight.
func (l *line) weighed() {
	crew := l.weighedOnes()
	n, sum := 0.0, 0.0
	for _, c := range crew {
		n += c.n
		sum += c.n * c.kg
	}
	if len(crew) < 2 || n > 12 {
		return
	}
	for _, c := range crew {
		for k := c.from; k <= c.at; k++ {
			if m := l.terms[k].measure; m >= 0 {
				l.used[m] = true
			}
		}
	}
	said := l.said(l.terms[crew[0].from].start, l.terms[crew[len(crew)-1].at].end)
	l.put(card.Fact{Slot: "people.count", Value: num(n), Unit: "1", Said: said, Row: "people listed with their weights"})
	l.put(card.Fact{Slot: "people.each", Value: num(sum / n), Unit: "kg", Said: said, Row: "mean of the weights listed"})
}

// A weighedOne is a person, or so many alike, with the weight of each, and the
// terms that say so.
type weighedOne struct {
	from, at int
	n, kg    float64
}

func (l *line) weighedOnes() (crew []weighedOne) {
	for i := 0; i < len(l.terms) && len(crew) < 12; i++ {
		t := &l.terms[i]
		me := t.id == idMe || t.text == "im" || t.text == "shes" || t.text == "hes" || t.text == "she" || t.text == "he"
		n, from := 1.0, i
		switch {
		case t.id == idUs && l.id(i+1) == idWeighs:
			// each weight of the list is one person's
			for k := i + 2; k < len(l.terms) && len(crew) < 12; k++ {
				if kg, ok := l.personsWeight(k); ok {
					crew = append(crew, weighedOne{k, k, 1, kg})
				} else if l.terms[k].mark != ',' && l.id(k) != idAnd && l.text(k) != "and" {
					break
				}
			}
			return crew
		case !me && t.id != idCompanion && t.id != idChild && t.id != idPerson:
			continue
		case !me && l.plural(i) && !t.possessive && t.text != "pops":
			if n = l.smallNumber(i - 1); n == 0 || len(crew) == 0 {
				continue
			}
			from--
		case i > 0 && l.terms[i-1].measure >= 0:
			continue
		}
		k := i + 1
		for k < len(l.terms) && k < i+4 && (l.filler(k) || l.id(k) == idWeighs) {
			k++
		}
		kg, ok := l.personsWeight(k)
		if !ok {
			continue
		}
		next := k + 1
		if ofEach.holds(l.id(next)) {
			next++
		}
		if next < len(l.terms) && l.terms[next].mark == 0 && l.id(next) != idAnd && l.id(next) != idWith && l.text(next) != "and" && l.id(next) != idBoat && l.text(next) != "my" {
			continue
		}
		crew = append(crew, weighedOne{from, k, n, kg})
	}
	return crew
}

// personsWeight gives the weight at a term, in kg, where it is one that a person
// may have.
func (l *line) personsWeight(k int) (kg float64, ok bool) {
	if k < 0 || k >= len(l.terms) || l.terms[k].measure < 0 {
		return 0, false
	}
	m := l.terms[k].measure
	v := &l.r.Measures[m]
	if l.used[m] || v.As != "" || v.Value == nil || v.Kind != read.Mass && v.Kind != read.Number || v.Kind == read.Number && (*v.Value < 60 || *v.Value != float64(int(*v.Value))) {
		return 0, false
	}
	kg = *l.convert(v, bareIf(v, "lb")).value
	return kg, kg >= 15 && kg <= 180
}

// roomFor tells that a number of people is what a boat may take, not who is
// aboard: "10 people max", "plate says 6 persons".
func (l *line) roomFor(i, to int) bool {
	if l.id(to) != idPerson {
		return false
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
		if m := l.terms[k].measure; m >= 0 {
			l.used[m] = true
			l.reason[m] = why
		}
	}
}

// party reads one mention of people that begins at a term. It gives their
// number and the last term it took.
func (l *line) party(i int) (n float64, to int, low, high float64, ok bool) {
	t := &l.terms[i]
	switch {
	case t.id == idAlone:
		if n, to, ok := l.list(i, 1, i); ok {
			return n, to, n, n, true
		}
		return 1, i, 1, 1, true
	case t.id == idBoth:
		return 2, i, 2, 2, true
	case t.text == "both" && (l.text(i-1) == "with us" || l.text(i-1) == "us"):
		return 2, i, 2, 2, true
	case t.text == "both" && l.text(i+1) == "of" && l.id(i+2) == idUs:
		return 2, i + 2, 2, 2, true
	case t.id == idPerson && l.plural(i) && l.smallNumber(i-1) == 0:
		// "people 2", "anglers: 3"
		k := i + 1
		if k < len(l.terms) && l.terms[k].mark == ':' {
			k++
		}
		if v := l.smallNumber(k); v > 0 && v <= 20 && !l.countsNoun(k+1) {
			return v, k, v, v, true
		}
	case t.id == idUs && i+1 < len(l.terms) && l.smallNumber(i+1) > 0 && l.id(i+2) != idPair && !l.counted(i+2):
		v := l.smallNumber(i + 1)
		return v, i + 1, v, v, true
	case t.text == "were" && (l.text(i+1) == "usually" || l.text(i+1) == "normally" || l.text(i+1) == "mostly") && l.smallNumber(i+2) > 0 && l.endsAt(i+2):
		v := l.smallNumber(i + 2)
		return v, i + 2, v, v, true
	case (t.text == "were" || t.text == "we" || t.text == "theres") && l.smallNumber(i+1) > 0 && (i == 0 || l.terms[i-1].mark != 0) && (l.endsAt(i+1) || l.text(i+2) == "at" || l.text(i+2) == "of"):
		v := l.smallNumber(i + 1)
		return v, i + 1, v, v, true
	case l.smallNumber(i) > 0 && l.smallNumber(i) <= 12 && (l.text(i+1) == "at" || i+1 < len(l.terms) && l.r.Text[l.terms[i+1].start] == '@') && l.personWeightAt(i+2):
		v := l.smallNumber(i)
		return v, i, v, v, true
	case t.id == idWith && l.smallNumber(i+1) > 0 && l.endsAt(i+1) && i > 0 && (l.terms[i-1].id == idLoaded || l.terms[i-1].measure >= 0 && l.r.Measures[l.terms[i-1].measure].Kind == read.Mass):
		v := l.smallNumber(i + 1)
		return v, i + 1, v, v, true
	case (t.text == "family" || t.text == "party" || t.text == "crew" || t.text == "group") && l.text(i+1) == "of" && l.smallNumber(i+2) > 0:
		v := l.smallNumber(i + 2)
		return v, i + 2, v, v, true
	}
	if v := l.smallNumber(i); v > 0 && l.text(i+1) == "or" && l.smallNumber(i+2) > v {
		// "4 or 5 people"
		if _, to, multi, ok := l.item(i + 2); ok && multi {
			return l.smallNumber(i + 2), to, v, l.smallNumber(i + 2), true
		}
	}
	n, to, multi, ok := l.item(i)
	if !ok {
		return 0, 0, 0, 0, false
	}
	if multi && l.takesAlong(i, to) {
		return n + 1, to, n + 1, n + 1, true
	}
	if sum, end, many := l.list(i, n, to); many {
		return sum, end, sum, sum, true
	}
	if multi {
		if t.measure >= 0 {
			me := &l.r.Measures[t.measure]
			if me.Low != nil && me.High != nil {
				return n, to, *me.Low, *me.High, true
			}
		}
		return n, to, n, n, true
	}
	return 0, 0, 0, 0, false
}

// personWeightAt tells that a term is what a grown person weighs, and no rating
// of anything else.
func (l *line) personWeightAt(i int) bool {
	if i >= len(l.terms) || l.terms[i].measure < 0 || !l.any(ofPlate) {
		return false
	}
	me := &l.r.Measures[l.terms[i].measure]
	_, hi := ends(l.convert(me, bareIf(me, "lb")))
	return (me.Kind == read.Mass || me.Kind == read.Number) && hi >= 40 && hi <= maxPersonEach
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
		if sep.mark == ',' && !meIn && !l.mentionsMe(k, last) && l.terms[k].measure >= 0 && !l.kidsAt(last) {
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
		if l.terms[k].id == idMe || l.terms[k].id == idAlone {
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
	return pluralForms[w] || strings.HasSuffix(w, "s") && !strings.HasSuffix(w, "ss") && w != "mrs" && w != "pops" && w != "boss" || strings.HasSuffix(w, " men")
}

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

// shareWeight settles whether a weight behind people is each one's or all of
// theirs: "two guys 380" are 190 lb each, "3 of us at 210" are 210 each.
func (l *line) shareWeight() {
	f, ok := l.fact("people.each")
	if !ok || f.Row != "people at a weight" && f.Row != "people together" && f.Row != "pounds of people" && f.Row != "so much, all of us" && f.Row != "people weigh together" || f.Value == nil {
		return
	}
	count, known := l.fact("people.count")
	if !known || count.Value == nil || *count.Value < 2 {
		return
	}
	const least, most = 45.0, 145.0 // kg: the lightest and heaviest grown person taken as such
	share := *f.Value / *count.Value
	at := strings.Contains(l.betweenText(count.Said, f.Said), " at ")
	if f.Row == "people together" || f.Row == "pounds of people" || f.Row == "so much, all of us" || f.Row == "people weigh together" || !at && share >= least && *f.Value > 1.0*most*0.9 {
		scaleFact(f, 1 / *count.Value)
		f.Row = "weight of a group, shared"
	}
}

// betweenText is the line from the first words to the second, both included.
func (l *line) betweenText(a, b string) string {
	i := strings.Index(l.r.Text, a)
	if i < 0 {
		return ""
	}
	j := strings.Index(l.r.Text[i:], b)
	if j < 0 {
		return ""
	}
	return lowerASCII(l.r.Text[i : i+j+len(b)])
}
