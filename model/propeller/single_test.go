package propeller

import (
	"math"
	"strings"
	"testing"

	"backspan/model/reading"
)

// The counterweight of a single blade balances the blade's static moment about
// the shaft, and mass and inertia count it.
func TestSingleBladeIsBalanced(t *testing.T) {
	two, one := made(t, nothing), made(t, func(s *Spec) { s.Blades = 1 })
	s, moment := one.spec, 0.0
	for i := range one.stations {
		st := &one.stations[i]
		moment += s.Density * st.area * st.width * st.radius
	}
	boss := s.BossDiameter / 2
	moment += s.Density * one.stations[0].area * (s.HubRadius - boss) * (s.HubRadius + boss) / 2
	hub := s.Density * math.Pi * boss * boss * s.BossThickness
	weight := one.Mass() - hub - (two.Mass()-hub)/2
	slow := hub * boss * boss / 2
	inertia := one.PolarInertia() - slow - (two.PolarInertia()-slow)/2
	arm := math.Sqrt(inertia / weight)
	if math.Abs(arm-0.2*one.tip) > 1e-9 || math.Abs(weight*arm/moment-1) > 1e-9 {
		t.Errorf("%.3f kg at %.3f m against a moment of %.4f kg m", weight, arm, moment)
	}
	f := standard(0, 2550)
	a, b := one.At(f), two.At(f)
	if a.Status != Valid || a.Thrust < 0.4*b.Thrust || a.Thrust > 0.7*b.Thrust {
		t.Errorf("%v, %.0f N of %.0f N", a.Status, a.Thrust, b.Thrust)
	}
	said := false
	for _, c := range one.Report(a, a).Checks(nil, 0.1) {
		said = said || c.Key == "propeller.single_blade" && c.Verdict == reading.NotRated && strings.Contains(c.Why, "its thrust bends the shaft once a turn")
	}
	mass, _ := reading.Find(one.Report(a, a).Readings(nil), "propeller.mass")
	if !said || !strings.Contains(mass.Method, "counterweight") {
		t.Errorf("said %v, %s", said, mass.Method)
	}
}

// Past the Mach number of the section model no figure but speed itself is shown,
// and a design does not end there.
func TestPastTheMachLimitNothingStands(t *testing.T) {
	p := made(t, nothing)
	slow, fast := p.At(standard(0, 4400)), p.At(standard(0, 4500))
	if slow.Status != Valid || fast.Status != TooFast {
		t.Fatalf("tip Mach %.3f %v, %.3f %v", slow.TipMach, slow.Status, fast.TipMach, fast.Status)
	}
	r := p.Report(fast, fast)
	for _, x := range r.Readings(nil) {
		shown := x.Key == "propeller.tip_mach" || x.Key == "propeller.mass" || x.Key == "propeller.inertia"
		if x.Known() != shown || !shown && !strings.Contains(x.Why, "Mach number 0.85") {
			t.Errorf("%s: %s", x.Key, x.Text())
		}
	}
	failing := 0
	for _, c := range r.Checks(nil, 0.1) {
		if c.Verdict == reading.Fails && strings.HasPrefix(c.Cure, "shocks on the tips") {
			failing++
		}
	}
	if failing != 2 {
		t.Errorf("%d checks fail for it", failing)
	}
	s, a := Default(), aim(10)
	a.Flow.Speed = rpm(4500)
	if _, err := s.Design(a); err == nil || !strings.Contains(err.Error(), "Mach number 0.85") {
		t.Errorf("a design at that speed: %v", err)
	}
}

// The tip is faster in flight; the check names the point that its figure is of.
func TestTipMachNamesItsPoint(t *testing.T) {
	p := made(t, nothing)
	r := p.Report(p.At(standard(0, 2500)), p.At(standard(12, 2550)))
	if c := r.Checks(nil, 0.1)[0]; c.Key != "propeller.tip_mach" || c.Label != "Tip Mach number, at trim speed" || c.Value != r.Trim.TipMach {
		t.Errorf("%+v", c)
	}
	r.Trim = Point{}
	if c := r.Checks(nil, 0.1)[0]; c.Label != "Tip Mach number, standing" || c.Value != r.Static.TipMach {
		t.Errorf("%+v", c)
	}
}
