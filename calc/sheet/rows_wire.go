package sheet

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/calc/wire"
)

// Inner cells of the wire and its protection.
var (
	// WireAmps is the current of one motor: several have a wire and a breaker each.
	WireAmps = inner("wire.current", unit.Ampere, "Current in the wire")
	// WireJudged is the wire that ampacity, drop and thrust loss are given
	// for: the one said, otherwise the one chosen.
	WireJudged    = inner("wire.judged", unit.WireGauge, "Wire considered")
	WireAmbient   = inner("wire.ambient", unit.InsulationClass, "Air around the wire")
	WireHeat      = inner("wire.temperature", unit.InsulationClass, "Conductor temperature")
	WireOhms      = inner("wire.resistance", unit.Ohm, "Resistance out and back")
	WireContacts  = inner("wire.contacts", unit.Ohm, "Plug, breaker and lugs")
	WirePower     = inner("wire.thrust-power", unit.Factor, "Power of voltage that thrust follows")
	WireMils      = inner("wire.area-mils", unit.Plain, "Copper, in circular mils")
	WireDropMils  = inner("wire.drop-by-mils", unit.Fraction, "Drop by the wire-area formula")
	WireMilsExtra = inner("wire.drop-difference", unit.Fraction, "Resistance result above the wire-area formula")
	WireLongest   = inner("wire.longest-run", unit.RunLength, "Longest run within the drop allowed")
	WireParallel  = inner("wire.side-by-side", unit.Count, "Runs of the fitted wire side by side that would do")

	BreakerFloor   = inner("breaker.floor", unit.Ampere, "Least breaker for the motor")
	BreakerCase    = word("breaker.case", "How the wire leaves the battery")
	BreakerBare    = inner("breaker.distance-bare", unit.DeckLength, "Bare wire, to the breaker")
	BreakerSheath  = inner("breaker.distance-sheathed", unit.DeckLength, "Wire in a sheath, to the breaker")
	BreakerBattery = inner("breaker.distance-battery", unit.DeckLength, "Sheathed wire from the battery's own terminal, to the breaker")
	BreakerVolts   = inner("breaker.volts", unit.Volt, "Breaker's direct-current voltage")
)

const (
	ampacitySource = "33 CFR 183.425 Table 5 and its note 1, as good practice"
	breakerSource  = "smallest standard rating above 1.05 times the current, common practice; 33 CFR 183.455 and ABYC E-11 for the wire"
	copperSource   = "ASTM B258 gauge, NBS Handbook 100 copper, 0.00393 per K"
	milsSource     = "ABYC E-11 wire-area formula, K = 10.75"
	distanceCFR    = "33 CFR 183.455(b) and ABYC E-11"
	distanceABYC   = "ABYC E-11; readings differ on whether the sheath is needed"
)

var wireRows = slices.Concat(wireInputRows, breakerRows, wireFigureRows)

// wireInputRows: what the wire has to do and what it is made of.
var wireInputRows = []Row{
	{Name: "drop allowed unless said", Gives: WireDropTarget, Source: bankMemory, Basis: Practice,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: band.Exactly(typical.DropTarget), Why: "5 % at full throttle unless you say: less asks for thicker wire, and past 10 % the motor is starved"}, true
		}},
	{Name: "insulation unless said", Gives: WireInsulation, Source: bankMemory, Basis: Practice,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: typical.Insulation, Why: "marine cable of 105 C insulation unless you say; it is printed on the jacket"}, true
		}},
	{Name: "place unless said", Gives: WirePlace, Source: bankPractice, Basis: Practice,
		Assume: func(View) (Guess, bool) {
			return Guess{Word: "open", Others: []string{"engine-space"}, Why: "run outside the engine space unless you say"}, true
		}},
	{Name: "run by the boat's length", Gives: WireRun, Needs: []ID{BoatLength}, May: []ID{MountPlace}, Source: bankMemory, Basis: Estimate,
		Assume: assumeRun},
	{Name: "run unless said", Gives: WireRun, Source: bankMemory, Basis: Estimate,
		Assume: func(View) (Guess, bool) {
			return Guess{Value: typical.RunUnknownBoat, Why: "batteries aft and motor forward on a middling boat, unless you say"}, true
		}},
	{Name: "current of each of several motors", Gives: WireAmps, Needs: []ID{MotorCurrent, MotorCount}, Source: bankPractice, Basis: Practice,
		When:    func(v View) bool { return v.Of(MotorCount) > 1 },
		Formula: "{motor.current} / {motor.count}, each on a wire and a breaker of its own",
		Compute: func(v View) (float64, error) { return v.Of(MotorCurrent) / v.Of(MotorCount), nil }},
	{Name: "current of the motor", Gives: WireAmps, Needs: []ID{MotorCurrent}, Source: "the wire carries what the motor draws", Basis: Model,
		Formula: "{motor.current}",
		Compute: func(v View) (float64, error) { return v.Of(MotorCurrent), nil }},
	tradeConstant(WireContacts, "resistance of plug, breaker and lugs", bankMemory, "a sound plug, breaker and lugs", typical.ContactOhms),
	tradeConstant(WirePower, "power of voltage that thrust follows", bankMemory, "2 for an ideal motor, less with armature resistance", typical.ThrustPower),
}

// assumeRun takes the wire to lie along the boat for a bow mount, and to be short
// for a motor near its battery.
func assumeRun(v View) (Guess, bool) {
	switch v.Word(MountPlace) {
	case "transom":
		return Guess{Value: typical.AftRun, Why: "a transom motor beside its battery, unless you say"}, true
	case "kayak":
		return Guess{Value: typical.KayakRun, Why: "a kayak's battery is never far, unless you say"}, true
	}
	l, s := v.Of(BoatLength), typical.BowRunShare
	return Guess{Value: band.Of(l*s.Low, l*s.Nominal, l*s.High), Why: "from batteries aft to a bow mount is about the boat's length, unless you say"}, true
}

// wireDuty is what the wire has to do over a run; carry is the breaker that it
// must outlast.
func wireDuty(v View, run unit.Length, carry unit.Current) wire.Duty {
	return wire.Duty{
		Current: v.Current(WireAmps), Carry: carry, Volts: v.Voltage(RatedVolts), Run: run,
		MaxDrop: v.Of(WireDropTarget), Insulation: v.Temperature(WireInsulation), Place: wire.PlaceOf(v.Word(WirePlace)),
	}
}

// dutyCells are what wireDuty reads.
var dutyCells = []ID{WireAmps, RatedVolts, WireDropTarget, WireInsulation, WirePlace}

// breakerRows: rating, distance and voltage.
var breakerRows = []Row{
	{Name: "least breaker", Gives: BreakerFloor, Needs: []ID{WireAmps}, Source: bankPractice, Basis: Practice,
		Formula: "1.05 x {wire.current}",
		Compute: func(v View) (float64, error) { return wire.BreakerFloor(v.Current(WireAmps)).Amperes(), nil }},
	{Name: "breaker", Gives: BreakerRating, Needs: []ID{BreakerFloor, WireAmps}, May: []ID{WireGaugeSaid, WireInsulation, WirePlace}, Source: breakerSource, Basis: Practice, Ladder: true,
		Formula: "next standard rating not below {breaker.floor}",
		Compute: chooseBreaker},

	{Name: "wire leaving the battery unless said", Gives: BreakerCase, Source: distanceCFR, Basis: Regulation,
		Assume: func(View) (Guess, bool) {
			return Guess{Word: wire.Bare.String(), Others: []string{wire.Sheathed.String(), wire.AtBattery.String()}, Why: "bare wire, the strictest case", Constant: true}, true
		}},
	distanceRow(BreakerBare, wire.Bare, "breaker distance, bare wire", "7 in (18 cm) along a bare wire from the source of power", distanceCFR, Regulation),
	distanceRow(BreakerSheath, wire.Sheathed, "breaker distance, sheathed wire", "40 in (102 cm) along a wire in a sheath or enclosure all the way", distanceCFR, Regulation),
	distanceRow(BreakerBattery, wire.AtBattery, "breaker distance, battery terminal", "72 in (183 cm) along a sheathed wire on the battery's own terminal", distanceABYC, Standard),
	{Name: "breaker distance", Gives: BreakerDistance, Needs: []ID{BreakerCase, BreakerBare, BreakerSheath, BreakerBattery}, Source: distanceCFR, Basis: Regulation,
		Formula: "{breaker.distance-bare} bare; {breaker.distance-sheathed} in a sheath; {breaker.distance-battery} sheathed at the battery's own terminal",
		Compute: func(v View) (float64, error) {
			switch wire.LeavingOf(v.Word(BreakerCase)) {
			case wire.Sheathed:
				return v.Of(BreakerSheath), nil
			case wire.AtBattery:
				return v.Of(BreakerBattery), nil
			}
			return v.Of(BreakerBare), nil
		}},
	{Name: "breaker voltage", Gives: BreakerVolts, Needs: []ID{BankFullVolts}, Source: "not under the bank's charging voltage; 33 CFR 183.455(d) asks for the nominal voltage", Basis: Practice, Ladder: true,
		Formula: "next direct-current rating above {bank.full-volts}",
		Compute: func(v View) (float64, error) {
			if r, ok := v.Ladder(BreakerVolts, Ladder(typical.BreakerVolts)).Next(v.Of(BankFullVolts)); ok {
				return r, nil
			}
			return 0, &RangeError{Cell: BankFullVolts, Value: v.Of(BankFullVolts), Text: "no usual breaker is rated for it: look for one made for this voltage"}
		}},
}

func distanceRow(gives ID, l wire.Leaving, name, formula, source string, basis Basis) Row {
	return Row{Name: name, Gives: gives, Source: source, Basis: basis, Formula: formula,
		Compute: func(View) (float64, error) { return wire.BreakerDistance(l).Metres(), nil }}
}

// chooseBreaker takes the next rating up and says how it stands to the wire that
// was said; a wire still to be chosen is chosen to suit it.
func chooseBreaker(v View) (float64, error) {
	if v.Of(WireAmps) <= 0 {
		return 0, &RangeError{Cell: WireAmps, Value: v.Of(WireAmps), Text: "a motor draws some current"}
	}
	rating, ok := v.Ladder(BreakerRating, Ladder(typical.Breakers)).Next(v.Of(BreakerFloor))
	if !ok {
		return 0, &RangeError{Cell: WireAmps, Value: v.Of(WireAmps), Text: "more than the largest breaker in the series allows: a higher voltage needs less current"}
	}
	if !v.Has(WireGaugeSaid) {
		return rating, nil
	}
	g := v.Gauge(WireGaugeSaid)
	ampacity, err := wire.Ampacity(g, v.Temperature(WireInsulation), wire.PlaceOf(v.Word(WirePlace)))
	if err != nil {
		return rating, nil // the wire's own figures say what is wrong with it
	}
	switch wire.Guards(unit.Current(rating), v.Current(WireAmps), ampacity) {
	case wire.TooLarge:
		v.Warn(fmt.Sprintf("not on %s: it carries %.0f A, too little for this motor and its breaker; rewire before fitting it", wire.Name(g), ampacity.Amperes()))
	case wire.NextSizeUp:
		v.Warn(fmt.Sprintf("above the %.0f A of %s, allowed as the next standard size; heavier wire is better", ampacity.Amperes(), wire.Name(g)))
	}
	return rating, nil
}

// wireFigureRows: gauge, ampacity, drop and its cost.
var wireFigureRows = []Row{
	{Name: "smallest wire that passes", Gives: WireGauge, Needs: append([]ID{WireRun}, dutyCells...), May: []ID{BreakerRating}, Source: "drop by copper resistance at its temperature; " + ampacitySource, Basis: Regulation, Ladder: true,
		Formula: gaugeFormula, Spell: spellGauge,
		Compute: func(v View) (float64, error) {
			r, err := wire.Smallest(wireDuty(v, v.Length(WireRun), v.Current(BreakerRating)))
			return float64(r.Gauge), err
		}},
	{Name: "wire as said", Gives: WireJudged, Needs: []ID{WireGaugeSaid}, Source: "as said", Basis: Said,
		Formula: "{wire.gauge-said}",
		Compute: func(v View) (float64, error) { return v.Of(WireGaugeSaid), nil }},
	{Name: "wire as chosen", Gives: WireJudged, Needs: []ID{WireGauge}, Source: ampacitySource, Basis: Regulation,
		Formula: "{wire.gauge}",
		Compute: func(v View) (float64, error) { return v.Of(WireGauge), nil }},
	{Name: "ampacity", Gives: WireAmpacity, Needs: []ID{WireJudged, WireInsulation, WirePlace}, Source: ampacitySource, Basis: Regulation,
		Formula: "Table 5 for {wire.judged}, {wire.insulation} insulation, {wire.place}", Spell: spellAmpacity,
		Compute: judgeAmpacity},
	{Name: "air around the wire", Gives: WireAmbient, Needs: []ID{WirePlace}, Source: ampacitySource, Basis: Regulation,
		Formula: "what Table 5 takes for a wire {wire.place}",
		Compute: func(v View) (float64, error) { return wire.PlaceOf(v.Word(WirePlace)).Ambient().Celsius(), nil }},
	{Name: "conductor temperature", Gives: WireHeat, Needs: []ID{WireAmps, WireAmpacity, WireInsulation, WireAmbient}, Source: "heat balance on " + ampacitySource, Basis: Model,
		Formula: "{wire.ambient} + ({=insulation rating} - {wire.ambient}) x ({wire.current} / {wire.ampacity})^2", Spell: spellHeat,
		Term: func(v View, _ string) (float64, unit.Form) {
			rating, err := wire.Rating(v.Temperature(WireInsulation))
			if err != nil {
				return math.NaN(), unit.InsulationClass
			}
			return rating.Celsius(), unit.InsulationClass
		},
		Compute: func(v View) (float64, error) {
			rating, err := wire.Rating(v.Temperature(WireInsulation))
			if err != nil {
				return 0, err
			}
			if v.Of(WireAmps) > v.Of(WireAmpacity) {
				v.Warn("the wire carries more than it may: it runs hotter than its insulation is made for")
			}
			return wire.ConductorTemperature(v.Current(WireAmps), v.Current(WireAmpacity), rating, v.Temperature(WireAmbient)).Celsius(), nil
		}},
	{Name: "resistance of the pair", Gives: WireOhms, Needs: []ID{WireJudged, WireRun, WireHeat}, Source: copperSource, Basis: Standard,
		Formula: "2 x {wire.run} x {=ohms of the wire at 20 C} x (1 + 0.00393 x ({wire.temperature} - 20 C))",
		Term: func(v View, _ string) (float64, unit.Form) {
			r, err := wire.Resistance(v.Gauge(WireJudged), unit.Metres(1), unit.Celsius(20))
			if err != nil {
				return math.NaN(), unit.OhmPerRun
			}
			return r.Ohms(), unit.OhmPerRun
		},
		Compute: func(v View) (float64, error) {
			r, err := wire.Loop(v.Gauge(WireJudged), v.Length(WireRun), v.Temperature(WireHeat))
			return r.Ohms(), err
		}},
	{Name: "volts lost in the wire", Gives: WireVolts, Needs: []ID{WireAmps, WireOhms}, Source: "Ohm's law", Basis: Model,
		Formula: "{wire.current} x {wire.resistance}",
		Compute: func(v View) (float64, error) {
			return wire.Drop(v.Current(WireAmps), v.Resistance(WireOhms)).Volts(), nil
		}},
	{Name: "voltage drop", Gives: WireDrop, Needs: []ID{WireVolts, RatedVolts}, Source: "Ohm's law", Basis: Model,
		Formula: "{wire.volts} / {motor.volts}",
		Compute: func(v View) (float64, error) {
			drop := v.Of(WireVolts) / v.Of(RatedVolts)
			switch {
			case drop > typical.DropBeyond:
				v.Doubt("a motor hardly turns on what this wire leaves it and draws less than is reckoned here: the figure only says that the wire is far too thin")
			case drop > typical.DropLimit:
				v.Warn("more than a tenth of the voltage is lost in the wire: thicker wire, a shorter run or a higher voltage")
			}
			return drop, nil
		}},
	{Name: "area of the wire", Gives: WireMils, Needs: []ID{WireJudged}, Source: "ASTM B258 gauge", Basis: Standard,
		Formula: "({=diameter of the wire in mils})^2",
		Term: func(v View, _ string) (float64, unit.Form) {
			d, err := wire.Diameter(v.Gauge(WireJudged))
			if err != nil {
				return math.NaN(), unit.Mil
			}
			return d.Metres(), unit.Mil
		},
		Compute: func(v View) (float64, error) {
			a, err := wire.Area(v.Gauge(WireJudged))
			return a.CircularMils(), err
		}},
	{Name: "drop by the wire-area formula", Gives: WireDropMils, Needs: []ID{WireMils, WireJudged, WireAmps, WireRun, RatedVolts}, Source: milsSource, Basis: Standard,
		Formula: "10.75 x {wire.current} x 2 x {wire.run in feet} / {wire.area-mils} circular mils / {motor.volts}",
		Compute: func(v View) (float64, error) {
			e, err := wire.DropByMils(v.Gauge(WireJudged), v.Current(WireAmps), v.Length(WireRun))
			return e.Volts() / v.Of(RatedVolts), err
		}},
	{Name: "resistance result above the wire-area formula", Gives: WireMilsExtra, Needs: []ID{WireHeat}, Source: "K = 10.75 is copper at 29 C; a loaded wire is warmer", Basis: Model,
		Formula: "10.371 x (1 + 0.00393 x ({wire.temperature} - 20 C)) / 10.75 - 1",
		Compute: func(v View) (float64, error) {
			return wire.MilFoot(v.Temperature(WireHeat))/wire.FormulaK - 1, nil
		}},
	{Name: "thrust lost to the drop", Gives: WireThrustLoss, Needs: []ID{WireVolts, WireAmps, WireContacts, RatedVolts, WirePower}, Source: "thrust by a power of voltage, from memory; 2 for an ideal motor", Basis: Model,
		Formula: "1 - (1 - ({wire.volts} + {wire.current} x {wire.contacts}) / {motor.volts})^{wire.thrust-power}, at most all of it",
		Compute: func(v View) (float64, error) {
			lost := v.Of(WireVolts) + v.Of(WireAmps)*v.Of(WireContacts)
			return wire.ThrustLoss(min(1, lost/v.Of(RatedVolts)), v.Of(WirePower))
		}},
	{Name: "longest run of the wire", Gives: WireLongest, Needs: append([]ID{WireJudged}, dutyCells...), Source: copperSource + "; " + ampacitySource, Basis: Model,
		Formula: "run at which {wire.judged}, {wire.insulation} insulation, {wire.place}, loses {wire.drop-target} of {motor.volts} at {wire.current}",
		Compute: func(v View) (float64, error) {
			return wire.LongestRun(v.Gauge(WireJudged), wireDuty(v, 0, 0)).Metres(), nil
		}},
	{Name: "runs side by side", Gives: WireParallel, Needs: append([]ID{WireGaugeSaid, WireRun}, dutyCells...), Source: "equal wires share the current", Basis: Model, Ladder: true,
		Formula: "{wire.gauge-said} runs, {wire.insulation} insulation, {wire.place}, that share {wire.current} and lose no more than {wire.drop-target} of {motor.volts} over {wire.run}",
		Compute: func(v View) (float64, error) {
			n := wire.SideBySide(v.Gauge(WireGaugeSaid), wireDuty(v, v.Length(WireRun), 0))
			if n == 0 {
				return 0, errors.New("no number of these wires side by side would do: use a thicker one")
			}
			return float64(n), nil
		}},
}

const gaugeFormula = "thinnest that loses no more than {wire.drop-target} of {motor.volts} at {wire.current} over {wire.run}, with an ampacity not below {breaker.rating}, {wire.insulation} insulation, {wire.place}"

// spellGauge holds the gauge against the next thinner one, which fails.
func spellGauge(v View, write func(float64, unit.Form) string) string {
	amps, run, carry := v.Of(WireAmps), v.Of(WireRun), v.Of(BreakerRating)
	d := wireDuty(v, v.Length(WireRun), unit.Current(carry))
	text := fmt.Sprintf("thinnest that loses no more than %s of %s at %s over %s and carries at least %s, %s insulation, %s",
		write(d.MaxDrop, unit.Fraction), write(d.Volts.Volts(), unit.Volt), write(amps, unit.Ampere), write(run, unit.RunLength),
		write(max(carry, amps), unit.Ampere), write(v.Of(WireInsulation), unit.InsulationClass), v.Word(WirePlace))
	judged := func(g unit.Gauge) string {
		r, err := wire.Judge(g, d)
		if err != nil {
			return ""
		}
		return fmt.Sprintf("%s loses %.3g%% and carries %s", wire.Name(g), 100*r.Drop, write(r.Ampacity.Amperes(), unit.Ampere))
	}
	r, err := wire.Smallest(d)
	if err != nil {
		return text
	}
	text += ": " + judged(r.Gauge)
	thinner := unit.Gauge(99)
	for _, g := range wire.Gauges() { // thin to thick
		if g == r.Gauge {
			break
		}
		thinner = g
	}
	if t := judged(thinner); t != "" {
		text += "; " + t
	}
	return text
}

// spellHeat names the end of the copper's table where it was met.
func spellHeat(v View, write func(float64, unit.Form) string) string {
	if hot := unit.Temperature(v.Of(WireHeat)); hot >= wire.Hottest {
		return write(hot.Celsius(), unit.InsulationClass) + ", where the table of copper ends: this wire glows"
	}
	return ""
}

// spellAmpacity shows the table's number and the factor on it.
func spellAmpacity(v View, write func(float64, unit.Form) string) string {
	g, t := v.Gauge(WireJudged), v.Temperature(WireInsulation)
	rating, _ := wire.Rating(t)
	open, err := wire.Ampacity(g, t, wire.Open)
	if err != nil {
		return "Table 5"
	}
	text := write(open.Amperes(), unit.Ampere)
	of := fmt.Sprintf("Table 5 for %s of %s insulation", wire.Name(g), write(rating.Celsius(), unit.InsulationClass))
	if wire.PlaceOf(v.Word(WirePlace)) != wire.EngineSpace {
		return text + ", " + of
	}
	f, _, _ := wire.EngineFactor(t)
	return text + " x " + write(f, unit.Factor) + ", " + of + " and its note 1 for engine spaces"
}

// judgeAmpacity says where the engine-space factor stands on memory alone.
func judgeAmpacity(v View) (float64, error) {
	place := wire.PlaceOf(v.Word(WirePlace))
	a, err := wire.Ampacity(v.Gauge(WireJudged), v.Temperature(WireInsulation), place)
	if err != nil {
		return 0, err
	}
	if place == wire.EngineSpace {
		if _, source, err := wire.EngineFactor(v.Temperature(WireInsulation)); err == nil && source != wire.Note1 {
			v.Warn("the engine-space factor for this insulation is from memory: check it in the regulation's table")
		}
	}
	return a.Amperes(), nil
}
