// Package store is the only writer of files: what it writes is either there
// whole or not there at all.
//
//	store.go    replacing a file in one step
//	history.go  the lines typed at the prompt
//	boats.go    boats that were kept, a file each
//	scores.go   the trainees' records, a file each
//	sheet.go    a file that the person named
//	cache.go    what was costly to make and can be made again
//
// Limits: the step is one rename, which is whole on local disks; on a network
// share it is as whole as the share makes it.
package store

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// temporary stands between the name of a file and what tells its unfinished
// editions apart.
const temporary = ".new-"

// Replace writes a file for the user's eyes alone (0600), in one step: a reader
// sees the old content or the new, also when the program is killed half way.
// The folder is made where it is missing.
func Replace(path string, data []byte) (err error) {
	dir := filepath.Dir(path)
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return err
	}
	if info, err := os.Stat(path); err == nil && !info.Mode().IsRegular() {
		return &fs.PathError{Op: "replace", Path: path, Err: errors.New("no regular file")}
	}
	f, err := os.CreateTemp(dir, filepath.Base(path)+temporary+"*") // made with 0600
	if err != nil {
		return err
	}
	defer func() {
		if err != nil {
			f.Close()
			os.Remove(f.Name())
		}
	}()
	if _, err := f.Write(data); err != nil {
		return err
	}
	if err := f.Sync(); err != nil {
		return err
	}
	if err := f.Close(); err != nil {
		return err
	}
	if err := os.Rename(f.Name(), path); err != nil {
		return err
	}
	syncFolder(dir)
	return nil
}
