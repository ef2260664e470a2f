package read_test

import (
	"cmp"
	"fmt"

	"heronlake.example/ask/reasoner/read"
)

func ExampleRead() {
	r := read.Read(`18'6" jon, about 1,900 lb, wind 10 to 15 mph, 25 horse`)
	for _, m := range r.Measures {
		fmt.Printf("%2d-%2d %-11s %-6s", m.Start, m.End, m.Said, m.Kind)
		if m.Value != nil {
			fmt.Printf(" %.6g", *m.Value)
		} else {
			fmt.Printf(" %.6g to %.6g", *m.Low, *m.High)
		}
		fmt.Printf(" %s %s\n", m.Unit, cmp.Or(m.As, "-"))
	}
	// Output:
	//  0- 5 18'6"       length 5.6388 m -
	// 11-25 about 1,900 lb mass   861.826 kg -
	// 32-44 10 to 15 mph speed  4.4704 to 6.7056 m/s -
	// 46-54 25 horse    power  18642.5 W horsepower
}
