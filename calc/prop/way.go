package prop

import (
	"fmt"
	"math"

	"heronlake.example/ask/calc/unit"
)

// Available is the thrust that a static rating leaves at a speed through the
// water, T0 (1 - V/V0), V0 being the free-running speed at which thrust runs
// out. Beyond V0 there is none. From memory: a straight line stands for the
// thrust coefficient of a fixed prop.
func Available(rating unit.Force, way, free unit.Speed) unit.Force {
	return PartAvailable(rating, 1, way, free)
}

// PartAvailable is Available at a part of the throttle. share is the share of
// full static thrust, 0 to 1: the prop then turns at its square root of full
// speed, and its free-running speed falls by as much, so that
// T = T0 (share - sqrt(share) V/V0).
func PartAvailable(rating unit.Force, share float64, way, free unit.Speed) unit.Force {
	if share <= 0 || free <= 0 {
		return 0
	}
	return max(rating*unit.Force(share-math.Sqrt(share)*float64(way/free)), 0)
}

// ShareFor is the share of full static thrust at which a motor pulls with a
// force at a speed: PartAvailable the other way round. Above 1 the motor cannot.
func ShareFor(rating, pull unit.Force, way, free unit.Speed) float64 {
	if rating <= 0 || free <= 0 {
		return math.Inf(1)
	}
	j := float64(way / free)
	s := (j + math.Sqrt(j*j+4*max(float64(pull/rating), 0))) / 2
	return s * s
}

// A SpeedError says that a speed through the water is at or beyond the
// free-running speed, where a motor has no thrust left.
type SpeedError struct{ Way, Free unit.Speed }

func (e *SpeedError) Error() string {
	return fmt.Sprintf("%.1f mph through the water is beyond the %.1f mph at which the motor's thrust runs out",
		e.Way.MilesPerHour(), e.Free.MilesPerHour())
}

// Rating is the static rating that leaves a pull at a speed, T / (1 - V/V0).
// It fails with a SpeedError where the speed reaches the free-running speed.
func Rating(pull unit.Force, way, free unit.Speed) (unit.Force, error) {
	if way >= free {
		return 0, &SpeedError{way, free}
	}
	return pull / unit.Force(1-float64(way/free)), nil
}

// Near tells a search of a value close to the one sought. The zero value tells of
// none.
type Near struct {
	Speed unit.Speed
	Rough bool // a two-thousandth of the bracket is close enough, as for the end of a band
}

// TopSpeed is where the thrust at a share of full throttle meets the drag of a
// hull. The drag must be 0 at rest and must not fall as speed rises.
func TopSpeed(rating unit.Force, share float64, free unit.Speed, near Near, drag func(unit.Speed) unit.Force) unit.Speed {
	if rating <= 0 || share <= 0 {
		return 0
	}
	return Crossing(0, free*unit.Speed(math.Sqrt(share)), near, func(u unit.Speed) unit.Force {
		return PartAvailable(rating, share, u, free) - drag(u)
	})
}

// Crossing finds where a falling function passes through nothing between two
// speeds, to ten digits of the bracket: the low end if it starts
// below, the high end if it ends above. From a speed near to the crossing it
// needs fewer steps.
func Crossing(low, high unit.Speed, near Near, surplus func(unit.Speed) unit.Force) unit.Speed {
	if near.Speed > low && near.Speed < high {
		enough := lastStep
		if near.Rough {
			enough = 5e-4
		}
		if u, ok := secant(low, high, near.Speed, unit.Speed(enough)*(high-low), surplus); ok {
			return u
		}
	}
	return falsePosition(low, high, surplus)
}

// Shares of the bracket. The secant's error falls faster than its steps, by the
// power 1.6: after a last step of a ten-millionth it is near 1e-11.
const (
	closeEnough = 1e-10
	lastStep    = 1e-7
)

// secant is the secant method from a speed near to the crossing; ok is false
// where it leaves the bracket or does not settle.
func secant(low, high, near, enough unit.Speed, surplus func(unit.Speed) unit.Force) (u unit.Speed, ok bool) {
	const steps = 8
	a, fa := near, surplus(near)
	if fa == 0 {
		return a, true
	}
	b := a * 1.02
	if fa < 0 {
		b = a * 0.98
	}
	for range steps {
		if !(b > low && b < high) {
			return 0, false
		}
		fb := surplus(b)
		if fb == fa {
			return b, fb == 0
		}
		c := b - (b-a)*unit.Speed(fb/(fb-fa))
		if !(c > low && c < high) {
			return 0, false
		}
		if math.Abs(float64(c-b)) < float64(enough) {
			return c, true
		}
		a, fa, b = b, fb, c
	}
	return 0, false
}

// falsePosition is the Illinois variant of the rule of false position, which
// keeps the crossing bracketed.
func falsePosition(low, high unit.Speed, surplus func(unit.Speed) unit.Force) unit.Speed {
	a, b := low, high
	fa := surplus(a)
	if fa <= 0 {
		return a
	}
	fb := surplus(b)
	if fb >= 0 {
		return b
	}
	const steps = 60
	enough := closeEnough * float64(high-low)
	for range steps {
		c := b - (b-a)*unit.Speed(fb/(fb-fa))
		fc := surplus(c)
		switch {
		case fc == 0:
			return c
		case fc > 0 == (fb > 0):
			fa /= 2 // the same end moved twice: let the other end count for less
		default:
			a, fa = b, fb
		}
		moved := math.Abs(float64(b - c))
		b, fb = c, fc
		if moved < enough {
			break
		}
	}
	return b
}
