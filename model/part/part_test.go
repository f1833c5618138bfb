package part

import (
	"math"
	"testing"
)

func TestSums(t *testing.T) {
	ps := []Piece{{Depth: 0.01, Mass: 1}, {Mass: 2}, {Depth: 0.03, Mass: 0.5}}
	if d, m := Depth(ps), Mass(ps); d != 0.04 || m != 3.5 {
		t.Errorf("depth %g, mass %g", d, m)
	}
}

// A thin disc has half its polar inertia about a diameter, a thin rod m l²/12
// about its middle: Beer & Johnston, Vector Mechanics, back cover, from memory.
func TestCylinderLimits(t *testing.T) {
	if got, want := Cylinder(2, 0.3, 0), 2*0.3*0.3/4; math.Abs(got-want) > 1e-15 {
		t.Errorf("disc %g, want %g", got, want)
	}
	if got, want := Cylinder(2, 0, 0.6), 2*0.6*0.6/12; math.Abs(got-want) > 1e-15 {
		t.Errorf("rod %g, want %g", got, want)
	}
}

func TestTransmission(t *testing.T) {
	tr := Transmission{PowerIn: 1000, PowerOut: 970}
	if tr.Efficiency() != 0.97 || tr.Loss() != 30 {
		t.Errorf("efficiency %g, loss %g", tr.Efficiency(), tr.Loss())
	}
	if (Transmission{PowerOut: -5}).Efficiency() != 0 {
		t.Error("an idle drive has an efficiency")
	}
}

func TestUpkeep(t *testing.T) {
	if got := (Upkeep{ChangeInterval: 360000, ChangeCost: 60}).CostPerTime(); math.Abs(got-60.0/360000) > 1e-18 {
		t.Errorf("%g", got)
	}
	if (Upkeep{ChangeCost: 60}).CostPerTime() != 0 {
		t.Error("nothing is ever changed, yet it costs")
	}
}
