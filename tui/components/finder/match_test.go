package finder

import (
	"testing"

	"pgregory.net/rapid"
)

func TestWorthOrder(t *testing.T) {
	for _, tc := range []struct {
		query  string
		labels []string // best first; the last is not found at all
	}{
		{"pitch", []string{"Pitch trim", "Nominal pitch", "Repitched", "Climb"}},
		{"np", []string{"Nominal pitch", "Input", "Ribs"}},
		{"nom pi", []string{"Nominal pitch", "Climb rate"}},
		{"crank dia", []string{"Crank pulley, effective diameter", "Crank bearing"}},
		{"thr", []string{"Thrust line", "Standing thrust", "Tooth root", "Mass"}},
		{"pitch tr", []string{"Pitch trim", "Trim pitch", "Pitch"}},
	} {
		last := 1 << 20
		for i, l := range tc.labels {
			n := worth(tc.query, l, "")
			if (n == 0) != (i == len(tc.labels)-1) || n >= last {
				t.Errorf("%q in %q is worth %d after %d", tc.query, l, n, last)
			}
			last = n
		}
	}
	if worth("belt.rib", "Ribs", "drive.ribbed_belt.ribs") != elsewhere || worth("ribbed", "Ribs", "drive.ribbed_belt.ribs") != elsewhere {
		t.Error("a key is not found by what stands in it")
	}
}

func TestWorthOfAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		label := rapid.String().Draw(t, "label")
		if n := worth(rapid.String().Draw(t, "query"), label, rapid.String().Draw(t, "key")); n < 0 {
			t.Fatal(n)
		}
	})
}
