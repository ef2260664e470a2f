package drill

import (
	"fmt"
	"strings"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
)

// A voice is a way of talking, so that thirty customers are not one.
type voice struct {
	id      string
	hello   []string // {boat} is "a 16-foot jon boat"
	fish    string   // {place}
	facts   string   // {facts}, a list
	unknown []string // what is said to a question that the scenario cannot answer
	again   string   // before something that was told already; {v}
	thanks  string   // at the end
}

var voices = []voice{
	{"plain", []string{"I've got {boat}.", "It's {boat}."}, "I fish {place}.", "{facts}.",
		[]string{"No idea, sorry.", "I couldn't tell you."}, "As I said: {v}", "Thanks, that helps."},
	{"chatty", []string{"Morning! We finally bought {boat}, pretty little thing.", "Well, I was only going to look, and now there's {boat} in the driveway."}, "She lives on {place}, mostly.", "Let me see: {facts}.",
		[]string{"Oh, you've got me there.", "Goodness, nobody ever told me that."}, "Didn't I say? {v}", "You've been a great help, really."},
	{"short", []string{"{Boat}.", "{Boat}, used."}, "On {place}.", "{facts}.",
		[]string{"Don't know.", "No idea."}, "Told you: {v}", "Fine."},
	{"new to it", []string{"I'm new at this. It's {boat}, if that makes sense.", "Don't laugh, I just started. I have {boat}."}, "We'd go on {place}.", "What I wrote down: {facts}.",
		[]string{"I wouldn't know how to find that out.", "Is that written somewhere? I've no idea."}, "I think I said: {v}", "Phew. Thank you."},
	{"old hand", []string{"Been running {boat} for years.", "Same boat as ever, {boat}."}, "You'll find me on {place}.", "Here's what there is: {facts}.",
		[]string{"Never mattered to me.", "Never looked."}, "Like I told you: {v}", "That'll do."},
	{"in a hurry", []string{"Quick one, I'm double-parked: {boat}.", "Got a minute? {Boat}."}, "Out on {place}.", "Quickly: {facts}.",
		[]string{"No time to check, no idea.", "Couldn't say."}, "I said: {v}", "Great, gotta run."},
}

// open words what the customer says first.
func (m *maker) open(s *Scenario) {
	if s.Opening != "" {
		return
	}
	v := voices[s.Voice]
	boat := strings.ReplaceAll(pick(&m.c, m.boat.names), "{l}", m.footage())
	var told []string
	place := m.water.place
	for _, f := range s.Facts {
		switch {
		case f.Slot == "water.kind" && !f.Told:
			place = m.water.vague
		case !f.Told || f.Slot == "boat.length" || f.Slot == "boat.hull" || f.Slot == "water.kind":
		case f.Slot == "motor.voltage":
		default:
			t := toldAs(s, f.Fact, m.sys)
			if f.Slot == "mount.place" && s.Topic == Mount {
				t = deckTold[f.Text]
			}
			if t != "" {
				told = append(told, t)
			}
		}
	}
	hello := strings.NewReplacer("{boat}", article(boat), "{Boat}", upper(boat)).Replace(pick(&m.c, v.hello))
	parts := []string{hello, strings.ReplaceAll(v.fish, "{place}", place)}
	if len(told) > 0 {
		list := strings.ReplaceAll(v.facts, "{facts}", strings.Join(told, ", "))
		parts = append(parts, upper(list))
	}
	parts = append(parts, s.Idle...)
	if s.Wish != nil {
		parts = append(parts, pick(&m.c, s.Wish.says))
	}
	parts = append(parts, row(s.Topic).ask)
	s.Opening = strings.Join(parts, " ")
	s.Boat, s.Title = boat, upper(boat)+", "+m.water.id
}

// deckTold is how a customer who asks where the motor goes tells what the boat
// has.
var deckTold = map[string]string{"bow": "there's a clear front deck", "transom": "no front deck, only the transom"}

// footage is the boat's length in front of its kind.
func (m *maker) footage() string {
	if m.sys == unit.Metric {
		return unit.Show(m.long.Metres(), unit.LongLength, m.sys)
	}
	return feetWords(m.long) + "-foot"
}

func article(name string) string {
	for _, n := range []string{"8", "11-", "18-", "an", "inflatable"} {
		if strings.HasPrefix(name, n) {
			return "an " + name
		}
	}
	return "a " + name
}

func upper(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// talkRow is how a customer puts a fact: in a list of what there is, and as an
// answer to a question. {v} is the value in the customer's units.
type talkRow struct {
	slot  string
	word  string // for a fact in words: the word that the row is about
	told  string
	reply []string
}

var talkRows = []talkRow{
	{"load.total", "", "{v} loaded", []string{"On the scale at the ramp it was {v}, all in.", "{v} as she goes, everything aboard."}},
	{"load.dry", "", "the bare hull weighs {v}", []string{"The bare hull is {v}, says the brochure.", "{v} empty, before anything goes in."}},
	{"load.engine", "", "the outboard weighs {v}", []string{"The outboard's {v} by its book.", "The engine? {v}."}},
	{"load.gear", "", "{v} of gear", []string{"Tackle, cooler, anchor: {v}, near enough.", "Say {v} of gear."}},
	{"fuel.volume", "", "{v} of gas aboard", []string{"I carry {v} of gas.", "The tank holds {v}, and it's full when we go."}},
	{"people.count", "1", "I fish alone", []string{"Just me.", "Nobody but me."}},
	{"people.count", "", "{n} of us", []string{"{N} of us.", "We're {n}, all grown."}},
	{"wind.speed", "", "the wind is {v} on a usual day", []string{"It blows about {v} most afternoons.", "The wind? {v}, on a usual day."}},
	{"current.speed", "", "the current runs {v}", []string{"The current runs {v}, going by the sticks floating past.", "About {v} of current."}},
	{"chop.height", "", "waves of {v}", []string{"Waves of {v}, when it's up.", "It gets to {v} of chop."}},
	{"water.depth", "", "{v} of water", []string{"{v} deep where we fish."}},
	{"water.weeds", "true", "weeds everywhere", []string{"Weeds everywhere by June.", "Thick with weeds."}},
	{"water.weeds", "false", "no weeds to speak of", []string{"Hardly any weeds."}},
	{"water.kind", "salt", "it's salt water", []string{"Salt. You can smell it.", "That's salt water, all of it."}},
	{"water.kind", "brackish", "it's brackish water", []string{"Brackish: the tide comes right up there.", "Half salt, I guess. Brackish."}},
	{"water.kind", "fresh", "it's fresh water", []string{"Fresh water, never anything else.", "Fresh."}},
	{"mount.place", "bow", "it goes on the bow deck", []string{"There's a solid front deck, with nothing on it.", "Yes, a proper bow deck."}},
	{"mount.place", "transom", "no front deck, so it goes on the transom", []string{"No front deck, just the transom.", "There's only the transom to clamp it to."}},
	{"mount.place", "kayak", "", []string{"Nothing but the kayak: no deck plate, no transom."}},
	{"mount.height", "", "the mount surface is {v} above the water", []string{"I put a tape on it: {v} down to the water.", "{v}, from where it mounts to the water."}},
	{"mount.kind", "", "a {t} mount", []string{"A {t} mount."}},
	{"use.style", "casting", "mostly casting the banks", []string{"We cast to the banks, mostly.", "Casting, standing up front."}},
	{"use.style", "trolling", "slow trolling", []string{"Slow trolling, all the way round.", "We troll, slow."}},
	{"use.style", "vertical-jigging", "vertical jigging", []string{"Vertical jigging, straight down over a hump.", "We sit on a spot and jig straight down."}},
	{"use.style", "drifting", "mostly drifting", []string{"We drift, and touch it up now and then.", "Drifting."}},
	{"use.style", "guiding", "I guide out of it", []string{"I guide, most days of the week.", "It's a guide boat, with clients aboard."}},
	{"use.hours", "", "{v} on the water", []string{"{v} on the water, then we're done.", "We're out {v}."}},
	{"wire.run", "", "{v} of wire from the battery to the motor", []string{"I measured along where it would lie: {v}, one way.", "{v} from the battery to the plug."}},
	{"motor.thrust", "", "the motor is {v} of thrust at {volts}", []string{"It says {v} of thrust, {volts}.", "{v}, {volts}."}},
	{"motor.voltage", "", "{v}", []string{"{v}."}},
	{"battery.count", "1", "one battery", []string{"Just the one.", "One."}},
	{"battery.count", "", "{n} batteries in series", []string{"{N} of them, in series.", "{N}, one after the other."}},
	{"battery.capacity", "", "{v} on the label", []string{"The label says {v}.", "{v}, it's printed on the side."}},
	{"battery.chemistry", "flooded", "flooded lead batteries", []string{"Plain flooded lead, the ones you top up.", "Flooded."}},
	{"battery.chemistry", "agm", "AGM batteries", []string{"AGM.", "AGM, I don't want to top up water."}},
	{"battery.chemistry", "lithium", "lithium batteries", []string{"Lithium.", "Lithium, for the weight."}},
	{"battery.chemistry", "gel", "gel batteries", []string{"Gel."}},
	{"charge.hours", "", "{v} to charge", []string{"They get {v} on the charger between trips.", "{v}, overnight."}},
	{"want.position-hold", "true", "it should hold a spot by itself", []string{"Yes, holding a spot by itself, that I want.", "I'd like it to hold position, yes."}},
	{"want.position-hold", "false", "no position hold", []string{"No, I don't need it to hold a spot."}},
	{"want.sonar-2d", "true", "I'd like sonar built in", []string{"I'd like the sonar built in. The display's new, it reads most of them.", "Sonar in the motor, yes please."}},
	{"want.sonar-2d", "false", "no sonar in the motor", []string{"No sonar in it, mine's on the transom."}},
	{"want.remote", "true", "a remote control", []string{"A remote, yes."}},
	{"money.budget", "", "I have {v} for it", []string{"I'd stop at {v}."}},
	{"load.plate", "", "the capacity plate says {v}", []string{"The plate says {v}."}},
	{"boat.material", "", "it's {t}", []string{"{T}."}},
	{"boat.beam", "", "{v} wide", []string{"{v} across."}},
	{"temperature.air", "", "{v} in the morning", []string{"It's {v}, mornings."}},
	{"use.throttle", "", "about {v} throttle", []string{"About {v} on the dial."}},
	{"boat.length", "", "{v} long", []string{"{v}, bow to transom."}},
	{"boat.hull", "", "", []string{"It's a {t}."}},
}

var numberWords = []string{"none", "one", "two", "three", "four", "five", "six", "seven", "eight"}

// talkOf finds the row of a fact: the one about its word or number, else the
// one about any.
func talkOf(f card.Fact) *talkRow {
	word := f.Text
	if f.Value != nil && f.Unit == "1" {
		word = unit.Number(*f.Value, 0)
	}
	var general *talkRow
	for i := range talkRows {
		switch r := &talkRows[i]; {
		case r.slot != f.Slot:
		case r.word == word && word != "":
			return r
		case r.word == "" && general == nil:
			general = r
		}
	}
	return general
}

// spokenUnits are how units are said.
var spokenUnits = map[string]string{"in": "inches", "lb": "pounds", "ft": "feet", "gal": "gallons", "h": "hours", "V": "volts", "Ah": "amp hours", "L": "liters", "kg": "kilos"}

// aloud is a shown value as it is said.
func aloud(shown string) string {
	number, u, ok := strings.Cut(shown, " ")
	if said, known := spokenUnits[u]; ok && known {
		if number == "1" && u != "in" {
			said = strings.TrimSuffix(said, "s")
		}
		return number + " " + said
	}
	return shown
}

// worded puts the fact's value into a template.
func worded(s *Scenario, f card.Fact, template string, sys unit.System) string {
	_, v := fit.Describe(f, sys)
	v = aloud(v)
	n := v
	if f.Value != nil && f.Unit == "1" && *f.Value >= 0 && int(*f.Value) < len(numberWords) {
		n = numberWords[int(*f.Value)]
	}
	other := ""
	if w, ok := s.Fact("motor.voltage"); ok {
		_, other = fit.Describe(w.Fact, sys)
		other = aloud(other)
	}
	return strings.NewReplacer("{v}", v, "{n}", n, "{N}", upper(n), "{t}", f.Text, "{T}", upper(f.Text), "{volts}", other).Replace(template)
}

// toldAs is the fact in a list of what there is.
func toldAs(s *Scenario, f card.Fact, sys unit.System) string {
	r := talkOf(f)
	if r == nil || r.told == "" {
		return ""
	}
	return worded(s, f, r.told, sys)
}

// replyTo is the customer's answer to a question about a fact.
func replyTo(s *Scenario, f Fact, sys unit.System) string {
	if f.Reply != "" {
		return f.Reply
	}
	r := talkOf(f.Fact)
	if r == nil {
		label, v := fit.Describe(f.Fact, sys)
		return fmt.Sprintf("%s: %s.", label, v)
	}
	c := chance{mixed(s.Seed, uint64(len(f.Slot)))}
	text := upper(worded(s, f.Fact, pick(&c, r.reply), sys))
	if f.Slot == "boat.hull" && s.Boat != "" {
		text = "It's " + article(s.Boat) + "."
	}
	if f.Told && !f.Scored {
		return strings.ReplaceAll(voices[s.Voice].again, "{v}", text)
	}
	return text
}

// idle is talk beside the point, with numbers that are nobody's business.
var idleRows = []string{
	"It's a 2009, I'm the second owner.",
	"The trailer needs tires, but that's another story.",
	"My neighbor paid $2,400 for his, which is crazy.",
	"My cousin's boat is 22 feet and he swears by his.",
	"There's a 2016 four-stroke on the back.",
	"We're after perch, and the odd pike.",
	"My phone number ends in 4417, if you need to call.",
	"We launch at 5 in the morning, before anyone's up.",
	"The dog comes along, but she weighs nothing.",
	"I've read so much about it online that I'm none the wiser.",
	"My wife says it's the last thing I buy this year.",
	"The old one lasted eleven years.",
}

func (m *maker) idle() string {
	if len(m.kind.Engine) == 0 {
		return pick(&m.c, []string{idleRows[2], idleRows[3], idleRows[5], idleRows[6], idleRows[7], idleRows[9], idleRows[10]})
	}
	return pick(&m.c, idleRows)
}
