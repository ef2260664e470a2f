package kb

import (
	_ "embed"
	"fmt"
	"strings"
	"sync"
)

//go:embed asked.txt
var askedText string

// askedFor holds, by passage, the further ways of asking for it.
var askedFor = sync.OnceValue(func() map[string][]askedLine {
	m := map[string][]askedLine{}
	number := 0
	for line := range strings.Lines(askedText) {
		number++
		line = strings.TrimSpace(line)
		if line == "" || line[0] == '#' {
			continue
		}
		id, ways, _ := strings.Cut(line, ": ")
		m[id] = append(m[id], askedLine{number, strings.Split(ways, "; ")})
	}
	return m
})

type askedLine struct {
	number int
	ways   []string
}

// Asked lists ways in which people ask for what a built-in passage answers, in
// words that the passage does not use itself. The search reads them; nobody is
// shown them.
func Asked(passage string) []string {
	var ways []string
	for _, l := range askedFor()[passage] {
		ways = append(ways, l.ways...)
	}
	return ways
}

// checkAsked reports lines for passages that are not there.
func (c *checker) checkAsked(lib *Library) {
	for id, lines := range askedFor() {
		if _, ok := lib.Passage(id); !ok || !strings.Contains(id, "#") {
			for _, l := range lines {
				c.faults = append(c.faults, Fault{"asked.txt", l.number, fmt.Sprintf("there is no passage %q", id)})
			}
		}
	}
}
