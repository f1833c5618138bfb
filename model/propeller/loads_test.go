package propeller

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// The cells' forces are the propeller's thrust and torque, cut in pieces.
func TestLoadsAddUpToTheWholePropeller(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, f := drawnPropeller(t), drawnFlow(t)
		pt := p.At(f)
		var thrust, torque float64
		for _, l := range p.AppendLoads(nil, f) {
			thrust += l.Along * float64(p.Blades())
			torque += l.Across * l.Radius * float64(p.Blades())
		}
		if math.Abs(thrust-pt.Thrust) > 1e-9*(1+math.Abs(pt.Thrust)) || math.Abs(torque-pt.Torque) > 1e-9*(1+math.Abs(pt.Torque)) {
			t.Fatalf("%g N and %g N·m of %g N and %g N·m", thrust, torque, pt.Thrust, pt.Torque)
		}
	})
}

func TestStandingPropellerHasNoLoads(t *testing.T) {
	p, err := New(Default())
	if err != nil {
		t.Fatal(err)
	}
	if got := p.AppendLoads(nil, Flow{Density: standardDensity}); len(got) != 0 {
		t.Errorf("%d cells at rest", len(got))
	}
}
