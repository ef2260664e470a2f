package sheet

import (
	"math"
	"strings"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
)

// The chart's frame.
const (
	chartWide, chartHigh = 360.0, 150.0
	chartLeft, chartTop  = 40.0, 12.0
	chartRight, chartEnd = 58.0, 36.0
)

// chart is a curve with axes and marks; places in the picture's own units.
type chart struct {
	Left, Right, Top, Bottom px
	TickEnd, TickText        px     // below the x axis
	TickLeft                 px     // left of the y axis
	Line                     string // the points of the curve
	XTicks, YTicks           []tick
	XName, YName             string
	XMid, YMid               px
	Lines                    []mark
}

type tick struct {
	At   px
	Text string
}

type mark struct {
	X1, Y1, X2, Y2 px
	TextX, TextY   px
	Anchor         string
	Text           string
	Own            bool
}

// A scale turns SI into what a reader's axis shows.
type scale struct {
	unit string
	of   func(si float64) float64
}

func scaleOf(si string, sys unit.System) scale {
	us := sys == unit.US
	switch {
	case si == "m/s" && us:
		return scale{"mph", func(x float64) float64 { return unit.Speed(x).MilesPerHour() }}
	case si == "N" && us:
		return scale{"lb", func(x float64) float64 { return unit.Force(x).PoundForce() }}
	case si == "1":
		return scale{"%", func(x float64) float64 { return x * 100 }}
	}
	return scale{si, func(x float64) float64 { return x }}
}

func drawWind(a answer.Answer, opts Options) (picture, bool) {
	return drawCurve(a, opts, "thrust-by-wind", "Thrust needed against wind, with the ratings sold", math.Inf(1))
}

func drawHours(a answer.Answer, opts Options) (picture, bool) {
	return drawCurve(a, opts, "hours-by-throttle", "Hours on one charge against throttle", mostHours)
}

// mostHours is where the axis of hours ends: beyond a day and a night nobody
// asks, and the part that matters would lie flat.
const mostHours = 24

func drawCurve(a answer.Answer, opts Options, id, title string, most float64) (picture, bool) {
	for _, c := range a.Curves {
		if c.ID == id && len(c.Points) > 2 {
			d, says, ok := plot(below(c, most), opts.Units)
			return picture{Kind: "chart", ID: id, Title: title, Says: title + ". " + says, Drawing: d}, ok
		}
	}
	return picture{}, false
}

// below cuts a falling curve off at its y value most, by a straight line between
// the points on either side. A curve that lies above it altogether stays whole.
func below(c answer.Curve, most float64) answer.Curve {
	for i, p := range c.Points {
		if p[1] > most {
			continue
		}
		if i > 0 && len(c.Points)-i >= 2 {
			q := c.Points[i-1]
			at := q[0] + (p[0]-q[0])*(q[1]-most)/(q[1]-p[1])
			c.Points = append([][2]float64{{at, most}}, c.Points[i:]...)
		}
		return c
	}
	return c
}

// plot lays a curve out. The y axis reaches to the first rating above the curve
// but never so far that the curve lies flat at the foot.
func plot(c answer.Curve, sys unit.System) (chart, string, bool) {
	sx, sy := scaleOf(c.X.Unit, sys), scaleOf(c.Y.Unit, sys)
	maxX, maxY, lowX := 0.0, 0.0, math.Inf(1)
	for _, p := range c.Points {
		if !usable(p[0]) || !usable(p[1]) || p[0] < 0 || p[1] < 0 {
			return chart{}, "", false
		}
		maxX, maxY, lowX = math.Max(maxX, sx.of(p[0])), math.Max(maxY, sy.of(p[1])), math.Min(lowX, sx.of(p[0]))
	}
	if maxX <= 0 || maxY <= 0 {
		return chart{}, "", false
	}
	for _, m := range c.Marks {
		if m.Axis == "y" && m.Own && usable(m.Value) && m.Value > 0 && sy.of(m.Value) < 3*maxY {
			maxY = math.Max(maxY, sy.of(m.Value))
		}
	}
	stepX, stepY := step(maxX), step(maxY)
	endX, endY := math.Ceil(maxX/stepX-1e-9)*stepX, math.Ceil(maxY*1.04/stepY)*stepY
	d := chart{Left: chartLeft, Right: chartWide - chartRight, Top: chartTop, Bottom: chartHigh - chartEnd}
	x := func(v float64) px { return d.Left + px(v/endX)*(d.Right-d.Left) }
	y := func(v float64) px { return d.Bottom - px(v/endY)*(d.Bottom-d.Top) }
	var line strings.Builder
	for i, p := range c.Points {
		if i > 0 {
			line.WriteByte(' ')
		}
		line.WriteString(x(sx.of(p[0])).String() + "," + y(sy.of(p[1])).String())
	}
	d.Line = line.String()
	for v := 0.0; v <= endX*1.001; v += stepX {
		d.XTicks = append(d.XTicks, tick{x(v), unit.Number(v, 2)})
	}
	for v := 0.0; v <= endY*1.001; v += stepY {
		d.YTicks = append(d.YTicks, tick{y(v), unit.Number(v, 2)})
	}
	d.TickEnd, d.TickText, d.TickLeft = d.Bottom+3, d.Bottom+12, d.Left-3
	d.XName, d.YName = tidy(c.X.Label)+", "+sx.unit, tidy(c.Y.Label)+", "+sy.unit
	d.XMid, d.YMid = (d.Left+d.Right)/2, (d.Top+d.Bottom)/2
	put := func(m answer.Mark) {
		v := m.Value
		switch {
		case !usable(v) || v <= 0:
		case m.Axis == "y" && sy.of(v) <= endY:
			at := y(sy.of(v))
			k := mark{X1: d.Left, Y1: at, X2: d.Right, Y2: at, TextX: d.Right + 3, TextY: at + 3, Text: cut(m.Label, 18), Own: m.Own}
			d.Lines = append(d.Lines, k)
		case m.Axis == "x" && sx.of(v) <= endX:
			at := x(sx.of(v))
			k := mark{X1: at, Y1: d.Top, X2: at, Y2: d.Bottom, TextX: at + 3, TextY: d.Top + 8, Text: cut(m.Label, 24), Own: m.Own}
			if at > d.XMid {
				k.TextX, k.Anchor = at-3, "end"
			}
			d.Lines = append(d.Lines, k)
		}
	}
	for _, m := range c.Marks {
		put(m)
	}
	// Words that would stand on each other: those of this boat stay.
	for _, own := range []bool{true, false} {
		for i := range d.Lines {
			k := &d.Lines[i]
			if k.Own != own || k.Y1 != k.Y2 {
				continue
			}
			for j := range d.Lines {
				o := d.Lines[j]
				if j != i && o.Text != "" && o.Y1 == o.Y2 && (o.Own || j < i) && !own && math.Abs(float64(o.TextY-k.TextY)) < 8 {
					k.Text = ""
				}
			}
		}
	}
	first, final := c.Points[0], c.Points[len(c.Points)-1]
	says := "From " + say(sy, first[1]) + " at " + say(sx, first[0]) + " to " + say(sy, final[1]) + " at " + say(sx, final[0]) + "."
	for _, k := range d.Lines {
		if k.Own && k.Text != "" {
			says += " Marked: " + k.Text + "."
		}
	}
	return d, says, true
}

func say(s scale, si float64) string {
	return number(s, si) + " " + s.unit
}

func number(s scale, si float64) string { return unit.Significant(s.of(si), 3) }

// step is a round distance between ticks: 1, 2 or 5 times a power of ten, so
// that there are four to ten of them.
func step(most float64) float64 {
	p := math.Pow(10, math.Floor(math.Log10(most/4)))
	for _, k := range []float64{1, 2, 5, 10} {
		if most/(p*k) <= 6 {
			return p * k
		}
	}
	return p * 10
}
