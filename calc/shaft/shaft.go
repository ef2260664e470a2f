// Package shaft computes how long an electric motor's shaft must be, and what a
// given shaft leaves: depth over the lower unit, and the waves at which the
// propeller draws air.
//
// Shaft length here is the bare tube, between head and lower unit; others count
// more in, so an answer says which measure it means.
//
// Limits: a boat at rest or at trolling pace, its mount surface level, waves
// short against the boat. The height of the mount above the water is to be taken
// at its highest: it is never lowered for people standing forward, who walk aft
// again. The allowances are common practice without a published source, or from
// memory, and their bands belong to the result.
package shaft

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// A Need lists what a shaft must span.
type Need struct {
	Height unit.Length // from the water up to the mount surface, with the bow as high as it comes
	Above  unit.Length // mount and head above that surface
	Cover  unit.Length // water over the top of the lower unit
	Chop   unit.Length // added for waves
}

// Length is the shaft length needed: the sum.
func (n Need) Length() unit.Length { return n.Height + n.Above + n.Cover + n.Chop }

// Chop is the shaft added for waves of a height: a share (bare, about 0.6) of it.
func Chop(wave unit.Length, share float64) unit.Length { return unit.Length(float64(wave) * share) }

// Submergence is the depth to the top of the lower unit that a shaft leaves:
// its length less what is above the water. Negative where the unit hangs in the
// air.
func Submergence(length, height, above unit.Length) unit.Length { return length - height - above }

// WaveLimit is the wave height at which the propeller begins to draw air. The
// tip, which stands tipRise above the top of the lower unit, must keep the gap of
// water over it in the trough of the bow's movement; that movement to either
// side is the share (bare, above 0) of the wave height that Chop allows for, so
// that a shaft bought with a chop allowance keeps its margin in that chop. A
// shaft that is too short already gives 0; a share outside 0.1 to 2 gives a
// *band.OutsideError.
func WaveLimit(submergence, tipRise, gap unit.Length, share float64) (unit.Length, error) {
	if err := band.Within("share of the wave height", "", share, 0.1, 2); err != nil {
		return 0, err
	}
	return max(submergence-tipRise-gap, 0) / unit.Length(share), nil
}

// A Verdict says how a shaft meets a need.
type Verdict int

const (
	Short Verdict = iota // below the need by more than Tight allows
	Tight                // below it by less: the allowances in the need cover that much
	Fits                 // at or above the need
	Long                 // works, but stands in the way
)

func (v Verdict) String() string {
	return [...]string{"short", "tight", "fits", "long"}[v]
}

// Tightness is how far below the need a shaft may be and still be called tight:
// the need includes cover and waves, which are known to an inch at best (common
// practice, no published source).
var Tightness = unit.Inches(1)

// longBy is how far above the need a shaft is called long: two steps of the
// usual ladder.
var longBy = unit.Inches(12)

// Judge compares a shaft with a need.
func Judge(have, need unit.Length) Verdict {
	const bits = 1e-9 // m: lengths in inches come back with an error in the last bits
	switch d := have - need; {
	case d >= longBy-bits:
		return Long
	case d >= -bits:
		return Fits
	case d >= -Tightness-bits:
		return Tight
	}
	return Short
}

// Stowed is the length that a motor takes on the deck when it lies folded: head,
// shaft and lower unit.
func Stowed(length, head, lowerUnit unit.Length) unit.Length { return length + head + lowerUnit }

// Draught is the depth of water that the motor needs when deployed: depth to the
// top of the lower unit, and the unit with its propeller below.
func Draught(submergence, lowerUnit unit.Length) unit.Length {
	return max(submergence, 0) + lowerUnit
}
