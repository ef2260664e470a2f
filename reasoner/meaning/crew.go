package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// ordinals are the persons that a "third guy" makes.
var ordinals = []struct {
	word  string
	count float64
}{{"second", 2}, {"third", 3}, {"fourth", 4}, {"fifth", 5}}

// ordinalID is the entries of ordinals.
var ordinalID = func() (ids []words.ID) {
	for _, o := range ordinals {
		ids = append(ids, words.Of(o.word))
	}
	return ids
}()

// peopleChange reads what a turn does to the number aboard: "add a third guy",
// "one more", "leave one guy home", "just the two". It reports whether the
// mention at a term was one.
func (l *line) peopleChange(i, to int, n float64) (count float64, row string, ok bool) {
	known, have := l.before.Get("people.count")
	if !have || known.Value == nil {
		return 0, "", false
	}
	for k := max(0, i-4); k <= min(to+4, len(l.terms)-1); k++ {
		switch id := l.terms[k].id; {
		case id == idBigger && k > to && (l.text(k) == "less" || l.text(k) == "fewer"):
			return max(*known.Value-n, 0), "somebody stays ashore", true
		case id == idLeave && !l.stopBetween(min(k, i), max(k, to)) && l.text(k) != "less":
			return max(*known.Value-n, 0), "somebody stays ashore", true
		case id == idNo && k < i && i-k <= 2 && l.text(k) != "no" && l.text(k) != "nothing" && (l.text(k) == "minus" || l.text(k) == "without" || l.text(k) == "lose the" || len(l.terms) <= 4 && (l.text(k) == "skip" || l.text(k) == "forget" || l.text(k) == "never mind" || l.text(k) == "nevermind" || l.text(k) == "drop the" || l.text(k) == "scrap" || l.text(k) == "nvm")):
			return max(*known.Value-n, 0), "somebody stays ashore", true
		}
	}
	if w := l.text(to + 1); w == "off" || w == "out" {
		return max(*known.Value-n, 0), "somebody stays ashore", true
	}
	for k := max(0, i-3); k <= min(to+3, len(l.terms)-1); k++ {
		id, text := l.terms[k].id, l.terms[k].text
		if id == idAdd && !l.stopBetween(min(k, i), max(k, to)) || id == idBigger && text == "more" && k >= i && k <= to || id == idAnd && text == "plus" && k < i {
			if k > to && (text == "another" || text == "extra") {
				continue
			}
			return *known.Value + n, "somebody more", true
		}
	}
	return 0, "", false
}

// ordinalPerson reads "a third guy" at a term.
func (l *line) ordinalPerson(i int) (count float64, to int, ok bool) {
	if l.terms[i].id == words.None {
		return 0, 0, false
	}
	for k, o := range ordinals {
		if l.terms[i].id != ordinalID[k] {
			continue
		}
		if strings.Contains(l.terms[i].text, " ") && !strings.HasSuffix(l.terms[i].text, "one") {
			return o.count, i, true
		}
		if l.id(i+1) == idAdd && l.knows("people.count") {
			return o.count, i + 1, true // "a fourth joins"
		}
		if known, ok := l.before.Get("people.count"); ok && known.Value != nil && *known.Value == o.count-1 && l.endsAt(i) && i > 0 && l.articleBefore(i) {
			return o.count, i, true // "add a third"
		}
		if j := i + 1; j < len(l.terms) && (l.id(j) == idPerson || l.id(j) == idChild || l.id(j) == idCompanion) {
			return o.count, j, true
		}
	}
	return 0, 0, false
}

// justSoMany reads "just the two", "make it three", "only two of us" behind a
// known number of people.
func (l *line) justSoMany(i int) (count float64, to int, ok bool) {
	if !l.knows("people.count") {
		return 0, 0, false
	}
	v := l.smallNumber(i)
	if v == 0 || v > 12 {
		return 0, 0, false
	}
	if !l.endsAt(i) && l.id(i+1) != idAnd && l.text(i+1) != "then" && l.text(i+1) != "again" && l.id(i+1) != idBack {
		return 0, 0, false
	}
	k := i - 1
	for k >= 0 && (l.text(k) == "the" || l.text(k) == "us" || l.text(k) == "it") {
		k--
	}
	switch {
	case k >= 0 && (l.text(k) == "just" || l.text(k) == "only"):
		return v, i, true
	case k >= 0 && l.text(k) == "make it" && l.onlyPeopleChanged():
		return v, i, true
	case k >= 0 && l.id(k) == idBack && l.text(i-1) == "the":
		return v, i, true
	}
	return 0, 0, false
}

// oneLess reads "two less", "one more" and "she stays home" behind a known number
// of people.
func (l *line) oneLess(i int) (count float64, to int, ok bool) {
	known, have := l.before.Get("people.count")
	if !have || known.Value == nil {
		return 0, 0, false
	}
	switch l.text(i) {
	case "she", "he", "him", "her", "hes", "shes":
		if l.id(i+1) == idLeave || l.filler(i+1) && l.id(i+2) == idLeave {
			return max(*known.Value-1, 0), i + 1, true
		}
	}
	if id := l.terms[i].id; (id == idCompanion || id == idChild) && l.id(i+1) == idLeave && len(l.terms) <= 6 && l.text(i+1) != "leave" && l.text(i+1) != "home" {
		return max(*known.Value-1, 0), i + 1, true // "brother's not coming"
	}
	if id := l.terms[i].id; (id == idCompanion || id == idPerson || id == idChild) && len(l.terms) <= 5 && (l.text(i+1) == "out" || l.text(i+1) == "not" && l.text(i+2) == "coming") && l.endsAt(i+1+b2i(l.text(i+1) == "not")) {
		return max(*known.Value-1, 0), i + 1, true // "dad's out"
	}
	if m := l.terms[i].measure; m >= 0 && l.r.Measures[m].Kind == read.Number && l.r.Measures[m].Value != nil && *l.r.Measures[m].Value < 0 && *l.r.Measures[m].Value >= -12 {
		if j, ok := l.noun(i+1, 3); ok {
			return max(*known.Value+*l.r.Measures[m].Value, 0), j, true // "minus two kids"
		}
	}
	v := l.smallNumber(i)
	if v > 0 && l.id(i+1) == idLeave && len(l.terms) <= 4 && !l.anyOf("battery") {
		return max(*known.Value-v, 0), i + 1, true // "one leaves"
	}
	if v == 0 || !l.endsAt(i+1) || !l.onlyPeopleChanged() && !(len(l.terms) <= 4 && (l.id(i-1) == idAnd || l.id(i-1) == idAdd)) || l.askedLast(Bank, Runtime, Charger) {
		return 0, 0, false
	}
	switch l.text(i + 1) {
	case "less", "fewer":
		return max(*known.Value-v, 0), i + 1, true
	case "more":
		return *known.Value + v, i + 1, true
	}
	return 0, 0, false
}

func b2i(b bool) int {
	if b {
		return 1
	}
	return 0
}

// allBack reads "put him back": the number aboard for which the load was said.
func (l *line) allBack(i int) (count float64, ok bool) {
	if l.terms[i].id != idBack && l.text(i) != "back" {
		return 0, false
	}
	switch l.text(i - 1) {
	case "him", "her", "them", "em", "everybody", "everyone", "guy", "kid", "both", "all", "us", "of us", "both of us", "everybody in":
	case "coming", "comes", "in", "going", "goes", "makes it", "make it", "with us":
		if !l.anyText("he", "she", "hes", "shes", "they", "theyre", "everybody", "everyone") {
			return 0, false
		}
	case "off":
		if more, ok := l.before.Get("people.added"); !ok || more.Value == nil || *more.Value <= 0 {
			return 0, false
		}
	default:
		if id := l.id(i - 1); id != idCompanion && id != idPerson && id != idChild || !l.knows("people.added") && !l.knows("people.count") {
			return 0, false
		}
	}
	now, have := l.before.Get("people.count")
	more, moved := l.before.Get("people.added")
	if have && !moved && now.Value != nil && now.Row == "somebody stays ashore" && !l.anyText("them", "em", "everybody", "everyone", "they", "theyre") {
		return *now.Value + 1, true // no load was said that would tell how many
	}
	if !have || !moved || now.Value == nil || more.Value == nil {
		return 0, false
	}
	return *now.Value - *more.Value, true
}

// onlyPeopleChanged tells that the number of people is what was said last.
func (l *line) onlyPeopleChanged() bool {
	last, slot := 0, ""
	for _, f := range l.before.Facts {
		if f.Turn >= last && !Inner(f.Slot) {
			last, slot = f.Turn, f.Slot
		}
	}
	return slot == "people.count"
}

// crewOfUnknown adds people to a load that was said for a crew that nobody
// counted, and takes them off again: "two more guys", "drop the two guys".
func (l *line) crewOfUnknown() {
	if l.knows("people.count") || !l.knows("load.total") && !l.knows("load.said") {
		return
	}
	for i := range l.terms {
		n, to, multi, ok := l.item(i)
		if !ok || !multi && l.terms[i].measure < 0 && l.text(i) != "another" && l.text(i) != "one" {
			continue
		}
		added := 0.0
		if f, had := l.before.Get("people.added"); had && f.Value != nil {
			added = *f.Value
		}
		switch {
		case l.moreBetween(i, to):
			added += n
		case added > 0 && l.fewerBefore(i):
			added = max(added-n, 0)
		default:
			continue
		}
		l.useNumbers(i, to, "")
		for k := i; k <= to; k++ {
			if l.terms[k].mark == 0 && l.terms[k].measure < 0 {
				l.terms[k].mark = asking
			}
		}
		l.crew = &card.Fact{Slot: "people.added", Value: num(added), Unit: "1", Said: l.said(l.terms[max(i-1, 0)].start, l.terms[to].end), Row: "so many more than the load was said for"}
		return
	}
}

// moreBetween tells that people come on top of those aboard.
func (l *line) moreBetween(i, to int) bool {
	for k := max(i-2, 0); k <= min(to+2, len(l.terms)-1); k++ {
		t := &l.terms[k]
		if (t.text == "more" || t.text == "extra" || t.text == "another") && k >= i-1 && k <= to+1 || t.id == idAdd && k < i || t.text == "plus" && k == i-1 {
			return true
		}
	}
	return false
}

// fewerBefore tells that people are taken off.
func (l *line) fewerBefore(i int) bool {
	for k := max(i-2, 0); k < i; k++ {
		if id := l.terms[k].id; id == idLeave || id == idDrop || id == idNo && l.text(k) != "no" {
			return true
		}
	}
	return false
}

// addCrew puts people of crewOfUnknown on the card.
func (l *line) addCrew(c card.Card) card.Card {
	if l.crew == nil {
		return c
	}
	f := *l.crew
	f.Turn = l.before.Turn + 1
	said, aside := c.Get("load.said")
	if !aside {
		if said, aside = c.Get("load.total"); !aside {
			return c
		}
	}
	if *f.Value == 0 {
		said.Slot = "load.total"
		return c.Without("load.said", "people.added").With(said)
	}
	said.Slot = "load.said"
	return c.Without("load.total").With(said).With(f)
}

// insteadOf is the number of people that a turn replaces: "3 guys instead of 2";
// 0 for none.
func (l *line) insteadOf() float64 {
	for i := range l.terms {
		if l.text(i) != "instead of" && l.text(i) != "rather than" && l.text(i) != "not" {
			continue
		}
		m := 0
		if i+1 < len(l.terms) {
			m = l.terms[i+1].measure
		}
		if i+1 >= len(l.terms) || m < 0 || l.r.Measures[m].Kind != read.Number || l.r.Measures[m].Value == nil || !(l.endsAt(i+1) || l.id(i+2) == idPerson) {
			continue
		}
		if v := *l.r.Measures[m].Value; v >= 1 && v <= 12 && v == float64(int(v)) {
			return v
		}
	}
	return 0
}
