package reasoner

import (
	"math"
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/fit"
)

// Two readings of a meter, at the battery and at the plug, tell what is lost on
// the way; the sheet tells what a sound wire of that gauge and run loses. How far
// they stand apart decides whether wire or joint is at fault (common practice, no
// published source).
const (
	badJoint = 1.5 // times what is reckoned: more than the wire explains
	noLoad   = 0.6 // less than this share: the motor was not at full throttle
)

// metered holds two readings against the computed drop; "" where there are not
// two, or where wire, run and motor are not all known.
func (s *Session) metered(a *answer.Answer, f *fit.Fit) string {
	readings := meterReadings(a)
	if len(readings) != 2 || !f.SaidCell(sheet.WireGaugeSaid) || !f.SaidCell(sheet.WireRun) || !f.Sol.Has(sheet.WireVolts) || !f.Sol.Has(sheet.WireContacts) {
		return ""
	}
	volts := func(x float64) string { return unit.Show(x, unit.Volt, s.sys) }
	wire := f.Sol.Value(sheet.WireVolts)
	joints := f.Sol.Value(sheet.WireAmps) * f.Sol.Value(sheet.WireContacts)
	lost := math.Abs(*a.Read[readings[0]].Value - *a.Read[readings[1]].Value)
	for _, i := range readings {
		a.Read[i].As = "meter-reading"
	}
	a.Problems = slices.DeleteFunc(a.Problems, isMeterReading)
	text := "You lose " + volts(lost) + " on the way; at " + f.Show(sheet.WireAmps) + " the wire itself takes " + volts(wire) + " of that, sound joints some " + volts(joints) + ": "
	switch {
	case lost > badJoint*(wire+joints):
		return text + "look for a corroded plug, lug or breaker, warm to the hand."
	case lost < noLoad*(wire+joints):
		return text + "read it again at full throttle."
	}
	return text + "that is the wire's own loss, and thicker wire is the cure if it is too much."
}

func isMeterReading(p answer.Problem) bool {
	return p.Kind == "unplaced" && strings.HasSuffix(p.Text, "a meter reading")
}

// meterReadings are the numbers of the text that were set aside as readings.
func meterReadings(a *answer.Answer) []int {
	var out []int
	for i, r := range a.Read {
		if r.Value != nil && slices.ContainsFunc(a.Problems, func(p answer.Problem) bool { return isMeterReading(p) && p.Start == r.Start && p.End == r.End }) {
			out = append(out, i)
		}
	}
	return out
}
