package wire

import (
	"fmt"
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// thinnest is the smallest conductor that may run by itself (33 CFR 183.425(e)).
const thinnest unit.Gauge = 16

// Duty is what a pair of conductors has to do.
type Duty struct {
	Current    unit.Current // the motor's greatest
	Carry      unit.Current // ampacity wanted: the breaker's rating, so that it guards the wire; at least Current
	Volts      unit.Voltage // at the battery
	Run        unit.Length  // one way
	MaxDrop    float64      // share of Volts, above 0 and below 1
	Insulation unit.Temperature
	Place      Place
}

func (d Duty) check() error {
	if err := band.Within("motor current", "A", d.Current.Amperes(), 0.01, 10000); err != nil {
		return err
	}
	if err := band.Within("system voltage", "V", d.Volts.Volts(), 1, 1000); err != nil {
		return err
	}
	if err := band.Within("wire run", "m", d.Run.Metres(), 0, 500); err != nil {
		return err
	}
	return band.Within("voltage drop allowed", "", d.MaxDrop, 0.001, 0.5)
}

// Result is a gauge judged for a duty.
type Result struct {
	Gauge       unit.Gauge
	Ampacity    unit.Current
	Temperature unit.Temperature // of the copper at the duty's current
	Loop        unit.Resistance  // out and back at that temperature
	Drop        float64          // share of the voltage
}

// Carries reports whether the wire may carry the duty's current and its breaker.
func (r Result) Carries(d Duty) bool { return r.Ampacity >= max(d.Carry, d.Current) }

// Holds reports whether the drop stays within the duty's target.
func (r Result) Holds(d Duty) bool { return r.Drop <= d.MaxDrop*(1+1e-9) }

// Judge works out one gauge for a duty, passing or not.
func Judge(g unit.Gauge, d Duty) (Result, error) {
	if err := d.check(); err != nil {
		return Result{}, err
	}
	a, err := Ampacity(g, d.Insulation, d.Place)
	if err != nil {
		return Result{}, err
	}
	rating, err := Rating(d.Insulation)
	if err != nil {
		return Result{}, err
	}
	return judge(g, a, rating, d)
}

// judge is Judge on a duty that was checked, with the ampacity and the rating
// that the table gives.
func judge(g unit.Gauge, ampacity unit.Current, rating unit.Temperature, d Duty) (Result, error) {
	r := Result{Gauge: g, Ampacity: ampacity, Temperature: ConductorTemperature(d.Current, ampacity, rating, d.Place.Ambient())}
	var err error
	if r.Loop, err = Loop(g, d.Run, r.Temperature); err != nil {
		return Result{}, err
	}
	r.Drop = Drop(d.Current, r.Loop).Volts() / d.Volts.Volts()
	return r, nil
}

// Smallest is the thinnest gauge of Table 5 that carries the current and keeps
// the drop: never one below either need. Where 4/0 fails it returns a
// *NoGaugeError with what would pass.
func Smallest(d Duty) (Result, error) {
	if err := d.check(); err != nil {
		return Result{}, err
	}
	c, err := column(d.Insulation)
	if err != nil {
		return Result{}, err
	}
	rating := unit.Temperature(insulations[c])
	var r Result
	for i := range table5 {
		g := table5[i].gauge
		if g > thinnest {
			continue
		}
		if r, err = judge(g, ampacityAt(i, c, d.Place), rating, d); err != nil {
			return Result{}, err
		}
		if r.Carries(d) && r.Holds(d) {
			return r, nil
		}
	}
	return r, &NoGaugeError{Duty: d, Runs: SideBySide(Gauge4x0, d), Longest: LongestRun(Gauge4x0, d)}
}

// A NoGaugeError says that no single conductor to 4/0 does a duty.
type NoGaugeError struct {
	Duty    Duty
	Runs    int         // conductors of 4/0 side by side, each way, that would
	Longest unit.Length // the longest run that one 4/0 serves; 0 where it cannot carry the current
}

func (e *NoGaugeError) Error() string {
	length := func(l unit.Length) string { return fmt.Sprintf("%.0f ft (%.0f m)", l.Feet(), l.Metres()) }
	s := fmt.Sprintf("no single wire to 4/0 AWG carries %.0f A over %s at %.0f V within a %.0f %% drop: ",
		e.Duty.Current.Amperes(), length(e.Duty.Run), e.Duty.Volts.Volts(), e.Duty.MaxDrop*100)
	if e.Longest > 0 {
		s += "shorten the run to " + length(e.Longest) + ", "
	}
	return s + fmt.Sprintf("raise the voltage, or lay %d runs side by side", e.Runs)
}

// SideBySide is how many like conductors, each way, do a duty together: each
// carries its share of the current, and the resistance is divided. Every one must
// be fused by itself. The current is taken to divide evenly, which needs equal
// lengths and lugs.
func SideBySide(g unit.Gauge, d Duty) int {
	for n := 1; n <= 1000; n++ {
		share := d
		share.Current = unit.Current(d.Current.Amperes() / float64(n))
		share.Carry = unit.Current(d.Carry.Amperes() / float64(n))
		r, err := Judge(g, share)
		if err != nil {
			return 0
		}
		if r.Carries(share) && r.Holds(share) {
			return n
		}
	}
	return 0
}

// LongestRun is the run, one way, at which a gauge just meets the drop of a
// duty; 0 where it cannot carry the current.
func LongestRun(g unit.Gauge, d Duty) unit.Length {
	d.Run = unit.Metres(1)
	r, err := Judge(g, d)
	if err != nil || !r.Carries(d) || r.Drop == 0 {
		return 0
	}
	return unit.Metres(math.Max(0, d.MaxDrop/r.Drop))
}
