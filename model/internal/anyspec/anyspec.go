// Package anyspec draws random parameters for the chapters' property tests.
// Only tests import it.
package anyspec

import (
	"math"

	"backspan/model/param"
	"pgregory.net/rapid"
)

// Own draws a parameter that a test wants drawn in its own way.
type Own func(t *rapid.T, p param.Param) error

// OneOf sets one of the texts as a user might type them.
func OneOf(texts ...string) Own {
	return func(t *rapid.T, p param.Param) error {
		return p.Set(rapid.SampledFrom(texts).Draw(t, p.Key))
	}
}

// Leave keeps what is there.
func Leave(*rapid.T, param.Param) error { return nil }

// Set sets every parameter anywhere in its declared range; what may be empty
// is so half the time. Those named in own, by key, are drawn in their own way.
// Tables and texts have no range, so they must be named there.
func Set(t *rapid.T, ps []param.Param, own map[string]Own) {
	for _, p := range ps {
		if draw, ok := own[p.Key]; ok {
			must(t, draw(t, p))
			continue
		}
		One(t, p.Key, p)
	}
}

// One sets a parameter anywhere in its declared range, the draw under a name.
func One(t *rapid.T, name string, p param.Param) {
	switch p.Kind {
	case param.KindNumber, param.KindWhole:
		Number(t, name, p, p.Min, p.Max)
	case param.KindChoice:
		must(t, p.Set(rapid.SampledFrom(p.Options).Draw(t, name)))
	case param.KindToggle:
		must(t, p.Set(rapid.SampledFrom([]string{"yes", "no"}).Draw(t, name)))
	default:
		t.Fatalf("%s: no draw for its kind", name)
	}
}

// Number sets a number or a whole number between lo and hi, both in its unit,
// or empties it where it may be empty.
func Number(t *rapid.T, name string, p param.Param, lo, hi float64) {
	switch {
	case p.Optional && rapid.Bool().Draw(t, name+" empty"):
		must(t, p.Set(""))
	case p.Kind == param.KindWhole:
		must(t, p.SetNumber(float64(rapid.IntRange(int(math.Ceil(lo)), int(hi)).Draw(t, name))))
	default:
		must(t, p.SetNumber(p.Unit.SI(rapid.Float64Range(lo, hi).Draw(t, name))))
	}
}

func must(t *rapid.T, err error) {
	if err != nil {
		t.Fatal(err)
	}
}
