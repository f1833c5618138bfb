package stack

import (
	"math"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/part"
)

func TestPublished(t *testing.T) {
	about := func(x func(c published.Case) float64, z func(c published.Case) float64) published.Runner {
		return func(t testing.TB, c published.Case) map[string]float64 {
			it := Item{Mass: c.Num(t, "mass"), X: c.Num(t, "aft"), PitchInertia: c.Num(t, "own_inertia"), YawInertia: c.Num(t, "own_inertia")}
			pitch, yaw := inertia([]Item{it}, x(c), z(c))
			return map[string]float64{"pitch": pitch, "yaw": yaw}
		}
	}
	zero := func(published.Case) float64 { return 0 }
	published.Run(t, "stack", map[string]published.Runner{
		"about_hip": about(
			func(c published.Case) float64 { return -c.Num(t, "back_behind_hip") },
			func(c published.Case) float64 { return -c.Num(t, "up") }),
		"about_hang":        about(zero, zero),
		"stacked_cylinders": stackedCylinders,
	})
}

// stackedCylinders cuts a cylinder into slices and stands them behind one
// another as a drive; the sum must be the whole cylinder's.
func stackedCylinders(t testing.TB, c published.Case) map[string]float64 {
	n := int(c.Num(t, "slices"))
	m, l := c.Num(t, "mass")/float64(n), c.Num(t, "length")/float64(n)
	own := part.Cylinder(m, c.Num(t, "radius"), l)
	p := Parts{}
	for range n {
		p.Drive = append(p.Drive, part.Piece{Depth: l, Mass: m, CGAft: l / 2, PitchInertia: own, YawInertia: own})
	}
	r := Build(Spec{}, Tank{}, p)
	if math.Abs(r.PitchInertia-r.YawInertia) > 1e-12 {
		t.Errorf("pitch %g, yaw %g", r.PitchInertia, r.YawInertia)
	}
	return map[string]float64{"pitch": r.PitchInertia}
}
