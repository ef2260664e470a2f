// Package stock is the shop's shelf: motors, batteries, chargers and parts read
// from the shop's own CSV files, or the invented shelf of Heron Lake Tackle
// where none is given.
//
//	stock.go     what stands on a shelf
//	columns.go   the columns of each file, one row each: name, unit, meaning
//	headings.go  the names that a shop gives its columns
//	cells.go     numbers, units and kinds as people write them into cells
//	csv.go       reading a file as spreadsheets write it
//	shelf.go     reading a folder; the report of what was wrong
//	demo/*.csv   the invented shelf
//	demo.go      the same as Go, written by go generate
//
// Limits: a shelf states what a maker or the shop prints; nothing is derived
// here. Prices are US dollars. A file of more than MaxRows lines is refused.
package stock

import "heronlake.example/ask/calc/unit"

// Motor is one motor on the shelf.
type Motor struct {
	SKU, Name string
	Thrust    unit.Force   // rated static thrust
	Voltage   unit.Voltage // of the system it runs on
	Shaft     unit.Length  // 0 where the shop does not say
	Mount     string       // bow, transom, kayak
	MountKind string       // clamp, folding-arm, compact-pivot, bracket; "" unknown
	Controls  []string     // tiller, foot-cable, foot-electric, remote
	Speeds    string       // fixed, variable
	Drive     string       // brushed, brushless
	Water     string       // fresh, salt (a salt motor does for fresh water)
	Sonar     []string     // 2d, down, side; none is empty
	Hold      bool         // position hold
	Heading   bool         // heading hold
	Track     bool         // track following
	Current   unit.Current // at full throttle, 0 unknown
	Weight    unit.Mass    // 0 unknown
	Price     unit.Money
	Count     int // how many stand on the shelf, -1 unknown
	Line      int // in its file
}

// Battery is one battery on the shelf.
type Battery struct {
	SKU, Name  string
	Chemistry  string // flooded, agm, gel, lithium
	Voltage    unit.Voltage
	Capacity   unit.Charge // at the 20-hour rate
	Group      string      // BCI group, "" unknown
	Weight     unit.Mass
	Price      unit.Money
	Cycles     int          // to the usable depth, 0 unknown
	Series     bool         // its maker allows series use; lead-acid always
	Protection unit.Current // continuous, for lithium; 0 unknown
	Count      int
	Line       int
}

// Charger is one charger on the shelf.
type Charger struct {
	SKU, Name string
	Outputs   int
	Current   unit.Current // each output
	Voltage   unit.Voltage // each output
	Chemistry []string     // what its profiles suit
	Price     unit.Money
	Count     int
	Line      int
}

// Part is wire, a breaker, a plug, a bracket or the like.
type Part struct {
	SKU, Name string
	Kind      string       // wire, breaker, plug, bracket, lug, box, link
	Gauge     *unit.Gauge  // wire, lugs, links
	Rating    unit.Current // breakers, plugs
	Voltage   unit.Voltage // the most a breaker or plug is rated for
	Length    unit.Length  // of a pack of wire: the price is for this much
	Fits      []string     // a bracket's mounts: bow, transom, kayak
	Groups    []string     // a box's BCI groups; none where it takes any
	Price     unit.Money
	Count     int
	Line      int
}

// Shelf is everything that can be sold.
type Shelf struct {
	Shop      string // whose shelf it is, for the answer
	Demo      bool   // the invented one
	Motors    []Motor
	Batteries []Battery
	Chargers  []Charger
	Parts     []Part
	Extra     map[string][]string // columns kept but not used, by file
	Notes     map[string][]string // how its headings were taken, by file
}
