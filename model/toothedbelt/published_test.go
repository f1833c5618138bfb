package toothedbelt

import (
	"fmt"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/part"
	"backspan/model/pulley"
	"backspan/model/unit"
)

func TestPublished(t *testing.T) {
	published.Run(t, "toothedbelt", map[string]published.Runner{
		"diameters": func(t testing.TB, c published.Case) map[string]float64 {
			row, teeth := Section(c.Word(t, "section")).section(), int(c.Num(t, "teeth"))
			return map[string]float64{
				"pitch_diameter":   unit.Millimetre.From(row.pitchDiameter(teeth)),
				"outside_diameter": unit.Millimetre.From(row.outsideDiameter(teeth)),
			}
		},
		"centre_distance": func(t testing.TB, c published.Case) map[string]float64 {
			o, ok := pulley.OpenBelt{Crank: c.Num(t, "crank"), Driven: c.Num(t, "driven")}.WithLength(c.Num(t, "length"))
			if !ok {
				t.Fatal("no centre distance found")
			}
			return map[string]float64{"centre": o.CentreDistance, "crank_wrap": unit.Degree.From(o.CrankWrap())}
		},
		"tensions": func(t testing.TB, c published.Case) map[string]float64 {
			ten := atDesign(unit.Kilowatt.SI(c.Num(t, "kw"))/c.Num(t, "speed"), 0)
			return map[string]float64{"tight": ten.TightSide, "slack": ten.SlackSide, "standing": ten.Standing()}
		},
		"mesh_factor": func(t testing.TB, c published.Case) map[string]float64 {
			got := map[string]float64{}
			for _, z := range c.List(t, "teeth") {
				got[fmt.Sprintf("at_%g", z)] = meshFactor(int(z))
			}
			return got
		},
		"width_factor": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"factor": widthFactor(c.Num(t, "width"), c.Num(t, "base"))}
		},
		"engaged":     meshed,
		"trapezoidal": trapezoidal,
		"stage":       stage,
	})
}

func meshed(t testing.TB, c published.Case) map[string]float64 {
	small, large := int(c.Num(t, "small")), int(c.Num(t, "large"))
	pitch, centre := unit.Millimetre.SI(c.Num(t, "pitch")), unit.Millimetre.SI(c.Num(t, "centre"))
	row := section{pitch: pitch}
	o := pulley.OpenBelt{Crank: row.pitchDiameter(small), Driven: row.pitchDiameter(large), CentreDistance: centre}
	return map[string]float64{"engaged": engaged(small, o.SmallestWrap())}
}

func trapezoidal(t testing.TB, c published.Case) map[string]float64 {
	row, width := Section(c.Word(t, "section")).section(), unit.Millimetre.SI(c.Num(t, "width"))
	speed := row.pitchDiameter(int(c.Num(t, "teeth"))) / 2 * unit.RPM.SI(c.Num(t, "rpm"))
	p := trapezoidalRating(meshFactor(int(c.Num(t, "in_mesh"))), widthFactor(width, row.baseWidth),
		row.allowable, row.massPerWidth*width, speed)
	return map[string]float64{"kw": unit.Kilowatt.From(p)}
}

func stage(t testing.TB, c published.Case) map[string]float64 {
	s := Default()
	s.CrankTeeth, s.DrivenTeeth = int(c.Num(t, "crank_teeth")), int(c.Num(t, "driven_teeth"))
	s.BeltTeeth, s.BeltWidth = int(c.Num(t, "belt_teeth")), unit.Millimetre.SI(c.Num(t, "width"))
	s.ServiceFactor = c.Num(t, "service_factor")
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
		"centre": millimetre(b.AxisOffset()), "shorter": millimetre(r.CentreShorter.Value), "longer": millimetre(r.CentreLonger.Value),
		"wrap": degree(r.Geometry.CrankWrap()), "teeth": r.TeethEngaged, "span": millimetre(r.Geometry.Span()),
		"speed": r.Speed, "pull": r.Pull, "centrifugal": r.Tensions.Centrifugal, "standing": r.StandingTension,
		"tight": r.Tensions.TightSide, "slack": r.Tensions.SlackSide,
		"load_running": r.Running.Size(), "load_angle": degree(r.Running.Angle()), "load_standing": r.Standing.Size(),
		"frequency": r.SpanFrequency, "tight_frequency": r.TightFrequency.Value, "slack_frequency": r.SlackFrequency.Value,
		"mesh_frequency": r.MeshFrequency, "pass_frequency": r.PassFrequency,
	}
}
