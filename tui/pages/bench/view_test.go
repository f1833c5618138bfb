package bench

import "testing"

func TestPanesFillThePage(t *testing.T) {
	for w := 60; w < 320; w++ {
		m := Model{w: w}
		names, form, readings, checks := m.widths()
		total := names + 1 + form
		switch {
		case w >= fourColumns:
			total += 2 + readings + checks
		case w >= threeColumns:
			total += 1 + readings
		}
		if total != w {
			t.Errorf("%d wide: %d names, %d form, %d readings, %d checks make %d", w, names, form, readings, checks, total)
		}
		if w >= 120 && (form < 46 || readings < 55 || checks < 55) {
			t.Errorf("%d wide: %d form, %d readings, %d checks leave labels less than 30 cells", w, form, readings, checks)
		}
	}
}
