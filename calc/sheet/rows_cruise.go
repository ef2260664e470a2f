package sheet

import (
	"fmt"
	"strings"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// Inner cells of the motor in use. The dial, the share of thrust and the share of
// current are three things, each a cell of its own: the dial is UseThrottle.
var (
	CruiseTau   = inner("cruise.thrust-fraction", unit.Fraction, "Share of full thrust in use")
	CruiseShare = inner("cruise.current-fraction", unit.Fraction, "Share of full current in use")

	MotorIdle      = inner("motor.idle", unit.Ampere, "Idle draw")
	ControlLoss    = inner("motor.controller-efficiency", unit.Fraction, "Controller efficiency")
	DialExponent   = inner("cruise.dial-exponent", unit.Factor, "Power of the dial that current follows")
	CruiseMean     = inner("use.mean-current", unit.Fraction, "Mean share of full current, by the way of fishing")
	VariableShare  = inner("cruise.share-variable", unit.Fraction, "Share of full current, variable speed")
	FixedShare     = inner("cruise.share-fixed", unit.Fraction, "Share of full current, five fixed speeds")
	CruiseFixed    = inner("cruise.current-fixed", unit.Ampere, "Current in use, five fixed speeds")
	CruiseVariable = inner("cruise.current-variable", unit.Ampere, "Current in use, variable speed")
	CruisePull     = inner("cruise.thrust", unit.Thrust, "Thrust at the trolling speed")
)

const (
	sourceChopper = "ideal chopper on a prop: current as the 1.5th power of thrust"
	sourceSwitch  = "resistor switch: battery current is the motor's own; steps from memory"
	sourceDial    = "permanent-magnet motor with armature resistance (exponent from memory)"
)

// cruiseRows: current at part throttle, by dial, by speed, by profile or by way of
// fishing, for both kinds of speed control.
var cruiseRows = []Row{
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
		Formula: "the share where {motor.rating} x ({cruise.thrust-fraction} - square root of {cruise.thrust-fraction} x {use.speed} / {motor.free-speed}) = {cruise.thrust}",
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
		Name: "current by way of fishing", Gives: CruiseMean, Needs: []ID{UseStyle}, May: []ID{CurrentSpeed}, Said: []ID{WindSpeed},
		Source: "mean current by way of fishing, from memory", Basis: Estimate,
		Assume: func(v View) (Guess, bool) {
			// A stream asks as much of a boat that holds as the wind of the same drag.
			air, told := v.Speed(WindSpeed), v.Said(WindSpeed)
			if w := typical.WindLike(v.Speed(CurrentSpeed)); w > 0 {
				air, told = max(w, air), true
			}
			s, ok := typical.StyleOf(v.Word(UseStyle), air, told)
			if !ok {
				return Guess{}, false
			}
			return Guess{Value: s.Share, Why: s.Name}, true
		},
	},
	{
		Name: "current in and out of a berth", Gives: CruiseMean, Said: []ID{UseDocking, BoatHull, UseStyle},
		Source: "mean current in a harbour, from memory", Basis: Estimate, When: berths,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: typical.HarbourStyle, Why: "in and out of the berth, at half to full throttle"}, true
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
		Spell: func(v View, write func(float64, unit.Form) string) string {
			return spellMean(v, write, func(d float64) string { return write(d, unit.Fraction) + "^" + write(v.Of(DialExponent), unit.Factor) })
		},
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
		Formula: "{cruise.thrust-fraction}^1.5 / {motor.controller-efficiency}, at most 100%", Source: sourceChopper, Basis: Model,
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
		Spell: func(v View, write func(float64, unit.Form) string) string {
			return spellMean(v, write, func(d float64) string { return write(prop.FixedThrust(d), unit.Fraction) })
		},
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
		Formula: "{use.mean-current} x 2, at most 100%", Source: "twice a variable control's, from memory", Basis: Estimate,
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
}

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

// spellMean writes a mean over the hours of a duty profile.
func spellMean(v View, write func(float64, unit.Form) string, share func(dial float64) string) string {
	var terms []string
	var hours float64
	for _, s := range v.Duty() {
		terms = append(terms, write(s.Hours.Hours(), unit.Hour)+" x "+share(s.Throttle))
		hours += s.Hours.Hours()
	}
	return "(" + strings.Join(terms, " + ") + ") / " + write(hours, unit.Hour)
}

func variableDraw(v View) (float64, error) {
	full := v.Of(MotorCurrent)
	return min(full*v.Of(VariableShare)+v.Of(MotorIdle), full), nil
}
