package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"go.yaml.in/yaml/v3"

	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/reasoner/drill"
)

const (
	largestScenario = 16 << 10
	mostScenarios   = 1000
)

// training opens the doors of the trainer that need no conversation, and makes
// the others ready; done is true where nothing more is to be done.
func (d *desk) training(words []string) (done bool, err error) {
	set := &d.set
	rest := strings.Join(words, " ")
	if set.Drill {
		set.DrillTopic = rest
	}
	switch {
	case set.CSV != "" && !set.Scores:
		return true, usage("ask --scores --csv FILE", "--csv goes with --scores")
	case set.HTML != "" && set.Lesson == "":
		return true, usage("ask --lesson shaft --html FILE", "--html goes with --lesson")
	case set.Drill && set.Batch != "":
		return true, usage(`{"session": "a", "question": ":drill shaft"}`, "--batch does not go with --drill: a line of the batch may say :drill TOPIC")
	case set.Drill && set.Sheet != "":
		return true, usage("", "--drill does not go with --sheet")
	}
	if set.Trainee != "" {
		if err := checkTrainee(set.Trainee); err != nil {
			return true, err
		}
	}
	if set.Scenarios != "" {
		list, faults, err := loadScenarios(set.Scenarios)
		if err != nil {
			return true, err
		}
		for _, f := range faults {
			fmt.Fprintln(d.warn, "ask: scenarios: left out:", text.Clean(filepath.Join(set.Scenarios, f)))
		}
		if len(list) == 0 {
			return true, usage("ask --check-scenarios DIR says what is wrong", "--scenarios: %s: no sound scenario in it", set.Scenarios)
		}
		d.scenarios = list
	}
	switch {
	case set.Scores:
		return true, d.showScores()
	case set.Lesson != "":
		return true, d.showLesson(strings.TrimSpace(set.Lesson + " " + rest))
	}
	return false, nil
}

// loadScenarios reads a trainer's folder: YAML files, and Markdown files whose
// front matter holds the short fields and whose text is what the customer says,
// with what the customer knows below a heading "Knows". A fault names the file.
func loadScenarios(folder string) (list []drill.Scenario, faults []string, err error) {
	root, err := os.OpenRoot(folder)
	if err != nil {
		return nil, nil, usage("", "scenarios: %w", plainly("folder", err))
	}
	defer root.Close()
	entries, err := fs.ReadDir(root.FS(), ".")
	if err != nil {
		return nil, nil, usage("", "scenarios: %s: %w", folder, err)
	}
	titles := map[string]string{}
	for _, e := range entries {
		ending := strings.ToLower(filepath.Ext(e.Name()))
		if e.IsDir() || !slices.Contains([]string{".yaml", ".yml", ".md"}, ending) {
			continue
		}
		if len(list) == mostScenarios {
			faults = append(faults, fmt.Sprintf("%s: %d scenarios are the most that are read", e.Name(), mostScenarios))
			break
		}
		w, err := readScenario(root, e.Name(), ending == ".md")
		if err != nil {
			faults = append(faults, e.Name()+": "+err.Error())
			continue
		}
		s, wrong := w.Scenario()
		if other, twice := titles[strings.ToLower(s.Title)]; twice && s.Title != "" {
			wrong = append(wrong, fmt.Sprintf("title: %q is that of %s too", s.Title, other))
		}
		titles[strings.ToLower(s.Title)] = e.Name()
		for _, t := range wrong {
			faults = append(faults, e.Name()+": "+t)
		}
		if len(wrong) == 0 {
			s.Seed = uint64(len(list) + 1)
			list = append(list, s)
		}
	}
	return list, faults, nil
}

func readScenario(root *os.Root, name string, markdown bool) (w drill.Written, err error) {
	info, err := root.Stat(name)
	if err != nil {
		return w, err
	}
	if !info.Mode().IsRegular() {
		return w, errors.New("no regular file")
	}
	if info.Size() > largestScenario {
		return w, fmt.Errorf("%d bytes, and %d are the most that is read", info.Size(), largestScenario)
	}
	data, err := root.ReadFile(name)
	if err != nil {
		return w, err
	}
	data = bytes.ReplaceAll(bytes.TrimPrefix(data, []byte("\ufeff")), []byte("\r\n"), []byte("\n"))
	body := ""
	if markdown {
		front, rest, ok := bytes.Cut(bytes.TrimPrefix(data, []byte("---\n")), []byte("\n---\n"))
		if !ok || !bytes.HasPrefix(data, []byte("---\n")) {
			return w, errors.New("line 1: no front matter; it begins and ends with a line of three hyphens")
		}
		data, body = append(front, '\n'), string(rest)
	}
	dec := yaml.NewDecoder(bytes.NewReader(data))
	dec.KnownFields(true)
	if err := dec.Decode(&w); err != nil && !errors.Is(err, io.EOF) {
		return w, errors.New(yamlFault(err))
	}
	if markdown {
		if w.Says != "" || w.Knows != "" {
			return w, errors.New("says and knows stand below the front matter, not in it")
		}
		w.Says, w.Knows = halves(body)
	}
	return w, nil
}

// halves parts the text of a Markdown scenario at its heading "Knows". Other
// headings are left out.
func halves(body string) (says, knows string) {
	into := &says
	for line := range strings.Lines(body) {
		heading, ok := strings.CutPrefix(line, "#")
		switch {
		case ok && strings.EqualFold(strings.Trim(heading, "# \n"), "knows"):
			into = &knows
		case ok:
		default:
			*into += strings.TrimPrefix(line, "- ")
		}
	}
	return strings.TrimSpace(says), strings.TrimSpace(knows)
}

// checkScenarios runs the lint over a trainer's folder. Its report goes to
// standard output; faults make it fail.
func checkScenarios(folder string, out io.Writer) error {
	list, faults, err := loadScenarios(folder)
	if err != nil {
		return err
	}
	for _, f := range faults {
		fmt.Fprintln(out, text.Clean(filepath.Join(folder, f)))
	}
	switch {
	case len(faults) > 0:
		return fmt.Errorf("scenarios: %s: not in order", folder)
	case len(list) == 0:
		return fmt.Errorf("scenarios: %s: no .yaml, .yml or .md file in it", folder)
	}
	fmt.Fprintf(out, "%s: %d scenarios, all in order\n", text.Clean(folder), len(list))
	return nil
}
