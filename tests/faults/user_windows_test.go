package faults

import "testing"

func makeFIFO(*testing.T, string) bool { return false }
func asNobody(*run) bool               { return false }

var terminalFaults []fault
