package main

import (
	"crypto/sha256"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime/debug"

	"heronlake.example/ask/cmd/ask/store"
	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/index"
	"heronlake.example/ask/kb"
)

// worthKeeping is the size of a folder of notes, in bytes, from which it is
// parsed and indexed once and then found in the cache: some 300 passages, below
// which the work is done sooner than the difference is felt.
const worthKeeping = 128 << 10

// openNotes puts the built-in notes and those of a shop into one library, and
// makes it searchable.
func openNotes(set settings, warn io.Writer) (*kb.Library, *index.Index, error) {
	lib, err := kb.Builtin()
	if err != nil {
		return nil, nil, err
	}
	if set.Notes == "" {
		search, err := index.Open(lib)
		return lib, search, err
	}
	files, err := readNotes(set.Notes)
	if err != nil {
		return nil, nil, err
	}
	var cache store.Cache // keeps nothing
	if dir := set.folders().cache(); dir != "" && files.Size() >= worthKeeping {
		cache.Dir = filepath.Join(dir, "notes")
	}
	lib, search, faults, err := withShop(lib, files, cache)
	if err != nil {
		return nil, nil, err
	}
	for _, f := range faults {
		fmt.Fprintln(warn, "ask: notes: left out:", text.Clean(filepath.Join(set.Notes, f.Error())))
	}
	return lib, search, nil
}

// readNotes reads a shop's own notes. Links that lead out of the folder are not
// followed.
func readNotes(folder string) (*kb.Folder, error) {
	root, err := os.OpenRoot(folder)
	if err != nil {
		return nil, usage("", "notes: %w", plainly("folder", err))
	}
	defer root.Close()
	return kb.ReadFolder(root.FS()), nil
}

// withShop adds a shop's notes to the built-in ones. Where the cache keeps what
// was made of the same files by the same program, that is taken; otherwise it is
// made, and kept for the next start. The answers are the same.
func withShop(builtin *kb.Library, files *kb.Folder, cache store.Cache) (*kb.Library, *index.Index, []kb.Fault, error) {
	if cache.Dir == "" {
		shop, faults := files.Parse()
		lib := builtin.Merge(shop)
		search, err := index.Open(lib)
		return lib, search, faults, err
	}
	key := notesKey(builtin, files)
	if parts, ok := cache.Get(key); ok && len(parts) == 2 {
		if shop, faults, err := kb.Unpack(parts[0]); err == nil {
			lib := builtin.Merge(shop)
			if search, err := index.OpenWith(lib, parts[1]); err == nil {
				return lib, search, faults, nil
			}
		}
	}
	shop, faults := files.Parse()
	lib := builtin.Merge(shop)
	segment, err := index.Segment(lib.Shop())
	if err != nil {
		return nil, nil, nil, err
	}
	cache.Put(key, kb.Pack(shop, faults), segment)
	search, err := index.OpenWith(lib, segment)
	return lib, search, faults, err
}

// notesKey is a digest of all that the parsed and indexed notes of a shop depend
// on: the program, the built-in notes (whose ids a shop's must not bear), and
// the files.
func notesKey(builtin *kb.Library, files *kb.Folder) store.Key {
	h := sha256.New()
	for _, part := range []any{"notes", kb.Packed, index.Edition(), builtin.Stamp(), build()} {
		fmt.Fprintf(h, "%q\n", fmt.Sprint(part))
	}
	files.Digest(h)
	return store.Key(h.Sum(nil))
}

// build tells this build of the program from others as well as it can be done
// without reading the program through: by the versions that it was built of, and
// by the size and the time of its file, which also tell apart what is built
// between two versions.
func build() string {
	t := version()
	if info, ok := debug.ReadBuildInfo(); ok {
		t += "\n" + info.String()
	}
	if file, err := os.Executable(); err == nil {
		if info, err := os.Stat(file); err == nil {
			t += fmt.Sprintf("\n%d bytes of %d", info.Size(), info.ModTime().UnixNano())
		}
	}
	return t
}
