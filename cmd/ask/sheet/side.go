package sheet

import (
	"math"

	"heronlake.example/ask/reasoner/answer"
)

// The side view's frame, and how much of the boat is shown, in metres.
const (
	sideWide, sideHigh = 360.0, 250.0
	sideTop            = 14.0 // room above the head
	sideBottom         = 14.0
	headTall           = 0.16 // the motor head over its underside, drawn only
	unitTall           = 0.10 // the lower unit, drawn only
	propAcross         = 0.24
	unitLong           = 0.38
)

// side is the drawing: places in the picture's own units, y downwards.
type side struct {
	Water          px // the waterline
	Mount          px // the mount surface
	Head           px // the underside of the head
	Tip            px // the top of the lower unit
	HeadTop        px
	HeadHigh       px
	Shaft          px // x of the shaft
	Hull           string
	Deck           string // the mount on the hull
	Unit, UnitHigh px     // top of the lower unit's box, and its height
	UnitX, UnitW   px
	PropX          px
	PropTop        px
	PropEnd        px
	PropMid        px
	PropBow        px
	Bed            px
	Measures       []measure
	HullText       string
	HullX, HullY   px
}

// measure is a dimension line with its words.
type measure struct {
	X, From, To, Mid px
	TextX            px
	Text, Name       string
	Anchor           string
	To2              px // x where the extension lines begin
}

// drawSide draws bow or stern with the motor on it, all heights to one scale.
// The shaft's lower end follows from the mount's height, what mount and head
// take, and the shaft's length.
func drawSide(a answer.Answer, _ Options) (picture, bool) {
	height, heightText, ok1 := value(a, "mount.height")
	above, aboveText, ok2 := value(a, "shaft.above")
	length, lengthText, ok3 := value(a, "motor.shaft")
	if !ok3 {
		length, lengthText, ok3 = value(a, "shaft.class")
	}
	if !ok1 || !ok2 || !ok3 || height <= 0 || height > 5 || above < 0 || above > 2 || length <= 0 || length > 5 {
		return picture{}, false
	}
	deep, deepText, known := value(a, "shaft.submergence")
	tip := length - above - height // below the water
	if !known || math.Abs(deep-tip) > 0.02 {
		deepText = ""
	}
	up := height + above + headTall
	down := math.Max(tip+unitTall+0.12, 0.35)
	scale := (sideHigh - sideTop - sideBottom) / (up + down)
	y := func(overWater float64) px { return px(sideTop + (up-overWater)*scale) }
	d := side{Water: y(0), Mount: y(height), Head: y(height + above), Tip: y(-tip), HeadTop: y(up), HeadHigh: y(height+above) - y(up), Bed: y(-down)}
	stern := word(a, "mount.place") != "bow"
	shaft := 196.0
	d.Shaft = px(shaft)
	d.UnitHigh = px(unitTall * scale)
	d.Unit = d.Tip
	w := unitLong * scale
	d.UnitX, d.UnitW = px(shaft-w*0.45), px(w)
	d.PropX = d.UnitX + d.UnitW
	d.PropMid = d.Tip + d.UnitHigh/2
	d.PropTop, d.PropEnd = d.PropMid-px(propAcross*scale/2), d.PropMid+px(propAcross*scale/2)
	d.PropBow = d.PropX + 6
	d.Hull, d.Deck = hullShape(stern, shaft, scale, d)
	d.HullText, d.HullX, d.HullY = "hull", 30, (d.Mount+d.Water)/2+4
	switch word(a, "mount.place") {
	case "bow":
		d.HullText = "bow"
	case "transom":
		d.HullText = "stern"
	}
	add := func(x float64, from, to px, text, name string) {
		if text == "" {
			return
		}
		d.Measures = append(d.Measures, measure{X: px(x), From: from, To: to, Mid: (from+to)/2 + 3, TextX: px(x + 5), Text: text, Name: name, To2: px(x - 4)})
	}
	add(shaft+62, d.Mount, d.Water, heightText, "mount to water")
	add(shaft+62, d.Head, d.Mount, aboveText, "mount and head")
	if tip > 0 {
		add(shaft+62, d.Water, d.Tip, deepText, "under water")
	}
	d.Measures = append(d.Measures, measure{X: px(shaft - 26), From: d.Head, To: d.Tip, Mid: (d.Head + d.Mount) / 2, TextX: px(shaft - 31), Text: lengthText, Name: "shaft", Anchor: "end", To2: px(shaft - 22)})
	says := "The motor from the side, heights to scale: mount surface " + heightText + " above the water, mount and head " + aboveText +
		", shaft " + lengthText + " from the underside of the head"
	switch {
	case tip <= 0:
		says += "; its lower unit does not reach the water"
	case deepText != "":
		says += ", top of the lower unit " + deepText + " under water"
	}
	return picture{Kind: "side", ID: "side", Title: "Mount, shaft and water, to scale", Says: says + ".", Drawing: d}, true
}

// hullShape is the outline of the end of the boat and of its mount, as paths.
// The boat's depth below the water is drawn only.
func hullShape(stern bool, shaft, scale float64, d side) (hull, mount string) {
	keel := d.Water + px(0.16*scale)
	n := func(x px) string { return x.String() }
	edge := px(shaft) - 44 // deck edge at the mount
	if stern {
		hull = "M0 " + n(d.Mount-6) + " L" + n(edge) + " " + n(d.Mount) + " L" + n(edge-4) + " " + n(keel) + " L0 " + n(keel) + " Z"
	} else {
		hull = "M0 " + n(d.Mount-3) + " L" + n(edge+14) + " " + n(d.Mount) + " Q" + n(edge-2) + " " + n((d.Mount+keel)/2) + " " + n(edge-52) + " " + n(keel) + " L0 " + n(keel) + " Z"
	}
	// The mount reaches from the deck to the shaft.
	mount = "M" + n(edge-18) + " " + n(d.Mount) + " L" + n(px(shaft)-5) + " " + n(d.Mount) + " L" + n(px(shaft)-5) + " " + n(d.Mount-8) + " L" + n(edge-18) + " " + n(d.Mount-5) + " Z"
	return hull, mount
}
