// Command prepare writes the built-in notes down as the program reads them. Run
// it from the kb folder, as "go generate ./kb" does, when a test says that they
// are stale.
//
// Limits: it writes prepared.txt into the folder it runs in, from the notes built
// into it, and takes no arguments.
package main

import (
	"fmt"
	"os"

	"heronlake.example/ask/kb"
)

func main() {
	text, err := kb.Prepare()
	if err == nil {
		err = os.WriteFile("prepared.txt", []byte(text), 0o644)
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, "prepare:", err)
		os.Exit(1)
	}
}
