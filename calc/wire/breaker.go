package wire

import "heronlake.example/ask/calc/unit"

// BreakerFloor is the least rating for a motor: 1.05 times its greatest current,
// so that it holds at full throttle on a hot day. Common practice, no published
// source; the motor's own manual comes first.
func BreakerFloor(motor unit.Current) unit.Current {
	return unit.Current(1.05 * motor.Amperes())
}

// Guard says how a breaker's rating stands to the conductor's ampacity.
type Guard int

const (
	// Within: the rating is not above the ampacity.
	Within Guard = iota
	// NextSizeUp: above the ampacity but within 150 % of it, which the rule
	// allows where no standard size fits.
	NextSizeUp
	// TooLarge: above 150 % of the ampacity, or the motor's current is itself
	// above the ampacity; the wire must grow.
	TooLarge
)

// largestShare is the most that a rating may be of the ampacity of Table 5 on a
// circuit under 50 V (33 CFR 183.455(c)(1)). ABYC E-11 allows it only where no
// standard size fits, and so does this package.
const largestShare = 1.5

// Guards judges a breaker's rating for a motor on a conductor. The rating must
// already be the smallest standard size that the motor allows, so that one above
// the ampacity means that none fits.
//
// Source: 33 CFR 183.455(c) and ABYC E-11; 183.425(b) for the motor's current.
func Guards(rating, motor, ampacity unit.Current) Guard {
	switch {
	case motor.Amperes() > ampacity.Amperes()*(1+1e-9), rating.Amperes() > largestShare*ampacity.Amperes():
		return TooLarge
	case rating.Amperes() > ampacity.Amperes()*(1+1e-9):
		return NextSizeUp
	}
	return Within
}

// Leaving is how a conductor leaves its source of power, which decides how far
// along it the breaker may sit.
type Leaving int

const (
	// Bare: no sheath or enclosure. 7 in (33 CFR 183.455(b)(1), ABYC E-11).
	Bare Leaving = iota
	// Sheathed: in a sheath or enclosure all the way. 40 in (33 CFR
	// 183.455(b)(2), ABYC E-11).
	Sheathed
	// AtBattery: sheathed and on the battery's own terminal. 72 in (ABYC E-11;
	// readings differ on whether the sheath is required, so that it is here).
	AtBattery
)

var leavingWords = [...]string{Bare: "bare", Sheathed: "sheathed", AtBattery: "battery-terminal"}

func (l Leaving) String() string { return leavingWords[l] }

// LeavingOf reads bare, sheathed or battery-terminal; anything else is Bare, the
// strictest.
func LeavingOf(word string) Leaving {
	for l, w := range leavingWords {
		if w == word {
			return Leaving(l)
		}
	}
	return Bare
}

// BreakerDistance is the most wire there may be between the source of power and
// the breaker, measured along the conductor.
func BreakerDistance(l Leaving) unit.Length {
	switch l {
	case Sheathed:
		return unit.Inches(40)
	case AtBattery:
		return unit.Inches(72)
	}
	return unit.Inches(7)
}
