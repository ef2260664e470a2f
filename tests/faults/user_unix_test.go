//go:build linux || darwin

package faults

import (
	"os"
	"os/exec"
	"path/filepath"
	"syscall"
	"testing"
)

func makeFIFO(t *testing.T, path string) bool { return syscall.Mkfifo(path, 0o644) == nil }

// asNobody has the program run by a user who may read the home and not write to
// it. Root is not stopped by permissions, so as root another user is taken.
func asNobody(r *run) bool {
	if os.Getuid() == 0 {
		r.as = func(cmd *exec.Cmd) {
			cmd.SysProcAttr = &syscall.SysProcAttr{Credential: &syscall.Credential{Uid: 65534, Gid: 65534}}
		}
		return true
	}
	err := filepath.WalkDir(r.home, func(path string, d os.DirEntry, err error) error {
		if err == nil && d.IsDir() {
			defer func() { err = os.Chmod(path, 0o555) }()
		}
		return err
	})
	r.t.Cleanup(func() {
		filepath.WalkDir(r.home, func(path string, d os.DirEntry, err error) error {
			if err == nil && d.IsDir() {
				return os.Chmod(path, 0o755)
			}
			return err
		})
	})
	return err == nil
}
