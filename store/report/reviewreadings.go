package report

import (
	"slices"
	"strings"

	"backspan/model"
	"backspan/model/unit"
)

// readingRow is label, unit and a cell a variant: the figure and its
// difference from the reference.
func (r *Reviewed) readingRow(row model.ReadingRow) []string {
	ref := row.Cells[r.Compared.Reference]
	cells := []string{row.Label, ""}
	for i, q := range row.Cells {
		switch {
		case q.Key == "" || q.Absent:
			cells = append(cells, "-")
			continue
		case !q.Known():
			cells = append(cells, q.Text())
			continue
		}
		cells[1] = money(q.Unit.Symbol, q.Unit, r.Compared.Currency)
		text := q.Unit.Number(q.Value)
		if i != r.Compared.Reference && ref.Key != "" && !ref.Absent {
			text = strings.TrimRight(text+" "+ref.Change(q), " ")
		}
		cells = append(cells, text)
	}
	return cells
}

// readings are all of them: what differs, part by part, and apart the parts that
// not every variant has; then, shorter, what is alike, and what has no figure.
func (r *Reviewed) readings() []grid {
	alike := grid{title: "Readings in which the variants that have them do not differ", head: []string{"reading", "value"}, under: true, beside: true}
	all := grid{title: "All readings", figures: true, second: "unit", head: append([]string{"reading", "unit"}, r.variants()...),
		note: "With the difference from the reference. Below stand the parts that not every variant has, the readings that do not differ, and those without a figure."}
	var blank origins
	var parts []grid
	seen := map[string]bool{}
	for _, first := range r.Compared.Readings {
		part, _, _ := strings.Cut(first.Key, ".")
		if seen[part] {
			continue
		}
		seen[part] = true
		g := grid{title: partTitle(part), under: true, figures: true, second: "unit", head: append([]string{"reading", "unit"}, r.variants()...)}
		for _, row := range r.Compared.Readings {
			if in, _, _ := strings.Cut(row.Key, "."); in != part {
				continue
			}
			r.reasons(&blank, row)
			switch text, have := same(row); {
			case have == nil:
			case text != "":
				alike.rows = headed(alike.rows, partTitle(part))
				alike.rows = append(alike.rows, []string{row.Label, money(text, unitOf(row), r.Compared.Currency)})
			default:
				g.rows = append(g.rows, r.readingRow(row))
			}
		}
		switch few := withoutEmpty(g); {
		case len(few.rows) == 0:
		case len(few.head) == len(all.head):
			all.rows = append(append(all.rows, []string{few.title}), few.rows...)
		default:
			parts = append(parts, sparse(few)...)
		}
	}
	return append(slices.Insert(parts, 0, all), alike, grid{title: "Readings that are not rated, and why", under: true, beside: true, points: blank.points()})
}

// headed adds a heading for the rows to come, unless they stand under it already.
func headed(rows [][]string, heading string) [][]string {
	for i := len(rows) - 1; i >= 0; i-- {
		if len(rows[i]) == 1 {
			if rows[i][0] == heading {
				return rows
			}
			break
		}
	}
	return append(rows, []string{heading})
}

func (r *Reviewed) variants() []string {
	names := make([]string, len(r.Compared.Outcomes))
	for i, o := range r.Compared.Outcomes {
		names[i] = o.Variant
	}
	return names
}

// partTitle is the part that keys belong to, as a heading.
func partTitle(part string) string {
	if part == "" {
		return "Other"
	}
	return strings.ToUpper(part[:1]) + strings.ReplaceAll(part[1:], "_", " ")
}

// same is the one text that every variant with a figure shows; have are the
// variants that show any, nil when none does. A row that only some of the
// variants can tell is not the same.
func same(row model.ReadingRow) (text string, have []bool) {
	alike := true
	for i, q := range row.Cells {
		switch {
		case q.Key == "" || q.Absent:
			continue
		case !q.Known():
			alike = false
			continue
		case have == nil:
			have, text = make([]bool, len(row.Cells)), q.Text()
		}
		have[i] = true
		alike = alike && q.Text() == text
	}
	if !alike {
		text = ""
	}
	return text, have
}

func unitOf(row model.ReadingRow) unit.Unit {
	for _, q := range row.Cells {
		if q.Key != "" {
			return q.Unit
		}
	}
	return unit.One
}

// reasons add why variants have no figure.
func (r *Reviewed) reasons(to *origins, row model.ReadingRow) {
	for _, q := range row.Cells {
		if q.Key == "" || q.Absent || q.Known() {
			continue
		}
		have := make([]bool, len(row.Cells))
		for i, other := range row.Cells {
			have[i] = other.Key != "" && !other.Absent && other.Why == q.Why
		}
		label := row.Label
		if in := r.names(have); in != "all" {
			label += " (" + in + ")"
		}
		to.add(q.Why, label)
	}
}

// names tells variants by name, or that it is all of them.
func (r *Reviewed) names(have []bool) string {
	var in, out []string
	for i, yes := range have {
		if name := r.Compared.Outcomes[i].Variant; yes {
			in = append(in, name)
		} else {
			out = append(out, name)
		}
	}
	switch {
	case len(out) == 0:
		return "all"
	case len(out)*3 <= len(in):
		return "all but " + strings.Join(out, ", ")
	}
	return strings.Join(in, ", ")
}

// sparse takes variants that have less than half of a part's figures out of the
// table: the few that they have stand in one of their own.
func sparse(g grid) []grid {
	lacks := func(i int) bool {
		n := 0
		for _, r := range g.rows {
			if r[i] == "-" {
				n++
			}
		}
		return 2*n > len(g.rows)
	}
	var few []int
	for i := g.lead(); i < len(g.head); i++ {
		if lacks(i) {
			few = append(few, i)
		}
	}
	if len(few) == 0 {
		return []grid{g}
	}
	most, shared := g, g
	most.rows, shared.rows = nil, nil
	shared.title += ", where more variants have a figure"
	for _, r := range g.rows {
		if slices.ContainsFunc(few, func(i int) bool { return r[i] != "-" }) {
			shared.rows = append(shared.rows, r)
		} else {
			most.rows = append(most.rows, r)
		}
	}
	return slices.DeleteFunc([]grid{withoutEmpty(most), withoutEmpty(shared)}, func(g grid) bool { return len(g.rows) == 0 })
}

// withoutEmpty drops the variants that have nothing of a table.
func withoutEmpty(g grid) grid {
	keep := make([]bool, len(g.head))
	for i := range keep {
		keep[i] = i < g.lead() || slices.ContainsFunc(g.rows, func(r []string) bool { return r[i] != "-" })
	}
	kept := func(cells []string) []string {
		var out []string
		for i, c := range cells {
			if keep[i] {
				out = append(out, c)
			}
		}
		return out
	}
	for i, r := range g.rows {
		g.rows[i] = kept(r)
	}
	g.head = kept(g.head)
	return g
}
