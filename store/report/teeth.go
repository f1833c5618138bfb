package report

import (
	"encoding/csv"
	"fmt"
	"io"
	"strconv"

	"backspan/model"
	"backspan/model/gear"
	"backspan/model/reading"
	"backspan/model/unit"
)

// teethColumn is one figure of a pair of gears.
type teethColumn struct {
	key, head, unit string
	figure          func(r *model.TeethRow) float64
	decimals        int
}

var teethColumns = []teethColumn{
	{"pinion_teeth", "pinion", "", func(r *model.TeethRow) float64 { return float64(r.PinionTeeth) }, 0},
	{"wheel_teeth", "wheel", "", func(r *model.TeethRow) float64 { return float64(r.WheelTeeth) }, 0},
	{"module", "module", "mm", func(r *model.TeethRow) float64 { return r.Module * 1000 }, 2},
	{"ratio", "ratio", "", func(r *model.TeethRow) float64 { return r.Ratio }, 4},
	{"ratio_error", "off", "%", func(r *model.TeethRow) float64 { return r.RatioError * 100 }, 2},
	{"centre_distance", "centre", "mm", func(r *model.TeethRow) float64 { return r.CentreDistance * 1000 }, 3},
	{"shift_sum", "x sum", "", func(r *model.TeethRow) float64 { return r.ShiftSum }, 3},
	{"pinion_shift", "x pinion", "", func(r *model.TeethRow) float64 { return r.PinionShift }, 2},
	{"wheel_shift", "x wheel", "", func(r *model.TeethRow) float64 { return r.WheelShift }, 3},
	{"sliding", "sliding", "", func(r *model.TeethRow) float64 { return max(r.Sliding[0], r.Sliding[1]) }, 2},
	{"contact_ratio", "contact", "", func(r *model.TeethRow) float64 { return r.ContactRatio }, 2},
	{"overlap_ratio", "overlap", "", func(r *model.TeethRow) float64 { return r.OverlapRatio }, 2},
	{"pinion_tip", "tip p", "mm", func(r *model.TeethRow) float64 { return r.TipThickness[0] * 1000 }, 2},
	{"wheel_tip", "tip w", "mm", func(r *model.TeethRow) float64 { return r.TipThickness[1] * 1000 }, 2},
	{"undercut_room", "undercut room", "", func(r *model.TeethRow) float64 { return min(r.UndercutRoom[0], r.UndercutRoom[1]) }, 2},
	{"common_factor", "factor", "", func(r *model.TeethRow) float64 { return float64(r.CommonFactor) }, 0},
	{"mesh_frequency", "mesh", "Hz", func(r *model.TeethRow) float64 { return r.MeshFrequency }, 0},
	{"score", "score", "", func(r *model.TeethRow) float64 { return r.Score }, 2},
}

// Teeth writes the pairs of gears found, best first.
func Teeth(w io.Writer, t model.TeethTable, f Format) error {
	switch f {
	case JSON:
		return writeTeethJSON(w, t)
	case CSV:
		return writeTeethCSV(w, t)
	}
	return writeGrids(w, []grid{teethGrid(t)}, f)
}

func teethGrid(t model.TeethTable) grid {
	g := grid{title: teethTitle(t), note: teethNote(t)}
	for _, c := range teethColumns {
		head := c.head
		if c.unit != "" {
			head += " " + c.unit
		}
		g.head = append(g.head, head)
	}
	g.head = append(g.head, "pitting", "breakage")
	for i := range t.Rows {
		r := &t.Rows[i]
		var row []string
		for _, c := range teethColumns {
			row = append(row, strconv.FormatFloat(c.figure(r), 'f', c.decimals, 64))
		}
		g.rows = append(g.rows, append(row, r.Pitting.Text(), r.Bending.Text()))
	}
	return g
}

func teethTitle(t model.TeethTable) string {
	title := fmt.Sprintf("%s, %s: teeth for a ratio of %.4g within %s", t.Study, t.Variant, t.Wish.Ratio, unit.Percent.Text(t.Wish.Tolerance))
	if t.Wish.CentreDistance.Known {
		title += fmt.Sprintf(" at a centre distance of %s within %s", unit.Millimetre.Text(t.Wish.CentreDistance.Value), unit.Millimetre.Text(t.Wish.CentreTolerance))
	}
	return title
}

func teethNote(t model.TeethTable) string {
	if t.Found == 0 {
		return "no pair meets this; widen the tolerance, or change the ratio, the centre distance or the variant's Module"
	}
	size := ""
	if !t.Wish.CentreDistance.Known {
		size = "No centre distance is asked, so the case may grow or shrink. "
	}
	return fmt.Sprintf("%d of %d pairs that can be made. %sLower score is better: errors over their tolerances, a shared factor, contact ratio under 1.4, thin tips, each up to 1. "+
		"Shifts by %s. Pitting and breakage are the safeties in this variant, rated as its other figures are. %s", len(t.Rows), t.Found, size, gear.SplitOrigin, caution)
}

func writeTeethCSV(w io.Writer, t model.TeethTable) error {
	out := csv.NewWriter(w)
	var head []string
	for _, c := range teethColumns {
		key := c.key
		switch c.unit {
		case "":
		case "%":
			key += "_percent"
		default:
			key += "_" + c.unit
		}
		head = append(head, key)
	}
	rows := [][]string{append(head, "pitting_safety", "bending_safety")}
	for i := range t.Rows {
		r := &t.Rows[i]
		var row []string
		for _, c := range teethColumns {
			row = append(row, strconv.FormatFloat(*number(c.figure(r)), 'g', -1, 64))
		}
		rows = append(rows, append(row, figure(r.Pitting.Known(), r.Pitting.Value, r.Pitting.Unit), figure(r.Bending.Known(), r.Bending.Value, r.Bending.Unit)))
	}
	return out.WriteAll(rows)
}

// The JSON shape is a contract with scripts.
type jsonTeeth struct {
	Study          string            `json:"study"`
	Variant        string            `json:"variant"`
	Ratio          float64           `json:"ratio"`
	Tolerance      float64           `json:"tolerance"`
	CentreDistance *float64          `json:"centre_distance"` // null when none is asked
	Units          map[string]string `json:"units"`
	Found          int               `json:"found"`
	Split          string            `json:"shift_split"`
	Pairs          []map[string]any  `json:"pairs"`
}

func writeTeethJSON(w io.Writer, t model.TeethTable) error {
	j := jsonTeeth{Study: t.Study, Variant: t.Variant, Ratio: *number(t.Wish.Ratio), Tolerance: *number(t.Wish.Tolerance), Found: t.Found,
		Split: gear.SplitOrigin, Units: map[string]string{}, Pairs: []map[string]any{}}
	if t.Wish.CentreDistance.Known {
		j.CentreDistance = number(t.Wish.CentreDistance.Value * 1000)
	}
	for _, c := range teethColumns {
		if c.unit != "" {
			j.Units[c.key] = c.unit
		}
	}
	for i := range t.Rows {
		r := &t.Rows[i]
		pair := map[string]any{"pitting_safety": safety(r.Pitting), "bending_safety": safety(r.Bending)}
		for _, c := range teethColumns {
			pair[c.key] = number(c.figure(r))
		}
		j.Pairs = append(j.Pairs, pair)
	}
	return encodeJSON(w, j)
}

// safety is null when there is none.
func safety(r reading.Reading) *float64 {
	if !r.Known() {
		return nil
	}
	return number(r.Value)
}
