package tui

import (
	"regexp"
	"strings"
	"testing"

	"backspan/model"
)

// A verdict and its margin never run together, however narrow the page, and the
// margin is there whole.
func TestVerdictAndMarginStandApart(t *testing.T) {
	o := plateau()
	o.Study = model.Sample()
	together, past := regexp.MustCompile(`(holds|thin|fails)(past|over|[+-])`), false
	for _, w := range []int{60, 80, 120} {
		m := press(begin(o, w, 500), "c")
		for range 6 {
			v := m.View()
			if bad := together.FindString(v); bad != "" {
				t.Fatalf("%d columns: %q in\n%s", w, bad, v)
			}
			past = past || regexp.MustCompile(`thin +past \d+ %`).MatchString(v)
			if strings.Contains(v, "past ...") || strings.Contains(v, "past …") {
				t.Fatalf("%d columns: a margin is cut\n%s", w, v)
			}
			m = press(m, "pgdown")
		}
	}
	if !past {
		t.Error("no guide value is passed: nothing was tried")
	}
}
