package torsion

import (
	"fmt"
	"math"
	"math/cmplx"
	"testing"

	"backspan/model/internal/published"
)

func TestPublished(t *testing.T) {
	published.Run(t, "torsion", map[string]published.Runner{"shafts": shaftsCase, "pair": pairCase, "row": rowCase})
}

func triple(xs []float64, a, b Spring) Chain { return Row(xs[0], a, xs[1], b, xs[2]) }

func shaftsCase(t testing.TB, c published.Case) map[string]float64 {
	d, lengths := c.Num(t, "diameter")/1000, c.List(t, "lengths")
	of := func(length float64) Spring {
		return Spring{Stiffness: c.Num(t, "modulus") * 1e9 * math.Pi / 32 * d * d * d * d / length}
	}
	x := triple(c.List(t, "inertias"), of(lengths[0]), of(lengths[1]))
	f := x.Natural()
	one, two := x.shape(f[0]), x.shape(f[1])
	return map[string]float64{
		"first": f[0] / (2 * math.Pi), "second": f[1] / (2 * math.Pi),
		"only_node":  lengths[0] * one[0] / (one[0] - one[1]),
		"left_node":  lengths[0] * two[0] / (two[0] - two[1]),
		"right_node": lengths[1] * two[2] / (two[2] - two[1]),
	}
}

func pairCase(t testing.TB, c published.Case) map[string]float64 {
	first, second, k := c.Num(t, "first"), c.Num(t, "second"), c.Num(t, "stiffness")
	natural := Alone(first, k, second)
	x := Pair(first, Damped(k, c.Num(t, "damping"), natural), second)
	got := map[string]float64{"natural": natural / (2 * math.Pi), "rigid": cmplx.Abs(x.Response(0)[0])}
	for i, rpm := range c.List(t, "speeds") {
		got[fmt.Sprintf("passes_%d", i+1)] = cmplx.Abs(x.Response(rpm * math.Pi / 30)[0])
	}
	return got
}

func rowCase(t testing.TB, c published.Case) map[string]float64 {
	k, d := c.List(t, "stiffness"), c.List(t, "damping")
	x := triple(c.List(t, "inertias"), Spring{k[0], d[0]}, Spring{k[1], d[1]})
	z := x.Response(c.Num(t, "frequency"))
	degrees := func(z complex128) float64 { return cmplx.Phase(z) * 180 / math.Pi }
	return map[string]float64{
		"first": cmplx.Abs(z[0]), "first_phase": degrees(z[0]),
		"second": cmplx.Abs(z[1]), "second_phase": degrees(z[1]),
	}
}
