package kb

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

func TestPreparedNotesAreFresh(t *testing.T) {
	want, err := Prepare()
	if err != nil {
		t.Fatal(err)
	}
	if want != preparedText {
		t.Error("the prepared notes are stale; run: go generate ./kb")
	}
}

func TestPreparedNotesAreWhatParseReads(t *testing.T) {
	files, err := builtinFiles.ReadDir("notes")
	if err != nil || len(files) == 0 {
		t.Fatal(err, len(files))
	}
	for _, f := range files {
		file := "notes/" + f.Name()
		data, err := builtinFiles.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		want, _ := Parse(file, data)
		got, ok := readPrepared(writePrepared(want))
		got.File = file
		if diff := cmp.Diff(want, got, cmpopts.IgnoreUnexported(Note{}), cmpopts.EquateEmpty()); diff != "" || !ok {
			t.Errorf("%s: sound %v (-parsed +prepared):\n%s", file, ok, diff)
		}
	}
}

// TestChangedNoteIsReadAnew shows that a note is never answered from an older
// edition of its file.
func TestChangedNoteIsReadAnew(t *testing.T) {
	files, _ := builtinFiles.ReadDir("notes")
	file := "notes/" + files[0].Name()
	data, err := builtinFiles.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	n := readBuiltin(file, append(data, "\n## A further heading\n\nA further sentence.\n"...))
	if last := n.Passages[len(n.Passages)-1]; last.Text != "A further sentence." {
		t.Errorf("the last passage is %q", last.Text)
	}
}

func TestDamagedPreparedTextIsRefused(t *testing.T) {
	n, _ := Parse("notes/x.md", []byte("# X\n\n## One\n\nText.\n\n```example\nask: why\nshaft.need: 40 in\n```\n"))
	whole := writePrepared(n)
	for _, damaged := range []string{"", "x", strings.Replace(whole, "passage", "message", 1), strings.Replace(whole, itemMark, " ", 1), whole + fieldMark} {
		if _, ok := readPrepared(damaged); ok {
			t.Errorf("%q is taken for a note", damaged)
		}
	}
}
