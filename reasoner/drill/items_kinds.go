package drill

import (
	"slices"
	"strings"

	"heronlake.example/ask/reasoner/answer"
)

// choice is one of the answer's picks.
func (m *marker) choice(id string) (answer.Choice, bool) {
	i := slices.IndexFunc(m.full.Choices, func(c answer.Choice) bool { return c.ID == id })
	if i < 0 {
		return answer.Choice{}, false
	}
	c := m.full.Choices[i]
	c.Why = retold.Replace(c.Why)
	return c, true
}

// retold puts what an answer says to a customer into words about one.
var retold = strings.NewReplacer("as you said", "as the customer said", "you asked for", "the customer asked for",
	"nobody spoke of wind, stream or fishing straight down", "neither wind nor stream nor the way of fishing asks for it")

// byChoice judges a kind: the pick itself is right, and what the answer says
// would do instead is acceptable.
func (m *marker) byChoice(id string, named []string) judged {
	c, ok := m.choice(id)
	if !ok {
		return judged{acceptable, "", "either will do here"}
	}
	pick, instead := corrected(c.Pick), corrected(c.Instead)
	switch {
	case says(pick, named):
		return judged{right, c.Pick, c.Why}
	case says(instead, named):
		return judged{acceptable, c.Pick, c.Why + "; " + c.Instead}
	}
	return judged{wrong, c.Pick, c.Why}
}

// mountKinds lead from what was named to the place that it means.
var mountKinds = map[string]string{"clamp": "transom", "bracket": "kayak", "folding-arm": "bow", "compact-pivot": "bow"}

func (m *marker) mountNamed() string {
	if f, ok := m.h.card.Get("mount.place"); ok {
		return f.Text
	}
	if f, ok := m.h.card.Get("mount.kind"); ok {
		return mountKinds[f.Text]
	}
	return ""
}

func saidMount(m *marker) string {
	return map[string]string{"bow": "bow mount", "transom": "transom mount", "kayak": "kayak bracket"}[m.mountNamed()]
}

func judgeMount(m *marker) judged {
	words := map[string][]string{"bow": {"bow mount"}, "transom": {"transom", "clamp"}, "kayak": {"bracket", "kayak bracket"}}[m.mountNamed()]
	if c, _ := m.choice("mount"); m.mountNamed() == "transom" && says(corrected(c.Pick), []string{"bracket"}) && m.s.word("boat.hull") == "kayak" {
		return judged{wrong, c.Pick, c.Why}
	}
	return m.byChoice("mount", words)
}

func (m *marker) controlNamed() (shown string, words []string) {
	f, ok := m.h.card.Get("motor.control")
	remote, wished := m.h.card.Get("want.remote")
	switch {
	case ok && f.Text == "tiller":
		return "tiller", []string{"tiller"}
	case wished && remote.Text == "true" || ok && f.Text == "remote":
		return "remote", []string{"remote", "handheld remote"}
	case ok && f.Text == "foot-electric":
		return "electric steer", []string{"electric steer"}
	case ok && says(m.words, []string{"cable"}):
		return "foot pedal, cable steer", []string{"cable steer", "cable"}
	case ok || says(m.words, []string{"pedal", "foot control", "foot steer"}):
		return "foot pedal", []string{"foot pedal"}
	case says(m.words, []string{"rudder"}):
		return "rudder lines", []string{"rudder lines"}
	}
	return "", nil
}

func saidControl(m *marker) string { s, _ := m.controlNamed(); return s }

func judgeControl(m *marker) judged {
	shown, words := m.controlNamed()
	j := m.byChoice("control", words)
	if j.verdict != wrong || m.s.word("want.position-hold") == "true" || rank(judgeMount(m).verdict) > 2 {
		return j
	}
	// What goes with a mount that will do, will do as well: a mistake counts once.
	if stern := m.mountNamed() == "transom"; m.s.word("mount.place") == "" && m.mountNamed() != "" && stern == (shown == "tiller") {
		j.verdict, j.why = acceptable, "it goes with the mount that was named; "+j.why
	}
	return j
}

func saidVersion(m *marker) string {
	switch {
	case says(m.words, []string{"saltwater", "salt", "marine", "marine version"}) && !denied(m.words, "salt|saltwater|marine"):
		return "saltwater version"
	case says(m.words, []string{"freshwater", "fresh water", "fresh", "plain", "standard", "ordinary", "regular", "normal", "basic"}):
		return "freshwater version"
	}
	return ""
}

func judgeVersion(m *marker) judged {
	salt := salty(m.s)
	c, _ := m.choice("water")
	named := saidVersion(m) == "saltwater version"
	switch {
	case named == salt:
		return judged{right, c.Pick, c.Why}
	case salt:
		return judged{tooLittle, c.Pick, c.Why}
	}
	return judged{tooMuch, c.Pick, c.Why + ": the dearer version buys nothing here"}
}

// anodeKinds are the metals of an anode.
var anodeKinds = []struct{ kind, words string }{{"zinc", "zinc|zincs"}, {"aluminum", "aluminum|aluminium"}, {"magnesium", "magnesium|mag"}}

func saidAnode(m *marker) string {
	for _, k := range anodeKinds {
		if fits(k.words, m.words) {
			if denied(m.words, k.words) {
				return "no anode"
			}
			return k.kind + " anode"
		}
	}
	switch {
	case denied(m.words, "anode|anodes"):
		return "no anode"
	case fits("anode|anodes", m.words):
		return "an anode"
	}
	return ""
}

// deniedWithin is how many words may stand between a refusal and what it
// refuses: "don't bother with an anode".
const deniedWithin = 4

// denied reports whether a word follows a refusal in its own sentence, or is
// refused behind it ("the anode you can skip").
func denied(said []string, words string) bool {
	for i, w := range said {
		if !fits(words, []string{w}) {
			continue
		}
		for k := i - 1; k >= max(0, i-1-deniedWithin) && said[k] != ""; k-- {
			if denials[said[k]] {
				return true
			}
		}
		for k := i + 1; k < min(len(said), i+1+deniedWithin) && said[k] != ""; k++ {
			if afterDenials[said[k]] {
				return true
			}
		}
	}
	return false
}

var (
	denials      = set("no", "not", "dont", "without", "skip", "never", "neither", "nor", "leave", "forget", "wont")
	afterDenials = set("not", "unnecessary", "needless", "skip", "isnt")
)

func judgeAnode(m *marker) judged {
	named := saidAnode(m)
	if salty(m.s) {
		why := "zinc or aluminum alloy dissolves in place of the motor; magnesium is for fresh water only"
		switch named {
		case "no anode":
			return judged{tooLittle, "zinc or aluminum", why}
		case "magnesium anode":
			return judged{wrong, "zinc or aluminum", why}
		case "an anode":
			return judged{acceptable, "zinc or aluminum", why}
		}
		return judged{right, "zinc or aluminum", why}
	}
	why := "in fresh water little corrodes: no anode, or magnesium on a boat that stays in"
	switch named {
	case "no anode", "magnesium anode":
		return judged{right, "none, or magnesium", why}
	}
	return judged{acceptable, "none, or magnesium", why}
}

// saidWish shows whether a function was offered or left out.
func saidWish(slots ...string) func(m *marker) string {
	return func(m *marker) string {
		for _, slot := range slots {
			if f, ok := m.h.card.Get(slot); ok && f.Text != "" {
				return map[string]string{"true": "yes", "false": "no"}[f.Text]
			}
		}
		return ""
	}
}

func judgeHold(m *marker) judged {
	c, _ := m.choice("position-hold")
	yes := saidWish("want.position-hold")(m) == "yes"
	worth := says(corrected(c.Pick), []string{"with position hold", "worth its price"})
	asked := m.s.word("want.position-hold") == "true"
	switch {
	case yes == worth:
		return judged{right, c.Pick, c.Why}
	case yes:
		return judged{tooMuch, c.Pick, c.Why + ": money for a function that is not used"}
	case asked:
		return judged{tooLittle, c.Pick, c.Why}
	}
	return judged{acceptable, c.Pick, c.Why + "; " + c.Instead}
}

// saidSonar shows whether sonar was offered; "no transducer" leaves it out.
func saidSonar(m *marker) string {
	if t := saidWish("want.sonar-2d", "want.sonar-down", "want.sonar-side")(m); t != "" {
		return t
	}
	if denied(m.words, "sonar|transducer|imaging") {
		return "no"
	}
	return ""
}

func judgeSonar(m *marker) judged {
	c, _ := m.choice("sonar")
	yes := saidSonar(m) == "yes"
	wished := m.s.word("want.sonar-2d") == "true"
	switch {
	case yes == wished:
		return judged{right, c.Pick, c.Why}
	case yes:
		return judged{tooMuch, c.Pick, c.Why}
	}
	return judged{tooLittle, c.Pick, c.Why}
}

func saidSupply(m *marker) string {
	switch {
	case says(m.words, []string{"own battery", "separate battery", "small battery", "its own", "second battery", "dedicated battery", "another battery", "own supply", "separate supply", "separate"}):
		return "its own battery"
	case says(m.words, []string{"cranking battery", "starting battery", "house battery", "engine battery", "starter battery"}):
		return "the cranking battery"
	case says(m.words, []string{"motor battery", "motors battery", "trolling battery", "trolling batteries", "same battery", "motor bank", "tap"}):
		return "the motor's bank"
	}
	return ""
}

func judgeSupply(m *marker) judged {
	why := "volts sag with every burst of throttle, and a series bank goes out of balance"
	if saidSupply(m) == "the motor's bank" {
		return judged{wrong, "a battery of its own, or the cranking battery", why}
	}
	return judged{right, "a battery of its own, or the cranking battery", why}
}

func saidCause(m *marker) string {
	for _, list := range [][]string{m.s.Fault.causes, m.s.Fault.near} {
		for _, w := range list {
			if says(m.words, []string{w}) {
				return w
			}
		}
	}
	for i := range faultRows {
		for _, w := range faultRows[i].causes {
			if says(m.words, []string{w}) {
				return w
			}
		}
	}
	return ""
}

func judgeCause(m *marker) judged {
	f := m.s.Fault
	switch {
	case says(m.words, f.causes):
		return judged{right, f.cause, f.because}
	case says(m.words, f.near):
		return judged{acceptable, f.cause, "the right corner: " + f.because}
	}
	return judged{wrong, f.cause, f.because}
}
