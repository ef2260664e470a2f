package match

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/kb/stock"
)

// Item is one line of a rig. An item that the shelf does not hold has no SKU and
// no price.
type Item struct {
	What  string // battery, charger, wire, breaker, plug, bracket
	SKU   string
	Name  string
	Count int
	Price unit.Money // each
}

// Rig is everything that a motor needs to run.
type Rig struct {
	Items []Item
	Total unit.Money // of what the shelf holds
	// Yearly is what the batteries cost a year of the typical use, 0 unknown, and
	// YearlyHow the working.
	Yearly    unit.Money
	YearlyHow string
	Battery   stock.Battery // the one chosen; zero when the shelf holds none
	Series    int           // batteries in series in each string
	Strings   int           // strings side by side
}

// yearly takes the cost of the batteries from the sheet solved with them.
func (r *Rig) yearly(sol *sheet.Solution, sys unit.System) {
	if st := sol.Step(sheet.CostYearly); st != nil {
		r.Yearly, r.YearlyHow = unit.Dollars(st.Value), sol.Working(st, sys)
	}
}

// Whole reports whether the shelf holds every item.
func (r Rig) Whole() bool {
	return !slices.ContainsFunc(r.Items, func(i Item) bool { return i.SKU == "" })
}

// rig makes up what goes with an offer's motor: first the bank, then, with the
// boat solved again for that motor on that bank, the rest.
func (o *Offer) rig(b Boat, shelf *stock.Shelf) {
	r := &o.Rig
	r.add(Item{What: "motor", SKU: o.Motor.SKU, Name: o.Motor.Name, Count: 1, Price: o.Motor.Price})
	count := r.batteries(b, *o, shelf)
	if r.Battery.SKU != "" {
		o.Sol = b.Whole(*o)
		r.yearly(o.Sol, b.Sys)
	}
	r.charger(b, *o, shelf, count)
	r.wire(*o, shelf)
	r.breaker(*o, shelf)
	r.plug(*o, shelf)
	if place := cmp.Or(b.Sol.Word(sheet.MountPlace), o.Motor.Mount); place != "transom" {
		r.bracket(place, shelf)
	}
}

func (r *Rig) add(i Item) {
	r.Items = append(r.Items, i)
	r.Total += i.Price * unit.Money(i.Count)
}

// bank is one way to make up a bank: batteries in series, strings side by side.
type bank struct {
	b       stock.Battery
	series  int
	strings int
	price   unit.Money
}

// mostStrings is how many strings stand side by side at most (common practice).
const mostStrings = 2

// batteries chooses the cheapest bank on the shelf that gives the capacity
// needed at the motor's voltage: of the chemistry said, and otherwise of the one
// that the figures assume where the shelf has it. It returns the number of
// batteries.
func (r *Rig) batteries(b Boat, o Offer, shelf *stock.Shelf) int {
	need := o.Sol.Value(sheet.BankCapacity)
	best, ok := bank{}, false
	if said := text(b.Card, "battery.chemistry"); said != "" {
		best, ok = cheapest(o, shelf, need, said)
	} else if best, ok = cheapest(o, shelf, need, b.Sol.Word(sheet.BatteryChemistry)); !ok {
		best, ok = cheapest(o, shelf, need, "")
	}
	if !ok {
		n := max(1, int(math.Round(o.Motor.Voltage.Volts()/12)))
		r.add(Item{What: "battery", Name: "deep-cycle battery, " + unit.Show(need, unit.AmpHour, b.Sys), Count: n})
		return n
	}
	r.Battery, r.Series, r.Strings = best.b, best.series, best.strings
	n := best.series * best.strings
	r.add(Item{What: "battery", SKU: best.b.SKU, Name: best.b.Name, Count: n, Price: best.b.Price})
	return n
}

// cheapest is the cheapest bank of a chemistry, of any for "".
func cheapest(o Offer, shelf *stock.Shelf, need float64, chem string) (best bank, ok bool) {
	for _, x := range shelf.Batteries {
		if chem != "" && chem != x.Chemistry || x.Capacity.AmpereHours() <= 0 || x.Voltage.Volts() <= 0 {
			continue
		}
		ratio := o.Motor.Voltage.Volts() / x.Voltage.Volts()
		series := int(math.Round(ratio))
		if series < 1 || math.Abs(ratio-float64(series)) > 0.01 || series > 1 && !x.Series {
			continue
		}
		// Its own electronics must carry the motor, with a quarter to spare
		// (common practice, no published source).
		if x.Chemistry == "lithium" && x.Protection > 0 && o.Sol.Has(sheet.MotorCurrent) &&
			x.Protection.Amperes() < 1.25*o.Sol.Value(sheet.MotorCurrent) {
			continue
		}
		// A twentieth short of the need counts as enough.
		strings := max(1, int(math.Ceil(need/x.Capacity.AmpereHours()-0.05)))
		if strings > mostStrings {
			continue
		}
		c := bank{x, series, strings, x.Price * unit.Money(series*strings)}
		if !ok || cmp.Or(cmp.Compare(c.price, best.price), cmp.Compare(c.b.SKU, best.b.SKU)) < 0 {
			best, ok = c, true
		}
	}
	return best, ok
}

// chargerShare is how much of the current needed still counts as enough: half an
// hour more of charging does not earn a dearer charger (trade practice).
const chargerShare = 0.9

// mostChargers is how many chargers one bank may be served by.
const mostChargers = 2

// charger takes what is cheapest with an output for each battery, a profile for
// the chemistry, and at least the current needed; short of that the strongest.
// Two chargers of one kind may serve a bank that none serves alone.
func (r *Rig) charger(b Boat, o Offer, shelf *stock.Shelf, outputs int) {
	chem := r.Battery.Chemistry
	volts := unit.Voltage(12)
	if r.Battery.SKU != "" {
		volts = r.Battery.Voltage
	}
	need := o.Sol.Value(sheet.ChargerCurrent) * chargerShare
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

// part takes the cheapest of a kind that suits.
func (r *Rig) part(shelf *stock.Shelf, kind, missing string, suits func(p stock.Part) bool) {
	var best *stock.Part
	for i, p := range shelf.Parts {
		if p.Kind == kind && suits(p) &&
			(best == nil || cmp.Or(cmp.Compare(p.Price, best.Price), cmp.Compare(p.SKU, best.SKU)) < 0) {
			best = &shelf.Parts[i]
		}
	}
	if best == nil {
		r.add(Item{What: kind, Name: missing, Count: 1})
		return
	}
	r.add(Item{What: kind, SKU: best.SKU, Name: best.Name, Count: 1, Price: best.Price})
}

func (r *Rig) wire(o Offer, shelf *stock.Shelf) {
	if !o.Sol.Has(sheet.WireGauge) {
		return
	}
	gauge, run := int(math.Round(o.Sol.Value(sheet.WireGauge))), o.Sol.Value(sheet.WireRun)
	name := unit.Show(float64(gauge), unit.WireGauge, unit.US) + " duplex wire, " + unit.Show(run, unit.RunLength, unit.US)
	r.part(shelf, "wire", name, func(p stock.Part) bool {
		return p.Gauge != nil && p.Gauge.Number() <= gauge && p.Length.Metres() >= run
	})
}

func (r *Rig) breaker(o Offer, shelf *stock.Shelf) {
	if !o.Sol.Has(sheet.BreakerRating) {
		return
	}
	amps := o.Sol.Value(sheet.BreakerRating)
	r.part(shelf, "breaker", unit.Show(amps, unit.Ampere, unit.US)+" breaker", func(p stock.Part) bool {
		return math.Abs(p.Rating.Amperes()-amps) < 0.5 && (p.Voltage == 0 || p.Voltage >= o.Motor.Voltage)
	})
}

func (r *Rig) plug(o Offer, shelf *stock.Shelf) {
	amps := o.Sol.Value(sheet.MotorCurrent)
	r.part(shelf, "plug", "plug for "+unit.Show(amps, unit.Ampere, unit.US), func(p stock.Part) bool {
		return p.Rating.Amperes() >= amps && (p.Voltage == 0 || p.Voltage >= o.Motor.Voltage)
	})
}

func (r *Rig) bracket(place string, shelf *stock.Shelf) {
	r.part(shelf, "bracket", place+" bracket", func(p stock.Part) bool { return slices.Contains(p.Fits, place) })
}
