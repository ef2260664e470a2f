package meaning

import (
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// Words that are facts by themselves, a table for each thing that they tell.

var hullRows = []wordRow{
	{"jon boat", "jon", "boat.hull", "jon", nil},
	{"vee hull", "vee", "boat.hull", "vee", nil},
	{"deep vee hull", "deep-vee", "boat.hull", "deep-vee", nil},
	{"bass boat", "bass boat", "boat.hull", "bass", nil},
	{"bay boat", "bay boat", "boat.hull", "bay", nil},
	{"flats boat", "flats boat", "boat.hull", "flats", nil},
	{"pontoon boat", "pontoon", "boat.hull", "pontoon", nil},
	{"canoe", "canoe", "boat.hull", "canoe", nil},
	{"kayak", "kayak", "boat.hull", "kayak", nil},
	{"inflatable boat", "inflatable", "boat.hull", "inflatable", nil},
	{"sailboat", "sailboat", "boat.hull", "sailboat", nil},
	{"kayak bracket", "kayak bracket", "boat.hull", "kayak", kayaksBracket},
	{"bass buggy", "bass buggy", "boat.hull", "other", nil},
	{"another kind of hull", "other hull", "boat.hull", "other", nil},
}

var materialRows = []wordRow{
	{"aluminum", "aluminum", "boat.material", "aluminum", boatMaterial},
	{"fiberglass", "fiberglass", "boat.material", "fiberglass", nil},
	{"GRP", "group size", "boat.material", "fiberglass", grpHull},
	{"glass, of a boat", "glass", "boat.material", "fiberglass", glassBoat},
	{"wood", "wood", "boat.material", "wood", boatMaterial},
	{"polyethylene", "polyethylene", "boat.material", "polyethylene", boatMaterial},
	{"fabric", "fabric", "boat.material", "fabric", nil},
}

var chemistryRows = []wordRow{
	{"lithium", "lithium", "battery.chemistry", "lithium", nil},
	{"AGM", "agm", "battery.chemistry", "agm", nil},
	{"gel", "gel", "battery.chemistry", "gel", nil},
	{"flooded", "flooded", "battery.chemistry", "flooded", nil},
	{"lead is taken as flooded", "lead", "battery.chemistry", "flooded", leadBattery},
}

var mountRows = []wordRow{
	{"bow mount", "bow mount", "mount.place", "bow", nil},
	{"the bow", "bow", "mount.place", "bow", nil},
	{"a bow deck", "deck", "mount.place", "bow", bowDeck},
	{"transom mount", "transom mount", "mount.place", "transom", nil},
	{"the transom", "transom", "mount.place", "transom", transomMount},
	{"clamp", "clamp", "mount.kind", "clamp", nil},
	{"folding arm", "folding arm", "mount.kind", "folding-arm", nil},
	{"compact pivot", "compact pivot", "mount.kind", "compact-pivot", nil},
	{"bracket", "kayak bracket", "mount.kind", "bracket", nil},
}

var controlRows = []wordRow{
	{"tiller", "tiller", "motor.control", "tiller", electricTiller},
	{"cable steer", "cable steer", "motor.control", "foot-cable", nil},
	{"electric steer", "electric steer", "motor.control", "foot-electric", nil},
	{"foot pedal", "foot pedal", "motor.control", "foot-cable", nil},
}

var motorRows = []wordRow{
	{"brushless", "brushless", "motor.drive", "brushless", nil},
	{"brushed", "brushed", "motor.drive", "brushed", nil},
	{"variable speed", "variable speed", "motor.speeds", "variable", nil},
	{"five speeds", "five speed", "motor.speeds", "fixed", nil},
}

var otherRows = []wordRow{
	{"batteries in series", "series", "battery.layout", "series", nil},
	{"batteries in parallel", "parallel", "battery.layout", "parallel", nil},
	{"series and parallel", "series-parallel", "battery.layout", "series-parallel", nil},
	{"console", "center console", "boat.console", "true", nil},
	{"top", "bimini", "boat.top", "true", nil},
	{"leg left down", "leg down", "engine.leg", "down", nil},
	{"leg tilted up", "leg up", "engine.leg", "up", nil},
	{"standing", "standing", "people.posture", "standing", nil},
	{"seated", "seated", "people.posture", "seated", notMetered},
	{"cranking battery", "cranking battery", "battery.use", "cranking", nil},
	{"dual-purpose battery", "dual purpose", "battery.use", "dual-purpose", nil},
	{"deep-cycle battery", "deep cycle", "battery.use", "deep-cycle", nil},
	{"only out of the slip", "docking", "use.docking", "true", nil},
	{"talk of swimming", "swimming", "water.swim", "true", nil},
	{"electric-only water", "electric only", "water.rules", "electric-only", nil},
	{"a wire in the engine space", "engine space", "wire.place", "engine-space", wireTold},
}

// wordTables is every table, found by entry.
var wordTables = map[words.ID][]*wordRow{}

func init() {
	for _, table := range [][]wordRow{hullRows, materialRows, chemistryRows, mountRows, controlRows, motorRows, otherRows, waterRows, styleRows} {
		for i := range table {
			id := words.Of(table[i].word)
			if id == words.None {
				unknownNames = append(unknownNames, table[i].word)
				continue
			}
			wordTables[id] = append(wordTables[id], &table[i])
		}
	}
}

// wordFacts binds the words that are facts by themselves. A word under a "no"
// takes back what it would say; two words to choose between say nothing.
func (l *line) wordFacts() {
	for i := range l.terms {
		id := l.terms[i].id
		if id < 0 {
			continue
		}
		for _, row := range wordTables[id] {
			l.wordFact(i, row)
		}
	}
	l.loneVee()
	l.tubes()
}

// tubes notes a pontoon boat's third tube.
func (l *line) tubes() {
	for i := range l.terms {
		if l.terms[i].id != idPontoon || l.negated[i] || l.asked(i) {
			continue
		}
		if t := l.terms[i].text; strings.HasPrefix(t, "tri") || strings.HasPrefix(t, "three") || strings.HasPrefix(t, "3") {
			l.put(card.Fact{Slot: "boat.tubes", Value: num(3), Unit: "1", Said: l.said(l.terms[i].start, l.terms[i].end), Row: "three tubes"})
			return
		}
	}
}

func (l *line) wordFact(i int, row *wordRow) {
	if l.asked(i) || row.when != nil && !row.when(l, i) || row.slot == "motor.control" && l.faulty() {
		return
	}
	if row.slot == "water.kind" && l.mayAsk() && l.anyText("change", "changes", "affect", "affects") {
		return // "can salt change how much thrust"
	}
	if s := l.sentence(i); row.slot == "water.kind" && (l.text(s) == "does" || l.text(s) == "would" || l.text(s) == "will") && l.saysText("matter") {
		return // "does it matter if its salt"
	}
	if strings.HasPrefix(row.slot, "mount.") && strings.HasPrefix(l.over, "mount.") && !l.setSlots["boat.length"] {
		return // what is to be mounted, and where, is the question
	}
	t := &l.terms[i]
	text := row.text
	if l.negated[i] {
		switch {
		case row.slot == "water.weeds", row.slot == "boat.console", row.slot == "boat.top":
			text = "false"
		default:
			if f, ok := l.before.Get(row.slot); ok && f.Text == row.text {
				l.drops = append(l.drops, row.slot)
			}
			return
		}
	}
	if f, ok := l.fact(row.slot); ok {
		if row.slot == "water.kind" && saltier(row.text, f.Text) {
			f.Text, f.Said, f.Row = row.text, l.said(t.start, t.end), row.name
		}
		if row.slot == "motor.control" && f.Row == "foot pedal" && row.name != "foot pedal" && row.text != "tiller" {
			f.Text, f.Said, f.Row = row.text, l.said(t.start, t.end), row.name
		}
		if row.slot == "boat.hull" && f.Text == "other" && row.text != "other" {
			f.Text, f.Said, f.Row = row.text, l.said(t.start, t.end), row.name
		}
		return
	}
	l.put(card.Fact{Slot: row.slot, Text: text, Said: l.said(t.start, t.end), Row: row.name, Wish: l.wishWord(i)})
}

func saltier(a, b string) bool {
	rank := map[string]int{"fresh": 0, "brackish": 1, "salt": 2}
	return rank[a] > rank[b]
}

// loneVee takes a single "v" behind a material or a length for the hull.
func (l *line) loneVee() {
	if l.setSlots["boat.hull"] {
		return
	}
	for i := range l.terms {
		if hull, ok := hullAlone[l.terms[i].text]; ok && i > 0 && l.boatLengthAt(i-1) && (l.endsAt(i) || l.filler(i+1) || l.terms[i+1].measure >= 0 || l.id(i+1) == idWith) {
			l.put(card.Fact{Slot: "boat.hull", Text: hull, Said: l.said(l.terms[i].start, l.terms[i].end), Row: "hull kind behind a length"})
			return
		}
		if l.terms[i].text != "v" || i == 0 {
			continue
		}
		prev := l.id(i - 1)
		if l.terms[i-1].mark == ',' && l.endsAt(i) && l.setSlots["boat.length"] {
			l.put(card.Fact{Slot: "boat.hull", Text: "vee", Said: l.said(l.terms[i].start, l.terms[i].end), Row: "vee hull"})
			return
		}
		long := l.boatLengthAt(i-1) && (l.endsAt(i) || l.filler(i+1) || l.terms[i+1].measure >= 0 || l.id(i+1) == idWith || l.id(i+1) == idAnd)
		if (l.text(i-1) == "type" || l.text(i-1) == "style") && l.setSlots["boat.length"] || prev >= 0 && (prev.Kind() == words.Material || prev == idBoat) || l.id(i+1) == idBoat || long {
			l.put(card.Fact{Slot: "boat.hull", Text: "vee", Said: l.said(l.terms[i].start, l.terms[i].end), Row: "vee hull"})
			return
		}
	}
}

// hullAlone are words that name a hull only behind a boat's length: "22 ft bay".
var hullAlone = map[string]string{"bay": "bay", "bass": "bass", "flats": "flats"}

func (l *line) boatLengthAt(i int) bool {
	m := l.terms[i].measure
	if m < 0 {
		return false
	}
	f, ok := l.fact("boat.length")
	return ok && l.r.Measures[m].Said == f.Said
}

// boatMaterial leaves out plastic worms, wooden docks and tin boxes.
func boatMaterial(l *line, at int) bool {
	next := l.id(at + 1)
	if next >= 0 && (next == idProp || next == idFishingRod || next == idBattery || next == idTrailer || next == idFishingLine) {
		return false
	}
	switch l.text(at + 1) {
	case "worm", "worms", "box", "case", "tray", "dock", "docks", "wire", "foil", "bucket", "lure", "bag", "cover", "deck", "floor", "floors", "seat", "seats", "bench", "paddle", "paddles", "oars":
		return false
	}
	return l.text(at-1) != "woods" && l.text(at+1) != "s"
}

func glassBoat(l *line, at int) bool {
	next, prev := l.id(at+1), l.id(at-1)
	if next >= 0 && (next.Kind() == words.Hull || next == idBoat) {
		return true
	}
	if prev >= 0 && prev.Kind() == words.Hull {
		return true
	}
	if l.text(at-1) == "ish" && at > 1 && l.terms[at-2].measure >= 0 {
		return true // "nineteen foot ish glass"
	}
	if prev == idConsole || l.id(at+1) == idConsole {
		return true
	}
	if w := l.text(at - 1); w == "hull" || w == "trihull" {
		return true // "tri hull glass"
	}
	if at > 0 && l.terms[at-1].mark == ',' && l.endsAt(at) {
		return true
	}
	return at > 0 && l.terms[at-1].measure >= 0 && unitOfKind(l, l.terms[at-1].measure) == "m"
}

// kayaksBracket accepts a bracket that is called a kayak's.
func kayaksBracket(l *line, at int) bool {
	return strings.HasPrefix(l.terms[at].text, "kayak") || strings.HasPrefix(l.terms[at].text, "yak")
}

// grpHull tells glass-reinforced plastic from a battery's group.
func grpHull(l *line, at int) bool {
	return l.terms[at].text == "grp" && (at+1 >= len(l.terms) || l.terms[at+1].measure < 0 || l.endsAt(at)) && !l.any(batteryWords) && !l.hasKind(read.Charge)
}

func unitOfKind(l *line, m int) string { return l.r.Measures[m].Unit }

// leadBattery leaves out the wire and the sinker.
func leadBattery(l *line, at int) bool {
	switch l.text(at + 1) {
	case "core", "head", "heads", "wire", "length", "weight", "weights", "jig", "to", "from", "sinker", "sinkers", "me":
		return false
	}
	switch l.text(at - 1) {
	case "the", "motor", "transducer", "positive", "negative", "each", "power", "which":
		return l.terms[at].text != "lead"
	}
	return true
}

// wireTold tells that wire is talked of, which runs there.
func wireTold(l *line, at int) bool { return l.wiring() || l.any(wireTalk) }

// notMetered leaves out a motor "sitting" while its volts are read.
func notMetered(l *line, at int) bool {
	if at > 0 && l.terms[at-1].measure >= 0 || at+1 < len(l.terms) && l.terms[at+1].measure >= 0 {
		return false // "a 12v 55 sitting 15 foot from the battery"
	}
	return !l.hasReason("a meter reading") && !l.faulty()
}

func bowDeck(l *line, at int) bool {
	t := l.terms[at].text
	return strings.HasPrefix(t, "bow") || strings.HasPrefix(t, "front")
}

// transomMount leaves out the back of the boat where the outboard hangs or the
// batteries lie; the word transom itself is enough otherwise.
func transomMount(l *line, at int) bool {
	if _, _, ok := l.near(at, -1, hangsThere, 3); ok {
		return false
	}
	if strings.HasPrefix(l.terms[at].text, "trans") {
		return true
	}
	if _, _, ok := l.near(at, -1, mountsThere, 3); ok {
		return true
	}
	_, _, ok := l.near(at, 1, mountsThere, 1)
	return ok
}

var (
	hangsThere  = of("outboard", "horsepower", "battery", "bank", "charger")
	mountsThere = of("mount", "clamp", "trolling motor", "motor", "tiller", "trolling")
)

// electricTiller leaves out the gas outboard's tiller.
func electricTiller(l *line, at int) bool {
	if n := l.id(at + 1); n == idOutboard || n == idHorsepower || n == idBoat || n >= 0 && n.Kind() == words.Hull {
		return false
	}
	if at > 0 && l.terms[at-1].measure >= 0 && l.r.Measures[l.terms[at-1].measure].Kind == read.Number {
		return false
	}
	_, _, ok := l.near(at, -1, ofEngine, 2)
	return !ok
}

var ofEngine = of("outboard", "horsepower")
