package store

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"unicode"

	"github.com/rogpeppe/go-internal/lockedfile"
	"go.yaml.in/yaml/v3"
)

const (
	scoreForm    = "ask.scores/1"
	scoreBytes   = 4 << 20 // of one trainee's file
	longestOwner = 40      // characters of a trainee's name
	mostScores   = 5000    // customers kept for one trainee; the oldest go first
	mostTrainees = 2000    // files looked at for a table
)

// Scores are the records of the trainees, one readable file each, in Dir. With
// an empty Dir nothing can be kept.
type Scores struct{ Dir string }

// A Score is how one customer of a drill went.
type Score struct {
	Topic    string            `yaml:"topic"`
	Level    int               `yaml:"level"`
	Seed     uint64            `yaml:"seed"`
	Customer int               `yaml:"customer"`
	Points   float64           `yaml:"points"`
	Most     float64           `yaml:"most"`
	Items    map[string]string `yaml:"items,omitempty"` // item to verdict
}

// A Trainee is a name with its scores, the oldest first.
type Trainee struct {
	Form   string  `yaml:"form"`
	Name   string  `yaml:"name"`
	Scores []Score `yaml:"scores"`
}

// ErrNoScores says that there is no folder to keep scores in.
var ErrNoScores = errors.New("there is no home folder to keep scores in")

// CheckTrainee refuses a name that cannot be kept: it takes letters, digits,
// spaces, hyphens, points and apostrophes, at most 40 characters.
func CheckTrainee(name string) error {
	_, err := traineeFile(name)
	return err
}

// traineeFile is the file's name for a trainee's: no name leads out of the
// folder, and none is a device of some system.
func traineeFile(name string) (string, error) {
	var b strings.Builder
	n := 0
	for _, r := range strings.ToLower(strings.Join(strings.Fields(name), " ")) {
		n++
		switch {
		case unicode.IsLetter(r), unicode.IsDigit(r):
			b.WriteRune(r)
		case r == ' ', r == '-', r == '.', r == '\'':
			b.WriteByte('-')
		default:
			return "", fmt.Errorf("%q holds %q: a trainee's name takes letters, digits, spaces, hyphens, points and apostrophes", name, r)
		}
	}
	if strings.Trim(b.String(), "-") == "" {
		return "", errors.New("a trainee's name wants a letter or a digit")
	}
	if n > longestOwner {
		return "", fmt.Errorf("%q: %d characters are the most that a trainee's name takes", name, longestOwner)
	}
	return "trainee-" + b.String() + ".yaml", nil
}

// Read gives a trainee's record, an empty one for a name that has none yet. A
// file that is no record is set aside, never deleted, and named in a
// DamagedError beside the empty record.
func (s Scores) Read(name string) (Trainee, error) {
	t := Trainee{Form: scoreForm, Name: strings.Join(strings.Fields(name), " ")}
	file, err := traineeFile(name)
	if err != nil || s.Dir == "" {
		return t, err
	}
	got, err := readTrainee(filepath.Join(s.Dir, file))
	switch {
	case errors.Is(err, os.ErrNotExist):
		return t, nil
	case err != nil:
		return t, err
	}
	return got, nil
}

func readTrainee(path string) (Trainee, error) {
	info, err := os.Stat(path)
	if err != nil {
		return Trainee{}, err
	}
	damaged := func(cause error) (Trainee, error) {
		d := &DamagedError{File: path, Cause: cause}
		for n := 1; n < 100; n++ {
			aside := fmt.Sprintf("%s.damaged-%d", path, n)
			if _, err := os.Lstat(aside); errors.Is(err, os.ErrNotExist) {
				if os.Rename(path, aside) == nil {
					d.Aside = aside
				}
				break
			}
		}
		return Trainee{}, d
	}
	if !info.Mode().IsRegular() {
		return Trainee{}, fmt.Errorf("%s is no regular file", path)
	}
	if info.Size() > scoreBytes {
		return damaged(fmt.Errorf("%d bytes, and %d are the most that is read", info.Size(), scoreBytes))
	}
	data, err := os.ReadFile(path)
	if err != nil {
		return Trainee{}, err
	}
	var t Trainee
	dec := yaml.NewDecoder(bytes.NewReader(data))
	dec.KnownFields(true)
	if err := dec.Decode(&t); err != nil {
		return damaged(errors.New(strings.Join(strings.Fields(err.Error()), " ")))
	}
	if t.Form != scoreForm {
		return damaged(fmt.Errorf("form %q, wanted %q", t.Form, scoreForm))
	}
	for i, x := range t.Scores {
		if !(x.Points >= 0 && x.Points <= x.Most && x.Most < 1e6) || x.Level < 0 || x.Level > 99 {
			return damaged(fmt.Errorf("score %d: %v of %v points at level %d", i+1, x.Points, x.Most, x.Level))
		}
	}
	return t, nil
}

// Add puts scores behind a trainee's record. Several programs may do so at once:
// each adds to what the others wrote.
func (s Scores) Add(name string, scores ...Score) error {
	if s.Dir == "" {
		return ErrNoScores
	}
	file, err := traineeFile(name)
	if err != nil {
		return err
	}
	if err := os.MkdirAll(s.Dir, 0o700); err != nil {
		return err
	}
	unlock, err := lockedfile.MutexAt(filepath.Join(s.Dir, ".lock")).Lock()
	if err == nil {
		defer unlock()
	} else if !errors.Is(err, errors.ErrUnsupported) {
		return err
	}
	t, err := s.Read(name)
	var broken *DamagedError
	if err != nil && (!errors.As(err, &broken) || broken.Aside == "") {
		return err // what cannot be read is not overwritten
	}
	t.Scores = append(t.Scores, scores...)
	t.Scores = t.Scores[max(0, len(t.Scores)-mostScores):]
	data, err := yaml.Marshal(t)
	if err != nil {
		return err
	}
	return Replace(filepath.Join(s.Dir, file), data)
}

// All gives the records of all trainees, in the order of their files' names, and
// what could not be read.
func (s Scores) All() (list []Trainee, faults []error) {
	if s.Dir == "" {
		return nil, nil
	}
	entries, err := os.ReadDir(s.Dir)
	if err != nil {
		if errors.Is(err, os.ErrNotExist) {
			return nil, nil
		}
		return nil, []error{err}
	}
	slices.SortFunc(entries, func(a, b os.DirEntry) int { return strings.Compare(a.Name(), b.Name()) })
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), "trainee-") || filepath.Ext(e.Name()) != ".yaml" {
			continue
		}
		if len(list) == mostTrainees {
			faults = append(faults, fmt.Errorf("%s: only the first %d trainees are shown", s.Dir, mostTrainees))
			break
		}
		t, err := readTrainee(filepath.Join(s.Dir, e.Name()))
		if err != nil {
			faults = append(faults, err)
			continue
		}
		list = append(list, t)
	}
	return list, faults
}
