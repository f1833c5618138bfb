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
		"settles": settles,
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
	pt := FullThrottle(e, slipping{ratio: 1}, &p, flow)
	return map[string]float64{"speed": unit.RPM.From(pt.PropellerSpeed), "thrust": unit.PoundForce.From(pt.Propeller.Thrust), "efficiency": pt.Propeller.Efficiency}
}

func cube(x float64) float64 { return x * x * x }
func pow5(x float64) float64 { return cube(x) * x * x }
