package main

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"heronlake.example/ask/cmd/ask/store"
	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/drill"
)

func checkTrainee(name string) error {
	if err := store.CheckTrainee(name); err != nil {
		return usage("", "--trainee: %w", err)
	}
	return nil
}

// showScores prints the table of all trainees, or of the one of --trainee, or
// writes them to the file of --csv.
func (d *desk) showScores() error {
	list, faults := d.scores().All()
	for _, err := range faults {
		fmt.Fprintln(d.warn, "ask: scores: left out:", text.Clean(err.Error()))
	}
	if d.set.Trainee != "" {
		list = slices.DeleteFunc(list, func(t store.Trainee) bool {
			return !strings.EqualFold(t.Name, strings.Join(strings.Fields(d.set.Trainee), " "))
		})
	}
	list = slices.DeleteFunc(list, func(t store.Trainee) bool { return len(t.Scores) == 0 })
	if d.set.CSV != "" {
		data, err := scoresCSV(list)
		if err != nil {
			return err
		}
		err = store.Put(d.set.CSV, data, d.set.Force)
		if errors.Is(err, store.ErrExists) {
			return fmt.Errorf("--csv: %s is there already: name another file, or say --force", d.set.CSV)
		}
		if err != nil {
			return fmt.Errorf("--csv: %w", err)
		}
		fmt.Fprintln(d.warn, "ask: scores written:", text.Clean(d.set.CSV))
		return nil
	}
	a := answer.Answer{Steer: "scores", Tables: scoreTables(list, d.set.Trainee != "")}
	if len(list) == 0 {
		a.Reply = "No scores are kept yet: ask --drill --trainee NAME keeps them."
	}
	a.Finish()
	return d.show(a)
}

// share is a part of the points in percent.
func share(points, most float64) string {
	if most <= 0 {
		return "-"
	}
	return strconv.Itoa(int(100*points/most+0.5)) + "%"
}

func sum(list []store.Score) (points, most float64) {
	for _, x := range list {
		points, most = points+x.Points, most+x.Most
	}
	return points, most
}

// trend compares the newer half of the scores with the older.
func trend(list []store.Score) string {
	if len(list) < 4 {
		return "-"
	}
	half := len(list) / 2
	a, b := sum(list[:half])
	c, e := sum(list[half:])
	if b <= 0 || e <= 0 {
		return "-"
	}
	change := int(100*c/e+0.5) - int(100*a/b+0.5)
	return fmt.Sprintf("%+d", change)
}

// ofTopic are the scores of one topic.
func ofTopic(list []store.Score, topic drill.Topic) []store.Score {
	var out []store.Score
	for _, x := range list {
		if x.Topic == string(topic) {
			out = append(out, x)
		}
	}
	return out
}

// scoreTables is a line for each trainee, and for a single one a line for each
// topic as well.
func scoreTables(list []store.Trainee, single bool) []answer.Table {
	if len(list) == 0 {
		return nil
	}
	all := answer.Table{ID: "scores", Title: "Scores", Columns: []string{"Trainee", "Served", "Points", "Last five", "Trend", "Level", "Best at", "Weakest"}}
	for _, t := range list {
		points, most := sum(t.Scores)
		last := t.Scores[max(0, len(t.Scores)-5):]
		lp, lm := sum(last)
		best, weakest := bestAndWeakest(t.Scores)
		level := 0
		for _, x := range last {
			level = max(level, x.Level)
		}
		all.Rows = append(all.Rows, []string{t.Name, strconv.Itoa(len(t.Scores)), share(points, most), share(lp, lm), trend(t.Scores), strconv.Itoa(level), best, weakest})
	}
	tables := []answer.Table{all}
	if single {
		for _, t := range list {
			by := answer.Table{ID: "topics", Title: "By topic", Columns: []string{"Topic", "Served", "Points", "Trend", "Next level"}}
			for _, topic := range drill.Topics() {
				if of := ofTopic(t.Scores, topic); len(of) > 0 {
					points, most := sum(of)
					by.Rows = append(by.Rows, []string{topic.Title(), strconv.Itoa(len(of)), share(points, most), trend(of), strconv.Itoa(drill.LevelOf(results(of), topic))})
				}
			}
			tables = append(tables, by)
		}
	}
	return tables
}

func results(list []store.Score) []drill.Result {
	var out []drill.Result
	for _, x := range list {
		out = append(out, drill.Result{Topic: drill.Topic(x.Topic), Level: x.Level, Points: x.Points, Most: x.Most})
	}
	return out
}

// bestAndWeakest are the topics with the highest and the lowest strength; the
// weakest is "-" where there is only one.
func bestAndWeakest(list []store.Score) (best, weakest string) {
	best, weakest = "-", "-"
	high, low, n := -1.0, 2.0, 0
	for _, topic := range drill.Topics() {
		if len(ofTopic(list, topic)) == 0 {
			continue
		}
		n++
		s := drill.Strength(results(list), topic)
		if s > high {
			best, high = string(topic), s
		}
		if s < low {
			weakest, low = string(topic), s
		}
	}
	if n < 2 {
		weakest = "-"
	}
	return best, weakest
}

// scoresCSV is every customer of every trainee, a line each.
func scoresCSV(list []store.Trainee) ([]byte, error) {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.UseCRLF = true
	w.Write([]string{"trainee", "number", "topic", "level", "seed", "customer", "points", "most", "percent", "right", "acceptable", "wrong"})
	for _, t := range list {
		for i, x := range t.Scores {
			var items [3][]string
			for id, verdict := range x.Items {
				k := 2
				switch verdict {
				case "right":
					k = 0
				case "acceptable":
					k = 1
				}
				items[k] = append(items[k], id)
			}
			row := []string{t.Name, strconv.Itoa(i + 1), x.Topic, strconv.Itoa(x.Level), strconv.FormatUint(x.Seed, 10), strconv.Itoa(x.Customer),
				strconv.FormatFloat(x.Points, 'f', -1, 64), strconv.FormatFloat(x.Most, 'f', -1, 64), strings.TrimSuffix(share(x.Points, x.Most), "%")}
			for _, list := range items {
				slices.Sort(list)
				row = append(row, strings.Join(list, " "))
			}
			for k := range row {
				row[k] = harmless(row[k])
			}
			w.Write(row)
		}
	}
	w.Flush()
	return b.Bytes(), w.Error()
}

// harmless keeps a spreadsheet from taking a field for a formula: one that
// begins as a formula may gets an apostrophe before it.
func harmless(field string) string {
	field = text.Clean(field)
	if field != "" && strings.ContainsRune("=+-@\t\r|", rune(field[0])) {
		return "'" + field
	}
	return field
}
