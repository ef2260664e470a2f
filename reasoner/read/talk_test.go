package read

import (
	"strconv"
	"strings"
	"testing"
)

// talk holds whole lines with everything that must be read in them, in order:
// what was said, its kind, its value as spoken, and after a bar what it is
// marked as. A range is written low..high.
var talk = []struct {
	line string
	want []string
}{
	{"15 foot jon with two guys and a cooler, 700 lb all in", []string{"15 foot=length 15", "two=number 2", "700 lb=mass 700"}},
	{"deck is 22 in off the water and drops 3 when i walk up there", []string{"22 in=length 22", "3=number 3"}},
	{"19 ft 4 glass boat, 115 on the transom, 2,300# rigged", []string{"19 ft 4=length 19.33333", "115=number 115|horsepower", "2,300#=mass 2300"}},
	{"19 ft 4 people aboard", []string{"19 ft=length 19", "4=number 4"}},
	{"16' 3 buddies 40 horse", []string{"16'=length 16", "3=number 3", "40 horse=power 40|horsepower"}},
	{"17 ft 10-15 mph wind", []string{"17 ft=length 17", "10-15 mph=speed 10..15"}},
	{"17 ft 6 gauge wire run", []string{"17 ft=length 17", "6 gauge=gauge 6"}},
	{"20 ft 5 speed motor", []string{"20 ft=length 20", "5=number 5"}},
	{"16 ft 9.9 tiller", []string{"16 ft=length 16", "9.9=number 9.9|horsepower"}},
	{"14 ft, 8 in above the water", []string{"14 ft=length 14", "8 in=length 8"}},
	{"two 110 ah lithiums in series", []string{"two=number 2", "110 ah=charge 110"}},
	{"3 x 100Ah for 36v", []string{"3=number 3", "100Ah=charge 100", "36v=voltage 36"}},
	{"2x12v in parallel", []string{"2=number 2", "12v=voltage 12"}},
	{"2-12v batts", []string{"2=number 2", "12v=voltage 12"}},
	{"4 - 6 volt golf cart batteries", []string{"4=number 4", "6 volt=voltage 6"}},
	{"would a pair of 27s do six hours at quarter throttle", []string{"a pair=number 2", "27s=number 27", "six hours=duration 6", "quarter=number 0.25"}},
	{"three grp 31 batteries, 12 or 24 volt?", []string{"three=number 3", "grp 31=group 31", "12=voltage 12", "24 volt=voltage 24"}},
	{"group 24 or 27 for a 30 lb motor", []string{"group 24=group 24", "27=group 27", "30 lb=mass 30"}},
	{"6 or 8 gauge for 40a over 15 ft", []string{"6=gauge 6", "8 gauge=gauge 8", "40a=current 40", "15 ft=length 15"}},
	{"30, 36 or 42 inch shaft", []string{"30=length 30", "36=length 36", "42 inch=length 42"}},
	{"run #8 wire 12 ft", []string{"#8=gauge 8", "12 ft=length 12"}},
	{"10/2 boat cable to the bow", []string{"10/2=gauge 10"}},
	{"hour at full then three hours at half", []string{"hour=duration 1", "three hours=duration 3", "half=number 0.5"}},
	{"2 hrs wide open and the rest at a quarter", []string{"2 hrs=duration 2", "a quarter=number 0.25"}},
	{"we put in at gull point half a mile up, 14 ft skiff", []string{"half a mile=length 0.5", "14 ft=length 14"}},
	{"off stony point ½ mile, point five knots of stream", []string{"½ mile=length 0.5", "point five knots=speed 0.5"}},
	{"what if a third guy comes", nil},
	{"a fifth battery", nil},
	{"a second motor", nil},
	{"5 hours a day twice a week", []string{"5 hours=duration 5"}},
	{"20 miles a day at 3 mph", []string{"20 miles=length 20", "3 mph=speed 3"}},
	{"$40 a foot", []string{"$40=money 40"}},
	{"2 lb for every 100 lb", []string{"2 lb=mass 2|rate", "100 lb=mass 100|rate"}},
	{"a pound per 60", []string{"a pound=mass 1|rate", "60=number 60|rate"}},
	{"we leave at 5:30 and quit by 3 pm", []string{"5:30=number 5|clock-time", "3 pm=number 3|clock-time"}},
	{"call me at 555-0199 before 8 am", []string{"555-0199=number 5550199|phone-number", "8 am=number 8|clock-time"}},
	{"lift is 220 am i over", []string{"220=number 220"}},
	{"'97 skiff, 75 2-stroke", []string{"'97=number 1997|model-year", "75=number 75|horsepower", "2-stroke=number 2|strokes"}},
	{"it's a 2016 bass boat", []string{"2016=number 2016|model-year"}},
	{"bought it in 2011", []string{"2011=number 2011|model-year"}},
	{"2000 loaded", []string{"2000=number 2000"}},
	{"2010 lb with gas", []string{"2010 lb=mass 2010"}},
	{"1436 jon", []string{"1436=number 1436"}},
	{"2 in series, 24v", []string{"2=number 2", "24v=voltage 24"}},
	{"2 in parallel", []string{"2=number 2"}},
	{"we have 4 in the boat", []string{"4=number 4"}},
	{"it sits 24 in the bow", []string{"24=number 24"}},
	{"20 in high, 12 in wide", []string{"20 in=length 20", "12 in=length 12"}},
	{"42in or 48in", []string{"42in=length 42", "48in=length 48"}},
	{"36 a lot of thrust?", []string{"36=number 36"}},
	{"a 45 w two batteries", []string{"45=number 45", "two=number 2"}},
	{"80 lb motor draws 56 A at full", []string{"80 lb=mass 80", "56 A=current 56"}},
	{"50 a at full, 20 a day trips", []string{"50 a=current 50", "20=number 20"}},
	{"16 v hull", []string{"16=number 16"}},
	{"its 5 m long and 2 wide, 600 kilos", []string{"5 m=length 5", "2=number 2", "600 kilos=mass 600"}},
	{"4,8 m and 1,9 m wide", []string{"4,8 m=length 4.8", "1,9 m=length 1.9"}},
	{"thrusts 30,40,55 available", []string{"30=number 30", "40=number 40", "55=number 55"}},
	{"how bout 24 volt", []string{"24 volt=voltage 24"}},
	{"what about 30 mph", []string{"30 mph=speed 30"}},
	{"it goes from 12 ft to about 14 ft deep", []string{"from 12 ft to about 14 ft=length 12..14"}},
	{"from the bow 12 ft back", []string{"12 ft=length 12"}},
	{"between 2 batteries", []string{"2=number 2"}},
	{"wind 10 gusting to 20", []string{"10=number 10", "20=number 20"}},
	{"winds ten to fifteen", []string{"ten to fifteen=number 10..15"}},
	{"bow to water 25\", 30\" when empty", []string{"25\"=length 25", "30\"=length 30"}},
	{"a \"55\" on a jon", []string{"55=number 55"}},
	{"is 8 gauge ok for 60 amps, 20 ft one way", []string{"8 gauge=gauge 8", "60 amps=current 60", "20 ft=length 20"}},
	{"which one is better, the one on sale or the other one", nil},
	{"one guy, one dog", []string{"one=number 1", "one=number 1"}},
	{"no one uses a 30", []string{"30=number 30"}},
	{"make it 3 hundred lb and 4 of us", []string{"3 hundred lb=mass 300", "4=number 4"}},
	{"a hundred and two guys", []string{"a hundred=number 100", "two=number 2"}},
	{"seventeen footer, twenty one hundred loaded, fifteen knots", []string{"seventeen footer=length 17", "twenty one hundred=number 2100", "fifteen knots=speed 15"}},
	{"my 9.9 weighs 84 and the tank holds 6 gal.", []string{"9.9=number 9.9|horsepower", "84=number 84", "6 gal=volume 6"}},
	{"sku 44120, two of them", []string{"sku 44120=number 44120|label", "two=number 2"}},
	{"my mk-55 quit", []string{"55=number 55|part-number"}},
	{"lifepo4 100ah", []string{"100ah=charge 100"}},
	{"two gc2 in series", []string{"two=number 2", "gc2=group 2"}},
	{"10 footer, 20 lb thrust, 30 yards of anchor rope", []string{"10 footer=length 10", "20 lb thrust=force 20", "30 yards=length 30"}},
	{"½ throttle for 2½ hrs", []string{"½=number 0.5", "2½ hrs=duration 2.5"}},
	{"55lb/12v", []string{"55lb=mass 55", "12v=voltage 12"}},
	{"12/24 volt motor", []string{"12=voltage 12", "24 volt=voltage 24"}},
	{"16x48 jon", []string{"16=number 16", "48=number 48"}},
	{"20 x 8 ft toon", []string{"20=number 20", "8 ft=length 8"}},
	{"ñandú 3 m, café 2 kg — 5½′", []string{"3 m=length 3", "2 kg=mass 2", "5½′=length 5.5"}},
	{"she's 1,950 lb, +/- 50", []string{"1,950 lb, +/- 50=mass 1950..2000"}},
	{"give me 30 lb or so", []string{"30 lb or so=mass 30"}},
	{"a good 40 lb", []string{"a good 40 lb=mass 40"}},
	{"plan on two, maybe three hours", []string{"two=number 2", "maybe three hours=duration 3"}},
	{"24v + 2 batts", []string{"24v=voltage 24", "2=number 2"}},
	{"we pull a foot cable motor", nil},
	{"chop about a foot", []string{"about a foot=length 1"}},
	{"2 footers all day", []string{"2 footers=length 2"}},
	{"70 degrees, feels like 80", []string{"70 degrees=temperature 70", "like 80=number 80"}},
	{"12 volt or 24", []string{"12 volt=voltage 12", "24=voltage 24"}},
	{"36 inches or 42?", []string{"36 inches=length 36", "42=length 42"}},
	{"55 lb or 80", []string{"55 lb=mass 55", "80=mass 80"}},
	{"2 hours or 3 guys", []string{"2 hours=duration 2", "3=number 3"}},
	{"is 24 over 12 worth it", []string{"24=number 24", "12=number 12"}},
	{"towed by a half ton truck", []string{"a half ton=mass 0.5|vehicle"}},
	{`he says "run it at a third" all day`, []string{"a third=number 0.3333333"}},
	{`he says "get at least 60"`, []string{"at least 60=number 60"}},
	{`she said "its 22" off the water" so 22"`, []string{"22\"=length 22", "22\"=length 22"}},
	{"wind 15 N, winds 10 W", []string{"15=number 15", "10=number 10"}},
	{"a 55'll push it, 80lbs'll fly", []string{"55=number 55", "80lbs=mass 80"}},
	{"twin 150s on a 24 footer", []string{"150s=number 150|horsepower", "24 footer=length 24"}},
	{"between 800 and a grand", []string{"between 800 and a grand=money 800..1000"}},
	{"a grand and a half", []string{"a grand and a half=money 1500"}},
	{"two foot controls on a 16 footer", []string{"two=number 2", "16 footer=length 16"}},
	{"8 lb test on a 7 ft rod", []string{"8 lb test=mass 8|fishing-line", "7 ft=length 7"}},
	{"caught a 6 lb walleye", []string{"6 lb=mass 6|fish"}},
	{"2,000 lb bass boat", []string{"2,000 lb=mass 2000"}},
	{"100 ah at the 20 hr rate, charge at 0.5C", []string{"100 ah=charge 100", "20 hr rate=duration 20|discharge-rate", "0.5C=number 0.5|charge-rate"}},
	{"50:1 mix, open 24/7, meet at half past six", []string{"50:1=number 50|ratio", "24/7=number 24|ratio", "half past six=number 6|clock-time"}},
	{"quarter to half throttle", []string{"quarter to half=number 0.25..0.5"}},
	{"give me a minute", nil},
	{"got a foot of chop", []string{"a foot=length 1"}},
	{"12 to 14 hundred lb", []string{"12 to 14 hundred lb=mass 1200..1400"}},
	{"two or three hundred pounds", []string{"two or three hundred pounds=mass 200..300"}},
	{"4-500 lb of junk", []string{"4-500 lb=mass 400..500"}},
	{"2-300 lb guys", []string{"2=number 2", "300 lb=mass 300"}},
	{"55 or 70 lb", []string{"55=mass 55", "70 lb=mass 70"}},
	{"12, 24 or 36 volts", []string{"12=voltage 12", "24=voltage 24", "36 volts=voltage 36"}},
	{"an hour or two", []string{"an hour or two=duration 1..2"}},
	{"a couple three hours", []string{"a couple three hours=duration 2.5..3"}},
	{"2017 18 ft bay boat", []string{"2017=number 2017|model-year", "18 ft=length 18"}},
	{"my 5 year old battery, 3 yrs old", []string{"5 year old=duration 5|age", "3 yrs old=duration 3|age"}},
	{"wind 15g25", []string{"15=number 15", "25=number 25"}},
	{"run it for 2:30 hours", []string{"2:30 hours=duration 2.5"}},
	{"112 lb max thrust", []string{"112 lb=mass 112"}},
	{"1 900 kg with 2 100 kg blokes", []string{"1 900 kg=mass 1900", "2=number 2", "100 kg=mass 100"}},
	{"18,5 ft", []string{"18,5 ft=length 18.5"}},
	{"50 four stroke", []string{"50=number 50|horsepower", "four stroke=number 4|strokes"}},
	{"6 foot 2 guy", []string{"6 foot 2=length 6.166667"}},
	{"from 6 to 9 am", []string{"from 6 to 9 am=number 6..9|clock-time"}},
	{"30-some lb", []string{"30-some lb=mass 30"}},
	{"half the time", []string{"half=number 0.5"}},
	{"highway 12 is 3 miles off", []string{"highway 12=number 12|label", "3 miles=length 3"}},
}

func TestTalk(t *testing.T) {
	for _, c := range talk {
		r := Read(c.line)
		check(t, c.line, r)
		var got []string
		for _, m := range r.Measures {
			s := m.Said + "=" + string(m.Kind) + " " + strconv.FormatFloat(m.Bare, 'g', 7, 64)
			if m.BareHigh != 0 {
				s += ".." + strconv.FormatFloat(m.BareHigh, 'g', 6, 64)
			}
			if m.As != "" {
				s += "|" + m.As
			}
			got = append(got, s)
		}
		if strings.Join(got, "; ") != strings.Join(c.want, "; ") {
			t.Errorf("%q:\n\tread %s\n\twant %s", c.line, strings.Join(got, "; "), strings.Join(c.want, "; "))
		}
	}
}

// negatives say no number.
var negatives = []string{
	"", " ", "a", "an", "the", "in", "m", "lb", "feet", "hours", "amps", "volts",
	"what do i need", "which one", "that one there", "the one on the wall", "no one knows", "one way or another", "the big one", "any one of them",
	"in the water", "in a boat", "a lot of wind", "a bit of chop", "a foot pedal", "a foot control", "a second battery", "a third guy", "a fourth seat", "the third quarter",
	"deep v", "v hull", "group size", "what gauge", "which group", "amp hours", "pounds of thrust", "miles per hour", "an hp rating", "horsepower",
	"minister", "by the hour", "for hours", "all day", "every day", "once a week", "twice a month", "hours on end", "days of wind",
	"lifepo4", "gps", "h2o", "usb-c", "agm", "lithium", "r2d2", "x", "v", "w", "#", "$", "%", "°", "'", "\"", "-", "+", "...", "--", "!!!",
	"at this point", "what's the point", "over the top", "under the deck", "about that", "max", "more than enough", "less than ideal", "up to the bow", "between the seats", "from the dock", "to and fro",
	"tie a knot", "a yard sale", "a quarterback", "to go second", "on the first try", "firstly", "grand total", "a grand total", "the pair",
	"www.example.com/?q=50%20lb", "https://example.com/18ft", "e.g. this", "i.e. that", "1.2.3", "192.168.0.1", "555.555.0142",
	"\u0000\u0001\u0002", "\xff\xfe\xfd", "🎣🎣", "что", "日本", "am i over", "is it a go", "c", "f", "k", "point", "minus", "negative", "-ish",
	"few and far", "the few", "nothing", "both hands", "double", "single",
}

func TestNegatives(t *testing.T) {
	for _, line := range negatives {
		r := Read(line)
		check(t, line, r)
		if len(r.Measures) > 0 {
			t.Errorf("%q: read %s, want nothing", line, list(r))
		}
	}
}
