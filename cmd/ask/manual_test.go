package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/spf13/pflag"
)

// TestHelpHasEveryFlag holds the help text against the flags: completions and
// the manual page are read off the text.
func TestHelpHasEveryFlag(t *testing.T) {
	told := map[string]flagHelp{}
	for _, f := range helpFlags() {
		if f.meaning == "" {
			t.Errorf("help says nothing about --%s", f.name)
		}
		told[f.name] = f
	}
	var set settings
	flags, _ := newFlags(&set)
	flags.VisitAll(func(f *pflag.Flag) {
		h, ok := told[f.Name]
		delete(told, f.Name)
		switch {
		case !ok:
			t.Errorf("help does not list --%s", f.Name)
		case (h.wants == "") != (f.Value.Type() == "bool"):
			t.Errorf("help has --%s wanting %q, the program takes a %s", f.Name, h.wants, f.Value.Type())
		}
		if row := slices.IndexFunc(settingRows, func(s setting) bool { return s.name == f.Name }); row >= 0 && settingRows[row].oneOf != nil {
			if want := settingRows[row].oneOf[1:]; !slices.Equal(h.words(), want) {
				t.Errorf("help has --%s taking %q, the program takes %q", f.Name, h.words(), want)
			}
		}
	})
	for name := range told {
		t.Errorf("help lists --%s, which the program does not take", name)
	}
	var shells []string
	for _, c := range completers {
		shells = append(shells, c.shell)
	}
	for _, f := range helpFlags() {
		if f.name == "completion" && !slices.Equal(f.words(), shells) {
			t.Errorf("help offers completion for %q, the program for %q", f.words(), shells)
		}
	}
}

func TestManualHoldsTheHelp(t *testing.T) {
	page := manual("v0")
	for _, want := range []string{".TH ASK 1", ".SH NAME\nask \\- which", ".SH SYNOPSIS\n.nf\nask \"18", ".SH DESCRIPTION\n.PP\nSay what", ".SH FLAGS\n.TP\n", ".B \\-\\-json\nwrite answers", ".SH SETTINGS\n.PP\nask/ask.yaml", ".SH EXIT STATUS\n.PP\n0 answered"} {
		if !strings.Contains(page, want) {
			t.Errorf("the manual page lacks %q:\n%s", want, page)
		}
	}
	// Every word of the help text is in the page, none is lost between the two.
	plain := strings.NewReplacer(`\-`, "-", `\&`, "", `\e`, `\`).Replace(page)
	for _, w := range strings.Fields(help) {
		if !strings.Contains(strings.ToLower(plain), strings.ToLower(strings.TrimSuffix(w, ":"))) {
			t.Errorf("the manual page lacks the word %q", w)
		}
	}
}

// TestManualFormats hands the page to the system's formatter, where there is one.
func TestManualFormats(t *testing.T) {
	groff, err := exec.LookPath("groff")
	if err != nil {
		t.Skip("groff is not installed")
	}
	cmd := exec.Command(groff, "-man", "-Tascii", "-ww")
	cmd.Stdin = strings.NewReader(manual("v0"))
	var faults strings.Builder
	cmd.Stderr = &faults
	out, err := cmd.Output()
	if err != nil || faults.Len() > 0 || !strings.Contains(string(out), "--batch") {
		t.Errorf("groff: %v\n%s", err, faults.String())
	}
}

// TestCompletionsAreSound has each shell that is installed read its script, and
// bash complete a flag and a value with it.
func TestCompletionsAreSound(t *testing.T) {
	for _, c := range completers {
		script, err := completion(c.shell)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range helpFlags() {
			if !strings.Contains(script, f.name) {
				t.Errorf("%s: --%s is missing", c.shell, f.name)
			}
		}
		check := map[string][]string{"bash": {"bash", "-n"}, "zsh": {"zsh", "-n"}, "fish": {"fish", "--no-execute"}}[c.shell]
		if check == nil {
			continue
		}
		if _, err := exec.LookPath(check[0]); err != nil {
			continue
		}
		file := filepath.Join(t.TempDir(), "script")
		if err := os.WriteFile(file, []byte(script), 0o600); err != nil {
			t.Fatal(err)
		}
		if out, err := exec.Command(check[0], append(check[1:], file)...).CombinedOutput(); err != nil {
			t.Errorf("%s: %v\n%s", c.shell, err, out)
		}
	}
	bash, err := exec.LookPath("bash")
	if err != nil {
		t.Skip("bash is not installed")
	}
	script, _ := completion("bash")
	for _, test := range []struct{ words, want string }{
		{"ask --uni", "--units"},
		{"ask --units m", "metric"},
		{"ask --completion f", "fish"},
	} {
		last := len(strings.Fields(test.words)) - 1
		run := script + "\nCOMP_WORDS=(" + test.words + ") COMP_CWORD=" + string(rune('0'+last)) + "\n_ask\necho \"${COMPREPLY[*]}\"\n"
		out, err := exec.Command(bash, "--norc", "-c", run).CombinedOutput()
		if got := strings.TrimSpace(string(out)); err != nil || got != test.want {
			t.Errorf("bash completes %q with %q (%v), want %q", test.words, got, err, test.want)
		}
	}
	if _, err := completion("tcsh"); err == nil {
		t.Error("a shell that is not known is accepted")
	}
}
