package readings

import "backspan/tui/theme"

const wordRoom = 7 // " better"

// columns is how a row is divided: mark, label, value with unit, change since
// the last edit, difference from the reference.
type columns struct {
	label, value, change, against int
	words                         bool // better and worse as words too
}

// leastLabel is the room that labels keep before anything but the value and
// its change gets a column.
const leastLabel = 30

// divide gives the label what it needs, then a column to the difference from
// the reference, and then words to the changes.
func divide(w int, against bool) columns {
	const most = 38
	c := columns{value: 14, change: 10}
	if w < 71 {
		c.value, c.change = 12, 9
	}
	if against {
		if c.against = c.change; c.room(w) < leastLabel {
			c.against = 0
		}
	}
	c.label = c.room(w)
	if c.label >= leastLabel+wordRoom {
		c.words = true
		c.change += wordRoom
		c.label = c.room(w)
	}
	if spare := c.label - most; spare > 0 {
		c.label = most
		c.value += min(spare, 6)
	}
	return c
}

func (c columns) room(w int) int {
	used := 2 + 1 + c.value + 1 + c.change
	if c.against > 0 {
		used += 1 + c.against
	}
	return max(w-used, 4)
}

func (c columns) heads(t *theme.Theme) string {
	legend := ""
	if !c.words {
		legend = "  " + t.Marks.Better + " better  " + t.Marks.Worse + " worse"
	}
	s := t.Fit(legend, 2+c.label+1) + t.Right("now", c.value-unitRoom) + t.Fit("", unitRoom)
	last := "last edit"
	if c.change-boolRoom(c.words) < 9 {
		last = "change"
	}
	s += " " + t.Fit(t.Right(last, c.change-boolRoom(c.words)), c.change)
	if c.against > 0 {
		ref := "reference"
		if c.against < 9 {
			ref = "to ref"
		}
		s += " " + t.Right(ref, c.against)
	}
	return s
}

func boolRoom(words bool) int {
	if words {
		return wordRoom
	}
	return 0
}
