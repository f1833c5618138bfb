package shaft

import (
	"strings"
	"testing"

	"backspan/model/internal/table"
	"backspan/model/internal/tabletest"
	"backspan/model/param"
)

func TestTableCarriesItsClauses(t *testing.T) {
	tabletest.Whole(t, "surface", table.Must(surfaceFile), 4)
	s := Default()
	for _, p := range s.Params() {
		if p.Key == "axle_surface" && !strings.HasPrefix(p.Origin, "from memory: ") {
			t.Errorf("%s is from %q", p.Label, p.Origin)
		}
	}
	if Surface("unlisted").factor(800e6) != Machined.factor(800e6) {
		t.Error("an unlisted finish is not taken for a machined one")
	}
	if n := testing.AllocsPerRun(100, func() { Forged.factor(800e6) }); n != 0 {
		t.Errorf("%g allocations", n)
	}
}

func TestOwnRatingsRateTheBearingTheyAreGivenFor(t *testing.T) {
	loads := Loads{Across: 800, At: 0.035, PropellerWeight: 20, PropellerOverhang: 0.03, Thrust: 500, Speed: 280}
	s := Default()
	base := Support(s, loads)
	s.PropSideDynamic, s.EngineSideStatic = param.Known(20000), param.Known(11700)
	own := Support(s, loads)
	if got := own.PropSide.BasicLife.Value / base.PropSide.BasicLife.Value; got < 7.999 || got > 8.001 {
		t.Errorf("twice the dynamic rating lasts %g times as long", got)
	}
	if got := own.EngineSide.StaticSafety.Value / base.EngineSide.StaticSafety.Value; got < 1.999 || got > 2.001 {
		t.Errorf("twice the static rating is %g times as safe", got)
	}
	if own.EngineSide.BasicLife != base.EngineSide.BasicLife {
		t.Error("the other bearing's life changed")
	}
}

// At 800 MPa. Source: Marin's form, worked by an independent script.
func TestSurfaceFactors(t *testing.T) {
	for surface, want := range map[Surface]float64{Ground: 0.89515, Machined: 0.76711, HotRolled: 0.47507, Forged: 0.35156} {
		if got := surface.factor(800e6); got < want-5e-6 || got > want+5e-6 {
			t.Errorf("%s: %.5f, want %.5f", surface, got, want)
		}
	}
}
