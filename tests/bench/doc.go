// Package bench measures how long the program takes: inside the process as Go
// benchmarks, and the whole process beside other programs on the same machine.
//
//	questions.txt    what is asked, one question a line
//	inside_test.go   benchmarks of an answer and its stages
//	process_test.go  start to last byte beside an empty program and sqlite3
//	memory_test.go   a long batch in constant memory
//
// A time says little without its machine, so the table in README.md holds
// ratios measured side by side in one run. Measure again with
//
//	go test ./tests/bench -run TestTable -update
//	go test ./tests/bench -run '^$' -bench . -count 10 | tee new.txt
//
// Limits: medians of a busy machine drift by a fifth; nothing here passes or
// fails by a time.
package bench
