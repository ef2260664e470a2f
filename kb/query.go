package kb

// Query is what the reasoner asks of a search: the words said, and what the
// conversation already knows, so that a kayak question prefers the kayak note.
type Query struct {
	Text    string   // the words as said
	Topics  []string // topics that the reasoner takes the question to be about
	Context []string // words for what is known: hull, water, chemistry
	Limit   int      // most hits wanted; 0 means 3
}

// Hit is one passage found.
type Hit struct {
	Passage string // the passage's id: "note-id#heading-slug"
	Score   float64
	Covered float64 // the share of the query's content words that the passage holds, 0 to 1
}

// Result is the outcome of a search: hits by score, then by id, and the words
// that were taken for others.
type Result struct {
	Hits      []Hit
	Corrected []Correction
	// Known is the share of the query's content words that any note knows; a
	// low one means that the question is about something else.
	Known float64
	// Sure is how far the evidence for the first hit is above the least that is
	// asked of it, 0 and more; 0 as well where there is no hit.
	Sure float64
}

// Correction is a word that no note knows and the one it was taken for.
type Correction struct{ Said, Word string }
