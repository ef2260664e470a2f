// Command ask fits electric trolling motors from plain talk: it reads a
// question, lets package reasoner answer it, and shows the answer as text or as
// JSON.
//
//	main.go      run, print one error, exit status
//	run.go       from arguments to the right door
//	settings.go  flags, environment and the settings file
//	flagfault.go what is wrong with a flag or a file that it names
//	folders.go   where the user's files stand
//	manual.go    the help text taken apart; the manual page
//	completion.go  the command line completed by a shell
//	fault.go     errors with their exit statuses and hints
//	wire.go      the notes, the index and the reasoner put together
//	notes.go     a shop's own notes, read or found ready in the cache
//	turn.go      one line in, one answer out: what all doors share
//	steering.go  the words that steer, as people write them
//	doors.go     words on the command line, and the pipe
//	batch.go     many questions, one JSON object a line
//	prompt.go    the line editor
//	keys_*.go    Ctrl-C as a key, by system
//	sheets.go    the fit sheet written to a file
//	boats.go     boats kept and opened
//	shelf.go     the shop's shelf, or the invented one
//	drill.go     a drill as a way for a conversation to go on
//	lesson.go    a lesson, as text or as a page
//	scores.go    the trainees' scores, as a table or for a spreadsheet
//	scenarios.go a trainer's own customers
//	lesson/      a lesson as a page to print
//	text/        an answer as a screen of text
//	sheet/       an answer as the sheet that a customer takes home
//	store/       the only writer of files
//	help.txt     the one help text
//
// Limits: nothing is computed, chosen or worded here beyond the program's own
// messages; no network is used; files are written by package store alone: the
// prompt's history, what a person told the program to keep, sheets by name, and a
// cache of a shop's many notes.
package main

import (
	"os"
	"runtime/debug"
)

// patience is the growth of the heap, in percent, before garbage is collected:
// one question is over at some megabytes, and a batch collects four times less
// often at the price of some tens of megabytes.
const patience = 400

func main() {
	debug.SetGCPercent(patience)
	err := run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)
	report(os.Stderr, err)
	os.Exit(status(err))
}
