package store

import (
	"bytes"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"
)

var (
	cacheKey   = Key{1, 2, 3}
	cacheParts = [][]byte{[]byte("notes of the shop"), nil, []byte("their segment")}
)

func TestCacheGivesBackWhatWasPut(t *testing.T) {
	c := Cache{filepath.Join(t.TempDir(), "made", "when", "missing")}
	if _, ok := c.Get(cacheKey); ok {
		t.Error("found in a folder that is not there")
	}
	c.Put(cacheKey, cacheParts...)
	got, ok := c.Get(cacheKey)
	if !ok || !slices.EqualFunc(got, cacheParts, bytes.Equal) {
		t.Fatalf("got %q, %v", got, ok)
	}
	if _, ok := c.Get(Key{1, 2, 4}); ok {
		t.Error("found under another key")
	}
	if info, err := os.Stat(c.file(cacheKey)); err != nil || info.Mode().Perm()&0o077 != 0 && os.PathSeparator == '/' {
		t.Errorf("others may read it: %v, %v", info.Mode(), err)
	}
}

func TestCacheWithoutAPlace(t *testing.T) {
	Cache{}.Put(cacheKey, cacheParts...)
	if _, ok := (Cache{}).Get(cacheKey); ok {
		t.Error("found without a folder")
	}
}

// TestCacheRefusesEveryDamage flips each bit of an entry, and cuts and lengthens
// it everywhere.
func TestCacheRefusesEveryDamage(t *testing.T) {
	whole := wrap(cacheKey, cacheParts)
	if _, ok := unwrap(cacheKey, whole); !ok {
		t.Fatal("the whole entry is refused")
	}
	for i := range whole {
		for bit := range 8 {
			damaged := bytes.Clone(whole)
			damaged[i] ^= 1 << bit
			if _, ok := unwrap(cacheKey, damaged); ok {
				t.Errorf("bit %d of byte %d flipped: taken", bit, i)
			}
		}
		if _, ok := unwrap(cacheKey, whole[:i]); ok {
			t.Errorf("cut at %d: taken", i)
		}
		if _, ok := unwrap(cacheKey, whole[i+1:]); ok {
			t.Errorf("%d bytes lost in front: taken", i+1)
		}
	}
	if _, ok := unwrap(cacheKey, append(bytes.Clone(whole), 0)); ok {
		t.Error("a byte too many: taken")
	}
}

// TestCacheRefusesAnEntryThatWasRenamed has a sound entry stand under the key of
// another.
func TestCacheRefusesAnEntryThatWasRenamed(t *testing.T) {
	c := Cache{t.TempDir()}
	c.Put(cacheKey, cacheParts...)
	other := Key{9}
	if err := os.Rename(c.file(cacheKey), c.file(other)); err != nil {
		t.Fatal(err)
	}
	if _, ok := c.Get(other); ok {
		t.Error("taken")
	}
}

func TestCachePassesOverWhatIsNoFile(t *testing.T) {
	c := Cache{t.TempDir()}
	if err := os.Mkdir(c.file(cacheKey), 0o700); err != nil {
		t.Fatal(err)
	}
	c.Put(cacheKey, cacheParts...)
	if _, ok := c.Get(cacheKey); ok {
		t.Error("a folder is taken for an entry")
	}
	file := filepath.Join(t.TempDir(), "file")
	if err := os.WriteFile(file, []byte("x"), 0o600); err != nil {
		t.Fatal(err)
	}
	c = Cache{file}
	c.Put(cacheKey, cacheParts...)
	if _, ok := c.Get(cacheKey); ok {
		t.Error("found in a file")
	}
	if data, err := os.ReadFile(file); err != nil || string(data) != "x" {
		t.Errorf("the file in the folder's place is now %q, %v", data, err)
	}
}

// TestCacheSweeps keeps the newest entries and takes away what killed programs
// left, and nothing that is not the cache's own.
func TestCacheSweeps(t *testing.T) {
	c := Cache{t.TempDir()}
	day := time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)
	write := func(name string, age time.Duration) {
		t.Helper()
		file := filepath.Join(c.Dir, name)
		if err := os.WriteFile(file, nil, 0o600); err != nil {
			t.Fatal(err)
		}
		if err := os.Chtimes(file, day, day.Add(-age)); err != nil {
			t.Fatal(err)
		}
	}
	name := func(n byte) string { return filepath.Base(c.file(Key{n})) }
	for i := range byte(5) {
		write(name(i), time.Duration(i)*24*time.Hour)
	}
	write(name(7)+temporary+"123", 48*time.Hour)
	write("notes.md", 10000*time.Hour)
	write("notes.cache"+temporary+"1", 10000*time.Hour)
	write(name(8)+".damaged-1", 10000*time.Hour)
	// An unfinished file of a program that is at work now.
	if err := os.WriteFile(filepath.Join(c.Dir, name(9)+temporary+"9"), nil, 0o600); err != nil {
		t.Fatal(err)
	}
	c.Put(Key{6}, cacheParts...)

	listed, err := os.ReadDir(c.Dir)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, e := range listed {
		got = append(got, e.Name())
	}
	want := []string{name(0), name(1), name(6), name(8) + ".damaged-1", name(9) + temporary + "9", "notes.cache" + temporary + "1", "notes.md"}
	if !slices.Equal(got, want) {
		t.Errorf("left\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// TestCacheSharedByMany has programs read, write and sweep at once: each finds
// an entry whole or not at all.
func TestCacheSharedByMany(t *testing.T) {
	c := Cache{t.TempDir()}
	var wg sync.WaitGroup
	for i := range 8 {
		wg.Go(func() {
			for j := range 20 {
				key := Key{byte(i+j) % 5}
				want := bytes.Repeat(key[:1], 10000)
				if got, ok := c.Get(key); ok && (len(got) != 1 || !bytes.Equal(got[0], want)) {
					t.Errorf("a torn entry of %d parts", len(got))
				}
				c.Put(key, want)
			}
		})
	}
	wg.Wait()
	listed, err := os.ReadDir(c.Dir)
	if err != nil || len(listed) == 0 || len(listed) > cacheKept {
		t.Errorf("%d files were left: %v", len(listed), err)
	}
}
