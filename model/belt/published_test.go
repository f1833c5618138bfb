package belt

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/part"
	"backspan/model/pulley"
	"backspan/model/unit"
)

func TestPublished(t *testing.T) {
	published.Run(t, "belt", map[string]published.Runner{
		"open_belt": func(t testing.TB, c published.Case) map[string]float64 {
			return wraps(openBelt(t, c))
		},
		"centre_distance": func(t testing.TB, c published.Case) map[string]float64 {
			o := pulley.OpenBelt{Crank: c.Num(t, "crank"), Driven: c.Num(t, "driven")}
			o, ok := o.WithLength(c.Num(t, "length"))
			if !ok {
				t.Fatal("no centre distance found")
			}
			return wraps(o)
		},
		"belt_speed": func(t testing.TB, c published.Case) map[string]float64 {
			o := pulley.OpenBelt{Crank: unit.Inch.SI(c.Num(t, "diameter"))}
			return map[string]float64{"ft_min": 60 * unit.FootPerSecond.From(o.Speed(unit.RPM.SI(c.Num(t, "rpm"))))}
		},
		"traction": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"ratio": traction(c.Num(t, "friction"), c.Num(t, "wrap_rad"))}
		},
		"wedge": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"effective": wedge(c.Num(t, "friction"), unit.Degree.SI(c.Num(t, "groove")))}
		},
		"arc_factor": func(t testing.TB, c published.Case) map[string]float64 {
			got := map[string]float64{}
			for _, w := range c.List(t, "wraps") {
				name := "at_" + strings.ReplaceAll(fmt.Sprint(w), ".", "_")
				got[name] = arcFactor(c.Num(t, "ratio"), unit.Degree.SI(w))
			}
			return got
		},
		"twin": func(t testing.TB, c published.Case) map[string]float64 {
			b, at := eightRib(t, c)
			w := b.twin(part.Train{})
			w.crank, w.driven = c.Num(t, "crank_inertia"), c.Num(t, "propeller_side_inertia")/(b.ratio*b.ratio)
			g := w.transfer(at.CrankSpeed / w.natural(2))
			return map[string]float64{
				"stiffness": 2 * w.stiffness * w.radius * w.radius, "torsional": w.natural(2) / (2 * math.Pi),
				"amplification": math.Hypot(real(g), imag(g)),
				"order_2_rpm":   unit.RPM.From(w.natural(2) / 2), "order_3_rpm": unit.RPM.From(w.natural(2) / 3),
			}
		},
		"running_spans": func(t testing.TB, c published.Case) map[string]float64 {
			b, at := eightRib(t, c)
			pair := b.spanPair(b.standing, at.Power, at.CrankSpeed)
			return map[string]float64{"tight": pair.tight, "slack": pair.slack, "belt_pass": b.Run().Speed(at.CrankSpeed) / b.Run().Length()}
		},
		"thermal_growth": func(t testing.TB, c published.Case) map[string]float64 {
			b, at := eightRib(t, c)
			return map[string]float64{"growth": b.Examine(at, part.Train{}).Adjustment.Growth}
		},
		"eccentric": func(t testing.TB, c published.Case) map[string]float64 {
			e := eccentric{c.Num(t, "offset"), c.Num(t, "centre")}
			return map[string]float64{"travel_per_offset": e.travel() / e.offset}
		},
		"durability": func(t testing.TB, c published.Case) map[string]float64 {
			l := law{strength: c.Num(t, "strength"), exponent: c.Num(t, "exponent")}
			per := l.perPeaks(c.Num(t, "first"), c.Num(t, "second"))
			// A length in inches over a speed in ft/min is five seconds' worth.
			length, speed := unit.Inch.SI(c.Num(t, "length")), unit.FootPerSecond.SI(c.Num(t, "ft_min")/60)
			return map[string]float64{"passes": 1 / per, "hours_at_1e9": unit.Hour.From(life(1e-9, length, speed))}
		},
		"bending_peaks": func(t testing.TB, c published.Case) map[string]float64 {
			k, tight := c.Num(t, "bending"), c.Num(t, "tight")
			l := law{strength: c.Num(t, "strength"), exponent: c.Num(t, "exponent"), bending: k}
			small, large := c.Num(t, "small"), c.Num(t, "large")
			// The law's damage at both pulleys, undone into one peak each.
			undo := func(damage float64) float64 { return l.strength * math.Pow(damage, 1/l.exponent) }
			return map[string]float64{
				"first": undo(l.perPass(tight, small, small) / 2), "second": undo(l.perPass(tight, large, large) / 2),
				"passes": 1 / l.perPass(tight, small, large),
			}
		},
		"hours": func(t testing.TB, c published.Case) map[string]float64 {
			got := map[string]float64{}
			for _, factor := range c.List(t, "peak_factors") {
				b, at := eightRib(t, c, func(s *Spec) {
					s.ServiceFactor = factor
					s.Use = Use{Full: 1}
					s.Fatigue.HalvingFrom = 1e4
				})
				got[strings.ReplaceAll(fmt.Sprintf("at_%.1f", factor), ".", "_")] = unit.Hour.From(b.Examine(at, part.Train{}).Life.Fatigue)
			}
			return got
		},
		"locked": func(t testing.TB, c published.Case) map[string]float64 {
			return spans(pulley.Locked(c.Num(t, "standing"), c.Num(t, "pull"), c.Num(t, "centrifugal")), c.Num(t, "wrap_rad"))
		},
		"at_traction": func(t testing.TB, c published.Case) map[string]float64 {
			ratio := traction(c.Num(t, "friction"), c.Num(t, "wrap_rad"))
			got := spans(atTraction(c.Num(t, "pull"), ratio, c.Num(t, "centrifugal")), c.Num(t, "wrap_rad"))
			got["ratio"] = ratio
			return got
		},
		"tight_side":      tightSide,
		"tight_side_open": tightSideOpen,
		"slack_side":      slackSide,
		"locked_power":    lockedPower,
		"stage":           stage,
	})
}

func openBelt(t testing.TB, c published.Case) pulley.OpenBelt {
	return pulley.OpenBelt{Crank: c.Num(t, "crank"), Driven: c.Num(t, "driven"), CentreDistance: c.Num(t, "centre")}
}

func wraps(o pulley.OpenBelt) map[string]float64 {
	return map[string]float64{
		"crank_wrap_rad": o.CrankWrap(), "driven_wrap_rad": o.DrivenWrap(), "length": o.Length(),
		"crank_wrap": unit.Degree.From(o.CrankWrap()), "centre": o.CentreDistance,
	}
}

func spans(ten pulley.Tensions, wrap float64) map[string]float64 {
	f, _ := demand(ten, wrap)
	return map[string]float64{
		"tight": ten.TightSide, "slack": ten.SlackSide, "initial": ten.Standing() - ten.Centrifugal, "friction": f,
	}
}

// tightSide turns a printed power back into the tight side it came from.
func tightSide(t testing.TB, c published.Case) map[string]float64 {
	speed, ok := c.Given["speed"].(float64)
	if !ok {
		speed = pulley.OpenBelt{Crank: c.Num(t, "diameter")}.Speed(unit.RPM.SI(c.Num(t, "rpm")))
	}
	friction := c.Num(t, "friction")
	if _, grooved := c.Given["groove"]; grooved {
		friction = wedge(friction, unit.Degree.SI(c.Num(t, "groove")))
	}
	ratio := traction(friction, unit.Degree.SI(c.Num(t, "wrap")))
	pull := unit.Kilowatt.SI(c.Num(t, "kw")) / speed / c.Num(t, "belts")
	return map[string]float64{"tight": atTraction(pull, ratio, pulley.Centrifugal(c.Num(t, "mass"), speed)).TightSide}
}

func tightSideOpen(t testing.TB, c published.Case) map[string]float64 {
	o := openBelt(t, c)
	speed := pulley.OpenBelt{Crank: c.Num(t, "speed_diameter")}.Speed(unit.RPM.SI(c.Num(t, "rpm")))
	pull := unit.Kilowatt.SI(c.Num(t, "kw")) / speed
	ratio := traction(c.Num(t, "friction"), o.SmallestWrap())
	return map[string]float64{
		"tight":         atTraction(pull, ratio, pulley.Centrifugal(c.Num(t, "mass"), speed)).TightSide,
		"driven_torque": pull * o.Driven / 2,
	}
}

// slackSide checks a printed pair: the pull between the printed tight side and
// the slack side that friction leaves must give that tight side back.
func slackSide(t testing.TB, c published.Case) map[string]float64 {
	o := openBelt(t, c)
	tc := pulley.Centrifugal(c.Num(t, "mass"), o.Speed(unit.RPM.SI(c.Num(t, "rpm"))))
	ratio := traction(wedge(c.Num(t, "friction"), unit.Degree.SI(c.Num(t, "groove"))), o.SmallestWrap())
	pull := (c.Num(t, "tight") - tc) * (ratio - 1) / ratio
	return map[string]float64{"centrifugal": tc, "slack": atTraction(pull, ratio, tc).SlackSide}
}

func lockedPower(t testing.TB, c published.Case) map[string]float64 {
	o := openBelt(t, c)
	speed := o.Speed(unit.RPM.SI(c.Num(t, "rpm")))
	ratio := traction(c.Num(t, "friction"), o.SmallestWrap())
	pull := skidPull(c.Num(t, "standing"), pulley.Centrifugal(c.Num(t, "mass"), speed), ratio)
	return map[string]float64{"kw": unit.Kilowatt.From(pull * speed)}
}

// eightRib is the stage of a case at its duty.
func eightRib(t testing.TB, c published.Case, changes ...func(*Spec)) (Belt, part.Duty) {
	s := Default()
	s.Ribs = int(c.Num(t, "ribs"))
	s.CrankDiameter = unit.Millimetre.SI(c.Num(t, "crank"))
	s.DrivenDiameter = unit.Millimetre.SI(c.Num(t, "driven"))
	s.CentreDistance = unit.Millimetre.SI(c.Num(t, "centre"))
	s.ServiceFactor = 1
	s.TractionRatio = math.Exp(math.Pi * c.Num(t, "design_friction"))
	at := part.Duty{
		Power: unit.Kilowatt.SI(c.Num(t, "kw")), CrankSpeed: unit.RPM.SI(c.Num(t, "rpm")),
		AirTemperature: 288.15, AirDensity: 1.225,
	}
	for _, change := range changes {
		change(&s)
	}
	b, err := New(s, at, 0, part.Train{})
	if err != nil {
		t.Fatal(err)
	}
	return b, at
}

func stage(t testing.TB, c published.Case) map[string]float64 {
	b, at := eightRib(t, c)
	r := b.Examine(at, part.Train{})
	millimetre, degree := unit.Millimetre.From, unit.Degree.From
	return map[string]float64{
		"ratio": b.Ratio(), "tilt": degree(r.Geometry.SpanTilt()), "crank_wrap": degree(r.Geometry.CrankWrap()), "span": millimetre(r.Geometry.Span()),
		"pitch_length": millimetre(r.Geometry.Length()), "effective_length": millimetre(r.EffectiveLength),
		"speed": r.Speed, "pull": r.Pull, "centrifugal": r.Tensions.Centrifugal,
		"tight": r.Tensions.TightSide, "slack": r.Tensions.SlackSide, "standing": r.StandingTension,
		"load_running": r.Running.Size(), "load_angle": degree(r.Running.Angle()), "load_standing": r.Standing.Size(),
		"frequency": r.SpanFrequency, "creep": 100 * r.Creep, "setting_rate": r.SettingRate / 1000, "face": millimetre(r.FaceWidth),
	}
}
