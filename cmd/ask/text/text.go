// Package text lays an Answer out as a screen of text that is read across a
// counter: the pick first, then the figures that decided it, the choices, what
// was assumed, cautions, notes, and the question back. It is a pure function of
// the Answer and the Style; it computes nothing and decides nothing but what
// stays on the page when lines run out.
//
//	text.go     Render, and the parts of a page in their order
//	parts.go    how each part is drawn
//	news.go     what a follow-up shows: only what moved
//	problem.go  what could not be done, with the words underlined
//	steer.go    the answers to :boat and :why
//	drill.go    a turn of a drill, and the marking
//	budget.go   what is cut when a page has too many lines
//	page.go     words, ink, wrapping, columns
//	clean.go    what may not reach a terminal
//
// Limits: one page is at most 80 columns wide and, for plain talk, Lines lines
// long unless one caution or quoted note is longer than that. Curves are not drawn.
package text

import (
	"strings"

	"heronlake.example/ask/reasoner/answer"
)

// Widest is the widest page; Narrowest is the narrowest that is laid out, in
// columns. Lines is the longest answer to plain talk, so that with the prompt
// below it a screen of 40 lines holds it whole.
const (
	Widest    = 80
	Narrowest = 12
	Lines     = 38
)

// Style is how a page is laid out.
type Style struct {
	Width    int  // columns, from Narrowest to Widest; 0 is Widest
	Colour   bool // bold and colour; they repeat what the words say already
	Contrast bool // with Colour: bold, reversed and underlined in place of colours
	Plain    bool // for a screen reader: no columns, no underlining, no colour
}

// Render lays out one answer, each line ended. An answer with nothing in it
// gives one line that says so.
func Render(a answer.Answer, s Style) string {
	if s.Width == 0 {
		s.Width = Widest
	}
	s.Width = max(Narrowest, min(s.Width, Widest))
	s.Colour = s.Colour && !s.Plain
	p := page{s}
	var lines []line
	switch a.Steer {
	case "":
		lines = p.fit(p.talk(a), Lines)
	case "boat":
		lines = p.fit(p.boat(a), 0)
	case "why":
		lines = p.fit(p.why(a), 0)
	case "scores":
		lines = p.fit([]*block{p.tables(unsaid(a.Tables, a.Headline)), p.verbatim(a.Reply)}, 0)
	case "lesson":
		lines = p.fit(p.lesson(a), 0)
	case "drill":
		lines = p.fit(p.drill(a), 0)
	default:
		lines = p.fit(p.reply(a), 0)
	}
	if len(lines) == 0 {
		lines = p.wrap("", "", words("There is nothing in this that I can answer."))
	}
	var b strings.Builder
	for _, l := range lines {
		p.paint(&b, l)
	}
	return b.String()
}

// Paragraph lays out running text of the program's own.
func Paragraph(t string, s Style) string {
	return Render(answer.Answer{Steer: "paragraph", Reply: t}, s)
}

// talk is the page for plain talk.
func (p page) talk(a answer.Answer) []*block {
	if a.FollowUp {
		a = news(a)
	}
	grave, slight := sortProblems(a)
	quoted := quotedPassages(a)
	quotes, choices := p.quotes(quoted), p.choices(a)
	if a.Headline == "" && choices.items > 0 {
		quotes, choices = choices, quotes // the pick first, then what it rests on
	}
	head := []*block{
		p.headline(a.Headline),
		p.problems("problems", a.Question, grave),
		p.changed(a.Changed),
		p.verbatim(a.Reply),
	}
	if a.FollowUp { // the customer knows the pick, and waits for what became of it
		head = []*block{head[1], head[2], head[3], head[0]}
	}
	return append(head,
		quotes,
		p.figures(a),
		p.offers(a),
		p.parts(a),
		p.tables(unsaid(a.Tables, a.Headline)),
		choices,
		p.assumed(a.Assumed),
		p.cautions(a),
		p.sources(a, quoted),
		p.corrected(a.Corrected),
		p.problems("unplaced", a.Question, slight),
		p.ask(a.Ask),
		p.notice(a.Notice),
	)
}

// reply is the page for a colon word with a one-line result.
func (p page) reply(a answer.Answer) []*block {
	return []*block{
		p.headline(a.Headline),
		p.problems("problems", a.Question, a.Problems),
		p.changed(a.Changed),
		p.verbatim(a.Reply),
	}
}

// unsaid leaves out a verdict that the headline has told already.
func unsaid(tables []answer.Table, headline string) []answer.Table {
	out := append([]answer.Table(nil), tables...)
	for i := range out {
		if out[i].Verdict != "" && strings.Contains(headline, out[i].Verdict) {
			out[i].Verdict = ""
		}
	}
	return out
}
