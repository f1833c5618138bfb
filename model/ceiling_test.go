package model

import (
	"math"
	"testing"

	"backspan/model/air"
	"backspan/model/engine"
	"backspan/model/flight"
	"backspan/model/match"
	"backspan/model/propeller"
)

// built is a variant of the sample with its match, as Evaluate finds them.
func built(t testing.TB, v *Variant) (*chain, match.Report) {
	t.Helper()
	c := &chain{study: Sample(), variant: v}
	c.air = c.study.Site.State()
	c.engine, c.engineErr = engine.New(v.Engine, c.air)
	c.propeller, c.propellerErr = propeller.New(v.Propeller)
	c.drive, c.driveErr = c.designDrive()
	if err := c.firstError(); err != nil {
		t.Fatal(err)
	}
	c.build()
	return c, c.match()
}

func (c *chain) fullThrottle(airspeed float64) match.Point {
	return match.Find(output{c.engine, c.variant.Cooling}, c.drive, &c.propeller, c.flow(c.air), match.Ask{Trim: airspeed}).Trim
}

// aloft is the climb at an altitude by the whole match, engine and air made
// anew.
func (c *chain) aloft(t testing.TB, altitude float64) float64 {
	t.Helper()
	site := c.study.Site
	site.Altitude = altitude
	high := chain{study: c.study, variant: c.variant, air: site.State(), drive: c.drive, propeller: c.propeller, stack: c.stack}
	var err error
	if high.engine, err = engine.New(c.variant.Engine, high.air); err != nil {
		t.Fatal(err)
	}
	rate, ok := high.climbs(high.match().Trim, high.air.Density)
	if !ok {
		t.Fatalf("no climb at %g m", altitude)
	}
	return rate
}

// The few workings of the search against the full match at every height.
func TestCeilingAgreesWithTheFullMatch(t *testing.T) {
	s := Sample()
	for i := range s.Variants {
		c, m := built(t, &s.Variants[i])
		found := c.ceiling(m)
		for _, at := range []struct {
			what     string
			altitude float64
			left     float64
		}{{"absolute", found.Absolute.Value, 0}, {"service", found.Service.Value, flight.ServiceClimb}} {
			if left := c.aloft(t, at.altitude); math.Abs(left-at.left) > 0.03 {
				t.Errorf("%s: %s ceiling at %.0f m leaves %.3f m/s, want %.1f", s.Variants[i].Name, at.what, at.altitude, left, at.left)
			}
		}
	}
}

// The standard's air correction, stretched to the ceilings, against the classic
// lapse of power with density: Gagg and Ferrar (1934), P/P0 = 1.132 σ − 0.132,
// as Gudmundsson (2014), eq. 7-16, prints it; seen in public codes.
func TestEngineLapseIsNearTheClassicOne(t *testing.T) {
	sea := air.Spec{}.State()
	e, err := engine.New(engine.Default(), sea)
	if err != nil {
		t.Fatal(err)
	}
	full, _ := e.Peak()
	for _, altitude := range []float64{1000, 3000, 5000, 7000, 9000} {
		there := air.Spec{Altitude: altitude}.State()
		power, _ := e.In(there).Peak()
		classic := 1.132*there.Density/sea.Density - 0.132
		if got := power / full; math.Abs(got/classic-1) > 0.05 {
			t.Errorf("at %.0f m %.4f of the power is left, classically %.4f", altitude, got, classic)
		}
		again, err := engine.New(engine.Default(), there)
		if err != nil {
			t.Fatal(err)
		}
		if want, _ := again.Peak(); power != want {
			t.Errorf("at %.0f m the engine carried there gives %.6g W, one made there %.6g W", altitude, power, want)
		}
	}
}

func BenchmarkCeiling(b *testing.B) {
	s := Sample()
	c, m := built(b, &s.Variants[0])
	b.ReportAllocs()
	for b.Loop() {
		if !c.ceiling(m).Absolute.Known {
			b.Fatal("no ceiling")
		}
	}
}

func BenchmarkMatch(b *testing.B) {
	s := Sample()
	c, _ := built(b, &s.Variants[0])
	b.ReportAllocs()
	for b.Loop() {
		c.match()
	}
}
