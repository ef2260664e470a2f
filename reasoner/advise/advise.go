// Package advise turns a solved boat into words of advice: which kind of motor
// and why, what would change that, and the cautions that apply. Every rule is a
// row with a name, a condition and its words; adding one touches no control
// flow.
//
//	advise.go    what a rule sees
//	choices.go   choices among kinds
//	cautions.go  cautions
//	headline.go  the first sentence: the pick, or the verdict on what was named
//	cites.go     which note each figure and choice rests on
//
// Limits: the rules are common practice of the trade; each names the note that
// gives its reason. They read facts and figures and compute none.
package advise

import (
	"slices"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/card"
)

// In is what a rule sees: the facts, the solved sheet, and what was asked.
type In struct {
	Card   card.Card
	Sol    *sheet.Solution
	Topics []string
	Lead   []string        // the topics that a turn which only changes facts is about
	Over   string          // the slot that a comparison is about
	Judge  []string        // slots whose said value is to be judged
	Words  []string        // what a wordy question is about
	Quoted []string        // notes that answer a question of words
	Shown  []sheet.ID      // figures that rest on something said; nil means every known one
	Unmet  string          // a voltage that was said, for which no motor that meets the need is built
	Was    *sheet.Solution // as it stood before a turn that only changes facts; nil otherwise
	Sys    unit.System
}

// asks reports whether a topic is among those asked.
func (in In) asks(topics ...string) bool {
	return slices.ContainsFunc(topics, func(t string) bool { return slices.Contains(in.Topics, t) })
}

// said is the word of a slot as stated, "" when nobody did.
func (in In) said(slot string) string {
	f, _ := in.Card.Get(slot)
	return f.Text
}

// mentions reports whether the question is in words about any of these.
func (in In) mentions(words ...string) bool {
	return slices.ContainsFunc(words, func(w string) bool { return slices.Contains(in.Words, w) })
}

// has reports whether one of these slots was stated.
func (in In) has(slots ...string) bool {
	return slices.ContainsFunc(slots, func(slot string) bool {
		_, ok := in.Card.Get(slot)
		return ok
	})
}

func (in In) wants(slot string) bool   { return in.said(slot) == "true" }
func (in In) refuses(slot string) bool { return in.said(slot) == "false" }

// word is a word cell of the sheet, said or assumed.
func (in In) word(id sheet.ID) string {
	if in.Sol == nil {
		return ""
	}
	return in.Sol.Word(id)
}

func (in In) hull(kinds ...string) bool { return slices.Contains(kinds, in.word(sheet.BoatHull)) }

// num is a known cell's value; ok is false when it is unknown.
func (in In) num(id sheet.ID) (float64, bool) {
	if in.Sol == nil || !in.Sol.Has(id) {
		return 0, false
	}
	return in.Sol.Value(id), true
}

// over reports whether a cell is known and more than x.
func (in In) over(id sheet.ID, x float64) bool {
	v, ok := in.num(id)
	return ok && v > x
}

// told reports whether a cell's value was stated, not assumed.
func (in In) told(id sheet.ID) bool {
	if in.Sol == nil {
		return false
	}
	st := in.Sol.Step(id)
	return st != nil && (st.Origin == sheet.FromSaid || st.Origin == sheet.FromMeasured)
}

func (in In) fill(text string) string {
	if in.Sol == nil {
		return text
	}
	return in.Sol.Fill(text, in.Sys)
}

// windy reports a stated wind of a moderate breeze or more: from 12 mph up,
// where the raised rule of thumb begins (common practice, no published source).
func (in In) windy() bool {
	return in.told(sheet.WindSpeed) && in.over(sheet.WindSpeed, unit.MilesPerHour(11.9).MetresPerSecond())
}

func (in In) salt() bool {
	return in.said("water.kind") == "salt" || in.said("water.kind") == "brackish"
}

func (in In) transom() bool { return in.word(sheet.MountPlace) == "transom" }

func (in In) lithium() bool {
	return in.word(sheet.BatteryChemistry) == "lithium" || in.said("battery.chemistry") == "lithium" || in.mentions("lithium")
}

// freezing reports talk of frost, or a stated temperature near it.
func (in In) freezing() bool {
	return in.mentions("cold") || in.told(sheet.AirTemp) && !in.over(sheet.AirTemp, 4)
}

// astern reports a motor that stands at the stern or on a hull too light for
// more: few motors made for it steer themselves.
func (in In) astern() bool {
	return in.transom() || in.hull("canoe", "kayak", "inflatable", "sailboat")
}

// holdingPays reports wind, stream or a way of fishing in which position hold is
// worth its price.
func (in In) holdingPays() bool {
	return in.windy() || in.told(sheet.CurrentSpeed) && in.over(sheet.CurrentSpeed, 0) || in.said("use.style") == "vertical-jigging"
}

// AboutStream reports a question that speaks of a current in the water.
func (in In) AboutStream() bool {
	return in.mentions("current") || in.told(sheet.CurrentSpeed)
}

// steersItself reports a wish that only a motor that steers itself can meet.
func (in In) steersItself() bool {
	return in.wants("want.position-hold") || in.wants("want.heading-hold") || in.wants("want.track")
}

// quotes reports whether one of the notes is among those that answer.
func (in In) quotes(notes ...string) bool {
	return slices.ContainsFunc(notes, func(n string) bool { return slices.Contains(in.Quoted, n) })
}
