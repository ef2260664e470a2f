package stock

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"heronlake.example/ask/calc/unit"
)

// A measure is the units in which a column may be filled in: by the word, how
// many of the column's own unit it is.
type measure struct {
	name  string // of the column's own unit
	words map[string]float64
}

// The units of the columns. Factors from NIST SP 811 (pound 0.45359237 kg, inch
// 2.54 cm, pound-force 4.4482216 N, kilogram-force 9.80665 N).
var (
	poundsForce = measure{"pounds", map[string]float64{"lb": 1, "lbs": 1, "lbf": 1, "pound": 1, "pounds": 1, "#": 1, "lb thrust": 1, "lbs thrust": 1, "n": 1 / 4.4482216, "newtons": 1 / 4.4482216, "kgf": 9.80665 / 4.4482216}}
	pounds      = measure{"pounds", map[string]float64{"lb": 1, "lbs": 1, "pound": 1, "pounds": 1, "#": 1, "kg": 1 / 0.45359237, "kgs": 1 / 0.45359237, "kilograms": 1 / 0.45359237}}
	inches      = measure{"inches", map[string]float64{"in": 1, "ins": 1, "inch": 1, "inches": 1, `"`: 1, "''": 1, "\u2033": 1, "\u201d": 1, "cm": 1 / 2.54, "mm": 1 / 25.4, "m": 100 / 2.54, "ft": 12, "'": 12, "feet": 12, "foot": 12}}
	feet        = measure{"feet", map[string]float64{"ft": 1, "foot": 1, "feet": 1, "'": 1, "\u2032": 1, "in": 1.0 / 12, "inches": 1.0 / 12, `"`: 1.0 / 12, "m": 1 / 0.3048, "cm": 0.01 / 0.3048, "yd": 3}}
	amperes     = measure{"amps", map[string]float64{"a": 1, "amp": 1, "amps": 1, "ampere": 1, "amperes": 1}}
	ampHours    = measure{"amp hours", map[string]float64{"ah": 1, "a h": 1, "amp hours": 1, "amp hour": 1, "amphours": 1}}
	voltage     = measure{"volts", map[string]float64{"v": 1, "volt": 1, "volts": 1, "vdc": 1, "v dc": 1, "volts dc": 1}}
	dollars     = measure{"dollars", map[string]float64{"usd": 1, "$": 1, "us$": 1, "dollars": 1, "dollar": 1, "-": 1, ",-": 1, ".-": 1}}
	pieces      = measure{"", map[string]float64{"pc": 1, "pcs": 1, "piece": 1, "pieces": 1, "ea": 1, "each": 1, "in stock": 1, "units": 1, "bank": 1, "banks": 1, "output": 1, "outputs": 1, "cycles": 1}}
)

// moneyName tells the measure of money from the others.
const moneyName = "dollars"

// otherMoney are marks of currencies that are not dollars.
var otherMoney = []string{"€", "eur", "£", "gbp", "cad", "aud", "chf", "sek", "nok", "dkk", "c$", "a$"}

// packs are words behind a length of wire that say how it is put up.
var packs = []string{"roll", "spool", "coil", "reel", "length", "long"}

// blanks are what people write into a cell to say that it holds nothing.
var blanks = []string{"n/a", "na", "#n/a", "n.a.", "-", "--", "\u2013", "\u2014", "tbd", "tba", "?", "??", "unknown", "null", "nil", "#value!", "#ref!", "#div/0!", "#name?"}

func blankWord(text string) bool {
	return len(text) <= 8 && slices.Contains(blanks, strings.ToLower(text))
}

// number reads a number as spreadsheets and people write it: "1,299.00", "$899",
// "54 in", "15,5 kg", and "12,5" where the file's decimals are commas. What can be
// read in two ways is refused: a wrong price is worse than none.
func number[T any](to *T, text string, comma bool, of measure, low, high float64, make func(float64) T) error {
	x, err := strconv.ParseFloat(text, 64)
	if err != nil || comma || of.name == moneyName { // the plain ones need no more
		if x, err = written(text, comma, of); err != nil {
			return err
		}
	}
	if !(x >= low && x <= high) {
		return fmt.Errorf("%q is outside %g to %g", text, low, high)
	}
	*to = make(x)
	return nil
}

// written is a number in the column's own unit.
func written(text string, comma bool, of measure) (float64, error) {
	t := strings.TrimSpace(strings.Map(func(r rune) rune {
		if unicode.IsSpace(r) || r == '\u00a0' || r == '\u202f' || r == '\u2009' {
			return ' '
		}
		return unicode.ToLower(r)
	}, text))
	if of.name == moneyName {
		for _, m := range otherMoney {
			if strings.Contains(t, m) {
				return 0, fmt.Errorf("%q is in another currency; prices are US dollars", text)
			}
		}
		t = strings.TrimSpace(strings.TrimPrefix(strings.TrimPrefix(strings.TrimPrefix(t, "usd"), "us"), "$"))
	}
	t = strings.TrimSpace(strings.TrimPrefix(t, "#"))
	if t == "per foot" || t == "per ft" || t == "by the foot" {
		t = "1 ft"
	}
	end := 0
	for i, r := range t {
		inside := r == '.' || r == ',' || r == ' ' || r == '\'' || r == '\u2019'
		if r >= '0' && r <= '9' || (r == '-' || r == '+') && i == 0 {
			end = i + 1
		} else if !inside || (r == '\'' || r == '\u2019') && !thousands(t[i+len(string(r)):]) {
			break
		}
	}
	x, err := digits(t[:end], comma, of.name == moneyName)
	if err != nil {
		return 0, fmt.Errorf("%q %w", text, err)
	}
	rest := strings.TrimSpace(t[end:])
	for _, p := range packs {
		rest = strings.TrimSpace(strings.TrimSuffix(rest, p))
	}
	if rest = strings.TrimSuffix(strings.TrimSpace(rest), "."); rest == "" {
		return x, nil
	}
	factor, ok := of.words[rest]
	switch {
	case ok:
		return x * factor, nil
	case of.name == "":
		return 0, fmt.Errorf("%q is not a number", text)
	}
	return 0, fmt.Errorf("%q holds %q, and the column takes %s", text, rest, of.name)
}

// thousands reports whether a text begins with three digits and no fourth, as
// behind the mark of "1'299".
func thousands(t string) bool {
	n := 0
	for n < len(t) && t[n] >= '0' && t[n] <= '9' {
		n++
	}
	return n == 3
}

// errNumber, errMark are what can be wrong with the digits.
var (
	errNumber = fmt.Errorf("is not a number")
	errMark   = fmt.Errorf("can be read in two ways, as thousands or as decimals; write it without the mark")
)

// digits reads the digits of a number. Of two different marks the last is the
// decimal one. A single mark before three digits groups thousands or parts
// decimals: in a file with decimal commas a point groups, in any other a comma
// does, and the other way round it is not guessed. Money never has three decimals.
func digits(t string, comma, money bool) (float64, error) {
	t = strings.NewReplacer("'", "", "\u2019", "").Replace(t)
	if strings.Contains(t, " ") { // "1 049" groups, "10 20" does not
		parts := strings.FieldsFunc(t, func(r rune) bool { return r == ' ' })
		for i, p := range parts {
			whole, _, _ := strings.Cut(strings.Replace(p, ".", ",", 1), ",")
			if i > 0 && len(whole) != 3 || i < len(parts)-1 && strings.ContainsAny(p, ".,") {
				return 0, errNumber
			}
		}
		t = strings.Join(parts, "")
	}
	point, mark := strings.LastIndexByte(t, '.'), strings.LastIndexByte(t, ',')
	decimal := byte(0)
	switch {
	case point >= 0 && mark >= 0:
		decimal = '.'
		if mark > point {
			decimal = ','
		}
		if strings.Count(t, string(decimal)) > 1 {
			return 0, errNumber
		}
	case point >= 0:
		decimal = single(t, '.', comma || money)
	case mark >= 0:
		decimal = single(t, ',', !comma || money)
	}
	if decimal == '?' {
		return 0, errMark
	}
	var b strings.Builder
	for i := range len(t) {
		switch c := t[i]; {
		case c == decimal:
			b.WriteByte('.')
		case c != '.' && c != ',':
			b.WriteByte(c)
		}
	}
	x, err := strconv.ParseFloat(b.String(), 64)
	if err != nil || math.IsNaN(x) || math.IsInf(x, 0) {
		return 0, errNumber
	}
	return x, nil
}

// single says what the only kind of mark in a number is: the mark itself where it
// parts decimals, 0 where it groups, '?' where nobody can tell. groups says that
// it is the mark with which this file groups thousands.
func single(t string, c byte, groups bool) byte {
	before, after, _ := strings.Cut(t, string(c))
	inThrees := true
	for part := range strings.SplitSeq(after, string(c)) {
		inThrees = inThrees && len(part) == 3
	}
	lead := strings.TrimLeft(before, "+-")
	many := strings.Count(t, string(c)) > 1
	switch {
	case !many && (!inThrees || lead == "0" || len(lead) > 3):
		return c
	case !inThrees || len(lead) > 3 || lead == "":
		return '?'
	case groups || many:
		return 0
	case c == '.':
		return c // "1.299" where points part decimals
	}
	return '?'
}

// volts reads a voltage that must be one of those sold, to a tenth; a lithium
// battery's nominal one stands for its class.
func volts(to *unit.Voltage, text string, comma bool, of ...float64) error {
	var v unit.Voltage
	if err := number(&v, text, comma, voltage, 1, 1000, unit.Volts); err != nil {
		return err
	}
	x := v.Volts()
	if class, ok := lithiumNominal[math.Round(x*10)/10]; ok {
		x = class
	}
	for _, sold := range of {
		if math.Abs(x-sold) < 0.1 {
			*to = unit.Volts(sold)
			return nil
		}
	}
	return fmt.Errorf("%q is no voltage that is sold", text)
}

// lithiumNominal are the nominal volts of iron-phosphate batteries, 3.2 V a cell.
var lithiumNominal = map[float64]float64{12.8: 12, 25.6: 24, 38.4: 36, 51.2: 48}

func whole(to *int, text string) error {
	var x float64
	if err := number(&x, strings.TrimSuffix(text, "+"), false, pieces, 0, 1e9, func(x float64) float64 { return x }); err != nil || x != math.Trunc(x) {
		return fmt.Errorf("%q is not a whole number", text)
	}
	*to = int(x)
	return nil
}

// A word is a kind that a column may hold, with the other words that mean it.
type word struct {
	is   string
	also string // parted by blanks
}

func (w word) means(t string) bool { return t == w.is || slices.Contains(strings.Fields(w.also), t) }

// flatWord is a cell's word without case, and with hyphens for what parts it.
func flatWord(text string) string {
	return strings.Join(strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return r == ' ' || r == '-' || r == '_' }), "-")
}

func one(to *string, text string, of []word) error {
	t := flatWord(text)
	for _, w := range of {
		if w.means(t) {
			*to = w.is
			return nil
		}
	}
	return fmt.Errorf("%q is not known", text)
}

// several reads kinds joined by plus signs, strokes, commas or "and".
func several(to *[]string, text string, of []word) error {
	var single string
	if one(&single, text, of) == nil {
		*to = []string{single}
		return nil
	}
	var out []string
	for _, part := range strings.FieldsFunc(strings.ReplaceAll(strings.ToLower(text), " and ", "+"), func(r rune) bool { return strings.ContainsRune("+/|,;&", r) }) {
		if strings.TrimSpace(part) == "" {
			continue
		}
		var x string
		if err := one(&x, strings.TrimSpace(part), of); err != nil {
			return err
		}
		out = append(out, x)
	}
	*to = out
	return nil
}

func yes(to *bool, text string) error {
	switch strings.ToLower(text) {
	case "yes", "y", "true", "t", "1", "x", "\u2713", "\u2714", "included", "built in", "built-in":
		*to = true
	case "no", "n", "false", "f", "0", "none", "without":
		*to = false
	default:
		return fmt.Errorf("%q is neither yes nor no", text)
	}
	return nil
}

func gauge(to **unit.Gauge, text string) error {
	t := strings.ToLower(text)
	for _, w := range []string{"awg", "gauge", "ga.", "ga", "#", "no.", "number"} {
		t = strings.TrimSpace(strings.TrimSuffix(strings.TrimPrefix(t, w), w))
	}
	if strings.Contains(t, "mm") {
		return fmt.Errorf("%q is an area; give the American gauge: 6 mm2 is about 10, 10 mm2 8, 16 mm2 6, 25 mm2 4, 35 mm2 2", text)
	}
	low, high := 1, 18
	aught, thick := strings.CutSuffix(t, "/0")
	if thick {
		t, high = aught, 4
	} else if t == "0" || t == "00" || t == "000" || t == "0000" {
		t, thick, high = strconv.Itoa(len(t)), true, 4
	}
	n, err := strconv.Atoi(t)
	if err != nil || n < low || n > high {
		return fmt.Errorf("%q is no gauge", text)
	}
	g := unit.AWG(n)
	if thick {
		g = unit.AWG(1 - n)
	}
	*to = &g
	return nil
}
