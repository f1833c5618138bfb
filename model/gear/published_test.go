package gear

import (
	"math"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/param"
)

const (
	degree = math.Pi / 180
	rpm    = math.Pi / 30
	inch   = 0.0254
)

func TestPublished(t *testing.T) {
	published.Run(t, "gear", map[string]published.Runner{
		"involute": func(t testing.TB, c published.Case) map[string]float64 {
			y := Involute(c.Num(t, "angle_deg") * degree)
			return map[string]float64{"involute": y, "angle_deg": InvoluteAngle(y) / degree}
		},
		"least_teeth": func(t testing.TB, c published.Case) map[string]float64 {
			rack := Profile(c.Word(t, "profile")).Rack()
			none := rack.LeastShift(0, c.Num(t, "pressure_angle_deg")*degree, 0)
			one := rack.LeastShift(1, c.Num(t, "pressure_angle_deg")*degree, 0)
			return map[string]float64{"teeth": none / (none - one)}
		},
		"least_pinion_teeth": leastPinionTeeth,
		"tip_loaded":         tipLoadedCase,
		"root_form":          rootFormCase,
		"rating":             ratingCase,
		"material":           materialCase,
		"unit_rating":        unitRatingCase,
		"whole_pair":         wholePairCase,
		"agma_strength":      agmaStrengthCase,
		"agma_helical":       agmaHelicalCase,
		"hardness_ratio":     hardnessRatioCase,
		"helical_pitches":    helicalPitchesCase,
		"tooth_forces":       toothForcesCase,
		"lewis":              lewisCase,

		"agma_pitting_geometry": agmaPittingGeometryCase,
		"agma":                  agmaCase,
		"bending_geometry":      bendingGeometryCase,
		"pitch_two":             pitchTwo,
		"geometry":              geometryCase,
		"viscosity": func(t testing.TB, c published.Case) map[string]float64 {
			o := Oil{c.Num(t, "at_40") / mm2, c.Num(t, "at_100") / mm2}
			return map[string]float64{"at_60": o.Viscosity(333.15) * mm2, "at_80": o.Viscosity(353.15) * mm2, "at_100": o.Viscosity(373.15) * mm2}
		},
		"mesh_loss":      meshLossCase,
		"lean_mesh_loss": leanMeshLossCase,
		"churning":       churningCase,
		"seal": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"loss": plainSealDrag(c.Num(t, "diameter")/1000) * c.Num(t, "rpm") * rpm}
		},
	})
}

func leastPinionTeeth(t testing.TB, c published.Case) map[string]float64 {
	n := LeastPinionTeeth(ratioOf(t, c), c.Num(t, "addendum"), c.Num(t, "pressure_angle_deg")*degree, 0)
	return map[string]float64{"teeth": n, "rounded_up": math.Ceil(n)}
}

func ratioOf(t testing.TB, c published.Case) float64 {
	if _, given := c.Given["ratio"]; given {
		return c.Num(t, "ratio")
	}
	return c.Num(t, "wheel_teeth") / c.Num(t, "pinion_teeth")
}

func pitchTwo(t testing.TB, c published.Case) map[string]float64 {
	s := Default()
	s.Module = inch / c.Num(t, "diametral_pitch")
	s.PinionTeeth, s.WheelTeeth = int(c.Num(t, "pinion_teeth")), int(c.Num(t, "wheel_teeth"))
	s.PressureAngle, s.HelixAngle = c.Num(t, "pressure_angle_deg")*degree, 0
	s.PinionShift, s.WheelShift = 0, 0
	if _, given := c.Given["centre_in"]; given {
		s.CentreDistance = param.Known(c.Num(t, "centre_in") * inch)
	}
	g := solve(t, s)
	return map[string]float64{
		"centre_in": g.CentreDistance / inch, "circular_pitch_in": g.BasePitch / math.Cos(g.TransversePressureAngle) / inch,
		"base_pitch_in": g.BasePitch / inch, "pinion_working_in": g.Pinion.WorkingDiameter / inch,
		"wheel_working_in": g.Driven.WorkingDiameter / inch, "working_angle_deg": g.WorkingPressureAngle / degree,
	}
}

func solve(t testing.TB, s Spec) Geometry {
	t.Helper()
	g, err := Solve(s)
	if err != nil {
		t.Fatal(err)
	}
	return g
}

// pairOf reads a pair of gears from a case, lengths in mm.
func pairOf(t testing.TB, c published.Case) Geometry {
	s := Default()
	s.Module = c.Num(t, "module") / 1000
	s.PinionTeeth, s.WheelTeeth = int(c.Num(t, "pinion_teeth")), int(c.Num(t, "wheel_teeth"))
	s.FaceWidth, s.HelixAngle = c.Num(t, "face_width")/1000, c.Num(t, "helix_deg")*degree
	s.PinionShift = c.Num(t, "x1")
	if _, given := c.Given["centre"]; given {
		s.CentreDistance = param.Known(c.Num(t, "centre") / 1000)
	} else {
		s.WheelShift = c.Num(t, "x2")
	}
	return solve(t, s)
}

func geometryCase(t testing.TB, c published.Case) map[string]float64 {
	g := pairOf(t, c)
	return map[string]float64{
		"centre": g.CentreDistance * 1000, "working_angle_rad": g.WorkingPressureAngle, "working_angle_deg": g.WorkingPressureAngle / degree,
		"tip_alteration": g.TipAlteration, "pinion_tip": g.Pinion.TipDiameter * 1000, "wheel_tip": g.Driven.TipDiameter * 1000,
		"path": g.ContactRatio * g.BasePitch * 1000, "contact_ratio": g.ContactRatio, "overlap_ratio": g.OverlapRatio,
		"pinion_tip_thickness": g.Pinion.TipThickness * 1000,
		"reference_centre":     (g.Pinion.ReferenceDiameter + g.Driven.ReferenceDiameter) / 2 * 1000,
		"transverse_angle_deg": g.TransversePressureAngle / degree,
		"shift_sum":            g.Pinion.Shift + g.Driven.Shift, "x2": g.Driven.Shift,
	}
}

func meshLossCase(t testing.TB, c published.Case) map[string]float64 {
	g := pairOf(t, c)
	power, speed := c.Num(t, "power_kw")*1000, c.Num(t, "rpm")*rpm
	m := newMeshLoss(&g, c.Num(t, "viscosity")/mm2*c.Num(t, "density"), c.Num(t, "roughness")/mm2, Mineral)
	loss := m.power(power, power/speed, math.Log(speed))
	return map[string]float64{
		"sum_speed":      2 * g.pitchLineSpeed(speed) * math.Sin(g.WorkingPressureAngle),
		"reduced_radius": g.reducedRadius() * 1000, "loss_factor": g.lossFactor(),
		"friction": loss / power / g.lossFactor(), "loss": loss,
	}
}

func leanMeshLossCase(t testing.TB, c published.Case) map[string]float64 {
	g := pairOf(t, c)
	speed := c.Num(t, "rpm") * rpm
	return map[string]float64{"loss": g.leanMeshLoss(c.Num(t, "power_kw")*1000/speed, speed, c.Num(t, "viscosity")/mm2)}
}

func churningCase(t testing.TB, c published.Case) map[string]float64 {
	g := pairOf(t, c)
	speed := c.Num(t, "rpm") * rpm
	ch := newChurning(&g, g.Driven, 1/g.Ratio(), c.Num(t, "dip")/1000, c.Num(t, "volume")/1e6, c.Num(t, "viscosity")/mm2, c.Num(t, "density"))
	flow := ch
	flow.report = 0
	return map[string]float64{"report": ch.report * speed * speed * speed, "flow": flow.power(speed, math.Log(speed))}
}
