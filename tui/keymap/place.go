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

	hints hints // for the footer, most wanted first
	kept  hints // that the footer shows before any other hint but the first
}

func (m Map) walk() []key.Binding {
	w := m.Walk
	return []key.Binding{w.Up, w.Down, w.HalfUp, w.HalfDown, w.Top, w.Bottom}
}

func (m Map) everywhere() []key.Binding {
	e := m.Everywhere
	return []key.Binding{e.Find, e.Why, e.Copy, e.SideBySide, e.Tables, e.Drawing, e.Curves, e.Explore, e.Weights, e.Undo, e.Redo, e.History, e.Decisions, e.Save, e.SaveAs, e.Studies, e.NewStudy, e.Bench,
		e.NextVariant, e.PreviousVariant, e.Keys, e.Mouse, e.Suspend, e.Quit}
}

func (m Map) panes() []key.Binding {
	p := m.Panes
	return append([]key.Binding{p.Next, p.Previous, p.NextPart, p.PreviousPart, p.Moved}, append(m.walk(), m.everywhere()...)...)
}

// AtVariants is the list of variants.
func (m Map) AtVariants() Place {
	v := m.Variants
	return Place{
		Name: "list of variants",
		Own:  []key.Binding{v.Into, v.Duplicate, v.Add, v.Rename, v.Delete, v.Reference, v.MoveUp, v.MoveDown},
		Too:  m.panes(),
		hints: hints{phrase(v.Into), phrase(v.Duplicate), phrase(v.Rename), phrase(v.Delete), phrase(v.Add), phrase(v.Reference),
			pair(v.MoveUp, v.MoveDown, "move")},
		kept: m.onBench(),
	}
}

// AtParts is the list of parts.
func (m Map) AtParts() Place {
	return Place{
		Name: "list of parts", Own: []key.Binding{m.Parts.Into, m.Parts.Back}, Too: m.panes(),
		hints: hints{phrase(m.Parts.Into), phrase(m.Parts.Back), m.variantHint(), phrase(m.Everywhere.Studies)}, kept: m.onBench(),
	}
}

// AtForm is the values of a part.
func (m Map) AtForm() Place {
	f := m.Form
	return Place{
		Name: "values of a part", Own: []key.Binding{f.Edit, f.Less, f.More, f.MuchLess, f.MuchMore, f.Back}, Too: m.panes(),
		hints: hints{phrase(f.Edit), arrows + " " + pair(f.MuchLess, f.MuchMore, "step"), m.partHint(), m.variantHint(),
			phrase(m.Everywhere.Find), phrase(m.Panes.Moved), phrase(f.Back), phrase(m.Everywhere.Studies)},
		kept: m.onBench(),
	}
}

// AtReadings is the readings of the variant in hand.
func (m Map) AtReadings() Place {
	return Place{
		Name: "readings", Own: []key.Binding{m.Everywhere.Why, m.Panes.Moved, m.Panes.NextPart, m.Panes.PreviousPart, m.Form.Back}, Too: m.panes(),
		hints: hints{phrase(m.Panes.Moved), phrase(m.Everywhere.Why), phrase(m.Everywhere.Find), m.partHint(), phrase(m.Form.Back), m.variantHint()}, kept: m.onBench(),
	}
}

// AtChecks is the checks of the variant in hand.
func (m Map) AtChecks() Place {
	return Place{Name: "checks", Own: []key.Binding{m.Everywhere.Why, m.Form.Back}, Too: m.panes(),
		hints: hints{phrase(m.Form.Back), phrase(m.Everywhere.Why), phrase(m.Everywhere.Find), m.variantHint(), m.partHint()}, kept: m.onBench()}
}

// AtEditor is a text being typed.
func (m Map) AtEditor() Place {
	e := m.Editor
	own := []key.Binding{e.Accept, e.Leave, e.Clear, e.Start, e.End}
	return Place{Name: "typing", Own: own, hints: phrases(own)}
}

// AtPicker is a word being chosen.
func (m Map) AtPicker() Place {
	p := m.Picker
	own := []key.Binding{p.Accept, p.Leave, p.Up, p.Down}
	return Place{Name: "choosing", Own: own, hints: phrases(own)}
}

// AtSideBySide is the comparison.
func (m Map) AtSideBySide() Place {
	s, e := m.SideBySide, m.Everywhere
	return Place{
		Name: "side by side",
		Own:  []key.Binding{e.Why, s.Left, s.Right, m.Panes.NextPart, m.Panes.PreviousPart, s.Differences, s.Fold, s.FoldAll, s.Open, s.Back},
		Too:  append(m.walk(), m.everywhere()...),
		hints: hints{arrows + " variant", phrase(s.Differences), phrase(e.Why), pair(s.Fold, s.FoldAll, "fold"), phrase(s.Open),
			pair(m.Panes.NextPart, m.Panes.PreviousPart, "group"), phrase(s.Back), phrase(e.Studies)},
		kept: phrases([]key.Binding{e.Save, e.Undo, e.Quit, e.Bench}),
	}
}

// AtTables is a variant's tables.
func (m Map) AtTables() Place {
	t, e := m.Tables, m.Everywhere
	return Place{
		Name: "tables", Own: []key.Binding{t.Next, t.Previous, t.Left, t.Right, t.Back}, Too: append(m.walk(), m.everywhere()...),
		hints: hints{phrase(t.Next), arrows + " sideways", pair(m.Walk.Up, m.Walk.Down, "more"), m.variantHint(), phrase(t.Back), phrase(e.SideBySide)},
		kept:  phrases([]key.Binding{e.Save, e.Undo, e.Quit, e.Bench}),
	}
}

// AtDrawing is the drawing of a machine.
func (m Map) AtDrawing() Place {
	d, e := m.Drawing, m.Everywhere
	return Place{
		Name: "drawing", Own: []key.Binding{d.View, d.Zoom, d.Back}, Too: m.everywhere(),
		hints: hints{phrase(d.View), phrase(d.Zoom), m.variantHint(), phrase(e.Curves), phrase(d.Back)},
		kept:  phrases([]key.Binding{e.Save, e.Undo, e.Quit, e.Bench}),
	}
}

// AtCurves is the charts.
func (m Map) AtCurves() Place {
	c, e := m.Curves, m.Everywhere
	return Place{
		Name: "curves", Own: []key.Binding{c.Next, c.Previous, c.Left, c.Right, c.FarLeft, c.FarRight, c.All, c.Back},
		Too:   append([]key.Binding{m.Walk.Up, m.Walk.Down}, m.everywhere()...),
		hints: hints{phrase(c.Next), arrows + " " + pair(c.FarLeft, c.FarRight, "reading line"), phrase(c.All), m.variantHint(), phrase(c.Back)},
		kept:  phrases([]key.Binding{e.Save, e.Undo, e.Quit, e.Bench}),
	}
}

// AtStudies is the list of studies.
func (m Map) AtStudies() Place {
	s := m.Studies
	own := []key.Binding{s.Open, s.Again, m.Everywhere.NewStudy, s.Back}
	return Place{Name: "studies", Own: own, Too: append(m.walk(), m.Everywhere.Keys, m.Everywhere.Quit),
		hints: phrases(own), kept: phrases([]key.Binding{m.Everywhere.Quit})}
}

// AtKeys is the sheets of help.
func (m Map) AtKeys() Place {
	e, h := m.Everywhere, m.Sheets
	return Place{Name: "help", Own: append([]key.Binding{h.Next, h.Previous, h.Forth, h.Before, m.Back}, m.walk()...),
		Too:   []key.Binding{e.Bench, e.SideBySide, e.Studies, e.Quit},
		hints: hints{phrase(m.Back), phrase(h.Next), arrows + " screen", pair(m.Walk.Up, m.Walk.Down, "more")}, kept: phrases([]key.Binding{e.Quit})}
}

// AtWhy is what moves a figure, and what cures a check.
func (m Map) AtWhy() Place {
	y, e := m.Why, m.Everywhere
	return Place{Name: "why", Own: []key.Binding{y.Go, y.Try, e.Copy, y.Back}, Too: append(m.walk(), m.everywhere()...),
		hints: hints{phrase(y.Go), phrase(y.Back), phrase(y.Try), phrase(e.Copy), m.variantHint(), phrase(e.Find)},
		kept:  phrases([]key.Binding{e.Undo, e.Quit})}
}

// AtHang is what hangs on a value.
func (m Map) AtHang() Place {
	y, e := m.Hang, m.Everywhere
	return Place{Name: "what hangs on it", Own: []key.Binding{y.Go, y.Back}, Too: append(m.walk(), m.everywhere()...),
		hints: hints{phrase(y.Go), phrase(y.Back), phrase(e.Copy), m.variantHint(), phrase(e.Find)},
		kept:  phrases([]key.Binding{e.Undo, e.Quit})}
}

// AtWeights is the order of the variants by weights.
func (m Map) AtWeights() Place {
	y, e := m.Weights, m.Everywhere
	return Place{
		Name: "weights", Own: []key.Binding{y.Figure, y.More, y.Less, m.Panes.NextPart, m.Panes.PreviousPart, y.Counted, y.Back},
		Too:   append(m.walk(), m.everywhere()...),
		hints: hints{phrase(y.Figure), arrows + " more or less", phrase(y.Counted), phrase(y.Back), m.partHint(), phrase(e.SideBySide), phrase(e.Copy)},
		kept:  phrases([]key.Binding{e.Quit, e.Bench}),
	}
}

// AtHistory is the list of edits.
func (m Map) AtHistory() Place {
	y, e := m.History, m.Everywhere
	return Place{Name: "history", Own: []key.Binding{y.Go, y.Recall, y.Back}, Too: append(m.walk(), m.everywhere()...),
		hints: hints{phrase(y.Go), phrase(y.Recall), pair(e.Undo, e.Redo, "undo, redo"), phrase(y.Back), m.variantHint()},
		kept:  phrases([]key.Binding{e.Save, e.Quit, e.Bench})}
}

// AtDecisions is the study's log.
func (m Map) AtDecisions() Place {
	y, e := m.Decisions, m.Everywhere
	return Place{Name: "decisions", Own: []key.Binding{y.Add, y.Reword, y.Strike, y.Back}, Too: append(m.walk(), m.everywhere()...),
		hints: hints{phrase(y.Add), phrase(y.Reword), phrase(y.Strike), phrase(y.Back), phrase(e.Copy)},
		kept:  phrases([]key.Binding{e.Undo, e.Save, e.Quit, e.Bench})}
}

// AtDifferences is the list of differences; what it is asked for waits.
func (m Map) AtDifferences() Place {
	own := append([]key.Binding{m.Differences.Back}, m.walk()...)
	return Place{Name: "differences", Own: own, hints: append(hints{phrase(m.Differences.Back), pair(m.Walk.Up, m.Walk.Down, "more")}, phrases(own[3:])...)}
}

// AtQuestionForm is the fields of an exploration.
func (m Map) AtQuestionForm() Place {
	y, e := m.Explore, m.Everywhere
	return Place{
		Name: "question of an exploration", Own: []key.Binding{y.Set, y.Ask, y.Next, y.Previous, y.Left, y.Right, y.Remove, y.Usual, y.Turn, y.Back},
		Too:   append(m.walk(), m.everywhere()...),
		hints: hints{phrase(y.Set), phrase(y.Ask), arrows + " field", phrase(y.Turn), phrase(y.Remove), phrase(y.Usual), m.variantHint()},
		kept:  hints{y.Next.Help().Key + " next question", phrase(y.Back), phrase(e.Quit)},
	}
}

// AtChooser is what a field of a question is about being chosen.
func (m Map) AtChooser() Place {
	f := m.Find
	own := []key.Binding{m.Picker.Accept, m.Picker.Leave, f.Down, f.Up}
	return Place{Name: "choosing by letters", Own: own, hints: append(hints{"letters of its name"}, phrases(own)...)}
}

// AtUnanswered is where the answer of an exploration will stand.
func (m Map) AtUnanswered() Place {
	y, e := m.Explore, m.Everywhere
	return Place{
		Name: "exploration without an answer", Own: []key.Binding{y.Back, y.Ask, y.Turn, y.Next, y.Previous}, Too: m.everywhere(),
		hints: hints{phrase(y.Back), phrase(y.Ask), phrase(y.Turn), m.variantHint()},
		kept:  hints{y.Next.Help().Key + " next question", phrase(e.Undo), phrase(e.Quit)},
	}
}

// AtAnswer is what an exploration found. Only a design can be taken.
func (m Map) AtAnswer(designs bool) Place {
	y, e := m.Explore, m.Everywhere
	p := Place{
		Name: "answer of an exploration", Own: []key.Binding{y.NextChart, y.PreviousChart, y.Ask, y.Next, y.Previous, y.Turn, y.Back},
		Too:   append(m.walk(), m.everywhere()...),
		hints: hints{pair(y.PreviousChart, y.NextChart, "chart"), phrase(e.Copy), phrase(y.Ask), m.variantHint()},
		kept:  hints{y.Next.Help().Key + " next question", phrase(y.Back), phrase(e.Undo), phrase(e.Quit)},
	}
	if designs {
		p.Own = append([]key.Binding{y.Take}, p.Own...)
		p.hints = append(hints{phrase(y.Take)}, p.hints...)
	}
	return p
}

// AtFind is something being looked for.
func (m Map) AtFind() Place {
	f := m.Find
	own := []key.Binding{f.Go, f.Leave, f.Down, f.Up}
	return Place{Name: "find", Own: own, hints: append(hints{"letters of what you look for"}, phrases(own)...)}
}

// AtQuestion is a question that waits for an answer.
func (m Map) AtQuestion() Place {
	q := m.Question
	own := []key.Binding{q.Answer, q.Next, q.Previous, q.Leave}
	return Place{Name: "question", Own: own, hints: phrases(own)}
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
