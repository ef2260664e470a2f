package hull

import (
	"fmt"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// Uncertainty is the factor, a bare ratio, by which the hull's own drag may
// differ from the model: 0.7 to 1.4 where the hull has the slenderness of the
// series, wider outside it (from memory: no towing tests of such boats at these
// speeds are published). outside tells that it lies beyond the series by more
// than a tenth.
func Uncertainty(slenderness float64) (factor band.Band[float64], outside bool) {
	low, high := SeriesSlenderness()
	beyond := max(low/slenderness, slenderness/high, 1) - 1 // 0 inside the series
	widen := 1 + 0.5*min(beyond, 1)
	return band.Band[float64]{Low: 0.7 / widen, Nominal: 1, High: 1.4 * widen}, beyond > 0.1
}

// Calibration is the factor, a bare ratio, by which the model's hull drag must
// be multiplied so that it equals the thrust delivered at a measured speed; the
// engine's leg is taken as it is. Beyond a factor of four either way it returns an
// error that wraps a *band.OutsideError: something else was measured.
func Calibration(delivered unit.Force, model Parts) (float64, error) {
	own := model.Friction + model.Residuary + model.Transom
	f := float64((delivered - model.Leg) / own)
	if err := band.Within("hull drag by the measured speed, against that of such hulls,", "", f, 0.25, 4); err != nil {
		return 0, fmt.Errorf("%w: check the speed, the thrust, wind and current on the day", err)
	}
	return f, nil
}
