package sheet

import (
	"fmt"
	"math"
	"slices"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// Inner cells of the motor.
var (
	// RatedThrust is the rating of the motor in hand: the one said, otherwise
	// the class; of all motors together where there are several.
	RatedThrust = inner("motor.rating", unit.Rating, "Rated thrust")
	// RatedVolts is the motor's voltage: said, otherwise the system's.
	RatedVolts      = inner("motor.volts", unit.Volt, "Motor's supply voltage")
	MotorFreeSpeed  = inner("motor.free-speed", unit.Pace, "Speed at which thrust runs out")
	MotorWatts      = inner("motor.watts", unit.Watt, "Usual power of this rating")
	MotorSpread     = inner("motor.current-spread", unit.Factor, "Current of one motor, against the usual")
	MotorEfficiency = inner("motor.efficiency", unit.Fraction, "Electrical power that becomes thrust power")
	// MomentumLimit is the static thrust beyond which a rating cannot be had
	// from the current that was said.
	MomentumLimit = inner("motor.thrust-limit", unit.Thrust, "Most thrust this power can make")

	// ReverseThrust is what a transom motor pulls backwards.
	ReverseShare  = inner("motor.reverse-share", unit.Fraction, "Thrust in reverse, of forward")
	ReverseThrust = inner("motor.reverse-thrust", unit.Thrust, "Thrust in reverse")
)

const sourceMotors = "typical motors, from memory"

// motorRows: voltage, rating, current at full throttle; then the motor in use, and
// what it does for the boat.
var motorRows = slices.Concat(ratingRows, cruiseRows, holdRows)

// ratingRows: which motor it is.
var ratingRows = []Row{
	{
		Name: "voltage said", Gives: SystemVoltage, Needs: []ID{MotorVoltage},
		Formula: "{motor.voltage}", Source: "as said", Basis: Said,
		Compute: func(v View) (float64, error) { return v.Of(MotorVoltage), nil },
	},
	{
		Name: "voltage of the motor said", Gives: SystemVoltage, Needs: []ID{MotorThrust},
		Formula: "the voltage that {motor.thrust in lb} is usually built for", Source: sourceMotors, Basis: Practice, Ladder: true,
		Compute: func(v View) (float64, error) { return classVolts(v, v.Force(MotorThrust)), nil },
	},
	{
		Name: "voltage of the motor tried", Gives: SystemVoltage, Needs: []ID{SpeedThrust},
		Formula: "the voltage that {boat.speed-thrust in lb} is usually built for", Source: sourceMotors, Basis: Practice, Ladder: true,
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
		Formula: "the voltage that {thrust.class in lb} is usually built for", Source: sourceMotors, Basis: Practice, Ladder: true,
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
		Name: "class at the voltage said", Gives: RatedThrust, Needs: []ID{ThrustNeed, MotorVoltage}, May: []ID{MotorCount}, Said: boatSaid, When: knowsBoat,
		Formula: "the next rating built for {motor.voltage} that is not below {thrust.need}", Source: sourceMotors, Basis: Practice, Ladder: true,
		Spell: func(v View, write func(float64, unit.Form) string) string {
			if v.Of(RatedThrust) >= v.Of(ThrustNeed)*(1-1e-9) {
				return ""
			}
			return "the largest rating built for " + write(v.Of(MotorVoltage), unit.Volt) + ", below the need of " + write(v.Of(ThrustNeed), unit.Thrust)
		},
		Compute: func(v View) (float64, error) {
			return ratingAt(v), nil
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
		Formula: "cube root of (2 x {=density of water} kg/m3 x {=disk of such a motor's prop} x ({system.voltage} x {motor.amps} x {motor.efficiency})^2)", Yields: unit.Newton,
		Term: func(v View, name string) (float64, unit.Form) {
			if name == "density of water" {
				return prop.FreshWater.KilogramsPerCubicMetre(), unit.Factor
			}
			return prop.DiskArea(typical.PropOf(v.Force(MotorThrust))).SquareMetres(), unit.SquareMetre
		},
		Source: "momentum theory, T^3 = 2 rho A P^2", Basis: Model,
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
		Formula: "table of usual motors at {motor.rating in lb}, straight between its rows; brushless 10 % less", Source: sourceMotors, Basis: Practice,
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

// ratingAt is the smallest rating built for the voltage said that is not below
// the need, or the largest, with a warning, where none suffices.
func ratingAt(v View) float64 {
	r, ok := nextAt(v.Ladder(ThrustClass, ThrustLadder), v.Voltage(MotorVoltage), v.Of(ThrustNeed)/max(v.Of(MotorCount), 1))
	if !ok {
		v.Warn("the largest rating usual on this voltage is below the need")
	}
	if r == 0 {
		r = typical.UsualRating(v.Voltage(MotorVoltage)).Nominal
	}
	return r * max(v.Of(MotorCount), 1)
}
