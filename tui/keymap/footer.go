package keymap

import (
	"strings"

	"github.com/charmbracelet/bubbles/key"
)

// hints are phrases such as "u undo".
type hints []string

// arrows stands for the left and the right arrow; ASCII terminals spell it.
const arrows = "← →"

func phrase(k key.Binding) string { return k.Help().Key + " " + k.Help().Desc }

// pair is one hint for two keys that do the same this way and that.
func pair(a, b key.Binding, desc string) string {
	return a.Help().Key + " " + b.Help().Key + " " + desc
}

func phrases(ks []key.Binding) hints {
	h := make(hints, len(ks))
	for i, k := range ks {
		h[i] = phrase(k)
	}
	return h
}

func (m Map) partHint() string { return pair(m.Panes.PreviousPart, m.Panes.NextPart, "part") }

func (m Map) variantHint() string {
	return pair(m.Everywhere.PreviousVariant, m.Everywhere.NextVariant, "variant")
}

// onBench is what must be in sight wherever on the bench a person stands.
func (m Map) onBench() hints {
	e := m.Everywhere
	return hints{phrase(m.Panes.Next), phrase(e.Save), phrase(e.Undo), phrase(e.Quit), phrase(e.SideBySide)}
}

// Footer is as many of the place's hints as fit in w cells, whole ones only:
// the first of its own, those that are kept, then the rest of its own. The
// last is always where to find all keys, where that works.
func (p Place) Footer(w int, more key.Binding) string {
	const gap = "  "
	var own, kept hints
	room := w
	fit := func(to *hints, h string) {
		if n := len([]rune(h)) + len(gap); n <= room+len(gap) {
			*to = append(*to, h)
			room -= n
		}
	}
	var last hints
	if p.Too != nil {
		fit(&last, phrase(more))
	}
	fit(&own, p.hints[0])
	for _, h := range p.kept {
		fit(&kept, h)
	}
	for _, h := range p.hints[1:] {
		fit(&own, h)
	}
	return strings.Join(append(append(own, kept...), last...), gap)
}
