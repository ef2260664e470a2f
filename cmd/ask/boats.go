package main

import (
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	"heronlake.example/ask/cmd/ask/store"
	"heronlake.example/ask/cmd/ask/text"
	"heronlake.example/ask/reasoner"
	"heronlake.example/ask/reasoner/answer"
	"heronlake.example/ask/reasoner/fit"
)

// boats are the kept boats of this user.
func (d *desk) boats() store.Boats {
	if dir := d.set.folders().data(); dir != "" {
		return store.Boats{Dir: filepath.Join(dir, "boats")}
	}
	return store.Boats{}
}

// newSession begins a conversation, with the boat of --boat where one is named.
func (d *desk) newSession() (*reasoner.Session, error) {
	s := d.reasoner.NewSession()
	if d.set.Boat == "" {
		return s, nil
	}
	c, err := d.boats().Open(d.set.Boat)
	if err != nil {
		return nil, usage("ask :boats lists what is kept", "--boat: %q: %w", d.set.Boat, err)
	}
	for _, p := range s.Restore(c).Problems {
		fmt.Fprintln(d.warn, "ask: --boat:", text.Clean(p.Text))
	}
	return s, nil
}

// keepWord answers ":keep NAME". Without a name it keeps the boat under the name
// that it has.
func (d *desk) keepWord(s *reasoner.Session, line, name string) answer.Answer {
	c := s.Card()
	if name == "" {
		name = c.Kept.Name
	}
	if name == "" {
		return refused(line, "keep", errors.New("a boat wants a name: :keep NAME"))
	}
	if len(c.Facts) == 0 {
		return refused(line, "keep", errors.New("nothing is known of the boat yet"))
	}
	kept, err := d.boats().Keep(name, c)
	switch {
	case errors.Is(err, store.ErrTaken):
		return refused(line, "keep", fmt.Errorf("another boat is kept as %q: choose another name, or :forget it first", name))
	case errors.Is(err, store.ErrStale):
		return refused(line, "keep", fmt.Errorf("%q was kept anew by another program since it was opened here, and is left as it is: choose another name, or :open it again", name))
	case err != nil:
		return refused(line, "keep", err)
	}
	s.Kept(kept)
	return steered(line, "keep", "Kept as "+kept.Name+".")
}

// openWord answers ":open NAME".
func (d *desk) openWord(s *reasoner.Session, line, name string) answer.Answer {
	if name == "" {
		return refused(line, "open", errors.New("which boat? :boats lists them"))
	}
	c, err := d.boats().Open(name)
	if err != nil {
		return refused(line, "open", fmt.Errorf("%q: %w", name, err))
	}
	a := s.Restore(c)
	a.Question, a.Steer, a.Reply = line, "open", "Opened "+c.Kept.Name+"."
	var known []string
	for _, u := range a.Understood {
		known = append(known, strings.ToLower(u.Label)+" "+u.Display)
	}
	for _, f := range c.Facts { // what is reckoned with beside the facts of the card
		if f.Slot == "boat.speed-measured" {
			label, shown := fit.Describe(f, s.Units())
			known = append(known, strings.ToLower(label)+" "+shown)
		}
	}
	if len(known) > 0 {
		a.Reply += " Known: " + strings.Join(known, ", ") + "."
	}
	a.Finish()
	return a
}

// boatsWord answers ":boats".
func (d *desk) boatsWord(_ *reasoner.Session, line, _ string) answer.Answer {
	names, faults, err := d.boats().List()
	if err != nil {
		return refused(line, "boats", err)
	}
	reply := "No boat is kept yet. :keep NAME keeps the one that is talked of."
	if len(names) > 0 {
		reply = strings.Join(names, "\n") + "\n"
	}
	a := steered(line, "boats", reply)
	for _, f := range faults {
		a.Problems = append(a.Problems, answer.Problem{Kind: "unreadable", Text: f.Error() + "."})
	}
	return a
}

// forgetWord answers ":forget NAME".
func (d *desk) forgetWord(_ *reasoner.Session, line, name string) answer.Answer {
	if name == "" {
		return refused(line, "forget", errors.New("which boat? :boats lists them"))
	}
	if err := d.boats().Forget(name); err != nil {
		return refused(line, "forget", fmt.Errorf("%q: %w", name, err))
	}
	return steered(line, "forget", "Forgotten: "+name+".")
}

// refused is the answer to a word that could not be done.
func refused(line, word string, err error) answer.Answer {
	a := answer.Answer{Question: line, Steer: word}
	a.Problems = []answer.Problem{{Kind: "refused", Text: err.Error() + "."}}
	a.Finish()
	return a
}
