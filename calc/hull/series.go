package hull

import "math"

// The models of the series stand in a grid: three prismatic coefficients by
// three slendernesses, with what else was varied (beam to draught, centre of
// buoyancy) averaged within a place of the grid.
var (
	gridPrismatic   = [3]float64{0.530, 0.565, 0.600}
	gridSlenderness = [3]float64{4.34, 4.78, 5.10}
)

// misprinted is the model whose resistances in the data set repeat those of
// model 4 digit by digit: a slip of copying, so it is left out of the means.
const misprinted = 5

// grid holds the mean curve of each place.
var grid = func() (g [3][3][14]float64) {
	var n [3][3]float64
	for _, m := range models {
		if m.number == misprinted {
			continue
		}
		i, j := nearest(gridPrismatic, m.prismatic), nearest(gridSlenderness, m.slenderness)
		n[i][j]++
		for k, r := range m.residuary {
			g[i][j][k] += r
		}
	}
	for i := range g {
		for j := range g[i] {
			for k := range g[i][j] {
				g[i][j][k] /= n[i][j]
			}
		}
	}
	return g
}()

func nearest(steps [3]float64, x float64) int {
	best := 0
	for i, s := range steps {
		if math.Abs(s-x) < math.Abs(steps[best]-x) {
			best = i
		}
	}
	return best
}

// SeriesSlenderness is the range of L / volume^(1/3) that the series covers.
func SeriesSlenderness() (low, high float64) { return gridSlenderness[0], gridSlenderness[2] }

// SeriesResiduary is the residuary resistance per unit weight of displacement,
// a bare ratio, of a hull with the given prismatic coefficient (bare) and
// slenderness L / volume^(1/3) (bare) at Froude number fn, from the Delft series
// (series_data.go): linear in the three between the grid's points.
//
// Outside the series the nearest form stands. Its slenderness is then scaled:
// the ratio goes with volume^(1/3) / L, as in the later Delft regressions (from
// memory: Keuning and Sonnenberg 1998). Below the lowest Froude number the
// curve falls off with its fourth power, above the highest it goes on with its
// last slope; neither is supported by data.
func SeriesResiduary(prismatic, slenderness, fn float64) float64 {
	p := inSeries(prismatic, slenderness)
	return p.residuary(fn)
}

// A seriesPlace is where a hull stands in the series: the four curves about it,
// with their weights.
type seriesPlace struct {
	curves  [4]*[14]float64
	weights [4]float64
	scale   float64
}

func inSeries(prismatic, slenderness float64) seriesPlace {
	i, fi := between3(gridPrismatic, prismatic)
	j, fj := between3(gridSlenderness, slenderness)
	scale := 1e-3
	if low := gridSlenderness[0]; slenderness < low {
		scale *= low / slenderness
	} else if high := gridSlenderness[2]; slenderness > high {
		scale *= high / slenderness
	}
	return seriesPlace{
		curves:  [4]*[14]float64{&grid[i][j], &grid[i][j+1], &grid[i+1][j], &grid[i+1][j+1]},
		weights: [4]float64{(1 - fi) * (1 - fj), (1 - fi) * fj, fi * (1 - fj), fi * fj},
		scale:   scale,
	}
}

func (p *seriesPlace) residuary(fn float64) float64 {
	if math.IsInf(fn, 0) || math.IsNaN(fn) {
		return math.NaN() // a hull without a length
	}
	const last = len(seriesFn) - 1
	step := seriesFn[1] - seriesFn[0]
	scale := p.scale
	if fn < seriesFn[0] {
		r := fn / seriesFn[0]
		scale *= r * r * r * r
		fn = seriesFn[0]
	}
	k := int(min((fn-seriesFn[0])/step, float64(last-1)))
	f := (fn - seriesFn[0] - float64(k)*step) / step
	var sum float64
	for c, curve := range p.curves {
		sum += p.weights[c] * (curve[k] + f*(curve[k+1]-curve[k]))
	}
	return scale * sum
}

// between3 finds where x lies between the steps: after step i by the fraction f,
// which stops at 0 and 1 outside them.
func between3(steps [3]float64, x float64) (i int, f float64) {
	if x > steps[1] {
		i = 1
	}
	f = (x - steps[i]) / (steps[i+1] - steps[i])
	return i, min(max(f, 0), 1)
}
