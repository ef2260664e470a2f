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
)

// To build the standard library for another processor takes a minute or two, so
// all but the quickest must be asked for; .ci/run does.
var emulated = flag.Bool("emulated", false, "compare with builds for other processors that take long, or run through an emulator")

// foreign are builds that may run here beside the machine's own: 32 bits and a
// later edition of the processor as they are, another architecture through an
// emulator where one is installed.
var foreign = []struct {
	name, arch string
	env        []string
	through    string
	slow       bool
}{
	{"386", "386", nil, "", false},
	{"amd64-v3", "amd64", []string{"GOAMD64=v3"}, "", true}, // multiplies and adds in one step
	{"arm64", "arm64", nil, "qemu-aarch64", true},           // so does this one
	{"amd64", "amd64", nil, "qemu-x86_64", true},
}

// TestPlatformsAgree asks the same of builds for other processors, and wants the
// same bytes. A processor that multiplies and adds in one step rounds once where
// others round twice, so that the last bits within differ: none of them may show,
// and none may decide.
func TestPlatformsAgree(t *testing.T) {
	if testing.Short() {
		t.Skip("builds for other processors")
	}
	if runtime.GOOS != "linux" {
		t.Skip("foreign programs run on Linux only")
	}
	input := batchOf(t) + counterTalk(t)
	wantJSON, _ := ask(t, nil, input, "--json", "--batch", "-")
	wantText, _ := ask(t, nil, input, "--plain", "--batch", "-")
	played := 0
	for _, f := range foreign {
		if f.arch == runtime.GOARCH && f.through != "" || f.through == "" && runtime.GOARCH != "amd64" {
			continue
		}
		t.Run(f.name, func(t *testing.T) {
			if f.slow && !*emulated {
				t.Skip("-emulated was not said")
			}
			var through []string
			if f.through != "" {
				emulator, err := exec.LookPath(f.through)
				if err != nil {
					t.Skipf("%s is not installed", f.through)
				}
				through = []string{emulator}
			}
			file := filepath.Join(scratch, "ask-"+f.name)
			build := exec.Command("go", "build", "-buildvcs=false", "-o", file, "../cmd/ask")
			build.Env = append(append(os.Environ(), "CGO_ENABLED=0", "GOARCH="+f.arch), f.env...)
			if out, err := build.CombinedOutput(); err != nil {
				t.Fatalf("%v\n%s", err, out)
			}
			run := func(args ...string) (string, error) {
				command := append(append(through, file), args...)
				cmd := exec.Command(command[0], command[1:]...)
				cmd.Stdin = strings.NewReader(input)
				cmd.Env = []string{"HOME=" + t.TempDir(), "PATH=" + os.Getenv("PATH")}
				cmd.Stderr = os.Stderr
				out, err := cmd.Output()
				return string(out), err
			}
			if _, err := run("--version"); err != nil {
				t.Skipf("a program for %s does not run here: %v", f.name, err)
			}
			for form, want := range map[string]string{"--json": wantJSON, "--plain": wantText} {
				got, err := run(form, "--batch", "-")
				if err != nil {
					t.Error(err)
				}
				if diff := differing(want, got); diff != "" {
					t.Errorf("%s: the answers differ (-here +%s):\n%s", form, f.name, diff)
				}
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

// counterTalk is a batch of some 250 questions that meet every part of a fitting
// with numbers of their own, as round ones as people say them: those lie on the
// steps at which a figure becomes another.
func counterTalk(t *testing.T) string {
	t.Helper()
	boats := []string{"%d foot aluminum vee", "%d ft jon boat", "%d foot pontoon", "%d ft bass boat", "%d-foot canoe", "%d ft bay boat", "%d ft inflatable"}
	loads := []string{"%d00 lb loaded", "%d0 kg loaded", "%d aboard", "weighs %d50 lb empty"}
	waters := []string{"wind %d mph", "current %d km/h", "small pond", "%d inch chop", "windy lake", "salt water, %d knots of wind"}
	gear := []string{"two group 27s", "one 100 Ah lithium", "%d AGM batteries of 80 Ah", "a 55 lb motor at 60%% throttle", "the 35 lb motor on it is weak", "deck %d inches off the water",
		"the motor draws %d amps", "24 volts, wire run %d feet", "6 AWG wire, %d feet of it", "%d hours a day", "a %d amp charger"}
	asks := []string{"what fits?", "how long does it run?", "what shaft?", "what wind does it hold?", "how fast will it go?", "what wire and breaker?",
		"how long to charge?", "what does it all cost?", "how far does it get?"}
	fill := func(phrase string, n int) string {
		if strings.Contains(phrase, "%d") {
			return fmt.Sprintf(phrase, n)
		}
		return strings.ReplaceAll(phrase, "%%", "%")
	}
	var batch strings.Builder
	for i := range 252 {
		said := strings.Join([]string{
			fill(boats[i%len(boats)], 10+i%12),
			fill(loads[i%len(loads)], 2+i%17),
			fill(waters[i%len(waters)], 4+i%15),
			fill(gear[i/2%len(gear)], 2+i%25),
			asks[i%len(asks)],
		}, ", ")
		line, err := json.Marshal(map[string]string{"question": said})
		if err != nil {
			t.Fatal(err)
		}
		fmt.Fprintf(&batch, "%s\n", line)
	}
	return batch.String()
}

// differing shows the first lines in which two outputs differ.
func differing(want, got string) string {
	if want == got {
		return ""
	}
	a, b := strings.Split(want, "\n"), strings.Split(got, "\n")
	for i := range min(len(a), len(b)) {
		if a[i] != b[i] {
			at := 0
			for at < min(len(a[i]), len(b[i])) && a[i][at] == b[i][at] {
				at++
			}
			from := max(0, at-120)
			return fmt.Sprintf("line %d\n-%s\n+%s", i+1, a[i][from:min(len(a[i]), at+120)], b[i][from:min(len(b[i]), at+120)])
		}
	}
	return fmt.Sprintf("%d lines and %d", len(a), len(b))
}
