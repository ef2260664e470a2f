// Package seeded makes property tests draw the same cases on every run, so that
// a change is judged by what it changes and not by luck. A test file imports it
// for its effect. To look further afield, give another seed and more cases:
//
//	go test ./calc/sheet -rapid.seed=7 -rapid.checks=30000
package seeded

import (
	"flag"

	_ "pgregory.net/rapid" // registers the flag
)

func init() {
	if err := flag.Set("rapid.seed", "20231"); err != nil {
		panic(err) // the library has renamed its flag
	}
}
