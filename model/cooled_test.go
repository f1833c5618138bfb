package model

import (
	"fmt"
	"testing"

	"backspan/model/cooling"
	"backspan/model/engine"
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
	bare := evaluated(t, [][2]string{{"cooling.head.pulley_shade", "0"}})
	if a, b := value(t, up, "cooling.head_temperature"), value(t, bare, "cooling.head_temperature"); a <= b {
		t.Errorf("the driven pulley before the fins takes the head from %g to %g °C", b, a)
	}
	ahead := evaluated(t, [][2]string{{"cooling.head.cylinder_aft", "0"}})
	if a, b := value(t, up, "cooling.inflow_share"), value(t, ahead, "cooling.inflow_share"); a == b {
		t.Error("the cylinder's place along the machine does not tell")
	}
}

// On another day the engine gives what its own correction says for that air.
func TestAnotherDayFollowsTheEnginesCorrection(t *testing.T) {
	s := Sample()
	c := chain{study: s, variant: &s.Variants[0]}
	c.run()
	const speed, hot = 800, 318.15
	site := s.Site
	site.TemperatureOffset += hot - c.air.Temperature
	there, err := engine.New(s.Variants[0].Engine, site.State())
	if err != nil {
		t.Fatal(err)
	}
	if got, want := c.dayAt(hot, speed), (cooling.Day{Power: there.Power(speed), Density: site.State().Density}); got != want || got.Power >= c.engine.Power(speed) {
		t.Errorf("%+v, want %+v, today %g W", got, want, c.engine.Power(speed))
	}
}

// A head measured in today's air must be given back.
func TestHeadMeasuredTodayIsGivenBack(t *testing.T) {
	today := fmt.Sprintf("%.9f", value(t, evaluated(t, nil), "air.temperature"))
	o := evaluated(t, [][2]string{{"cooling.head.measured_head", "210"}, {"cooling.head.measured_air", today}})
	within(t, "head, °C", value(t, o, "cooling.head_temperature"), 210, 1e-6)
}
