package wind

import (
	"math"
	"slices"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// A Scale is one force of the Beaufort scale.
type Scale struct {
	Force     int
	Name      string
	Low, High unit.Speed // at 10 m; the last force has no upper end and repeats its low
}

// Beaufort is the scale in metres a second.
//
// Source: WMO scale in the form of a Dutch public meteorological service.
var Beaufort = []Scale{
	{0, "calm", 0, 0.2},
	{1, "light air", 0.3, 1.5},
	{2, "light breeze", 1.6, 3.3},
	{3, "gentle breeze", 3.4, 5.4},
	{4, "moderate breeze", 5.5, 7.9},
	{5, "fresh breeze", 8.0, 10.7},
	{6, "strong breeze", 10.8, 13.8},
	{7, "near gale", 13.9, 17.1},
	{8, "gale", 17.2, 20.7},
	{9, "strong gale", 20.8, 24.4},
	{10, "storm", 24.5, 28.4},
	{11, "violent storm", 28.5, 32.6},
	{12, "hurricane", 32.7, 32.7},
}

// MeanSpeed is the mean wind of a Beaufort force at 10 m, v = 0.836 B^1.5 m/s
// (WMO Code 1100; Simpson 1906), for forces 0 to 12.
func MeanSpeed(force float64) unit.Speed {
	return unit.MetresPerSecond(0.836 * math.Pow(max(force, 0), 1.5))
}

// ForceOf is the force of a wind at 10 m by the ranges of Beaufort, a wind in
// the gap between two forces taking the nearer.
func ForceOf(v unit.Speed) int {
	for i := len(Beaufort) - 1; i > 0; i-- {
		if v >= (Beaufort[i-1].High+Beaufort[i].Low)/2 {
			return Beaufort[i].Force
		}
	}
	return 0
}

// A Word is a way of speaking of a wind, with the speeds it stands for.
type Word struct {
	Word   string
	Speed  band.Band[float64] // m/s at 10 m
	Source string
}

const (
	scaleSource = "WMO Beaufort scale"
	tradeSource = "common practice, no published source"
	seaSource   = "WMO Beaufort scale, by the look of the water"
)

// Words are the words for a wind, the longest first, so that where one holds
// another ("near gale", "gale") the first that matches is right.
var Words = longestFirst(append(scaleWords(),
	mph("small craft advisory", 24, 28, 38, "US Weather Service wording, 21 to 33 knots (from memory)"),
	mph("flat calm", 0, 0.5, 1, scaleSource),
	mph("dead calm", 0, 0.5, 1, scaleSource),
	mph("no wind", 0, 0.5, 1, tradeSource),
	mph("slick calm", 0, 0.5, 1, tradeSource),
	mph("glassy", 0, 0.5, 2, seaSource),
	mph("glass calm", 0, 0.5, 2, seaSource),
	mph("like glass", 0, 0.5, 2, seaSource),
	mph("mirror", 0, 0.5, 1, seaSource),
	mph("still", 0, 0.5, 2, tradeSource),
	mph("hardly any wind", 1, 3, 5, tradeSource),
	mph("not much wind", 1, 4, 7, tradeSource),
	mph("little wind", 2, 5, 8, tradeSource),
	mph("ripples", 1, 3, 7, seaSource),
	mph("light wind", 3, 5, 8, tradeSource),
	mph("light winds", 3, 5, 8, tradeSource),
	mph("gentle wind", 7, 9, 12, tradeSource),
	mph("moderate wind", 10, 13, 18, tradeSource),
	mph("bit of wind", 6, 9, 13, tradeSource),
	mph("some wind", 6, 9, 13, tradeSource),
	mph("light chop", 8, 10, 13, seaSource),
	mph("breezy", 8, 11, 15, tradeSource),
	mph("breeze", 6, 9, 13, tradeSource),
	mph("very windy", 18, 22, 28, tradeSource),
	mph("real windy", 18, 22, 28, tradeSource),
	mph("really windy", 18, 22, 28, tradeSource),
	mph("windy", 12, 15, 20, tradeSource),
	mph("gusty", 12, 15, 20, tradeSource),
	mph("blustery", 15, 19, 25, tradeSource),
	mph("strong wind", 18, 22, 28, tradeSource),
	mph("strong winds", 18, 22, 28, tradeSource),
	mph("heavy wind", 18, 22, 28, tradeSource),
	mph("high wind", 18, 22, 30, tradeSource),
	mph("high winds", 18, 22, 30, tradeSource),
	mph("white caps", 12, 16, 22, seaSource),
	mph("whitecaps", 12, 16, 22, seaSource),
	mph("white horses", 12, 16, 22, seaSource),
	mph("blowing hard", 18, 23, 30, tradeSource),
	mph("blows hard", 18, 23, 30, tradeSource),
	mph("howling", 22, 27, 35, tradeSource),
))

func mph(word string, low, nominal, high float64, source string) Word {
	return Word{word, band.Of(
		unit.MilesPerHour(low).MetresPerSecond(),
		unit.MilesPerHour(nominal).MetresPerSecond(),
		unit.MilesPerHour(high).MetresPerSecond()), source}
}

// scaleWords are the names of the scale itself, each with its own range and the
// mean of its force, which for force 0 and 12 is held to the range.
func scaleWords() []Word {
	var words []Word
	for _, s := range Beaufort {
		mean := min(max(MeanSpeed(float64(s.Force)), s.Low), max(s.High, s.Low+2))
		words = append(words, Word{s.Name, band.Of(
			s.Low.MetresPerSecond(), mean.MetresPerSecond(), max(s.High, mean).MetresPerSecond()), scaleSource})
	}
	return words
}

func longestFirst(words []Word) []Word {
	slices.SortStableFunc(words, func(a, b Word) int { return len(b.Word) - len(a.Word) })
	return words
}

// WordNamed finds a word for a wind exactly as listed.
func WordNamed(word string) (Word, bool) {
	for _, w := range Words {
		if w.Word == word {
			return w, true
		}
	}
	return Word{}, false
}
