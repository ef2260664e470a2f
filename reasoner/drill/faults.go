package drill

import (
	"math"
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
)

// bench is what a meter would read on a sound rig of the scenario.
type bench struct {
	volts float64 // nominal
	posts float64 // at the battery posts, at full throttle
	rest  float64 // at rest, full
	amps  float64 // at full throttle
	drop  float64 // in the wire, at full throttle
	rated string  // the breaker that belongs to it
}

// Volts of a full 12-volt lead-acid battery at rest, and under the load of a
// motor (from memory; typical values of the trade).
const (
	restVolts = 12.65
	loadVolts = 11.7
)

// A faultRow is a motor that does not do what it should: how the customer puts
// it, the cause, the reading that tells it from its likeness, and what that
// reading is. Readings that a row does not give are those of a sound rig.
type faultRow struct {
	id       string
	cause    string
	says     []string
	causes   []string // any of these names the cause
	near     []string // any of these names the right corner, not the part
	decide   string   // the check that decides
	beside   string   // the check that leads up to it
	because  string
	readings map[string]func(b bench) string
	many     bool // only on more than 12 volts
	few      bool // only on 12 volts
	note     string
	found    string // where the passage begins, within its note
}

func fixed(text string) func(bench) string { return func(bench) string { return text } }

func reading(v float64) string { return unit.Number(v, 1) + " V" }

// A checkRow is a thing to look at or measure, with the words that ask for it
// and what a sound rig shows.
type checkRow struct {
	id    string
	label string
	asks  []string
	sound func(b bench) string
}

var checkRows = []checkRow{
	{"plug-off", "whether it trips with the plug pulled", []string{"unplugged|pulled|plug trip|trips|still|out", "disconnect|unplug trip|trips|still"}, fixed("With the plug out nothing happens: it stays in.")},
	{"plug", "volts at the plug at full throttle", []string{"plug volt|volts|voltage|read|reading|meter|measure", "motor|leads|connector volt|volts|voltage", "voltage|volt|volts drop"}, func(b bench) string {
		return "At the plug, wide open: " + reading(b.posts-b.drop) + "."
	}},
	{"rest", "volts of each battery at rest", []string{"rest|resting|overnight|each|individual|across|whole|bank volt|volts|voltage|battery|batteries", "battery|batteries rest|resting|overnight"}, func(b bench) string {
		return "At rest, full: " + reading(b.rest) + " across the lot."
	}},
	{"posts", "volts at the battery posts at full throttle", []string{"post|posts|terminal|terminals|battery|batteries|bank volt|volts|voltage|load|read|meter", "under load"}, func(b bench) string {
		return "At the posts, wide open: " + reading(b.posts) + "."
	}},
	{"low", "whether it runs on the low settings", []string{"low|lower|slow|other|settings|speeds setting|settings|speed|speeds|step|steps|run|runs|work|works", "every|which speed|speeds|setting", "happens|happen|does|do one|two|three|four|1|2|3|4|low|slow|slowest"}, fixed("It runs on every setting.")},
	{"amps", "amps at full throttle", []string{"amp|amps|current|ammeter|clamp|drawing", "how|what|much draw|draws|pull|pulls|pulling"}, func(b bench) string {
		return "The clamp meter says " + unit.Number(b.amps, 0) + " A, wide open."
	}},
	{"rating", "what the breaker is rated at", []string{"size|rating|rated|big|number|amp breaker|fuse", "what|which breaker|fuse got|have|kind|fitted|installed|use"}, func(b bench) string { return "The breaker says " + b.rated + "." }},
	{"breaker-in", "whether the breaker is in", []string{"breaker|fuse on|in|reset|closed|open|tripped|check|set|blown|good|ok|okay|look|doing", "breaker volt|volts|sides|side"}, fixed("The breaker's in, same volts on both sides.")},
	{"prop-off", "how it runs with the prop off", []string{"off|without|remove|removed prop|propeller"}, fixed("With the prop off it runs the same as with it.")},
	{"prop", "whether the prop turns freely by hand", []string{"prop|propeller hand|turn|turns|spin|spins|free|freely|stiff|line|weeds|weed|wrapped|look|looks|check|inspect|clean|clear|ok|okay|good|condition|damage|damaged|chipped|bent|fouled|tangled", "line|weeds|weed|fishing prop|propeller|shaft|wrapped|around", "what prop|propeller", "spin|spins|turn|turns|stiff hand|freely|free"}, fixed("The prop's clean and goes round with one finger.")},
	{"own-battery", "whether the noise stays with the sonar on its own battery", []string{"own|separate|different|another|second battery|supply|power", "share|shares|sharing|same battery|supply|power", "where|what power|powered|wired|hooked|connected"}, fixed("On a battery of its own the screen's the same as ever.")},
	{"cable", "where the transducer cable lies", []string{"transducer|ducer|cable lie|lies|run|runs|near|along|next|move|apart|away|where|route|routed"}, fixed("The transducer cable is a good two feet from anything.")},
	{"magnet", "what lies near the heading sensor", []string{"magnet|magnets|metal|speaker|speakers|steel|iron|stereo|radio|compass|sensor|heading", "near|close|next|around head|motor|compass|sensor", "calibrate|calibrated|calibration"}, fixed("Nothing but carpet anywhere near it.")},
	{"seam", "what comes out at the seam of the lower unit", []string{"milky|seam|oil|drip|drips|leak|leaks|gurgle|seal|seals|housing", "water lower|unit|inside"}, fixed("The lower unit's dry and tight.")},
	{"charger", "what the charger's lights show", []string{"charger|charge|charging|charged|light|lights|output|outputs|green|red"}, fixed("All its lights go green by morning.")},
	{"since", "since when it does that", []string{"when start|started|begin|began|happen|happened|notice|noticed|first|last", "how long has|been|it", "since when", "new|recent|recently|sudden|suddenly|overnight|gradual|gradually"}, fixed("The last few trips. Before that I had no trouble with it.")},
	{"age", "how old the batteries are", []string{"old|age|new|year|years battery|batteries|they|it"}, fixed("Two seasons old.")},
	{"heat", "whether anything gets hot", []string{"hot|warm|heat|heats|heating|warmth"}, fixed("Not that I noticed.")},
	{"meter", "where to put the meter", []string{"what|whats meter|voltmeter|multimeter"}, fixed("Where do you want it? On the posts, at the plug, round a wire?")},
	{"posts", "volts at the battery posts at full throttle", []string{"at battery|batteries|posts|terminals"}, nil}, // after "and at the plug?"
	{"plug", "volts at the plug at full throttle", []string{"plug|connector"}, nil},
}

func checkOf(id string) *checkRow {
	for i := range checkRows {
		if checkRows[i].id == id {
			return &checkRows[i]
		}
	}
	return nil
}

var faultRows = []faultRow{
	{id: "bad plug", cause: "a bad connection between battery and motor",
		says:   []string{"It's gone slow. Batteries are charged, and it still crawls.", "It used to push us along nicely, now it's weak, on full batteries."},
		causes: []string{"plug", "connection", "connector", "corroded", "corrosion", "lug", "lugs", "terminal", "terminals", "joint", "wing nut", "loose"}, near: []string{"wire", "wiring", "voltage drop"},
		decide: "plug", beside: "posts", because: "the posts hold up and the plug is down by far more than the wire accounts for",
		readings: map[string]func(bench) string{"plug": func(b bench) string {
			return "At the plug, wide open: " + reading(b.posts-b.drop-1.4*b.volts/12) + "."
		}, "amps": func(b bench) string {
			return "The clamp meter says " + unit.Number(b.amps*0.85, 0) + " A, wide open."
		}, "heat": fixed("The plug's warm to the hand after a run.")}, note: "fault-slow", found: "fault-slow#volts-at-the-plug-the-reading-that-decides"},
	{id: "tired battery", cause: "a battery that is worn out",
		says:   []string{"It's weak after half an hour, and slow from the start, charged or not.", "No push any more. I charged all night and it crawls."},
		causes: []string{"battery", "batteries", "sulfated", "sulphated", "dead cell", "bad cell", "worn out", "cell"}, near: []string{"charger", "bank"},
		decide: "posts", beside: "age", because: "the volts are gone at the posts already, so the wire and the plug are not to blame",
		readings: map[string]func(bench) string{
			"posts": func(b bench) string {
				return "At the posts, wide open: " + reading(b.posts-1.7*b.volts/12) + "."
			},
			"plug": func(b bench) string {
				return "At the plug, wide open: " + reading(b.posts-1.7*b.volts/12-b.drop) + "."
			},
			"rest": func(b bench) string {
				return "At rest, after a night on the charger: " + reading(12.2*b.volts/12) + " across the lot."
			},
			"age": fixed("Six or seven seasons, I forget."),
		}, note: "fault-short-run-time", found: "fault-short-run-time#finding-the-weak-battery"},
	{id: "wrong link", cause: "the batteries are linked side by side instead of in series", many: true,
		says:   []string{"I put in fresh batteries, and now it runs like it's half asleep.", "Since I changed the batteries it's slow as anything."},
		causes: []string{"parallel", "side by side", "series", "link", "linked", "jumper", "hooked up wrong", "wired wrong"}, near: []string{"wiring", "connection", "wire"},
		decide: "rest", beside: "age", because: "the whole bank reads one battery's volts",
		readings: map[string]func(bench) string{
			"rest":  fixed("At rest, across the lot: 12.6 V."),
			"posts": fixed("At the posts, wide open: 12.2 V."),
			"plug":  func(b bench) string { return "At the plug, wide open: " + reading(12.2-b.drop/2) + "." },
			"age":   fixed("Brand new."),
			"amps":  func(b bench) string { return "The clamp meter says " + unit.Number(b.amps*0.5, 0) + " A, wide open." },
		}, note: "fault-slow", found: "fault-slow#twenty-four-volts-that-is-only-twelve"},
	{id: "line on the prop", cause: "line or weeds wound round the prop",
		says:   []string{"The breaker pops after a few minutes. It never did before.", "It labors, gets hot, and then kicks the breaker out."},
		causes: []string{"line", "weed", "weeds", "wrapped", "wound", "fouled", "tangled"}, near: []string{"prop", "bearing", "seized"},
		decide: "prop", beside: "amps", because: "the prop is stiff and the motor draws far more than it is rated for",
		readings: map[string]func(bench) string{
			"heat":     fixed("The lower unit is, when it comes up."),
			"prop":     fixed("It's stiff by hand, and there's something green behind the hub."),
			"amps":     func(b bench) string { return "The clamp meter says " + unit.Number(b.amps*1.45, 0) + " A, wide open." },
			"prop-off": fixed("With the prop off there's a bird's nest of fishing line on the shaft."),
		}, note: "fault-breaker-trips", found: "fault-breaker-trips#telling-line-bearing-breaker-and-cable-apart"},
	{id: "small breaker", cause: "a breaker that is too small for the motor",
		says:   []string{"New motor, and the breaker trips every time I hold it wide open for a while.", "It runs fine, but ten minutes wide open and the breaker's out."},
		causes: []string{"breaker", "fuse", "undersized", "too small"}, near: []string{"wire"},
		decide: "rating", beside: "amps", because: "the motor draws what it should, and the breaker is rated below that",
		readings: map[string]func(bench) string{"rating": func(b bench) string {
			return "The breaker says " + unit.Number(under(b.amps), 0) + "."
		}}, note: "fault-breaker-trips", found: "fault-breaker-trips#do-not-cure-it-with-a-bigger-one"},
	{id: "chafed cable", cause: "a chafed cable that shorts before the plug",
		says:   []string{"The breaker goes the moment I close it. Bang.", "I close the breaker and it's out again at once, before I touch the pedal."},
		causes: []string{"cable", "wire", "wiring", "chafed", "short", "shorted", "short circuit", "insulation", "lead"}, near: []string{"connection", "plug"},
		decide: "plug-off", beside: "breaker-in", because: "it trips with the plug pulled, so the motor is not in it",
		readings: map[string]func(bench) string{
			"plug-off": fixed("Pulled the plug, closed it, and out it went again."),
			"amps":     fixed("There's no time to read anything, it's out at once."),
			"plug":     fixed("Nothing at the plug, the breaker won't stay in."),
		}, note: "fault-breaker-trips", found: "fault-breaker-trips#telling-line-bearing-breaker-and-cable-apart"},
	{id: "speed coil", few: true, cause: "a burnt speed coil or switch",
		says:   []string{"It's the five-speed kind. It only goes on the fastest.", "The clicky one with five speeds: it's flat out or nothing."},
		causes: []string{"coil", "coils", "switch", "speed coil", "resistor", "rotary"}, near: []string{"head", "control"},
		decide: "low", beside: "posts", because: "only full speed goes past the coils",
		readings: map[string]func(bench) string{"low": fixed("Nothing on one to four, and five is fine.")},
		note:     "fault-only-full", found: "fault-only-full#five-speed-switch-dead-on-the-low-steps"},
	{id: "shared supply", cause: "the sonar shares a supply with the motor",
		says:   []string{"My fish finder goes to snow whenever I touch the throttle.", "Lines all over the screen, as soon as the motor runs."},
		causes: []string{"shared", "same battery", "supply", "own battery", "separate battery", "sharing", "power"}, near: []string{"interference", "wiring", "cable"},
		decide: "own-battery", beside: "cable", because: "on a battery of its own the noise is gone",
		readings: map[string]func(bench) string{"own-battery": fixed("It's wired to the motor's battery. I tried it off a little one on the deck, and the snow was gone.")},
		note:     "fault-sonar-noise", found: "fault-sonar-noise#lines-on-the-fish-finder-shared-supply-first"},
	{id: "transducer cable", cause: "the transducer cable lies along the motor's leads",
		says:   []string{"Hash on the sonar when the motor runs, and it has its own battery already.", "Snow on the screen with the throttle. I gave it a battery of its own last year."},
		causes: []string{"transducer", "cable", "routing", "route", "routed", "leads"}, near: []string{"interference", "noise"},
		decide: "cable", beside: "own-battery", because: "it has its own battery, so the noise comes through the air",
		readings: map[string]func(bench) string{"cable": fixed("It's tied to the motor's leads, all the way back.")},
		note:     "fault-sonar-noise", found: "fault-sonar-noise#then-the-transducer-cable"},
	{id: "magnet", cause: "something magnetic beside the heading sensor",
		says:   []string{"Position hold wanders off in circles, even in a calm.", "It won't stay on its spot. It points somewhere else and pushes."},
		causes: []string{"magnet", "magnets", "magnetic", "speaker", "speakers", "compass", "sensor", "heading", "calibrate", "calibration", "metal"}, near: []string{"gps", "electronics"},
		decide: "magnet", beside: "posts", because: "a calm day rules out the wind, and the sensor is fooled",
		readings: map[string]func(bench) string{"magnet": fixed("I put new speakers in up front, right next to it.")},
		note:     "fault-position-wanders", found: "fault-position-wanders#compass-near-something-magnetic"},
	{id: "bent shaft", cause: "a bent motor shaft",
		says:   []string{"It shakes since I met a stump.", "We hit a rock, and now the whole thing shudders."},
		causes: []string{"bent", "bent shaft", "shaft", "armature"}, near: []string{"prop", "bearing", "bearings"},
		decide: "prop-off", beside: "prop", because: "it shakes with the prop off, so the prop is not it",
		readings: map[string]func(bench) string{"prop-off": fixed("With the prop off it shakes just as badly."), "prop": fixed("The blades look all right to me.")},
		note:     "fault-shakes", found: "fault-shakes#finding-the-bent-or-loose-part"},
	{id: "chipped prop", cause: "a chipped or unbalanced prop",
		says:   []string{"It shakes since we ran over a log.", "There's a shudder in it, worse the faster I go."},
		causes: []string{"prop", "propeller", "blade", "blades", "chipped"}, near: []string{"shaft", "bent"},
		decide: "prop-off", beside: "prop", because: "with the prop off it runs smooth",
		readings: map[string]func(bench) string{"prop-off": fixed("With the prop off it's smooth as butter."), "prop": fixed("One blade has a corner gone.")},
		note:     "fault-shakes", found: "fault-shakes#finding-the-bent-or-loose-part"},
	{id: "water inside", cause: "water past the seals of the lower unit",
		says:   []string{"The breaker trips a bit sooner every week. It's an old one.", "It trips more and more, and it gurgles when I tip it."},
		causes: []string{"water", "seal", "seals", "leak", "leaking"}, near: []string{"bearing", "lower unit", "motor"},
		decide: "seam", beside: "amps", because: "milky drops at the seam are water that came past the seal",
		readings: map[string]func(bench) string{
			"seam": fixed("There's something milky weeping out of the seam."),
			"amps": func(b bench) string { return "The clamp meter says " + unit.Number(b.amps*1.3, 0) + " A, wide open." },
		}, note: "fault-water-inside", found: "fault-water-inside#signs-of-water-in-the-lower-unit"},
	{id: "dead output", cause: "one output of the charger, or its lead, is dead", many: true,
		says:   []string{"It used to last all day, now it quits by noon.", "Half the day and it's done, on batteries that are two years old."},
		causes: []string{"charger", "output", "outputs", "charging", "lead"}, near: []string{"battery", "batteries"},
		decide: "charger", beside: "rest", because: "one light never turns green, and that battery starts the day empty",
		readings: map[string]func(bench) string{
			"charger": fixed("One light's green. The other never lights up, whichever battery I put on it."),
			"rest":    fixed("In the morning one reads 12.7 V, and the last one 12.0."),
		}, note: "fault-charging", found: "fault-charging#charger-light-stays-red"},
	{id: "open breaker", cause: "the breaker is open, or a fuse is blown",
		says:   []string{"Dead. No lights, no nothing, and the batteries are full.", "It won't do a thing. Yesterday it was fine."},
		causes: []string{"breaker", "fuse", "reset", "open"}, near: []string{"connection", "plug", "wire", "wiring"},
		decide: "breaker-in", beside: "rest", because: "the volts stop at the breaker",
		readings: map[string]func(bench) string{
			"breaker-in": fixed("There's volts on the battery side of the breaker and none on the other. The little arm hangs half way."),
			"plug":       fixed("At the plug: nothing at all."),
			"amps":       fixed("Zero, it doesn't run."),
		}, note: "fault-dead", found: "fault-dead#dead-no-power-follow-the-volts"},
}

// under is the largest standard breaker below a current.
func under(amps float64) float64 {
	out := typical.Breakers[0]
	for _, b := range typical.Breakers {
		if b < amps {
			out = b
		}
	}
	return out
}

// faulty makes a scenario of a motor that does not do what it should.
func (m *maker) faulty(s *Scenario) {
	m.meet(s)
	m.tell("boat.length", m.long.Metres(), "m")
	m.tellWord("boat.hull", m.boat.hull)
	m.tellWord("water.kind", m.water.kind)
	m.facts[len(m.facts)-1].Told = false
	factRows["motor.thrust"](m)
	factRows["wire.run"](m)
	if f, ok := m.find("wire.run"); ok {
		f.Told = false
	}
	s.Facts = m.facts
	sol := fit.Solve(card.Card{Facts: s.Cards()}, []string{"wire"}, unit.US, nil).Sol
	m.tell("wire.gauge", sol.Value(sheet.WireGauge), "AWG")
	if f, ok := m.find("wire.gauge"); ok {
		f.Told = false
	}
	s.Facts = m.facts
	v, _ := s.number("motor.voltage")
	var fitting []*faultRow
	for i := range faultRows {
		if f := &faultRows[i]; (!f.many || v > 13) && (!f.few || v < 13) {
			fitting = append(fitting, &faultRows[i])
		}
	}
	s.Fault = pick(&m.c, fitting)
	if s.Fault.id == "magnet" && m.boat.deck == 0 {
		s.Fault = &faultRows[0] // position hold is for motors that steer themselves
	}
	for range levelRows[m.level].idle {
		if idle := m.idle(); !slices.Contains(s.Idle, idle) {
			s.Idle = append(s.Idle, idle)
		}
	}
	boat := strings.ReplaceAll(pick(&m.c, m.boat.names), "{l}", m.footage())
	thrust, _ := s.Fact("motor.thrust")
	voice := voices[s.Voice]
	hello := strings.NewReplacer("{boat}", article(boat), "{Boat}", upper(boat)).Replace(pick(&m.c, voice.hello))
	parts := append([]string{hello, upper(toldAs(s, thrust.Fact, m.sys)) + "."}, pick(&m.c, s.Fault.says))
	s.Opening = strings.Join(append(parts, s.Idle...), " ")
	s.Boat, s.Title = boat, upper(boat)+", "+s.Fault.id
}

// benchOf works out the readings of a sound rig.
func benchOf(s *Scenario) bench {
	sol := fit.Solve(card.Card{Facts: s.Cards()}, []string{"wire", "breaker"}, unit.US, nil).Sol
	v, _ := s.number("motor.voltage")
	n := math.Max(1, math.Round(v/12))
	b := bench{volts: 12 * n, posts: loadVolts * n, rest: restVolts * n, rated: "60"}
	if sol.Has(sheet.MotorCurrent) {
		b.amps = sol.Value(sheet.MotorCurrent)
	}
	if sol.Has(sheet.WireVolts) {
		b.drop = sol.Value(sheet.WireVolts)
	}
	if sol.Has(sheet.BreakerRating) {
		b.rated = unit.Number(sol.Value(sheet.BreakerRating), 0)
	}
	return b
}

// check is what a reading or a look shows in this scenario.
func (s *Scenario) check(id string) string {
	if s.Fault == nil {
		return ""
	}
	b := benchOf(s)
	if f, ok := s.Fault.readings[id]; ok {
		return f(b)
	}
	if c := checkOf(id); c != nil {
		return c.sound(b)
	}
	return ""
}
