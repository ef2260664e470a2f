package answer

// Drill is one turn of a drill: an invented customer speaks, a trainee names
// what fits, and the picks are marked.
type Drill struct {
	Topic    string   `json:"topic"`
	Title    string   `json:"title"`              // the topic in words
	Level    int      `json:"level"`              // 1 to 5
	Seed     uint64   `json:"seed"`               // of the drill
	Customer int      `json:"customer"`           // which of the drill's customers, from 1
	Written  string   `json:"written,omitempty"`  // the trainer's own scenario that this is
	Opens    bool     `json:"opens,omitempty"`    // this customer has just come in
	Says     string   `json:"says,omitempty"`     // what the customer says
	Note     string   `json:"note,omitempty"`     // what the program says beside the customer
	Heard    []string `json:"heard,omitempty"`    // picks taken down in this turn, "thrust 55 lb"
	Wanted   []string `json:"wanted,omitempty"`   // what is still to be named
	Marks    []Marked `json:"marks,omitempty"`    // once the picks are marked
	Points   float64  `json:"points,omitempty"`   // with Marks
	Most     float64  `json:"most,omitempty"`     // the points that could be had
	Unscored bool     `json:"unscored,omitempty"` // the working was shown before the picks were named
	Next     string   `json:"next,omitempty"`     // what can be said now
}

// Marked is one thing marked. Kind is item, question, caution or wish. Verdict is
// right, acceptable, under, over, wrong or missing for an item, and done or
// missing for the other kinds.
type Marked struct {
	ID      string  `json:"id"` // the item, the slot that was to be asked for, the caution
	Kind    string  `json:"kind"`
	Label   string  `json:"label"`
	Verdict string  `json:"verdict"`
	Said    string  `json:"said,omitempty"`
	Want    string  `json:"want,omitempty"`
	Why     string  `json:"why,omitempty"`
	Figure  string  `json:"figure,omitempty"` // the figure whose working shows it
	Points  float64 `json:"points"`
	Most    float64 `json:"most"`
	Cites   []int   `json:"cites,omitempty"`
}

// Lesson is a lesson's own part; its passages and the steps of its worked
// example stand in the Answer.
type Lesson struct {
	Topic     string     `json:"topic"`
	Title     string     `json:"title"`
	Seed      uint64     `json:"seed"`
	Example   Exercise   `json:"example"`
	Exercises []Exercise `json:"exercises"`
}

// Exercise is a customer, and what fits.
type Exercise struct {
	Says    string   `json:"says"`
	Answers []string `json:"answers"`
}
