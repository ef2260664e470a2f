package reasoner

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
	"heronlake.example/ask/reasoner/match"
	"heronlake.example/ask/reasoner/meaning"
)

// Sheet is the full fitting of the boat as it stands, whatever was talked of
// last: figures with their steps, curves, how to measure what is still assumed,
// and the parts. Where the shop's shelf holds a motor that fits, the figures are
// those of that motor and the rest of its rig rather than of the plain class.
// The conversation goes on as if nothing had been asked.
func (s *Session) Sheet() answer.Answer {
	kept := s.now
	defer func() { s.now = kept }()
	c := kept.card
	if len(c.Facts) == 0 {
		a := answer.Answer{Problems: []answer.Problem{{Kind: "ambiguous", Text: "Nothing is known of the boat yet. Describe it first: its length, what it weighs loaded, and the water."}}}
		a.Finish()
		return a
	}
	topics := sheetTopics(c)
	a := s.answerCard(answer.Answer{}, state{card: c, proposed: true, day: kept.day}, topics, meaning.Wish{})
	a.Changed = nil
	f := s.now.fit
	if f == nil || len(a.Figures) == 0 {
		if len(a.Problems) == 0 {
			a.Problems = []answer.Problem{{Kind: "ambiguous", Text: "Too little is known of the boat for a fit sheet. Say its length, what it weighs loaded, and the water."}}
		}
		a.Finish()
		return a
	}
	if o := s.now.offer; o != nil {
		f = s.sell(&a, *o, c, topics)
	}
	if len(a.Parts) == 0 {
		a.Parts = s.unpriced(f, a.Shelf)
	}
	a.Curves = s.marked(f)
	a.Measures = measures(c, a.Assumed)
	a.Finish()
	return a
}

// sheetTopics are what a sheet tells: everything that a fitting settles, and
// the capacity plate where it was read.
func sheetTopics(c card.Card) []string {
	topics := []string{string(meaning.Fit), string(meaning.Cost), string(meaning.Charger), string(meaning.Wire)}
	if _, ok := c.Get("load.plate"); ok {
		topics = append(topics, string(meaning.Capacity))
	}
	return topics
}

// sell replaces the figures of the plain class by those of the motor offered
// with its bank, wire and charger, so that the sheet agrees with its parts list.
func (s *Session) sell(a *answer.Answer, o match.Offer, c card.Card, topics []string) *fit.Fit {
	f := fit.Solve(asSold(c, o, s.r.opts.Shelf()), topics, s.sys, nil)
	cites := map[string][]int{}
	var priced []answer.Figure
	for _, fig := range a.Figures {
		cites[fig.ID] = fig.Cites
		if fig.Basis == string(sheet.Stock) {
			priced = append(priced, fig)
		}
	}
	a.Figures = nil
	for _, fig := range grounded(f, f.Figures()) {
		if slices.ContainsFunc(priced, func(p answer.Figure) bool { return p.ID == fig.ID }) {
			continue
		}
		if words := listedFor(f, fig); words != "" {
			fig.Basis, fig.How = string(sheet.Stock), words
		}
		fig.Cites = cites[fig.ID]
		a.Figures = append(a.Figures, fig)
	}
	a.Figures = append(a.Figures, priced...)
	a.Assumed = f.Assumed(a.Figures)
	a.Steps = f.Steps(figureCells(a.Figures)...)
	m := o.Motor
	a.Headline = "Fit the " + m.Name + " (" + m.SKU + "): " + unit.Show(m.Voltage.Volts(), unit.Volt, s.sys) + ", " +
		unit.Show(m.Thrust.Newtons(), unit.Thrust, s.sys) + " of thrust for a need of " + f.Show(sheet.ThrustNeed)
	if m.Shaft > 0 && f.Sol.Has(sheet.ShaftNeed) {
		a.Headline += ", a " + unit.Show(m.Shaft.Metres(), unit.DeckLength, s.sys) + " shaft for a need of " + f.Show(sheet.ShaftNeed)
	}
	a.Headline += "."
	if why := o.Reasons(); why != "" {
		a.Headline += " Tight: " + why + "."
	}
	return f
}

// unpriced lists what the figures ask for where no shelf gives it.
func (s *Session) unpriced(f *fit.Fit, shelf string) []answer.Part {
	note := "price to be asked"
	if shelf != "" {
		note = "not on the shelf"
	}
	var out []answer.Part
	add := func(what string, count float64, item string, needs ...sheet.ID) {
		for _, id := range needs {
			if !f.Sol.Has(id) {
				return
			}
		}
		out = append(out, answer.Part{What: what, Item: f.Sol.Fill(item, s.sys), Count: max(1, int(math.Round(count))), Note: note})
	}
	shaft := ""
	if f.Sol.Has(sheet.ShaftClass) {
		shaft = ", {shaft.class} shaft"
	}
	add("motor", 1, "{system.voltage}, {thrust.class} of thrust"+shaft, sheet.SystemVoltage, sheet.ThrustClass)
	add("battery", f.Sol.Value(sheet.BankCount), "{battery.chemistry}, {bank.capacity} in the bank", sheet.BankCount, sheet.BatteryChemistry, sheet.BankCapacity)
	series, side := f.Sol.Value(sheet.BankSeries), math.Max(1, f.Sol.Value(sheet.BankStrings))
	if links := (series-1)*side + 2*(side-1); links >= 1 {
		add("link", links, "{wire.gauge} between batteries", sheet.WireGauge, sheet.BankSeries)
	}
	add("box", f.Sol.Value(sheet.BankCount), "or tray, with hold-down", sheet.BankCount)
	add("charger", 1, "{charger.current} for each battery", sheet.ChargerCurrent)
	add("wire", 1, "{wire.gauge}, {wire.run} one way", sheet.WireGauge, sheet.WireRun)
	add("breaker", 1, "{breaker.rating}", sheet.BreakerRating)
	add("plug", 1, "for {motor.current}", sheet.MotorCurrent)
	return out
}

// listedFor is where the shelf states a figure that would otherwise count as the
// customer's own words; "" for all others.
func listedFor(f *fit.Fit, fig answer.Figure) string {
	id, ok := sheet.Lookup(fig.ID)
	if !ok || fig.Basis != string(sheet.Said) {
		return ""
	}
	st := f.Sol.Step(id)
	for _, in := range append([]sheet.ID{id}, st.Inputs...) {
		if st := f.Sol.Step(in); st != nil && strings.HasPrefix(st.Said, listed) {
			return st.Said
		}
	}
	return ""
}

// marked gives the curves with what stands beside them: the ratings that are
// sold and the wind said, the hours and the throttle of the day.
func (s *Session) marked(f *fit.Fit) []answer.Curve {
	curves := f.Curves()
	for i := range curves {
		c := &curves[i]
		mark := func(axis string, id sheet.ID, label string) {
			if f.Sol.Has(id) {
				c.Marks = append(c.Marks, answer.Mark{Axis: axis, Value: f.Sol.Value(id), Label: label + f.Show(id), Own: true})
			}
		}
		switch c.ID {
		case "thrust-by-wind":
			mark("x", sheet.WindSpeed, "wind ")
			rating := sheet.RatedThrust
			if !f.Sol.Has(rating) {
				rating = sheet.ThrustClass
			}
			if f.Sol.Has(rating) {
				c.Marks = append(c.Marks, answer.Mark{Axis: "y", Value: f.Sol.Value(rating), Label: "motor " + rated(f.Sol.Value(rating)), Own: true})
			}
			for _, n := range sheet.ThrustLadder {
				if !f.Sol.Has(rating) || n != f.Sol.Value(rating) {
					c.Marks = append(c.Marks, answer.Mark{Axis: "y", Value: n, Label: rated(n)})
				}
			}
		case "hours-by-throttle":
			mark("y", sheet.UseHours, "day of ")
		}
		slices.SortStableFunc(c.Marks, func(x, y answer.Mark) int {
			return cmp.Or(strings.Compare(x.Axis, y.Axis), cmp.Compare(x.Value, y.Value))
		})
	}
	return curves
}

// rated writes a rating, which is sold in pounds in both worlds.
func rated(newtons float64) string { return unit.Show(newtons, unit.Thrust, unit.US) }

// measureRows say how to measure what a sheet may still rest on an assumption
// for, the most telling first.
var measureRows = []struct {
	cells []string // the assumed cells that the measure replaces
	slot  string
	how   string
}{
	{[]string{"mount.height"}, "mount.height", "Boat afloat and loaded, people aft: tape straight down from where the mount will sit to the water, at its highest."},
	{[]string{"load.dry", "load.engine", "load.gear", "load.base-gear", "people.each", "load.total"}, "load.total", "Weigh boat and trailer full at a public scale, then the empty trailer; add people and what comes aboard later."},
	{[]string{"boat.length"}, "boat.length", "Tape along the centre line from stem to transom, without motor or platform; or read the registration."},
	{[]string{"boat.beam"}, "boat.beam", "Tape across the widest place, rail to rail."},
	{[]string{"wind.speed"}, "wind.speed", "Note the forecast wind of the days that you do go out, and the gusts."},
	{[]string{"wire.run"}, "wire.run", "Lay a string where the wire will go, battery to plug with every bend, and tape the string: one way."},
	{[]string{"use.hours"}, "use.hours", "Note for three trips when the motor first and last ran."},
	{[]string{"use.throttle", "use.mean-current", "cruise.fraction"}, "use.throttle", "Note every half hour how far the control is turned, and take the middle."},
	{[]string{"battery.capacity"}, "battery.capacity", "Read the label: ampere hours at the 20-hour rate, or minutes of reserve at 25 A."},
	{[]string{"battery.chemistry"}, "battery.chemistry", "Read the label; caps to fill water through mean flooded."},
	{[]string{"motor.current"}, "motor.current", "Clamp meter round one battery lead, boat held fast, full throttle for ten seconds."},
	{[]string{"wire.insulation"}, "wire.insulation", "Read the temperature printed along the jacket of the wire."},
	{[]string{"chop.height"}, "chop.height", "Judge waves, trough to crest, against the freeboard on a usual day."},
	{nil, "load.plate", "Read the most weight off the plate by the helm or on the transom; motor, batteries and people count against it."},
	{[]string{"charge.hours"}, "charge.hours", "Count from plugging in after a trip to leaving for the next."},
}

// measures lists how to measure what was assumed, and what nothing assumes.
func measures(c card.Card, assumed []answer.Assumed) []answer.Measure {
	var out []answer.Measure
	for _, r := range measureRows {
		for _, a := range assumed {
			if slices.Contains(r.cells, a.Slot) {
				label := a.Label
				if id, ok := fit.CellOf(r.slot); ok {
					label = id.Describe().Label
				}
				taken := a.Display
				switch {
				case a.Slot == sheet.CruiseMean.String():
					taken += " of full current"
				case a.Label != label:
					taken = a.Label + " " + taken
				}
				out = append(out, answer.Measure{Slot: r.slot, Label: label, Taken: taken, How: r.how})
				break
			}
		}
		if _, said := c.Get(r.slot); r.slot == "load.plate" && !said {
			out = append(out, answer.Measure{Slot: r.slot, Label: sheet.LoadPlate.Describe().Label, Taken: "not known", How: r.how})
		}
	}
	return out
}
