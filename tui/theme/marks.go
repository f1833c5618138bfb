package theme

import (
	"backspan/model/reading"
)

// Marks are the shapes, each one cell wide.
type Marks struct {
	Here                 string // before the row under the cursor
	Better, Worse        string // a change for the better, for the worse
	Light, Heavy         string // rules
	TabLeft, TabRight    string // around the heading of the pane with the focus
	Column               string // between panes
	Outside, Usual, Spot string // of a gauge: allowed, usual, the value
	Cut                  string // where a text was cut
	Caret                string // in an edit on a terminal without reverse
	Fails, Thin, Holds   string // worry as height
	Unrated              string
	Bar, HalfBar         string // of a difference, in steps of half a cell
	Arrow                string // from the old to the new, any width
}

var drawn = Marks{
	Here: ">", Better: "◆", Worse: "◇", Light: "─", Heavy: "━", TabLeft: "┫", TabRight: "┣", Column: "│",
	Outside: "·", Usual: "─", Spot: "●", Cut: "…", Caret: "▏",
	Fails: "█", Thin: "▄", Holds: "▁", Unrated: "?", Arrow: "→", Bar: "━", HalfBar: "╸",
}

var typed = Marks{
	Here: ">", Better: "*", Worse: "!", Light: "-", Heavy: "=", TabLeft: "[", TabRight: "]", Column: "|",
	Outside: ".", Usual: "-", Spot: "O", Cut: "~", Caret: "|",
	Fails: "#", Thin: "=", Holds: "_", Unrated: "?", Arrow: "->", Bar: "=", HalfBar: "-",
}

// MeritMark is the shape for a change: better (+1), worse (−1) or neither.
func (t *Theme) MeritMark(sign int) string {
	switch {
	case sign > 0:
		return t.Marks.Better
	case sign < 0:
		return t.Marks.Worse
	}
	return " "
}

// MeritWord is the word for a change.
func MeritWord(sign int) string {
	switch {
	case sign > 0:
		return "better"
	case sign < 0:
		return "worse"
	}
	return ""
}

// Verdict is the shape and the ink of a verdict.
func (t *Theme) Verdict(v reading.Verdict) (string, Ink) {
	switch v {
	case reading.Fails:
		return t.Marks.Fails, t.Fails
	case reading.Thin:
		return t.Marks.Thin, t.Thin
	case reading.Holds:
		return t.Marks.Holds, Ink{}
	}
	return t.Marks.Unrated, t.Quiet
}
