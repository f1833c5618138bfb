package belt

import (
	"math"
	"testing"

	"backspan/model/part"
)

func TestPulleyInertia(t *testing.T) {
	disc := turned(0.01, 2700, ring{0, 0.05, 0, 0.01, 1})
	mass := math.Pi * 0.05 * 0.05 * 0.01 * 2700
	if math.Abs(disc.mass-mass) > 1e-12 || math.Abs(disc.polar-mass*0.05*0.05/2) > 1e-12 || math.Abs(disc.transverse-part.Cylinder(mass, 0.05, 0.01)) > 1e-12 {
		t.Errorf("disc: %+v", disc)
	}
	// Cutting the disc in two changes nothing.
	halves := turned(0.01, 2700, ring{0, 0.05, 0, 0.004, 1}, ring{0, 0.05, 0.004, 0.006, 1})
	if math.Abs(halves.transverse-disc.transverse) > 1e-12 || math.Abs(halves.cgAft-0.005) > 1e-12 {
		t.Errorf("halves: %+v", halves)
	}
}

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
