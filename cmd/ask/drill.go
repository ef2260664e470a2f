package main

import (
	"fmt"
	"hash/fnv"
	"io"
	"path/filepath"
	"slices"
	"strings"

	"heronlake.example/ask/cmd/ask/store"
	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/reasoner"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/drill"
)

// A drill is a way for a conversation to go on: it takes the lines of a session
// until ":fresh", whichever door they come through.
type drilling struct {
	drill *drill.Drill
	prior []drill.Result // what was known of the trainee when it began
	kept  int            // how many of its results are in the record
}

// drillWord answers ":drill" and ":drill TOPIC".
func (d *desk) drillWord(s *reasoner.Session, line, topic string) answer.Answer {
	opts := drill.Options{Units: s.Units(), Seed: d.set.Seed.value, Seeded: d.set.Seed.set, Written: d.scenarios}
	if topic != "" {
		t, ok := drill.ParseTopic(topic)
		if !ok {
			return refusedDrill(line, topic, "There is no drill on that. The topics are "+topicList()+".")
		}
		opts.Topic = t
		if len(d.scenarios) > 0 && !slices.ContainsFunc(d.scenarios, func(s drill.Scenario) bool { return s.Topic == t }) {
			return refusedDrill(line, topic, "No scenario of that topic is in the folder of --scenarios.")
		}
	}
	opts.Record = d.record(s)
	if d.set.Trainee == "" && !opts.Seeded {
		opts.Start = d.start()
	}
	run := &drilling{drill: drill.New(d.reasoner, opts), prior: opts.Record}
	a := run.drill.Open()
	a.Question = line
	if len(a.Problems) == 0 {
		s.Aside = run
	}
	return a
}

func refusedDrill(line, said, why string) answer.Answer {
	a := answer.Answer{Question: line, Steer: "drill", Problems: []answer.Problem{{Kind: "ambiguous", Said: said, Text: why}}}
	a.Finish()
	return a
}

func topicList() string {
	var names []string
	for _, t := range drill.Topics() {
		names = append(names, string(t))
	}
	return strings.Join(names, ", ")
}

// start is where the customers of a drill begin for which neither a seed nor a
// trainee is named. It follows what was typed at the prompt before, so that a
// drill is not the one of yesterday, and needs neither clock nor chance.
func (d *desk) start() uint64 {
	h := fnv.New64a()
	for _, line := range (store.History{Dir: d.set.folders().state()}).Read() {
		io.WriteString(h, line+"\n")
	}
	return h.Sum64() % 1000
}

// record is what is known of the trainee: the file under --trainee, else what
// this conversation has seen.
func (d *desk) record(s *reasoner.Session) []drill.Result {
	if d.set.Trainee == "" {
		if run, ok := s.Aside.(*drilling); ok {
			return append(slices.Clone(run.prior), run.drill.Results()...)
		}
		return nil
	}
	t, err := d.scores().Read(d.set.Trainee)
	if err != nil {
		fmt.Fprintln(d.warn, "ask: scores:", text.Clean(err.Error()))
	}
	var out []drill.Result
	for _, x := range t.Scores {
		out = append(out, drill.Result{Topic: drill.Topic(x.Topic), Level: x.Level, Seed: x.Seed, Customer: x.Customer, Points: x.Points, Most: x.Most, Items: x.Items})
	}
	return out
}

// drillTurn gives a line to the drill that goes on in a session; ok is false
// where none does, or the line is for the door.
func (d *desk) drillTurn(s *reasoner.Session, line string) (a answer.Answer, ok bool) {
	run, ok := s.Aside.(*drilling)
	if !ok {
		return a, false
	}
	if word, _, ok := doorWord(line); ok {
		if word == "fresh" {
			s.Aside = nil
			return steered(line, "fresh", "The drill is over. Describe a boat, or say :drill for another."), true
		}
		for _, w := range doorWords {
			if w.word == word {
				return a, false
			}
		}
	}
	a = run.drill.Ask(line)
	d.keepScores(run)
	return a, true
}

// keepScores puts what was marked since into the trainee's record. A record that
// cannot be written is no reason to stop the class; it is said once.
func (d *desk) keepScores(run *drilling) {
	results := run.drill.Results()
	if d.set.Trainee == "" || run.kept == len(results) {
		return
	}
	var list []store.Score
	for _, r := range results[run.kept:] {
		list = append(list, store.Score{Topic: string(r.Topic), Level: r.Level, Seed: r.Seed, Customer: r.Customer, Points: r.Points, Most: r.Most, Items: r.Items})
	}
	run.kept = len(results)
	if err := d.scores().Add(d.set.Trainee, list...); err != nil {
		fmt.Fprintln(d.warn, "ask: scores are not kept:", text.Clean(err.Error()))
	}
}

// scores are the records of this user's trainees.
func (d *desk) scores() store.Scores {
	if dir := d.set.folders().data(); dir != "" {
		return store.Scores{Dir: filepath.Join(dir, "trainees")}
	}
	return store.Scores{}
}

// beginDrill opens the drill of --drill in a new conversation and shows its
// first customer.
func (d *desk) beginDrill(s *reasoner.Session) error {
	if !d.set.Drill {
		return nil
	}
	a := d.drillWord(s, strings.TrimSpace(":drill "+d.set.DrillTopic), d.set.DrillTopic)
	if len(a.Problems) > 0 {
		return usage("the topics are "+topicList(), "--drill: %s", strings.TrimSuffix(a.Problems[0].Text, "."))
	}
	if err := d.show(a); err != nil {
		return err
	}
	if !d.set.JSON {
		fmt.Fprintln(d.out)
	}
	return d.out.Flush()
}
