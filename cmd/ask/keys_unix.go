//go:build linux || darwin

package main

import (
	"os"

	"golang.org/x/sys/unix"
)

// keysOnly has Ctrl-C come as a key like any other for as long as the line editor
// is open. The editor sees to that only once its prompt stands on the screen: a
// Ctrl-C a moment too soon, or while an answer is worked out, would end the
// program and lose the boat that is talked of. Closing the editor puts the
// terminal back as it was.
func keysOnly(terminal *os.File) {
	mode, err := unix.IoctlGetTermios(int(terminal.Fd()), getTermios)
	if err != nil {
		return // no terminal of this kind: the editor's own way stays
	}
	mode.Lflag &^= unix.ISIG
	_ = unix.IoctlSetTermios(int(terminal.Fd()), setTermios, mode)
}
