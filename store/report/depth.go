package report

import (
	"backspan/model"
	"backspan/model/carry"
	"backspan/model/unit"
)

type jsonDepth struct {
	Key   string   `json:"key"`
	Label string   `json:"label"`
	Depth *float64 `json:"depth_mm"`
	PerCm *float64 `json:"felt_kg_per_cm"`
	Felt  *float64 `json:"felt_kg"`
}

func depthsJSON(o model.Outcome) []jsonDepth {
	out := []jsonDepth{}
	for _, t := range o.Depths {
		out = append(out, jsonDepth{t.Key, t.Label, number(unit.Millimetre.From(t.Depth)), number(unit.KilogramPerCentimetre.From(t.PerDepth)), number(t.Felt)})
	}
	return out
}

// depthGrid ranks the pieces of a variant by what their depth costs.
func depthGrid(o model.Outcome) (g grid, ok bool) {
	if len(o.Depths) == 0 {
		return grid{}, false
	}
	g = grid{title: o.Variant + ": which piece to thin", head: []string{"piece", "depth", "per cm", "whole depth"},
		note: "felt mass per cm of the piece's depth, its mass held, and felt mass of its whole depth; the dearest by its whole depth first"}
	for _, t := range o.Depths {
		g.rows = append(g.rows, []string{t.Label, unit.Millimetre.Text(t.Depth), unit.KilogramPerCentimetre.Text(t.PerDepth), unit.Kilogram.Text(t.Felt)})
	}
	return g, true
}

// depthRows are the same for CSV: one row a piece, in the order in which the
// variants bring them.
func depthRows(c model.Comparison) [][]string {
	var rows [][]string
	at := map[string]int{}
	for i, o := range c.Outcomes {
		for _, t := range o.Depths {
			r, met := at[t.Key]
			if !met {
				r = len(rows)
				at[t.Key] = r
				rows = append(rows, append([]string{"depth", t.Key, t.Label, unit.KilogramPerCentimetre.Symbol}, make([]string, len(c.Outcomes))...))
			}
			rows[r][4+i] = perCm(t)
		}
	}
	return rows
}

func perCm(t carry.Thickness) string { return figure(true, t.PerDepth, unit.KilogramPerCentimetre) }
