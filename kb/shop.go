package kb

import (
	"bytes"
	"errors"
	"fmt"
	"hash"
	"io"
	"io/fs"
	"path"
	"slices"
	"strconv"
	"strings"
)

// Bounds of a shop's folder, so that a folder given by mistake is refused in a
// moment: files, folders below one another, and bytes in all.
const (
	maxShopFiles = 20000
	maxShopDepth = 8
	maxShopBytes = 64 << 20
)

// Folder is a shop's own notes as they stand on the disk, read and not parsed. A
// Folder does not change and may be shared.
type Folder struct {
	files  []shopFile
	faults []Fault // of files that could not be read
	size   int
}

// shopFile is one file of a folder.
type shopFile struct {
	name string
	data []byte
}

// Load reads a shop's own notes: the files *.md of a folder and the folders in
// it. A file that cannot be read as a note is refused by name and the others
// still load. Links, hidden folders and anything but plain files are passed by.
func Load(fsys fs.FS) (*Library, []Fault) { return ReadFolder(fsys).Parse() }

// ReadFolder is the first half of Load: it reads the files, and Parse is the rest.
func ReadFolder(fsys fs.FS) *Folder {
	f := &Folder{}
	refuse := func(file, text string) { f.faults = append(f.faults, Fault{File: file, Text: text}) }
	buf := make([]byte, maxNote+1)
	err := fs.WalkDir(fsys, ".", func(file string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			refuse(file, "cannot be read: "+reason(err))
			if d != nil && d.IsDir() {
				return fs.SkipDir
			}
			return nil
		case d.IsDir():
			if file != "." && (strings.HasPrefix(d.Name(), ".") || strings.Count(file, "/") >= maxShopDepth) {
				return fs.SkipDir
			}
			return nil
		case strings.ToLower(path.Ext(file)) != ".md" || strings.HasPrefix(d.Name(), "."):
			return nil
		case d.Type()&fs.ModeSymlink != 0:
			refuse(file, "a link is not followed; put the file itself here")
			return nil
		case !d.Type().IsRegular():
			refuse(file, "not a plain file")
			return nil
		case len(f.files) >= maxShopFiles || f.size > maxShopBytes:
			refuse(file, fmt.Sprintf("and what follows is left out: a folder of notes holds at most %d files and %d MiB", maxShopFiles, maxShopBytes>>20))
			return fs.SkipAll
		}
		n, err := readSome(fsys, file, buf)
		if err != nil {
			refuse(file, "cannot be read: "+reason(err))
			return nil
		}
		f.size += n
		f.files = append(f.files, shopFile{file, bytes.Clone(buf[:n])})
		return nil
	})
	if err != nil {
		refuse(".", reason(err))
	}
	return f
}

// Size is the bytes of all files together, of one that is too long to be a note
// only the first ones.
func (f *Folder) Size() int { return f.size }

// Digest writes the names, the sizes and the content of all files to a hash, and
// what is said of those that could not be read: all that Parse depends on, so
// that two folders that it reads differently differ in their bytes.
func (f *Folder) Digest(to hash.Hash) {
	var w writer
	w.faults(f.faults)
	for _, file := range f.files {
		w.text(file.name)
		w.number(len(file.data))
		to.Write(w.data) // a hash takes everything
		to.Write(file.data)
		w.data = w.data[:0]
	}
	to.Write(w.data)
}

// Parse is the second half of Load: it makes a library of the files, and names
// those that are left out.
func (f *Folder) Parse() (*Library, []Fault) {
	var notes []Note
	faults := slices.Clone(f.faults)
	owner := map[string]string{} // note id to file
	refuse := func(file, text string) { faults = append(faults, Fault{File: file, Text: text}) }
	for _, file := range f.files {
		n, bad := parse(file.name, file.data, true)
		faults = append(faults, bad...)
		switch {
		case len(bad) > 0:
		case len(n.Passages) == 0:
			refuse(file.name, "holds no text")
		case owner[n.ID] != "":
			refuse(file.name, fmt.Sprintf("id %q is already that of %s", n.ID, owner[n.ID]))
		default:
			owner[n.ID] = file.name
			notes = append(notes, n)
		}
	}
	sortFaults(faults)
	return NewLibrary(notes...), faults
}

// readSome reads what a file holds into a buffer, as far as there is room.
func readSome(fsys fs.FS, file string, buf []byte) (int, error) {
	f, err := fsys.Open(file)
	if err != nil {
		return 0, err
	}
	defer f.Close()
	n, err := io.ReadFull(f, buf)
	if err == io.EOF || err == io.ErrUnexpectedEOF {
		err = nil
	}
	return n, err
}

// reason is an error without the path, which the fault already names.
func reason(err error) string {
	var p *fs.PathError
	if errors.As(err, &p) {
		return p.Err.Error()
	}
	return err.Error()
}

// makeShop marks a note as the shop's, cuts its long passages into pieces that
// can be quoted, and gives each an id of its own.
func (n *Note) makeShop() {
	n.Shop = true
	var out []Passage
	used := map[string]int{} // how often a slug has come
	for _, p := range n.Passages {
		for _, text := range pieces(p.Text, longestPassage) {
			q := p
			q.Text, q.Shop = text, true
			for used[p.ID]++; used[p.ID] > 1; used[p.ID]++ {
				q.ID = p.ID + "-" + strconv.Itoa(used[p.ID])
				if used[q.ID] == 0 {
					used[q.ID] = 1
					break
				}
			}
			out = append(out, q)
		}
	}
	n.Passages = out
}

// pieces cuts a text where a block, a line or a sentence ends, so that no piece
// that can be cut is longer than so many words.
func pieces(text string, words int) []string {
	for _, end := range []string{"\n\n", "\n", ". "} {
		if len(strings.Fields(text)) <= words {
			break
		}
		parts := strings.SplitAfter(text, end)
		if len(parts) == 1 {
			continue
		}
		var out []string
		open := ""
		for _, part := range parts {
			if open != "" && len(strings.Fields(open))+len(strings.Fields(part)) > words {
				out = append(out, pieces(strings.TrimSpace(open), words)...)
				open = ""
			}
			open += part
		}
		return append(out, pieces(strings.TrimSpace(open), words)...)
	}
	if text = strings.TrimSpace(text); text == "" {
		return nil
	}
	return []string{text}
}
