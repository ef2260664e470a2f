package bank

import (
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// Battery is a battery, or a whole bank at its own voltage, as Peukert's law
// sees it.
type Battery struct {
	Capacity unit.Charge   // rated, at HourRate
	HourRate unit.Duration // the hours over which Capacity was measured; 20 for nearly every deep-cycle battery
	Exponent float64       // Peukert exponent, 1 to 1.6
}

// Stretch is one part of a duty profile.
type Stretch struct {
	Current unit.Current
	Hours   unit.Duration
}

func (b Battery) check() error {
	if err := band.Within("battery capacity", "Ah", b.Capacity.AmpereHours(), 0.001, 100000); err != nil {
		return err
	}
	if err := band.Within("hour rate of the capacity", "h", b.HourRate.Hours(), 1, 100); err != nil {
		return err
	}
	return band.Within("Peukert exponent", "", b.Exponent, 1, 1.6)
}

// RatedCurrent is the current at which the battery gives just its rating.
func (b Battery) RatedCurrent() unit.Current {
	return unit.Current(b.Capacity.AmpereHours() / b.HourRate.Hours())
}

// draw is by how much a current empties the battery faster than its ampere
// hours say: (I/I_H)^(k-1), and 1 at or below the rated current, where the law
// would promise more than the rating.
func (b Battery) draw(i unit.Current) float64 {
	r := i.Amperes() / b.RatedCurrent().Amperes()
	if r <= 1 {
		return 1
	}
	return math.Pow(r, b.Exponent-1)
}

// Time is how long a full battery lasts at a steady current until it is empty:
// t = H (C/(I H))^k, and C/I below the rated current.
//
// It refuses, with a *band.OutsideError, a current outside 0.001 to 100,000 A
// and a battery that makes no sense.
//
// Source: Peukert 1897 in the form with the hour rate, as any text on deep-cycle
// batteries gives it; the cap at the rated charge is common practice.
func (b Battery) Time(i unit.Current) (unit.Duration, error) {
	if err := b.check(); err != nil {
		return 0, err
	}
	if err := band.Within("discharge current", "A", i.Amperes(), 0.001, 100000); err != nil {
		return 0, err
	}
	return unit.Duration(b.Capacity.AmpereHours() / (i.Amperes() * b.draw(i))), nil
}

// Delivered is the charge that a full battery gives at a steady current:
// I t = C (C/(I H))^(k-1), never above the rating. Errors as for Time.
func (b Battery) Delivered(i unit.Current) (unit.Charge, error) {
	t, err := b.Time(i)
	return unit.Charge(i.Amperes() * t.Hours()), err
}

// Profile is what a duty profile takes out of a full battery.
type Profile struct {
	Hours unit.Duration // of the whole profile
	Plain unit.Charge   // ampere hours as a meter counts them
	Used  unit.Charge   // the same, weighted by Peukert: what the rating is emptied by
}

// MeanCurrent is the plain mean over the profile.
func (p Profile) MeanCurrent() unit.Current {
	if p.Hours == 0 {
		return 0
	}
	return unit.Current(p.Plain.AmpereHours() / p.Hours.Hours())
}

// Empty adds up a duty profile: each stretch takes I t (I/I_H)^(k-1). A profile
// without a stretch gives the zero Profile. Errors: a battery that makes no
// sense, a negative current or time.
func (b Battery) Empty(duty []Stretch) (Profile, error) {
	var p Profile
	if err := b.check(); err != nil {
		return p, err
	}
	for _, s := range duty {
		if err := s.check(); err != nil {
			return Profile{}, err
		}
		q := s.Current.Amperes() * s.Hours.Hours()
		p.Hours += s.Hours
		p.Plain += unit.Charge(q)
		p.Used += unit.Charge(q * b.draw(s.Current))
	}
	return p, nil
}

func (s Stretch) check() error {
	if err := band.Within("current of a stretch", "A", s.Current.Amperes(), 0, 100000); err != nil {
		return err
	}
	return band.Within("hours of a stretch", "h", s.Hours.Hours(), 0, 10000)
}

// CapacityFor is the rating that a battery needs so that the share of its charge
// that may be used carries a duty profile: the smallest C with
// sum I t max(1, (I H/C)^(k-1)) <= share C. It is the inverse of Time for a
// profile of one stretch.
//
// share is usable depth times capacity left in the cold times capacity left with
// age, above 0 and at most 1; k is 1 to 1.6. A profile without any current needs
// nothing: 0.
func CapacityFor(duty []Stretch, hourRate unit.Duration, k, share float64) (unit.Charge, error) {
	if err := band.Within("usable share of the capacity", "", share, 0.01, 1); err != nil {
		return 0, err
	}
	if err := (Battery{Capacity: 1, HourRate: hourRate, Exponent: k}).check(); err != nil {
		return 0, err
	}
	var plain float64
	for _, s := range duty {
		if err := s.check(); err != nil {
			return 0, err
		}
		plain += s.Current.Amperes() * s.Hours.Hours()
	}
	if plain == 0 {
		return 0, nil
	}
	// g(C) = share C - what is taken rises and is concave, so that Newton's
	// steps from the left of the root climb to it without passing it.
	c := plain / share
	for range 60 {
		b := Battery{Capacity: unit.Charge(c), HourRate: hourRate, Exponent: k}
		taken, slope := 0.0, share
		for _, s := range duty {
			q := s.Current.Amperes() * s.Hours.Hours() * b.draw(s.Current)
			taken += q
			if s.Current > b.RatedCurrent() {
				slope += (k - 1) * q / c
			}
		}
		step := (taken - share*c) / slope
		c += step
		if step <= 1e-12*c {
			break
		}
	}
	return unit.Charge(c), nil
}

// ExponentFrom finds the exponent from two discharges of one battery to the same
// end: k = (log t2 - log t1)/(log I1 - log I2). The currents must differ and all
// four be positive; an exponent outside 1 to 1.6 is refused as a faulty test.
func ExponentFrom(i1 unit.Current, t1 unit.Duration, i2 unit.Current, t2 unit.Duration) (float64, error) {
	k := (math.Log(t2.Hours()) - math.Log(t1.Hours())) / (math.Log(i1.Amperes()) - math.Log(i2.Amperes()))
	if err := band.Within("Peukert exponent from two tests", "", k, 1, 1.6); err != nil {
		return 0, err
	}
	return k, nil
}
