package sheet

// If is the outcome of the sheet with one more cell given, everything else as it
// was: the points of a curve, the answer to "and at 20 mph?". Outputs that
// cannot be known are left out.
func (s *Solution) If(g Given, outputs ...ID) map[ID]float64 {
	out := map[ID]float64{}
	found := newWhatIf(s, outputs).with(g)
	for _, id := range outputs {
		if x, ok := found.Of(id); ok {
			out[id] = x
		}
	}
	return out
}
