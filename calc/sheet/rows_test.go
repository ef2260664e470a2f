package sheet

import (
	"math"
	"slices"
	"strings"
	"testing"

	"heronlake.example/ask/calc/band"
	"heronlake.example/ask/calc/unit"
)

func num(id ID, x float64) Given        { return Given{ID: id, Value: band.Exactly(x)} }
func txt(id ID, w string) Given         { return Given{ID: id, Word: w} }
func lbs(id ID, x float64) Given        { return num(id, float64(unit.Pounds(x))) }
func lbf(id ID, x float64) Given        { return num(id, float64(unit.PoundForce(x))) }
func ftIn(id ID, ft, in float64) Given  { return num(id, float64(unit.Feet(ft)+unit.Inches(in))) }
func mph(id ID, x float64) Given        { return num(id, float64(unit.MilesPerHour(x))) }
func span(id ID, a, b, c float64) Given { return Given{ID: id, Value: band.Of(a, b, c)} }

// boats are questions of many kinds: between them they reach every row.
var boats = []struct {
	name  string
	given []Given
	duty  []Stretch
}{
	{"nothing", nil, nil},
	{"length and metal", []Given{ftIn(BoatLength, 16, 4), txt(BoatMaterial, "aluminum")}, nil},
	{"weight alone", []Given{lbs(LoadTotal, 1725)}, nil},
	{"dry weight", []Given{lbs(LoadDry, 1400), ftIn(BoatLength, 18, 3), num(PeopleCount, 3)}, nil},
	{"short jon by parts", []Given{txt(BoatHull, "jon"), ftIn(BoatLength, 13, 8), lbs(LoadDry, 240), lbs(PeopleEach, 190), lbs(LoadEngine, 90), num(FuelVolume, 22), lbs(LoadGear, 70), lbs(LoadPlate, 780)}, nil},
	{"one more aboard", []Given{lbs(LoadSaid, 1550), num(PeopleMore, 1), lbs(LoadAdded, 40), ftIn(BoatLength, 17, 0), txt(BoatHull, "deep-vee")}, nil},
	{"load added", []Given{lbs(LoadSaid, 1550), lbs(LoadAdded, 40), txt(BoatHull, "bay")}, nil},
	{"windy vee in waves", []Given{txt(BoatHull, "vee"), ftIn(BoatLength, 18, 0), lbs(LoadTotal, 1950), span(WindSpeed, 5.4, 6.7, 8.9), ftIn(ChopHeight, 1, 0), ftIn(MountHeight, 0, 27), txt(WaterWeeds, "true")}, nil},
	{"gusts and current", []Given{txt(BoatHull, "bass"), ftIn(BoatLength, 19, 6), mph(WindSpeed, 12), mph(WindGust, 21), num(CurrentSpeed, 0.8), txt(WaterKind, "salt"), txt(BoatConsole, "true"), txt(PeoplePosture, "standing")}, nil},
	{"pontoon", []Given{txt(BoatHull, "pontoon"), ftIn(BoatLength, 22, 0), num(BoatTubes, 3), txt(BoatTop, "true"), num(MotorVoltage, 24)}, nil},
	{"kayak", []Given{txt(BoatHull, "kayak"), ftIn(BoatLength, 12, 0), lbs(LoadTotal, 360), lbf(MotorThrust, 30), num(UseThrottle, 0.4), num(UseHours, 5)}, nil},
	{"canoe", []Given{txt(BoatHull, "canoe"), ftIn(BoatLength, 16, 6), num(PeopleCount, 1), txt(BatteryChemistry, "lithium"), num(BatteryCapacity, 50)}, nil},
	{"inflatable", []Given{txt(BoatHull, "inflatable"), num(BoatLength, 3.1), txt(MountKind, "clamp")}, nil},
	{"sailboat", []Given{txt(BoatHull, "sailboat"), ftIn(BoatLength, 21, 0), lbs(LoadTotal, 3900)}, nil},
	{"measured speed", []Given{txt(BoatHull, "jon"), ftIn(BoatLength, 16, 0), lbs(LoadTotal, 980), {ID: SpeedMeasured, Value: band.Exactly(1.75), Measured: true}, lbf(SpeedThrust, 55), num(SpeedThrottle, 1)}, nil},
	{"measured on the motor named", []Given{txt(BoatHull, "vee"), ftIn(BoatLength, 17, 0), lbs(LoadTotal, 1600), {ID: SpeedMeasured, Value: band.Exactly(1.6), Measured: true}, lbf(MotorThrust, 70), num(MotorVoltage, 24)}, nil},
	{"wire", []Given{num(MotorVoltage, 24), num(MotorAmps, 52), ftIn(WireRun, 17, 0), txt(WirePlace, "engine-space"), num(WireInsulation, 105)}, nil},
	{"wire in place", []Given{num(MotorVoltage, 12), num(MotorAmps, 48), ftIn(WireRun, 19, 0), num(WireGaugeSaid, 8), num(WireDropTarget, 0.05)}, nil},
	{"bank in hand", []Given{num(BatteryCount, 2), txt(BatteryGroup, "31"), num(MotorVoltage, 24), txt(BatteryChemistry, "agm"), num(UseThrottle, 0.5), lbf(MotorThrust, 80), num(AirTemp, 4), num(ChargeHours, 9), num(ChargerSaid, 10)}, nil},
	{"reserve minutes", []Given{num(BatteryCount, 1), num(BatteryReserve, 1.9), num(MotorAmps, 20)}, nil},
	{"a day in stretches", []Given{lbf(MotorThrust, 55), num(MotorVoltage, 12), txt(MotorSpeeds, "fixed")}, []Stretch{{1, 1}, {0.33, 4.5}}},
	{"way of fishing", []Given{lbs(LoadTotal, 2050), txt(UseStyle, "slow trolling"), txt(MotorDrive, "brushless"), txt(MotorControl, "remote")}, nil},
	{"trip", []Given{txt(BoatHull, "jon"), ftIn(BoatLength, 14, 0), num(UseDistance, 9000), num(UseSpeed, 1.1)}, nil},
	{"shaft in hand", []Given{ftIn(MountHeight, 0, 21), num(MotorShaft, float64(unit.Inches(45))), txt(MountPlace, "bow"), num(WaterDepth, 0.4)}, nil},
	{"plate", []Given{lbs(LoadPlate, 1100), num(PeopleCount, 4), lbs(PeopleEach, 175), lbs(LoadGear, 90), lbs(LoadEngine, 240), num(BatteryCount, 2)}, nil},
	{"freeboard, leg down, two motors", []Given{txt(BoatHull, "bay"), ftIn(BoatLength, 23, 0), num(BoatFreeboard, 0.6), txt(EngineLeg, "down"), num(MotorCount, 2), txt(WaterKind, "brackish"), txt(PeoplePosture, "seated")}, nil},
	{"glass, other", []Given{txt(BoatMaterial, "fiberglass"), ftIn(BoatLength, 18, 6), lbs(LoadTotal, 2600), txt(WaterKind, "fresh")}, nil},
	{"unlike any", []Given{txt(BoatHull, "other"), ftIn(BoatLength, 11, 0), txt(MotorControl, "foot-cable"), num(MoneyBudget, 900)}, nil},
}

// figures are the cells of the public contract.
func figures() []ID {
	var ids []ID
	for _, id := range All() {
		if id.Describe().Figure {
			ids = append(ids, id)
		}
	}
	return ids
}

func declared(r *Row, id ID) bool {
	return slices.Contains(r.Needs, id) || slices.Contains(r.May, id) || slices.Contains(r.Said, id)
}

// Not parallel: the hook is one for the package.
func TestRowsReadOnlyWhatTheyDeclare(t *testing.T) {
	complained := map[string]bool{}
	strict = func(r *Row, id ID) {
		if key := r.Name + " " + id.String(); !declared(r, id) && !complained[key] {
			complained[key] = true
			t.Errorf("row %q reads %s without declaring it", r.Name, id)
		}
	}
	defer func() { strict = nil }()
	reached := map[string]bool{}
	for _, b := range boats {
		s := StandardBook().Solve(Question{Given: b.given, Duty: b.duty, Want: All()})
		for _, st := range s.Steps() {
			if st.Row != nil {
				reached[st.Row.Name] = true
			}
		}
	}
	for _, r := range StandardBook().Rows() {
		if !reached[r.Name] {
			t.Logf("row %q is reached by none of the questions", r.Name)
		}
	}
}

func TestFormulasNameDeclaredCells(t *testing.T) {
	for _, r := range StandardBook().Rows() {
		expand(r.Formula, func(name string) string {
			if part, ok := strings.CutPrefix(name, "="); ok {
				if r.Term == nil {
					t.Errorf("row %q: formula shows the part %s, which the row does not give", r.Name, part)
				}
				return ""
			}
			name, _ = inForm(name)
			id, ok := Lookup(name)
			switch {
			case !ok:
				t.Errorf("row %q: formula names %q, which is no cell", r.Name, name)
			case !declared(r, id) && id != r.Gives: // a search shows the balance that it found
				t.Errorf("row %q: formula shows %s, which the row does not declare", r.Name, name)
			}
			return ""
		})
		for i, id := range r.Needs {
			if slices.Contains(r.Needs[:i], id) {
				t.Errorf("row %q needs %s twice", r.Name, id)
			}
		}
		if r.Compute != nil && r.Gives.Describe().Word {
			t.Errorf("row %q computes a word", r.Name)
		}
	}
}

func TestStepsAreSound(t *testing.T) {
	for _, b := range boats {
		s := StandardBook().Solve(Question{Given: b.given, Duty: b.duty, Want: All()})
		for _, st := range s.Steps() {
			if st.ID.Describe().Word {
				if st.Word == "" {
					t.Errorf("%s: %s holds no word", b.name, st.ID)
				}
				continue
			}
			for _, x := range []float64{st.Value, st.Band.Low, st.Band.High} {
				if math.IsNaN(x) || math.IsInf(x, 0) {
					t.Errorf("%s: %s is %v", b.name, st.ID, st.Band)
				}
			}
			if !(st.Band.Low <= st.Value && st.Value <= st.Band.High) {
				t.Errorf("%s: %s is %g, outside its band %g to %g", b.name, st.ID, st.Value, st.Band.Low, st.Band.High)
			}
			if st.Row != nil && st.Row.Assume != nil && st.Guess.Why == "" {
				t.Errorf("%s: %s is assumed without a reason", b.name, st.ID)
			}
		}
	}
}

// A figure is the same whether it is asked for alone or among all others:
// otherwise two rows lean on each other and the order decides.
func TestOrderOfWantsDoesNotMatter(t *testing.T) {
	all := figures()
	back := slices.Clone(all)
	slices.Reverse(back)
	for _, b := range boats {
		forth := StandardBook().Solve(Question{Given: b.given, Duty: b.duty, Want: all})
		reverse := StandardBook().Solve(Question{Given: b.given, Duty: b.duty, Want: back})
		for _, id := range all {
			alone := StandardBook().Solve(Question{Given: b.given, Duty: b.duty, Want: []ID{id}})
			if forth.Has(id) != alone.Has(id) || forth.Value(id) != alone.Value(id) {
				t.Errorf("%s: %s is %g among all figures and %g alone", b.name, id, forth.Value(id), alone.Value(id))
			}
			if forth.Has(id) != reverse.Has(id) || forth.Value(id) != reverse.Value(id) {
				t.Errorf("%s: %s is %g in one order of wants and %g in the other", b.name, id, forth.Value(id), reverse.Value(id))
			}
		}
	}
}

func TestEveryFigureHasARow(t *testing.T) {
	priced := []ID{CostTotal, CostYearly} // from a shop's own list, outside this book
	for _, id := range figures() {
		if len(StandardBook().gives[id]) == 0 && !slices.Contains(priced, id) {
			t.Errorf("no row gives %s", id)
		}
	}
}
