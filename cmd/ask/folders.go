package main

import (
	"os"
	"path/filepath"
	"runtime"
)

// folders says where the user's files stand: each kind where the system keeps
// it, or all of them in one folder that was named, such as one on a stick that
// is carried about.
type folders struct{ home string }

func (s settings) folders() folders { return folders{s.Home} }

// settings is the settings file, empty on a machine without a home.
func (f folders) settings() string {
	if f.home != "" {
		return filepath.Join(f.home, "ask.yaml")
	}
	dir := os.Getenv("XDG_CONFIG_HOME")
	if dir == "" {
		var err error
		if dir, err = os.UserConfigDir(); err != nil {
			return ""
		}
	}
	return filepath.Join(dir, "ask", "ask.yaml")
}

// state is where what the program remembers between runs is kept, empty on a
// machine without a home.
func (f folders) state() string { return f.own("XDG_STATE_HOME", "state") }

// data is where what a user wants kept stands, empty on a machine without a home.
func (f folders) data() string { return f.own("XDG_DATA_HOME", "share") }

// cache is where what can be made again is kept, empty on a machine without a
// home.
func (f folders) cache() string {
	if f.home != "" {
		return filepath.Join(f.home, "cache")
	}
	if dir, err := os.UserCacheDir(); err == nil && filepath.IsAbs(dir) {
		return filepath.Join(dir, "ask")
	}
	return ""
}

func (f folders) own(variable, local string) string {
	if f.home != "" {
		return f.home
	}
	if dir := os.Getenv(variable); filepath.IsAbs(dir) {
		return filepath.Join(dir, "ask")
	}
	if runtime.GOOS == "windows" || runtime.GOOS == "darwin" {
		if dir, err := os.UserConfigDir(); err == nil {
			return filepath.Join(dir, "ask")
		}
		return ""
	}
	if home, err := os.UserHomeDir(); err == nil && home != "" {
		return filepath.Join(home, ".local", local, "ask")
	}
	return ""
}
