package sheet

import (
	"heronlake.example/ask/calc/bank"
	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/unit"
)

// depthRows: how far down a run time goes. Given batteries are run to the limit of
// their chemistry, with the time for a long life beside it; a bank for hours that
// were said was sized for a long life and old age, and its run time in use is
// those hours. Full throttle and holding go to the limit in both cases, so that
// they compare from one answer to the next.
var depthRows = []Row{
	{Name: "share used of a bank for the hours said", Gives: RunDepth, Needs: []ID{BatteryLongDepth, BatteryAgeing}, May: []ID{BatteryCapacity}, Said: []ID{UseHours, UseDistance}, Source: bankPractice, Basis: Practice,
		When:    func(v View) bool { return noBattery(v) && hoursSaid(v) },
		Formula: "{battery.depth-long-life} for a long life x {battery.ageing} when old",
		Compute: func(v View) (float64, error) { return v.Of(BatteryLongDepth) * v.Of(BatteryAgeing), nil }},
	{Name: "share used of given batteries", Gives: RunDepth, Needs: []ID{BatteryLimitDepth}, Source: bankPractice, Basis: Practice,
		Formula: "{battery.depth-limit} of batteries as good as new",
		Compute: func(v View) (float64, error) { return v.Of(BatteryLimitDepth), nil }},
}

// runtimeRows give a run time at a steady current. Below the rated current the
// law is capped, and the row shows plain division.
func runtimeRows(figure, current, longLife, deepest ID, name string) []Row {
	row := func(gives, depth ID, name string, slow bool) Row {
		amps := "{" + current.String() + "}"
		formula := "{battery.hour-rate} x ({bank.capacity} / (" + amps + " x {battery.hour-rate}))^{battery.peukert}"
		if slow {
			name += ", below the rated current"
			formula = "{bank.capacity} / " + amps + ", below the rated current, so without Peukert's law"
		}
		return Row{Name: name, Gives: gives, Source: peukertSource, Basis: Model,
			Needs:   []ID{BankCapacity, current, BatteryExponent, BatteryHourRate, depth, BatteryCold},
			When:    func(v View) bool { return slow == (v.Current(current) <= ratedBank(v).RatedCurrent()) },
			Formula: "{" + depth.String() + "} x {battery.cold-factor} x " + formula,
			Compute: func(v View) (float64, error) {
				t, err := ratedBank(v).Time(v.Current(current))
				return t.Hours() * v.Of(depth) * v.Of(BatteryCold), err
			}}
	}
	long, shown := "run time at "+name+" for a long life", "run time at "+name
	rows := []Row{
		row(longLife, BatteryLongDepth, long, true), row(longLife, BatteryLongDepth, long, false),
		row(figure, deepest, shown, true), row(figure, deepest, shown, false),
	}
	for i := range rows {
		r := &rows[i]
		if r.Gives == figure {
			r.May = []ID{longLife} // so that it stands beside the figure
			continue
		}
		// Only lead has a shallower depth for a long life.
		here := r.When
		r.Needs = append(r.Needs, BatteryChemistry)
		r.When = func(v View) bool { return isLead(v) && here(v) }
	}
	return rows
}

func isLead(v View) bool { return chemistry(v).Lead() }

// What a duty profile is reckoned from.
var (
	dutyNeeds = []ID{MotorCurrent, MotorSpeeds, MotorIdle, DialExponent}
)

// dutyStretches turns the throttles that were said into currents.
func dutyStretches(v View) []bank.Stretch {
	duty := v.Duty()
	out := make([]bank.Stretch, len(duty))
	for i, s := range duty {
		out[i] = bank.Stretch{Current: dutyCurrent(v, s.Throttle), Hours: s.Hours}
	}
	return out
}

// dutyCurrent is the current at a throttle: the dial's share of full current by
// the kind of control, and the idle draw of a variable one, as for the
// current in use.
func dutyCurrent(v View, throttle float64) unit.Current {
	full := v.Of(MotorCurrent)
	if v.Word(MotorSpeeds) == "fixed" {
		return unit.Current(full * prop.ResistorShare(prop.FixedThrust(throttle)))
	}
	return unit.Current(min(full, full*prop.VariableCurrent(throttle, v.Of(DialExponent))+v.Of(MotorIdle)))
}

// dutyRows: a profile of throttles in place of one current.
var dutyRows = []Row{
	{Name: "hours of the profile", Gives: DutyHours, Source: "as said", Basis: Said,
		When:    func(v View) bool { return len(v.Duty()) > 0 },
		Formula: "sum of the hours said",
		Compute: func(v View) (float64, error) {
			var h unit.Duration
			for _, s := range v.Duty() {
				h += s.Hours
			}
			return h.Hours(), nil
		}},
	dutyCharge("charge of the profile, five speeds", "{motor.current} x the speed of five nearest each dial position",
		func(v View) bool { return v.Word(MotorSpeeds) == "fixed" }),
	dutyCharge("charge of the profile", "({motor.current} x dial position^{cruise.dial-exponent} + {motor.idle})",
		func(v View) bool { return v.Word(MotorSpeeds) != "fixed" }),
	{Name: "run time of the profile, for a long life", Gives: RuntimeUse50, Needs: []ID{DutyCharge, DutyHours, BankCapacity, BatteryLongDepth, BatteryCold, BatteryChemistry}, Source: peukertSource, Basis: Model,
		When:    isLead,
		Formula: "{battery.depth-long-life} x {battery.cold-factor} x {bank.capacity} / {duty.charge} x {duty.hours}",
		Compute: func(v View) (float64, error) { return profileTime(v, BatteryLongDepth) }},
	{Name: "run time of the profile", Gives: RuntimeCruise, Needs: []ID{DutyCharge, DutyHours, BankCapacity, RunDepth, BatteryCold}, May: []ID{RuntimeUse50}, Source: peukertSource, Basis: Model,
		Formula: "{runtime.depth} x {battery.cold-factor} x {bank.capacity} / {duty.charge} x {duty.hours}, the profile over and over",
		Compute: func(v View) (float64, error) { return profileTime(v, RunDepth) }},
}

// dutyCharge adds up what a profile takes; current says how each stretch's is
// found.
func dutyCharge(name, current string, when func(View) bool) Row {
	return Row{Name: name, Gives: DutyCharge, Needs: append([]ID{DutyHours, BankCapacity, BatteryExponent, BatteryHourRate}, dutyNeeds...),
		Source: peukertSource, Basis: Model, When: when,
		Formula: "over {duty.hours}, the sum of hours x " + current + ", each x (its current x {battery.hour-rate} / {bank.capacity})^({battery.peukert} - 1)",
		Compute: func(v View) (float64, error) {
			p, err := ratedBank(v).Empty(dutyStretches(v))
			return p.Used.AmpereHours(), err
		}}
}

// profileTime is how long a profile could be kept up, as often as it fits.
func profileTime(v View, depth ID) (float64, error) {
	if v.Of(DutyCharge) <= 0 {
		return 0, &RangeError{Cell: DutyCharge, Value: v.Of(DutyCharge), Text: "a profile needs some throttle and some time"}
	}
	return v.Of(depth) * v.Of(BatteryCold) * v.Of(BankCapacity) / v.Of(DutyCharge) * v.Of(DutyHours), nil
}

// rangeRows: how far.
var rangeRows = []Row{
	{Name: "range in use", Gives: RangeCruise, Needs: []ID{CruiseSpeed, RuntimeCruise}, Source: "speed times time, still water", Basis: Model,
		Formula: "{cruise.speed} x {runtime.cruise}, there and back together",
		Compute: func(v View) (float64, error) { return v.Of(CruiseSpeed) * v.Of(RuntimeCruise) * 3600, nil }},
}
