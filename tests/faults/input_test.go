package faults

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

var inputFaults = []fault{
	{"batch: the file is missing", func(t *testing.T) string {
		home := folder(t)
		return at(t, home).refuses(2, "--batch", filepath.Join(home, "questions.jsonl"))
	}},
	{"batch: a folder", func(t *testing.T) string {
		home := folder(t)
		return at(t, home).refuses(2, "--batch", home)
	}},
	{"batch: lines that are no questions, and one cut off", func(t *testing.T) string {
		r := at(t, folder(t))
		r.input = "{\"question\": \"" + question + "\"}\n[]\n\xff\xfe\x00\n" + strings.Repeat("x", 200000) + "\n{\"question\": \"" + question + "\", \"sess"
		got := r.ask("--json", "--batch", "-")
		lines := strings.Split(strings.TrimSpace(got.out), "\n")
		if got.status != 0 || len(lines) != 5 || strings.Count(got.out, `"unreadable"`) != 4 || !strings.Contains(lines[0], "thrust.rule") {
			t.Fatalf("status %d, %d answers\n%s", got.status, len(lines), got.err)
		}
		return "an answer to each line; those that are none get the problem \"unreadable\""
	}},
	{"batch: JSON nested without end", func(t *testing.T) string {
		r := at(t, folder(t))
		r.input = strings.Repeat("[", 60000) + "\n" + `{"question": "` + question + `"}` + "\n"
		got := r.ask("--json", "--batch", "-")
		if got.status != 0 || strings.Count(got.out, "\n") != 2 || strings.Count(got.out, `"unreadable"`) != 1 {
			t.Fatalf("status %d\n%s", got.status, got.err)
		}
		return "an answer to each line; those that are none get the problem \"unreadable\""
	}},
	{"question: escape sequences, direction marks, broken UTF-8", func(t *testing.T) string {
		r := at(t, folder(t))
		r.input = "18 ft \x1b[31maluminum\x1b]0;x\x07 \u202e1,900 lb\u2066 loaded \xff\xc0 windy \u009b lake\x00, and 7 \u200fqqq\n"
		text, data := r.ask(), r.ask("--json")
		if text.status != 0 || !strings.Contains(text.out, "Thrust") || data.status != 0 || !strings.Contains(data.out, `\u001b`) {
			t.Fatalf("status %d, %d\n%s%s", text.status, data.status, text.out, text.err)
		}
		return "answers; the marks are shown as question marks, in JSON as escapes"
	}},
	{"question: a megabyte on one line", func(t *testing.T) string {
		r := at(t, folder(t))
		r.input = strings.Repeat("18 ft aluminum ", 70000) + "\n"
		if got := r.ask(); got.status != 3 || !strings.Contains(got.out, "longer than a question can be") {
			t.Fatalf("status %d\n%s", got.status, got.out)
		}
		return "status 3: this line is longer than a question can be"
	}},
	{"question: nothing at all", func(t *testing.T) string {
		return at(t, folder(t)).refuses(2)
	}},
	{"output: the reader leaves after a line", func(t *testing.T) string {
		sh, err := exec.LookPath("sh")
		if err != nil {
			return ""
		}
		file, err := program()
		if err != nil {
			t.Fatal(err)
		}
		input := filepath.Join(folder(t), "many")
		if err := os.WriteFile(input, []byte(strings.Repeat(`{"question": "`+question+"\"}\n", 50)), 0o600); err != nil {
			t.Fatal(err)
		}
		cmd := exec.Command(sh, "-c", `"$0" --json --batch "$1" | head -n 1 | wc -l`, file, input)
		cmd.Env = at(t, folder(t)).environment()
		var faults strings.Builder
		cmd.Stderr = &faults
		out, err := cmd.Output()
		if err != nil || strings.TrimSpace(string(out)) != "1" || faults.Len() > 0 {
			t.Fatalf("%v: %q, and on standard error %q", err, out, faults.String())
		}
		return "leaves as well, in silence"
	}},
	{"sheet: a path out of reach", func(t *testing.T) string {
		home := folder(t)
		return at(t, home).refuses(1, "--sheet", filepath.Join(home, "none", "sheet.html"), question)
	}},
	{"sheet: a file that is there", func(t *testing.T) string {
		home := folder(t)
		path := file(t, home, "sheet.html", "mine")
		outcome := at(t, home).refuses(1, "--sheet", path, question)
		intact(t, path, "mine")
		return outcome
	}},
	{"sheet: markup, escape sequences and direction marks in a question", func(t *testing.T) string {
		home := folder(t)
		r := at(t, home)
		r.input = "18-foot aluminum <script>alert(1)</script> \x1b[31m \u202e , 1,900 lb loaded, windy lake, from \"<b>here</b>\"\n"
		for _, name := range []string{"sheet.html", "sheet.md"} {
			path := filepath.Join(home, name)
			if got := r.ask("--sheet", path); got.status != 0 {
				t.Fatalf("status %d\n%s%s", got.status, got.out, got.err)
			}
			data, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			if i := strings.IndexFunc(strings.ReplaceAll(string(data), "\t", " "), unsafe); i >= 0 || strings.Contains(string(data), "<script>alert") {
				t.Errorf("%s holds markup or marks of the question raw", name)
			}
		}
		return "the sheet holds them as plain text"
	}},
	{"sheet: the same in the shelf's names and in a kept boat", func(t *testing.T) string {
		home := folder(t)
		const evil = `\e[31m\e]0;x\a\u202e<script>alert(1)</script><img src=x onerror=alert(1)> | [x](javascript:alert(1))`
		raw := strings.NewReplacer(`\e`, "\x1b", `\a`, "\a", `\u202e`, "\u202e").Replace(evil)
		file(t, home, "shelf/motors.csv", strings.ReplaceAll(soundMotors, "Teal", raw))
		file(t, home, "data/ask/boats/heron.yaml", strings.Replace(soundBoat, "said: 18-foot", `said: "18-foot `+evil+`"`, 1))
		r := at(t, home)
		for _, name := range []string{"sheet.html", "sheet.md"} {
			path := filepath.Join(home, name)
			if got := r.ask("--stock", filepath.Join(home, "shelf"), "--boat", "heron", "--sheet", path, "small lake"); got.status != 0 || !strings.Contains(got.out, "Teal") && !strings.Contains(got.out, "alert") {
				t.Fatalf("status %d\n%s%s", got.status, got.out, got.err)
			}
			data, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			shown := strings.ReplaceAll(string(data), "\t", " ")
			for _, bad := range []string{"<script>alert", "<img src=x", "](javascript:"} {
				if strings.Contains(shown, bad) {
					t.Errorf("%s holds %q", name, bad)
				}
			}
			if i := strings.IndexFunc(shown, unsafe); i >= 0 {
				t.Errorf("%s holds %q raw", name, shown[i:min(len(shown), i+10)])
			}
			if !strings.Contains(shown, "alert(1") {
				t.Errorf("%s shows none of it", name)
			}
		}
		return "the sheet holds them as plain text"
	}},
	{"trainer's customer: escape sequences and direction marks", func(t *testing.T) string {
		home := folder(t)
		file(t, home, "customers/deck.yaml", "title: \"The \\e[31mred\\u202e deck\"\ntopic: shaft\nlevel: 2\n"+
			"says: \"18 foot vee, two aboard \\e]0;x\\a\\u202e. What shaft do I need?\"\nknows: \"The bow deck is 34 inches above the water\\e[2J.\"\n")
		return at(t, home).refuses(2, "--scenarios", filepath.Join(home, "customers"), "--drill", "shaft")
	}},
}
