package main

import (
	"slices"
	"strings"
	"testing"

	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
)

func TestSteering(t *testing.T) {
	for said, want := range map[string]string{
		":help": ":help", ":HELP": ":help", ": help": ":help", ":Help.": ":help", "help": ":help", "?": ":help", ":h": ":help",
		":quit now": ":quit now", "Quit": ":quit", "exit.": ":quit", ":Q": ":quit",
		" :Why  thrust.need ": ":why thrust.need", ":why\tthrust.need": ":why thrust.need", ":keep Robin's jon": ":keep Robin's jon",
		":hlep": ":hlep", ":new": ":fresh", ":save heron": ":keep heron",
		// Talk stays as it is.
		"the motor quits after an hour": "the motor quits after an hour", "help me with a shaft": "help me with a shaft",
		"quit quitting": "quit quitting", ":5 ft": ":5 ft", ":": ":", ":-)": ":-)", "": "", "16 ft jon": "16 ft jon",
	} {
		if got := steering(said); got != want {
			t.Errorf("%q is taken for %q, want %q", said, got, want)
		}
	}
	for said, want := range map[string]bool{":quit": true, "exit": true, ":Quit.": true, "quits": false, ":quite": false, "": false} {
		if isQuit(said) != want {
			t.Errorf("%q leaves: %v, want %v", said, !want, want)
		}
	}
}

// TestWordsOfADrill: without a colon, help is the drill's own while one goes on.
func TestWordsOfADrill(t *testing.T) {
	var out strings.Builder
	if err := run([]string{"--home", t.TempDir(), "--json"}, strings.NewReader("help\n:drill shaft\nhelp\n:HELP\n"), &out, &out); err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(strings.TrimSpace(out.String()), "\n")
	if len(lines) != 4 {
		t.Fatalf("%d answers, want 4:\n%s", len(lines), out.String())
	}
	for i, all := range []bool{true, false, false, true} {
		if strings.Contains(lines[i], "Words that steer") != all {
			t.Errorf("answer %d holds the help text: %v, want %v", i+1, !all, all)
		}
	}
}

func TestFlagFaults(t *testing.T) {
	for _, x := range []struct{ args, err, hint string }{
		{"--unit metric x", "unknown flag: --unit", "did you mean --units?"},
		{"--jsn x", "unknown flag: --jsn", "did you mean --json?"},
		{"--no-colour x", "unknown flag: --no-colour", "did you mean --no-color?"},
		{"--tra Robin", "unknown flag: --tra", "did you mean --trainee?"},
		{"--metric x", "unknown flag: --metric", "a question that holds a dash goes in quotes, or after --"},
		{"-5 degrees", "unknown flag: -5", "a question that holds a dash goes in quotes, or after --"},
		{"--batch", "--batch wants a value and got none", "ask --batch FILE"},
		{"--why= x", "--why wants a value and got an empty one", "ask --why FIGURE"},
		{"--json=perhaps x", `--json: "perhaps" is neither true nor false`, ""},
		{"--seed many --drill", `--seed: "many" is no whole number from 0 upwards`, ""},
		{"--batch nowhere.jsonl", "--batch: the file nowhere.jsonl does not exist", ""},
		{"--stock nowhere x", "--stock: the folder nowhere does not exist", ""},
		{"--config nowhere.yaml x", "settings: the file nowhere.yaml does not exist", ""},
		{"--check-notes nowhere", "notes: the folder nowhere does not exist", ""},
	} {
		var out strings.Builder
		err := run(strings.Fields(x.args), strings.NewReader(""), &out, &out)
		if status(err) != statusUsage || err.Error() != x.err {
			t.Errorf("ask %s: status %d, %v; want %s", x.args, status(err), err, x.err)
			continue
		}
		report(&out, err)
		if !strings.Contains(out.String(), "hint: "+x.hint+"\n") && x.hint != "" {
			t.Errorf("ask %s: hints are\n%swant %q", x.args, out.String(), x.hint)
		}
	}
}

func TestCompletions(t *testing.T) {
	d := &desk{set: settings{Home: t.TempDir()}}
	for _, name := range []string{"heron", "pike two"} {
		if _, err := d.boats().Keep(name, card.Card{Facts: []card.Fact{{Slot: "boat.hull", Text: "jon", Said: "jon"}}}); err != nil {
			t.Fatal(err)
		}
	}
	figures := []answer.Figure{{ID: "shaft.need"}, {ID: "shaft.class"}, {ID: "thrust.need"}, {ID: "shaft.need"}}
	for line, want := range map[string][]string{
		":un":          {":undo", ":units metric", ":units us"},
		":why ":        {":why shaft.class", ":why shaft.need", ":why thrust.need"},
		":why t":       {":why thrust.need"},
		":open p":      {":open pike two"},
		":forget ":     {":forget heron", ":forget pike two"},
		":units m":     {":units metric"},
		":drill sh":    {":drill shaft"},
		":keep ":       nil,
		"16 ft jon":    {"16 ft jon "},
		":nothing so ": nil,
	} {
		if got := d.completions(line, figures); !slices.Equal(got, want) {
			t.Errorf("%q is completed to %q, want %q", line, got, want)
		}
	}
}
