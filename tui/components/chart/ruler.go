package chart

import (
	"strings"

	"backspan/tui/raster"
	"backspan/tui/theme"
)

// Ruler is one line of figures under w cells that begin after so many columns.
func Ruler(t *theme.Theme, after, w int, from, to float64, unit string) string {
	if w < 1 || !(to > from) {
		return ""
	}
	a := tight(from, to, max(w/9, 2))
	c := raster.New(w, 1, t.ASCII)
	c.Put(w-theme.Width(unit), 0, unit, t.Quiet)
	for _, x := range a.ticks {
		text := a.text(x)
		col := int(a.share(x)*float64(w)) - len(text)/2
		c.Put(min(max(col, 0), w-len(text)), 0, text, t.Quiet)
	}
	return strings.Repeat(" ", after) + c.Lines()[0]
}
