package bank

import "heronlake.example/ask/calc/unit"

// ProtectionCurrent is the least continuous current that the protection of each
// lithium battery must pass for a motor's greatest current: 1.25 times it. Side
// by side, strings share it, but the last one left must still carry it, so it is
// not divided. Common practice, no published source.
func ProtectionCurrent(motor unit.Current) unit.Current {
	return unit.Current(1.25 * motor.Amperes())
}

// Volts of one cell at the end of charging, lead at 2.4 V (14.4 V for six) and
// lithium iron phosphate at 3.65 V (14.6 V for four), and at its mean: lead 2.0 V
// under load, lithium 3.2 V nominal. Source: public battery references, but for
// the 2.0 V, which is the trade's nominal 12 V over six cells.
const (
	leadChargeVolts    = 2.4
	lithiumChargeVolts = 3.65
	leadMeanVolts      = 2.0
	lithiumMeanVolts   = 3.2
)

// ChargingVolts is the highest voltage of a bank of the given nominal voltage
// while it charges: 43.2 V for lead and 43.8 V for lithium at 36 V. nominal
// counts 12 V for six lead or four lithium cells.
func ChargingVolts(c Chemistry, nominal unit.Voltage) unit.Voltage {
	if c.Lead() {
		return unit.Voltage(nominal.Volts() / 12 * 6 * leadChargeVolts)
	}
	return unit.Voltage(nominal.Volts() / 12 * 4 * lithiumChargeVolts)
}

// MeanVolts is the voltage that energy is reckoned with: 12 V for lead and
// 12.8 V for lithium where the nominal is 12.
func MeanVolts(c Chemistry, nominal unit.Voltage) unit.Voltage {
	if c.Lead() {
		return unit.Voltage(nominal.Volts() / 12 * 6 * leadMeanVolts)
	}
	return unit.Voltage(nominal.Volts() / 12 * 4 * lithiumMeanVolts)
}
