package tests

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"heronlake.example/ask/kb/stock"
)

// TestColumns holds the README's tables of the shelf's columns against the
// columns that are read; -update writes them anew.
func TestColumns(t *testing.T) {
	const file, begin, end = "../README.md", "-run TestColumns -update -->\n", "<!-- end of columns -->"
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	head, rest, ok1 := strings.Cut(string(data), begin)
	shown, tail, ok2 := strings.Cut(rest, end)
	if !ok1 || !ok2 {
		t.Fatalf("%s has no place for the columns", file)
	}
	var b strings.Builder
	files := stock.Files()
	for _, name := range []string{stock.MotorsFile, stock.BatteriesFile, stock.ChargersFile, stock.PartsFile} {
		fmt.Fprintf(&b, "\n| `%s` | | |\n| --- | --- | --- |\n", name)
		if len(files[name]) == 0 {
			t.Errorf("%s has no columns", name)
		}
		for _, c := range files[name] {
			must := ""
			if c.Required {
				must = "must"
			}
			fmt.Fprintf(&b, "| `%s` | %s | %s |\n", c.Name, must, c.Means)
		}
	}
	b.WriteString("\n")
	if shown == b.String() {
		return
	}
	if !*update {
		t.Errorf("%s does not show the columns as they are read: run go test ./tests -run TestColumns -update", file)
		return
	}
	if err := os.WriteFile(file, []byte(head+begin+b.String()+end+tail), 0o644); err != nil {
		t.Fatal(err)
	}
}
