package gear

import (
	"math"
	"strings"
	"testing"

	"backspan/model/part"
	"backspan/model/reading"
)

// The area below a level against strips of the hull, whose half width is the
// greatest over the circles between the two.
func TestFilledAreaAgainstStrips(t *testing.T) {
	for _, tc := range [][3]float64{{27, 63, 76}, {63, 27, 76}, {30, 30, 50}, {10, 70, 40}} {
		low, high, distance := tc[0], tc[1], tc[2]
		width := func(y float64) float64 {
			most := 0.0
			for i := range 2001 {
				share := float64(i) / 2000
				r, up := low+share*(high-low), y-share*distance
				most = math.Max(most, r*r-up*up)
			}
			return 2 * math.Sqrt(most)
		}
		for _, level := range []float64{5, 11, 30, 45} {
			if high-low >= distance {
				continue
			}
			const strips = 2000
			want := 0.0
			for i := range strips {
				want += width(-low+level*(float64(i)+0.5)/strips) * level / strips
			}
			if got := filled(low, high, distance, level); math.Abs(got/want-1) > 2e-3 {
				t.Errorf("%v up to %g: %g, want %g", tc, level, got, want)
			}
		}
	}
	if got := filled(10, 70, 40, 20); math.Abs(got-100*math.Pi) > 1e-9 {
		t.Errorf("a full circle of 10: %g", got)
	}
	if got := segment(10, 10); math.Abs(got-50*math.Pi) > 1e-9 {
		t.Errorf("half a circle: %g", got)
	}
}

// Oil and dip must belong to one case.
func TestOilFitsTheDip(t *testing.T) {
	s := Default()
	asked := newGear(t, s).Examine(rated(), part.Train{}).DipVolume
	for _, tc := range []struct {
		volume float64
		want   reading.Verdict
		says   string
	}{{asked, reading.Holds, ""}, {1.9 * asked, reading.Holds, ""}, {2.1 * asked, reading.Thin, "lower Oil volume"},
		{asked / 1.9, reading.Holds, ""}, {asked / 2.1, reading.Thin, "raise Oil volume"}} {
		s.OilVolume = tc.volume
		x := newGear(t, s).Examine(rated(), part.Train{})
		c, ok := find(x.Checks(nil, 0.1), "gear.oil_volume")
		if !ok || c.Verdict != tc.want || !strings.Contains(c.Cure, tc.says) {
			t.Errorf("%g cm³ of %g: %s %q", tc.volume*1e6, asked*1e6, c.Verdict, c.Cure)
		}
		if tilted, _ := find(x.Checks(nil, 0.1), "gear.dip_tilted"); strings.Contains(tilted.Cure, "Oil volume") {
			t.Errorf("the tilted dip does not know the volume: %s", tilted.Cure)
		}
	}
	s.DipDepth = 0
	if c, _ := find(newGear(t, s).Examine(rated(), part.Train{}).Checks(nil, 0.1), "gear.oil_volume"); c.Verdict != reading.NotRated {
		t.Errorf("no dip: %+v", c)
	}
	deeper, wheel := Default(), Default()
	deeper.DipDepth *= 2
	wheel.DippingGear = DipWheel
	if newGear(t, deeper).Examine(rated(), part.Train{}).DipVolume < 1.3*asked || newGear(t, wheel).Examine(rated(), part.Train{}).DipVolume < 1.3*asked {
		t.Error("a deeper dip or the larger gear asks for no more oil")
	}
}
