package kb

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
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

// Load reads a shop's own notes: the files *.md of a folder and the folders in
// it. A file that cannot be read as a note is refused by name and the others
// still load. Links, hidden folders and anything but plain files are passed by.
func Load(fsys fs.FS) (*Library, []Fault) {
	var (
		notes  []Note
		faults []Fault
		size   int
		owner  = map[string]string{} // note id to file
	)
	refuse := func(file, text string) { faults = append(faults, Fault{File: file, Text: text}) }
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
		case len(notes) >= maxShopFiles || size > maxShopBytes:
			refuse(file, fmt.Sprintf("and what follows is left out: a folder of notes holds at most %d files and %d MiB", maxShopFiles, maxShopBytes>>20))
			return fs.SkipAll
		}
		data, err := readSome(fsys, file, maxNote+1)
		if err != nil {
			refuse(file, "cannot be read: "+reason(err))
			return nil
		}
		size += len(data)
		n, bad := parse(file, data, true)
		faults = append(faults, bad...)
		switch {
		case len(bad) > 0:
			return nil
		case len(n.Passages) == 0:
			refuse(file, "holds no text")
		case owner[n.ID] != "":
			refuse(file, fmt.Sprintf("id %q is already that of %s", n.ID, owner[n.ID]))
		default:
			owner[n.ID] = file
			notes = append(notes, n)
		}
		return nil
	})
	if err != nil {
		refuse(".", reason(err))
	}
	sortFaults(faults)
	return NewLibrary(notes...), faults
}

// readSome reads at most limit bytes of a file.
func readSome(fsys fs.FS, file string, limit int64) ([]byte, error) {
	f, err := fsys.Open(file)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return io.ReadAll(io.LimitReader(f, limit))
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
