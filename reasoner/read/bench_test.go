package read

import (
	"strings"
	"testing"
)

// question is a line of about 200 characters with eight measures.
const question = `18'6" alum deep v, about 2,150 lb loaded with three guys and gear, deck sits 19 1/2 inches off the water, wind 15-20 mph most days, two group 31 agms at 105 ah, 24v 80 lb motor, how long at half throttle?`

func BenchmarkQuestion(b *testing.B) {
	b.SetBytes(int64(len(question)))
	b.ReportAllocs()
	for b.Loop() {
		Read(question)
	}
}

func BenchmarkLength(b *testing.B) {
	for _, size := range []struct {
		name string
		n    int
	}{{"1kB", 1 << 10}, {"32kB", 32 << 10}, {"1MB", 1 << 20}} {
		text := strings.Repeat(question+" ", size.n/len(question)+1)[:size.n]
		b.Run(size.name, func(b *testing.B) {
			b.SetBytes(int64(size.n))
			b.ReportAllocs()
			for b.Loop() {
				Read(text)
			}
		})
	}
}
