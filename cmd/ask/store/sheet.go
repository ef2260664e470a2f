package store

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// ErrExists says that a file is there already and may not be replaced.
var ErrExists = errors.New("the file is there already")

// Put writes a file for others to read (0644), whole or not at all. The folder
// must be there. A file that is there already is replaced only with replace;
// otherwise ErrExists.
func Put(path string, data []byte, replace bool) (err error) {
	dir := filepath.Dir(path)
	switch info, err := os.Stat(dir); {
	case errors.Is(err, fs.ErrNotExist):
		return fmt.Errorf("the folder %s does not exist", dir)
	case err != nil:
		return err
	case !info.IsDir():
		return fmt.Errorf("%s is no folder", dir)
	}
	switch info, err := os.Stat(path); {
	case err == nil && !info.Mode().IsRegular():
		return fmt.Errorf("%s is no regular file", path)
	case err == nil && !replace:
		return ErrExists
	}
	f, err := os.CreateTemp(dir, ".new-*")
	if err != nil {
		return err
	}
	temp := f.Name()
	defer func() {
		if err != nil {
			f.Close()
			os.Remove(temp)
		}
	}()
	if _, err := f.Write(data); err != nil {
		return err
	}
	if err := f.Chmod(0o644); err != nil && !errors.Is(err, errors.ErrUnsupported) {
		return err
	}
	if err := f.Sync(); err != nil {
		return err
	}
	if err := f.Close(); err != nil {
		return err
	}
	if !replace {
		// A link, unlike a rename, does not replace what came in between.
		switch err := os.Link(temp, path); {
		case err == nil:
			return os.Remove(temp)
		case errors.Is(err, fs.ErrExist):
			return ErrExists
		}
	}
	if err := os.Rename(temp, path); err != nil {
		return err
	}
	syncFolder(dir)
	return nil
}

// syncFolder makes a rename last through a loss of power, where the system can.
func syncFolder(dir string) {
	if d, err := os.Open(dir); err == nil {
		_ = d.Sync() // some systems refuse it for a folder; the file itself is safe
		d.Close()
	}
}
