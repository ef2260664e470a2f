package meaning

import (
	"strconv"
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// A renameRow is a word that gives a number said before another meaning: "no
// sorry, that's the wind".
type renameRow struct {
	word string
	slot string
}

var renameRows = []renameRow{
	{"wind", "wind.speed"}, {"gust", "wind.gust"}, {"current", "current.speed"}, {"tide", "current.speed"}, {"river", "current.speed"}, {"trolling", "use.speed"},
	{"wave", "chop.height"}, {"choppy water", "chop.height"}, {"deck", "mount.height"}, {"waterline", "mount.height"}, {"shaft", "motor.shaft"}, {"wide", "boat.beam"},
	{"depth", "water.depth"}, {"wire", "wire.run"}, {"dry", "load.dry"}, {"loaded", "load.total"}, {"gear", "load.gear"}, {"outboard", "load.engine"},
	{"capacity plate", "load.plate"}, {"charger", "charger.current"}, {"breaker", "breaker.in-hand"}, {"pulls", "motor.current"}, {"each", "people.each"}, {"freeboard", "boat.freeboard"},
}

// longestRename is how many terms a turn has at most that only renames.
const longestRename = 10

// renames moves the number said last to the slot that the turn names. The turn
// gives no number of its own, asks nothing and points back: "thats", "i meant".
func (l *line) renames() {
	if len(l.terms) > longestRename || len(l.r.Measures) > 0 || l.asksMark || !l.pointsAtLast() {
		return
	}
	to := l.renamed(false)
	if f, ok := l.before.Get(to); ok && f.Turn == l.before.Turn && !Inner(to) && l.renamed(true) == "" {
		l.put(f) // it stands there already: said again
		return
	}
	if to == "" || l.setSlots[to] || to == "load.total" || to == "load.dry" && l.knows("load.total") && !l.knows("load.dry") {
		return // a weight given its name is relabel's
	}
	f, ok := l.lastSaid(to, l.renamed(true))
	if !ok {
		return
	}
	l.drops = append(l.drops, f.Slot)
	f.Slot, f.Row = to, "a number given its name"
	l.put(f)
}

// pointsAtLast tells that a turn speaks of what was just said.
func (l *line) pointsAtLast() bool {
	for _, t := range []string{"thats", "that is", "that was", "thats was", "i meant", "i mean", "meant", "it was", "its the", "thats my", "those are", "they are", "theyre the"} {
		if l.saysText(t) {
			return true
		}
	}
	return false
}

// renamed is the slot that a word of the turn names, one that is denied or one
// that is not; "" for none.
func (l *line) renamed(denied bool) string {
	for i := range l.terms {
		for _, row := range renameRows {
			if id := words.Of(row.word); id >= 0 && l.terms[i].id == id && (l.text(i-1) == "not" || l.text(i-2) == "not" && l.filler(i-1)) == denied {
				return row.slot
			}
		}
	}
	return ""
}

// lastSaid is the last number of a slot's unit that the turn before said, or the
// one that stands in a slot that is denied.
func (l *line) lastSaid(to, denied string) (found card.Fact, ok bool) {
	for _, f := range l.before.Facts {
		if f.Slot == to || Inner(f.Slot) && f.Slot != "wind.gust" && f.Slot != "breaker.in-hand" || unitOf[f.Slot] != unitOf[to] || f.Value == nil && f.Low == nil && f.High == nil {
			continue
		}
		if f.Slot == denied {
			return f, true
		}
		if f.Turn == l.before.Turn && denied == "" {
			found, ok = f, true
		}
	}
	return found, ok
}

// A unitRow is a unit that a turn puts in place of the one that was said or
// taken: "feet!", "pounds not kilos".
type unitRow struct {
	words  []string
	factor string // of the unit in factor
	unit   string // the contract's
	metric bool
}

var unitRows = []unitRow{
	{[]string{"feet", "ft", "foot"}, "ft", "m", false},
	{[]string{"inches", "inch"}, "in", "m", false},
	{[]string{"meters", "metres", "meter", "metre"}, "m", "m", true},
	{[]string{"cm", "centimeters", "centimetres", "centis"}, "cm", "m", true},
	{[]string{"pounds", "lbs", "lb", "pound"}, "lb", "kg", false},
	{[]string{"kilos", "kgs", "kg", "kilograms", "kilo"}, "kg", "kg", true},
	{[]string{"mph", "miles an hour", "miles per hour"}, "mph", "m/s", false},
	{[]string{"knots", "kts", "knot", "kt"}, "kn", "m/s", false},
	{[]string{"kmh", "kph", "km/h"}, "kmh", "m/s", true},
}

// longestUnit is how many terms a turn has at most that only names a unit.
const longestUnit = 9

// newUnit puts the numbers said last in the unit that the turn names.
func (l *line) newUnit() {
	if len(l.terms) > longestUnit || len(l.r.Measures) > 1 || l.asksMark {
		return
	}
	if asksWords[firstWord(l.text(0))] || l.text(0) == "was" {
		return
	}
	row, named := l.unitNamed()
	if row == nil || len(l.r.Measures) == 1 && !l.saidBefore(row.unit) {
		return
	}
	last := 0
	for _, f := range l.before.Facts {
		if row.of(f) && (named == "" || f.Slot == named) {
			last = max(last, f.Turn)
		}
	}
	if last == 0 || last < l.before.Turn-1 && named == "" && !l.unitMended(row) {
		return
	}
	l.metric, l.units = row.metric, row
	for _, f := range l.before.Facts {
		if f.Turn != last || !row.of(f) || named != "" && f.Slot != named {
			continue
		}
		if was := l.unitOfFact(f); was != row.factor {
			scaleFact(&f, factor[row.factor]/factor[was])
			f.Said, f.Row, f.Bare = l.said(0, len(l.r.Text)), "in another unit", false
			l.put(f)
		}
	}
}

// of tells whether a fact may be in a unit. No boat is so many inches long.
func (row *unitRow) of(f card.Fact) bool {
	return f.Unit == row.unit && spokenUnit[f.Slot] != "" && (f.Slot != "boat.length" || row.factor != "in" && row.factor != "cm")
}

// unitMended tells that a unit is said in place of another, however long ago that
// was: "i meant knots", "mph was right". Of lengths and weights too many stand.
func (l *line) unitMended(row *unitRow) bool {
	return row.unit == "m/s" && (l.has[idActually] || l.anyText("not", "meant", "mean", "was"))
}

// A unitOfRow is a word that names the number whose unit is mended, and the slots
// that it may be, the first that stands.
type unitOfRow struct {
	word  string
	slots []string
}

var unitOfRows = []unitOfRow{
	{"wind", []string{"wind.speed"}}, {"gust", []string{"wind.gust"}}, {"current", []string{"current.speed"}}, {"tide", []string{"current.speed"}}, {"river", []string{"current.speed"}},
	{"weighs", []string{"load.total", "load.dry"}}, {"loaded", []string{"load.total"}}, {"dry", []string{"load.dry"}}, {"gear", []string{"load.gear"}}, {"outboard", []string{"load.engine"}}, {"capacity plate", []string{"load.plate"}}, {"each", []string{"people.each"}},
	{"boat length", []string{"boat.length"}}, {"boat", []string{"boat.length"}}, {"wide", []string{"boat.beam"}}, {"deck", []string{"mount.height"}}, {"bow", []string{"mount.height"}}, {"waterline", []string{"mount.height"}}, {"freeboard", []string{"boat.freeboard"}},
	{"shaft", []string{"motor.shaft"}}, {"wave", []string{"chop.height"}}, {"depth", []string{"water.depth"}}, {"wire", []string{"wire.run"}}, {"thrust", []string{"motor.thrust"}},
}

// unitOfNamed is the slot that a word names for its unit, "" for none that stands.
func (l *line) unitOfNamed(i int, unit string) string {
	for _, row := range unitOfRows {
		if id := words.Of(row.word); id < 0 || l.id(i) != id {
			continue
		}
		for _, s := range row.slots {
			if unitOf[s] == unit && l.knows(s) {
				return s
			}
		}
	}
	return ""
}

// unitTalk are the words around a unit that say no more than that it was meant.
var unitTalk = map[string]bool{"i": true, "those": true, "theyre": true, "mean": true, "meant": true, "not": true, "all": true, "ok": true, "oh": true, "um": true, "well": true, "and": true,
	"right": true, "was": true, "were": true, "my": true, "the": true, "should": true, "be": true, "said": true, "after all": true, "i said": true, "shouldve": true, "been": true, "have": true, "bad": true, "hang": true, "on": true}

// unitNamed is the unit that a turn names and says nothing else, nil for none, and
// the slot that it names, if it does.
func (l *line) unitNamed() (found *unitRow, slot string) {
	subject := -1
	for i := range l.terms {
		t := &l.terms[i]
		if t.mark != 0 || t.filler || t.id == idActually || t.id == idNo || unitTalk[t.text] {
			continue
		}
		row := unitWord(t.text)
		switch {
		case t.measure >= 0 && l.r.Measures[t.measure].Kind == read.Number:
			continue
		case row == nil && subject < 0 && t.measure < 0 && t.id != words.None:
			subject = i
		case row == nil:
			return nil, ""
		case found == nil && l.text(i-1) != "not":
			found = row
		}
	}
	if found == nil || subject < 0 {
		return found, ""
	}
	if slot = l.unitOfNamed(subject, found.unit); slot == "" {
		return nil, ""
	}
	return found, slot
}

// saidBefore tells that the one number of a turn is that of a fact of a unit, said
// again: "12 is meters". It is used up then.
func (l *line) saidBefore(unit string) bool {
	said := bareDigits(l.r.Measures[0].Said)
	for _, f := range l.before.Facts {
		if f.Unit == unit && f.Turn >= l.before.Turn-1 && said != "" && bareDigits(f.Said) == said {
			l.used[0] = true
			return true
		}
	}
	return false
}

func unitWord(w string) *unitRow {
	for k := range unitRows {
		for _, u := range unitRows[k].words {
			if u == w {
				return &unitRows[k]
			}
		}
	}
	return nil
}

// unitByValue is the unit that makes the number said the value that stands: "25 km/h",
// a bare 900 said before the talk went metric; "" where none does.
func unitByValue(f card.Fact) string {
	n, err := strconv.ParseFloat(bareDigits(f.Said), 64)
	if err != nil || f.Value == nil || n <= 0 {
		return ""
	}
	for _, row := range unitRows {
		if row.unit == f.Unit && near(*f.Value, n*factor[row.factor]) {
			return row.factor
		}
	}
	if f.Unit == "m/s" && near(*f.Value, n) {
		return "m/s"
	}
	return ""
}

// unitOfFact is the unit in which a fact was said, as a key of factor.
func (l *line) unitOfFact(f card.Fact) string {
	said := lowerASCII(f.Said)
	if u := unitByValue(f); u != "" {
		return u
	}
	for _, w := range strings.FieldsFunc(said, func(r rune) bool { return r < 'a' || r > 'z' }) {
		if row := unitWord(w); row != nil && row.unit == f.Unit {
			return row.factor
		}
		if w == "m" && f.Unit == "m" {
			return "m"
		}
	}
	if strings.Contains(said, "m/s") {
		return "m/s"
	}
	bare := spokenUnit[f.Slot]
	if to, ok := metricFor[bare]; ok && f.Bare && l.before.Metric {
		return to
	}
	if strings.Contains(said, "\"") {
		return "in"
	}
	return bare
}
