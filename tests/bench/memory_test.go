//go:build linux || darwin

package bench

import (
	"bufio"
	"encoding/json"
	"flag"
	"io"
	"os"
	"os/exec"
	"runtime"
	"strconv"
	"syscall"
	"testing"
)

// A quarter of the lines must still fill the conversations that are remembered
// and let the collector find its pace.
var lines = flag.Int("lines", 2600, "how many questions the long batch asks")

// TestBatchTakesConstantMemory asks a short batch and one four times as long,
// each line in a conversation of its own, and compares the most memory that the
// program held.
func TestBatchTakesConstantMemory(t *testing.T) {
	if testing.Short() {
		t.Skip("a long batch")
	}
	ask := build(t, t.TempDir(), "../../cmd/ask")
	short, long := batchPeak(t, ask, *lines/4), batchPeak(t, ask, *lines)
	t.Logf("%d questions: %d KiB; %d questions: %d KiB", *lines/4, short, *lines, long)
	// The 256 conversations remembered fill up early in both; the rest is the
	// collector's own play.
	if long > short+short/3+8<<10 {
		t.Errorf("memory grows with the batch: %d KiB for %d questions, %d KiB for %d", short, *lines/4, long, *lines)
	}
}

// batchPeak is the peak resident memory of a batch in KiB.
func batchPeak(t *testing.T, ask string, n int) int64 {
	t.Helper()
	cmd := exec.Command(ask, "--json", "--batch", "-")
	home := t.TempDir()
	cmd.Env = append(os.Environ(), "HOME="+home, "XDG_CONFIG_HOME="+home)
	in, err := cmd.StdinPipe()
	if err != nil {
		t.Fatal(err)
	}
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	go func() {
		defer in.Close()
		w := bufio.NewWriter(in)
		defer w.Flush()
		for i := range n {
			line, _ := json.Marshal(map[string]string{"question": questions[i%len(questions)], "session": "boat " + strconv.Itoa(i)})
			w.Write(append(line, '\n'))
		}
	}()
	answers := 0
	r := bufio.NewReader(out)
	for {
		_, err := r.ReadSlice('\n')
		if err == nil {
			answers++
		} else if err == io.EOF {
			break
		} else if err != bufio.ErrBufferFull {
			t.Fatal(err)
		}
	}
	if err := cmd.Wait(); err != nil || answers != n {
		t.Fatalf("%d answers to %d questions, %v", answers, n, err)
	}
	peak := cmd.ProcessState.SysUsage().(*syscall.Rusage).Maxrss
	if runtime.GOOS == "darwin" {
		return peak / 1024 // bytes there
	}
	return peak
}
