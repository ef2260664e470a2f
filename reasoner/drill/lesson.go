package drill

import (
	"fmt"
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner"
	"heronlake.example/ask/reasoner/advise"
	"heronlake.example/ask/reasoner/answer"
)

// A lesson quotes two passages of the note that tells most of its topic and one
// of each of the others, and sets three exercises.
const (
	firstPassages = 2
	exercises     = 3
)

// lessonStart keeps the customers of a lesson from being those of the drill of the
// same seed: a lesson prints its answers.
const lessonStart = 2 * mostStarts

// Lesson builds a lesson on a topic: what the notes say, a worked example with
// the figures of the day, and exercises with their answers. The same seed gives
// the same lesson; another gives other customers.
func Lesson(r *reasoner.Reasoner, topic Topic, seed uint64, sys unit.System) (answer.Answer, error) {
	t := row(topic)
	if t == nil {
		return answer.Answer{}, fmt.Errorf("no such topic: %q; the topics are %s", topic, topicNames())
	}
	a := answer.Answer{Steer: "lesson", Question: "lesson: " + t.title, Headline: "Lesson: " + t.title,
		Lesson: &answer.Lesson{Topic: string(topic), Title: t.title, Seed: seed}}
	for i, note := range t.notes {
		n := 1
		if i == 0 {
			n = firstPassages
		}
		list := r.Passages(note, sys)
		for _, p := range list[:min(n, len(list))] {
			p.N, p.Quoted = len(a.Passages)+1, true
			a.Passages = append(a.Passages, p)
		}
	}
	var met []string
	for i := range uint64(8 * exercises) {
		s, err := Generate((seed+lessonStart)*seedStep+i+1, topic, 0, sys)
		if err != nil {
			return a, err
		}
		if kind := s.word("boat.hull") + s.faultID(); slices.Contains(met, kind) && i < 6*exercises {
			continue // three exercises on the same boat teach little
		} else {
			met = append(met, kind)
		}
		session, all := full(r, &s)
		x := exercise(&s, all, sys)
		if len(met) == 1 {
			a.Lesson.Example, a.Steps = x, board(session, &s)
			continue
		}
		if a.Lesson.Exercises = append(a.Lesson.Exercises, x); len(a.Lesson.Exercises) == exercises {
			break
		}
	}
	a.Notice = advise.Notice
	a.Finish()
	return a, nil
}

func (s *Scenario) faultID() string {
	if s.Fault == nil {
		return ""
	}
	return s.Fault.id
}

// needOf is the need behind a class, whose working tells more than the step to
// the next size.
var needOf = map[string]sheet.ID{"thrust": sheet.ThrustNeed, "shaft": sheet.ShaftNeed}

// exercise is a customer with what fits, each with how it was found.
func exercise(s *Scenario, all answer.Answer, sys unit.System) answer.Exercise {
	x := answer.Exercise{Says: s.Opening}
	if s.Fault != nil { // on paper nobody can be asked: a sound reading, then the one that decides
		x.Says += " What I found: " + s.check(s.Fault.beside) + " " + s.check(s.Fault.decide)
	}
	m := newMarker(s, &heard{}, all, sys)
	for _, it := range s.items() {
		j := judged{want: m.wantOf(it)}
		if it.cell == 0 || it.id == "outputs" {
			j = it.judge(m)
		} else if i := slices.IndexFunc(all.Figures, func(f answer.Figure) bool { return f.ID == it.cell.String() }); i >= 0 && all.Figures[i].How != j.want {
			j.why = all.Figures[i].How
			if st := m.sol.Step(needOf[it.id]); st != nil && st.Row != nil && st.Row.Compute != nil {
				j.why = strings.ToLower(st.ID.Describe().Label) + " " + st.Show(sys) + " = " + m.sol.Working(st, sys) + "; " + j.why
			}
		}
		text := upper(it.label) + ": " + j.want
		if j.why != "" {
			text += " (" + strings.TrimSuffix(strings.TrimPrefix(j.why, "the right corner: "), ".") + ")"
		}
		x.Answers = append(x.Answers, text+".")
	}
	if s.Fault != nil {
		x.Answers = append(x.Answers, "What decides: "+checkOf(s.Fault.decide).label+". "+s.check(s.Fault.decide))
	}
	return x
}

// board is the working behind what a topic is about, as it would stand on the
// board: the steps of its first figure.
func board(session *reasoner.Session, s *Scenario) []answer.Step {
	figure := ""
	for _, it := range s.items() {
		if it.cell != 0 {
			figure = it.cell.String()
			break
		}
	}
	if s.Fault != nil {
		figure = "wire.volts"
	}
	if figure == "" {
		return nil
	}
	return nearest(session.Ask(":why "+figure).Steps, boardSteps)
}

// boardSteps is how many steps go on a board; what lies behind them is told by
// ":why".
const boardSteps = 20

// nearest are the steps nearest to the last one, level by level of what they
// rest on, as long as a level goes in whole; in their order.
func nearest(steps []answer.Step, most int) []answer.Step {
	if len(steps) <= most {
		return steps
	}
	at := map[string]int{}
	for i, st := range steps {
		at[st.ID] = i
	}
	kept := make([]bool, len(steps))
	level := []int{len(steps) - 1}
	for n := 0; len(level) > 0 && n+len(level) <= most; {
		n += len(level)
		var next []int
		for _, i := range level {
			kept[i] = true
		}
		for _, i := range level {
			for _, id := range steps[i].Inputs {
				if k, ok := at[id]; ok && !kept[k] && !slices.Contains(next, k) {
					next = append(next, k)
				}
			}
		}
		level = next
	}
	var out []answer.Step
	for i, st := range steps {
		if kept[i] {
			out = append(out, st)
		}
	}
	return out
}
