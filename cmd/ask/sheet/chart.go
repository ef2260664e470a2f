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

// plot lays a curve out.
func plot(c answer.Curve, sys unit.System) (chart, string, bool) {
	f, ok := frameOf(c, sys)
	if !ok {
		return chart{}, "", false
	}
	d := chart{Left: f.left, Right: f.right, Top: f.top, Bottom: f.bottom}
	var points strings.Builder
	for i, p := range c.Points {
		if i > 0 {
			points.WriteByte(' ')
		}
		points.WriteString(f.x(p[0]).String() + "," + f.y(p[1]).String())
	}
	d.Line = points.String()
	for v := 0.0; v <= f.endX*1.001; v += f.stepX {
		d.XTicks = append(d.XTicks, tick{f.across(v), unit.Number(v, 2)})
	}
	for v := 0.0; v <= f.endY*1.001; v += f.stepY {
		d.YTicks = append(d.YTicks, tick{f.up(v), unit.Number(v, 2)})
	}
	d.TickEnd, d.TickText, d.TickLeft = d.Bottom+3, d.Bottom+12, d.Left-3
	d.XName, d.YName = tidy(c.X.Label)+", "+f.sx.unit, tidy(c.Y.Label)+", "+f.sy.unit
	d.XMid, d.YMid = (d.Left+d.Right)/2, (d.Top+d.Bottom)/2
	for _, m := range c.Marks {
		if k, ok := f.mark(m); ok {
			d.Lines = append(d.Lines, k)
		}
	}
	apart(d.Lines)
	return d, f.says(c, d.Lines), true
}

// A frame is where a curve's values lie on its picture.
type frame struct {
	sx, sy                   scale
	stepX, stepY, endX, endY float64 // in the reader's units
	left, right, top, bottom px
}

// frameOf finds the axes of a curve; ok is false where it cannot be drawn. The y
// axis reaches to the first rating above the curve but never so far that the
// curve lies flat at the foot.
func frameOf(c answer.Curve, sys unit.System) (f frame, ok bool) {
	f = frame{sx: scaleOf(c.X.Unit, sys), sy: scaleOf(c.Y.Unit, sys),
		left: chartLeft, right: chartWide - chartRight, top: chartTop, bottom: chartHigh - chartEnd}
	maxX, maxY := 0.0, 0.0
	for _, p := range c.Points {
		if !usable(p[0]) || !usable(p[1]) || p[0] < 0 || p[1] < 0 {
			return f, false
		}
		maxX, maxY = math.Max(maxX, f.sx.of(p[0])), math.Max(maxY, f.sy.of(p[1]))
	}
	if maxX <= 0 || maxY <= 0 {
		return f, false
	}
	for _, m := range c.Marks {
		if m.Axis == "y" && m.Own && usable(m.Value) && m.Value > 0 && f.sy.of(m.Value) < 3*maxY {
			maxY = math.Max(maxY, f.sy.of(m.Value))
		}
	}
	f.stepX, f.stepY = step(maxX), step(maxY)
	f.endX, f.endY = math.Ceil(maxX/f.stepX-1e-9)*f.stepX, math.Ceil(maxY*1.04/f.stepY)*f.stepY
	return f, true
}

// across and up place a value in the reader's units, x and y one in SI.
func (f frame) across(v float64) px { return f.left + px(v/f.endX)*(f.right-f.left) }
func (f frame) up(v float64) px     { return f.bottom - px(v/f.endY)*(f.bottom-f.top) }
func (f frame) x(si float64) px     { return f.across(f.sx.of(si)) }
func (f frame) y(si float64) px     { return f.up(f.sy.of(si)) }

// mark draws one line across the picture with its words; ok is false where it
// lies beyond the axes.
func (f frame) mark(m answer.Mark) (k mark, ok bool) {
	switch v := m.Value; {
	case !usable(v) || v <= 0:
	case m.Axis == "y" && f.sy.of(v) <= f.endY:
		at := f.y(v)
		return mark{X1: f.left, Y1: at, X2: f.right, Y2: at, TextX: f.right + 3, TextY: at + 3, Text: cut(m.Label, 18), Own: m.Own}, true
	case m.Axis == "x" && f.sx.of(v) <= f.endX:
		at := f.x(v)
		k = mark{X1: at, Y1: f.top, X2: at, Y2: f.bottom, TextX: at + 3, TextY: f.top + 8, Text: cut(m.Label, 24), Own: m.Own}
		if at > (f.left+f.right)/2 {
			k.TextX, k.Anchor = at-3, "end"
		}
		return k, true
	}
	return k, false
}

// nearText is how near two words may stand to each other.
const nearText = 8

// apart takes out words that would stand on each other: those of this boat stay.
func apart(marks []mark) {
	for i := range marks {
		k := &marks[i]
		if k.Own || k.Y1 != k.Y2 {
			continue
		}
		for j, o := range marks {
			if j != i && o.Text != "" && o.Y1 == o.Y2 && (o.Own || j < i) && math.Abs(float64(o.TextY-k.TextY)) < nearText {
				k.Text = ""
			}
		}
	}
}

// says tells the curve in words.
func (f frame) says(c answer.Curve, marks []mark) string {
	first, final := c.Points[0], c.Points[len(c.Points)-1]
	t := "From " + say(f.sy, first[1]) + " at " + say(f.sx, first[0]) + " to " + say(f.sy, final[1]) + " at " + say(f.sx, final[0]) + "."
	for _, k := range marks {
		if k.Own && k.Text != "" {
			t += " Marked: " + k.Text + "."
		}
	}
	return t
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
