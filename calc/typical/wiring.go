package typical

import "heronlake.example/ask/calc/band"

// Breakers is the ladder of direct-current breakers with manual reset, A (from
// memory; the regulation names no sizes).
var Breakers = []float64{20, 25, 30, 40, 50, 60, 70, 80, 100, 120, 150}

// BreakerVolts are the direct-current voltages that breakers are rated for, V
// (from memory).
var BreakerVolts = []float64{32, 48, 65, 80, 125}

// Of the wire run, from memory of the trade.
var (
	DropTarget     = 0.05                       // share of the voltage at full throttle
	DropBeyond     = 0.25                       // past this the motor's current is no longer its full one
	DropLimit      = 0.10                       // more than this is not wired on purpose
	Insulation     = ratio(75, 105, 105)        // C: marine cable; older cable is less
	ContactOhms    = ratio(0.003, 0.006, 0.010) // plug, breaker and lugs together
	ThrustPower    = ratio(1.5, 1.7, 2.0)
	BowRunShare    = ratio(0.7, 1.0, 1.2) // of the boat's length: batteries aft, motor on the bow
	AftRun         = metresOfFeet(3, 6, 10)
	KayakRun       = metresOfFeet(2, 5, 8)
	RunUnknownBoat = metresOfFeet(6, 15, 22)
)

func metresOfFeet(low, nominal, high float64) band.Band[float64] {
	return ratio(low*0.3048, nominal*0.3048, high*0.3048)
}
