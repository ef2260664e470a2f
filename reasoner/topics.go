package reasoner

import (
	"slices"
	"strings"

	"heronlake.example/ask/reasoner/meaning"
)

// worded are the topics that are answered from the notes rather than by figures.
var worded = []string{string(meaning.Concept), string(meaning.Fault), string(meaning.Choice)}

func isWorded(topic string) bool { return slices.Contains(worded, topic) }

// figured reports whether a topic that has figures is among them.
func figured(topics []string) bool {
	return slices.ContainsFunc(topics, func(t string) bool { return !isWorded(t) })
}

// slotTopics say what a bare statement of facts is about when nothing was asked
// before, the first match winning. People alone are about anything.
var slotTopics = []struct{ prefix, topic string }{
	{"load.plate", "capacity"},
	{"boat.", "fit"}, {"load.", "fit"},
	{"mount.height", "shaft"}, {"motor.shaft", "shaft"},
	{"charge", "charger"},
	{"wire.", "wire"},
	{"battery.", "runtime"},
	{"motor.", "fit"}, {"wind.", "fit"}, {"current.", "fit"}, {"want.", "fit"}, {"water.", "fit"}, {"use.", "fit"}, {"money.", "fit"}, {"chop.", "shaft"}, {"mount.", "fit"},
}

// topicsOf gives the topics of a turn: those asked, else those of the turn
// before, else what the facts themselves suggest.
func topicsOf(out meaning.Outcome, before []string) []string {
	var topics []string
	for _, t := range out.Wish.Topics {
		topics = append(topics, string(t))
	}
	switch {
	case len(topics) > 0:
		return unmeant(topics, out)
	case out.Wish.Why || len(out.Changed) > 0 && len(before) > 0:
		return before
	}
	for _, r := range slotTopics {
		for _, slot := range out.Changed {
			if strings.HasPrefix(slot, r.prefix) {
				return []string{r.topic}
			}
		}
	}
	return []string{string(meaning.Concept)}
}

// unmeant leaves out a run time that words of two meanings ask for where no
// battery was named: "how far can I run 6 gauge" asks for feet, "how much current
// does it hold" for a stream.
func unmeant(topics []string, out meaning.Outcome) []string {
	has := func(slot string) bool { _, ok := out.Card.Get(slot); return ok }
	asked := func(t meaning.Topic) bool { return slices.Contains(topics, string(t)) }
	wire := asked(meaning.Wire) && has("wire.gauge")
	stream := asked(meaning.Hold) && slices.Contains(out.Wish.Words, "current") && !has("use.hours")
	if !wire && !stream || slices.ContainsFunc(batterySlots, has) {
		return topics
	}
	return slices.DeleteFunc(slices.Clone(topics), func(t string) bool { return t == string(meaning.Runtime) })
}

// lasting are the topics that a later "what about 24 volt?" goes on with. An
// explanation in between displaces nothing, and a fitting once asked for stays
// beside whatever was asked of it since.
func lasting(topics, before []string) []string {
	if !figured(topics) {
		return before
	}
	if fitting := string(meaning.Fit); slices.Contains(before, fitting) && !slices.Contains(topics, fitting) {
		return append(slices.Clone(topics), fitting)
	}
	return topics
}

// leads are the topics that a later turn's headline is about: those asked for
// last, though a fitting stands beside them.
func leads(topics []string, out meaning.Outcome, now state) []string {
	if !figured(topics) || goesOn(out, now.topics) {
		return now.lead
	}
	if timing(topics) && slices.ContainsFunc(out.Wish.Words, func(w string) bool { return w == "hold" || w == "position hold" }) && !slices.Contains(topics, string(meaning.Hold)) {
		return append(slices.Clone(topics), string(meaning.Hold)) // hours of holding
	}
	return topics
}

// goesOn reports whether a turn only changes facts of what was asked before.
func goesOn(out meaning.Outcome, before []string) bool {
	return len(out.Wish.Topics) == 0 && !out.Wish.Why && len(out.Changed) > 0 && len(before) > 0
}
