package store

import (
	"bytes"
	"cmp"
	"crypto/sha256"
	"encoding/binary"
	"encoding/hex"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"
)

// Cache keeps, in the folder Dir, what was costly to make and can be made again:
// a file for each entry, named by a digest of all that the entry was made of, so
// that one that is stale is never found. With an empty Dir nothing is kept.
//
// Programs that share the folder do not wait for each other: an entry appears
// whole by a rename, and two that make the same entry replace it by its like.
type Cache struct{ Dir string }

// A Key is the digest of all that an entry was made of, the program included.
type Key [sha256.Size]byte

// The form of an entry: the form's name, the key, the number of parts in a byte,
// the length of each in eight (big-endian), the parts, and the SHA-256 of all that
// comes before it.
const (
	cacheForm   = "ask.cache/1\n"
	cacheEnding = ".cache"
	cacheBytes  = 512 << 20 // a longer file is no entry
	cacheKept   = 3         // entries that stay when one is added
)

// staleAfter is by how much an unfinished file must be older than a new entry to
// be that of a program which was killed.
const staleAfter = time.Hour

func (c Cache) file(key Key) string {
	return filepath.Join(c.Dir, hex.EncodeToString(key[:])+cacheEnding)
}

// Get returns the parts of an entry. What is missing, cannot be read or is
// damaged in any place is not there.
func (c Cache) Get(key Key) (parts [][]byte, ok bool) {
	if c.Dir == "" {
		return nil, false
	}
	info, err := os.Stat(c.file(key))
	if err != nil || !info.Mode().IsRegular() || info.Size() > cacheBytes {
		return nil, false
	}
	f, err := os.Open(c.file(key))
	if err != nil {
		return nil, false
	}
	defer f.Close()
	data := make([]byte, info.Size())
	if _, err := io.ReadFull(f, data); err != nil {
		return nil, false
	}
	return unwrap(key, data)
}

// Put keeps an entry, and removes the oldest ones and what killed programs left
// behind. A folder that cannot be written keeps nothing: the next start makes the
// entry again.
func (c Cache) Put(key Key, parts ...[]byte) {
	if c.Dir == "" {
		return
	}
	data := wrap(key, parts)
	if len(data) > cacheBytes || Replace(c.file(key), data) != nil {
		return
	}
	c.sweep(filepath.Base(c.file(key)))
}

func wrap(key Key, parts [][]byte) []byte {
	size := len(cacheForm) + len(key) + 1 + sha256.Size
	for _, p := range parts {
		size += 8 + len(p)
	}
	data := append(make([]byte, 0, size), cacheForm...)
	data = append(data, key[:]...)
	data = append(data, byte(len(parts)))
	for _, p := range parts {
		data = binary.BigEndian.AppendUint64(data, uint64(len(p)))
	}
	for _, p := range parts {
		data = append(data, p...)
	}
	sum := sha256.Sum256(data)
	return append(data, sum[:]...)
}

func unwrap(key Key, data []byte) (parts [][]byte, ok bool) {
	head := append([]byte(cacheForm), key[:]...)
	if len(data) < len(head)+1+sha256.Size || !bytes.HasPrefix(data, head) {
		return nil, false
	}
	body, want := data[:len(data)-sha256.Size], data[len(data)-sha256.Size:]
	if sum := sha256.Sum256(body); !bytes.Equal(sum[:], want) {
		return nil, false
	}
	rest := body[len(head):]
	count := int(rest[0])
	rest = rest[1:]
	if len(rest) < 8*count {
		return nil, false
	}
	lengths, rest := rest[:8*count], rest[8*count:]
	for i := range count {
		n := binary.BigEndian.Uint64(lengths[8*i:])
		if n > uint64(len(rest)) {
			return nil, false
		}
		parts = append(parts, rest[:n:n])
		rest = rest[n:]
	}
	return parts, len(rest) == 0
}

// sweep removes all but the newest entries, and unfinished files that are much
// older than the entry that was just made. Files are compared with one another,
// not with the clock; what is no file of the cache is left alone.
func (c Cache) sweep(made string) {
	info, err := os.Stat(filepath.Join(c.Dir, made))
	if err != nil {
		return
	}
	added := info.ModTime()
	listed, err := os.ReadDir(c.Dir)
	if err != nil {
		return
	}
	var entries []fs.FileInfo
	for _, e := range listed {
		info, err := e.Info()
		if err != nil || !info.Mode().IsRegular() {
			continue
		}
		switch whole, unfinished := ofCache(e.Name()); {
		case unfinished && added.Sub(info.ModTime()) > staleAfter:
			_ = os.Remove(filepath.Join(c.Dir, e.Name())) // tried again with the next entry
		case whole && e.Name() != made:
			entries = append(entries, info)
		}
	}
	slices.SortFunc(entries, func(a, b fs.FileInfo) int {
		return cmp.Or(b.ModTime().Compare(a.ModTime()), strings.Compare(a.Name(), b.Name()))
	})
	for _, e := range entries[min(len(entries), cacheKept-1):] {
		_ = os.Remove(filepath.Join(c.Dir, e.Name()))
	}
}

// ofCache tells an entry and one that Replace has not finished by their names.
func ofCache(name string) (whole, unfinished bool) {
	digest, rest, _ := strings.Cut(name, ".")
	if key, err := hex.DecodeString(digest); err != nil || len(key) != len(Key{}) {
		return false, false
	}
	rest = "." + rest
	return rest == cacheEnding, strings.HasPrefix(rest, cacheEnding+temporary)
}
