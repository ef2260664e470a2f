package sheet

import (
	"fmt"
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/calc/wind"
)

// Inner cells of the motor.
var (
	// RatedThrust is the rating of the motor in hand: the one said, otherwise
	// the class; of all motors together where there are several.
	RatedThrust = inner("motor.rating", unit.Thrust, "Rated thrust")
	// RatedVolts is the motor's voltage: said, otherwise the system's.
	RatedVolts      = inner("motor.volts", unit.Volt, "Motor's supply voltage")
	MotorFreeSpeed  = inner("motor.free-speed", unit.Pace, "Speed at which thrust runs out")
	MotorWatts      = inner("motor.watts", unit.Watt, "Usual power of this rating")
	MotorSpread     = inner("motor.current-spread", unit.Factor, "Current of one motor, against the usual")
	MotorIdle       = inner("motor.idle", unit.Ampere, "Idle draw")
	ControlLoss     = inner("motor.controller-efficiency", unit.Fraction, "Controller efficiency")
	MotorEfficiency = inner("motor.efficiency", unit.Fraction, "Electrical power that becomes thrust power")
	// MomentumLimit is the static thrust beyond which a rating cannot be had
	// from the current that was said.
	MomentumLimit = inner("motor.thrust-limit", unit.Thrust, "Most thrust this power can make")

	// ReverseThrust is what a transom motor pulls backwards.
	ReverseShare  = inner("motor.reverse-share", unit.Fraction, "Thrust in reverse, of forward")
	ReverseThrust = inner("motor.reverse-thrust", unit.Thrust, "Thrust in reverse")

	// The three meanings of throttle, each a cell of its own.
	CruiseThrottle = inner("cruise.throttle", unit.Fraction, "Dial in use")
	CruiseTau      = inner("cruise.thrust-fraction", unit.Fraction, "Share of full thrust in use")
	CruiseShare    = inner("cruise.current-fraction", unit.Fraction, "Share of full current in use")

	DialExponent   = inner("cruise.dial-exponent", unit.Factor, "Power of the dial that current follows")
	CruiseMean     = inner("use.mean-current", unit.Fraction, "Mean share of full current, by the way of fishing")
	VariableShare  = inner("cruise.share-variable", unit.Fraction, "Share of full current, variable speed")
	FixedShare     = inner("cruise.share-fixed", unit.Fraction, "Share of full current, five fixed speeds")
	CruiseFixed    = inner("cruise.current-fixed", unit.Ampere, "Current in use, five fixed speeds")
	CruiseVariable = inner("cruise.current-variable", unit.Ampere, "Current in use, variable speed")
	CruisePull     = inner("cruise.thrust", unit.Thrust, "Thrust at the trolling speed")
	// CruiseSpeed is the speed in still water at the throttle in use.
	CruiseSpeed = inner("cruise.speed", unit.Pace, "Speed in use")

	HoldShare = inner("hold.share", unit.Fraction, "Share of full thrust that is held all day")
	// HoldDayCurrent is what holding all day draws, for the hours it lasts.
	HoldDayCurrent = inner("hold.current-draw", unit.Ampere, "Current when holding all day")
)

const (
	sourceMotors  = "typical motors, from memory"
	sourceChopper = "ideal chopper on a prop: current as the 1.5th power of thrust"
	sourceSwitch  = "resistor switch: battery current is the motor's own; steps from memory"
	sourceDial    = "permanent-magnet motor with armature resistance (exponent from memory)"
)

// motorRows: voltage, rating, current at full and part throttle, speed, and what
// the boat holds against.
var motorRows = []Row{
	{
		Name: "voltage said", Gives: SystemVoltage, Needs: []ID{MotorVoltage},
		Formula: "{motor.voltage}", Source: "as said", Basis: Said,
		Compute: func(v View) (float64, error) { return v.Of(MotorVoltage), nil },
	},
	{
		Name: "voltage of the motor said", Gives: SystemVoltage, Needs: []ID{MotorThrust},
		Formula: "the voltage that {motor.thrust} is usually built for", Source: sourceMotors, Basis: Practice, Ladder: true,
		Compute: func(v View) (float64, error) { return classVolts(v, v.Force(MotorThrust)), nil },
	},
	{
		Name: "voltage of the motor tried", Gives: SystemVoltage, Needs: []ID{SpeedThrust},
		Formula: "the voltage that {boat.speed-thrust} is usually built for", Source: sourceMotors, Basis: Practice, Ladder: true,
		Compute: func(v View) (float64, error) { return classVolts(v, v.Force(SpeedThrust)), nil },
	},
	{
		Name: "voltage of the batteries said", Gives: SystemVoltage, Needs: []ID{BatterySetVolts},
		Said: []ID{BatteryLayout, BatteryVoltage},
		When: func(v View) bool {
			return v.Said(BatteryLayout) && v.Word(BatteryLayout) != "parallel" || v.Said(BatteryVoltage) && v.Of(BatteryVoltage) >= 18
		},
		Formula: "{battery.set-volts}", Source: "voltages in series add", Basis: Model,
		Compute: func(v View) (float64, error) { return v.Of(BatterySetVolts), nil },
	},
	{
		Name: "voltage by class", Gives: SystemVoltage, Needs: []ID{ThrustClass}, Said: boatSaid, When: knowsBoat,
		Formula: "the voltage that {thrust.class} is usually built for", Source: sourceMotors, Basis: Practice, Ladder: true,
		Compute: func(v View) (float64, error) { return classVolts(v, v.Force(ThrustClass)), nil },
	},
	{
		Name: "voltage of the largest rating", Gives: SystemVoltage, Needs: []ID{LoadTotal}, May: []ID{ThrustClass}, Said: boatSaid,
		When:    noClass,
		Formula: "the voltage that the largest rating is usually built for: no single motor meets the need", Source: sourceMotors, Basis: Practice, Ladder: true,
		Compute: func(v View) (float64, error) { return classVolts(v, unit.Force(largest(v))), nil },
	},
	{
		Name: "12 volts", Gives: SystemVoltage, Said: boatSaid, Source: typical.CommonPractice, Basis: Practice,
		Assume: func(v View) (Guess, bool) {
			if knowsBoat(v) {
				return Guess{}, false
			}
			return Guess{Value: band.Of(12.0, 12, 24), Why: "a 12-volt motor unless you say"}, true
		},
	},
	{
		Name: "motor's voltage", Gives: RatedVolts, Needs: []ID{SystemVoltage},
		Formula: "{system.voltage}", Source: "the motor takes the system's voltage", Basis: Practice,
		Compute: func(v View) (float64, error) { return v.Of(SystemVoltage), nil },
	},

	{
		Name: "ratings said", Gives: RatedThrust, Needs: []ID{MotorThrust, MotorCount}, May: []ID{MomentumLimit, MotorDrive},
		When:    func(v View) bool { return v.Of(MotorCount) > 1 },
		Formula: "{motor.thrust} x {motor.count}", Source: "as said", Basis: Said,
		Compute: func(v View) (float64, error) { return saidRating(v) * v.Of(MotorCount), nil },
	},
	{
		Name: "rating said", Gives: RatedThrust, Needs: []ID{MotorThrust}, May: []ID{MomentumLimit, MotorDrive},
		Formula: "{motor.thrust}", Source: "as said", Basis: Said,
		Compute: func(v View) (float64, error) { return saidRating(v), nil },
	},
	{
		Name: "class at the voltage said", Gives: RatedThrust, Needs: []ID{ThrustNeed, MotorVoltage}, Said: boatSaid, When: knowsBoat,
		Formula: "the next rating built for {motor.voltage} that is not below {thrust.need}", Source: sourceMotors, Basis: Practice, Ladder: true,
		Compute: func(v View) (float64, error) {
			return classAt(v, v.Voltage(MotorVoltage), v.Force(ThrustNeed)).Newtons(), nil
		},
	},
	{
		Name: "classes of several motors", Gives: RatedThrust, Needs: []ID{ThrustClass, MotorCount}, Said: boatSaid,
		When:    func(v View) bool { return v.Of(MotorCount) > 1 && knowsBoat(v) },
		Formula: "{thrust.class} x {motor.count}", Source: sourceMotors, Basis: Practice, Ladder: true,
		Compute: func(v View) (float64, error) { return v.Of(ThrustClass) * v.Of(MotorCount), nil },
	},
	{
		Name: "rating of the class", Gives: RatedThrust, Needs: []ID{ThrustClass}, Said: boatSaid, When: knowsBoat,
		Formula: "{thrust.class}", Source: sourceMotors, Basis: Practice, Ladder: true,
		Compute: func(v View) (float64, error) { return v.Of(ThrustClass), nil },
	},
	{
		Name: "largest rating", Gives: RatedThrust, Needs: []ID{LoadTotal}, May: []ID{ThrustClass, MotorCount}, Said: boatSaid,
		When:    noClass,
		Formula: "the largest rating sold: no single motor meets the need", Source: sourceMotors, Basis: Practice, Ladder: true,
		Compute: func(v View) (float64, error) {
			v.Warn("the largest single rating is below the need: what follows is for that motor")
			return largest(v) * max(v.Of(MotorCount), 1), nil
		},
	},
	{
		Name: "rating by current", Gives: RatedThrust, Needs: []ID{MotorAmps, SystemVoltage}, Source: sourceMotors, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			n := typical.RatingOfWatts(unit.Watts(v.Of(MotorAmps) * v.Of(SystemVoltage))).Newtons()
			return Guess{Value: band.Of(0.88*n, n, 1.12*n), Why: "a motor that draws so much"}, true
		},
	},
	{
		Name: "usual rating of the voltage", Gives: RatedThrust, Needs: []ID{SystemVoltage}, Source: sourceMotors, Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			b := typical.UsualRating(v.Voltage(SystemVoltage))
			return Guess{Value: b, Why: fmt.Sprintf("a %.0f-lb motor unless you say", unit.Force(b.Nominal).PoundForce())}, true
		},
	},
	{
		Name: "thrust in reverse", Gives: ReverseThrust, Needs: []ID{RatedThrust, ReverseShare}, May: []ID{MountPlace},
		When:    func(v View) bool { return v.Word(MountPlace) == "transom" },
		Formula: "{motor.rating} x {motor.reverse-share}", Source: typical.FromMemory, Basis: Practice,
		Compute: func(v View) (float64, error) { return v.Of(RatedThrust) * v.Of(ReverseShare), nil },
	},
	constant("share of thrust in reverse", ReverseShare, typical.Reverse, "a prop is shaped for one way", typical.FromMemory),
	{
		Name: "most thrust of a power", Gives: MomentumLimit, Needs: []ID{MotorThrust, MotorAmps, SystemVoltage, MotorEfficiency},
		Formula: "cube root of 2 x 998 kg/m3 x the disk of a {motor.thrust} motor's prop x ({system.voltage} x {motor.amps} x {motor.efficiency})^2",
		Source:  "momentum theory, T^3 = 2 rho A P^2", Basis: Model,
		Compute: func(v View) (float64, error) {
			p := unit.Watts(v.Of(SystemVoltage) * v.Of(MotorAmps) * v.Of(MotorEfficiency))
			return prop.StaticThrust(prop.FreshWater, prop.DiskArea(typical.PropOf(v.Force(MotorThrust))), p).Newtons(), nil
		},
	},
	{
		Name: "efficiency at rest", Gives: MotorEfficiency, May: []ID{MotorDrive}, Source: sourceMotors, Basis: Model,
		Assume: func(v View) (Guess, bool) {
			if v.Word(MotorDrive) == "brushless" {
				return Guess{Value: typical.EfficiencyBrushless, Constant: true, Why: "brushless"}, true
			}
			return Guess{Value: typical.EfficiencyBrushed, Constant: true, Why: "brushed"}, true
		},
	},

	{
		Name: "currents said", Gives: MotorCurrent, Needs: []ID{MotorAmps, MotorCount},
		When:    func(v View) bool { return v.Of(MotorCount) > 1 },
		Formula: "{motor.amps} x {motor.count}", Source: "as said", Basis: Said,
		Compute: func(v View) (float64, error) { return v.Of(MotorAmps) * v.Of(MotorCount), nil },
	},
	{
		Name: "current said", Gives: MotorCurrent, Needs: []ID{MotorAmps},
		Formula: "{motor.amps}", Source: "as said", Basis: Said,
		Compute: func(v View) (float64, error) { return v.Of(MotorAmps), nil },
	},
	constant("spread of the current", MotorSpread, typical.CurrentSpread, "motors of one rating differ", sourceMotors),
	{
		Name: "usual power of the rating", Gives: MotorWatts, Needs: []ID{RatedThrust}, May: []ID{MotorDrive, MotorCount},
		Formula: "of a motor of {motor.rating}, between the classes; brushless 10 % less", Source: sourceMotors, Basis: Practice,
		Compute: usualWatts,
	},
	{
		Name: "current by power", Gives: MotorCurrent, Needs: []ID{MotorWatts, MotorSpread, RatedVolts},
		Formula: "{motor.watts} x {motor.current-spread} / {motor.volts}", Source: sourceMotors, Basis: Practice,
		Compute: func(v View) (float64, error) {
			if v.Of(RatedVolts) <= 0 {
				return 0, &RangeError{Cell: RatedVolts, Value: v.Of(RatedVolts), Low: 12, High: 48}
			}
			return v.Of(MotorWatts) * v.Of(MotorSpread) / v.Of(RatedVolts), nil
		},
	},
	{
		Name: "power at full throttle", Gives: MotorPower, Needs: []ID{RatedVolts, MotorCurrent},
		Formula: "{motor.volts} x {motor.current}", Source: "power is volts times amperes", Basis: Model,
		Compute: func(v View) (float64, error) { return v.Of(RatedVolts) * v.Of(MotorCurrent), nil },
	},
	{
		Name: "free-running speed", Gives: MotorFreeSpeed, Needs: []ID{RatedVolts}, Source: sourceMotors, Basis: Model,
		Assume: func(v View) (Guess, bool) {
			return Guess{Value: typical.FreeSpeed(v.Voltage(RatedVolts)), Constant: true, Why: "by voltage"}, true
		},
	},

	{
		Name: "idle draw", Gives: MotorIdle, May: []ID{MotorControl}, Source: sourceMotors, Basis: Model,
		Assume: func(v View) (Guess, bool) {
			switch v.Word(MotorControl) {
			case "foot-electric", "remote":
				return Guess{Value: typical.IdleSteered, Constant: true, Why: "electric steering and its remote"}, true
			}
			return Guess{Value: typical.IdlePlain, Constant: true, Why: "a plain variable control"}, true
		},
	},
	constant("controller efficiency", ControlLoss, typical.ControllerEfficiency, "the electronics keep a little", sourceMotors),
	{
		Name: "exponent of the dial", Gives: DialExponent, Source: sourceDial, Basis: Model,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: band.Of(prop.DialCurrentLow, prop.DialCurrent, prop.DialCurrentHigh), Constant: true, Why: "by armature resistance"}, true
		},
	},
	{
		Name: "variable speed unless said", Gives: MotorSpeeds, Needs: []ID{SystemVoltage}, May: []ID{MotorDrive},
		Source: typical.CommonPractice, Basis: Practice,
		Assume: func(v View) (Guess, bool) {
			g := Guess{Word: "variable", Why: "variable speed unless you say"}
			if v.Of(SystemVoltage) < 18 && v.Word(MotorDrive) != "brushless" {
				g.Others = []string{"fixed"}
			}
			return g, true
		},
	},

	{
		Name: "dial said", Gives: CruiseThrottle, Needs: []ID{UseThrottle},
		Formula: "{use.throttle}", Source: "as said", Basis: Said,
		Compute: func(v View) (float64, error) { return v.Of(UseThrottle), dialInRange(v) },
	},
	{
		Name: "thrust at a trolling speed", Gives: CruisePull, Needs: append([]ID{UseSpeed}, hullNeeds...),
		Formula: fmt.Sprintf(dragFormula, UseSpeed), Term: dragTerm(UseSpeed), Source: sourceDrag, Basis: Model,
		Compute: func(v View) (float64, error) {
			d, err := dragAt(v, v.Speed(UseSpeed))
			warnSpeed(v, v.Speed(UseSpeed))
			return d.Newtons(), err
		},
	},
	{
		Name: "thrust share of a five-speed dial", Gives: CruiseTau, Needs: []ID{UseThrottle, MotorSpeeds},
		When:    func(v View) bool { return v.Word(MotorSpeeds) == "fixed" },
		Formula: "the speed nearest {use.throttle} of five", Source: sourceSwitch, Basis: Model,
		Compute: func(v View) (float64, error) { return prop.FixedThrust(v.Of(UseThrottle)), dialInRange(v) },
	},
	{
		Name: "thrust share of the dial", Gives: CruiseTau, Needs: []ID{UseThrottle},
		Formula: "{use.throttle}^1.6", Source: sourceDial, Basis: Model,
		Compute: func(v View) (float64, error) { return prop.VariableThrust(v.Of(UseThrottle)), dialInRange(v) },
	},
	{
		Name: "thrust share for a speed", Gives: CruiseTau, Needs: []ID{UseSpeed, CruisePull, RatedThrust, MotorFreeSpeed},
		Formula: "the share s with {motor.rating} x (s - square root of s x {use.speed} / {motor.free-speed}) = {cruise.thrust}",
		Source:  "thrust of a fixed prop at a part of its speed (from memory)", Basis: Model,
		Compute: func(v View) (float64, error) {
			tau := prop.ShareFor(v.Force(RatedThrust), v.Force(CruisePull), v.Speed(UseSpeed), v.Speed(MotorFreeSpeed))
			if tau > 1 {
				return 0, &RangeError{Cell: UseSpeed, Value: v.Of(UseSpeed), Text: "more than this motor makes with this boat"}
			}
			return tau, nil
		},
	},

	{
		Name: "current by way of fishing", Gives: CruiseMean, Needs: []ID{UseStyle}, Said: []ID{WindSpeed},
		Source: "mean current by way of fishing, from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			s, ok := typical.StyleOf(v.Word(UseStyle), v.Speed(WindSpeed), v.Said(WindSpeed))
			if !ok {
				return Guess{}, false
			}
			return Guess{Value: s.Share, Why: s.Name}, true
		},
	},
	{
		Name: "current over a day's fishing", Gives: CruiseMean,
		Source: "mean current over a day, from memory", Basis: Estimate,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: typical.AnyStyle, Why: "a day of fishing in short bursts, unless you say how you fish"}, true
		},
	},

	{
		Name: "variable, by duty profile", Gives: VariableShare, Needs: []ID{DialExponent}, When: hasDuty,
		Formula: "mean over the hours of each dial position^{cruise.dial-exponent}", Source: sourceDial, Basis: Model,
		Compute: func(v View) (float64, error) {
			return meanOver(v.Duty(), func(d float64) float64 { return prop.VariableCurrent(d, v.Of(DialExponent)) })
		},
	},
	{
		Name: "variable, by the dial", Gives: VariableShare, Needs: []ID{UseThrottle, DialExponent},
		Formula: "{use.throttle}^{cruise.dial-exponent}", Source: sourceDial, Basis: Model,
		Compute: func(v View) (float64, error) {
			return prop.VariableCurrent(v.Of(UseThrottle), v.Of(DialExponent)), dialInRange(v)
		},
	},
	{
		Name: "variable, for a speed", Gives: VariableShare, Needs: []ID{UseSpeed, CruiseTau, ControlLoss},
		Formula: "at {use.speed}, {cruise.thrust-fraction}^1.5 / {motor.controller-efficiency}, at most 1", Source: sourceChopper, Basis: Model,
		Compute: func(v View) (float64, error) {
			return min(prop.ModulatedShare(v.Of(CruiseTau))/v.Of(ControlLoss), 1), nil
		},
	},
	{
		Name: "variable, by way of fishing", Gives: VariableShare, Needs: []ID{CruiseMean}, May: []ID{UseSpeed, UseThrottle},
		When:    noThrottle,
		Formula: "{use.mean-current}", Source: "mean current by way of fishing, from memory", Basis: Estimate,
		Compute: func(v View) (float64, error) { return v.Of(CruiseMean), nil },
	},
	{
		Name: "fixed, by duty profile", Gives: FixedShare, When: hasDuty,
		Formula: "mean over the hours of the speed of five nearest each dial position", Source: sourceSwitch, Basis: Model,
		Compute: func(v View) (float64, error) { return meanOver(v.Duty(), prop.FixedThrust) },
	},
	{
		Name: "fixed, by the dial", Gives: FixedShare, Needs: []ID{UseThrottle},
		Formula: "the speed nearest {use.throttle} of five: current share is thrust share", Source: sourceSwitch, Basis: Model,
		Compute: func(v View) (float64, error) {
			return prop.ResistorShare(prop.FixedThrust(v.Of(UseThrottle))), dialInRange(v)
		},
	},
	{
		Name: "fixed, for a speed", Gives: FixedShare, Needs: []ID{UseSpeed, CruiseTau},
		Formula: "at {use.speed}, the lowest speed of five that gives {cruise.thrust-fraction} of thrust: current share is thrust share", Source: sourceSwitch, Basis: Model,
		Compute: func(v View) (float64, error) {
			tau, err := prop.FixedStepFor(v.Of(CruiseTau))
			return prop.ResistorShare(tau), err
		},
	},
	{
		Name: "fixed, by way of fishing", Gives: FixedShare, Needs: []ID{CruiseMean}, May: []ID{UseSpeed, UseThrottle},
		When:    noThrottle,
		Formula: "{use.mean-current} x 2, at most 1", Source: "twice a variable control's, from memory", Basis: Estimate,
		Compute: func(v View) (float64, error) { return min(typical.FixedAgainstVariable*v.Of(CruiseMean), 1), nil },
	},
	{
		Name: "current in use, variable", Gives: CruiseVariable, Needs: []ID{MotorCurrent, VariableShare, MotorIdle},
		Formula: "{motor.current} x {cruise.share-variable} + {motor.idle}, at most {motor.current}", Source: sourceDial, Basis: Model,
		Compute: variableDraw,
	},
	{
		Name: "current in use, five speeds", Gives: CruiseFixed, Needs: []ID{MotorCurrent, FixedShare},
		Formula: "{motor.current} x {cruise.share-fixed}", Source: sourceSwitch, Basis: Model,
		Compute: func(v View) (float64, error) { return v.Of(MotorCurrent) * v.Of(FixedShare), nil },
	},
	{
		Name: "cruise on five speeds", Gives: CruiseCurrent, Needs: []ID{MotorSpeeds, MotorCurrent, FixedShare},
		When:    func(v View) bool { return v.Word(MotorSpeeds) == "fixed" },
		Formula: "{motor.current} x {cruise.share-fixed}", Source: sourceSwitch, Basis: Model,
		Compute: func(v View) (float64, error) { return v.Of(MotorCurrent) * v.Of(FixedShare), nil },
	},
	{
		Name: "cruise on variable speed", Gives: CruiseCurrent, Needs: []ID{MotorSpeeds, MotorCurrent, VariableShare, MotorIdle},
		When:    func(v View) bool { return v.Word(MotorSpeeds) != "fixed" },
		Formula: "{motor.current} x {cruise.share-variable} + {motor.idle}, at most {motor.current}", Source: sourceDial, Basis: Model,
		Compute: variableDraw,
	},
	{
		Name: "share of full current in use", Gives: CruiseShare, Needs: []ID{CruiseCurrent, MotorCurrent},
		Formula: "{cruise.current} / {motor.current}", Source: "by definition", Basis: Model,
		Compute: func(v View) (float64, error) { return v.Of(CruiseCurrent) / v.Of(MotorCurrent), nil },
	},

	{
		Name: "speed said", Gives: CruiseSpeed, Needs: []ID{UseSpeed},
		Formula: "{use.speed}", Source: "as said", Basis: Said,
		Compute: func(v View) (float64, error) { return v.Of(UseSpeed), nil },
	},
	{
		Name: "speed at the dial", Gives: CruiseSpeed, Needs: append([]ID{CruiseTau, RatedThrust, MotorFreeSpeed}, hullNeeds...),
		Formula: "where {motor.rating} at {cruise.thrust-fraction} of its thrust, running free at {motor.free-speed}, meets the hull's drag",
		Source:  sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) { return speedAt(v, v.Of(CruiseTau)) },
	},
	{
		Name: "speed by way of fishing", Gives: CruiseSpeed, Needs: append([]ID{VariableShare, RatedThrust, MotorFreeSpeed}, hullNeeds...),
		Formula: "where {motor.rating} at {cruise.share-variable}^(2/3) of its thrust, running free at {motor.free-speed}, meets the hull's drag",
		Source:  sourceBalance, Basis: Estimate,
		Compute: func(v View) (float64, error) { return speedAt(v, math.Cbrt(v.Of(VariableShare)*v.Of(VariableShare))) },
	},
	{
		Name: "top speed", Gives: SpeedTop, Needs: append([]ID{RatedThrust, MotorFreeSpeed}, hullNeeds...), May: []ID{BoatHull},
		Formula: "where {motor.rating} x (1 - {speed.top} / {motor.free-speed}) = " + dragParts,
		Term:    dragTerm(SpeedTop),
		Source:  sourceBalance, Basis: Model,
		Compute: topSpeed,
	},

	{
		Name: "current held against wind", Gives: HoldCurrent,
		Needs: append([]ID{RatedThrust, MotorFreeSpeed, ThrustMargin, WindDrift, WindForce, WindAllowance}, hullNeeds...), Said: []ID{WindSpeed},
		When:    func(v View) bool { return v.Said(WindSpeed) },
		Formula: "speed where {motor.rating} x (1 - speed / {motor.free-speed}) meets hull drag + {wind.force} + {wind.allowance}, less {thrust.control-margin} and {wind.drift}",
		Source:  sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) {
			return holdCurrent(v, v.Force(WindForce)+v.Force(WindAllowance), v.Of(WindDrift)+v.Of(ThrustMargin))
		},
	},
	{
		Name: "current held in a calm", Gives: HoldCurrent, Needs: append([]ID{RatedThrust, MotorFreeSpeed, ThrustMargin}, hullNeeds...),
		Formula: "speed where {motor.rating} x (1 - speed / {motor.free-speed}) meets hull drag, less {thrust.control-margin}",
		Source:  sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) { return holdCurrent(v, 0, v.Of(ThrustMargin)) },
	},
	{
		Name: "wind held at full throttle", Gives: HoldWind, Needs: append(holdNeeds, hullNeeds...), May: []ID{CurrentSpeed, ChopForce},
		Formula: "wind where {motor.rating} x (1 - way / {motor.free-speed}), there {=left} at a way of {=way}, meets the gusts on {wind.drag-area}, {=push} + {=allowance}, and hull drag, {=drag}",
		Term:    holdTerm(HoldWind, func(View) float64 { return 1 }),
		Source:  sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) { return holdWind(v, 1) },
	},
	{
		Name: "thrust held all day on five speeds", Gives: HoldShare, Needs: []ID{MotorSpeeds}, Source: sourceSwitch, Basis: Practice,
		When: func(v View) bool { return v.Word(MotorSpeeds) == "fixed" },
		Assume: func(View) (Guess, bool) {
			return Guess{Value: band.Of(prop.FixedSteps[1], prop.FixedSteps[2], prop.FixedSteps[2]), Constant: true, Why: "the third speed of five"}, true
		},
	},
	constant("half thrust all day", HoldShare, typical.LongRun, "what can be asked of motor and batteries for hours", typical.CommonPractice),
	{
		Name: "wind held all day", Gives: HoldWindDay, Needs: append(append([]ID{HoldShare}, holdNeeds...), hullNeeds...), May: []ID{CurrentSpeed, ChopForce},
		Formula: "wind where {hold.share} of {motor.rating}, running free at {motor.free-speed} x square root of {hold.share}, there {=left} at a way of {=way}, meets the gusts on {wind.drag-area}, {=push} + {=allowance}, and hull drag, {=drag}",
		Term:    holdTerm(HoldWindDay, func(v View) float64 { return v.Of(HoldShare) }),
		Source:  sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) { return holdWind(v, v.Of(HoldShare)) },
	},
	{
		Name: "current when holding all day, five speeds", Gives: HoldDayCurrent, Needs: []ID{MotorSpeeds, MotorCurrent, HoldShare},
		When:    func(v View) bool { return v.Word(MotorSpeeds) == "fixed" },
		Formula: "{motor.current} x {hold.share}", Source: sourceSwitch, Basis: Model,
		Compute: func(v View) (float64, error) { return v.Of(MotorCurrent) * prop.ResistorShare(v.Of(HoldShare)), nil },
	},
	{
		Name: "current when holding all day", Gives: HoldDayCurrent, Needs: []ID{MotorCurrent, HoldShare, ControlLoss, MotorIdle},
		Formula: "{motor.current} x {hold.share}^1.5 / {motor.controller-efficiency} + {motor.idle}", Source: sourceChopper, Basis: Model,
		Compute: func(v View) (float64, error) {
			return v.Of(MotorCurrent)*prop.ModulatedShare(v.Of(HoldShare))/v.Of(ControlLoss) + v.Of(MotorIdle), nil
		},
	},
}

// holdNeeds are the cells that holdWind reads besides the hull's.
var holdNeeds = []ID{RatedThrust, MotorFreeSpeed, ThrustMargin, WindDragArea, WindHeightFactor, WindGustFactor, WindYaw, WindDriftShare}

func hasDuty(v View) bool { return len(v.Duty()) > 0 }

// noThrottle is true where neither a dial nor a speed nor a profile was given: a
// speed that the motor cannot make must not fall back on a typical day.
func noThrottle(v View) bool { return !v.Has(UseSpeed) && !v.Has(UseThrottle) && !hasDuty(v) }

func dialInRange(v View) error {
	if d := v.Of(UseThrottle); !(d >= 0 && d <= 1) {
		return &RangeError{Cell: UseThrottle, Value: d, Low: 0, High: 1}
	}
	return nil
}

// meanOver is the mean share of full current over a duty profile.
func meanOver(duty []Stretch, share func(dial float64) float64) (float64, error) {
	var sum, hours float64
	for _, s := range duty {
		if !(s.Throttle >= 0 && s.Throttle <= 1) {
			return 0, &RangeError{Cell: UseThrottle, Value: s.Throttle, Low: 0, High: 1}
		}
		sum += share(s.Throttle) * s.Hours.Hours()
		hours += s.Hours.Hours()
	}
	if hours <= 0 {
		return 0, &RangeError{Cell: UseHours, Text: "a profile needs hours"}
	}
	return sum / hours, nil
}

func variableDraw(v View) (float64, error) {
	full := v.Of(MotorCurrent)
	return min(full*v.Of(VariableShare)+v.Of(MotorIdle), full), nil
}

// saidRating is the rating said, with a warning where it is more than the power
// said can make; a tenth over is let pass.
func saidRating(v View) float64 {
	claim := v.Of(MotorThrust)
	if v.Has(MomentumLimit) && v.Noting() {
		// The limit is for the nominal efficiency; the best of its band makes
		// (best/nominal)^(2/3) more.
		limit := v.Of(MomentumLimit) * bestThrust(v)
		if claim > 1.1*limit {
			v.Warn(fmt.Sprintf("this current cannot make so much thrust: about %s is the most a good motor makes of it",
				unit.Show(limit, unit.Thrust, unit.US)))
		}
	}
	return claim
}

// bestThrust is how much more thrust the best motor of a kind makes of a power
// than the usual one, with the cube root of the square of its efficiency.
func bestThrust(v View) float64 {
	e := typical.EfficiencyBrushed
	if v.Word(MotorDrive) == "brushless" {
		e = typical.EfficiencyBrushless
	}
	r := e.High / e.Nominal
	return math.Cbrt(r * r)
}

// noClass is true for a known boat that asks for more than any class gives.
func noClass(v View) bool { return knowsBoat(v) && !v.Has(ThrustClass) }

// largest is the top of the ladder of ratings.
func largest(v View) float64 {
	l := v.Ladder(ThrustClass, ThrustLadder)
	return l[len(l)-1]
}

// usualWatts is the power of the rating by the table of classes, of each motor
// where there are several.
func usualWatts(v View) (float64, error) {
	n := max(v.Of(MotorCount), 1)
	each := v.Force(RatedThrust) / unit.Force(n)
	w, ok := typical.MotorWatts(each)
	if !ok {
		return 0, &RangeError{Cell: RatedThrust, Value: each.Newtons(), Low: typical.LeastRating.Newtons(), High: typical.MostRating.Newtons()}
	}
	if v.Word(MotorDrive) == "brushless" {
		w *= typical.BrushlessCurrent
	}
	return n * w.Watts(), nil
}

// classVolts is the voltage of a rating, with a note where classes overlap.
func classVolts(v View, rating unit.Force) float64 {
	volts := typical.ClassVolts(rating)
	if lb := rating.PoundForce(); v.Noting() {
		switch {
		case lb >= 89.5 && lb <= 100.5:
			v.Warn("motors of this size are built for 24 and for 36 volts: read the label")
		case lb > 55.5 && lb < 69.5:
			v.Warn("motors of this size are built for 12 and for 24 volts: read the label")
		}
	}
	return volts.Volts()
}

// classAt is the smallest rating built for a voltage that is not below a need,
// or the largest, with a warning, where none suffices.
func classAt(v View, volts unit.Voltage, need unit.Force) unit.Force {
	at := typical.ClassesAt(volts)
	if len(at) == 0 {
		return unit.Newtons(typical.UsualRating(volts).Nominal)
	}
	for _, c := range at {
		if c.Rating >= need*(1-1e-9) {
			return c.Rating
		}
	}
	v.Warn(fmt.Sprintf("the largest rating usual on %.0f volts is below the need", volts.Volts()))
	return at[len(at)-1].Rating
}

// startNear is where a search for a speed may start, with what the cell leaves off.
func startNear(v View, less float64) prop.Near {
	if v.Near() <= 0 {
		return prop.Near{}
	}
	return prop.Near{Speed: unit.Speed(v.Near() + less), Rough: v.AtBandEnd()}
}

// speedAt is the speed in still water at a share of full thrust.
func speedAt(v View, share float64) (float64, error) {
	drag := dragCurve(v)
	u := prop.TopSpeed(v.Force(RatedThrust), share, v.Speed(MotorFreeSpeed), startNear(v, 0), drag.at)
	return u.MetresPerSecond(), nil
}

func topSpeed(v View) (float64, error) {
	u, err := speedAt(v, 1)
	if err != nil {
		return 0, err
	}
	warnSpeed(v, unit.Speed(u))
	if h := v.Word(BoatHull); (h == typical.Canoe || h == typical.Kayak) && v.Force(RatedThrust) > typical.NoGainRating*(1+1e-9) {
		v.Warn("past about 40 lb a boat this light gains almost no speed: a smaller motor does")
	}
	return u, nil
}

// holdCurrent is the current held with a steady push on the boat besides.
func holdCurrent(v View, push unit.Force, margin float64) (float64, error) {
	rating, free, drag := v.Force(RatedThrust), v.Speed(MotorFreeSpeed), dragCurve(v)
	u := prop.Crossing(0, free, startNear(v, margin), func(u unit.Speed) unit.Force {
		return prop.Available(rating, u, free) - drag.at(u) - push
	})
	if held := u.MetresPerSecond() - margin; held > 0 {
		return held, nil
	}
	v.Warn("nothing is left to hold against a current")
	return 0, nil
}

// highestWind bounds the search for the wind that a motor holds: a storm.
const highestWind unit.Speed = 30

// A holding is what a boat that holds against a wind is reckoned from: the
// balance of ThrustBalance, without its reserve.
type holding struct {
	rating       unit.Force
	share        float64
	free, margin unit.Speed // margin: current and way to keep control
	drift, aloft unit.Speed // shares of the forecast wind
	area         unit.Area
	gust, yaw    float64
	chop         unit.Force
	drag         curve
}

func holdingOf(v View, share float64) holding {
	return holding{
		rating: v.Force(RatedThrust), share: share, free: v.Speed(MotorFreeSpeed),
		margin: v.Speed(CurrentSpeed) + v.Speed(ThrustMargin), drift: v.Speed(WindDriftShare), aloft: v.Speed(WindHeightFactor),
		area: v.Area(WindDragArea), gust: v.Of(WindGustFactor), yaw: v.Of(WindYaw), chop: v.Force(ChopForce), drag: dragCurve(v),
	}
}

func (h *holding) way(w unit.Speed) unit.Speed { return h.margin + h.drift*w }

func (h *holding) left(w unit.Speed) unit.Force {
	return prop.PartAvailable(h.rating, h.share, h.way(w), h.free)
}

func (h *holding) push(w unit.Speed) unit.Force { return wind.Force(w*h.aloft, h.area) }

func (h *holding) allowance(push unit.Force) unit.Force {
	return prop.Pull(0, wind.GustAllowance(push, h.gust), wind.YawAllowance(push, h.yaw), h.chop)
}

// surplus is the thrust that is left over in a forecast wind.
func (h *holding) surplus(w unit.Speed) unit.Force {
	push := h.push(w)
	return h.left(w) - push - h.allowance(push) - h.drag.at(h.way(w))
}

// holdTerm gives the parts of the balance at the wind that a cell holds.
func holdTerm(held ID, share func(View) float64) func(v View, name string) (float64, unit.Form) {
	return func(v View, name string) (float64, unit.Form) {
		h, w := holdingOf(v, share(v)), v.Speed(held)
		switch name {
		case "way":
			return h.way(w).MetresPerSecond(), unit.Pace
		case "left":
			return h.left(w).Newtons(), unit.Thrust
		case "push":
			return h.push(w).Newtons(), unit.Thrust
		case "allowance":
			return h.allowance(h.push(w)).Newtons(), unit.Thrust
		}
		return h.drag.at(h.way(w)).Newtons(), unit.Thrust
	}
}

// holdWind is the forecast wind whose gusts a share of full thrust holds, in the
// current and the waves that were said.
func holdWind(v View, share float64) (float64, error) {
	h := holdingOf(v, share)
	w := prop.Crossing(0, highestWind, startNear(v, 0), h.surplus)
	switch mph := w.MilesPerHour(); {
	case w <= 0:
		v.Warn("the current alone takes all of this thrust: no wind is held")
	case mph > 25:
		v.Warn("above some 25 mph (11 m/s) waves decide, not thrust: take this as thrust to spare, not as leave to go out")
	}
	return w.MetresPerSecond(), nil
}
