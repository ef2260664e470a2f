package advise

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"heronlake.example/ask/calc/shaft"
	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/typical"
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
	always bool // in a full fitting even when nobody asked: its figures are for what was named
}

var verdictRows = []verdictRow{
	{"is the thrust enough", []string{"fit", "thrust"}, "motor.thrust", []sheet.ID{sheet.MotorThrust, sheet.ThrustNeed}, thrustVerdict, true},
	{"is the shaft long enough", []string{"shaft"}, "motor.shaft", []sheet.ID{sheet.MotorShaft, sheet.ShaftNeed}, shaftVerdict, false},
	{"does it hold in that stream", []string{"hold"}, "current.speed", []sheet.ID{sheet.CurrentSpeed, sheet.HoldCurrent}, holdVerdict(sheet.CurrentSpeed, sheet.HoldCurrent, "a stream"), false},
	{"does it hold in that wind", []string{"hold"}, "wind.speed", []sheet.ID{sheet.WindSpeed, sheet.HoldWind}, holdVerdict(sheet.WindSpeed, sheet.HoldWind, "a wind"), false},
	{"may it be charged so cold", []string{"charger", "bank"}, "temperature.air", []sheet.ID{sheet.AirTemp}, chargedCold, false},
	{"how long on that charger", []string{"charger"}, "charger.current", []sheet.ID{sheet.ChargerSaid, sheet.ChargeTime}, chargeTime, false},
	{"does the gauge do", []string{"wire", "breaker"}, "wire.gauge", []sheet.ID{sheet.WireGaugeSaid, sheet.WireAmpacity}, gaugeVerdict, false},
}

// motors is how many motors of one kind were asked for, 1 unless said.
func (in In) motors() float64 {
	n, ok := in.num(sheet.MotorCount)
	if !ok {
		return 1
	}
	return math.Max(1, math.Round(n))
}

// thrustVerdict holds the motors that were named against the need. "More than
// it needs" is said only of what is above the need's whole band, and "too small"
// only of what one of the plain rule and the forces is above.
func thrustVerdict(in In) string {
	n, it := in.motors(), "{motor.thrust}"
	if n > 1 {
		it = count(n) + " x {motor.thrust}"
	}
	named, need := n*in.Sol.Value(sheet.MotorThrust), in.Sol.Value(sheet.ThrustNeed)
	class, ok := in.num(sheet.ThrustClass)
	most := in.Sol.Step(sheet.ThrustNeed).Band.High
	take := "."
	own, knowsOwn := in.num(sheet.SystemVoltage)
	switch volts := typical.ClassVolts(unit.Force(class)).Volts(); {
	case ok && n > 1:
		take = ", so take {thrust.class} each."
	case ok && knowsOwn && own < volts-1: // the figures beside it are for the motor that was named
		take = ", so take {thrust.class}, on " + unit.Show(volts, unit.Volt, in.Sys) + "."
	case ok:
		take = ", so take {thrust.class}."
	}
	switch {
	case named >= need && ok && named > n*class*1.3 && named >= most:
		return in.fill(it + " is more than this boat needs: {thrust.class} meets the need of {thrust.need}.")
	case named >= need:
		return in.fill(it + " is enough: the need is {thrust.need}.")
	case ok && in.onlyRaised(named):
		each := ""
		if n > 1 {
			each = " each"
		}
		return in.fill(it + " will just do: enough for the plain rule, {thrust.rule}, not for {thrust.ratio-raised} " + in.raisedWhy() + ", {thrust.need}. {thrust.class}" + each + " covers both.")
	}
	return in.fill(it + " is too small: the need is {thrust.need}" + take)
}

// onlyRaised reports that nothing but the raised rule of thumb asks for more
// than a thrust.
func (in In) onlyRaised(named float64) bool {
	rule, ok := in.num(sheet.ThrustRule)
	return ok && named >= rule && !in.over(sheet.ThrustBalance, named) && in.Sol.Has(sheet.ThrustRatioRaised)
}

func count(n float64) string { return strconv.FormatFloat(n, 'f', -1, 64) }

func shaftVerdict(in In) string {
	named, need := in.Sol.Value(sheet.MotorShaft), in.Sol.Value(sheet.ShaftNeed)
	if named > need+unit.Inches(11.9).Metres() {
		return in.fill("{motor.shaft} is longer than it must be: it works, and is in the way. The need is {shaft.need}.")
	}
	switch shaft.Judge(unit.Length(named), unit.Length(need)) {
	case shaft.Short:
		return in.fill("{motor.shaft} is too short: the need is {shaft.need}, so take {shaft.class}.")
	case shaft.Tight:
		if in.told(sheet.ChopHeight) {
			return in.fill("{motor.shaft} is tight: the need with its allowances is {shaft.need}. It does where the waves stay a little lower.")
		}
		return in.fill("{motor.shaft} is tight: the need with its allowances is {shaft.need}. It will do in calm water.")
	}
	return in.fill("{motor.shaft} is long enough: the need is {shaft.need}.")
}

// holdVerdict holds the wind or stream that was said against what full throttle
// holds.
func holdVerdict(said, holds sheet.ID, what string) func(In) string {
	return func(in In) string {
		it := "{" + said.String() + "}"
		most := "{motor.rating} at full throttle holds in " + what + " of about {" + holds.String() + "}"
		if holds == sheet.HoldWind && in.knows([]sheet.ID{sheet.HoldWindDay}) {
			most += ", and for hours in {hold.wind-allday}"
		}
		switch ratio := in.Sol.Value(said) / max(in.Sol.Value(holds), 1e-9); {
		case ratio > 1:
			return in.fill("No: " + it + " is more than it holds; " + most + ".")
		case ratio > 0.8:
			return in.fill("Only just: " + it + "; " + most + ".")
		}
		return in.fill("Yes, in " + it + ": " + most + ".")
	}
}

// gaugeVerdict judges a gauge by what it may carry and, where motor and run are
// known, by what it loses. A breaker on a given wire is judged by the wire.
func gaugeVerdict(in In) string {
	_, knowsAmps := in.num(sheet.WireAmps)
	knowsAmps = knowsAmps && in.motorTold()
	carry := in.Sol.Value(sheet.WireAmpacity)
	wire := "{wire.gauge-said}"
	if !in.told(sheet.WireInsulation) {
		wire += " of {wire.insulation} insulation"
	}
	if knowsAmps && in.over(sheet.WireAmps, carry) {
		return in.fill("No: {wire.gauge-said} may carry {wire.ampacity}, and the motor draws {wire.current}. Take {wire.gauge}.")
	}
	if in.asks("breaker") && !in.asks("wire") && !slices.Contains(in.Judge, "wire.gauge") {
		if knowsAmps && in.Sol.Has(sheet.BreakerRating) {
			return in.fill("A {breaker.rating} breaker for {wire.current}; {wire.gauge-said} may carry {wire.ampacity}.")
		}
		return in.fill("By the motor, and at most the {wire.ampacity} that " + wire + " may carry.")
	}
	drop, knowsDrop := in.num(sheet.WireDrop)
	if !knowsDrop || !knowsAmps || !in.told(sheet.WireRun) && !in.told(sheet.BoatLength) {
		return in.fill(wire + " may carry {wire.ampacity}, and no breaker on it may be larger; what it loses follows from motor and run.")
	}
	target, ok := in.num(sheet.WireDropTarget)
	if !ok {
		target = typical.DropTarget
	}
	switch {
	case drop <= target:
		return in.fill("Yes: {wire.gauge-said} drops {wire.drop} and may carry {wire.ampacity}.")
	case drop <= typical.DropLimit:
		return in.fill("{wire.gauge-said} works but drops {wire.drop}, which with plug and breaker costs {wire.thrust-loss} of the thrust; {wire.gauge} keeps within the target.")
	}
	return in.fill("{wire.gauge-said} drops {wire.drop}: too much. Take {wire.gauge}.")
}

// motorTold reports whether the motor's current rests on something that was
// said: the motor, its current, or a boat that asks for one.
func (in In) motorTold() bool {
	return in.told(sheet.MotorAmps) || in.told(sheet.MotorThrust) || in.told(sheet.MotorCurrent) || in.told(sheet.MotorVoltage) || in.knowsBoat()
}

// chargedCold answers whether a lithium battery may be charged at a temperature
// that was said; "" where that was not the question.
func chargedCold(in In) string {
	if !in.lithium() || in.over(sheet.AirTemp, 0) || !in.asks("charger") && !in.mentions("charging", "cold") {
		return ""
	}
	return in.fill("No: at {temperature.air} lithium must not be charged. Warm it above freezing first.")
}

// chargeTime times the charger on hand, for what it is taken to put back.
func chargeTime(in In) string {
	each := " for each battery"
	if in.Sol.Has(sheet.BankCount) && !in.over(sheet.BankCount, 1.5) {
		each = ""
	}
	return in.fill("About {charge.time} with {charger.current-said}" + each + ", to put back {charge.depth} of the charge.")
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
	{"voltage", []sheet.ID{sheet.SystemVoltage, sheet.ThrustClass}, "{system.voltage} does it: {thrust.need} of thrust needed."},
	{"voltage", []sheet.ID{sheet.SystemVoltage, sheet.BankCount}, "{system.voltage} takes {bank.count} batteries of 12 V."},
	{"bank", []sheet.ID{sheet.BankCount}, "{bank.count} batteries."},
	{"wire", []sheet.ID{sheet.WireGauge, sheet.BreakerRating}, "{wire.gauge} wire and a {breaker.rating} breaker for {wire.current} over {wire.run}."},
	{"wire", []sheet.ID{sheet.WireGauge}, "{wire.gauge} wire."},
	{"wire", []sheet.ID{sheet.WireAmpacity}, "That wire may carry {wire.ampacity}."},
	{"breaker", []sheet.ID{sheet.BreakerRating}, "A {breaker.rating} breaker for {wire.current}."},
	{"breaker", []sheet.ID{sheet.BreakerDistance}, "At the battery: within {breaker.distance-bare} along bare wire, {breaker.distance-sheathed} where the wire lies in a sheath, {breaker.distance-battery} sheathed from the battery's own terminal."},
	{"charger", []sheet.ID{sheet.ChargeTime}, "About {charge.time} on the charger."},
	{"hold in a stream", []sheet.ID{sheet.HoldCurrent}, "{motor.rating} at full throttle holds in a stream of about {hold.current}."},
	{"hold", []sheet.ID{sheet.HoldWind}, "{motor.rating} at full throttle holds in a wind of about {hold.wind}."},
	{"speed", []sheet.ID{sheet.SpeedTop}, "About {speed.top} flat out."},
	{"capacity", []sheet.ID{sheet.LoadMargin}, ""},
	{"weight", []sheet.ID{sheet.BankWeight}, "The bank weighs about {bank.weight}."},
	{"weight", []sheet.ID{sheet.LoadTotal}, "About {load.total} loaded."},
}

// headFuncs are the topics whose first sentence hangs on more than what is known;
// they give "" where they have nothing to say.
var headFuncs = map[string]func(in In) string{
	"capacity": margin,
	"shaft":    shaftLength,
	"runtime":  runTime,
	"bank":     bankSize,
	"charger":  chargerSize,
}

// shaftLength names, beside the length to take, the one that falls short by a
// fraction: waves and cover are in the need already.
func shaftLength(in In) string {
	if !in.knows([]sheet.ID{sheet.ShaftClass, sheet.ShaftNeed}) {
		return ""
	}
	text := in.fill("A {shaft.class} shaft: the need is {shaft.need}.")
	need := unit.Length(in.Sol.Value(sheet.ShaftNeed))
	for _, inches := range typical.ShaftLengths {
		if l := unit.Inches(inches); shaft.Judge(l, need) == shaft.Tight {
			text += " " + unit.Show(l.Metres(), unit.DeckLength, in.Sys) + " is " + unit.Show((need-l).Metres(), unit.DeckLength, in.Sys) + " short: tight, not wrong."
		}
	}
	return text
}

// runTime tells how long; lead run down to its limit is told with what spares it.
func runTime(in In) string {
	long := func(id sheet.ID) string {
		if in.Sol.Has(id) && in.has("battery.count", "battery.capacity", "battery.group", "battery.reserve") {
			return ", run down to {runtime.depth}; {" + id.String() + "} to {battery.depth-long-life}, which spares the batteries."
		}
		return "."
	}
	switch {
	case in.knows([]sheet.ID{sheet.RuntimeCruise, sheet.DutyHours}):
		if in.over(sheet.RuntimeCruise, in.Sol.Value(sheet.DutyHours)) {
			return in.fill("Enough for the {duty.hours}: such running could go on for about {runtime.cruise}.")
		}
		return in.fill("Not for the whole {duty.hours}: about {runtime.cruise} of such running.")
	case in.knows([]sheet.ID{sheet.RuntimeCruise, sheet.CruiseCurrent}):
		if in.told(sheet.UseSpeed) && in.knows([]sheet.ID{sheet.RangeCruise}) {
			return in.fill("About {runtime.cruise} at {use.speed} and {cruise.current}: {range.cruise} in all.")
		}
		return in.fill("About {runtime.cruise} at {cruise.current}" + long(sheet.RuntimeUse50))
	case in.knows([]sheet.ID{sheet.RuntimeFull}):
		return in.fill("About {runtime.full} at full throttle" + long(sheet.RuntimeFull50))
	}
	return ""
}

func bankSize(in In) string {
	if !in.knows([]sheet.ID{sheet.BankCount, sheet.BankCapacity}) {
		return ""
	}
	text := bankWords(in) + " at {system.voltage}"
	if in.Sol.Has(sheet.BankWeight) {
		text += ", {bank.weight}"
	}
	return in.fill(text + ".")
}

// bankWords are the batteries and how they are joined. A bank for hours that were
// said is a need: what is sold is that or more.
func bankWords(in In) string {
	text := "{bank.count} x {battery.voltage} " + chemistryWord(in)
	strings, _ := in.num(sheet.BankStrings)
	series, _ := in.num(sheet.BankSeries)
	switch {
	case strings > 1.5 && series > 1.5:
		text += ", {bank.strings} sets of {bank.series} side by side"
	case strings > 1.5:
		text += " side by side"
	}
	if in.told(sheet.UseHours) && !in.Sol.Has(sheet.BatteryCapacity) {
		return text + ", {bank.capacity} or more"
	}
	return text + ", {bank.capacity}"
}

func chargerSize(in In) string {
	if !in.knows([]sheet.ID{sheet.ChargerCurrent}) {
		return ""
	}
	if n, ok := in.num(sheet.BankCount); ok && n < 1.5 {
		return in.fill("{charger.current}, for a {battery.voltage} battery.")
	}
	return in.fill("{charger.current} for each battery.")
}

// Headline is the first sentence: a verdict on what was named, the pick, or the
// figure asked for; "" when nothing was computed.
func Headline(in In) string {
	if in.Sol == nil {
		return ""
	}
	var out []string
	for _, r := range verdictRows {
		if in.asks(r.topics...) && in.has(r.slot) && in.knows(r.needs) && (slices.Contains(in.Judge, r.slot) || !in.asks("fit") || r.always) {
			if text := r.say(in); text != "" {
				out = append(out, text)
			}
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
		if t == "runtime" && in.asks("bank") && in.told(sheet.UseHours) && !in.Sol.Has(sheet.BatteryCapacity) {
			continue // the bank for those hours was asked for, not the hours
		}
		if say := headFuncs[t]; say != nil {
			if text := say(in); text != "" {
				out = append(out, text)
				continue
			}
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

// raisedWhy says what the rule of thumb was raised for.
func (in In) raisedWhy() string {
	for _, r := range raisedRows {
		if r.when(in) {
			return r.why
		}
	}
	return ""
}

// route says which of the two routes to the thrust governs, and what the other
// asks for.
func route(in In) string {
	if !in.knows([]sheet.ID{sheet.ThrustNeed, sheet.ThrustRule, sheet.ThrustBalance}) {
		return ""
	}
	if !in.Sol.Has(sheet.ThrustClass) {
		return "" // which route decides is beside the point where no motor meets it
	}
	need, rule := in.Sol.Value(sheet.ThrustNeed), in.Sol.Value(sheet.ThrustRule)
	if named, ok := in.num(sheet.MotorThrust); ok && in.told(sheet.MotorThrust) && named*in.motors() < need && in.onlyRaised(named*in.motors()) {
		return "" // the verdict told it
	}
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
		return in.fill("{thrust.ratio-raised} " + in.raisedWhy() + " decides" + forces + ".")
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

// margin says what the plate leaves, and names the main engine's weight where it
// was taken for granted: it is the largest of what nobody said.
func margin(in In) string {
	if !in.knows([]sheet.ID{sheet.LoadMargin}) {
		return ""
	}
	engine := "."
	if st := in.Sol.Step(sheet.LoadEngine); st != nil && st.Origin == sheet.Assumed && st.Value > 0 && !in.told(sheet.EnginePower) {
		engine = in.fill(", and {load.engine} taken for the main engine.")
	}
	if in.over(sheet.LoadMargin, 0) {
		return in.fill("Under the plate, with {load.margin} left after motor and batteries") + engine
	}
	over := unit.Show(-in.Sol.Value(sheet.LoadMargin), unit.Weight, in.Sys)
	return "Over the plate by " + over + " with motor and batteries counted in" + engine
}

// fitting is the pick of a full fitting in one sentence, or what goes with the
// motor that was named.
func fitting(in In) string {
	if !in.Sol.Has(sheet.ThrustClass) {
		if in.Sol.Has(sheet.ThrustNeed) && !in.told(sheet.MotorThrust) {
			return "No single motor does it: the figures are for the largest made."
		}
		return ""
	}
	n := in.motors()
	text := "Fit a {system.voltage} " + mountWords(in) + " of {thrust.class} thrust"
	switch {
	case in.told(sheet.MotorThrust) && n > 1:
		text = "With them, {system.voltage}"
	case in.told(sheet.MotorThrust):
		text = "With it, {system.voltage}"
	case n > 1:
		text = "Fit " + count(n) + " " + mountWords(in) + "s of {system.voltage} and {thrust.class} thrust each"
	}
	if in.Sol.Has(sheet.ShaftClass) {
		if in.told(sheet.MotorThrust) {
			text += ", a {shaft.class} shaft"
		} else {
			text += " on a {shaft.class} shaft"
		}
	}
	var rest []string
	if in.Sol.Has(sheet.BankCount) && in.Sol.Has(sheet.BankCapacity) {
		rest = append(rest, bankWords(in))
	}
	if in.Sol.Has(sheet.WireGauge) {
		rest = append(rest, "{wire.gauge} wire")
	}
	if in.Sol.Has(sheet.BreakerRating) {
		rest = append(rest, "{breaker.rating} breaker")
	}
	if n > 1 && len(rest) > 0 {
		rest[len(rest)-1] += " for each motor"
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
