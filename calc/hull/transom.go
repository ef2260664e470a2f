package hull

import (
	"math"

	"heronlake.example/ask/calc/unit"
)

// transomCoefficient is c6 of Holtrop and Mennen (International Shipbuilding
// Progress 29, 1982): 0.2 (1 - 0.2 F_nT) while F_nT is below 5, 0 above, where
// the transom runs dry.
func transomCoefficient(froude float64) float64 {
	if froude >= 5 {
		return 0
	}
	return 0.2 * (1 - 0.2*froude)
}

// transomFroude is F_nT = V / sqrt(2 g A_T / (B + B C_WP)), the same source, with
// the beam of all hulls. The drag is R_TR = 0.5 rho V^2 A_T c6.
func transomFroude(v, area, beam, waterplane float64) float64 {
	return v / math.Sqrt(2*unit.StandardGravity*area/(beam+beam*waterplane))
}
