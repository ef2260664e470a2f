package index

// Tune sets a weight by name, while the weights are chosen.
func Tune(name string, x float64) {
	p := map[string]*float64{"k1": &k1, "b": &b, "len": &typicalLength, "alpha": &Alpha, "head": &typicalHead, "concept": &weightConcept, "alike": &weightAlike, "unk": &unknownIDF, "pair": &Pair, "kunk": &KUnk, "ktrade": &KTrade, "div": &Div, "cover": &Cover, "talk": &weightTalk, "common": &weightCommon, "knownp": &leastKnownPlain, "covp": &leastCoveredPlain, "corr": &weightCorrected, "num": &weightNumber, "cov": &leastCovered, "known": &leastKnown, "ctx": &liftContext}[name]
	*p = x
}
