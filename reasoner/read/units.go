package read

import "math"

// unitRow is one unit: how it is spelled, and what one of it is in SI.
type unitRow struct {
	spoken  string // canonical spelling
	kind    Kind
	si      string  // unit of the SI value, as the answer contract names it
	factor  float64 // SI value of one unit
	offset  float64 // added after the factor: degrees
	spelled string  // phrases, parted by "|"; a hyphen may stand between their words
	only    condition
	as      string // what it is, when it is none of the fitting's business
	article article
	metric  bool   // a number before it may have a decimal comma
	rule    string // name of the row in a trace, filled in by init
}

// condition tells whether the phrase at tokens from up to to, after the number
// n, is the unit; nil means always. It is what keeps "2 in series" from being
// an inch and "a 36 w a remote" from being a watt.
type condition func(p *parser, n num, from, to int) bool

// article says when "a" before the unit counts one.
type article uint8

const (
	never  article = iota
	counts         // "a litre"
	atEnd          // "a foot", but not "a foot pedal"
)

// Factors are exact by definition (NIST SP 811, Appendix B; AMS 55, Table 2.5)
// unless noted at the row.
const (
	metresPerFoot = 0.3048
	kgPerPound    = 0.45359237
	gravity       = 9.80665
	litresPerGal  = 3.785411784
	secondsPerDay = 86400
)

// units holds every unit. Order matters only where a spelling is in two rows:
// the first row whose condition holds is the reading.
var units = []unitRow{
	// Length.
	{spoken: "ft", kind: Length, si: "m", factor: metresPerFoot, spelled: "ft|foot|feet|footer|footers|fts|feets|foots", only: footNotPedal, article: atEnd},
	{spoken: "ft", kind: Length, si: "m", factor: metresPerFoot, spelled: "'", only: footMark},
	{spoken: "in", kind: Length, si: "m", factor: 0.0254, spelled: "inch|inches|inchs|inche|incher|ins", article: atEnd},
	{spoken: "in", kind: Length, si: "m", factor: 0.0254, spelled: "in", only: inchNotPreposition},
	{spoken: "in", kind: Length, si: "m", factor: 0.0254, spelled: `"`, only: inchMark},
	{spoken: "yd", kind: Length, si: "m", factor: 0.9144, spelled: "yd|yds|yard|yards", article: atEnd},
	{spoken: "fathom", kind: Length, si: "m", factor: 1.8288, spelled: "fathom|fathoms|fath", article: counts},
	{spoken: "mi", kind: Length, si: "m", factor: 1609.344, spelled: "mi|mile|miles|statute mile|statute miles", article: counts},
	{spoken: "nmi", kind: Length, si: "m", factor: 1852, spelled: "nmi|nautical mile|nautical miles|naut mile|naut miles|nm", article: counts},
	{spoken: "km", kind: Length, si: "m", factor: 1000, spelled: "km|kms|kilometer|kilometers|kilometre|kilometres", article: counts, metric: true},
	{spoken: "m", kind: Length, si: "m", factor: 1, spelled: "m|metre|metres|meter|meters|mtr|mtrs", only: metreNotMillion, article: counts, metric: true},
	{spoken: "dm", kind: Length, si: "m", factor: 0.1, spelled: "dm|decimeter|decimeters|decimetre|decimetres", article: counts, metric: true},
	{spoken: "cm", kind: Length, si: "m", factor: 0.01, spelled: "cm|cms|centimeter|centimeters|centimetre|centimetres", article: counts, metric: true},
	{spoken: "mm", kind: Length, si: "m", factor: 0.001, spelled: "mm|mms|millimeter|millimeters|millimetre|millimetres", article: counts, metric: true},
	{spoken: "um", kind: Length, si: "m", factor: 1e-6, spelled: "um|μm|µm|micron|microns|micrometer|micrometers|micrometre|micrometres", metric: true},
	{spoken: "nanometre", kind: Length, si: "m", factor: 1e-9, spelled: "nanometer|nanometers|nanometre|nanometres", metric: true},

	// Mass, and force told by the word thrust.
	{spoken: "lbf", kind: Force, si: "N", factor: kgPerPound * gravity, spelled: "lbf|lbsf|lb f|lb force|lbs force|pound force|pounds force|pounds of force|lbs of force|lb of force|" +
		"lb thrust|lbs thrust|pound thrust|pounds thrust|lb of thrust|lbs of thrust|pound of thrust|pounds of thrust|lb's of thrust|# thrust|# of thrust|" +
		"lb push|lbs of push|lb of push|pounds of push|lbs push|lbs worth of thrust|pounds worth of thrust|lb thurst|lbs thurst|lbs of thurst|lb of thurst"},
	{spoken: "lb", kind: Mass, si: "kg", factor: kgPerPound, spelled: "lb test|lbs test|pound test|# test|lb line|pound line|# line|lb braid|pound braid|# braid|lb mono|pound mono|lb leader|pound leader|lb fluoro", as: "fishing-line"},
	{spoken: "lb", kind: Mass, si: "kg", factor: kgPerPound, spelled: "lb|lbs|pound|pounds|pounder|pounders|#", only: fishWeight, as: "fish"},
	{spoken: "lb", kind: Mass, si: "kg", factor: kgPerPound, spelled: "lb|lbs|lb's|pound|pounds|punds|pnds|pnd|pouds|pouns|poundage|pounder|pounders", article: counts},
	{spoken: "lb", kind: Mass, si: "kg", factor: kgPerPound, spelled: "#", only: poundSign},
	{spoken: "kgf", kind: Force, si: "N", factor: gravity, spelled: "kgf|kilogram force|kilograms force|kg thrust|kg of thrust|kgs of thrust|kilos of thrust|kilo of thrust|kilos thrust|kilograms of thrust|kg force", metric: true},
	{spoken: "kg", kind: Mass, si: "kg", factor: 1, spelled: "kg|kgs|kilo|kilos|kilogram|kilograms|kilogramme|kilogrammes", article: counts, metric: true},
	{spoken: "oz", kind: Mass, si: "kg", factor: kgPerPound / 16, spelled: "oz|ozs|ounce|ounces", article: counts},
	{spoken: "st", kind: Mass, si: "kg", factor: 14 * kgPerPound, spelled: "stone|stones|st", only: stoneNotStreet},
	{spoken: "t", kind: Mass, si: "kg", factor: 1000, spelled: "tonne|tonnes|metric ton|metric tons|metric tonne|metric tonnes|t", article: counts, metric: true},
	{spoken: "ton", kind: Mass, si: "kg", factor: 2000 * kgPerPound, spelled: "ton|tons", only: truckLoad, as: "vehicle"},
	{spoken: "ton", kind: Mass, si: "kg", factor: 2000 * kgPerPound, spelled: "ton|tons|short ton|short tons|us ton|us tons", article: atEnd},
	{spoken: "long ton", kind: Mass, si: "kg", factor: 2240 * kgPerPound, spelled: "long ton|long tons|imperial ton|imperial tons"},
	{spoken: "cwt", kind: Mass, si: "kg", factor: 100 * kgPerPound, spelled: "cwt|hundredweight|hundredweights"},
	{spoken: "g", kind: Mass, si: "kg", factor: 0.001, spelled: "gram|grams|gramme|grammes|gm|gms|g", only: gramNotGauge, article: counts, metric: true},
	{spoken: "mg", kind: Mass, si: "kg", factor: 1e-6, spelled: "mg|mgs|milligram|milligrams|milligramme|milligrammes", article: counts, metric: true},
	{spoken: "ug", kind: Mass, si: "kg", factor: 1e-9, spelled: "ug|μg|µg|mcg|microgram|micrograms", metric: true},
	{spoken: "N", kind: Force, si: "N", factor: 1, spelled: "newton|newtons", article: counts, metric: true},
	{spoken: "N", kind: Force, si: "N", factor: 1, spelled: "n", only: capitalLetter, metric: true},
	{spoken: "kN", kind: Force, si: "N", factor: 1000, spelled: "kilonewton|kilonewtons|kn of thrust|kn thrust|kn force|kn of force", metric: true},

	// Speed.
	{spoken: "mph", kind: Speed, si: "m/s", factor: 0.44704, spelled: "mph|mphs|mhp|mp / h|mi / h|mi / hr|mi / hour|mile / hour|miles / hour|miles / hr|mi per hour|mi an hour"},
	{spoken: "kn", kind: Speed, si: "m/s", factor: 1852.0 / 3600, spelled: "knot|knots|kt|kts|kn|kns|nots|knts|knotts|nmi / h|nm / h|knots an hour|knots per hour"},
	{spoken: "km/h", kind: Speed, si: "m/s", factor: 1 / 3.6, spelled: "kmh|kph|kmph|km / h|km / hr|km / hour|kms / h|km per hour|km an hour|kms an hour|kms per hour|kmhr|kilometers / hour|kilometres / hour", metric: true},
	{spoken: "m/s", kind: Speed, si: "m/s", factor: 1, spelled: "m / s|m / sec|mps|metres / second|meters / second|m per s|m per sec|m per second|m s", only: metreSecond, metric: true},
	{spoken: "cm/s", kind: Speed, si: "m/s", factor: 0.01, spelled: "cm / s|cm / sec|cm per second", metric: true},
	{spoken: "ft/s", kind: Speed, si: "m/s", factor: metresPerFoot, spelled: "fps|ft / s|ft / sec|feet / second|ft per sec|ft per second|ft a second"},
	{spoken: "ft/min", kind: Speed, si: "m/s", factor: metresPerFoot / 60, spelled: "fpm|ft / min|feet / minute|ft per min|ft per minute|ft a minute"},

	// Duration.
	{spoken: "h", kind: Duration, si: "s", factor: 3600, spelled: "hour|hours|hr|hrs|h|hour's|houre|houres|huors|huor", article: counts},
	{spoken: "h", kind: Duration, si: "s", factor: 3600, spelled: "hr rate|hour rate|hours rate|h rate|hrs rate|hr rating|hour rating", as: "discharge-rate"},
	{spoken: "min", kind: Duration, si: "s", factor: 60, spelled: "min|mins|minute|minutes|minuts|minits", article: counts},
	{spoken: "s", kind: Duration, si: "s", factor: 1, spelled: "sec|secs|second|seconds", article: atEnd},
	{spoken: "s", kind: Duration, si: "s", factor: 1, spelled: "s", only: secondNotPlural},
	{spoken: "ms", kind: Duration, si: "s", factor: 0.001, spelled: "ms|msec|millisecond|milliseconds"},
	{spoken: "day", kind: Duration, si: "s", factor: secondsPerDay, spelled: "day|days|day's", article: counts},
	{spoken: "week", kind: Duration, si: "s", factor: 7 * secondsPerDay, spelled: "week|weeks|wk|wks", article: counts},
	{spoken: "fortnight", kind: Duration, si: "s", factor: 14 * secondsPerDay, spelled: "fortnight|fortnights", article: counts},
	// A month has no exact length; a twelfth of a year of 365 days.
	{spoken: "month", kind: Duration, si: "s", factor: 365 * secondsPerDay / 12.0, spelled: "month|months"},
	{spoken: "year", kind: Duration, si: "s", factor: 365 * secondsPerDay, spelled: "year|years|yr|yrs", article: counts},
	{spoken: "year", kind: Duration, si: "s", factor: 365 * secondsPerDay, spelled: "year old|years old|yr old|yrs old|year olds|yr olds", as: "age"},
	{spoken: "month", kind: Duration, si: "s", factor: 365 * secondsPerDay / 12.0, spelled: "month old|months old", as: "age"},

	{spoken: "cent", kind: Money, si: "USD", factor: 0.01, spelled: "c", only: centLetter},

	// Temperature; the Fahrenheit scale by definition.
	{spoken: "degC", kind: Temperature, si: "degC", factor: 1, spelled: "degree celsius|degrees celsius|degree c|degrees c|deg c|deg celsius|degs c|° c|° celsius|° celcius|celsius|celcius|centigrade|centigrate|degrees centigrade|degree centigrade|degrees celcius|° centigrade|℃|degc|tempc", metric: true},
	{spoken: "C", kind: Number, si: "1", factor: 1, spelled: "c", only: chargeRate, as: "charge-rate"},
	{spoken: "degC", kind: Temperature, si: "degC", factor: 1, spelled: "c", only: celsiusLetter, metric: true},
	{spoken: "degF", kind: Temperature, si: "degC", factor: 1 / 1.8, offset: -32 / 1.8, spelled: "degree fahrenheit|degrees fahrenheit|degree f|degrees f|deg f|deg fahrenheit|degs f|° f|° fahrenheit|fahrenheit|farenheit|farenheight|fahrenheight|degrees farenheit|degree farenheit|℉|degf|tempf"},
	{spoken: "degF", kind: Temperature, si: "degC", factor: 1 / 1.8, offset: -32 / 1.8, spelled: "f", only: fahrenheitLetter},
	{spoken: "K", kind: Temperature, si: "degC", factor: 1, offset: -273.15, spelled: "kelvin|kelvins|degrees kelvin|degree kelvin|degk|tempk"},
	{spoken: "K", kind: Temperature, si: "degC", factor: 1, offset: -273.15, spelled: "k", only: kelvinLetter},
	{spoken: "deg", kind: Temperature, si: "degC", factor: 1 / 1.8, offset: -32 / 1.8, spelled: "°|deg|degs|degree|degrees"},

	// Volume.
	{spoken: "L", kind: Volume, si: "L", factor: 1, spelled: "l|ltr|ltrs|lt|lts|liter|liters|litre|litres", article: counts, metric: true},
	{spoken: "mL", kind: Volume, si: "L", factor: 0.001, spelled: "ml|mls|milliliter|milliliters|millilitre|millilitres|cc|ccs", article: counts, metric: true},
	{spoken: "cL", kind: Volume, si: "L", factor: 0.01, spelled: "cl|centiliter|centiliters|centilitre|centilitres", article: counts, metric: true},
	{spoken: "dL", kind: Volume, si: "L", factor: 0.1, spelled: "dl|deciliter|deciliters|decilitre|decilitres", article: counts, metric: true},
	{spoken: "hL", kind: Volume, si: "L", factor: 100, spelled: "hl|hectoliter|hectoliters|hectolitre|hectolitres", article: counts, metric: true},
	{spoken: "m3", kind: Volume, si: "L", factor: 1000, spelled: "m3|m³|cubic meter|cubic meters|cubic metre|cubic metres|cu m", metric: true},
	{spoken: "ft3", kind: Volume, si: "L", factor: 28.316846592, spelled: "ft3|ft³|cubic foot|cubic feet|cu ft|cuft|cubic ft"},
	{spoken: "mL", kind: Volume, si: "L", factor: 0.001, spelled: "cm3|cm³|cubic centimeter|cubic centimeters|cubic centimetre|cubic centimetres|cubic cm", metric: true},
	{spoken: "yd3", kind: Volume, si: "L", factor: 764.554857984, spelled: "cubic yard|cubic yards|cu yd"},
	{spoken: "in3", kind: Volume, si: "L", factor: 0.016387064, spelled: "in3|in³|cubic inch|cubic inches|cu in"},
	{spoken: "imp gal", kind: Volume, si: "L", factor: 4.54609, spelled: "imperial gallon|imperial gallons|imp gal|imp gals|imp gallons|uk gallon|uk gallons"},
	{spoken: "gal", kind: Volume, si: "L", factor: litresPerGal, spelled: "gal|gals|gallon|gallons|galon|galons|gallen|gallens|us gallon|us gallons|us gal", article: counts},
	{spoken: "qt", kind: Volume, si: "L", factor: litresPerGal / 4, spelled: "qt|qts|quart|quarts", article: counts},
	{spoken: "pt", kind: Volume, si: "L", factor: litresPerGal / 8, spelled: "pint|pints|pt|pts", article: counts},
	{spoken: "cup", kind: Volume, si: "L", factor: litresPerGal / 16, spelled: "cup|cups", only: cupNotHolder, article: atEnd},
	{spoken: "fl oz", kind: Volume, si: "L", factor: litresPerGal / 128, spelled: "fl oz|fluid ounce|fluid ounces|fl ounce|fl ounces"},
	{spoken: "tbsp", kind: Volume, si: "L", factor: litresPerGal / 256, spelled: "tbsp|tbs|tbsps|tablespoon|tablespoons", article: counts},
	{spoken: "tsp", kind: Volume, si: "L", factor: litresPerGal / 768, spelled: "tsp|tsps|teaspoon|teaspoons", article: counts},

	// Electricity.
	{spoken: "Ah", kind: Charge, si: "Ah", factor: 1, spelled: "ah|ahs|ahr|ahrs|amp hour|amp hours|amp hr|amp hrs|amps hour|amps hours|ampere hour|ampere hours|amphour|amphours|amphr|amphrs|a h|a hr|amp h|amps hrs|a / h", metric: true},
	{spoken: "mAh", kind: Charge, si: "Ah", factor: 0.001, spelled: "mah|milliamp hour|milliamp hours", metric: true},
	{spoken: "A", kind: Current, si: "A", factor: 1, spelled: "amp|amps|ampere|amperes|amper|ampers|apms", article: counts, metric: true},
	{spoken: "A", kind: Current, si: "A", factor: 1, spelled: "a", only: ampereNotArticle, metric: true},
	{spoken: "mA", kind: Current, si: "A", factor: 0.001, spelled: "ma|milliamp|milliamps|milliampere|milliamperes", metric: true},
	{spoken: "V", kind: Voltage, si: "V", factor: 1, spelled: "volt|volts|vlot|vlots|volter|vdc|v dc|volts dc|volt dc|dc volts|vac", article: counts, metric: true},
	{spoken: "V", kind: Voltage, si: "V", factor: 1, spelled: "v|vs", only: voltNotHull, metric: true},
	{spoken: "mV", kind: Voltage, si: "V", factor: 0.001, spelled: "mv|millivolt|millivolts", metric: true},
	{spoken: "kW", kind: Power, si: "W", factor: 1000, spelled: "kw|kws|kilowatt|kilowatts", article: counts, metric: true},
	{spoken: "W", kind: Power, si: "W", factor: 1, spelled: "watt|watts|wats", article: counts, metric: true},
	{spoken: "W", kind: Power, si: "W", factor: 1, spelled: "w", only: wattNotWith, metric: true},
	{spoken: "MW", kind: Power, si: "W", factor: 1e6, spelled: "megawatt|megawatts", article: counts, metric: true},

	// Percent.
	{spoken: "%", kind: Percent, si: "%", factor: 1, spelled: "%|percent|per cents|per cent|pct|percents|prcent|precent|persent", metric: true},

	// Money.
	{spoken: "USD", kind: Money, si: "USD", factor: 1, spelled: "$|us $|dollar|dollars|usd|us dollar|us dollars|american dollars|buck|bucks|bux|dollers|doller|dolars|dolar|$ us|dollars us|smackers", article: atEnd},
	{spoken: "cent", kind: Money, si: "USD", factor: 0.01, spelled: "cent|cents|¢"},
	{spoken: "EUR", kind: Money, si: "EUR", factor: 1, spelled: "€|eur|euro|euros", article: atEnd},
	{spoken: "GBP", kind: Money, si: "GBP", factor: 1, spelled: "£|gbp|quid|pounds sterling|pound sterling|british pounds|british pound", article: atEnd},
	{spoken: "penny", kind: Money, si: "GBP", factor: 0.01, spelled: "pence"},

	// Wire gauge: the formula of ASTM B258 counts 1/0 as 0, 2/0 as -1.
	{spoken: "AWG", kind: Gauge, si: "AWG", factor: 1, spelled: "gauge|gage|guage|gague|gauges|ga|awg|gau"},
	{spoken: "AWG", kind: Gauge, si: "AWG", factor: 1, spelled: "g wire|g cable|g wires"},

	// Measures of other things, read so that their parts are not taken for ours.
	{spoken: "hp", kind: Power, si: "W", factor: 745.69987158227022, spelled: "hp|h p|hps|horse|horses|horsepower|horse power|horespower|bhp|horspower|hosepower|hp's|ponies", as: "horsepower", article: never},
	{spoken: "stroke", kind: Number, si: "1", factor: 1, spelled: "stroke|strokes|stroker|strok|cycle", as: "strokes"},
	{spoken: "cylinder", kind: Number, si: "1", factor: 1, spelled: "cyl|cylinder|cylinders", as: "cylinders"},
	{spoken: "Wh", kind: Number, si: "1", factor: 1, spelled: "wh|watt hour|watt hours|watt hr|watt hrs|whr|watthours|watthour", as: "energy", metric: true},
	{spoken: "kWh", kind: Number, si: "1", factor: 1, spelled: "kwh|kilowatt hour|kilowatt hours|kwhr|kw h|kw hr", as: "energy", metric: true},
	{spoken: "cca", kind: Number, si: "1", factor: 1, spelled: "cca|mca|cranking amps|cold cranking amps|marine cranking amps", as: "cranking-amps"},
	{spoken: "rpm", kind: Number, si: "1", factor: 1, spelled: "rpm|rpms|revs", as: "revolutions"},
	{spoken: "psi", kind: Number, si: "1", factor: 1, spelled: "psi|lb / in2|pounds per square inch|kpa|psf", as: "pressure"},
	{spoken: "ohm", kind: Number, si: "1", factor: 1, spelled: "ohm|ohms|milliohm|milliohms|ω", as: "resistance"},
	{spoken: "gph", kind: Number, si: "1", factor: 1, spelled: "gph|gpm|gallons per hour|gallon per hour|gal per hour|gallons an hour|gal / h|gal / hr|gallons per minute|lph", as: "flow"},
	{spoken: "mpg", kind: Number, si: "1", factor: 1, spelled: "mpg|miles per gallon|miles a gallon|miles to the gallon", as: "consumption"},
	{spoken: "ft lb", kind: Number, si: "1", factor: 1, spelled: "ft lb|ft lbs|foot pound|foot pounds|lb ft|lbs ft|in lb|in lbs|inch pounds|inch pound|pound feet|nm of torque|newton metres|newton meters", as: "torque"},
	{spoken: "area", kind: Number, si: "1", factor: 1, spelled: "sq ft|sq feet|sq foot|square ft|square foot|square feet|sqft|sq m|square metre|square metres|square meter|square meters|sq in|square inch|square inches|" +
		"sq mi|square mile|square miles|sq km|square kilometre|square kilometres|square kilometer|square kilometers|sq mm|square millimetre|square millimetres|square millimeter|square millimeters|square mm|" +
		"m2|m²|km2|km²|mm2|mm²|cm2|cm²|ft2|ft²|in2|in²|acre|acres|hectare|hectares|ha", as: "area", metric: true},
	{spoken: "pack", kind: Number, si: "1", factor: 1, spelled: "pack|packs|pk", as: "pack"},
	{spoken: "Hz", kind: Number, si: "1", factor: 1, spelled: "hz|khz|mhz|ghz|hertz|kilohertz", as: "frequency"},
	{spoken: "byte", kind: Number, si: "1", factor: 1, spelled: "kb|mb|gb|tb|bytes|byte|kilobytes|megabytes|gigabytes", as: "data"},
}

// speeds lists which length over which time has a name.
var speeds = []struct {
	length, time string
	spoken       string
	factor       float64
}{
	{"mi", "h", "mph", 0.44704},
	{"nmi", "h", "kn", 1852.0 / 3600},
	{"km", "h", "km/h", 1 / 3.6},
	{"m", "s", "m/s", 1},
	{"cm", "s", "cm/s", 0.01},
	{"ft", "s", "ft/s", metresPerFoot},
	{"in", "s", "in/s", 0.0254},
	{"m", "min", "m/min", 1.0 / 60},
	{"ft", "min", "ft/min", metresPerFoot / 60},
	{"km", "s", "km/s", 1000},
	{"mi", "s", "mi/s", 1609.344},
	{"mi", "min", "mi/min", 1609.344 / 60},
	{"m", "h", "m/h", 1.0 / 3600},
	{"ft", "h", "ft/h", metresPerFoot / 3600},
}

// speedRows are the units made of a length over a time.
var speedRows = func() []unitRow {
	rows := make([]unitRow, len(speeds))
	for i, s := range speeds {
		rows[i] = unitRow{spoken: s.spoken, kind: Speed, si: "m/s", factor: s.factor, rule: "speed in " + s.spoken}
	}
	return rows
}()

// subunits lists what may follow a unit to make one measure with it, and how
// many of the smaller make one of the larger: 18 ft 6 in, 5 lb 9 oz, 1 h 30.
// Bare marks that the smaller unit may be left out.
var subunits = []struct {
	large, small string
	per          float64
	bare         bool
}{
	{"ft", "in", 12, true},
	{"yd", "ft", 3, false}, {"yd", "in", 36, false}, {"mi", "ft", 5280, false}, {"mi", "yd", 1760, false},
	{"km", "m", 1000, false}, {"km", "cm", 1e5, false}, {"m", "cm", 100, false}, {"m", "mm", 1000, false}, {"m", "dm", 10, false}, {"cm", "mm", 10, false},
	{"m", "ft", 1 / metresPerFoot, false},
	{"lb", "oz", 16, false}, {"st", "lb", 14, true}, {"kg", "g", 1000, false}, {"t", "kg", 1000, false}, {"ton", "lb", 2000, false},
	{"g", "mg", 1000, false},
	{"h", "min", 60, true}, {"h", "s", 3600, false}, {"min", "s", 60, true},
	{"day", "h", 24, false}, {"day", "min", 1440, false}, {"day", "s", 86400, false},
	{"week", "day", 7, false}, {"week", "h", 168, false},
	{"year", "month", 12, false}, {"year", "week", 52, false}, {"year", "day", 365, false}, {"year", "h", 8760, false},
	{"month", "week", 4, false}, {"month", "day", 30, false},
	{"USD", "cent", 100, true}, {"EUR", "cent", 100, true}, {"GBP", "penny", 100, true},
	{"gal", "qt", 4, false}, {"gal", "pt", 8, false}, {"qt", "pt", 2, false}, {"L", "mL", 1000, false},
}

// smaller returns how many of the small unit make one of the large.
func smaller(large, small string) (per float64, ok bool) {
	for _, s := range subunits {
		if s.large == large && s.small == small {
			return s.per, true
		}
	}
	return 0, false
}

// bareSmaller returns how many of the unit that goes unsaid make one of the
// large: the 6 of "18 foot 6" is twelfths.
func bareSmaller(large string) (per float64, ok bool) {
	for _, s := range subunits {
		if s.large == large && s.bare {
			return s.per, true
		}
	}
	return 0, false
}

// toSI converts a number of the unit; a bare number stays as it is.
func (u *unitRow) toSI(x float64) float64 {
	if u == nil {
		return x
	}
	return x*u.factor + u.offset
}

// integer tells whether x is a whole number that a count can be.
func integer(x float64) bool { return x == math.Trunc(x) && math.Abs(x) < 1e15 }

// unit reads the unit at token j after the number n and returns its row and the
// token after it; nil when there is none. A hyphen, a word such as "more" and a
// bracket may stand between.
func (p *parser) unit(n *num, j int) (*unitRow, int) {
	if u, to := p.unitWord(n, j); u != nil {
		return u, to
	}
	switch w := p.word(j); {
	case w == "-":
		// "18-foot"; a dash with spaces only before a unit that is no
		// common word.
		if u, to := p.unitWord(n, j+1); u != nil && (p.glued(j) && p.glued(j+1) || len(p.word(j+1)) > 1 && p.word(j+1) != "in") {
			return u, to
		}
	case n.broken && w == "of":
		k := j + 1
		if p.word(k) == "a" || p.word(k) == "an" {
			k++
		}
		if u, to := p.unitWord(n, k); u != nil && len(p.word(k)) > 1 && u.kind != Money {
			return u, to // "three quarters of an hour"
		}
	case w == "<" || w == "[" || w == "{":
		if u, to := p.unitWord(n, j+1); u != nil && to < len(p.tok) && isCloser(p.word(to)) {
			return u, to + 1
		}
	case p.role(j)&fillsUnit != 0:
		if u, to := p.unitWord(n, j+1); u != nil && len(p.word(j+1)) > 2 && u.as == "" {
			return u, to
		}
	}
	return nil, j
}

func isCloser(w string) bool { return w == ">" || w == "]" || w == "}" }

// unitWord reads the unit whose first word stands at token j.
func (p *parser) unitWord(n *num, j int) (*unitRow, int) {
	if j >= len(p.tok) || p.lex[j].entry == nil {
		return nil, j
	}
	for ph := p.lex[j].entry.units; ph != nil; ph = ph.next {
		to, ok := p.phrase(j, ph.words)
		if !ok || ph.row.only != nil && !ph.row.only(p, *n, j, to) {
			continue
		}
		u := ph.row
		if u.kind == Length {
			if s, end := p.overTime(u, to); s != nil {
				return s, end
			}
		}
		return u, to
	}
	return nil, j
}

// overTime reads "per hour", "an hour", "/ h" after a unit of length.
func (p *parser) overTime(length *unitRow, j int) (*unitRow, int) {
	hyphens := p.word(j) == "-" && p.glued(j) && p.word(j+2) == "-"
	if hyphens {
		j++ // "a 12-mile-an-hour wind"
	}
	if p.role(j)&perWord == 0 {
		return nil, j
	}
	if hyphens {
		j++
	}
	if j+1 >= len(p.tok) || p.lex[j+1].entry == nil {
		return nil, j
	}
	for ph := p.lex[j+1].entry.units; ph != nil; ph = ph.next {
		if ph.row.kind != Duration || len(ph.words) > 1 {
			continue
		}
		for i := range speeds {
			if speeds[i].length == length.spoken && speeds[i].time == ph.row.spoken {
				return &speedRows[i], j + 2
			}
		}
	}
	return nil, j
}
