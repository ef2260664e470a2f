package drill

import (
	"slices"
	"strings"

	"heronlake.example/ask/kb/words"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// talk is a line to the customer. More than longestTalk nobody says in one
// breath, and more is not read.
func (d *Drill) talk(line string) answer.Answer {
	d.turns++
	if d.state == talking && helpless(line) {
		return d.reply(line, answer.Drill{Note: d.help()})
	}
	var x answer.Drill
	var says []string
	before, picks := d.said(), d.h.card
	puzzled := false
	parts, asks := sentences(line[:min(len(line), longestTalk)])
	for i, t := range parts {
		marked := asks[i] && strings.Contains(line, t+"?")
		answers, ok := d.hear(t, asks[i], marked)
		if len(answers) == 0 {
			d.h.sentence = append(d.h.sentence, t) // what was a question is no warning
		}
		says = append(says, answers...)
		puzzled = puzzled || !ok
	}
	after := d.said()
	for _, it := range d.s.items() {
		if now := after[it.id]; now != "" && now != before[it.id] {
			x.Heard = append(x.Heard, it.label+" "+now)
		}
	}
	warned := d.state == warning && sameCards(picks, d.h.card)
	x.Wanted = d.wanted()
	switch {
	case warned && len(says) == 0 && len(x.Heard) == 0:
		return d.close(line)
	case len(x.Wanted) == 0:
		if d.state = warning; len(x.Heard) > 0 || len(says) == 0 {
			says = append(says, "Anything I should watch out for?")
		}
	case len(says) == 0 && len(x.Heard) == 0 && puzzled:
		says = append(says, pick(&chance{mixed(d.s.Seed, uint64(d.turns))}, []string{"Sorry, what was that?", "Come again?", "I didn't follow that."}))
		x.Next = "Ask for one measure at a time, or name a pick, such as: " + d.first(x.Wanted).how + "."
	case len(says) == 0 && len(x.Heard) == 0:
		says = append(says, pick(&chance{mixed(d.s.Seed, uint64(d.turns))}, []string{"All right. And what do I take?", "Fine by me. So what do I need?"}))
	}
	x.Says = strings.Join(says, " ")
	return d.reply(line, x)
}

// sameCards reports whether two cards hold the same picks.
func sameCards(a, b card.Card) bool {
	for slot := range pickSlots {
		x, y := a.All(slot), b.All(slot)
		if !slices.EqualFunc(x, y, same) {
			return false
		}
	}
	return true
}

// first is the first item that is still to be named.
func (d *Drill) first(wanted []string) *itemRow {
	for _, it := range d.s.items() {
		if len(wanted) > 0 && it.label == wanted[0] {
			return it
		}
	}
	return d.s.items()[0]
}

func (d *Drill) said() map[string]string {
	m := newMarker(&d.s, &d.h, d.full, d.opts.Units)
	out := map[string]string{}
	for _, it := range d.s.items() {
		out[it.id] = it.said(m)
	}
	return out
}

// hear takes one sentence: the customer's answers where it asks, else its picks.
// ok is false when it was neither.
func (d *Drill) hear(t string, asks, marked bool) (answers []string, ok bool) {
	if d.s.Fault != nil {
		said := corrected(t)
		for len(said) > 0 && politeWords[said[0]] {
			said = said[1:]
		}
		asks = asks || d.state == talking && len(said) > 0 && said[0] == "at" // "and at the plug"
		if list := d.look(t, asks); list != nil {
			return list, true
		}
		if !asks && len(said) > 0 && lookWords[said[0]] {
			return nil, false // an order to look names no cause
		}
		if asks && !diagnosing(t) {
			answers = d.answered(t)
			return answers, len(answers) > 0
		}
	}
	if d.state == talking && says(corrected(t), openQuestions) {
		return []string{pick(&chance{mixed(d.s.Seed, uint64(d.turns))}, []string{"Not that I can think of. What would you need to know?", "You ask, I'll tell you.", "I wouldn't know what matters. Ask away."})}, true
	}
	if !asks && (leavesOpen(t) || wantsToKnow(t)) {
		asks = len(asksFor(t)) > 0
	}
	if asks {
		trial := d.h
		if !marked && trial.take(t, row(d.s.Topic)) && measured(t) {
			_, took := d.pick(t)
			return nil, took
		}
		if answers = d.answered(t); len(answers) > 0 {
			return answers, true
		}
		changed, _ := d.pick(t)
		return nil, changed
	}
	if _, took := d.pick(t); took {
		return nil, true
	}
	if d.state == talking && !refusing(t) {
		if d.s.Fault != nil {
			if list := d.look(t, true); list != nil {
				return list, true
			}
		}
		if slots := asksFor(t); len(slots) > 0 {
			return d.answerTo(slots), true
		}
	}
	return nil, d.state == warning || refusing(t)
}

// answered gives the customer's answers to a question, clause by clause.
func (d *Drill) answered(question string) []string {
	var out []string
	again, _, _ := strings.Cut(voices[d.s.Voice].again, "{v}")
	chided := false
	for _, c := range clauses(question) {
		for _, t := range d.answerTo(asksFor(c)) {
			rest, told := strings.CutPrefix(t, again)
			if told && chided { // once is enough
				t = rest
			}
			chided = chided || told
			if !slices.Contains(out, t) {
				out = append(out, t)
			}
		}
	}
	return out
}

// openQuestions leave it to the customer what to tell, who does not know what
// matters.
var openQuestions = []string{"anything else i should know", "anything else i need to know", "anything else you can tell me", "what else should i know", "what else can you tell me",
	"anything i should know", "tell me more", "anything else to tell me", "what else do i need to know", "anything else about it", "what am i missing", "what did i miss", "anything else"}

// leavesOpen reports whether a sentence without a figure sets two things against
// each other: "salt or fresh".
func leavesOpen(t string) bool {
	return slices.Contains(corrected(t), "or") && !measured(t)
}

// wantsToKnow reports whether a sentence without a figure asks in the form of a
// statement: "need the deck height too".
func wantsToKnow(t string) bool {
	return !measured(t) && says(corrected(t), []string{"need the", "need your", "need to know", "need to hear", "have to know", "want to know", "let me know", "like to know"})
}

// guesses begin a question that names a cause.
var guesses = []string{"is it the", "is it a", "is it your", "could it be", "could be", "might it be", "isnt it the", "its the", "so its", "sounds like", "looks like", "what if its", "must be", "has to be"}

// diagnosing reports whether a question names a cause: "could it be the plug?".
func diagnosing(t string) bool {
	said := corrected(t)
	for len(said) > 0 && politeWords[said[0]] {
		said = said[1:]
	}
	if !slices.ContainsFunc(guesses, func(g string) bool {
		w := words.Split(g)
		return len(said) > len(w) && slices.Equal(said[:len(w)], w)
	}) {
		return false
	}
	return slices.ContainsFunc(faultRows, func(f faultRow) bool { return says(said, f.causes) })
}

// pick takes picks down. changed reports whether an item was named anew, took
// whether the sentence was a pick at all.
func (d *Drill) pick(t string) (changed, took bool) {
	before, old := d.said(), d.h.card
	d.h.picks = append(d.h.picks, t)
	took = d.h.take(t, row(d.s.Topic))
	d.h.lone(t, d.unnamed(d.said()), old)
	for id, now := range d.said() {
		changed = changed || now != before[id]
	}
	if took = took || changed; !took {
		d.h.picks = d.h.picks[:len(d.h.picks)-1]
	}
	return changed, took
}

// unnamed are the items that nothing was said of.
func (d *Drill) unnamed(said map[string]string) []string {
	var out []string
	for _, it := range d.s.items() {
		if said[it.id] == "" {
			out = append(out, it.id)
		}
	}
	return out
}

// measured reports whether a text holds a number.
func measured(t string) bool { return len(read.Read(t).Measures) > 0 }

func refusing(t string) bool { return says(corrected(t), refuses) }

// orderWords begin an order to look or to measure.
var orderWords = set("check", "measure", "put", "look", "try", "test", "run", "turn", "unplug", "pull", "take", "read", "see", "lets", "spin", "meter", "disconnect", "move", "clamp", "hook")

// lookWords are those of them that only look.
var lookWords = set("check", "measure", "look", "test", "read", "meter", "see")

// look answers a check of a motor that does not do what it should.
func (d *Drill) look(t string, asks bool) []string {
	said := corrected(t)
	if !asks && (len(said) == 0 || !orderWords[said[0]]) || asks && diagnosing(t) {
		return nil
	}
	checks := checksFor(t)
	if len(checks) == 0 {
		return nil
	}
	var out []string
	for _, c := range checks {
		d.h.asked = append(d.h.asked, "check."+c)
		out = append(out, d.s.check(c))
	}
	return out
}

// answerTo gives the customer's answers to questions about slots.
func (d *Drill) answerTo(slots []string) []string {
	var out []string
	for _, slot := range slots {
		d.h.asked = append(d.h.asked, slot)
		if text := d.tell(slot); !slices.Contains(out, text) {
			out = append(out, text)
		}
	}
	return out
}

// tell is what the customer says of a slot: the fact, or one that stands for it,
// or what anybody would know, or that nobody knows.
func (d *Drill) tell(slot string) string {
	unknown := voices[d.s.Voice].unknown
	instead := insteadRows[slot]
	if instead == nil {
		instead = []string{slot}
	}
	for _, other := range instead {
		f, ok := d.s.Fact(other)
		if !ok {
			continue
		}
		d.h.asked = append(d.h.asked, other)
		text := replyTo(&d.s, f, d.opts.Units)
		if other != slot && other == "load.total" && slot != "load.dry" {
			text = pick(&chance{mixed(d.s.Seed, 7)}, unknown) + " " + text
		}
		return text
	}
	if f, ok := d.common(slot); ok {
		return replyTo(&d.s, f, d.opts.Units)
	}
	if text := d.plain(slot); text != "" {
		return text
	}
	return pick(&chance{mixed(d.s.Seed, uint64(len(slot)+len(d.h.asked)))}, unknown)
}

// helpless reports whether a trainee asks for help instead of the customer.
func helpless(line string) bool {
	said := corrected(line)
	if len(said) == 1 && slices.Contains([]string{"help", "hint", "stuck", "huh", "eh"}, said[0]) {
		return true
	}
	return len(said) <= 12 && !measured(line) && says(said, []string{"im stuck", "i am stuck", "help me", "i need help", "need a hint", "a hint", "give me a hint", "what do i ask", "what should i ask", "what do i do",
		"what now", "what next", "no clue", "what am i supposed to", "where do i start", "how does this work", "i dont know what to", "i dont know", "dunno", "i dunno", "not sure what to", "i have no idea", "what do you want from me"})
}

// help is what the program says to who is stuck: what is to be named and how, and
// what is asked for in such a sale. It does not tell which of it is missing here.
func (d *Drill) help() string {
	var b strings.Builder
	b.WriteString("To name, in such words: ")
	said := d.said()
	left := d.unnamed(said)
	for i, id := range left {
		if i > 0 {
			b.WriteString("; ")
		}
		b.WriteString(itemOf(id).label + " (" + itemOf(id).how + ")")
	}
	b.WriteString(". ")
	if d.s.Fault != nil {
		b.WriteString("Have the customer measure and look: volts at rest, at the posts and at the plug under load; amps; the breaker and its rating; the prop; cables; the charger's lights.")
	} else {
		var list []string
		for _, slot := range row(d.s.Topic).holds {
			list = append(list, asPhrase(slot, slot))
		}
		b.WriteString("What a fitter wants to know for it: " + strings.Join(list, "; ") + ". Some of that was told.")
	}
	b.WriteString(" :boat lists what you know, :why shows the working and takes this customer off the count, skip passes.")
	return b.String()
}
