package report

import (
	"io"

	"backspan/model"
	"backspan/model/carry"
	"backspan/model/unit"
)

// Split is the difference in upright hip moment from one variant to another.
type Split struct {
	From, To string
	Feel     model.PieceFeel
}

// Splits writes differences in upright hip moment piece by piece.
func Splits(w io.Writer, study string, splits []Split, f Format) error {
	switch f {
	case JSON:
		return writeSplitJSON(w, study, splits)
	case CSV:
		return writeSplitCSV(w, splits)
	}
	var grids []grid
	for _, s := range splits {
		grids = append(grids, splitGrid(s))
	}
	return writeGrids(w, grids, f)
}

const cannotTell = "cannot be told: one of the two machines cannot be built"

const splitNote = "mass and depth: what more or less mass does and what sitting deeper or closer does, as in the comparison, where each machine is one " +
	"point; they sum to the difference. depth is mass added aft, of the machines' mean centre of gravity, and moved aft. by its depth: the same moment as " +
	"moved aft, handed to the pieces whose depth or layout moved things. Every line is exact."

func splitGrid(s Split) grid {
	g := grid{title: "Hip moment upright in " + unit.NewtonMetre.Symbol + ", from " + s.From + " to " + s.To + ", piece by piece",
		head: []string{"piece", "its mass", "centre behind back", "its depth", "mass", "depth", "added aft", "moved aft", "by its depth"}, note: splitNote}
	if !s.Feel.Known {
		g.note = cannotTell
		return g
	}
	f := &s.Feel
	moment := func(x float64) string {
		if x == 0 {
			return "-"
		}
		return unit.NewtonMetre.Delta(x, f.Total)
	}
	for i := range f.Pieces {
		q := &f.Pieces[i]
		if q.FromMass == 0 && q.FromPlace == 0 && q.ByDepth == 0 {
			continue
		}
		g.rows = append(g.rows, []string{q.Label, between(q, q.MassFrom, q.MassTo, unit.Kilogram), between(q, q.PlaceFrom, q.PlaceTo, unit.Millimetre),
			between(q, q.DepthFrom, q.DepthTo, unit.Millimetre), moment(q.OfMass()), moment(q.OfDepth()), moment(q.OfMassAft), moment(q.FromPlace), moment(q.ByDepth)})
	}
	g.rows = append(g.rows,
		[]string{"sum", "", "", "", moment(f.FromMass - f.OfMassAft), moment(f.FromDepth + f.OfMassAft), moment(f.OfMassAft), moment(f.FromDepth), moment(f.FromDepth)},
		[]string{"difference", "", "", "", moment(f.Total), "", "", "", ""})
	return g
}

// between is a figure of both machines, or of the only one that has the piece.
func between(q *carry.Share, from, to float64, u unit.Unit) string {
	switch {
	case !q.InFrom:
		return "- to " + u.Text(to)
	case !q.InTo:
		return u.Number(from) + " to -"
	case u.Text(from) == u.Text(to):
		return u.Text(to)
	}
	return u.Number(from) + " to " + u.Text(to)
}
