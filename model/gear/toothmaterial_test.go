package gear

import (
	"math"
	"testing"
)

func TestBetterGradesEndureMore(t *testing.T) {
	for class, c := range materials().classes {
		hardness := (c.least[2] + c.most) / 2
		var last toothMaterial
		for _, q := range []MaterialQuality{ML, MQ, ME} {
			m, ok := newToothMaterial(class, q, Core25, hardness)
			if !ok || m.contact < last.contact || m.bending < last.bending || m.contact < 2*m.bending {
				t.Errorf("%s %s: %+v after %+v", class, q, m, last)
			}
			last = m
		}
		if _, ok := newToothMaterial(class, MQ, Core25, c.most+1); ok {
			t.Errorf("%s is listed beyond its hardness", class)
		}
	}
}

func TestLifeCurvesHaveNoStep(t *testing.T) {
	for _, set := range [][4]lifeCurve{flankLife, rootLife} {
		for _, c := range set {
			for _, n := range []float64{c.reference, 1e10} {
				if a, b := c.at(n*0.999), c.at(n*1.001); math.Abs(a-b) > 0.002 || a < b {
					t.Errorf("%+v at %g: %g then %g", c, n, a, b)
				}
			}
			if c.at(1) != c.most || c.at(1e12) != leastLife {
				t.Errorf("%+v ends at %g and %g", c, c.at(1), c.at(1e12))
			}
		}
	}
}
