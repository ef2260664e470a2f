package faults

import (
	"errors"
	"os"
	"path/filepath"
	"syscall"
	"testing"
)

// smallDisk mounts a file system of 64 KiB; false where this is not allowed.
func smallDisk(t *testing.T, dir string) bool {
	if err := syscall.Mount("tmpfs", dir, "tmpfs", 0, "size=64k,mode=755"); err != nil {
		return false
	}
	t.Cleanup(func() { syscall.Unmount(dir, syscall.MNT_DETACH) })
	return true
}

// fill writes until no space is left.
func fill(t *testing.T, dir string) {
	t.Helper()
	f, err := os.Create(filepath.Join(dir, "filling"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	for {
		if _, err := f.Write(make([]byte, 1024)); errors.Is(err, syscall.ENOSPC) {
			return
		} else if err != nil {
			t.Fatal(err)
		}
	}
}
