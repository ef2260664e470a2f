package bank

import "heronlake.example/ask/calc/unit"

// HoldDown is the pull that a fastened battery must stand in each direction for a
// minute without moving more than an inch: 90 lb or twice its weight, whichever is
// less. It binds boats with gasoline inboard engines and is good practice in
// others.
//
// Source: 33 CFR 183.420(a).
func HoldDown(battery unit.Mass) unit.Force {
	return min(unit.PoundForce(90), 2*battery.Weight())
}
