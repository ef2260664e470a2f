package stock

import (
	"slices"
	"strings"

	"heronlake.example/ask/calc/unit"
)

// A column is one field of a file: the name in the header, with its unit, and
// how its text is put into an item.
type column[T any] struct {
	name     string
	required bool
	means    string   // for the README and for messages: what is expected
	of       *measure // of a number with a unit
	set      func(item *T, text string, comma bool) error
}

// Column describes one column for the documentation.
type Column struct {
	Name, Means string
	Required    bool
}

// text is a column of plain words.
func text[T any](name string, required bool, means string, field func(*T) *string) column[T] {
	return column[T]{name, required, means, nil, func(item *T, s string, _ bool) error { *field(item) = s; return nil }}
}

// num is a column of numbers with a unit, within bounds in the column's own.
func num[T, Q any](name string, required bool, means string, of *measure, low, high float64, make func(float64) Q, field func(*T) *Q) column[T] {
	return column[T]{name, required, means, of, func(item *T, s string, comma bool) error { return number(field(item), s, comma, *of, low, high, make) }}
}

// price is a column of money: free gifts are no stock.
func price[T any](field func(*T) *unit.Money) column[T] {
	return num("price_USD", true, "price in dollars", &dollars, 0.01, 100000, unit.Dollars, field)
}

// counted is a column of whole numbers.
func counted[T any](name string, required bool, means string, field func(*T) *int) column[T] {
	return column[T]{name, required, means, nil, func(item *T, s string, _ bool) error { return whole(field(item), s) }}
}

// shelved says how many there are.
func shelved[T any](field func(*T) *int) column[T] {
	return counted("count", false, "how many stand on the shelf; 0 must be ordered", field)
}

// kind is a column that holds one of some words.
func kind[T any](name string, required bool, means string, of []word, field func(*T) *string) column[T] {
	return column[T]{name, required, means, nil, func(item *T, s string, _ bool) error { return one(field(item), s, of) }}
}

// kinds is a column that holds several of some words.
func kinds[T any](name string, required bool, means string, of []word, field func(*T) *[]string) column[T] {
	return column[T]{name, required, means, nil, func(item *T, s string, _ bool) error { return several(field(item), s, of) }}
}

// flag is a column of yes and no.
func flag[T any](name string, means string, field func(*T) *bool) column[T] {
	return column[T]{name, false, means, nil, func(item *T, s string, _ bool) error { return yes(field(item), s) }}
}

// The words of the kinds, and what else people write for them.
var (
	mountWords = []word{{"bow", "bow-mount front"}, {"transom", "transom-mount stern"}, {"kayak", "kayak-mount canoe"}}
	armWords   = []word{{"clamp", "screw-clamp transom-clamp"}, {"folding-arm", "scissor scissors gate folding arm"},
		{"compact-pivot", "pivot compact"}, {"bracket", "kayak-bracket"}}
	controlWords = []word{{"tiller", "hand hand-tiller hand-control"}, {"foot-cable", "cable cable-steer foot-pedal-cable cable-foot-pedal foot-pedal,-cable foot-control-cable"},
		{"foot-electric", "electric electric-steer electric-foot-pedal foot-pedal-electric foot-pedal,-electric"}, {"remote", "handheld-remote wireless wireless-remote remote-control"}}
	speedWords     = []word{{"fixed", "5-speed five-speed five 5 stepped"}, {"variable", "continuous continuously-variable infinite"}}
	driveWords     = []word{{"brushed", ""}, {"brushless", "bldc"}}
	waterWords     = []word{{"fresh", "freshwater fresh-water"}, {"salt", "saltwater salt-water both fresh/salt fresh-and-salt fresh+salt"}}
	sonarWords     = []word{{"none", "no n"}, {"2d", "sonar transducer"}, {"down", "down-imaging"}, {"side", "side-imaging"}}
	chemistryWords = []word{{"flooded", "wet lead-acid lead-acid-flooded flooded-lead-acid flooded-lead fla wet-cell"}, {"agm", "agm-lead-acid vrla-agm"},
		{"gel", "gel-cell"}, {"lithium", "lifepo4 lfp li-ion lithium-iron-phosphate lithium-ion li lifepo"}}
	partWords = []word{{"wire", "cable wiring duplex duplex-wire battery-cable"}, {"breaker", "circuit-breaker cb breakers"}, {"plug", "receptacle socket connector plug-and-socket"},
		{"bracket", "mount-bracket quick-release"}, {"lug", "lugs terminal terminals"}, {"box", "battery-box tray"}, {"link", "jumper series-link battery-link jumper-cable series-jumper"}}
	fitWords = mountWords
)

func motorColumns() []column[Motor] {
	return []column[Motor]{
		text("sku", true, "the shop's own number", func(m *Motor) *string { return &m.SKU }),
		text("name", false, "what the shop calls it", func(m *Motor) *string { return &m.Name }),
		num("thrust_lb", true, "rated thrust, 10 to 400", &poundsForce, 10, 400, unit.PoundForce, func(m *Motor) *unit.Force { return &m.Thrust }),
		{"volts_V", true, "12, 24, 36 or 48", &voltage, func(m *Motor, s string, c bool) error { return volts(&m.Voltage, s, c, 12, 24, 36, 48) }},
		num("shaft_in", false, "shaft length, 12 to 120", &inches, 12, 120, unit.Inches, func(m *Motor) *unit.Length { return &m.Shaft }),
		kind("mount", true, "bow, transom or kayak", mountWords, func(m *Motor) *string { return &m.Mount }),
		kind("mount_kind", false, "clamp, folding-arm, compact-pivot or bracket", armWords, func(m *Motor) *string { return &m.MountKind }),
		kinds("control", true, "tiller, foot-cable, foot-electric, remote; several joined by +", controlWords, func(m *Motor) *[]string { return &m.Controls }),
		kind("speeds", false, "fixed or variable; variable unless said", speedWords, func(m *Motor) *string { return &m.Speeds }),
		kind("drive", false, "brushed or brushless; brushed unless said", driveWords, func(m *Motor) *string { return &m.Drive }),
		kind("water", false, "fresh or salt: what it is made for; fresh unless said", waterWords, func(m *Motor) *string { return &m.Water }),
		{"sonar", false, "none, 2d, down, side; several joined by +", nil, func(m *Motor, s string, _ bool) error {
			if err := several(&m.Sonar, s, sonarWords); err != nil {
				return err
			}
			m.Sonar = slices.DeleteFunc(m.Sonar, func(x string) bool { return x == "none" })
			return nil
		}},
		flag("position_hold", "yes or no", func(m *Motor) *bool { return &m.Hold }),
		flag("heading_hold", "yes or no", func(m *Motor) *bool { return &m.Heading }),
		flag("track", "yes or no", func(m *Motor) *bool { return &m.Track }),
		num("full_current_A", false, "current at full throttle, 5 to 200", &amperes, 5, 200, unit.Amperes, func(m *Motor) *unit.Current { return &m.Current }),
		num("weight_lb", false, "3 to 200", &pounds, 3, 200, unit.Pounds, func(m *Motor) *unit.Mass { return &m.Weight }),
		price(func(m *Motor) *unit.Money { return &m.Price }),
		shelved(func(m *Motor) *int { return &m.Count }),
	}
}

func batteryColumns() []column[Battery] {
	return []column[Battery]{
		text("sku", true, "the shop's own number", func(b *Battery) *string { return &b.SKU }),
		text("name", false, "what the shop calls it", func(b *Battery) *string { return &b.Name }),
		kind("chemistry", true, "flooded, agm, gel or lithium", chemistryWords, func(b *Battery) *string { return &b.Chemistry }),
		{"volts_V", true, "6, 8, 12, 24, 36 or 48", &voltage, func(b *Battery, s string, c bool) error { return volts(&b.Voltage, s, c, 6, 8, 12, 24, 36, 48) }},
		num("capacity_Ah", true, "at the 20-hour rate, 5 to 500", &ampHours, 5, 500, unit.AmpereHours, func(b *Battery) *unit.Charge { return &b.Capacity }),
		text("group", false, "BCI group", func(b *Battery) *string { return &b.Group }),
		num("weight_lb", false, "2 to 300", &pounds, 2, 300, unit.Pounds, func(b *Battery) *unit.Mass { return &b.Weight }),
		price(func(b *Battery) *unit.Money { return &b.Price }),
		counted("cycles", false, "charge cycles in its life, to the usable depth", func(b *Battery) *int { return &b.Cycles }),
		flag("series_ok", "lithium: yes where its maker allows series use; lead always may", func(b *Battery) *bool { return &b.Series }),
		num("protection_A", false, "lithium: continuous current its protection carries", &amperes, 5, 500, unit.Amperes, func(b *Battery) *unit.Current { return &b.Protection }),
		shelved(func(b *Battery) *int { return &b.Count }),
	}
}

func chargerColumns() []column[Charger] {
	return []column[Charger]{
		text("sku", true, "the shop's own number", func(c *Charger) *string { return &c.SKU }),
		text("name", false, "what the shop calls it", func(c *Charger) *string { return &c.Name }),
		counted("outputs", true, "1 to 6", func(c *Charger) *int { return &c.Outputs }),
		num("current_A", true, "each output, 1 to 60", &amperes, 1, 60, unit.Amperes, func(c *Charger) *unit.Current { return &c.Current }),
		num("volts_V", false, "each output, 12 unless said", &voltage, 6, 60, unit.Volts, func(c *Charger) *unit.Voltage { return &c.Voltage }),
		kinds("chemistry", true, "flooded, agm, gel, lithium; several joined by +", chemistryWords, func(c *Charger) *[]string { return &c.Chemistry }),
		price(func(c *Charger) *unit.Money { return &c.Price }),
		shelved(func(c *Charger) *int { return &c.Count }),
	}
}

func partColumns() []column[Part] {
	return []column[Part]{
		text("sku", true, "the shop's own number", func(p *Part) *string { return &p.SKU }),
		text("name", false, "what the shop calls it", func(p *Part) *string { return &p.Name }),
		kind("kind", true, "wire, breaker, plug, bracket, lug, box or link", partWords, func(p *Part) *string { return &p.Kind }),
		{"gauge_AWG", false, "18 to 1, or 1/0 to 4/0", nil, func(p *Part, s string, _ bool) error { return gauge(&p.Gauge, s) }},
		num("rating_A", false, "breakers and plugs, 5 to 400", &amperes, 5, 400, unit.Amperes, func(p *Part) *unit.Current { return &p.Rating }),
		num("volts_V", false, "the most it is rated for", &voltage, 6, 1000, unit.Volts, func(p *Part) *unit.Voltage { return &p.Voltage }),
		num("length_ft", false, "wire: the length that the price is for", &feet, 0.1, 2000, unit.Feet, func(p *Part) *unit.Length { return &p.Length }),
		kinds("fits", false, "brackets: bow, transom, kayak; several joined by +", fitWords, func(p *Part) *[]string { return &p.Fits }),
		{"groups", false, "boxes: the BCI groups that go in, joined by +; any unless said", nil, func(p *Part, s string, _ bool) error {
			p.Groups = strings.FieldsFunc(s, func(r rune) bool { return strings.ContainsRune("+/,;& ", r) })
			return nil
		}},
		price(func(p *Part) *unit.Money { return &p.Price }),
		shelved(func(p *Part) *int { return &p.Count }),
	}
}
