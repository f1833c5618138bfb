package keymap

import (
	"slices"
	"strings"

	"github.com/charmbracelet/bubbles/key"
)

// Place is somewhere a person can stand, with the keys that work there.
type Place struct {
	Name string
	Own  []key.Binding // most wanted first
	Too  []key.Binding // work here and elsewhere
}

func (m Map) walk() []key.Binding {
	w := m.Walk
	return []key.Binding{w.Up, w.Down, w.HalfUp, w.HalfDown, w.Top, w.Bottom}
}

func (m Map) everywhere() []key.Binding {
	e := m.Everywhere
	return []key.Binding{e.SideBySide, e.Undo, e.Redo, e.Save, e.SaveAs, e.Studies, e.NewStudy, e.Bench,
		e.NextVariant, e.PreviousVariant, e.Keys, e.Quit}
}

func (m Map) panes() []key.Binding {
	p := m.Panes
	return append([]key.Binding{p.Next, p.Previous, p.NextPart, p.PreviousPart, p.Moved}, append(m.walk(), m.everywhere()...)...)
}

// AtVariants is the list of variants.
func (m Map) AtVariants() Place {
	v := m.Variants
	return Place{"list of variants", []key.Binding{v.Into, v.Duplicate, v.Add, v.Rename, v.Delete, v.Reference, v.MoveUp, v.MoveDown}, m.panes()}
}

// AtParts is the list of parts.
func (m Map) AtParts() Place {
	return Place{"list of parts", []key.Binding{m.Parts.Into, m.Parts.Back}, m.panes()}
}

// AtForm is the values of a part.
func (m Map) AtForm() Place {
	f := m.Form
	return Place{"values of a part", []key.Binding{f.Edit, f.Less, f.More, f.MuchLess, f.MuchMore, f.Back}, m.panes()}
}

// AtReadings is the readings of the variant in hand.
func (m Map) AtReadings() Place {
	return Place{"readings", []key.Binding{m.Panes.Moved, m.Panes.NextPart, m.Panes.PreviousPart, m.Form.Back}, m.panes()}
}

// AtChecks is the checks of the variant in hand.
func (m Map) AtChecks() Place { return Place{"checks", []key.Binding{m.Form.Back}, m.panes()} }

// AtEditor is a text being typed.
func (m Map) AtEditor() Place {
	e := m.Editor
	return Place{"typing", []key.Binding{e.Accept, e.Leave, e.Clear, e.Start, e.End}, nil}
}

// AtPicker is a word being chosen.
func (m Map) AtPicker() Place {
	p := m.Picker
	return Place{"choosing", []key.Binding{p.Accept, p.Leave, p.Up, p.Down}, nil}
}

// AtSideBySide is the comparison.
func (m Map) AtSideBySide() Place {
	s := m.SideBySide
	return Place{"side by side", []key.Binding{s.Left, s.Right, m.Panes.NextPart, m.Panes.PreviousPart, s.Differences, s.Open, s.Back}, append(m.walk(), m.everywhere()...)}
}

// AtStudies is the list of studies.
func (m Map) AtStudies() Place {
	s := m.Studies
	return Place{"studies", []key.Binding{s.Open, s.Again, m.Everywhere.NewStudy, s.Back}, append(m.walk(), m.Everywhere.Keys, m.Everywhere.Quit)}
}

// AtKeys is the page of keys.
func (m Map) AtKeys() Place {
	return Place{"keys", append([]key.Binding{m.Back}, m.walk()...),
		[]key.Binding{m.Everywhere.Bench, m.Everywhere.SideBySide, m.Everywhere.Studies, m.Everywhere.Quit}}
}

// AtQuestion is a question that waits for an answer.
func (m Map) AtQuestion() Place {
	q := m.Question
	return Place{"question", []key.Binding{q.Answer, q.Next, q.Previous, q.Leave}, nil}
}

// All lists a place's keys once each, its own first.
func (p Place) All() []key.Binding {
	all := append([]key.Binding{}, p.Own...)
	for _, k := range p.Too {
		if !slices.ContainsFunc(all, func(o key.Binding) bool { return o.Help() == k.Help() }) {
			all = append(all, k)
		}
	}
	return all
}

// Footer is as many of the place's keys as fit in w cells, whole ones only.
// The last is always where to find the rest.
func (p Place) Footer(w int, more key.Binding) string {
	const gap = "   "
	last := ""
	if p.Too != nil {
		last = phrase(more)
	}
	var b strings.Builder
	for _, k := range p.All() {
		if k.Help() == more.Help() {
			continue
		}
		s := phrase(k)
		room := w - b.Len() - len(last)
		if b.Len() > 0 || last != "" {
			room -= 2 * len(gap)
		}
		if len(s) > room {
			break
		}
		if b.Len() > 0 {
			b.WriteString(gap)
		}
		b.WriteString(s)
	}
	if last != "" {
		if b.Len() > 0 {
			b.WriteString(gap)
		}
		b.WriteString(last)
	}
	return b.String()
}

// Spelt lists a binding's keys as a person reads them, the usual one first.
func Spelt(k key.Binding) string {
	names := make([]string, len(k.Keys()))
	for i, name := range k.Keys() {
		if name == "pgdown" {
			name = "pgdn"
		}
		names[i] = name
	}
	return strings.Join(names, " or ")
}

func phrase(k key.Binding) string { return k.Help().Key + " " + k.Help().Desc }
