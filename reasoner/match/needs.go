package match

import (
	"slices"
	"strings"

	"heronlake.example/ask/calc/sheet"
	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/reasoner/card"
)

// A needRow judges one need. applies is false where the boat has no such need.
type needRow struct {
	name   string
	priced bool // judged once the rig is known
	hard   func(b Boat) bool
	judge  func(b Boat, o Offer) (v Verdict, reason string, applies bool)
}

// How far below a need still counts as tight: a fiftieth of the thrust, which is
// within the rounding of a rating, and an inch and a half of shaft (waves
// and cover are in the needs already; trade practice). Half an inch is within the
// measuring of a deck's height.
const thrustTight = 0.98

var shaftMeasured, shaftTight, shaftLong = unit.Inches(0.5), unit.Inches(1.5), unit.Inches(18)

func must(Boat) bool { return true }

// unlessWished makes a need hard unless the customer only wished for it.
func unlessWished(slots ...string) func(Boat) bool {
	return func(b Boat) bool {
		for _, s := range slots {
			if f, ok := b.Card.Get(s); ok && !f.Wish {
				return true
			}
		}
		return false
	}
}

var needRows = []needRow{
	{"thrust", false, must, func(b Boat, o Offer) (Verdict, string, bool) {
		if !b.Sol.Has(sheet.ThrustNeed) {
			return Pass, "", false
		}
		need := b.Sol.Value(sheet.ThrustNeed)
		have := o.Motor.Thrust.Newtons()
		switch {
		case have >= need:
			return Pass, "", true
		case have >= need*thrustTight:
			return Short, "thrust just short of " + b.show(sheet.ThrustNeed), true
		}
		return Fail, "thrust short of " + b.show(sheet.ThrustNeed), true
	}},
	{"volts", false, must, func(b Boat, o Offer) (Verdict, string, bool) {
		f, ok := b.Card.Get("motor.voltage")
		if !ok || f.Value == nil {
			return Pass, "", false
		}
		if *f.Value != o.Motor.Voltage.Volts() {
			return Fail, "runs on " + unit.Show(o.Motor.Voltage.Volts(), unit.Volt, b.Sys), true
		}
		return Pass, "", true
	}},
	{"shaft", false, must, func(b Boat, o Offer) (Verdict, string, bool) {
		if !b.Sol.Has(sheet.ShaftNeed) {
			return Pass, "", false
		}
		need, have := b.Sol.Value(sheet.ShaftNeed), o.Motor.Shaft.Metres()
		switch {
		case have == 0:
			return Tight, "shaft length not on the list", true
		case have >= need+shaftLong.Metres():
			return Tight, "shaft longer than it must be", true
		case have >= need-shaftMeasured.Metres()-1e-9:
			return Pass, "", true
		case have >= need-shaftTight.Metres():
			return Short, "shaft just short of " + b.show(sheet.ShaftNeed), true
		}
		return Fail, "shaft short of " + b.show(sheet.ShaftNeed), true
	}},
	{"mount", false, must, func(b Boat, o Offer) (Verdict, string, bool) {
		place := b.Sol.Word(sheet.MountPlace)
		switch {
		case place == "":
			return Pass, "", false
		case place == o.Motor.Mount:
			return Pass, "", true
		case place == "kayak" && o.Motor.Mount == "transom":
			return Tight, "clamp: needs a bracket on a kayak", true
		}
		return Fail, o.Motor.Mount + " mount", true
	}},
	{"control", false, unlessWished("motor.control", "want.remote"), func(b Boat, o Offer) (Verdict, string, bool) {
		want := text(b.Card, "motor.control")
		if text(b.Card, "want.remote") == "true" {
			want = "remote"
		}
		if want == "" {
			return Pass, "", false
		}
		for _, w := range strings.Split(want, "|") {
			if slices.Contains(o.Motor.Controls, w) {
				return Pass, "", true
			}
		}
		return Fail, "no " + want, true
	}},
	{"speed control", false, unlessWished("motor.speeds"), func(b Boat, o Offer) (Verdict, string, bool) {
		want := text(b.Card, "motor.speeds")
		if want == "" {
			return Pass, "", false
		}
		if want != o.Motor.Speeds {
			return Fail, o.Motor.Speeds + " speed", true
		}
		return Pass, "", true
	}},
	{"motor kind", false, unlessWished("motor.drive"), func(b Boat, o Offer) (Verdict, string, bool) {
		want := text(b.Card, "motor.drive")
		if want == "" {
			return Pass, "", false
		}
		if want != o.Motor.Drive {
			return Fail, o.Motor.Drive, true
		}
		return Pass, "", true
	}},
	{"water", false, must, func(b Boat, o Offer) (Verdict, string, bool) {
		kind := text(b.Card, "water.kind")
		if kind != "salt" && kind != "brackish" {
			return Pass, "", false
		}
		if o.Motor.Water != "salt" {
			return Fail, "freshwater version", true
		}
		return Pass, "", true
	}},
	{"sonar", false, unlessWished("want.sonar-2d", "want.sonar-down", "want.sonar-side"), func(b Boat, o Offer) (Verdict, string, bool) {
		applies := false
		for _, kind := range []string{"2d", "down", "side"} {
			if text(b.Card, "want.sonar-"+kind) != "true" {
				continue
			}
			applies = true
			if !slices.Contains(o.Motor.Sonar, kind) {
				return Fail, "no " + kind + " sonar", true
			}
		}
		return Pass, "", applies
	}},
	{"position hold", false, unlessWished("want.position-hold"), func(b Boat, o Offer) (Verdict, string, bool) {
		return wished(b, "want.position-hold", o.Motor.Hold, "no position hold")
	}},
	{"heading hold", false, unlessWished("want.heading-hold"), func(b Boat, o Offer) (Verdict, string, bool) {
		return wished(b, "want.heading-hold", o.Motor.Heading, "no heading hold")
	}},
	{"track following", false, unlessWished("want.track"), func(b Boat, o Offer) (Verdict, string, bool) {
		return wished(b, "want.track", o.Motor.Track, "no track following")
	}},
	{"weight", false, func(Boat) bool { return false }, func(b Boat, o Offer) (Verdict, string, bool) {
		light := slices.Contains([]string{"canoe", "kayak", "inflatable"}, b.Sol.Word(sheet.BoatHull))
		if !light || o.Motor.Weight == 0 {
			return Pass, "", false
		}
		if o.Motor.Weight.Pounds() > 35 { // from memory: the upper end of kayak and clamp motors
			return Tight, "heavy for this hull: " + unit.Show(float64(o.Motor.Weight), unit.Weight, b.Sys), true
		}
		return Pass, "", true
	}},
	{"in stock", false, must, func(_ Boat, o Offer) (Verdict, string, bool) {
		if o.Motor.Count == 0 {
			return Tight, "none left: to be ordered", true
		}
		return Pass, "", o.Motor.Count > 0
	}},
	{"budget", true, unlessWished("money.budget"), func(b Boat, o Offer) (Verdict, string, bool) {
		f, ok := b.Card.Get("money.budget")
		if !ok {
			return Pass, "", false
		}
		limit := f.High
		if limit == nil {
			limit = f.Value
		}
		if limit == nil {
			return Pass, "", false
		}
		switch {
		case o.Rig.Total.Dollars() <= *limit && o.Rig.Whole():
			return Pass, "", true
		case o.Rig.Total.Dollars() <= *limit:
			return Tight, "within " + unit.Show(*limit, unit.Dollar, b.Sys) + " as far as it is priced", true
		case o.Motor.Price.Dollars() <= *limit:
			return Tight, "the motor is within " + unit.Show(*limit, unit.Dollar, b.Sys) + ", its whole rig is not", true
		}
		return Fail, "over " + unit.Show(*limit, unit.Dollar, b.Sys), true
	}},
}

func (b Boat) show(id sheet.ID) string {
	if st := b.Sol.Step(id); st != nil {
		return st.Show(b.Sys)
	}
	return ""
}

func text(c card.Card, slot string) string {
	f, _ := c.Get(slot)
	return f.Text
}

func wished(b Boat, slot string, has bool, reason string) (Verdict, string, bool) {
	if text(b.Card, slot) != "true" {
		return Pass, "", false
	}
	if !has {
		return Fail, reason, true
	}
	return Pass, "", true
}
