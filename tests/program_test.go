package tests

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"testing"
)

// scratch is a folder for the program under test.
var scratch string

func TestMain(m *testing.M) {
	os.Exit(func() int {
		var err error
		if scratch, err = os.MkdirTemp("", "ask-test-"); err != nil {
			fmt.Fprintln(os.Stderr, err)
			return 1
		}
		defer os.RemoveAll(scratch)
		return m.Run()
	}())
}

// program builds the program under test, once, and returns its path.
var program = sync.OnceValues(func() (string, error) {
	file := filepath.Join(scratch, "ask")
	if runtime.GOOS == "windows" {
		file += ".exe"
	}
	build := exec.Command("go", "build", "-buildvcs=false", "-o", file, "../cmd/ask")
	build.Env = append(os.Environ(), "CGO_ENABLED=0")
	if out, err := build.CombinedOutput(); err != nil {
		return "", fmt.Errorf("the program does not build: %w\n%s", err, out)
	}
	return file, nil
})

// ask runs the program with an input in an empty home and returns what it
// printed and its exit status.
func ask(t *testing.T, env []string, input string, args ...string) (out string, status int) {
	t.Helper()
	file, err := program()
	if err != nil {
		t.Fatal(err)
	}
	home := t.TempDir()
	cmd := exec.Command(file, args...)
	cmd.Stdin = strings.NewReader(input)
	// A later entry of the list goes before an earlier one.
	cmd.Env = append([]string{
		"HOME=" + home, "USERPROFILE=" + home, "AppData=" + home, "SystemRoot=" + os.Getenv("SystemRoot"),
		"XDG_CONFIG_HOME=" + home, "XDG_STATE_HOME=" + home, "PATH=" + os.Getenv("PATH"),
	}, env...)
	var stdout, stderr bytes.Buffer
	cmd.Stdout, cmd.Stderr = &stdout, &stderr
	err = cmd.Run()
	var exit *exec.ExitError
	if err != nil && !errors.As(err, &exit) {
		t.Fatal(err)
	}
	if strings.Contains(stderr.String(), "goroutine ") || strings.Contains(stderr.String(), "a fault of this program") {
		t.Fatalf("the program crashed on %q %q:\n%s", args, input, stderr.String())
	}
	return stdout.String(), cmd.ProcessState.ExitCode()
}
