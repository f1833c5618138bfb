package pulley

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestLoopCentroid sums the loop piece by piece.
func TestLoopCentroid(t *testing.T) {
	o := OpenBelt{Crank: 0.069, Driven: 0.179, CentreDistance: 0.165}
	const n = 20000
	moment, length := 0.0, 0.0
	arc := func(radius, centre, wrap, middle float64) {
		for i := range n {
			a := middle + wrap*((float64(i)+0.5)/n-0.5)
			moment += (centre + radius*math.Sin(a)) * radius * wrap / n
			length += radius * wrap / n
		}
	}
	arc(o.Crank/2, 0, o.CrankWrap(), -math.Pi/2)
	arc(o.Driven/2, o.CentreDistance, o.DrivenWrap(), math.Pi/2)
	tilt := math.Sin(o.SpanTilt())
	moment += 2 * o.Span() * (-o.Crank/2*tilt + o.CentreDistance - o.Driven/2*tilt) / 2
	length += 2 * o.Span()
	if got := o.Centroid(); math.Abs(got-moment/length) > 1e-9 || math.Abs(o.Length()-length) > 1e-9 {
		t.Errorf("centroid %.9f, summed %.9f", got, moment/length)
	}
}

func TestLengthAndCentreDistanceAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := OpenBelt{Crank: rapid.Float64Range(0.02, 0.2).Draw(t, "crank"), Driven: rapid.Float64Range(0.02, 0.42).Draw(t, "driven")}
		o.CentreDistance = (o.Crank+o.Driven)/2 + rapid.Float64Range(0.001, 1).Draw(t, "gap")
		back, ok := OpenBelt{Crank: o.Crank, Driven: o.Driven}.WithLength(o.Length())
		if !ok || math.Abs(back.CentreDistance-o.CentreDistance) > 1e-10*o.CentreDistance {
			t.Errorf("centre distance %.15g came back as %.15g", o.CentreDistance, back.CentreDistance)
		}
	})
}

func TestTooShortABeltHasNoCentreDistance(t *testing.T) {
	o := OpenBelt{Crank: 0.06, Driven: 0.17}
	if _, ok := o.WithLength(math.Pi * 0.17); ok {
		t.Error("a belt as long as the larger pulley's girth went round both")
	}
}
