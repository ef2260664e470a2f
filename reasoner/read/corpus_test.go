package read

import (
	"fmt"
	"math"
	"strings"
	"testing"
)

// want is one measure as it must be read. A range has low and high, a bound one
// of them; nan stands for an end that must be absent.
type want struct {
	kind             Kind
	value, low, high float64
	as               string
}

var nan = math.NaN()

func is(kind Kind, value float64) want       { return want{kind, value, nan, nan, ""} }
func between(kind Kind, lo, hi float64) want { return want{kind, nan, lo, hi, ""} }
func under(kind Kind, hi float64) want       { return want{kind, nan, nan, hi, ""} }
func over(kind Kind, lo float64) want        { return want{kind, nan, lo, nan, ""} }
func spread(kind Kind, v, lo, hi float64) want {
	return want{kind, v, lo, hi, ""}
}
func not(as string, kind Kind, value float64) want { return want{kind, value, nan, nan, as} }

const (
	foot = metresPerFoot
	inch = 0.0254
	lb   = kgPerPound
	lbf  = kgPerPound * gravity
	mph  = 0.44704
	knot = 1852.0 / 3600
	gal  = litresPerGal
	hour = 3600.0
)

// corpus holds each value once and below it the ways to say it. Every phrase
// must give exactly one measure, over its whole length.
var corpus = []struct {
	want want
	said []string
}{
	// Lengths.
	{is(Length, 17*foot), []string{"17 ft", "17ft", "17 foot", "17-foot", "17 feet", "17'", "17′", "17’", "seventeen feet", "seventeen-foot", "17 footer", "17\u00a0ft", "17\u202ffeet", "17.0 ft", "17 Ft", "17FT", "seventen foot"}},
	{is(Length, 14.5*foot), []string{"14.5 ft", "14 1/2 ft", "14-1/2 ft", "14½ ft", "14½'", "14 ½ foot", "14'6\"", "14' 6\"", "14′6″", "14’6”", "14'6''", "14'-6\"", "14'6", "14 ft 6 in", "14 ft. 6 in", "14ft 6in", "14ft6in", "14 feet 6 inches", "14 foot 6 inch",
		"14 foot 6", "14 ft 6", "fourteen and a half foot", "fourteen and a half feet", "fourteen foot six", "14 and a half ft", "14 feet and 6 inches", "forteen foot six", "14 ft 6\"", "14-foot-6"}},
	{is(Length, 32*inch), []string{"32 in", "32\"", "32 inches", "32 inch", "32-inch", "32in", "thirty two inches", "thirty-two inch", "2 ft 8 in", "2'8\"", "two foot eight", "2 foot 8", "32”", "32″", "thirty - two inches", "2 feet, 8 inches"}},
	{is(Length, 21.25*inch), []string{"21 1/4\"", "21¼ in", "21.25 inches", "21 1/4 in", "21-1/4 inches", "twenty one and a quarter inches", "21 1 / 4 inches", "21 and a quarter inch"}},
	{is(Length, 0.75*inch), []string{"3/4 inch", "¾\"", "3/4\"", "three quarters of an inch", "three quarter inch"}},
	{is(Length, 11*foot+7*inch), []string{"11'7", "11'7\"", "eleven foot seven", "11 ft 7"}},
	{is(Length, 4.7), []string{"4.7 m", "4.7m", "4,7 m", "4.7 metres", "4.7 meters", "4.7-metre", "4 m 70 cm", "four point seven metres", "470 cm", "4700 mm"}},
	{is(Length, 52*inch), []string{"52 in.", "4 ft 4 in"}},
	{is(Length, 2*1609.344), []string{"2 miles", "two miles", "2 mi", "2-mile"}},
	{is(Length, 3*1852), []string{"3 nautical miles", "3 nmi", "three nautical miles", "3 nm"}},
	{is(Length, 1609.344), []string{"a mile", "one mile"}},
	{is(Length, 1.5*1609.344), []string{"a mile and a half", "one and a half miles", "1.5 miles", "mile and a half"}},
	{is(Length, 804.672), []string{"half a mile", "half mile", "a half mile", "half-a-mile", "half of a mile", "1/2 mile"}},
	{is(Length, 3*0.9144), []string{"3 yards", "three yds"}},
	{is(Length, 1000), []string{"1 km", "1,000 m", "a kilometre", "1 000 m"}},

	// Masses.
	{is(Mass, 1900*lb), []string{"1900 lb", "1,900 lb", "1,900lbs", "1900 pounds", "1900#", "1,900 #", "1.9k lb", "1.9k lbs", "nineteen hundred pounds", "nineteen hundred lb", "nineteen hundred lbs", "one thousand nine hundred pounds", "ninteen hundred pounds", "1900-lb", "1900 pound"}},
	{is(Mass, 2250*lb), []string{"2,250 lb", "2250 lbs", "twenty two fifty pounds", "two thousand two hundred fifty lb", "two thousand two hundred and fifty pounds", "2.25k pounds"}},
	{is(Mass, 3600*lb), []string{"thirty six hundred pounds", "thirty-six hundred lbs", "3.6k lb", "3 thousand 6 hundred pounds"}},
	{is(Mass, 185*lb), []string{"185 lb", "one eighty five pounds", "one hundred eighty five pounds", "a hundred and eighty five lb", "185#"}},
	{is(Mass, 2000*lb), []string{"2k lb", "2 k lbs", "two thousand pounds", "2,000#", "2 thousand lb"}},
	{is(Mass, 650), []string{"650 kg", "650kg", "650 kilos", "six hundred fifty kilos", "650 kilograms", "six hundred and fifty kg"}},
	{is(Mass, 87.5), []string{"87.5 kg", "87,5 kg", "87½ kg"}},
	{is(Mass, 5*lb+8*lb/16), []string{"5 lb 8 oz", "5 pounds 8 ounces", "5½ lb", "five and a half pounds", "5 pounds and a half"}},
	{is(Mass, 2*2000*lb), []string{"2 tons", "two ton"}},
	{is(Mass, 1200), []string{"1.2 tonnes", "1.2 metric tons", "1.2 t", "1200 kg"}},
	{is(Mass, 13*14*lb+2*lb), []string{"13 stone 2", "13 st 2 lb"}},

	// Forces.
	{is(Force, 55*lbf), []string{"55 lb thrust", "55 lbs of thrust", "55 pounds of thrust", "55# of thrust", "55lb thrust", "55 lbf", "fifty five pounds of thrust", "55-lb-thrust", "55 pound thrust", "55 lb. of thrust", "55 lbs thrust"}},
	{is(Force, 200), []string{"200 N", "200 newtons", "200N", "two hundred newtons"}},
	{is(Force, 20*gravity), []string{"20 kgf", "20 kg of thrust", "20 kilos of thrust"}},

	// Speeds.
	{is(Speed, 12*mph), []string{"12 mph", "12mph", "12 m.p.h.", "12 miles an hour", "12 mile an hour", "12 miles per hour", "12 mi/h", "twelve mph", "twelve miles an hour", "12-mph", "12 mile per hour", "12-mile-an-hour"}},
	{is(Speed, 15*knot), []string{"15 knots", "15 kts", "15 kt", "15 kn", "15kts", "fifteen knots", "15-knot", "15 knot"}},
	{is(Speed, 0.5*knot), []string{"half a knot", "half knot", "0.5 kn", ".5 knots", "a half knot", "1/2 knot", "½ kt"}},
	{is(Speed, 20/3.6), []string{"20 km/h", "20 kph", "20 kmh", "20km/h", "20 kilometres per hour", "20 kilometers an hour", "20 kmph", "20 km/hr"}},
	{is(Speed, 7), []string{"7 m/s", "7m/s", "7 metres per second", "seven metres a second", "7 mps"}},
	{is(Speed, 2.5*mph), []string{"2.5 mph", "2 1/2 mph", "two and a half miles an hour", "two and a half mph", "2½ mph", "two-and-a-half mph", "two point five mph"}},
	{is(Speed, 6*foot), []string{"6 ft/s", "6 feet per second", "6 fps"}},

	// Times.
	{is(Duration, 1.5*hour), []string{"an hour and a half", "hour and a half", "one and a half hours", "1.5 hours", "1½ hrs", "1 1/2 hr", "90 minutes", "90 min", "1 hour 30 minutes", "1h30", "1 hr 30", "one hour and thirty minutes", "an hour and 30 min", "1 and a half hours", "ninety minutes", "1 hour and a half"}},
	{is(Duration, 0.5*hour), []string{"half an hour", "half hour", "a half hour", "30 minutes", "30 mins", "thirty minutes", "0.5 h", "1/2 hour", "half-hour"}},
	{is(Duration, 8*hour), []string{"8 hours", "8 hrs", "8hr", "8h", "eight hours", "8-hour", "8 more hours", "eight full hours"}},
	{is(Duration, 0.25*hour), []string{"quarter of an hour", "a quarter hour", "15 minutes", "15min"}},
	{is(Duration, 105*60), []string{"105 minutes", "105 reserve minutes", "an hour and 45 minutes", "1 hour 45 min"}},
	{is(Duration, 2*24*hour), []string{"2 days", "two days", "48 hours", "a couple of days", "couple days"}},
	{is(Duration, hour), []string{"an hour", "one hour", "1 hr", "another hour", "60 min"}},
	{is(Duration, 20), []string{"20 seconds", "20 sec", "20 s", "twenty seconds"}},
	{is(Duration, 7*24*hour), []string{"a week", "1 week", "a full week", "seven days"}},

	// Electricity.
	{is(Voltage, 24), []string{"24 V", "24v", "24 volts", "24-volt", "24 volt", "twenty four volts", "twenty-four volt", "24 Volts", "24VDC"}},
	{is(Current, 50), []string{"50 A", "50a", "50 amps", "50 amp", "50-amp", "fifty amps", "50A", "50 amperes"}},
	{is(Charge, 105), []string{"105 Ah", "105ah", "105 amp hours", "105 amp-hours", "105 amp hour", "105 a.h.", "105AH", "hundred and five amp hours", "105 amp hrs", "105-ah"}},
	{is(Power, 600), []string{"600 W", "600 watts", "600w", "six hundred watts", "0.6 kW", "600-watt"}},
	{is(Gauge, 6), []string{"6 gauge", "6 ga", "6 AWG", "6awg", "AWG 6", "6-gauge", "six gauge", "gauge 6", "6 guage", "#6 gauge"}},
	{is(Gauge, -1), []string{"2/0", "2/0 gauge", "2/0 AWG", "00 gauge", "2 aught", "two aught"}},
	{is(Gauge, -3), []string{"4/0", "4/0 awg", "0000 gauge", "4 aught"}},
	{is(Gauge, 0), []string{"1/0", "1/0 ga", "0 gauge"}},
	{is(Group, 27), []string{"group 27", "grp 27", "group 27s", "group size 27", "gp 27", "grp27", "Group-27", "group 27M", "group twenty seven", "27M", "group #27"}},
	{is(Group, 31), []string{"group 31", "31M", "grp 31s", "group 31's"}},

	// Volumes.
	{is(Volume, 6*gal), []string{"6 gal", "6 gallons", "six gallons", "6-gallon", "6gal", "24 quarts"}},
	{is(Volume, 20), []string{"20 L", "20 litres", "20 liters", "20l", "twenty litres"}},
	{is(Volume, 2.5*gal), []string{"2.5 gal", "two and a half gallons", "2 1/2 gallons", "2½ gal"}},

	// Temperatures.
	{is(Temperature, 40), []string{"40 °C", "40C", "40 degrees Celsius", "40 deg C", "104 °F", "104F", "104 degrees fahrenheit", "40 celsius", "40 ℃", "104℉"}},
	{is(Temperature, -5), []string{"-5 °C", "minus 5 degrees C", "- 5 celsius", "23 F", "5 degrees celsius below zero"}},
	{is(Temperature, 0), []string{"32 degrees", "32°", "32 F", "0C"}},

	// Shares and numbers.
	{is(Percent, 60), []string{"60%", "60 %", "60 percent", "60 per cent", "sixty percent", "60 pct"}},
	{is(Percent, 3), []string{"3%", "three percent", "3.0 %"}},
	{is(Number, 0.5), []string{"half", "a half", "1/2", "½", "0.5", ".5", "one half", "point five"}},
	{is(Number, 1./3), []string{"a third", "one third", "1/3", "⅓", "one-third"}},
	{is(Number, 0.75), []string{"3/4", "three quarters", "¾", "three fourths", "three-quarters", "0.75"}},
	{is(Number, 2), []string{"2", "two", "a pair", "a couple", "2.0"}},
	{is(Number, 12), []string{"12", "twelve", "a dozen", "dozen", "twelv"}},
	{is(Number, 4200), []string{"4200", "4,200", "forty two hundred", "fourty two hundred", "four thousand two hundred", "4.2k", "forty-two hundred", "forty two hunderd"}},
	{is(Number, 1750), []string{"1750", "seventeen fifty", "seventeen hundred and fifty", "1,750"}},
	{is(Number, 205), []string{"205", "two oh five", "two hundred and five", "two hundred five"}},
	{is(Number, 1648), []string{"1648", "sixteen forty eight"}},
	{is(Number, 1e6), []string{"a million", "1M", "1,000,000", "1 000 000", "one million", "1e6"}},
	{is(Number, -7), []string{"-7", "minus seven", "negative 7"}},

	// Money.
	{is(Money, 900), []string{"$900", "900 dollars", "900 bucks", "900$", "$ 900", "nine hundred dollars", "900 bux", "$900 USD", "USD 900", "nine hundred bucks", "$900.00", "0.9k dollars", "$0.9k"}},
	{is(Money, 1500), []string{"$1,500", "$1.5k", "1500 dollars", "fifteen hundred bucks", "1.5 grand", "one and a half grand", "US$1500"}},
	{is(Money, 12.5), []string{"$12.50", "12 dollars 50", "12 dollars and 50 cents"}},
	{is(Money, 0.4), []string{"40 cents", "forty cents", "40¢"}},

	// Ranges.
	{between(Speed, 10*mph, 15*mph), []string{"10-15 mph", "10 to 15 mph", "10–15 mph", "from 10 to 15 mph", "between 10 and 15 mph", "10 - 15 mph", "ten to fifteen mph", "10 mph to 15 mph", "10 to 15 mile an hour", "ten fifteen mph", "10-15mph", "10 or 15 mph", "10~15 mph", "anywhere from 10 to 15 mph", "10 to 15 miles an hour", "10mph-15mph"}},
	{between(Mass, 2300*lb, 2700*lb), []string{"2,300 to 2,700 lb", "2300-2700 lbs", "between 2300 and 2700 pounds", "twenty three hundred to twenty seven hundred pounds", "2.3k to 2.7k lb", "2,300# to 2,700#", "2300 lb - 2700 lb"}},
	{between(Length, 26*inch, 28*inch), []string{"26-28 in", "26 to 28 inches", "26\"-28\"", "26\" to 28\"", "26-28\"", "from 26 in to 28 in", "26- to 28-inch"}},
	{between(Length, 18*foot, 20*foot), []string{"18-20 ft", "18' to 20'", "18 to 20 foot", "between 18 and 20 feet"}},
	{between(Duration, 4*hour, 6*hour), []string{"4-6 hours", "4 to 6 hrs", "four to six hours", "4 or 6 hours"}},
	{between(Number, 1, 4), []string{"1-4", "1 to 4", "between 1 and 4", "one to four", "from one to four", "1 through 4", "1 thru 4"}},
	{between(Money, 1000, 1500), []string{"$1,000-1,500", "$1000 to $1500", "between 1000 and 1500 bucks", "1000-1500 dollars", "$1k-$1.5k"}},
	{between(Voltage, 12, 14), []string{"12-14 V", "12 to 14 volts"}},
	{between(Percent, 30, 40), []string{"30-40%", "30% to 40%", "30 to 40 percent"}},

	// Bounds.
	{under(Money, 900), []string{"under $900", "less than 900 dollars", "no more than $900", "at most 900 bucks", "up to $900", "below $900", "$900 max", "900 dollars or less", "not over $900", "$900 tops", "<$900", "<= $900", "max $900", "max of $900", "less then $900"}},
	{under(Speed, 10*mph), []string{"never more than 10 mph", "never over 10 mph", "under 10 mph", "10 mph at most", "≤10 mph", "not more then 10 mph"}},
	{under(Percent, 3), []string{"under 3%", "less than 3 percent", "within 3%", "no more than 3%", "3% max"}},
	{over(Duration, 6*hour), []string{"at least 6 hours", "over 6 hours", "more than six hours", "6+ hours", "6 hours or more", "no less than 6 hrs", "6 hrs at least", "≥ 6 h", "minimum 6 hours", "upwards of 6 hours", "6 hours minimum", "atleast 6 hours"}},
	{over(Force, 55*lbf), []string{"more than 55 lb of thrust", "bigger than 55 lb thrust", "55+ lb thrust"}},
	{over(Number, 55), []string{"bigger than a 55", "more than a 55", "55 or more", "55 or bigger", "over 55"}},
	{between(Mass, 500*lb, 800*lb), []string{"over 500 lb and under 800 lb", "more than 500 lb but less than 800 lb"}},

	// Spreads.
	{spread(Mass, 200*lb, 150*lb, 300*lb), []string{"a couple hundred pounds", "couple hundred lb", "a couple of hundred pounds", "coupla hundred lbs"}},
	{spread(Duration, 3*hour, 2*hour, 5*hour), []string{"a few hours", "few hours"}},

	// Numbers of other things.
	{not("horsepower", Power, 40*745.69987158227022), []string{"40 hp", "40 horse", "40hp", "40 horsepower", "forty horse", "40-hp", "40-horse", "40 h.p.", "40 HP"}},
	{not("horsepower", Power, 9.9*745.69987158227022), []string{"9.9 hp", "9.9 horse"}},
	{not("strokes", Number, 4), []string{"4 stroke", "4-stroke", "four stroke", "four-stroke"}},
	{not("clock-time", Number, 6), []string{"6 am", "6am", "6 a.m.", "6:00", "6:00 am", "six am", "6 o'clock", "6 pm", "6:30"}},
	{not("phone-number", Number, 5550142), []string{"555-0142"}},
	{not("phone-number", Number, 5555550142), []string{"555-555-0142", "(555) 555-0142"}},
	{not("model-year", Number, 2004), []string{"'04"}},
	{not("date", Number, 12), []string{"june 12", "12 june", "june 12th", "12th of june"}},
	{not("energy", Number, 1280), []string{"1280 Wh", "1280 watt hours", "1,280 watt-hours"}},
	{not("cranking-amps", Number, 800), []string{"800 CCA", "800 cold cranking amps", "800 MCA"}},
	{not("ordinal", Number, 3), []string{"3rd"}},
	{not("area", Number, 30), []string{"30 sq ft", "30 square feet", "30 ft²", "30 sqft"}},
	{not("flow", Number, 600), []string{"600 gph", "600 gallons per hour"}},
	{not("torque", Number, 25), []string{"25 ft lb", "25 foot-pounds", "25 ft-lbs"}},
}

func TestCorpus(t *testing.T) {
	for _, c := range corpus {
		for _, said := range c.said {
			r := Read(said)
			check(t, said, r)
			switch {
			case len(r.Measures) == 0:
				t.Errorf("%q: nothing read", said)
			case len(r.Measures) > 1:
				t.Errorf("%q: %d readings: %s", said, len(r.Measures), list(r))
			case strings.TrimSuffix(r.Measures[0].Said, ".") != strings.TrimSuffix(said, "."):
				t.Errorf("%q: only a part was read: %s", said, list(r))
			default:
				if why := c.want.differs(r.Measures[0]); why != "" {
					t.Errorf("%q: wrong value: %s, want %s", said, list(r), why)
				}
			}
		}
	}
}

// differs returns what was wanted when m is something else.
func (w want) differs(m Measure) string {
	if m.Kind == w.kind && m.As == w.as && same(m.Value, w.value) && same(m.Low, w.low) && same(m.High, w.high) {
		return ""
	}
	return fmt.Sprintf("%s %v [%v, %v] %s", w.kind, w.value, w.low, w.high, w.as)
}

// same compares to nine digits; nan stands for an absent value.
func same(p *float64, x float64) bool {
	if p == nil || math.IsNaN(x) {
		return p == nil && math.IsNaN(x)
	}
	return math.Abs(*p-x) <= 1e-9*math.Max(1, math.Abs(x))
}

func list(r Reading) string {
	var b strings.Builder
	for i, m := range r.Measures {
		if i > 0 {
			b.WriteString("; ")
		}
		show := func(p *float64) string {
			if p == nil {
				return "-"
			}
			return fmt.Sprintf("%.6g", *p)
		}
		fmt.Fprintf(&b, "%q %s %s [%s, %s] %s (%s)", m.Said, m.Kind, show(m.Value), show(m.Low), show(m.High), m.As, m.Rule)
	}
	return b.String()
}

// check holds what every reading must keep: offsets inside the text, order, no
// overlap, and Said equal to those bytes.
func check(t *testing.T, text string, r Reading) {
	t.Helper()
	if r.Text != text {
		t.Fatalf("%q: text was changed", text)
	}
	last := 0
	for i, tok := range r.Tokens {
		if tok.Start < last || tok.End <= tok.Start || tok.End > len(text) {
			t.Fatalf("%q: token %d at %d to %d, after %d", text, i, tok.Start, tok.End, last)
		}
		last = tok.End
		if tok.Measure < -1 || tok.Measure >= len(r.Measures) {
			t.Fatalf("%q: token %d names measure %d of %d", text, i, tok.Measure, len(r.Measures))
		}
		if k := tok.Measure; k >= 0 && (tok.Start < r.Measures[k].Start || tok.End > r.Measures[k].End) {
			t.Fatalf("%q: token %d lies outside its measure", text, i)
		}
	}
	last = 0
	for i, m := range r.Measures {
		if m.Start < last || m.End <= m.Start || m.End > len(text) {
			t.Fatalf("%q: measure %d at %d to %d, after %d", text, i, m.Start, m.End, last)
		}
		last = m.End
		if m.Said != text[m.Start:m.End] {
			t.Fatalf("%q: measure %d says %q, the text %q", text, i, m.Said, text[m.Start:m.End])
		}
		if m.Value == nil && m.Low == nil && m.High == nil {
			t.Fatalf("%q: measure %d has no value", text, i)
		}
		if m.Rule == "" || m.Kind == "" || m.Unit == "" {
			t.Fatalf("%q: measure %d lacks kind, unit or rule", text, i)
		}
		if m.Low != nil && m.High != nil && *m.Low > *m.High {
			t.Fatalf("%q: measure %d ends before it starts", text, i)
		}
	}
}
