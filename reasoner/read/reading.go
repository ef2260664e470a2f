// Package read turns a line of talk into tokens and measures, and gives neither
// any meaning: "18-foot" is a length of 5.4864 m that stands at bytes 0 to 7,
// and whether that is a boat or a wire is settled by package meaning.
//
// The text is cut into tokens (tokens.go), and one walk over them from left to
// right (parse.go) reads a number (numbers.go), its unit (units.go, with the
// conditions on doubtful spellings in conditions.go), what makes one measure
// with it, such as inches after feet or the far end of a range (compose.go),
// and the hedges around it (hedges.go). Numbers of other things, such as clock
// times, are known by their shape (distractors.go). Units, number words, hedges
// and the parts that other words play (lexicon.go) are rows: a new spelling is
// one more word in a row, and a line in the corpus beside it.
//
// Limits: English, US and metric units, and the slips of a counter. A number
// whose unit is ambiguous keeps every candidate. Text beyond MaxText, or after
// MaxMeasures measures, is not read. Time and memory grow in proportion to the
// text.
package read

// MaxText is the longest text that is read, in bytes.
const MaxText = 1 << 20

// Kind is the kind of quantity, as the answer contract names it.
type Kind string

const (
	Length      Kind = "length"
	Mass        Kind = "mass"
	Force       Kind = "force"
	Speed       Kind = "speed"
	Duration    Kind = "duration"
	Temperature Kind = "temperature"
	Volume      Kind = "volume"
	Percent     Kind = "percent"
	Money       Kind = "money"
	Number      Kind = "number"
	Current     Kind = "current"
	Voltage     Kind = "voltage"
	Charge      Kind = "charge"
	Power       Kind = "power"
	Gauge       Kind = "gauge" // a wire gauge; shown as number in `read`
	Group       Kind = "group" // a battery case size; shown as number in `read`
)

// Token is one word, number or mark of the text.
type Token struct {
	Start, End int    // bytes in the text
	Text       string // lower case, straight quotes, as matched by rules
	Measure    int    // index into Reading.Measures of the measure that covers it, -1 if none
}

// Measure is a number with its unit, if one was said.
//
// A plain value has Value alone; a range has its two ends instead; a bound
// ("under $900") has one of them; a loose amount ("a couple hundred pounds", "470
// give or take 20") has all three. Said covers the hedges ("about", "no more
// than", "max") as well as the number.
type Measure struct {
	Start, End int    // bytes in the text
	Said       string // those bytes
	Kind       Kind
	Unit       string   // SI, as the contract: m, kg, N, m/s, s, degC, L, %, 1, A, V, Ah, W, USD
	Value      *float64 // nil for a range without a named middle
	Low, High  *float64 // ends of a range or a bound
	Bare       float64  // the number as spoken, before conversion: 18 for "18-foot", 18.5 for "18'6"; low end of a range; the middle of a loose amount
	BareHigh   float64  // the high end as spoken, 0 when there is none
	Spoken     string   // the unit as spoken, canonical: "ft", "in", "lb", "mph", "" for a bare number
	About      bool     // "about", "maybe", "~"
	As         string   // recognised as something else: see Others
	Rule       string   // the row that made it
	// Also holds other readings that the text allows ("5 m" metres or miles,
	// "24" with no unit); the first reading is the likeliest.
	Also []Alternative
}

// Others lists what a number may be marked as in Measure.As: none of them is a
// measure of the boat or its rig.
var Others = []string{
	"age", "area", "charge-rate", "clock-time", "consumption", "cranking-amps", "cylinders", "data", "date", "discharge-rate", "energy", "fish", "fishing-line",
	"flow", "frequency", "horsepower", "label", "model-year", "ordinal", "pack", "part-number", "phone-number", "pressure", "rate", "ratio", "resistance",
	"revolutions", "strokes", "torque", "vehicle",
}

// Alternative is another reading of the same words.
type Alternative struct {
	Kind  Kind
	Unit  string
	Value float64
	Rule  string
}

// Reading is a text with its tokens and measures in order of appearance;
// measures do not overlap.
type Reading struct {
	Text     string
	Tokens   []Token
	Measures []Measure
	Cut      bool // the text was longer than MaxText or held more than MaxMeasures
}
