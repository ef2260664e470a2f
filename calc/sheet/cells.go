package sheet

import "heronlake.example/ask/calc/unit"

// Slots: what a person can say (answer contract). Lengths that are talked of in
// inches take DeckLength, those in feet LongLength.
var (
	BoatLength    = slot("boat.length", unit.LongLength, "Boat length")
	BoatBeam      = slot("boat.beam", unit.LongLength, "Beam")
	BoatFreeboard = slot("boat.freeboard", unit.DeckLength, "Freeboard")
	BoatHull      = word("boat.hull", "Hull kind")
	BoatMaterial  = word("boat.material", "Hull material")
	BoatConsole   = word("boat.console", "Console")
	BoatTop       = word("boat.top", "Top or awning")
	LoadDry       = slot("load.dry", unit.Weight, "Dry hull weight")
	LoadGear      = slot("load.gear", unit.Weight, "Gear")
	LoadEngine    = slot("load.engine", unit.Weight, "Main engine")
	LoadPlate     = slot("load.plate", unit.Weight, "Capacity plate")
	PeopleCount   = slot("people.count", unit.Count, "People aboard")
	PeopleEach    = slot("people.each", unit.Weight, "Weight of each person")
	PeoplePosture = word("people.posture", "Standing or seated")
	FuelVolume    = slot("fuel.volume", unit.Litre, "Fuel")
	EngineLeg     = word("engine.leg", "Main engine's leg")
	MountPlace    = word("mount.place", "Where the motor mounts")
	MountKind     = word("mount.kind", "Kind of mount")
	MountHeight   = slot("mount.height", unit.DeckLength, "Mount surface above the water")
	WindSpeed     = slot("wind.speed", unit.Pace, "Wind")
	WindGust      = slot("wind.gust", unit.Pace, "Gusts")
	CurrentSpeed  = slot("current.speed", unit.Pace, "Current")
	ChopHeight    = slot("chop.height", unit.DeckLength, "Wave height")
	WaterDepth    = slot("water.depth", unit.LongLength, "Water depth")
	WaterKind     = word("water.kind", "Water")
	WaterWeeds    = word("water.weeds", "Weeds")
	AirTemp       = slot("temperature.air", unit.Degree, "Air temperature")
	UseHours      = slot("use.hours", unit.Hour, "Hours on the water")
	UseSpeed      = slot("use.speed", unit.Pace, "Trolling speed")
	UseThrottle   = slot("use.throttle", unit.Fraction, "Throttle")
	UseStyle      = word("use.style", "Way of fishing")
	UseDistance   = slot("use.distance", unit.TripLength, "Trip distance")
	UseDocking    = word("use.docking", "Only in and out of a berth")

	MotorThrust  = slot("motor.thrust", unit.Rating, "Motor's rated thrust")
	MotorVoltage = slot("motor.voltage", unit.Volt, "Motor's voltage")
	MotorAmps    = slot("motor.amps", unit.Ampere, "Motor's current as said") // motor.current as a slot
	MotorShaft   = slot("motor.shaft", unit.DeckLength, "Motor's shaft")
	MotorCount   = slot("motor.count", unit.Count, "Motors")
	MotorSpeeds  = word("motor.speeds", "Speed control")
	MotorDrive   = word("motor.drive", "Motor kind")
	MotorControl = word("motor.control", "Steering and control")

	BatteryCount     = slot("battery.count", unit.Count, "Batteries")
	BatteryCapacity  = slot("battery.capacity", unit.AmpHour, "Each battery's capacity")
	BatteryChemistry = word("battery.chemistry", "Battery chemistry")
	BatteryGroup     = word("battery.group", "Battery group size")
	BatteryVoltage   = slot("battery.voltage", unit.Volt, "Each battery's voltage")
	BatteryLayout    = word("battery.layout", "Bank layout")
	BatteryReserve   = slot("battery.reserve", unit.Hour, "Reserve capacity at 25 A")
	BatteryLeft      = slot("battery.charge-left", unit.Fraction, "Charge left")

	WireRun        = slot("wire.run", unit.RunLength, "Wire run, one way")
	WireGaugeSaid  = slot("wire.gauge-said", unit.WireGauge, "Wire fitted")          // wire.gauge as a slot
	WireDropTarget = slot("wire.drop-target", unit.Fraction, "Voltage drop allowed") // wire.drop as a slot
	WireInsulation = slot("wire.insulation", unit.InsulationClass, "Insulation rating")
	WirePlace      = word("wire.place", "Where the wire runs")
	BreakerSaid    = slot("breaker.in-hand", unit.Ampere, "Breaker in hand")

	ChargeHours = slot("charge.hours", unit.Hour, "Hours to charge")
	ChargerSaid = slot("charger.current-said", unit.Ampere, "Charger on hand") // charger.current as a slot
	MoneyBudget = slot("money.budget", unit.Dollar, "Budget")

	LoadSaid   = slot("load.said", unit.Weight, "Loaded weight as said, before the change") // load.total once people or gear changed
	LoadAdded  = slot("load.added", unit.Weight, "Weight added since")
	PeopleMore = slot("people.added", unit.Count, "People added since")
)

// Slots whose public name is also a figure's: a person may state what the core
// would compute. The reasoner binds the slot to the cell named here.
var SaidFor = map[string]ID{
	"motor.current":   MotorAmps,
	"wire.gauge":      WireGaugeSaid,
	"wire.drop":       WireDropTarget,
	"charger.current": ChargerSaid,
}

// Figures of the public contract.
var (
	LoadTotal  = figure("load.total", unit.Weight, "Loaded weight")
	LoadMargin = figure("load.margin", unit.Weight, "Left under the plate")

	ThrustRule    = figure("thrust.rule", unit.Thrust, "Thrust by weight")
	ThrustWind    = figure("thrust.wind", unit.Thrust, "Thrust for the wind")
	ThrustCurrent = figure("thrust.current", unit.Thrust, "Thrust for the current")
	ThrustNeed    = figure("thrust.need", unit.Thrust, "Thrust needed")
	ThrustClass   = figure("thrust.class", unit.Rating, "Thrust class")

	HoldWind    = figure("hold.wind", unit.Pace, "Wind held at full throttle")
	HoldWindDay = figure("hold.wind-allday", unit.Pace, "Wind held all day")
	HoldCurrent = figure("hold.current", unit.Pace, "Current held at full throttle")
	SpeedTop    = figure("speed.top", unit.Pace, "Top speed")

	SystemVoltage = figure("system.voltage", unit.Volt, "System voltage")

	ShaftNeed       = figure("shaft.need", unit.DeckLength, "Shaft needed")
	ShaftClass      = figure("shaft.class", unit.DeckLength, "Shaft length")
	ShaftSubmerged  = figure("shaft.submergence", unit.DeckLength, "Depth to the lower unit")
	MotorCurrent    = figure("motor.current", unit.Ampere, "Current at full throttle")
	MotorPower      = figure("motor.power", unit.Watt, "Power at full throttle")
	CruiseCurrent   = figure("cruise.current", unit.Ampere, "Current in use")
	BankCapacity    = figure("bank.capacity", unit.AmpHour, "Bank capacity")
	BankEnergy      = figure("bank.energy", unit.WattHour, "Bank energy")
	BankCount       = figure("bank.count", unit.Count, "Batteries needed")
	BankWeight      = figure("bank.weight", unit.Weight, "Bank weight")
	RuntimeFull     = figure("runtime.full", unit.Hour, "Run time at full throttle")
	RuntimeCruise   = figure("runtime.cruise", unit.Hour, "Run time in use")
	RangeCruise     = figure("range.cruise", unit.TripLength, "Range")
	WireGauge       = figure("wire.gauge", unit.WireGauge, "Wire gauge")
	WireDrop        = figure("wire.drop", unit.Fraction, "Voltage drop in the wire")
	WireVolts       = figure("wire.volts", unit.Volt, "Volts lost in the wire")
	WireAmpacity    = figure("wire.ampacity", unit.Ampacity, "What the wire may carry")
	WireThrustLoss  = figure("wire.thrust-loss", unit.Fraction, "Thrust lost to the drop")
	BreakerRating   = figure("breaker.rating", unit.Ampere, "Breaker")
	BreakerDistance = figure("breaker.distance", unit.DeckLength, "Breaker to battery, along the wire")
	ChargerCurrent  = figure("charger.current", unit.Ampere, "Charger, each battery")
	ChargeTime      = figure("charge.time", unit.Hour, "Charge time")
	TrimBowSink     = figure("trim.bow-sink", unit.DeckLength, "Bow drops by")
	CostTotal       = figure("cost.total", unit.Dollar, "Cost complete")
	CostYearly      = figure("cost.yearly", unit.Dollar, "Batteries a year")
)
