package tests

import (
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// Building for an emulator takes minutes, so it must be asked for.
var emulated = flag.Bool("emulated", false, "compare builds for other processors that run through an emulator")

// foreign are builds that may run here beside the machine's own: 32 bits as they
// are, the other architecture through an emulator where one is installed.
var foreign = []struct{ arch, through string }{
	{"386", ""},
	{"arm64", "qemu-aarch64"},
	{"amd64", "qemu-x86_64"},
}

// TestPlatformsAgree asks the same of builds for other processors. A processor
// that multiplies and adds in one step rounds once where others round twice, so
// numbers in JSON are compared to twelve digits, and every word exactly.
func TestPlatformsAgree(t *testing.T) {
	if testing.Short() {
		t.Skip("builds for other processors")
	}
	if runtime.GOOS != "linux" {
		t.Skip("foreign programs run on Linux only")
	}
	input := batchOf(t)
	wantJSON, _ := ask(t, nil, input, "--json", "--batch", "-")
	wantText, _ := ask(t, nil, input, "--batch", "-")
	played := 0
	for _, f := range foreign {
		if f.arch == runtime.GOARCH || f.arch == "386" && runtime.GOARCH != "amd64" {
			continue
		}
		t.Run(f.arch, func(t *testing.T) {
			var through []string
			if f.through != "" {
				if !*emulated {
					t.Skip("-emulated was not said")
				}
				emulator, err := exec.LookPath(f.through)
				if err != nil {
					t.Skipf("%s is not installed", f.through)
				}
				through = []string{emulator}
			}
			file := filepath.Join(scratch, "ask-"+f.arch)
			build := exec.Command("go", "build", "-o", file, "../cmd/ask")
			build.Env = append(os.Environ(), "CGO_ENABLED=0", "GOARCH="+f.arch)
			if out, err := build.CombinedOutput(); err != nil {
				t.Fatalf("%v\n%s", err, out)
			}
			run := func(args ...string) string {
				command := append(append(through, file), args...)
				cmd := exec.Command(command[0], command[1:]...)
				cmd.Stdin = strings.NewReader(input)
				cmd.Env = []string{"HOME=" + t.TempDir(), "PATH=" + os.Getenv("PATH")}
				cmd.Stderr = os.Stderr
				out, err := cmd.Output()
				if err != nil && len(out) == 0 {
					t.Skipf("a program for %s does not run here: %v", f.arch, err)
				}
				return string(out)
			}
			if diff := cmp.Diff(wantText, run("--batch", "-")); diff != "" {
				t.Errorf("pages differ (-here +%s):\n%s", f.arch, diff)
			}
			if diff := cmp.Diff(rounded(t, wantJSON), rounded(t, run("--json", "--batch", "-"))); diff != "" {
				t.Errorf("JSON differs (-here +%s):\n%s", f.arch, diff)
			}
			played++
		})
	}
	t.Logf("%d other processors were compared", played)
}

// batchOf is the questions of the determinism test as a batch.
func batchOf(t *testing.T) string {
	t.Helper()
	var batch strings.Builder
	for _, q := range asked {
		line, err := json.Marshal(map[string]string{"question": q.question, "session": q.session})
		if err != nil {
			t.Fatal(err)
		}
		fmt.Fprintf(&batch, "%s\n", line)
	}
	return batch.String()
}

// rounded writes every number of JSON lines with twelve digits.
func rounded(t *testing.T, lines string) []any {
	t.Helper()
	var round func(any) any
	round = func(v any) any {
		switch v := v.(type) {
		case float64:
			return fmt.Sprintf("%.12g", v)
		case []any:
			for i := range v {
				v[i] = round(v[i])
			}
		case map[string]any:
			for k := range v {
				v[k] = round(v[k])
			}
		}
		return v
	}
	var out []any
	for l := range strings.Lines(lines) {
		var v any
		if err := json.Unmarshal([]byte(l), &v); err != nil {
			t.Fatal(err)
		}
		out = append(out, round(v))
	}
	return out
}
