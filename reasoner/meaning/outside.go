package meaning

import (
	"heronlake.example/ask/kb/words"
)

// outsideWords are talk of something else altogether. One of them makes the
// line no business of the fitting unless it names a motor, a battery, a wire or
// another thing of the trade as well.
var outsideWords = []string{
	"recipe", "recipes", "cook", "cooking", "fry", "fried", "bake", "batter", "joke", "jokes", "poem", "poems", "story", "haiku", "song", "lyrics", "sing", "limerick",
	"president", "election", "vote", "politics", "football", "baseball", "basketball", "lottery", "stocks", "stock market", "crypto", "bitcoin", "taxes", "mortgage",
	"homework", "essay", "translate", "python", "javascript", "movie", "movies", "horoscope", "girlfriend advice", "marry", "divorce", "lawyer",
	"capital of", "who won", "meaning of life", "your name", "are you human", "ignore ur", "ignore your", "system prompt", "ignore all", "ignore previous",
	"lawn mower", "furnace", "dishwasher", "car alternator", "my truck", "transmission", "brake pads", "oil change", "refrigerator", "guitar", "piano", "drone", "laptop",
	"cat food", "dog food", "vet", "doctor", "medicine", "headache", "pizza", "restaurant", "hotel", "flight to", "airline", "fishing license", "bag limit",
	"minivan", "camper", "shotgun", "choke for", "for ducks", "water heater", "at home", "gonna rain", "going to rain", "it rain", "rain tomorrow", "crankbait color", "what color", "lure color", "civil war", "drop table", "park here", "tow a", "will it tow", "what channel", "score of", "super bowl", "world cup", "my house", "hot tub", "golf", "snow blower", "chainsaw", "lawnmower", "mower", "what line", "how many calories", "calories", "ship a tent", "a tent", "rent a", "passport", "phone screen", "wifi", "printer",
	"hows the bite", "the bite", "fish biting", "are they biting", "my printer", "printer",
	"plugs are fouled", "fouled plugs", "plugs fouled", "good morning", "good evening", "good afternoon", "what time do you", "are you open", "store hours", "your hours", "exchange rate", "shoulder hurts", "back hurts", "my shoulder", "carb", "carburetor", "spark plugs", "best crankbait", "fluoro leader", "leader to braid", "price match", "gift card", "bait shop",
	"dinner", "supper", "breakfast", "weather tomorrow", "weather forecast", "best bait", "what bait", "which lure", "best lure", "what lure", "best knot", "tie a knot", "my car", "car wont", "fix a car", "my rv", "rv battery", "sharpen a hook", "hunting season", "deer season", "tire pressure", "kitchen", "garden", "lawn", "haircut", "wedding", "birthday",
}

// core words: a line that has one of them is the trade's, whatever else it says.
var coreWords = of("trolling motor", "motor", "outboard", "battery", "bank", "wire", "gauge", "breaker", "charger", "thrust", "shaft", "prop", "lithium", "agm", "gel", "flooded",
	"pontoon", "jon", "kayak", "canoe", "deep-vee", "vee", "bass boat", "bay boat", "inflatable", "sailboat", "voltage drop", "ventilation", "position hold", "throttle", "brushless", "brushed", "transom mount", "bow mount", "anode", "transducer", "boat", "deck", "loaded", "capacity plate")

// outside tells that the line is about something else, or about nothing: mash
// and emoji. What merely names no word of the trade is left to the notes.
func (l *line) outside() bool {
	core := l.any(coreWords)
	for _, w := range outsideWords {
		if !l.saysText(w) {
			continue
		}
		if strongly[w] || !core && !l.statesBoat() {
			return true
		}
	}
	return l.mash()
}

// statesBoat tells that the line states something that only a fitting has: who
// is there and on which water is said in any talk.
func (l *line) statesBoat() bool {
	for i := range l.facts {
		switch f := &l.facts[i]; {
		case f.Slot == "people.count", f.Slot == "water.kind", f.Slot == "use.style", f.Slot == "temperature.air", Inner(f.Slot):
		default:
			return true
		}
	}
	return false
}

// strongly outside words are no business of the fitting even beside a boat.
var strongly = map[string]bool{"joke": true, "jokes": true, "recipe": true, "recipes": true, "poem": true, "poems": true, "haiku": true, "lyrics": true, "limerick": true,
	"ignore ur": true, "ignore your": true, "ignore all": true, "system prompt": true, "ignore previous": true, "bitcoin": true, "homework": true, "essay": true, "horoscope": true, "who won": true, "capital of": true, "minivan": true, "shotgun": true, "for ducks": true, "water heater": true, "will it tow": true, "lawnmower": true, "lawn mower": true, "snow blower": true, "chainsaw": true, "drop table": true, "civil war": true, "gonna rain": true, "going to rain": true, "rain tomorrow": true, "calories": true, "how many calories": true, "hot tub": true, "carb": true, "carburetor": true, "plugs are fouled": true, "fouled plugs": true, "plugs fouled": true}

// mash tells that no term is a word of English or of the trade: nothing bound,
// nothing known.
func (l *line) mash() bool {
	if len(l.facts) > 0 || len(l.r.Measures) > 0 {
		return false
	}
	known, other := 0, 0
	for i := range l.terms {
		t := &l.terms[i]
		switch {
		case t.mark != 0 && t.mark != asking:
		case t.id != words.None || t.filler || words.Common(t.text) || words.English(t.text) || plainWords[t.text] || asksWords[t.text]:
			known++
		default:
			other++
		}
	}
	return known == 0 && (other <= 6 || !vowelled(l))
}

// vowelled tells that most of the words could be words at all.
func vowelled(l *line) bool {
	n, with := 0, 0
	for i := range l.terms {
		w := l.terms[i].text
		if w == "" {
			continue
		}
		n++
		for k := 0; k < len(w); k++ {
			switch w[k] {
			case 'a', 'e', 'i', 'o', 'u', 'y':
				with++
				k = len(w)
			}
		}
	}
	return with*3 > n*2
}

// plainWords are short words that a line about the trade may consist of.
var plainWords = map[string]bool{"hi": true, "hello": true, "hey": true, "thanks": true, "thank": true, "you": true, "yes": true, "ok": true, "okay": true, "and": true, "why": true, "that": true, "the": true, "long": true, "so": true, "me": true, "more": true, "cost": true, "help": true, "good": true, "bad": true, "can": true, "will": true, "use": true, "get": true, "put": true, "if": true, "but": true, "or": true, "not": true, "no": true, "out": true, "off": true, "one": true, "rain": true, "ride": true, "rules": true, "store": true, "keep": true, "need": true, "want": true, "buy": true, "legal": true, "license": true, "licence": true, "night": true, "lights": true, "kids": true, "cheapest": true, "cheaper": true, "price": true, "lightest": true, "lighter": true, "weight": true, "quietest": true, "speed": true, "volts": true, "amps": true, "hours": true, "range": true, "wire": true, "then": true, "than": true}
