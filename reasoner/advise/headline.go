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
	"heronlake.example/ask/reasoner/card"
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
	{"is it the right kind of battery", []string{"bank", "runtime", "thrust", "voltage"}, "battery.use", nil, crankingVerdict, true},
	{"may it be charged so cold", []string{"charger", "bank"}, "temperature.air", []sheet.ID{sheet.AirTemp}, ChargedCold, false},
	{"how long on that charger", []string{"charger"}, "charger.current", []sheet.ID{sheet.ChargerSaid, sheet.ChargeTime}, chargeTime, false},
	{"does the breaker do", []string{"wire", "breaker"}, "breaker.in-hand", nil, breakerVerdict, false},
	{"do the batteries make the volts", []string{"runtime", "bank", "voltage", "fit"}, "battery.count", []sheet.ID{sheet.BatteryCount, sheet.BatteryVoltage, sheet.MotorVoltage}, voltsVerdict, true},
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
	if in.Sol.Has(sheet.ShaftDraught) {
		return in.fill("{motor.shaft} is long enough: the need is {shaft.need}. It takes {shaft.draught} of water.")
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

// crankingVerdict refuses a battery that is made to crank an engine.
func crankingVerdict(in In) string {
	if in.said("battery.use") != "cranking" {
		return ""
	}
	return "No: a cranking battery is not made for deep discharge and soon fails; take a deep-cycle one."
}

// voltsVerdict speaks only of batteries in hand that cannot make the voltage of
// the motor that was named: nothing else matters before that.
func voltsVerdict(in In) string {
	if n, ok := in.num(sheet.BatteryCount); ok && n < 1.5 && !in.told(sheet.BatteryVoltage) && in.over(sheet.BatteryVoltage, 12.5) && in.asks("bank", "voltage") {
		return in.fill("Only a pack of {battery.voltage}: a single 12 V battery does not run it.")
	}
	if !in.shortOfVolts() {
		return ""
	}
	most := in.Sol.Value(sheet.BatteryCount) * in.Sol.Value(sheet.BatteryVoltage)
	need := math.Ceil(in.Sol.Value(sheet.MotorVoltage)/in.Sol.Value(sheet.BatteryVoltage) - 1e-9)
	return in.fill("No: {battery.count} x {battery.voltage} makes " + unit.Show(most, unit.Volt, in.Sys) + ", and {motor.voltage} takes " + count(need) + " in series.")
}

// shortOfVolts reports batteries in hand that cannot make the voltage of the
// motor that was named.
func (in In) shortOfVolts() bool {
	return in.told(sheet.BatteryCount) && in.told(sheet.MotorVoltage) && in.Sol.Has(sheet.BatteryVoltage) && in.has("battery.count") &&
		in.Sol.Value(sheet.BatteryCount)*in.Sol.Value(sheet.BatteryVoltage) < in.Sol.Value(sheet.MotorVoltage)-1
}

// breakerVerdict holds a breaker in hand against the motor, where one is known,
// and against the wire, where one was said.
func breakerVerdict(in In) string {
	amps, have := in.num(sheet.WireAmps)
	have = have && in.motorTold()
	hand := in.Sol.Value(sheet.BreakerSaid)
	carry, wired := in.num(sheet.WireAmpacity)
	wired = wired && in.has("wire.gauge")
	right := "; take {breaker.rating}"
	if !in.Sol.Has(sheet.BreakerRating) {
		right = ""
	}
	const hair = 1e-9
	switch {
	case have && hand < amps*(1-hair):
		return in.fill("No: {breaker.in-hand} is less than the {wire.current} that the motor draws at full throttle" + right + ".")
	case have && in.Sol.Has(sheet.BreakerFloor) && hand < in.Sol.Value(sheet.BreakerFloor)*(1-hair):
		return in.fill("No: {breaker.in-hand} may trip on a warm day, for the motor draws {wire.current} at full throttle" + right + ".")
	case wired && hand > carry*(1+hair):
		return in.fill("No: {wire.gauge-said} may carry {wire.ampacity}, and a {breaker.in-hand} breaker does not protect it" + right + ".")
	case have && in.Sol.Has(sheet.BreakerRating) && hand > in.Sol.Value(sheet.BreakerRating)*(1+hair):
		return in.fill("Larger than it should be: {breaker.rating} does for {wire.current}. {breaker.in-hand} is right only where wire and manual allow it.")
	case have && (in.asks("fault") || in.mentions("trips breaker")):
		return in.fill("{breaker.in-hand} suits the {wire.current} of the motor, so a larger one is no cure: look for weeds or line on the prop, a stiff motor, a hot joint.")
	case have:
		return in.fill("Yes: {breaker.in-hand} suits the {wire.current} of the motor.")
	case wired:
		return in.fill("Yes: {wire.gauge-said} may carry {wire.ampacity}, so {breaker.in-hand} protects it.")
	}
	return ""
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
	if in.has("breaker.in-hand") && in.asks("breaker") && !in.has("wire.run") {
		return "" // its verdict told of the wire
	}
	if in.asks("breaker") && !slices.Contains(in.Judge, "wire.gauge") && (!in.asks("wire") || !in.has("wire.run")) {
		if knowsAmps && in.Sol.Has(sheet.BreakerRating) {
			return in.fill("A {breaker.rating} breaker for {wire.current}; {wire.gauge-said} may carry {wire.ampacity}.")
		}
		return in.fill("By the motor, and at most the {wire.ampacity} that " + wire + " may carry.")
	}
	drop, knowsDrop := in.num(sheet.WireDrop)
	if longest, ok := in.num(sheet.WireLongest); ok && knowsAmps && !in.told(sheet.WireRun) && !in.told(sheet.BoatLength) && longest > 0 {
		return in.fill("At {wire.current} and {motor.volts}, {wire.gauge-said} keeps within {wire.drop-target} up to a run of {wire.longest-run}, one way; it may carry {wire.ampacity}.")
	}
	if !knowsDrop || !knowsAmps || !in.told(sheet.WireRun) && !in.told(sheet.BoatLength) {
		return in.fill(wire + " may carry {wire.ampacity}, and no breaker on it may be larger; what it loses follows from motor and run.")
	}
	target, ok := in.num(sheet.WireDropTarget)
	if !ok {
		target = typical.DropTarget
	}
	switch {
	case drop <= target && in.Sol.Value(sheet.WireGaugeSaid) <= in.Sol.Value(sheet.WireGauge)-thicker:
		return in.fill("More than enough: {wire.gauge-said} drops {wire.drop} ({wire.volts}), and {wire.gauge} would do.")
	case drop <= target:
		return in.fill("Yes: {wire.gauge-said} drops {wire.drop} ({wire.volts}) and may carry {wire.ampacity}.")
	case drop <= typical.DropLimit:
		return in.fill("{wire.gauge-said} works but drops {wire.drop} ({wire.volts}), which with plug and breaker costs {wire.thrust-loss} of the thrust; {wire.gauge} keeps within the target.")
	}
	return in.fill("{wire.gauge-said} drops {wire.drop} ({wire.volts}): too much. Take {wire.gauge}.")
}

// thicker is how many gauge numbers above the need are more than a step to spare:
// wire is sold in steps of two.
const thicker = 4

// motorTold reports whether the motor's current rests on something that was
// said: the motor, its current, or a boat that asks for one.
func (in In) motorTold() bool {
	return in.told(sheet.MotorAmps) || in.told(sheet.MotorThrust) || in.told(sheet.MotorCurrent) || in.told(sheet.MotorVoltage) || in.knowsBoat()
}

// ChargedCold answers whether a lithium battery may be charged at a temperature
// that was said; "" where that was not the question.
func ChargedCold(in In) string {
	if !in.lithium() || !in.told(sheet.AirTemp) || in.over(sheet.AirTemp, 0) || !in.asks("charger") && !in.mentions("charging", "charge", "cold") {
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
	{"bank", []sheet.ID{sheet.BankCount}, "{bank.count} batteries."},
	{"wire", []sheet.ID{sheet.WireGauge, sheet.BreakerRating}, "{wire.gauge} wire and a {breaker.rating} breaker for {wire.current} over {wire.run}."},
	{"wire", []sheet.ID{sheet.WireGauge}, "{wire.gauge} wire."},
	{"wire", []sheet.ID{sheet.WireAmpacity}, "That wire may carry {wire.ampacity}."},
	{"breaker", []sheet.ID{sheet.BreakerRating, sheet.BreakerDistance}, "A {breaker.rating} breaker for {wire.current}, at the battery: within {breaker.distance-bare} along bare wire, {breaker.distance-sheathed} where it lies in a sheath."},
	{"breaker", []sheet.ID{sheet.BreakerRating}, "A {breaker.rating} breaker for {wire.current}."},
	{"breaker", []sheet.ID{sheet.BreakerDistance}, "At the battery: within {breaker.distance-bare} along bare wire, {breaker.distance-sheathed} where the wire lies in a sheath, {breaker.distance-battery} sheathed from the battery's own terminal."},
	{"charger", []sheet.ID{sheet.ChargeTime}, "About {charge.time} on the charger."},
	{"hold in a stream", []sheet.ID{sheet.HoldCurrent}, "{motor.rating} at full throttle holds in a stream of about {hold.current}."},
	{"hold", []sheet.ID{sheet.HoldWind}, "{motor.rating} at full throttle holds in a wind of about {hold.wind}."},
	{"capacity", []sheet.ID{sheet.LoadMargin}, ""},
	{"weight", []sheet.ID{sheet.BankWeight}, "The bank weighs about {bank.weight}."},
	{"weight", []sheet.ID{sheet.LoadTotal}, "About {load.total} loaded."},
}

// headFuncs are the topics whose first sentence hangs on more than what is known;
// they give "" where they have nothing to say.
var headFuncs = map[string]func(in In) string{
	"capacity": margin,
	"speed":    speed,
	"thrust":   thrust,
	"voltage":  voltage,
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

// speed tells the top speed, and the speed at the throttle that was named.
func speed(in In) string {
	if !in.knows([]sheet.ID{sheet.SpeedTop}) {
		return ""
	}
	if t, ok := in.num(sheet.UseThrottle); ok && in.told(sheet.UseThrottle) && t < 1 && in.Sol.Has(sheet.CruiseSpeed) {
		return in.fill("About {cruise.speed} at {use.throttle} throttle; {speed.top} flat out.")
	}
	return in.fill("About {speed.top} flat out.")
}

// thrust tells what the boat needs, and of a motor alone what it draws.
func thrust(in In) string {
	switch {
	case in.knows([]sheet.ID{sheet.ThrustClass, sheet.SystemVoltage}):
		return in.fill("It needs {thrust.need} of thrust: the {thrust.class} class, {system.voltage}.")
	case in.knows([]sheet.ID{sheet.ThrustNeed}):
		return in.fill("It needs {thrust.need} of thrust.")
	case in.told(sheet.MotorThrust) && !in.asks("wire", "breaker", "runtime") && !in.has("battery.capacity", "battery.group", "battery.use") && in.knows([]sheet.ID{sheet.MotorCurrent, sheet.MotorPower}):
		return in.fill("A {motor.thrust} motor draws about {motor.current} at full throttle, {motor.power} on {motor.volts}.")
	}
	return ""
}

// voltage tells what the thrust asks for, or how many batteries a voltage takes;
// volts that a wire loses are another matter.
func voltage(in In) string {
	switch {
	case in.asks("wire"):
	case in.knows([]sheet.ID{sheet.SystemVoltage, sheet.ThrustClass}):
		return in.fill("{system.voltage} does it: {thrust.need} of thrust needed.")
	case in.knows([]sheet.ID{sheet.SystemVoltage, sheet.BankCount}) && in.over(sheet.BankCount, 1.5):
		return in.fill("{system.voltage} takes {bank.count} batteries of {battery.voltage}.")
	case in.knows([]sheet.ID{sheet.SystemVoltage, sheet.BankCount}):
		return in.fill("{system.voltage} takes one battery of {battery.voltage}.")
	}
	return ""
}

// runTime tells how long, on which batteries where nobody said, and whether that
// is the hours that were asked about; lead run down to its limit is told with
// what spares it.
func runTime(in In) string {
	hand := in.has("battery.count", "battery.capacity", "battery.group", "battery.reserve")
	long := func(id sheet.ID) string {
		if in.Sol.Has(id) && hand {
			return onWhich(in) + ", run down to {battery.depth-limit}; {" + id.String() + "} to {battery.depth-long-life}, which spares the batteries."
		}
		return onWhich(in) + "."
	}
	if f, _ := in.Card.Get("battery.count"); f.Said == card.Usual && !in.has("use.throttle", "use.speed", "use.hours", "use.distance", "use.style") &&
		in.knows([]sheet.ID{sheet.RuntimeCruise, sheet.RuntimeFull, sheet.CruiseCurrent, sheet.MotorCurrent}) {
		return in.fill("About {motor.current} and {runtime.full} at full throttle; over a day's fishing {cruise.current} and {runtime.cruise}" + onWhich(in) + ".")
	}
	if in.asks("hold") && !in.AboutStream() && !in.told(sheet.WindSpeed) && !in.told(sheet.UseThrottle) && in.knows([]sheet.ID{sheet.HoldWind, sheet.HoldWindDay, sheet.RuntimeFull, sheet.RuntimeHold}) {
		return in.fill("At full throttle, which holds in {hold.wind}, about {runtime.full}; at half thrust, for {hold.wind-allday}, about {runtime.hold}" + onWhich(in) + ".")
	}
	switch {
	case in.knows([]sheet.ID{sheet.RuntimeCruise, sheet.DutyHours}):
		if in.over(sheet.RuntimeCruise, in.Sol.Value(sheet.DutyHours)) {
			return in.fill("Enough for the {duty.hours}: such running could go on for about {runtime.cruise}" + onWhich(in) + ".")
		}
		return in.fill("Not for the whole {duty.hours}: about {runtime.cruise} of such running" + onWhich(in) + ".")
	case in.knows([]sheet.ID{sheet.RuntimeCruise, sheet.CruiseCurrent}):
		verdict := "About "
		if hand {
			verdict = lasts(in)
		}
		if in.told(sheet.UseSpeed) && in.knows([]sheet.ID{sheet.RangeCruise}) {
			return in.fill(verdict + "{runtime.cruise} at {use.speed} and {cruise.current}: {range.cruise} in all" + onWhich(in) + ".")
		}
		far := ""
		if in.knows([]sheet.ID{sheet.RangeCruise}) && (in.told(sheet.UseThrottle) || in.told(sheet.UseDistance)) {
			far = ", {range.cruise} in still water"
		}
		return in.fill(verdict + "{runtime.cruise} at {cruise.current}" + far + long(sheet.RuntimeUse50))
	case in.knows([]sheet.ID{sheet.RuntimeFull}):
		speed := ""
		if in.told(sheet.UseSpeed) || in.has("use.speed") {
			speed = " What that speed draws follows from the boat."
		}
		return in.fill("About {runtime.full} at full throttle" + long(sheet.RuntimeFull50) + speed)
	}
	return ""
}

// lasts begins the answer to whether batteries last the hours, or the way, that
// were said.
func lasts(in In) string {
	what := "{use.hours}"
	if !in.told(sheet.UseHours) {
		what = "{use.distance}"
	}
	switch {
	case !in.told(sheet.UseHours) && !in.told(sheet.UseDistance) || !in.Sol.Has(sheet.UseHours):
		return "About "
	case in.over(sheet.RuntimeCruise, in.Sol.Value(sheet.UseHours)):
		return "Enough for " + what + ": about "
	}
	return "Not enough for " + what + ": about "
}

// onWhich names the batteries that hours were reckoned on where nobody did.
func onWhich(in In) string {
	f, _ := in.Card.Get("battery.count")
	if f.Said != card.Usual && f.Said != card.Proposed && !in.motorTold() && in.Sol.Has(sheet.RatedThrust) {
		return " with a usual {motor.rating} motor"
	}
	switch f.Said {
	case card.Usual:
		word := " battery of"
		if in.over(sheet.BankCount, 1.5) {
			word = " batteries of"
		}
		return " on {bank.count} usual {battery.voltage} " + chemistryWord(in) + word + " {bank.capacity}"
	case card.Proposed:
		return " on the " + bankWords(in)
	}
	return ""
}

func bankSize(in In) string {
	switch {
	case in.knows([]sheet.ID{sheet.BankCount, sheet.BankCapacity}):
	case in.knows([]sheet.ID{sheet.BankCapacity, sheet.BankEnergy}):
		return in.fill("{bank.capacity}, which is {bank.energy}.")
	default:
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
	case strings > 1.5 && in.motors() == strings && !in.has("battery.count"):
		return text + ", a set of {battery.each} for each motor"
	case strings > 1.5 && series > 1.5:
		text += ", {bank.strings} sets of {bank.series} side by side"
	case strings > 1.5:
		text += " side by side"
	}
	if in.told(sheet.UseHours) && !in.Sol.Has(sheet.BatteryCapacity) && !in.over(sheet.BankNeed, in.Sol.Value(sheet.BankCapacity)) {
		return text + ", {bank.capacity} or more"
	}
	return text + ", {bank.capacity}"
}

// chargerSize tells the charger and its hours, and where they are more than there
// are.
func chargerSize(in In) string {
	if !in.knows([]sheet.ID{sheet.ChargerCurrent}) {
		return ""
	}
	text := "{charger.current} for each of the {bank.count} batteries"
	if !in.Sol.Has(sheet.BankCount) {
		text = "{charger.current} for each battery"
	}
	if n, ok := in.num(sheet.BankCount); ok && n < 1.5 {
		text = "{charger.current}, for a {battery.voltage} battery"
	}
	if !in.knows([]sheet.ID{sheet.ChargeTime}) {
		return in.fill(text + ".")
	}
	if in.told(sheet.ChargeHours) && in.over(sheet.ChargeTime, in.Sol.Value(sheet.ChargeHours)*1.05) {
		return in.fill(text + ", and that takes about {charge.time}, not {charge.hours}.")
	}
	return in.fill(text + ": about {charge.time} to put back {charge.depth}.")
}

// mostSentences is how many topics a headline answers: wire, charger and batteries
// asked for in one breath.
const mostSentences = 3

// Headline is the first sentence: a verdict on what was named, the pick, or the
// figure asked for; "" when nothing was computed.
func Headline(in In) string {
	if in.Sol == nil {
		return ""
	}
	if in.Was != nil && len(in.Lead) > 0 && !slices.Contains(in.Lead, "fit") {
		first := in
		first.Topics, first.Was = in.Lead, nil
		if text := Headline(first); text != "" {
			if pick := fitting(in); in.asks("fit") && in.anotherPick() {
				text += " " + pick
			}
			return text
		}
	}
	var out []string
	for _, r := range verdictRows {
		if in.asks(r.topics...) && in.has(r.slot) && in.knows(r.needs) && (slices.Contains(in.Judge, r.slot) || !in.asks("fit") || r.always) {
			if text := r.say(in); text != "" {
				out = append(out, text)
			}
		}
	}
	if in.Unmet != "" && in.asks("fit", "thrust", "voltage") && in.knows([]sheet.ID{sheet.ThrustNeed, sheet.SystemVoltage}) {
		out = append(out, in.fill("No: "+in.Unmet+" motors stop short of the {thrust.need} needed; it takes {system.voltage}."))
	}
	picked := false
	if in.asks("fit") {
		if pick := fitting(in); pick != "" {
			out, picked = append(out, pick), true
		}
	}
	for _, t := range in.Topics {
		if t == "fit" || len(out) > 0 && judged(in, t) || picked {
			continue
		}
		if t == "breaker" && len(out) > 0 && in.asks("wire") {
			continue // told with the wire
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
		if t == "hold" && in.asks("runtime") && len(out) > 0 {
			continue // told with its hours
		}
		if t == "hold" && in.AboutStream() && !(in.told(sheet.WindSpeed) && !in.mentions("current")) {
			t = "hold in a stream"
		}
		for _, r := range headRows {
			if r.topic == t && in.knows(r.needs) {
				out = append(out, in.fill(r.text))
				break
			}
		}
	}
	if len(out) > mostSentences {
		out = out[:mostSentences]
	}
	if in.asks("fit", "thrust") {
		if r := route(in); r != "" {
			out = append(out, r)
		}
	}
	return strings.Join(out, " ")
}

// anotherPick reports that a turn changed which motor is to be fitted.
func (in In) anotherPick() bool {
	return slices.ContainsFunc([]sheet.ID{sheet.ThrustClass, sheet.SystemVoltage, sheet.ShaftClass, sheet.BankCount}, func(id sheet.ID) bool {
		return in.Sol.Has(id) && math.Abs(in.Sol.Value(id)-in.Was.Value(id)) > 1e-9
	})
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
	case in.over(sheet.ThrustClass, need*1.5) && in.told(sheet.MotorThrust):
		return "" // the verdict told the need
	case in.over(sheet.ThrustClass, need*1.5) && in.told(sheet.MotorVoltage):
		return in.fill("Motors of {system.voltage} usually begin near {thrust.class}: the need is {thrust.need}.")
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
		if in.knows([]sheet.ID{sheet.TrimBowSink}) {
			return in.fill("Motor and batteries in the bow lower it by about {trim.bow-sink}.")
		}
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
	switch {
	case in.Sol.Has(sheet.ThrustClass):
	case in.Sol.Has(sheet.ThrustNeed) && !in.told(sheet.MotorThrust):
		text := "No single motor does it: {thrust.need} is needed, above the largest single rating, {motor.rating}, which the figures are for. "
		if in.over(sheet.ThrustNeed, 2*in.Sol.Value(sheet.RatedThrust)) {
			return in.fill(text + "That is a job for the main engine.")
		}
		return in.fill(text + "Fit two, or leave the job to the main engine.")
	case !in.told(sheet.MotorThrust) || !in.Sol.Has(sheet.BankCount):
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
		bank := bankWords(in)
		if in.told(sheet.UseHours) && in.Sol.Has(sheet.RuntimeCruise) {
			bank += " (about {runtime.cruise} of such use)"
		}
		rest = append(rest, bank)
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
