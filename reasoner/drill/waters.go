package drill

// A waterRow is a kind of water to fish: what its wind and stream come to, and
// which boats are met on it. Speeds are miles an hour, waves inches. The ranges
// are common practice, no published source.
type waterRow struct {
	id       string
	place    string // "a farm pond"
	vague    string // the same without telling fresh from salt
	kind     string
	wind     [2]int // mph
	current  [2]int // tenths of a mile an hour; 0, 0 for still water
	chop     [2]int // inches; 0, 0 where none is worth a word
	weeds    int    // chance of weeds, percent
	boats    []string
	sheltery bool // small or sheltered: nobody speaks of wind unasked
}

var waterRows = []waterRow{
	{"pond", "a farm pond", "a little place near home", "fresh", [2]int{4, 10}, [2]int{}, [2]int{}, 40, []string{"jon", "canoe", "kayak", "inflatable"}, true},
	{"small lake", "a small lake", "a small place up the road", "fresh", [2]int{5, 12}, [2]int{}, [2]int{}, 30, []string{"jon", "vee", "canoe", "kayak", "inflatable", "bass"}, true},
	{"reservoir", "a big open reservoir", "big open water", "fresh", [2]int{10, 20}, [2]int{}, [2]int{6, 16}, 0, []string{"vee", "deep-vee", "bass", "pontoon"}, false},
	{"natural lake", "a long natural lake", "a long stretch of water", "fresh", [2]int{8, 18}, [2]int{}, [2]int{4, 12}, 25, []string{"jon", "vee", "deep-vee", "bass", "pontoon"}, false},
	{"slow river", "a slow river", "the river by us", "fresh", [2]int{4, 10}, [2]int{5, 15}, [2]int{}, 15, []string{"jon", "vee", "bass", "pontoon", "canoe", "kayak"}, true},
	{"quick river", "the quick fresh water below a dam", "moving water", "fresh", [2]int{4, 10}, [2]int{15, 25}, [2]int{}, 0, []string{"jon", "vee", "deep-vee"}, false},
	{"backwater", "a weedy freshwater backwater", "a shallow backwater", "fresh", [2]int{4, 10}, [2]int{}, [2]int{}, 100, []string{"jon", "vee", "bass", "kayak"}, true},
	{"tidal creek", "a brackish tidal creek", "a creek off the marina", "brackish", [2]int{5, 12}, [2]int{8, 18}, [2]int{}, 0, []string{"jon", "flats", "bay", "kayak", "vee"}, false},
	{"flats", "the saltwater flats", "the flats", "salt", [2]int{8, 16}, [2]int{}, [2]int{3, 8}, 20, []string{"flats", "bay", "kayak"}, false},
	{"bay", "the salt bay", "the bay", "salt", [2]int{10, 18}, [2]int{5, 12}, [2]int{6, 14}, 0, []string{"bay", "flats", "deep-vee", "vee"}, false},
	{"estuary", "a brackish estuary", "the water off the river mouth", "brackish", [2]int{8, 15}, [2]int{5, 15}, [2]int{4, 10}, 0, []string{"bay", "vee", "deep-vee", "jon"}, false},
	{"canal", "a freshwater canal", "the canal behind the house", "fresh", [2]int{3, 8}, [2]int{}, [2]int{}, 25, []string{"jon", "pontoon", "canoe", "inflatable"}, true},
}

// A boatRow is a kind of boat as it is met at a counter: the lengths it is sold
// in, feet, and how a customer names it.
type boatRow struct {
	hull    string
	lengths []float64
	names   []string // {l} is the length
	styles  []string // ways of fishing
	deck    int      // chance of a front deck that takes a motor, percent
	classes [2]int   // which thrust classes, pounds, are already found on it
	crew    [2]int   // people aboard, least and most
}

var boatRows = []boatRow{
	{"jon", []float64{12, 14, 15, 16, 17, 18}, []string{"{l} jon boat", "{l} flat-bottom jon"}, []string{"casting", "trolling", "drifting"}, 55, [2]int{30, 55}, [2]int{1, 3}},
	{"vee", []float64{14, 15, 16, 17, 18, 19}, []string{"{l} aluminum vee", "{l} aluminum V-hull"}, []string{"casting", "trolling", "vertical-jigging"}, 60, [2]int{45, 80}, [2]int{1, 3}},
	{"deep-vee", []float64{16, 17, 18, 19, 20}, []string{"{l} deep-vee", "{l} deep-V walleye boat"}, []string{"trolling", "vertical-jigging", "guiding"}, 100, [2]int{55, 110}, [2]int{2, 3}},
	{"bass", []float64{17, 18, 19, 20}, []string{"{l} bass boat", "{l} fiberglass bass boat"}, []string{"casting", "vertical-jigging", "guiding"}, 100, [2]int{70, 110}, [2]int{1, 2}},
	{"bay", []float64{18, 19, 20, 21, 22}, []string{"{l} bay boat"}, []string{"casting", "drifting", "guiding"}, 100, [2]int{70, 110}, [2]int{2, 4}},
	{"flats", []float64{16, 17, 18}, []string{"{l} flats skiff"}, []string{"casting", "guiding"}, 100, [2]int{55, 80}, [2]int{1, 3}},
	{"pontoon", []float64{18, 20, 22, 24}, []string{"{l} pontoon", "{l} pontoon boat"}, []string{"trolling", "drifting", "casting"}, 100, [2]int{55, 110}, [2]int{3, 6}},
	{"canoe", []float64{14, 15, 16, 17}, []string{"{l} canoe"}, []string{"trolling", "casting"}, 0, [2]int{30, 40}, [2]int{1, 2}},
	{"kayak", []float64{10, 11, 12, 13}, []string{"{l} kayak", "{l} fishing kayak"}, []string{"casting", "trolling"}, 0, [2]int{30, 45}, [2]int{1, 1}},
	{"inflatable", []float64{9, 10, 11, 12}, []string{"{l} inflatable", "{l} inflatable dinghy"}, []string{"trolling", "drifting"}, 0, [2]int{30, 45}, [2]int{1, 3}},
}
