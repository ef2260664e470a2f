package sheet

import (
	"strings"

	"heronlake.example/ask/calc/bank"
	"heronlake.example/ask/calc/prop"
	"heronlake.example/ask/calc/unit"
)

// depthRows: how far down a run time goes: to the limit of the chemistry, of
// batteries as good as new, whether they are in hand or still to be bought, so
// that run times compare from one answer to the next. The time for a long life
// stands beside it.
var depthRows = []Row{
	{Name: "share used of the batteries", Gives: RunDepth, Needs: []ID{BatteryLimitDepth}, Source: bankPractice, Basis: Practice,
		Formula: "{battery.depth-limit}, of batteries as good as new",
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
			When:    func(v View) bool { return slow == (v.Current(current) <= ratedBank(v).RatedCurrent()*(1+1e-9)) },
			Formula: "{" + depth.String() + "} x {battery.cold-factor} x " + formula,
			Compute: func(v View) (float64, error) {
				warnDraw(v, v.Current(current))
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

// warnDraw says so where a current is one at which batteries are neither rated nor
// tried: the law then only gives a number.
func warnDraw(v View, i unit.Current) {
	switch c := v.Of(BankCapacity); {
	case i.Amperes() > fastestDraw*c*(1+1e-9):
		v.Doubt("a current so large for the battery is beyond what Peukert's law was tried with: it may sag at once")
	case i.Amperes() < slowestDraw*c*(1-1e-9):
		v.Doubt("over so many hours a battery also loses charge by itself, which is not counted")
	}
}

// Currents, by ampere of each ampere hour, between which a run time is sound; from
// memory.
const (
	fastestDraw = 2.0
	slowestDraw = 1.0 / 250
)

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
		Spell: func(v View, write func(float64, unit.Form) string) string {
			var terms []string
			for _, s := range v.Duty() {
				terms = append(terms, write(s.Hours.Hours(), unit.Hour))
			}
			return strings.Join(terms, " + ")
		},
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
		Source: peukertSource, Basis: Model, When: when, Spell: spellDuty,
		Formula: "over {duty.hours}, the sum of hours x " + current + ", each x (its current x {battery.hour-rate} / {bank.capacity})^({battery.peukert} - 1)",
		Compute: func(v View) (float64, error) {
			p, err := ratedBank(v).Empty(dutyStretches(v))
			return p.Used.AmpereHours(), err
		}}
}

// spellDuty writes what each stretch of a profile takes out of the bank.
func spellDuty(v View, write func(float64, unit.Form) string) string {
	b := ratedBank(v)
	return spellStretches(dutyStretches(v), b, write)
}

// spellStretches is the sum of I t (I H/C)^(k-1), the plain product where the
// current is not above the rated one.
func spellStretches(duty []bank.Stretch, b bank.Battery, write func(float64, unit.Form) string) string {
	var terms []string
	for _, s := range duty {
		amps := write(s.Current.Amperes(), unit.Ampere)
		t := write(s.Hours.Hours(), unit.Hour) + " x " + amps
		if s.Current > b.RatedCurrent() {
			t += " x (" + amps + " x " + write(b.HourRate.Hours(), unit.Hour) + " / " + write(b.Capacity.AmpereHours(), unit.AmpHour) + ")^(" + write(b.Exponent, unit.Factor) + " - 1)"
		}
		terms = append(terms, t)
	}
	return strings.Join(terms, " + ")
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
		Formula: "{cruise.speed in km/h} x {runtime.cruise}, there and back together",
		Compute: func(v View) (float64, error) { return v.Of(CruiseSpeed) * v.Of(RuntimeCruise) * 3600, nil }},
}
