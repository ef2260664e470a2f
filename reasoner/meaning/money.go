package meaning

import (
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
