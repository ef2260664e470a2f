package stock

import (
	"cmp"
	"errors"
	"fmt"
	"io"
	"io/fs"
)

// The four files of a shelf.
const (
	MotorsFile    = "motors.csv"
	BatteriesFile = "batteries.csv"
	ChargersFile  = "chargers.csv"
	PartsFile     = "parts.csv"
)

// ErrNoMotor says that a shelf holds no motor that could be sold.
var ErrNoMotor = errors.New("the shelf holds no usable motor")

// Read reads a shelf from a folder. Good lines load whatever the bad ones are;
// each bad one is named in the faults. A shelf without a usable motor gives
// ErrNoMotor. The other three files may be missing.
func Read(fsys fs.FS) (*Shelf, []Fault, error) {
	s := &Shelf{Extra: map[string][]string{}, Notes: map[string][]string{}}
	var faults []Fault
	load(fsys, MotorsFile, true, s, &faults, func(data []byte) (x heading, f []Fault) {
		s.Motors, x, f = table(MotorsFile, data, motorColumns(), func(line int) Motor {
			return Motor{Line: line, Count: -1, Speeds: "variable", Drive: "brushed", Water: "fresh"}
		})
		return
	})
	load(fsys, BatteriesFile, false, s, &faults, func(data []byte) (x heading, f []Fault) {
		s.Batteries, x, f = table(BatteriesFile, data, batteryColumns(), func(line int) Battery { return Battery{Line: line, Count: -1} })
		return
	})
	for i := range s.Batteries {
		if s.Batteries[i].Chemistry != "lithium" {
			s.Batteries[i].Series = true
		}
	}
	load(fsys, ChargersFile, false, s, &faults, func(data []byte) (x heading, f []Fault) {
		s.Chargers, x, f = table(ChargersFile, data, chargerColumns(), func(line int) Charger { return Charger{Line: line, Count: -1, Voltage: 12} })
		return
	})
	load(fsys, PartsFile, false, s, &faults, func(data []byte) (x heading, f []Fault) {
		s.Parts, x, f = table(PartsFile, data, partColumns(), func(line int) Part { return Part{Line: line, Count: -1} })
		return
	})
	s.nameless()
	if len(s.Motors) == 0 {
		return s, faults, ErrNoMotor
	}
	return s, faults, nil
}

// nameless calls an item without a name by its number.
func (s *Shelf) nameless() {
	for i := range s.Motors {
		s.Motors[i].Name = cmp.Or(s.Motors[i].Name, s.Motors[i].SKU)
	}
	for i := range s.Batteries {
		s.Batteries[i].Name = cmp.Or(s.Batteries[i].Name, s.Batteries[i].SKU)
	}
	for i := range s.Chargers {
		s.Chargers[i].Name = cmp.Or(s.Chargers[i].Name, s.Chargers[i].SKU)
	}
	for i := range s.Parts {
		s.Parts[i].Name = cmp.Or(s.Parts[i].Name, s.Parts[i].SKU)
	}
}

func load(fsys fs.FS, name string, must bool, s *Shelf, faults *[]Fault, parse func([]byte) (heading, []Fault)) {
	data, err := contents(fsys, name)
	if errors.Is(err, fs.ErrNotExist) && !must {
		return
	}
	if err != nil {
		*faults = append(*faults, Fault{File: name, Text: err.Error()})
		return
	}
	h, f := parse(data)
	*faults = append(*faults, f...)
	if len(h.extra) > 0 {
		s.Extra[name] = h.extra
	}
	if len(h.notes) > 0 {
		s.Notes[name] = h.notes
	}
}

// contents reads a plain file of bounded size: not a folder, a pipe or a device.
func contents(fsys fs.FS, name string) ([]byte, error) {
	info, err := fs.Stat(fsys, name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, fmt.Errorf("is missing: %w", fs.ErrNotExist)
	case err != nil:
		return nil, fmt.Errorf("cannot be read: %w", err)
	case !info.Mode().IsRegular():
		return nil, errors.New("is no plain file")
	case info.Size() > MaxBytes:
		return nil, fmt.Errorf("is larger than %d MB", MaxBytes>>20)
	}
	f, err := fsys.Open(name)
	if err != nil {
		return nil, fmt.Errorf("cannot be read: %w", err)
	}
	defer f.Close()
	return io.ReadAll(io.LimitReader(f, MaxBytes+1))
}

//go:generate go test -run TestDemoIsWhatItsFilesGive -update

// Demo is the invented shelf of Heron Lake Tackle: the files of folder demo as
// Read reads them. It is shared and must not be changed.
func Demo() *Shelf { return &demo }

// Files describes the columns of each file, for the documentation.
func Files() map[string][]Column {
	return map[string][]Column{
		MotorsFile: describe(motorColumns()), BatteriesFile: describe(batteryColumns()),
		ChargersFile: describe(chargerColumns()), PartsFile: describe(partColumns()),
	}
}

func describe[T any](columns []column[T]) []Column {
	var out []Column
	for _, c := range columns {
		out = append(out, Column{c.name, c.means, c.required})
	}
	return out
}
