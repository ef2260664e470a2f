package sheet

import (
	"errors"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"unicode"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
	"pgregory.net/rapid"
)

// The workings stand on a board: whoever reckons with the numbers as they are
// printed must find the result as it is printed. This file reads workings back
// as a pupil with a pocket calculator would and holds them against the results.

// lookedUp are the rows whose value is read from a table, so that there is nothing
// to reckon. A step of a ladder needs no mention.
var lookedUp = map[string]bool{
	"2 lb per 100 lb": true, "ratio raised for the water": true,
	"area facing the wind": true, "area from the side": true,
	"water density": true, "water viscosity": true,
	"voltage of the motor said": true, "voltage of the motor tried": true, "voltage by class": true, "voltage of the largest rating": true,
	"class at the voltage said": true, "largest rating": true, "usual power of the rating": true,
	"thrust class": true, "thrust class, each of several motors": true,
	"next shaft length": true, "highest of the heights said": true,
	"strings from the batteries in hand": true, "strings for a long life": true, "strings for the hours said": true,
	"battery of the next usual size": true, "bank voltage while charging": true, "capacity left at this temperature": true,
	"voltage of the batteries in hand": true,
	"charger for the hours":            true, "largest charger the battery accepts": true,
	"breaker": true, "breaker distance": true, "breaker voltage": true,
	"breaker distance, bare wire": true, "breaker distance, sheathed wire": true, "breaker distance, battery terminal": true,
	"smallest wire that passes": true, "air around the wire": true, "wire as said": true, "wire as chosen": true,
	"longest run of the wire": true, "runs side by side": true,
	"thrust share of a five-speed dial": true, "fixed, by the dial": true, "fixed, for a speed": true,
	"thrust for the trolling speed": true, "fuel in portable tanks": true,
}

// A pupil reckons a line of a board.
type pupil struct {
	text string
	at   int
}

var errWords = errors.New("words, not arithmetic")

// reckon is the value of the arithmetic at the start of a text, up to its end, a
// comma or a colon.
func reckon(text string) (float64, error) {
	p := &pupil{text: text}
	x, err := p.sum()
	p.space()
	if rest := p.text[p.at:]; err == nil && rest != "" && rest[0] != ',' && rest[0] != ':' {
		return x, errWords
	}
	return x, err
}

func (p *pupil) space() {
	for p.at < len(p.text) && p.text[p.at] == ' ' {
		p.at++
	}
}

// take passes over a word or a sign.
func (p *pupil) take(word string) bool {
	p.space()
	if strings.HasPrefix(p.text[p.at:], word) {
		p.at += len(word)
		return true
	}
	return false
}

func (p *pupil) sum() (float64, error) {
	x, err := p.product()
	for err == nil {
		var y float64
		switch {
		case p.take("+ "):
			y, err = p.product()
			x += y
		case p.take("- "):
			y, err = p.product()
			x -= y
		default:
			return x, nil
		}
	}
	return x, err
}

func (p *pupil) product() (float64, error) {
	x, err := p.power()
	for err == nil {
		var y float64
		switch {
		case p.take("x "):
			y, err = p.power()
			x *= y
		case p.take("/ "), p.take("per "):
			y, err = p.power()
			x /= y
		default:
			return x, nil
		}
	}
	return x, err
}

func (p *pupil) power() (float64, error) {
	x, err := p.atom()
	for err == nil && p.at < len(p.text) && p.text[p.at] == '^' {
		p.at++
		var y float64
		y, err = p.atom()
		x = math.Pow(x, y)
	}
	return x, err
}

func (p *pupil) atom() (float64, error) {
	switch {
	case p.take("square root of "):
		x, err := p.atom()
		return math.Sqrt(x), err
	case p.take("cube root of "):
		x, err := p.atom()
		return math.Cbrt(x), err
	case p.take("the larger of "):
		return p.pair(math.Max)
	case p.take("the smaller of "):
		return p.pair(math.Min)
	case p.take("("):
		x, err := p.sum()
		if err == nil && !p.take(")") {
			err = errWords
		}
		return x, err
	}
	return p.number()
}

func (p *pupil) pair(of func(x, y float64) float64) (float64, error) {
	x, err := p.sum()
	if err != nil {
		return 0, err
	}
	if !p.take("and ") {
		return 0, errWords
	}
	y, err := p.sum()
	return of(x, y), err
}

// number reads digits and passes over the unit behind them.
func (p *pupil) number() (float64, error) {
	p.space()
	from := p.at
	for p.at < len(p.text) && (p.text[p.at] >= '0' && p.text[p.at] <= '9' || strings.IndexByte("$-.,", p.text[p.at]) >= 0) {
		p.at++
	}
	digits := strings.TrimRight(p.text[from:p.at], ",")
	p.at = from + len(digits)
	x, err := strconv.ParseFloat(strings.NewReplacer("$", "", ",", "").Replace(digits), 64)
	if err != nil {
		return 0, errWords
	}
	if p.at < len(p.text) && p.text[p.at] == '%' {
		p.at++
		return x / 100, nil
	}
	for { // "lb", "kg/m3", "circular mils"; not the signs x and per, nor and
		p.space()
		end := p.at
		for end < len(p.text) && strings.IndexByte(" ,:()^", p.text[end]) < 0 {
			end++
		}
		w := p.text[p.at:end]
		if w == "" || w == "x" || w == "per" || w == "and" || !unicode.IsLetter(rune(w[0])) {
			return x, nil
		}
		p.at = end
	}
}

// unitOf is one unit of the last digit printed of a number.
func unitOf(printed string) float64 {
	n, rest, _ := strings.Cut(printed, " ")
	if strings.HasSuffix(n, "%") {
		n, rest = strings.TrimSuffix(n, "%"), "%"
	}
	u := 1.0
	if whole := strings.ReplaceAll(n, ",", ""); len(whole) > 3 && !strings.Contains(n, ".") && strings.HasSuffix(whole, "0") {
		u = math.Pow10(min(len(whole)-3, len(whole)-len(strings.TrimRight(whole, "0")))) // shown to three figures
	}
	if _, frac, ok := strings.Cut(n, "."); ok {
		u = math.Pow10(-len(frac))
	}
	if rest == "%" {
		u /= 100
	}
	return u
}

// onTheBoard holds a working against its result; arithmetic is false where it is
// none.
func onTheBoard(working, result string) (arithmetic bool, complaint string) {
	printed, _, _ := strings.Cut(result, " = ")
	want, err := reckon(strings.TrimPrefix(printed, "$"))
	if err != nil {
		return false, "a result that is no number"
	}
	got, claim := math.NaN(), working
	if main, behind, found := strings.Cut(working, ": the way where "); found {
		claim = behind
		if got, err = reckon(main); err != nil {
			return false, err.Error()
		}
	}
	if i := strings.Index(claim, "where "); i >= 0 && strings.Contains(claim, " = ") {
		claim = claim[i+len("where "):]
	}
	if left, right, found := strings.Cut(claim, " = "); found {
		l, errL := reckon(left)
		r, errR := reckon(right)
		if errL != nil || errR != nil {
			return false, "an equation that is no arithmetic"
		}
		if math.Abs(l-r) > 2e-3*max(math.Abs(l), math.Abs(r))+1e-3 {
			return true, "the sides of the equation are " + strconv.FormatFloat(l, 'g', 5, 64) + " and " + strconv.FormatFloat(r, 'g', 5, 64)
		}
		if math.IsNaN(got) {
			return true, ""
		}
	} else if got, err = reckon(working); err != nil {
		return false, err.Error()
	}
	for _, bound := range []struct {
		word string
		of   func(x, y float64) float64
	}{{", at most ", math.Min}, {", at least ", math.Max}} {
		if _, limit, found := strings.Cut(working, bound.word); found {
			if limit == "all of it" {
				limit = "100%"
			}
			l, err := reckon(limit)
			if err != nil {
				return false, "a bound that is no number"
			}
			got = bound.of(got, l)
		}
	}
	if strings.Contains(working, "to the nearest whole") {
		got = max(math.Floor(got+0.5), 0)
	}
	if u := unitOf(printed); math.Abs(got-want) > u*1.0001+1e-9 {
		return true, "a calculator gives " + strconv.FormatFloat(got, 'g', 6, 64)
	}
	return true, ""
}

func TestBoard(t *testing.T) {
	for _, x := range []struct{ working, result string }{
		{"1,900 lb x 2 lb per 100 lb", "38 lb"},
		{"17.58 lb x 1.2 / (1 - 0.9253 mph / 6.934 mph)", "24.3 lb"},
		{"square root of ((6.524 lb)^2 + (1.418 lb)^2)", "6.68 lb"},
		{"42 A x 15% + 0.4 A, at most 42 A", "6.7 A"},
		{"80% x 96% x 20 h x (95 Ah / (42 A x 20 h))^1.25", "1.01 h = 60 min"},
		{"the larger of 47.5 lb and 24.3 lb", "47.5 lb"},
		{"where 70 lb x (1 - 3.7 mph / 7.4 mph) = 1 x (20 lb + 15 lb) + 0 lb", "3.7 mph"},
	} {
		if ok, complaint := onTheBoard(x.working, x.result); !ok || complaint != "" {
			t.Errorf("%s = %s: %v %s", x.working, x.result, ok, complaint)
		}
	}
	for _, x := range []struct{ working, result string }{
		{"15 lb x 1.2 / (1 - 0.9 mph / 6.9 mph)", "20.1 lb"},
		{"where 70 lb x (1 - 3.7 mph / 7.4 mph) = 1 x (20 lb + 17 lb) + 0 lb", "3.7 mph"},
	} {
		if ok, complaint := onTheBoard(x.working, x.result); !ok || complaint == "" {
			t.Errorf("%s = %s: taken for right", x.working, x.result)
		}
	}
}

// checkBoard reckons every working of a solution; seen counts the rows that were
// reckoned.
func checkBoard(fail func(format string, args ...any), name string, s *Solution, seen map[string]bool) {
	for i := range s.Steps() {
		st := &s.Steps()[i]
		for _, sys := range []unit.System{unit.US, unit.Metric} {
			w := s.Working(st, sys)
			if w == "" {
				continue
			}
			r := s.Result(st, sys)
			known := st.Row.Ladder || lookedUp[st.Row.Name]
			arithmetic, complaint := onTheBoard(w, r)
			switch {
			case !arithmetic && !known:
				fail("%s, %s: row %q is not arithmetic: %s = %s: %s", name, sys, st.Row.Name, w, r, complaint)
			case arithmetic && complaint != "" && !known:
				fail("%s, %s: row %q: %s = %s: %s", name, sys, st.Row.Name, w, r, complaint)
			case arithmetic:
				seen[st.Row.Name] = true
			}
		}
	}
}

// parts takes apart the working of a hull's drag: what stands for friction, wave
// drag and transom drag in the sum, and behind it.
var parts = regexp.MustCompile(`x \(([^+]*) \+ ([^+]*) \+ ([^)]*)\).*: friction (.*), wave drag (.*), transom drag (.*)$`)

// The parts of a hull's drag are worked out behind the sum.
func TestPartsOfDragAddUp(t *testing.T) {
	n := 0
	for _, b := range boats {
		s := StandardBook().Solve(Question{Given: b.given, Duty: b.duty, Want: All()})
		for _, id := range []ID{DragWind, DragCurrent, DragBoth, CruisePull} {
			for _, sys := range []unit.System{unit.US, unit.Metric} {
				m := parts.FindStringSubmatch(s.Working(s.Step(id), sys))
				if s.Step(id) != nil && m == nil {
					t.Errorf("%s: %s shows no parts: %s", b.name, id, s.Working(s.Step(id), sys))
				}
				for i := 1; m != nil && i <= 3; i++ {
					printed, err1 := reckon(m[i])
					worked, err2 := reckon(m[i+3])
					if err1 != nil || err2 != nil || math.Abs(printed-worked) > 2e-3*printed+1e-9 {
						t.Errorf("%s, %s: %s: %s is worked out as %s = %g: %v %v", b.name, sys, id, m[i], m[i+3], worked, err1, err2)
					}
					n++
				}
			}
		}
	}
	if n < 100 {
		t.Errorf("only %d parts were reckoned", n)
	}
}

// Every working of many boats adds up in both systems of units, but for those
// that are read from a table.
func TestWorkingsAddUp(t *testing.T) {
	seen := map[string]bool{}
	for _, b := range boats {
		s := StandardBook().Solve(Question{Given: b.given, Duty: b.duty, Want: All()})
		checkBoard(t.Errorf, b.name, s, seen)
	}
	if len(seen) < 90 {
		t.Errorf("only %d rows were reckoned", len(seen))
	}
}

func TestWorkingsOfAnyBoatAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		num := func(id ID, low, high float64) Given {
			return Given{ID: id, Value: band.Exactly(rapid.Float64Range(low, high).Draw(t, id.String()))}
		}
		maybe := func(given []Given, g Given) []Given {
			if rapid.Bool().Draw(t, "say "+g.ID.String()) {
				return append(given, g)
			}
			return given
		}
		given := []Given{
			txt(BoatHull, rapid.SampledFrom([]string{"jon", "vee", "deep-vee", "bass", "bay", "flats", "pontoon", "canoe", "kayak", "inflatable", "sailboat", "other"}).Draw(t, "hull")),
			num(BoatLength, 3, 7.5), num(LoadTotal, 150, 2500),
		}
		for _, g := range []Given{num(WindSpeed, 0, 12), num(CurrentSpeed, 0, 1.2), num(ChopHeight, 0, 0.6), num(MountHeight, 0.1, 0.9), num(UseHours, 0.5, 12),
			num(WireRun, 0.5, 9), num(AirTemp, -15, 35), num(BatteryCapacity, 20, 250), num(BatteryCount, 1, 4), num(ChargerSaid, 3, 30), num(LoadPlate, 150, 900),
			txt(BatteryChemistry, rapid.SampledFrom([]string{"flooded", "agm", "gel", "lithium"}).Draw(t, "chemistry")),
			txt(MotorSpeeds, rapid.SampledFrom([]string{"fixed", "variable"}).Draw(t, "control")),
			txt(WirePlace, rapid.SampledFrom([]string{"open", "engine-space"}).Draw(t, "place"))} {
			if g.ID == BatteryCount {
				g.Value = band.Exactly(math.Round(g.Value.Nominal))
			}
			given = maybe(given, g)
		}
		checkBoard(t.Errorf, "drawn", StandardBook().Solve(Question{Given: given, Want: All()}), map[string]bool{})
	})
}
