// Package bench is the page on which one variant is worked on: variants and
// parts to choose from, the values of a part, and beside them what the model
// finds, at once.
package bench

import (
	"backspan/tui/components/checks"
	"backspan/tui/components/figure"
	"backspan/tui/components/form"
	"backspan/tui/components/line"
	"backspan/tui/components/list"
	"backspan/tui/components/readings"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// Pane is a part of the page that can have the focus.
type Pane int

// The panes, in the order in which Tab walks.
const (
	Variants Pane = iota
	Parts
	Form
	Readings
	Checks
	panes
)

// Model is the page.
type Model struct {
	th   *theme.Theme
	keys keymap.Map
	desk *desk.Desk

	focus    Pane
	w, h     int
	variants list.Model[int] // by index
	parts    list.Model[part]
	form     form.Model
	readings readings.Model
	checks   checks.Model
	naming   *line.Model // new name of the variant in hand, while it is typed
	problem  string      // why the name was refused
	notice   string      // for the root to show once
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map, d *desk.Desk) *Model {
	m := &Model{
		th: t, keys: k, desk: d, focus: Form,
		variants: list.New[int](t, k.Walk, "Variants", "none yet; a adds one"),
		parts:    list.New[part](t, k.Walk, "Parts", ""),
		form:     form.New(t, k),
		readings: readings.New(t, k.Walk),
		checks:   checks.New(t, k.Walk),
	}
	m.Refresh()
	m.parts.To(firstPart(d))
	m.Refresh()
	return m
}

// part is a section of what can be set: of a variant, or of all.
type part struct {
	shared  bool
	section string
}

// firstPart is where work begins: the first part after the variant's name.
func firstPart(d *desk.Desk) part {
	if secs := d.Sections(d.Selected); len(secs) > 1 {
		return part{section: secs[1].Key}
	}
	return part{}
}

// scope is what the part in hand belongs to, and its section.
func (m *Model) scope() (variant int, section string) {
	p, _ := m.parts.Key()
	if p.shared {
		return desk.Shared, p.section
	}
	return m.desk.Selected, p.section
}

// Refresh takes over what changed on the desk.
func (m *Model) Refresh() {
	m.refreshVariants()
	m.refreshParts()
	m.refreshForm()
	earlier, _ := m.desk.Earlier()
	facts := readings.Facts{Now: m.desk.Outcome(), Earlier: earlier, Currency: m.currency()}
	if m.desk.Study().ReferenceIndex() != m.desk.Selected {
		facts.Reference = m.desk.ReferenceOutcome()
	}
	m.readings.Set(facts)
	m.checks.Set(facts.Now.Checks, earlier.Checks, m.currency())
	m.Size(m.w, m.h)
}

func (m *Model) currency() string { return m.th.Clean(m.desk.Study().Currency) }

func (m *Model) refreshVariants() {
	s := m.desk.Study()
	items := make([]list.Item[int], len(s.Variants))
	for i := range s.Variants {
		items[i] = list.Item[int]{Key: i, Name: s.Variants[i].Name}
		if i == s.ReferenceIndex() {
			items[i].Word = "ref"
		}
		if worst, ok := figure.Foremost(m.desk.OutcomeOf(i).Checks); ok {
			items[i].Mark, items[i].Ink = m.th.Verdict(worst.Verdict)
		}
	}
	m.variants.Set(items)
	m.variants.To(m.desk.Selected)
}

func (m *Model) refreshParts() {
	var items []list.Item[part]
	if m.desk.Variant() != nil {
		items = append(items, list.Item[part]{Heading: true, Name: "of this variant"})
		for _, s := range m.desk.Sections(m.desk.Selected) {
			items = append(items, list.Item[part]{Key: part{false, s.Key}, Name: s.Label})
		}
	}
	items = append(items, list.Item[part]{Heading: true, Name: "of all variants"})
	for _, s := range m.desk.Sections(desk.Shared) {
		items = append(items, list.Item[part]{Key: part{true, s.Key}, Name: s.Label})
	}
	m.parts.Set(items)
}

func (m *Model) refreshForm() {
	variant, section := m.scope()
	var fields []form.Field
	title := ""
	for _, s := range m.desk.Sections(variant) {
		if s.Key != section {
			continue
		}
		title = s.Label
		for _, p := range s.Params {
			if !p.Shown() {
				continue
			}
			f := form.Field{Param: p, Path: s.Path(p), Words: p.Options}
			if variant == desk.Shared && f.Path == "reference" {
				f.Words = m.names()
			}
			fields = append(fields, f)
		}
	}
	m.compare(fields, variant)
	if variant != desk.Shared {
		if v := m.desk.Variant(); v != nil && section != "" {
			title += " of " + v.Name
		}
	}
	m.form.Currency = m.currency()
	m.form.Set(title, fields)
}

func (m *Model) names() []string {
	var names []string
	for i := range m.desk.Study().Variants {
		names = append(names, m.desk.Study().Variants[i].Name)
	}
	return names
}

// compare notes for each field what the reference has, when that differs.
func (m *Model) compare(fields []form.Field, variant int) {
	ref := m.desk.Study().ReferenceIndex()
	if variant == desk.Shared || ref < 0 || ref == variant {
		return
	}
	theirs := map[string]int{}
	secs := m.desk.Sections(ref)
	for i, s := range secs {
		theirs[s.Key] = i
	}
	_, section := m.scope()
	i, ok := theirs[section]
	if !ok || section == "" {
		return
	}
	m.form.Against = m.desk.Study().Variants[ref].Name
	for j := range fields {
		for _, q := range secs[i].Params {
			if q.Key == fields[j].Param.Key && q.Shown() && !q.Same(fields[j].Param) {
				fields[j].Reference = figure.Money(q.Show(), q.Unit, m.currency())
			}
		}
	}
}

// target lets the form set values of the part in hand.
type target struct {
	desk    *desk.Desk
	variant int
}

func (t target) Set(path, text string) error   { return t.desk.Set(t.variant, path, text) }
func (t target) Step(path string, n int) error { return t.desk.Step(t.variant, path, n) }
func (m *Model) target() form.Target           { v, _ := m.scope(); return target{m.desk, v} }

// Focus is the pane that takes the keys.
func (m *Model) Focus() Pane { return m.focus }

// Path is the path of the parameter under the cursor of the form.
func (m *Model) Path() string { return m.form.Path() }

// Busy reports whether all keys belong to something being typed or chosen.
func (m *Model) Busy() bool { return m.naming != nil || m.form.Busy() }
