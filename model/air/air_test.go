package air

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/reading"
)

func TestTheDayMovesTheAir(t *testing.T) {
	standard := Spec{Altitude: 1000}.State()
	for _, tc := range []struct {
		name           string
		spec           Spec
		density, sound int // sign of the change
	}{
		{"hot", Spec{Altitude: 1000, TemperatureOffset: 15}, -1, 1},
		{"cold", Spec{Altitude: 1000, TemperatureOffset: -15}, 1, -1},
		{"humid", Spec{Altitude: 1000, RelativeHumidity: 0.9}, -1, 0},
	} {
		s := tc.spec.State()
		if s.Pressure != standard.Pressure {
			t.Errorf("%s: pressure moved to %g", tc.name, s.Pressure)
		}
		if got := sign(s.Density - standard.Density); got != tc.density {
			t.Errorf("%s: density moved %+d", tc.name, got)
		}
		if got := sign(standard.DensityAltitude - s.DensityAltitude); got != tc.density {
			t.Errorf("%s: density altitude %g against %g", tc.name, s.DensityAltitude, standard.DensityAltitude)
		}
		if got := sign(s.SoundSpeed - standard.SoundSpeed); got != tc.sound {
			t.Errorf("%s: speed of sound moved %+d", tc.name, got)
		}
	}
}

func sign(x float64) int {
	switch {
	case x > 0:
		return 1
	case x < 0:
		return -1
	}
	return 0
}

func TestDensityAltitudeOfStandardAirIsTheAltitude(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := rapid.Float64Range(-500, Highest).Draw(t, "altitude")
		s := Spec{Altitude: h}.State()
		if math.Abs(s.DensityAltitude-h) > 1e-6 {
			t.Errorf("density altitude %.9g at %.9g m", s.DensityAltitude, h)
		}
	})
}

// Thin air above any place: density there over density here is the share.
func TestThinnerIsTheHeightOfTheShare(t *testing.T) {
	for _, low := range []float64{0, 640, 3000} {
		here := Spec{Altitude: low}.State()
		there := Spec{Altitude: low + Thinner(here.Temperature, 0.7)}.State()
		if got := there.Density / here.Density; math.Abs(got-0.7) > 1e-9 {
			t.Errorf("%g of the density above %g m", got, low)
		}
	}
}

func TestAnySiteHasFiniteAir(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Default()
		anyspec.Set(t, s.Params(), nil)
		a := s.State()
		for _, r := range a.Readings(nil) {
			if !r.Known() {
				t.Errorf("%s has no value for %+v", r.Key, s)
			}
		}
		if !(a.Density > 0.4 && a.Density < 1.7 && a.DynamicViscosity > 1e-5 && a.VapourPressure >= 0 && a.VapourPressure < a.Pressure) {
			t.Errorf("%+v gives %+v", s, a)
		}
	})
}

func TestReadingsDeclareTheirKeys(t *testing.T) {
	rs := State{}.Readings(nil)
	for _, key := range []string{"air.pressure", "air.temperature", "air.density", "air.sound_speed", "air.density_altitude", "air.vapour_pressure"} {
		if _, ok := reading.Find(rs, key); !ok {
			t.Errorf("no reading %s", key)
		}
	}
}

func BenchmarkState(b *testing.B) {
	s := Spec{Altitude: 800, TemperatureOffset: 8, RelativeHumidity: 0.6}
	b.ReportAllocs()
	for b.Loop() {
		if s.State().Density <= 0 {
			b.Fatal("no air")
		}
	}
}
