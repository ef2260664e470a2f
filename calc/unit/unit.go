// Package unit holds one defined type for each dimension that a fitting uses.
// A value is stored in SI, is made only by a constructor that names the unit,
// and is read only by an accessor that names it again, so that a length in
// inches cannot be handed to a formula that wants metres.
//
// Limits: the charge of a battery is kept in ampere hours, its energy in watt
// hours and a run time in hours, as the trade speaks of them; everything else
// is coherent SI. Temperatures are points on the Celsius scale, not intervals.
//
// Source of the factors: NIST Special Publication 811, Appendix B (exact
// definitions), but for the US gallon of 231 in3 and the avoirdupois pound of
// 0.453 592 37 kg, which are defined by NBS (AMS 55, Table 2.5).
package unit

// Exact conversion factors, each the SI value of one unit.
const (
	MetresPerInch        = 0.0254
	MetresPerFoot        = 0.3048
	MetresPerMile        = 1609.344
	MetresPerNautical    = 1852.0
	KilogramsPerPound    = 0.45359237
	StandardGravity      = 9.80665 // m/s2
	NewtonsPerPoundForce = KilogramsPerPound * StandardGravity
	LitresPerUSGallon    = 3.785411784
	MPSPerMPH            = 0.44704
	MPSPerKnot           = 1852.0 / 3600.0
	MPSPerKMH            = 1.0 / 3.6
	WattsPerHorsepower   = 550 * MetresPerFoot * NewtonsPerPoundForce // mechanical, 550 ft lbf/s
	SquareMetresPerFoot2 = MetresPerFoot * MetresPerFoot
	// SquareMetresPerCircularMil is the area of a circle one mil across.
	SquareMetresPerCircularMil = 5.067074790974977e-10
)

// Length is a distance, stored in metres.
type Length float64

func Metres(x float64) Length      { return Length(x) }
func Centimetres(x float64) Length { return Length(x / 100) }
func Inches(x float64) Length      { return Length(x * MetresPerInch) }
func Feet(x float64) Length        { return Length(x * MetresPerFoot) }

func (l Length) Metres() float64 { return float64(l) }
func (l Length) Inches() float64 { return float64(l) / MetresPerInch }
func (l Length) Feet() float64   { return float64(l) / MetresPerFoot }
func (l Length) Miles() float64  { return float64(l) / MetresPerMile }

// Area is stored in square metres.
type Area float64

func SquareMetres(x float64) Area { return Area(x) }
func SquareFeet(x float64) Area   { return Area(x * SquareMetresPerFoot2) }
func CircularMils(x float64) Area { return Area(x * SquareMetresPerCircularMil) }

func (a Area) SquareMetres() float64 { return float64(a) }
func (a Area) SquareFeet() float64   { return float64(a) / SquareMetresPerFoot2 }
func (a Area) CircularMils() float64 { return float64(a) / SquareMetresPerCircularMil }

// Volume is stored in litres.
type Volume float64

func Litres(x float64) Volume      { return Volume(x) }
func USGallons(x float64) Volume   { return Volume(x * LitresPerUSGallon) }
func CubicMetres(x float64) Volume { return Volume(x * 1000) }

func (v Volume) Litres() float64      { return float64(v) }
func (v Volume) USGallons() float64   { return float64(v) / LitresPerUSGallon }
func (v Volume) CubicMetres() float64 { return float64(v) / 1000 }

// Mass is stored in kilograms.
type Mass float64

func Kilograms(x float64) Mass { return Mass(x) }
func Pounds(x float64) Mass    { return Mass(x * KilogramsPerPound) }

func (m Mass) Kilograms() float64 { return float64(m) }
func (m Mass) Pounds() float64    { return float64(m) / KilogramsPerPound }

// Weight is the force of standard gravity on the mass.
func (m Mass) Weight() Force { return Force(float64(m) * StandardGravity) }

// Density is stored in kilograms per cubic metre.
type Density float64

func KilogramsPerCubicMetre(x float64) Density { return Density(x) }

func (d Density) KilogramsPerCubicMetre() float64 { return float64(d) }
func (d Density) PoundsPerCubicFoot() float64 {
	return float64(d) * MetresPerFoot * MetresPerFoot * MetresPerFoot / KilogramsPerPound
}
func (d Density) PoundsPerUSGallon() float64 {
	return float64(d) / 1000 * LitresPerUSGallon / KilogramsPerPound
}

// Viscosity is kinematic viscosity, stored in square metres per second.
type Viscosity float64

func SquareMetresPerSecond(x float64) Viscosity { return Viscosity(x) }

func (v Viscosity) SquareMetresPerSecond() float64 { return float64(v) }

// Force is stored in newtons; thrust is a force.
type Force float64

func Newtons(x float64) Force    { return Force(x) }
func PoundForce(x float64) Force { return Force(x * NewtonsPerPoundForce) }

func (f Force) Newtons() float64    { return float64(f) }
func (f Force) PoundForce() float64 { return float64(f) / NewtonsPerPoundForce }

// Pressure is stored in pascals.
type Pressure float64

func Pascals(x float64) Pressure { return Pressure(x) }

func (p Pressure) Pascals() float64 { return float64(p) }

// Speed is stored in metres per second.
type Speed float64

func MetresPerSecond(x float64) Speed   { return Speed(x) }
func MilesPerHour(x float64) Speed      { return Speed(x * MPSPerMPH) }
func Knots(x float64) Speed             { return Speed(x * MPSPerKnot) }
func KilometresPerHour(x float64) Speed { return Speed(x * MPSPerKMH) }

func (s Speed) MetresPerSecond() float64   { return float64(s) }
func (s Speed) MilesPerHour() float64      { return float64(s) / MPSPerMPH }
func (s Speed) Knots() float64             { return float64(s) / MPSPerKnot }
func (s Speed) KilometresPerHour() float64 { return float64(s) * 3.6 }

// Duration is a run time or a charge time, stored in hours.
type Duration float64

func Hours(x float64) Duration   { return Duration(x) }
func Minutes(x float64) Duration { return Duration(x / 60) }

func (d Duration) Hours() float64   { return float64(d) }
func (d Duration) Minutes() float64 { return float64(d) * 60 }

// Current is stored in amperes.
type Current float64

func Amperes(x float64) Current { return Current(x) }

func (c Current) Amperes() float64 { return float64(c) }

// Voltage is stored in volts.
type Voltage float64

func Volts(x float64) Voltage { return Voltage(x) }

func (v Voltage) Volts() float64 { return float64(v) }

// Resistance is stored in ohms.
type Resistance float64

func Ohms(x float64) Resistance      { return Resistance(x) }
func Milliohms(x float64) Resistance { return Resistance(x / 1000) }

func (r Resistance) Ohms() float64      { return float64(r) }
func (r Resistance) Milliohms() float64 { return float64(r) * 1000 }

// Charge is a battery's capacity, stored in ampere hours.
type Charge float64

func AmpereHours(x float64) Charge { return Charge(x) }

func (c Charge) AmpereHours() float64 { return float64(c) }

// Energy is stored in watt hours.
type Energy float64

func WattHours(x float64) Energy { return Energy(x) }

func (e Energy) WattHours() float64 { return float64(e) }

// Power is stored in watts.
type Power float64

func Watts(x float64) Power      { return Power(x) }
func Horsepower(x float64) Power { return Power(x * WattsPerHorsepower) }

func (p Power) Watts() float64      { return float64(p) }
func (p Power) Horsepower() float64 { return float64(p) / WattsPerHorsepower }

// Temperature is a point on the Celsius scale.
type Temperature float64

func Celsius(x float64) Temperature    { return Temperature(x) }
func Fahrenheit(x float64) Temperature { return Temperature((x - 32) / 1.8) }

func (t Temperature) Celsius() float64    { return float64(t) }
func (t Temperature) Fahrenheit() float64 { return float64(t)*1.8 + 32 }

// Gauge is an American wire gauge number as the formula of ASTM B258 counts:
// 0 is 1/0, -1 is 2/0, -2 is 3/0, -3 is 4/0.
type Gauge int

func AWG(n int) Gauge { return Gauge(n) }

func (g Gauge) Number() int { return int(g) }

// Money is an amount in US dollars.
type Money float64

func Dollars(x float64) Money { return Money(x) }

func (m Money) Dollars() float64 { return float64(m) }
