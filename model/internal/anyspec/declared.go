package anyspec

import (
	"testing"

	"backspan/model/param"
	"backspan/model/reading"
)

// HoldDefaults fails the test unless the parameters of a default spec take
// their own values, which are usual ones, and no two share a key or a label;
// labels fit the form.
func HoldDefaults(t testing.TB, ps []param.Param) {
	t.Helper()
	seen := map[string]bool{}
	for _, p := range ps {
		if seen[p.Key] || seen[p.Label] || len([]rune(p.Label)) > 34 {
			t.Errorf("%s: label %q is long or taken", p.Key, p.Label)
		}
		seen[p.Key], seen[p.Label] = true, true
		x, ok := p.Number()
		if !ok {
			continue
		}
		if err := p.SetNumber(x); err != nil {
			t.Errorf("the default is outside the declared range: %v", err)
		}
		if u := p.Unit.From(x); p.TypicalMax > 0 && (u < p.TypicalMin-1e-9 || u > p.TypicalMax+1e-9) {
			t.Errorf("%s: the default %g is not typical", p.Key, u)
		}
	}
}

// Check is the check of that key, which must be there.
func Check(t testing.TB, cs []reading.Check, key string) reading.Check {
	t.Helper()
	for _, c := range cs {
		if c.Key == key {
			return c
		}
	}
	t.Fatalf("no check %s", key)
	return reading.Check{}
}
