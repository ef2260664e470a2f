package bank

import (
	"math"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// ReserveCurrent is the load of the reserve-capacity test (BCI, from memory).
const ReserveCurrent = 25 // A

// CapacityFromReserve turns reserve minutes into ampere hours at the 20-hour
// rate: C20 = 500 (RC/1200)^(1/k). It is Peukert's law solved for the rating
// with I = 25 A and H = 20 h, where 500 Ah = 25 A x 20 h and 1200 min = 20 h.
//
// reserve is 10 minutes to 20 hours, k 1 to 1.6; beyond that it refuses with a
// *band.OutsideError.
func CapacityFromReserve(reserve unit.Duration, k float64) (unit.Charge, error) {
	if err := band.Within("reserve capacity", "min", reserve.Minutes(), 10, 1200); err != nil {
		return 0, err
	}
	if err := band.Within("Peukert exponent", "", k, 1, 1.6); err != nil {
		return 0, err
	}
	return unit.Charge(ReserveCurrent * 20 * math.Pow(reserve.Minutes()/1200, 1/k)), nil
}
