package store

import (
	"os"
	"syscall"
	"testing"
)

// TestCacheDoesNotWaitAtAPipe must come back.
func TestCacheDoesNotWaitAtAPipe(t *testing.T) {
	c := Cache{t.TempDir()}
	if err := syscall.Mkfifo(c.file(cacheKey), 0o600); err != nil {
		t.Skip(err)
	}
	c.Put(cacheKey, cacheParts...)
	if _, ok := c.Get(cacheKey); ok {
		t.Error("a pipe is taken for an entry")
	}
	if listed, err := os.ReadDir(c.Dir); err != nil || len(listed) != 1 {
		t.Errorf("left %v, %v", listed, err)
	}
}
