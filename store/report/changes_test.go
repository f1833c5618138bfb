package report

import (
	"slices"
	"testing"

	"backspan/model"
	"backspan/model/unit"
	"backspan/model/upkeep"
)

func TestChangesAreGatheredByStop(t *testing.T) {
	at := unit.Hour.SI
	g, ok := changeGrid(model.Outcome{Variant: "A", Changes: []upkeep.Change{
		{At: at(25), Part: "Spark plug", Parts: 9, Labour: 6, Stands: at(0.2)},
		{At: at(50), Part: "Spark plug", Parts: 9, Labour: 6, Stands: at(0.2)},
		{At: at(50), Part: "Exhaust packing", Parts: 14, Labour: 30, Stands: at(1)},
	}}, "EUR")
	want := [][]string{
		{"25 h", "spark plug", "15.0 EUR", "15.0 EUR", "0.200 h"},
		{"50 h", "spark plug, exhaust packing", "59.0 EUR", "74.0 EUR", "1.20 h"},
	}
	if !ok || !slices.EqualFunc(g.rows, want, slices.Equal) {
		t.Errorf("%q", g.rows)
	}
	if _, ok := changeGrid(model.Outcome{}, "EUR"); ok {
		t.Error("a table of nothing")
	}
}
