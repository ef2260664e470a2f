package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"testing"

	"heronlake.example/ask/cmd/ask/store"
	"heronlake.example/ask/kb"
)

// manyNotes writes a folder of notes that is worth a cache: 120 notes of three
// passages, one of which bears the id of a built-in note, and two files that are
// refused.
func manyNotes(t testing.TB) (dir string) {
	t.Helper()
	dir = t.TempDir()
	r := rand.New(rand.NewPCG(1, 2))
	words := strings.Fields("bench drawer socket spanner tag counter customer order shelf spare spring pin bracket keel rail bolt grease winter summer morning queue deposit ticket repair return hook crate van lake dock")
	text := func(n int) string {
		out := make([]string, n)
		for i := range out {
			out[i] = words[r.IntN(len(words))]
		}
		return strings.Join(out, " ")
	}
	for i := range 120 {
		id := fmt.Sprintf("bench-%03d", i)
		if i == 7 {
			id = builtinID(t)
		}
		var b strings.Builder
		fmt.Fprintf(&b, "---\nid: %s\ntopics: [service]\nreviewed: 2026-03-02\n---\n# Drawer %d at Heron Lake Tackle\n", id, i)
		for j := range 3 {
			fmt.Fprintf(&b, "\n## Tag %d of drawer %d\n\nThe %s of drawer %d is %s.\n\nSource: the bench.\n", j, i, text(3), i, text(80))
		}
		put(t, filepath.Join(dir, fmt.Sprintf("n%03d.md", i)), b.String())
	}
	put(t, filepath.Join(dir, "broken.md"), "---\nid: [\n---\nText.")
	put(t, filepath.Join(dir, "empty.md"), "")
	return dir
}

func builtinID(t testing.TB) string {
	t.Helper()
	lib, err := kb.Builtin()
	if err != nil || lib.Len() == 0 {
		t.Fatal("no built-in notes: ", err)
	}
	return lib.All()[0].ID
}

func put(t testing.TB, file, text string) {
	t.Helper()
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
}

// counter is one start of the program with a folder of notes.
type counter struct {
	notes string
	env   []string
}

// inHome is a start whose user's folders are all in one.
func inHome(notes, home string) counter {
	return counter{notes, []string{"ASK_HOME=" + home}}
}

// nowhere is a start that has no folder to keep anything in.
func nowhere(notes string) counter { return counter{notes: notes} }

// ask plays a batch and returns all that the program said, also on its standard
// error. Several may do so at once.
func (c counter) ask(t testing.TB) string {
	t.Helper()
	file, err := os.Executable()
	if err != nil {
		t.Error(err)
	}
	cmd := exec.Command(file)
	// The test binary is the program where it is called so.
	cmd.Args = []string{"ask", "--json", "--notes", c.notes, "--batch", "-"}
	cmd.Env = append([]string{"PATH=" + os.Getenv("PATH"), "SystemRoot=" + os.Getenv("SystemRoot")}, c.env...)
	var in strings.Builder
	for _, q := range []string{"what is in drawer 17", "what is in drawer 7", "spaner for drawer 99", "bench at heron lake tackle",
		"why does it suck air in chop", "16 ft jon boat, two aboard, small lake", "who won the game"} {
		line, _ := json.Marshal(map[string]string{"question": q})
		in.Write(append(line, '\n'))
	}
	cmd.Stdin = strings.NewReader(in.String())
	var out, warn bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &warn
	if err := cmd.Run(); err != nil {
		t.Errorf("%v\n%s", err, warn.String())
	}
	return out.String() + warn.String()
}

// entry is the one file of the cache in a home.
func entry(t testing.TB, home string) string {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(home, "cache", "notes", "*"))
	if err != nil || len(files) != 1 {
		t.Fatalf("the cache holds %q, want one file: %v", files, err)
	}
	return files[0]
}

// TestNotesCacheAnswersAlike asks without a cache, when it is made, and when it
// is there.
func TestNotesCacheAnswersAlike(t *testing.T) {
	notes, home := manyNotes(t), t.TempDir()
	want := nowhere(notes).ask(t)
	for _, says := range []string{"drawer 17", "broken.md", "empty.md", builtinID(t) + "-shop"} {
		if !strings.Contains(want, says) {
			t.Errorf("the answers never mention %q", says)
		}
	}
	for _, start := range []string{"first", "second", "third"} {
		if got := inHome(notes, home).ask(t); got != want {
			t.Errorf("%s start: the answers differ from those without a cache:\n%s\nwant\n%s", start, got, want)
		}
		entry(t, home)
	}
}

// TestNotesCacheIsUsed has a sound entry of other notes stand in the place of the
// right one: what it says is what is answered.
func TestNotesCacheIsUsed(t *testing.T) {
	folder := manyNotes(t)
	builtin, err := kb.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	open := func(cache store.Cache) *kb.Library {
		t.Helper()
		files, err := readNotes(folder)
		if err != nil {
			t.Fatal(err)
		}
		lib, search, _, err := withShop(builtin, files, cache)
		if err != nil {
			t.Fatal(err)
		}
		if hits := search.Search(kb.Query{Text: "what is in drawer 17"}).Hits; len(hits) == 0 {
			t.Error("drawer 17 is not found")
		}
		return lib
	}
	cache := store.Cache{Dir: t.TempDir()}
	made := open(cache)
	files, err := readNotes(folder)
	if err != nil {
		t.Fatal(err)
	}
	key := notesKey(builtin, files)
	parts, ok := cache.Get(key)
	if !ok || len(parts) != 2 {
		t.Fatalf("%d parts are kept, %v", len(parts), ok)
	}
	cache.Put(key, kb.Pack(kb.NewLibrary(kb.Note{ID: "planted", Shop: true}), nil), parts[1])
	if _, ok := open(cache).Note("planted"); !ok {
		t.Error("the cache is not used")
	}

	// A file that changes, comes or goes makes the entry stale.
	for _, change := range []func(){
		func() { put(t, filepath.Join(folder, "n003.md"), "# Drawer 3\nIt is empty now.") },
		func() { put(t, filepath.Join(folder, "zz.md"), "# A further note\nOf one line.") },
		func() { os.Remove(filepath.Join(folder, "n005.md")) },
		func() { os.Rename(filepath.Join(folder, "n006.md"), filepath.Join(folder, "m006.md")) },
	} {
		change()
		if _, ok := open(cache).Note("planted"); ok {
			t.Error("a stale entry is used")
		}
	}
	lib := open(cache)
	if p, ok := lib.Passage("n003"); !ok || p.Text != "It is empty now." {
		t.Errorf("the changed note says %q", p.Text)
	}
	if _, ok := lib.Note("bench-005"); ok {
		t.Error("the note that went is still there")
	}
	if lib.Len() != made.Len() {
		t.Errorf("%d notes, and one came for one that went from %d", lib.Len(), made.Len())
	}
}

// TestNotesCacheDamaged damages an entry in each of its regions: the answers stay,
// nothing is said of it, and the entry is made anew.
func TestNotesCacheDamaged(t *testing.T) {
	notes, home := manyNotes(t), t.TempDir()
	c := inHome(notes, home)
	want := c.ask(t)
	file := entry(t, home)
	whole, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	flip := func(at int) []byte {
		d := bytes.Clone(whole)
		d[at] ^= 0x10
		return d
	}
	n := len(whole)
	damages := map[string][]byte{
		"empty": {}, "one byte": whole[:1], "cut in the head": whole[:40], "cut in half": whole[:n/2],
		"last byte lost": whole[:n-1], "a byte too many": append(bytes.Clone(whole), 0),
		"zeros": make([]byte, n), "another form": append([]byte("ask.cache/0\n"), whole[12:]...),
		"form": flip(3), "key": flip(20), "parts": flip(44), "length": flip(52), "checksum": flip(n - 1),
	}
	for i := range 8 { // notes first, then the segment
		damages[fmt.Sprintf("body, %d eighths in", i)] = flip(100 + i*(n-200)/8)
	}
	for name, damaged := range damages {
		if err := os.WriteFile(file, damaged, 0o600); err != nil {
			t.Fatal(err)
		}
		if got := c.ask(t); got != want {
			t.Errorf("%s: the answers differ:\n%s", name, got)
		}
		if now, err := os.ReadFile(entry(t, home)); err != nil || bytes.Equal(now, damaged) {
			t.Errorf("%s: the entry stays damaged: %v", name, err)
		}
	}
	// What is no file stays; the answers do too.
	if err := os.Remove(file); err != nil {
		t.Fatal(err)
	}
	if err := os.Mkdir(file, 0o700); err != nil {
		t.Fatal(err)
	}
	if got := c.ask(t); got != want {
		t.Errorf("a folder in the entry's place: the answers differ:\n%s", got)
	}
}

// TestNotesCacheUnwritable has no place to keep anything.
func TestNotesCacheUnwritable(t *testing.T) {
	notes := manyNotes(t)
	want := nowhere(notes).ask(t)
	file := t.TempDir()
	put(t, filepath.Join(file, "cache"), "x")
	if got := inHome(notes, file).ask(t); got != want {
		t.Errorf("a file in the folder's place: the answers differ:\n%s", got)
	}
	locked := t.TempDir()
	if err := os.Mkdir(filepath.Join(locked, "cache"), 0o500); err != nil {
		t.Fatal(err)
	}
	if got := inHome(notes, locked).ask(t); got != want {
		t.Errorf("a folder that may not be written: the answers differ:\n%s", got)
	}
	if runtime.GOOS != "windows" {
		c := counter{notes, []string{"HOME=relative", "XDG_CACHE_HOME=also/relative"}}
		if got := c.ask(t); got != want {
			t.Errorf("no home that has a place: the answers differ:\n%s", got)
		}
	}
}

// TestNotesCacheAtOnce starts programs at once on an empty cache, on one that is
// there, and on one that is damaged. None waits for another: each answers alike.
func TestNotesCacheAtOnce(t *testing.T) {
	notes, home := manyNotes(t), t.TempDir()
	c := inHome(notes, home)
	want := nowhere(notes).ask(t)
	for _, programs := range []int{2, 8} {
		for _, state := range []string{"empty", "there", "damaged"} {
			switch state {
			case "empty":
				if err := os.RemoveAll(filepath.Join(home, "cache")); err != nil {
					t.Fatal(err)
				}
			case "damaged":
				if err := os.Truncate(entry(t, home), 1000); err != nil {
					t.Fatal(err)
				}
			}
			var wg sync.WaitGroup
			for range programs {
				wg.Go(func() {
					if got := c.ask(t); got != want {
						t.Errorf("%d programs, %s: the answers differ:\n%s", programs, state, got)
					}
				})
			}
			wg.Wait()
			entry(t, home) // and nothing half written beside it
		}
	}
}

// TestFewNotesAreNotCached leaves a small folder alone.
func TestFewNotesAreNotCached(t *testing.T) {
	notes, home := t.TempDir(), t.TempDir()
	put(t, filepath.Join(notes, "hours.md"), "# Hours\nSix days a week.")
	inHome(notes, home).ask(t)
	if listed, err := os.ReadDir(home); err != nil || len(listed) > 0 {
		t.Errorf("written into the home: %v, %v", listed, err)
	}
}

// BenchmarkOpenNotes opens the folder of many notes without and with a cache.
func BenchmarkOpenNotes(b *testing.B) {
	folder := manyNotes(b)
	builtin, err := kb.Builtin()
	if err != nil {
		b.Fatal(err)
	}
	for _, c := range []struct {
		name  string
		cache store.Cache
	}{{"built", store.Cache{}}, {"cached", store.Cache{Dir: b.TempDir()}}} {
		b.Run(c.name, func(b *testing.B) {
			for b.Loop() {
				files, err := readNotes(folder)
				if err != nil {
					b.Fatal(err)
				}
				if _, _, _, err := withShop(builtin, files, c.cache); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
