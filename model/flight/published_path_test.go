package flight

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/param"
	"backspan/model/unit"
)

// airplane is a wing whose trim is one point of an airplane's drag polar.
func airplane(t testing.TB, c published.Case) (w Wing, mass, density float64) {
	trim, area := unit.FootPerSecond.SI(c.Num(t, "trim")), c.Num(t, "area")*unit.Foot.SI(1)*unit.Foot.SI(1)
	density = unit.SlugPerCubicFoot.SI(c.Num(t, "density"))
	weight := unit.PoundForce.SI(c.Num(t, "weight"))
	lift := weight / (density / 2 * trim * trim * area)
	drag := c.Num(t, "least_drag") + c.Num(t, "lift_drag")*lift*lift
	w = DefaultWing()
	w.TrimSpeed, w.ReferenceMass, w.GlideRatio = trim*math.Sqrt(density/standardDensity), weight/gravity, lift/drag
	w.LiftDragShare = c.Num(t, "lift_drag") * lift * lift / drag
	return w, weight / gravity, density
}

func pathCases() map[string]published.Runner {
	return map[string]published.Runner{
		"airplane": func(t testing.TB, c published.Case) map[string]float64 {
			w, mass, density := airplane(t, c)
			got := map[string]float64{}
			for name := range c.Want {
				v, err := strconv.ParseFloat(strings.TrimPrefix(name, "t"), 64)
				if err != nil {
					t.Fatal(err)
				}
				got[name] = unit.PoundForce.From(LevelThrust(w, mass, density, unit.FootPerSecond.SI(v)))
			}
			return got
		},
		"best_glide": func(t testing.TB, c published.Case) map[string]float64 {
			w, mass, density := airplane(t, c)
			w.GlideRatio = bestGlide(w)
			angle, _, ok := Climb(w, mass, 0, density)
			if !ok {
				t.Error("no glide")
			}
			return map[string]float64{"glide": w.GlideRatio, "angle": -unit.Degree.From(angle)}
		},
		"breguet_range":     breguetRange,
		"breguet_endurance": breguetEndurance,
		"ceiling": func(t testing.TB, c published.Case) map[string]float64 {
			top, first := c.Num(t, "ceiling"), c.Num(t, "per_minute")/60
			f := FindCeiling(0, first, 3000, func(h float64) (float64, bool) { return first * (1 - h/top), true })
			return map[string]float64{"absolute": f.Absolute.Value, "service": f.Service.Value}
		},
		"speeds": func(t testing.TB, c published.Case) map[string]float64 {
			w := polarWing(t, c)
			w.LeastSpeed, w.TopSpeed = 0.4, 2
			s := LevelSpeeds(w, c.Num(t, "mass"), standardDensity, falling(c.Num(t, "static"), c.Num(t, "per_speed")))
			if !s.ShortSlow || !s.ShortFast {
				t.Errorf("%+v", s)
			}
			return map[string]float64{"slowest": s.Slowest, "fastest": s.Fastest, "best_glide": bestGlide(w)}
		},
		"take_off": func(t testing.TB, c published.Case) map[string]float64 {
			w := polarWing(t, c)
			w.LiftOffSpeed, w.Headwind, w.LegsPush = c.Num(t, "lift_off"), c.Num(t, "headwind"), c.Num(t, "push")
			r := TakeOff(w, c.Num(t, "mass"), standardDensity, falling(c.Num(t, "static"), c.Num(t, "per_speed")))
			return map[string]float64{"airspeed": r.Airspeed, "time": r.Time, "run": r.Distance}
		},
		"cruise": func(t testing.TB, c published.Case) map[string]float64 {
			r := burn(t, c.Num(t, "mass"), c.Num(t, "fuel"), c.Num(t, "flow"), c.Num(t, "light_flow"))
			return map[string]float64{"hours": unit.Hour.From(r.Endurance.Value), "range_over_speed": r.Range.Value / r.TrimSpeed}
		},
		"response": response,
	}
}

func polarWing(t testing.TB, c published.Case) Wing {
	w := wing(t, c)
	w.LiftDragShare = c.Num(t, "lift_drag_share")
	return w
}

// falling is a thrust that falls evenly with airspeed.
func falling(static, perSpeed float64) ThrustLine {
	return Thrust(static, 10, static-10*perSpeed, 0, 0)
}

// burn flies a craft of a mass with fuel through its tank.
func burn(t testing.TB, mass, fuel, flow, light float64) Result {
	in := sample()
	in.PilotMass = mass - in.UnitMass - in.Wing.Mass - in.Seat.ClothingMass
	in.FuelMass, in.LevelFuelFlow, in.LightFuelFlow = fuel, param.Known(flow), param.Known(light)
	r := Fly(&in)
	if !r.Endurance.Known || math.Abs(r.AllUp-mass) > 1e-9 {
		t.Error(fmt.Sprint("all-up ", r.AllUp))
	}
	return r
}

// breguet burns in proportion to power, and power grows with mass to 3/2.
func breguet(t testing.TB, c published.Case, power func(weight float64) float64) Result {
	weight, fuel := unit.PoundForce.SI(c.Num(t, "weight")), unit.PoundMass.SI(c.Num(t, "fuel"))
	mass := weight / gravity
	flow := unit.PoundPerHorsepowerHr.SI(c.Num(t, "lb_per_hp_hour")) * power(weight) / c.Num(t, "efficiency")
	return burn(t, mass, fuel, flow, flow*math.Pow(1-fuel/mass, 1.5))
}

func breguetRange(t testing.TB, c published.Case) map[string]float64 {
	in := sample()
	mass := unit.PoundForce.SI(c.Num(t, "weight")) / gravity
	speed, _ := Level(in.Wing, mass, in.AirDensity)
	r := breguet(t, c, func(weight float64) float64 { return weight * speed / c.Num(t, "glide") })
	return map[string]float64{"miles": unit.Foot.From(r.Range.Value) / 5280}
}

func breguetEndurance(t testing.TB, c published.Case) map[string]float64 {
	area, density := c.Num(t, "area")*unit.Foot.SI(1)*unit.Foot.SI(1), unit.SlugPerCubicFoot.SI(c.Num(t, "density"))
	r := breguet(t, c, func(weight float64) float64 {
		return weight * math.Sqrt(2*weight/(density*area)) / c.Num(t, "factor")
	})
	return map[string]float64{"hours": unit.Hour.From(r.Endurance.Value)}
}

func response(t testing.TB, c published.Case) map[string]float64 {
	in := sample()
	in.PilotMass, in.Seat.ClothingMass = c.Num(t, "pilot"), 0
	in.Seat.Gyration, in.Seat.YawGyration = c.Num(t, "pitch_gyration"), c.Num(t, "yaw_gyration")
	in.HangAft, in.Seat.Aft = 0, -c.Num(t, "ahead")
	in.HangUp, in.Seat.Up = 0, -c.Num(t, "below")
	in.UnitPitchInertia, in.UnitYawInertia = c.Num(t, "unit_pitch"), c.Num(t, "unit_yaw")
	in.PropellerInertia, in.PropellerSpeed, in.DrivenInertia, in.CrankInertia = c.Num(t, "momentum")/200, 200, 0, 0
	in.Wing.TurnRate = 1
	r := Fly(&in)
	return map[string]float64{"pitch_inertia": r.PitchInertia, "yaw_inertia": r.YawInertia, "nodding": r.AngularAcceleration, "yawing": r.YawAcceleration}
}

// bestGlide is the greatest lift over drag of the wing's polar, sought in small
// steps of speed.
func bestGlide(w Wing) float64 {
	best := 0.0
	for v := 0.3; v < 3; v += 0.0005 {
		weight := w.ReferenceMass * gravity
		best = math.Max(best, weight/w.drag(weight, v*w.TrimSpeed, standardDensity))
	}
	return best
}
