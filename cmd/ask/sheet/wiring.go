package sheet

import (
	"fmt"
	"math"

	"heronlake.example/ask/reasoner/answer"
)

// The schematic's frame, and the most batteries that it can show.
const (
	wiringWide              = 360.0
	mostSeries, mostStrings = 4, 3
)

// wiring is the schematic: the bank as strings between two bars, the breaker at
// the positive end, one pair of wires to the plug.
type wiring struct {
	High           px
	Batteries      []box
	Links          []line
	Minus, Plus    px // x of the two bars
	Top, Bottom    px // their ends
	BreakerLeft    px
	BreakerRight   px
	Rail           px // y of the positive wire
	Return         px // y of the negative wire
	Plug, Motor    px // x
	PlugRight      px
	Mid            px // y of plug and motor
	MidHigh        px // where the positive wire meets the plug, and
	MidLow         px // where the negative one does
	PlugHigh       px
	BreakerText    string
	DistanceText   string
	GaugeText      string
	BankText, Volt string
	TextY          px
}

type box struct {
	X, Y, W, H, MidX, MidY px
	Text                   string
}

type line struct{ X1, Y1, X2, Y2 px }

// drawWiring draws the bank that the figures give: so many in series, so many
// strings side by side.
func drawWiring(a answer.Answer, _ Options) (picture, bool) {
	volts, voltText, ok1 := value(a, "system.voltage")
	count, _, ok2 := value(a, "bank.count")
	_, breaker, ok3 := value(a, "breaker.rating")
	_, gauge, ok4 := value(a, "wire.judged")
	if !ok4 {
		_, gauge, ok4 = value(a, "wire.gauge")
	}
	if !ok1 || !ok2 || !ok3 || !ok4 {
		return picture{}, false
	}
	each, eachText, ok := value(a, "battery.voltage")
	if !ok || each <= 0 {
		each, eachText = 12, "12 V"
	}
	series := int(math.Round(volts / each))
	if s, _, ok := value(a, "bank.series"); ok {
		series = int(math.Round(s))
	}
	n := int(math.Round(count))
	if series < 1 || series > mostSeries || n < series || n%series != 0 || n/series > mostStrings {
		return picture{}, false
	}
	strings := n / series
	d, low := rack(series, strings, eachText)
	d.BreakerText, d.GaugeText, d.Volt = breaker, gauge, voltText
	d.Rail, d.Return = 34, low
	d.BreakerLeft, d.BreakerRight = d.Plus+14, d.Plus+36
	d.Plug, d.Motor = 286, 330
	d.Mid = (d.Rail + d.Return) / 2
	d.PlugRight, d.MidHigh, d.MidLow, d.PlugHigh = d.Plug+8, d.Mid-12, d.Mid+12, 24
	d.High = low + 22
	d.TextY = low + 14
	if x, text, ok := value(a, "breaker.distance"); ok && x > 0 {
		d.DistanceText = "within " + text + " of the battery"
	}
	d.BankText = bankText(series, strings)
	says := fmt.Sprintf("The bank of %s: %s, %s each. From its positive end through a breaker of %s", voltText, d.BankText, eachText, breaker)
	if d.DistanceText != "" {
		says += ", " + d.DistanceText + ","
	}
	says += " and " + gauge + " wire to the plug and the motor, and by the same wire back to the negative end. A schematic, not to scale."
	return picture{Kind: "wiring", ID: "wiring", Title: "Wiring of the bank, schematic", Says: says, Drawing: d}, true
}

// rack draws the batteries with their links between the two bars, and says where
// the room below them begins.
func rack(series, strings int, each string) (d wiring, low px) {
	const (
		left, wide, gap, tall, between = 24.0, 34.0, 10.0, 30.0, 12.0
		top                            = 62.0
	)
	d.Minus = left
	width := float64(series)*(wide+gap) - gap
	d.Plus = px(left + 14 + width + 14)
	for s := range strings {
		y := top + float64(s)*(tall+between)
		mid := px(y + tall/2)
		for i := range series {
			x := left + 14 + float64(i)*(wide+gap)
			d.Batteries = append(d.Batteries, box{px(x), px(y), wide, tall, px(x + wide/2), mid + 3, each})
			from := px(x - gap)
			if i == 0 {
				from = d.Minus
			}
			d.Links = append(d.Links, line{from, mid, px(x), mid})
		}
		d.Links = append(d.Links, line{px(left + 14 + width), mid, d.Plus, mid})
	}
	d.Top = px(top + tall/2)
	d.Bottom = px(top + float64(strings-1)*(tall+between) + tall/2)
	return d, px(top + float64(strings)*(tall+between) + 6)
}

// bankText says how the batteries are joined.
func bankText(series, strings int) string {
	switch {
	case series*strings == 1:
		return "one battery"
	case strings > 1 && series > 1:
		return fmt.Sprintf("%d strings of %d in series", strings, series)
	case strings > 1:
		return fmt.Sprintf("%d side by side", strings)
	}
	return fmt.Sprintf("%d in series", series)
}
