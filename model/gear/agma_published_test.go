package gear

import (
	"fmt"
	"math"
	"testing"

	"backspan/model/internal/published"
)

func agmaStrengthCase(t testing.TB, c published.Case) map[string]float64 {
	root, flank, ok := toothMaterial{class: Normalized, hardness: c.Num(t, "brinell")}.agmaStrength()
	if !ok {
		t.Fatal("not held")
	}
	return map[string]float64{"root": root, "flank": flank}
}

func lewisCase(t testing.TB, c published.Case) map[string]float64 {
	got := map[string]float64{}
	for _, z := range c.List(t, "teeth") {
		got[fmt.Sprintf("form_%g", z)] = lewisY(z)
	}
	return got
}

// helicalPair is an unshifted helical pair of full-depth teeth by its normal
// diametral pitch.
func helicalPair(t testing.TB, c published.Case) (Spec, Geometry) {
	s := Default()
	s.Module = inch / c.Num(t, "normal_pitch")
	s.PinionTeeth, s.WheelTeeth = int(c.Num(t, "pinion_teeth")), int(c.Num(t, "wheel_teeth"))
	s.HelixAngle, s.PinionShift, s.WheelShift, s.FaceWidth = c.Num(t, "helix_deg")*degree, 0, 0, c.Num(t, "face")*inch
	return s, solve(t, s)
}

func agmaHelicalCase(t testing.TB, c published.Case) map[string]float64 {
	s, g := helicalPair(t, c)
	x := newCrossGeometry(&g, &toothBuild{rack: s.Rack.Rack(), pressureAngle: s.PressureAngle})
	d := g.Pinion.ReferenceDiameter / inch
	p := agmaPair{diameter: d, face: c.Num(t, "face"), quality: c.Num(t, "quality"), alignment: alignments()[CommercialUnit],
		speed: math.Pi * d * c.Num(t, "rpm") / 12}
	dynamic, _ := dynamicAGMA(p.quality, p.speed)
	return map[string]float64{"transverse_angle_deg": g.TransversePressureAngle / degree, "pinion_in": d, "speed": p.speed,
		"load": 33000 * c.Num(t, "power_hp") / p.speed, "dynamic": dynamic, "spread": p.spreadAGMA(), "flank_geometry": x.flank}
}

func agmaPittingGeometryCase(t testing.TB, c published.Case) map[string]float64 {
	s := Default()
	s.PinionTeeth, s.WheelTeeth = int(c.Num(t, "pinion_teeth")), int(c.Num(t, "wheel_teeth"))
	return map[string]float64{"flank": newGear(t, s).second.flank}
}

func hardnessRatioCase(t testing.TB, c published.Case) map[string]float64 {
	got := map[string]float64{}
	for _, over := range c.List(t, "hardness_over") {
		p := agmaPair{through: true, hardness: [2]float64{over * 200, 200}, teeth: [2]float64{20, 20 * c.Num(t, "wheel_over_pinion")}}
		got[fmt.Sprintf("gain_%g", over)] = p.hardnessRatio()
	}
	return got
}

func helicalPitchesCase(t testing.TB, c published.Case) map[string]float64 {
	helix := c.Num(t, "helix_deg") * degree
	s := Default()
	s.Module = inch / c.Num(t, "pitch") * math.Cos(helix)
	s.PinionTeeth, s.HelixAngle, s.PressureAngle = int(c.Num(t, "teeth")), helix, c.Num(t, "pressure_angle_deg")*degree
	g := solve(t, s)
	normal := math.Pi * g.Module / inch
	return map[string]float64{"diameter_in": g.Pinion.ReferenceDiameter / inch, "normal_in": normal, "normal_pitch": math.Pi / normal,
		"transverse_in": g.BasePitch / math.Cos(g.TransversePressureAngle) / inch,
		"axial_in":      s.FaceWidth / g.OverlapRatio / inch, "transverse_angle_deg": g.TransversePressureAngle / degree}
}

func toothForcesCase(t testing.TB, c published.Case) map[string]float64 {
	s := Default()
	s.Module, s.HelixAngle = c.Num(t, "module")/1000, c.Num(t, "helix_deg")*degree
	s.PinionTeeth, s.WheelTeeth, s.PinionShift, s.WheelShift = int(c.Num(t, "pinion_teeth")), int(c.Num(t, "wheel_teeth")), 0, 0
	g := solve(t, s)
	f := g.forces(c.Num(t, "power_w") / (c.Num(t, "rpm") * rpm))
	return map[string]float64{"tangential_n": f.Tangential, "radial_n": f.Radial, "tangential_lb": f.Tangential / poundForce,
		"radial_lb": f.Radial / poundForce, "axial_lb": f.Axial / poundForce}
}
