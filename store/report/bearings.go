package report

import (
	"backspan/model"
	"backspan/model/bearing"
	"backspan/model/param"
	"backspan/model/unit"
)

// bearingGrid lists the bearings with the forces on them. ok is false when
// there are none.
func bearingGrid(o model.Outcome) (g grid, ok bool) {
	if len(o.Bearings) == 0 {
		return grid{}, false
	}
	g = grid{
		title: o.Variant + ": forces on the bearings in straight flight, along and across the line from propeller axis to crank, axial forward positive",
		head:  []string{"bearing", "size", "along", "across", "radial", "axial", "equivalent load", "life", "static safety", "speed, share of limit"},
	}
	for i := range o.Bearings {
		g.rows = append(g.rows, bearingLine(&o.Bearings[i]))
	}
	return g, true
}

func bearingLine(b *bearing.Row) []string {
	size := string(b.Size)
	if size == "" {
		size = "-"
	}
	return []string{b.Name, size, unit.Newton.Text(b.Along), unit.Newton.Text(b.Across), unit.Newton.Text(b.Radial()), unit.Newton.Text(b.Axial),
		slotText(b.Equivalent, unit.Newton), slotText(b.Life, unit.Hour), slotText(b.StaticSafety, unit.One), slotText(b.SpeedShare, unit.Percent)}
}

func slotText(s param.Slot, u unit.Unit) string {
	if !s.Known {
		return "-"
	}
	return u.Text(s.Value)
}

// jsonBearing has its units in its keys; what is not known is null.
type jsonBearing struct {
	Name         string   `json:"name"`
	Size         string   `json:"size"`
	Along        *float64 `json:"along_n"`
	Across       *float64 `json:"across_n"`
	Axial        *float64 `json:"axial_n"`
	Equivalent   *float64 `json:"equivalent_n"`
	Life         *float64 `json:"life_h"`
	StaticSafety *float64 `json:"static_safety"`
	SpeedShare   *float64 `json:"speed_percent"`
}

func bearingsJSON(rows []bearing.Row) []jsonBearing {
	list := []jsonBearing{}
	for i := range rows {
		b := &rows[i]
		list = append(list, jsonBearing{Name: b.Name, Size: string(b.Size), Along: number(b.Along), Across: number(b.Across), Axial: number(b.Axial),
			Equivalent: slotJSON(b.Equivalent, unit.Newton), Life: slotJSON(b.Life, unit.Hour),
			StaticSafety: slotJSON(b.StaticSafety, unit.One), SpeedShare: slotJSON(b.SpeedShare, unit.Percent)})
	}
	return list
}

func slotJSON(s param.Slot, u unit.Unit) *float64 {
	if !s.Known {
		return nil
	}
	return number(u.From(s.Value))
}
