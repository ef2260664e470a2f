package text

import (
	"slices"

	"heronlake.example/ask/reasoner/answer"
)

// news keeps of a follow-up what moved: the customer has just read the rest.
// What changed comes first; the headline, problems and the question back always
// stay.
func news(a answer.Answer) answer.Answer {
	a.Figures = kept(a.Figures, func(f answer.Figure) bool { return f.Moved && (f.Asked || f.Decides) })
	a.Choices = kept(a.Choices, func(c answer.Choice) bool { return c.Moved })
	a.Cautions = kept(a.Cautions, func(c answer.Caution) bool { return c.Moved })
	a.Assumed, a.Parts = nil, nil
	if !slices.ContainsFunc(a.Offers, func(o answer.Offer) bool { return o.Moved }) {
		a.Offers = nil
	}
	cited := map[int]bool{}
	for _, f := range a.Figures {
		for _, n := range f.Cites {
			cited[n] = f.Asked || f.Decides || cited[n]
		}
	}
	for _, c := range a.Choices {
		for _, n := range c.Cites {
			cited[n] = true
		}
	}
	for _, c := range a.Cautions {
		for _, n := range c.Cites {
			cited[n] = true
		}
	}
	a.Passages = kept(a.Passages, func(q answer.Passage) bool { return q.Quoted || cited[q.N] })
	return a
}

// kept copies what a test keeps; the answer's own lists stay whole.
func kept[T any](list []T, keep func(T) bool) []T {
	return slices.DeleteFunc(slices.Clone(list), func(x T) bool { return !keep(x) })
}
