package bearing

import (
	"math"
	"strings"
	"testing"

	"backspan/model/internal/table"
	"backspan/model/internal/tabletest"
)

// ISO 286-1, standard tolerances IT5 to IT7 in µm, from memory: a class is as
// wide as its grade.
func TestFitsAreAsWideAsTheirGrade(t *testing.T) {
	tabletest.Whole(t, "fits", table.Must(fitsFile), 72)
	wide := map[byte][]float64{'5': {6, 8, 9, 11, 13, 15}, '6': {9, 11, 13, 16, 19, 22}, '7': {15, 18, 21, 25, 30, 35}}
	for _, f := range append(append([]Fit{}, shaftFits...), boreFits...) {
		for i, nominal := range []float64{0.008, 0.015, 0.025, 0.040, 0.065, 0.1} {
			least, most, ok := f.Limits(nominal)
			if got := (most - least) * 1e6; !ok || math.Abs(got-wide[f[1]][i]) > 1e-6 {
				t.Errorf("%s at %g m: %g µm wide, want %g", f, nominal, got, wide[f[1]][i])
			}
		}
	}
	if _, _, ok := Fit("k5").Limits(0.2); ok {
		t.Error("a size outside the table")
	}
}

func TestSeatsOfABearing(t *testing.T) {
	list := TurningShaft.Making("6205", true, Housing{})
	if len(list) != 5 || list[0].Label != "seat on the shaft, 25 k5" || math.Abs(list[0].Least-0.025002) > 1e-9 || math.Abs(list[1].Most-0.05203) > 1e-9 {
		t.Errorf("%+v", list)
	}
	if list = TurningShaft.Making("6205", false, Housing{}); !strings.Contains(list[1].Method, "creeps") || strings.Contains(list[0].Method, "creeps") {
		t.Errorf("a loose ring under a turning load: %+v", list)
	}
	if TurningShaft.Making("", true, Housing{}) != nil {
		t.Error("seats of no bearing")
	}
}
