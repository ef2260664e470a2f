package drill

// A Result is how one customer went, as the trainee's record keeps it.
type Result struct {
	Topic    Topic             `json:"topic"`
	Level    int               `json:"level"`
	Seed     uint64            `json:"seed"`
	Customer int               `json:"customer"`
	Points   float64           `json:"points"`
	Most     float64           `json:"most"`
	Items    map[string]string `json:"items,omitempty"` // item to verdict
}

// Share is the part of the points that was earned, 0 to 1.
func (r Result) Share() float64 {
	if r.Most <= 0 {
		return 0
	}
	return r.Points / r.Most
}

// What lifts a level and what lowers it, and how much the newest result of a
// topic counts against the ones before.
const (
	liftsLevel  = 0.80
	lowersLevel = 0.50
	newest      = 0.5
	untried     = 0.45 // the strength taken for a topic that was never drilled
)

// LevelOf is the level at which a topic goes on: one up for each success, one
// down for each failure.
func LevelOf(record []Result, topic Topic) int {
	level := 1
	for _, r := range record {
		switch {
		case r.Topic != topic:
		case r.Share() >= liftsLevel:
			level = min(Levels, level+1)
		case r.Share() < lowersLevel:
			level = max(1, level-1)
		}
	}
	return level
}

// Strength is how well a topic goes, 0 to 1, the newest results counting most.
func Strength(record []Result, topic Topic) float64 {
	strength, seen := untried, false
	for _, r := range record {
		if r.Topic != topic {
			continue
		}
		if !seen {
			strength, seen = r.Share(), true
			continue
		}
		strength = (1-newest)*strength + newest*r.Share()
	}
	return strength
}

// Next is the topic that is due and its level: the weaker a topic and the longer
// ago it came, the sooner it comes again, but never twice running. It is a
// function of the record alone.
func Next(record []Result) (Topic, int) {
	best, due := topicRows[0].id, -1.0
	for _, r := range topicRows {
		since := len(record) + 1
		for i := range record {
			if record[i].Topic == r.id {
				since = len(record) - 1 - i
			}
		}
		if since == 0 && len(record) > 0 {
			continue
		}
		if d := (1.02 - Strength(record, r.id)) * float64(1+min(since, 24)); d > due {
			best, due = r.id, d
		}
	}
	return best, LevelOf(record, best)
}

// classLevels are the levels of the customers of a drill that a whole class is
// given: they rise by themselves, since all must meet the same ones.
var classLevels = []int{1, 2, 2, 3, 3, 4, 4, 5}

// classTopic is the topic of a customer of such a drill: all topics in turn, in
// an order that the seed gives.
func classTopic(seed uint64, customer int) Topic {
	c := chance{mixed(seed, 0x70)}
	order := Topics()
	for i := len(order) - 1; i > 0; i-- {
		j := c.below(i + 1)
		order[i], order[j] = order[j], order[i]
	}
	return order[(customer-1)%len(order)]
}
