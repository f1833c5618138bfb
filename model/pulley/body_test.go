package pulley

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
