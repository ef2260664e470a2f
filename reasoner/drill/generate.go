package drill

import (
	"errors"
	"math"
	"slices"
	"strconv"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/typical"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/fit"
)

// Levels is how many there are; the first is 1.
const Levels = 5

// mostTries bounds the search for a boat that the core can fit a motor to: one
// in ten or so is turned down, so that fifty in a row are never met.
const mostTries = 50

// Generate invents the customer of a seed; at level 0 one who tells everything,
// for a worked example. The units are those in which the
// customer talks; the facts are the same in both. A boat that no motor in the
// ladder can serve is no customer, and the next one of the same seed is taken.
func Generate(seed uint64, topic Topic, level int, sys unit.System) (Scenario, error) {
	if row(topic) == nil {
		return Scenario{}, errors.New("no such topic: " + string(topic) + "; the topics are " + topicNames())
	}
	level = min(max(level, 0), Levels)
	for try := range uint64(mostTries) {
		m := &maker{seed: seed, c: chance{mixed(seed+order(topic)*topicSeed, try)}, topic: row(topic), level: level, sys: sys,
			met: meetings[((seed+order(topic)*topicStep)%uint64(len(meetings))*meetingStep+try/sameMeeting)%uint64(len(meetings))]}
		s := m.scenario()
		if solvable(&s) {
			for i := range s.Facts {
				_, s.Facts[i].Said = fit.Describe(s.Facts[i].Fact, sys)
			}
			m.open(&s)
			return s, nil
		}
	}
	return Scenario{}, errors.New("no boat found for this seed: take another")
}

// solvable reports whether the core finds every figure that the topic's items
// are marked by.
func solvable(s *Scenario) bool {
	r := row(s.Topic)
	sol := fit.Solve(card.Card{Facts: s.Cards()}, r.solve, unit.US, nil).Sol
	for _, name := range r.items {
		if it := itemOf(name); it.cell != 0 && (!sol.Has(it.cell) || sol.Err(it.cell) != nil) {
			return false
		}
	}
	return true
}

// maker makes one scenario.
type maker struct {
	seed  uint64
	c     chance
	topic *topicRow
	level int
	sys   unit.System

	met   meeting
	boat  *boatRow
	kind  *typical.Boat
	water *waterRow
	long  unit.Length
	facts []Fact
}

// held is how many facts a level holds back, wished whether a wish that cannot
// be had comes with it, in percent, and idle how much talk is beside the point.
var levelRows = [Levels + 1]struct {
	held, wished, idle int
	parts              bool // the weight is told in its parts
}{
	{0, 0, 0, false},
	{1, 0, 0, false},
	{1, 0, 1, false},
	{2, 50, 1, false},
	{2, 100, 1, true},
	{3, 100, 2, true},
}

// remake is a maker for more about a scenario that is made already.
func remake(s *Scenario, boat *boatRow, water *waterRow, metres float64, seed uint64) *maker {
	m := &maker{seed: seed, c: chance{seed}, topic: row(s.Topic), level: s.Level, boat: boat, water: water, long: unit.Metres(metres)}
	m.kind, _ = typical.BoatOf(boat.hull)
	return m
}

func (m *maker) scenario() Scenario {
	s := Scenario{Seed: m.seed, Topic: m.topic.id, Level: m.level, Voice: int(m.seed % uint64(len(voices)))}
	if m.topic.id == Faults {
		m.faulty(&s)
		return s
	}
	m.meet(&s)
	m.tell("boat.length", m.long.Metres(), "m")
	m.tellWord("boat.hull", m.boat.hull)
	m.load()
	for _, slot := range m.topic.tells {
		m.fact(slot)
	}
	if _, ok := m.find("water.kind"); !ok {
		m.tellWord("water.kind", m.water.kind)
	}
	m.hold()
	s.Facts = m.facts
	m.wish(&s)
	for range levelRows[m.level].idle {
		idle := m.idle()
		if !slices.Contains(s.Idle, idle) {
			s.Idle = append(s.Idle, idle)
		}
	}
	return s
}

// A meeting is a boat of a length on a water. Seeds walk through all of them
// before one comes again, so that no two of a class's seeds share boat and water.
type meeting struct {
	water *waterRow
	boat  *boatRow
	feet  float64
}

// meetingStep has no factor in common with the number of meetings; sameMeeting
// is how many boats are tried in one before it is given up. topicStep and
// topicSeed set the topics of one seed apart: a class that goes from shafts to
// wiring meets other people there.
const (
	meetingStep = 89
	sameMeeting = 10
	topicStep   = 31
	topicSeed   = 0x9e3779b9
)

var meetings = func() []meeting {
	var out []meeting
	for i := range waterRows {
		for _, hull := range waterRows[i].boats {
			b := boatOf(hull)
			for _, feet := range b.lengths {
				out = append(out, meeting{&waterRows[i], b, feet})
			}
		}
	}
	return out
}()

func (m *maker) meet(s *Scenario) {
	m.water, m.boat, m.long = m.met.water, m.met.boat, unit.Feet(m.met.feet)
	m.kind, _ = typical.BoatOf(m.boat.hull)
	s.Place = m.water.id
}

func boatOf(hull string) *boatRow {
	for i := range boatRows {
		if boatRows[i].hull == hull {
			return &boatRows[i]
		}
	}
	return nil
}

func (m *maker) find(slot string) (*Fact, bool) {
	for i := range m.facts {
		if m.facts[i].Slot == slot {
			return &m.facts[i], true
		}
	}
	return nil, false
}

func (m *maker) tell(slot string, value float64, u string) {
	v := value
	m.facts = append(m.facts, Fact{Fact: card.Fact{Slot: slot, Value: &v, Unit: u, Row: "drill"}, Told: true})
}

func (m *maker) tellWord(slot, text string) {
	m.facts = append(m.facts, Fact{Fact: card.Fact{Slot: slot, Text: text, Row: "drill"}, Told: true})
}

// crew is how many are aboard; what is under smallBoat holds two.
func (m *maker) crew() int {
	most := m.boat.crew[1]
	if m.long < smallBoat {
		most = min(most, 2)
	}
	return m.c.between(m.boat.crew[0], most, 1)
}

var smallBoat = unit.Feet(12.5)

// The weight of a person aboard and of the gear each brings, for a total that
// is told (typical values of the trade, from memory).
const personPounds, personGear = 185, 30

// load adds what the boat weighs, in total or in its parts.
func (m *maker) load() {
	if !slices.Contains(m.topic.tells, "load") && m.topic.id != Weight {
		return
	}
	dryBand, _ := m.kind.Dry.Value(m.long, 2)
	dry := m.pounds(dryBand.Low.Pounds(), dryBand.Nominal.Pounds(), dryBand.High.Pounds())
	engine, gallons := 0, 0
	if len(m.kind.Engine) > 0 {
		hpBand, _ := m.kind.Engine.Value(m.long, 2)
		engine = outboardPounds(hpBand.Nominal.Horsepower())
		fuelBand, _ := m.kind.Fuel.Value(m.long, 2)
		gallons = max(1, int(math.Round(fuelBand.Nominal.USGallons()*float64(m.c.between(50, 100, 25))/100)))
	}
	gear := m.c.between(int(m.kind.Gear.Low.Pounds()), int(m.kind.Gear.Nominal.Pounds()), 5)
	people := m.crew()
	m.tell("people.count", float64(people), "1")
	if m.topic.id == Weight || levelRows[m.level].parts {
		m.tell("load.dry", unit.Pounds(float64(dry)).Kilograms(), "kg")
		if engine > 0 {
			m.tell("load.engine", unit.Pounds(float64(engine)).Kilograms(), "kg")
			m.tell("fuel.volume", unit.USGallons(float64(gallons)).Litres(), "L")
		}
		m.tell("load.gear", unit.Pounds(float64(gear)).Kilograms(), "kg")
		return
	}
	total := float64(dry+engine+gear+people*(personPounds+personGear)) + 6.1*float64(gallons) + 100 // and the motor with its battery
	step := 50.0
	if total < 800 {
		step = 10
	}
	m.tell("load.total", unit.Pounds(step*math.Round(total/step)).Kilograms(), "kg")
}

// pounds draws a weight nearer to the nominal than to the ends, in round
// figures.
func (m *maker) pounds(low, nominal, high float64) int {
	x := float64(m.c.below(1001)) / 1000
	y := float64(m.c.below(1001)) / 1000
	t := (x + y) / 2 // a triangle over the range
	w := nominal
	if t < 0.5 {
		w = low + (nominal-low)*2*t
	} else {
		w = nominal + (high-nominal)*(2*t-1)
	}
	step := 10.0
	if w < 150 {
		step = 5
	}
	return int(step * math.Round(w/step))
}

// outboardPounds is about what a four-stroke outboard of a horsepower weighs
// (from memory: 60 lb at 5, 110 at 15, 225 at 40, 340 at 100, 530 at 200).
func outboardPounds(hp float64) int {
	pounds := 40 + 4.6*hp
	if hp > 40 {
		pounds = 224 + 1.9*(hp-40)
	}
	return 5 * int(math.Round(pounds/5))
}

// fact adds one fact of the topic, where this boat and water have it.
func (m *maker) fact(slot string) {
	if _, ok := m.find(slot); ok {
		return
	}
	if make, ok := factRows[slot]; ok {
		make(m)
	}
}

// factRows say how each fact is drawn.
var factRows = map[string]func(m *maker){
	"people.count": func(m *maker) { m.tell("people.count", float64(m.crew()), "1") },
	"wind.speed": func(m *maker) {
		m.tell("wind.speed", unit.MilesPerHour(float64(m.c.between(m.water.wind[0], m.water.wind[1], 1))).MetresPerSecond(), "m/s")
	},
	"current.speed": func(m *maker) {
		if m.water.current[1] > 0 {
			m.tell("current.speed", unit.MilesPerHour(float64(m.c.between(m.water.current[0], m.water.current[1], 1))/10).MetresPerSecond(), "m/s")
		}
	},
	"chop.height": func(m *maker) {
		if m.water.chop[1] > 0 {
			m.tell("chop.height", unit.Inches(float64(m.c.between(m.water.chop[0], m.water.chop[1], 2))).Metres(), "m")
		}
	},
	"water.weeds": func(m *maker) {
		if m.c.share(m.water.weeds) {
			m.tellWord("water.weeds", "true")
		}
	},
	"water.kind":  func(m *maker) { m.tellWord("water.kind", m.water.kind) },
	"mount.place": func(m *maker) { m.tellWord("mount.place", m.place()) },
	"mount.height": func(m *maker) {
		table := m.kind.Bow
		if m.placed() == "transom" {
			table = m.kind.Stern
		}
		h, _ := table.Value(m.long, 1)
		m.tell("mount.height", unit.Inches(float64(m.c.between(int(h.Low.Inches()), int(h.High.Inches()), 1))).Metres(), "m")
	},
	"use.style": func(m *maker) { m.tellWord("use.style", pick(&m.c, m.boat.styles)) },
	"use.hours": func(m *maker) { m.tell("use.hours", float64(m.c.between(3, 9, 1)), "h") },
	"wire.run": func(m *maker) {
		share := m.c.between(70, 105, 5)
		if m.placed() != "bow" {
			share = m.c.between(20, 50, 5)
		}
		m.tell("wire.run", unit.Feet(math.Max(3, math.Round(m.long.Feet()*float64(share)/100))).Metres(), "m")
	},
	"motor.thrust": func(m *maker) {
		c := m.motor()
		m.tell("motor.thrust", c.Rating.Newtons(), "N")
		m.tell("motor.voltage", c.Volts.Volts(), "V")
	},
	"battery.chemistry": func(m *maker) { m.tellWord("battery.chemistry", pick(&m.c, []string{"flooded", "agm", "lithium"})) },
	"battery.count":     func(m *maker) { m.tell("battery.count", math.Round(m.motor().Volts.Volts()/12), "1") },
	"battery.capacity":  func(m *maker) { m.tell("battery.capacity", float64(pick(&m.c, []int{80, 90, 100, 105, 110})), "Ah") },
	"charge.hours":      func(m *maker) { m.tell("charge.hours", float64(m.c.between(7, 14, 1)), "h") },
	"want.position-hold": func(m *maker) {
		if m.boat.deck > 50 && m.c.share(35) {
			m.tellWord("want.position-hold", "true")
		}
	},
	"want.sonar-2d": func(m *maker) {
		if m.c.share(50) {
			m.tellWord("want.sonar-2d", "true")
		}
	},
}

// motor is a motor such as is found on a boat of this kind and length: from what
// two pounds per hundred of a rough loaded weight asks for to about twice that.
func (m *maker) motor() typical.MotorClass {
	dry, _ := m.kind.Dry.Value(m.long, 2)
	rough := 0.02 * (1.4*dry.Nominal.Pounds() + 400)
	var fitting []typical.MotorClass
	for _, c := range typical.MotorClasses {
		lb := c.Rating.PoundForce()
		if r := int(math.Round(lb)); r >= m.boat.classes[0] && r <= m.boat.classes[1] && lb >= 0.9*rough && lb <= max(2.2*rough, 41) {
			fitting = append(fitting, c)
		}
	}
	if len(fitting) == 0 { // a light one of its kind: the smallest that is met on it
		for _, c := range typical.MotorClasses {
			if int(math.Round(c.Rating.PoundForce())) >= m.boat.classes[0] {
				return c
			}
		}
		return typical.MotorClasses[0]
	}
	return pick(&m.c, fitting)
}

// place is where the boat takes a motor: a front deck, or none.
func (m *maker) place() string {
	switch {
	case m.boat.hull == "kayak":
		return "kayak"
	case m.boat.deck == 0:
		return "transom"
	case m.c.share(m.boat.deck):
		return "bow"
	}
	return "transom"
}

// placed is where the motor goes: as told, or where the core would put it.
func (m *maker) placed() string {
	if f, ok := m.find("mount.place"); ok {
		return f.Text
	}
	if m.long >= m.kind.BowFrom && m.kind.BowFrom > 0 {
		return "bow"
	}
	return m.kind.Aft
}

// hold takes facts of the topic back until they are asked for.
func (m *maker) hold() {
	var may []int
	for i, f := range m.facts {
		seen := f.Slot == "mount.place" && (m.boat.deck == 0 || m.boat.deck == 100) // the kind of boat tells
		if slices.Contains(m.topic.holds, f.Slot) && !seen {
			may = append(may, i)
		}
	}
	for n := levelRows[m.level].held; n > 0 && len(may) > 0; n-- {
		k := m.c.below(len(may))
		m.facts[may[k]].Told, m.facts[may[k]].Scored = false, true
		may = slices.Delete(may, k, k+1)
	}
}

// wish adds something that cannot be had, where the level asks for one and the
// topic has one that is impossible on this boat.
func (m *maker) wish(s *Scenario) {
	if !m.c.share(levelRows[m.level].wished) {
		return
	}
	var fitting []*wishRow
	sol := solution(s)
	for i := range wishRows {
		w := &wishRows[i]
		if slices.Contains(w.topics, s.Topic) && (w.when == nil || w.when(s)) && (w.holds == nil || w.holds(s, sol)) {
			fitting = append(fitting, w)
		}
	}
	if len(fitting) > 0 {
		s.Wish = pick(&m.c, fitting)
	}
}

// solution solves a scenario for its topic.
func solution(s *Scenario, without ...string) *sheet.Solution {
	return fit.Solve(card.Card{Facts: s.Cards(without...)}, row(s.Topic).solve, unit.US, nil).Sol
}

func feetWords(l unit.Length) string {
	return strconv.FormatFloat(math.Round(l.Feet()*10)/10, 'f', -1, 64)
}
