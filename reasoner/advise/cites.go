package advise

// A citeRow says which notes a figure, a choice or a topic rests on, the most
// telling first.
type citeRow struct {
	id    string
	notes []string
}

var citeRows = []citeRow{
	{"load.total", []string{"loaded-weight"}},
	{"load.margin", []string{"capacity-plate"}},
	{"thrust.rule", []string{"thrust-by-weight"}},
	{"thrust.need", []string{"thrust-by-weight"}},
	{"thrust.class", []string{"voltage-and-batteries"}},
	{"thrust.wind", []string{"thrust-for-wind"}},
	{"thrust.current", []string{"thrust-for-current"}},
	{"hold.wind", []string{"hold-in-wind"}},
	{"hold.wind-allday", []string{"hold-in-wind"}},
	{"hold.current", []string{"hold-in-current"}},
	{"speed.top", []string{"top-speed"}},
	{"system.voltage", []string{"voltage-and-batteries"}},
	{"shaft.need", []string{"shaft-length"}},
	{"shaft.class", []string{"shaft-length"}},
	{"shaft.submergence", []string{"ventilation-and-cavitation"}},
	{"motor.current", []string{"part-throttle"}},
	{"cruise.current", []string{"part-throttle"}},
	{"bank.capacity", []string{"bank-size"}},
	{"bank.count", []string{"series-and-parallel"}},
	{"bank.weight", []string{"group-sizes"}},
	{"bank.energy", []string{"bank-size"}},
	{"runtime.full", []string{"run-time"}},
	{"runtime.cruise", []string{"run-time"}},
	{"range.cruise", []string{"range-and-trips"}},
	{"wire.gauge", []string{"wire-gauge"}},
	{"wire.drop", []string{"voltage-drop"}},
	{"wire.thrust-loss", []string{"voltage-drop"}},
	{"wire.ampacity", []string{"wire-gauge"}},
	{"breaker.rating", []string{"breaker-rating"}},
	{"breaker.distance", []string{"breaker-place"}},
	{"charger.current", []string{"charger-choice"}},
	{"charge.time", []string{"charger-choice"}},
	{"trim.bow-sink", []string{"trim-and-bow-weight"}},

	{"mount", []string{"mount-bow-or-transom"}},
	{"control", []string{"steering-and-control"}},
	{"speed-control", []string{"speed-control"}},
	{"drive", []string{"brushed-or-brushless"}},
	{"water", []string{"salt-water"}},
	{"sonar", []string{"sonar-in-the-motor"}},
	{"position-hold", []string{"position-hold"}},
}

// Notes lists the notes that an id rests on.
func Notes(id string) []string {
	for _, r := range citeRows {
		if r.id == id {
			return r.notes
		}
	}
	return nil
}
