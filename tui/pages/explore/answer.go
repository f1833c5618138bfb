package explore

import (
	"strings"

	"backspan/tui/components/roll"
	"backspan/tui/desk"
)

// answer is what was found, and of which machine.
type answer struct {
	of      machine
	note    string
	designs *designs // of a sweep, a solve or a search
	sure    *sure    // of a tolerance run
	fault   string   // why there is no answer

	roll  roll.Model
	top   int // line of the page on which its rows begin
	chart int // of the designs
}

func (a *answer) variantName() string { return a.of.study.Variants[a.of.variant].Name }

// standing says of which machine the answer tells, and whether that is the one
// in hand as it is now.
func (a *answer) standing(d *desk.Desk) string {
	name := a.variantName()
	switch i := d.Study().Index(name); {
	case i < 0:
		return "of " + name + ", which is no more"
	case !d.Same(i, a.of.study, a.of.variant):
		return "of " + name + ", the machine as it was"
	case i != d.Selected:
		return "of " + name + ", not the one in hand"
	default:
		return "of " + name
	}
}

// leap goes to another chart.
func (a *answer) leap(n int) {
	switch {
	case a.sure != nil:
		a.sure.leap(&a.roll, n)
	case a.designs != nil && len(a.designs.plots) > 0:
		a.chart = (a.chart + n + len(a.designs.plots)) % len(a.designs.plots)
	}
}

// text is the table, its cells parted by tabs.
func (a *answer) text() string {
	var rows [][]string
	switch {
	case a.designs != nil:
		rows = a.designs.table()
	case a.sure != nil:
		rows = a.sure.table()
	}
	lines := make([]string, len(rows))
	for i, r := range rows {
		lines[i] = strings.Join(r, "\t")
	}
	return strings.Join(lines, "\n")
}
