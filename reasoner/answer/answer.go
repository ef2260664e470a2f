// Package answer is the contract between the core and everything that shows its
// results: one question gives one Answer, and the terminal text, the fit sheet,
// a drill's marking and --json are views of that one value. A view chooses its
// words and its layout; it reckons nothing.
//
// Limits: values are SI, hours, ampere hours and watt hours; each is rounded to
// six significant figures once, by Finish. Field names and ids are public: a new
// one may come under the same Schema, an old one never gets another name.
package answer

import (
	"heronlake.example/ask/calc/unit"
)

// Schema is the version of the contract.
const Schema = "ask.answer/1"

// Answer is everything that one question gave.
type Answer struct {
	Schema   string   `json:"schema"`
	Question string   `json:"question"`
	Headline string   `json:"headline"`
	Changed  []Change `json:"changed,omitempty"` // what this turn changed, and by how much
	// FollowUp is set when the turn only changed facts of what was asked before:
	// a reader then needs what moved, not everything again.
	FollowUp   bool         `json:"follow_up,omitempty"`
	Read       []Read       `json:"read"`
	Understood []Understood `json:"understood"`
	Assumed    []Assumed    `json:"assumed"`
	Figures    []Figure     `json:"figures"`
	Choices    []Choice     `json:"choices"`
	Cautions   []Caution    `json:"cautions"`
	Passages   []Passage    `json:"passages"`
	Ask        []Ask        `json:"ask"`
	Problems   []Problem    `json:"problems"`
	Steps      []Step       `json:"steps,omitempty"`
	Tables     []Table      `json:"tables,omitempty"`
	Curves     []Curve      `json:"curves,omitempty"`
	Parts      []Part       `json:"parts,omitempty"`
	Offers     []Offer      `json:"offers,omitempty"`    // what the shelf holds for this boat, the best first
	Order      string       `json:"order,omitempty"`     // by what the offers are ordered
	Shelf      string       `json:"shelf,omitempty"`     // whose shelf that is
	Measures   []Measure    `json:"measures,omitempty"`  // on a fit sheet: how to measure what is still assumed
	Corrected  []Corrected  `json:"corrected,omitempty"` // misspelt trade words and what they were taken for
	Notice     string       `json:"notice,omitempty"`    // the standing line on regulations, manuals and electricians
	// Steer names the colon word that this answers ("boat", "why", "undo", ...);
	// empty for plain talk.
	Steer   string    `json:"steer,omitempty"`
	Unknown []Unknown `json:"unknown,omitempty"` // with "boat": what nobody said and nothing assumes
	Reply   string    `json:"reply,omitempty"`   // a colon word's one-line result
	Drill   *Drill    `json:"drill,omitempty"`   // a turn of a drill
	Lesson  *Lesson   `json:"lesson,omitempty"`  // with "lesson"
}

// Unknown is a slot that would be of use and has no value.
type Unknown struct {
	Slot  string `json:"slot"`
	Label string `json:"label"`
}

// Change is one figure or fact that a turn moved.
type Change struct {
	ID   string `json:"id"`   // slot or figure
	Text string `json:"text"` // "thrust needed 48 -> 53 lb"
}

// Read is a number or measure as it stands in the text, whatever it may mean.
type Read struct {
	Said  string   `json:"said"`
	Kind  string   `json:"kind"`
	Value *float64 `json:"value,omitempty"`
	Low   *float64 `json:"low,omitempty"`
	High  *float64 `json:"high,omitempty"`
	Unit  string   `json:"unit"`
	As    string   `json:"as,omitempty"` // what it is where it has no part in a fitting: a horsepower, a year
	Start int      `json:"start"`        // byte offsets in Question
	End   int      `json:"end"`
}

// Understood is a slot as it stands after this turn.
type Understood struct {
	Slot    string   `json:"slot"`
	Label   string   `json:"label,omitempty"` // the slot in words, "boat length"
	Value   *float64 `json:"value,omitempty"`
	Low     *float64 `json:"low,omitempty"`
	High    *float64 `json:"high,omitempty"`
	Text    string   `json:"text,omitempty"`
	Unit    string   `json:"unit,omitempty"`
	Display string   `json:"display,omitempty"` // "18 ft"
	Said    string   `json:"said,omitempty"`
	New     bool     `json:"new,omitempty"`
	Row     string   `json:"row,omitempty"` // the rule that bound it
}

// Assumed is a value put in for what nobody said.
type Assumed struct {
	Slot    string   `json:"slot"`
	Label   string   `json:"label,omitempty"` // the slot in words, "people aboard"
	Value   *float64 `json:"value,omitempty"`
	Low     *float64 `json:"low,omitempty"`
	High    *float64 `json:"high,omitempty"`
	Text    string   `json:"text,omitempty"`
	Unit    string   `json:"unit,omitempty"`
	Display string   `json:"display"` // "2 (1 to 3)"
	Why     string   `json:"why"`
	Source  string   `json:"source,omitempty"`
	Decides bool     `json:"decides,omitempty"` // a figure that was asked for or decides rests on it
}

// Figure is one computed cell.
type Figure struct {
	ID      string  `json:"id"`
	Label   string  `json:"label"`
	Value   float64 `json:"value"`
	Low     float64 `json:"low"`
	High    float64 `json:"high"`
	Unit    string  `json:"unit"`
	Display string  `json:"display"` // "38 lb"
	Band    string  `json:"band,omitempty"`
	Basis   string  `json:"basis"`
	How     string  `json:"how"`
	Source  string  `json:"source,omitempty"`
	Cites   []int   `json:"cites"`
	Asked   bool    `json:"asked,omitempty"`   // the question asked for it
	Decides bool    `json:"decides,omitempty"` // it decided the pick
	Moved   bool    `json:"moved,omitempty"`   // it reads otherwise than before this turn
}

// Choice is a pick among kinds.
type Choice struct {
	ID      string `json:"id"`
	Pick    string `json:"pick"`
	Why     string `json:"why"`
	Instead string `json:"instead,omitempty"` // what would change it; when the cheaper does
	Cites   []int  `json:"cites"`
	Asked   bool   `json:"asked,omitempty"`
	Moved   bool   `json:"moved,omitempty"` // another pick than before this turn
}

// Caution is a warning that applies here.
type Caution struct {
	ID    string `json:"id"`
	Text  string `json:"text"`
	Cites []int  `json:"cites"`
	Moved bool   `json:"moved,omitempty"` // it did not apply before this turn
}

// Passage is a quoted paragraph of the notes.
type Passage struct {
	N       int    `json:"n"`
	Note    string `json:"note"`
	Title   string `json:"title,omitempty"`
	Heading string `json:"heading"`
	Text    string `json:"text"`
	Source  string `json:"source"`
	Shop    bool   `json:"shop,omitempty"` // a shop's own note
	// Quoted is set when the passage is itself the answer and not only what a
	// figure or a choice rests on; its text is then shown whole.
	Quoted bool `json:"quoted,omitempty"`
}

// Ask is the one question worth asking next.
type Ask struct {
	Slot     string `json:"slot"`
	Question string `json:"question"`
	Why      string `json:"why"`
}

// Problem is what could not be done, in words that say what to do.
type Problem struct {
	Kind  string `json:"kind"` // unplaced, ambiguous, contradiction, out-of-range, out-of-scope, no-notes, unreadable
	Text  string `json:"text"`
	Said  string `json:"said,omitempty"`
	Slot  string `json:"slot,omitempty"`
	Start int    `json:"start,omitempty"` // byte offsets of Said in Question; both 0 when none
	End   int    `json:"end,omitempty"`
}

// Step is one line of the chain behind a figure.
type Step struct {
	ID       string   `json:"id"`
	Label    string   `json:"label"`
	From     string   `json:"from"` // said, measured, assumed, computed, constant
	Row      string   `json:"row,omitempty"`
	Formula  string   `json:"formula,omitempty"`
	Working  string   `json:"working,omitempty"` // the formula with its numbers put in
	Comes    string   `json:"comes,omitempty"`   // what the working comes to, to its own digits and in its own unit
	Passed   bool     `json:"passed,omitempty"`  // does nothing but hand on another's value
	Rank     string   `json:"rank,omitempty"`    // "beaten" by a larger route, or only "behind" such a one; "" on the way to the figure
	Inputs   []string `json:"inputs,omitempty"`
	Result   string   `json:"result"`
	Value    *float64 `json:"value,omitempty"`
	Band     string   `json:"band,omitempty"`
	Unit     string   `json:"unit,omitempty"`
	Source   string   `json:"source,omitempty"`
	Said     string   `json:"said,omitempty"`
	Why      string   `json:"why,omitempty"`
	Warnings []string `json:"warnings,omitempty"`
}

// Table is a comparison.
type Table struct {
	ID      string     `json:"id"`
	Title   string     `json:"title"`
	Columns []string   `json:"columns"`
	Rows    [][]string `json:"rows"`
	Verdict string     `json:"verdict,omitempty"`
}

// Curve is a line to draw: named axes, units, points in SI.
type Curve struct {
	ID     string       `json:"id"`
	Title  string       `json:"title"`
	X      Axis         `json:"x"`
	Y      Axis         `json:"y"`
	Points [][2]float64 `json:"points"`
	Marks  []Mark       `json:"marks,omitempty"`
}

// Mark is a value of note on one axis of a curve: the wind said, a rating that
// is sold.
type Mark struct {
	Axis  string  `json:"axis"` // x or y
	Value float64 `json:"value"`
	Label string  `json:"label"`
	Own   bool    `json:"own,omitempty"` // this boat's, among others
}

// Measure tells how to measure what a fit still assumes.
type Measure struct {
	Slot  string `json:"slot"`
	Label string `json:"label"`
	Taken string `json:"taken"` // what was assumed
	How   string `json:"how"`
}

// Axis names one direction of a curve.
type Axis struct {
	Label string `json:"label"`
	Unit  string `json:"unit"`
}

// Part is one line of the rig.
type Part struct {
	What  string   `json:"what"`
	Item  string   `json:"item,omitempty"` // the shop's own name of it
	Count int      `json:"count"`
	Price *float64 `json:"price,omitempty"` // each; absent where the shelf has none
	Sum   *float64 `json:"sum,omitempty"`   // price times count
	Note  string   `json:"note,omitempty"`
}

// Offer is one motor of the shelf, held against the needs.
type Offer struct {
	SKU    string   `json:"sku"`
	Name   string   `json:"name"`
	Price  float64  `json:"price"`           // the motor alone, USD
	Total  float64  `json:"total,omitempty"` // the rig complete, as far as the shelf holds it
	Whole  bool     `json:"whole"`           // the shelf holds every part of the rig
	Fits   bool     `json:"fits"`
	Views  []string `json:"views,omitempty"` // "cheapest that does the job" and the like
	Needs  []Need   `json:"needs"`
	Reason string   `json:"reason,omitempty"` // what is tight or fails, in a few words
	Moved  bool     `json:"moved,omitempty"`  // it stands otherwise than before this turn
}

// Need is one need held against a motor: pass, tight or fail.
type Need struct {
	Need    string `json:"need"`
	Verdict string `json:"verdict"`
	Reason  string `json:"reason,omitempty"`
}

// Corrected is a misspelt word of the trade and what it was taken for.
type Corrected struct {
	Said string `json:"said"`
	Word string `json:"word"`
}

// Num returns a pointer to a value rounded as the contract asks.
func Num(x float64) *float64 {
	r := unit.Round(x, 6)
	return &r
}

// Finish rounds what is still unrounded and replaces nil lists by empty ones, so
// that the JSON always carries the same fields.
func (a *Answer) Finish() {
	a.Schema = Schema
	for i := range a.Figures {
		f := &a.Figures[i]
		f.Value, f.Low, f.High = unit.Round(f.Value, 6), unit.Round(f.Low, 6), unit.Round(f.High, 6)
		if f.Cites == nil {
			f.Cites = []int{}
		}
	}
	for i := range a.Choices {
		if a.Choices[i].Cites == nil {
			a.Choices[i].Cites = []int{}
		}
	}
	for i := range a.Cautions {
		if a.Cautions[i].Cites == nil {
			a.Cautions[i].Cites = []int{}
		}
	}
	for i := range a.Curves {
		for j, p := range a.Curves[i].Points {
			a.Curves[i].Points[j] = [2]float64{unit.Round(p[0], 6), unit.Round(p[1], 6)}
		}
		for j := range a.Curves[i].Marks {
			a.Curves[i].Marks[j].Value = unit.Round(a.Curves[i].Marks[j].Value, 6)
		}
	}
	empty(&a.Read)
	empty(&a.Understood)
	empty(&a.Assumed)
	empty(&a.Figures)
	empty(&a.Choices)
	empty(&a.Cautions)
	empty(&a.Passages)
	empty(&a.Ask)
	empty(&a.Problems)
}

func empty[T any](list *[]T) {
	if *list == nil {
		*list = []T{}
	}
}
