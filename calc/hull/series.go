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
	i, fi := place(gridPrismatic, prismatic)
	j, fj := place(gridSlenderness, slenderness)
	scale := 1e-3
	if low := gridSlenderness[0]; slenderness < low {
		scale *= low / slenderness
	} else if high := gridSlenderness[2]; slenderness > high {
		scale *= high / slenderness
	}
	const last = len(seriesFn) - 1
	step := seriesFn[1] - seriesFn[0]
	if fn < seriesFn[0] {
		r := fn / seriesFn[0]
		scale *= r * r * r * r
		fn = seriesFn[0]
	}
	k := min(int((fn-seriesFn[0])/step), last-1)
	fk := (fn - seriesFn[0] - float64(k)*step) / step
	var c [2]float64
	for d := range c {
		n := k + d
		c[d] = (1-fi)*((1-fj)*grid[i][j][n]+fj*grid[i][j+1][n]) + fi*((1-fj)*grid[i+1][j][n]+fj*grid[i+1][j+1][n])
	}
	return scale * (c[0] + fk*(c[1]-c[0]))
}

// place finds where x lies between the steps: after step i by the fraction f,
// which stops at 0 and 1 outside them.
func place(steps [3]float64, x float64) (i int, f float64) {
	if x > steps[1] {
		i = 1
	}
	f = (x - steps[i]) / (steps[i+1] - steps[i])
	return i, min(max(f, 0), 1)
}
