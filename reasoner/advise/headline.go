package advise

import (
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
)

// A verdictRow judges a value that the customer named against what the sheet
// computed.
type verdictRow struct {
	name   string
	topics []string
	slot   string // what was named
	needs  []sheet.ID
	say    func(in In) string
}

// tightBy is how much shorter than the computed need a shaft may be and still
// do: the need already holds its allowances (trade practice).
var tightBy = unit.Inches(1.5)

var verdictRows = []verdictRow{
	{"is the thrust enough", []string{"fit", "thrust"}, "motor.thrust", []sheet.ID{sheet.MotorThrust, sheet.ThrustNeed}, thrustVerdict},
	{"is the shaft long enough", []string{"shaft"}, "motor.shaft", []sheet.ID{sheet.MotorShaft, sheet.ShaftNeed}, shaftVerdict},
	{"does it hold in that stream", []string{"hold"}, "current.speed", []sheet.ID{sheet.CurrentSpeed, sheet.HoldCurrent}, holdVerdict(sheet.CurrentSpeed, sheet.HoldCurrent, "a stream")},
	{"does it hold in that wind", []string{"hold"}, "wind.speed", []sheet.ID{sheet.WindSpeed, sheet.HoldWind}, holdVerdict(sheet.WindSpeed, sheet.HoldWind, "a wind")},
	{"how long on that charger", []string{"charger"}, "charger.current", []sheet.ID{sheet.ChargerSaid, sheet.ChargeTime}, func(in In) string {
		return in.fill("About {charge.time} with {charger.current-said} for each battery.")
	}},
	{"does the gauge do", []string{"wire", "breaker"}, "wire.gauge", []sheet.ID{sheet.WireGaugeSaid, sheet.WireAmpacity}, gaugeVerdict},
}

func thrustVerdict(in In) string {
	named, need := in.Sol.Value(sheet.MotorThrust), in.Sol.Value(sheet.ThrustNeed)
	switch class, ok := in.num(sheet.ThrustClass); {
	case named >= need && ok && named > class*1.3:
		return in.fill("{motor.thrust} is more than this boat needs: {thrust.need} asks for the {thrust.class} class.")
	case named >= need:
		return in.fill("{motor.thrust} is enough: the need is {thrust.need}.")
	case ok:
		return in.fill("{motor.thrust} is too small: the need is {thrust.need}, so take {thrust.class}.")
	}
	return in.fill("{motor.thrust} is too small: the need is {thrust.need}.")
}

func shaftVerdict(in In) string {
	named, need := in.Sol.Value(sheet.MotorShaft), in.Sol.Value(sheet.ShaftNeed)
	switch {
	case named > need+unit.Inches(11.9).Metres():
		return in.fill("{motor.shaft} is longer than it must be: it works, and is in the way. The need is {shaft.need}.")
	case named >= need:
		return in.fill("{motor.shaft} is long enough: the need is {shaft.need}.")
	case named >= need-tightBy.Metres():
		return in.fill("{motor.shaft} is tight: the need with its allowances is {shaft.need}. It will do in calm water.")
	}
	return in.fill("{motor.shaft} is too short: the need is {shaft.need}, so take {shaft.class}.")
}

// holdVerdict holds the wind or stream that was said against what full throttle
// holds.
func holdVerdict(said, holds sheet.ID, what string) func(In) string {
	return func(in In) string {
		it := "{" + said.String() + "}"
		most := "full throttle holds in " + what + " of about {" + holds.String() + "}"
		switch ratio := in.Sol.Value(said) / max(in.Sol.Value(holds), 1e-9); {
		case ratio > 1:
			return in.fill("No: " + it + " is more than it holds; " + most + ".")
		case ratio > 0.8:
			return in.fill("Only just: " + it + "; " + most + ".")
		}
		return in.fill("Yes, in " + it + ": " + most + ".")
	}
}

func gaugeVerdict(in In) string {
	amps, knowsAmps := in.num(sheet.MotorCurrent)
	carry := in.Sol.Value(sheet.WireAmpacity)
	if knowsAmps && carry < amps {
		return in.fill("No: {wire.gauge-said} may carry {wire.ampacity}, and the motor draws {motor.current}. Take {wire.gauge}.")
	}
	drop, knowsDrop := in.num(sheet.WireDrop)
	if !knowsDrop {
		return in.fill("{wire.gauge-said} may carry {wire.ampacity}.")
	}
	target, ok := in.num(sheet.WireDropTarget)
	if !ok {
		target = 0.05
	}
	switch {
	case drop <= target:
		return in.fill("Yes: {wire.gauge-said} drops {wire.drop} and may carry {wire.ampacity}.")
	case drop <= 0.10:
		return in.fill("{wire.gauge-said} works but drops {wire.drop}, which costs {wire.thrust-loss} of the thrust; {wire.gauge} keeps within the target.")
	}
	return in.fill("{wire.gauge-said} drops {wire.drop}: too much. Take {wire.gauge}.")
}

// A headRow is the first sentence of a topic when nothing was named to judge.
type headRow struct {
	topic string
	needs []sheet.ID
	text  string
}

var headRows = []headRow{
	{"thrust", []sheet.ID{sheet.ThrustClass, sheet.SystemVoltage}, "It needs {thrust.need} of thrust: the {thrust.class} class, {system.voltage}."},
	{"thrust", []sheet.ID{sheet.ThrustNeed}, "It needs {thrust.need} of thrust."},
	{"voltage", []sheet.ID{sheet.SystemVoltage, sheet.ThrustClass}, "{system.voltage} does it: {thrust.need} of thrust needed, {bank.count} in the bank."},
	{"voltage", []sheet.ID{sheet.SystemVoltage, sheet.BankCount}, "{system.voltage} takes {bank.count} batteries of 12 V."},
	{"shaft", []sheet.ID{sheet.ShaftClass}, "A {shaft.class} shaft: the need is {shaft.need}."},
	{"runtime", []sheet.ID{sheet.RuntimeCruise, sheet.CruiseCurrent}, "About {runtime.cruise} at {cruise.current}."},
	{"runtime", []sheet.ID{sheet.RuntimeFull}, "About {runtime.full} at full throttle."},
	{"bank", []sheet.ID{sheet.BankCount, sheet.BankCapacity}, "{system.voltage}: {bank.count} x {battery.voltage}, {bank.capacity} in the bank, {bank.weight}."},
	{"bank", []sheet.ID{sheet.BankCount}, "{bank.count} batteries."},
	{"wire", []sheet.ID{sheet.WireGauge, sheet.BreakerRating}, "{wire.gauge} wire and a {breaker.rating} breaker for {motor.current} over {wire.run}."},
	{"wire", []sheet.ID{sheet.WireGauge}, "{wire.gauge} wire."},
	{"wire", []sheet.ID{sheet.WireAmpacity}, "That wire may carry {wire.ampacity}."},
	{"breaker", []sheet.ID{sheet.BreakerRating}, "A {breaker.rating} breaker for {motor.current}."},
	{"breaker", []sheet.ID{sheet.BreakerDistance}, "Within {breaker.distance} of the battery, measured along the wire."},
	{"charger", []sheet.ID{sheet.ChargerCurrent}, "{charger.current} for each battery."},
	{"charger", []sheet.ID{sheet.ChargeTime}, "About {charge.time} on the charger."},
	{"hold in a stream", []sheet.ID{sheet.HoldCurrent}, "It holds in a stream of about {hold.current} at full throttle."},
	{"hold", []sheet.ID{sheet.HoldWind}, "It holds in a wind of about {hold.wind} at full throttle."},
	{"speed", []sheet.ID{sheet.SpeedTop}, "About {speed.top} flat out."},
	{"capacity", []sheet.ID{sheet.LoadMargin}, ""},
	{"weight", []sheet.ID{sheet.BankWeight}, "The bank weighs about {bank.weight}."},
	{"weight", []sheet.ID{sheet.LoadTotal}, "About {load.total} loaded."},
}

// Headline is the first sentence: a verdict on what was named, the pick, or the
// figure asked for; "" when nothing was computed.
func Headline(in In) string {
	if in.Sol == nil {
		return ""
	}
	var out []string
	for _, r := range verdictRows {
		if in.asks(r.topics...) && in.has(r.slot) && in.knows(r.needs) && (slices.Contains(in.Judge, r.slot) || !in.asks("fit")) {
			out = append(out, r.say(in))
		}
	}
	if in.asks("fit") {
		if pick := fitting(in); pick != "" {
			out = append(out, pick)
		}
	}
	for _, t := range in.Topics {
		if t == "fit" || len(out) > 0 && judged(in, t) || in.asks("fit") {
			continue
		}
		if t == "capacity" && in.knows([]sheet.ID{sheet.LoadMargin}) {
			out = append(out, margin(in))
			continue
		}
		if t == "hold" && (in.mentions("current") || in.told(sheet.CurrentSpeed) && !in.told(sheet.WindSpeed)) {
			t = "hold in a stream"
		}
		for _, r := range headRows {
			if r.topic == t && in.knows(r.needs) {
				out = append(out, in.fill(r.text))
				break
			}
		}
	}
	if len(out) > 2 {
		out = out[:2]
	}
	if in.asks("fit", "thrust") {
		if r := route(in); r != "" {
			out = append(out, r)
		}
	}
	return strings.Join(out, " ")
}

// raisedRows say, in the order of the weight that practice gives them, why the
// rule of thumb was raised.
var raisedRows = []struct {
	when func(in In) bool
	why  string
}{
	{func(in In) bool { return in.hull("pontoon") }, "for a pontoon"},
	{func(in In) bool { return in.told(sheet.ChopHeight) }, "in waves"},
	{func(in In) bool { return in.told(sheet.CurrentSpeed) }, "in a stream"},
	{func(in In) bool { return in.wants("water.weeds") }, "in weeds"},
	{always, "in wind"},
}

// route says which of the two routes to the thrust governs, and what the other
// asks for.
func route(in In) string {
	if !in.knows([]sheet.ID{sheet.ThrustNeed, sheet.ThrustRule, sheet.ThrustBalance}) {
		return ""
	}
	need, rule := in.Sol.Value(sheet.ThrustNeed), in.Sol.Value(sheet.ThrustRule)
	forces := ""
	if in.told(sheet.WindSpeed) || in.told(sheet.CurrentSpeed) || in.told(sheet.ChopHeight) {
		forces = "; the forces of wind and water ask for {thrust.balance}"
	}
	switch {
	case in.over(sheet.ThrustClass, need*1.5):
		return in.fill("The smallest motors have thrust to spare: the need is {thrust.need}.")
	case need > rule && need <= in.Sol.Value(sheet.ThrustBalance):
		return in.fill("Wind and water decide: {thrust.balance}, against {thrust.rule} by weight.")
	case need > rule && need < in.Sol.Value(sheet.ThrustRatioRaised)*unit.Mass(in.Sol.Value(sheet.LoadTotal)).Weight().Newtons()*0.999:
		return in.fill("{thrust.ratio-raised} would ask for more than the largest single motor; the plain rule asks for {thrust.rule}" + forces + ".")
	case need > rule:
		for _, r := range raisedRows {
			if r.when(in) {
				return in.fill("{thrust.ratio-raised} " + r.why + " decides" + forces + ".")
			}
		}
	}
	return in.fill("The weight decides, {thrust.ratio}" + forces + ".")
}

// judged reports whether a verdict already answers the topic.
func judged(in In, topic string) bool {
	for _, r := range verdictRows {
		if slices.Contains(r.topics, topic) && in.has(r.slot) && in.knows(r.needs) {
			return true
		}
	}
	return false
}

// knows reports whether all cells are known and, where they are figures, shown:
// a headline tells nothing that the figures do not.
func (in In) knows(ids []sheet.ID) bool {
	for _, id := range ids {
		if !in.Sol.Has(id) || in.Shown != nil && id.Describe().Figure && !slices.Contains(in.Shown, id) {
			return false
		}
	}
	return true
}

func margin(in In) string {
	if in.over(sheet.LoadMargin, 0) {
		return in.fill("Under the plate, with {load.margin} left after motor and batteries.")
	}
	over := unit.Show(-in.Sol.Value(sheet.LoadMargin), unit.Weight, in.Sys)
	return "Over the plate by " + over + " with motor and batteries counted in."
}

// fitting is the pick of a full fitting in one sentence.
func fitting(in In) string {
	if !in.Sol.Has(sheet.ThrustClass) {
		return ""
	}
	text := "Fit a {system.voltage} " + mountWords(in) + " of {thrust.class} thrust"
	if in.Sol.Has(sheet.ShaftClass) {
		text += " on a {shaft.class} shaft"
	}
	var rest []string
	if in.Sol.Has(sheet.BankCount) && in.Sol.Has(sheet.BankCapacity) {
		rest = append(rest, "{bank.count} x {battery.voltage} "+chemistryWord(in)+", {bank.capacity}")
	}
	if in.Sol.Has(sheet.WireGauge) {
		rest = append(rest, "{wire.gauge} wire")
	}
	if in.Sol.Has(sheet.BreakerRating) {
		rest = append(rest, "{breaker.rating} breaker")
	}
	if len(rest) > 0 {
		text += "; " + strings.Join(rest, ", ")
	}
	return in.fill(text + ".")
}

// chemistryWord is the batteries' kind as it is written on a label.
func chemistryWord(in In) string {
	switch w := in.word(sheet.BatteryChemistry); w {
	case "agm":
		return "AGM"
	case "":
		return "deep-cycle"
	default:
		return w
	}
}

func mountWords(in In) string {
	switch {
	case in.hull("kayak"):
		return "motor"
	case in.transom() || in.hull("canoe", "inflatable", "sailboat"):
		return "transom motor"
	}
	return "bow motor"
}
