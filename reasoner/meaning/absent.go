package meaning

import "heronlake.example/ask/kb/words"

// comesVerbs are words behind a person that put him aboard in a later turn.
var comesVerbs = map[string]bool{"coming": true, "comes": true, "come": true, "joining": true, "joins": true, "join": true, "going": true, "riding": true,
	"fishing": true, "along": true, "aboard": true, "tagging": true}

// staysWords are words behind a person that take him off again.
var staysWords = map[string]bool{"not": true, "cant": true, "isnt": true, "wont": true, "aint": true, "cannot": true, "doesnt": true, "didnt": true, "couldnt": true,
	"bailed": true, "cancelled": true, "canceled": true, "cancels": true, "backed": true, "quit": true, "chickened": true, "changed": true, "arent": true, "never": true, "no": true}

// backsOut are those of them that need no other word.
var backsOut = map[string]bool{"bailed": true, "cancelled": true, "canceled": true, "cancels": true, "backed": true, "quit": true, "chickened": true}

// comesOrStays reads what a later turn says of somebody by a pronoun or a word for
// a person: "he's not after all", "my boy is coming as well", "they bailed".
func (l *line) comesOrStays(i int) (count float64, row string, to int, ok bool) {
	known, have := l.before.Get("people.count")
	if !have || known.Value == nil || len(l.terms) > 12 || l.asksMark && !l.has[idWhatIf] {
		return 0, "", 0, false
	}
	n, end, pronoun, ok := l.somebody(i)
	if !ok {
		return 0, "", 0, false
	}
	stays, left, comes, after := false, false, false, false
	to = end
	for k := end + 1; k < len(l.terms) && k <= end+6 && l.terms[k].mark != '.'; k++ {
		t := &l.terms[k]
		if t.measure >= 0 {
			return 0, "", 0, false // "my boy is 140 lb"
		}
		switch {
		case t.id == idLeave || staysWords[t.text]:
			stays, left = true, left || t.id == idLeave || backsOut[t.text] || t.text == "changed" && l.anyText("mind")
		case t.id == idAdd || comesVerbs[t.text]:
			comes = true
		case t.text == "after all" || t.text == "back in" || t.text == "in again" || t.id == idBack:
			after = true
		case t.text == "too" || t.text == "also" || t.text == "as" || t.text == "well" || t.text == "make it":
		case t.filler || t.mark == ',' || t.id == words.None || t.id == idMust || t.id == idLike || t.id == idAnd || t.id == idUs || t.id == idMe:
			continue
		default:
			return 0, "", 0, false
		}
		to = k
	}
	moved := known.Row != "who is aboard"
	switch {
	case l.takenOff(i):
		return max(*known.Value-n, 0), "somebody stays ashore", end, true
	case stays && (left || comes || after || moved && pronoun && l.endsAt(to) || l.saysText("make it")):
		return max(*known.Value-n, 0), "somebody stays ashore", to, true
	case stays:
		return 0, "", 0, false // "he's not big"
	case comes && pronoun && !(after || known.Row == "somebody stays ashore" || l.anyText("too", "also")):
		return 0, "", 0, false
	case comes && (pronoun || l.text(end) != "me") && !(after && known.Row == "somebody more"):
		return *known.Value + n, "somebody more", to, true
	}
	return 0, "", 0, false
}

// takenOff accepts "scratch my uncle", "cross off the kid".
func (l *line) takenOff(i int) bool {
	for k := i - 1; k >= 0 && k >= i-2; k-- {
		switch l.text(k) {
		case "scratch", "strike", "ditch", "cancel", "uninvite", "dump":
			return true
		}
	}
	return false
}

// somebody reads a pronoun or persons that begin at a term, with their number and
// the last term taken.
func (l *line) somebody(i int) (n float64, to int, pronoun, ok bool) {
	switch l.text(i) {
	case "he", "she", "hes", "shes", "hell", "shell":
		return 1, i, true, true
	case "they", "theyre", "theyll":
		return l.newcomers(), i, true, true
	}
	if n, to, of, ok := l.someOf(i); ok {
		return n, to, of, true
	}
	if l.terms[i].measure >= 0 || l.terms[i].id == idMe {
		return 0, 0, false, false
	}
	if k := l.skipFillers(i, 1); k < len(l.terms) && l.terms[k].possessive && (l.id(k) == idCompanion || l.id(k) == idChild) && (l.id(k+1) == idLeave || staysWords[l.text(k+1)] || comesVerbs[l.text(k+1)]) {
		return 1, k, false, true // "the sister's staying home"
	}
	n, to, _, ok = l.item(i)
	if !ok {
		return 0, 0, false, false
	}
	for l.id(to+1) == idAnd || l.text(to+1) == "and" {
		if to+2 >= len(l.terms) {
			break
		}
		more, end, _, good := l.item(to + 2)
		if !good || l.terms[to+2].id == idMe {
			break
		}
		n, to = n+more, end
	}
	return n, to, false, true
}

// someOf reads "one of the guys", "both of them"; of tells that only a pronoun
// names them.
func (l *line) someOf(i int) (n float64, to int, of, ok bool) {
	n = l.smallNumber(i)
	switch l.text(i) {
	case "both":
		n = 2
	case "one":
		n = 1
	}
	if n == 0 || n > 8 {
		return 0, 0, false, false
	}
	k := i + 1
	if l.text(k) == "of" {
		k++
	}
	switch l.text(k) {
	case "them", "em":
		return n, k, true, k == i+2
	case "the", "my", "us", "our":
		if id := l.id(k + 1); id == idPerson || id == idCompanion || id == idChild {
			return n, k + 1, false, k == i+2
		}
	}
	return 0, 0, false, false
}

// newcomers is how many came aboard last: two where nothing tells.
func (l *line) newcomers() float64 {
	if f, ok := l.before.Get("people.added"); ok && f.Value != nil && *f.Value != 0 {
		return max(*f.Value, -*f.Value)
	}
	return 2
}
