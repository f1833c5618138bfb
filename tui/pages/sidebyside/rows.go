package sidebyside

import (
	"backspan/model"
	"backspan/model/reading"
	"backspan/model/unit"
	"backspan/tui/components/figure"
	"backspan/tui/components/readings"
	"backspan/tui/theme"
)

// row is one line of the page. A heading has no key until it is folded, so that
// the cursor rests on it only then.
type row struct {
	key     string
	group   string // of a heading, by what it is known
	label   string
	unit    string
	cells   []cell
	differs bool
	bars    bool // cells show how large the difference is
	figures bool // cells hold a figure, a difference and a mark
}

// cell is what one variant has in a row.
type cell struct {
	text   string  // right of the mark, the figure or words
	change string  // difference from the reference
	share  float64 // of the largest difference in the row
	mark   string  // best or worst of the row, or the shape of a verdict
	ink    theme.Ink
	facts  []string // said when the cell is under the cursor
}

// lay turns a comparison into rows, what differs on top.
func (m *Model) lay(c model.Comparison) []row {
	var settings, same, results []row
	for _, p := range c.Parameters {
		r := m.parameter(c, p)
		if r.differs {
			settings = append(settings, r)
		} else {
			same = append(same, r)
		}
	}
	rows := under("Set differently", settings, "every variant is set the same")
	part := ""
	for _, q := range byPart(c.Readings) {
		r := m.reading(c, q)
		if m.differences && !r.differs {
			continue
		}
		if p := readings.Part(q.Key); p != part {
			part = p
			results = append(results, row{group: "reading " + p, label: "  " + p})
		}
		results = append(results, r)
	}
	rows = append(rows, under("Readings, with the difference from the reference", results, "no reading differs")...)
	rows = append(rows, under("Why it feels different, against the reference", m.feel(c), "")...)
	rows = append(rows, under("Checks", m.checks(c), "no check differs")...)
	if !m.differences {
		rows = append(rows, under("Set the same", same, "")...)
	}
	return rows
}

// under puts a heading over rows, or says that there are none.
func under(title string, rows []row, none string) []row {
	if len(rows) == 0 {
		if none == "" {
			return nil
		}
		return []row{{group: title, label: title + ": " + none}}
	}
	return append([]row{{group: title, label: title}}, rows...)
}

// byPart gathers the rows of one part, parts in the order of their first row.
func byPart(rows []model.ReadingRow) []model.ReadingRow {
	var order []string
	parts := map[string][]model.ReadingRow{}
	for _, r := range rows {
		p := readings.Part(r.Key)
		if _, ok := parts[p]; !ok {
			order = append(order, p)
		}
		parts[p] = append(parts[p], r)
	}
	var out []model.ReadingRow
	for _, p := range order {
		out = append(out, parts[p]...)
	}
	return out
}

func (m *Model) parameter(c model.Comparison, p model.ParameterRow) row {
	r := row{key: "set/" + p.Path, label: p.Label, differs: p.Differs}
	for _, s := range p.Cells {
		s = figure.InCurrency(s, c.Currency)
		full := s
		if s == "" {
			s, full = "-", "does not apply"
		}
		r.cells = append(r.cells, cell{text: m.th.Clean(s), facts: []string{p.Section + ", " + p.Label + ": " + full}})
	}
	return r
}

func (m *Model) reading(c model.Comparison, q model.ReadingRow) row {
	r := row{key: "reading/" + q.Key, label: q.Label, figures: true}
	best, worst := extremes(q.Cells)
	for i, v := range q.Cells {
		k := cell{text: "-", facts: []string{q.Label + ": does not apply"}}
		if v.Key != "" {
			if r.unit == "" {
				r.unit = m.th.Clean(figure.Money(v.Unit.Symbol, v.Unit, c.Currency))
			}
			k = m.readingCell(c, q, v)
		}
		switch {
		case i != c.Reference && k.change != "":
			r.differs = true
		case v.Key == "" != (q.Cells[c.Reference].Key == ""):
			r.differs = true
		}
		if v.Key != "" && v.Known() && best != worst {
			switch v.Value {
			case best:
				k.mark, k.ink = m.th.Marks.Better, m.th.Better
			case worst:
				k.mark, k.ink = m.th.Marks.Worse, m.th.Worse
			}
		}
		r.cells = append(r.cells, k)
	}
	r.bars = scale(&r, c.Reference, q.Cells)
	return r
}

func (m *Model) readingCell(c model.Comparison, q model.ReadingRow, v reading.Reading) cell {
	k := cell{text: v.Text()}
	head := q.Label + ": " + figure.Text(v, c.Currency)
	if v.Known() {
		k.text = v.Unit.Number(v.Value)
		diff := figure.Between(q.Cells[c.Reference], v)
		k.change = diff.Text
		if word := theme.MeritWord(diff.Sign); word != "" {
			head += ", " + word + " than the reference"
		}
	} else {
		head += ": " + v.Why
	}
	k.facts = []string{head}
	if v.Method != "" {
		k.facts = append(k.facts, "how: "+v.Method)
	}
	if v.Origin != "" {
		k.facts = append(k.facts, "source: "+v.Origin)
	}
	return k
}

// extremes are the best and the worst value of a row; equal when the row has
// no better or worse.
func extremes(cells []reading.Reading) (best, worst float64) {
	var b, w reading.Reading
	for _, r := range cells {
		if r.Key == "" || !r.Known() || r.Better == reading.Neither {
			continue
		}
		if b.Key == "" {
			b, w = r, r
		}
		if b.Improves(r) > 0 {
			b = r
		}
		if w.Improves(r) < 0 {
			w = r
		}
	}
	return b.Value, w.Value
}

// feel splits the difference in hip moment from the reference.
func (m *Model) feel(c model.Comparison) []row {
	mass := row{key: "feel/mass", label: "Hip moment, from mass", unit: m.th.Clean(unit.NewtonMetre.Symbol)}
	depth := row{key: "feel/depth", label: "Hip moment, from depth", unit: mass.unit}
	for i, f := range c.Feel {
		if i == c.Reference {
			ref := cell{text: "reference", facts: []string{"the others are compared with this variant"}}
			mass.cells, depth.cells = append(mass.cells, ref), append(depth.cells, ref)
			continue
		}
		mass.differs, depth.differs = mass.differs || f.FromMass != 0, depth.differs || f.FromDepth != 0
		mass.cells = append(mass.cells, share(f.FromMass, f, "because the machine's mass differs"))
		depth.cells = append(depth.cells, share(f.FromDepth, f, "because its mass hangs at another depth"))
	}
	if len(c.Feel) < 2 {
		return nil
	}
	return []row{mass, depth}
}

func share(x float64, f model.Feel, why string) cell {
	if !f.Known {
		return cell{text: "-", facts: []string{"cannot be told: one of the two machines could not be built"}}
	}
	u := unit.NewtonMetre
	like := max(f.FromMass, -f.FromMass, f.FromDepth, -f.FromDepth, 1)
	d := u.Delta(x, like)
	return cell{text: d, facts: []string{
		d + " " + u.Symbol + " on the hips against the reference, upright, " + why,
		"the two shares sum to " + u.Delta(f.FromMass+f.FromDepth, like) + " " + u.Symbol}}
}

func (m *Model) checks(c model.Comparison) []row {
	var rows []row
	for _, q := range c.Checks {
		r := row{key: "check/" + q.Key, label: q.Label, figures: true}
		for _, v := range q.Cells {
			k := cell{text: "-", facts: []string{q.Label + ": does not apply"}}
			if v.Key != "" {
				k = m.checkCell(c, v)
			}
			r.differs = r.differs || len(r.cells) > 0 && k.text != r.cells[0].text
			r.cells = append(r.cells, k)
		}
		if r.differs || !m.differences {
			rows = append(rows, r)
		}
	}
	return rows
}

func (m *Model) checkCell(c model.Comparison, v reading.Check) cell {
	k := cell{text: string(v.Verdict), change: v.MarginText()}
	k.mark, k.ink = m.th.Verdict(v.Verdict)
	head := v.Label + " " + string(v.Verdict)
	switch {
	case v.Valued:
		head += ": " + figure.Limit(v, false, c.Currency)
	case v.Why != "":
		head += ": " + v.Why
	}
	k.facts = []string{head}
	if v.Cure != "" {
		k.facts = append(k.facts, "what helps: "+v.Cure)
	}
	if v.Origin != "" {
		k.facts = append(k.facts, "limit from: "+v.Origin)
	}
	return k
}
