package bench

import (
	"bytes"
	"flag"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"

	"heronlake.example/ask/kb"
)

var update = flag.Bool("update", false, "measure anew and write the table into README.md")

// rounds is how often each program is run; they take turns, so that a busy
// minute falls on all of them alike.
const rounds = 40

// contestant is a program that is run whole, from start to last byte. Its row
// of the table shows its time beside that of the first.
type contestant struct {
	row  string
	args []string
}

// TestTable keeps the table in README.md: as it is, its rows must be those that
// are measured here; with -update they are measured and written.
func TestTable(t *testing.T) {
	const file, begin, end = "../../README.md", "<!-- speed: go test ./tests/bench -run TestTable -update -->\n", "<!-- end of speed -->\n"
	readme, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	before, rest, ok := strings.Cut(string(readme), begin)
	table, after, ok2 := strings.Cut(rest, end)
	if !ok || !ok2 {
		t.Fatalf("%s has no place for the table: %s...%s", file, begin, end)
	}
	if *update {
		now := measure(t)
		if err := os.WriteFile(file, []byte(before+begin+now+end+after), 0o644); err != nil {
			t.Fatal(err)
		}
		table = now
	}
	row := regexp.MustCompile(`^\| [^|]+ \| +(?:[\d,.]+|-) ms \| +(?:[\d.]+|-) \|$`)
	lines := strings.Split(strings.TrimSpace(table), "\n")
	want := slices.Concat(processRows(), insideRows())
	if len(lines) != len(want)+2 {
		t.Fatalf("the table has %d lines, want a head and %d rows:\n%s", len(lines), len(want), table)
	}
	for i, name := range want {
		if l := lines[i+2]; !strings.HasPrefix(l, "| "+name+" |") || !row.MatchString(l) {
			t.Errorf("row %d is %q, want one of %q", i+1, l, name)
		}
	}
}

const (
	rowEmpty  = "an empty Go program"
	rowSQLite = "`sqlite3`: one full-text query over the same passages"
	rowHelp   = "`ask --help`"
	rowNote   = "`ask`: a question that notes answer"
	rowFit    = "`ask`: a whole fitting"
	rowMedian = "one line of a batch, median"
	rowSlow   = "one line of a batch, 99th percentile"
)

func processRows() []string { return []string{rowEmpty, rowSQLite, rowHelp, rowNote, rowFit} }
func insideRows() []string  { return []string{rowMedian, rowSlow} }

const (
	noteQuestion = "why does the prop suck air when it gets rough?"
	noteQuery    = `prop OR suck OR air OR rough`
	fitQuestion  = "18-foot aluminum, 1,900 lb loaded, windy lake"
)

// measure runs everything and writes the table.
func measure(t *testing.T) string {
	dir := t.TempDir()
	ask, empty := build(t, dir, "../../cmd/ask"), buildEmpty(t, dir)
	contestants := []contestant{
		{rowEmpty, []string{empty}},
		{rowHelp, []string{ask, "--help"}},
		{rowNote, []string{ask, noteQuestion}},
		{rowFit, []string{ask, fitQuestion}},
	}
	if args := sqlite(t, dir); args != nil {
		contestants = append(contestants, contestant{rowSQLite, args})
	}
	times := map[string][]time.Duration{}
	for round := range rounds + 1 {
		for _, c := range contestants {
			if took := start(t, dir, c.args); round > 0 { // the first fills the file cache
				times[c.row] = append(times[c.row], took)
			}
		}
	}
	base := median(times[rowEmpty])
	var b strings.Builder
	b.WriteString("| whole process, from start to last byte | median | beside an empty program |\n| --- | ---: | ---: |\n")
	line := func(row string, d time.Duration, ratio float64) {
		if d == 0 {
			fmt.Fprintf(&b, "| %s | - ms | - |\n", row)
			return
		}
		fmt.Fprintf(&b, "| %s | %.2f ms | %.2f |\n", row, d.Seconds()*1e3, ratio)
	}
	for _, row := range processRows() {
		line(row, median(times[row]), beside(times[row], times[rowEmpty]))
	}
	inside := batchLines(t)
	half, most := inside[len(inside)/2], inside[len(inside)*99/100]
	line(rowMedian, half, float64(half)/float64(base))
	line(rowSlow, most, float64(most)/float64(base))
	return b.String()
}

// batchLines are the times of single answers in one process, sorted.
func batchLines(t *testing.T) []time.Duration {
	r, _ := newReasoner(t)
	var times []time.Duration
	for i := range 200 * len(questions) {
		q := questions[i%len(questions)]
		begun := time.Now()
		answerLine(t, r, q)
		if took := time.Since(begun); i >= len(questions) {
			times = append(times, took)
		}
	}
	slices.Sort(times)
	return times
}

// beside is the median of the ratios that two programs' times have in each round:
// what a busy minute does to both does not count. It is 0 without times.
func beside(times, base []time.Duration) float64 {
	var ratios []float64
	for i := range times {
		ratios = append(ratios, float64(times[i])/float64(base[i]))
	}
	if len(ratios) == 0 {
		return 0
	}
	slices.Sort(ratios)
	return ratios[len(ratios)/2]
}

func median(times []time.Duration) time.Duration {
	if len(times) == 0 {
		return 0
	}
	times = slices.Sorted(slices.Values(times))
	return times[len(times)/2]
}

// start runs a program in an empty home, reading what it prints through a pipe.
func start(t *testing.T, home string, args []string) time.Duration {
	t.Helper()
	cmd := exec.Command(args[0], args[1:]...)
	cmd.Env = append(os.Environ(), "HOME="+home, "XDG_CONFIG_HOME="+home)
	pipe, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	begun := time.Now()
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	n, _ := io.Copy(io.Discard, pipe)
	err = cmd.Wait()
	took := time.Since(begun)
	if err != nil || n == 0 {
		t.Fatalf("%q: %v, %d bytes", args, err, n)
	}
	return took
}

// build builds a package as a release is built.
func build(tb testing.TB, dir, pkg string) string {
	tb.Helper()
	file := filepath.Join(dir, filepath.Base(strings.TrimSuffix(pkg, ".go")))
	if runtime.GOOS == "windows" {
		file += ".exe"
	}
	cmd := exec.Command("go", "build", "-trimpath", "-buildvcs=false", "-ldflags=-s -w", "-o", file, pkg)
	cmd.Env = append(os.Environ(), "CGO_ENABLED=0")
	if out, err := cmd.CombinedOutput(); err != nil {
		tb.Fatalf("%s does not build: %v\n%s", pkg, err, out)
	}
	return file
}

func buildEmpty(tb testing.TB, dir string) string {
	tb.Helper()
	source := filepath.Join(dir, "empty.go")
	err := os.WriteFile(source, []byte("package main\n\nimport \"os\"\n\nfunc main() { os.Stdout.WriteString(\"hello\\n\") }\n"), 0o600)
	if err != nil {
		tb.Fatal(err)
	}
	return build(tb, dir, source)
}

// sqlite prepares a database of the passages and returns the command that
// queries it; nil where sqlite3 is not installed.
func sqlite(t *testing.T, dir string) []string {
	program, err := exec.LookPath("sqlite3")
	if err != nil {
		t.Log("sqlite3 is not installed: its row of the table stays empty")
		return nil
	}
	lib, err := kb.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	quote := func(s string) string { return "'" + strings.ReplaceAll(s, "'", "''") + "'" }
	var script bytes.Buffer
	script.WriteString("create virtual table p using fts5(title, heading, topics, body, tokenize=porter);\nbegin;\n")
	for _, n := range lib.All() {
		for _, p := range n.Passages {
			fmt.Fprintf(&script, "insert into p values (%s, %s, %s, %s);\n", quote(p.Title), quote(p.Heading), quote(strings.Join(p.Topics, " ")), quote(p.Text))
		}
	}
	script.WriteString("commit;\ninsert into p(p) values('optimize');\nvacuum;\n")
	file := filepath.Join(dir, "notes.db")
	cmd := exec.Command(program, file)
	cmd.Stdin = &script
	if out, err := cmd.CombinedOutput(); err != nil {
		t.Logf("sqlite3 has no full-text search: %v\n%s", err, out)
		return nil
	}
	return []string{program, file, "select heading, body from p where p match '" + noteQuery + "' order by bm25(p, 3, 2, 2, 1) limit 3"}
}
