// Package drill invents customers for a trainee at the counter and marks what
// the trainee makes of them by the same figures that answer a customer.
//
//	drill.go     a drill as a conversation: open, ask, pick, mark, next
//	topics.go    what is drilled, as rows
//	scenario.go  one customer: a value
//	generate.go  the seeded generator; chance.go is its source of numbers
//	waters.go    waters and boats that it draws from
//	voice.go     how customers talk
//	wishes.go    what customers want and cannot have
//	faults.go    motors that do not do what they should, and their readings
//	ask.go       what a line asks the customer for
//	picks.go     what a line picks
//	warn.go      refusals and cautions in it
//	talk.go      the turns between trainee and customer
//	common.go    what any customer knows of boat and water, unscored
//	items.go     how each pick is judged: items_bank.go the batteries and their
//	             charger, items_wire.go wire and breaker, items_kinds.go what no
//	             figure stands for
//	mark.go      the marking: picks, questions, cautions, wishes
//	schedule.go  which topic is due, and at which level
//	written.go   a trainer's own scenarios
//	lesson.go    a lesson: passages, a worked example, exercises
//
// Limits: English; one customer at a time; questions are known by their words,
// so that one put in an odd way gets a blank look and must be put again. What
// counts as right rests on the same estimates as an answer, and the judgement of
// what is still acceptable on common practice, no published source. Nothing here
// reads a clock, a file or chance other than the seed.
package drill

import (
	"fmt"
	"slices"
	"strings"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/fit"
)

// Options is what a drill is made with.
type Options struct {
	Topic   Topic  // "" takes what is due
	Seed    uint64 // with Seeded: the same customers whatever the record
	Seeded  bool
	Start   uint64     // without Seeded: where the walk through the customers begins
	Record  []Result   // how the trainee did before
	Written []Scenario // a trainer's own customers, taken in turn instead of invented ones
	Units   unit.System
}

// Drill is a run of customers with one trainee. Like a reasoner's session it
// answers one line at a time and is not safe for concurrent use.
type Drill struct {
	r    *reasoner.Reasoner
	opts Options

	customer int
	s        Scenario
	h        heard
	session  *reasoner.Session
	full     answer.Answer
	aside    []Fact // told when asked, beside the scenario
	turns    int    // lines of this customer
	state    state
	unscored bool
	marked   answer.Drill
	results  []Result
}

type state int

const (
	talking state = iota
	warning       // all is picked; the customer asks what to watch out for
	closed        // marked
)

// New makes a drill. Its first turn is Open.
func New(r *reasoner.Reasoner, o Options) *Drill {
	if o.Topic != "" {
		var own []Scenario
		for _, s := range o.Written {
			if s.Topic == o.Topic {
				own = append(own, s)
			}
		}
		o.Written = own
	}
	return &Drill{r: r, opts: o}
}

// Results are the customers marked in this drill, in their order.
func (d *Drill) Results() []Result { return d.results }

// Open brings the first customer in.
func (d *Drill) Open() answer.Answer { return d.next("") }

// next brings the next customer in.
func (d *Drill) next(line string) answer.Answer {
	d.customer++
	s, err := d.draw()
	if err != nil {
		a := answer.Answer{Question: line, Steer: "drill", Problems: []answer.Problem{{Kind: "out-of-scope", Text: upper(err.Error()) + "."}}}
		a.Finish()
		return a
	}
	d.s, d.h, d.state, d.unscored, d.marked = s, heard{}, talking, false, answer.Drill{}
	d.aside, d.turns = nil, 0
	d.session, d.full = full(d.r, &d.s)
	if d.opts.Units == unit.Metric {
		d.session.Ask(":units metric")
		d.full = d.session.Take(d.s.Cards(), row(d.s.Topic).solve...)
	}
	return d.reply(line, answer.Drill{Opens: true, Says: d.s.Opening, Wanted: d.wanted(), Next: d.opening()})
}

// opening tells the first time what is to be done; later that is known.
func (d *Drill) opening() string {
	if d.customer > 1 {
		return "done marks it, skip passes, help helps."
	}
	t := "Ask for what is missing, name your picks in plain talk, warn where it is due. done marks it, skip passes, help helps."
	if !d.opts.Seeded && len(d.opts.Record) == 0 && len(d.opts.Written) == 0 {
		t += " Other customers: skip, or begin with --seed N, or with --trainee NAME, which keeps the scores."
	}
	return t
}

// seedStep keeps the customers of one drill from being those of the next. It is a
// prime, so that drills walk through the meetings as seeds do.
const seedStep = 1_000_003

// mostStarts bounds where a walk may begin, so that no seed overflows.
const mostStarts = 1_000_000

// draw finds the customer whose turn it is.
func (d *Drill) draw() (Scenario, error) {
	if n := len(d.opts.Written); n > 0 {
		return d.opts.Written[(d.customer-1)%n], nil
	}
	record := append(slices.Clone(d.opts.Record), d.results...)
	topic, level := d.opts.Topic, 0
	seed := (uint64(len(record)+1)+d.opts.Start%mostStarts)*seedStep + uint64(d.customer)
	switch {
	case d.opts.Seeded:
		seed = d.opts.Seed*seedStep + uint64(d.customer)
		level = classLevels[min(d.customer, len(classLevels))-1]
		if topic == "" {
			topic = classTopic(d.opts.Seed, d.customer)
		}
	case topic == "":
		topic, level = Next(record)
	default:
		level = LevelOf(record, topic)
	}
	return Generate(seed, topic, max(level, 1), d.opts.Units)
}

// reply wraps a turn of the drill.
func (d *Drill) reply(line string, x answer.Drill) answer.Answer {
	x.Topic, x.Title, x.Level = string(d.s.Topic), d.s.Topic.Title(), d.s.Level
	x.Seed, x.Customer, x.Unscored = d.opts.Seed, d.customer, d.unscored
	if len(d.opts.Written) > 0 {
		x.Written = d.s.Title
	}
	a := answer.Answer{Question: line, Steer: "drill", Drill: &x}
	a.Finish()
	return a
}

// wanted lists what is still to be named.
func (d *Drill) wanted() []string {
	m := newMarker(&d.s, &d.h, d.full, d.opts.Units)
	var out []string
	for _, it := range d.s.items() {
		if it.said(m) == "" {
			out = append(out, it.label)
		}
	}
	return out
}

// Ask takes one line of the trainee: a question to the customer, picks, a
// warning, or one of done, skip and next; ":why" shows the working and ":boat"
// what the customer has told.
func (d *Drill) Ask(line string) answer.Answer {
	word, rest := firstWord(line)
	switch word {
	case ":why":
		return d.why(line, rest)
	case ":boat":
		return d.known(line)
	case "skip", "pass", ":skip", "next", ":next":
		if rest == "" || rest == "customer" {
			return d.next(line)
		}
	case "done", ":done", "finished", "ready":
		if rest == "" && d.state != closed {
			return d.close(line)
		}
	}
	if strings.HasPrefix(word, ":") {
		return d.reply(line, answer.Drill{Note: "In a drill there are :why, :boat, :help and :quit; skip passes the customer, done marks the picks, and :fresh ends the drill."})
	}
	if d.state == closed {
		// In class the talk goes on about this boat: "what if the wind is 20?"
		if _, asks := sentences(line); slices.Contains(asks, true) || measured(line) {
			if a := d.session.Ask(line); len(a.Figures) > 0 || len(a.Passages) > 0 || len(a.Choices) > 0 {
				return a
			}
		}
		return d.reply(line, answer.Drill{Note: "This customer is served.", Next: nextWords})
	}
	return d.talk(line)
}

const nextWords = "next brings another customer, :why ITEM shows the working, :fresh ends the drill. Questions about this boat are answered."

func firstWord(line string) (word, rest string) {
	word, rest, _ = strings.Cut(strings.TrimSpace(line), " ")
	return strings.ToLower(strings.TrimRight(word, ".!")), strings.ToLower(strings.Trim(rest, " .!"))
}

// close marks the picks.
func (d *Drill) close(line string) answer.Answer {
	x, passages := mark(d.r, &d.s, &d.h, d.full, d.opts.Units)
	d.state, d.marked = closed, x
	x.Next = nextWords
	if d.unscored {
		x.Note = "The working was shown first, so this customer is not counted."
	} else {
		result := Result{Topic: d.s.Topic, Level: d.s.Level, Seed: d.opts.Seed, Customer: d.customer, Points: x.Points, Most: x.Most, Items: map[string]string{}}
		for _, m := range x.Marks {
			if m.Kind == "item" {
				result.Items[m.ID] = m.Verdict
			}
		}
		d.results = append(d.results, result)
	}
	a := d.reply(line, x)
	a.Headline = headline(x)
	a.Passages = append(a.Passages, passages...)
	if worst := worstMark(x.Marks); worst != nil && len(worst.Cites) > 0 {
		for i := range a.Passages {
			a.Passages[i].Quoted = a.Passages[i].N == worst.Cites[0]
		}
	}
	return a
}

// worstMark is the mark that lost most points, the first of several; nil when
// none lost any.
func worstMark(marks []answer.Marked) *answer.Marked {
	var out *answer.Marked
	for i := range marks {
		if lost := marks[i].Most - marks[i].Points; lost > 0 && (out == nil || lost > out.Most-out.Points) {
			out = &marks[i]
		}
	}
	return out
}

func headline(x answer.Drill) string {
	share := 0.0
	if x.Most > 0 {
		share = x.Points / x.Most
	}
	word := "Go over this one again."
	switch {
	case share >= 0.999:
		word = "Nothing to add."
	case share >= liftsLevel:
		word = "Well served."
	case share >= lowersLevel:
		word = "Served, with gaps."
	}
	return fmt.Sprintf("%s of %s points. %s", points(x.Points), points(x.Most), word)
}

func points(x float64) string { return unit.Number(x, 0) }

// wishLabels are the names of wishes, which are no cells of the sheet.
var wishLabels = map[string]string{"want.position-hold": "wants position hold", "want.sonar-2d": "wants sonar in the motor", "want.sonar-down": "wants down imaging",
	"want.sonar-side": "wants side imaging", "want.remote": "wants a remote", "want.heading-hold": "wants heading hold", "want.track": "wants track following"}

// known lists what the customer has told so far.
func (d *Drill) known(line string) answer.Answer {
	var told []string
	for _, f := range known(&d.s, d.h.asked) {
		label, shown := fit.Describe(f, d.opts.Units)
		if w, ok := wishLabels[f.Slot]; ok {
			label, shown = w, map[string]string{"true": "yes", "false": "no"}[f.Text]
		}
		told = append(told, strings.ToLower(label)+" "+shown)
	}
	return d.reply(line, answer.Drill{Note: "Told so far: " + strings.Join(told, "; ") + ".", Wanted: d.wanted()})
}

// why shows the working behind an item, or the note that teaches it. Before the
// picks are marked it gives the game away, so that the customer does not count.
func (d *Drill) why(line, arg string) answer.Answer {
	if d.state != closed {
		d.unscored = true
	}
	it := d.itemNamed(arg)
	figure := arg
	if it != nil {
		figure = ""
		if it.cell != 0 {
			figure = it.cell.String()
		}
	}
	if d.s.Fault != nil && arg == "" {
		figure = "wire.volts"
	}
	var a answer.Answer
	if figure != "" {
		a = d.session.Ask(":why " + figure)
		a.Question = line
	} else {
		m := newMarker(&d.s, &d.h, d.full, d.opts.Units)
		if p, ok := passageOf(d.r, m.noteOf(it), d.opts.Units); ok {
			p.Quoted, p.N = true, 1
			a = answer.Answer{Question: line, Passages: []answer.Passage{p}}
			if j := it.judge(m); j.want != "" {
				a.Headline = upper(it.label) + ": " + j.want + "; " + j.why + "."
			}
		}
	}
	if d.state != closed {
		a.Reply = strings.TrimSpace(a.Reply + "\nThe working is on the board: this customer does not count any more.")
	}
	x := answer.Drill{Topic: string(d.s.Topic), Title: d.s.Topic.Title(), Level: d.s.Level, Seed: d.opts.Seed, Customer: d.customer, Unscored: d.unscored}
	a.Drill = &x
	a.Finish()
	return a
}

// itemNamed finds the item that words name: the topic's first for none, nil
// when they name no item but perhaps a figure.
func (d *Drill) itemNamed(words string) *itemRow {
	items := d.s.items()
	if words == "" {
		return items[0]
	}
	for _, it := range items {
		if it.id == words || it.label == words || strings.HasPrefix(it.label, words) {
			return it
		}
	}
	return nil
}
