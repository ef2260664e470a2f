package wind_test

import (
	"encoding/csv"
	"os"
	"strconv"
	"strings"
	"testing"

	"heronlake.example/ask/calc/unit"
	"heronlake.example/ask/calc/wind"
)

// published reads a table of published values, whose first lines name the source.
func published(t *testing.T, name string) [][]string {
	t.Helper()
	f, err := os.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil || len(rows) < 2 {
		t.Fatalf("%s: %d rows, %v", name, len(rows), err)
	}
	return rows[1:]
}

func num(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

func TestBlendermannTable(t *testing.T) {
	rows := published(t, "blendermann.csv")
	if len(rows) != len(wind.Vessels) {
		t.Errorf("%d vessels, published are %d", len(wind.Vessels), len(rows))
	}
	for _, r := range rows {
		want := wind.Vessel{Name: r[0], Side: num(t, r[1]), Bow: num(t, r[2]), Stern: num(t, r[3]), Delta: num(t, r[4]), Kappa: num(t, r[5])}
		if got, err := wind.VesselNamed(r[0]); err != nil || got != want {
			t.Errorf("%s: %+v, %v; published is %+v", r[0], got, err, want)
		}
	}
}

func TestBeaufortTable(t *testing.T) {
	for i, r := range published(t, "beaufort.csv") {
		s := wind.Beaufort[i]
		if s.Name != r[1] || s.Low.MetresPerSecond() != num(t, r[2]) || r[3] != "" && s.High.MetresPerSecond() != num(t, r[3]) {
			t.Errorf("force %d is %+v, published %v", i, s, r)
		}
		near(t, "mean of force "+r[0], wind.MeanSpeed(float64(i)).MetresPerSecond(), num(t, r[4]), 0.00005)
		// The middle of the range in miles an hour is of the same force.
		if low, high, ok := strings.Cut(r[6], "-"); ok {
			if got := wind.ForceOf(unit.MilesPerHour((num(t, low) + num(t, high)) / 2)); got != i {
				t.Errorf("%s mph is force %d, published %d", r[6], got, i)
			}
		}
	}
}

func TestAnchorLoadTable(t *testing.T) {
	rows := published(t, "anchor-loads.csv")
	if len(rows) != len(wind.AnchorLoads) {
		t.Fatalf("%d lengths, published are %d", len(wind.AnchorLoads), len(rows))
	}
	for i, r := range rows {
		l := wind.AnchorLoads[i]
		near(t, r[0]+" ft", l.Length.Feet(), num(t, r[0]), 1e-9)
		near(t, "lunch hook of "+r[0]+" ft", l.Lunch.PoundForce(), num(t, r[1]), 1e-9)
		near(t, "working load of "+r[0]+" ft", l.Work.PoundForce(), num(t, r[2]), 1e-9)
		near(t, "storm load of "+r[0]+" ft", l.Storm.PoundForce(), num(t, r[3]), 1e-9)
	}
}
