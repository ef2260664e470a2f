package sheet

import "sync"

// StandardBook is the book of all rows of this program.
var StandardBook = sync.OnceValue(func() *Book {
	b, err := NewBook(loadRows, hullRows, shaftRows, windRows, thrustRows, motorRows, bankRows, wireRows, chargeRows)
	if err != nil {
		panic("sheet: " + err.Error()) // a fault of the program, found by its first test
	}
	return b
})
