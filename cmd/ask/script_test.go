package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"ask": main})
}

// TestScripts plays the stories of tests/script against the real program, each
// in an empty home of its own.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir: "../../tests/script",
		Setup: func(env *testscript.Env) error {
			home := filepath.Join(env.WorkDir, "home")
			env.Setenv("HOME", home)
			env.Setenv("XDG_CONFIG_HOME", filepath.Join(home, "config"))
			env.Setenv("XDG_STATE_HOME", filepath.Join(home, "state"))
			env.Setenv("XDG_DATA_HOME", filepath.Join(home, "data"))
			env.Setenv("TERM", "xterm")
			return os.MkdirAll(home, 0o700)
		},
	})
}
