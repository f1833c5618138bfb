package explore

import (
	"math"
	"testing"
)

// Roots known from outside: x³ − 2x − 5 is the example of J. Wallis, A Treatise
// of Algebra (1685), root 2.0945514815423265; cos x = x at 0.7390851332151607;
// both from memory and confirmed by putting them in.
func TestNarrowFindsKnownRoots(t *testing.T) {
	for _, tc := range []struct {
		name       string
		f          func(float64) float64
		a, b, root float64
	}{
		{"Wallis", func(x float64) float64 { return x*x*x - 2*x - 5 }, 2, 3, 2.0945514815423265},
		{"cosine", func(x float64) float64 { return math.Cos(x) - x }, 0, 1, 0.7390851332151607},
		{"steep", func(x float64) float64 { return math.Expm1(20 * (x - 0.1)) }, -1, 3, 0.1},
		{"flat", func(x float64) float64 { return math.Pow(x-0.3, 9) }, -1, 1, 0.3},
		{"straight", func(x float64) float64 { return 4 - 8*x }, 0, 3, 0.5},
		{"jump", func(x float64) float64 { return math.Copysign(1, x-math.Sqrt2) }, 1, 2, math.Sqrt2},
	} {
		const width = 1e-10
		calls := 0
		r, ok := bracket{tc.a, tc.b, tc.f(tc.a), tc.f(tc.b)}.narrow(width, func(x float64) (float64, bool) {
			calls++
			return tc.f(x), true
		})
		x, y := r.best()
		if !ok || math.Abs(x-tc.root) > width || y != tc.f(x) || r.a > tc.root || r.b < tc.root {
			t.Errorf("%s: %.12g in %v, want %.12g", tc.name, x, r, tc.root)
		}
		if most := int(math.Ceil(math.Log2((tc.b-tc.a)/width))) + 2; calls > most {
			t.Errorf("%s: %d calls, halving needs %d", tc.name, calls, most-2)
		}
		if (tc.name == "Wallis" || tc.name == "cosine") && calls > 12 {
			t.Errorf("%s: %d calls for a smooth function", tc.name, calls)
		}
	}
}

func TestNarrowEndsWhereThereIsNoValue(t *testing.T) {
	if _, ok := (bracket{0, 1, -1, 1}).narrow(1e-9, func(x float64) (float64, bool) { return x - 0.2, x > 0.7 }); ok {
		t.Error("a gap is taken for a root")
	}
}
