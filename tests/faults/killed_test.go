package faults

import (
	"bufio"
	"bytes"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"heronlake.example/ask/cmd/ask/store"
	"heronlake.example/ask/reasoner/card"
)

// kills is how often a writer is killed for one row.
const kills = 200

var killedFaults = []fault{
	{"killed at any moment of keeping a boat, 200 times", func(t *testing.T) string {
		dir := folder(t)
		last := 0
		killed(t, dir, func(begun, done int) {
			c, err := (store.Boats{Dir: filepath.Join(dir, "boats")}).Open("heron")
			if err != nil {
				t.Fatalf("after write %d the boat cannot be opened: %v", begun, err)
			}
			got, err := strconv.Atoi(c.Facts[0].Said)
			if err != nil || got < done || got > begun || got < last {
				t.Fatalf("the boat is of write %q, and %d was done, %d begun", c.Facts[0].Said, done, begun)
			}
			last = got
		})
		return "the boat is as it was kept last, never less"
	}},
	{"killed at any moment of writing the history, 200 times", func(t *testing.T) string {
		dir := folder(t)
		var all []int // the writes that were seen done
		killed(t, dir, func(begun, done int) {
			if len(all) == 0 || all[len(all)-1] != done {
				all = append(all, done)
			}
			lines := store.History{Dir: dir}.Read()
			for _, n := range all[max(0, len(all)-100):] {
				if !slices.Contains(lines, fmt.Sprint("line ", n)) {
					t.Fatalf("write %d was done and is not in the history of %d lines", n, len(lines))
				}
			}
			for i := 1; i < len(lines); i++ {
				if number(lines[i]) <= number(lines[i-1]) {
					t.Fatalf("%q stands behind %q", lines[i], lines[i-1])
				}
			}
			if n := number(lines[len(lines)-1]); n < done || n > begun {
				t.Fatalf("the history ends with line %d, and %d was done, %d begun", n, done, begun)
			}
		})
		return "every line that was kept is there"
	}},
	{"killed at any moment of adding to a trainee's record, 200 times", func(t *testing.T) string {
		dir := folder(t)
		killed(t, dir, func(begun, done int) {
			record, err := (store.Scores{Dir: filepath.Join(dir, "trainees")}).Read("Tess")
			if err != nil {
				t.Fatalf("after write %d the record cannot be read: %v", begun, err)
			}
			for i := 1; i < len(record.Scores); i++ {
				if record.Scores[i].Customer <= record.Scores[i-1].Customer {
					t.Fatalf("customer %d stands behind %d", record.Scores[i].Customer, record.Scores[i-1].Customer)
				}
			}
			if n := record.Scores[len(record.Scores)-1].Customer; n < done || n > begun {
				t.Fatalf("the record ends with customer %d, and %d was done, %d begun", n, done, begun)
			}
		})
		return "every customer that was marked is there"
	}},
	{"killed at any moment of adding to the cache, 200 times", func(t *testing.T) string {
		dir := folder(t)
		killed(t, dir, func(begun, done int) {
			parts, ok := store.Cache{Dir: filepath.Join(dir, "cache")}.Get(cacheKey)
			if !ok || len(parts) != 2 {
				t.Fatalf("after write %d the entry is gone", begun)
			}
			n, err := strconv.Atoi(string(parts[0]))
			if err != nil || n < done || n > begun || !slices.EqualFunc(parts, cacheParts(n), bytes.Equal) {
				t.Fatalf("the entry is of write %q, and %d was done, %d begun", parts[0], done, begun)
			}
		})
		return "an entry that was kept is there, whole"
	}},
	{"twenty programs at once, each keeping a boat", func(t *testing.T) string {
		home := folder(t)
		atOnce(t, home, 20)
		return "all twenty boats are there"
	}},
	{"two programs at once, keeping the same boat", func(t *testing.T) string {
		home := folder(t)
		var wg sync.WaitGroup
		outs := make([]string, 2)
		for i := range outs {
			wg.Go(func() {
				r := at(t, home)
				r.input = question + "\n:keep heron\n"
				outs[i] = r.ask().out
			})
		}
		wg.Wait()
		refused := strings.Count(outs[0]+outs[1], "another boat is kept as")
		r := at(t, home)
		r.input = ":boat\n"
		if got := r.ask("--boat", "heron"); refused != 1 || got.status != 0 || !strings.Contains(got.out, "1,900 lb") {
			t.Fatalf("%d of two were refused; status %d\n%s%s", refused, got.status, got.out, got.err)
		}
		return "the first keeps it, the second is told to choose another name"
	}},
}

// The writer keeps one entry of the cache anew each time.
var cacheKey = store.Key{1, 2, 3}

func cacheParts(n int) [][]byte {
	number := strconv.Itoa(n)
	return [][]byte{[]byte(number), bytes.Repeat([]byte(number+" "), 20000)}
}

// writerVariable makes the test binary a writer on the folder that it names.
const writerVariable = "ASK_FAULTS_WRITER"

// write keeps a boat, a line of history, a score and an entry of the cache over and
// over, and says before and after which write it is at, until it is killed.
func write(dir string) {
	boats := store.Boats{Dir: filepath.Join(dir, "boats")}
	history := store.History{Dir: dir}
	scores := store.Scores{Dir: filepath.Join(dir, "trainees")}
	cache := store.Cache{Dir: filepath.Join(dir, "cache")}
	c, err := boats.Open("heron")
	n := 0
	if err == nil {
		n, _ = strconv.Atoi(c.Facts[0].Said)
	}
	if lines := history.Read(); len(lines) > 0 {
		k, _ := strconv.Atoi(strings.TrimPrefix(lines[len(lines)-1], "line "))
		n = max(n, k)
	}
	if record, err := scores.Read("Tess"); err == nil && len(record.Scores) > 0 {
		n = max(n, record.Scores[len(record.Scores)-1].Customer)
	}
	for n++; ; n++ {
		fmt.Println("begun", n)
		length := 5.0
		c.Facts = []card.Fact{{Slot: "boat.length", Value: &length, Unit: "m", Said: strconv.Itoa(n)}}
		if c.Kept, err = boats.Keep("heron", c); err == nil {
			err = history.Add(fmt.Sprint("line ", n))
		}
		if err == nil {
			err = scores.Add("Tess", store.Score{Topic: "thrust", Level: 1, Customer: n, Points: 1, Most: 2})
		}
		if err != nil {
			fmt.Println("failed", err)
			os.Exit(1)
		}
		cache.Put(cacheKey, cacheParts(n)...)
		fmt.Println("done", n)
	}
}

// killed starts a writer and kills it at a random moment, again and again, and
// has the outcome looked at with the number of the last write begun and done.
func killed(t *testing.T, dir string, look func(begun, done int)) {
	t.Helper()
	if testing.Short() {
		t.Skip("kills many programs")
	}
	chance := rand.New(rand.NewPCG(1, 2))
	begun, done := 0, 0
	// A write takes a millisecond or so where nothing else is at work: the moments
	// fall on all of its steps. Where few writes come to their end, the disk is
	// slow, and later moments are taken too.
	while := 8 * time.Millisecond
	for i := range kills {
		if done < i/4 && while < time.Second {
			while += while / 4
		}
		out := killedWriter(t, dir, time.Duration(chance.Int64N(int64(while))))
		if strings.Contains(out, "failed") {
			t.Fatal(out)
		}
		for l := range strings.Lines(out) {
			word, number, _ := strings.Cut(strings.TrimSpace(l), " ")
			n, err := strconv.Atoi(number)
			switch {
			case err != nil: // cut off by the kill
			case word == "begun":
				begun = n
			case word == "done":
				done = n
			}
		}
		if done > 0 {
			look(max(begun, done), done)
		}
	}
	if done < kills/10 {
		t.Fatalf("only %d writes were done by %d writers: they are killed too early to show anything", done, kills)
	}
}

// killedWriter starts a writer, waits until it has begun to write, kills it after
// a while more, and returns what it said.
func killedWriter(t *testing.T, dir string, while time.Duration) string {
	t.Helper()
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), writerVariable+"="+dir)
	pipe, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	out := bufio.NewReader(pipe)
	first, _ := out.ReadString('\n') // however long the start takes
	time.Sleep(while)
	cmd.Process.Kill()
	rest, _ := io.ReadAll(out)
	cmd.Wait()
	return first + string(rest)
}

// number is that of a line of the history, -1 of anything else.
func number(line string) int {
	n, err := strconv.Atoi(strings.TrimPrefix(line, "line "))
	if err != nil {
		return -1
	}
	return n
}

// atOnce starts programs together, each of which answers and keeps a boat, and
// looks for all the boats.
func atOnce(t *testing.T, home string, n int) {
	t.Helper()
	var wg sync.WaitGroup
	for i := range n {
		wg.Go(func() {
			r := at(t, home)
			r.input = fmt.Sprintf("%s\n:keep boat %d\n", question, i)
			if got := r.ask(); got.status != 0 || !strings.Contains(got.out, "Thrust by weight") || got.err != "" {
				t.Errorf("status %d\n%s%s", got.status, got.out, got.err)
			}
		})
	}
	wg.Wait()
	names, faults, err := store.Boats{Dir: filepath.Join(home, "data", "ask", "boats")}.List()
	if err != nil || len(faults) > 0 || len(names) != n {
		t.Errorf("%d of %d boats are kept; %v, %v", len(names), n, faults, err)
	}
}
