package drill

import (
	"slices"
	"strings"
	"testing"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner"
)

// What any customer knows is answered in every topic, and none of it moves the
// picks that are right.
func TestCommonTalk(t *testing.T) {
	r := reasoner.New(reasoner.Options{})
	questions := []string{"what are we putting this on?", "how do you fish it?", "how many of you?", "you running salt?", "how windy is it?", "how long are you out?",
		"is there a front deck?", "how far from the batteries to the motor?", "how high is the mount off the water?"}
	answered, asked := 0, 0
	for seed := uint64(1); seed <= 60; seed++ {
		d := New(r, Options{Topic: Topics()[seed%12], Seed: seed, Seeded: true})
		d.Open()
		before := solution(&d.s)
		for _, q := range questions {
			a := d.Ask(q)
			asked++
			if a.Drill.Says == "" || len(a.Drill.Heard) > 0 {
				t.Errorf("seed %d, %s: %q gets %q, noted %v", seed, d.s.Topic, q, a.Drill.Says, a.Drill.Heard)
			}
			if !slices.Contains(voices[d.s.Voice].unknown, a.Drill.Says) {
				answered++
			}
			if again := d.Ask(q).Drill.Says; again != a.Drill.Says && !slices.Contains(voices[d.s.Voice].unknown, again) {
				t.Errorf("seed %d, %s: %q gets %q and then %q", seed, d.s.Topic, q, a.Drill.Says, again)
			}
		}
		with := d.s
		with.Facts = append(slices.Clone(d.s.Facts), d.aside...)
		after := solution(&with)
		for _, it := range d.s.items() {
			if it.cell != 0 && d.s.Fault == nil && differs(it.id, before.Value(it.cell), after.Value(it.cell)) {
				t.Errorf("seed %d: what was told beside the scenario moves the %s", seed, it.label)
			}
		}
	}
	if answered*100 < asked*90 {
		t.Errorf("%d of %d plain questions about boat and day are answered", answered, asked)
	}
}

// Nobody gives away what was not asked.
func TestNothingUnasked(t *testing.T) {
	r := reasoner.New(reasoner.Options{})
	for seed := uint64(1); seed <= 120; seed++ {
		d := New(r, Options{Topic: Topics()[seed%12], Seed: seed, Seeded: true})
		d.Open()
		for _, line := range []string{"anything else I should know?", "help", "nice boat", "hm", "well let me think"} {
			a := d.Ask(line)
			for _, slot := range d.s.Held() {
				f, _ := d.s.Fact(slot)
				for _, text := range []string{a.Drill.Says, a.Drill.Note} {
					if strings.Contains(text, replyTo(&d.s, f, unit.US)) || f.Value != nil && strings.Contains(text, " "+f.Said) && f.Unit != "1" {
						t.Errorf("seed %d: %q gives %s away: %s", seed, line, slot, text)
					}
				}
			}
		}
		if len(d.h.asked) > 0 {
			t.Errorf("seed %d, %s: taken as questions: %v", seed, d.s.Topic, d.h.asked)
		}
	}
}

// A trainee talks like a person.
func TestTalk(t *testing.T) {
	shaft := Written{Topic: "shaft", Says: "18 foot vee, two aboard, it goes on the bow.", Knows: "The bow deck is 24 inches above the water."}
	volts := Written{Topic: "volts", Says: "20 foot bass boat, two aboard, wind 12 mph.", Knows: "3,300 lb loaded."}
	wiring := Written{Topic: "wiring", Says: "55 lb 12 volt motor on a 16 foot vee.", Knows: "16 ft of wire from the battery to the motor."}
	charger := Written{Topic: "charger", Says: "Two 100 Ah batteries in series, flooded.", Knows: "10 hours to charge."}
	weight := Written{Topic: "weight", Says: "16 foot vee, the bare hull weighs 650 lb, the outboard weighs 220 lb, 60 lb of gear.", Knows: "Three aboard. 10 gal of gas."}
	water := Written{Topic: "water", Says: "18 foot bay boat.", Knows: "It's salt water."}
	for _, test := range []struct {
		w     Written
		lines []string
		want  string
	}{
		{shaft, []string{"4 ft shaft"}, "shaft right"},
		{shaft, []string{"122"}, "shaft right"}, // centimetres: no shaft has so many inches
		{shaft, []string{"42 inch", "make that 48"}, "shaft right"},
		{volts, []string{"24 volts", "two"}, "volts right, count right"},
		{volts, []string{"24v", "2"}, "volts right, count right"},
		{wiring, []string{"run it in 4 with a 60"}, "gauge right, breaker right"},
		{wiring, []string{"4 gauge", "60"}, "gauge right, breaker right"},
		{wiring, []string{"25 mm2 cable and a 60 A breaker"}, "gauge right, breaker right"},
		{Written{Topic: "sale", Says: "17 foot bass boat, two aboard, 2,000 lb loaded, casting, wind 10 mph, fresh water, 6 hours on the water, 14 ft of wire from the battery to the motor.", Knows: "The bow deck is 18 inches above the water."},
			[]string{"40 lb 12 volt, 42 inch shaft, bow mount, foot pedal", "one 110 Ah flooded", "6 gauge, 40"}, // 40 is the breaker, not the capacity anew
			"thrust right, volts right, shaft right, mount right, control right, count right, capacity right, gauge right, breaker right"},
		{Written{Topic: "sale", Says: "14 foot vee on a slow river, one aboard, 900 lb loaded, casting, wind 4 mph, fresh water, 7 hours on the water, 6 ft of wire from the battery to the motor.", Knows: "The mount surface is 16 inches above the water."},
			[]string{"30 lb 12 volt, 36 inch shaft, bow mount, cable pedal, one group 31, 10 gauge, 40 amp breaker"}, // the pedal goes with the mount
			"thrust right, volts right, shaft right, mount acceptable, control acceptable, count right, capacity right, gauge right, breaker right"},
		{charger, []string{"10", "two"}, "charger right, outputs right"},
		{weight, []string{"650+220+60+600+60=1590, plus batteries and motor so 1,700 lb"}, "load right"},
		{weight, []string{"650, 220, 60, 600, 60 and 110 make 1,700"}, "load right"},
		{water, []string{"the salt one with zincs"}, "version right, anode right"},
		{water, []string{"the freshwater one, and don't bother with an anode"}, "version under, anode under"},
		{water, []string{"salt or fresh", "saltwater version, aluminum anode"}, "version right, anode right"},
	} {
		x := serve(t, test.w, test.lines...)
		if got := verdicts(x); got != test.want {
			t.Errorf("%q: %s, want %s", test.lines, got, test.want)
		}
	}
}

// A question about the prop is no warning about it, and only what was said counts
// as one.
func TestQuestionsAreNoWarnings(t *testing.T) {
	r := reasoner.New(reasoner.Options{})
	d := New(r, Options{Topic: Faults, Seed: 7, Seeded: true})
	d.Open()
	d.Ask("what does it read at the battery under load?")
	d.Ask("is the prop clear?")
	if len(d.h.picks) > 0 || len(d.h.sentence) > 0 {
		t.Errorf("picks %v, warnings %v", d.h.picks, d.h.sentence)
	}
}

// Every boat carries a motor of its own size.
func TestMotorsFitTheirBoats(t *testing.T) {
	for seed := uint64(1); seed <= 2000; seed++ {
		s, err := Generate(seed, Wiring, 1, unit.US)
		if err != nil {
			t.Fatal(err)
		}
		x, _ := s.number("motor.thrust")
		boat := boatOf(s.word("boat.hull"))
		if lb := unit.Newtons(x).PoundForce(); lb < float64(boat.classes[0])-0.5 || lb > float64(boat.classes[1])+0.5 {
			t.Errorf("seed %d: %.0f lb on a %s", seed, lb, s.Boat)
		}
		if long, _ := s.number("boat.length"); long < unit.Feet(15).Metres() && x > unit.PoundForce(60).Newtons() {
			t.Errorf("seed %d: %.0f lb on a %s", seed, unit.Newtons(x).PoundForce(), s.Boat)
		}
	}
}

// A lesson prints its answers, so that its customers are not those of the drill.
func TestLessonKeepsTheDrill(t *testing.T) {
	r := reasoner.New(reasoner.Options{})
	for _, topic := range Topics() {
		a, err := Lesson(r, topic, 7, unit.US)
		if err != nil {
			t.Fatal(err)
		}
		d := New(r, Options{Topic: topic, Seed: 7, Seeded: true})
		d.Open()
		for range 5 {
			for _, x := range append(a.Lesson.Exercises, a.Lesson.Example) {
				same := strings.Contains(x.Says, d.s.Boat) && d.s.Fault == nil
				for _, f := range d.s.Facts {
					same = same && (!f.Told || strings.Contains(strings.ToLower(x.Says), strings.ToLower(toldAs(&d.s, f.Fact, unit.US))))
				}
				if same && len(d.s.Facts) > 4 {
					t.Errorf("%s: the lesson serves the drill's customer: %s", topic, d.s.Opening)
				}
			}
			d.Ask("next")
		}
	}
}

// Without a seed the customers follow what came before.
func TestStart(t *testing.T) {
	r := reasoner.New(reasoner.Options{})
	met := map[string]bool{}
	for start := uint64(0); start < 20; start++ {
		d := New(r, Options{Topic: Shaft, Start: start})
		met[d.Open().Drill.Says] = true
	}
	if len(met) != 20 {
		t.Errorf("%d customers from 20 beginnings", len(met))
	}
}
