package sheet

import (
	"math"
	"unicode/utf8"

	"heronlake.example/ask/reasoner/answer"
)

// room is how many entries of each kind a sheet has, and how many characters
// each may take.
type room struct {
	boat, assumed, measures, parts, cautions, problems, sources, choices, figures, offers int
	name, value, said, why, how, caution, measure, lead                                   int
}

// A setting is a way to set the sheet: what has room, and in which type. Sizes
// are in points, as in the style of page.html.
type setting struct {
	room
	dense, full bool    // run-in lists in smaller type, and smaller still
	body, small float64 // sizes of type
	picture     float64 // the tallest picture
}

// settings from the roomiest to the closest. A sheet takes the first in which it
// stays on two pages; the last does whatever the Answer holds.
var settings = []setting{
	{room{boat: 22, assumed: 24, measures: 9, parts: 16, cautions: 7, problems: 4, sources: 14, choices: 8, figures: 40, offers: 3,
		name: 34, value: 60, said: 40, why: 160, how: 190, caution: 300, measure: 200, lead: 400}, false, false, 8.4, 7.1, 176},
	{room{boat: 16, assumed: 18, measures: 7, parts: 14, cautions: 6, problems: 3, sources: 12, choices: 7, figures: 34, offers: 2,
		name: 34, value: 40, said: 40, why: 90, how: 105, caution: 200, measure: 140, lead: 400}, false, false, 8.4, 7.1, 176},
	{room{boat: 40, assumed: 30, measures: 9, parts: 16, cautions: 7, problems: 4, sources: 14, choices: 8, figures: 40, offers: 3,
		name: 34, value: 60, said: 40, why: 150, how: 180, caution: 280, measure: 180, lead: 400}, true, false, 8, 6.9, 130},
	{room{boat: 26, assumed: 18, measures: 7, parts: 12, cautions: 6, problems: 3, sources: 12, choices: 7, figures: 36, offers: 2,
		name: 34, value: 60, said: 30, why: 90, how: 116, caution: 200, measure: 140, lead: 400}, true, false, 8, 6.9, 130},
	{room{boat: 40, assumed: 24, measures: 8, parts: 14, cautions: 6, problems: 3, sources: 14, choices: 8, figures: 40, offers: 2,
		name: 34, value: 60, said: 30, why: 110, how: 120, caution: 220, measure: 160, lead: 400}, true, true, 7.4, 6.3, 113},
	{room{boat: 18, assumed: 12, measures: 6, parts: 12, cautions: 5, problems: 2, sources: 12, choices: 7, figures: 32, offers: 2,
		name: 30, value: 26, said: 26, why: 42, how: 44, caution: 110, measure: 100, lead: 240}, true, true, 7.4, 6.3, 113},
}

// twoPages is how tall a sheet may be by height's reckoning, in points. Two pages
// of Letter hold 1,460 between their margins; prints of twenty sheets came to 0.88
// to 0.95 of what was reckoned, and some is lost where a picture is not parted.
const twoPages = 1470

// fitting lays the sheet out in the first setting that stays on two pages.
func fitting(a answer.Answer, opts Options) page {
	for _, s := range settings[:len(settings)-1] {
		if p := layOut(a, opts, s); p.height(s) <= twoPages {
			return p
		}
	}
	return layOut(a, opts, settings[len(settings)-1])
}

// The page's measures in points: its width between the margins, that of a half of
// it and of the column of workings, and how wide a letter runs, as a part of its
// height. The letters are those of a wide serif, found by printing.
const (
	pageWide = 538.0
	halfWide = 260.0
	howWide  = 215.0
	letter   = 0.575
	leading  = 1.25
	heading  = 17.0
)

// lines is how many lines a text takes in a column.
func lines(text string, size, wide float64) float64 {
	return math.Max(1, math.Ceil(float64(utf8.RuneCountInString(text))*size*letter/wide))
}

// tall is the height of a text in a column.
func tall(text string, size, wide float64) float64 { return lines(text, size, wide) * size * leading }

// height estimates how tall the sheet is in print.
func (p page) height(s setting) float64 {
	h := 80.0 // title and blanks
	h += tall(p.Lead, 10, pageWide) + 10
	for _, x := range p.Problems {
		h += tall("Note: "+x, s.body, pageWide) + 4
	}
	side := 0.0
	for _, pic := range p.Pictures {
		if pic.Kind == "side" {
			side = s.picture + 14
		}
	}
	h += math.Max(p.told(s), side+heading+40)
	return h + p.partsHeight(s) + p.figuresHeight(s) + p.picturesHeight(s) + p.endHeight(s)
}

// told is the height of the boat and the kinds.
func (p page) told(s setting) float64 {
	h := 0.0
	for _, list := range [][]entry{p.Boat, p.Choices} {
		if len(list) == 0 {
			continue
		}
		h += heading
		all := ""
		for _, x := range list {
			t := x.Name + ": " + x.Value + " (" + x.Note + "); "
			if all += t; !s.dense {
				h += tall(t, s.body*0.93, halfWide) + 0.8
			}
		}
		if s.dense {
			h += tall(all, s.small*1.03, halfWide)
		}
	}
	return h
}

func (p page) partsHeight(s setting) float64 {
	h := 0.0
	if len(p.Parts) > 0 {
		h += heading + float64(len(p.Parts)+2)*(s.body*leading+1.1)
		for _, t := range []string{p.Needs, p.Yearly + p.YearlyHow} {
			if t != "" {
				h += tall("Held against the needs: "+t, s.body, pageWide) + 4
			}
		}
	}
	if len(p.Alternates) > 0 {
		all := "Also on the shelf: " + p.Order
		for _, x := range p.Alternates {
			all += x.Name + x.Value + x.Note + "; "
		}
		h += tall(all, s.body*0.95, pageWide) + 4
	}
	return h
}

func (p page) figuresHeight(s setting) float64 {
	if len(p.Groups) == 0 {
		return 0
	}
	h := heading
	for _, g := range p.Groups {
		h++
		for _, f := range g.Figures {
			cites := ""
			if !s.full {
				for range f.Cites {
					cites += " [00]"
				}
			}
			h += math.Max(s.body*leading, lines(f.How+cites, s.small*0.98, howWide)*s.small*1.16) + 0.9
		}
	}
	return h
}

// picturesHeight is that of the pictures below the figures, two in a row, the
// cautions beside the last.
func (p page) picturesHeight(s setting) float64 {
	var cells []float64
	for _, pic := range p.Pictures {
		switch pic.Kind {
		case "chart":
			cells = append(cells, math.Min(s.picture, halfWide*chartHigh/chartWide)+16)
		case "wiring":
			w := pic.Drawing.(wiring)
			cells = append(cells, math.Min(s.picture, halfWide*float64(w.High)/wiringWide)+16)
		}
	}
	cautions := 0.0
	if len(p.Cautions) > 0 {
		cautions = heading
		for _, c := range p.Cautions {
			cautions += tall("! "+c, s.body, halfWide)
		}
	}
	cells = append(cells, cautions)
	h := 0.0
	for i := 0; i < len(cells); i += 2 {
		row := cells[i]
		if i+1 < len(cells) {
			row = math.Max(row, cells[i+1])
		}
		h += row
	}
	return h
}

// endHeight is that of what is assumed, the sources and the notice.
func (p page) endHeight(s setting) float64 {
	h := 24.0
	if len(p.Measures) > 0 {
		columns := 0.0
		for _, x := range p.Measures {
			columns += tall(x.Name+": taken as "+x.Value+". "+x.Note, s.body*0.97, halfWide) + 0.8
		}
		h += heading + columns/2 + s.body*leading
	}
	if len(p.Assumed) > 0 {
		all := ""
		for _, x := range p.Assumed {
			all += x.Name + ": " + x.Value + "; "
		}
		h += heading + tall(all, s.small*1.03, pageWide)
	}
	if len(p.Sources) > 0 {
		all := ""
		for _, x := range p.Sources {
			all += "[00] " + x.Title + ": " + x.Basis + "; "
		}
		h += heading + tall(all, s.small, pageWide)
	}
	return h
}
