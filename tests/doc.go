// Package tests holds what can only be seen of the whole: stories played through
// the real program, sessions pasted in, who imports whom, and that the same
// question gives the same bytes.
//
//	script/            stories for the program, run by cmd/ask
//	sessions/          pasted conversations, run by sessions_test.go
//	layers_test.go     the arrows between the packages
//	determinism_test.go
//	readme_test.go     README and help text against the program
//	columns_test.go    README's tables of a shelf's columns against those read
//	release_test.go    a release, built in two places
//	platforms_test.go  other processors give the same answers
//	offline_test.go    no call that has to do with a network
//	search/            which passage a question finds, and how fast
//	faults/            what is damaged, missing, full or cut off
//	bench/             how long the program takes, and how much memory
//
// Limits: nothing here needs a network or a file outside the repository. The
// program under test is built once for a run, so the go command must be there.
package tests
