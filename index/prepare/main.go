// Command prepare makes the search segment of the built-in notes. Run it from
// the index folder, as "go generate ./index" does, when a test says that the
// segment is stale.
package main

import (
	"fmt"
	"os"

	"heronlake.example/ask/index"
	"heronlake.example/ask/kb"
)

func main() {
	if err := prepare(); err != nil {
		fmt.Fprintln(os.Stderr, "prepare:", err)
		os.Exit(1)
	}
}

func prepare() error {
	lib, err := kb.Builtin()
	if err != nil {
		return err
	}
	segment, of, err := index.Prepare(lib)
	if err != nil {
		return err
	}
	if err := os.WriteFile("segment.zap", segment, 0o644); err != nil {
		return err
	}
	return os.WriteFile("segment.sum", []byte(of), 0o644)
}
