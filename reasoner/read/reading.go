// Package read turns a line of talk into tokens and measures, and gives neither
// any meaning: "18-foot" is a length of 5.4864 m that stands at bytes 0 to 7,
// and whether that is a boat or a wire is settled by package meaning.
//
// Limits: English, US and metric units, and the slips of a counter. A number
// whose unit is ambiguous keeps every candidate. Text beyond MaxText is not
// read. Time and memory grow in proportion to the text.
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
type Measure struct {
	Start, End int    // bytes in the text
	Said       string // those bytes
	Kind       Kind
	Unit       string   // SI, as the contract: m, kg, N, m/s, s, degC, L, %, 1, A, V, Ah, W, USD
	Value      *float64 // nil for a range without a named middle
	Low, High  *float64 // ends of a range or a bound
	Bare       float64  // the number as spoken, before conversion: 18 for "18-foot"; low end of a range
	BareHigh   float64  // the high end as spoken, 0 when there is none
	Spoken     string   // the unit as spoken, canonical: "ft", "in", "lb", "mph", "" for a bare number
	About      bool     // "about", "maybe", "~"
	As         string   // recognised as something else: model-year, horsepower, clock-time, phone-number, strokes, ...
	Rule       string   // the row that made it
	// Also holds other readings that the text allows ("5 m" metres or miles,
	// "24" with no unit); the first reading is the likeliest.
	Also []Alternative
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
	Cut      bool // the text was longer than MaxText
}
