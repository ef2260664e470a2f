package read

import "strings"

// entry is everything that the rows say of one word.
type entry struct {
	word   string
	number *numberWord
	units  *unitPhrase  // units that start with the word, longest first
	before *hedgePhrase // hedges that end with the word and stand before a number
	after  *hedgePhrase // hedges that start with the word and stand behind
	role   role
	starts bool  // a measure may start with the word
	next   int16 // the entry of this bucket that was added before, counted from 1
}

type unitPhrase struct {
	words []string
	row   *unitRow
	next  *unitPhrase
}

type hedgePhrase struct {
	words []string
	row   *hedgeRow
	next  *hedgePhrase
}

// role marks the parts a word can play beside naming numbers and units.
type role uint32

const (
	fillsUnit        role = 1 << iota // may stand between number and unit: "2 more hours"
	perWord                           // "per", "an", "/"
	afterPreposition                  // "in" before it is no inch
	afterAmpere                       // "a" before it may be amperes
	afterWatt                         // "w" before it may be watts
	wireWord                          // a cable
	countNoun                         // what is counted: "2 guys"
	throttleWord                      // "half throttle"
	groupPrefix                       // "group 27"
	gaugePrefix                       // "awg 6"
	labelPrefix                       // the number after it is a label
	phoneWord
	monthWord
	boatWord   // a year may stand before it
	engineWord // an outboard is near
	loadWord   // a weight stands before it, not a year
	chemistry  // a battery
	splitsTime // "hour flat out"
	yearLead   // "a 2019", "since 2012"
	pronounOne // "which one", "the one"
	closesFraction
	rateWord   // "twice a week"
	caseName   // "gc2"
	footWorked // "2 foot pedals"
	fishWord   // a catch
	idleWord   // "wait a minute"
	attribute  // "55 lb max thrust"
)

// roleRows lists the words of each role.
var roleRows = []struct {
	role  role
	words string
}{
	{fillsUnit, "more less fewer full whole solid good straight extra reserve additional long"},
	{perWord, "per an a / each"},
	{afterPreposition, "series parallel hand stock the a an my our his her their your its this that these those it there here case front back january february march april may june july august september october november december " +
		"jan feb mar apr jun jul aug sep sept oct nov dec summer winter spring fall autumn all total between and each salt fresh chop wind current waves rough calm weeds general water order line mind stock town theory place"},
	{afterAmpere, "at motor breaker fuse draw draws load charger continuous full max peak on for and or from through over breakers fuses resettable circuit service"},
	{afterWatt, "motor motors panel panels charger solar inverter of at max output peak draw load"},
	{wireWord, "wire wires wiring cable cables lead leads conductor conductors copper strand stranded duplex triplex awg"},
	{countNoun, "guys guy people men man persons person adults adult kids kid anglers angler women woman boys girls dogs dog passengers passenger pax blokes bloke fellas fellows folks buddies friends of x group grp gp groups " +
		"batteries battery batts batt bats agms agm lithiums lithium cells speed speeds stroke strokes motors motor times rods rod seats seater seat man fat big grown other others more wires tanks tank rooms benches chairs coolers humans beers hulls tubes toons boats days hours trips banks"},
	{throttleWord, "throttle power speed thrust full setting gas tilt"},
	{groupPrefix, "group grp gp gr bci grup groop"},
	{gaugePrefix, "awg gauge gage guage"},
	{labelPrefix, "highway hwy route exit channel sku part item serial invoice ticket zip chapter page room apt slip dock ext"},
	{phoneWord, "phone call ring cell mobile text tel telephone fax number dial"},
	{monthWord, "january february march april may june july august september october november december jan feb mar apr jun jul aug sept oct nov dec"},
	{boatWord, "boat bass jon skiff bay pontoon toon tritoon model yr aluminum alum aluminium fiberglass fibreglass glass deep vee v deck bowrider runabout canoe kayak hull rig trailer console season outboard motor"},
	{engineWord, "outboard outboards kicker kickers tiller engine engines gas gasser petrol wieghs weighs stroke hp horse"},
	{loadWord, "loaded dry empty total rigged all lb lbs pounds pound kg kilos with w everything altogether ready fully gross plus is on max or tops including incl before"},
	{chemistry, "agm agms flooded gel gels lithium lithiums lifepo4 battery batteries batts batt bats deep dc dcs marine marines series lead"},
	{splitsTime, "flat at on of wide full running then drifting trolling each"},
	{yearLead, "a an since year my from circa model made built"},
	{pronounOne, "which this that the any every each no another last next other only right wrong same first second these those what either big small good bad better best cheap cheapest new old used"},
	{rateWord, "once twice times time trips days nights much often many"},
	{footWorked, "pedal pedals control controls controlled cable cables operated steer steering switch switches"},
	{fishWord, "bass walleye walleyes pike musky muskie catfish cat trout salmon crappie crappies fish carp striper stripers perch redfish smallmouth largemouth bluegill snook"},
	{idleWord, "wait got gimme give me hold just every what a that hang in"},
	{attribute, "thrust draw load capacity weight power amps amp current speed output rating push pull discharge"},
	{closesFraction, "of throttle power speed thrust"},
}

// announces lists letters that a number may follow without a space.
var announces = map[string]bool{
	"usd": true, "eur": true, "gbp": true, "us": true, "group": true, "grp": true,
	"gp": true, "gr": true, "x": true, "nr": true, "no": true, "bci": true, "awg": true,
}

// lexicon holds what the rows say of each word, found by the hash of the word.
// Every start makes it: a plain table takes half the time and half the room of a
// map, and what is cut from room for many is made sooner than one by one.
var lexicon = struct {
	entries []entry
	buckets [1024]int16 // the entry added last, counted from 1; 0 for none
	words   []string
	units   []unitPhrase
	hedges  []hedgePhrase
}{
	entries: make([]entry, 0, 1100),
	words:   make([]string, 0, 1800),
	units:   make([]unitPhrase, 0, 720),
	hedges:  make([]hedgePhrase, 0, 752),
}

// dollar is the unit of "two grand".
var dollar *unitRow

// The lexicon is filled in init, not in its declaration, because the conditions
// of the rows call the parser, which reads the lexicon.
func init() {
	for i := range units {
		row := &units[i]
		if dollar == nil && row.spoken == "USD" {
			dollar = row
		}
		row.rule = row.as
		if row.as == "" {
			row.rule = string(row.kind) + " in " + row.spoken
		}
		for spelling := range strings.SplitSeq(row.spelled, "|") {
			enterUnit(row, fields(spelling))
		}
	}
	for i := range numberWords {
		row := &numberWords[i]
		for word := range strings.FieldsSeq(row.words) {
			entryOf(word).number = row
		}
	}
	for i := range hedges {
		row := &hedges[i]
		for phrase := range strings.SplitSeq(row.phrases, "|") {
			enterHedge(row, fields(phrase))
		}
	}
	for _, row := range roleRows {
		for word := range strings.FieldsSeq(row.words) {
			entryOf(word).role |= row.role
		}
	}
	for name := range caseNames {
		entryOf(name).role |= caseName
	}
	for _, word := range []string{"#", "number", "no", "-", "'", "(", "a", "an", "another"} {
		entryOf(word).starts = true
	}
	for i := range lexicon.entries {
		e := &lexicon.entries[i]
		if e.number != nil || e.units != nil || e.role&(groupPrefix|gaugePrefix|labelPrefix|monthWord|caseName) != 0 {
			e.starts = true
		}
	}
}

// fields is strings.Fields into the lexicon's room.
func fields(phrase string) []string {
	from := len(lexicon.words)
	for word := range strings.FieldsSeq(phrase) {
		lexicon.words = append(lexicon.words, word)
	}
	return lexicon.words[from:len(lexicon.words):len(lexicon.words)]
}

// enterUnit enters a spelling behind those that are as long or longer.
func enterUnit(row *unitRow, words []string) {
	at := &entryOf(words[0]).units
	for *at != nil && len((*at).words) >= len(words) {
		at = &(*at).next
	}
	if len(lexicon.units) == cap(lexicon.units) {
		lexicon.units = make([]unitPhrase, 0, 64)
	}
	lexicon.units = append(lexicon.units, unitPhrase{words, row, *at})
	*at = &lexicon.units[len(lexicon.units)-1]
}

// enterHedge does the same, by the word that stands next to the number.
func enterHedge(row *hedgeRow, words []string) {
	var at **hedgePhrase
	if row.behind {
		at = &entryOf(words[0]).after
	} else {
		at = &entryOf(words[len(words)-1]).before
	}
	for *at != nil && len((*at).words) >= len(words) {
		at = &(*at).next
	}
	if len(lexicon.hedges) == cap(lexicon.hedges) {
		lexicon.hedges = make([]hedgePhrase, 0, 64)
	}
	lexicon.hedges = append(lexicon.hedges, hedgePhrase{words, row, *at})
	*at = &lexicon.hedges[len(lexicon.hedges)-1]
}

// lookUp finds the entry of a word as Token.Text has it, nil where the rows say
// nothing of it.
func lookUp(word string) *entry {
	for i := lexicon.buckets[bucket(word)]; i > 0; i = lexicon.entries[i-1].next {
		if e := &lexicon.entries[i-1]; e.word == word {
			return e
		}
	}
	return nil
}

// bucket is the hash FNV-1a, cut to the number of buckets.
func bucket(word string) uint32 {
	h := uint32(2166136261)
	for i := 0; i < len(word); i++ {
		h = (h ^ uint32(word[i])) * 16777619
	}
	return h % uint32(len(lexicon.buckets))
}

// entryOf is the entry of a word, made if need be. It may move while others are
// made.
func entryOf(word string) *entry {
	if e := lookUp(word); e != nil {
		return e
	}
	b := &lexicon.buckets[bucket(word)]
	lexicon.entries = append(lexicon.entries, entry{word: word, next: *b})
	*b = int16(len(lexicon.entries))
	return &lexicon.entries[len(lexicon.entries)-1]
}
