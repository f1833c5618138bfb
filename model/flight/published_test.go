package flight

import (
	"maps"
	"math"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/param"
	"backspan/model/unit"
)

func wing(t testing.TB, c published.Case) Wing {
	w := DefaultWing()
	if _, given := c.Given["glide_ratio"]; given {
		w.GlideRatio = c.Num(t, "glide_ratio")
	}
	w.TrimSpeed, w.ReferenceMass = c.Num(t, "trim_speed"), c.Num(t, "reference_mass")
	return w
}

func TestPublished(t *testing.T) {
	cases := map[string]published.Runner{
		"level": func(t testing.TB, c published.Case) map[string]float64 {
			w := wing(t, c)
			w.ThrustTilt = unit.Degree.SI(c.Num(t, "tilt_deg"))
			v, thrust := Level(w, c.Num(t, "mass"), standardDensity)
			return map[string]float64{"thrust": thrust, "airspeed": v}
		},
		"climb": func(t testing.TB, c published.Case) map[string]float64 {
			angle, v, ok := Climb(wing(t, c), c.Num(t, "mass"), c.Num(t, "thrust"), standardDensity)
			if !ok {
				t.Error("no climb")
			}
			return map[string]float64{"angle": unit.Degree.From(angle), "rate": v * math.Sin(angle)}
		},
		"density": func(t testing.TB, c published.Case) map[string]float64 {
			v, _ := Level(wing(t, c), c.Num(t, "mass"), c.Num(t, "density"))
			return map[string]float64{"airspeed": v}
		},
		"torque":        torqueCase,
		"spin":          spinCase,
		"hang":          hangCase,
		"static_moment": staticMomentCase,
		"lines_twist":   twistCase,
		"twist": func(t testing.TB, c published.Case) map[string]float64 {
			k := twistStiffness(c.Num(t, "mass")*gravity, c.Num(t, "spacing"), c.Num(t, "spread"), c.Num(t, "height"))
			return map[string]float64{"stiffness": k}
		},
		"endurance": func(t testing.TB, c published.Case) map[string]float64 {
			in := sample()
			in.FuelDensity = c.Num(t, "density")
			in.FuelMass = unit.Litre.SI(c.Num(t, "litres")) * in.FuelDensity
			in.LevelFuelFlow = param.Known(unit.GramPerKilowattHour.SI(c.Num(t, "g_per_kwh")) * c.Num(t, "power"))
			return map[string]float64{"hours": unit.Hour.From(Fly(&in).Endurance.Value)}
		},
	}
	maps.Copy(cases, pathCases())
	published.Run(t, "flight", cases)
}

// hangAt is a craft whose pilot and machine share one centre of gravity.
func hangAt(aft, below float64) Input {
	in := sample()
	in.HangAft, in.HangUp = 0, 0
	in.Seat = Seat{Aft: aft, Up: -below}
	in.UnitAft, in.UnitUp = aft, -below
	return in
}

func torqueCase(t testing.TB, c published.Case) map[string]float64 {
	in := hangAt(0.05, 0.25)
	in.UnitMass = 28
	in.PilotMass = c.Num(t, "mass") - in.UnitMass - in.Wing.Mass
	in.Wing.LineHeight = c.Num(t, "height") - 0.25
	in.HangSpacing, in.ShaftTorque = c.Num(t, "spacing"), c.Num(t, "torque")
	r := Fly(&in)
	return map[string]float64{
		"difference": r.HangLoadDifference, "shift": unit.Millimetre.From(r.WeightShift), "bank": unit.Degree.From(r.Bank.Value),
	}
}

func spinCase(t testing.TB, c published.Case) map[string]float64 {
	in := sample()
	radius := c.Num(t, "radius")
	in.PropellerInertia = c.Num(t, "shape") * c.Num(t, "propeller_mass") * radius * radius
	in.PropellerSpeed = unit.RPM.SI(c.Num(t, "speed_rpm"))
	in.DrivenInertia = 0
	in.CrankInertia, in.CrankSpeed = c.Num(t, "crank_inertia"), in.PropellerSpeed*c.Num(t, "ratio")
	in.Turn = int(c.Num(t, "turn"))
	r := Fly(&in)
	return map[string]float64{"inertia": in.PropellerInertia, "couple": r.GyroscopicCouple, "momentum": r.AngularMomentum}
}

func hangCase(t testing.TB, c published.Case) map[string]float64 {
	in := hangAt(c.Num(t, "aft"), c.Num(t, "below"))
	in.PilotMass, in.UnitMass = c.Num(t, "mass")-28, 28
	in.ThrustHeight, in.Line = -c.Num(t, "thrust_below"), steady(c.Num(t, "thrust"))
	r := Fly(&in)
	if !r.HangsOff || !r.HangsFull {
		t.Error("no hang")
	}
	return map[string]float64{"off": unit.Degree.From(r.HangOff), "full": unit.Degree.From(r.HangFull)}
}

func staticMomentCase(t testing.TB, c published.Case) map[string]float64 {
	in := sample()
	in.UnitMass, in.UnitAft = c.Num(t, "mass"), in.HangAft+c.Num(t, "aft")
	return map[string]float64{"moment": Fly(&in).StaticMoment}
}
