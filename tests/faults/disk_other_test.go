//go:build !linux

package faults

import "testing"

func smallDisk(*testing.T, string) bool { return false }
func fill(*testing.T, string)           {}
