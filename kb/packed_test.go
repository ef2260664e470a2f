package kb

import (
	"crypto/sha256"
	"io/fs"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

// packable is a folder with what a packed form could trip over: marks, notes
// without front matter, long passages, examples, and files that are refused.
var packable = fstest.MapFS{
	"hours.md":  {Data: []byte("# When we are open\nSix days a week.")},
	"marks.md":  {Data: []byte("---\ntitle: \"a\\x1db\\x1ec\\x1f\\x00d\"\ntopics: [\"\", \"a,b\", \"\\n\"]\nsources: [own]\nsee: [hours]\nreviewed: 2026-03-02\n---\n# x\n## One\nText \u00e9 {{thrust.rule | load.total=1900 lb}}.\n\n| a | b |\n| - | - |\n| 1 | 2 |\n\nSource: the bench.\n\n## Two\nMore.\n")},
	"long.md":   {Data: []byte("# Long\n## All\n" + strings.Repeat(strings.Repeat("word ", 49)+"end. ", 5) + "\n\n## All\nA last block.")},
	"worked.md": {Data: []byte("# Worked\n## One\nText.\n\n```example\nask: why\nshaft.need: 40 in\nmount: bow\n```\n")},
	"broken.md": {Data: []byte("---\nid: [\n---\nText.")},
	"empty.md":  {Data: []byte("\n")},
}

func TestUnpackGivesWhatWasPacked(t *testing.T) {
	for name, fsys := range map[string]fstest.MapFS{"folder": packable, "nothing": {}, "faults alone": {"empty.md": {}}} {
		want, faults := Load(fsys)
		got, gotFaults, err := Unpack(Pack(want, faults))
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if diff := cmp.Diff(faults, gotFaults); diff != "" {
			t.Errorf("%s: faults (-packed +unpacked):\n%s", name, diff)
		}
		if diff := cmp.Diff(want.All(), got.All(), cmpopts.IgnoreUnexported(Note{}), cmpopts.EquateEmpty()); diff != "" {
			t.Errorf("%s: notes (-packed +unpacked):\n%s", name, diff)
		}
		if len(got.Shop()) != want.Len() {
			t.Errorf("%s: %d of %d notes are the shop's", name, len(got.Shop()), want.Len())
		}
	}
}

// TestUnpackDamaged cuts and changes packed notes everywhere. A checksum is to
// find the damage; here it may be taken, and must not end the program.
func TestUnpackDamaged(t *testing.T) {
	whole := Pack(Load(packable))
	for i := range whole {
		if _, _, err := Unpack(whole[:i]); err == nil {
			t.Errorf("cut at %d of %d: taken", i, len(whole))
		}
		for _, change := range []byte{0x01, 0x80, 0xff} {
			damaged := slices.Clone(whole)
			damaged[i] ^= change
			if lib, _, err := Unpack(damaged); err == nil {
				lib.All()
			}
		}
	}
	if _, _, err := Unpack(append(slices.Clone(whole), 0)); err == nil {
		t.Error("a byte too many: taken")
	}
}

// TestFolderDigest differs for whatever is read differently.
func TestFolderDigest(t *testing.T) {
	file := func(text string) *fstest.MapFile { return &fstest.MapFile{Data: []byte(text)} }
	seen := map[string]string{}
	for why, fsys := range map[string]fstest.MapFS{
		"nothing":              {},
		"a file":               {"a.md": file("# A\nOne.")},
		"a letter changed":     {"a.md": file("# A\nOnE.")},
		"renamed":              {"b.md": file("# A\nOne.")},
		"an empty one besides": {"a.md": file("# A\nOne."), "b.md": file("")},
		"text moved over":      {"a.md": file("# A\nOne"), "b.md": file(".")},
		"a pipe besides":       {"a.md": file("# A\nOne."), "b.md": {Mode: fs.ModeNamedPipe}},
	} {
		h := sha256.New()
		ReadFolder(fsys).Digest(h)
		sum := string(h.Sum(nil))
		if other, ok := seen[sum]; ok {
			t.Errorf("%s and %s have one digest", why, other)
		}
		seen[sum] = why
	}
	h1, h2 := sha256.New(), sha256.New()
	ReadFolder(packable).Digest(h1)
	ReadFolder(packable).Digest(h2)
	if string(h1.Sum(nil)) != string(h2.Sum(nil)) {
		t.Error("one folder has two digests")
	}
}
