package read

import (
	"strings"
	"testing"
)

// question is a line of about 200 characters with eight measures.
const question = `18'6" alum deep v, about 2,150 lb loaded with three guys and gear, deck sits 19 1/2 inches off the water, wind 15-20 mph most days, two group 31 agms of 110 ah, a 24v motor of 70 lb, how long at half throttle?`

func BenchmarkQuestion(b *testing.B) {
	b.SetBytes(int64(len(question)))
	b.ReportAllocs()
	for b.Loop() {
		Read(question)
	}
}

// BenchmarkLength shows that the time grows in proportion to the text. The text
// has few enough measures that none is cut off.
func BenchmarkLength(b *testing.B) {
	line := question + strings.Repeat(" and so we went on and on about the weather and the fish", 64) + " "
	for _, size := range []struct {
		name string
		n    int
	}{{"1kB", 1 << 10}, {"32kB", 32 << 10}, {"1MB", 1 << 20}} {
		text := strings.Repeat(line, size.n/len(line)+1)[:size.n]
		if Read(text).Cut {
			b.Fatalf("%s is cut", size.name)
		}
		b.Run(size.name, func(b *testing.B) {
			b.SetBytes(int64(size.n))
			b.ReportAllocs()
			for b.Loop() {
				Read(text)
			}
		})
	}
}
