package report

import (
	"io"

	"backspan/model"
	"backspan/model/reading"
)

const buildCaution = "Measure the parts in hand before cutting metal: a figure marked default is nobody's measurement. A propeller at speed can kill: nobody stands in its " +
	"plane or behind it, the first runs are on a stand or tied down, and bolts are checked after each of them. A belt or gear is never touched while it turns. "

// BuildSheet writes what the workshop needs to build one variant: every
// dimension with its unit and where it comes from. at tells when it was printed
// and from which state of the study.
func BuildSheet(w io.Writer, s *model.Study, v *model.Variant, o *model.Outcome, at Printing, f Format) error {
	grids := buildGrids(s, v, o, at)
	if f == HTML {
		return writePage(w, "Build sheet of "+v.Name+", "+s.Name, buildCaution, grids)
	}
	return writeGrids(w, grids, f)
}

// Printing tells one sheet of paper from a later one.
type Printing struct {
	Date string // of the day
	Of   string // file, when it was saved, and the program's version
}

func buildGrids(s *model.Study, v *model.Variant, o *model.Outcome, at Printing) []grid {
	lines := newBuildLines(s, v, o)
	head := []string{"what", "value", "unit", "where from"}
	var grids []grid
	add := func(title string, rows ...[]string) {
		if n := len(grids); n == 0 || grids[n-1].title != title {
			grids = append(grids, grid{title: title, head: head, sheet: true})
		}
		g := &grids[len(grids)-1]
		g.rows = append(g.rows, rows...)
	}
	if rows := lines.failing(); len(rows) > 0 {
		add("Not to be built as it stands: these checks fail", rows...)
	}
	keys := buildKeys()
	add(keys[0].block, []string{"Printed", at.Date, "", at.Of})
	for _, k := range keys {
		if (k.kind == openKind || k.kind == toldKind) && grids[len(grids)-1].title != k.block {
			continue
		}
		if cells, ok := lines.line(k); ok {
			add(k.block, cells)
		}
	}
	if rows := lines.bearings(); len(rows) > 0 {
		add("Bearings", rows...)
	}
	grids[0].title = s.Name + ", " + v.Name + ": " + grids[0].title
	if past := buildPast(o); len(past.rows) > 0 {
		grids = append(grids, past)
	}
	return append(grids, buildCautions(o))
}

// buildPast is what does not forbid the machine, but is past a guide value:
// some of it is how to handle it.
func buildPast(o *model.Outcome) grid {
	g := grid{title: "Past a guide value", named: true, head: []string{"check", "found", "what to do"}}
	for _, k := range o.Checks {
		if k.Verdict != reading.Thin || !k.Past {
			continue
		}
		found := ""
		if k.Valued {
			found = k.Text()
		}
		g.rows = append(g.rows, []string{k.Label, found, k.Cure})
	}
	return g
}

// buildCautions ends the sheet with what nobody could rate.
func buildCautions(o *model.Outcome) grid {
	g := grid{title: "Cautions", named: true, head: []string{"not rated", "why"}, note: buildCaution + caution}
	for _, k := range o.Checks {
		if k.Verdict == reading.NotRated {
			g.rows = append(g.rows, []string{k.Label, k.Why})
		}
	}
	return g
}
