package meaning

import (
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// A stretch is a part of a day's use: so many hours at a throttle.
type stretch struct {
	hours, throttle float64
	from, to        int   // terms that say so; from is -1 while nothing did
	measures        []int // used by it
}

// duty is a profile while it is being read.
type duty struct {
	done    []stretch
	now     stretch
	started bool // hours were told, so that a bare number may be more of them
}

// flush closes the stretch at hand.
func (d *duty) flush() {
	if d.now.hours > 0 && d.now.throttle > 0 && len(d.done) < mostOfOne {
		d.done = append(d.done, d.now)
	}
	d.now = stretch{from: -1}
}

// touch notes a term, and its measure if it has one, as part of the stretch.
func (d *duty) touch(i, measure int) {
	if d.now.from < 0 {
		d.now.from = i
	}
	d.now.to = i
	if measure >= 0 {
		d.now.measures = append(d.now.measures, measure)
	}
}

func (d *duty) addHours(h float64, i, measure int) {
	if d.now.hours > 0 {
		d.flush()
	}
	d.now.hours, d.started = h, true
	d.touch(i, measure)
}

func (d *duty) addThrottle(share float64, i, measure int) {
	if d.now.throttle > 0 {
		d.flush()
	}
	d.now.throttle = share
	d.touch(i, measure)
}

// profile reads a duty profile: "an hour flat out then five at a third". Each
// stretch gives a throttle and its hours, in order, and appears once for each.
func (l *line) profile() {
	d := duty{now: stretch{from: -1}}
	for i := range l.terms {
		if m := l.terms[i].measure; m >= 0 {
			if !l.used[m] {
				l.partOfDuty(&d, i, m)
			}
		} else if share := l.paceAt(i, d.now.hours > 0); share > 0 {
			d.addThrottle(share, i, -1)
		}
		if d.now.hours > 0 && d.now.throttle > 0 {
			d.flush()
		}
	}
	d.flush()
	if len(d.done) < 2 {
		return
	}
	for _, s := range d.done {
		said := l.said(l.terms[s.from].start, l.terms[s.to].end)
		l.put(card.Fact{Slot: "use.throttle", Value: num(s.throttle), Unit: "1", Said: said, Row: "duty profile"})
		l.put(card.Fact{Slot: "use.hours", Value: num(s.hours), Unit: "h", Said: said, Row: "duty profile"})
		for _, m := range s.measures {
			l.used[m] = true
		}
	}
}

// partOfDuty takes a measure for hours or a throttle of a profile, if it is one.
func (l *line) partOfDuty(d *duty, i, m int) {
	me := &l.r.Measures[m]
	if me.Value == nil {
		return
	}
	v := *me.Value
	switch {
	case me.Kind == read.Duration && v >= 300 && v <= 20*3600:
		d.addHours(v/3600, i, m)
	case me.Kind == read.Percent && v > 0 && v <= 100:
		d.addThrottle(v/100, i, m)
	case me.Kind != read.Number:
	case v >= 5 && v <= 100 && d.now.hours > 0 && d.now.throttle == 0 && len(d.done) > 0 && l.text(i-1) == "at" && l.endsAt(i):
		d.addThrottle(v/100, i, m) // "2 hours at 70 percent, 3 hours at 25"
	case v > 0 && v < 1:
		d.addThrottle(v, i, m)
	case v >= 1 && v <= 14 && d.started && (l.text(i+1) == "at" || l.id(i+1) == idFullThrottle || l.text(i-1) == "for" && d.now.throttle > 0 && l.endsAt(i)):
		d.addHours(v, i, m) // "then five at a third", "20 percent for 5"
	}
}

// paceAt is the throttle that a word of a profile stands for; 0 for none. "Hard" is
// full throttle and "easy" a quarter of it: common practice, no published source. A
// share that is told right behind the word is what counts.
func (l *line) paceAt(i int, timed bool) float64 {
	if l.terms[i].id == idFullThrottle {
		return 1
	}
	if !timed {
		return 0
	}
	for k := i + 1; k <= i+3 && k < len(l.terms); k++ {
		if m := l.terms[k].measure; m >= 0 && l.r.Measures[m].Kind == read.Duration {
			break
		}
		if m := l.terms[k].measure; m >= 0 && (l.r.Measures[m].Kind == read.Percent || l.r.Measures[m].Kind == read.Number && l.r.Measures[m].Bare < 1) {
			return 0
		}
	}
	switch l.text(i) {
	case "hard":
		return 1
	case "easy", "slow", "low", "gentle", "gently", "slowly", "lazy":
		return 0.25
	}
	return 0
}
