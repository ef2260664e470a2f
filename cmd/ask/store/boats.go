package store

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"unicode"

	"github.com/rogpeppe/go-internal/lockedfile"
	"go.yaml.in/yaml/v3"
	"golang.org/x/text/unicode/norm"

	"heronlake.example/ask/reasoner/card"
)

const (
	boatForm    = "ask.boat/1"
	boatBytes   = 256 << 10 // a boat takes a few kilobytes
	longestName = 60        // characters of a boat's name
	mostBoats   = 5000      // files looked at for a list
)

// Boats are the boats that were kept, one readable file each, in Dir. Names are
// told apart without regard to case. With an empty Dir nothing can be kept.
type Boats struct{ Dir string }

// ErrNoPlace says that there is no folder to keep boats in.
var ErrNoPlace = errors.New("there is no home folder to keep boats in")

// ErrNoBoat says that no boat of that name is kept.
var ErrNoBoat = errors.New("no boat of that name is kept")

// ErrTaken says that another boat is kept under the name already.
var ErrTaken = errors.New("another boat is kept under that name")

// ErrStale says that the boat was kept by someone else since it was opened.
var ErrStale = errors.New("the boat was kept anew by another program since it was opened here")

// A DamagedError says that a file is no boat, and where it was set aside.
type DamagedError struct {
	File  string
	Aside string // "" where it could not be moved
	Cause error
}

func (e *DamagedError) Error() string {
	t := fmt.Sprintf("%s is damaged: %v", e.File, e.Cause)
	if e.Aside != "" {
		t += "; it was set aside as " + filepath.Base(e.Aside)
	}
	return t
}

func (e *DamagedError) Unwrap() error { return e.Cause }

// boatFile is the form on disk: SI units, and the words that each fact was said
// in, so that a person can read it and put it right.
type boatFile struct {
	Form     string     `yaml:"form"`
	Name     string     `yaml:"name"`
	Revision int        `yaml:"revision"`
	Metric   bool       `yaml:"metric,omitempty"`
	Facts    []boatFact `yaml:"facts"`
}

type boatFact struct {
	Slot  string   `yaml:"slot"`
	Value *float64 `yaml:"value,omitempty"`
	Low   *float64 `yaml:"low,omitempty"`
	High  *float64 `yaml:"high,omitempty"`
	Text  string   `yaml:"text,omitempty"`
	Unit  string   `yaml:"unit,omitempty"`
	Said  string   `yaml:"said,omitempty"`
	Row   string   `yaml:"row,omitempty"`
	Wish  bool     `yaml:"wish,omitempty"`
	About bool     `yaml:"about,omitempty"`
	Bare  bool     `yaml:"bare,omitempty"`
}

// Keep writes a boat under a name and returns what it is now kept as, for the
// card. A boat that was opened or kept before is replaced, unless another
// program has kept it since (ErrStale); a name that belongs to another boat is
// refused (ErrTaken).
func (b Boats) Keep(name string, c card.Card) (card.Kept, error) {
	name, err := b.check(name)
	if err != nil {
		return card.Kept{}, err
	}
	if !strings.ContainsFunc(name, func(r rune) bool { return unicode.IsLetter(r) || unicode.IsNumber(r) || unicode.IsSymbol(r) }) {
		return card.Kept{}, errors.New("a boat's name wants a letter or a digit")
	}
	unlock, err := b.lock()
	if err != nil {
		return card.Kept{}, err
	}
	defer unlock()
	next := card.Kept{Name: name, Revision: 1}
	switch old, err := b.load(name); {
	case errors.Is(err, ErrNoBoat): // a name of its own, or forgotten meanwhile
	case err != nil:
		return card.Kept{}, err
	case !sameName(c.Kept.Name, name):
		return card.Kept{}, ErrTaken
	case old.Revision != c.Kept.Revision:
		return card.Kept{}, ErrStale
	default:
		name, next = old.Name, card.Kept{Name: old.Name, Revision: old.Revision + 1}
	}
	file := boatFile{Form: boatForm, Name: name, Revision: next.Revision, Metric: c.Metric}
	for _, f := range c.Facts {
		file.Facts = append(file.Facts, boatFact{f.Slot, f.Value, f.Low, f.High, f.Text, f.Unit, f.Said, f.Row, f.Wish, f.About, f.Bare})
	}
	data, err := yaml.Marshal(file)
	if err != nil {
		return card.Kept{}, err
	}
	if len(data) > boatBytes {
		return card.Kept{}, fmt.Errorf("this boat has %d bytes of facts, and %d are the most that is kept", len(data), boatBytes)
	}
	return next, Replace(b.file(name), data)
}

// Open reads a boat. A file that is no boat is set aside, never deleted, and
// named in a DamagedError.
func (b Boats) Open(name string) (card.Card, error) {
	name, err := b.check(name)
	if err != nil {
		return card.Card{}, err
	}
	unlock, err := b.lock()
	if err != nil {
		return card.Card{}, err
	}
	defer unlock()
	f, err := b.load(name)
	if err != nil {
		return card.Card{}, err
	}
	c := card.Card{Metric: f.Metric, Kept: card.Kept{Name: f.Name, Revision: f.Revision}}
	for _, x := range f.Facts {
		c.Facts = append(c.Facts, card.Fact{Slot: x.Slot, Value: x.Value, Low: x.Low, High: x.High, Text: x.Text, Unit: x.Unit,
			Said: x.Said, Row: x.Row, Wish: x.Wish, About: x.About, Bare: x.Bare})
	}
	return c, nil
}

// Forget removes a boat.
func (b Boats) Forget(name string) error {
	name, err := b.check(name)
	if err != nil {
		return err
	}
	unlock, err := b.lock()
	if err != nil {
		return err
	}
	defer unlock()
	if err := regular(b.file(name)); err != nil {
		return err
	}
	return os.Remove(b.file(name))
}

// List names the boats that are kept, in the order of their names, and the faults
// of those that cannot be read.
func (b Boats) List() (names []string, faults []error, err error) {
	if b.Dir == "" {
		return nil, nil, ErrNoPlace
	}
	entries, err := os.ReadDir(b.Dir)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil, nil
	}
	if err != nil {
		return nil, nil, err
	}
	for i, e := range entries {
		if i == mostBoats {
			faults = append(faults, fmt.Errorf("%s holds more than %d files: the rest was not looked at", b.Dir, mostBoats))
			break
		}
		if e.Name() == lockName || !strings.HasSuffix(e.Name(), ending) {
			continue
		}
		f, err := read(filepath.Join(b.Dir, e.Name()))
		if err != nil {
			faults = append(faults, err)
			continue
		}
		names = append(names, f.Name)
	}
	slices.SortFunc(names, func(x, y string) int { return strings.Compare(fold(x), fold(y)) })
	return names, faults, nil
}

const (
	ending   = ".yaml"
	lockName = "lock"
)

// lock keeps two programs from writing at once. Where the system has no locks,
// the revision alone keeps them apart.
func (b Boats) lock() (unlock func(), err error) {
	if err := os.MkdirAll(b.Dir, 0o700); err != nil {
		return nil, err
	}
	unlock, err = lockedfile.MutexAt(filepath.Join(b.Dir, lockName)).Lock()
	if errors.Is(err, errors.ErrUnsupported) {
		return func() {}, nil
	}
	return unlock, err
}

// load reads the file of a name and sets a damaged one aside.
func (b Boats) load(name string) (boatFile, error) {
	f, err := read(b.file(name))
	var bad *DamagedError
	if errors.As(err, &bad) {
		bad.Aside = setAside(bad.File)
		return f, bad
	}
	if err == nil && !sameName(f.Name, name) {
		return f, fmt.Errorf("%s holds the boat %q: rename the file or the boat", b.file(name), f.Name)
	}
	return f, err
}

// setAside moves a file to the first free name beside it and returns that.
func setAside(file string) string {
	for n := 1; n < 1000; n++ {
		aside := fmt.Sprintf("%s.damaged-%d", file, n)
		if _, err := os.Lstat(aside); errors.Is(err, fs.ErrNotExist) {
			if os.Rename(file, aside) != nil {
				return ""
			}
			return aside
		}
	}
	return ""
}

// read reads a boat's file of bounded size.
func read(path string) (boatFile, error) {
	var f boatFile
	if err := regular(path); err != nil {
		return f, err
	}
	in, err := os.Open(path)
	if err != nil {
		return f, err
	}
	defer in.Close()
	data, err := io.ReadAll(io.LimitReader(in, boatBytes+1))
	if err != nil {
		return f, err
	}
	damaged := func(format string, args ...any) (boatFile, error) {
		return boatFile{}, &DamagedError{File: path, Cause: fmt.Errorf(format, args...)}
	}
	if len(data) > boatBytes {
		return damaged("it has more than %d bytes", boatBytes)
	}
	var form struct {
		Form string `yaml:"form"`
	}
	if err := yaml.Unmarshal(data, &form); err != nil {
		return damaged("%s", strings.Join(strings.Fields(err.Error()), " "))
	}
	switch {
	case form.Form == "":
		return damaged("it names no form")
	case form.Form != boatForm:
		return f, fmt.Errorf("%s is of the form %q, and this program reads %q: use the program that wrote it", path, form.Form, boatForm)
	}
	dec := yaml.NewDecoder(strings.NewReader(string(data)))
	dec.KnownFields(true)
	if err := dec.Decode(&f); err != nil {
		return damaged("%s", strings.Join(strings.Fields(err.Error()), " "))
	}
	if err := checkName(f.Name); err != nil {
		return damaged("%v", err)
	}
	return f, nil
}

// regular refuses a folder, a pipe or a device where a boat should be.
func regular(path string) error {
	info, err := os.Stat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return ErrNoBoat
	case err != nil:
		return err
	case !info.Mode().IsRegular():
		return fmt.Errorf("%s is no regular file", path)
	}
	return nil
}

func (b Boats) check(name string) (string, error) {
	if b.Dir == "" {
		return "", ErrNoPlace
	}
	name = norm.NFC.String(strings.Join(strings.Fields(name), " "))
	return name, checkName(name)
}

func checkName(name string) error {
	switch n := len([]rune(name)); {
	case n == 0:
		return errors.New("a boat wants a name")
	case n > longestName:
		return fmt.Errorf("a boat's name has at most %d characters, and this one has %d", longestName, n)
	}
	if i := strings.IndexFunc(name, func(r rune) bool { return unicode.Is(unicode.C, r) || r == unicode.ReplacementChar }); i >= 0 {
		return errors.New("a boat's name is plain text, without control or direction marks")
	}
	return nil
}

func fold(name string) string        { return strings.ToLower(norm.NFC.String(name)) }
func sameName(a, b string) bool      { return fold(a) == fold(b) }
func (b Boats) file(n string) string { return filepath.Join(b.Dir, fileName(n)) }

// fileName is a name that every system can hold: lower-case letters, digits and
// hyphens. A name that is more than that carries a mark of its own, so that no
// two names share a file.
func fileName(name string) string {
	name = fold(name)
	var slug strings.Builder
	for _, r := range name {
		switch {
		case r >= 'a' && r <= 'z' || r >= '0' && r <= '9':
			slug.WriteRune(r)
		case slug.Len() > 0 && !strings.HasSuffix(slug.String(), "-"):
			slug.WriteByte('-')
		}
	}
	s := strings.Trim(slug.String(), "-")
	if len(s) > 40 {
		s = s[:40]
	}
	if s != name || s == "" || reserved[s] || len(s) == 4 && (strings.HasPrefix(s, "com") || strings.HasPrefix(s, "lpt")) {
		sum := sha256.Sum256([]byte(name))
		s = strings.Trim(s+"-"+hex.EncodeToString(sum[:4]), "-")
		if reserved[s] {
			s = "boat-" + s
		}
	}
	return s + ending
}

// reserved are the names of devices on Windows, whatever their ending.
var reserved = map[string]bool{"con": true, "prn": true, "aux": true, "nul": true}
