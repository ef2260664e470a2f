package tests

import (
	"flag"
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

var update = flag.Bool("update", false, "write into the documents what the program prints today")

// TestDocumentsShowTheProgram plays what README.md and DEVELOPERS.md show. In a
// block marked "console" a line "$ ask ..." is a command and a line "ask> ..." a
// turn at the prompt; what stands below is what the program prints today. After
// a change that is meant, -update writes the blocks anew; read what changed.
func TestDocumentsShowTheProgram(t *testing.T) {
	played := 0
	for _, file := range []string{"../README.md", "../DEVELOPERS.md"} {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		text := string(data)
		for _, block := range consoleBlocks(text) {
			played++
			now := playBlock(t, file, block)
			if diff := cmp.Diff(block, now); diff != "" && !*update {
				t.Errorf("%s shows what the program does not print (-shown +printed):\n%s", file, diff)
			}
			text = strings.Replace(text, fence+block, fence+now, 1)
		}
		if *update && text != string(data) {
			if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
				t.Fatal(err)
			}
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

const fence = "```console\n"

// consoleBlocks returns the blocks fenced as console.
func consoleBlocks(text string) []string {
	var blocks []string
	for {
		_, rest, ok := strings.Cut(text, fence)
		if !ok {
			return blocks
		}
		block, rest, _ := strings.Cut(rest, "```\n")
		blocks, text = append(blocks, block), rest
	}
}

// playBlock plays the command or the turns of a block and returns the block as
// it should read.
func playBlock(t *testing.T, file, block string) string {
	if first, _, ok := strings.Cut(block, "\n"); ok && strings.HasPrefix(first, "$ ask ") {
		out, _ := ask(t, nil, "", arguments(strings.TrimPrefix(first, "$ ask "))...)
		return first + "\n" + out
	}
	shown, input, before := "", "", ""
	for l := range strings.Lines(block) {
		question, ok := strings.CutPrefix(l, "ask> ")
		if !ok {
			continue
		}
		input += question
		out, _ := ask(t, nil, input)
		shown += l + strings.TrimPrefix(strings.TrimPrefix(out, before), "\n") + "\n"
		before = out
	}
	if input == "" {
		t.Errorf("%s: a console block holds neither \"$ ask\" nor \"ask> \":\n%s", file, block)
	}
	return strings.TrimSuffix(shown, "\n")
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
