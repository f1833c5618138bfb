package model

import (
	"testing"

	"backspan/model/param"
)

// Where the cylinder stands must tell: hanging down it leaves the shadow of a
// hub above the crank, and a gear case keeps air off it.
func TestCylinderPlaceTells(t *testing.T) {
	up, down := evaluated(t, nil), evaluated(t, [][2]string{{"cooling.head.cylinder_lean", "180"}})
	if a, b := value(t, up, "cooling.inflow_share"), value(t, down, "cooling.inflow_share"); b <= a {
		t.Errorf("inflow at the cylinder goes from %g to %g %%", a, b)
	}
	if a, b := value(t, up, "cooling.head_temperature"), value(t, down, "cooling.head_temperature"); b >= a {
		t.Errorf("head goes from %g to %g °C", a, b)
	}
	s := Sample()
	v := s.Variants[s.Index("Gear 190 open")].Clone()
	shaded := Evaluate(s, &v)
	p, _ := param.Find(v.Sections(), "cooling.head.case_shade")
	if err := p.Set("0"); err != nil {
		t.Fatal(err)
	}
	if a, b := value(t, shaded, "cooling.head_temperature"), value(t, Evaluate(s, &v), "cooling.head_temperature"); b >= a {
		t.Errorf("without the case's shade the head goes from %g to %g °C", a, b)
	}
	belt := evaluated(t, [][2]string{{"cooling.head.case_shade", "90"}})
	if a, b := value(t, up, "cooling.head_temperature"), value(t, belt, "cooling.head_temperature"); a != b {
		t.Errorf("a belt has no case, yet the head goes from %g to %g °C", a, b)
	}
	ahead := evaluated(t, [][2]string{{"cooling.head.cylinder_aft", "0"}})
	if a, b := value(t, up, "cooling.inflow_share"), value(t, ahead, "cooling.inflow_share"); a == b {
		t.Error("the cylinder's place along the machine does not tell")
	}
}
