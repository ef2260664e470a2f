package meaning

import (
	"strings"

	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

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
		case t.id == idUs && l.text(i-1) == "of" && l.smallNumber(i-2) >= 2:
			crew = append(crew, l.weightsInARow(i+1, int(l.smallNumber(i-2)))...)
			continue
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
		case !me && l.plural(i) && !t.possessive && !(t.id == idPerson && l.text(i-1) == "my" && l.terms[max(i-2, 0)].measure < 0) && t.text != "pops":
			if n = l.smallNumber(i - 1); n == 0 {
				continue
			}
			if row := l.weightsInARow(i+1, int(n)); row != nil {
				row[0].from = i - 1
				crew = append(crew, row...)
				continue
			}
			from--
		case !me && i > 0 && l.terms[i-1].measure >= 0 && l.r.Measures[l.terms[i-1].measure].Kind == read.Mass && (l.articleBefore(i-1) || l.smallNumber(i-2) == 1):
			// "a 55 lb kid"
			if kg, ok := l.personsWeight(i - 1); ok {
				crew = append(crew, weighedOne{i - 2, i, 1, kg})
			}
			continue
		case i > 0 && l.terms[i-1].measure >= 0 && !t.possessive && !(len(crew) > 0 && crew[len(crew)-1].at == i-1):
			continue
		}
		k := i + 1
		for k < len(l.terms) && k < i+4 && (l.filler(k) || l.id(k) == idWeighs || k == i+1 && l.terms[k].mark == ',' && l.r.Text[l.terms[k].start] == '(' || k == i+1 && (l.text(k) == "go" || l.text(k) == "goes")) {
			k++
		}
		k = l.pastHeight(k)
		kg, ok := l.personsWeight(k)
		if !ok {
			kg, ok = l.inStones(k, crew)
		}
		if !ok {
			continue
		}
		next := k + 1
		if ofEach.holds(l.id(next)) {
			next++
		}
		if next < len(l.terms) && l.r.Text[l.terms[next].start] == ')' {
			crew = append(crew, weighedOne{from, k, n, kg})
			continue
		}
		if next+1 < len(l.terms) && l.opensNumber(next) && l.terms[next+1].measure >= 0 {
			crew = append(crew, weighedOne{from, k, n, kg})
			continue // "me 230 buddy 205 motor 95"
		}
		if next < len(l.terms) && l.terms[next].mark == 0 && l.id(next) != idAnd && l.id(next) != idWith && l.text(next) != "and" && l.id(next) != idBoat && l.text(next) != "my" && !(l.text(next) == "in" && len(crew) > 0) && !(l.terms[next].measure >= 0 && l.r.Measures[l.terms[next].measure].Kind == read.Length) {
			continue
		}
		crew = append(crew, weighedOne{from, k, n, kg})
	}
	return crew
}

// pastHeight goes over how tall somebody is: "6 foot 3 and 240", "5-8 and 180".
func (l *line) pastHeight(k int) int {
	j := k
	for j < len(l.terms) && j < k+2 && l.terms[j].measure >= 0 {
		me := &l.r.Measures[l.terms[j].measure]
		tall := me.Kind == read.Length && lowest(me) > 1.2 && lowest(me) < 2.3
		if !tall && !(me.Kind == read.Number && me.Bare >= 0 && me.Bare <= 11) {
			break
		}
		j++
	}
	if j == k || j >= len(l.terms) || l.id(j) != idAnd && l.text(j) != "and" && l.terms[j].mark != ',' {
		return k
	}
	return j + 1
}

// inStones reads "im sixteen stone and my mate's fourteen": the unit of the one
// before.
func (l *line) inStones(k int, crew []weighedOne) (kg float64, ok bool) {
	if len(crew) == 0 || k >= len(l.terms) || l.terms[k].measure < 0 {
		return 0, false
	}
	was := l.terms[crew[len(crew)-1].at].measure
	me := &l.r.Measures[l.terms[k].measure]
	if was < 0 || l.r.Measures[was].Spoken != "st" || me.Kind != read.Number || me.Value == nil || *me.Value < 4 || *me.Value > 25 {
		return 0, false
	}
	return *me.Value * *l.r.Measures[was].Value / l.r.Measures[was].Bare, true
}

// weightsInARow reads one weight for each of several people: "2 of us 180 & 230",
// "two boys at 90 and 110".
func (l *line) weightsInARow(k, n int) (crew []weighedOne) {
	if n < 2 || n > 8 {
		return nil
	}
	for k < len(l.terms) && (l.terms[k].filler || l.id(k) == idWeighs || l.terms[k].mark == ':') {
		k++
	}
	for len(crew) < n {
		kg, ok := l.personsWeight(k)
		if !ok {
			return nil
		}
		if next := l.skipFillers(k+1, 1); next < len(l.terms) && (partSlots[l.id(next)] != "" || l.id(next) == idAnchor || hulls.holds(l.id(next))) && l.id(next) != idUs {
			return nil // "2 guys at 230, 90 lb gear"
		}
		crew = append(crew, weighedOne{k, k, 1, kg})
		k++
		for k < len(l.terms) && len(crew) < n && (l.terms[k].mark == ',' || l.id(k) == idAnd || l.text(k) == "and") {
			k++
		}
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

// personWeightAt tells that a term is what a grown person weighs, and no rating
// of anything else.
func (l *line) personWeightAt(i int) bool {
	if i >= len(l.terms) || l.terms[i].measure < 0 || !l.any(ofPlate) && !l.knows("load.plate") && !(l.anyOf("outboard", "motor") && l.anyOf("boat", "gear")) && !l.anyOf("boat and motor") {
		return false
	}
	me := &l.r.Measures[l.terms[i].measure]
	_, hi := ends(l.convert(me, bareIf(me, "lb")))
	return (me.Kind == read.Mass || me.Kind == read.Number) && hi >= 40 && hi <= maxPersonEach
}

// maxPersonEach is the heaviest that one person is taken to be, in kg.
const maxPersonEach = 145

// eachPerson accepts a weight each where people are talked of and batteries are
// not what weighs.
func eachPerson(l *line, m int) bool {
	return !battery(l, m) && !l.subject(m, batteryWords) && (l.crewTo >= 0 || l.any(ofPersons) || l.anyOf("me") || l.knows("people.count"))
}

// eachOrGroup accepts a weight right behind the people. Whether it is each
// person's or all of theirs together is settled in people.go.
func eachOrGroup(l *line, m int) bool {
	me := &l.r.Measures[m]
	if me.Value == nil && (me.Low == nil || me.High == nil) {
		return false
	}
	_, hi := ends(l.convert(me, bareIf(me, "lb")))
	if hi <= maxPersonEach {
		return true
	}
	count, known := l.fact("people.count")
	return known && count.Value != nil && hi / *count.Value <= maxPersonEach
}

// weighTogether accepts "the two of us weigh 330 total".
func weighTogether(l *line, m int) bool {
	switch l.text(l.at[m] + 1) {
	case "total", "together", "combined", "altogether", "between", "all":
		if l.crewTo >= 0 && l.at[m] == l.crewTo+1 && l.plausibleCrew(m) {
			return true // "two guys 380 total in a 14 ft jon"
		}
		if i := l.at[m]; l.crewTo >= 0 && i == l.crewTo+1 && l.text(i+1) == "total" && l.anyOf("dry") {
			return true // "not counting us the boat's 900, three of us 570 total"
		}
		return l.setSlots["people.count"] && l.subject(m, ofPersons) && l.subject(m, ofWeighs)
	}
	return false
}

// plausibleCrew tells that a weight is what the people counted weigh together: the
// boat's own weight is told beside it, or the weight is too little for a boat with
// them in it.
func (l *line) plausibleCrew(m int) bool {
	count, ok := l.fact("people.count")
	me := &l.r.Measures[m]
	if !ok || count.Value == nil || me.Value == nil || *count.Value < 2 {
		return false
	}
	share := *l.convert(me, bareIf(me, "lb")).value / *count.Value
	if l.setSlots["load.total"] || l.setSlots["load.dry"] {
		return share >= 55 && share <= 125
	}
	return share >= 55 && share <= 100 && (l.anyOf("jon", "vee", "deep-vee", "bass boat", "bay boat", "pontoon") || l.any(ofMaterial))
}

var ofMaterial = of("aluminum", "fiberglass")

// allOfThem accepts "about 300 lb all of us", "350 between the two of us".
func allOfThem(l *line, m int) bool {
	i := l.at[m] + 1
	switch l.text(i) {
	case "all", "between", "for":
	default:
		return false
	}
	return l.setSlots["people.count"] && (l.text(i+1) == "of" || l.text(i+1) == "the" || l.text(i+1) == "all" || l.id(i+1) == idUs || l.id(i+1) == idBoth) && !l.near2(i, ofLoaded)
}

// ofPeople accepts "400 lb of people".
func ofPeople(l *line, m int) bool {
	i := l.at[m]
	return l.text(i+1) == "of" && l.setSlots["people.count"]
}

// together accepts "three of us total 600", "the two of us go 390".
func together(l *line, m int) bool {
	for k := l.at[m] - 1; k >= 0 && k >= l.at[m]-3; k-- {
		switch l.text(k) {
		case "total", "together", "combined", "go", "totaling", "totalling", "altogether":
			return l.setSlots["people.count"]
		}
		if l.terms[k].mark != 0 {
			return false
		}
	}
	return false
}

// somebodyIs tells that "im", "hes" or "shes" stands right before a term.
func (l *line) somebodyIs(i int) bool {
	for k := i - 1; k >= 0 && k >= i-3; k-- {
		switch l.text(k) {
		case "im", "hes", "shes":
			return true
		}
		if !l.terms[k].filler {
			return false
		}
	}
	return false
}

// iAm accepts "im 220", "im 5 foot 10 and 220 lbs".
func iAm(l *line, m int) bool {
	i := l.at[m]
	if l.somebodyIs(i) && l.endsAt(i) && lowest(&l.r.Measures[m]) > 40 {
		return true // "... and im two hundred", "hes about 260"
	}
	s := l.segment(i)
	return (l.text(s) == "im" || l.id(s) == idMe && l.text(s+1) == "am") && i-s <= 5 && (l.r.Measures[m].Kind == read.Mass || i-s == 1 || (l.endsAt(i) || l.id(i+1) == idAnd || l.text(i+1) == "and" || l.id(i+1) == idWith) && (i-s == 3 && (l.terms[i-2].measure >= 0 || l.terms[i-1].measure >= 0) || i-s == 2 && l.terms[i-1].measure >= 0))
}

// selfWeighs accepts "weighs 145 herself".
func selfWeighs(l *line, m int) bool {
	switch l.text(l.at[m] + 1) {
	case "myself", "himself", "herself":
		return true
	}
	return false
}

// pounder accepts "a 300 pounder".
func pounder(l *line, m int) bool {
	if l.hasKind(read.Voltage) || lowest(&l.r.Measures[m]) < 60 && !l.any(ofPersons) {
		return false // "an 80 pounder at 24 volts" is a motor
	}
	return containsWord(lowerASCII(l.r.Measures[m].Said), "pounder") || l.text(l.at[m]+1) == "pounder"
}

// heOrShe tells that a person is the subject before a measure.
func (l *line) heOrShe(m int) bool {
	for i := l.at[m] - 1; i >= 0 && i >= l.at[m]-6; i-- {
		switch l.text(i) {
		case "he", "she", "hes", "shes":
			return true
		}
		if l.terms[i].mark != 0 || l.terms[i].measure >= 0 {
			return false
		}
	}
	return false
}

// behindCrew accepts "3 at 220" and "were 4, 185 average": the weight follows the
// people counted.
func behindCrew(l *line, m int) bool {
	i := l.at[m]
	if l.crewTo >= 0 && l.text(l.crewTo) == "both" && l.skipFillers(l.crewTo+1, 1) == i {
		return true // "were both about 190"
	}
	return l.crewTo >= 0 && i == l.crewTo+2 && (l.text(i-1) == "at" || l.text(i-1) == "x")
}

// aloneAt accepts "me alone 85 kg", "just me at 230"; a number by itself is a
// weight only behind "at" or where the stretch ends.
func aloneAt(l *line, m int) bool {
	i := l.at[m]
	if l.r.Measures[m].Kind == read.Number {
		return l.text(i-1) == "at" || l.endsAt(i) && l.r.Measures[m].Bare >= 100
	}
	return l.endsAt(i) || l.text(i-1) == "at" || l.id(i+1) == idAnd
}

// meAtWeight accepts "me 190" and "myself at 210 lb"; what weighs "with me" is the
// boat with the speaker in it.
func meAtWeight(l *line, m int) bool {
	i := l.at[m]
	k := l.skipFillers(i-1, -1)
	if k < 0 || l.text(k) != "me" && l.text(k) != "myself" || l.id(k-1) == idSays {
		return false
	}
	return l.id(k-1) != idWith || l.text(i-1) == "at" || l.text(i-1) == "im"
}

// ofMe accepts "15 stone of me".
func ofMe(l *line, m int) bool { return l.text(l.at[m]+1) == "of" }

// speakerAlone counts the speaker who tells nothing but a weight of their own:
// nobody else is named in the line, or was.
func (l *line) speakerAlone() {
	each, ok := l.fact("people.each")
	if ok && each.Row == "weight, then people" && !l.setSlots["people.count"] && !l.knows("people.count") && l.onePerson() {
		l.put(card.Fact{Slot: "people.count", Value: num(1), Unit: "1", Said: each.Said, Row: "one person, by weight"})
		return
	}
	if !ok || !ownWeight[each.Row] || l.setSlots["people.count"] || l.knows("people.count") || l.any(ofOthers) {
		return
	}
	l.put(card.Fact{Slot: "people.count", Value: num(1), Unit: "1", Said: each.Said, Row: "the speaker, by weight"})
}

// onePerson tells that a single person is named in the line, and nobody else.
func (l *line) onePerson() bool {
	n := 0
	for i := range l.terms {
		switch id := l.terms[i].id; id {
		case idPerson, idCompanion, idChild:
			if l.plural(i) || l.terms[i].possessive {
				return false
			}
			n++
		case idUs, idMe, idBoth:
			return false
		}
	}
	return n == 1
}

// ownWeight are the rows that give the speaker's own weight.
var ownWeight = map[string]bool{"me, weight": true, "i am a weight": true, "people who weigh": true, "weighs so much himself": true}

var ofOthers = of("person", "us", "companion", "child", "both of us", "pair")

func personWeighs(l *line, m int) bool {
	i := l.at[m]
	if l.text(i-1) == "im" || l.id(i-1) == idWeighs && (l.text(i-2) == "i" || l.id(i-2) == idMe) {
		return true
	}
	if l.heOrShe(m) && l.subject(m, ofWeighs) {
		return true
	}
	return l.subject(m, ofPersons) && l.subject(m, ofWeighs) && (l.setSlots["people.count"] || !l.subject(m, ofUs))
}
