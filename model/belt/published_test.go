package belt

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/part"
	"backspan/model/unit"
)

func TestPublished(t *testing.T) {
	published.Run(t, "belt", map[string]published.Runner{
		"open_belt": func(t testing.TB, c published.Case) map[string]float64 {
			return wraps(openBelt(t, c))
		},
		"centre_distance": func(t testing.TB, c published.Case) map[string]float64 {
			o := OpenBelt{Crank: c.Num(t, "crank"), Driven: c.Num(t, "driven")}
			o, ok := o.withLength(c.Num(t, "length"))
			if !ok {
				t.Fatal("no centre distance found")
			}
			return wraps(o)
		},
		"belt_speed": func(t testing.TB, c published.Case) map[string]float64 {
			o := OpenBelt{Crank: unit.Inch.SI(c.Num(t, "diameter"))}
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
		"locked": func(t testing.TB, c published.Case) map[string]float64 {
			return spans(locked(c.Num(t, "standing"), c.Num(t, "pull"), c.Num(t, "centrifugal")), c.Num(t, "wrap_rad"))
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

func openBelt(t testing.TB, c published.Case) OpenBelt {
	return OpenBelt{Crank: c.Num(t, "crank"), Driven: c.Num(t, "driven"), CentreDistance: c.Num(t, "centre")}
}

func wraps(o OpenBelt) map[string]float64 {
	return map[string]float64{
		"crank_wrap_rad": o.CrankWrap(), "driven_wrap_rad": o.DrivenWrap(), "length": o.Length(),
		"crank_wrap": unit.Degree.From(o.CrankWrap()), "centre": o.CentreDistance,
	}
}

func spans(ten Tensions, wrap float64) map[string]float64 {
	f, _ := ten.demand(wrap)
	return map[string]float64{
		"tight": ten.TightSide, "slack": ten.SlackSide, "initial": ten.Standing() - ten.Centrifugal, "friction": f,
	}
}

// tightSide turns a printed power back into the tight side it came from.
func tightSide(t testing.TB, c published.Case) map[string]float64 {
	speed, ok := c.Given["speed"].(float64)
	if !ok {
		speed = OpenBelt{Crank: c.Num(t, "diameter")}.Speed(unit.RPM.SI(c.Num(t, "rpm")))
	}
	friction := c.Num(t, "friction")
	if _, grooved := c.Given["groove"]; grooved {
		friction = wedge(friction, unit.Degree.SI(c.Num(t, "groove")))
	}
	ratio := traction(friction, unit.Degree.SI(c.Num(t, "wrap")))
	pull := unit.Kilowatt.SI(c.Num(t, "kw")) / speed / c.Num(t, "belts")
	return map[string]float64{"tight": atTraction(pull, ratio, centrifugal(c.Num(t, "mass"), speed)).TightSide}
}

func tightSideOpen(t testing.TB, c published.Case) map[string]float64 {
	o := openBelt(t, c)
	speed := OpenBelt{Crank: c.Num(t, "speed_diameter")}.Speed(unit.RPM.SI(c.Num(t, "rpm")))
	pull := unit.Kilowatt.SI(c.Num(t, "kw")) / speed
	ratio := traction(c.Num(t, "friction"), o.SmallestWrap())
	return map[string]float64{
		"tight":         atTraction(pull, ratio, centrifugal(c.Num(t, "mass"), speed)).TightSide,
		"driven_torque": pull * o.Driven / 2,
	}
}

// slackSide checks a printed pair: the pull between the printed tight side and
// the slack side that friction leaves must give that tight side back.
func slackSide(t testing.TB, c published.Case) map[string]float64 {
	o := openBelt(t, c)
	tc := centrifugal(c.Num(t, "mass"), o.Speed(unit.RPM.SI(c.Num(t, "rpm"))))
	ratio := traction(wedge(c.Num(t, "friction"), unit.Degree.SI(c.Num(t, "groove"))), o.SmallestWrap())
	pull := (c.Num(t, "tight") - tc) * (ratio - 1) / ratio
	return map[string]float64{"centrifugal": tc, "slack": atTraction(pull, ratio, tc).SlackSide}
}

func lockedPower(t testing.TB, c published.Case) map[string]float64 {
	o := openBelt(t, c)
	speed := o.Speed(unit.RPM.SI(c.Num(t, "rpm")))
	ratio := traction(c.Num(t, "friction"), o.SmallestWrap())
	pull := skidPull(c.Num(t, "standing"), centrifugal(c.Num(t, "mass"), speed), ratio)
	return map[string]float64{"kw": unit.Kilowatt.From(pull * speed)}
}

func stage(t testing.TB, c published.Case) map[string]float64 {
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
	b, err := New(s, at, 0, part.Train{})
	if err != nil {
		t.Fatal(err)
	}
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
