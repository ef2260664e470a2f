package store

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
)

func TestScoresAreKept(t *testing.T) {
	s := Scores{Dir: filepath.Join(t.TempDir(), "trainees")}
	for i := range 3 {
		if err := s.Add("Ann  Other", Score{Topic: "shaft", Level: i + 1, Points: 7, Most: 15, Items: map[string]string{"shaft": "acceptable"}}); err != nil {
			t.Fatal(err)
		}
	}
	got, err := s.Read("ann other")
	if err != nil || got.Name != "Ann Other" || len(got.Scores) != 3 || got.Scores[2].Level != 3 {
		t.Errorf("%+v, %v", got, err)
	}
	list, faults := s.All()
	if len(list) != 1 || len(faults) != 0 {
		t.Errorf("%v, %v", list, faults)
	}
	none := Scores{}
	if err := none.Add("Ann", Score{}); !errors.Is(err, ErrNoScores) {
		t.Errorf("without a folder: %v", err)
	}
}

func TestTraineesNames(t *testing.T) {
	for _, bad := range []string{"", " ", "-", "../x", "a/b", `a\b`, "=1+1", "@x", "a\x00", "CON:", strings.Repeat("x", longestOwner+1)} {
		if CheckTrainee(bad) == nil {
			t.Errorf("%q is taken for a name", bad)
		}
	}
	for _, good := range []string{"Ann", "Ann O'Ther", "J. R.", "Zoë", "con", "7"} {
		if err := CheckTrainee(good); err != nil {
			t.Error(err)
		}
	}
}

func TestDamagedScoresAreSetAside(t *testing.T) {
	for name, data := range map[string]string{
		"no yaml":      "form: [",
		"other form":   "form: ask.boat/1\nname: Sam\n",
		"more than is": "form: ask.scores/1\nname: Sam\nscores:\n  - {topic: shaft, level: 1, seed: 1, customer: 1, points: 20, most: 10}\n",
		"not a number": "form: ask.scores/1\nname: Sam\nscores:\n  - {topic: shaft, level: 1, seed: 1, customer: 1, points: .nan, most: 10}\n",
		"other field":  "form: ask.scores/1\nname: Sam\nformula: x\n",
		"binary":       "\x00\x01\xff",
		"empty":        "",
	} {
		s := Scores{Dir: t.TempDir()}
		file := filepath.Join(s.Dir, "trainee-sam.yaml")
		if err := os.WriteFile(file, []byte(data), 0o600); err != nil {
			t.Fatal(err)
		}
		var broken *DamagedError
		if _, err := s.Read("Sam"); !errors.As(err, &broken) || broken.Aside == "" {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if kept, err := os.ReadFile(broken.Aside); err != nil || string(kept) != data {
			t.Errorf("%s: what was set aside is %q, %v", name, kept, err)
		}
		if err := s.Add("Sam", Score{Topic: "shaft", Points: 1, Most: 2}); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if got, err := s.Read("Sam"); err != nil || len(got.Scores) != 1 {
			t.Errorf("%s: afterwards %+v, %v", name, got, err)
		}
	}
}

// Two laptops may share a folder: what one class writes the other must not lose.
func TestScoresSharedByMany(t *testing.T) {
	s := Scores{Dir: t.TempDir()}
	var wg sync.WaitGroup
	for i := range 8 {
		wg.Go(func() {
			for j := range 5 {
				if err := s.Add("Sam", Score{Topic: fmt.Sprint("t", i, j), Points: 1, Most: 1}); err != nil {
					t.Error(err)
				}
			}
		})
	}
	wg.Wait()
	if got, err := s.Read("Sam"); err != nil || len(got.Scores) != 40 {
		t.Errorf("%d of 40 scores, %v", len(got.Scores), err)
	}
}
