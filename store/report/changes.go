package report

import (
	"fmt"
	"strings"

	"backspan/model"
	"backspan/model/unit"
)

// changeGrid is the line of running time on which parts are changed: one row a
// stop, with what it costs and what was paid for changes so far. ok is false
// when nothing is changed.
func changeGrid(o model.Outcome, currency string) (g grid, ok bool) {
	if len(o.Changes) == 0 {
		return grid{}, false
	}
	g = grid{
		title: o.Variant + ": changes of parts until the horizon, without fuel",
		head:  []string{"running time", "changed", "cost", "so far", "standing"},
	}
	price := func(x float64) string { return money(unit.Currency.Text(x), unit.Currency, currency) }
	paid := 0.0
	for i := 0; i < len(o.Changes); {
		var parts []string
		at, cost, stands := o.Changes[i].At, 0.0, 0.0
		for ; i < len(o.Changes) && o.Changes[i].At <= at*(1+sameStop); i++ {
			c := o.Changes[i]
			parts = append(parts, strings.ToLower(c.Part))
			cost += c.Cost()
			stands += c.Stands
		}
		paid += cost
		g.rows = append(g.rows, []string{fmt.Sprintf("%.0f h", unit.Hour.From(at)), strings.Join(parts, ", "), price(cost), price(paid), unit.Hour.Text(stands)})
	}
	return g, true
}

// sameStop is how near two changes fall due to be made at one stop.
const sameStop = 1e-6
