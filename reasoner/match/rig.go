package match

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb/stock"
)

// Item is one line of a rig. An item that the shelf does not hold has no SKU and
// no price.
type Item struct {
	What  string // motor, battery, link, box, charger, wire, breaker, plug, bracket
	SKU   string
	Name  string
	Count int
	Price unit.Money // each
}

// Rig is everything that a motor needs to run.
type Rig struct {
	Items []Item
	Total unit.Money // of what the shelf holds
	Bank
}

// Bank is one way to make up a bank: batteries in series, strings side by side.
type Bank struct {
	Battery stock.Battery // zero where the shelf holds none that does
	Series  int           // batteries in each string
	Strings int
}

func (b Bank) count() int { return b.Series * b.Strings }

func (b Bank) price() unit.Money { return b.Battery.Price * unit.Money(b.count()) }

// Whole reports whether the shelf holds every item that the motor cannot run
// without: a box may come from elsewhere.
func (r Rig) Whole() bool {
	return !slices.ContainsFunc(r.Items, func(i Item) bool { return i.SKU == "" && i.What != "box" })
}

// What a bank is chosen by, and what the rest of a rig.
var (
	bankWants = []sheet.ID{sheet.BankCapacity, sheet.ChargerCurrent, sheet.MotorCurrent}
	rigWants  = []sheet.ID{sheet.BankCapacity, sheet.ChargerCurrent, sheet.MotorCurrent, sheet.WireGauge, sheet.WireRun,
		sheet.BreakerRating, sheet.HoldWind, sheet.RuntimeCruise}
)

// rig makes up what goes with an offer's motor: first the bank, then, with the
// boat solved again for that motor on that bank, the rest.
func (o *Offer) rig(b Boat, shelf *stock.Shelf) {
	r := &o.Rig
	r.Items = make([]Item, 0, 9)
	r.add(Item{What: "motor", SKU: o.Motor.SKU, Name: o.Motor.Name, Count: 1, Price: o.Motor.Price})
	count := r.batteries(b, o.Motor, b.Try(*o, bankWants), shelf)
	sol := b.Try(*o, rigWants)
	o.Hold, o.Run = unit.Speed(sol.Value(sheet.HoldWind)), unit.Duration(sol.Value(sheet.RuntimeCruise))
	r.links(sol, shelf, count)
	r.boxes(shelf, count)
	r.charger(b, sol, shelf, count)
	r.wire(sol, shelf)
	r.breaker(o.Motor, sol, shelf)
	r.plug(o.Motor, sol, shelf)
	if place := cmp.Or(b.Sol.Word(sheet.MountPlace), o.Motor.Mount); place != "transom" {
		r.bracket(place, shelf)
	}
}

func (r *Rig) add(i Item) {
	r.Items = append(r.Items, i)
	r.Total += i.Price * unit.Money(i.Count)
}

// mostStrings is how many strings stand side by side at most (common practice).
const mostStrings = 2

// batteries chooses the cheapest bank on the shelf that gives the capacity
// needed at the motor's voltage: of the chemistry said, and otherwise of the one
// that the figures assume where the shelf has it. It returns the number of
// batteries.
func (r *Rig) batteries(b Boat, m stock.Motor, sol *sheet.Trial, shelf *stock.Shelf) int {
	need := sol.Value(sheet.BankCapacity)
	ok := false
	if said := text(b.Card, "battery.chemistry"); said != "" {
		r.Bank, ok = cheapest(m, sol, shelf, need, said)
	} else if r.Bank, ok = cheapest(m, sol, shelf, need, b.Sol.Word(sheet.BatteryChemistry)); !ok {
		r.Bank, ok = cheapest(m, sol, shelf, need, "")
	}
	if !ok {
		n := max(1, int(math.Round(m.Voltage.Volts()/12)))
		r.add(Item{What: "battery", Name: "deep-cycle battery, " + unit.Show(need, unit.AmpHour, b.Sys), Count: n})
		return n
	}
	n := r.Bank.count()
	r.add(Item{What: "battery", SKU: r.Battery.SKU, Name: r.Battery.Name, Count: n, Price: r.Battery.Price})
	return n
}

// cheapest is the cheapest bank of a chemistry, of any for "": first among those
// that hold what is needed, then among those that carry the hours while new.
func cheapest(m stock.Motor, sol *sheet.Trial, shelf *stock.Shelf, need float64, chem string) (best Bank, ok bool) {
	worn := false
	for i := range shelf.Batteries {
		x := &shelf.Batteries[i]
		if chem != "" && chem != x.Chemistry || x.Capacity.AmpereHours() <= 0 || x.Voltage.Volts() <= 0 {
			continue
		}
		ratio := m.Voltage.Volts() / x.Voltage.Volts()
		series := int(math.Round(ratio))
		if series < 1 || math.Abs(ratio-float64(series)) > 0.01 || series > 1 && !x.Series {
			continue
		}
		// Its own electronics must carry the motor, with a quarter to spare
		// (common practice, no published source).
		if x.Chemistry == "lithium" && x.Protection > 0 && sol.Has(sheet.MotorCurrent) &&
			x.Protection.Amperes() < 1.25*sol.Value(sheet.MotorCurrent) {
			continue
		}
		n := stringsOf(*x, need)
		// A second string is for hours that one cannot carry, not for a longer life.
		short := sol.Has(sheet.BankLimitNeed) && n > stringsOf(*x, sol.Value(sheet.BankLimitNeed))
		if short {
			n = stringsOf(*x, sol.Value(sheet.BankLimitNeed))
		}
		if n > mostStrings {
			continue
		}
		c := Bank{*x, series, n}
		if !ok || cmp.Or(order(short, worn), cmp.Compare(c.price(), best.price()), cmp.Compare(x.SKU, best.Battery.SKU)) < 0 {
			best, worn, ok = c, short, true
		}
	}
	return best, ok
}

// stringsOf is how many batteries side by side hold a capacity; a twentieth short
// of it counts as enough.
func stringsOf(x stock.Battery, need float64) int {
	return max(1, int(math.Ceil(need/x.Capacity.AmpereHours()-0.05)))
}

// chargerShare is how much of the current needed still counts as enough: half an
// hour more of charging does not earn a dearer charger (trade practice).
const chargerShare = 0.9

// mostChargers is how many chargers one bank may be served by.
const mostChargers = 2

// charger takes what is cheapest with an output for each battery, a profile for
// the chemistry, and at least the current needed; short of that the strongest.
// Two chargers of one kind may serve a bank that none serves alone.
func (r *Rig) charger(b Boat, sol *sheet.Trial, shelf *stock.Shelf, outputs int) {
	chem := r.Battery.Chemistry
	volts := unit.Voltage(12)
	if r.Battery.SKU != "" {
		volts = r.Battery.Voltage
	}
	need := sol.Value(sheet.ChargerCurrent) * chargerShare
	type choice struct {
		c     stock.Charger
		count int
		price unit.Money
	}
	better := func(x, y choice) int {
		return cmp.Or(
			order(x.c.Current.Amperes() < need, y.c.Current.Amperes() < need),
			weaker(x.c, y.c, need),
			cmp.Compare(x.price, y.price), cmp.Compare(x.count, y.count), cmp.Compare(x.c.SKU, y.c.SKU))
	}
	var fits []choice
	for _, c := range shelf.Chargers {
		if c.Outputs < 1 || c.Voltage != volts || chem != "" && !slices.Contains(c.Chemistry, chem) {
			continue
		}
		if n := (outputs + c.Outputs - 1) / c.Outputs; n <= mostChargers {
			fits = append(fits, choice{c, n, c.Price * unit.Money(n)})
		}
	}
	if len(fits) == 0 {
		r.add(Item{What: "charger", Name: fmt.Sprintf("charger for %d x %s, %s each", outputs, unit.Show(volts.Volts(), unit.Volt, b.Sys), unit.Show(need, unit.Ampere, b.Sys)), Count: 1})
		return
	}
	best := slices.MinFunc(fits, better)
	r.add(Item{What: "charger", SKU: best.c.SKU, Name: best.c.Name, Count: best.count, Price: best.c.Price})
}

// weaker puts the stronger of two chargers first where both fall short.
func weaker(x, y stock.Charger, need float64) int {
	if x.Current.Amperes() >= need || y.Current.Amperes() >= need {
		return 0
	}
	return cmp.Compare(y.Current, x.Current)
}

// links join the batteries: one between each two in series, and a pair from a
// string to the one beside it. They carry what the wire does, and are as thick.
func (r *Rig) links(sol *sheet.Trial, shelf *stock.Shelf, batteries int) {
	count := batteries - 1
	if r.Strings > 0 {
		count = (r.Series-1)*r.Strings + 2*(r.Strings-1)
	}
	if count < 1 || !sol.Has(sheet.WireGauge) {
		return
	}
	gauge := int(math.Round(sol.Value(sheet.WireGauge)))
	r.parts(shelf, "link", unit.Show(float64(gauge), unit.WireGauge, unit.US)+" battery link", count, func(p stock.Part) bool {
		return p.Gauge != nil && p.Gauge.Number() <= gauge
	})
}

// boxes hold the batteries down, one each: of their case size, or for any.
func (r *Rig) boxes(shelf *stock.Shelf, count int) {
	missing := "battery box or tray with hold-down"
	if r.Battery.Group != "" {
		missing += ", group " + r.Battery.Group
	}
	r.parts(shelf, "box", missing, count, func(p stock.Part) bool {
		return len(p.Groups) == 0 || slices.ContainsFunc(p.Groups, func(g string) bool { return sameCase(g, r.Battery.Group) })
	})
}

// sameCase compares BCI groups by their size: 27M and 27F stand in one box.
func sameCase(a, b string) bool {
	size := func(g string) string { return strings.TrimRight(strings.ToUpper(strings.TrimSpace(g)), "FHMRTX") }
	return size(a) != "" && size(a) == size(b)
}

// part takes the cheapest of a kind that suits.
func (r *Rig) part(shelf *stock.Shelf, kind, missing string, suits func(p stock.Part) bool) {
	r.parts(shelf, kind, missing, 1, suits)
}

// parts takes so many of the cheapest of a kind that suits.
func (r *Rig) parts(shelf *stock.Shelf, kind, missing string, count int, suits func(p stock.Part) bool) {
	var best *stock.Part
	for i, p := range shelf.Parts {
		if p.Kind == kind && suits(p) &&
			(best == nil || cmp.Or(cmp.Compare(p.Price, best.Price), cmp.Compare(p.SKU, best.SKU)) < 0) {
			best = &shelf.Parts[i]
		}
	}
	if best == nil {
		r.add(Item{What: kind, Name: missing, Count: count})
		return
	}
	r.add(Item{What: kind, SKU: best.SKU, Name: best.Name, Count: count, Price: best.Price})
}

func (r *Rig) wire(sol *sheet.Trial, shelf *stock.Shelf) {
	if !sol.Has(sheet.WireGauge) {
		return
	}
	gauge, run := int(math.Round(sol.Value(sheet.WireGauge))), sol.Value(sheet.WireRun)
	name := unit.Show(float64(gauge), unit.WireGauge, unit.US) + " duplex wire, " + unit.Show(run, unit.RunLength, unit.US)
	r.part(shelf, "wire", name, func(p stock.Part) bool {
		return p.Gauge != nil && p.Gauge.Number() <= gauge && p.Length.Metres() >= run
	})
}

func (r *Rig) breaker(m stock.Motor, sol *sheet.Trial, shelf *stock.Shelf) {
	if !sol.Has(sheet.BreakerRating) {
		return
	}
	amps := sol.Value(sheet.BreakerRating)
	r.part(shelf, "breaker", unit.Show(amps, unit.Ampere, unit.US)+" breaker", func(p stock.Part) bool {
		return math.Abs(p.Rating.Amperes()-amps) < 0.5 && (p.Voltage == 0 || p.Voltage >= m.Voltage)
	})
}

func (r *Rig) plug(m stock.Motor, sol *sheet.Trial, shelf *stock.Shelf) {
	amps := sol.Value(sheet.MotorCurrent)
	r.part(shelf, "plug", "plug for "+unit.Show(amps, unit.Ampere, unit.US), func(p stock.Part) bool {
		return p.Rating.Amperes() >= amps && (p.Voltage == 0 || p.Voltage >= m.Voltage)
	})
}

func (r *Rig) bracket(place string, shelf *stock.Shelf) {
	r.part(shelf, "bracket", place+" bracket", func(p stock.Part) bool { return slices.Contains(p.Fits, place) })
}
