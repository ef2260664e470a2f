package text

import "heronlake.example/ask/reasoner/answer"

// The answers drawn by the tests. Their figures only fill the page: whether a
// figure is right is for the packages that compute it.

func fitting() answer.Answer {
	return answer.Answer{
		Question: "18-foot aluminum, 1,900 lb loaded, windy lake",
		Headline: "A 24-volt bow motor of the 70 lb class on a 54-inch shaft, with a 100 Ah pair behind it; 55 lb would do on calm days only.",
		Figures: []answer.Figure{
			{ID: "load.total", Label: "Loaded weight", Display: "1,900 lb", How: "as you said", Basis: "said"},
			{ID: "thrust.rule", Label: "Thrust by weight", Display: "38 lb", How: "1,900 lb x 2 lb per 100 lb", Cites: []int{1}, Decides: true},
			{ID: "thrust.wind", Label: "Thrust in the wind", Display: "58 lb", Band: "36 to 93 lb", How: "0.5 x 1.2 x 1.8 m2 x (14.6 mph x 1.3)^2 and the rest of a long working", Cites: []int{2}, Decides: true},
			{ID: "thrust.need", Label: "Thrust needed", Display: "58 lb", Band: "38 to 93 lb", How: "the larger of the two", Decides: true},
			{ID: "thrust.class", Label: "Motor class", Display: "70 lb", How: "smallest class not below the need", Decides: true},
			{ID: "system.voltage", Label: "System voltage", Display: "24 V", How: "class of 70 lb", Decides: true},
			{ID: "shaft.class", Label: "Shaft", Display: "54 in", Band: "48 to 60 in", How: "20 in + 12 in + 9 in, next length up", Cites: []int{3}, Decides: true},
			{ID: "motor.current", Label: "Full-throttle current", Display: "42 A", Band: "38 to 46 A", How: "class of 70 lb at 24 V", Decides: true},
			{ID: "bank.capacity", Label: "Battery bank", Display: "100 Ah", Band: "70 to 160 Ah", How: "42 A x 0.15 x 8 h / 0.5", Decides: true},
			{ID: "runtime.cruise", Label: "Run time as used", Display: "8 h", Band: "4.5 to 15 h", How: "100 Ah x 0.5 / 6.3 A", Decides: true},
			{ID: "wire.gauge", Label: "Wire", Display: "6 AWG", How: "42 A, 18 ft one way, 3% drop", Cites: []int{4}, Decides: true},
			{ID: "breaker.rating", Label: "Breaker", Display: "50 A", How: "next above 42 A x 1.1, below the wire's 80 A", Cites: []int{4}, Decides: true},
		},
		Choices: []answer.Choice{
			{ID: "mount", Pick: "bow", Why: "pulls the bow round and tracks in wind", Instead: "transom where the bow has no deck to bolt to", Cites: []int{5}},
			{ID: "control", Pick: "wireless remote", Why: "wind needs constant small corrections", Instead: "a foot cable costs less and answers faster when casting from the bow alone"},
			{ID: "speed-control", Pick: "continuously variable", Why: "about twice the run time at part throttle", Instead: "five speeds do for short trips"},
			{ID: "drive", Pick: "brushed", Why: "costs less; brushless pays on long days", Cites: []int{6}},
			{ID: "water", Pick: "freshwater version", Why: "a lake", Instead: "saltwater version and anode if it ever sees brackish water"},
			{ID: "position-hold", Pick: "worth having", Why: "wind moves the boat while hands are on the rod", Instead: "without it a drift sock holds enough in light wind"},
		},
		Assumed: []answer.Assumed{
			{Slot: "people.count", Label: "People aboard", Display: "2 (1 to 3)", Why: "two aboard unless you say"},
			{Slot: "mount.height", Display: "20 in (14 to 28 in)", Why: "a bow deck of this hull"},
			{Slot: "water.kind", Text: "fresh", Why: "a lake"},
			{Slot: "chop.height", Display: "1 ft (0.5 to 2 ft)", Why: "wind over a lake"},
			{Slot: "use.hours", Display: "8 h (6 to 10 h)", Why: "a day"},
			{Slot: "wire.run", Display: "18 ft (15 to 22 ft)", Why: "stern to bow"},
			{Slot: "battery.chemistry", Text: "flooded", Why: "the usual"},
		},
		Cautions: []answer.Caution{
			{ID: "breaker", Text: "Open the breaker and let the prop stop before you reach for it", Cites: []int{4}},
			{ID: "charging", Text: "Charge where air moves: these batteries give off hydrogen"},
		},
		Passages: []answer.Passage{
			{N: 1, Note: "thrust-by-weight", Title: "Thrust by weight", Heading: "The rule", Text: "Two pounds for each hundred.", Source: "common practice, no published source"},
			{N: 2, Note: "wind", Title: "Wind on a boat", Heading: "Force of the wind", Text: "It grows with the square.", Source: "ABYC H-40 design loads; drag of a flat plate"},
			{N: 3, Note: "shaft", Title: "Shaft length", Heading: "Measuring", Text: "From the deck down.", Source: "common practice"},
			{N: 4, Note: "wire", Title: "Wire and breaker", Heading: "Sizing", Text: "Drop and ampacity.", Source: "33 CFR 183.425; ABYC E-11"},
			{N: 5, Note: "mount", Title: "Bow or transom", Heading: "Bow or transom", Text: "Pulling tracks.", Source: "common practice"},
			{N: 6, Note: "drive", Title: "Brushed or brushless", Heading: "What it costs", Text: "More.", Source: "from memory"},
		},
		Ask:    []answer.Ask{{Slot: "mount.height", Question: "How far is it from the bow deck down to the water?", Why: "decides between a 48 and a 60 in shaft"}},
		Notice: "Planning figures: the regulations in force, the makers' manuals and a qualified marine electrician decide.",
	}
}

func followUp() answer.Answer {
	a := fitting()
	a.Question = "and with my nephew along"
	a.Headline = "Still the 24-volt 70 lb motor; the third person takes most of its reserve."
	a.Changed = []answer.Change{
		{ID: "people.count", Text: "people aboard 2 -> 3"},
		{ID: "load.total", Text: "loaded weight 1,900 -> 2,085 lb"},
		{ID: "thrust.need", Text: "thrust needed 58 -> 61 lb"},
	}
	a.Figures = a.Figures[:5]
	a.Choices = nil
	a.Passages = a.Passages[:2]
	a.Cautions = nil
	return a
}

func shaftQuestion() answer.Answer {
	return answer.Answer{
		Question: "the bow stands 24 in up, will a 42 reach?",
		Headline: "Yes: 42 in is too short here; take 48 in.",
		Figures: []answer.Figure{
			{ID: "shaft.need", Label: "Shaft needed", Display: "46 in", Band: "43 to 52 in", How: "24 in + 12 in + 10 in", Cites: []int{1}, Asked: true},
			{ID: "shaft.class", Label: "Shaft to buy", Display: "48 in", How: "next length up", Asked: true},
		},
		Passages: []answer.Passage{{N: 1, Note: "shaft", Title: "Shaft length", Heading: "Measuring", Text: "From the deck down.", Source: "common practice"}},
		Ask:      []answer.Ask{{Slot: "chop.height", Question: "How high do the waves get where you fish?", Why: "each foot of chop asks for about 7 in more"}},
	}
}

func concept() answer.Answer {
	return answer.Answer{
		Question: "cable steer or electric?",
		Headline: "Cable answers at once and costs less; electric steering can be remote and can hold a heading.",
		Passages: []answer.Passage{
			{N: 1, Note: "steering", Title: "Cable or electric steering", Heading: "Which suits whom", Source: "common practice, no published source",
				Text: "A cable runs from the pedal to the head, so the foot feels the motor and the motor answers at once.\n\nElectric steering turns the motor with a servo:\n- it needs no cable, so the pedal can lie anywhere;\n- it can be steered from a remote;\n- it lags the foot by a moment."},
			{N: 2, Note: "steering", Title: "Cable or electric steering", Heading: "Upkeep", Text: "A cable stretches and frays; look at it each spring.", Source: "from memory"},
		},
	}
}

func outOfScope() answer.Answer {
	q := "what did the 2019 pontoon sell for, and who won the derby"
	return answer.Answer{
		Question: q,
		Problems: []answer.Problem{
			{Kind: "out-of-scope", Text: "I fit electric trolling motors; ask about a boat, a motor, its batteries or wiring", Said: "who won the derby", Start: 40, End: len(q)},
			{Kind: "unplaced", Text: "2019 is taken for a model year and not used", Said: "2019", Start: 13, End: 17},
		},
	}
}

func boatCard() answer.Answer {
	return answer.Answer{
		Question: ":boat", Steer: "boat",
		Headline: "What I know of this boat",
		Understood: []answer.Understood{
			{Slot: "boat.length", Value: answer.Num(5.4864), Unit: "m", Display: "18 ft", Said: "18-foot"},
			{Slot: "boat.material", Text: "aluminum", Said: "aluminum"},
			{Slot: "load.total", Label: "Loaded weight", Value: answer.Num(861.826), Unit: "kg", Said: "1,900 lb loaded"},
			{Slot: "money.budget", High: answer.Num(900), Unit: "USD", Said: "under $900"},
		},
		Assumed: []answer.Assumed{
			{Slot: "people.count", Display: "2 (1 to 3)", Why: "two aboard unless you say", Source: "common practice"},
			{Slot: "water.kind", Text: "fresh", Why: "a lake"},
		},
		Unknown: []answer.Unknown{{Slot: "mount.height", Label: "deck to water"}, {Slot: "wire.run"}},
	}
}

func why() answer.Answer {
	return answer.Answer{
		Question: ":why thrust.need", Steer: "why",
		Headline: "Thrust needed: 58 lb",
		Steps: []answer.Step{
			{ID: "load.total", Label: "Loaded weight", From: "said", Result: "1,900 lb", Said: "1,900 lb loaded"},
			{ID: "wind.speed", Label: "Wind", From: "said", Result: "15 mph", Band: "12 to 20 mph", Said: "windy"},
			{ID: "area.frontal", Label: "Frontal area", From: "assumed", Result: "19.4 ft2", Why: "vee of 18 ft", Source: "from memory"},
			{ID: "thrust.ratio", Label: "Thrust per weight", From: "computed", Rank: "behind", Result: "2 lb per 100 lb", Formula: "2 lb per 100 lb", Working: "2 lb per 100 lb", Source: "common practice, no published source"},
			{ID: "thrust.rule", Label: "Thrust by weight", From: "computed", Rank: "beaten", Result: "38 lb", Formula: "loaded weight x thrust per weight", Working: "1,900 lb x 2 lb per 100 lb", Comes: "38 lb", Source: "common practice, no published source"},
			{ID: "thrust.wind", Label: "Thrust for the wind", From: "computed", Result: "58 lb", Band: "36 to 93 lb", Formula: "pull against the wind x reserve / (1 - way / free speed)", Working: "42.1 lb x 1.2 / (1 - 0.9 mph / 6.9 mph)", Comes: "58.1 lb", Source: "force balance"},
			{ID: "thrust.balance", Label: "Thrust by forces", From: "computed", Passed: true, Result: "58 lb", Formula: "thrust for the wind", Working: "58.1 lb", Comes: "58.1 lb", Source: "force balance"},
			{ID: "thrust.need", Label: "Thrust needed", From: "computed", Result: "58 lb", Band: "38 to 93 lb", Formula: "the larger of thrust by weight and thrust by forces", Working: "the larger of 38 lb and 58.1 lb", Comes: "58.1 lb", Source: "common practice", Warnings: []string{"the wind is a word, not a measure"}},
		},
	}
}

func comparison() answer.Answer {
	return answer.Answer{
		Question: "12 or 24 volts for this one",
		Headline: "24 volts.",
		Tables: []answer.Table{{
			ID: "voltage", Title: "12 against 24 volts", Columns: []string{"", "12 V", "24 V"},
			Rows:    [][]string{{"Most thrust", "55 lb", "80 lb"}, {"Batteries", "1", "2"}, {"Current at 50 lb", "46 A", "24 A"}},
			Verdict: "24 V: 12 V ends at the 55 lb class and this boat needs 58 lb.",
		}},
	}
}

// conceptWithFigure is a question that a passage answers, beside a figure.
func conceptWithFigure() answer.Answer {
	a := shaftQuestion()
	a.Question = "why does it suck air in two foot chop?"
	a.Headline = "The propeller comes too near the surface as the bow rises."
	a.Passages = append(a.Passages, answer.Passage{N: 2, Note: "ventilation", Title: "Air at the propeller", Heading: "In chop", Quoted: true,
		Text: "When the bow lifts on a wave the propeller follows it up. With less than a hand of water over its tips it draws air and races.", Source: "common practice"})
	a.Problems = []answer.Problem{{Kind: "unplaced", Text: "two foot is taken for the chop", Start: 26, End: 34}}
	a.Corrected = []answer.Corrected{{Said: "sukc", Word: "suck"}}
	return a
}

// offers is a fitting with a shelf to pick from.
func offers() answer.Answer {
	a := fitting()
	a.Shelf = "Heron Lake Tackle (demo shelf, invented)"
	a.Offers = []answer.Offer{
		{SKU: "M-7", Name: "Bittern 70 bow", Price: 899, Total: 1369, Whole: true, Fits: true, Views: []string{"cheapest that does the job", "longest run"}},
		{SKU: "M-8", Name: "Bittern 80 bow", Price: 1099, Total: 1502.5, Fits: true, Reason: "over the budget by $200"},
	}
	a.Parts = []answer.Part{
		{What: "motor", Item: "Bittern 70 bow (M-7)", Count: 1, Price: answer.Num(899)},
		{What: "battery", Item: "Mallow 31 (B-3)", Count: 2, Price: answer.Num(169)},
		{What: "plug", Count: 1, Note: "not on the shelf"},
	}
	return a
}
