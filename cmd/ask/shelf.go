package main

import (
	"fmt"
	"io"
	"os"
	"path/filepath"

	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/kb/stock"
)

// The names under which the invented shelf, or none at all, can be asked for.
const (
	demoShelf = "demo"
	noShelf   = "none"
)

// openShelf reads the shop's shelf: a folder of its own; the invented one, which
// says that it is invented, for "demo" and where no folder is named; none for
// "none". Lines of a
// shop's own that are not sound are named and left out.
func openShelf(folder string, warn io.Writer) (func() *stock.Shelf, error) {
	switch folder {
	case noShelf:
		return nil, nil
	case "", demoShelf:
		return stock.Demo, nil
	}
	shelf, faults, err := readShelf(folder)
	for _, f := range faults {
		fmt.Fprintln(warn, "ask: stock: left out:", text.Clean(filepath.Join(folder, f.String())))
	}
	if err != nil {
		return nil, usage("ask --check-stock "+folder+" tells all that is wrong with it", "stock: %s: %w", folder, err)
	}
	return func() *stock.Shelf { return shelf }, nil
}

// readShelf reads a folder. Links that lead out of it are not followed.
func readShelf(folder string) (*stock.Shelf, []stock.Fault, error) {
	root, err := os.OpenRoot(folder)
	if err != nil {
		return nil, nil, plainly("folder", err)
	}
	defer root.Close()
	shelf, faults, err := stock.Read(root.FS())
	if shelf != nil && shelf.Shop == "" {
		shelf.Shop = filepath.Base(filepath.Clean(folder))
		if abs, err := filepath.Abs(folder); err == nil {
			shelf.Shop = filepath.Base(abs)
		}
	}
	return shelf, faults, err
}

// checkStock reports on a shelf: each fault with its place, then what is there.
// Faults make it fail.
func checkStock(folder string, out io.Writer) error {
	shelf, faults, err := readShelf(folder)
	if shelf == nil {
		return usage("", "--check-stock: %w", err)
	}
	for _, f := range faults {
		fmt.Fprintln(out, text.Clean(filepath.Join(folder, f.String())))
	}
	for _, file := range []string{stock.MotorsFile, stock.BatteriesFile, stock.ChargersFile, stock.PartsFile} {
		for _, x := range shelf.Notes[file] {
			fmt.Fprintln(out, text.Clean(filepath.Join(folder, file)+": "+x))
		}
		for _, x := range shelf.Extra[file] {
			fmt.Fprintln(out, text.Clean(fmt.Sprintf("%s: column %q is not used", filepath.Join(folder, file), x)))
		}
	}
	fmt.Fprintf(out, "%s: usable: %d motors, %d batteries, %d chargers, %d parts\n", text.Clean(folder),
		len(shelf.Motors), len(shelf.Batteries), len(shelf.Chargers), len(shelf.Parts))
	switch {
	case err != nil:
		return fmt.Errorf("stock: %s: %w", folder, err)
	case len(faults) > 0:
		return fmt.Errorf("stock: %s: not in order", folder)
	}
	return nil
}
