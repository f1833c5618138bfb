package engine

import (
	"math"
	"testing"

	"backspan/model/air"
	"backspan/model/internal/published"
)

// concept is an engine of the broad shape with the fields a case changes.
func concept(t testing.TB, change func(*Spec)) Engine {
	t.Helper()
	s := Default()
	s.CurveSource = Concept
	change(&s)
	return build(t, s)
}

func build(t testing.TB, s Spec) Engine {
	t.Helper()
	e, err := New(s, air.Default().State())
	if err != nil {
		t.Fatal(err)
	}
	return e
}

func TestPublished(t *testing.T) {
	published.Run(t, "engine", map[string]published.Runner{
		"correction": func(t testing.TB, c published.Case) map[string]float64 {
			at := air.State{Pressure: c.Num(t, "dry_pressure"), Temperature: c.Num(t, "temperature") + 273.15}
			return map[string]float64{"factor": Correction(c.Word(t, "standard")).factor(at)}
		},
		"broad": func(t testing.TB, c published.Case) map[string]float64 {
			e := concept(t, func(*Spec) {})
			peak, at := e.Peak()
			speed := c.Num(t, "x") * at
			return map[string]float64{"torque_ratio": e.Torque(speed) / e.Torque(at), "power_ratio": e.Power(speed) / peak}
		},
		"efficiency": func(t testing.TB, c published.Case) map[string]float64 {
			r := referencePeak(fuelled(t, c))
			return map[string]float64{"efficiency": 100 * r.Power / r.FuelHeat}
		},
		"fuel_heat": func(t testing.TB, c published.Case) map[string]float64 {
			r := referencePeak(fuelled(t, c))
			return map[string]float64{"fuel_heat_per_power": r.FuelHeat / r.Power}
		},
		"torque": func(t testing.TB, c published.Case) map[string]float64 {
			speed := perMinute(c.Num(t, "speed"))
			e := twoPoints(t, speed, c.Num(t, "torque")*speed)
			return map[string]float64{"power": e.Power(speed) * e.factor / 1000}
		},
		"power": func(t testing.TB, c published.Case) map[string]float64 {
			speed := perMinute(c.Num(t, "speed"))
			e := twoPoints(t, speed, 1000*c.Num(t, "power"))
			return map[string]float64{"torque": e.Torque(speed) * e.factor}
		},
		"textbook": func(t testing.TB, c published.Case) map[string]float64 {
			speed := perMinute(c.Num(t, "speed"))
			r := sized(t, c, FourStroke).At(c.Num(t, "torque")*speed, speed)
			return map[string]float64{
				"displacement": r.Displacement * 1000, "piston_speed": r.MeanPistonSpeed,
				"power": r.Power / 1000, "mean_pressure": r.MeanEffectivePressure / 1000,
			}
		},
		"mean_pressure": func(t testing.TB, c published.Case) map[string]float64 {
			speed := perMinute(8000)
			r := sized(t, c, TwoStroke).At(c.Num(t, "torque")*speed, speed)
			return map[string]float64{"mean_pressure": r.MeanEffectivePressure / 1e5}
		},
		"inertia_torque":  inertiaTorque,
		"gas_torque":      gasTorque,
		"gas_and_inertia": gasAndInertia,
		"piston":          piston,
		"constant_volume": constantVolume,
	})
}

func fuelled(t testing.TB, c published.Case) Engine {
	return concept(t, func(s *Spec) {
		s.SpecificFuel = c.Num(t, "specific_fuel") / 3.6e9
		s.HeatingValue = c.Num(t, "heating_value") * 1e6
	})
}

func sized(t testing.TB, c published.Case, cycle Cycle) Engine {
	return concept(t, func(s *Spec) {
		s.Cycle, s.Cylinders = cycle, int(c.Num(t, "cylinders"))
		s.Bore, s.Stroke = c.Num(t, "bore")/1000, c.Num(t, "stroke")/1000
	})
}

// twoPoints is an engine whose curve passes through a point, W and rad/s.
func twoPoints(t testing.TB, speed, power float64) Engine {
	s := Default()
	s.Curve = []Point{{speed, power}, {1.1 * speed, power}}
	return build(t, s)
}

// referencePeak is the peak of full throttle in the reference air.
func referencePeak(e Engine) Running {
	power, speed := e.Peak()
	return e.At(power*e.factor, speed)
}

func near(a, b, share float64) bool {
	return math.Abs(a-b) <= share*math.Max(math.Abs(a), math.Abs(b))
}
