package main

import (
	"encoding/csv"
	"strings"
	"testing"

	"heronlake.example/ask/cmd/ask/store"
)

// A record that somebody wrote by hand may hold anything; a spreadsheet must not
// take any of it for a formula.
func TestCSVHoldsNoFormula(t *testing.T) {
	for _, name := range []string{"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "=cmd|' /C calc'!A0", "|x", "Ann, \"Other\""} {
		data, err := scoresCSV([]store.Trainee{{Name: name, Scores: []store.Score{{Topic: name, Points: 1, Most: 2, Items: map[string]string{name: "right"}}}}})
		if err != nil {
			t.Fatal(err)
		}
		rows, err := csv.NewReader(strings.NewReader(string(data))).ReadAll()
		if err != nil || len(rows) != 2 {
			t.Fatalf("%q: %v, %d rows", name, err, len(rows))
		}
		for _, field := range rows[1] {
			if field != "" && strings.ContainsRune("=+-@|\t\r", rune(field[0])) {
				t.Errorf("%q gives the field %q", name, field)
			}
		}
	}
}

func TestTrend(t *testing.T) {
	score := func(points float64) store.Score { return store.Score{Topic: "shaft", Points: points, Most: 10} }
	for _, test := range []struct {
		points []float64
		want   string
	}{
		{nil, "-"},
		{[]float64{5, 5, 5}, "-"},
		{[]float64{2, 4, 8, 10}, "+60"},
		{[]float64{8, 8, 6, 6}, "-20"},
		{[]float64{5, 5, 5, 5}, "+0"},
	} {
		var list []store.Score
		for _, p := range test.points {
			list = append(list, score(p))
		}
		if got := trend(list); got != test.want {
			t.Errorf("%v: %s, want %s", test.points, got, test.want)
		}
	}
}
