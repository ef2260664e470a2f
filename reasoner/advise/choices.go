package advise

import (
	"cmp"
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/reasoner/answer"
)

// A choiceRow picks one kind. The first row of a choice whose condition holds
// gives it; texts may hold {cells}.
type choiceRow struct {
	name    string
	id      string
	when    func(in In) bool
	pick    string
	why     string
	instead string
}

func always(In) bool { return true }

var choiceRows = []choiceRow{
	// Where and how it mounts.
	{"mount on a kayak", "mount", func(in In) bool { return in.hull("kayak") || in.said("mount.place") == "kayak" },
		"kayak bracket", "a kayak has no deck plate or transom for a clamp; a bracket puts the control within reach", "a stern bracket with the rudder lines if you want both hands free"},
	{"mount on the transom as said", "mount", func(in In) bool { return in.said("mount.place") == "transom" },
		"transom", "as you said: a clamp, on and off without tools", "bow mount if there is a front deck and you fish facing forward: it pulls the boat straight"},
	{"mount on the bow as said", "mount", func(in In) bool { return in.said("mount.place") == "bow" },
		"bow mount", "as you said: it pulls the boat, which tracks straighter than pushing", "transom clamp if the deck is too soft or short for a base plate"},
	{"mount on a canoe", "mount", func(in In) bool { return in.hull("canoe") },
		"transom clamp at the stern", "a clamp near the middle of the stern keeps the canoe upright; one out on the side can tip it", "a side bracket only with the smallest motor"},
	{"mount on an inflatable", "mount", func(in In) bool { return in.hull("inflatable") },
		"transom clamp", "there is no front deck to bolt to, and the transom board takes the clamp", ""},
	{"mount on a sailboat", "mount", func(in In) bool { return in.hull("sailboat") },
		"transom clamp or stern bracket", "there is no clear front deck, and the motor is wanted in and out of the slip only", ""},
	{"mount on a small boat", "mount", func(in In) bool { return in.transom() },
		"transom clamp", "a boat of this kind seldom has a front deck, and the clamp moves from boat to boat", "bow mount if it has a solid front deck and you cast from it"},
	{"mount where it gets rough", "mount", func(in In) bool { return in.windy() || in.told(sheet.ChopHeight) },
		"bow mount, folding arm", "it pulls from the front deck, and the arm takes rough water better", "compact pivot where the deck is short, the water calmer; transom if there is no front deck"},
	{"mount on the bow", "mount", func(in In) bool { return in.word(sheet.BoatHull) != "" || in.has("boat.length") },
		"bow mount", "it pulls from the front deck and tracks straighter than pushing", "transom clamp if there is no front deck, or for a rented boat"},

	// How it is steered.
	{"control as said", "control", func(in In) bool { return in.has("motor.control") && !in.steersItself() },
		"{motor.control}", "as you said", ""},
	{"control by remote wished, astern", "control", func(in In) bool { return in.wants("want.remote") && in.astern() },
		"electric steer with handheld remote", "you asked for the remote; it needs a motor that steers itself", "tiller: cheaper, lighter, and no idle draw"},
	{"control by remote wished", "control", func(in In) bool { return in.wants("want.remote") },
		"electric steer with handheld remote", "you asked for the remote; it needs a motor that steers itself", "foot pedal with cable if the price counts more"},
	{"control for holding and tracks, astern", "control", func(in In) bool { return in.steersItself() && in.astern() },
		"electric steer with handheld remote", "holding a spot or a heading needs a motor that can steer itself; a tiller cannot", "tiller and a small anchor, far cheaper, if holding is only a wish"},
	{"control for holding and tracks", "control", func(in In) bool { return in.steersItself() },
		"electric steer, foot pedal or remote", "holding a spot or a heading needs a motor that can steer itself; cable steer and tiller cannot", ""},
	{"control at the transom", "control", func(in In) bool {
		return in.transom() || in.hull("canoe", "inflatable", "sailboat") || in.word(sheet.MountKind) == "clamp"
	}, "tiller", "one hand at the stern, the cheapest, and it has reverse", "remote on a bow mount if you want both hands free"},
	{"control on a kayak", "control", func(in In) bool { return in.hull("kayak") },
		"tiller, or rudder lines with a hand throttle", "within reach of the seat, simple, light", "remote if both hands fish"},
	{"control for a crew", "control", func(in In) bool {
		return (in.over(sheet.PeopleCount, 2.5) && in.told(sheet.PeopleCount) || in.said("use.style") == "guiding") && !in.refuses("want.position-hold")
	}, "electric steer with handheld remote", "whoever is free can steer, from anywhere aboard", "foot pedal if one person runs the bow"},
	{"control where holding pays", "control", func(in In) bool { return in.holdingPays() && !in.refuses("want.position-hold") },
		"electric steer, foot pedal or remote", "position hold, worth its price here, needs a motor that steers itself", "foot pedal with cable, cheaper and quicker, if you do without holding"},
	{"control for casting", "control", always,
		"foot pedal, cable steer", "both hands free to cast, and the quickest feel", "electric steer with remote for position hold, or when several people steer"},

	// Speed control.
	{"speed control as said", "speed-control", func(in In) bool { return in.said("motor.speeds") == "variable" },
		"continuously variable", "as you said: at part throttle it draws well under what a five-speed does", ""},
	{"five-speed as said", "speed-control", func(in In) bool { return in.said("motor.speeds") == "fixed" },
		"five-speed", "as you said: cheaper, and it wastes nothing at full", "variable if you mostly run below full: it can double the hours"},
	{"five-speed for a small purse", "speed-control", func(in In) bool {
		m, ok := in.num(sheet.MoneyBudget)
		return ok && m <= 350 || in.hull("canoe", "inflatable") && !in.over(sheet.UseHours, 3)
	}, "five-speed", "short trips and a small budget: the switch costs less", "variable if you run for hours below full"},
	{"variable by default", "speed-control", always,
		"continuously variable", "most running is below full throttle, where a five-speed wastes power", "five-speed does for an hour or two, or if you run at full anyway"},

	// Motor kind.
	{"drive as said", "drive", func(in In) bool { return in.has("motor.drive") },
		"{motor.drive}", "as you said", ""},
	{"brushless for long days", "drive", func(in In) bool {
		return in.told(sheet.UseHours) && in.over(sheet.UseHours, 7.5) || in.said("use.style") == "guiding"
	}, "brushless, if the budget allows", "long days: it draws about a tenth less, runs cooler, and has no brushes to wear", "brushed if the price decides; the figures here are for brushed"},
	{"brushed by default", "drive", always,
		"brushed", "same thrust for less money; enough for a few hours a day", "brushless for long days, quiet shallow water, or where weight counts"},

	// Water.
	{"saltwater version", "water", func(in In) bool { return in.salt() },
		"saltwater version with an anode", "a freshwater motor corrodes in salt or brackish water", ""},
	{"freshwater version", "water", func(in In) bool { return in.said("water.kind") == "fresh" },
		"freshwater version", "fresh water only, as you said", "saltwater version if it ever sees salt or brackish water"},
	{"freshwater unless told", "water", always,
		"freshwater version", "nobody spoke of salt", "saltwater version if it ever sees salt or brackish water"},

	// Sonar.
	{"sonar wished", "sonar", func(in In) bool {
		return in.wants("want.sonar-2d") || in.wants("want.sonar-down") || in.wants("want.sonar-side")
	}, "transducer in the lower unit", "you asked for it: it looks where the motor points", "check first that your display works with it: some work with one kind only"},
	{"sonar left out", "sonar", always,
		"none built in", "a transducer on its own bracket works with any display you have", "built in if you fish straight below the bow and your display fits it"},

	// Position hold.
	{"position hold wished", "position-hold", func(in In) bool { return in.wants("want.position-hold") },
		"with position hold", "you asked for it: it keeps the boat on a spot while it has thrust and battery", "without it on small sheltered water"},
	{"position hold refused", "position-hold", func(in In) bool { return in.refuses("want.position-hold") },
		"without position hold", "as you said; the money stays for the battery", ""},
	{"position hold astern", "position-hold", func(in In) bool { return in.holdingPays() && in.astern() },
		"left out", "it needs a motor that steers itself, and few are made for this mount; an anchor or a drift sock does", "take it on a bow mount if staying on the spot matters most"},
	{"position hold against the steering said", "position-hold", func(in In) bool {
		return in.holdingPays() && slices.Contains([]string{"tiller", "foot-cable"}, in.said("motor.control"))
	}, "left out", "the steering you named cannot hold a spot; an anchor does", "electric steer if holding in wind or stream matters more"},
	{"position hold for jigging", "position-hold", func(in In) bool { return in.said("use.style") == "vertical-jigging" },
		"worth its price", "straight-down fishing needs the boat to stay put", "an anchor, where the water is shallow and you seldom move"},
	{"position hold for wind or stream", "position-hold", func(in In) bool { return in.holdingPays() },
		"worth its price", "in this wind or stream it holds the boat while you fish", "leave it out if you mostly drift or troll"},
	{"position hold left out", "position-hold", always,
		"not needed", "nobody spoke of wind, stream or fishing straight down: a pedal or an anchor does", "take it for any of these"},
}

// controlNames are the kinds of steering as they are spoken of.
var controlNames = map[string]string{
	"foot-cable": "foot pedal, cable steer", "foot-electric": "foot pedal, electric steer", "remote": "electric steer with handheld remote",
}

// controlWords puts the contract's words of a pick, several of them parted by bars,
// into words.
func controlWords(pick string) string {
	kinds := strings.Split(pick, "|")
	for i, k := range kinds {
		kinds[i] = cmp.Or(controlNames[k], k)
	}
	return strings.Join(kinds, " or ")
}

// choiceOrder is the order in which choices are told.
var choiceOrder = []string{"mount", "control", "speed-control", "drive", "water", "sonar", "position-hold"}

// overRows say which choice a comparison or a question of kind is about.
var overRows = map[string]string{
	"mount.place": "mount", "mount.kind": "mount", "motor.control": "control", "motor.speeds": "speed-control",
	"motor.drive": "drive", "water.kind": "water", "want.position-hold": "position-hold",
	"want.sonar-2d": "sonar", "want.sonar-down": "sonar", "want.sonar-side": "sonar",
}

// knowsBoat reports whether enough was said of a boat to fit a motor to it.
func (in In) knowsBoat() bool {
	return in.has("boat.hull") || in.has("boat.length") || in.has("boat.material") || in.has("load.total") || in.has("load.dry")
}

// Choices gives the picks that belong to the question: all for a full fitting,
// the one asked about otherwise.
func Choices(in In) []answer.Choice {
	asked := overRows[in.Over]
	var out, usual []answer.Choice
	for _, id := range choiceOrder {
		if !(in.asks("fit") && in.knowsBoat()) && !(in.asks("choice") && id == asked) {
			continue
		}
		i := slices.IndexFunc(choiceRows, func(r choiceRow) bool { return r.id == id && r.when(in) })
		if i < 0 {
			continue
		}
		r := choiceRows[i]
		c := answer.Choice{ID: id, Pick: controlWords(in.fill(r.pick)), Why: in.fill(r.why), Instead: in.fill(r.instead), Asked: id == asked}
		// What this boat calls for is told before what any boat gets.
		if last := i+1 == len(choiceRows) || choiceRows[i+1].id != id; last && len(out) > 1 {
			usual = append(usual, c)
		} else {
			out = append(out, c)
		}
	}
	return append(out, usual...)
}
