package report

import (
	"encoding/csv"
	"io"
	"strconv"

	"backspan/model/carry"
	"backspan/model/unit"
)

type jsonSplits struct {
	Study  string      `json:"study"`
	Splits []jsonSplit `json:"splits"`
}

type jsonSplit struct {
	From      string      `json:"from"`
	To        string      `json:"to"`
	Unit      string      `json:"unit"`
	Total     *float64    `json:"total"`
	FromMass  *float64    `json:"from_mass"`
	OfMassAft *float64    `json:"of_mass_aft"`
	FromDepth *float64    `json:"from_depth"`
	OfMass    *float64    `json:"because_of_mass"`
	OfDepth   *float64    `json:"because_of_depth"`
	Pieces    []jsonShare `json:"pieces"`
	Why       string      `json:"why,omitempty"`
}

type jsonShare struct {
	Key       string   `json:"key"`
	Label     string   `json:"label"`
	MassFrom  *float64 `json:"mass_from_kg"`
	MassTo    *float64 `json:"mass_to_kg"`
	PlaceFrom *float64 `json:"place_from_mm"`
	PlaceTo   *float64 `json:"place_to_mm"`
	DepthFrom *float64 `json:"depth_from_mm"`
	DepthTo   *float64 `json:"depth_to_mm"`
	FromMass  *float64 `json:"from_mass"`
	OfMassAft *float64 `json:"of_mass_aft"`
	FromPlace *float64 `json:"from_place"`
	ByDepth   *float64 `json:"by_its_depth"`
	OfMass    *float64 `json:"because_of_mass"`
	OfDepth   *float64 `json:"because_of_depth"`
}

func writeSplitJSON(w io.Writer, study string, splits []Split) error {
	out := jsonSplits{Study: study, Splits: []jsonSplit{}}
	for _, s := range splits {
		out.Splits = append(out.Splits, splitJSON(s))
	}
	return encodeJSON(w, out)
}

func splitJSON(s Split) jsonSplit {
	j := jsonSplit{From: s.From, To: s.To, Unit: unit.NewtonMetre.Symbol, Pieces: []jsonShare{}}
	if !s.Feel.Known {
		j.Why = cannotTell
		return j
	}
	j.Total, j.FromMass, j.OfMassAft, j.FromDepth = number(s.Feel.Total), number(s.Feel.FromMass), number(s.Feel.OfMassAft), number(s.Feel.FromDepth)
	j.OfMass, j.OfDepth = number(s.Feel.FromMass-s.Feel.OfMassAft), number(s.Feel.FromDepth+s.Feel.OfMassAft)
	for i := range s.Feel.Pieces {
		j.Pieces = append(j.Pieces, shareJSON(&s.Feel.Pieces[i]))
	}
	return j
}

// shareJSON leaves null what a machine without the piece has not.
func shareJSON(q *carry.Share) jsonShare {
	j := jsonShare{Key: q.Key, Label: q.Label, FromMass: number(q.FromMass), OfMassAft: number(q.OfMassAft),
		FromPlace: number(q.FromPlace), ByDepth: number(q.ByDepth), OfMass: number(q.OfMass()), OfDepth: number(q.OfDepth())}
	mm := func(si float64) *float64 { return number(unit.Millimetre.From(si)) }
	if q.InFrom {
		j.MassFrom, j.PlaceFrom, j.DepthFrom = number(q.MassFrom), mm(q.PlaceFrom), mm(q.DepthFrom)
	}
	if q.InTo {
		j.MassTo, j.PlaceTo, j.DepthTo = number(q.MassTo), mm(q.PlaceTo), mm(q.DepthTo)
	}
	return j
}

func writeSplitCSV(w io.Writer, splits []Split) error {
	rows := [][]string{{"from", "to", "key", "label", "mass_from_kg", "mass_to_kg", "place_from_mm", "place_to_mm", "depth_from_mm", "depth_to_mm",
		"from_mass_nm", "of_mass_aft_nm", "from_place_nm", "by_its_depth_nm", "because_of_mass_nm", "because_of_depth_nm"}}
	moment := func(x float64) string { return strconv.FormatFloat(x, 'g', 12, 64) }
	for _, s := range splits {
		if !s.Feel.Known {
			rows = append(rows, append([]string{s.From, s.To, "", cannotTell}, make([]string, len(rows[0])-4)...))
		}
		for i := range s.Feel.Pieces {
			q := &s.Feel.Pieces[i]
			rows = append(rows, []string{s.From, s.To, q.Key, q.Label,
				figure(q.InFrom, q.MassFrom, unit.Kilogram), figure(q.InTo, q.MassTo, unit.Kilogram),
				figure(q.InFrom, q.PlaceFrom, unit.Millimetre), figure(q.InTo, q.PlaceTo, unit.Millimetre),
				figure(q.InFrom, q.DepthFrom, unit.Millimetre), figure(q.InTo, q.DepthTo, unit.Millimetre),
				moment(q.FromMass), moment(q.OfMassAft), moment(q.FromPlace), moment(q.ByDepth), moment(q.OfMass()), moment(q.OfDepth())})
		}
	}
	return writeAll(csv.NewWriter(w), rows)
}
