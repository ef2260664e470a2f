package sheet

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"image/png"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"heronlake.example/ask/reasoner/answer"
)

// browser finds Chromium, or skips the test where there is none.
func browser(t *testing.T) string {
	t.Helper()
	if testing.Short() {
		t.Skip("a browser takes some seconds")
	}
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	t.Skip("no Chromium on this machine (Debian: apt-get install chromium): the sheet was not printed")
	return ""
}

// shown opens a page without a window and returns what the browser logged, and
// the requests that the page made. The net log lists the browser's own as well,
// which have no page for an origin.
func shown(t *testing.T, page string, args ...string) (logged string, requests []string) {
	t.Helper()
	dir := t.TempDir()
	file, netlog := filepath.Join(dir, "sheet.html"), filepath.Join(dir, "net.json")
	if err := os.WriteFile(file, []byte(page), 0o600); err != nil {
		t.Fatal(err)
	}
	args = append(args, "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
		"--disable-component-update", "--disable-sync", "--disable-extensions", "--no-default-browser-check", "--disable-dev-shm-usage",
		"--enable-logging=stderr", "--log-net-log="+netlog, "--user-data-dir="+filepath.Join(dir, "profile"), "file://"+file)
	var out []byte
	var err error
	for range 2 { // on a busy machine a browser may not come up at once
		ctx, cancel := context.WithTimeout(t.Context(), time.Minute)
		out, err = exec.CommandContext(ctx, browser(t), args...).CombinedOutput()
		cancel()
		if err == nil {
			break
		}
	}
	if err != nil {
		t.Fatalf("chromium: %v\n%s", err, out)
	}
	data, err := os.ReadFile(netlog)
	if err != nil {
		t.Fatal(err)
	}
	var log struct {
		Events []struct {
			Params struct {
				URL       string `json:"url"`
				Initiator string `json:"initiator"`
			} `json:"params"`
		} `json:"events"`
	}
	if err := json.Unmarshal(data, &log); err != nil {
		t.Fatalf("net log: %v", err)
	}
	for _, e := range log.Events {
		if p := e.Params; p.URL != "" && p.Initiator != "" && p.Initiator != "not an origin" {
			requests = append(requests, p.URL)
		}
	}
	return string(out), requests
}

// pages counts the pages of a printed file.
func pages(t *testing.T, pdf string) int {
	t.Helper()
	data, err := os.ReadFile(pdf)
	if err != nil {
		t.Fatal(err)
	}
	return len(regexp.MustCompile(`/Type ?/Page\b[^s]`).FindAll(data, -1))
}

// TestPrintsOnTwoPages prints a usual sheet, the fullest in each size of type,
// and one with every list full beyond its limit.
func TestPrintsOnTwoPages(t *testing.T) {
	browser(t)
	sheets := map[string]answer.Answer{"usual": fitted(), "every list full": most()}
	for i := range settings[:len(settings)-1] {
		sheets[fmt.Sprint("fullest in setting ", i)] = fullOf(i)
	}
	for name, a := range sheets {
		for _, paper := range []string{"A4", "Letter"} {
			t.Run(name+" on "+paper, func(t *testing.T) {
				page := strings.Replace(written(t, a), "@page {", "@page { size: "+paper+";", 1)
				pdf := filepath.Join(t.TempDir(), "sheet.pdf")
				logged, requests := shown(t, page, "--print-to-pdf="+pdf, "--no-pdf-header-footer")
				if n := pages(t, pdf); n < 1 || n > 2 {
					t.Errorf("%d pages", n)
				}
				quiet(t, logged, requests)
			})
		}
	}
}

// TestShowsItsPictures takes a screenshot and looks for ink.
func TestShowsItsPictures(t *testing.T) {
	browser(t)
	shot := filepath.Join(t.TempDir(), "sheet.png")
	logged, requests := shown(t, written(t, fitted()), "--screenshot="+shot, "--window-size=900,1800", "--hide-scrollbars")
	quiet(t, logged, requests)
	data, err := os.ReadFile(shot)
	if err != nil {
		t.Fatal(err)
	}
	img, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	dark, coloured := 0, 0
	for y := range img.Bounds().Dy() {
		for x := range img.Bounds().Dx() {
			r, g, b, _ := img.At(x, y).RGBA()
			if r < 0x4000 && g < 0x4000 && b < 0x4000 {
				dark++
			}
			if max(r, g, b)-min(r, g, b) > 0x1000 {
				coloured++
			}
		}
	}
	all := img.Bounds().Dx() * img.Bounds().Dy()
	if dark*100 < all || dark*3 > all {
		t.Errorf("%d of %d points are dark: want ink on paper", dark, all)
	}
	if coloured > 0 {
		t.Errorf("%d points are coloured: the sheet is for black and white", coloured)
	}
}

// TestRequestsAreSeen makes sure that the two tests above would see one.
func TestRequestsAreSeen(t *testing.T) {
	browser(t)
	page := `<!DOCTYPE html><title>x</title><img src="http://127.0.0.1:9/picture.png"><script>console.error("loud")</script>`
	logged, requests := shown(t, page, "--print-to-pdf="+filepath.Join(t.TempDir(), "x.pdf"))
	if !strings.Contains(strings.Join(requests, " "), "http://127.0.0.1:9/picture.png") {
		t.Errorf("a picture from outside was not seen among %q", requests)
	}
	if !strings.Contains(logged, "CONSOLE") {
		t.Error("a console message was not seen")
	}
}

// quiet fails for a message of the page's console and for a request that left
// the file.
func quiet(t *testing.T, logged string, requests []string) {
	t.Helper()
	for line := range strings.Lines(logged) {
		if strings.Contains(line, "CONSOLE") {
			t.Error("console:", line)
		}
	}
	for _, u := range requests {
		if !strings.HasPrefix(u, "file:") && !strings.HasPrefix(u, "data:") && !strings.HasPrefix(u, "about:") {
			t.Error("the sheet asked for", u)
		}
	}
}
