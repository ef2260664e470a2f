package meaning

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"heronlake.example/ask/reasoner/card"
)

// closedWords are the words that a slot of kinds can hold (answer contract).
var closedWords = map[string][]string{
	"boat.hull":         {"jon", "vee", "deep-vee", "bass", "bay", "flats", "pontoon", "canoe", "kayak", "inflatable", "sailboat", "other"},
	"boat.material":     {"aluminum", "fiberglass", "wood", "polyethylene", "fabric"},
	"mount.place":       {"bow", "transom", "kayak"},
	"mount.kind":        {"clamp", "folding-arm", "compact-pivot", "bracket"},
	"water.kind":        {"fresh", "salt", "brackish"},
	"motor.speeds":      {"fixed", "variable"},
	"motor.drive":       {"brushed", "brushless"},
	"battery.chemistry": {"flooded", "agm", "gel", "lithium"},
	"battery.layout":    {"series", "parallel", "series-parallel"},
	"people.posture":    {"standing", "seated"},
	"engine.leg":        {"up", "down"},
	"wire.place":        {"open", "engine-space"},
}

// longestText bounds the words of one fact, in bytes.
const longestText = 400

// Kept looks over a fact that was written down by an earlier run, or by hand,
// before it goes on a card again. It returns what is wrong with it, in words,
// and "" for a sound one. That the slot exists is the caller's to see.
func Kept(f card.Fact) string {
	if len(f.Slot) > longestText || len(f.Text) > longestText || len(f.Said) > longestText {
		return "a text of the fact is too long"
	}
	numbers := 0
	for _, x := range []*float64{f.Value, f.Low, f.High} {
		if x == nil {
			continue
		}
		if numbers++; math.IsNaN(*x) || math.IsInf(*x, 0) {
			return f.Slot + " holds no usable number"
		}
	}
	if u := unitOf[f.Slot]; u != "" && f.Unit != "" && f.Unit != u {
		return fmt.Sprintf("%s is in %s and wants %s", f.Slot, f.Unit, u)
	}
	switch words, closed := closedWords[f.Slot]; {
	case f.Low != nil && f.High != nil && *f.Low > *f.High:
		return "the range of " + f.Slot + " ends before it begins"
	case numbers == 0 && f.Text == "":
		return f.Slot + " has no value"
	case numeric(f.Slot) && numbers == 0:
		return fmt.Sprintf("%s wants a number, not %q", f.Slot, f.Text)
	case closed && !slices.Contains(words, f.Text):
		return fmt.Sprintf("%s cannot be %q: it is one of %s", f.Slot, f.Text, strings.Join(words, ", "))
	case strings.HasPrefix(f.Slot, "want.") && f.Text != "true" && f.Text != "false":
		return fmt.Sprintf("%s is true or false, not %q", f.Slot, f.Text)
	}
	if numbers > 0 {
		low, high := ends(quantity{f.Value, f.Low, f.High})
		for _, row := range limitRows {
			if row.slot == f.Slot && (high < row.low || low > row.high) {
				return f.Slot + " cannot be right: " + row.what
			}
		}
	}
	return ""
}
