package sheet

import (
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/calc/wind"
)

// Inner cells of speed and holding.
var (
	// CruiseSpeed is the speed in still water at the throttle in use.
	CruiseSpeed = inner("cruise.speed", unit.Pace, "Speed in use")

	HoldShare = inner("hold.share", unit.Fraction, "Share of full thrust that is held all day")
	// HoldDayCurrent is what holding all day draws, for the hours it lasts.
	HoldDayCurrent = inner("hold.current-draw", unit.Ampere, "Current when holding all day")
)

// holdRows: how fast the boat goes, and what wind and current it holds against.
var holdRows = []Row{
	{
		Name: "speed said", Gives: CruiseSpeed, Needs: []ID{UseSpeed},
		Formula: "{use.speed}", Source: "as said", Basis: Said,
		Compute: func(v View) (float64, error) { return v.Of(UseSpeed), nil },
	},
	{
		Name: "speed at the dial", Gives: CruiseSpeed, Needs: append([]ID{CruiseTau, RatedThrust, MotorFreeSpeed}, hullNeeds...),
		Formula: "where {motor.rating} x ({cruise.thrust-fraction} - square root of {cruise.thrust-fraction} x {cruise.speed} / {motor.free-speed}) = {=hull drag}",
		Term:    speedTerm(CruiseSpeed), Source: sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) { return speedAt(v, v.Of(CruiseTau)) },
	},
	{
		Name: "speed by way of fishing", Gives: CruiseSpeed, Needs: append([]ID{VariableShare, RatedThrust, MotorFreeSpeed}, hullNeeds...),
		Formula: "where {motor.rating} x ({cruise.share-variable}^(2 / 3) - {cruise.share-variable}^(1 / 3) x {cruise.speed} / {motor.free-speed}) = {=hull drag}",
		Term:    speedTerm(CruiseSpeed), Source: sourceBalance, Basis: Estimate,
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
		Formula: "{=way} - {thrust.control-margin} - {wind.drift}: the way where {motor.rating} x (1 - {=way} / {motor.free-speed}) = {=hull drag} + {wind.force} + {wind.allowance}",
		Term:    heldTerm(WindDrift), Spell: heldNone, Source: sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) {
			return holdCurrent(v, v.Force(WindForce)+v.Force(WindAllowance), v.Of(WindDrift)+v.Of(ThrustMargin))
		},
	},
	{
		Name: "current held in a calm", Gives: HoldCurrent, Needs: append([]ID{RatedThrust, MotorFreeSpeed, ThrustMargin}, hullNeeds...),
		Formula: "{=way} - {thrust.control-margin}: the way where {motor.rating} x (1 - {=way} / {motor.free-speed}) = {=hull drag}",
		Term:    heldTerm(), Spell: heldNone, Source: sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) { return holdCurrent(v, 0, v.Of(ThrustMargin)) },
	},
	{
		Name: "wind held at full throttle", Gives: HoldWind, Needs: append(holdNeeds, hullNeeds...), May: []ID{CurrentSpeed, ChopForce},
		Formula: "wind where {motor.rating} x (1 - {=way} / {motor.free-speed}) = {=steady push} + {=gusts, swinging and waves} + {=hull drag}: a push of {=half the air's density} x ({wind.height-factor} x {hold.wind})^2 x {wind.drag-area}, at a way of {current.speed} + {thrust.control-margin} + {wind.drift-share} x {hold.wind}",
		Term:    holdTerm(HoldWind, func(View) float64 { return 1 }), Spell: holdNone(HoldWind, func(View) float64 { return 1 }),
		Source: sourceBalance, Basis: Model,
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
		Formula: "wind where {motor.rating} x ({hold.share} - square root of {hold.share} x {=way} / {motor.free-speed}) = {=steady push} + {=gusts, swinging and waves} + {=hull drag}: a push of {=half the air's density} x ({wind.height-factor} x {hold.wind-allday})^2 x {wind.drag-area}, at a way of {current.speed} + {thrust.control-margin} + {wind.drift-share} x {hold.wind-allday}",
		Term:    holdTerm(HoldWindDay, func(v View) float64 { return v.Of(HoldShare) }), Spell: holdNone(HoldWindDay, func(v View) float64 { return v.Of(HoldShare) }),
		Source: sourceBalance, Basis: Model,
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

// speedTerm gives the hull's drag at the speed that a cell holds.
func speedTerm(at ID) func(v View, name string) (float64, unit.Form) {
	return func(v View, _ string) (float64, unit.Form) {
		drag := dragCurve(v)
		return drag.at(v.Speed(at)).Newtons(), unit.Thrust
	}
}

// heldTerm gives the way of a boat that holds against a current, and its drag.
// less are the cells that the way is greater by, besides the margin for control.
func heldTerm(less ...ID) func(v View, name string) (float64, unit.Form) {
	return func(v View, name string) (float64, unit.Form) {
		way := v.Speed(HoldCurrent) + v.Speed(ThrustMargin)
		for _, id := range less {
			way += v.Speed(id)
		}
		if name == "way" {
			return way.MetresPerSecond(), unit.Pace
		}
		drag := dragCurve(v)
		return drag.at(way).Newtons(), unit.Thrust
	}
}

// heldNone tells of a boat that stems no current at all.
func heldNone(v View, write func(float64, unit.Form) string) string {
	if v.Of(HoldCurrent) > 0 {
		return ""
	}
	return write(0, unit.Pace) + ", since the pull on the boat leaves nothing of " + write(v.Of(RatedThrust), unit.Rating)
}

// holdNone tells of a boat that holds no wind, and of one that holds more than is
// searched for.
func holdNone(held ID, share func(View) float64) func(v View, write func(float64, unit.Form) string) string {
	return func(v View, write func(float64, unit.Form) string) string {
		h, w := holdingOf(v, share(v)), v.Speed(held)
		if w > 0 && w < highestWind {
			return ""
		}
		said := write(float64(w), unit.Pace) + ", since "
		if w > 0 {
			return said + "no more is searched for"
		}
		return said + write(h.left(0).Newtons(), unit.Thrust) + " is left at a way of " + write(float64(h.way(0)), unit.Pace) + ", and the hull's drag there is " +
			write(h.drag.at(h.way(0)).Newtons(), unit.Thrust)
	}
}

// holdTerm gives the parts of the balance at the wind that a cell holds.
func holdTerm(held ID, share func(View) float64) func(v View, name string) (float64, unit.Form) {
	return func(v View, name string) (float64, unit.Form) {
		h, w := holdingOf(v, share(v)), v.Speed(held)
		switch name {
		case "way":
			return h.way(w).MetresPerSecond(), unit.Pace
		case "steady push":
			return h.push(w).Newtons(), unit.Thrust
		case "gusts, swinging and waves":
			return h.allowance(h.push(w)).Newtons(), unit.Thrust
		case "half the air's density":
			return wind.AirDensity / 2, unit.HalfDensity
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
