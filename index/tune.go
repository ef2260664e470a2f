package index

// Tune sets a weight by name, while the weights are chosen.
func Tune(name string, x float64) {
	p := map[string]*float64{"k1": &k1, "b": &b, "len": &typicalLength, "note": &typicalNote, "alpha": &Alpha, "beta": &Beta, "concept": &weightConcept, "corr": &weightCorrected, "num": &weightNumber, "cov": &leastCovered, "known": &leastKnown, "ctx": &liftContext}[name]
	*p = x
}
