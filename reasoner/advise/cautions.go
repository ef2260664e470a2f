package advise

import (
	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
)

// A cautionRow is a warning with the condition under which it applies. Rows
// stand in the order of what can hurt most.
type cautionRow struct {
	id   string
	when func(in In) bool
	text string
	note string
}

var cautionRows = []cautionRow{
	{"overloaded", In.overPlate,
		"This is over the capacity plate: leave people or gear ashore. The plate counts people, gear, motors and batteries.", "capacity-plate"},
	{"capacity", func(in In) bool { return in.asks("capacity") && !in.overPlate() },
		"Motor, batteries and people all count against the capacity plate; weight in the bow also lowers the freeboard there.", "capacity-plate"},
	{"people-in-the-water", func(in In) bool {
		return in.said("water.swim") == "true" || in.wants("want.position-hold") || in.mentions("position-hold", "swim") || in.quotes("people-in-the-water", "position-hold")
	}, "Position hold is no anchor: never with people in the water, and never leave the boat unattended on it. It starts the prop by itself.", "people-in-the-water"},
	{"strong-current", func(in In) bool {
		return in.told(sheet.CurrentSpeed) && in.over(sheet.CurrentSpeed, unit.MilesPerHour(2.2).MetresPerSecond())
	},
		"In a stream like this the motor is no anchor and no way home: keep the main engine ready.", "hold-in-current"},
	{"cranking-battery", func(in In) bool { return in.said("battery.use") == "cranking" },
		"A cranking battery is not made for deep discharge and soon fails: use a deep-cycle battery.", "bank-chemistry"},
	{"lithium-cold", func(in In) bool {
		return in.lithium() && (in.asks("charger") || in.freezing()) || in.quotes("charging-in-the-cold")
	}, "Never charge lithium below freezing: it ruins the cells. Let them warm up, or use batteries that block it.", "charging-in-the-cold"},
	{"charging-gas", func(in In) bool {
		return (in.asks("charger") || in.mentions("charging") || in.quotes("charging-safely")) && !in.lithium()
	},
		"Charging gives off hydrogen: vent the space, no sparks or flames, charger off before clamps come off. Acid burns eyes and skin.", "charging-safely"},
	{"lithium-protection", func(in In) bool {
		return in.lithium() && in.asks("bank", "runtime", "fit") && in.motorTold() && in.over(sheet.BankProtection, 0)
	},
		"Lithium cuts off without warning when empty; its protection must carry {bank.protection-current}, 1.25 times the motor's full current.", "lithium-banks"},
	{"lithium-protection-any", func(in In) bool {
		return in.lithium() && in.asks("bank", "runtime", "fit") && !(in.motorTold() && in.over(sheet.BankProtection, 0))
	},
		"Lithium cuts off without warning when empty; its protection must carry 1.25 times the motor's full current.", "lithium-banks"},
	{"second-set", func(in In) bool { return in.wearing() && !in.lithium() },
		"Drawn down to {battery.depth-limit} they carry the hours while new. Down to {battery.depth-long-life}, which spares them, and with age allowed for, takes {bank.need}: {bank.strings-long-life} sets, or lithium.", "bank-size"},
	{"second-set-lithium", func(in In) bool { return in.wearing() && in.lithium() },
		"They carry the hours while new. With age allowed for it takes {bank.need}: {bank.strings-long-life} sets.", "bank-size"},
	{"mixing-batteries", func(in In) bool { return in.asks("bank") && in.over(sheet.BankCount, 1.5) },
		"Batteries that are joined: same kind, size and age. In series nothing else is fed off one of them; side by side each has its fuse.", "mixing-batteries"},
	{"breaker", func(in In) bool { return in.asks("wire", "breaker") },
		"Put the breaker at the battery, and open it before hands go near the prop or the terminals.", "breaker-place"},
	{"salt", func(in In) bool { return in.salt() },
		"Salt water: rinse after every trip, watch the anode, and sleeve stainless bolts in aluminum against corrosion.", "anodes-and-corrosion"},
	{"weeds", func(in In) bool { return in.wants("water.weeds") || in.mentions("weeds") },
		"Weeds and fishing line wrap the prop: stop, open the breaker, then clear it.", "care-prop-and-line"},
	{"canoe-side", func(in In) bool { return in.hull("canoe") && in.asks("fit", "thrust", "choice") },
		"A motor clamped to a canoe's side pulls it over: keep it small, central, and low.", "hull-canoe"},
	{"electric-only", func(in In) bool { return in.said("water.rules") == "electric-only" || in.mentions("electric-only") },
		"Electric-only and no-motor waters have local rules: check them, and whether the boat must be registered.", "electric-only-waters"},
	{"lights", func(in In) bool { return in.quotes("lights-and-lookout") },
		"A boat held by its motor is under way: running lights after dark, no anchor light, and somebody on lookout.", "lights-and-lookout"},
	{"registration", func(in In) bool {
		return in.hull("canoe", "kayak", "inflatable") && in.asks("fit") || in.quotes("rules-and-licences")
	},
		"A motor makes a canoe, kayak or raft a numbered vessel in many places: check the local rules.", "rules-and-licences"},
	{"open-stern", func(in In) bool {
		return in.transom() && (in.windy() || in.told(sheet.ChopHeight)) && in.asks("fit", "hold")
	},
		"Stern-to in waves, water comes in over a low transom: turn the bow to them.", "chop-and-waves"},
	{"storm", func(in In) bool {
		return in.asks("hold") && in.over(sheet.HoldWind, unit.MilesPerHour(25).MetresPerSecond())
	},
		"Above some 25 mph (11 m/s) waves decide, not thrust: that is thrust in hand, and no leave to go out.", "weather-and-storms"},
	{"bow-heavy", func(in In) bool {
		return in.over(sheet.TrimBowSink, unit.Inches(1.5).Metres()) && in.asks("fit", "capacity")
	},
		"Motor and batteries lower the bow by about {trim.bow-sink}: keep the batteries aft if you can.", "trim-and-bow-weight"},
	{"short-shaft", func(in In) bool {
		need, ok := in.num(sheet.ShaftNeed)
		s, ok2 := in.num(sheet.MotorShaft)
		return in.asks("shaft") && ok && ok2 && s < need-unit.Inches(1).Metres()
	}, "A shaft that is too short lets the prop draw air in chop: it races, and the boat stops answering.", "ventilation-and-cavitation"},
	{"cut-off-switch", func(in In) bool {
		return in.over(sheet.ThrustClass, unit.PoundForce(114).Newtons()/in.motors()) && in.asks("fit", "thrust")
	},
		"From 115 lb of thrust in all, US law treats it like a small outboard: an engine cut-off switch may be required (46 USC 4312).", "rules-and-licences"},
	{"lithium-volts", func(in In) bool {
		return in.lithium() && in.asks("bank", "fit") && in.over(sheet.SystemVoltage, 35) && !in.over(sheet.SystemVoltage, 37)
	},
		"A full lithium bank of 36 V stands at up to 43.8 V: check in the motor's manual that it may.", "lithium-banks"},
	{"lithium-series", func(in In) bool { return in.lithium() && in.asks("bank", "fit") && in.over(sheet.BankSeries, 1.5) },
		"Lithium batteries go in series only where their maker allows it.", "lithium-banks"},
	{"cold-water", func(in In) bool { return in.freezing() || in.told(sheet.AirTemp) && !in.over(sheet.AirTemp, 10) },
		"Cold takes capacity from the battery and kills quickly in the water: wear the life jacket.", "cold-batteries"},
	{"prop", func(in In) bool { return in.asks("fault") },
		"Open the breaker before you touch prop, plug or terminals.", "people-in-the-water"},
}

// wearing reports a bank that carries the hours said, and is smaller than a long
// life asks for.
func (in In) wearing() bool {
	return in.asks("bank", "fit") && in.told(sheet.UseHours) && in.over(sheet.BankLimitNeed, 0) && in.over(sheet.BankSpareStrings, in.Sol.Value(sheet.BankStrings)+0.5)
}

// overPlate reports a load above the plate that was named.
func (in In) overPlate() bool {
	return in.told(sheet.LoadPlate) && in.has("load.plate") && in.Sol.Has(sheet.LoadMargin) && !in.over(sheet.LoadMargin, 0)
}

// MostCautions is how many an answer carries: more would not be read.
const MostCautions = 4

// Cautioned is a caution with the note it rests on.
type Cautioned struct {
	answer.Caution
	Note string
}

// Cautions lists those that apply, the gravest first.
func Cautions(in In) []Cautioned {
	var out []Cautioned
	for _, r := range cautionRows {
		if len(out) < MostCautions && r.when(in) {
			out = append(out, Cautioned{answer.Caution{ID: r.id, Text: in.fill(r.text)}, r.note})
		}
	}
	return out
}

// Notice is the standing line of every answer that holds a figure.
const Notice = "Regulations in force, makers' manuals, a qualified marine electrician decide."

// Moved marks the choices and cautions that an earlier turn did not have, and
// tells the picks that changed.
func Moved(a *answer.Answer, before In) (changes []answer.Change) {
	picks := map[string]string{}
	for _, c := range Choices(before) {
		picks[c.ID] = c.Pick
	}
	for i := range a.Choices {
		c := &a.Choices[i]
		was := picks[c.ID]
		c.Moved = was != c.Pick
		if c.Moved && was != "" {
			changes = append(changes, answer.Change{ID: c.ID, Text: choiceNames[c.ID] + " " + was + " -> " + c.Pick})
		}
	}
	old := map[string]bool{}
	for _, c := range Cautions(before) {
		old[c.ID] = true
	}
	for i := range a.Cautions {
		a.Cautions[i].Moved = !old[a.Cautions[i].ID]
	}
	return changes
}

// choiceNames are the choices as a change of one is told.
var choiceNames = map[string]string{
	"mount": "Mount", "control": "Control", "speed-control": "Speed control", "drive": "Motor kind",
	"water": "Water", "sonar": "Sonar", "position-hold": "Position hold",
}
