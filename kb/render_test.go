package kb

import (
	"strings"
	"testing"

	"heronlake.example/ask/calc/unit"
)

// The references of these tests give their own cell, so that they show how a
// figure is written and not what the sheet makes of it.
func TestRender(t *testing.T) {
	for _, c := range []struct{ in, us, metric string }{
		{"no figures", "no figures", "no figures"},
		{"weighs {{load.total | load.total=1,900 lb}} wet", "weighs 1,900 lb wet", "weighs 862 kg wet"},
		{"{{load.total | load.total=862 kg}}", "1,900 lb", "862 kg"},
		{"{{boat.length|boat.length=17 ft 6 in}}", "17.5 ft", "5.33 m"},
		{"{{mount.height:bare | mount.height=24 in}} over the water", "24 over the water", "61 over the water"},
		{"{{motor.thrust:band | motor.thrust=55 lb}}", "55 lb", "55 lb (245 N)"},
		{"{{wire.gauge-said | wire.gauge=2/0 AWG}}", "2/0 AWG", "2/0 AWG"},
		{"{{temperature.air | temperature.air=32 F}}", "32 F", "0 C"},
		{"{{use.throttle | use.throttle=30 %}}", "30%", "30%"},
		{"{{boat.hull | boat.hull=jon}}", "jon", "jon"},
		{"{{people.count | people.count=2}} and {{people.count | people.count=3 people}}", "2 and 3", "2 and 3"},
	} {
		p := Passage{ID: "n#p", Text: c.in}
		for sys, want := range map[unit.System]string{unit.US: c.us, unit.Metric: c.metric} {
			if got, err := Render(p, sys); err != nil || got != want {
				t.Errorf("%s in %s: %q, %v; want %q", c.in, sys, got, err, want)
			}
		}
	}
}

func TestRenderErrors(t *testing.T) {
	for in, want := range map[string]string{
		"{{load.totl}}":                            `no cell is called "load.totl"`,
		"{{load.total | load.total=1900}}":         `"1900" needs a unit that gives kg`,
		"{{load.total | load.total=1900 ft}}":      `unit "ft" does not give kg`,
		"{{load.total | load.total=heavy}}":        `"heavy" is no number`,
		"{{load.total | load.total}}":              `input "load.total" is not of the form slot=value`,
		"{{load.total | lod.total=1 lb}}":          `no cell is called "lod.total"`,
		"{{load.total:middle | load.total=1 lb}}":  `"middle" after the colon is none of`,
		"{{load.plate}}":                           "cannot be computed without load.plate",
		"it weighs {{load.total | load.total=1 lb": "never closed",
	} {
		_, err := Render(Passage{ID: "n#p", Text: in}, unit.US)
		if err == nil || !strings.Contains(err.Error(), want) || !strings.HasPrefix(err.Error(), "passage n#p: ") {
			t.Errorf("%s: %v, want %s", in, err, want)
		}
	}
}

func TestSpan(t *testing.T) {
	for _, c := range []struct {
		low, high float64
		form      unit.Form
		want      string
	}{
		{float64(unit.PoundForce(40)), float64(unit.PoundForce(55)), unit.Thrust, "40 to 55 lb"},
		{1, 2, unit.Hour, "60 min to 2 h"},
		{0.03, 0.05, unit.Fraction, "3 to 5%"},
		{12, 12, unit.Volt, "12 V"},
	} {
		if got := span(c.low, c.high, c.form, unit.US); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
}
