package meaning

import (
	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// moneyCues tells whether an amount is what may be spent.
var moneyCues = []cue{
	{name: "budget", slot: "money.budget", kind: read.Money, low: 20, high: 100000, alone: true, weight: 6, when: dollarsToSpend},
	{name: "a difference in price", slot: "", kind: read.Number, alone: true, weight: 10, when: costsMore},
	{name: "another currency", slot: "", kind: read.Money, alone: true, weight: 9, when: foreign},
	{name: "bare budget", slot: "money.budget", kind: read.Money, bare: "USD", low: 150, high: 30000, before: of("budget"), reachB: 2, after: of("budget"), reachA: 1, weight: 7, when: bareMoney},
	{name: "money is what is talked of", slot: "money.budget", kind: read.Money, bare: "USD", low: 150, high: 30000, after: of("fine"), reachA: 0, weight: 4, when: knownBudget},
	{name: "could go to so much", slot: "money.budget", kind: read.Money, bare: "USD", low: 150, high: 30000, alone: true, weight: 4, when: couldSpend},
	{name: "a budget said anew", slot: "money.budget", kind: read.Number, bare: "USD", low: 150, high: 30000, alone: true, weight: 4, when: budgetAnew},
	{name: "under so much", slot: "money.budget", kind: read.Money, bare: "USD", low: 250, high: 30000, alone: true, weight: 2, when: boundAlone},
	{name: "a price", slot: "", kind: read.Money, alone: true, weight: 5, when: aPrice},
}

// bareMoney keeps a number with a life of its own from being money.
func bareMoney(l *line, m int) bool {
	i := l.at[m]
	_, _, loaded := l.near(i, 1, ofLoadedDry, 1)
	if loaded && l.id(i-1) != idBudget {
		return false
	}
	if _, _, ok := l.near(i, 1, ofBudget, 0); ok || l.id(i-1) == idBudget || l.id(i+1) == idBudget {
		return true
	}
	switch l.text(i - 1) {
	case "is", "of", "under", "about", "around", "to", "than", "only", "up", "maybe", "at", "just", "s":
		return true
	}
	return false
}

var ofBudget = of("budget")

// knownBudget accepts "2000 is fine" once a budget stands.
func knownBudget(l *line, m int) bool { return l.knows("money.budget") }

// couldSpend accepts "could go 1200" and "make it 1500" of a budget that stands.
func couldSpend(l *line, m int) bool {
	if l.r.Measures[m].Kind != read.Number || !l.knows("money.budget") || !l.endsAt(l.at[m]) {
		return false
	}
	for k := l.at[m] - 1; k >= 0 && k >= l.at[m]-4; k-- {
		switch l.text(k) {
		case "could", "can", "swing", "stretch", "spend", "okayed", "okd", "approved", "allows", "allowed", "says", "said":
			return true
		}
	}
	return false
}

// budgetAnew accepts "the wife says 1500 max now" and "fine, 900 then" of a budget
// that stands: an amount of its order and, of the weights that stand, none that was
// said later or is as near.
func budgetAnew(l *line, m int) bool {
	me := &l.r.Measures[m]
	old, ok := l.before.Get("money.budget")
	if !ok || me.Kind != read.Number || len(l.r.Measures) > 1 || len(l.terms) > 9 || l.asksMark {
		return false
	}
	most, now := highest(old), highest(card.Fact{Value: me.Value, Low: me.Low, High: me.High})
	if most <= 0 || now < most/4 || now > most*4 || !l.onlySpends(l.at[m]) {
		return false
	}
	allowed := me.Value == nil && l.has[idSays] // "she says 900 tops"
	for _, f := range l.before.Facts {
		if f.Unit != "kg" || f.Value == nil || Inner(f.Slot) {
			continue
		}
		lb := *f.Value / factor["lb"]
		if f.Turn > old.Turn && now > lb/4 && now < lb*4 || f.Turn == old.Turn && !allowed && apart(now, lb) <= apart(now, most) {
			return false
		}
	}
	return true
}

// onlySpends tells that a line says, beside an amount, only who allows it and words
// that steer.
func (l *line) onlySpends(at int) bool {
	for i := range l.terms {
		t := &l.terms[i]
		if i == at || t.filler || t.mark != 0 || spendTalk[t.text] || t.id == idSays || t.id == idActually || t.id == idFine || t.id == idAnd {
			continue
		}
		if i < at && i+1 < len(l.terms) && l.id(i+1) == idSays || t.id == idCompanion || t.id == idMe && i < at {
			continue // who says so
		}
		return false
	}
	return true
}

// spendTalk are the words around an amount that stands in for a budget.
var spendTalk = map[string]bool{"now": true, "then": true, "tops": true, "top": true, "max": true, "instead": true, "at": true, "most": true, "tho": true, "though": true, "after all": true,
	"ok": true, "okay": true, "fine": true, "make it": true, "lets": true, "let": true, "us": true, "say": true, "so": true, "well": true, "alright": true, "got": true, "only": true, "just": true, "can": true, "could": true, "go": true, "do": true, "spend": true, "he": true, "she": true, "i": true, "we": true, "call it": true, "for it": true}

func highest(f card.Fact) float64 {
	_, hi := ends(quantity{f.Value, f.Low, f.High})
	return hi
}

// apart is how many times as much the greater of two amounts is.
func apart(a, b float64) float64 { return max(a/b, b/a) }

// boundAlone accepts "under 900" that is bound to nothing else.
func boundAlone(l *line, m int) bool {
	me := &l.r.Measures[m]
	if l.any(hulls) && l.setSlots["people.count"] && !l.setSlots["load.total"] && !l.setSlots["load.dry"] && !l.knows("load.total") {
		return false // "2 kids and me, 450 tops" may be pounds
	}
	return me.Value == nil && me.High != nil && me.Low == nil && me.Kind == read.Number && l.endsAt(l.at[m])
}

// costsMore accepts "costs 300 more".
func costsMore(l *line, m int) bool {
	i := l.at[m]
	switch l.text(i - 1) {
	case "costs", "cost", "is", "its", "runs":
	default:
		return false
	}
	switch l.text(i + 1) {
	case "more", "extra", "cheaper", "dearer":
		return l.text(i-1) == "costs" || l.text(i-1) == "cost" || l.text(i+1) == "cheaper" || l.text(i+1) == "dearer"
	}
	return false
}

// foreign tells that an amount is in no dollars, which are what a budget is kept in.
func foreign(l *line, m int) bool {
	u := l.r.Measures[m].Unit
	return l.r.Measures[m].Kind == read.Money && u != "USD"
}

func dollarsToSpend(l *line, m int) bool { return !aPrice(l, m) && !foreign(l, m) }

// aPrice tells that the amount is what something costs, not what may be spent.
func aPrice(l *line, m int) bool {
	i := l.at[m]
	if l.r.Measures[m].Kind != read.Money {
		return false
	}
	if _, _, weight := l.near(i, 1, ofLoadedDry, 0); weight {
		return true
	}
	for k := i - 1; k >= 0 && k >= i-3; k-- {
		switch l.text(k) {
		case "costs", "priced", "quoted", "asking", "selling", "cost", "paid", "saw", "listed", "bought", "sells", "runs", "worth":
			return true
		}
	}
	switch l.text(i + 1) {
	case "cheaper", "dearer", "less", "apart", "motor", "one", "charger", "battery", "batteries", "difference", "more", "extra", "each":
		return true
	}
	return false
}
