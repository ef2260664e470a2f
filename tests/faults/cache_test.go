package faults

import (
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"heronlake.example/ask/cmd/ask/store"
)

// A shop with many notes has what was made of them kept in a cache. Whatever
// becomes of it, the answers are those that are given without one, and nothing is
// said of it: it can be made again.
var cacheFaults = slices.Concat(
	[]fault{{"cache: missing", func(t *testing.T) string {
		s := openShop(t)
		s.alike("the first start")
		s.sound()
		if info, err := os.Stat(filepath.Dir(s.entry())); err != nil || os.PathSeparator == '/' && info.Mode().Perm() != 0o700 {
			t.Errorf("others may look into the cache: %v, %v", info.Mode(), err)
		}
		s.used()
		return "answers as ever, and makes it for this user alone"
	}}},
	damagedCaches(),
	[]fault{
		{"cache: a byte in its midst is wrong", func(t *testing.T) string {
			s := openShop(t)
			s.sound()
			for _, share := range []int{3, 10, 50, 90, 99} {
				data := s.read()
				data[len(data)*share/100] ^= 0x20
				s.write(string(data))
				s.alike("damaged")
				s.sound()
			}
			return "answers as ever, and makes it anew"
		}},
		{"cache: of notes that were changed since", func(t *testing.T) string {
			s := openShop(t)
			s.sound()
			file(t, s.notes, "n017.md", "# Drawer 17\n\nDrawer 17 was emptied on Monday.\n")
			if got := s.ask(); !strings.Contains(got, "emptied on Monday") {
				t.Errorf("the note that was changed is not read:\n%s", got)
			}
			return "answers from the notes as they are now"
		}},
		{"cache: a file stands in its folder's place", func(t *testing.T) string {
			s := openShop(t)
			path := file(t, s.home, "cache", "mine")
			s.alike("no folder")
			intact(t, path, "mine")
			return "answers as ever"
		}},
		{"cache: read-only", func(t *testing.T) string {
			s := openShop(t)
			if err := os.MkdirAll(filepath.Join(s.home, "cache"), 0o755); err != nil {
				t.Fatal(err)
			}
			if !asNobody(&s.run) {
				return ""
			}
			s.alike("read-only")
			if files := s.files(); len(files) > 0 {
				t.Errorf("%q were written", files)
			}
			return "answers as ever"
		}},
		{"cache: the disk is full", func(t *testing.T) string {
			s := openShop(t)
			dir := filepath.Join(s.home, "cache")
			if err := os.MkdirAll(dir, 0o755); err != nil {
				t.Fatal(err)
			}
			if !smallDisk(t, dir) {
				return ""
			}
			s.alike("full")
			if files := s.files(); len(files) > 0 {
				t.Errorf("%q were left", files)
			}
			return "answers as ever, and leaves nothing half written"
		}},
		{"cache: from the future, as after a clock set back", func(t *testing.T) string {
			s := openShop(t)
			s.sound()
			later := fileTime.AddDate(20, 0, 0)
			for i := range 4 { // entries of other notes
				name := fmt.Sprintf("%064x.cache", i)
				other := file(t, filepath.Dir(s.entry()), name, "of the future")
				if err := os.Chtimes(other, later, later); err != nil {
					t.Fatal(err)
				}
			}
			file(t, s.notes, "zz.md", "# Opening hours\n\nThe bench opens at nine.\n")
			want := s.ask()
			if got := s.ask(); got != want || !strings.Contains(got, "drawer 17") {
				t.Errorf("the second start answers otherwise:\n%s\nwant\n%s", got, want)
			}
			newest := ""
			for _, f := range s.files() {
				if info, err := os.Stat(f); err == nil && info.ModTime().Before(later) && f != s.file {
					newest = f
				}
			}
			if newest == "" {
				t.Errorf("what was made now was swept away for what bears a later time: %q", s.files())
			}
			return "answers as ever; what was made last stays"
		}},
		{"cache: two programs at once make it", func(t *testing.T) string { return makers(t, 2) }},
		{"cache: twenty programs at once make it", func(t *testing.T) string { return makers(t, 20) }},
		{"cache: killed at any moment of making it, 200 times", func(t *testing.T) string {
			if testing.Short() {
				t.Skip("kills many programs")
			}
			s := openShop(t)
			s.sound()
			dir := filepath.Dir(s.entry())
			chance := rand.New(rand.NewPCG(3, 4))
			for range kills {
				if err := os.Remove(s.entry()); err != nil && !errors.Is(err, fs.ErrNotExist) {
					t.Fatal(err)
				}
				s.killed(time.Duration(chance.Int64N(int64(3 * time.Millisecond))))
				if _, err := os.Stat(s.entry()); err == nil && !s.isWhole() {
					t.Fatalf("an entry of %d bytes was left that is not whole", len(s.read()))
				}
			}
			for _, f := range s.files() { // what was left unfinished goes once it is old
				if err := os.Chtimes(f, fileTime, fileTime); err != nil {
					t.Fatal(err)
				}
			}
			s.write("")
			s.alike("after the kills")
			if left, err := os.ReadDir(dir); err != nil || len(left) != 1 {
				t.Errorf("%d files were left: %v", len(left), err)
			}
			return "no half entry is ever found; answers as ever, and what was left unfinished is taken away"
		}},
	},
)

// damagedCaches are the damages that are done to every kind of file.
func damagedCaches() []fault {
	var out []fault
	for _, d := range damages {
		if d.name == "missing" {
			continue // has a row of its own
		}
		out = append(out, fault{"cache: " + d.name, func(t *testing.T) string {
			s := openShop(t)
			s.sound()
			if d.data != nil {
				s.write(d.data(string(s.read())))
				s.alike(d.name)
				s.sound()
				s.used()
				return "answers as ever, and makes it anew"
			}
			if err := os.Remove(s.entry()); err != nil {
				t.Fatal(err)
			}
			if !d.odd(t, s.entry()) {
				return ""
			}
			s.alike(d.name)
			if info, err := os.Lstat(s.entry()); err != nil || info.Mode().IsRegular() {
				t.Errorf("%s was replaced", d.name)
			}
			return "answers as ever"
		}})
	}
	return out
}

// A shop has so many notes that a cache is made of them.
type shop struct {
	run
	notes string
	want  string // what is answered without a cache
	file  string // the entry, once it was made
}

func openShop(t *testing.T) *shop {
	t.Helper()
	home := folder(t)
	s := &shop{run: *at(t, home), notes: filepath.Join(folder(t), "notes")}
	words := strings.Fields("bench drawer socket spanner tag counter shelf spring pin bracket keel rail bolt grease winter queue deposit ticket hook crate lake dock")
	r := rand.New(rand.NewPCG(5, 6))
	for i := range 130 {
		var b strings.Builder
		fmt.Fprintf(&b, "---\nid: bench-%03d\ntopics: [service]\nreviewed: 2026-03-02\n---\n# Drawer %d at Heron Lake Tackle\n", i, i)
		for j := range 3 {
			fmt.Fprintf(&b, "\n## Tag %d of drawer %d\n\nIn drawer %d are", j, i, i)
			for range 60 {
				b.WriteString(" " + words[r.IntN(len(words))])
			}
			b.WriteString(".\n\nSource: the bench.\n")
		}
		file(t, s.notes, fmt.Sprintf("n%03d.md", i), b.String())
	}
	nowhere := s.run
	nowhere.env = []string{"HOME=", "USERPROFILE=", "XDG_CACHE_HOME=", "LocalAppData="}
	s.want = answers(&nowhere, s.notes)
	if !strings.Contains(s.want, "drawer 17") || !strings.Contains(s.want, "thrust.need") {
		t.Fatalf("the notes are not read:\n%s", s.want)
	}
	s.env = []string{"ASK_HOME=" + home}
	return s
}

// answers is all that is said to a few questions, on standard error as well.
func answers(r *run, notes string) string {
	r.t.Helper()
	r.input = `{"question": "what is in drawer 17"}` + "\n" + `{"question": "` + question + `"}` + "\n"
	got := r.ask("--json", "--notes", notes, "--batch", "-")
	if got.status != 0 {
		r.t.Errorf("status %d", got.status)
	}
	return got.out + got.err
}

func (s *shop) ask() string { s.t.Helper(); return answers(&s.run, s.notes) }

// alike fails where the answers are not those without a cache.
func (s *shop) alike(state string) {
	s.t.Helper()
	if got := s.ask(); got != s.want {
		s.t.Errorf("%s: the answers differ:\n%s\nwant\n%s", state, got, s.want)
	}
}

// files are those of the cache.
func (s *shop) files() []string {
	files, err := filepath.Glob(filepath.Join(s.home, "cache", "notes", "*"))
	if err != nil {
		s.t.Fatal(err)
	}
	return files
}

// entry is the one file of the cache.
func (s *shop) entry() string {
	s.t.Helper()
	if s.file == "" {
		files := s.files()
		if len(files) != 1 {
			s.t.Fatalf("the cache holds %q, want one file", files)
		}
		s.file = files[0]
	}
	return s.file
}

// sound has the cache made where it is missing or damaged, and fails where it then
// is not whole.
func (s *shop) sound() {
	s.t.Helper()
	s.alike("made")
	if !s.isWhole() {
		s.t.Errorf("the entry is not made anew: it has %d bytes", len(s.read()))
	}
}

// isWhole reports whether the entry is one that a program takes. Its name is its
// key.
func (s *shop) isWhole() bool {
	s.t.Helper()
	name, _, _ := strings.Cut(filepath.Base(s.entry()), ".")
	key, err := hex.DecodeString(name)
	if err != nil || len(key) != len(store.Key{}) {
		s.t.Fatalf("%s is no entry", s.entry())
	}
	parts, ok := store.Cache{Dir: filepath.Dir(s.entry())}.Get(store.Key(key))
	return ok && len(parts) == 2
}

// used fails where a sound entry is made again instead of being used.
func (s *shop) used() {
	s.t.Helper()
	if err := os.Chtimes(s.entry(), fileTime, fileTime); err != nil {
		s.t.Fatal(err)
	}
	s.alike("there")
	if info, err := os.Stat(s.entry()); err != nil || !info.ModTime().Equal(fileTime) {
		s.t.Errorf("a sound entry was made again: %v", err)
	}
}

func (s *shop) read() []byte {
	s.t.Helper()
	data, err := os.ReadFile(s.entry())
	if err != nil {
		s.t.Fatal(err)
	}
	return data
}

func (s *shop) write(data string) {
	s.t.Helper()
	if err := os.WriteFile(s.entry(), []byte(data), 0o600); err != nil {
		s.t.Fatal(err)
	}
}

// killed starts the program and kills it a while after it has begun to write.
func (s *shop) killed(while time.Duration) {
	s.t.Helper()
	file, err := program()
	if err != nil {
		s.t.Fatal(err)
	}
	before := len(s.files())
	cmd := exec.Command(file, "--notes", s.notes, question)
	cmd.Env = s.environment()
	if err := cmd.Start(); err != nil {
		s.t.Fatal(err)
	}
	done := make(chan struct{})
	go func() { cmd.Wait(); close(done) }()
	for len(s.files()) == before {
		select {
		case <-done: // it was quicker than this loop
			return
		case <-time.After(200 * time.Microsecond):
		}
	}
	time.Sleep(while)
	cmd.Process.Kill()
	<-done
}

// makers starts programs at once that all find no cache.
func makers(t *testing.T, n int) string {
	s := openShop(t)
	var wg sync.WaitGroup
	for range n {
		r := s.run
		wg.Go(func() {
			if got := answers(&r, s.notes); got != s.want {
				t.Errorf("the answers differ:\n%s\nwant\n%s", got, s.want)
			}
		})
	}
	wg.Wait()
	s.sound() // one entry, and nothing half written beside it
	s.used()
	return "all answer as ever, and one whole entry is there"
}
