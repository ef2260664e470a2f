package tests

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

const module = "heronlake.example/ask"

// layers says who may import whom. A folder is ruled by the row with the longest
// name that it lies in. Each name allows itself and what lies below it.
var layers = []struct {
	folder string
	allows []string
}{
	{"calc", []string{"calc", "gonum.org/v1/gonum"}},
	{"calc/unit", nil},
	{"calc/band", []string{"calc/unit"}},
	{"kb", []string{"kb", "calc", "github.com/yuin/goldmark", "go.yaml.in/yaml/v3", "golang.org/x/text"}},
	{"kb/words", nil},
	{"index", []string{"index", "kb", "github.com/blevesearch"}},
	{"index/prepare", []string{"index", "kb"}}, // run by go generate, no part of the program
	{"reasoner", []string{"reasoner/read", "reasoner/card", "reasoner/answer", "reasoner/meaning",
		"reasoner/fit", "reasoner/advise", "reasoner/match", "calc", "kb"}}, // not drill, which is built on it
	{"reasoner/read", nil},
	{"reasoner/card", nil},
	{"reasoner/answer", []string{"calc/unit"}},
	{"reasoner/meaning", []string{"reasoner/read", "reasoner/card", "kb/words"}},
	{"reasoner/fit", []string{"reasoner/card", "reasoner/answer", "calc"}},
	{"reasoner/advise", []string{"reasoner/card", "reasoner/answer", "calc"}},
	{"reasoner/match", []string{"reasoner/card", "reasoner/answer", "calc", "kb/stock"}},
	{"reasoner/drill", []string{"reasoner", "calc", "kb"}},
	{"cmd/ask", []string{"cmd/ask", "reasoner", "index", "kb", "calc/unit",
		"github.com/peterh/liner", "github.com/spf13", "go.yaml.in/yaml/v3", "golang.org/x/term", "golang.org/x/sys/unix"}},
	{"cmd/ask/text", []string{"reasoner/answer", "calc/unit", "github.com/mattn/go-runewidth"}},
	{"cmd/ask/sheet", []string{"reasoner/answer", "calc/unit", "cmd/ask/text"}},
	{"cmd/ask/store", []string{"reasoner/card", "github.com/rogpeppe/go-internal/lockedfile", "go.yaml.in/yaml/v3", "golang.org/x/text"}},
	{"tests", []string{}},
	{"tests/seeded", []string{"pgregory.net/rapid"}}, // for tests alone
}

// outside are the packages of the standard library through which a program
// meets the terminal, the environment, the disk, the clock or chance; they are
// for the folders named. The two named prepare are run by go generate and are no
// part of the program. No folder may meet a network.
var outside = map[string][]string{
	"os":           {"cmd/ask", "cmd/ask/store", "index/prepare", "kb/prepare"},
	"os/exec":      nil,
	"os/signal":    {"cmd/ask"},
	"os/user":      nil,
	"syscall":      {"cmd/ask"},
	"net":          nil,
	"net/http":     nil,
	"math/rand":    nil,
	"math/rand/v2": nil,
	"unsafe":       nil,
	"C":            nil,
}

// clocked are the functions of package time whose result differs from run to
// run.
var clocked = map[string]bool{"Now": true, "Since": true, "Until": true, "Tick": true, "After": true, "NewTimer": true, "Local": true}

func TestLayers(t *testing.T) {
	checked := 0
	for file, parsed := range sources(t) {
		folder := path.Dir(file)
		checked++
		for _, spec := range parsed.Imports {
			name, err := strconv.Unquote(spec.Path.Value)
			if err != nil {
				t.Fatal(err)
			}
			if reason := forbidden(folder, name); reason != "" {
				t.Errorf("%s imports %s: %s", file, name, reason)
			}
		}
		ast.Inspect(parsed, func(n ast.Node) bool {
			if s, ok := n.(*ast.SelectorExpr); ok {
				if x, ok := s.X.(*ast.Ident); ok && x.Name == "time" && clocked[s.Sel.Name] {
					t.Errorf("%s uses time.%s: an answer must not depend on the clock", file, s.Sel.Name)
				}
			}
			return true
		})
	}
	if checked < 20 {
		t.Errorf("only %d files were looked at: the test is not standing in the repository", checked)
	}
}

// TestForbidden shows that the check refuses what it is there to refuse.
func TestForbidden(t *testing.T) {
	for _, test := range []struct {
		folder, name string
		allowed      bool
	}{
		{"calc/wind", module + "/calc/unit", true},
		{"calc/wind", module + "/kb", false},
		{"calc/unit", module + "/calc/band", false},
		{"calc/wind", "os", false},
		{"calc/wind", "math", true},
		{"reasoner", module + "/index", false},
		{"reasoner", module + "/reasoner/drill", false},
		{"reasoner/drill", module + "/reasoner", true},
		{"reasoner", "github.com/blevesearch/bleve/v2", false},
		{"reasoner/read", module + "/reasoner/card", false},
		{"index", "github.com/blevesearch/bleve/v2/analysis", true},
		{"kb", module + "/index", false},
		{"cmd/ask", module + "/calc/sheet", false},
		{"cmd/ask", "os", true},
		{"cmd/ask/text", "os", false},
		{"cmd/ask", "net/http", false},
		{"cmd/ask", "net/netip", false},
		{"newfolder", "fmt", false},
	} {
		if got := forbidden(test.folder, test.name) == ""; got != test.allowed {
			t.Errorf("%s importing %s: allowed %v, want %v", test.folder, test.name, got, test.allowed)
		}
	}
}

// forbidden says why a folder may not import a package, or "".
func forbidden(folder, name string) string {
	row := -1
	for i, l := range layers {
		if within(folder, l.folder) && (row < 0 || len(l.folder) > len(layers[row].folder)) {
			row = i
		}
	}
	if row < 0 {
		return "its folder has no row in the table of layers"
	}
	if strings.HasPrefix(name, "net/") && name != "net/url" {
		return "no folder may meet a network"
	}
	if folders, ok := outside[name]; ok {
		for _, f := range folders {
			if folder == f {
				return ""
			}
		}
		return "what lies outside the program is for cmd/ask"
	}
	own, ours := strings.CutPrefix(name, module+"/")
	if !ours && !strings.Contains(strings.Split(name, "/")[0], ".") {
		return "" // the standard library
	}
	for _, allowed := range layers[row].allows {
		if within(own, allowed) {
			return ""
		}
	}
	return "against the arrows of the layers"
}

func within(folder, in string) bool { return folder == in || strings.HasPrefix(folder, in+"/") }

// sources parses the project's Go files that are no tests, by their path.
func sources(t *testing.T) map[string]*ast.File {
	t.Helper()
	files := map[string]*ast.File{}
	err := filepath.WalkDir("..", func(file string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		name := d.Name()
		if d.IsDir() && file != ".." && (strings.HasPrefix(name, ".") || name == "testdata" || name == "dist") {
			return filepath.SkipDir
		}
		if d.IsDir() || !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go") {
			return nil
		}
		rel, err := filepath.Rel("..", file)
		if err != nil {
			return err
		}
		parsed, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.SkipObjectResolution)
		files[filepath.ToSlash(rel)] = parsed
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}
