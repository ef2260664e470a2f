package typical

import (
	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

// Kinds of hull, as the answer contract spells them.
const (
	Jon        = "jon"
	Vee        = "vee"
	DeepVee    = "deep-vee"
	Bass       = "bass"
	Bay        = "bay"
	Flats      = "flats"
	Pontoon    = "pontoon"
	Canoe      = "canoe"
	Kayak      = "kayak"
	Inflatable = "inflatable"
	Sailboat   = "sailboat"
	Other      = "other"
)

// A Boat gathers what is typical of one kind of hull. Every table in it is
// from memory of the trade.
type Boat struct {
	Kind     string
	Material string // what the weights are for
	// Usual is the length of a boat of which only the kind was said.
	Usual band.Band[unit.Length]
	// Dry is the bare hull without engine.
	Dry ByLength[unit.Mass]
	// Engine is the power of the main outboard that such a boat carries; empty
	// for hulls that carry none.
	Engine ByLength[unit.Power]
	// Fuel aboard.
	Fuel ByLength[unit.Volume]
	// PortableFuel is true where the tank is lifted aboard, so that the
	// capacity plate counts it.
	PortableFuel bool
	// Beam over all, freeboard amidships when loaded, and the mount surface at
	// bow and transom above the water.
	Beam, Freeboard, Bow, Stern ByLength[unit.Length]
	// Transom is the area of the transom under water, of both tubes together
	// for a pontoon boat.
	Transom ByLength[unit.Area]
	People  band.Band[float64]   // aboard
	Gear    band.Band[unit.Mass] // base gear besides each person's own
	Form    Form
	// Place and Kind of the trolling motor's mount, with the length from which
	// the bow is usual; Aft is where it goes on shorter ones.
	Aft     string
	BowFrom unit.Length
	// InBow is the share of the trolling batteries that lies in the bow.
	InBow band.Band[float64]
}

// Form is the shape of the immersed hull, each number a bare ratio.
type Form struct {
	Length     float64            // waterline length to boat length
	Beam       float64            // waterline beam of one hull to beam over all
	Hulls      float64            // 1, or 2 for tubes
	Block      float64            // volume to waterline length x beam x draught
	Prismatic  float64            // volume to waterline length x largest section
	Waterplane float64            // waterplane area to waterline length x beam
	Friction   band.Band[float64] // form factor 1 + k on the ITTC-1957 line
}

func b3(low, nominal, high float64) band.Band[float64] {
	return band.Band[float64]{Low: low, Nominal: nominal, High: high}
}

func pounds(low, nominal, high float64) band.Band[unit.Mass] {
	return band.Band[unit.Mass]{Low: unit.Pounds(low), Nominal: unit.Pounds(nominal), High: unit.Pounds(high)}
}

func feet(low, nominal, high float64) band.Band[unit.Length] {
	return band.Band[unit.Length]{Low: unit.Feet(low), Nominal: unit.Feet(nominal), High: unit.Feet(high)}
}

func lb(feet, low, nominal, high float64) At[unit.Mass] {
	return row(feet, unit.Pounds, low, nominal, high)
}

func hp(feet, low, nominal, high float64) At[unit.Power] {
	return row(feet, unit.Horsepower, low, nominal, high)
}

func gal(feet, low, nominal, high float64) At[unit.Volume] {
	return row(feet, unit.USGallons, low, nominal, high)
}

func in(feet, low, nominal, high float64) At[unit.Length] {
	return row(feet, unit.Inches, low, nominal, high)
}

// m2 is an immersed area, known to 35 % either way.
func m2(feet, nominal float64) At[unit.Area] {
	return row(feet, unit.SquareMetres, 0.65*nominal, nominal, 1.35*nominal)
}

var (
	chineFriction   = b3(1.1, 1.2, 1.4)
	slenderFriction = b3(1.05, 1.1, 1.2)
	tubeFriction    = b3(1.3, 1.45, 1.6)
)

// Boats lists the kinds of hull. An inflatable's lengths, sold in metres, are
// converted: 2.6 m is 8.53 ft, 3.2 m 10.50 ft, 3.8 m 12.47 ft.
var Boats = []Boat{
	{
		Kind: Jon, Material: "aluminum", Usual: feet(12, 14, 18),
		Dry:          ByLength[unit.Mass]{lb(12, 110, 150, 220), lb(14, 170, 230, 350), lb(16, 270, 380, 550), lb(18, 450, 650, 950)},
		Engine:       ByLength[unit.Power]{hp(12, 2, 6, 10), hp(14, 6, 10, 20), hp(16, 15, 25, 40), hp(18, 25, 40, 75)},
		Fuel:         ByLength[unit.Volume]{gal(12, 1, 3, 6), gal(14, 3, 6, 6), gal(16, 6, 6, 12), gal(18, 6, 12, 20)},
		PortableFuel: true,
		Beam:         ByLength[unit.Length]{in(12, 40, 48, 56), in(14, 46, 56, 64), in(16, 56, 66, 74), in(18, 64, 74, 84)},
		Freeboard:    ByLength[unit.Length]{in(12, 10, 13, 17), in(14, 12, 15, 19), in(16, 13, 17, 21), in(18, 15, 19, 24)},
		Bow:          ByLength[unit.Length]{in(12, 13, 17, 21), in(14, 14, 18, 22), in(16, 15, 19, 24), in(18, 17, 21, 26)},
		Stern:        ByLength[unit.Length]{in(12, 8, 11, 15), in(14, 9, 12, 16), in(16, 10, 14, 18), in(18, 11, 15, 19)},
		Transom:      ByLength[unit.Area]{m2(14, 0.14), m2(16, 0.18)},
		People:       b3(1, 2, 3), Gear: pounds(50, 100, 200),
		Form: Form{Length: 0.92, Beam: 0.80, Hulls: 1, Block: 0.75, Prismatic: 0.78, Waterplane: 0.88, Friction: chineFriction},
		Aft:  "transom", BowFrom: unit.Feet(14.5), InBow: b3(0, 0.5, 1),
	},
	{
		Kind: Vee, Material: "aluminum", Usual: feet(14, 16, 18),
		Dry:          ByLength[unit.Mass]{lb(14, 220, 320, 450), lb(16, 400, 650, 950), lb(18, 850, 1200, 1600), lb(20, 1300, 1700, 2200)},
		Engine:       ByLength[unit.Power]{hp(12, 4, 8, 15), hp(14, 8, 15, 25), hp(16, 20, 30, 60), hp(18, 60, 90, 130), hp(20, 90, 130, 175)},
		Fuel:         ByLength[unit.Volume]{gal(12, 1, 3, 6), gal(14, 3, 6, 12), gal(16, 6, 10, 18), gal(18, 12, 22, 35), gal(20, 20, 35, 50)},
		PortableFuel: true,
		Beam:         ByLength[unit.Length]{in(12, 50, 56, 62), in(14, 56, 62, 70), in(16, 66, 74, 82), in(18, 78, 86, 96), in(20, 88, 96, 101)},
		Freeboard:    ByLength[unit.Length]{in(12, 13, 16, 20), in(14, 15, 19, 23), in(16, 17, 21, 26), in(18, 20, 25, 30), in(20, 22, 28, 34)},
		Bow:          ByLength[unit.Length]{in(12, 16, 20, 25), in(14, 18, 23, 28), in(16, 20, 25, 30), in(18, 22, 28, 34), in(20, 24, 31, 37)},
		Stern:        ByLength[unit.Length]{in(12, 9, 12, 16), in(14, 10, 13, 18), in(16, 12, 15, 20), in(20, 14, 18, 23)},
		Transom:      ByLength[unit.Area]{m2(16, 0.18), m2(18, 0.25)},
		People:       b3(1, 2, 3), Gear: pounds(50, 100, 200),
		Form: Form{Length: 0.92, Beam: 0.82, Hulls: 1, Block: 0.50, Prismatic: 0.70, Waterplane: 0.78, Friction: chineFriction},
		Aft:  "transom", BowFrom: unit.Feet(14.5), InBow: b3(0, 0.3, 1),
	},
	{
		Kind: DeepVee, Material: "aluminum", Usual: feet(16, 18, 21),
		Dry:       ByLength[unit.Mass]{lb(16, 600, 850, 1200), lb(18, 1000, 1400, 1900), lb(20, 1500, 2000, 2600), lb(22, 1900, 2500, 3300)},
		Engine:    ByLength[unit.Power]{hp(16, 40, 60, 100), hp(18, 75, 115, 150), hp(20, 115, 150, 225), hp(22, 150, 200, 300)},
		Fuel:      ByLength[unit.Volume]{gal(16, 10, 18, 25), gal(18, 15, 28, 40), gal(20, 20, 40, 60), gal(22, 25, 50, 80)},
		Beam:      ByLength[unit.Length]{in(16, 70, 78, 86), in(18, 82, 90, 98), in(20, 90, 97, 102), in(22, 96, 100, 104)},
		Freeboard: ByLength[unit.Length]{in(16, 20, 25, 30), in(18, 23, 28, 34), in(20, 25, 31, 37), in(22, 26, 32, 39)},
		Bow:       ByLength[unit.Length]{in(16, 23, 28, 34), in(18, 25, 31, 37), in(20, 27, 34, 41), in(22, 28, 36, 43)},
		Stern:     ByLength[unit.Length]{in(16, 13, 17, 22), in(20, 15, 19, 24)},
		Transom:   ByLength[unit.Area]{m2(16, 0.19), m2(18, 0.27)},
		People:    b3(1, 2, 3), Gear: pounds(50, 100, 200),
		Form: Form{Length: 0.90, Beam: 0.80, Hulls: 1, Block: 0.45, Prismatic: 0.68, Waterplane: 0.76, Friction: chineFriction},
		Aft:  "transom", BowFrom: unit.Feet(14.5), InBow: b3(0, 0.3, 1),
	},
	{
		Kind: Bass, Material: "fiberglass", Usual: feet(17, 19, 21),
		Dry:       ByLength[unit.Mass]{lb(17, 1000, 1250, 1500), lb(18, 1200, 1450, 1700), lb(20, 1550, 1800, 2100)},
		Engine:    ByLength[unit.Power]{hp(17, 75, 115, 150), hp(18, 100, 150, 200), hp(20, 175, 200, 250)},
		Fuel:      ByLength[unit.Volume]{gal(17, 12, 20, 30), gal(18, 15, 25, 40), gal(20, 20, 35, 50)},
		Beam:      ByLength[unit.Length]{in(17, 80, 86, 92), in(18, 86, 91, 95), in(20, 92, 95, 98)},
		Freeboard: ByLength[unit.Length]{in(17, 12, 16, 20), in(20, 14, 18, 22)},
		Bow:       ByLength[unit.Length]{in(17, 14, 18, 23), in(20, 15, 20, 25)},
		Stern:     ByLength[unit.Length]{in(17, 12, 16, 21), in(20, 13, 17, 22)},
		Transom:   ByLength[unit.Area]{m2(20, 0.38)},
		People:    b3(1, 2, 3), Gear: pounds(50, 100, 200),
		Form: Form{Length: 0.90, Beam: 0.84, Hulls: 1, Block: 0.50, Prismatic: 0.70, Waterplane: 0.80, Friction: chineFriction},
		Aft:  "bow", InBow: b3(0, 0, 0.3),
	},
	{
		Kind: Bay, Material: "fiberglass", Usual: feet(18, 20, 23),
		Dry:       ByLength[unit.Mass]{lb(18, 1200, 1500, 1900), lb(20, 1500, 1900, 2300), lb(22, 1900, 2400, 2900)},
		Engine:    ByLength[unit.Power]{hp(18, 75, 115, 150), hp(20, 115, 150, 200), hp(22, 150, 200, 300)},
		Fuel:      ByLength[unit.Volume]{gal(18, 15, 25, 40), gal(20, 20, 40, 60), gal(22, 25, 50, 70)},
		Beam:      ByLength[unit.Length]{in(18, 84, 90, 96), in(20, 90, 96, 100), in(22, 96, 100, 103)},
		Freeboard: ByLength[unit.Length]{in(18, 17, 22, 27), in(20, 19, 24, 29), in(22, 21, 26, 31)},
		Bow:       ByLength[unit.Length]{in(18, 20, 25, 31), in(20, 22, 27, 33), in(22, 24, 29, 35)},
		Stern:     ByLength[unit.Length]{in(18, 13, 17, 22), in(22, 14, 19, 24)},
		Transom:   ByLength[unit.Area]{m2(22, 0.45)},
		People:    b3(1, 2, 4), Gear: pounds(50, 120, 220),
		Form: Form{Length: 0.91, Beam: 0.84, Hulls: 1, Block: 0.47, Prismatic: 0.70, Waterplane: 0.78, Friction: chineFriction},
		Aft:  "bow", InBow: b3(0, 0.2, 1),
	},
	{
		Kind: Flats, Material: "fiberglass", Usual: feet(16, 17, 18),
		Dry:          ByLength[unit.Mass]{lb(16, 450, 650, 900), lb(18, 650, 950, 1400)},
		Engine:       ByLength[unit.Power]{hp(16, 25, 50, 75), hp(18, 60, 90, 115)},
		Fuel:         ByLength[unit.Volume]{gal(16, 6, 12, 20), gal(18, 10, 20, 30)},
		PortableFuel: false,
		Beam:         ByLength[unit.Length]{in(16, 66, 72, 78), in(18, 74, 80, 88)},
		Freeboard:    ByLength[unit.Length]{in(16, 11, 15, 19), in(18, 13, 17, 22)},
		Bow:          ByLength[unit.Length]{in(16, 14, 18, 23), in(18, 16, 20, 26)},
		Stern:        ByLength[unit.Length]{in(16, 11, 14, 18), in(18, 12, 16, 20)},
		Transom:      ByLength[unit.Area]{m2(17, 0.26)},
		People:       b3(1, 2, 3), Gear: pounds(40, 70, 140),
		Form: Form{Length: 0.92, Beam: 0.84, Hulls: 1, Block: 0.52, Prismatic: 0.72, Waterplane: 0.80, Friction: chineFriction},
		Aft:  "bow", InBow: b3(0, 0.2, 1),
	},
	{
		Kind: Pontoon, Material: "aluminum", Usual: feet(18, 20, 24),
		Dry:       ByLength[unit.Mass]{lb(18, 1300, 1600, 2000), lb(20, 1500, 1850, 2400), lb(22, 1700, 2200, 2900), lb(24, 1900, 2500, 3300)},
		Engine:    ByLength[unit.Power]{hp(18, 20, 40, 60), hp(20, 30, 60, 115), hp(22, 50, 90, 150), hp(24, 75, 115, 200)},
		Fuel:      ByLength[unit.Volume]{gal(18, 6, 15, 25), gal(20, 10, 20, 30), gal(22, 12, 25, 35), gal(24, 15, 28, 40)},
		Beam:      ByLength[unit.Length]{in(18, 94, 98, 102), in(24, 96, 102, 103)},
		Freeboard: ByLength[unit.Length]{in(18, 17, 22, 27), in(24, 18, 24, 29)},
		Bow:       ByLength[unit.Length]{in(18, 19, 24, 30), in(24, 20, 26, 31)},
		Stern:     ByLength[unit.Length]{in(18, 18, 23, 29), in(24, 19, 24, 30)},
		Transom:   ByLength[unit.Area]{m2(20, 0.28), m2(24, 0.28)},
		People:    b3(2, 4, 7), Gear: pounds(50, 120, 250),
		Form: Form{Length: 0.90, Beam: 0.24, Hulls: 2, Block: 0.78, Prismatic: 0.85, Waterplane: 0.92, Friction: tubeFriction},
		Aft:  "bow", InBow: b3(0, 0.2, 1),
	},
	{
		Kind: Canoe, Material: "polyethylene", Usual: feet(14, 16, 17),
		Dry:       ByLength[unit.Mass]{lb(14, 45, 65, 90), lb(16, 45, 70, 100)},
		Beam:      ByLength[unit.Length]{in(14, 33, 36, 40), in(16, 33, 36, 40)},
		Freeboard: ByLength[unit.Length]{in(14, 6, 8, 11), in(16, 6, 9, 12)},
		Bow:       ByLength[unit.Length]{in(14, 10, 14, 18), in(16, 10, 14, 19)},
		Stern:     ByLength[unit.Length]{in(14, 7, 10, 14), in(16, 7, 10, 14)},
		People:    b3(1, 2, 2), Gear: pounds(10, 25, 60),
		Form: Form{Length: 0.96, Beam: 0.90, Hulls: 1, Block: 0.50, Prismatic: 0.58, Waterplane: 0.68, Friction: slenderFriction},
		Aft:  "transom",
	},
	{
		Kind: Kayak, Material: "polyethylene", Usual: feet(10, 12, 14),
		Dry:       ByLength[unit.Mass]{lb(10, 45, 60, 85), lb(12, 55, 80, 115), lb(14, 65, 100, 140)},
		Beam:      ByLength[unit.Length]{in(10, 28, 31, 36), in(12, 29, 33, 37), in(14, 28, 31, 36)},
		Freeboard: ByLength[unit.Length]{in(10, 5, 7, 10), in(14, 5, 8, 11)},
		Bow:       ByLength[unit.Length]{in(10, 7, 10, 14), in(14, 8, 11, 15)},
		Stern:     ByLength[unit.Length]{in(10, 6, 9, 13), in(14, 6, 9, 13)},
		People:    b3(1, 1, 2), Gear: pounds(5, 15, 40),
		Form: Form{Length: 0.95, Beam: 0.85, Hulls: 1, Block: 0.50, Prismatic: 0.56, Waterplane: 0.70, Friction: slenderFriction},
		Aft:  "kayak",
	},
	{
		Kind: Inflatable, Material: "fabric", Usual: feet(8.5, 10.5, 12.5),
		Dry:          ByLength[unit.Mass]{lb(8.53, 45, 70, 110), lb(10.50, 65, 105, 170), lb(12.47, 100, 170, 260)},
		Engine:       ByLength[unit.Power]{hp(8.53, 2, 3.5, 6), hp(10.50, 4, 8, 15), hp(12.47, 8, 20, 30)},
		Fuel:         ByLength[unit.Volume]{gal(8.53, 0.3, 1, 3), gal(10.50, 1, 3, 6), gal(12.47, 3, 6, 6)},
		PortableFuel: true,
		Beam:         ByLength[unit.Length]{in(8.53, 52, 57, 62), in(10.50, 56, 61, 67), in(12.47, 62, 69, 76)},
		Freeboard:    ByLength[unit.Length]{in(8.53, 10, 13, 16), in(12.47, 12, 15, 19)},
		Bow:          ByLength[unit.Length]{in(8.53, 14, 18, 22), in(12.47, 16, 20, 25)},
		Stern:        ByLength[unit.Length]{in(8.53, 10, 13, 17), in(12.47, 11, 14, 18)},
		Transom:      ByLength[unit.Area]{m2(8.53, 0.11), m2(12.47, 0.11)},
		People:       b3(1, 2, 3), Gear: pounds(20, 40, 90),
		Form: Form{Length: 0.85, Beam: 0.85, Hulls: 1, Block: 0.55, Prismatic: 0.70, Waterplane: 0.80, Friction: chineFriction},
		Aft:  "transom", BowFrom: unit.Feet(99),
	},
	{
		Kind: Sailboat, Material: "fiberglass", Usual: feet(16, 21, 26),
		Dry:          ByLength[unit.Mass]{lb(14, 180, 300, 450), lb(18, 600, 1000, 1600), lb(22, 1500, 2400, 3300), lb(26, 3000, 4500, 6000)},
		Engine:       ByLength[unit.Power]{hp(14, 2, 2, 4), hp(18, 2, 4, 8), hp(22, 4, 8, 10), hp(26, 6, 10, 15)},
		Fuel:         ByLength[unit.Volume]{gal(14, 0.3, 0.5, 1), gal(18, 0.3, 1, 3), gal(22, 1, 3, 6), gal(26, 3, 6, 12)},
		PortableFuel: true,
		Beam:         ByLength[unit.Length]{in(14, 60, 66, 74), in(18, 76, 84, 92), in(22, 88, 94, 102), in(26, 96, 104, 112)},
		Freeboard:    ByLength[unit.Length]{in(14, 14, 18, 23), in(22, 22, 28, 34), in(26, 26, 32, 40)},
		Bow:          ByLength[unit.Length]{in(14, 18, 23, 29), in(22, 28, 35, 42), in(26, 32, 40, 48)},
		Stern:        ByLength[unit.Length]{in(14, 11, 15, 20), in(22, 15, 21, 28), in(26, 18, 25, 32)},
		Transom:      ByLength[unit.Area]{m2(18, 0.02), m2(22, 0.03)},
		People:       b3(1, 2, 4), Gear: pounds(60, 150, 350),
		Form: Form{Length: 0.85, Beam: 0.85, Hulls: 1, Block: 0.38, Prismatic: 0.56, Waterplane: 0.68, Friction: slenderFriction},
		Aft:  "transom", BowFrom: unit.Feet(99),
	},
	{
		Kind: Other, Material: "fiberglass", Usual: feet(14, 17, 20),
		Dry:       ByLength[unit.Mass]{lb(12, 110, 220, 450), lb(14, 180, 380, 700), lb(16, 350, 800, 1300), lb(18, 600, 1300, 1900), lb(20, 1000, 1800, 2500)},
		Engine:    ByLength[unit.Power]{hp(12, 2, 8, 20), hp(14, 6, 15, 40), hp(16, 15, 40, 90), hp(18, 25, 90, 150), hp(20, 40, 130, 225)},
		Fuel:      ByLength[unit.Volume]{gal(12, 1, 3, 6), gal(14, 3, 6, 15), gal(16, 6, 12, 25), gal(18, 6, 22, 40), gal(20, 10, 35, 60)},
		Beam:      ByLength[unit.Length]{in(12, 42, 54, 64), in(14, 48, 62, 74), in(16, 56, 74, 86), in(18, 66, 86, 98), in(20, 74, 94, 102)},
		Freeboard: ByLength[unit.Length]{in(12, 9, 15, 20), in(16, 12, 19, 27), in(20, 14, 24, 34)},
		Bow:       ByLength[unit.Length]{in(12, 12, 18, 25), in(16, 14, 23, 32), in(20, 16, 27, 38)},
		Stern:     ByLength[unit.Length]{in(12, 8, 12, 17), in(20, 11, 17, 24)},
		Transom:   ByLength[unit.Area]{m2(16, 0.18), m2(18, 0.25)},
		People:    b3(1, 2, 4), Gear: pounds(40, 100, 220),
		Form: Form{Length: 0.90, Beam: 0.82, Hulls: 1, Block: 0.50, Prismatic: 0.70, Waterplane: 0.80, Friction: chineFriction},
		Aft:  "transom", BowFrom: unit.Feet(14.5), InBow: b3(0, 0.3, 1),
	},
}

// BoatOf finds what is typical of a kind of hull; ok is false for a word that
// is none.
func BoatOf(kind string) (b *Boat, ok bool) {
	for i := range Boats {
		if Boats[i].Kind == kind {
			return &Boats[i], true
		}
	}
	return nil, false
}

// MaterialFactor turns the table's dry weight into that of a hull of another
// material: the same hull in glass is about a quarter heavier than in aluminum
// (from memory); wood lies between. Polyethylene and fabric are the own
// materials of their kinds and change nothing.
func MaterialFactor(table, said string) float64 {
	rank := func(m string) float64 {
		switch m {
		case "fiberglass":
			return 1.25
		case "wood":
			return 1.15
		}
		return 1
	}
	if said == "" || table == "polyethylene" || table == "fabric" {
		return 1
	}
	return rank(said) / rank(table)
}

// PersonGear is what each person carries aboard.
var PersonGear = pounds(20, 30, 50)

// PortableTank is the fuel of a boat of which only the plate is known.
var PortableTank = band.Band[unit.Volume]{Low: 0, Nominal: unit.USGallons(6), High: unit.USGallons(12)}

// LegDragArea is the drag area of a main engine's leg left down.
var LegDragArea = band.Band[unit.Area]{Low: unit.SquareMetres(0.02), Nominal: unit.SquareMetres(0.04), High: unit.SquareMetres(0.06)}

// ThirdTube is how much heavier a pontoon boat is with a third tube.
var ThirdTube = b3(1.15, 1.20, 1.25)

// A Mount is a way to carry the motor.
type Mount struct {
	Kind string // clamp, folding-arm, compact-pivot, bracket
	// Above is the length of shaft that mount and head take above the mount
	// surface.
	Above band.Band[unit.Length]
	// Weight of the motor by system voltage.
	Weight []MotorWeight
}

// MotorWeight is a motor's weight up to a system voltage.
type MotorWeight struct {
	UpTo   unit.Voltage
	Weight band.Band[unit.Mass]
}

func inches(low, nominal, high float64) band.Band[unit.Length] {
	return band.Band[unit.Length]{Low: unit.Inches(low), Nominal: unit.Inches(nominal), High: unit.Inches(high)}
}

var bowWeights = []MotorWeight{{12, pounds(40, 50, 60)}, {24, pounds(60, 75, 90)}, {36, pounds(70, 90, 110)}}

// Mounts lists the kinds of mount.
var Mounts = []Mount{
	{"clamp", inches(5, 7, 10), []MotorWeight{{48, pounds(18, 24, 30)}}},
	{"folding-arm", inches(8, 10, 14), bowWeights},
	{"compact-pivot", inches(8, 11, 15), bowWeights},
	{"bracket", inches(4, 6, 9), []MotorWeight{{48, pounds(20, 26, 35)}}},
}

// AnyMotor is the weight of a motor of which nothing is known.
var AnyMotor = pounds(18, 45, 90)

// MountOf finds a kind of mount.
func MountOf(kind string) (m *Mount, ok bool) {
	for i := range Mounts {
		if Mounts[i].Kind == kind {
			return &Mounts[i], true
		}
	}
	return nil, false
}

// WeightAt is the motor's weight at a system voltage; the heaviest of the list
// above its last voltage.
func (m *Mount) WeightAt(v unit.Voltage) band.Band[unit.Mass] {
	for _, w := range m.Weight {
		if v <= w.UpTo {
			return w.Weight
		}
	}
	return m.Weight[len(m.Weight)-1].Weight
}

// Cover is how deep the top of the lower unit runs; CoverKayak on a kayak.
var (
	Cover      = inches(10, 12, 16)
	CoverKayak = inches(6, 9, 12)
)

// ChopShare is the shaft added for waves, per wave height.
var ChopShare = b3(0.5, 0.6, 0.8)

// AirGap is the least water over the prop's tip before it draws air, and
// TipRise how far that tip stands above the top of the lower unit.
var (
	AirGap  = unit.Inches(3)
	TipRise = inches(2, 3, 4)
)

// HeadLength is the motor head above the shaft, UnitHeight the lower unit with
// its skeg or prop below the shaft's end.
var (
	HeadLength = inches(5, 7, 10)
	UnitHeight = inches(6, 8, 11)
)

// ShaftLengths is the ladder of shaft lengths on the market, in inches.
var ShaftLengths = []float64{24, 30, 36, 42, 48, 54, 60, 72, 84, 96}
