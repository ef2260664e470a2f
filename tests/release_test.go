package tests

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
)

// TestReleaseIsReproducible builds the program as .ci/release does, here and in
// a copy of the repository that stands elsewhere, and compares.
func TestReleaseIsReproducible(t *testing.T) {
	if testing.Short() {
		t.Skip("builds the program twice")
	}
	root, err := filepath.Abs("..")
	if err != nil {
		t.Fatal(err)
	}
	elsewhere := filepath.Join(t.TempDir(), "another", "place")
	if err := copyModule(root, elsewhere); err != nil {
		t.Fatal(err)
	}
	build := func(dir string) []byte {
		file := filepath.Join(t.TempDir(), "ask")
		cmd := exec.Command("go", "build", "-trimpath", "-buildvcs=false", "-ldflags", "-s -w -X main.release=v0.0.0", "-o", file, "./cmd/ask")
		cmd.Dir, cmd.Env = dir, append(os.Environ(), "CGO_ENABLED=0")
		if out, err := cmd.CombinedOutput(); err != nil {
			t.Fatalf("%v\n%s", err, out)
		}
		if out, err := exec.Command(file, "--version").CombinedOutput(); err != nil || string(out) != "ask v0.0.0\n" {
			t.Errorf("--version of a release: %v, %q", err, out)
		}
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		return data
	}
	here, there := build(root), build(elsewhere)
	if !bytes.Equal(here, there) {
		t.Errorf("two builds differ: %d and %d bytes", len(here), len(there))
	}
	if bytes.Contains(here, []byte(root)) {
		t.Errorf("the program holds the path %s of its source", root)
	}
}

// copyModule copies what the program is built from.
func copyModule(from, to string) error {
	if err := os.MkdirAll(to, 0o755); err != nil {
		return err
	}
	for _, name := range []string{"go.mod", "go.sum"} {
		data, err := os.ReadFile(filepath.Join(from, name))
		if err == nil {
			err = os.WriteFile(filepath.Join(to, name), data, 0o644)
		}
		if err != nil {
			return err
		}
	}
	for _, folder := range []string{"calc", "cmd", "index", "kb", "reasoner"} {
		if err := os.CopyFS(filepath.Join(to, folder), os.DirFS(filepath.Join(from, folder))); err != nil {
			return err
		}
	}
	return nil
}

// TestBillOfMaterials holds the bill against the modules that the program says
// it was built from, and every licence must be known.
func TestBillOfMaterials(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("the program there is linked from a module more")
	}
	cmd := exec.Command("go", "run", ".ci/bill.go", "sbom", "v0.0.0")
	cmd.Dir = ".."
	out, err := cmd.Output()
	if err != nil {
		t.Fatal(err)
	}
	var bill struct {
		BOMFormat  string
		Components []struct {
			Name, Version string
			Licenses      []struct{ License struct{ ID string } }
		}
	}
	if err := json.Unmarshal(out, &bill); err != nil || bill.BOMFormat != "CycloneDX" {
		t.Fatalf("no bill: %v, %q", err, bill.BOMFormat)
	}
	listed := map[string]string{}
	for _, c := range bill.Components {
		listed[c.Name] = c.Version
		if len(c.Licenses) != 1 || c.Licenses[0].License.ID == "" {
			t.Errorf("%s has no licence", c.Name)
		}
	}
	file, err := program()
	if err != nil {
		t.Fatal(err)
	}
	info, err := exec.Command("go", "version", "-m", file).Output()
	if err != nil {
		t.Fatal(err)
	}
	linked := 0
	for l := range strings.Lines(string(info)) {
		if f := strings.Fields(l); len(f) >= 3 && f[0] == "dep" {
			linked++
			if listed[f[1]] != f[2] {
				t.Errorf("the program is linked from %s %s, the bill lists %q", f[1], f[2], listed[f[1]])
			}
		}
	}
	if linked < 10 {
		t.Errorf("only %d modules were compared", linked)
	}
}
