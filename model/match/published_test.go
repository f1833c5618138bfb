package match

import (
	"math"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/propeller"
	"backspan/model/unit"
)

func TestPublished(t *testing.T) {
	published.Run(t, "match", map[string]published.Runner{
		"fixed_geometry": func(t testing.TB, c published.Case) map[string]float64 {
			var l load
			l.cubic = c.Num(t, "cp") * c.Num(t, "density") * pow5(c.Num(t, "diameter")) / cube(2*3.141592653589793)
			return map[string]float64{"power": l.power(unit.RPM.SI(c.Num(t, "speed")))}
		},
		"settles": settles, "settles_measured": settlesMeasured,
	})
}

// settles runs an engine of constant power on a propeller given by stations.
func settles(t testing.TB, c published.Case) map[string]float64 {
	foot := unit.Foot.SI(1)
	radius, chord, beta := c.List(t, "radius"), c.List(t, "chord"), c.List(t, "beta")
	tip := c.Num(t, "diameter") / 2
	s := propeller.Default()
	s.Shape, s.Diameter, s.HubRadius, s.HubLoss, s.BossDiameter = propeller.Stations, 2*tip*foot, c.Num(t, "hub_diameter")/2*foot, false, 0.1
	s.InstallationLoss, s.HubDrag, s.Rows = 0, 0, nil
	for i := range radius {
		s.Rows = append(s.Rows, []float64{radius[i] / tip, math.Max(chord[i], 0.001) * foot, unit.Degree.SI(beta[i])})
	}
	lift, slope := c.Num(t, "cl"), c.Num(t, "slope_per_degree")
	s.Family = propeller.OwnFigures
	s.Own = propeller.Section{ZeroLiftAngle: unit.Degree.SI(c.Num(t, "alpha") - lift/slope), LiftSlope: slope / unit.Degree.SI(1),
		GreatestLift: 9, LeastLift: -9, LeastDrag: lift / c.Num(t, "lift_to_drag"), LeastDragLift: lift}
	p, err := propeller.New(s)
	if err != nil {
		t.Fatal(err)
	}
	power := unit.Horsepower.SI(c.Num(t, "power"))
	e := curve{peak: power, speed: unit.RPM.SI(2500), lowest: unit.RPM.SI(1500), highest: unit.RPM.SI(3500), shape: func(float64) float64 { return 1 }}
	flow := propeller.Flow{Airspeed: c.Num(t, "airspeed") * foot, Density: unit.SlugPerCubicFoot.SI(c.Num(t, "density")), SoundSpeed: 1e9, Viscosity: 1.789e-5}
	pt := fullAt(e, slipping{ratio: 1}, &p, flow)
	return map[string]float64{"speed": unit.RPM.From(pt.PropellerSpeed), "thrust": unit.PoundForce.From(pt.Propeller.Thrust), "efficiency": pt.Propeller.Efficiency}
}

func cube(x float64) float64 { return x * x * x }
func pow5(x float64) float64 { return cube(x) * x * x }

// settlesMeasured runs an engine of constant power on a measured propeller. The
// thrust is put in terms of the measured speed, so that it stands for thrust at
// equal power.
func settlesMeasured(t testing.TB, c published.Case) map[string]float64 {
	tip, chord, beta := c.Num(t, "radius_mm")/1000, c.List(t, "chord"), c.List(t, "beta")
	s := propeller.Default()
	s.Shape, s.Diameter, s.HubRadius, s.BossDiameter, s.Family, s.InstallationLoss, s.Rows = propeller.Stations, 2*tip, 0.15*tip, 0.01, propeller.ThinSection, 0, nil
	for i := range chord {
		s.Rows = append(s.Rows, []float64{0.15 + 0.05*float64(i), chord[i] * tip, unit.Degree.SI(beta[i])})
	}
	p, err := propeller.New(s)
	if err != nil {
		t.Fatal(err)
	}
	speed := unit.RPM.SI(c.Num(t, "measured_speed"))
	n := speed / (2 * math.Pi)
	power := c.Num(t, "cp") * 1.225 * cube(n) * pow5(2*tip)
	e := curve{peak: power, speed: speed, lowest: 0.5 * speed, highest: 1.5 * speed, shape: func(float64) float64 { return 1 }}
	pt := fullAt(e, slipping{ratio: 1}, &p, air(c.Num(t, "advance")*n*2*tip))
	return map[string]float64{"speed": unit.RPM.From(pt.PropellerSpeed), "ct_at_measured_speed": pt.Propeller.Thrust / (1.225 * n * n * pow5(2*tip) / (2 * tip))}
}
