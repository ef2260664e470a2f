// Package faults shows what the program does when its surroundings fail it, and
// keeps the table of it in DEVELOPERS.md.
//
//	faults_test.go    the rows and the table
//	files_test.go     files and folders that are missing, damaged, or no files
//	cache_test.go     what was made of a shop's many notes and kept
//	places_test.go    homes that are missing, locked or full
//	input_test.go     batches, pipes and questions that are hostile
//	killed_test.go    programs killed while they write, and many at once
//	terminal_test.go  terminals, and Ctrl-C in every state
//
// Limits: what needs root (a full disk) or Linux is left out elsewhere, and its
// row is then kept as it is.
package faults
