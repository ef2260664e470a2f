package sheet

import (
	"errors"
	"fmt"

	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
)

// Inner cells of the thrust need. "Way" is the speed through the water that the
// boat has to make in order to stay where it is and still answer.
var (
	ThrustRatio       = inner("thrust.ratio", unit.PerHundred, "Thrust per weight")
	ThrustRatioRaised = inner("thrust.ratio-raised", unit.PerHundred, "Thrust per weight, raised for the water")
	ThrustRuleRaised  = inner("thrust.rule-raised", unit.Thrust, "Thrust by weight, raised for the water")
	ThrustReserve     = inner("thrust.reserve", unit.Factor, "Reserve")
	ThrustMargin      = inner("thrust.control-margin", unit.Pace, "Way on to keep control")
	ThrustFree        = inner("thrust.free-speed", unit.Pace, "Speed at which a motor of this size runs out of thrust")

	WayWind     = inner("thrust.way-wind", unit.Pace, "Way against drift")
	WayCurrent  = inner("thrust.way-current", unit.Pace, "Way against the current")
	WayBoth     = inner("thrust.way", unit.Pace, "Way against current and drift")
	DragWind    = inner("thrust.drag-wind", unit.Thrust, "Hull drag against drift")
	DragCurrent = inner("thrust.drag-current", unit.Thrust, "Hull drag against the current")
	DragBoth    = inner("thrust.drag", unit.Thrust, "Hull drag against current and drift")
	PullWind    = inner("thrust.pull-wind", unit.Thrust, "Pull against the wind")
	PullBoth    = inner("thrust.pull", unit.Thrust, "Pull against wind and current")

	// ThrustBalance is the route by forces: the rating for wind, current, waves,
	// drift and swinging together.
	ThrustBalance = inner("thrust.balance", unit.Thrust, "Thrust by forces")
	// ThrustTroll is the rating that makes the trolling speed asked for.
	ThrustTroll = inner("thrust.troll", unit.Thrust, "Thrust for the trolling speed")
	// ThrustGoverns tells which route is the larger: "weight" or "forces".
	ThrustGoverns = word("thrust.governs", "What decides the thrust")
)

const (
	sourceDrag    = "ITTC-1957 friction, Delft systematic series, transom by Holtrop and Mennen"
	sourceRule    = "common practice, no published source"
	sourceBalance = "force balance; thrust falls in a straight line with speed (from memory)"
)

// boatSaid are the cells of which one at least must be said before a motor is
// chosen for a boat: a boat of which nothing is known decides nothing.
var boatSaid = []ID{LoadTotal, LoadDry, LoadSaid, BoatLength, BoatHull}

func knowsBoat(v View) bool {
	for _, id := range boatSaid {
		if v.Said(id) {
			return true
		}
	}
	return false
}

// thrustRows find the thrust by its two routes, and the class.
var thrustRows = []Row{
	{
		Name: "2 lb per 100 lb", Gives: ThrustRatio, Source: sourceRule, Basis: Practice,
		Formula: "2 lb per 100 lb, the least in ordinary water",
		Compute: func(View) (float64, error) { return prop.PlainRatio, nil },
	},
	{
		Name: "thrust by weight", Gives: ThrustRule,
		Needs:   []ID{LoadTotal, ThrustRatio},
		Formula: "{load.total} x {thrust.ratio}", Source: sourceRule, Basis: Practice,
		Compute: func(v View) (float64, error) {
			return prop.ByWeight(v.Mass(LoadTotal), v.Of(ThrustRatio)).Newtons(), nil
		},
	},
	{
		Name: "ratio raised for the water", Gives: ThrustRatioRaised,
		May:     []ID{BoatHull, CurrentSpeed, WaterWeeds},
		Said:    []ID{WindSpeed, WindGust, ChopHeight},
		When:    func(v View) bool { return raisedRatio(v) > prop.PlainRatio },
		Formula: "2.5 lb per 100 lb in wind, current or weeds and for a pontoon boat in light wind; 3 for other pontoon boats and in waves of a foot",
		Source:  sourceRule, Basis: Practice,
		Compute: func(v View) (float64, error) { return raisedRatio(v), nil },
	},
	{
		Name: "thrust by weight, raised", Gives: ThrustRuleRaised,
		Needs: []ID{LoadTotal, ThrustRatioRaised}, May: []ID{MotorCount},
		Formula: "{load.total} x {thrust.ratio-raised}", Source: sourceRule, Basis: Practice,
		Spell: func(v View, write func(float64, unit.Form) string) string {
			if v.Of(ThrustRuleRaised) >= prop.ByWeight(v.Mass(LoadTotal), v.Of(ThrustRatioRaised)).Newtons()*(1-1e-9) {
				return ""
			}
			return write(v.Of(LoadTotal), unit.Weight) + " x " + write(v.Of(ThrustRatioRaised), unit.PerHundred) + ", at most " + write(v.Of(ThrustRuleRaised), unit.Rating)
		},
		Compute: raisedByWeight,
	},

	{
		Name: "reserve", Gives: ThrustReserve, Source: typical.FromMemory, Basis: Model,
		Assume: func(View) (Guess, bool) {
			g := Guess{Constant: true, Why: "once, on the forces"}
			g.Value.Low, g.Value.Nominal, g.Value.High = prop.ReserveLow, prop.Reserve, prop.ReserveHigh
			return g, true
		},
	},
	constant("way on to keep control", ThrustMargin, typical.ControlMargin, "a boat without way on does not answer", typical.FromMemory),
	sum("way against drift", WayWind, WindDrift, ThrustMargin),
	sum("way against the current", WayCurrent, CurrentSpeed, ThrustMargin),
	{
		Name: "way against current and drift", Gives: WayBoth,
		Needs:   []ID{CurrentSpeed, WindDrift, ThrustMargin},
		Formula: "{current.speed} + {wind.drift} + {thrust.control-margin}", Source: sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) {
			return v.Of(CurrentSpeed) + v.Of(WindDrift) + v.Of(ThrustMargin), nil
		},
	},
	dragRow("hull drag against drift", DragWind, WayWind),
	dragRow("hull drag against the current", DragCurrent, WayCurrent),
	dragRow("hull drag against both", DragBoth, WayBoth),
	pull("pull against the wind", PullWind, DragWind),
	pull("pull against wind and current", PullBoth, DragBoth),
	freeSpeed("free speed against wind and current", PullBoth, WayBoth),
	freeSpeed("free speed against the wind", PullWind, WayWind),
	rating("thrust for the wind", ThrustWind, PullWind, WayWind),
	{
		Name: "thrust for the current", Gives: ThrustCurrent,
		Needs:   []ID{DragCurrent, ThrustReserve, WayCurrent, ThrustFree},
		Formula: "{thrust.drag-current} x {thrust.reserve} / (1 - {thrust.way-current} / {thrust.free-speed})",
		Source:  sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) { return ratedFor(v, DragCurrent, WayCurrent, CurrentSpeed) },
	},
	rating("thrust by forces", ThrustBalance, PullBoth, WayBoth),
	{
		Name: "thrust by forces in still water", Gives: ThrustBalance,
		Needs: []ID{ThrustWind}, May: []ID{CurrentSpeed},
		When:    func(v View) bool { return !v.Has(CurrentSpeed) },
		Formula: "{thrust.wind}", Source: sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) { return v.Of(ThrustWind), nil },
	},

	need("larger of raised weight and forces", ThrustRuleRaised, "raised rule of thumb"),
	need("larger of weight and forces", ThrustRule, "rule of thumb"),
	{
		Name: "forces alone", Gives: ThrustNeed,
		Needs:   []ID{ThrustBalance},
		Formula: "{thrust.balance}", Source: sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) { return v.Of(ThrustBalance), nil },
	},
	{
		Name: "what decides the thrust", Gives: ThrustGoverns,
		Needs: []ID{ThrustNeed}, May: []ID{ThrustBalance, ThrustRule, ThrustRuleRaised},
		Source: "weight and forces reckoned apart, and whichever asks for more", Basis: Model,
		Assume: func(v View) (Guess, bool) {
			g := Guess{Word: "weight", Constant: true, Why: "weight and forces reckoned apart, and whichever asks for more"}
			if v.Of(ThrustBalance) > max(v.Of(ThrustRule), v.Of(ThrustRuleRaised)) {
				g.Word = "forces"
			}
			return g, true
		},
	},
	{
		Name: "thrust class, each of several motors", Gives: ThrustClass,
		Needs: []ID{ThrustNeed, MotorCount}, Said: []ID{MotorVoltage, MotorThrust},
		When:    func(v View) bool { return v.Of(MotorCount) > 1 },
		Formula: "the next rating not below {thrust.need} / {motor.count}",
		Source:  "ladder of ratings from memory, or the shop's", Basis: Practice, Ladder: true,
		Compute: func(v View) (float64, error) { return class(v, v.Of(ThrustNeed)/v.Of(MotorCount)) },
	},
	{
		Name: "thrust class", Gives: ThrustClass,
		Needs: []ID{ThrustNeed}, Said: []ID{MotorVoltage, MotorThrust},
		Formula: "the next rating not below {thrust.need}",
		Source:  "ladder of ratings from memory, or the shop's", Basis: Practice, Ladder: true,
		Compute: func(v View) (float64, error) { return class(v, v.Of(ThrustNeed)) },
	},
	{
		Name: "thrust for the trolling speed", Gives: ThrustTroll,
		Needs:   append([]ID{UseSpeed, ThrustRule}, hullNeeds...),
		Formula: "hull drag at {use.speed} / (1 - {use.speed} / free-running speed of a motor of {thrust.rule})",
		Source:  sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) {
			d, err := dragAt(v, v.Speed(UseSpeed))
			if err != nil {
				return 0, err
			}
			free := typical.FreeSpeedOf(v.Force(ThrustRule)).Nominal
			r, err := prop.Rating(d, v.Speed(UseSpeed), unit.MetresPerSecond(free))
			return r.Newtons(), tooFast(err, UseSpeed, v)
		},
	},
}

// sum is the way against one thing: its speed and the margin for control.
func sum(name string, gives, a, b ID) Row {
	return Row{Name: name, Gives: gives, Needs: []ID{a, b},
		Formula: fmt.Sprintf("{%s} + {%s}", a, b), Source: sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) { return v.Of(a) + v.Of(b), nil }}
}

func dragRow(name string, gives, way ID) Row {
	return Row{Name: name, Gives: gives, Needs: append([]ID{way}, hullNeeds...),
		Formula: fmt.Sprintf(dragFormula, way), Term: dragTerm(way), Source: sourceDrag, Basis: Model,
		Compute: func(v View) (float64, error) {
			d, err := dragAt(v, v.Speed(way))
			return d.Newtons(), err
		}}
}

func pull(name string, gives, drag ID) Row {
	return Row{Name: name, Gives: gives, Needs: []ID{WindForce, WindAllowance, drag},
		Formula: fmt.Sprintf("{wind.force} + {wind.allowance} + {%s}", drag), Source: sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) {
			return v.Of(WindForce) + v.Of(WindAllowance) + v.Of(drag), nil
		}}
}

// freeSpeed is an assumption: the free-running speed of the size of motor that
// the pull asks for, found with that size itself.
func freeSpeed(name string, pull, way ID) Row {
	return Row{Name: name, Gives: ThrustFree, Needs: []ID{pull, way, ThrustReserve}, Source: typical.FromMemory, Basis: Model,
		Assume: func(v View) (Guess, bool) {
			size := sizeFor(v.Force(pull)*unit.Force(v.Of(ThrustReserve)), v.Speed(way))
			return Guess{Value: typical.FreeSpeedOf(size), Constant: true, Why: "of a motor of that size"}, true
		}}
}

// sizeFor is the rating R with R (1 - V / V0(R)) = pull. Free speed never falls
// with rating, so the left side rises and a bisection finds it; a way that no
// motor makes gives the largest.
func sizeFor(pull unit.Force, way unit.Speed) unit.Force {
	low, high := unit.Force(0), 2*typical.MostRating
	gap := func(r unit.Force) float64 {
		return float64(prop.Available(r, way, unit.Speed(typical.FreeSpeedOf(r).Nominal)) - pull)
	}
	if r := pull / unit.Force(max(1-float64(way)/typical.FreeSpeedOf(0).Nominal, 1e-6)); r <= unit.PoundForce(55) {
		return r // the straight stretch: one free speed
	}
	for range 40 {
		mid := (low + high) / 2
		if gap(mid) < 0 {
			low = mid
		} else {
			high = mid
		}
	}
	return (low + high) / 2
}

func rating(name string, gives, pull, way ID) Row {
	return Row{Name: name, Gives: gives, Needs: []ID{pull, ThrustReserve, way, ThrustFree},
		Formula: fmt.Sprintf("{%s} x {thrust.reserve} / (1 - {%s} / {thrust.free-speed})", pull, way),
		Source:  sourceBalance, Basis: Model,
		Compute: func(v View) (float64, error) { return ratedFor(v, pull, way, way) }}
}

func ratedFor(v View, pull, way, blame ID) (float64, error) {
	r, err := prop.Rating(v.Force(pull)*unit.Force(v.Of(ThrustReserve)), v.Speed(way), v.Speed(ThrustFree))
	if err == nil && r > beyond {
		return 0, &RangeError{Cell: blame, Value: v.Of(blame), Text: "takes several times the thrust of the largest electric motor: nothing of this kind holds against it"}
	}
	return r.Newtons(), tooFast(err, blame, v)
}

// beyond is where a rating stops being a number to act on: close to the speed at
// which a motor runs out of thrust the formula grows without bound.
var beyond = 2 * typical.MostRating

// tooFast names the cell that asks for more speed than a motor has.
func tooFast(err error, cell ID, v View) error {
	var s *prop.SpeedError
	if !errors.As(err, &s) {
		return err
	}
	return &RangeError{Cell: cell, Value: v.Of(cell), Low: 0, High: float64(s.Free),
		Text: "faster than an electric bow or transom motor runs: nothing of this kind holds against it"}
}

// need is the larger of a route by weight and the route by forces. A current
// that no motor stems must not leave the weight alone to decide.
func need(name string, weight ID, called string) Row {
	return Row{Name: name, Gives: ThrustNeed,
		Needs: []ID{weight}, May: []ID{ThrustBalance, CurrentSpeed, ThrustTroll}, Said: []ID{WindSpeed},
		Formula: fmt.Sprintf("the larger of {%s} and {thrust.balance}", weight),
		Aside: func(v View) []ID {
			if v.Of(ThrustBalance) > v.Of(weight) {
				return []ID{weight, CurrentSpeed, ThrustTroll}
			}
			return []ID{ThrustBalance, CurrentSpeed, ThrustTroll}
		},
		Source: "weight and forces reckoned apart, and whichever asks for more", Basis: Practice,
		Compute: func(v View) (float64, error) {
			w, f := v.Of(weight), v.Of(ThrustBalance)
			for _, water := range []ID{CurrentSpeed, WindSpeed} {
				// The route by forces failed: the weight alone must not decide.
				if !v.Has(ThrustBalance) && v.Said(water) && v.Of(water) > 0 {
					return 0, &RangeError{Cell: water, Value: v.Of(water),
						Text: "no motor of this kind holds against it: stay out of it, or use the main engine"}
				}
			}
			if v.Noting() {
				switch {
				case f > w:
					v.Warn(fmt.Sprintf("wind and water decide, %.0f%% above the %s", 100*(f/w-1), called))
				case v.Has(ThrustBalance):
					v.Warn(fmt.Sprintf("the %s decides; the forces ask for %.0f%% of it", called, 100*f/w))
				}
				if v.Of(ThrustTroll) > max(w, f) {
					v.Warn("the trolling speed asked for takes more than this")
				}
			}
			return max(w, f), nil
		}}
}

// raisedByWeight is the raised rule of thumb. The raise stops at the largest
// rating that is sold: a rule of thumb that no motor meets, where the plain rule
// and the forces are met, is a reason to take the largest and not to take none.
func raisedByWeight(v View) (float64, error) {
	raised := prop.ByWeight(v.Mass(LoadTotal), v.Of(ThrustRatioRaised)).Newtons()
	plain := prop.ByWeight(v.Mass(LoadTotal), prop.PlainRatio).Newtons()
	ladder := v.Ladder(ThrustClass, ThrustLadder)
	if most := ladder[len(ladder)-1] * max(v.Of(MotorCount), 1); raised > most && plain <= most {
		v.Warn("the raised rule asks for more than the largest rating, " + unit.Show(most, unit.Thrust, unit.US) + ", where it stops")
		return most, nil
	}
	return raised, nil
}

// raisedRatio is the ratio of the rule of thumb by what was said of the water. A
// wind or waves that nobody spoke of raise nothing.
func raisedRatio(v View) float64 {
	windy := v.Said(WindSpeed) && v.Of(WindSpeed) >= typical.RaiseWind*(1-1e-9) ||
		v.Said(WindGust) && v.Of(WindGust) >= typical.RaiseWind*1.3
	light := v.Said(WindSpeed) && !windy
	waves := func(from float64) bool { return v.Said(ChopHeight) && v.Of(ChopHeight) >= from*(1-1e-9) }
	pontoon := v.Word(BoatHull) == typical.Pontoon
	switch {
	case waves(typical.OpenWaves), pontoon && !light:
		return prop.OpenRatio
	case pontoon, windy, waves(typical.RaiseWaves), v.Yes(WaterWeeds), v.Of(CurrentSpeed) >= typical.RaiseCurrent:
		return prop.RaisedRatio
	}
	return prop.PlainRatio
}

// ThrustLadder is the ladder of ratings that are sold, in newtons.
var ThrustLadder = func() Ladder {
	var l Ladder
	for _, c := range typical.MotorClasses {
		l = append(l, c.Rating.Newtons())
	}
	return l
}()

// class is the smallest rating not below a need: of those built for a voltage
// that was said, where it is left open which motor, and of all where none of
// them suffices.
func class(v View, need float64) (float64, error) {
	ladder := v.Ladder(ThrustClass, ThrustLadder)
	if v.Said(MotorVoltage) && !v.Said(MotorThrust) {
		if c, ok := nextAt(ladder, v.Voltage(MotorVoltage), need); ok {
			return c, nil
		}
		v.Warn("no rating usual on the voltage said meets the need")
	}
	c, ok := ladder.Next(need)
	switch {
	case ok:
		return c, nil
	case v.AtBandEnd():
		return ladder[len(ladder)-1], nil // the ladder goes no further
	}
	return 0, &RangeError{Cell: ThrustNeed, Value: need, High: ladder[len(ladder)-1],
		Text: fmt.Sprintf("above the largest single rating, %s: two motors, or a job for the main engine",
			unit.Show(ladder[len(ladder)-1], unit.Thrust, unit.US))}
}

// nextAt is the smallest rating of a ladder that is built for a voltage and not
// below a need; ok is false, with the largest one built for it, where none is.
func nextAt(ladder Ladder, volts unit.Voltage, need float64) (rating float64, ok bool) {
	low, high := typical.RatingRange(volts)
	for _, c := range ladder {
		if f := unit.Force(c); f < low || f > high {
			continue
		}
		if rating = c; c >= need*(1-1e-9) {
			return c, true
		}
	}
	return rating, false
}
