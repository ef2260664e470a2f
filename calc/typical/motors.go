package typical

import (
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// A MotorClass is one size of motor as it is sold, with what it draws at full
// throttle. From memory of the trade; classes overlap in practice, 24 volts
// reaching to about 100 lb and 36 volts beginning at about 90.
type MotorClass struct {
	Rating unit.Force
	Volts  unit.Voltage
	Amps   unit.Current // brushed
	Prop   unit.Length  // diameter of the prop, an inch either way
}

func motor(pounds, volts, amps, prop float64) MotorClass {
	return MotorClass{unit.PoundForce(pounds), unit.Volts(volts), unit.Amperes(amps), unit.Inches(prop)}
}

// MotorClasses is the ladder of ratings, ascending.
var MotorClasses = []MotorClass{
	motor(30, 12, 30, 8.5),
	motor(40, 12, 38, 9.2),
	motor(45, 12, 42, 9.2),
	motor(50, 12, 46, 9.6),
	motor(55, 12, 50, 10),
	motor(70, 24, 42, 11),
	motor(80, 24, 56, 11),
	motor(90, 24, 60, 11.5),
	motor(100, 36, 46, 12),
	motor(110, 36, 52, 12),
	motor(120, 36, 56, 12),
}

// Watts is the power of the class at full throttle and nominal voltage.
func (c MotorClass) Watts() unit.Power { return unit.Watts(c.Volts.Volts() * c.Amps.Amperes()) }

// BrushlessCurrent is what a brushless motor draws of a brushed one's current.
// From memory.
const BrushlessCurrent = 0.9

// Ratings for which MotorWatts holds.
var (
	LeastRating = unit.PoundForce(15)
	MostRating  = unit.PoundForce(250)
)

// MotorWatts is the power of a brushed motor of a rating at full throttle,
// straight between the classes. Outside them the power follows the 1.5th power
// of the thrust, as momentum theory has it for the same prop. It takes ratings
// from LeastRating to MostRating; ok is false outside.
func MotorWatts(rating unit.Force) (p unit.Power, ok bool) {
	ok = rating >= LeastRating && rating <= MostRating
	first, last := MotorClasses[0], MotorClasses[len(MotorClasses)-1]
	switch {
	case rating <= first.Rating:
		return unit.Watts(first.Watts().Watts() * pow15(float64(rating/first.Rating))), ok
	case rating >= last.Rating:
		return unit.Watts(last.Watts().Watts() * pow15(float64(rating/last.Rating))), ok
	}
	for i := 1; i < len(MotorClasses); i++ {
		if b := MotorClasses[i]; rating <= b.Rating {
			a := MotorClasses[i-1]
			f := float64((rating - a.Rating) / (b.Rating - a.Rating))
			return a.Watts() + unit.Power(f)*(b.Watts()-a.Watts()), ok
		}
	}
	return last.Watts(), ok
}

// RatingOfWatts is MotorWatts the other way round.
func RatingOfWatts(p unit.Power) unit.Force {
	low, high := LeastRating, MostRating
	for range 60 {
		mid := (low + high) / 2
		if w, _ := MotorWatts(mid); w < p {
			low = mid
		} else {
			high = mid
		}
	}
	return (low + high) / 2
}

// ClassVolts is the voltage that a rating is usually built for.
func ClassVolts(rating unit.Force) unit.Voltage {
	for _, c := range MotorClasses {
		if rating <= c.Rating*(1+1e-9) {
			return c.Volts
		}
	}
	return MotorClasses[len(MotorClasses)-1].Volts
}

// RatingRange is what ratings are built for a voltage, classes overlapping: 24
// volts to about 100 lb, 36 volts from about 90. From memory.
func RatingRange(volts unit.Voltage) (low, high unit.Force) {
	switch {
	case volts < 18:
		return 0, unit.PoundForce(60)
	case volts < 30:
		return unit.PoundForce(60), unit.PoundForce(101)
	}
	return unit.PoundForce(89), MostRating
}

// UsualRating is a common motor of a voltage, SI.
func UsualRating(volts unit.Voltage) band.Band[float64] {
	switch {
	case volts < 18:
		return poundBand(30, 55, 55)
	case volts < 30:
		return poundBand(70, 80, 90)
	}
	return poundBand(100, 112, 120)
}

func poundBand(low, nominal, high float64) band.Band[float64] {
	return band.Of(unit.PoundForce(low).Newtons(), unit.PoundForce(nominal).Newtons(), unit.PoundForce(high).Newtons())
}

// PropOf is the diameter of the prop on a motor of a rating.
func PropOf(rating unit.Force) unit.Length {
	for _, c := range MotorClasses {
		if rating <= c.Rating*(1+1e-9) {
			return c.Prop
		}
	}
	return MotorClasses[len(MotorClasses)-1].Prop
}

// Efficiency is the share of the electrical power that becomes ideal thrust
// power at rest, for brushed and for brushless motors.
var (
	EfficiencyBrushed   = b3(0.42, 0.50, 0.60)
	EfficiencyBrushless = b3(0.50, 0.58, 0.70)
)

// FreeSpeed is the speed through the water at which a motor of a voltage has no
// thrust left, SI.
func FreeSpeed(volts unit.Voltage) band.Band[float64] {
	switch {
	case volts < 18:
		return b3(2.6, 3.1, 3.6)
	case volts < 30:
		return b3(2.8, 3.3, 3.8)
	}
	return b3(3.0, 3.5, 4.1)
}

// FreeSpeedOf is FreeSpeed for a rating of which the voltage is not settled
// yet: that of 12 volts to the largest class built for it, that of 36 volts from
// the middle of its classes, straight between by way of 24 volts, so that a
// larger rating never runs slower.
func FreeSpeedOf(rating unit.Force) band.Band[float64] {
	r := rating.PoundForce()
	small, middle, large := FreeSpeed(12), FreeSpeed(24), FreeSpeed(36)
	switch {
	case r <= 55:
		return small
	case r <= 80:
		return between(small, middle, (r-55)/25)
	case r <= 110:
		return between(middle, large, (r-80)/30)
	}
	return large
}

func between(a, b band.Band[float64], f float64) band.Band[float64] {
	return band.Band[float64]{Low: a.Low + f*(b.Low-a.Low), Nominal: a.Nominal + f*(b.Nominal-a.Nominal), High: a.High + f*(b.High-a.High)}
}

// Further properties of motors and their controls, from memory.
var (
	// CurrentSpread is the full-throttle current of one motor against the table.
	CurrentSpread = b3(0.88, 1.0, 1.12)
	// Idle draw of a variable control, and of one with electric steering and
	// position holding, in amperes.
	IdlePlain   = b3(0.2, 0.4, 0.8)
	IdleSteered = b3(0.7, 1.2, 2.5)
	// ControllerEfficiency of a continuously variable control.
	ControllerEfficiency = b3(0.93, 0.96, 0.98)
	// ControlMargin is the speed over and above current and drift with which a
	// boat still answers, m/s.
	ControlMargin = b3(0.1, 0.25, 0.5)
	// Reverse is a transom motor's thrust backwards, against forwards.
	Reverse = b3(0.5, 0.6, 0.7)
	// LongRun is the share of full thrust that a motor can be asked for all day.
	LongRun = b3(0.35, 0.5, 0.5)
)

// A Style is a way of fishing with the mean current that it takes, as a share of
// the full current of a variable control.
type Style struct {
	Name  string
	Share band.Band[float64]
	Words []string // any of which, as a whole word or its beginning, tells it
}

// Styles are tried in order; holding comes three times, by the wind. From memory.
var Styles = []Style{
	{"holding in a strong wind", b3(0.35, 0.50, 0.80), nil},
	{"holding in a breeze", b3(0.12, 0.22, 0.35), nil},
	{"holding in a calm", b3(0.03, 0.07, 0.12), nil},
	{"guiding", b3(0.15, 0.22, 0.35), []string{"guid", "charter"}},
	{"slow trolling", b3(0.08, 0.15, 0.25), []string{"troll"}},
	{"holding", b3(0.12, 0.22, 0.35), []string{"hold", "jig", "anchor", "hover", "vertical", "spot"}},
	{"open-water casting", b3(0.12, 0.20, 0.35), []string{"open", "windy"}},
	{"bank casting", b3(0.06, 0.12, 0.20), []string{"cast", "bank", "flip", "pitch", "dock", "shore"}},
	{"kayak cruising", b3(0.15, 0.25, 0.40), []string{"cruis", "paddl", "kayak", "touring", "travel"}},
	{"drifting", b3(0.03, 0.07, 0.12), []string{"drift"}},
}

// HarbourStyle is the mean current share of a motor that only moves a boat in and
// out of its berth (from memory).
var HarbourStyle = b3(0.3, 0.5, 0.8)

// AnyStyle is the mean current share of a day of which nothing was said.
var AnyStyle = b3(0.08, 0.15, 0.28)

// FixedAgainstVariable is how much more mean current a five-speed switch takes
// for the same fishing.
const FixedAgainstVariable = 2.0

// StyleOf finds the way of fishing that a phrase names. A holding boat takes
// its share by the wind: under 3 m/s (7 mph) a calm, from 7 m/s (16 mph) strong.
func StyleOf(phrase string, wind unit.Speed, windSaid bool) (*Style, bool) {
	for i := range Styles {
		s := &Styles[i]
		for _, w := range s.Words {
			if !wordBegins(phrase, w) {
				continue
			}
			if s.Name == "holding" && windSaid {
				switch {
				case wind.MetresPerSecond() < 3:
					return &Styles[2], true
				case wind.MetresPerSecond() < 7:
					return &Styles[1], true
				}
				return &Styles[0], true
			}
			return s, true
		}
	}
	return nil, false
}

// WindLike is the wind that a holding boat takes like a stream, 0 without one:
// up to 0.4 m/s (1 mph) a calm, up to 0.9 m/s (2 mph) a breeze, a strong wind
// above, when some half of a usual motor's thrust goes into the stream alone. From
// memory.
func WindLike(stream unit.Speed) unit.Speed {
	switch u := stream.MetresPerSecond(); {
	case u <= 0:
		return 0
	case u < 0.4:
		return unit.MetresPerSecond(2)
	case u < 0.9:
		return unit.MetresPerSecond(5)
	}
	return unit.MetresPerSecond(8)
}

// wordBegins reports whether a word of the phrase begins with the letters.
func wordBegins(phrase, letters string) bool {
	for i := 0; i+len(letters) <= len(phrase); i++ {
		if (i == 0 || !letter(phrase[i-1])) && phrase[i:i+len(letters)] == letters {
			return true
		}
	}
	return false
}

func letter(c byte) bool { return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' }

// Wind, current and waves from which the rule of thumb is raised, SI; from
// OpenWaves the water counts as big and open. Common practice, no published
// source.
const (
	RaiseWind    = 12 * unit.MPSPerMPH
	RaiseCurrent = 0.5 * unit.MPSPerMPH
	RaiseWaves   = 12 * unit.MetresPerInch
	OpenWaves    = 24 * unit.MetresPerInch
)

// NoGainRating is about the rating from which more thrust no longer drives a
// canoe or kayak faster. From memory.
var NoGainRating = unit.PoundForce(40)

func pow15(x float64) float64 { return x * math.Sqrt(x) }
