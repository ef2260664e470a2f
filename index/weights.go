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
	meant     float64 // a figure of speech, or a word for one of the trade from elsewhere
	maybe     float64 // the same, where the notes use the word as well
	common    float64 // a word of everyday talk that tells little
	corrected float64 // a misspelt word
	number    float64 // a number: which passage is meant hardly hangs on it

	liftContext, liftTopic float64 // the share that a word of the context, a topic adds

	// The floor, and what counts toward it beside the score: the whole question
	// covered, a thing of the trade named, and, against it, a word of other matters.
	floor, covered, known, trades, elsewhere float64
	trade                                    float64 // what a word of the trade weighs among what is covered, against one that no passage knows

	coveredFew float64 // what must be covered in an index of few passages

	// beside is the part of the best passage's score that another must reach to be
	// named after it: where one is clearly meant, the rest are off the subject.
	beside float64

	perNote int // most passages of one note among the hits
}

var judged = weights{
	k1: 1.2, b: 0.6,
	textLength: 80, headLength: 80,
	head: 2.5, pair: 1.5,
	concept: 0.8, talk: 0.6, alike: 0.3, meant: 0.6, maybe: 0.45, common: 0.7, corrected: 0.8, number: 0.3,
	liftContext: 0.12, liftTopic: 0.08,
	floor: 6.2, covered: 4, known: 2, trades: 2, elsewhere: 2.5, trade: 0.6,
	coveredFew: 0.3, beside: 0.6, perNote: 2,
}
