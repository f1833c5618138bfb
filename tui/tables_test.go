package tui

import (
	"strings"
	"testing"

	"backspan/model"
)

// Every line of the tables can be reached, by each of the ways down.
func TestTablesScroll(t *testing.T) {
	o := plateau()
	o.Study = model.Sample()
	top := press(begin(o, 80, 24), "t").View()
	for _, keys := range [][]string{{"tab"}, {"down"}, {"pgdown"}, {"end"}} {
		m := press(begin(o, 80, 24), "t")
		m = press(m, keys...)
		if m.View() == top {
			t.Errorf("%v: nothing moved", keys)
		}
		if m = press(m, "home"); m.View() != top {
			t.Errorf("%v: home does not lead back", keys)
		}
	}
	if end := press(begin(o, 80, 24), "t", "end").View(); !strings.Contains(end, "275 h") {
		t.Errorf("the end is out of reach:\n%s", end)
	}
}

// What parts a variant from the reference stands among its tables; the
// reference has nothing to part it from.
func TestTablesSplitAgainstTheReference(t *testing.T) {
	o := plateau()
	o.Study = model.Sample()
	const want = "from Belt 190 to Gear 190, piece by piece"
	if v := press(begin(o, 200, 200), ">", "t").View(); !strings.Contains(v, want) {
		t.Errorf("no split:\n%s", v)
	}
	if v := press(begin(o, 200, 200), "t").View(); strings.Contains(v, "piece by piece") {
		t.Error("the reference is split from itself")
	}
}
