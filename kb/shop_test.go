package kb

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
)

func TestLoad(t *testing.T) {
	lib, faults := Load(fstest.MapFS{
		"hours.md":             {Data: []byte("# When we are open\nSix days a week.")},
		"repair/battery.md":    {Data: []byte("---\nid: bench-test\ntags: [shop]\n---\n# Bench test\n## Load\nTen seconds.")},
		"repair/Bench-Test.md": {Data: []byte("# Another\nText.")},
		"broken.md":            {Data: []byte("---\nid: [\n---\nText.")},
		"empty.md":             {Data: []byte("\n")},
		"picture.md":           {Data: []byte{0x89, 'P', 'N', 'G', 0}},
		"notes.txt":            {Data: []byte("not Markdown")},
		".hidden/x.md":         {Data: []byte("hidden")},
		"link.md":              {Data: []byte("hours.md"), Mode: fs.ModeSymlink},
		"pipe.md":              {Mode: fs.ModeNamedPipe},
	})
	var ids []string
	for _, n := range lib.All() {
		ids = append(ids, n.ID)
		if !n.Shop || !n.Passages[0].Shop {
			t.Errorf("%s is not marked as the shop's", n.ID)
		}
	}
	if got := strings.Join(ids, " "); got != "bench-test hours" {
		t.Errorf("loaded %s", got)
	}
	var said []string
	for _, f := range faults {
		said = append(said, f.Error())
	}
	want := []string{
		"broken.md:2: front matter: did not find expected node content",
		"empty.md: holds no text",
		"link.md: a link is not followed; put the file itself here",
		"picture.md:1: holds a zero byte; a note is plain text",
		"pipe.md: not a plain file",
		"repair/battery.md: id \"bench-test\" is already that of repair/Bench-Test.md",
	}
	if strings.Join(said, "\n") != strings.Join(want, "\n") {
		t.Errorf("faults\n%s\nwant\n%s", strings.Join(said, "\n"), strings.Join(want, "\n"))
	}
}

// TestLoadFolder reads from the disk: a link to the folder itself, a folder
// that may not be opened.
func TestLoadFolder(t *testing.T) {
	dir := t.TempDir()
	write := func(name, text string) {
		t.Helper()
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	write("a.md", "# A\nOne.")
	if err := os.Symlink(dir, filepath.Join(dir, "round")); err != nil {
		t.Skip("no links here: ", err)
	}
	lib, faults := Load(os.DirFS(dir))
	if lib.Len() != 1 || len(faults) > 0 {
		t.Errorf("%d notes, faults %v", lib.Len(), faults)
	}
	if _, faults := Load(os.DirFS(filepath.Join(dir, "missing"))); len(faults) != 1 {
		t.Errorf("a missing folder: %v", faults)
	}
}

func TestShopPieces(t *testing.T) {
	sentence := strings.Repeat("word ", 49) + "end. "
	n, _ := parse("long.md", []byte("# Long\n## All\n"+strings.Repeat(sentence, 5)+"\n\nA last block."), true)
	for i, p := range n.Passages {
		if words := len(strings.Fields(p.Text)); words > longestPassage {
			t.Errorf("piece %d has %d words", i, words)
		}
	}
	if len(n.Passages) != 4 || n.Passages[0].ID != "long#all" || n.Passages[3].ID != "long#all-4" {
		t.Errorf("%d pieces, the last %+v", len(n.Passages), n.Passages[len(n.Passages)-1])
	}
}

func TestMerge(t *testing.T) {
	note := func(id string, shop bool) Note {
		return Note{ID: id, Shop: shop, Passages: []Passage{{ID: id + "#a", Note: id, Shop: shop}}}
	}
	all := NewLibrary(note("wire", false), note("plug", false)).Merge(NewLibrary(note("wire", true), note("rates", true)))
	var ids []string
	for _, n := range all.All() {
		ids = append(ids, n.ID+" "+n.Passages[0].ID)
	}
	if got := strings.Join(ids, ", "); got != "plug plug#a, rates rates#a, wire wire#a, wire-shop wire-shop#a" {
		t.Error(got)
	}
	if shop := all.Shop(); len(shop) != 2 {
		t.Errorf("%d shop notes", len(shop))
	}
	if p, ok := all.Passage("wire-shop#a"); !ok || !p.Shop || p.Note != "wire-shop" {
		t.Errorf("%+v", p)
	}
	if _, ok := all.Passage("wire#b"); ok {
		t.Error("found a passage that is not there")
	}
}
