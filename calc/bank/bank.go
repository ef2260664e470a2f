// Package bank works out what a battery bank holds, how long it lasts and how
// large it must be.
//
//	peukert.go      hours from a bank, a bank from hours, duty profiles
//	reserve.go      ampere hours from reserve minutes
//	temperature.go  capacity in the cold
//	layout.go       series and parallel: volts, ampere hours, energy
//	group.go        case sizes, and what they hold
//	rest.go         lead-acid at rest: state of charge from volts
//	protection.go   a lithium battery's own protection against the motor
//	holddown.go     what a battery's fastening must stand
//
// Limits: Peukert's law is a fit to discharges at a steady current between
// about a twentieth and one times the rated capacity an hour; below the rated
// current it promises more than the battery holds, so that the charge is capped
// there. Its exponent varies between batteries of one kind by more than the
// temperature usually does. Cold is known from -3.9 C (lithium: -10 C) up; a little
// below the figures are carried on with a word, and colder none is given. Pulsed loads recover a little and are not credited.
// A lithium iron phosphate battery is treated by the same law with an exponent
// near one; its own protection may switch it off earlier.
package bank

// Chemistry is the kind of a deep-cycle battery.
type Chemistry int

const (
	Flooded Chemistry = iota // lead, with acid to top up
	AGM                      // lead, its acid in glass mats
	Gel                      // lead, its acid in a gel
	Lithium                  // lithium iron phosphate
)

var chemistryWords = [...]string{Flooded: "flooded", AGM: "agm", Gel: "gel", Lithium: "lithium"}

func (c Chemistry) String() string {
	if c < 0 || int(c) >= len(chemistryWords) {
		return "unknown chemistry"
	}
	return chemistryWords[c]
}

// ChemistryOf finds a chemistry by its word: flooded, agm, gel or lithium.
func ChemistryOf(word string) (Chemistry, bool) {
	for c, w := range chemistryWords {
		if w == word {
			return Chemistry(c), true
		}
	}
	return Flooded, false
}

// Lead reports whether the plates are lead.
func (c Chemistry) Lead() bool { return c != Lithium }
