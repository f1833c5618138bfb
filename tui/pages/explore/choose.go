package explore

import (
	"backspan/model/param"
	"backspan/tui/components/figure"
	"backspan/tui/components/finder"
	"backspan/tui/components/readings"
	"backspan/tui/desk"
)

// offer makes the list from which the subject of the field under the cursor is
// chosen.
func (m *Model) offer() {
	f := m.form()
	from := traits[f.here().role].from
	f.keys = nil
	var items []finder.Item
	put := func(it finder.Item) {
		items = append(items, it)
		f.keys = append(f.keys, it.Key)
	}
	m.offerParameters("variant", m.desk.Selected, from, put)
	m.offerParameters("all variants", desk.Shared, from, put)
	if from == figures || from == quantities {
		m.offerReadings(from, put)
	}
	f.finder = finder.New(m.th, m.keys.Find, from.words(), items, true)
}

func (s source) words() string {
	switch s {
	case figures:
		return "a reading"
	case quantities:
		return "a parameter or a reading"
	default:
		return "a parameter"
	}
}

func (m *Model) offerParameters(kind string, variant int, from source, put func(finder.Item)) {
	for _, s := range m.desk.Sections(variant) {
		for _, p := range s.Params {
			if p.Shown() && from.turnable(p.Kind) && !blank(p) {
				put(finder.Item{Kind: kind, Label: p.Label, Part: s.Label, Key: s.Path(p), Value: figure.Money(p.Show(), p.Unit, m.desk.Study().Currency)})
			}
		}
	}
}

// blank reports whether a choice has nothing to choose from, as the names of
// the variants.
func blank(p param.Param) bool { return p.Kind == param.KindChoice && len(p.Options) == 0 }

func (m *Model) offerReadings(from source, put func(finder.Item)) {
	for _, r := range m.desk.Outcome().Readings {
		if !r.Absent && (from == figures || r.Known()) {
			put(finder.Item{Kind: "reading", Label: r.Label, Part: readings.Part(r.Key), Key: r.Key, Value: figure.Text(r, m.desk.Study().Currency)})
		}
	}
}
