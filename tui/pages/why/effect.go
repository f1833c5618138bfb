package why

import (
	"strings"

	"backspan/model/explore"
	"backspan/model/reading"
	"backspan/model/unit"
	"backspan/tui/components/figure"
	"backspan/tui/theme"
)

// effect is what a step does, in a column of w cells.
func (m *Model) effect(e explore.Effect, w int) theme.Segment {
	s := m.th.Clean(m.change(e))
	switch {
	case e.Why != "":
		s = "none"
	case theme.Width(s) > w-3:
		s = strings.ReplaceAll(s, " ", "")
	}
	sign := m.sign(e)
	return theme.Segment{Ink: m.th.Merit(sign), Text: m.th.Right(s, w-2) + " " + m.th.MeritMark(sign)}
}

// change is an effect in words.
func (m *Model) change(e explore.Effect) string {
	if !e.Change.Known {
		return e.Why
	}
	x := e.Change.Value
	switch m.answer.Terms {
	case explore.Shares:
		return figure.Percent(x) + " %"
	case explore.Points:
		return figure.Percent(x) + " pt"
	}
	return figure.Step(x, m.unit(), m.currency())
}

func (m *Model) unit() unit.Unit {
	if c, ok := m.check(); ok {
		return c.Unit
	}
	r, _ := m.desk.Outcome().Reading(m.of.Key)
	return r.Unit
}

// sign says whether an effect is for the better.
func (m *Model) sign(e explore.Effect) int {
	x := e.Change.Value
	if !m.of.Check {
		r, _ := m.desk.Outcome().Reading(m.of.Key)
		switch r.Better {
		case reading.Neither:
			return 0
		case reading.Lower:
			x = -x
		}
	}
	switch {
	case x > 0:
		return 1
	case x < 0:
		return -1
	}
	return 0
}

// sentence is what a step does, "+1 % of Nominal pitch → -0.4 %".
func (m *Model) sentence(v explore.Mover) string {
	return "+" + v.Step + " of " + v.Label + " → " + m.change(v.More) + "; -" + v.Step + " → " + m.change(v.Less)
}
