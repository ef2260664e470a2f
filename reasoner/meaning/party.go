package meaning

import (
	"heronlake.example/ask/reasoner/read"
)

// A partyRow reads one way of telling how many are aboard, from a term on: the
// number and the last term it takes.
type partyRow struct {
	name string
	read func(l *line, i int) (n float64, to int, ok bool)
}

var partyRows = []partyRow{
	{"both of us", func(l *line, i int) (float64, int, bool) { return 2, i, l.id(i) == idBoth }},
	{"with us both", func(l *line, i int) (float64, int, bool) {
		return 2, i, l.text(i) == "both" && (l.text(i-1) == "with us" || l.text(i-1) == "us")
	}},
	{"we both", func(l *line, i int) (float64, int, bool) {
		return 2, i + 1, (l.id(i) == idUs || l.text(i) == "were") && l.text(i+1) == "both"
	}},
	{"both, of us", func(l *line, i int) (float64, int, bool) {
		return 2, i + 2, l.text(i) == "both" && l.text(i+1) == "of" && l.id(i+2) == idUs
	}},
	{"anglers: 3", func(l *line, i int) (float64, int, bool) {
		if l.id(i) != idPerson || !l.plural(i) || l.terms[i].possessive || l.smallNumber(i-1) > 0 {
			return 0, 0, false
		}
		k := i + 1
		if k < len(l.terms) && l.terms[k].mark == ':' {
			k++
		}
		v := l.smallNumber(k)
		return v, k, v > 0 && v <= 20 && !l.countsNoun(k+1)
	}},
	{"us two", func(l *line, i int) (float64, int, bool) {
		v := l.smallNumber(i + 1)
		return v, i + 1, v > 0 && l.id(i) == idUs && l.id(i+2) != idPair && !l.counted(i+2)
	}},
	{"were usually two", func(l *line, i int) (float64, int, bool) {
		often := l.text(i+1) == "usually" || l.text(i+1) == "normally" || l.text(i+1) == "mostly"
		v := l.smallNumber(i + 2)
		return v, i + 2, v > 0 && often && l.text(i) == "were" && l.endsAt(i+2)
	}},
	{"we are 4", func(l *line, i int) (float64, int, bool) {
		v := l.smallNumber(i + 2)
		return v, i + 2, l.text(i) == "we" && l.text(i+1) == "are" && v > 0 && v <= 14 && l.endsAt(i+2)
	}},
	{"were three", func(l *line, i int) (float64, int, bool) {
		w := l.text(i)
		v := l.smallNumber(i + 1)
		return v, i + 1, v > 0 && (w == "were" || w == "we" || w == "theres") && (i == 0 || l.terms[i-1].mark != 0) && (l.endsAt(i+1) || l.text(i+2) == "at" || l.text(i+2) == "of")
	}},
	{"well be five", func(l *line, i int) (float64, int, bool) {
		v := l.smallNumber(i + 1)
		return v, i + 1, v > 0 && v <= 14 && l.text(i) == "be" && willBe[l.text(i-1)] && (l.endsAt(i+1) || l.text(i+2) == "at" || l.text(i+2) == "of" || l.id(i+2) == idUs)
	}},
	{"two oldies, so much each", func(l *line, i int) (float64, int, bool) {
		v := l.smallNumber(i)
		return v, i + 1, v >= 2 && v <= 8 && l.eachBehindNoun(i)
	}},
	{"three at 220", func(l *line, i int) (float64, int, bool) {
		v := l.smallNumber(i)
		at := l.text(i+1) == "at" || l.text(i+1) == "x" || i+1 < len(l.terms) && l.r.Text[l.terms[i+1].start] == '@'
		return v, i, v > 0 && v <= 12 && at && l.personWeightAt(i+2)
	}},
	{"we are 3 x 80", func(l *line, i int) (float64, int, bool) {
		if l.text(i) != "were" && l.text(i) != "we" && l.id(i) != idUs || !l.timesWeight(i) {
			return 0, 0, false
		}
		k := l.skipFillers(i+1, 1)
		return l.smallNumber(k), k, true
	}},
	{"loaded with two", func(l *line, i int) (float64, int, bool) {
		v := l.smallNumber(i + 1)
		return v, i + 1, v > 0 && l.id(i) == idWith && l.endsAt(i+1) && i > 0 && (l.id(i-1) == idLoaded || l.terms[i-1].measure >= 0 && l.r.Measures[l.terms[i-1].measure].Kind == read.Mass)
	}},
	{"two up", func(l *line, i int) (float64, int, bool) {
		v := l.smallNumber(i)
		up := l.text(i+1) == "up" || l.text(i+1) == "in it" || l.text(i+1) == "in her"
		ends := l.endsAt(i+1) || l.text(i+2) == "in" || l.text(i+2) == "on" || l.text(i+2) == "with"
		return v, i + 1, v > 0 && v <= 6 && up && ends && !l.any(mountings) && !l.anyOf("waterline", "shaft")
	}},
	{"a party of four", func(l *line, i int) (float64, int, bool) {
		v := l.smallNumber(i + 2)
		return v, i + 2, v > 0 && parties[l.text(i)] && l.text(i+1) == "of"
	}},
}

var (
	willBe  = map[string]bool{"well": true, "therell": true, "theyll": true, "gonna": true}
	parties = map[string]bool{"family": true, "party": true, "crew": true, "group": true}
)

// party reads one mention of people that begins at a term. It gives their
// number, the ends where a range was told, and the last term it took.
func (l *line) party(i int) (n float64, to int, low, high float64, ok bool) {
	if l.terms[i].id == idAlone {
		if l.thingAlone(i) {
			return 0, 0, 0, 0, false
		}
		if n, to, ok := l.list(i, 1, i); ok {
			return n, to, n, n, true
		}
		return 1, i, 1, 1, true
	}
	for _, row := range partyRows {
		if n, to, ok := row.read(l, i); ok {
			return n, to, n, n, true
		}
	}
	if v := l.smallNumber(i); v > 0 && l.text(i+1) == "or" && l.smallNumber(i+2) > v {
		// "4 or 5 people"
		if _, to, multi, ok := l.item(i + 2); ok && multi {
			return l.smallNumber(i + 2), to, v, l.smallNumber(i + 2), true
		}
	}
	return l.members(i)
}

// members reads a list of persons, or one group that is counted.
func (l *line) members(i int) (n float64, to int, low, high float64, ok bool) {
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
	if !multi {
		return 0, 0, 0, 0, false
	}
	if m := l.terms[i].measure; m >= 0 {
		if me := &l.r.Measures[m]; me.Low != nil && me.High != nil {
			return n, to, *me.Low, *me.High, true
		}
	}
	return n, to, n, n, true
}

// thingAlone tells that "alone" is said of a thing: "the hull alone".
func (l *line) thingAlone(i int) bool {
	if l.text(i) != "alone" {
		return false
	}
	prev := l.id(i - 1)
	return hulls.holds(prev) || partSlots[prev] == "load.dry" || prev == idTrailer || prev == idMotor || prev == idOutboard || l.text(i-1) == "hull"
}
