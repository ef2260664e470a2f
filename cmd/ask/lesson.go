package main

import (
	"errors"
	"fmt"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/cmd/ask/lesson"
	"heronlake.example/ask/cmd/ask/store"
	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/reasoner/drill"
)

// showLesson prints a lesson, or writes it to the file of --html as a page to
// print. --seed takes other customers for its example and exercises.
func (d *desk) showLesson(words string) error {
	topic, ok := drill.ParseTopic(words)
	if !ok {
		return usage("the topics are "+topicList(), "--lesson: no lesson on %q", words)
	}
	sys := unit.US
	if d.set.Units == "metric" {
		sys = unit.Metric
	}
	a, err := drill.Lesson(d.reasoner, topic, d.set.Seed.value, sys)
	if err != nil {
		return fmt.Errorf("--lesson: %w", err)
	}
	if d.set.HTML == "" {
		return d.show(a)
	}
	data, err := lesson.HTML(a)
	if err != nil {
		return fmt.Errorf("--html: %w", err)
	}
	err = store.Put(d.set.HTML, data, d.set.Force)
	if errors.Is(err, store.ErrExists) {
		return fmt.Errorf("--html: %s is there already: name another file, or say --force", d.set.HTML)
	}
	if err != nil {
		return fmt.Errorf("--html: %w", err)
	}
	fmt.Fprintln(d.warn, "ask: lesson written:", text.Clean(d.set.HTML))
	return nil
}
