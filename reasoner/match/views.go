package match

import (
	"cmp"

	"heronlake.example/ask/calc/sheet"
)

// View is a named way of choosing among what fits.
type View struct {
	Name string
	best func(x, y Offer) int // negative when x is the better
}

// Views are the three ways in which a customer chooses.
var Views = []View{
	{"cheapest that does the job", func(x, y Offer) int { return cmp.Compare(x.Rig.Total, y.Rig.Total) }},
	{"best hold in wind", func(x, y Offer) int {
		return cmp.Compare(y.Sol.Value(sheet.HoldWind), x.Sol.Value(sheet.HoldWind))
	}},
	{"longest run", func(x, y Offer) int {
		return cmp.Compare(y.Sol.Value(sheet.RuntimeCruise), x.Sol.Value(sheet.RuntimeCruise))
	}},
}

// Best is the view's pick among the offers that fit; ties keep the offers'
// own order. ok is false when nothing fits.
func (v View) Best(offers []Offer) (o Offer, ok bool) {
	best := -1
	for i := range offers {
		if offers[i].Fits() && (best < 0 || v.best(offers[i], offers[best]) < 0) {
			best = i
		}
	}
	if best < 0 {
		return Offer{}, false
	}
	return offers[best], true
}
