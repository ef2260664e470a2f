package main

import (
	"errors"
	"io/fs"
	"strings"
	"syscall"

	"github.com/spf13/pflag"

	"heronlake.example/ask/kb/words"
)

// flagFault says what is wrong with a flag in the program's own words, with the
// flag that may have been meant, or the value that is wanted.
func flagFault(err error) error {
	const listed = "ask --help lists the flags"
	var unknown *pflag.NotExistError
	var bare *pflag.ValueRequiredError
	var wrong *pflag.InvalidValueError
	switch {
	case errors.As(err, &unknown):
		if short := unknown.GetSpecifiedShortnames(); short != "" {
			return usage("a question that holds a dash goes in quotes, or after --\n"+listed, "unknown flag: -%s", short)
		}
		name := unknown.GetSpecifiedName()
		hint := "a question that holds a dash goes in quotes, or after --"
		if near := nearFlag(name); near != "" {
			hint = "did you mean --" + near + "?"
		}
		return usage(hint+"\n"+listed, "unknown flag: --%s", name)
	case errors.As(err, &bare):
		f := bare.GetFlag()
		return usage("ask --"+f.Name+" "+wants(f.Name)+"\n"+listed, "--%s wants a value and got none", f.Name)
	case errors.As(err, &wrong):
		f := wrong.GetFlag()
		kind := "no " + f.Value.Type()
		switch f.Value.Type() {
		case "bool":
			kind = "neither true nor false"
		case "uint64":
			kind = "no whole number from 0 upwards"
		}
		return usage("", "--%s: %q is %s", f.Name, wrong.GetValue(), kind)
	}
	return usage("a question that holds a dash goes in quotes, or after --\n"+listed, "%w", err)
}

// nearFlag is the flag that is within a slip or two of a name, or the only one
// that begins with it.
func nearFlag(name string) string {
	const most = 2
	best, slips := "", min(most, len(name)/2)+1
	var begun []string
	for _, f := range helpFlags() {
		if n := words.Slips(name, f.name, most); n < slips {
			best, slips = f.name, n
		}
		if strings.HasPrefix(f.name, name) {
			begun = append(begun, f.name)
		}
	}
	if best == "" && len(begun) == 1 {
		best = begun[0]
	}
	return best
}

// wants is the value of a flag as the help text has it.
func wants(name string) string {
	for _, f := range helpFlags() {
		if f.name == name && f.wants != "" {
			return f.wants
		}
	}
	return "VALUE"
}

// plainly takes the name of the system's call out of an error about a file, and
// says in words that it is not there. what is "file" or "folder".
func plainly(what string, err error) error {
	var at *fs.PathError
	switch {
	case !errors.As(err, &at):
		return err
	case errors.Is(err, fs.ErrNotExist), errors.Is(err, syscall.ENOTDIR):
		return errors.New("the " + what + " " + at.Path + " does not exist")
	case errors.Is(err, fs.ErrPermission):
		return errors.New("the " + what + " " + at.Path + " may not be read by this user")
	}
	return errors.New(at.Path + ": " + at.Err.Error())
}
