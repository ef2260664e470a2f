package match

import "cmp"

// View is a named way of choosing among what fits.
type View struct {
	Name string
	best func(x, y Offer) int // negative when x is the better
	does bool                 // names only what meets every hard need, without a little less
}

// Views are the three ways in which a customer chooses.
var Views = []View{
	{"cheapest that does the job", func(x, y Offer) int { return cmp.Compare(x.Rig.Total, y.Rig.Total) }, true},
	{"best hold in wind", func(x, y Offer) int { return cmp.Compare(y.Hold, x.Hold) }, false},
	{"longest run", func(x, y Offer) int { return cmp.Compare(y.Run, x.Run) }, false},
}

// Best is the view's pick among the offers that fit; ties keep the offers'
// own order. ok is false when there is none.
func (v View) Best(offers []Offer) (o Offer, ok bool) {
	best := -1
	for i := range offers {
		if offers[i].Fits() && !(v.does && offers[i].short()) && (best < 0 || v.best(offers[i], offers[best]) < 0) {
			best = i
		}
	}
	if best < 0 {
		return Offer{}, false
	}
	return offers[best], true
}
