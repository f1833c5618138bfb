package form

import (
	"fmt"
	"strings"

	"backspan/model/param"
	"backspan/tui/components/figure"
	"backspan/tui/theme"
)

// facts is what the declaration says of a parameter, as sentences.
func (m *Model) facts(f Field, w int) []string {
	p := f.Param
	var facts []string
	if m.state == typing {
		facts = append(facts, m.howToType(p))
	}
	switch {
	case numeric(p):
		facts = append(facts, m.allowed(p, w-4)...)
	case p.Kind == param.KindTable && m.state == resting:
		if s := p.Editable(); s != "" {
			facts = append(facts, s)
		}
		facts = append(facts, p.Range())
	case p.Kind == param.KindText:
		if p.Editable() != "" && m.state == resting {
			facts = append(facts, p.Editable())
		}
	case p.Kind == param.KindChoice:
		facts = append(facts, p.Range())
	}
	if p.Guidance != "" {
		facts = append(facts, p.Guidance)
	}
	if p.Origin != "" {
		facts = append(facts, "default: "+p.Origin)
	}
	return facts
}

// allowed tells the range in words and, unless the row has it, as a gauge: in
// one line where that fits into w cells.
func (m *Model) allowed(p param.Param, w int) []string {
	usual := ""
	if p.TypicalMax > p.TypicalMin {
		usual = fmt.Sprintf("; usual %s to %s", short(p.TypicalMin), short(p.TypicalMax))
		if si, ok := p.Number(); ok && outside(p.Unit.From(si), p.TypicalMin, p.TypicalMax) {
			usual += ", this is outside"
		}
	}
	words := "allowed " + figure.Money(p.Range(), p.Unit, m.Currency) + usual
	if _, _, inRow := columns(w + 4); inRow > 0 || m.gauge(p, 9) == "" {
		return []string{words}
	}
	ends := theme.Width(m.th.Clean(words)) - len("to")
	if room := min(w-ends, 24); room >= 9 {
		return []string{strings.Replace(words, " to ", " "+m.gauge(p, room)+" ", 1)}
	}
	return []string{words, m.gauge(p, min(w, 24))}
}

func (m *Model) howToType(p param.Param) string {
	how := "Enter accepts, Esc leaves it as it was"
	switch {
	case p.Kind == param.KindTable:
		how += "; a blank between columns, a semicolon begins a row; ctrl+u clears"
	case p.Kind == param.KindText && p.Key == "notes":
		how += `; \n starts a new line`
	case p.Optional:
		how += "; empty means not given"
	}
	if m.line.Whole() {
		how += "; typing replaces the whole"
	}
	return how
}

func outside(x, lo, hi float64) bool {
	const rounding = 1e-9
	return x < lo-rounding*(1+abs(lo)) || x > hi+rounding*(1+abs(hi))
}

func abs(x float64) float64 { return max(x, -x) }

func short(x float64) string { return fmt.Sprintf("%.6g", x) }
