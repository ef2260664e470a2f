package match

import (
	"cmp"
	"slices"

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
	fits := slices.Collect(func(yield func(Offer) bool) {
		for _, o := range offers {
			if o.Fits() && !yield(o) {
				return
			}
		}
	})
	if len(fits) == 0 {
		return Offer{}, false
	}
	return slices.MinFunc(fits, v.best), true
}
