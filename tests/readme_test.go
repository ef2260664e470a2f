package tests

import (
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// TestDocumentsShowTheProgram plays what README.md and DEVELOPERS.md show. In a
// block marked "console" a line "$ ask ..." is a command and a line "ask> ..." a
// turn at the prompt; what stands below is what the program prints today.
func TestDocumentsShowTheProgram(t *testing.T) {
	played := 0
	for _, file := range []string{"../README.md", "../DEVELOPERS.md"} {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		for _, block := range consoleBlocks(string(data)) {
			played++
			playBlock(t, file, block)
		}
	}
	if played < 2 {
		t.Errorf("only %d blocks were played", played)
	}
}

func TestReadmeQuotesTheHelp(t *testing.T) {
	readme, err := os.ReadFile("../README.md")
	if err != nil {
		t.Fatal(err)
	}
	text, err := os.ReadFile("../cmd/ask/help.txt")
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(string(readme), "```console\n$ ask --help\n"+string(text)+"```\n") {
		t.Error("README.md does not quote cmd/ask/help.txt as it is")
	}
}

// consoleBlocks returns the blocks fenced as console.
func consoleBlocks(text string) []string {
	var blocks []string
	for {
		_, rest, ok := strings.Cut(text, "```console\n")
		if !ok {
			return blocks
		}
		block, rest, _ := strings.Cut(rest, "```\n")
		blocks, text = append(blocks, block), rest
	}
}

// playBlock plays either the commands of a block or the turns in it.
func playBlock(t *testing.T, file, block string) {
	if command, want, ok := strings.Cut(strings.TrimPrefix(block, "$ ask "), "\n"); ok && strings.HasPrefix(block, "$ ask ") {
		got, _ := ask(t, nil, "", arguments(command)...)
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%s: ask %s prints otherwise (-shown +printed):\n%s", file, command, diff)
		}
		return
	}
	var turns, want strings.Builder
	for l := range strings.Lines(block) {
		if question, ok := strings.CutPrefix(l, "ask> "); ok {
			turns.WriteString(question)
		} else {
			want.WriteString(l)
		}
	}
	if turns.Len() == 0 {
		t.Errorf("%s: a console block holds neither \"$ ask\" nor \"ask> \":\n%s", file, block)
		return
	}
	got, _ := ask(t, nil, turns.String())
	if diff := cmp.Diff(want.String(), got); diff != "" {
		t.Errorf("%s: a session prints otherwise (-shown +printed):\n%s", file, diff)
	}
}

// arguments divides a command at spaces outside double quotes.
func arguments(command string) []string {
	var args []string
	for i, part := range strings.Split(command, `"`) {
		if i%2 == 1 {
			args = append(args, part)
		} else {
			args = append(args, strings.Fields(part)...)
		}
	}
	return args
}
