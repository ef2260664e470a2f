package drill

import (
	"slices"

	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/fit"
)

// commonSlots are what people know of their own boat, water and day even where
// the topic does not turn on it.
var commonSlots = set("people.count", "wind.speed", "current.speed", "chop.height", "water.weeds", "water.kind",
	"mount.place", "mount.height", "use.style", "use.hours", "wire.run", "charge.hours")

// commonTries is how many values are drawn for such a fact before the customer is
// left not knowing it.
const commonTries = 8

// common gives a fact that the scenario does not hold, drawn from the same rows.
// It is in character, and it is never one that would move an item: the marks
// rest on the scenario alone.
func (d *Drill) common(slot string) (Fact, bool) {
	for _, f := range d.aside {
		if f.Slot == slot {
			return f, true
		}
	}
	m := d.remaker(slot)
	if m == nil || factRows[slot] == nil {
		return Fact{}, false
	}
	for range commonTries {
		m.facts = append(slices.Clone(d.s.Facts), d.aside...)
		if m.fact(slot); len(m.facts) == len(d.s.Facts)+len(d.aside) {
			return Fact{}, false // this water has none of it
		}
		f := m.facts[len(m.facts)-1]
		f.Told = false
		_, f.Said = fit.Describe(f.Fact, d.opts.Units)
		if d.neutral(f) {
			d.aside = append(d.aside, f)
			return f, true
		}
	}
	return Fact{}, false
}

// remaker is the maker of the scenario with chances of its own; nil for a
// scenario that a trainer wrote, of which nothing more is known.
func (d *Drill) remaker(slot string) *maker {
	boat := boatOf(d.s.word("boat.hull"))
	water := d.water()
	if boat == nil || water == nil || !commonSlots[slot] {
		return nil
	}
	long, ok := d.s.number("boat.length")
	if !ok {
		return nil
	}
	return remake(&d.s, boat, water, long, mixed(d.s.Seed, uint64(len(slot))<<8+uint64(slot[0])))
}

// water is the row of the customer's water, nil for a written customer.
func (d *Drill) water() *waterRow {
	i := slices.IndexFunc(waterRows, func(w waterRow) bool { return w.id == d.s.Place })
	if i < 0 {
		return nil
	}
	return &waterRows[i]
}

// neutral reports whether every item comes out the same with one more fact.
func (d *Drill) neutral(f Fact) bool {
	if d.s.Fault != nil {
		return true // what decides there is a reading, not the boat
	}
	trial := d.s
	trial.Facts = append(append(slices.Clone(d.s.Facts), d.aside...), f)
	before, after := solution(&d.s), solution(&trial)
	kinds := false
	for _, it := range d.s.items() {
		if it.cell == 0 {
			kinds = true
		} else if !after.Has(it.cell) || differs(it.id, before.Value(it.cell), after.Value(it.cell)) {
			return false
		}
	}
	if !kinds {
		return true
	}
	_, a := full(d.r, &trial)
	return slices.EqualFunc(d.full.Choices, a.Choices, func(x, y answer.Choice) bool { return x.ID == y.ID && x.Pick == y.Pick })
}

// plainRows are answers to what is no fact of the scenario, in words that give no
// figure; nothing rests on them.
var plainRows = []struct {
	slot   string
	topics []Topic // nil for all
	reply  string
}{
	{"current.speed", nil, "None: it's still water."},
	{"chop.height", nil, "Ripples, no more."},
	{"water.weeds", nil, "Hardly any."},
	{"want.position-hold", nil, "I don't need it to hold a spot."},
	{"want.sonar-2d", nil, "I'm happy with the fish finder I have."},
	{"want.remote", nil, "I don't care for a remote."},
	{"people.each", nil, "Ordinary size, all of us."},
	{"use.throttle", nil, "I couldn't put a number on it. As the fishing asks."},
	{"use.speed", nil, "Slow. I never clocked it."},
	{"money.budget", nil, "I haven't set a sum. Tell me what's right first."},
	{"load.plate", nil, "There's a plate on it somewhere. I never read it."},
	{"temperature.air", nil, "It's an unheated garage, so it gets cold in winter."},
	{"motor.control", []Topic{Weight, Thrust, Volts, Shaft, Mount, Electronics, Water, Sale}, "There's no electric on it yet, so I couldn't say."},
	{"motor.thrust", []Topic{Weight, Thrust, Volts, Shaft, Mount, Electronics, Water, Sale}, "There's no electric on it yet. That's what I'm here for."},
	{"motor.voltage", []Topic{Weight, Thrust, Volts, Shaft, Mount, Electronics, Water, Sale}, "There's no electric on it yet. That's what I'm here for."},
	{"battery.count", []Topic{Weight, Thrust, Volts, Shaft, Mount, Electronics, Water, Sale}, "None for it yet. I'd buy what you say."},
	{"battery.capacity", []Topic{Weight, Thrust, Volts, Shaft, Mount, Electronics, Water, Sale}, "None for it yet. I'd buy what you say."},
	{"battery.chemistry", []Topic{Weight, Thrust, Volts, Shaft, Mount, Electronics, Water, Sale}, "None for it yet. I'd buy what you say."},
	{"battery.count", []Topic{Wiring}, "Not bought yet."},
	{"battery.capacity", []Topic{Wiring}, "Not bought yet."},
	{"battery.chemistry", []Topic{Wiring}, "Not bought yet. Does it matter for the wire?"},
	{"battery.count", []Topic{Bank}, "None yet, that's what I'm here for."},
	{"battery.capacity", []Topic{Bank}, "None yet, that's what I'm here for."},
	{"battery.chemistry", []Topic{Bank}, "No preference. I'd buy what you say."},
	{"motor.current", nil, "I couldn't tell you. It's an ordinary one of its size."},
	{"wire.gauge", []Topic{Weight, Thrust, Volts, Shaft, Mount, Electronics, Water, Sale, Bank, Wiring}, "There's no wire in it yet."},
}

// hullStuff is what a boat of a kind is usually made of.
var hullStuff = map[string]string{"jon": "Aluminum.", "vee": "Aluminum.", "deep-vee": "Aluminum.", "pontoon": "Aluminum.", "bass": "Fiberglass.", "bay": "Fiberglass.",
	"flats": "Fiberglass.", "canoe": "Plastic, the tough kind.", "kayak": "Plastic.", "inflatable": "Fabric, with a wooden transom."}

// plain is what anyone says to a question about what is no fact of the scenario,
// "" where they would not know.
func (d *Drill) plain(slot string) string {
	if n, _ := d.s.number("people.count"); slot == "people.each" && n == 1 {
		return "Ordinary size, I'd say."
	}
	if kind, ok := typical.BoatOf(d.s.word("boat.hull")); ok && len(kind.Engine) == 0 {
		switch slot {
		case "load.engine":
			return "There's no engine on it."
		case "fuel.volume":
			return "No gas aboard, there's nothing to burn it."
		}
	}
	if slot == "boat.material" {
		return hullStuff[d.s.word("boat.hull")]
	}
	if boat := boatOf(d.s.word("boat.hull")); boat != nil && slot == "mount.place" {
		switch boat.deck {
		case 100:
			return "There's a front deck, sure."
		case 0:
			return "There's no front deck on one of these."
		}
	}
	if slot == "current.speed" || slot == "chop.height" { // where the water has them, only the scenario may say how much
		w := d.water()
		if w == nil || slot == "current.speed" && w.current[1] > 0 || slot == "chop.height" && w.chop[1] > 0 {
			return ""
		}
	}
	for _, r := range plainRows {
		if r.slot == slot && (r.topics == nil || slices.Contains(r.topics, d.s.Topic)) {
			return r.reply
		}
	}
	return ""
}
